// SPDX-License-Identifier: Apache-2.0
#include "cycle/pad_hours.h"

#include <gtest/gtest.h>

#include <cmath>

#include "own_margins.h"
#include "pad/wet_pad.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;
using When = HelpfulHours::When;

constexpr double hour = 3600.0;

Temperature fahrenheit(double value) {
    return from_si<Temperature>((value + 459.67) * 5.0 / 9.0);
}

MoistAir air(double dry, double wet) {
    return air_from_wet_bulb(celsius(dry), celsius(wet), 101325_Pa).value();
}

DesignDay day_of(double dry, double wet, double range) {
    return design_day(air(dry, wet), from_si<TemperatureDifference>(range)).value();
}

HelpfulHours hours_of(const DesignDay& day, double start = 28.0, const CycleMargins& margins = {}) {
    return helpful_hours(day, celsius(start), 75_percent, margins).value();
}

TEST(ServingHumidityTest, it_is_where_the_published_cooling_is_found) {
    test::OutsideCheck check{"humidity up to which a pad cools by a given amount, at 80 degF",
                             "University of Georgia, worked out in its terms: 3.6 degF at 80 %, 2.6 degF at "
                             "85 % (second hand); pads "
                             "of 70 to 75 %: Poultry Housing Tips 26(4), 2014",
                             "%"};
    const auto humidity = [](double cooling) {
        CycleMargins margins;
        margins.least_cooling = from_si<TemperatureDifference>(cooling * 5.0 / 9.0);
        return 100.0 * in_si(serving_humidity(fahrenheit(80.0), 72.5_percent, 101325_Pa, margins).value());
    };
    check.near("3.6 degF", humidity(3.6), 80.0, 1.0);
    check.near("2.6 degF", humidity(2.6), 85.0, 1.0);
}

TEST(ServingHumidityTest, at_that_humidity_the_pad_cools_by_just_that_much) {
    for (const double e : {0.5, 0.75, 0.9}) {
        const auto humidity =
            serving_humidity(celsius(28.3), from_si<Fraction>(e), from_si<AbsolutePressure>(95e3)).value();
        const auto outside =
            air_from_humidity(celsius(28.3), humidity, from_si<AbsolutePressure>(95e3)).value();
        const auto behind = air_behind_pad(outside, from_si<Fraction>(e)).value();
        EXPECT_NEAR(in_kelvin(outside.dry_bulb) - in_kelvin(behind.dry_bulb), 2.0, 1e-6) << e;
    }
}

TEST(ServingHumidityTest, a_worse_pad_or_a_cooler_start_never_raises_it) {
    double last = 1.0;
    for (const double e : {0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3}) {
        const double humidity =
            in_si(serving_humidity(celsius(28.0), from_si<Fraction>(e), 101325_Pa).value());
        EXPECT_LT(humidity, last) << e;
        last = humidity;
    }
    last = 1.0;
    for (const double start : {34.0, 32.0, 30.0, 28.0, 26.0, 24.0}) {
        const double humidity = in_si(serving_humidity(celsius(start), 75_percent, 101325_Pa).value());
        EXPECT_LT(humidity, last) << start;
        last = humidity;
    }
}

TEST(ServingHumidityTest, a_pad_that_can_never_cool_that_much_is_an_error) {
    EXPECT_TRUE(serving_humidity(celsius(28.0), 12_percent, 101325_Pa));
    EXPECT_FALSE(serving_humidity(celsius(28.0), 8_percent, 101325_Pa));  // 25 K below: none so dry
    EXPECT_FALSE(serving_humidity(celsius(28.0), 0_percent, 101325_Pa));
    EXPECT_FALSE(serving_humidity(celsius(28.0), 101_percent, 101325_Pa));
}

TEST(ServingHumidityTest, a_humidity_is_rounded_down_to_its_step) {
    EXPECT_NEAR(in_si(rounded_down(79.99_percent, 1_percent)), 0.79, 1e-12);
    EXPECT_NEAR(in_si(rounded_down(80_percent, 1_percent)), 0.80, 1e-12);
    EXPECT_NEAR(in_si(rounded_down(79.99_percent, 5_percent)), 0.75, 1e-12);
}

