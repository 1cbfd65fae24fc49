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

TEST(CycleStripTest, an_on_time_at_the_period_never_rests_and_never_dries) {
    auto visit = two_banks();
    visit.found().base_on_time = typed<Duration>("600s");
    const auto strip = strip_of(visit, 100.0);
    EXPECT_TRUE(strip->continuous);
    EXPECT_FALSE(strip->dry_patch_s.has_value());
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

TEST(TimelineTest, a_strip_without_settings_keeps_its_place_and_says_so) {
    auto file = complete_visit(1);
    file.visit.left.clear();
    const auto strips = MadeSheet{file}.all<SheetTimeline>().at(0).strips;
    ASSERT_THAT(strips, SizeIs(3));
    EXPECT_EQ(strips[2].period_s, 0.0);
    EXPECT_FALSE(strips[2].continuous);
    EXPECT_THAT(MadeSheet::english(strips[2].label), HasSubstr("left: period or on-time not entered"));
}

}  // namespace
}  // namespace wetfront::test
