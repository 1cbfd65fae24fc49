// SPDX-License-Identifier: Apache-2.0
#include "cycle/template_steps.h"

#include <gtest/gtest.h>

namespace wetfront::test {
namespace {

/// 10, 15, 20, 25 s: 27 s is no step.
TemplateSetting fives() {
    return {TemplateKey::base_on_time, "Run", "s", 5.0, 10.0, 27.0, ""};
}

AnyQuantity time(double s) {
    return any(seconds(s));
}

struct StepCase {
    double value;
    std::optional<double> up;
    std::optional<double> down;
    std::optional<double> nearest;
};

TEST(TemplateStepsTest, a_value_goes_to_the_step_on_the_side_that_is_asked_for) {
    constexpr auto none = std::nullopt;
    const std::array<StepCase, 12> cases{{{7.4, 10.0, none, none},
                                          {7.5, 10.0, none, 10.0},
                                          {9.9, 10.0, none, 10.0},
                                          {10.0, 10.0, 10.0, 10.0},
                                          {12.5, 15.0, 10.0, 10.0},
                                          {12.6, 15.0, 10.0, 15.0},
                                          {15.0 + 4e-6, 15.0, 15.0, 15.0},
                                          {15.0 - 4e-6, 15.0, 15.0, 15.0},
                                          {25.0, 25.0, 25.0, 25.0},
                                          {25.1, none, 25.0, 25.0},
                                          {27.5, none, 25.0, 25.0},
                                          {27.6, none, 25.0, none}}};
    for (const auto& [value, up, down, nearest] : cases) {
        EXPECT_EQ(step_for(fives(), time(value), StepDirection::up), up) << value;
        EXPECT_EQ(step_for(fives(), time(value), StepDirection::down), down) << value;
        EXPECT_EQ(step_for(fives(), time(value), StepDirection::nearest), nearest) << value;
    }
}

TEST(TemplateStepsTest, out_of_range_begins_a_whole_step_beyond_the_first_and_the_last) {
    EXPECT_FALSE(is_out_of_range(fives(), time(5.1)));
    EXPECT_TRUE(is_out_of_range(fives(), time(5.0)));
    EXPECT_FALSE(is_out_of_range(fives(), time(29.9)));
    EXPECT_TRUE(is_out_of_range(fives(), time(30.0)));
}

TEST(TemplateStepsTest, a_value_beyond_the_steps_is_brought_to_the_first_or_the_last) {
    EXPECT_EQ(within_steps(fives(), time(3.0)), time(10.0));
    EXPECT_EQ(within_steps(fives(), time(12.0)), time(12.0));
    EXPECT_EQ(within_steps(fives(), time(26.0)), time(25.0));
}

TEST(TemplateStepsTest, a_multiple_of_the_period_must_be_a_step_and_within_the_range) {
    const TemplateSetting minutes{TemplateKey::review_interval, "Review", "min", 3.0, 3.0, 30.0, ""};
    EXPECT_EQ(multiple_for(minutes, time(600.0), seconds(240.0)), 12.0);
    EXPECT_EQ(multiple_for(minutes, time(720.0), seconds(240.0)), 12.0);
    EXPECT_EQ(multiple_for(minutes, time(721.0), seconds(240.0)), 24.0) << "16 and 20 min are no steps";
    EXPECT_EQ(multiple_for(minutes, time(1441.0), seconds(240.0)), std::nullopt);
    EXPECT_EQ(multiple_for(minutes, time(0.0), seconds(240.0)), 12.0) << "nothing is not a multiple";
}

TEST(TemplateStepsTest, a_multiple_is_told_from_what_lies_beside_it) {
    EXPECT_TRUE(is_multiple(720.0, 240.0));
    EXPECT_FALSE(is_multiple(721.0, 240.0));
    EXPECT_FALSE(is_multiple(0.0, 240.0));
}

TEST(TemplateStepsTest, numbers_are_written_as_they_are_entered) {
    const TemplateSetting tenths{TemplateKey::period, "Every", "min", 0.1, 0.0, 10.0, ""};
    EXPECT_EQ(number_text(tenths, 3 * 0.1), "0.3");
    EXPECT_EQ(quantity_of(tenths, 1.5), time(90.0));
    const TemplateSetting clock{TemplateKey::rinse_at, "Rinse at", "", 15.0, 0.0, 1425.0, ""};
    EXPECT_EQ(number_text(clock, 570.0), "09:30");
    EXPECT_EQ(quantity_of(clock, 570.0), any(seconds(34'200.0), Scale::clock));
}

TEST(TemplateStepsTest, degrees_of_either_scale_meet_their_steps_in_spite_of_binary_noise) {
    const TemplateSetting fahrenheit{TemplateKey::start_temperature, "Start", "degF", 1.0, 60.0, 110.0, ""};
    for (int degrees = 60; degrees <= 110; ++degrees) {
        const auto typed = parse_quantity<Temperature>(std::to_string(degrees) + " degF", "test").value();
        EXPECT_EQ(step_for(fahrenheit, any(typed), StepDirection::up), degrees);
        EXPECT_EQ(step_for(fahrenheit, any(typed), StepDirection::down), degrees);
    }
}

}  // namespace
}  // namespace wetfront::test
