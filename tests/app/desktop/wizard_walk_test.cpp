// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <algorithm>

#include "cycle/advice.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

QString text_of_pdf(const QString& file) {
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished());
    return QString::fromUtf8(reader.readAllStandardOutput());
}

QString shown(const AnyQuantity& quantity) {
    return Formatter{}.text(quantity);
}

class WizardWalkTest : public testing::TestWithParam<QSize> {
protected:
    void describe_house() {
        walk.hand().click(QStringLiteral("Describe a house"));
        walk.write(QStringLiteral("Name of the farm"), QStringLiteral("Larkrise"));
        walk.write(QStringLiteral("Name of the house"), QStringLiteral("House 1"));
        walk.hand().click(QStringLiteral("Start the visit"));
    }

    void agree_and_make_safe() {
        walk.go_to(Step::safety);
        walk.enter(QStringLiteral("Longest time the pads may be off"), QStringLiteral("25"),
                   QStringLiteral("min"));
        walk.enter(QStringLiteral("House temperature at which the test stops"), QStringLiteral("88"),
                   QStringLiteral("°F"));
        walk.tick_all(Step::safety);
    }

    void describe_banks() {
        walk.go_to(Step::house_and_banks);
        walk.enter(QStringLiteral("Pad length"), QStringLiteral("80"), QStringLiteral("ft"));
        walk.enter(QStringLiteral("Pad height"), QStringLiteral("5"), QStringLiteral("ft"));
        walk.enter(QStringLiteral("Pad thickness"), QStringLiteral("6"), QStringLiteral("in"));
        walk.hand().click(QStringLiteral("Add a bank"));
        walk.enter(QStringLiteral("Design day: hottest outside"), QStringLiteral("98"), QStringLiteral("°F"));
        walk.enter(QStringLiteral("Design day: wet bulb at that hour"), QStringLiteral("76"),
                   QStringLiteral("°F"));
    }

    // Both banks from dry with the fans off; then both run off and dry with the fans running.
    void time_the_water() {
        walk.go_to(Step::time_the_water);
        walk.hand().click(QStringLiteral("Off"));
        walk.mark_after(1.0, QStringLiteral("Pump starts"));
        walk.mark_after(40.0, QStringLiteral("Water at the far end of Bank 1"));
        walk.hand().click(QStringLiteral("Bank 2: filling"));
        walk.mark_after(4.0, QStringLiteral("Water at the far end of Bank 2"));
        walk.hand().click(QStringLiteral("Bank 1: wetting"));
        walk.mark_after(76.0, QStringLiteral("Bank 1 drips evenly at the far end"));
        walk.mark_after(10.0, QStringLiteral("Bank 2 drips evenly at the far end"));
        walk.hand().click(QStringLiteral("Running"));
        walk.mark_after(30.0, QStringLiteral("Pump stops"));
        walk.hand().click(QStringLiteral("Bank 1: running off"));
        walk.mark_after(90.0, QStringLiteral("Bank 1 stops dripping"));
        walk.hand().click(QStringLiteral("Bank 2: running off"));
        walk.mark_after(5.0, QStringLiteral("Bank 2 stops dripping"));
        walk.hand().click(QStringLiteral("Bank 1: drying"));
        walk.mark_after(805.0, QStringLiteral("First dry patch on Bank 1"));
        walk.mark_after(30.0, QStringLiteral("First dry patch on Bank 2"));
        walk.hand().click(QStringLiteral("Pump is back on automatic"));
    }

    void enter_conditions() {
        walk.go_to(Step::conditions);
        walk.enter(QStringLiteral("Outside temperature"), QStringLiteral("95"), QStringLiteral("°F"));
        walk.enter(QStringLiteral("Outside relative humidity"), QStringLiteral("40"), QStringLiteral("%"));
    }