// 36 degC less 12 K times the share falls to 28.3333 degC at a share of 0.63889: between 8 (0.74) and 9 h
// (0.55) at 8.53216, between 21 (0.59) and 22 h (0.68) at 21.54321; the clock is 1 h ahead.
TEST(HelpfulHoursTest, they_begin_and_end_where_it_is_as_hot_outside_as_the_start_temperature) {
    const auto answer = helpful_hours(day_of(36.0, 22.0, 12.0), fahrenheit(83.0), 75_percent).value();
    ASSERT_EQ(answer.when, When::some);
    EXPECT_NEAR(in_seconds(answer.hours.from) / hour, 9.53216, 1e-4);
    EXPECT_NEAR(in_seconds(answer.hours.to) / hour, 22.54321, 1e-4);
    EXPECT_EQ(answer.hours.ended_by, HoursEnd::cool_enough);
}

TEST(HelpfulHoursTest, the_clock_stands_as_far_ahead_of_the_sun_as_is_said) {
    CycleMargins sun;
    sun.clock_ahead_of_sun = 0_s;
    const auto day = day_of(36.0, 22.0, 12.0);
    EXPECT_NEAR(in_seconds(hours_of(day).hours.from - hours_of(day, 28.0, sun).hours.from), hour, 1e-6);
    EXPECT_NEAR(in_seconds(hours_of(day).hours.to - hours_of(day, 28.0, sun).hours.to), hour, 1e-6);
}

TEST(HelpfulHoursTest, a_day_that_only_just_reaches_the_start_has_its_hottest_hour) {
    const auto day = day_of(30.0, 22.0, 10.0);
    EXPECT_EQ(hours_of(day, 29.999).when, When::some);
    const auto missed = hours_of(day, 30.001);
    EXPECT_EQ(missed.when, When::never);
    EXPECT_EQ(missed.kept_by, HoursEnd::cool_enough);
}

// e (33 - T_wb) = 2.0 K at 30.333 degC wet bulb and e = 0.75.
TEST(HelpfulHoursTest, a_day_too_damp_for_pads_has_none) {
    EXPECT_EQ(hours_of(day_of(33.0, 30.32, 8.0)).when, When::some);
    const auto damp = hours_of(day_of(33.0, 30.35, 8.0));
    EXPECT_EQ(damp.when, When::never);
    EXPECT_EQ(damp.kept_by, HoursEnd::too_humid);
}

// As damp as that, but above 35 degC no humidity may stop pads: 37 degC less 10 K times the share is 35 degC
// at 0.2, between 17 (0.14) and 18 h (0.24) at 17.6; the clock is 1 h ahead.
TEST(HelpfulHoursTest, where_it_is_too_hot_for_birds_damp_air_ends_no_hours) {
    const auto hot = hours_of(day_of(37.0, 35.5, 10.0));
    ASSERT_EQ(hot.when, When::some);
    EXPECT_EQ(hot.hours.ended_by, HoursEnd::too_humid);
    EXPECT_NEAR(in_seconds(hot.hours.to) / hour, 18.6, 1e-6);
}

TEST(HelpfulHoursTest, a_day_and_a_night_above_the_start_has_no_end) {
    EXPECT_EQ(hours_of(day_of(38.0, 22.0, 9.9)).when, When::always);
    EXPECT_EQ(hours_of(day_of(38.0, 22.0, 10.1)).when, When::some);
}

