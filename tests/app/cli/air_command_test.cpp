// SPDX-License-Identifier: Apache-2.0
#include "air/moist_air.h"

#include "base/numbers.h"
#include "explained.h"
#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront::test {
namespace {

using Words = std::vector<std::string>;

const Words hot{"air", "--dry-bulb", "35degC", "--relative-humidity", "40%"};

TEST(AirCommandTest, the_json_object_has_exactly_these_keys) {
    const std::set<std::string> keys{"pressure_Pa",       "dry_bulb_degC",
                                     "wet_bulb_degC",     "dew_point_degC",
                                     "relative_humidity", "humidity_ratio_kg_per_kg",
                                     "enthalpy_J_per_kg", "specific_volume_m3_per_kg",
                                     "density_kg_per_m3", "sea_level_assumed",
                                     "thi_degC",          "thvi_degC"};
    EXPECT_EQ(keys_of(run(hot + Words{"--json"}).json()), keys);
}

TEST(AirCommandTest, a_published_example_comes_out_of_the_command) {
    const auto json =
        run({"air", "--dry-bulb", "40degC", "--wet-bulb", "20degC", "--pressure", "101325Pa", "--json"})
            .json();
    const std::vector<std::pair<std::string, std::string>> key_of_row{{"P1-29", "humidity_ratio_kg_per_kg"},
                                                                      {"P1-30", "dew_point_degC"},
                                                                      {"P1-31", "relative_humidity"},
                                                                      {"P1-32", "enthalpy_J_per_kg"}};
    OutsideCheck check{"wetfront-cli air, four values of one state",
                       "ASHRAE Fundamentals 2017 (SI) ch. 1, Example 1, read off a chart; second hand"};
    std::size_t found = 0;
    for (const auto& row : data_rows("moist_air_published.csv")) {
        for (const auto& [id, key] : key_of_row) {
            if (row.at(0) == id) {
                ASSERT_EQ(row.at(6), "abs") << id;
                check.near(id + " " + key, json.at(key).get<double>(), cell_number(row.at(3)),
                           cell_number(row.at(5)));
                ++found;
            }
        }
    }
    EXPECT_EQ(found, key_of_row.size());
}

TEST(AirCommandTest, an_elevation_gives_the_published_pressure) {
    OutsideCheck check{"wetfront-cli air, pressure at an elevation",
                       "ASHRAE Fundamentals 2017 (SI) ch. 1, Table 1, second hand", "Pa"};
    for (const auto& row : data_rows("moist_air_published.csv")) {
        const auto elevation = row.at(2).substr(std::min<std::size_t>(2, row.at(2).size()));
        if (row.at(1) != "p_std" || cell_number(elevation) > 4000.0) {
            continue;
        }
        const auto json = run(hot + Words{"--elevation", elevation + "m", "--json"}).json();
        check.near(row.at(0), json.at("pressure_Pa").get<double>(), cell_number(row.at(3)),
                   cell_number(row.at(5)));
        EXPECT_EQ(json.at("sea_level_assumed"), false);
    }
}

TEST(AirCommandTest, the_numbers_are_those_of_the_library_to_the_last_digit) {
    const auto json =
        run({"air", "--dry-bulb", "35degC", "--relative-humidity", "40%", "--pressure", "95kPa", "--json"})
            .json();
    const auto air =
        air_from_humidity(celsius(35.0), from_si<Fraction>(0.4), from_si<AbsolutePressure>(95000.0));
    ASSERT_TRUE(air);
    const auto number = [&](const char* key) { return json.at(key).get<double>(); };
    EXPECT_EQ(number("pressure_Pa"), in_si(air.value().pressure));
    EXPECT_EQ(number("wet_bulb_degC"), in_celsius(air.value().wet_bulb));
    EXPECT_EQ(number("dew_point_degC"), in_celsius(air.value().dew_point.value()));
    EXPECT_EQ(number("humidity_ratio_kg_per_kg"), in_si(air.value().humidity_ratio));
    EXPECT_EQ(number("enthalpy_J_per_kg"), in_si(air.value().enthalpy));
    EXPECT_EQ(number("specific_volume_m3_per_kg"), in_si(air.value().specific_volume));
    EXPECT_EQ(number("density_kg_per_m3"), in_si(air.value().density));
}

TEST(AirCommandTest, the_same_air_is_found_from_wet_bulb_and_dew_point) {
    const auto asked = run(hot + Words{"--json"}).json();
    for (const auto& [option, key] :
         {std::pair{"--wet-bulb", "wet_bulb_degC"}, std::pair{"--dew-point", "dew_point_degC"}}) {
        const auto typed = print_exact(asked.at(key).get<double>()) + "degC";
        const auto json = run({"air", "--dry-bulb", "35degC", option, typed, "--json"}).json();
        EXPECT_NEAR(json.at("relative_humidity").get<double>(), 0.4, 1e-9) << option << " " << typed;
        EXPECT_NEAR(json.at("enthalpy_J_per_kg").get<double>(), asked.at("enthalpy_J_per_kg").get<double>(),
                    1e-3)
            << option;
    }
}

TEST(AirCommandTest, air_without_vapour_has_no_dew_point_and_the_text_says_so) {
    const std::vector<std::string> dry{"air", "--dry-bulb", "35degC", "--relative-humidity", "0%"};
    EXPECT_TRUE(run(dry + Words{"--json"}).json().at("dew_point_degC").is_null());
    EXPECT_NE(run(dry).out.find("dew point                   -              (too dry"), std::string::npos)
        << run(dry).out;
}

TEST(AirCommandTest, sea_level_is_named_as_assumed_where_nothing_else_is_given) {
    const std::string assumed = "sea level assumed";
    EXPECT_NE(run(hot).out.find(assumed), std::string::npos) << run(hot).out;
    EXPECT_EQ(run(hot + Words{"--json"}).json().at("sea_level_assumed"), true);
    for (const auto& place : {Words{"--elevation", "0ft"}, {"--pressure", "101.325kPa"}}) {
        EXPECT_EQ(run(hot + place).out.find(assumed), std::string::npos) << place.front();
    }
}

TEST(AirCommandTest, the_comfort_indices_follow_their_printed_formulas) {
    // THI = 0.85 x 36 + 0.15 x 26 = 34.5 degC; THVI = 34.5 x 0.5^-0.058 = 34.5 x 1.041021 = 35.9152 degC.
    const Words warm{"air", "--dry-bulb", "36degC", "--wet-bulb", "26degC"};
    const auto json = run(warm + Words{"--air-speed", "0.5m/s", "--json"}).json();
    EXPECT_NEAR(json.at("thi_degC").get<double>(), 34.5, 1e-9);
    EXPECT_NEAR(json.at("thvi_degC").get<double>(), 35.9152, 1e-4);
    EXPECT_TRUE(run(warm + Words{"--json"}).json().at("thvi_degC").is_null());
    EXPECT_NE(run(warm).out.find("temperature-humidity index  94.1 °F"), std::string::npos) << run(warm).out;
    EXPECT_EQ(run(warm).out.find("with wind"), std::string::npos) << run(warm).out;
    expect_refused(run(warm + Words{"--air-speed", "1.3m/s"}), "0.2 to 1.2 m/s");
    expect_refused(run({"air", "--dry-bulb", "30degC", "--wet-bulb", "26degC", "--air-speed", "0.5m/s"}),
                   "35 to 41");
    expect_refused(run(warm + Words{"--air-speed", "0.5"}), "--air-speed");
}

TEST(AirCommandTest, text_is_in_the_units_asked_for) {
    const auto us = run(hot).out;
    const auto si = run(hot + Words{"--units", "si"}).out;
    for (const char* part : {"dry bulb                    95 °F", "relative humidity           40%",
                             "29.92 inHg", "gr/lb", "Btu/lb", "ft³/lb", "lb/ft³"}) {
        EXPECT_NE(us.find(part), std::string::npos) << part << "\n" << us;
    }
    for (const char* part : {"dry bulb                    35 °C", "relative humidity           40 %",
                             "101.33 kPa", "g/kg", "kJ/kg", "m³/kg", "kg/m³"}) {
        EXPECT_NE(si.find(part), std::string::npos) << part << "\n" << si;
    }
}

TEST(AirCommandTest, explain_tells_formula_source_and_range_of_every_result) {
    const auto explained = run(hot + Words{"--air-speed", "1m/s", "--explain"});
    expect_all_explained(explained);
    EXPECT_NE(explained.out.find("ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eqs. 33 and 35"),
              std::string::npos);
    EXPECT_EQ(run(hot).out.find("source:"), std::string::npos);
    const auto json = run(hot + Words{"--explain", "--json"}).json();
    EXPECT_FALSE(json.at("explanations").empty());
    EXPECT_EQ(keys_of(json.at("explanations").front()),
              (std::set<std::string>{"results", "formula", "source", "range"}));
}

TEST(AirCommandTest, humidity_is_given_once_and_the_place_at_most_once) {
    const std::string once = "--relative-humidity, --wet-bulb, --dew-point: give exactly one of them";
    expect_refused(run({"air", "--dry-bulb", "35degC"}), once);
    expect_refused(run(hot + Words{"--wet-bulb", "24degC"}), once);
    expect_refused(run(hot + Words{"--dew-point", "20degC"}), once);
    expect_refused(run(hot + Words{"--elevation", "100m", "--pressure", "100kPa"}),
                   "--elevation, --pressure: give at most one of them");
    expect_refused(run({"air", "--relative-humidity", "40%"}), "--dry-bulb");
}

TEST(AirCommandTest, impossible_air_is_refused_by_input_and_limit) {
    const auto at_35 = [](const char* option, const char* value) {
        return run({"air", "--dry-bulb", "35degC", option, value});
    };
    expect_refused(at_35("--relative-humidity", "101%"), "0 to 100 %");
    expect_refused(at_35("--relative-humidity", "-1%"), "0 to 100 %");
    expect_refused(at_35("--relative-humidity", "40"), "--relative-humidity: '40': the unit is missing");
    expect_refused(at_35("--relative-humidity", "nan%"), "--relative-humidity");
    expect_refused(at_35("--wet-bulb", "36degC"), "wet bulb");
    expect_refused(at_35("--dew-point", "36degC"), "dew point");
    expect_refused(at_35("--wet-bulb", "24m"), "--wet-bulb");
    expect_refused(run({"air", "--dry-bulb", "81degC", "--relative-humidity", "40%"}), "-40 to 80");
    expect_refused(run({"air", "--dry-bulb", "35", "--relative-humidity", "40%"}), "--dry-bulb: '35'");
    expect_refused(run(hot + Words{"--pressure", "0kPa"}), "60 to 110 kPa");
    expect_refused(run(hot + Words{"--elevation", "5000m"}), "elevation");
    expect_refused(run(hot + Words{"--elevation", "5000"}), "--elevation");
}

}  // namespace
}  // namespace wetfront::test