    void enter_found() {
        walk.go_to(Step::settings_found);
        walk.enter(QStringLiteral("Period"), QStringLiteral("300"), QStringLiteral("s"));
        walk.enter(QStringLiteral("Base on-time"), QStringLiteral("30"), QStringLiteral("s"));
        walk.enter(QStringLiteral("On-time ceiling"), QStringLiteral("300"), QStringLiteral("s"));
    }

    // Presses the answer that stands under the question.
    void answer(const QString& question, const QString& words) {
        bool asked = false;
        for (const auto& heard : walk.hand().everything()) {
            asked = asked || heard.name == question;
            if (asked && heard.name == words) {
                walk.hand().click(heard);
                return;
            }
        }
        ADD_FAILURE() << question.toStdString() << " is not asked";
    }

    void sign_as(const QString& name) {
        walk.go_to(Step::sheet);
        walk.hand().click(QStringLiteral("Type a name"));
        walk.write(QStringLiteral("Name"), name);
        walk.hand().click(QStringLiteral("Add the person"));
        walk.hand().click(QStringLiteral("Sign as %1").arg(name));
    }

    Walk walk{GetParam()};
};

TEST_P(WizardWalkTest, goes_from_an_empty_store_to_a_signed_sheet_with_the_numbers_of_the_core) {
    describe_house();
    ASSERT_NE(walk.session().visit(), nullptr);
    agree_and_make_safe();
    describe_banks();
    time_the_water();
    enter_conditions();
    enter_found();

    // 30 s of water do not reach the far end that 40 s and 44 s reach; it is said where it was entered.
    const auto heard = walk.hand().everything();
    EXPECT_TRUE(std::any_of(heard.begin(), heard.end(), [](const Heard& each) {
        return each.name.contains(QStringLiteral("30 s")) && each.name.contains(QStringLiteral("Bank 1"));
    }));

    const auto file = walk.stored_visit();
    const auto timings = timings_of(file);
    ASSERT_EQ(timings.banks.size(), 2U);
    // What the clock in the hand went through, second by second, in time_the_water().
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[0].fill->mean), 40.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[1].fill->mean), 44.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[0].wet_through->mean), 120.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[1].wet_through->mean), 130.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[0].run_off->mean), 90.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[0].dry_out->mean), 900.0);
    EXPECT_DOUBLE_EQ(in_seconds(timings.banks[1].dry_out->mean), 930.0);

    const auto advice = advise(file);
    ASSERT_EQ(advice.timers.size(), 1U);
    ASSERT_TRUE(advice.timers.front().cycled);
    const auto* base = advice.timers.front().advised(Setting::base_on_time);
    ASSERT_TRUE(base != nullptr && base->value);
    walk.go_to(Step::advice);
    const QString on_screen = walk.hand().find(QStringLiteral("Base on-time")).description;
    EXPECT_TRUE(on_screen.contains(shown(*base->value))) << on_screen.toStdString();
    walk.hand().click(QStringLiteral("Base on-time"));
    EXPECT_TRUE(walk.hand().shows(QString::fromStdString(base->reason.formula)));
    walk.hand().key(Qt::Key_Escape);

    walk.go_to(Step::settings_left);
    walk.hand().click(QStringLiteral("Take over the advice"));
    const auto left = walk.stored_visit().visit;
    ASSERT_NE(left.left_of(file.house.timers.front().id), nullptr);
    EXPECT_EQ(held(*left.left_of(file.house.timers.front().id), Setting::base_on_time), base->value);

    walk.go_to(Step::before_leaving);
    walk.tick_all(Step::before_leaving);
    sign_as(QStringLiteral("Jo Penn"));
    EXPECT_TRUE(walk.stored_visit().visit.is_signed());

    walk.hand().click(QStringLiteral("Save as PDF"));
    const QDir documents{walk.documents()};
    const auto written = documents.entryList({QStringLiteral("*.pdf")});
    ASSERT_EQ(written.size(), 1);
    const QString text = text_of_pdf(documents.filePath(written.front()));
    for (const QString& wanted :
         {QStringLiteral("Larkrise"), QStringLiteral("House 1"), QStringLiteral("Jo Penn"),
          shown(any(seconds(40.0))), shown(any(seconds(130.0))), shown(*base->value)}) {
        EXPECT_TRUE(text.contains(wanted)) << wanted.toStdString() << " is not on the sheet:\n"
                                           << text.toStdString();
    }
    EXPECT_FALSE(text.contains(QStringLiteral("DRAFT")));
}

