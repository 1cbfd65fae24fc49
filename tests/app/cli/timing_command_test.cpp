// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"

namespace wetfront::test {
namespace {

TEST(TimingCommandTest, the_json_object_has_exactly_the_documented_keys) {
    const auto json = run({"timing", "45s,47s,46s", "--json"}).json();
    EXPECT_EQ(keys_of(json), (std::set<std::string>{"count", "mean_s", "standard_deviation_s",
                                                    "standard_uncertainty_s", "effective_degrees_of_freedom",
                                                    "coverage_factor", "expanded_uncertainty_s"}));
}

TEST(TimingCommandTest, mean_and_uncertainty_follow_the_gum) {
    // By hand: 45, 47, 46 s have mean 46 s and s = 1 s; type A = 1/sqrt(3) s with 2 degrees of freedom; type
    // B = hypot(0.10, 2) s; u = sqrt(1/3 + 4.01) s; effective degrees of freedom = 2 (u / type A)^4 (GUM
    // G.2b).
    const auto json = run({"timing", "45s,47s,46s", "--u-event", "2s", "--json"}).json();
    const double u = std::sqrt(1.0 / 3.0 + 4.01);
    EXPECT_NEAR(json.at("mean_s").get<double>(), 46.0, 1e-12);
    EXPECT_NEAR(json.at("standard_deviation_s").get<double>(), 1.0, 1e-12);
    EXPECT_NEAR(json.at("standard_uncertainty_s").get<double>(), u, 1e-12);
    EXPECT_NEAR(json.at("effective_degrees_of_freedom").get<double>(), 2.0 * std::pow(u, 4) * 9.0, 1e-6);
    EXPECT_NEAR(json.at("expanded_uncertainty_s").get<double>(),
                json.at("coverage_factor").get<double>() * json.at("standard_uncertainty_s").get<double>(),
                1e-12);
}

TEST(TimingCommandTest, readings_may_be_in_any_unit_of_time) {
    const auto json = run({"timing", "1min,60 s,0.0166666666666666667h", "--json"}).json();
    EXPECT_NEAR(json.at("mean_s").get<double>(), 60.0, 1e-9);
}

TEST(TimingCommandTest, one_reading_has_no_standard_deviation) {
    EXPECT_TRUE(run({"timing", "45s", "--json"}).json().at("standard_deviation_s").is_null());
    EXPECT_NE(run({"timing", "45s"}).out.find("assumed"), std::string::npos);
}

TEST(TimingCommandTest, a_bad_reading_is_named_by_its_place) {
    expect_refused(run({"timing", "45s,47"}), "reading 2: '47': the unit is missing, write s, min or h");
    expect_refused(run({"timing", "45,47s"}), "reading 1");
    expect_refused(run({"timing", "45s,,46s"}), "reading 2");
    expect_refused(run({"timing", ""}), "reading 1");
    expect_refused(run({"timing", "45ft"}), "not a unit of time");
    expect_refused(run({"timing", "nans"}), "reading 1");
    expect_refused(run({"timing", "-45s"}), "");
    expect_refused(run({"timing", "45s,0s"}), "");
    expect_refused(run({"timing", "45s", "--u-event", "-2s"}), "--u-event");
    expect_refused(run({"timing", "45s", "--u-event", "2"}), "--u-event");
    expect_refused(run({"timing"}), "readings");
}

}  // namespace
}  // namespace wetfront::test
