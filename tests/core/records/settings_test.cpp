// SPDX-License-Identifier: Apache-2.0
#include "records/settings.h"

#include <gtest/gtest.h>

#include "made_visits.h"

namespace wetfront::test {
namespace {

Temperature fahrenheit(const char* text) {
    return VisitMaker::entered<Temperature>(text).value();
}

TEST(SettingsTest, a_40_degF_limit_stops_pads_at_39_degF_and_not_at_40_degF) {
    // Common practice, no source: the limit itself still runs.
    TimerSettings settings;
    settings.lowest_house_temperature = VisitMaker::entered<Temperature>("40degF");
    EXPECT_FALSE(warm_enough(settings, fahrenheit("39degF")));
    EXPECT_FALSE(warm_enough(settings, fahrenheit("39.9degF")));
    EXPECT_TRUE(warm_enough(settings, fahrenheit("40degF")));
    EXPECT_TRUE(warm_enough(settings, fahrenheit("41degF")));
}

TEST(SettingsTest, without_a_lowest_house_temperature_no_temperature_stops_the_pads) {
    EXPECT_TRUE(warm_enough(TimerSettings{}, fahrenheit("-20degF")));
}

TEST(SettingsTest, what_decides_how_a_timer_runs_is_told_from_what_is_only_noted) {
    TimerSettings one;
    one.period = Entered<Duration>::of(seconds(300.0));
    auto other = one;
    other.shown_on_time = Entered<Duration>::of(seconds(90.0));
    other.deviation_reason = "the grower wants it";
    other.changed = Moment{{"boot", 1}, {}};
    EXPECT_TRUE(run_the_same(one, other));
    other.rinse_at = TimeOfDay{480};
    EXPECT_FALSE(run_the_same(one, other));
}

TEST(SettingsTest, a_moment_comes_before_another_by_the_clock_of_its_boot_else_by_the_wall) {
    const Moment first{{"boot-a", 10}, {5000, 0}};
    EXPECT_TRUE(before(first, {{"boot-a", 11}, {4000, 0}})) << "the wall clock was put back";
    EXPECT_FALSE(before(first, {{"boot-a", 10}, {6000, 0}}));
    EXPECT_TRUE(before(first, {{"boot-b", 1}, {5001, 0}}));
    EXPECT_FALSE(before(first, {{"boot-b", 11}, {4999, 0}}));
}

TEST(SettingsTest, what_a_timer_holds_is_found_under_each_setting) {
    TimerSettings settings;
    for (const auto setting :
         {Setting::start_temperature, Setting::lowest_house_temperature, Setting::humidity_cut_off,
          Setting::pad_hours_from, Setting::pad_hours_to, Setting::period, Setting::base_on_time,
          Setting::on_time_ceiling, Setting::trim_step, Setting::trim_dead_band, Setting::review_interval,
          Setting::rinse_at, Setting::rinse_length}) {
        EXPECT_FALSE(held(settings, setting)) << key_of(setting);
    }
    settings.start_temperature = VisitMaker::entered<Temperature>("28degC");
    settings.lowest_house_temperature = VisitMaker::entered<Temperature>("18degC");
    settings.humidity_cut_off = VisitMaker::entered<Fraction>("80%");
    settings.pad_hours_from = TimeOfDay{600};
    settings.pad_hours_to = TimeOfDay{1200};
    settings.period = VisitMaker::entered<Duration>("5min");
    settings.base_on_time = VisitMaker::entered<Duration>("90s");
    settings.on_time_ceiling = VisitMaker::entered<Duration>("180s");
    settings.trim_rows = {
        {VisitMaker::entered<TemperatureDifference>("1degF"), VisitMaker::entered<Duration>("10s")},
        {std::nullopt, VisitMaker::entered<Duration>("20s")}};
    settings.review_interval = VisitMaker::entered<Duration>("10min");
    settings.rinse_at = TimeOfDay{570};
    settings.rinse_length = VisitMaker::entered<Duration>("4min");
    EXPECT_DOUBLE_EQ(held(settings, Setting::start_temperature)->si, 301.15);
    EXPECT_DOUBLE_EQ(held(settings, Setting::lowest_house_temperature)->si, 291.15);
    EXPECT_DOUBLE_EQ(held(settings, Setting::humidity_cut_off)->si, 0.8);
    EXPECT_DOUBLE_EQ(held(settings, Setting::pad_hours_from)->si, 36000.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::pad_hours_to)->si, 72000.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::period)->si, 300.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::base_on_time)->si, 90.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::on_time_ceiling)->si, 180.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::trim_step)->si, 10.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::trim_dead_band)->si, 5.0 / 9.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::review_interval)->si, 600.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::rinse_at)->si, 570.0 * 60.0);
    EXPECT_DOUBLE_EQ(held(settings, Setting::rinse_length)->si, 240.0);
}

}  // namespace
}  // namespace wetfront::test