// Left: 90 s in 300 s; each bank is watched for a cycle, and the pump does what was set.
TEST_P(WizardWalkTest, a_watched_cycle_at_each_bank_proves_what_was_left) {
    describe_house();
    describe_banks();
    walk.go_to(Step::settings_left);
    walk.enter(QStringLiteral("Period"), QStringLiteral("300"), QStringLiteral("s"));
    walk.enter(QStringLiteral("Base on-time"), QStringLiteral("90"), QStringLiteral("s"));

    walk.go_to(Step::proof);
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Not done: no run of the pump was watched.")));
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    for (const char* bank : {"Bank 1", "Bank 2"}) {
        const QString name = QString::fromLatin1(bank);
        walk.hand().click(name);
        walk.mark_after(40.0, QStringLiteral("Water at the far end of %1").arg(name));
        walk.mark_after(15.0, QStringLiteral("%1 drips evenly at the far end").arg(name));
        walk.mark_after(35.0, QStringLiteral("Pump stops"));
        walk.mark_after(210.0, QStringLiteral("Pump starts"));
        answer(QStringLiteral("The far end drips evenly before the pump stops"), QStringLiteral("Yes"));
        answer(QStringLiteral("A dry patch somewhere on the face"), QStringLiteral("No"));
    }
    EXPECT_FALSE(walk.session().visit()->steps()->at(Step::proof).complete)
        << "judged before anybody said which run this was";
    walk.hand().click(QStringLiteral("3rd or later"));

    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Passed: the pads run as set. Runs that count: 3.")));
    // Hand and eye, 0.10 s and 0.50 s: u = 0.51 s, U = 1.0 s.
    const auto five_minutes = shown(any(seconds(300.0)));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Period: expected %1; seen %1 ± %2; pass")
                                      .arg(five_minutes, shown(any(seconds(1.0))))))
        << "no such line in the table";
    EXPECT_TRUE(walk.session().visit()->steps()->at(Step::proof).complete);
    const auto marks = walk.stored_visit().visit.marks;
    ASSERT_EQ(marks.size(), 9U);
    EXPECT_TRUE(std::ranges::all_of(marks, &Mark::proof));
}

TEST_P(WizardWalkTest, a_run_too_short_fails_in_sight_with_what_to_look_at_and_undo_takes_it_back) {
    describe_house();
    walk.go_to(Step::settings_left);
    walk.enter(QStringLiteral("Period"), QStringLiteral("300"), QStringLiteral("s"));
    walk.enter(QStringLiteral("Base on-time"), QStringLiteral("90"), QStringLiteral("s"));
    walk.go_to(Step::proof);
    walk.hand().click(QStringLiteral("3rd or later"));
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    walk.pass(60.0);
    walk.hand().click(QStringLiteral("Something else happened"));
    walk.hand().click(QStringLiteral("Pump stops"));
    walk.mark_after(0.0, QStringLiteral("Pump stops"));
    const auto says = [this](const QString& words) {
        const auto heard = walk.hand().everything();
        return std::ranges::any_of(heard, [&](const Heard& each) { return each.name.contains(words); });
    };
    EXPECT_TRUE(says(QStringLiteral("Fault: Failed: ")));
    EXPECT_TRUE(says(QStringLiteral("Look: Read the setting back on the controller")));

    walk.hand().click(QStringLiteral("Undo: Pump stops"));
    EXPECT_FALSE(says(QStringLiteral("Fault: Failed: ")));
    walk.hand().key(Qt::Key_Space);
    EXPECT_EQ(walk.stored_visit().visit.marks.back().kind, MarkKind::water_at_far_end);

    // Its timer has the pump and the presses stay, but what happens meanwhile is not seen.
    walk.hand().click(QStringLiteral("Back"));
    EXPECT_EQ(walk.session().place(), QStringLiteral("visit"));
    walk.hand().click(QStringLiteral("Leave the page"));
    EXPECT_EQ(walk.session().place(), QStringLiteral("house"));
    ASSERT_TRUE(walk.session().resume_running_visit()) << "a program that starts again does not open here";
    EXPECT_EQ(walk.session().visit()->step(), static_cast<int>(Step::proof));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Bank 1 drips evenly at the far end")));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Undo: Water at the far end of Bank 1")));
}

