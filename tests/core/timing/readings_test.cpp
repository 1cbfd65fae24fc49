// SPDX-License-Identifier: Apache-2.0
#include "timing/readings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <set>

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id bank_a{"bank-a"};
const Id bank_b{"bank-b"};
const std::vector<BankOfPump> banks{{bank_a, pump}, {bank_b, pump}};

/// Writes marks down as a person would call them out. Times in seconds after the machine's start; ids m1, m2,
/// ...
class Log {
public:
    Mark& start(double at, PadsAtStart pads = PadsAtStart::dry) {
        auto& mark = add(MarkKind::pump_start, {}, at);
        mark.pads = pads;
        return mark;
    }
    Mark& stop(double at, std::optional<bool> fans = true) {
        auto& mark = add(MarkKind::pump_stop, {}, at);
        mark.fans_running = fans;
        return mark;
    }
    Mark& back_on_automatic(double at) { return add(MarkKind::back_on_automatic, {}, at); }
    Mark& water(double at, const Id& bank = bank_a) { return add(MarkKind::water_at_far_end, bank, at); }
    Mark& drips(double at, const Id& bank = bank_a) { return add(MarkKind::far_end_drips, bank, at); }
    Mark& drip_ends(double at, const Id& bank = bank_a) { return add(MarkKind::drip_ends, bank, at); }
    Mark& dry_patch(double at, const Id& bank = bank_a) { return add(MarkKind::first_dry_patch, bank, at); }

    [[nodiscard]] std::vector<Reading> readings(std::span<const SetAside> aside = {}) const {
        return readings_of(marks, banks, aside);
    }
    [[nodiscard]] VisitTimings timings(std::span<const SetAside> aside = {}) const {
        return timings_of(marks, banks, aside);
    }

    std::vector<Mark> marks;

private:
    Mark& add(MarkKind kind, const Id& bank, double at) {
        Mark mark;
        mark.id = Id{"m" + std::to_string(marks.size() + 1)};
        mark.kind = kind;
        mark.pump = pump;
        mark.bank = bank;
        mark.at = {"boot-1", std::llround(at * 1e9)};
        mark.wall = {1'782'900'000'000 + std::llround(at * 1e3), -300};
        mark.timed_by = TimedBy::event_stamp;
        marks.push_back(mark);
        return marks.back();
    }
};

/// The only reading of that kind; fails if there is none or more than one.
Reading only(const std::vector<Reading>& readings, TimingKind kind) {
    std::vector<Reading> found;
    std::copy_if(readings.begin(), readings.end(), std::back_inserter(found),
                 [&](const Reading& reading) { return reading.kind == kind; });
    EXPECT_EQ(found.size(), 1U) << name_of(kind);
    return found.empty() ? Reading{} : found.front();
}

TEST(ReadingsTest, one_run_from_dry_gives_fill_and_wet_through) {
    Log log;
    log.start(10.0);
    log.water(55.0);
    log.drips(130.5);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].kind, TimingKind::fill);
    EXPECT_EQ(in_seconds(readings[0].value), 45.0);
    EXPECT_EQ(readings[0].start_mark, Id{"m1"});
    EXPECT_EQ(readings[0].end_mark, Id{"m2"});
    EXPECT_EQ(readings[0].bank, bank_a);
    EXPECT_EQ(readings[0].pump, pump);
    EXPECT_EQ(readings[0].not_used, std::nullopt);
    EXPECT_EQ(readings[1].kind, TimingKind::wet_through);
    EXPECT_EQ(in_seconds(readings[1].value), 120.5);
    EXPECT_EQ(readings[1].not_used, std::nullopt);
}

TEST(ReadingsTest, nothing_is_read_once_the_pump_is_back_on_automatic) {
    Log log;
    log.start(0.0);
    log.stop(200.0);
    log.drip_ends(290.0);
    log.back_on_automatic(300.0);
    log.dry_patch(1400.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings[0].kind, TimingKind::run_off);
}

