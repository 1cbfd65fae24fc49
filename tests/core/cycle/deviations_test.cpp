// SPDX-License-Identifier: Apache-2.0
#include "cycle/deviations.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

constexpr double minutes = 60.0;

SettingAdvice advised(Setting setting, const AnyQuantity& value) {
    return {setting, value, {}};
}

/// Pads until midnight, 80 s in every 5 min.
TimerAdvice cycle() {
    TimerAdvice advice;
    advice.cycled = true;
    advice.when_pads_may_run = {
        advised(Setting::pad_hours_to, any(seconds(24.0 * 60.0 * minutes), Scale::clock))};
    advice.cycle = {advised(Setting::period, any(seconds(300.0))),
                    advised(Setting::base_on_time, any(seconds(80.0)))};
    return advice;
}

TimerSettings run(double on_s, double period_s) {
    TimerSettings settings;
    settings.base_on_time = Entered<Duration>::of(seconds(on_s));
    settings.period = Entered<Duration>::of(seconds(period_s));
    return settings;
}

TEST(DeviationsTest, as_advised_there_is_none) {
    EXPECT_TRUE(deviations(run(80.0, 300.0), cycle()).empty());
    EXPECT_TRUE(deviations(TimerSettings{}, cycle()).empty());
}

TEST(DeviationsTest, below_and_above_mean_different_things) {
    const auto below = deviation(run(79.0, 300.0), cycle(), Setting::base_on_time);
    const auto above = deviation(run(81.0, 300.0), cycle(), Setting::base_on_time);
    ASSERT_TRUE(below && above);
    EXPECT_TRUE(below->meaning.text.starts_with("Shorter")) << below->meaning.text;
    EXPECT_TRUE(above->meaning.text.starts_with("Longer")) << above->meaning.text;
}

TEST(DeviationsTest, every_setting_has_a_meaning_on_either_side) {
    for (const auto setting : all_settings) {
        TimerSettings settings = run(100.0, 100.0);
        settings.start_temperature = Entered<Temperature>::of(from_si<Temperature>(100.0));
        settings.lowest_house_temperature = settings.start_temperature;
        settings.humidity_cut_off = Entered<Fraction>::of(from_si<Fraction>(100.0));
        settings.pad_hours_from = settings.pad_hours_to = settings.rinse_at = TimeOfDay{12 * 60};
        settings.on_time_ceiling = settings.review_interval = settings.rinse_length = settings.period;
        settings.trim_rows = {
            {Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(100.0)), settings.period}};
        const auto value = held(settings, setting);
        ASSERT_TRUE(value) << key_of(setting);
        Message meanings[2];
        for (const int side : {0, 1}) {
            TimerAdvice advice;
            advice.cycled = true;
            auto other = *value;
            other.si += side == 0 ? 60.0 : -60.0;
            advice.cycle = {advised(setting, other)};
            if (setting == Setting::trim_dead_band) {
                // A row is advised by its step.
                advice.cycle.push_back(advised(Setting::trim_step, any(seconds(100.0))));
            }
            const auto found = deviation(settings, advice, setting);
            ASSERT_TRUE(found) << key_of(setting);
            meanings[side] = found->meaning;
        }
        EXPECT_FALSE(meanings[0].empty()) << key_of(setting);
        EXPECT_FALSE(meanings[1].empty()) << key_of(setting);
        EXPECT_FALSE(meanings[0] == meanings[1]) << key_of(setting);
    }
}

TEST(DeviationsTest, midnight_ends_the_day_that_half_past_eleven_is_in) {
    TimerSettings settings;
    settings.pad_hours_to = TimeOfDay{0};
    EXPECT_FALSE(deviation(settings, cycle(), Setting::pad_hours_to));
    settings.pad_hours_to = TimeOfDay{23 * 60 + 30};
    const auto earlier = deviation(settings, cycle(), Setting::pad_hours_to);
    ASSERT_TRUE(earlier);
    EXPECT_TRUE(earlier->meaning.text.starts_with("Earlier")) << earlier->meaning.text;
    settings.pad_hours_to = TimeOfDay{30};
    const auto later = deviation(settings, cycle(), Setting::pad_hours_to);
    ASSERT_TRUE(later);
    EXPECT_TRUE(later->meaning.text.starts_with("Later")) << later->meaning.text;
}

TEST(DeviationsTest, without_rest_any_period_is_as_advised_where_no_rest_is_advised) {
    TimerAdvice advice;
    advice.continuous = {advised(Setting::period, any(seconds(300.0))),
                         advised(Setting::base_on_time, any(seconds(300.0)))};
    EXPECT_TRUE(deviations(run(600.0, 600.0), advice).empty());
    EXPECT_FALSE(deviations(run(500.0, 600.0), advice).empty());
}

TEST(DeviationsTest, what_is_left_is_compared_with_what_the_controller_can_hold) {
    auto advice = cycle();
    auto& fit = advice.fit.emplace();
    fit.settings.base_on_time = Entered<Duration>::of(seconds(84.0));
    fit.settings.period = Entered<Duration>::of(seconds(300.0));
    EXPECT_TRUE(deviations(run(84.0, 300.0), advice).empty()) << "rounded to its steps";
    const auto found = deviation(run(80.0, 300.0), advice, Setting::base_on_time);
    ASSERT_TRUE(found) << "as advised before rounding, which it cannot hold";
    EXPECT_EQ(found->advised.si, 84.0);
}

TEST(DeviationsTest, every_trim_row_counts_and_one_that_is_not_advised_is_to_change_nothing) {
    auto advice = cycle();
    advice.cycle.push_back(advised(Setting::trim_dead_band, {Kind::temperature_difference, 1.0}));
    advice.cycle.push_back(advised(Setting::trim_step, any(seconds(10.0))));
    const auto row = [](double above, double change) {
        return TrimRow{Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(above)),
                       Entered<Duration>::of(seconds(change))};
    };
    auto left = run(80.0, 300.0);
    left.trim_rows = {row(1.0, 10.0), row(3.0, 0.0)};
    EXPECT_TRUE(deviations(left, advice).empty()) << "a row that changes nothing";
    left.trim_rows[1] = row(3.0, 20.0);
    const auto found = deviations(left, advice);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].setting, Setting::trim_step);
    EXPECT_EQ(found[0].row, 1U);
    EXPECT_EQ(found[0].advised.si, 0.0);
}

TEST(DeviationsTest, without_rest_counted_from_a_full_header_is_as_advised_too) {
    TimerAdvice advice;
    auto& fit = advice.fit.emplace();
    fit.settings.period = Entered<Duration>::of(seconds(300.0));
    fit.settings.base_on_time = Entered<Duration>::of(seconds(255.0));  // and 45 s of filling
    EXPECT_TRUE(deviations(run(255.0, 300.0), advice).empty());
    EXPECT_TRUE(deviations(run(280.0, 300.0), advice).empty());
    EXPECT_FALSE(deviations(run(200.0, 300.0), advice).empty());
}

}  // namespace
}  // namespace wetfront