// The store takes no press for a visit that was signed behind the page's back.
TEST_P(WizardWalkTest, presses_that_are_not_stored_are_not_left_without_a_question) {
    describe_house();
    walk.go_to(Step::proof);
    auto behind = walk.stored_visit().visit;
    behind.signatures.push_back({{"Jo Penn", "technician"}, behind.started});
    ASSERT_TRUE(walk.store().save(behind));
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    ASSERT_TRUE(walk.stored_visit().visit.marks.empty());
    walk.hand().click(QStringLiteral("Back"));
    EXPECT_NE(walk.session().visit(), nullptr);
    walk.hand().click(QStringLiteral("Leave the page"));
    EXPECT_EQ(walk.session().place(), QStringLiteral("house"));
}

// By hand: (300 + 340 + 410) / 3 = 350.
TEST_P(WizardWalkTest, several_anemometer_points_of_a_bank_make_a_mean) {
    describe_house();
    walk.go_to(Step::conditions);
    walk.hand().click(
        QStringLiteral("Bank 1: air speed at several points, temperature behind, water caught"));
    int number = 0;
    for (const char* speed : {"300", "340", "410"}) {
        ++number;
        walk.enter(QStringLiteral("Point %1: Air speed at the pad face").arg(number),
                   QString::fromLatin1(speed), QStringLiteral("ft/min"));
    }
    const auto heard = walk.hand().everything();
    EXPECT_TRUE(std::any_of(heard.begin(), heard.end(), [](const Heard& each) {
        return each.name.contains(QStringLiteral("Mean of 3 points 350 ft/min"));
    })) << "no line tells the mean";
    const auto at_banks = walk.stored_visit().visit.conditions.at_banks;
    ASSERT_EQ(at_banks.size(), 1U);
    EXPECT_EQ(at_banks.front().face_points.size(), 3U);
}

TEST_P(WizardWalkTest, the_headers_picture_appears_once_header_and_flow_are_known) {
    describe_house();
    walk.go_to(Step::conditions);
    walk.enter(QStringLiteral("Measured flow"), QStringLiteral("40"), QStringLiteral("gpm"));
    walk.go_to(Step::house_and_banks);
    walk.hand().click(QStringLiteral("Flow by outlet"));
    const auto drawing = QStringLiteral("flow by outlet of Bank 1");
    EXPECT_FALSE(walk.hand().shows(drawing));
    EXPECT_TRUE(
        walk.hand().shows(QStringLiteral("For the flow by outlet, this is missing: pad length, header bore, "
                                         "outlet bore, outlet spacing.")));
    walk.enter(QStringLiteral("Pad length"), QStringLiteral("80"), QStringLiteral("ft"));
    walk.enter(QStringLiteral("Header bore"), QStringLiteral("3"), QStringLiteral("in"));
    walk.enter(QStringLiteral("Outlet bore"), QStringLiteral("0.125"), QStringLiteral("in"));
    walk.enter(QStringLiteral("Outlet spacing"), QStringLiteral("4"), QStringLiteral("in"));
    ASSERT_TRUE(walk.hand().shows(drawing));
    const auto heard = walk.hand().find(drawing);
    EXPECT_GT(heard.place().height(), 100.0);
    EXPECT_TRUE(heard.description.contains(QStringLiteral("low-quarter uniformity")));
}

