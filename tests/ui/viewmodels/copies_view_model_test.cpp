// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/copies_view_model.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include "desk.h"

namespace wetfront::ui {
namespace {

constexpr std::int64_t day_ms = 24LL * 3600 * 1000;

class CopiesViewModelTest : public Desk {
protected:
    CopiesViewModelTest() { QDir{}.mkpath(stick_); }

    void wait() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !copies_.busy(); }, 20'000));
    }
    [[nodiscard]] QString file(int row) { return copies_.copies().at(row).toMap()["file"].toString(); }
    void look_at(int row) {
        copies_.lookAt(file(row));
        wait();
    }
    void enter_a_farm() {
        Farm farm;
        farm.id = store_.new_id();
        farm.name = "Entered later";
        ASSERT_TRUE(store_.save(farm));
    }

    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    QStringList plugged_in_{stick_};
    CopiesViewModel copies_{context_, [this] { return plugged_in_; }, nullptr};
};

TEST_F(CopiesViewModelTest, the_copy_of_the_day_is_listed_with_day_and_place_and_told_as_the_last_one) {
    copies_.back_up_today();
    copies_.look();
    ASSERT_EQ(copies_.copies().size(), 1);
    EXPECT_EQ(copies_.copies().front().toMap()["title"], QStringLiteral("2026-07-01 05:00"));
    EXPECT_EQ(copies_.last(), QStringLiteral("Last copy: 2026-07-01 05:00, on this tablet"));
    EXPECT_TRUE(copies_.problem().isEmpty());
}

TEST_F(CopiesViewModelTest, a_day_gets_one_copy_and_the_next_day_another) {
    copies_.back_up_today();
    copies_.back_up_today();
    clock_.advance_ms(day_ms);
    copies_.back_up_today();
    copies_.look();
    ASSERT_EQ(copies_.copies().size(), 2);
    EXPECT_EQ(copies_.copies().front().toMap()["title"], QStringLiteral("2026-07-02 05:00"));
}

TEST_F(CopiesViewModelTest, a_copy_that_cannot_be_made_is_told_in_words_until_one_can) {
    const QString in_the_way = folder_.filePath(QStringLiteral("backups"));
    QFile blocking{in_the_way};
    ASSERT_TRUE(blocking.open(QIODevice::WriteOnly));
    copies_.back_up_today();
    EXPECT_TRUE(copies_.problem().contains(in_the_way)) << copies_.problem().toStdString();
    EXPECT_TRUE(copies_.problem().contains(QStringLiteral("the records themselves go on")));
    ASSERT_TRUE(blocking.remove());
    copies_.back_up_today();
    EXPECT_TRUE(copies_.problem().isEmpty()) << copies_.problem().toStdString();
}

TEST_F(CopiesViewModelTest, a_copy_on_a_stick_reads_back_with_the_visit) {
    copies_.look();
    EXPECT_EQ(copies_.last(), QStringLiteral("No copy is here yet."));
    copies_.writeTo(stick_);
    EXPECT_TRUE(copies_.busy());
    wait();
    EXPECT_TRUE(copies_.outcome().startsWith(QStringLiteral("Copied and read back: ") + stick_))
        << copies_.outcome().toStdString();
    ASSERT_EQ(copies_.copies().size(), 1);
    EXPECT_EQ(copies_.last(), QStringLiteral("Last copy: 2026-07-01 05:00, on ") + stick_);
    const auto copy = Store::open(file(0).toStdString(), clock_, OpenMode::read_only);
    ASSERT_TRUE(copy) << copy.error().text();
    EXPECT_EQ(copy.value().visit_file(file_.visit.id).value(), file_);
}

TEST_F(CopiesViewModelTest, a_stick_that_does_not_take_the_copy_is_told) {
    QFile blocking{stick_ + QStringLiteral("/Wetfront copies")};
    ASSERT_TRUE(blocking.open(QIODevice::WriteOnly));
    copies_.writeTo(stick_);
    wait();
    EXPECT_TRUE(copies_.outcome().startsWith(QStringLiteral("No copy was made.")))
        << copies_.outcome().toStdString();
}

TEST_F(CopiesViewModelTest, sticks_come_and_go_as_they_are_looked_for) {
    copies_.look();
    EXPECT_EQ(copies_.media(), QStringList{stick_});
    plugged_in_.clear();
    copies_.look();
    EXPECT_TRUE(copies_.media().isEmpty());
}

TEST_F(CopiesViewModelTest, a_copy_that_is_looked_at_tells_what_it_holds_and_what_was_entered_since) {
    copies_.back_up_today();
    copies_.look();
    look_at(0);
    EXPECT_EQ(copies_.looked()["content"],
              QStringLiteral("It holds houses: 1, entries: 3, latest entry 2026-07-01 05:00."));
    EXPECT_EQ(copies_.looked()["lost"], QStringLiteral("Nothing was entered since this copy was made."));
    clock_.advance_ms(3'600'000);
    enter_a_farm();
    enter_a_farm();
    look_at(0);
    EXPECT_EQ(copies_.looked()["lost"],
              QStringLiteral(
                  "Entries made since this copy: 2. They go out of sight: the records hold now houses: 1, "
                  "entries: 5, latest entry 2026-07-01 06:00."));
    EXPECT_EQ(QString::fromStdString(copies_.looked_at().string()), file(0));
    copies_.drop();
    EXPECT_TRUE(copies_.looked().isEmpty());
}

TEST_F(CopiesViewModelTest, a_copy_with_other_entries_than_the_records_is_told_as_such) {
    test::FakeClock later;
    later.advance_ms(1'000);
    QDir{}.mkpath(stick_ + QStringLiteral("/elsewhere"));
    auto other = Store::open((stick_ + QStringLiteral("/elsewhere/records.wetfront")).toStdString(), later);
    ASSERT_TRUE(other) << other.error().text();
    ASSERT_TRUE(other.value().add(file_));
    ASSERT_TRUE(other.value().back_up((stick_ + QStringLiteral("/Wetfront copies")).toStdString()));
    copies_.look();
    look_at(0);
    EXPECT_TRUE(copies_.looked()["lost"].toString().startsWith(
        QStringLiteral("This copy is not an earlier state of these records.")))
        << copies_.looked()["lost"].toString().toStdString();
}

TEST_F(CopiesViewModelTest, a_damaged_copy_is_told_and_not_offered) {
    copies_.back_up_today();
    copies_.look();
    ASSERT_TRUE(QFile::resize(file(0), 50));
    look_at(0);
    EXPECT_TRUE(copies_.looked().isEmpty());
    EXPECT_TRUE(copies_.outcome().contains(QStringLiteral("damaged"))) << copies_.outcome().toStdString();
}

TEST_F(CopiesViewModelTest, while_one_copy_is_written_no_other_is_begun) {
    copies_.writeTo(stick_);
    copies_.writeTo(stick_);
    wait();
    copies_.look();
    EXPECT_EQ(copies_.copies().size(), 1);
}

}  // namespace
}  // namespace wetfront::ui