TEST(HelpfulHoursTest, a_hotter_day_never_shortens_them_and_a_damper_one_never_lengthens_them) {
    for (const double range : {4.0, 8.0, 12.0, 20.0}) {
        double length = 0.0;
        for (double dry = 26.0; dry <= 46.0; dry += 0.25) {
            const auto answer = hours_of(day_of(dry, 24.0, range));
            const double now = answer.when == When::always ? 24.0 * hour
                               : answer.when == When::some ? in_seconds(answer.hours.to - answer.hours.from)
                                                           : 0.0;
            EXPECT_GE(now, length - 1e-6) << dry << " degC, range " << range;
            length = now;
        }
        EXPECT_GT(length, 0.0);
        length = 24.0 * hour;
        for (double wet = 18.0; wet <= 33.9; wet += 0.25) {
            const auto answer = hours_of(day_of(34.0, wet, range));
            const double now = answer.when == When::always ? 24.0 * hour
                               : answer.when == When::some ? in_seconds(answer.hours.to - answer.hours.from)
                                                           : 0.0;
            EXPECT_LE(now, length + 1e-6) << wet << " degC wet, range " << range;
            length = now;
        }
        EXPECT_EQ(length, 0.0);
    }
}

ColumnRates rates() {
    return {from_si<Rate>(1.0 / 120.0), from_si<Rate>(0.7 / 1200.0), 0.7};
}

// b t = 0.7 at the first dry patch, then phi = exp(-b t / 0.3) falls to 0.05 after 0.3 ln 20: b t =
// 1.5987197. In the weather of the test b = 0.7 / 1200 s: 2740.66 s, the 46th minute.
TEST(DryDownTest, in_the_weather_of_the_test_it_takes_what_the_column_says) {
    const auto takes =
        dry_down(rates(), air(36.0, 24.0), 75_percent, day_of(36.0, 24.0, 0.0), seconds(20 * hour));
    EXPECT_EQ(takes.value(), std::optional{seconds(46.0 * 60.0)});
}

// Hour by hour: each takes away b R of the 1.5987197, R from the two weathers.
TEST(DryDownTest, each_hour_of_an_evening_dries_by_its_own_weather) {
    const auto day = day_of(36.0, 24.0, 14.0);
    const auto test_air = air(36.0, 24.0);
    double left = 1.5987197;
    double t = 0.0;
    const double from = 18.5 * hour;  // by the sun
    while (left > 0.0) {
        const auto end_of_hour = static_cast<std::size_t>((from + t) / hour) + 1;
        const double ratio = evaporation_ratio(day.hours.at(end_of_hour), test_air, 75_percent).value();
        left -= 0.7 / 1200.0 * ratio;
        t += 1.0;
    }
    ASSERT_GT(t, 0.5 * hour + 600.0);  // into the next hour, with its weather
    const auto takes = dry_down(rates(), test_air, 75_percent, day, seconds(from + hour)).value();
    ASSERT_TRUE(takes);
    EXPECT_NEAR(in_seconds(*takes), t, 61.0);
}

TEST(DryDownTest, a_pad_in_damp_night_air_does_not_dry_in_four_hours) {
    CycleMargins patient;
    patient.longest_dry_down = seconds(12.0 * hour);
    const auto day = day_of(32.0, 26.0, 8.0);
    const auto test_air = air(36.0, 22.0);
    EXPECT_EQ(dry_down(rates(), test_air, 75_percent, day, seconds(20.0 * hour)).value(), std::nullopt);
    const auto midday = dry_down(rates(), test_air, 75_percent, day, seconds(12.0 * hour)).value();
    ASSERT_TRUE(midday);
    EXPECT_GT(*midday, seconds(46.0 * 60.0));
    EXPECT_TRUE(dry_down(rates(), test_air, 75_percent, day, seconds(9.0 * hour), patient).value());
}

TEST(DryDownTest, a_test_in_saturated_air_says_nothing) {
    EXPECT_FALSE(dry_down(rates(), air(30.0, 30.0), 75_percent, day_of(36.0, 24.0, 10.0), seconds(0.0)));
}

TEST(MostEvaporationTest, it_is_at_the_hottest_hour_where_the_water_in_the_air_stays_the_same) {
    for (const double wet : {16.0, 22.0, 28.0}) {
        EXPECT_EQ(hour_of_most_evaporation(day_of(36.0, wet, 14.0), 75_percent).value(), 14) << wet;
    }
}

}  // namespace
}  // namespace wetfront
