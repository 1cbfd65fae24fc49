// SPDX-License-Identifier: Apache-2.0
#include "search/cheapest_cycle.h"

#include <gtest/gtest.h>

#include "day/design_weather.h"
#include "demo/demo.h"
#include "rules/rules.h"

namespace wetfront::test {
namespace {

/// The demo's example visit on its design day.
class CheapestCycleTest : public testing::Test {
protected:
    [[nodiscard]] CheapestCycle found() const {
        const auto all = cheapest_cycles(file, advice, day, weather);
        EXPECT_TRUE(all) << all.error().text();
        EXPECT_EQ(all.value().size(), 1U);
        return all.value().front();
    }

    VisitFile file = example_visit();
    Advice advice = advise(file);
    VisitDay day = visit_day(file, advice);
    Weather weather = design_weather_of(file, advice).value();
};

TEST_F(CheapestCycleTest, it_pumps_no_more_than_the_advice_and_cools_as_well_as_continuous_pumping) {
    const auto& answer = found().answer;
    ASSERT_TRUE(answer.advised);
    EXPECT_FALSE(is_better(*answer.advised, answer.best));
    EXPECT_LE(answer.best.lost, CoolingLimits{}.most_lost);
    EXPECT_LT(in_si(answer.best.pumped), in_si(answer.continuous.pumped));
}

TEST_F(CheapestCycleTest, no_rule_finds_a_fault_in_it) {
    const auto cheapest = found();
    VisitFile left = file;
    forget_controller(left.house.timers.front());
    left.visit.left = {cheapest.settings};
    for (const auto& finding : check(left, timings_of(left), advice, WhichSettings::left)) {
        if (finding.timer == cheapest.timer) {
            EXPECT_LT(finding.severity, Severity::fault) << in_english(finding.message, UnitSystem::si);
        }
    }
}

TEST_F(CheapestCycleTest, it_keeps_to_the_steps_of_the_timer_and_says_what_binds) {
    const auto cheapest = found();
    ASSERT_TRUE(cheapest.answer.best.cycle);
    const double step = in_seconds(file.house.timers.front().resolution->value());
    const double base = in_seconds(cheapest.answer.best.cycle->base);
    EXPECT_NEAR(base, step * std::round(base / step), 1e-9);
    EXPECT_FALSE(cheapest.answer.binding.empty());
}

TEST_F(CheapestCycleTest, it_can_be_ended_before_a_timer_is_begun) {
    EXPECT_FALSE(cheapest_cycles(file, advice, day, weather, [] { return false; }));
}

}  // namespace
}  // namespace wetfront::test
