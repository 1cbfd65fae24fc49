// SPDX-License-Identifier: Apache-2.0
#include "timing/proof_marks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id bank_a{"bank-a"};
const Id bank_b{"bank-b"};
const std::vector<BankOfPump> banks{{bank_a, pump}, {bank_b, pump}};
constexpr auto water = MarkKind::water_at_far_end;
constexpr auto drips = MarkKind::far_end_drips;
constexpr auto starts = MarkKind::pump_start;
constexpr auto stops = MarkKind::pump_stop;

/// Marks of a proof run, in seconds after the machine's start.
class Watch {
public:
    Mark& mark(double at, MarkKind kind, const Id& bank = {}) {
        Mark mark;
        mark.id = Id{"m" + std::to_string(marks.size() + 1)};
        mark.kind = kind;
        mark.pump = pump;
        mark.bank = bank;
        mark.at = {"boot-1", std::llround(at * 1e9)};
        mark.wall = {1'782'900'000'000 + std::llround(at * 1e3), -300};
        mark.timed_by = TimedBy::event_stamp;
        mark.started_by = StartedBy::controller;
        mark.proof = true;
        marks.push_back(mark);
        return marks.back();
    }
    [[nodiscard]] std::vector<WatchedRun> runs() const { return watched_runs(marks, banks); }

    std::vector<Mark> marks;
};

std::optional<double> s(const std::optional<Duration>& time) {
    return time ? std::optional{in_seconds(*time)} : std::nullopt;
}

TEST(ProofMarksTest, two_cycles_give_a_period_and_two_on_times_fills_and_drips) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(141.0, water, bank_a);
    watch.mark(160.0, drips, bank_a);
    watch.mark(190.0, stops);
    watch.mark(400.5, starts);
    watch.mark(442.0, water, bank_a);
    watch.mark(470.0, drips, bank_a);
    watch.mark(491.5, stops);
    std::ranges::reverse(watch.marks);
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 2U);
    EXPECT_EQ(s(runs[0].period), 300.5);
    EXPECT_EQ(s(runs[0].on_time), 90.0);
    EXPECT_EQ(s(runs[0].at(bank_a)->fill), 41.0);
    EXPECT_EQ(s(runs[0].at(bank_a)->drip), 60.0);
    EXPECT_EQ(s(runs[1].period), std::nullopt) << "no third start";
    EXPECT_EQ(s(runs[1].on_time), 91.0);
    EXPECT_EQ(s(runs[1].at(bank_a)->fill), 41.5);
    EXPECT_EQ(s(runs[1].at(bank_a)->drip), 69.5);
    EXPECT_EQ(runs[0].at(bank_b), nullptr);
    EXPECT_TRUE(runs[0].by_signal);
}

TEST(ProofMarksTest, marks_of_the_test_are_no_proof) {
    Watch watch;
    watch.mark(100.0, starts).proof = false;
    watch.mark(141.0, water, bank_a).proof = false;
    watch.mark(190.0, stops).proof = false;
    EXPECT_TRUE(watch.runs().empty());
}

TEST(ProofMarksTest, what_was_taken_back_did_not_happen) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(120.0, water, bank_a).undone = true;
    watch.mark(141.0, water, bank_a);
    watch.mark(150.0, stops).undone = true;
    watch.mark(190.0, stops);
    watch.mark(250.0, starts).undone = true;
    watch.mark(400.0, starts);
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 2U);
    EXPECT_EQ(s(runs[0].at(bank_a)->fill), 41.0);
    EXPECT_EQ(s(runs[0].on_time), 90.0);
    EXPECT_EQ(s(runs[0].period), 300.0);
}

TEST(ProofMarksTest, a_stop_or_water_before_any_start_belongs_to_no_run) {
    Watch watch;
    watch.mark(50.0, stops);
    watch.mark(60.0, water, bank_a);
    watch.mark(100.0, starts);
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(s(runs[0].on_time), std::nullopt);
    EXPECT_TRUE(runs[0].banks.empty());
}

