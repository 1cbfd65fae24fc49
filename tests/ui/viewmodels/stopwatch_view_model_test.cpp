// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/stopwatch_view_model.h"

#include <array>

#include "desk.h"
#include "viewmodels/pump_off.h"

namespace wetfront::ui {
namespace {

class StopwatchViewModelTest : public Desk {
protected:
    void mark_after(double seconds) {
        clock_.advance_ms(static_cast<std::int64_t>(seconds * 1000.0));
        stopwatch_.mark();
    }
    void mark_other(int index) {
        stopwatch_.chooseOther(index);
        stopwatch_.mark();
    }

    VisitRecord record_{context_, file_, nullptr};
    StopwatchViewModel stopwatch_{record_, presses_, {}, nullptr};
};

TEST_F(StopwatchViewModelTest, a_mark_is_in_the_journal_when_the_screen_says_so) {
    std::size_t stored_then = 0;
    QObject::connect(&stopwatch_, &StopwatchViewModel::marked, &stopwatch_,
                     [&](const QString&) { stored_then = stored().marks.size(); });
    mark_after(0);
    EXPECT_EQ(stored_then, 1U);
}

TEST_F(StopwatchViewModelTest, the_start_carries_what_was_said_about_it) {
    stopwatch_.setFans(QStringLiteral("yes"));
    stopwatch_.setStartedBy(QStringLiteral("helper on signal"));
    stopwatch_.setPads(QStringLiteral("not dry"));
    mark_after(0);
    const auto start = stored().marks.front();
    EXPECT_EQ(start.kind, MarkKind::pump_start);
    EXPECT_EQ(start.fans_running, true);
    EXPECT_EQ(start.started_by, StartedBy::helper_signal);
    EXPECT_EQ(start.pads, PadsAtStart::not_dry);
}

TEST_F(StopwatchViewModelTest, time_runs_on_the_clock_that_counts_while_the_tablet_sleeps) {
    mark_after(0);
    clock_.boot.boot_ns += 75'200'000'000;  // the wall clock and the monotonic clock stand still
    EXPECT_EQ(stopwatch_.elapsedText(), QStringLiteral("1:15.2"));
}

TEST_F(StopwatchViewModelTest, a_step_of_the_wall_clock_changes_no_reading) {
    mark_after(0);
    clock_.wall.unix_ms += 3'600'000;
    mark_after(40.0);
    EXPECT_DOUBLE_EQ(in_seconds(record_.timings().banks.front().fill->mean), 40.0);
}

TEST_F(StopwatchViewModelTest, after_a_restart_of_the_machine_the_time_is_shown_as_unverified) {
    mark_after(0);
    clock_.boot = {"boot-b", 5'000'000'000};
    clock_.wall.unix_ms += 60'000;
    StopwatchViewModel again{record_, presses_, {}, nullptr};
    EXPECT_TRUE(again.unverified());
    EXPECT_EQ(again.elapsedText(), QStringLiteral("1:00.0"));
}

TEST_F(StopwatchViewModelTest, after_a_restart_of_the_machine_starting_again_comes_first) {
    mark_after(0);
    clock_.boot = {"boot-b", 5'000'000'000};
    clock_.wall.unix_ms += 60'000;
    StopwatchViewModel again{record_, presses_, {}, nullptr};
    EXPECT_EQ(again.markText(), QStringLiteral("Pump starts"));
    EXPECT_EQ(again.otherMarks().front().toMap().value(QStringLiteral("text")).toString(),
              QStringLiteral("Water at the far end of %1").arg(bank_name(0)));
    again.chooseOther(0);
    again.mark();
    EXPECT_EQ(record_.timings().readings.front().not_used, NotUsed::unverified);
    EXPECT_FALSE(record_.timings().banks.front().fill.has_value());
    again.mark();
    clock_.advance_ms(40'000);
    again.mark();
    EXPECT_DOUBLE_EQ(in_seconds(record_.timings().banks.front().fill->mean), 40.0);
}

TEST_F(StopwatchViewModelTest, a_sleep_of_any_length_and_any_step_of_the_wall_clock_leave_the_reading_right) {
    constexpr std::int64_t hour_ms = 3'600'000;
    for (const std::int64_t sleep_ms : std::array<std::int64_t, 5>{1, 1'000, 60'000, hour_ms, 23 * hour_ms}) {
        for (const std::int64_t step_ms :
             std::array<std::int64_t, 4>{-hour_ms, 0, hour_ms, 1461 * 24 * hour_ms}) {
            VisitRecord record{context_, file_, nullptr};
            StopwatchViewModel stopwatch{record, presses_, {}, nullptr};
            stopwatch.mark();
            clock_.advance_ms(30'000);
            clock_.boot.boot_ns += sleep_ms * 1'000'000;  // the monotonic clock stands meanwhile
            clock_.wall.unix_ms += sleep_ms + step_ms;
            clock_.wall.utc_offset_minutes = step_ms == 0 ? 600 : -300;
            clock_.advance_ms(10'000);
            stopwatch.mark();
            ASSERT_TRUE(record.timings().banks.front().fill.has_value());
            EXPECT_DOUBLE_EQ(in_seconds(record.timings().banks.front().fill->mean),
                             40.0 + static_cast<double>(sleep_ms) / 1e3)
                << sleep_ms << ' ' << step_ms;
        }
    }
}

TEST_F(StopwatchViewModelTest, a_press_that_cannot_be_is_shown_as_such_and_the_button_asks_again) {
    mark_after(0);
    const QString water = stopwatch_.markText();
    mark_after(0.1);
    mark_after(1.0);
    EXPECT_EQ(stopwatch_.markText(), water);
    const auto marks = stopwatch_.lastMarks();
    EXPECT_EQ(marks[0].toMap().value(QStringLiteral("doubt")).toString(),
              QStringLiteral("too soon for water: not used"));
    EXPECT_EQ(marks[1].toMap().value(QStringLiteral("doubt")).toString(),
              QStringLiteral("pressed twice: not used"));
    EXPECT_EQ(marks[2].toMap().value(QStringLiteral("doubt")).toString(), QString{});
    EXPECT_EQ(stored().marks.size(), 3U);
    mark_after(40.0);
    EXPECT_NEAR(in_seconds(record_.timings().banks.front().fill->mean), 41.1, 1e-9);
}

TEST_F(StopwatchViewModelTest, the_same_marks_give_the_same_page_after_a_restart_of_the_program) {
    mark_after(0);
    mark_after(40.0);
    VisitRecord reopened{context_, store_.visit_file(file_.visit.id).value(), nullptr};
    StopwatchViewModel again{reopened, presses_, {}, nullptr};
    EXPECT_EQ(again.markText(), stopwatch_.markText());
    EXPECT_TRUE(again.running());
}

TEST_F(StopwatchViewModelTest, already_there_is_kept_as_an_upper_bound_and_not_used) {
    mark_after(0);
    clock_.advance_ms(50'000);
    stopwatch_.setAlreadyThere(true);
    EXPECT_EQ(stored().marks.size(), 1U) << "ended a reading without the mark button";
    stopwatch_.mark();
    ASSERT_EQ(record_.timings().readings.size(), 1U);
    EXPECT_EQ(record_.timings().readings.front().not_used, NotUsed::upper_bound);
    EXPECT_FALSE(record_.timings().banks.front().fill.has_value());
    EXPECT_FALSE(stopwatch_.alreadyThere()) << "it was said of one press";
}

TEST_F(StopwatchViewModelTest, choosing_something_else_marks_nothing_and_holds_for_the_next_press) {
    mark_after(0);
    const QString usual = stopwatch_.markText();
    const auto stop = static_cast<int>(stopwatch_.otherMarks().size()) - 1;
    stopwatch_.chooseOther(stop);
    EXPECT_EQ(stored().marks.size(), 1U) << "ended a reading without the mark button";
    EXPECT_EQ(stopwatch_.markText(), QStringLiteral("Pump stops"));
    EXPECT_EQ(stopwatch_.otherMarks()[stop].toMap().value(QStringLiteral("text")).toString(), usual);
    mark_after(90.0);
    EXPECT_EQ(stored().marks.back().kind, MarkKind::pump_stop);
    EXPECT_EQ(stored().marks.back().at, clock_.boot_now());
    stopwatch_.undo();
    EXPECT_EQ(stopwatch_.markText(), usual) << "the choice outlived its press";
}

TEST_F(StopwatchViewModelTest, a_choice_is_taken_back_by_choosing_what_is_usual) {
    mark_after(0);
    const QString usual = stopwatch_.markText();
    stopwatch_.chooseOther(0);
    ASSERT_NE(stopwatch_.markText(), usual);
    stopwatch_.chooseOther(0);
    EXPECT_EQ(stopwatch_.markText(), usual);
}

TEST_F(StopwatchViewModelTest, a_start_that_was_chosen_stays_chosen_while_it_is_said_how_wet_the_pads_are) {
    mark_after(0);
    clock_.advance_ms(90'000);
    mark_other(static_cast<int>(stopwatch_.otherMarks().size()) - 1);  // stop
    stopwatch_.chooseOther(static_cast<int>(stopwatch_.otherMarks().size()) - 1);
    ASSERT_TRUE(stopwatch_.asksStart());
    stopwatch_.setPads(QStringLiteral("not dry"));
    EXPECT_EQ(stopwatch_.markText(), QStringLiteral("Pump starts"));
}

TEST_F(StopwatchViewModelTest, that_the_disk_takes_nothing_rebuilds_no_list) {
    int changes = 0;
    QObject::connect(&stopwatch_, &StopwatchViewModel::changed, &stopwatch_, [&] { ++changes; });
    emit record_.storage_problem_changed();
    EXPECT_EQ(changes, 0);
}

TEST_F(StopwatchViewModelTest, undo_and_redo_keep_the_mark_in_the_journal) {
    mark_after(0);
    mark_after(40.0);
    stopwatch_.undo();
    EXPECT_EQ(stored().marks.size(), 2U);
    EXPECT_TRUE(stored().marks.back().undone);
    EXPECT_TRUE(record_.timings().readings.empty());
    stopwatch_.redo();
    EXPECT_FALSE(stored().marks.back().undone);
    EXPECT_EQ(record_.timings().readings.size(), 1U);
}

TEST_F(StopwatchViewModelTest, a_mark_made_after_an_undo_ends_what_can_be_redone) {
    mark_after(0);
    mark_after(40.0);
    stopwatch_.undo();
    mark_after(2.0);
    EXPECT_EQ(stopwatch_.redoText(), QString{});
}

TEST_F(StopwatchViewModelTest, a_reading_set_aside_stays_in_sight_and_can_be_used_again) {
    mark_after(0);
    mark_after(40.0);
    const QString end_mark =
        stopwatch_.readings().front().toMap().value(QStringLiteral("endMark")).toString();
    stopwatch_.setAside(end_mark, QStringLiteral("pressed late"));
    EXPECT_FALSE(stopwatch_.readings().front().toMap().value(QStringLiteral("used")).toBool());
    EXPECT_EQ(stored().set_aside.size(), 1U);
    stopwatch_.useAgain(end_mark);
    EXPECT_TRUE(stopwatch_.readings().front().toMap().value(QStringLiteral("used")).toBool());
}

TEST_F(StopwatchViewModelTest, handing_a_pump_back_is_a_mark_that_ends_its_test) {
    mark_after(0);
    clock_.advance_ms(10'000);
    stopwatch_.handBack();
    EXPECT_EQ(stored().marks.back().kind, MarkKind::back_on_automatic);
    EXPECT_FALSE(stopwatch_.running());
    EXPECT_EQ(stopwatch_.elapsedText(), QString{});
    EXPECT_TRUE(stopwatch_.asksStart());
    EXPECT_FALSE(stopwatch_.canHandBack());
}

TEST_F(StopwatchViewModelTest, handing_one_pump_back_leaves_the_other_off_and_ticks_no_line) {
    Pump second = file_.house.pumps.front();
    second.id = Id{"second-pump"};
    record_.house().pumps.push_back(second);
    ASSERT_TRUE(record_.save_house());
    for (const auto& pump : {file_.house.pumps.front().id, second.id}) {
        Mark stop;
        stop.id = store_.new_id();
        stop.kind = MarkKind::pump_stop;
        stop.pump = pump;
        stop.at = clock_.boot_now();
        stop.wall = clock_.wall_now();
        record_.add_mark(stop);
    }
    ASSERT_EQ(pumps_off(record_.file(), clock_).size(), 2U);
    stopwatch_.choosePump(QString::fromStdString(second.id.text));
    clock_.advance_ms(10'000);
    stopwatch_.handBack();
    const auto off = pumps_off(record_.file(), clock_);
    ASSERT_EQ(off.size(), 1U);
    EXPECT_EQ(off.front().since.pump, file_.house.pumps.front().id);
    EXPECT_FALSE(stored().ticked("leaving.pumps_automatic"));
}

// Half the expected fill time of 40 s has passed: water should be half way.
TEST_F(StopwatchViewModelTest, the_picture_shows_water_where_the_first_reading_says_it_should_be) {
    mark_after(0);
    mark_after(40.0);
    mark_other(static_cast<int>(stopwatch_.otherMarks().size()) - 1);  // stop
    clock_.advance_ms(60'000);
    mark_other(static_cast<int>(stopwatch_.otherMarks().size()) - 1);  // start
    ASSERT_TRUE(stopwatch_.running());
    clock_.advance_ms(20'000);
    EXPECT_NEAR(stopwatch_.headerFront(), 0.5, 1e-9);
}

TEST_F(StopwatchViewModelTest, a_signed_visit_takes_no_mark) {
    record_.visit().signatures.push_back({{"Jo Penn", "technician"}, clock_.wall_now()});
    ASSERT_TRUE(record_.save_visit());
    stopwatch_.mark();
    EXPECT_TRUE(stored().marks.empty());
    EXPECT_FALSE(stopwatch_.canMark());
}

}  // namespace
}  // namespace wetfront::ui
