// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "timing/readings.h"

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id bank_a{"bank-a"};
const Id bank_b{"bank-b"};
const Id bank_c{"bank-c"};
const std::vector<BankOfPump> banks{{bank_a, pump}, {bank_b, pump}, {bank_c, pump}};

Mark mark_at(std::size_t number, MarkKind kind, const Id& bank, double at) {
    Mark mark;
    mark.id = Id{"m" + std::to_string(number)};
    mark.kind = kind;
    mark.pump = pump;
    mark.bank = bank;
    mark.at = {"boot-1", std::llround(at * 1e9)};
    mark.wall = {1'782'900'000'000 + std::llround(at * 1e3), -300};
    mark.pads = PadsAtStart::dry;
    mark.fans_running = true;
    return mark;
}

/// Runs one after the other, an hour apart; each ends after 3000 s.
class Runs {
public:
    /// Times from the start of one run, per bank.
    void add(MarkKind kind, const std::vector<std::pair<Id, double>>& ends) {
        const bool after_stop = kind == MarkKind::drip_ends || kind == MarkKind::first_dry_patch;
        const double began = 3600.0 * runs_;
        ++runs_;
        push(MarkKind::pump_start, {}, began);
        if (after_stop) {
            push(MarkKind::pump_stop, {}, began + 100.0);
        }
        for (const auto& [bank, time] : ends) {
            push(kind, bank, began + (after_stop ? 100.0 : 0.0) + time);
        }
        if (!after_stop) {
            push(MarkKind::pump_stop, {}, began + 3000.0);
        }
    }
    void push(MarkKind kind, const Id& bank, double at) {
        marks.push_back(mark_at(marks.size(), kind, bank, at));
    }
    Mark& last_start() {
        for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
            if (mark->kind == MarkKind::pump_start) {
                return *mark;
            }
        }
        return marks.front();
    }
    Mark& last_stop() {
        for (auto mark = marks.rbegin(); mark != marks.rend(); ++mark) {
            if (mark->kind == MarkKind::pump_stop) {
                return *mark;
            }
        }
        return marks.front();
    }
    [[nodiscard]] BankTimings of(const Id& bank, const EventUncertainty& uncertainty = {}) const {
        return *timings_of(marks, banks, {}, uncertainty).of(bank);
    }
    std::vector<Mark> marks;

private:
    int runs_ = 0;
};

constexpr auto water = MarkKind::water_at_far_end;
constexpr auto drips = MarkKind::far_end_drips;
constexpr auto dry_patch = MarkKind::first_dry_patch;

TEST(TimingsTest, a_bank_has_the_mean_of_its_readings) {
    Runs runs;
    for (const double fill : {43.0, 45.0, 47.0}) {
        runs.add(water, {{bank_a, fill}});
    }
    const auto timings = runs.of(bank_a);
    ASSERT_TRUE(timings.fill);
    EXPECT_EQ(timings.fill->count, 3);
    EXPECT_DOUBLE_EQ(in_seconds(timings.fill->mean), 45.0);
    EXPECT_DOUBLE_EQ(in_seconds(*timings.fill->standard_deviation), 2.0);
    EXPECT_EQ(timings.wet_through, std::nullopt);
    EXPECT_EQ(timings.wetting, std::nullopt);
}

TEST(TimingsTest, banks_come_in_the_order_given_and_unknown_ones_are_not_found) {
    const auto visit = timings_of({}, banks);
    ASSERT_EQ(visit.banks.size(), 3U);
    EXPECT_EQ(visit.banks[1].bank, bank_b);
    EXPECT_EQ(visit.banks[1].pump, pump);
    EXPECT_EQ(visit.banks[1].fill, std::nullopt);
    EXPECT_EQ(visit.of(Id{"nowhere"}), nullptr);
}