TEST(PumpStatesTest, a_pump_back_on_automatic_is_in_no_test_until_it_is_switched_again) {
    Log log;
    log.stop(200.0);
    log.drip_ends(290.0);
    log.back_on_automatic(300.0);
    const std::vector<Id> pumps{pump};
    auto state = pump_states(log.marks, pumps).front();
    EXPECT_FALSE(state.running);
    EXPECT_FALSE(state.since.has_value());
    EXPECT_TRUE(state.marks_since.empty());
    log.start(400.0);
    state = pump_states(log.marks, pumps).front();
    EXPECT_TRUE(state.running);
}

TEST(ReadingsTest, after_the_stop_come_run_off_and_dry_out) {
    Log log;
    log.start(0.0);
    log.stop(200.0);
    log.drip_ends(290.0);
    log.dry_patch(1400.0);
    const auto readings = log.readings();
    EXPECT_EQ(in_seconds(only(readings, TimingKind::run_off).value), 90.0);
    EXPECT_EQ(in_seconds(only(readings, TimingKind::dry_out).value), 1200.0);
    EXPECT_EQ(only(readings, TimingKind::dry_out).not_used, std::nullopt);
}

TEST(ReadingsTest, one_start_serves_all_banks_of_the_pump) {
    Log log;
    log.start(0.0);
    log.water(40.0, bank_a);
    log.water(50.0, bank_b);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].bank, bank_a);
    EXPECT_EQ(in_seconds(readings[1].value), 50.0);
    EXPECT_EQ(readings[1].bank, bank_b);
}

TEST(ReadingsTest, two_pumps_run_side_by_side) {
    Log log;
    log.start(0.0);
    log.start(7.0).pump = Id{"pump-2"};
    log.water(40.0, bank_a);
    auto& other = log.water(50.0, Id{"bank-c"});
    other.pump = Id{"pump-2"};
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(in_seconds(readings[0].value), 40.0);
    EXPECT_EQ(in_seconds(readings[1].value), 43.0);
    EXPECT_EQ(readings[1].pump, Id{"pump-2"});
}

TEST(ReadingsTest, a_bank_mark_without_a_pump_belongs_to_the_pump_of_its_bank) {
    Log log;
    log.start(0.0);
    log.water(40.0).pump = Id{};
    EXPECT_EQ(only(log.readings(), TimingKind::fill).pump, pump);
}

TEST(ReadingsTest, the_order_in_which_marks_are_given_does_not_matter) {
    Log log;
    log.start(0.0);
    log.water(40.0);
    log.drips(100.0);
    log.stop(150.0);
    log.dry_patch(900.0);
    log.start(2000.0, PadsAtStart::not_dry);
    log.water(2042.0);
    const auto wanted = log.readings();
    ASSERT_EQ(wanted.size(), 4U);
    std::mt19937 random{3};
    for (int i = 0; i < 50; ++i) {
        std::shuffle(log.marks.begin(), log.marks.end(), random);
        const auto got = log.readings();
        ASSERT_EQ(got.size(), wanted.size());
        for (std::size_t k = 0; k < got.size(); ++k) {
            EXPECT_EQ(got[k].end_mark, wanted[k].end_mark);
            EXPECT_EQ(in_seconds(got[k].value), in_seconds(wanted[k].value));
        }
    }
}

TEST(ReadingsTest, an_undone_mark_is_left_out) {
    Log log;
    log.start(0.0);
    log.water(30.0).undone = true;
    log.water(40.0);
    const auto reading = only(log.readings(), TimingKind::fill);
    EXPECT_EQ(in_seconds(reading.value), 40.0);
    EXPECT_EQ(reading.not_used, std::nullopt);
}

