// SPDX-License-Identifier: Apache-2.0
#include "trend/series_limit.h"

#include <gtest/gtest.h>

#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

/// A bank that was timed three times alike, with 150 s in 5 min left in its timer.
VisitFile timed(double fill, double wet_through) {
    VisitBuilder builder;
    builder.both_weathers();
    MarkedRun run;
    run.fill = fill;
    run.wet_through = wet_through;
    run.dry_out = 900.0;
    for (int repeat = 0; repeat < 3; ++repeat) {
        builder.run(1, run);
    }
    auto& left = builder.left();
    left.period = typed<Duration>("5 min");
    left.base_on_time = typed<Duration>("150 s");
    return builder.file();
}

std::optional<SeriesLimit> limit(const VisitFile& file, Followed what) {
    return limit_of(file, advise(file), file.house.banks.front(), what);
}

/// The longest bound of the advice for a period of 5 min.
double needed_s(const VisitFile& file) {
    const auto advice = advise(file);
    return in_seconds(
        on_time_bounds(*advice.timers.front().banks.front().question, seconds(300.0), advice.margins)
            .value()
            .largest());
}

// What the limit promises, checked the other way round: time that much, and the advice asks for just the base
// on-time that stands in the timer.
TEST(SeriesLimitTest, a_visit_that_measured_the_limit_needs_just_the_base_on_time) {
    const auto file = timed(40.0, 120.0);
    ASSERT_LT(needed_s(file), 150.0);
    const auto fill = limit(file, Followed::fill);
    ASSERT_TRUE(fill);
    EXPECT_GT(fill->value.si, 40.0);
    EXPECT_NEAR(needed_s(timed(fill->value.si, fill->value.si + 80.0)), 150.0, 0.1);
    const auto wetting = limit(file, Followed::wetting);
    ASSERT_TRUE(wetting);
    EXPECT_GT(wetting->value.si, 80.0);
    EXPECT_NEAR(needed_s(timed(40.0, 40.0 + wetting->value.si)), 150.0, 0.1);
    const auto through = limit(file, Followed::wet_through);
    ASSERT_TRUE(through);
    EXPECT_NEAR(through->value.si, 40.0 + wetting->value.si, 1e-9);
}

TEST(SeriesLimitTest, a_limit_that_was_passed_lies_below_what_was_measured) {
    auto file = timed(40.0, 120.0);
    const double needs = needed_s(file);
    file.visit.left.front().base_on_time = Entered<Duration>::of(seconds(needs - 5.0));
    EXPECT_NEAR(limit(file, Followed::fill)->value.si, 35.0, 0.1) << "every bound grows as the fill does";
}

TEST(SeriesLimitTest, the_setting_is_told_as_it_stands_in_the_timer) {
    const auto file = timed(40.0, 120.0);
    EXPECT_EQ(limit(file, Followed::fill)->from, SeriesLimit::From::base_on_time);
    EXPECT_DOUBLE_EQ(limit(file, Followed::fill)->set_by.si, 150.0);
}

TEST(SeriesLimitTest, what_was_found_stands_where_nothing_was_left) {
    auto file = timed(40.0, 120.0);
    file.visit.found = file.visit.left;
    file.visit.left.clear();
    EXPECT_TRUE(limit(file, Followed::fill));
    file.visit.found.clear();
    EXPECT_FALSE(limit(file, Followed::fill));
}

TEST(SeriesLimitTest, a_pump_that_never_rests_and_a_visit_without_weather_set_no_limit) {
    auto file = timed(40.0, 120.0);
    file.visit.left.front().base_on_time = typed<Duration>("5 min");
    EXPECT_FALSE(limit(file, Followed::wet_through));
    file = timed(40.0, 120.0);
    file.visit.conditions.outside_dry_bulb.reset();
    EXPECT_FALSE(limit(file, Followed::wet_through));
}

// 0.75 US gpm/ft (Univ. of Georgia, Poultry Housing Tips 14(4), 2002) is 9.314 L/(min m); times 20 m.
TEST(SeriesLimitTest, flow_has_the_published_least_circulation) {
    auto file = timed(40.0, 120.0);
    auto& bank = file.house.banks.front();
    bank.length = typed<Length>("20 m");
    bank.thickness = typed<Length>("150 mm");
    const auto flow = limit(file, Followed::flow);
    ASSERT_TRUE(flow);
    EXPECT_NEAR(flow->value.si * 60'000.0, 186.28, 0.01);
    bank.thickness = typed<Length>("100 mm");
    EXPECT_FALSE(limit(file, Followed::flow)) << "no number is published for it";
}

TEST(SeriesLimitTest, effectiveness_has_no_limit) {
    EXPECT_FALSE(limit(timed(40.0, 120.0), Followed::effectiveness));
}

}  // namespace
}  // namespace wetfront::test
