// SPDX-License-Identifier: Apache-2.0
#include "timing/stopwatch_guide.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id near_bank{"near"};
const Id far_bank{"far"};
const std::vector<Id> two_banks{near_bank, far_bank};

Mark mark(MarkKind kind, const Id& bank = {}) {
    Mark made;
    made.kind = kind;
    made.pump = pump;
    made.bank = bank;
    return made;
}

PumpState state(bool running, std::vector<Mark> since = {}) {
    return {pump, running, mark(running ? MarkKind::pump_start : MarkKind::pump_stop), std::move(since)};
}

PossibleMark next(const PumpState& at, const Id& bank, PadsAtStart start = PadsAtStart::dry) {
    return stopwatch_guide(at, two_banks, bank, start).next;
}

TEST(StopwatchGuideTest, a_pump_that_was_never_marked_is_started) {
    EXPECT_EQ(next({pump, false, std::nullopt, {}}, near_bank), (PossibleMark{MarkKind::pump_start, {}}));
}

TEST(StopwatchGuideTest, a_wet_start_begins_with_the_stop_of_a_dripping_pump) {
    EXPECT_EQ(next({pump, false, std::nullopt, {}}, near_bank, PadsAtStart::dripping),
              (PossibleMark{MarkKind::pump_stop, {}}));
}

TEST(StopwatchGuideTest, after_the_stop_of_a_wet_start_the_pump_starts_again) {
    EXPECT_EQ(next(state(false), near_bank, PadsAtStart::dripping), (PossibleMark{MarkKind::pump_start, {}}));
}

TEST(StopwatchGuideTest, water_at_the_far_end_of_the_bank_at_hand_comes_first) {
    EXPECT_EQ(next(state(true), far_bank), (PossibleMark{MarkKind::water_at_far_end, far_bank}));
}

TEST(StopwatchGuideTest, the_drip_follows_the_water_of_the_same_bank) {
    EXPECT_EQ(next(state(true, {mark(MarkKind::water_at_far_end, far_bank)}), far_bank),
              (PossibleMark{MarkKind::far_end_drips, far_bank}));
}

TEST(StopwatchGuideTest, a_bank_that_drips_sends_the_person_to_the_other_bank) {
    EXPECT_EQ(next(state(true, {mark(MarkKind::far_end_drips, far_bank)}), far_bank),
              (PossibleMark{MarkKind::water_at_far_end, near_bank}));
}

TEST(StopwatchGuideTest, the_pump_stops_when_every_bank_drips) {
    const auto dripping =
        state(true, {mark(MarkKind::far_end_drips, far_bank), mark(MarkKind::far_end_drips, near_bank)});
    EXPECT_EQ(next(dripping, far_bank), (PossibleMark{MarkKind::pump_stop, {}}));
}

TEST(StopwatchGuideTest, dripping_ends_before_a_patch_dries) {
    EXPECT_EQ(next(state(false), near_bank), (PossibleMark{MarkKind::drip_ends, near_bank}));
    EXPECT_EQ(next(state(false, {mark(MarkKind::drip_ends, near_bank)}), near_bank),
              (PossibleMark{MarkKind::drip_ends, far_bank}));
    const std::vector<Mark> both{mark(MarkKind::drip_ends, near_bank), mark(MarkKind::drip_ends, far_bank)};
    EXPECT_EQ(next(state(false, both), near_bank), (PossibleMark{MarkKind::first_dry_patch, near_bank}));
}

TEST(StopwatchGuideTest, a_pump_with_dry_banks_starts_its_next_run) {
    const auto dry =
        state(false, {mark(MarkKind::first_dry_patch, far_bank), mark(MarkKind::first_dry_patch, near_bank)});
    EXPECT_EQ(next(dry, far_bank), (PossibleMark{MarkKind::pump_start, {}}));
    EXPECT_FALSE(is_being_timed(dry, two_banks));
}

TEST(StopwatchGuideTest, a_running_pump_can_be_stopped_at_any_time) {
    const auto guide = stopwatch_guide(state(true), two_banks, near_bank, PadsAtStart::dry);
    EXPECT_NE(std::find(guide.others.begin(), guide.others.end(), PossibleMark{MarkKind::pump_stop, {}}),
              guide.others.end());
}

TEST(StopwatchGuideTest, a_bank_that_still_dries_is_being_timed) {
    EXPECT_TRUE(is_being_timed(state(false, {mark(MarkKind::first_dry_patch, near_bank)}), two_banks));
}

}  // namespace
}  // namespace wetfront