TEST(TimingsTest, the_systematic_part_is_the_hand_and_what_seeing_the_event_adds) {
    // By hand from the standard uncertainties given: 3, 4 and 12 s, so that the sums in quadrature are whole.
    const EventUncertainty u{3.0_s, 4.0_s, 12.0_s, 0.05, 0.05};
    const auto systematic = [&](MarkKind kind, StartedBy by,
                                std::optional<TimingResult> BankTimings::*member) {
        Runs runs;
        runs.add(kind, {{bank_a, 50.0}});
        runs.last_start().started_by = by;
        runs.last_stop().started_by = by;
        return in_seconds((runs.of(bank_a, u).*member)->systematic);
    };
    EXPECT_DOUBLE_EQ(systematic(water, StartedBy::me_here, &BankTimings::fill), 3.0);
    EXPECT_DOUBLE_EQ(systematic(water, StartedBy::me_then_walk, &BankTimings::fill), 3.0);
    EXPECT_DOUBLE_EQ(systematic(water, StartedBy::helper_signal, &BankTimings::fill), std::sqrt(153.0));
    EXPECT_DOUBLE_EQ(systematic(water, StartedBy::controller, &BankTimings::fill), std::sqrt(153.0));
    EXPECT_DOUBLE_EQ(systematic(drips, StartedBy::me_here, &BankTimings::wet_through), 5.0);
    EXPECT_DOUBLE_EQ(systematic(drips, StartedBy::helper_signal, &BankTimings::wet_through), 13.0);
    EXPECT_DOUBLE_EQ(systematic(MarkKind::drip_ends, StartedBy::me_here, &BankTimings::run_off), 5.0);
    EXPECT_DOUBLE_EQ(systematic(MarkKind::drip_ends, StartedBy::controller, &BankTimings::run_off), 13.0);
    EXPECT_DOUBLE_EQ(systematic(dry_patch, StartedBy::me_here, &BankTimings::dry_out), 5.0);
    EXPECT_DOUBLE_EQ(systematic(dry_patch, StartedBy::helper_signal, &BankTimings::dry_out), 13.0);
}

TEST(TimingsTest, run_off_asks_who_stopped_the_pump_and_fill_who_started_it) {
    Runs runs;
    runs.add(MarkKind::drip_ends, {{bank_a, 50.0}});
    runs.last_start().started_by = StartedBy::helper_signal;
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a).run_off->systematic), std::hypot(0.1, 2.0));
}

TEST(TimingsTest, a_long_dry_out_is_uncertain_by_a_share_of_itself) {
    const EventUncertainty u{3.0_s, 4.0_s, 12.0_s, 0.05, 0.05};
    Runs runs;
    runs.add(dry_patch, {{bank_a, 1600.0}});
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).dry_out->systematic), std::hypot(3.0, 80.0));
}

TEST(TimingsTest, the_halves_of_a_wet_start_differ_in_what_is_seen) {
    const EventUncertainty u{3.0_s, 4.0_s, 12.0_s, 0.05, 0.05};
    Runs runs;
    runs.push(MarkKind::pump_start, {}, 0.0);
    runs.push(MarkKind::pump_stop, {}, 300.0);
    runs.push(MarkKind::pump_start, {}, 480.0);
    runs.marks.back().pads = PadsAtStart::dripping;
    runs.push(drips, bank_a, 560.0);
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_off->systematic), 3.0);
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_return->systematic), 5.0);
    runs.marks[1].started_by = StartedBy::helper_signal;  // stopped by signal, started by hand
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_off->systematic), std::sqrt(153.0));
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_return->systematic), 5.0);
    runs.marks[1].started_by = StartedBy::me_here;  // and the other way round
    runs.marks[2].started_by = StartedBy::controller;
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_off->systematic), std::sqrt(153.0));
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a, u).wet_return->systematic), 13.0);
}

TEST(TimingsTest, of_mixed_readings_the_worst_decides) {
    Runs runs;
    runs.add(water, {{bank_a, 45.0}});
    runs.add(water, {{bank_a, 46.0}});
    runs.last_start().started_by = StartedBy::controller;
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a).fill->systematic), std::hypot(0.1, 3.0));
}

