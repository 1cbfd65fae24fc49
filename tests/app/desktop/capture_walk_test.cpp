// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QPointingDevice>
#include <QTest>
#include <memory>

#include "demo/demo.h"
#include "support/full_disk.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The stopwatch page in a real window, with a pump that runs.
class CaptureWalkTest : public testing::Test {
protected:
    void SetUp() override {
        VisitFile file = example_visit();
        file.visit = Visit{};
        file.visit.id = Id{"visit-at-hand"};
        file.visit.house = file.house.id;
        file.visit.started = walk_.clock().wall_now();
        file.visit.agreement = example_visit().visit.agreement;
        const auto added = walk_.store().add(file);
        ASSERT_TRUE(added) << added.error().text();
        walk_.session().openVisit(QStringLiteral("visit-at-hand"));
        walk_.go_to(Step::time_the_water);
        walk_.mark_after(1.0, QStringLiteral("Pump starts"));
        walk_.pass(40.0);
    }

    [[nodiscard]] StopwatchViewModel& stopwatch() { return *walk_.session().visit()->stopwatch(); }
    [[nodiscard]] std::size_t marks() { return walk_.stored_visit().visit.marks.size(); }
    QQuickWindow& window() { return *walk_.hand().find(stopwatch().markText()).item->window(); }
    QPoint middle_of(const QString& name) { return walk_.hand().find(name).place().center().toPoint(); }
    void lock() { walk_.hand().click(QStringLiteral("Lock the glass: only the mark button and undo")); }
    [[nodiscard]] bool locked() { return walk_.hand().shows(QStringLiteral("locked")); }
    QPoint mark_button() { return middle_of(stopwatch().markText()); }

    Walk walk_{QSize{1024, 600}};
};

TEST_F(CaptureWalkTest, on_locked_glass_nothing_but_the_mark_button_and_undo_takes_a_press) {
    QList<QPoint> places;
    for (const auto& heard : walk_.hand().everything()) {
        if (heard.can_be_pressed() && heard.name != stopwatch().markText()) {
            places.append(heard.place().center().toPoint());
        }
    }
    ASSERT_GT(places.size(), 12);
    lock();
    ASSERT_TRUE(locked());
    const auto before = marks();
    auto& w = window();
    const QRect undo = walk_.hand().find(stopwatch().undoText()).place().toRect();
    const QRect button = walk_.hand().find(stopwatch().markText()).place().toRect();
    for (const auto& place : places) {
        if (!undo.contains(place) && !button.contains(place)) {
            QTest::mouseClick(&w, Qt::LeftButton, Qt::NoModifier, place);
        }
    }
    walk_.hand().key(Qt::Key_Escape);
    walk_.hand().key(Qt::Key_Back);
    walk_.hand().key(Qt::Key_Tab);
    EXPECT_TRUE(locked());
    EXPECT_EQ(marks(), before);
    EXPECT_TRUE(stopwatch().running());
    EXPECT_EQ(walk_.session().visit()->step(), static_cast<int>(Step::time_the_water));
    EXPECT_EQ(walk_.session().place(), QStringLiteral("visit"));
}

TEST_F(CaptureWalkTest, on_locked_glass_the_button_and_the_keys_mark_and_undo_takes_back) {
    lock();
    QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, mark_button());
    EXPECT_EQ(marks(), 2U);
    walk_.pass(60.0);
    walk_.hand().key(Qt::Key_VolumeUp);
    EXPECT_EQ(marks(), 3U);
    walk_.hand().click(stopwatch().undoText());
    EXPECT_TRUE(walk_.stored_visit().visit.marks.back().undone);
    EXPECT_TRUE(locked());
}

TEST_F(CaptureWalkTest, a_touch_does_not_unlock_the_glass_and_a_finger_that_stays_does) {
    lock();
    const auto place = middle_of(QStringLiteral("Hold to unlock"));
    QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, place);
    QTest::qWait(300);
    EXPECT_TRUE(locked());
    QTest::mousePress(&window(), Qt::LeftButton, Qt::NoModifier, place);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !locked(); }, 5000));
    QTest::mouseRelease(&window(), Qt::LeftButton, Qt::NoModifier, place);
    EXPECT_EQ(marks(), 1U);
}

TEST_F(CaptureWalkTest, two_fingers_on_the_button_are_both_kept_and_one_is_used) {
    const std::unique_ptr<QPointingDevice> glass{QTest::createTouchDevice()};
    auto& w = window();
    const auto left = mark_button() - QPoint{60, 0};
    const auto right = mark_button() + QPoint{60, 0};
    QTest::touchEvent(&w, glass.get()).press(0, left);
    walk_.pass(0.1);
    QTest::touchEvent(&w, glass.get()).stationary(0).press(1, right);
    QTest::touchEvent(&w, glass.get()).release(0, left).release(1, right);
    ASSERT_EQ(marks(), 3U);
    const auto& fill = walk_.session().visit()->stopwatch()->readings();
    EXPECT_EQ(fill.size(), 2);
    EXPECT_TRUE(fill[0].toMap().value(QStringLiteral("used")).toBool());
    EXPECT_FALSE(fill[1].toMap().value(QStringLiteral("used")).toBool());
    EXPECT_EQ(stopwatch().lastMarks()[0].toMap().value(QStringLiteral("doubt")).toString(),
              QStringLiteral("pressed twice: not used"));
}

