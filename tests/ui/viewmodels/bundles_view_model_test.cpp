// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/bundles_view_model.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include "desk.h"

namespace wetfront::ui {
namespace {

/// The tablet is the desk's; the office has a record file of its own.
class BundlesViewModelTest : public Desk {
protected:
    BundlesViewModelTest() { QDir{}.mkpath(stick_); }

    static void wait(BundlesViewModel& bundles) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !bundles.busy(); }, 20'000));
    }
    void write(BundlesViewModel& from, const QString& what = QStringLiteral("everything")) {
        from.writeTo(stick_, what);
        wait(from);
    }
    static QString row(const BundlesViewModel& bundles, bool receipt) {
        for (const auto& each : bundles.incoming()) {
            if (each.toMap()["isReceipt"].toBool() == receipt) {
                return each.toMap()["file"].toString();
            }
        }
        return {};
    }
    void look_at(BundlesViewModel& bundles, bool receipt) {
        bundles.look();
        bundles.lookAt(row(bundles, receipt));
        wait(bundles);
    }
    void take_in(BundlesViewModel& bundles) {
        look_at(bundles, false);
        bundles.takeIn();
        wait(bundles);
    }
    void bring_everything_to_the_office() {
        write(tablet_);
        take_in(office_);
        QDir{stick_ + QStringLiteral("/Wetfront bundles")}.removeRecursively();
    }
    void rename(Store& store, const char* name) {
        auto farm = store.farm(file_.farm.id).value();
        farm.name = name;
        ASSERT_TRUE(store.save(farm));
    }
    [[nodiscard]] std::string farm_in(const Store& store) const {
        return store.farm(file_.farm.id).value().name;
    }

    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    QStringList plugged_in_{stick_};
    Store office_store_ =
        Store::open(folder_.filePath(QStringLiteral("office.wetfront")).toStdString(), clock_).value();
    Context office_context_{office_store_, clock_, formatter_};
    BundlesViewModel tablet_{context_, [this] { return plugged_in_; }, nullptr};
    BundlesViewModel office_{office_context_, [this] { return plugged_in_; }, nullptr};
};

TEST_F(BundlesViewModelTest, a_bundle_on_a_stick_is_looked_at_before_it_changes_anything) {
    write(tablet_);
    look_at(office_, false);
    ASSERT_TRUE(office_.looked().contains("title")) << office_.outcome().toStdString();
    const auto lines = office_.looked()["lines"].toStringList();
    EXPECT_TRUE(lines.at(1).contains(QStringLiteral("farms 1, houses 1, visits 1")))
        << lines.at(1).toStdString();
    EXPECT_TRUE(office_store_.houses().value().empty());
}

TEST_F(BundlesViewModelTest, what_is_taken_in_is_told_to_the_houses_and_again_adds_nothing) {
    const QSignalSpy told{&office_, &BundlesViewModel::recordsChanged};
    write(tablet_);
    take_in(office_);
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(office_store_.houses().value().size(), 1U);
    take_in(office_);
    EXPECT_TRUE(office_.outcome().contains(QStringLiteral("New entries: 0")))
        << office_.outcome().toStdString();
}

TEST_F(BundlesViewModelTest, the_receipt_comes_back_on_the_same_stick_and_nothing_is_new_then) {
    write(tablet_);
    take_in(office_);
    look_at(tablet_, true);
    EXPECT_TRUE(tablet_.outcome().startsWith(QStringLiteral("Entries delivered: ")))
        << tablet_.outcome().toStdString();
    const auto rows = tablet_.outgoing();
    const auto office = std::ranges::find_if(
        rows, [](const QVariant& each) { return each.toMap()["value"].toString().startsWith("new:"); });
    ASSERT_NE(office, rows.end());
    write(tablet_, office->toMap()["value"].toString());
    EXPECT_EQ(tablet_.outcome(), QStringLiteral("Nothing is new for that machine: no bundle was written."));
}

TEST_F(BundlesViewModelTest, a_broken_bundle_is_told_and_changes_nothing) {
    write(tablet_);
    office_.look();
    QFile file{row(office_, false)};
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.resize(file.size() - 1);
    file.close();
    look_at(office_, false);
    EXPECT_TRUE(office_.outcome().startsWith(QStringLiteral("This bundle cannot be used")))
        << office_.outcome().toStdString();
    EXPECT_TRUE(office_.looked().isEmpty());
    EXPECT_TRUE(office_store_.houses().value().empty());
}

TEST_F(BundlesViewModelTest, a_stick_that_takes_no_file_is_told) {
    const QString blocked = folder_.filePath(QStringLiteral("no-folder"));
    QFile file{blocked};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    tablet_.writeTo(blocked, QStringLiteral("everything"));
    wait(tablet_);
    EXPECT_TRUE(tablet_.outcome().startsWith(QStringLiteral("No bundle was written.")))
        << tablet_.outcome().toStdString();
}

TEST_F(BundlesViewModelTest, the_house_from_which_the_page_was_opened_is_offered_first_and_goes_alone) {
    House other = file_.house;
    other.id = Id{"another-house"};
    ASSERT_TRUE(store_.save(other));
    tablet_.begin_anew(file_.house);
    const auto first = tablet_.outgoing().front().toMap();
    EXPECT_EQ(first["text"], QString::fromStdString(file_.house.name));
    write(tablet_, first["value"].toString());
    take_in(office_);
    ASSERT_EQ(office_store_.houses().value().size(), 1U);
    EXPECT_EQ(office_store_.houses().value().front().house, file_.house.id);
}

TEST_F(BundlesViewModelTest, a_link_on_a_stick_is_not_offered) {
    const QString folder = stick_ + QStringLiteral("/Wetfront bundles");
    ASSERT_TRUE(QDir{}.mkpath(folder));
    ASSERT_TRUE(QFile::link(folder_.filePath(QStringLiteral("office.wetfront")),
                            folder + QStringLiteral("/x.bundle")));
    office_.look();
    EXPECT_TRUE(office_.incoming().isEmpty());
}

TEST_F(BundlesViewModelTest, two_states_stand_side_by_side_until_one_is_chosen) {
    bring_everything_to_the_office();
    rename(store_, "As the tablet has it");
    rename(office_store_, "As the office has it");
    write(tablet_);
    take_in(office_);
    ASSERT_EQ(office_.split().size(), 1);
    const auto split = office_.split().front().toMap();
    const auto difference = split["differences"].toList().front().toMap();
    EXPECT_EQ(difference["place"], QStringLiteral("Farm"));
    const auto states = split["states"].toList();
    ASSERT_EQ(states.size(), 2);
    const auto chosen = difference["second"].toString();
    office_.choose(states.at(1).toMap()["revision"].toString());
    EXPECT_TRUE(office_.split().isEmpty());
    EXPECT_EQ(QString::fromStdString(farm_in(office_store_)), chosen);
}

}  // namespace
}  // namespace wetfront::ui