TEST(TimingsTest, a_reading_that_is_not_used_does_not_make_the_others_worse) {
    Runs runs;
    runs.add(water, {{bank_a, 45.0}});
    runs.add(water, {{bank_a, 80.0}});
    runs.last_start().started_by = StartedBy::controller;
    for (auto& mark : runs.marks) {
        if (mark.at.boot_ns == 3'680'000'000'000) {
            mark.seen = Seen::already_there;
        }
    }
    const auto timings = runs.of(bank_a);
    EXPECT_EQ(timings.fill->count, 1);
    EXPECT_DOUBLE_EQ(in_seconds(timings.fill->systematic), 0.1);
}

TEST(TimingsTest, a_single_reading_takes_the_pooled_spread_of_the_other_banks) {
    Runs runs;
    // Bank A 43, 45, 47: variance 4 with 2 degrees of freedom; bank B 40, 46: 18 with 1. Pooled: (8 + 18)/3.
    runs.add(water, {{bank_a, 43.0}, {bank_b, 40.0}, {bank_c, 60.0}});
    runs.add(water, {{bank_a, 45.0}, {bank_b, 46.0}});
    runs.add(water, {{bank_a, 47.0}});
    const auto single = *runs.of(bank_c).fill;
    EXPECT_EQ(single.spread_from, SpreadFrom::pooled);
    EXPECT_NEAR(in_seconds(single.random), std::sqrt(26.0 / 3.0), 1e-12);
    EXPECT_EQ(runs.of(bank_b).fill->spread_from, SpreadFrom::readings);
}

TEST(TimingsTest, the_spread_of_another_kind_is_not_pooled) {
    Runs runs;
    runs.add(water, {{bank_a, 43.0}});
    runs.add(water, {{bank_a, 47.0}});
    runs.add(drips, {{bank_c, 100.0}});
    const auto single = *runs.of(bank_c).wet_through;
    EXPECT_EQ(single.spread_from, SpreadFrom::assumed);
    EXPECT_DOUBLE_EQ(in_seconds(single.random), 5.0);
}

TEST(TimingsTest, wetting_is_wet_through_minus_fill_with_both_uncertainties) {
    Runs runs;
    for (const double shift : {-1.0, 0.0, 1.0}) {
        runs.add(water, {{bank_a, 45.0 + shift}});
        runs.add(drips, {{bank_a, 120.0 + shift}});
    }
    const auto timings = runs.of(bank_a);
    ASSERT_TRUE(timings.wetting);
    EXPECT_DOUBLE_EQ(in_seconds(timings.wetting->mean), 75.0);
    EXPECT_DOUBLE_EQ(
        in_seconds(timings.wetting->standard),
        std::hypot(in_seconds(timings.fill->standard), in_seconds(timings.wet_through->standard)));
    EXPECT_GT(timings.wetting->coverage_factor, 1.95);
}

TEST(TimingsTest, readings_that_contradict_each_other_leave_a_wetting_time_that_shows_it) {
    Runs runs;
    runs.add(water, {{bank_a, 90.0}});
    runs.add(drips, {{bank_a, 60.0}});
    EXPECT_DOUBLE_EQ(in_seconds(runs.of(bank_a).wetting->mean), -30.0);
}

TEST(TimingsTest, a_reading_far_from_the_others_stands_out_and_still_counts) {
    Runs runs;
    for (const double fill : {45.0, 45.4, 44.8, 45.1, 70.0}) {
        runs.add(water, {{bank_a, fill}, {bank_b, fill < 50.0 ? fill : 45.2}});
    }
    const auto visit = timings_of(runs.marks, banks);
    int standing_out = 0;
    for (const auto& reading : visit.readings) {
        if (reading.stands_out) {
            ++standing_out;
            EXPECT_EQ(reading.bank, bank_a);
            EXPECT_DOUBLE_EQ(in_seconds(reading.value), 70.0);
            EXPECT_EQ(reading.not_used, std::nullopt);
        }
    }
    EXPECT_EQ(standing_out, 1);
    EXPECT_EQ(visit.of(bank_a)->fill->count, 5);
}

