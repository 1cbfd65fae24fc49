// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::SizeIs;

/// One run each on two banks, the second slower: fill 50 s, wet-through 160 s, run-off 90 s, dry-out 600 s.
VisitBuilder two_banks(TimerKind kind = TimerKind::trimmed) {
    VisitBuilder visit{2, 1, kind};
    visit.run(1, {.fill = 45.0, .wet_through = 120.0, .run_off = 80.0, .dry_out = 500.0});
    visit.run(2, {.fill = 50.0, .wet_through = 160.0, .run_off = 90.0, .dry_out = 600.0});
    visit.found().period = typed<Duration>("10min");
    visit.found().base_on_time = typed<Duration>("100s");
    visit.found().on_time_ceiling = typed<Duration>("180s");
    return visit;
}

std::optional<CycleStrip> strip_of(VisitBuilder& visit, std::optional<double> ratio = std::nullopt) {
    return cycle_strip(visit.file(), timings_of(visit.file()), visit.found(), "found", ratio);
}

TEST(CycleStripTest, it_is_drawn_from_the_slowest_bank) {
    auto visit = two_banks();
    const auto strip = strip_of(visit);
    ASSERT_TRUE(strip);
    EXPECT_EQ(MadeSheet::english(strip->label), "found");
    EXPECT_EQ(strip->period_s, 600.0);
    EXPECT_EQ(strip->on_s, 100.0);
    EXPECT_FALSE(strip->continuous);
    EXPECT_EQ(strip->ceiling_s, 180.0);
    EXPECT_EQ(strip->fill_s, 50.0);
    EXPECT_EQ(strip->wet_through_s, 160.0);
    EXPECT_EQ(strip->run_off_s, 90.0);
}

// Water is back at the far end at 600 + 50 s; a patch shows 100 + 600 / ratio after the start.
TEST(CycleStripTest, a_dry_patch_is_drawn_only_if_it_comes_before_the_water) {
    auto visit = two_banks();
    EXPECT_FALSE(strip_of(visit)->dry_patch_s.has_value());
    EXPECT_FALSE(strip_of(visit, 600.0 / 550.0)->dry_patch_s.has_value());
    EXPECT_NEAR(strip_of(visit, 600.0 / 549.0)->dry_patch_s.value_or(0.0), 649.0, 1e-9);
    EXPECT_NEAR(strip_of(visit, 2.0)->dry_patch_s.value_or(0.0), 400.0, 1e-9);
}

// 0.7 of what the far end holds dries in 600 s. Without water for 600 - 450 + 50 = 200 s it loses
// 0.7 * 200 / 600 = 0.2333. It takes up 1 / (160 - 50) and loses 0.7 / 600 a second: full again
// 0.2333 / (1 / 110 - 0.7 / 600) = 29.446 s after the fill. Twice as fast: 0.4667, 69.058 s.
TEST(CycleStripTest, a_cycle_that_holds_says_what_is_left_and_when_it_drips_again) {
    auto visit = two_banks();
    visit.found().base_on_time = typed<Duration>("450s");
    const auto once = strip_of(visit, 1.0);
    EXPECT_NEAR(once->lowest_level.value_or(0.0), 0.76667, 1e-5);
    EXPECT_NEAR(once->drip_returns_s.value_or(0.0), 79.446, 1e-3);
    const auto twice = strip_of(visit, 2.0);
    EXPECT_NEAR(twice->lowest_level.value_or(0.0), 0.53333, 1e-5);
    EXPECT_NEAR(twice->drip_returns_s.value_or(0.0), 119.058, 1e-3);
}

// Taken up in on - 50 s, at 1 / 110 a second: what dries in 600 s, 0.7. So on = 50 + 0.7 * 110 = 127 s.
TEST(CycleStripTest, a_cycle_holds_only_if_it_gives_back_what_dries_in_a_period) {
    auto visit = two_banks();
    visit.found().base_on_time = typed<Duration>("126s");
    EXPECT_FALSE(strip_of(visit, 1.0)->lowest_level.has_value());
    EXPECT_FALSE(strip_of(visit, 1.0)->drip_returns_s.has_value());
    visit.found().base_on_time = typed<Duration>("128s");
    EXPECT_NEAR(strip_of(visit, 1.0)->lowest_level.value_or(0.0), 1.0 - 0.7 * 522.0 / 600.0, 1e-9);
    EXPECT_FALSE(strip_of(visit, 1.1)->lowest_level.has_value());
}

