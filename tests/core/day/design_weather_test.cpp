// SPDX-License-Identifier: Apache-2.0
#include "day/design_weather.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/data_table.h"
#include "support/outside_check.h"
#include "support/visit_builder.h"

namespace wetfront {
namespace {

using namespace literals;
using namespace std::chrono_literals;

constexpr auto a_day = 2026y / std::chrono::July / 15;

DesignDay day_of(double dry, double wet, double range) {
    const auto hottest = air_from_wet_bulb(celsius(dry), celsius(wet), 101325_Pa).value();
    return design_day(hottest, from_si<TemperatureDifference>(range)).value();
}

Weather on_the_clock(const DesignDay& day, Duration ahead) {
    return design_day_weather(day, ahead, a_day, -300).value();
}

// The published example's clock is 2 h ahead of the sun, and its table goes by the clock.
TEST(DesignWeatherTest, each_hour_of_the_clock_is_as_warm_as_the_published_example) {
    test::OutsideCheck check{"dry bulb of the design day by the clock",
                             "ASHRAE Handbook - Fundamentals 2021 (SI), ch. 14, table 8 (second hand)", "K"};
    const auto weather = on_the_clock(day_of(33.1, 23.5, 11.2), 2.0 * 3600_s);
    for (const auto& row : test::data_rows("design_day.csv")) {
        // Printed to a tenth.
        const auto hour = static_cast<std::size_t>(test::cell_number(row[0]));
        check.near("clock " + row[0] + " h", in_celsius(weather.hours.at(hour).dry_bulb),
                   test::cell_number(row[1]), 0.051);
    }
}

TEST(DesignWeatherTest, the_day_goes_from_midnight_to_midnight_of_its_date) {
    const auto weather = on_the_clock(day_of(36.0, 24.0, 12.0), 3600_s);
    EXPECT_EQ(to_iso8601(weather.from), "2026-07-15T00:00:00.000-05:00");
    ASSERT_EQ(weather.hours.size(), 25U);
    EXPECT_EQ(in_kelvin(weather.hours.back().dry_bulb), in_kelvin(weather.hours.front().dry_bulb));
    EXPECT_EQ(weather.source, "design day");
}

TEST(DesignWeatherTest, a_clock_that_goes_by_the_sun_shows_the_hours_of_the_day_as_they_are) {
    const auto day = day_of(36.0, 24.0, 12.0);
    const auto weather = on_the_clock(day, 0_s);
    for (std::size_t h = 0; h < 24; ++h) {
        EXPECT_EQ(in_kelvin(weather.hours.at(h).dry_bulb), in_kelvin(day.hours.at(h).dry_bulb)) << h;
        EXPECT_EQ(in_si(weather.hours.at(h).humidity_ratio), in_si(day.hours.at(h).humidity_ratio)) << h;
    }
}

TEST(DesignWeatherTest, a_clock_an_hour_ahead_shows_each_hour_an_hour_later) {
    const auto day = day_of(36.0, 24.0, 12.0);
    const auto weather = on_the_clock(day, 3600_s);
    for (std::size_t h = 0; h < 24; ++h) {
        EXPECT_EQ(in_kelvin(weather.hours.at(h + 1).dry_bulb), in_kelvin(day.hours.at(h).dry_bulb)) << h;
    }
}

TEST(DesignWeatherTest, a_clock_of_part_hours_lies_between_two_hours_of_the_sun) {
    const auto day = day_of(36.0, 24.0, 12.0);
    const auto weather = on_the_clock(day, 5400_s);
    // 12:00 by the clock is 10:30 by the sun: half way between shares 0.38 and 0.23 of 12 K below 36 degC.
    EXPECT_NEAR(in_celsius(weather.hours.at(12).dry_bulb), 36.0 - 12.0 * 0.305, 1e-9);
}

TEST(DesignWeatherTest, between_two_states_dry_bulb_and_water_change_evenly) {
    const auto cool = air_from_humidity(20_degC, 50_percent, 100000_Pa).value();
    const auto warm = air_from_humidity(30_degC, 40_percent, 101000_Pa).value();
    const auto between = air_between(cool, warm, 0.25).value();
    EXPECT_NEAR(in_celsius(between.dry_bulb), 22.5, 1e-9);
    EXPECT_NEAR(in_si(between.humidity_ratio),
                0.75 * in_si(cool.humidity_ratio) + 0.25 * in_si(warm.humidity_ratio), 1e-15);
    EXPECT_DOUBLE_EQ(in_si(between.pressure), 100000.0);
    EXPECT_EQ(in_kelvin(air_between(cool, warm, 0.0).value().wet_bulb), in_kelvin(cool.wet_bulb));
    EXPECT_NEAR(in_celsius(air_between(cool, warm, 1.0).value().dry_bulb), 30.0, 1e-9);
}

TEST(DesignWeatherTest, between_two_saturated_states_is_saturated_air_and_no_more) {
    const auto cool = air_from_humidity(24_degC, 100_percent, 101325_Pa).value();
    const auto warm = air_from_humidity(27_degC, 100_percent, 101325_Pa).value();
    const auto between = air_between(cool, warm, 0.5).value();
    EXPECT_NEAR(in_si(between.relative_humidity), 1.0, 1e-12);
    const double line = 0.5 * (in_si(cool.humidity_ratio) + in_si(warm.humidity_ratio));
    EXPECT_GT(line, in_si(between.humidity_ratio));
    EXPECT_LT(line - in_si(between.humidity_ratio), 1e-4);
}

TEST(DesignWeatherTest, a_humid_night_can_be_shown_by_any_clock) {
    const auto day = day_of(30.0, 27.0, 12.0);
    for (int minutes = 0; minutes <= 180; minutes += 15) {
        EXPECT_TRUE(design_day_weather(day, seconds(60.0 * minutes), a_day, 0)) << minutes;
    }
}

TEST(DesignWeatherTest, the_day_of_a_farm_is_that_of_the_visit_by_its_clock) {
    test::VisitBuilder made;
    made.both_weathers();
    made.file().farm.design_daily_range = test::typed<TemperatureDifference>("12K");
    const auto weather = design_weather_of(made.file(), advise(made.file())).value();
    EXPECT_EQ(to_iso8601(weather.from), "2026-07-01T00:00:00.000-05:00");
    EXPECT_NEAR(in_celsius(weather.hours.at(16).dry_bulb), 36.0, 1e-9);  // 15 by the sun
    made.file().farm.design_daily_range.reset();
    const auto without = design_weather_of(made.file(), advise(made.file()));
    ASSERT_FALSE(without);
    EXPECT_NE(without.error().accepted.find("daily range"), std::string::npos);
}

TEST(DesignWeatherTest, a_day_of_no_calendar_is_refused) {
    EXPECT_FALSE(design_day_weather(day_of(36.0, 24.0, 12.0), 0_s, 2026y / std::chrono::February / 29, 0));
}

}  // namespace
}  // namespace wetfront
