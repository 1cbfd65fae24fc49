// SPDX-License-Identifier: Apache-2.0
#include "air/moist_air.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <memory>
#include <set>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"

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

MoistAir with_dew_point(double t, double dew, double p = 101325.0) {
    return air_from_dew_point(celsius(t), celsius(dew), pascal(p)).value();
}

MoistAir with_ratio(double t, double ratio, double p) {
    return air_from_humidity_ratio(celsius(t), from_si<HumidityRatio>(ratio), pascal(p)).value();
}

// What our functions say for one row of a published table; none: the row asks for something that the folder
// does not offer (temperature of the standard atmosphere or from an enthalpy), or lies outside its stated
// range.
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
    if (function == "W_from_pw") {
        // Any dry bulb that can hold so much.
        const double saturated = in_si(saturation_pressure(40_degC).value());
        return in_si(with_humidity(40.0, in["pw"] / saturated, in["p"]).humidity_ratio);
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
        if (function == "tdp") {
            return in_celsius(air.dew_point.value());
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
    if (function == "tdp") {
        return in_celsius(with_humidity(in["t"], in["RH"]).dew_point.value());
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

const std::map<std::string, std::string> subjects{{"pws", "saturation pressure"},
                                                  {"p_std", "pressure by elevation"},
                                                  {"Ws", "humidity ratio of saturated air"},
                                                  {"hs", "enthalpy of saturated air"},
                                                  {"h_dry", "enthalpy of dry air"},
                                                  {"v_dry", "specific volume of dry air"},
                                                  {"W", "humidity ratio from wet bulb"},
                                                  {"W_from_Twb", "humidity ratio from wet bulb"},
                                                  {"W_from_pw", "humidity ratio from vapour pressure"},
                                                  {"RH", "relative humidity from wet bulb"},
                                                  {"tdp", "dew point"},
                                                  {"Twb", "wet bulb"},
                                                  {"h", "enthalpy"},
                                                  {"v", "specific volume"},
                                                  {"rho", "density"}};

// Compares every row that can be asked, temperatures by their difference and all else by its share; returns
// the rows left out.
std::set<std::string> left_out_of(const char* file, const std::string& source) {
    std::map<std::string, std::unique_ptr<test::OutsideCheck>> checks;
    std::set<std::string> left_out;
    for (const auto& row : test::data_rows(file)) {
        const auto& function = row.at(1);
        const auto got = answer_to(function, inputs_of(row.at(2)));
        if (!got) {
            left_out.insert(row.at(0));
            continue;
        }
        const double wanted = test::cell_number(row.at(3));
        const double tolerance = test::cell_number(row.at(5));
        const bool relative = row.at(6) == "rel";
        const bool temperature = row.at(4) == "degC";
        auto& check = checks[subjects.at(function)];
        if (!check) {
            check =
                std::make_unique<test::OutsideCheck>(subjects.at(function), source, temperature ? "K" : "");
        }
        const std::string input = row.at(0) + ", " + row.at(2);
        if (temperature) {
            check->near(input, *got, wanted, relative ? tolerance * std::abs(wanted) : tolerance);
        } else {
            check->within(input, *got, wanted, relative ? tolerance : tolerance / std::abs(wanted));
        }
    }
    return left_out;
}

TEST(MoistAirTest, handbook_tables_are_met_within_their_stated_tolerance) {
    // Left out: two of saturated air at 85 degC, the pressure at 10,000 m (all outside the stated range), and
    // two temperatures of the standard atmosphere, which nothing here needs.
    EXPECT_EQ(
        left_out_of("moist_air_published.csv",
                    "ASHRAE Handbook - Fundamentals 2017 (SI) ch. 1, Tables 1-3 and Example 1; second hand, "
                    "as quoted in the tests of PsychroLib 2.5.0"),
        (std::set<std::string>{"P1-14", "P1-18", "P1-26", "P1-27", "P1-28"}));
}

TEST(MoistAirTest, the_equations_are_met_point_by_point) {
    // Left out: the temperature from an enthalpy, which nothing here needs.
    EXPECT_EQ(
        left_out_of(
            "moist_air_equation_points.csv",
            "spreadsheet of the ASHRAE 2017 equations; second hand, from the tests of PsychroLib 2.5.0"),
        std::set<std::string>{"P2-08"});
}

TEST(MoistAirTest, a_second_coarse_table_agrees_to_its_rounding) {
    const std::string source = "Engineering ToolBox, Moist Air Properties (coarse table)";
    test::OutsideCheck pressures{"saturation pressure", source};
    test::OutsideCheck ratios{"humidity ratio of saturated air", source, "kg/kg"};
    test::OutsideCheck dry_volumes{"specific volume of dry air", source, "m3/kg"};
    test::OutsideCheck saturated_volumes{"specific volume of saturated air", source};
    for (const auto& row : test::data_rows("moist_air_second_table.csv")) {
        const double t = test::cell_number(row.at(0));
        const auto dry = with_humidity(t, 0.0);
        const auto saturated = with_humidity(t, 1.0);
        const double ratio = in_si(saturated.humidity_ratio);
        const std::string input = row.at(0) + " degC";
        pressures.within(input, in_si(saturation_pressure(celsius(t)).value()), test::cell_number(row.at(1)),
                         0.001);
        ratios.near(input, ratio, test::cell_number(row.at(2)), 0.005 * ratio + 0.0005);
        dry_volumes.near(input, in_si(dry.specific_volume), test::cell_number(row.at(3)), 0.001);
        saturated_volumes.within(input, in_si(saturated.specific_volume), test::cell_number(row.at(4)),
                                 0.005);
    }
}

TEST(MoistAirTest, saturation_over_ice_passes_into_saturation_over_water_without_a_step) {
    const double below = in_si(saturation_pressure(celsius(0.01 - 1e-9)).value());
    const double above = in_si(saturation_pressure(celsius(0.01 + 1e-9)).value());
    EXPECT_NEAR(above / below, 1.0, 1e-8);
}

// Eqs. 5 and 6 as printed, in long double.
long double log_saturation_as_printed(long double t) {
    const long double k = t + 273.15L;
    return t < 0.01L ? -5.6745359e3L / k + 6.3925247L - 9.6778430e-3L * k + 6.2215701e-7L * k * k +
                           2.0747825e-9L * std::pow(k, 3.0L) - 9.4840240e-13L * std::pow(k, 4.0L) +
                           4.1635019L * std::log(k)
                     : -5.8002206e3L / k + 1.3914993L - 4.8640239e-2L * k + 4.1764768e-5L * k * k -
                           1.4452093e-8L * std::pow(k, 3.0L) + 6.5459673L * std::log(k);
}

// Eqs. 33 and 35 as printed.
double ratio_as_printed(double t, double wet, double p) {
    const double vapour = static_cast<double>(std::exp(log_saturation_as_printed(wet)));
    const double saturated = 0.621945 * vapour / (p - vapour);
    return wet >= 0.0
               ? ((2501.0 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501.0 + 1.86 * t - 4.186 * wet)
               : ((2830.0 - 0.24 * wet) * saturated - 1.006 * (t - wet)) / (2830.0 + 1.86 * t - 2.1 * wet);
}

TEST(MoistAirTest, the_equations_of_saturation_are_met_as_printed) {
    test::OutsideCheck check{"saturation pressure",
                             "ASHRAE 2017 eqs. 5 and 6, evaluated apart in long double"};
    for (int step = -1000; step <= 2000; ++step) {
        const double t = 0.1 * step;
        check.within(std::to_string(t) + " degC", in_si(saturation_pressure(celsius(t)).value()),
                     static_cast<double>(std::exp(log_saturation_as_printed(t))), 1e-12);
    }
}

// Every kelvin (and closely around freezing), 21 humidities and 6 pressures.
template <class Look>
void over_the_grid(Look look) {
    std::vector<double> temperatures;
    for (int t = -40; t <= 80; ++t) {
        temperatures.push_back(t);
    }
    for (int step = -20; step <= 20; ++step) {
        temperatures.push_back(0.013 * step);
    }
    for (const double t : temperatures) {
        for (const double humidity : {1e-6, 1e-4, 0.001, 0.01, 0.02, 0.05, 0.1,  0.15, 0.2,    0.25, 0.3,
                                      0.4,  0.5,  0.6,   0.7,  0.8,  0.9,  0.95, 0.99, 0.9999, 1.0}) {
            for (const double p : {60e3, 70e3, 80e3, 90e3, 101325.0, 110e3}) {
                look(with_humidity(t, humidity, p), std::to_string(t) + " degC, humidity " +
                                                        std::to_string(humidity) + ", " + std::to_string(p) +
                                                        " Pa");
            }
        }
    }
}

TEST(MoistAirTest, every_wet_bulb_in_range_solves_its_equation) {
    test::OutsideCheck check{"wet bulb, left over in its equation",
                             "ASHRAE 2017 eqs. 33 and 35, evaluated apart in the test", "kg/kg"};
    over_the_grid([&](const MoistAir& air, const std::string& input) {
        const double t = in_celsius(air.dry_bulb);
        const double wet = in_celsius(air.wet_bulb);
        ASSERT_LE(wet, t) << input;
        check.near(input, ratio_as_printed(t, wet, in_si(air.pressure)), in_si(air.humidity_ratio),
                   1e-10 + 1e-9 * in_si(air.humidity_ratio));
    });
}

TEST(MoistAirTest, every_dew_point_in_range_solves_its_equation) {
    test::OutsideCheck check{"dew point, left over in its equation",
                             "ASHRAE 2017 eqs. 5 and 6, evaluated apart in the test", "K"};
    over_the_grid([&](const MoistAir& air, const std::string& input) {
        const double t = in_celsius(air.dry_bulb);
        const auto vapour =
            log_saturation_as_printed(t) + std::log(static_cast<long double>(in_si(air.relative_humidity)));
        if (!air.dew_point) {
            EXPECT_LT(vapour, log_saturation_as_printed(-100.0L)) << input;
            return;
        }
        const double dew = in_celsius(*air.dew_point);
        ASSERT_LE(dew, t) << input;
        const long double slope =
            (log_saturation_as_printed(dew + 0.001L) - log_saturation_as_printed(dew)) / 0.001L;
        // The two equations part by 6e-9 of the pressure where they meet, 1e-7 K.
        check.near(input, static_cast<double>((log_saturation_as_printed(dew) - vapour) / slope), 0.0,
                   1.1e-7);
    });
}

TEST(MoistAirTest, every_state_comes_back_from_its_wet_bulb_its_dew_point_and_its_ratio) {
    const auto expect_same = [](const Result<MoistAir>& back, const MoistAir& air, const std::string& input) {
        ASSERT_TRUE(back) << input << ": " << back.error().text();
        const auto& got = back.value();
        const double limit = 1e-10 + 1e-8 * in_si(air.humidity_ratio);
        EXPECT_NEAR(in_si(got.humidity_ratio), in_si(air.humidity_ratio), limit) << input;
        EXPECT_NEAR(in_si(got.relative_humidity), in_si(air.relative_humidity), 1e-6) << input;
        EXPECT_NEAR(in_si(got.enthalpy), in_si(air.enthalpy), 1e-3) << input;
        EXPECT_NEAR(in_si(got.specific_volume), in_si(air.specific_volume), 1e-7) << input;
        EXPECT_NEAR(in_si(got.density), in_si(air.density), 1e-7) << input;
    };
    over_the_grid([&](const MoistAir& air, const std::string& input) {
        expect_same(air_from_wet_bulb(air.dry_bulb, air.wet_bulb, air.pressure), air, input + " by wet bulb");
        expect_same(air_from_humidity_ratio(air.dry_bulb, air.humidity_ratio, air.pressure), air,
                    input + " by ratio");
        if (air.dew_point) {
            const auto back = air_from_dew_point(air.dry_bulb, *air.dew_point, air.pressure);
            expect_same(back, air, input + " by dew point");
            EXPECT_NEAR(in_celsius(back.value().wet_bulb), in_celsius(air.wet_bulb), 1e-6) << input;
        }
    });
}

TEST(MoistAirTest, dry_air_has_no_dew_point_and_comes_back_from_its_wet_bulb) {
    for (double t = -40.0; t <= 80.0; t += 5.0) {
        const auto dry = with_humidity(t, 0.0);
        EXPECT_FALSE(dry.dew_point) << t;
        EXPECT_EQ(in_si(dry.humidity_ratio), 0.0) << t;
        const auto back = with_wet_bulb(t, in_celsius(dry.wet_bulb));
        EXPECT_LT(in_si(back.humidity_ratio), 1e-9) << t;
    }
}

TEST(MoistAirTest, a_dew_point_below_freezing_is_that_of_frost) {
    // pws over ice at -10 degC: exp of eq. 5 is 259.9 Pa (over water it would be 286.5 Pa).
    const auto air = with_dew_point(20.0, -10.0);
    EXPECT_NEAR(in_si(air.relative_humidity) * in_si(saturation_pressure(20_degC).value()), 259.9, 0.1);
    EXPECT_NEAR(in_celsius(with_humidity(20.0, in_si(air.relative_humidity)).dew_point.value()), -10.0, 1e-8);
}

TEST(MoistAirTest, air_at_sea_level_and_at_3000_m_follows_the_gas_law) {
    // By hand: dry air of 20 degC, v = 287.042 * 293.15 / p; eq. 3 at 3,000 m: 101325 (1 - 0.0676731)^5.2559
    // = 70,108 Pa.
    test::OutsideCheck check{"specific volume of dry air at 0 and 3,000 m", "gas law and eq. 3 by hand"};
    const auto sea = standard_pressure(0_m).value();
    const auto high = standard_pressure(3000_m).value();
    check.within("0 m", in_si(with_humidity(20.0, 0.0, in_si(sea)).specific_volume), 84146.36 / 101325.0,
                 1e-6);
    check.within("3,000 m", in_si(with_humidity(20.0, 0.0, in_si(high)).specific_volume), 84146.36 / 70108.0,
                 1e-4);
}

TEST(MoistAirTest, saturated_air_has_its_wet_bulb_and_dew_point_at_its_dry_bulb) {
    for (const double t : {-30.0, -0.5, 0.0, 0.5, 20.0, 80.0}) {
        EXPECT_NEAR(in_celsius(with_humidity(t, 1.0).wet_bulb), t, 1e-9);
        EXPECT_NEAR(in_celsius(with_humidity(t, 1.0).dew_point.value()), t, 1e-7);
        EXPECT_NEAR(in_si(with_wet_bulb(t, t).relative_humidity), 1.0, 1e-12) << t;
        EXPECT_NEAR(in_si(with_dew_point(t, t).relative_humidity), 1.0, 1e-12) << t;
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

void expect_refused(const Result<MoistAir>& air, const std::string& item, const std::string& limit) {
    ASSERT_FALSE(air) << item;
    EXPECT_EQ(air.error().item, item);
    EXPECT_NE(air.error().accepted.find(limit), std::string::npos) << air.error().text();
}

TEST(MoistAirTest, a_wet_bulb_above_the_dry_bulb_is_refused_with_both_limits) {
    expect_refused(air_from_wet_bulb(30_degC, 30.1_degC, 101325_Pa), "wet bulb",
                   "at most the dry bulb, 30 degC");
}

TEST(MoistAirTest, a_wet_bulb_that_no_air_can_have_is_refused_with_that_of_dry_air) {
    expect_refused(air_from_wet_bulb(40_degC, 5_degC, 101325_Pa), "wet bulb",
                   "at least that of dry air, " +
                       std::to_string(in_celsius(with_humidity(40.0, 0.0).wet_bulb)).substr(0, 5));
    EXPECT_TRUE(air_from_wet_bulb(40_degC, 15_degC, 101325_Pa));
    expect_refused(air_from_wet_bulb(40_degC, celsius(-300.0), 101325_Pa), "wet bulb", "dry air");
}

TEST(MoistAirTest, a_dew_point_outside_its_range_is_refused_with_its_limits) {
    expect_refused(air_from_dew_point(20_degC, 20.1_degC, 101325_Pa), "dew point",
                   "to the dry bulb, 20 degC");
    expect_refused(air_from_dew_point(20_degC, celsius(-100.1), 101325_Pa), "dew point", "-100 degC");
    EXPECT_TRUE(air_from_dew_point(20_degC, celsius(-100.0), 101325_Pa));
}

TEST(MoistAirTest, a_humidity_ratio_outside_its_range_is_refused_with_its_limit) {
    // Saturated air of 25 degC at sea level holds 20.08 g/kg by the equations.
    expect_refused(air_from_humidity_ratio(25_degC, from_si<HumidityRatio>(0.0202), 101325_Pa),
                   "humidity ratio", "0 to that of saturated air, 20.08");
    expect_refused(air_from_humidity_ratio(25_degC, from_si<HumidityRatio>(-1e-6), 101325_Pa),
                   "humidity ratio", "0");
}

TEST(MoistAirTest, what_is_not_a_number_is_refused_by_name_wherever_it_stands) {
    const double nan = std::nan("");
    const auto none = celsius(nan);
    expect_refused(air_from_wet_bulb(none, 20_degC, 101325_Pa), "dry bulb", "-40 to 80 degC");
    expect_refused(air_from_wet_bulb(30_degC, none, 101325_Pa), "wet bulb", "30 degC");
    expect_refused(air_from_wet_bulb(30_degC, 20_degC, pascal(nan)), "air pressure", "60 to 110 kPa");
    expect_refused(air_from_dew_point(none, 20_degC, 101325_Pa), "dry bulb", "-40 to 80 degC");
    expect_refused(air_from_dew_point(30_degC, none, 101325_Pa), "dew point", "30 degC");
    expect_refused(air_from_dew_point(30_degC, 20_degC, pascal(nan)), "air pressure", "60 to 110 kPa");
    expect_refused(air_from_humidity_ratio(none, from_si<HumidityRatio>(0.01), 101325_Pa), "dry bulb",
                   "80 degC");
    expect_refused(air_from_humidity_ratio(30_degC, from_si<HumidityRatio>(nan), 101325_Pa), "humidity ratio",
                   "0");
    expect_refused(air_from_humidity(30_degC, from_si<Fraction>(nan), 101325_Pa), "relative humidity",
                   "0 to 100 %");
    EXPECT_FALSE(saturation_pressure(none));
    EXPECT_FALSE(standard_pressure(from_si<Length>(nan)));
}

TEST(MoistAirTest, no_pressure_and_more_than_saturation_are_refused_by_name) {
    expect_refused(air_from_humidity(30_degC, 50_percent, 0_Pa), "air pressure", "60 to 110 kPa");
    expect_refused(air_from_humidity(30_degC, from_si<Fraction>(1.001), 101325_Pa), "relative humidity",
                   "0 to 100 %");
}

TEST(MoistAirTest, a_wet_bulb_alone_is_that_of_the_whole_state) {
    for (double t = -40.0; t <= 80.0; t += 7.5) {
        for (const double humidity : {0.0, 0.01, 0.4, 0.99, 1.0}) {
            const auto alone = wet_bulb_from_humidity(celsius(t), from_si<Fraction>(humidity), 90000_Pa);
            ASSERT_TRUE(alone) << alone.error().text();
            EXPECT_EQ(alone.value(), with_humidity(t, humidity, 90000.0).wet_bulb) << t << " " << humidity;
        }
    }
    const auto wrong = wet_bulb_from_humidity(30_degC, 101_percent, 101325_Pa);
    ASSERT_FALSE(wrong);
    EXPECT_NE(wrong.error().text().find("relative humidity"), std::string::npos) << wrong.error().text();
}

}  // namespace
}  // namespace wetfront
