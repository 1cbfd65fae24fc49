// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"
#include "day/weather_csv.h"
#include "demo/demo.h"
#include "records/record_text.h"

namespace wetfront::test {
namespace {

using SimulateWords = std::vector<std::string>;

CliRun simulate_example(const SimulateWords& more) {
    SimulateWords words{"simulate", "-"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, visit_file_text(example_visit()));
}

nlohmann::json simulated(const std::string& settings, const SimulateWords& more = {}) {
    SimulateWords words{"--settings", settings, "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const auto result = simulate_example(words);
    EXPECT_EQ(result.status, 0) << result.err;
    return result.json();
}

double total(const nlohmann::json& day, const char* key) {
    return day.at("totals").at(key).get<double>();
}

TEST(SimulateCommandTest, the_design_day_comes_hour_by_hour_with_every_key) {
    const auto day = simulated("advised");
    EXPECT_EQ(day.at("settings"), "advised");
    EXPECT_EQ(day.at("weather"), "design day");
    ASSERT_EQ(day.at("hours").size(), 24U);
    EXPECT_EQ(day.at("hours").at(0).at("from"), "2026-07-07T00:00:00.000-05:00");
    for (const char* key : {"outside_degC", "behind_pad_degC", "house_degC", "house_relative_humidity",
                            "thi_degC", "wet_share", "evaporated_kg", "pumped_kg", "pump_on_s"}) {
        EXPECT_TRUE(day.at("hours").at(15).contains(key)) << key;
    }
    for (const char* key : {"water_evaporated_kg", "water_bled_kg", "water_pumped_kg", "pump_energy_J",
                            "pump_starts", "wet_dry_cycles", "cooling_lost_degree_hours"}) {
        EXPECT_TRUE(day.at("totals").contains(key)) << key;
    }
    EXPECT_LT(day.at("balance_error").get<double>(), 1e-9);
}

TEST(SimulateCommandTest, the_hours_add_up_to_the_totals) {
    const auto day = simulated("advised");
    double pumped = 0.0;
    double evaporated = 0.0;
    for (const auto& hour : day.at("hours")) {
        pumped += hour.at("pumped_kg").get<double>();
        evaporated += hour.at("evaporated_kg").get<double>();
    }
    EXPECT_NEAR(pumped, total(day, "water_pumped_kg"), 1e-6 * pumped);
    EXPECT_NEAR(evaporated, total(day, "water_evaporated_kg"), 1e-6 * evaporated);
    EXPECT_GT(pumped, 0.0);
}

TEST(SimulateCommandTest, a_cycle_pumps_less_than_continuous_pumping_and_no_pads_pump_nothing) {
    const auto advised = simulated("advised");
    const auto continuous = simulated("continuous");
    const auto none = simulated("none");
    EXPECT_LT(total(advised, "water_pumped_kg"), total(continuous, "water_pumped_kg"));
    EXPECT_GT(total(continuous, "water_pumped_kg"), 0.0);
    EXPECT_EQ(total(none, "water_pumped_kg"), 0.0);
    EXPECT_NEAR(total(none, "cooling_degree_hours"), 0.0, 1e-9);
    EXPECT_GT(total(none, "hottest_house_degC"), total(advised, "hottest_house_degC"));
}

TEST(SimulateCommandTest, settings_found_and_left_are_simulated_too) {
    EXPECT_GT(total(simulated("found"), "water_pumped_kg"), 0.0);
    EXPECT_GT(total(simulated("left"), "water_pumped_kg"), 0.0);
}

TEST(SimulateCommandTest, text_tells_the_day_the_totals_and_what_was_assumed) {
    const auto result = simulate_example({"--units", "si"});
    EXPECT_EQ(result.status, 0) << result.err;
    for (const char* part : {"House Alder", "settings advised, weather design day", "behind pad", "15:00",
                             "water pumped", "error of the water balance", "Assumed:"}) {
        EXPECT_NE(result.out.find(part), std::string::npos) << part << "\n" << result.out;
    }
}

TEST(SimulateCommandTest, the_cheapest_cycle_pumps_no_more_than_the_advised_one_and_says_what_binds) {
    const auto cheapest = simulated("cheapest", {});
    EXPECT_LE(total(cheapest, "water_pumped_kg"), total(simulated("advised", {}), "water_pumped_kg"));
    ASSERT_EQ(cheapest.at("cycles").size(), 1U);
    EXPECT_NE(cheapest.at("cycles").at(0).get<std::string>().find("less water is pumped than as advised"),
              std::string::npos);
}

TEST(SimulateCommandTest, days_of_a_weather_file_are_chosen_by_date) {
    const TemporaryFolder folder;
    const auto weather = folder.with("weather.csv", run({"example", "weather"}).out);
    const auto two = simulated("left", {"--weather", weather, "--from", "2026-07-07", "--to", "2026-07-08"});
    ASSERT_EQ(two.at("hours").size(), 48U);
    EXPECT_EQ(two.at("hours").at(0).at("from"), "2026-07-07T00:00:00.000-05:00");
    EXPECT_EQ(two.at("weather"), "weather.csv");
    const auto all = simulate_example({"--weather", weather});
    EXPECT_EQ(all.status, 0) << all.err;
    EXPECT_NE(all.out.find("2026-07-09"), std::string::npos) << all.out;  // a line for each day
}

TEST(SimulateCommandTest, a_weather_in_standard_time_is_met_by_timers_in_summer_time) {
    const TemporaryFolder folder;
    const auto text = run({"example", "weather"}).out;
    const auto summer = folder.with("summer.csv", text);
    // The same moments, told in standard time.
    const auto parsed = read_weather_file(text, "example", from_si<AbsolutePressure>(101325.0)).value();
    auto standard_time = parsed.runs.front();
    standard_time.from.utc_offset_minutes = -360;
    const auto standard = folder.with("standard.csv", weather_csv_text(standard_time, "invented"));
    EXPECT_NEAR(total(simulated("left", {"--weather", summer}), "water_pumped_kg"),
                total(simulated("left", {"--weather", standard}), "water_pumped_kg"), 1e-3);
}

TEST(SimulateCommandTest, a_broken_weather_file_is_named_with_line_and_column) {
    const TemporaryFolder folder;
    const auto weather = folder.with("broken.csv",
                                     "time,dry bulb [degC],relative humidity [%]\n"
                                     "2026-07-07T00:00:00-05:00,25,60\n2026-07-07T01:00:00-05:00,95,60\n");
    expect_refused(simulate_example({"--weather", weather}), "broken.csv, line 3, column 2 (dry bulb)");
    const auto gap = folder.with("gap.csv",
                                 "time,dry bulb [degC],relative humidity [%]\n"
                                 "2026-07-07T00:00:00-05:00,25,60\n2026-07-07T01:00:00-05:00,25,60\n"
                                 "2026-07-07T02:00:00-05:00,,60\n2026-07-07T03:00:00-05:00,25,60\n"
                                 "2026-07-07T04:00:00-05:00,25,60\n");
    expect_refused(simulate_example({"--weather", gap}), "2026-07-07 02:00");
}

TEST(SimulateCommandTest, options_that_do_not_go_together_are_refused) {
    const TemporaryFolder folder;
    const auto weather = folder.with("weather.csv", run({"example", "weather"}).out);
    expect_refused(simulate_example({"--from", "2026-07-07", "--to", "2026-07-07"}), "--weather FILE");
    expect_refused(simulate_example({"--weather", weather, "--from", "2026-07-07"}), "both or none");
    expect_refused(simulate_example({"--weather", weather, "--from", "2026-07-07", "--to", "tomorrow"}),
                   "--to");
    expect_refused(simulate_example({"--weather", weather, "--from", "2026-08-07", "--to", "2026-08-08"}),
                   "the weather goes from 2026-07-06 00:00");
    expect_refused(simulate_example({"--settings", "best"}),
                   "found, advised, left, continuous, none or cheapest");
    const auto absent = simulate_example({"--weather", folder.file("absent.csv")});
    EXPECT_EQ(absent.status, 3);
}

TEST(SimulateCommandTest, the_weather_of_a_place_far_away_is_refused) {
    const TemporaryFolder folder;
    const auto weather = folder.with("far.csv",
                                     "time,dry bulb [degC],relative humidity [%]\n"
                                     "2026-07-07T00:00:00+09:00,25,60\n2026-07-07T01:00:00+09:00,25,60\n");
    expect_refused(simulate_example({"--weather", weather}), "weather of another place");
}

TEST(SimulateCommandTest, a_visit_that_lacks_what_is_needed_is_told_what) {
    auto file = example_visit();
    file.visit.marks.clear();
    expect_refused(run({"simulate", "-"}, visit_file_text(file)), "missing: ");
    file = example_visit();
    file.farm.design_daily_range.reset();
    expect_refused(run({"simulate", "-"}, visit_file_text(file)), "daily range");
}

}  // namespace
}  // namespace wetfront::test