// Grubbs' limit at n = 3 is 1.1543 (NIST) and G can be at most (3 - 1) / sqrt(3) = 1.1547, which it is where
// two coincide. 46.1 s is 0.067 s off the mean of 46.033 s: less than twice the hand's 0.1 s. 47.5 s is 1 s
// off.
TEST(TimingsTest, a_third_reading_that_the_hand_explains_does_not_stand_out) {
    const auto standing_out = [](std::initializer_list<double> fills) {
        Runs runs;
        for (const double fill : fills) {
            runs.add(water, {{bank_a, fill}});
        }
        const auto visit = timings_of(runs.marks, banks);
        return std::count_if(visit.readings.begin(), visit.readings.end(),
                             [](const Reading& reading) { return reading.stands_out; });
    };
    EXPECT_EQ(standing_out({46.0, 46.0, 46.1}), 0);
    EXPECT_EQ(standing_out({46.0, 46.0, 47.5}), 1);
}

TEST(TimingsTest, fans_count_as_running_during_wet_through_only_if_all_readings_had_them) {
    const auto with = [](std::vector<std::optional<bool>> fans) {
        Runs runs;
        for (const auto& state : fans) {
            runs.add(drips, {{bank_a, 100.0}});
            runs.last_start().fans_running = state;
        }
        const auto timings = runs.of(bank_a);
        return std::pair{timings.fans_ran_during_wet_through, timings.fans_mixed};
    };
    EXPECT_EQ(with({true, true}), (std::pair{true, false}));
    EXPECT_EQ(with({false, false}), (std::pair{false, false}));
    EXPECT_EQ(with({true, false}), (std::pair{false, true}));
    EXPECT_EQ(with({true, std::nullopt}), (std::pair{false, true}));
    EXPECT_EQ(with({std::nullopt}), (std::pair{false, false}));
    EXPECT_EQ(with({}), (std::pair{false, false}));
}

TEST(TimingsTest, an_impossible_uncertainty_gives_no_results_but_keeps_the_readings) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    Runs runs;
    runs.add(water, {{bank_a, 45.0}});
    EventUncertainty u;
    u.hand = seconds(-0.1);
    EXPECT_EQ(timings_of(runs.marks, banks, {}, u).of(bank_a)->fill, std::nullopt);
    EXPECT_EQ(timings_of(runs.marks, banks, {}, u).readings.size(), 1U);
    u = {};
    u.dry_patch_share = nan;
    EXPECT_EQ(timings_of(runs.marks, banks, {}, u).of(bank_a)->fill, std::nullopt);
}

const std::vector<Id> pumps{pump, Id{"pump-2"}};

TEST(PumpStatesTest, a_pump_that_was_never_marked_is_not_running) {
    const auto states = pump_states({}, pumps);
    ASSERT_EQ(states.size(), 2U);
    EXPECT_EQ(states[0].pump, pump);
    EXPECT_FALSE(states[0].running);
    EXPECT_EQ(states[0].since, std::nullopt);
    EXPECT_TRUE(states[1].marks_since.empty());
}

TEST(PumpStatesTest, the_running_stopwatch_is_found_in_the_marks_alone) {
    std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0),
                            mark_at(2, MarkKind::pump_stop, {}, 200.0),
                            mark_at(3, MarkKind::pump_start, {}, 500.0), mark_at(4, water, bank_a, 545.0),
                            mark_at(5, water, bank_b, 550.0)};
    std::swap(marks[0], marks[4]);  // the order in which they are given does not matter
    const auto states = pump_states(marks, pumps);
    EXPECT_TRUE(states[0].running);
    ASSERT_TRUE(states[0].since);
    EXPECT_EQ(states[0].since->id, Id{"m3"});
    ASSERT_EQ(states[0].marks_since.size(), 2U);
    EXPECT_EQ(states[0].marks_since[0].id, Id{"m4"});
    EXPECT_EQ(states[0].marks_since[1].id, Id{"m5"});
    EXPECT_FALSE(states[1].running);
    EXPECT_EQ(states[1].since, std::nullopt);
}

