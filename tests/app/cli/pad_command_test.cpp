// SPDX-License-Identifier: Apache-2.0
#include "explained.h"
#include "pad/measured_pad.h"
#include "pad/wet_pad.h"
#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront::test {
namespace {

using Words = std::vector<std::string>;

const Words pad{"pad",      "--dry-bulb",  "35degC", "--relative-humidity", "40%", "--face-velocity",
                "1.778m/s", "--thickness", "152.4mm"};

std::vector<std::string> row_of(const std::string& id) {
    for (auto& row : data_rows("pad_and_practice.csv")) {
        if (row.at(0) == id) {
            return row;
        }
    }
    ADD_FAILURE() << "no row " << id;
    return std::vector<std::string>(7, "0");
}

MoistAir outside() {
    return air_from_humidity(celsius(35.0), from_si<Fraction>(0.4), from_si<AbsolutePressure>(101325.0))
        .value();
}

TEST(PadCommandTest, the_json_object_has_exactly_these_keys_whatever_is_given) {
    const std::set<std::string> keys{"pressure_Pa",
                                     "wet_bulb_degC",
                                     "effectiveness",
                                     "leaving_dry_bulb_degC",
                                     "leaving_relative_humidity",
                                     "evaporation_kg_per_s_m2",
                                     "evaporation_kg_per_s",
                                     "airflow_m3_per_s",
                                     "measured_effectiveness",
                                     "measured_effectiveness_expanded_uncertainty",
                                     "measured_less_expected",
                                     "lowest_published_pressure_drop_Pa",
                                     "highest_published_pressure_drop_Pa",
                                     "verdict",
                                     "sea_level_assumed"};
    const auto bare = run(pad + Words{"--json"}).json();
    EXPECT_EQ(keys_of(bare), keys);
    for (const char* key :
         {"evaporation_kg_per_s", "airflow_m3_per_s", "measured_effectiveness", "verdict"}) {
        EXPECT_TRUE(bare.at(key).is_null()) << key;
    }
    const auto full = run(pad + Words{"--area", "50m2", "--leaving", "27degC", "--json"}).json();
    EXPECT_EQ(keys_of(full), keys);
    for (const char* key :
         {"evaporation_kg_per_s", "airflow_m3_per_s", "measured_effectiveness", "verdict"}) {
        EXPECT_FALSE(full.at(key).is_null()) << key;
    }
}

TEST(PadCommandTest, the_sizing_point_of_the_polynomial_comes_out_of_the_command) {
    const auto row = row_of("PAD-1");
    const auto json = run({"pad", "--dry-bulb", "35degC", "--relative-humidity", "40%", "--face-velocity",
                           "3m/s", "--thickness", "0.17382m", "--json"})
                          .json();
    OutsideCheck check{"wetfront-cli pad, sizing point", row.at(6)};
    // Published to two digits.
    check.near("3 m/s, 173.82 mm", json.at("effectiveness").get<double>(), cell_number(row.at(4)), 0.005);
}

TEST(PadCommandTest, evaporation_carries_the_heat_that_the_air_loses) {
    // By hand: air of 35 degC and 40 % holds about 14 g/kg, so that a cubic metre weighs 1.13 kg dry and
    // cools at 1.006 + 1.86 x 0.014 = 1.03 kJ/(kg K); water of 24 degC takes 2501 - 4.186 x 24 + 1.86 x 30 =
    // 2450 kJ/kg: 3600 x 1.13 x 1.03 / 2450 = 1.71 kg/h per m3/s and kelvin.
    const auto json = run(pad + Words{"--area", "50m2", "--json"}).json();
    const double drop = 35.0 - json.at("leaving_dry_bulb_degC").get<double>();
    const double per_hour = 3600.0 * json.at("evaporation_kg_per_s").get<double>();
    OutsideCheck check{"wetfront-cli pad, evaporation", "heat balance of the air by hand (in the test)"};
    check.within("35 degC, 40 %", per_hour / (json.at("airflow_m3_per_s").get<double>() * drop), 1.71, 0.02);
}

TEST(PadCommandTest, the_numbers_are_those_of_the_library_to_the_last_digit) {
    const auto json = run(pad + Words{"--area", "50m2", "--leaving", "27degC", "--json"}).json();
    const auto velocity = from_si<Velocity>(1.778);
    const auto expected = expected_effectiveness(velocity, from_si<Length>(0.1524)).value();
    const auto leaving = air_behind_pad(outside(), expected).value();
    const auto flux = evaporation(outside(), expected, velocity).value();
    const auto measured =
        effectiveness_with_uncertainty(outside(), celsius(27.0), HumidityFrom::hygrometer).value();
    const auto number = [&](const char* key) { return json.at(key).get<double>(); };
    EXPECT_EQ(number("effectiveness"), in_si(expected));
    EXPECT_EQ(number("leaving_dry_bulb_degC"), in_celsius(leaving.dry_bulb));
    EXPECT_EQ(number("leaving_relative_humidity"), in_si(leaving.relative_humidity));
    EXPECT_EQ(number("evaporation_kg_per_s_m2"), in_si(flux));
    EXPECT_DOUBLE_EQ(number("evaporation_kg_per_s"), 50.0 * in_si(flux));
    EXPECT_DOUBLE_EQ(number("airflow_m3_per_s"), 50.0 * 1.778);
    EXPECT_EQ(number("measured_effectiveness"), in_si(measured.value));
    EXPECT_EQ(number("measured_effectiveness_expanded_uncertainty"), in_si(measured.expanded));
}

TEST(PadCommandTest, the_measured_effectiveness_follows_its_definition) {
    const auto json = run(pad + Words{"--leaving", "27degC", "--json"}).json();
    EXPECT_NEAR(json.at("measured_effectiveness").get<double>(),
                (35.0 - 27.0) / (35.0 - json.at("wet_bulb_degC").get<double>()), 1e-12);
}

TEST(PadCommandTest, better_instruments_leave_less_uncertainty) {
    const auto uncertainty = [](const Words& more) {
        return run(pad + Words{"--leaving", "27degC", "--json"} + more)
            .json()
            .at("measured_effectiveness_expanded_uncertainty")
            .get<double>();
    };
    const double assumed = uncertainty({});
    EXPECT_EQ(uncertainty({"--thermometer", "0.5K", "--hygrometer", "3%"}), assumed);
    EXPECT_LT(uncertainty({"--thermometer", "0.1K"}), assumed);
    EXPECT_LT(uncertainty({"--hygrometer", "1%"}), assumed);
    EXPECT_LT(uncertainty({"--hygrometer", "1%", "--thermometer", "0.1K"}),
              uncertainty({"--hygrometer", "1%"}));
}

TEST(PadCommandTest, measured_against_expected_is_put_in_words) {
    const auto verdict = [](const char* leaving) {
        return run(pad + Words{"--leaving", leaving, "--thermometer", "0.1K", "--hygrometer", "1%", "--json"})
            .json()
            .at("verdict");
    };
    EXPECT_EQ(verdict("27degC"), "agrees");
    EXPECT_EQ(verdict("31degC"), "clearly lower");
    EXPECT_EQ(verdict("24.2degC"), "clearly higher");
    EXPECT_NE(run(pad + Words{"--leaving", "31degC", "--thermometer", "0.1K", "--hygrometer", "1%"})
                  .out.find("(clearly lower)"),
              std::string::npos);
}

TEST(PadCommandTest, a_wet_bulb_was_read_with_a_thermometer) {
    const Words wet{"pad",      "--dry-bulb",  "35degC",  "--wet-bulb", "24degC", "--face-velocity",
                    "1.778m/s", "--thickness", "152.4mm", "--leaving",  "27degC"};
    const auto json = run(wet + Words{"--json"}).json();
    const auto air =
        air_from_wet_bulb(celsius(35.0), celsius(24.0), from_si<AbsolutePressure>(101325.0)).value();
    const auto measured =
        effectiveness_with_uncertainty(air, celsius(27.0), HumidityFrom::wet_bulb_thermometer).value();
    EXPECT_EQ(json.at("measured_effectiveness_expanded_uncertainty").get<double>(), in_si(measured.expanded));
    expect_refused(run(wet + Words{"--hygrometer", "3%"}), "--hygrometer");
}

TEST(PadCommandTest, text_is_in_the_units_asked_for_and_tells_what_is_missing) {
    const auto us = run(pad).out;
    const auto si = run(pad + Words{"--units", "si", "--area", "50m2"}).out;
    EXPECT_NE(us.find("°F"), std::string::npos) << us;
    EXPECT_NE(us.find("gal/(h·ft²)"), std::string::npos) << us;
    EXPECT_NE(us.find("(needs --area)"), std::string::npos) << us;
    EXPECT_NE(us.find("(needs --leaving)"), std::string::npos) << us;
    EXPECT_NE(us.find("sea level assumed"), std::string::npos) << us;
    EXPECT_NE(si.find("g/(s·m²)"), std::string::npos) << si;
    EXPECT_NE(si.find("kg/h"), std::string::npos) << si;
    EXPECT_EQ(si.find("(needs --area)"), std::string::npos) << si;
    EXPECT_NE(si.find("10 Pa"), std::string::npos) << si;
}

TEST(PadCommandTest, a_pressure_drop_is_given_only_where_one_is_published) {
    const auto published = run(pad + Words{"--json"}).json();
    const double printed = cell_number(row_of("PAD-6").at(4));
    EXPECT_LT(published.at("lowest_published_pressure_drop_Pa").get<double>(), printed);
    EXPECT_GT(published.at("highest_published_pressure_drop_Pa").get<double>(), printed);
    const Words thick{"pad",    "--dry-bulb",  "35degC", "--relative-humidity", "40%", "--face-velocity",
                      "2.5m/s", "--thickness", "300mm"};
    EXPECT_TRUE(run(thick + Words{"--json"}).json().at("lowest_published_pressure_drop_Pa").is_null());
    EXPECT_NE(run(thick).out.find("none at this speed and thickness"), std::string::npos) << run(thick).out;
}

TEST(PadCommandTest, explain_tells_formula_source_and_range_of_every_result) {
    const auto explained = run(pad + Words{"--area", "50m2", "--leaving", "27degC", "--explain"});
    expect_all_explained(explained);
    EXPECT_NE(explained.out.find("EnergyPlus"), std::string::npos);
    EXPECT_NE(explained.out.find("JCGM 100:2008, eq. 10"), std::string::npos);
    expect_all_explained(run({"pad", "--dry-bulb", "35degC", "--relative-humidity", "40%", "--face-velocity",
                              "2.5m/s", "--thickness", "300mm", "--explain"}));
}

TEST(PadCommandTest, bad_input_is_refused_by_input_and_limit) {
    const auto with = [](const char* velocity, const char* thickness, const Words& more = {}) {
        return run(Words{"pad", "--dry-bulb", "35degC", "--relative-humidity", "40%", "--face-velocity",
                         velocity, "--thickness", thickness} +
                   more);
    };
    expect_refused(with("0.4m/s", "150mm"), "0.5 to 3 m/s");
    expect_refused(with("3.1m/s", "150mm"), "0.5 to 3 m/s");
    expect_refused(with("1.8m/s", "49mm"), "50 to 300 mm");
    expect_refused(with("1.8m/s", "150"), "--thickness: '150': the unit is missing");
    expect_refused(with("1.8", "150mm"), "--face-velocity");
    expect_refused(with("1.8m/s", "150mm", {"--area", "0m2"}), "--area");
    expect_refused(with("1.8m/s", "150mm", {"--area", "-5m2"}), "--area");
    expect_refused(with("1.8m/s", "150mm", {"--area", "5m"}), "--area");
    expect_refused(with("1.8m/s", "150mm", {"--leaving", "10degC"}), "behind the pad");
    expect_refused(with("1.8m/s", "150mm", {"--leaving", "27"}), "--leaving");
    expect_refused(with("1.8m/s", "150mm", {"--thermometer", "0.1K"}), "only with --leaving");
    expect_refused(with("1.8m/s", "150mm", {"--hygrometer", "1%"}), "only with --leaving");
    expect_refused(with("1.8m/s", "150mm", {"--leaving", "27degC", "--thermometer", "-1K"}), "0 to 5");
    expect_refused(with("1.8m/s", "150mm", {"--wet-bulb", "24degC"}), "give exactly one of them");
    expect_refused(run({"pad", "--dry-bulb", "35degC", "--relative-humidity", "40%"}), "--face-velocity");
}

}  // namespace
}  // namespace wetfront::test