TEST_P(WizardWalkTest, the_air_picture_appears_once_the_air_outside_is_known) {
    describe_house();
    walk.go_to(Step::conditions);
    walk.hand().click(QStringLiteral("Air picture"));
    const auto drawing = QStringLiteral("the air outside, behind the pad and in the house");
    EXPECT_FALSE(walk.hand().shows(drawing));
    enter_conditions();
    ASSERT_TRUE(walk.hand().shows(drawing));
    EXPECT_TRUE(walk.hand().find(drawing).description.contains(QString::fromUtf8("95 °F")));
}

TEST_P(WizardWalkTest, no_pump_is_timed_before_the_longest_off_time_is_agreed) {
    describe_house();
    walk.go_to(Step::time_the_water);
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    EXPECT_TRUE(walk.stored_visit().visit.marks.empty());
    EXPECT_FALSE(walk.session().visit()->stopwatch()->blockedWhy().isEmpty());
}

TEST_P(WizardWalkTest, a_stopped_pump_counts_down_on_every_page_until_it_is_handed_back) {
    describe_house();
    agree_and_make_safe();
    walk.go_to(Step::time_the_water);
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    walk.hand().click(QStringLiteral("Something else happened"));
    walk.hand().click(QStringLiteral("Pump stops"));
    walk.mark_after(10.0, QStringLiteral("Pump stops"));
    for (const auto step : {Step::safety, Step::conditions, Step::sheet, Step::time_the_water}) {
        walk.go_to(step);
        EXPECT_TRUE(walk.hand().shows(QStringLiteral("Pump off: 25:00 left")));
    }
    walk.hand().click(QStringLiteral("Back"));
    ASSERT_TRUE(walk.hand().shows(QStringLiteral("Leave the page")))
        << "left a stopped pump without a question";
    walk.hand().click(QStringLiteral("Leave the page"));
    EXPECT_EQ(walk.session().place(), QStringLiteral("house"));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("House 1. Pump off: 25:00 left")));
    walk.hand().click(QStringLiteral("Go on with the open visit"));
    walk.go_to(Step::time_the_water);
    walk.hand().click(QStringLiteral("Pump is back on automatic"));
    walk.hand().click(QStringLiteral("It is on automatic"));
    EXPECT_FALSE(walk.hand().shows(QStringLiteral("Pump off: 25:00 left")));
    walk.hand().click(QStringLiteral("Back"));
    EXPECT_EQ(walk.session().place(), QStringLiteral("house"));
}

TEST_P(WizardWalkTest, signing_with_something_open_is_asked_about_and_the_default_keeps) {
    describe_house();
    walk.go_to(Step::sheet);
    walk.hand().click(QStringLiteral("Type a name"));
    walk.write(QStringLiteral("Name"), QStringLiteral("Jo Penn"));
    walk.hand().click(QStringLiteral("Add the person"));
    walk.hand().click(QStringLiteral("Sign as Jo Penn"));
    ASSERT_TRUE(walk.hand().shows(QStringLiteral("Not yet")));
    walk.hand().key(Qt::Key_Return);
    EXPECT_FALSE(walk.stored_visit().visit.is_signed());
    walk.hand().click(QStringLiteral("Sign as Jo Penn"));
    walk.hand().click(QStringLiteral("Sign all the same"));
    EXPECT_TRUE(walk.stored_visit().visit.is_signed());
}