TEST(PumpStatesTest, an_undone_stop_leaves_the_pump_running) {
    std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0),
                            mark_at(2, MarkKind::pump_stop, {}, 200.0)};
    EXPECT_FALSE(pump_states(marks, pumps)[0].running);
    EXPECT_EQ(pump_states(marks, pumps)[0].since->id, Id{"m2"});
    marks[1].undone = true;
    EXPECT_TRUE(pump_states(marks, pumps)[0].running);
    EXPECT_EQ(pump_states(marks, pumps)[0].since->id, Id{"m1"});
}

TEST(PumpStatesTest, a_repeated_start_does_not_restart_the_stopwatch) {
    const std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0),
                                  mark_at(2, MarkKind::pump_start, {}, 10.2)};
    EXPECT_EQ(pump_states(marks, pumps)[0].since->id, Id{"m1"});
    EXPECT_TRUE(pump_states(marks, pumps)[0].marks_since.empty());
}

TEST(PumpStatesTest, a_second_press_within_three_tenths_of_a_second_has_not_happened) {
    const std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0), mark_at(2, water, bank_a, 55.0),
                                  mark_at(3, drips, bank_a, 55.2), mark_at(4, water, bank_b, 55.3),
                                  mark_at(5, drips, bank_a, 100.0)};
    const auto since = pump_states(marks, pumps)[0].marks_since;
    ASSERT_EQ(since.size(), 3U);
    EXPECT_EQ(since[0].id, Id{"m2"});
    EXPECT_EQ(since[1].id, Id{"m4"}) << "another bank is another event";
    EXPECT_EQ(since[2].id, Id{"m5"});
}

TEST(PumpStatesTest, the_test_and_the_proof_run_have_a_stopwatch_each) {
    std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0),
                            mark_at(2, MarkKind::pump_stop, {}, 200.0),
                            mark_at(3, MarkKind::pump_start, {}, 500.0), mark_at(4, water, bank_a, 545.0)};
    EXPECT_EQ(pump_states(marks, pumps, MarksOf::proof_run)[0].since, std::nullopt);
    marks[2].proof = marks[3].proof = true;
    const auto proof = pump_states(marks, pumps, MarksOf::proof_run)[0];
    EXPECT_TRUE(proof.running);
    EXPECT_EQ(proof.since->id, Id{"m3"});
    ASSERT_EQ(proof.marks_since.size(), 1U);
    EXPECT_EQ(proof.marks_since[0].id, Id{"m4"});
    const auto test = pump_states(marks, pumps)[0];
    EXPECT_FALSE(test.running);
    EXPECT_EQ(test.since, std::nullopt) << "the timer has the pump again: nobody's stop is counting";
    EXPECT_TRUE(test.marks_since.empty());
    marks[2].undone = true;
    EXPECT_EQ(pump_states(marks, pumps)[0].since->id, Id{"m2"});
}

TEST(PumpStatesTest, a_run_goes_on_across_a_restart_of_the_machine) {
    auto later = mark_at(2, water, bank_a, 100.0);
    later.at = {"boot-2", 5'000'000'000};
    const std::vector<Mark> marks{mark_at(1, MarkKind::pump_start, {}, 10.0), later};
    const auto state = pump_states(marks, pumps)[0];
    EXPECT_TRUE(state.running);
    EXPECT_EQ(state.marks_since.size(), 1U);
}

}  // namespace
}  // namespace wetfront
