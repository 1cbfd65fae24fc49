// SPDX-License-Identifier: Apache-2.0
#include "timing/doubtful_presses.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id bank{"bank"};
const std::vector<BankOfPump> banks{{bank, pump}};

Mark mark(const char* id, MarkKind kind, double at_s) {
    Mark made;
    made.id = Id{id};
    made.kind = kind;
    made.pump = pump;
    if (kind != MarkKind::pump_start && kind != MarkKind::pump_stop && kind != MarkKind::back_on_automatic) {
        made.bank = bank;
    }
    made.at = {"boot", std::llround(at_s * 1e9)};
    made.wall = {1'782'900'000'000 + std::llround(at_s * 1e3), 0};
    made.pads = PadsAtStart::dry;
    made.fans_running = true;
    return made;
}

using Doubts = std::map<Id, PressDoubt>;

TEST(DoubtfulPressesTest, a_run_as_it_really_happens_raises_no_doubt) {
    const std::vector<Mark> marks{
        mark("start", MarkKind::pump_start, 0.0),      mark("water", MarkKind::water_at_far_end, 45.0),
        mark("drips", MarkKind::far_end_drips, 130.0), mark("stop", MarkKind::pump_stop, 140.0),
        mark("ends", MarkKind::drip_ends, 230.0),      mark("dry", MarkKind::first_dry_patch, 1500.0),
        mark("again", MarkKind::pump_start, 1500.4),
    };
    EXPECT_EQ(doubtful_presses(marks, banks), Doubts{});
}

struct Soonest {
    MarkKind switching;
    MarkKind kind;
    double seconds;
};

class SoonestTest : public testing::TestWithParam<Soonest> {};

// On both sides of the limit that doubtful_presses.h states.
TEST_P(SoonestTest, a_press_before_water_can_do_it_is_doubted_and_one_after_is_not) {
    const auto& [switching, kind, seconds] = GetParam();
    const std::vector<Mark> early{mark("switched", switching, 10.0), mark("seen", kind, 9.99 + seconds)};
    EXPECT_EQ(doubtful_presses(early, banks), (Doubts{{Id{"seen"}, PressDoubt::too_soon}}));
    const std::vector<Mark> late{mark("switched", switching, 10.0), mark("seen", kind, 10.0 + seconds)};
    EXPECT_EQ(doubtful_presses(late, banks), Doubts{});
}

INSTANTIATE_TEST_SUITE_P(EachSortOfMark, SoonestTest,
                         testing::Values(Soonest{MarkKind::pump_start, MarkKind::water_at_far_end, 2.0},
                                         Soonest{MarkKind::pump_start, MarkKind::far_end_drips, 3.0},
                                         Soonest{MarkKind::pump_stop, MarkKind::drip_ends, 1.0},
                                         Soonest{MarkKind::pump_stop, MarkKind::first_dry_patch, 10.0}));

TEST(DoubtfulPressesTest, two_fingers_on_one_button_are_one_press) {
    const std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                                  mark("water", MarkKind::water_at_far_end, 45.0),
                                  mark("second", MarkKind::far_end_drips, 45.0)};
    EXPECT_EQ(doubtful_presses(marks, banks), (Doubts{{Id{"second"}, PressDoubt::second_press}}));
}

TEST(DoubtfulPressesTest, a_pump_cannot_be_started_and_stopped_by_one_touch) {
    const std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                                  mark("stop", MarkKind::pump_stop, 0.2)};
    EXPECT_EQ(doubtful_presses(marks, banks), (Doubts{{Id{"stop"}, PressDoubt::second_press}}));
    EXPECT_TRUE(pump_states(marks, std::vector<Id>{pump}).front().running);
}

TEST(DoubtfulPressesTest, a_doubtful_press_is_kept_as_a_reading_that_is_not_used) {
    const std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                                  mark("splash", MarkKind::water_at_far_end, 1.2),
                                  mark("water", MarkKind::water_at_far_end, 45.0)};
    const auto readings = readings_of(marks, banks);
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].not_used, NotUsed::too_quick);
    EXPECT_EQ(readings[1].not_used, std::nullopt);
    EXPECT_EQ(in_seconds(readings[1].value), 45.0);
}

TEST(DoubtfulPressesTest, the_stopwatch_goes_on_waiting_for_what_a_doubtful_press_said) {
    const std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                                  mark("splash", MarkKind::water_at_far_end, 1.2)};
    EXPECT_TRUE(pump_states(marks, std::vector<Id>{pump}).front().marks_since.empty());
}

TEST(DoubtfulPressesTest, an_undone_press_is_neither_doubted_nor_a_reason_to_doubt) {
    std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                            mark("wrong", MarkKind::water_at_far_end, 45.0),
                            mark("right", MarkKind::water_at_far_end, 45.2)};
    marks[1].undone = true;
    EXPECT_EQ(doubtful_presses(marks, banks), Doubts{});
}

TEST(DoubtfulPressesTest, what_was_there_already_may_be_marked_at_once) {
    std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                            mark("water", MarkKind::water_at_far_end, 0.8)};
    marks[1].seen = Seen::already_there;
    EXPECT_EQ(doubtful_presses(marks, banks), Doubts{});
}

TEST(DoubtfulPressesTest, across_a_restart_of_the_machine_nobody_can_tell) {
    std::vector<Mark> marks{mark("start", MarkKind::pump_start, 0.0),
                            mark("water", MarkKind::water_at_far_end, 1.0)};
    marks[1].at.boot_id = "next boot";
    EXPECT_EQ(doubtful_presses(marks, banks), Doubts{});
}

}  // namespace
}  // namespace wetfront