TEST(ReadingsTest, an_undone_stop_leaves_the_run_going) {
    Log log;
    log.start(0.0);
    log.stop(20.0).undone = true;
    log.water(40.0);
    EXPECT_EQ(in_seconds(only(log.readings(), TimingKind::fill).value), 40.0);
}

TEST(ReadingsTest, a_mark_that_belongs_to_no_run_makes_no_reading) {
    Log log;
    log.water(5.0);
    log.start(10.0);
    log.drip_ends(20.0);
    log.dry_patch(30.0);
    log.stop(40.0);
    log.water(50.0);
    log.drips(60.0);
    EXPECT_TRUE(log.readings().empty());
}

TEST(ReadingsTest, a_wet_through_from_a_pad_that_was_not_dry_is_kept_but_not_used) {
    Log log;
    log.start(0.0, PadsAtStart::not_dry);
    log.water(40.0);
    log.drips(80.0);
    const auto readings = log.readings();
    EXPECT_EQ(only(readings, TimingKind::fill).not_used, std::nullopt);
    EXPECT_EQ(only(readings, TimingKind::wet_through).not_used, NotUsed::pads_not_dry);
    EXPECT_EQ(in_seconds(only(readings, TimingKind::wet_through).value), 80.0);
    EXPECT_EQ(log.timings().of(bank_a)->wet_through, std::nullopt);
}

TEST(ReadingsTest, a_dry_pad_gives_a_wet_through_that_is_used) {
    Log log;
    log.start(0.0, PadsAtStart::dry);
    log.drips(80.0);
    EXPECT_EQ(only(log.readings(), TimingKind::wet_through).not_used, std::nullopt);
    EXPECT_TRUE(log.timings().of(bank_a)->wet_through);
}

TEST(ReadingsTest, a_wet_start_gives_off_and_return_time) {
    Log log;
    log.start(0.0, PadsAtStart::not_dry);
    log.stop(300.0);
    log.start(480.0, PadsAtStart::dripping);
    log.water(520.0);
    log.drips(560.0);
    const auto readings = log.readings();
    const auto off = only(readings, TimingKind::wet_off);
    EXPECT_EQ(in_seconds(off.value), 180.0);
    EXPECT_EQ(off.bank, bank_a);
    EXPECT_EQ(off.not_used, std::nullopt);
    const auto back = only(readings, TimingKind::wet_return);
    EXPECT_EQ(in_seconds(back.value), 80.0);
    EXPECT_EQ(back.not_used, std::nullopt);
    const auto visit = log.timings();
    const auto* timings = visit.of(bank_a);
    ASSERT_TRUE(timings->wet_off && timings->wet_return);
    EXPECT_EQ(timings->wet_through, std::nullopt) << "wet-through stays unmeasured";
    EXPECT_EQ(timings->wetting, std::nullopt);
}

TEST(ReadingsTest, both_halves_of_a_wet_start_stand_or_fall_together) {
    Log log;
    log.start(0.0, PadsAtStart::not_dry);
    log.stop(300.0);
    log.start(480.0, PadsAtStart::dripping);
    log.drips(560.0).seen = Seen::already_there;
    EXPECT_EQ(only(log.readings(), TimingKind::wet_return).not_used, NotUsed::upper_bound);
    EXPECT_EQ(only(log.readings(), TimingKind::wet_off).not_used, NotUsed::upper_bound);
}

TEST(ReadingsTest, dripping_pads_without_a_stop_before_are_just_not_dry) {
    Log log;
    log.start(0.0, PadsAtStart::dripping);
    log.drips(60.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings[0].kind, TimingKind::wet_through);
    EXPECT_EQ(readings[0].not_used, NotUsed::pads_not_dry);
}

TEST(ReadingsTest, a_second_start_without_a_stop_is_no_wet_start) {
    Log log;
    log.start(0.0, PadsAtStart::not_dry);
    log.start(480.0, PadsAtStart::dripping);
    log.drips(560.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 1U) << "nobody knows how long the pump was off";
    EXPECT_EQ(readings[0].kind, TimingKind::wet_through);
    EXPECT_EQ(readings[0].not_used, NotUsed::pads_not_dry);
}