TEST_P(WizardWalkTest, space_marks_and_undo_takes_the_mark_back) {
    describe_house();
    agree_and_make_safe();
    walk.go_to(Step::time_the_water);
    walk.mark_after(1.0, QStringLiteral("Pump starts"));
    walk.pass(40.0);
    walk.hand().key(Qt::Key_Space);
    ASSERT_EQ(walk.stored_visit().visit.marks.size(), 2U);
    walk.hand().click(QStringLiteral("Undo: Water at the far end of Bank 1"));
    const auto marks = walk.stored_visit().visit.marks;
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_TRUE(marks.back().undone);
    EXPECT_FALSE(walk.hand().shows(QStringLiteral("Undo: Water at the far end of Bank 1")));
    walk.hand().click(QStringLiteral("Redo: Water at the far end of Bank 1"));
    EXPECT_FALSE(walk.stored_visit().visit.marks.back().undone);
}

TEST_P(WizardWalkTest, the_keyboard_marks_again_after_another_button_was_pressed) {
    describe_house();
    agree_and_make_safe();
    walk.go_to(Step::time_the_water);
    walk.hand().click(QStringLiteral("Off"));
    walk.hand().key(Qt::Key_Space);
    ASSERT_EQ(walk.stored_visit().visit.marks.size(), 1U);
    EXPECT_EQ(walk.stored_visit().visit.marks.front().fans_running, false);
}

TEST_P(WizardWalkTest, an_entry_out_of_range_is_refused_with_the_range_and_nothing_is_stored) {
    describe_house();
    walk.go_to(Step::house_and_banks);
    walk.hand().click(QStringLiteral("Pad length"));
    for (const char* digit : {"9", "9", "9", "9"}) {
        walk.hand().click(QString::fromLatin1(digit));
    }
    walk.hand().click(QStringLiteral("Done"));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("entry"))) << "the pad closed on 9999 ft";
    EXPECT_FALSE(walk.stored_visit().house.banks.front().length.has_value());
}

TEST_P(WizardWalkTest, a_name_typed_in_one_house_is_chosen_in_the_next) {
    describe_house();
    walk.hand().click(QStringLiteral("Type a name"));
    walk.write(QStringLiteral("Name"), QStringLiteral("Jo Penn"));
    walk.hand().click(QStringLiteral("Add the person"));
    walk.hand().click(QStringLiteral("Back"));
    walk.hand().click(QStringLiteral("Back"));
    walk.hand().click(QStringLiteral("New house"));
    walk.write(QStringLiteral("Name of the house"), QStringLiteral("House 2"));
    walk.hand().click(QStringLiteral("Start the visit"));
    EXPECT_TRUE(walk.stored_visit().visit.persons.empty()) << "nobody said who is in this house";
    walk.hand().click(QStringLiteral("Jo Penn"));
    ASSERT_EQ(walk.stored_visit().visit.persons.size(), 1U);
    EXPECT_EQ(walk.stored_visit().visit.persons.front().name, "Jo Penn");
}

TEST_P(WizardWalkTest, switching_units_shows_other_numbers_and_changes_no_entry) {
    describe_house();
    walk.go_to(Step::house_and_banks);
    walk.enter(QStringLiteral("Pad length"), QStringLiteral("80"), QStringLiteral("ft"));
    EXPECT_EQ(walk.hand().find(QStringLiteral("Pad length")).description, "80 ft");
    walk.hand().click(QStringLiteral("Language, units and light"));
    walk.hand().click(QStringLiteral("°C, m, L/min"));
    walk.hand().click(QStringLiteral("Done"));
    // 80 ft are 24.384 m exactly.
    EXPECT_EQ(walk.hand().find(QStringLiteral("Pad length")).description, "24.38 m");
    EXPECT_EQ(walk.stored_visit().house.banks.front().length->text(), "80 ft");
}

INSTANTIATE_TEST_SUITE_P(Screens, WizardWalkTest,
                         testing::Values(QSize(1024, 600), QSize(800, 1280), QSize(1920, 1080)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait"
                                    : size.param.width() > 1024              ? "desk"
                                                                             : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
