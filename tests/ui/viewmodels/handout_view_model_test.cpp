// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/handout_view_model.h"

#include <QDir>
#include <QFile>
#include <QTest>
#include <map>

#include "sheet_stick.h"
#include "support/full_disk.h"

namespace wetfront::ui {
namespace {

class HandoutViewModelTest : public SheetStick {
protected:
    HandoutViewModel& handout() { return *visit_.handout(); }
    SheetViewModel& sheet() { return *visit_.sheet(); }
    void put(bool summary) {
        handout().putOnStick(summary);
        wait();
    }
    void wait() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !handout().busy(); }, 20'000));
    }
    [[nodiscard]] std::string problem() { return handout().problem().toStdString(); }
    void expect_problem(const char* words) {
        EXPECT_TRUE(handout().problem().contains(QString::fromUtf8(words))) << problem();
        EXPECT_EQ(handout().outcome(), QString{}) << "nothing is said to be done";
    }

    VisitViewModel visit_{context_, presses_, paper_, file_, {}, nullptr};
};

TEST_F(HandoutViewModelTest, one_press_puts_the_sheet_on_the_only_stick) {
    handout().putOnStick(false);
    EXPECT_TRUE(handout().busy());
    wait();
    ASSERT_EQ(on_stick().size(), 1);
    EXPECT_TRUE(handout().outcome().startsWith("On the stick and read back: " + stick_))
        << handout().outcome().toStdString();
    EXPECT_TRUE(handout().outcome().endsWith(on_stick().front()));
    EXPECT_EQ(content(on_stick().front()), "%PDF-commissioning");
    EXPECT_EQ(handout().problem(), QString{});
}

TEST_F(HandoutViewModelTest, a_signed_sheet_goes_on_the_stick_as_it_was_kept) {
    ASSERT_EQ(sheet().addPerson("Jo Penn", "technician"), QString{});
    ASSERT_EQ(sheet().sign(0), QString{});
    drawn_as_ = "%PDF-drawn another time";
    put(false);
    ASSERT_EQ(on_stick().size(), 1);
    EXPECT_EQ(content(on_stick().front()), "%PDF-commissioning");
}

TEST_F(HandoutViewModelTest, the_summary_stands_beside_the_sheet_under_a_name_of_its_own) {
    put(false);
    put(true);
    ASSERT_EQ(on_stick().size(), 2);
    EXPECT_EQ(on_stick().filter(".summary.pdf").size(), 1);
    EXPECT_EQ(content(on_stick().filter(".summary.pdf").front()), "%PDF-summary");
}

TEST_F(HandoutViewModelTest, without_a_stick_it_says_so) {
    plugged_in_.clear();
    put(false);
    expect_problem("No stick is plugged in");
}

TEST_F(HandoutViewModelTest, of_two_sticks_one_is_chosen) {
    const QString other = folder_.filePath("other");
    QDir{}.mkpath(other);
    plugged_in_.append(other);
    put(true);
    EXPECT_EQ(handout().media(), plugged_in_);
    EXPECT_TRUE(on_stick().isEmpty());
    handout().putOn(stick_);
    wait();
    EXPECT_TRUE(handout().media().isEmpty());
    ASSERT_EQ(on_stick().size(), 1);
    EXPECT_EQ(content(on_stick().front()), "%PDF-summary");
}

TEST_F(HandoutViewModelTest, a_full_stick_says_so_and_keeps_the_sheet_that_was_there) {
    put(false);
    drawn_as_ = "%PDF-" + QByteArray(50'000, 'x');
    {
        const test::FullDisk full{20'000};
        put(false);
    }
    expect_problem("no room left");
    ASSERT_EQ(on_stick().size(), 1);
    EXPECT_EQ(content(on_stick().front()), "%PDF-commissioning");
}

TEST_F(HandoutViewModelTest, a_stick_that_is_pulled_out_says_so_whenever_it_is) {
    plugged_in_ = {stick_};
    QDir{stick_}.removeRecursively();
    put(false);
    expect_problem("pulled out");
    EXPECT_FALSE(QDir{stick_}.exists()) << "no folder takes the place of the stick";
    QDir{}.mkpath(stick_);
    paper_.keep = [this](const QByteArray& bytes, const QString& file) {
        pull_out_ = true;  // its folder is still there: on the tablet's own disk
        return keep_bytes(bytes, file);
    };
    put(false);
    expect_problem("pulled out");
}

TEST_F(HandoutViewModelTest, each_fault_of_a_stick_has_words_of_its_own) {
    const std::map<FileFault, const char*> words{{FileFault::no_room, "no room left"},
                                                 {FileFault::not_permitted, "read-only"},
                                                 {FileFault::gone, "pulled out"},
                                                 {FileFault::differs, "does not give back what was written"},
                                                 {FileFault::other, "could not be written"}};
    for (const auto& [fault, said] : words) {
        paper_.keep = [fault = fault](const QByteArray&, const QString&) {
            return std::optional{FileFailure{fault, 5}};
        };
        put(false);
        expect_problem(said);
        EXPECT_TRUE(handout().problem().contains(stick_)) << problem();
    }
}

TEST_F(HandoutViewModelTest, the_summary_is_looked_at_and_follows_the_reader) {
    EXPECT_FALSE(handout().summaryShown());
    handout().showSummary();
    EXPECT_TRUE(handout().summaryShown());
    EXPECT_FALSE(handout().summary_page().isNull());
    EXPECT_EQ(last_kind_, "summary");
    const int revision = handout().summaryRevision();
    sheet().setLanguage("es");
    EXPECT_GT(handout().summaryRevision(), revision);
    handout().hideSummary();
    EXPECT_FALSE(handout().summaryShown());
}

TEST_F(HandoutViewModelTest, the_summary_is_printed_and_a_printer_that_was_not_chosen_is_told) {
    handout().printSummary();
    EXPECT_EQ(last_kind_, "summary");
    EXPECT_EQ(handout().outcome(), "The summary was sent to the printer.");
    paper_.print = [](const SheetContent&, const Formatter&, Paper) -> Result<bool> { return false; };
    handout().printSummary();
    EXPECT_EQ(handout().outcome(), "Not printed.");
    paper_.print = [](const SheetContent&, const Formatter&, Paper) -> Result<bool> {
        return storage_error("printer", "it burns", "put it out");
    };
    handout().printSummary();
    expect_problem("it burns");
}

}  // namespace
}  // namespace wetfront::ui
