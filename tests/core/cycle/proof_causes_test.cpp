// SPDX-License-Identifier: Apache-2.0
#include "cycle/proof_causes.h"

#include <gmock/gmock.h>

#include "proved_house.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

TEST(ProofCausesTest, an_on_time_longer_by_the_fill_points_at_a_count_from_a_full_header) {
    Proof by_fill;
    by_fill.watch({.at = 0.0, .stops = 130.0});
    EXPECT_THAT(by_fill.first_cause(), HasSubstr("counts the on-time from a full header"));
    Proof by_else;
    by_else.watch({.at = 0.0, .stops = 105.0});
    EXPECT_THAT(by_else.first_cause(), HasSubstr("Another on-time stands in the controller"));
    EXPECT_THAT(by_else.causes(), Not(Contains(HasSubstr("full header"))));
    EXPECT_THAT(by_else.causes(), Contains(HasSubstr("contactor that sticks")));
}

TEST(ProofCausesTest, a_controller_described_to_count_from_a_full_header_is_not_suspected_of_it) {
    Proof proof;
    auto described = generic_template(TimerKind::fixed_interval);
    described.counts_from = CountsFrom::full_header;
    choose_controller(proof.visit.timer(1), described);
    proof.watch({.at = 0.0, .stops = 170.0});  // 90 s, 40 s of filling, and 40 s more
    EXPECT_THAT(proof.causes(), Not(Contains(HasSubstr("counts the on-time from a full header"))));
    EXPECT_THAT(proof.causes(), Contains(HasSubstr("contactor that sticks")));
}

TEST(ProofCausesTest, an_on_time_shorter_by_the_fill_was_entered_from_a_full_header) {
    Proof proof;
    proof.watch({.at = 0.0, .stops = 50.0});
    EXPECT_THAT(proof.first_cause(), HasSubstr("entered as counted from a full header"));
    EXPECT_THAT(proof.causes(), Contains(HasSubstr("starts late or drops out")));
}

TEST(ProofCausesTest, only_a_trimmed_timer_may_have_trimmed) {
    Proof trimmed{TimerKind::trimmed};
    trimmed.visit.left().on_time_ceiling = typed<Duration>("150s");
    trimmed.watch({.at = 0.0, .stops = 60.0});
    EXPECT_THAT(trimmed.first_cause(), HasSubstr("A review has trimmed"));
    Proof fixed;
    fixed.watch({.at = 0.0, .stops = 60.0});
    EXPECT_THAT(fixed.causes(), Not(Contains(HasSubstr("A review has trimmed"))));
}

TEST(ProofCausesTest, a_whole_number_of_periods_points_at_a_missed_start) {
    Proof twice;
    twice.watch({.at = 0.0}).watch({.at = 602.0});
    EXPECT_THAT(twice.first_cause(), HasSubstr("was not marked"));
    Proof longer;
    longer.watch({.at = 0.0}).watch({.at = 450.0});
    EXPECT_THAT(longer.first_cause(), HasSubstr("Another period"));
}

TEST(ProofCausesTest, a_period_longer_by_the_on_time_was_taken_for_the_rest) {
    Proof proof;
    proof.watch({.at = 0.0, .stops = 90.0}).watch({.at = 390.0});
    EXPECT_THAT(proof.first_cause(), HasSubstr("for the time between two runs"));
}

TEST(ProofCausesTest, late_water_points_at_the_pump_before_the_outlets) {
    Proof proof;
    proof.watch({.at = 0.0, .water = 70.0, .drips = 86.0, .stops = 90.0}).watch({.at = 300.0});
    const auto causes = proof.causes();
    ASSERT_GE(causes.size(), 4U);
    EXPECT_THAT(causes[0], HasSubstr("loses its water while it rests"));
    EXPECT_THAT(causes[1], HasSubstr("starts late"));
    EXPECT_THAT(causes[2], HasSubstr("Less flow"));
    EXPECT_THAT(causes[3], HasSubstr("Clogged outlets"));
}

TEST(ProofCausesTest, a_dry_patch_with_water_in_time_points_at_the_outlets) {
    Proof proof;
    proof.watch_good().looked().dry_patch = true;
    const auto causes = proof.causes();
    ASSERT_GE(causes.size(), 2U);
    EXPECT_THAT(causes[0], HasSubstr("Clogged outlets"));
    EXPECT_THAT(causes, Not(Contains(HasSubstr("drier now")))) << "the drip was in time";
}

TEST(ProofCausesTest, a_late_drip_names_the_weather_too) {
    Proof proof;
    proof.watch({.at = 0.0, .water = 41.0, .drips = 85.0, .stops = 90.0}).watch({.at = 300.0});
    EXPECT_EQ(proof.verdict(ProofQuantity::drip_return), ProofVerdict::fail);
    EXPECT_THAT(proof.causes(), Contains(HasSubstr("drier now")));
}

TEST(ProofCausesTest, each_cause_stands_once) {
    Proof proof{TimerKind::fixed_interval, 2};
    proof.watch({.at = 0.0, .water = 70.0, .stops = 60.0}).watch({.at = 330.0, .stops = 60.0});
    looked_at(proof.file(), proof.visit.bank(2)).dry_patch = true;
    auto causes = proof.causes();
    const auto count = causes.size();
    ASSERT_GE(count, 5U);
    std::ranges::sort(causes);
    const auto repeated = std::ranges::unique(causes);
    EXPECT_EQ(repeated.size(), 0U);
}

TEST(ProofCausesTest, electrical_work_is_left_to_an_electrician) {
    Proof proof;
    proof.watch({.at = 0.0, .stops = 60.0});
    EXPECT_TRUE(std::ranges::any_of(proof.result().causes, [](const LikelyCause& cause) {
        return english(cause.next_check).find("licensed electrician") != std::string::npos;
    }));
}

}  // namespace
}  // namespace wetfront::test