TEST_F(CaptureWalkTest, two_fingers_that_come_down_together_are_no_press_lost) {
    const std::unique_ptr<QPointingDevice> glass{QTest::createTouchDevice()};
    const auto place = mark_button();
    QTest::touchEvent(&window(), glass.get()).press(0, place).press(1, place + QPoint{80, 0});
    QTest::touchEvent(&window(), glass.get()).release(0, place).release(1, place + QPoint{80, 0});
    EXPECT_EQ(marks(), 2U);
}

TEST_F(CaptureWalkTest, a_palm_that_rests_beside_the_button_does_not_keep_a_finger_from_marking) {
    const std::unique_ptr<QPointingDevice> glass{QTest::createTouchDevice()};
    auto& w = window();
    const QPoint palm{w.width() / 2, w.height() / 3};
    QTest::touchEvent(&w, glass.get()).press(0, palm);
    QTest::touchEvent(&w, glass.get()).stationary(0).press(1, mark_button());
    EXPECT_EQ(marks(), 2U);
    QTest::touchEvent(&w, glass.get()).release(0, palm).release(1, mark_button());
    EXPECT_EQ(marks(), 2U);
}

TEST_F(CaptureWalkTest, a_press_that_slides_off_the_button_is_one_press) {
    auto& w = window();
    QTest::mousePress(&w, Qt::LeftButton, Qt::NoModifier, mark_button());
    QTest::mouseMove(&w, QPoint{w.width() / 2, 200});
    QTest::mouseRelease(&w, Qt::LeftButton, Qt::NoModifier, QPoint{w.width() / 2, 200});
    EXPECT_EQ(marks(), 2U);
}

TEST_F(CaptureWalkTest, handing_the_pump_back_asks_while_something_is_timed_and_the_default_goes_on) {
    walk_.hand().click(QStringLiteral("Pump is back on automatic"));
    ASSERT_TRUE(walk_.hand().shows(QStringLiteral("Go on timing")));
    walk_.hand().key(Qt::Key_Return);
    EXPECT_EQ(marks(), 1U);
    EXPECT_TRUE(stopwatch().running());
    walk_.hand().click(QStringLiteral("Pump is back on automatic"));
    walk_.hand().click(QStringLiteral("It is on automatic"));
    EXPECT_FALSE(stopwatch().running());
}

// A key that pressed the button touched last instead of marking would be a press lost.
TEST_F(CaptureWalkTest, a_key_marks_after_any_button_was_touched_and_after_any_panel_closed) {
    std::size_t count = marks();
    const auto expect_a_mark = [&](const char* after) {
        walk_.pass(60.0);
        walk_.hand().key(Qt::Key_Space);
        EXPECT_EQ(marks(), ++count) << "after " << after;
        stopwatch().undo();
    };
    walk_.hand().click(QStringLiteral("Something else happened"));
    expect_a_mark("Something else");
    walk_.hand().click(QStringLiteral("Pump is back on automatic"));
    walk_.hand().key(Qt::Key_Return);
    expect_a_mark("Go on timing");
    walk_.hand().click(QStringLiteral("It was already there"));
    expect_a_mark("Already there");
    const auto place = [&] { return middle_of(QStringLiteral("Hold to unlock")); };
    lock();
    QTest::mousePress(&window(), Qt::LeftButton, Qt::NoModifier, place());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !locked(); }, 5000));
    QTest::mouseRelease(&window(), Qt::LeftButton, Qt::NoModifier, QPoint{5, 5});
    expect_a_mark("unlocking");
    walk_.hand().click(QStringLiteral("Language, units and light"));
    walk_.hand().click(QStringLiteral("Done"));
    expect_a_mark("a panel of another page");
}

TEST_F(CaptureWalkTest, tab_reaches_every_button_and_a_key_presses_it_there) {
    const auto name = QStringLiteral("Something else happened");
    for (int i = 0; i < 40 && walk_.hand().focused() != name; ++i) {
        walk_.hand().key(Qt::Key_Tab);
    }
    ASSERT_EQ(walk_.hand().focused(), name);
    walk_.hand().key(Qt::Key_Space);
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("Pump stops")));
    EXPECT_EQ(marks(), 1U);
}

