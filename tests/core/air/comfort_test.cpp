// SPDX-License-Identifier: Apache-2.0
#include "air/comfort.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr const char* source =
    "Tao and Xin 2003, Trans. ASAE 46(2):491-497, from its abstract; worked by hand";

MoistAir air(double t, double wet) {
    return air_from_wet_bulb(celsius(t), celsius(wet), 101325_Pa).value();
}

TEST(ComfortTest, the_index_weighs_dry_and_wet_bulb) {
    test::OutsideCheck check{"temperature-humidity index", source, "K"};
    // 0.85 * 38 + 0.15 * 24 = 32.3 + 3.6
    check.near("38 and 24 degC", in_celsius(temperature_humidity_index(air(38.0, 24.0))), 35.9, 1e-9);
    // 0.85 * 20 + 0.15 * 10 = 17 + 1.5
    check.near("20 and 10 degC", in_celsius(temperature_humidity_index(air(20.0, 10.0))), 18.5, 1e-9);
    // Saturated: both weights add up to 1.
    check.near("30 degC saturated", in_celsius(temperature_humidity_index(air(30.0, 30.0))), 30.0, 1e-9);
}

TEST(ComfortTest, wind_lowers_the_index_above_one_metre_per_second_and_raises_it_below) {
    test::OutsideCheck check{"temperature-humidity-velocity index", source, "K"};
    const auto index = [](double v) {
        return in_celsius(temperature_humidity_velocity_index(air(38.0, 24.0), from_si<Velocity>(v)).value());
    };
    check.near("1 m/s", index(1.0), 35.9, 1e-9);
    // ln 0.2 = -1.609438, times -0.058 = 0.0933474; e^0.0933474 = 1.0978431; times 35.9
    check.near("0.2 m/s", index(0.2), 39.41257, 1e-4);
    // ln 1.2 = 0.1823216, times -0.058 = -0.0105747; e^-0.0105747 = 0.9894810; times 35.9
    check.near("1.2 m/s", index(1.2), 35.52237, 1e-4);
}

TEST(ComfortTest, the_index_with_wind_is_given_only_where_it_was_tested) {
    EXPECT_TRUE(temperature_humidity_velocity_index(air(35.0, 24.0), 0.2_mps));
    EXPECT_TRUE(temperature_humidity_velocity_index(air(41.0, 24.0), 1.2_mps));
    const auto mild = temperature_humidity_velocity_index(air(34.9, 24.0), 0.5_mps);
    ASSERT_FALSE(mild);
    EXPECT_EQ(mild.error().item, "dry bulb");
    EXPECT_EQ(mild.error().read, "34.9 degC");
    EXPECT_FALSE(temperature_humidity_velocity_index(air(41.1, 24.0), 0.5_mps));
    const auto windy = temperature_humidity_velocity_index(air(38.0, 24.0), 1.21_mps);
    ASSERT_FALSE(windy);
    EXPECT_EQ(windy.error().item, "air velocity");
    EXPECT_EQ(windy.error().read, "1.21 m/s");
    EXPECT_FALSE(temperature_humidity_velocity_index(air(38.0, 24.0), 0.19_mps));
    EXPECT_FALSE(temperature_humidity_velocity_index(air(38.0, 24.0), from_si<Velocity>(std::nan(""))));
}

}  // namespace
}  // namespace wetfront