TEST(ReadingsTest, what_was_already_there_is_an_upper_bound_and_in_no_mean) {
    Log log;
    log.start(0.0);
    log.water(90.0).seen = Seen::already_there;
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, NotUsed::upper_bound);
    EXPECT_EQ(log.timings().of(bank_a)->fill, std::nullopt);
}

TEST(ReadingsTest, a_start_that_nobody_saw_gives_nothing_to_rely_on) {
    Log log;
    log.start(0.0).seen = Seen::already_there;
    log.water(90.0);
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, NotUsed::unverified);
}

TEST(ReadingsTest, dry_out_counts_only_with_the_fans_stated_as_running) {
    const auto with = [](std::optional<bool> fans) {
        Log log;
        log.start(0.0);
        log.stop(100.0, fans);
        log.dry_patch(900.0);
        return only(log.readings(), TimingKind::dry_out).not_used;
    };
    EXPECT_EQ(with(true), std::nullopt);
    EXPECT_EQ(with(false), NotUsed::fans_off);
    EXPECT_EQ(with(std::nullopt), NotUsed::fans_not_stated);
}

TEST(ReadingsTest, run_off_does_not_ask_for_the_fans) {
    Log log;
    log.start(0.0);
    log.stop(100.0, std::nullopt);
    log.drip_ends(190.0);
    EXPECT_EQ(only(log.readings(), TimingKind::run_off).not_used, std::nullopt);
}

TEST(ReadingsTest, a_second_press_within_three_tenths_of_a_second_is_not_a_second_event) {
    Log log;
    log.start(0.0);
    log.water(40.0);
    log.drips(40.3);  // the same finger on a button that has just changed its meaning
    log.drips(100.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 3U);
    EXPECT_EQ(readings[1].not_used, NotUsed::too_quick);
    EXPECT_EQ(in_seconds(readings[1].value), 40.3);
    EXPECT_EQ(readings[2].not_used, std::nullopt) << "the press that was meant is the one that counts";
    EXPECT_EQ(in_seconds(log.timings().of(bank_a)->wet_through->mean), 100.0);
}

TEST(ReadingsTest, a_press_after_more_than_three_tenths_of_a_second_counts) {
    Log log;
    log.start(0.0);
    log.water(40.0);
    log.drips(40.301);
    EXPECT_EQ(only(log.readings(), TimingKind::wet_through).not_used, std::nullopt);
}

TEST(ReadingsTest, a_press_right_after_the_start_is_not_a_fill) {
    Log log;
    log.start(10.0);
    log.water(10.2);
    log.water(55.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].not_used, NotUsed::too_quick);
    EXPECT_EQ(readings[1].not_used, std::nullopt);
}

TEST(ReadingsTest, two_banks_may_be_marked_in_the_same_instant) {
    Log log;
    log.start(0.0);
    log.water(40.0, bank_a);
    log.water(40.1, bank_b);
    for (const auto& reading : log.readings()) {
        EXPECT_EQ(reading.not_used, std::nullopt) << reading.bank.text;
    }
}

TEST(ReadingsTest, a_repeated_start_within_three_tenths_of_a_second_moves_nothing) {
    Log log;
    log.start(10.0);
    log.start(10.2);
    log.water(55.0);
    EXPECT_EQ(in_seconds(only(log.readings(), TimingKind::fill).value), 45.0);
}

