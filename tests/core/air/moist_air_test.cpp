// SPDX-License-Identifier: Apache-2.0
#include "air/moist_air.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "support/data_table.h"

namespace wetfront {
namespace {

using namespace literals;

std::map<std::string, double> inputs_of(const std::string& cell) {
    std::map<std::string, double> inputs;
    std::size_t at = 0;
    while (at < cell.size()) {
        const auto equals = cell.find('=', at);
        const auto end = std::min(cell.find(';', at), cell.size());
        inputs[cell.substr(at, equals - at)] = test::cell_number(cell.substr(equals + 1, end - equals - 1));
        at = end + 1;
    }
    return inputs;
}

AbsolutePressure pascal(double value) {
    return from_si<AbsolutePressure>(value);
}

MoistAir with_humidity(double t, double humidity, double p = 101325.0) {
    return air_from_humidity(celsius(t), from_si<Fraction>(humidity), pascal(p)).value();
}

MoistAir with_wet_bulb(double t, double wet, double p = 101325.0) {
    return air_from_wet_bulb(celsius(t), celsius(wet), pascal(p)).value();
}

// Air of that humidity ratio, found through the relative humidity: pw = p W / (0.621945 + W), ASHRAE 2017
// eq. 20.
MoistAir with_ratio(double t, double ratio, double p) {
    const double vapour = p * ratio / (0.621945 + ratio);
    return with_humidity(t, vapour / in_si(saturation_pressure(celsius(t)).value()), p);
}

// What our functions say for one row of a published table; none: the row asks for something that the folder
// does not offer (dew point, temperature of the standard atmosphere), or lies outside its stated range.
std::optional<double> answer_to(const std::string& function, std::map<std::string, double> in) {
    const bool in_range = !in.contains("t") || (in["t"] >= -40.0 && in["t"] <= 80.0);
    if (function == "pws") {
        return in_si(saturation_pressure(celsius(in["t"])).value());
    }
    if (function == "p_std") {
        const auto pressure = standard_pressure(from_si<Length>(in["z"]));
        return pressure ? std::optional{in_si(pressure.value())} : std::nullopt;
    }
    if (!in_range) {
        return std::nullopt;
    }
    if (function == "Ws") {
        return in_si(with_humidity(in["t"], 1.0, in["p"]).humidity_ratio);
    }
    if (function == "hs") {
        return in_si(with_humidity(in["t"], 1.0, in["p"]).enthalpy);
    }
    if (function == "h_dry") {
        return in_si(with_humidity(in["t"], 0.0).enthalpy);
    }
    if (function == "v_dry") {
        return in_si(with_humidity(in["t"], 0.0, in["p"]).specific_volume);
    }
    if (in.contains("twb")) {
        if (function == "W" || function == "W_from_Twb") {
            return in_si(
                humidity_ratio_from_wet_bulb(celsius(in["t"]), celsius(in["twb"]), pascal(in["p"])).value());
        }
        const auto air = with_wet_bulb(in["t"], in["twb"], in["p"]);
        if (function == "RH") {
            return in_si(air.relative_humidity);
        }
        if (function == "h") {
            return in_si(air.enthalpy);
        }
        if (function == "v") {
            return in_si(air.specific_volume);
        }
    }
    if (function == "Twb") {
        return in_celsius(with_humidity(in["t"], in["RH"], in["p"]).wet_bulb);
    }
    if (in.contains("W") && in.contains("t")) {
        const auto air = with_ratio(in["t"], in["W"], in.contains("p") ? in["p"] : 101325.0);
        if (function == "h") {
            return in_si(air.enthalpy);
        }
        if (function == "v") {
            return in_si(air.specific_volume);
        }
        if (function == "rho") {
            return in_si(air.density);
        }
    }
    return std::nullopt;
}

// Compares every row that can be asked; returns how many that were.
int compare_with(const char* file) {
    int compared = 0;
    for (const auto& row : test::data_rows(file)) {
        const auto got = answer_to(row.at(1), inputs_of(row.at(2)));
        if (!got) {
            continue;
        }
        ++compared;
        const double wanted = test::cell_number(row.at(3));
        const double tolerance = test::cell_number(row.at(5)) * (row.at(6) == "rel" ? std::abs(wanted) : 1.0);
        EXPECT_NEAR(*got, wanted, tolerance) << row.at(0) << ": " << row.at(1) << " at " << row.at(2);
    }
    return compared;
}

TEST(MoistAirTest, handbook_tables_are_met_within_their_stated_tolerance) {
    // 33 rows; left out: three outside -40 to 80 degC or -500 to 4000 m, two of the standard atmosphere's
    // temperature and one dew point.
    EXPECT_EQ(compare_with("moist_air_published.csv"), 27);
}

TEST(MoistAirTest, the_equations_are_met_point_by_point) {
    // 9 rows; left out: a dew point, a temperature from enthalpy, and W from vapour pressure above saturation
    // of any stated temperature.
    EXPECT_EQ(compare_with("moist_air_equation_points.csv"), 6);
}

TEST(MoistAirTest, a_second_coarse_table_agrees_to_its_rounding) {
    for (const auto& row : test::data_rows("moist_air_second_table.csv")) {
        const double t = test::cell_number(row.at(0));
        const auto dry = with_humidity(t, 0.0);
        const auto saturated = with_humidity(t, 1.0);
        const double pressure = in_si(saturation_pressure(celsius(t)).value());
        const double wanted_pressure = test::cell_number(row.at(1));
        // The last column is the deviation that an independent evaluation of the equation found, in percent.
        const double deviation = test::cell_number(row.at(5));
        EXPECT_NEAR(100.0 * (pressure / wanted_pressure - 1.0), deviation, 0.006)
            << "saturation pressure at " << t;
        EXPECT_NEAR(in_si(saturated.humidity_ratio), test::cell_number(row.at(2)),
                    0.005 * in_si(saturated.humidity_ratio) + 0.0005)
            << "humidity ratio at " << t;
        EXPECT_NEAR(in_si(dry.specific_volume), test::cell_number(row.at(3)), 0.001) << "dry volume at " << t;
        EXPECT_NEAR(in_si(saturated.specific_volume), test::cell_number(row.at(4)),
                    0.005 * in_si(saturated.specific_volume))
            << "saturated volume at " << t;
    }
}

TEST(MoistAirTest, wet_bulb_and_humidity_lead_back_to_each_other) {
    for (double t = -35.0; t <= 80.0; t += 2.3) {
        for (double humidity = 0.02; humidity <= 1.0; humidity += 0.07) {
            for (const double p : {61e3, 85e3, 101325.0, 109e3}) {
                const auto air = with_humidity(t, humidity, p);
                if (in_celsius(air.wet_bulb) < -40.0) {
                    continue;
                }
                const auto back = air_from_wet_bulb(air.dry_bulb, air.wet_bulb, air.pressure);
                ASSERT_TRUE(back) << t << " degC, " << humidity << ": " << back.error().text();
                EXPECT_NEAR(in_si(back.value().humidity_ratio), in_si(air.humidity_ratio),
                            1e-10 + 1e-10 * in_si(air.humidity_ratio))
                    << t << " degC, humidity " << humidity << ", " << p << " Pa, wet bulb "
                    << in_celsius(air.wet_bulb);
            }
        }
    }
}

TEST(MoistAirTest, saturated_air_has_its_wet_bulb_at_its_dry_bulb) {
    for (const double t : {-30.0, -0.5, 0.0, 0.5, 20.0, 80.0}) {
        EXPECT_NEAR(in_celsius(with_humidity(t, 1.0).wet_bulb), t, 1e-9);
        EXPECT_NEAR(in_si(with_wet_bulb(t, t).relative_humidity), 1.0, 1e-12) << t;
    }
}

TEST(MoistAirTest, more_humidity_never_lowers_the_wet_bulb_across_freezing) {
    double last = -100.0;
    for (int step = 0; step <= 1000; ++step) {
        const double wet = in_celsius(with_humidity(5.0, 0.001 * step).wet_bulb);
        EXPECT_GE(wet, last) << "at " << 0.1 * step << " %";
        last = wet;
    }
}

TEST(MoistAirTest, the_driest_and_hottest_air_has_a_wet_bulb_that_fits_its_equation) {
    const auto air = with_humidity(80.0, 0.0);
    const auto ratio = humidity_ratio_from_wet_bulb(80_degC, air.wet_bulb, air.pressure);
    // A hair below nothing is refused, so only the size can be asked.
    EXPECT_TRUE(!ratio || in_si(ratio.value()) < 1e-9);
    EXPECT_GT(in_celsius(air.wet_bulb), 20.0);
    EXPECT_LT(in_celsius(air.wet_bulb), 30.0);
}

TEST(MoistAirTest, what_lies_outside_the_range_is_named_with_its_limit) {
    const auto cold = air_from_humidity(celsius(-40.1), 50_percent, 101325_Pa);
    ASSERT_FALSE(cold);
    EXPECT_EQ(cold.error().item, "dry bulb");
    EXPECT_EQ(cold.error().read, "-40.1 degC");
    EXPECT_EQ(cold.error().accepted, "-40 to 80 degC");
    EXPECT_FALSE(air_from_humidity(celsius(80.1), 50_percent, 101325_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, 50_percent, 59999_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, 50_percent, 110001_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, from_si<Fraction>(1.01), 101325_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, from_si<Fraction>(-0.01), 101325_Pa));
    EXPECT_FALSE(air_from_humidity(celsius(std::nan("")), 50_percent, 101325_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, from_si<Fraction>(std::nan("")), 101325_Pa));
    EXPECT_FALSE(air_from_humidity(20_degC, 50_percent, pascal(std::nan(""))));
    EXPECT_FALSE(standard_pressure(from_si<Length>(-501.0)));
    EXPECT_FALSE(standard_pressure(4001_m));
    EXPECT_FALSE(saturation_pressure(celsius(-100.1)));
    EXPECT_FALSE(saturation_pressure(celsius(200.1)));
}

TEST(MoistAirTest, the_ends_of_the_range_are_inside_it) {
    EXPECT_TRUE(air_from_humidity(celsius(-40.0), 50_percent, 60000_Pa));
    EXPECT_TRUE(air_from_humidity(80_degC, 100_percent, 110000_Pa));
    EXPECT_TRUE(standard_pressure(from_si<Length>(-500.0)));
    EXPECT_TRUE(standard_pressure(4000_m));
}

TEST(MoistAirTest, a_wet_bulb_above_the_dry_bulb_is_refused) {
    const auto air = air_from_wet_bulb(30_degC, 30.1_degC, 101325_Pa);
    ASSERT_FALSE(air);
    EXPECT_EQ(air.error().item, "wet bulb");
}

TEST(MoistAirTest, a_wet_bulb_that_no_air_can_have_is_refused) {
    // Bone-dry air of 40 degC has its wet bulb near 14 degC.
    EXPECT_FALSE(air_from_wet_bulb(40_degC, 5_degC, 101325_Pa));
    EXPECT_TRUE(air_from_wet_bulb(40_degC, 15_degC, 101325_Pa));
}

}  // namespace
}  // namespace wetfront
