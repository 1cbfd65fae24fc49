// SPDX-License-Identifier: Apache-2.0
#include "charts/axis_ticks.h"

#include <gmock/gmock.h>

#include <limits>

namespace wetfront::ui {
namespace {

using testing::DoubleNear;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(AxisTicksTest, they_stand_at_round_numbers_far_enough_apart) {
    // 100 units on 200 pixels: 40 pixels are 20 units.
    const auto ticks = ticks_of(95.0, 195.0, 200.0, 40.0, 1.0);
    EXPECT_THAT(ticks.values, ElementsAre(100.0, 120.0, 140.0, 160.0, 180.0));
    EXPECT_EQ(ticks.decimals, 0);
    EXPECT_THAT(ticks_of(95.0, 195.0, 200.0, 41.0, 1.0).values, ElementsAre(100.0, 150.0));
}

TEST(AxisTicksTest, digits_behind_the_point_are_as_many_as_the_step_needs) {
    const auto ticks = ticks_of(0.71, 0.79, 200.0, 45.0, 1e-6);
    EXPECT_THAT(ticks.values, ElementsAre(DoubleNear(0.72, 1e-12), DoubleNear(0.74, 1e-12),
                                          DoubleNear(0.76, 1e-12), DoubleNear(0.78, 1e-12)));
    EXPECT_EQ(ticks.decimals, 2);
    EXPECT_EQ(ticks_of(0.0, 5.0, 200.0, 20.0, 1e-6).decimals, 1);
}

TEST(AxisTicksTest, they_are_not_finer_than_asked_for) {
    const auto ticks = ticks_of(20.0, 22.0, 400.0, 20.0, 1.0);
    EXPECT_THAT(ticks.values, ElementsAre(20.0, 21.0, 22.0));
}

TEST(AxisTicksTest, an_axis_that_spans_nothing_or_is_too_short_has_none) {
    EXPECT_THAT(ticks_of(5.0, 5.0, 200.0, 20.0, 1.0).values, IsEmpty());
    EXPECT_THAT(ticks_of(5.0, 9.0, 10.0, 20.0, 1.0).values, IsEmpty());
    EXPECT_THAT(ticks_of(std::numeric_limits<double>::quiet_NaN(), 9.0, 200.0, 20.0, 1.0).values, IsEmpty());
}

}  // namespace
}  // namespace wetfront::ui