// 200 s without water; the first patch shows after 600 s / ratio.
TEST(CycleStripTest, a_cycle_in_which_a_part_dries_does_not_hold) {
    auto visit = two_banks();
    visit.found().base_on_time = typed<Duration>("450s");
    const auto wet = strip_of(visit, 2.99);
    EXPECT_NEAR(wet->lowest_level.value_or(0.0), 1.0 - 0.7 * 200.0 / 600.0 * 2.99, 1e-9);
    EXPECT_FALSE(wet->dry_patch_s.has_value());
    const auto patched = strip_of(visit, 3.01);
    EXPECT_FALSE(patched->lowest_level.has_value());
    EXPECT_TRUE(patched->dry_patch_s.has_value());
}

TEST(CycleStripTest, a_run_that_ends_with_the_fill_never_holds) {
    auto visit = two_banks();
    for (const char* on : {"40s", "50s"}) {
        visit.found().base_on_time = typed<Duration>(on);
        EXPECT_FALSE(strip_of(visit, 0.01)->lowest_level.has_value()) << on;
    }
}

// With the fans on, wetting takes (0.3 / b) ln(a / (a - b)) + 0.7 / (a - b). For a = 10 b that is
// (0.3 ln(10 / 9) + 0.7 / 9) / b = 0.109386 / b, so 110 s of it go with b = 0.7 / t_dry at t_dry = 703.93 s.
// Without water for 200 s, then: 1 - 0.7 * 200 / 703.93 left, full again after 200 b / (10 b - b) = 22.222 s.
TEST(CycleStripTest, wetting_timed_with_the_fans_on_is_reckoned_with_what_dried_meanwhile) {
    VisitBuilder visit;
    visit.run(1, {.fill = 50.0, .wet_through = 160.0, .dry_out = 703.93});
    visit.file().visit.marks.front().fans_running = true;
    visit.found().period = typed<Duration>("600s");
    visit.found().base_on_time = typed<Duration>("450s");
    const auto strip = strip_of(visit, 1.0);
    EXPECT_NEAR(strip->lowest_level.value_or(0.0), 0.80112, 1e-5);
    EXPECT_NEAR(strip->drip_returns_s.value_or(0.0), 72.222, 2e-3);
}

TEST(CycleStripTest, whether_a_cycle_holds_is_unknown_without_weather_dry_out_or_wet_through) {
    const auto level = [](const MarkedRun& run, std::optional<double> ratio) {
        VisitBuilder visit;
        visit.run(1, run);
        visit.found().period = typed<Duration>("600s");
        visit.found().base_on_time = typed<Duration>("450s");
        return strip_of(visit, ratio)->lowest_level;
    };
    EXPECT_TRUE(level({.fill = 50.0, .wet_through = 160.0, .dry_out = 600.0}, 1.0));
    EXPECT_FALSE(level({.fill = 50.0, .wet_through = 160.0, .dry_out = 600.0}, std::nullopt));
    EXPECT_FALSE(level({.fill = 50.0, .wet_through = 160.0}, 1.0));
    EXPECT_FALSE(level({.fill = 50.0, .dry_out = 600.0}, 1.0));
    EXPECT_FALSE(level({.wet_through = 160.0, .dry_out = 600.0}, 1.0));
}

TEST(CycleStripTest, an_on_time_at_the_period_never_rests_and_never_dries) {
    auto visit = two_banks();
    visit.found().base_on_time = typed<Duration>("600s");
    const auto strip = strip_of(visit, 100.0);
    EXPECT_TRUE(strip->continuous);
    EXPECT_FALSE(strip->dry_patch_s.has_value());
    EXPECT_FALSE(strip->lowest_level.has_value());
    visit.found().base_on_time = typed<Duration>("599s");
    EXPECT_FALSE(strip_of(visit)->continuous);
}

TEST(CycleStripTest, there_is_none_without_period_or_on_time_or_for_another_house) {
    auto visit = two_banks();
    visit.found().period.reset();
    EXPECT_FALSE(strip_of(visit));
    visit = two_banks();
    visit.found().base_on_time.reset();
    EXPECT_FALSE(strip_of(visit));
    visit = two_banks();
    auto elsewhere = visit.found();
    elsewhere.timer = Id{"timer-elsewhere"};
    EXPECT_FALSE(cycle_strip(visit.file(), timings_of(visit.file()), elsewhere, "found"));
}

TEST(CycleStripTest, a_fixed_interval_has_no_ceiling) {
    auto visit = two_banks(TimerKind::fixed_interval);
    EXPECT_FALSE(strip_of(visit)->ceiling_s.has_value());
}

TEST(CycleStripTest, on_demand_is_continuous_without_a_period) {
    auto visit = two_banks(TimerKind::on_demand);
    const auto strip = strip_of(visit);
    ASSERT_TRUE(strip);
    EXPECT_TRUE(strip->continuous);
    EXPECT_EQ(strip->period_s, 0.0);
}