TEST(ReadingsTest, a_later_start_opens_a_new_run) {
    Log log;
    log.start(10.0);
    log.water(50.0);
    log.start(100.0);
    log.water(145.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(in_seconds(readings[0].value), 40.0);
    EXPECT_EQ(in_seconds(readings[1].value), 45.0);
    EXPECT_EQ(readings[1].not_used, std::nullopt);
}

TEST(ReadingsTest, of_repeated_presses_in_a_run_the_first_counts_and_the_others_say_so) {
    Log log;
    log.start(0.0);
    log.water(40.0);
    log.water(47.0);
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].not_used, std::nullopt);
    EXPECT_EQ(readings[1].not_used, NotUsed::pressed_again);
    EXPECT_EQ(in_seconds(readings[1].value), 47.0);
}

TEST(ReadingsTest, a_drip_before_the_water_leaves_neither_to_be_used) {
    Log log;
    log.start(0.0);
    log.drips(40.0);
    log.water(60.0);
    const auto readings = log.readings();
    EXPECT_EQ(only(readings, TimingKind::fill).not_used, NotUsed::not_positive);
    EXPECT_EQ(only(readings, TimingKind::wet_through).not_used, NotUsed::not_positive);
}

TEST(ReadingsTest, a_mark_at_the_very_moment_of_the_start_is_not_positive) {
    Log log;
    log.start(10.0);
    log.water(10.0);
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, NotUsed::not_positive);
}