TEST_F(CaptureWalkTest, no_touch_outside_the_mark_button_ends_a_reading) {
    const QString usual = stopwatch().markText();
    walk_.hand().click(QStringLiteral("It was already there"));
    walk_.hand().click(QStringLiteral("Something else happened"));
    walk_.hand().click(QStringLiteral("Pump stops"));
    EXPECT_EQ(marks(), 1U);
    EXPECT_TRUE(stopwatch().running());
    walk_.mark_after(30.0, QStringLiteral("Pump stops"));
    EXPECT_EQ(walk_.stored_visit().visit.marks.back().kind, MarkKind::pump_stop);
    EXPECT_NE(stopwatch().markText(), usual);
}

TEST_F(CaptureWalkTest, another_key_at_once_and_the_same_key_soon_are_presses) {
    walk_.hand().key(Qt::Key_Space);
    walk_.hand().key(Qt::Key_Return);
    EXPECT_EQ(marks(), 3U);
    QTest::qWait(5);  // a press within the millisecond of the last release is a repeat
    walk_.hand().key(Qt::Key_Return);
    EXPECT_EQ(marks(), 4U);
}

TEST_F(CaptureWalkTest, a_key_whose_release_went_elsewhere_marks_again) {
    QTest::keyPress(&window(), Qt::Key_Space);
    EXPECT_EQ(marks(), 2U);
    walk_.hand().click(QStringLiteral("Pump is back on automatic"));
    QTest::keyRelease(&window(), Qt::Key_Space);
    ASSERT_TRUE(walk_.hand().shows(QStringLiteral("Go on timing")));
    walk_.hand().key(Qt::Key_Escape);
    walk_.hand().key(Qt::Key_Space);
    EXPECT_EQ(marks(), 3U);
}

TEST_F(CaptureWalkTest, back_asks_while_a_pump_runs_and_the_default_stays) {
    walk_.hand().key(Qt::Key_Escape);
    ASSERT_TRUE(walk_.hand().shows(QStringLiteral("Stay here")));
    walk_.hand().key(Qt::Key_Return);
    EXPECT_EQ(walk_.session().place(), QStringLiteral("visit"));
    EXPECT_TRUE(stopwatch().running());
}

TEST_F(CaptureWalkTest, the_machine_is_kept_awake_while_something_is_timed_and_no_longer) {
    EXPECT_TRUE(walk_.awake().kept);
    stopwatch().undo();
    EXPECT_FALSE(walk_.awake().kept);
    stopwatch().redo();
    EXPECT_TRUE(walk_.awake().kept);
    stopwatch().handBack();
    EXPECT_FALSE(walk_.awake().kept);
}

TEST_F(CaptureWalkTest, that_it_cannot_be_kept_awake_is_said_on_the_page) {
    walk_.awake().miss(QStringLiteral("This screen may go dark"));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("This screen may go dark")));
}

TEST_F(CaptureWalkTest, a_press_that_is_not_stored_is_said_kept_and_asked_for_before_the_window_closes) {
    {
        const test::FullDisk full{0};
        walk_.hand().press(stopwatch().markText());
        walk_.hand().release(stopwatch().markText());
        const QString problem = walk_.session().visit()->storageProblem();
        EXPECT_TRUE(problem.startsWith(QStringLiteral("Presses not stored yet: 1.")))
            << problem.toStdString();
        EXPECT_TRUE(walk_.hand().shows(problem));
        EXPECT_FALSE(walk_.session().mayClose());
        ASSERT_TRUE(walk_.hand().shows(QStringLiteral("Stay here")));
        walk_.hand().key(Qt::Key_Return);
        walk_.hand().click(QStringLiteral("Store now"));
        EXPECT_EQ(marks(), 1U);
        walk_.hand().key(Qt::Key_Space);
        EXPECT_EQ(walk_.session().visit()->file().visit.marks.size(), 3U);
    }
    EXPECT_TRUE(
        QTest::qWaitFor([this] { return walk_.session().visit()->storageProblem().isEmpty(); }, 10000));
    EXPECT_EQ(marks(), 3U);
}

TEST_F(CaptureWalkTest, presses_written_elsewhere_are_offered_at_the_next_start_and_put_in) {
    const QString folder = walk_.documents();
    {
        // Room for a small new file, and none at the end of the journal.
        const test::FullDisk full{8192};
        walk_.hand().press(stopwatch().markText());
        walk_.hand().release(stopwatch().markText());
        walk_.hand().click(QStringLiteral("Write elsewhere"));
        walk_.hand().click(QStringLiteral("Write to %1").arg(folder));
        ASSERT_EQ(QDir{folder}.entryList({QStringLiteral("presses-*.json")}).size(), 1);
        ASSERT_EQ(marks(), 1U);
        // As if the program had been killed now: the visit is opened anew from the record.
        walk_.session().openVisit(QStringLiteral("visit-at-hand"));
    }
    walk_.session().look_for_presses();
    walk_.hand().click(QStringLiteral("Put them in"));
    EXPECT_EQ(marks(), 2U);
    EXPECT_EQ(walk_.session().visit()->file().visit.marks.size(), 2U);
    EXPECT_FALSE(walk_.hand().shows(QStringLiteral("Put them in")));
}

}  // namespace
}  // namespace wetfront::ui
