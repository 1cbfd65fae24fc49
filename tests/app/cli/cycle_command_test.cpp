// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"

namespace wetfront::test {
namespace {

TEST(CycleCommandTest, ten_times_the_evaporation_in_circulation_needs_82_5_seconds) {
    // Published: a circulation of about ten times the largest evaporation (WAT-2 in
    // tests/data/pad_and_practice.csv). Wetting 75 - 45 s and dry-out 300 s make that share 0.1; 45 + 1.25 x
    // 300 x 0.1 = 82.5 s.
    const auto json = run({"cycle", "--fill", "45s", "--wet-through", "75s", "--dry-out", "300s",
                           "--uncertainty", "0s", "--json"})
                          .json();
    EXPECT_NEAR(json.at("need_s").get<double>(), 82.5, 1e-9);
    EXPECT_NEAR(json.at("evaporated_share").get<double>(), 0.1, 1e-12);
    EXPECT_NEAR(json.at("period_s").get<double>(), 300.0, 0.0);
    // The far end must not stand dry for more than half of 300 s: 300 + 45 - 150 = 195 s decides.
    EXPECT_NEAR(json.at("gap_bound_s").get<double>(), 195.0, 1e-9);
    EXPECT_NEAR(json.at("base_on_time_s").get<double>(), 195.0, 1e-9);
    EXPECT_EQ(json.at("limited_by"), "no part dries");
    EXPECT_EQ(json.at("cycled"), true);
}

TEST(CycleCommandTest, the_json_object_has_exactly_the_documented_keys_whether_a_cycle_fits_or_not) {
    const std::set<std::string> keys{"cycled",           "period_s",     "base_on_time_s",
                                     "ceiling_s",        "trim_step_s",  "need_s",
                                     "gap_bound_s",      "fill_bound_s", "uncertainty_s",
                                     "evaporated_share", "limited_by",   "drying_outruns_supply"};
    const auto fits =
        run({"cycle", "--fill", "40s", "--wet-through", "110s", "--dry-out", "15min", "--json"}).json();
    EXPECT_EQ(keys_of(fits), keys);
    EXPECT_EQ(fits.at("cycled"), true);
    const auto fails =
        run({"cycle", "--fill", "40s", "--wet-through", "110s", "--dry-out", "2min", "--json"}).json();
    EXPECT_EQ(keys_of(fails), keys);
    EXPECT_EQ(fails.at("cycled"), false);
    for (const auto* key : {"base_on_time_s", "ceiling_s", "trim_step_s"}) {
        EXPECT_TRUE(fails.at(key).is_null()) << key;
    }
    EXPECT_NEAR(fails.at("period_s").get<double>(), 600.0, 0.0);
}

TEST(CycleCommandTest, a_wet_start_serves_in_place_of_a_dry_one) {
    // s = (80 - 40)/(240 + 40) = 1/7, evaporated share 1/8; need 40 + 1.25 x 300 / 8 = 86.875 s.
    const auto json =
        run({"cycle", "--fill", "40s", "--off", "4min", "--return", "80s", "--uncertainty", "0s", "--json"})
            .json();
    EXPECT_NEAR(json.at("evaporated_share").get<double>(), 0.125, 1e-12);
    EXPECT_NEAR(json.at("need_s").get<double>(), 86.875, 1e-9);
}

TEST(CycleCommandTest, options_change_what_they_say) {
    const std::vector<std::string> base{"cycle", "--fill",        "45s", "--wet-through", "75s", "--dry-out",
                                        "300s",  "--uncertainty", "0s",  "--json"};
    const auto need = [&](std::initializer_list<std::string> more) {
        auto arguments = base;
        arguments.insert(arguments.end(), more);
        return run(arguments).json().at("need_s").get<double>();
    };
    EXPECT_NEAR(need({"--margin", "1.5"}), 45.0 + 1.5 * 300.0 * 0.1, 1e-9);
    EXPECT_NEAR(need({"--evaporation-ratio", "1.2"}), 45.0 + 1.25 * 300.0 * 0.12, 1e-9);
    EXPECT_NEAR(need({"--fans-on"}), 45.0 + 1.25 * 300.0 * 30.0 / 330.0, 1e-9);
    auto arguments = base;
    arguments.insert(arguments.end(), {"--resolution", "10s"});
    EXPECT_NEAR(run(arguments).json().at("base_on_time_s").get<double>(), 200.0, 1e-9);
    arguments = base;
    arguments.insert(arguments.end(), {"--rest", "110s"});
    // 195 s and a rest of 110 s do not fit into 300 s.
    EXPECT_NE(run(arguments).json().at("period_s").get<double>(), 300.0);
}

TEST(CycleCommandTest, text_is_in_the_units_asked_for_and_names_what_decides) {
    const auto result = run({"cycle", "--fill", "45s", "--wet-through", "75s", "--dry-out", "300s"});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_NE(result.out.find("base on-time   195 s   (no part dries)"), std::string::npos) << result.out;
    EXPECT_NE(result.out.find("assumed"), std::string::npos) << result.out;
}

TEST(CycleCommandTest, absurd_or_incomplete_readings_are_refused_by_name) {
    const auto with = [](std::vector<std::string> more) {
        more.insert(more.begin(), "cycle");
        return run(more);
    };
    expect_refused(with({"--fill", "80s", "--wet-through", "75s", "--dry-out", "300s"}), "fill time");
    expect_refused(with({"--fill", "75s", "--wet-through", "75s", "--dry-out", "300s"}), "wet-through");
    expect_refused(with({"--fill", "-45s", "--wet-through", "75s", "--dry-out", "300s"}), "fill time");
    expect_refused(with({"--fill", "0s", "--wet-through", "75s", "--dry-out", "300s"}), "fill time");
    expect_refused(with({"--fill", "45s", "--wet-through", "75s", "--dry-out", "300h"}), "dry-out");
    expect_refused(with({"--fill", "45", "--wet-through", "75s", "--dry-out", "300s"}),
                   "--fill: '45': the unit is missing");
    expect_refused(with({"--fill", "infs", "--wet-through", "75s", "--dry-out", "300s"}), "--fill");
    expect_refused(with({"--fill", "45s", "--dry-out", "300s"}), "--wet-through");
    expect_refused(with({"--fill", "45s", "--wet-through", "75s"}), "--dry-out");
    expect_refused(with({"--fill", "45s", "--wet-through", "75s", "--dry-out", "300s", "--off", "60s"}),
                   "--dry-out");
    expect_refused(with({"--fill", "45s", "--off", "60s"}), "--return");
    const std::vector<std::string> good{"--fill", "45s", "--wet-through", "75s", "--dry-out", "300s"};
    for (const auto& [option, value, part] :
         std::vector<std::array<std::string, 3>>{{"--margin", "0.9", "margin"},
                                                 {"--margin", "1,234", "--margin"},
                                                 {"--evaporation-ratio", "0", "evaporation ratio"},
                                                 {"--evaporation-ratio", "nan", "--evaporation-ratio"},
                                                 {"--uncertainty", "-1s", "uncertainty"},
                                                 {"--resolution", "0s", "resolution"},
                                                 {"--rest", "11min", "rest"},
                                                 {"--rest", "-1s", "rest"},
                                                 {"--colour", "blue", "--colour"}}) {
        auto arguments = good;
        arguments.insert(arguments.end(), {option, value});
        expect_refused(with(arguments), part);
    }
}

}  // namespace
}  // namespace wetfront::test