TEST(ReadingsTest, more_than_a_day_means_that_a_mark_is_missing) {
    const auto after = [](double s) {
        Log log;
        log.start(0.0);
        log.water(s);
        return only(log.readings(), TimingKind::fill).not_used;
    };
    EXPECT_EQ(after(86'400.0), std::nullopt);
    EXPECT_EQ(after(86'400.1), NotUsed::too_long);
}

TEST(ReadingsTest, across_a_restart_wall_time_serves_unverified) {
    Log log;
    log.start(5000.0);
    auto& water = log.water(5045.0);
    water.at = {"boot-2", 12'000'000'000};
    const auto reading = only(log.readings(), TimingKind::fill);
    EXPECT_EQ(in_seconds(reading.value), 45.0);
    EXPECT_EQ(reading.not_used, NotUsed::unverified);
}

TEST(ReadingsTest, a_mark_timed_after_a_restart_is_unverified_even_on_the_same_boot) {
    Log log;
    log.start(10.0);
    log.water(55.0).timed_by = TimedBy::after_restart;
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, NotUsed::unverified);
}

TEST(ReadingsTest, a_mark_that_the_program_timed_itself_is_used) {
    Log log;
    log.start(10.0).timed_by = TimedBy::handler;
    log.water(55.0).timed_by = TimedBy::handler;
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, std::nullopt);
}

TEST(ReadingsTest, a_jump_of_the_wall_clock_changes_no_reading) {
    Log log;
    log.start(10.0);
    log.water(55.0).wall.unix_ms -= 3'600'000;
    log.drips(130.0).wall.unix_ms += 86'400'000;
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(in_seconds(readings[0].value), 45.0);
    EXPECT_EQ(in_seconds(readings[1].value), 120.0);
    EXPECT_EQ(readings[1].not_used, std::nullopt);
}

TEST(ReadingsTest, boots_follow_each_other_by_wall_time_whatever_their_clocks_say) {
    Log log;
    log.start(5000.0);
    log.water(5045.0);
    log.start(6000.0).at = {"a-later-boot", 20'000'000'000};
    log.water(6050.0).at = {"a-later-boot", 70'000'000'000};
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(in_seconds(readings[0].value), 45.0);
    EXPECT_EQ(in_seconds(readings[1].value), 50.0);
    EXPECT_EQ(readings[1].not_used, std::nullopt) << "a run within the new boot is as good as any";
}

TEST(ReadingsTest, clocks_from_a_damaged_file_do_no_harm) {
    Log log;
    log.start(0.0).at.boot_ns = std::numeric_limits<std::int64_t>::min();
    log.water(1.0).at.boot_ns = std::numeric_limits<std::int64_t>::max();
    EXPECT_EQ(only(log.readings(), TimingKind::fill).not_used, NotUsed::too_long);
}

TEST(ReadingsTest, a_reading_that_a_person_sets_aside_is_kept_but_not_used) {
    Log log;
    log.start(0.0);
    const auto id = log.water(40.0).id;
    log.stop(100.0);
    log.start(200.0);
    log.water(242.0);
    const std::vector<SetAside> aside{{id, "hose was kinked"}};
    const auto visit = log.timings(aside);
    EXPECT_EQ(visit.readings[0].not_used, NotUsed::set_aside);
    EXPECT_EQ(visit.of(bank_a)->fill->count, 1);
    EXPECT_EQ(in_seconds(visit.of(bank_a)->fill->mean), 42.0);
}

TEST(ReadingsTest, a_persons_word_comes_before_any_other_reason) {
    Log log;
    log.start(0.0);
    const auto id = log.water(90.0).id;
    log.marks.back().seen = Seen::already_there;
    const std::vector<SetAside> aside{{id, "dropped the tablet"}};
    EXPECT_EQ(only(log.readings(aside), TimingKind::fill).not_used, NotUsed::set_aside);
}

TEST(ReadingsTest, of_several_reasons_the_first_of_the_list_is_given) {
    Log log;
    log.start(0.0, PadsAtStart::not_dry);
    log.drips(80.0);
    log.drips(90.0).seen = Seen::already_there;
    const auto readings = log.readings();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].not_used, NotUsed::pads_not_dry);
    EXPECT_EQ(readings[1].not_used, NotUsed::pressed_again)
        << "also an upper bound, and from a pad that was not dry";
}

TEST(ReadingsTest, marks_of_a_proof_run_make_no_reading_and_change_no_result) {
    Log log;
    log.start(0.0);
    log.water(40.0);
    log.drips(140.0);
    log.stop(200.0);
    log.drip_ends(290.0);
    log.dry_patch(2600.0);
    const auto before = log.timings();
    ASSERT_EQ(before.readings.size(), 4U);
    log.start(4000.0).proof = true;
    log.water(4031.0).proof = true;
    log.drips(4060.0).proof = true;
    log.stop(4090.0).proof = true;
    log.start(4300.0).proof = true;
    const auto after = log.timings();
    EXPECT_EQ(after.readings.size(), 4U);
    EXPECT_EQ(after.of(bank_a)->fill->count, 1);
    EXPECT_EQ(in_seconds(after.of(bank_a)->fill->mean), 40.0);
    EXPECT_EQ(in_seconds(after.of(bank_a)->wet_through->mean), 140.0);
    EXPECT_EQ(after.of(bank_a)->wet_return, std::nullopt);
}

TEST(ReadingsTest, a_proof_run_ends_what_was_being_timed) {
    Log log;
    log.start(0.0);
    log.stop(200.0);
    log.start(500.0).proof = true;
    log.dry_patch(600.0);
    EXPECT_TRUE(log.readings().empty()) << "the timer had wetted the pad in between";
}

TEST(ReadingsTest, a_test_run_goes_on_under_a_banks_mark_of_a_proof) {
    Log log;
    log.start(0.0);
    log.water(20.0).proof = true;
    log.water(40.0);
    EXPECT_EQ(in_seconds(only(log.readings(), TimingKind::fill).value), 40.0);
}

TEST(ReadingsTest, every_kind_and_reason_has_a_name_of_its_own) {
    std::set<std::string_view> names;
    for (int i = 0; i <= static_cast<int>(TimingKind::wet_return); ++i) {
        names.insert(name_of(static_cast<TimingKind>(i)));
    }
    for (int i = 0; i <= static_cast<int>(NotUsed::fans_not_stated); ++i) {
        names.insert(name_of(static_cast<NotUsed>(i)));
    }
    EXPECT_EQ(names.size(), 16U);
    EXPECT_FALSE(names.contains(""));
}

}  // namespace
}  // namespace wetfront