TEST(CycleStripTest, without_timings_the_run_is_still_drawn) {
    VisitBuilder visit;
    visit.found().period = typed<Duration>("300s");
    visit.found().base_on_time = typed<Duration>("90s");
    const auto strip = strip_of(visit);
    ASSERT_TRUE(strip);
    EXPECT_EQ(strip->on_s, 90.0);
    EXPECT_EQ(strip->fill_s, 0.0);
    EXPECT_FALSE(strip->wet_through_s.has_value());
}

TEST(TimelineTest, each_timer_has_three_strips_found_advised_left) {
    const MadeSheet sheet{complete_visit(4, 2)};
    const auto timelines = sheet.all<SheetTimeline>();
    ASSERT_THAT(timelines, SizeIs(2));
    EXPECT_EQ(MadeSheet::english(timelines[1].title),
              "One period of Timer 2 to scale, at its slowest bank, Bank 4");
    for (const auto& timeline : timelines) {
        ASSERT_THAT(timeline.strips, SizeIs(3));
        EXPECT_EQ(MadeSheet::english(timeline.strips[0].label), "found");
        EXPECT_EQ(timeline.strips[0].on_s, 30.0);
        EXPECT_EQ(MadeSheet::english(timeline.strips[1].label), "advised");
        EXPECT_EQ(MadeSheet::english(timeline.strips[2].label), "left");
        EXPECT_EQ(timeline.strips[1].on_s, timeline.strips[2].on_s);
    }
    const auto base = sheet.advice.timers.at(1).advised(Setting::base_on_time)->value->si;
    EXPECT_EQ(timelines[1].strips[1].on_s, base);
}

// An advised cycle leaves the far end without water for at most half of its dry-out at the design hour, in
// which 0.7 / 2 of what it holds dries. The cycle found stops before the header is full.
TEST(TimelineTest, the_advised_cycle_is_drawn_as_one_that_holds) {
    for (const auto& timeline : MadeSheet{complete_visit(4, 2)}.all<SheetTimeline>()) {
        const auto& advised = timeline.strips.at(1);
        ASSERT_FALSE(advised.continuous);
        EXPECT_GE(advised.lowest_level.value_or(0.0), 0.65);
        EXPECT_LT(advised.lowest_level.value_or(1.0), 1.0);
        EXPECT_LT(advised.drip_returns_s.value_or(1e9), advised.on_s);
        EXPECT_FALSE(timeline.strips.at(0).lowest_level.has_value());
    }
}

TEST(TimelineTest, a_strip_without_settings_keeps_its_place_and_says_so) {
    auto file = complete_visit(1);
    file.visit.left.clear();
    const auto strips = MadeSheet{file}.all<SheetTimeline>().at(0).strips;
    ASSERT_THAT(strips, SizeIs(3));
    EXPECT_EQ(strips[2].period_s, 0.0);
    EXPECT_FALSE(strips[2].continuous);
    EXPECT_THAT(MadeSheet::english(strips[2].label), HasSubstr("left: period or on-time not entered"));
}

TEST(CycleStripTest, a_strip_that_cannot_be_drawn_says_which_of_the_two_is_lacking) {
    auto file = complete_visit(1);
    file.visit.left.clear();
    const auto said = [&] {
        return MadeSheet::english(MadeSheet{file}.all<SheetTimeline>().at(0).strips.at(0).label);
    };
    file.visit.found[0].period = typed<Duration>("5h");
    EXPECT_THAT(said(), HasSubstr("found: period or on-time not entered, or outside what is usual"));
    file.visit.found[0].period = typed<Duration>("5min");
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = CountsFrom::full_header;
    choose_controller(file.house.timers[0], described);
    file.visit.found[0].entered_fill.reset();
    file.visit.marks.clear();
    EXPECT_THAT(said(), HasSubstr("found: on-time from a full header, and no fill time is known"));
}

TEST(CycleStripTest, an_on_time_counted_from_a_full_header_is_drawn_from_pump_start) {
    VisitBuilder visit;
    visit.both_weathers().run(1, {.fill = 45.0, .wet_through = 150.0});
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = CountsFrom::full_header;
    choose_controller(visit.timer(1), described);
    visit.found().period = typed<Duration>("300s");
    visit.found().base_on_time = typed<Duration>("60s");
    const auto timings = timings_of(visit.file());
    const auto strip = cycle_strip(visit.file(), timings, visit.found(), "found");
    ASSERT_TRUE(strip);
    EXPECT_NEAR(strip->on_s, 105.0, 1e-6);
    visit.file().visit.marks.clear();
    EXPECT_FALSE(cycle_strip(visit.file(), timings_of(visit.file()), visit.found(), "found"))
        << "no fill time is known";
}

}  // namespace
}  // namespace wetfront::test
