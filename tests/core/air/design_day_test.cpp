// SPDX-License-Identifier: Apache-2.0
#include "air/design_day.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr const char* source = "ASHRAE Handbook - Fundamentals 2021 (SI), ch. 14, table 8 (second hand)";

MoistAir hottest(double dry, double wet) {
    return air_from_wet_bulb(celsius(dry), celsius(wet), 101325_Pa).value();
}

// The row's clock is 2 h ahead of the sun.
std::size_t solar_hour(const std::vector<std::string>& row) {
    return (static_cast<std::size_t>(test::cell_number(row[0])) + 22) % 24;
}

TEST(DesignDayTest, each_hour_is_as_warm_as_the_published_example) {
    test::OutsideCheck check{"dry bulb of the design day", source, "K"};
    const auto day = design_day(hottest(33.1, 23.5), 11.2_K).value();
    for (const auto& row : test::data_rows("design_day.csv")) {
        // Printed to a tenth.
        check.near("clock " + row[0] + " h", in_celsius(day.hours.at(solar_hour(row)).dry_bulb),
                   test::cell_number(row[1]), 0.051);
    }
}

TEST(DesignDayTest, water_in_the_air_stays_the_same_about_as_in_the_published_example) {
    test::OutsideCheck check{"dew point of the design day, its water taken as the same all day", source, "K"};
    // At sea level; pressure moves a dew point from the wet bulb by a tenth or two.
    const auto day = design_day(hottest(33.1, 23.5), 11.2_K).value();
    for (const auto& row : test::data_rows("design_day.csv")) {
        const auto& air = day.hours.at(solar_hour(row));
        ASSERT_TRUE(air.dew_point);
        check.near("clock " + row[0] + " h", in_celsius(*air.dew_point), test::cell_number(row[2]), 0.3);
    }
}

TEST(DesignDayTest, the_hottest_hour_is_what_was_entered_to_the_last_digit) {
    const auto air = hottest(36.0, 24.0);
    const auto day = design_day(air, 12_K).value();
    for (const std::size_t hour : {14U, 15U}) {
        EXPECT_EQ(in_kelvin(day.hours.at(hour).dry_bulb), in_kelvin(air.dry_bulb));
        EXPECT_EQ(in_kelvin(day.hours.at(hour).wet_bulb), in_kelvin(air.wet_bulb));
    }
    EXPECT_NEAR(in_celsius(day.hours[5].dry_bulb), 24.0, 1e-9);  // the whole range below
}

TEST(DesignDayTest, without_a_range_all_hours_are_the_hottest) {
    const auto day = design_day(hottest(36.0, 24.0), 0_K).value();
    for (const auto& hour : day.hours) {
        EXPECT_EQ(in_celsius(hour.dry_bulb), in_celsius(36_degC));
    }
}

TEST(DesignDayTest, hours_too_cool_for_the_water_are_saturated_and_no_more) {
    // Dew point of 30 degC / 27 degC wet lies near 26 degC: the night at 18 degC cannot hold that much.
    const auto air = hottest(30.0, 27.0);
    const auto day = design_day(air, 12_K).value();
    for (std::size_t h = 0; h < 24; ++h) {
        const auto& hour = day.hours.at(h);
        EXPECT_LE(in_si(hour.relative_humidity), 1.0 + 1e-9) << h;
        EXPECT_LE(in_si(hour.humidity_ratio), in_si(air.humidity_ratio) * (1.0 + 1e-9)) << h;
        EXPECT_LE(in_kelvin(hour.wet_bulb), in_kelvin(hour.dry_bulb) + 1e-6) << h;
        if (in_celsius(hour.dry_bulb) > 27.0) {
            EXPECT_NEAR(in_si(hour.humidity_ratio), in_si(air.humidity_ratio), 1e-12) << h;
        }
    }
    EXPECT_NEAR(in_si(day.hours[5].relative_humidity), 1.0, 1e-9);
}

TEST(DesignDayTest, a_range_outside_its_limits_is_an_error_that_names_it) {
    const auto air = hottest(36.0, 24.0);
    EXPECT_TRUE(design_day(air, 35_K));
    for (const double range : {35.01, -0.01, std::nan("")}) {
        const auto day = design_day(air, from_si<TemperatureDifference>(range));
        ASSERT_FALSE(day) << range;
        EXPECT_EQ(day.error().item, "daily range");
    }
}

}  // namespace
}  // namespace wetfront