TEST(ProofMarksTest, the_first_stop_and_the_first_press_count) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(141.0, water, bank_a);
    watch.mark(155.0, water, bank_a);
    watch.mark(190.0, stops);
    watch.mark(200.0, stops);
    const auto runs = watch.runs();
    EXPECT_EQ(s(runs[0].at(bank_a)->fill), 41.0);
    EXPECT_EQ(s(runs[0].on_time), 90.0);
}

TEST(ProofMarksTest, a_second_press_within_three_tenths_of_a_second_is_no_second_event) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(100.2, starts);
    watch.mark(100.25, stops);
    watch.mark(141.0, water, bank_a);
    watch.mark(141.2, drips, bank_a);
    watch.mark(141.25, water, bank_b);
    watch.mark(190.0, stops);
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(s(runs[0].on_time), 90.0);
    EXPECT_EQ(s(runs[0].at(bank_a)->drip), std::nullopt);
    EXPECT_EQ(s(runs[0].at(bank_b)->fill), 41.25) << "another bank is another event";
}

TEST(ProofMarksTest, a_drip_marked_before_the_water_takes_both_with_it) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(130.0, drips, bank_a);
    watch.mark(141.0, water, bank_a);
    watch.mark(142.0, water, bank_b);
    const auto runs = watch.runs();
    EXPECT_EQ(s(runs[0].at(bank_a)->drip), std::nullopt);
    EXPECT_EQ(s(runs[0].at(bank_a)->fill), std::nullopt);
    EXPECT_EQ(s(runs[0].at(bank_b)->fill), 42.0);
}

TEST(ProofMarksTest, a_drip_after_the_stop_still_belongs_to_that_run) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(190.0, stops);
    watch.mark(205.0, drips, bank_a);
    EXPECT_EQ(s(watch.runs()[0].at(bank_a)->drip), 105.0);
}

TEST(ProofMarksTest, what_nobody_saw_happen_gives_no_time) {
    Watch watch;
    watch.mark(100.0, starts).seen = Seen::already_there;
    watch.mark(141.0, water, bank_a);
    watch.mark(190.0, stops);
    watch.mark(400.0, starts);
    watch.mark(441.0, water, bank_a).seen = Seen::already_there;
    watch.mark(490.0, stops).seen = Seen::already_there;
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 2U);
    EXPECT_EQ(s(runs[0].period), std::nullopt);
    EXPECT_EQ(s(runs[0].on_time), std::nullopt);
    EXPECT_EQ(s(runs[0].at(bank_a)->fill), std::nullopt);
    EXPECT_EQ(s(runs[1].on_time), std::nullopt);
    EXPECT_EQ(s(runs[1].at(bank_a)->fill), std::nullopt);
}

TEST(ProofMarksTest, a_restart_of_the_machine_leaves_no_time_across_it) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(190.0, stops).at.boot_id = "boot-2";
    EXPECT_EQ(s(watch.runs()[0].on_time), std::nullopt);
}

TEST(ProofMarksTest, switching_by_hand_in_between_breaks_the_row_of_runs) {
    for (const auto kind : {starts, stops, MarkKind::back_on_automatic}) {
        Watch watch;
        watch.mark(100.0, starts);
        watch.mark(190.0, stops);
        watch.mark(250.0, kind).proof = false;
        watch.mark(400.0, starts);
        const auto runs = watch.runs();
        ASSERT_EQ(runs.size(), 2U) << enum_name(kind);
        EXPECT_EQ(s(runs[0].period), std::nullopt) << enum_name(kind);
        EXPECT_EQ(s(runs[0].on_time), 90.0) << enum_name(kind);
    }
}

TEST(ProofMarksTest, each_pump_has_its_own_runs) {
    Watch watch;
    watch.mark(100.0, starts);
    watch.mark(130.0, starts).pump = Id{"other"};
    watch.mark(190.0, stops);
    watch.mark(400.0, starts);
    watch.mark(430.0, starts).pump = Id{"other"};
    const auto runs = watch.runs();
    ASSERT_EQ(runs.size(), 4U);
    EXPECT_EQ(s(runs[0].period), 300.0);
    EXPECT_EQ(s(runs[1].period), 300.0);
    EXPECT_EQ(s(runs[1].on_time), std::nullopt);
}

}  // namespace
}  // namespace wetfront
