// SPDX-License-Identifier: Apache-2.0
#include "timing/uncertainty.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using testing::HasSubstr;

constexpr auto gum_table = "JCGM 100:2008 (GUM), Table G.2, second hand";
constexpr auto gum_example = "JCGM 100:2008 (GUM), example H.1";

std::vector<Duration> times(std::initializer_list<double> values) {
    std::vector<Duration> readings;
    for (const double value : values) {
        readings.push_back(seconds(value));
    }
    return readings;
}

/// Half a unit of the last printed digit.
double print_tolerance(const std::string& printed) {
    const auto point = printed.find('.');
    return 0.5 * std::pow(10.0, -static_cast<double>(printed.size() - point - 1)) * (1.0 + 1e-6);
}

TEST(CoverageFactorTest, agrees_with_the_published_tables_to_their_last_digit) {
    test::OutsideCheck table{"coverage factor (Student's t)", gum_table};
    test::OutsideCheck digits{"coverage factor (Student's t)", "R 2.9.2, 10 digits, second hand"};
    for (const auto& row : test::data_rows("students_t.csv")) {
        const double probability = test::cell_number(row.at(0)) / 100.0;
        const auto degrees = row.at(1) == "inf" ? std::nullopt : std::optional{test::cell_number(row.at(1))};
        const double wanted = test::cell_number(row.at(2));
        const auto got = coverage_factor(probability, degrees);
        ASSERT_TRUE(got) << row.at(1);
        const auto input = row.at(0) + " %, degrees of freedom " + row.at(1);
        if (row.at(2).size() <= std::string{"12.71"}.size()) {
            table.near(input, got.value(), wanted, print_tolerance(row.at(2)));
        } else {
            digits.near(input, got.value(), wanted, 0.5e-9 * (1.0 + 1e-6));
        }
    }
}

TEST(CoverageFactorTest, degrees_of_freedom_are_cut_to_a_whole_number) {
    EXPECT_EQ(coverage_factor(0.95, 16.76).value(), coverage_factor(0.95, 16.0).value());
    EXPECT_EQ(coverage_factor(0.95, 1.999).value(), coverage_factor(0.95, 1.0).value());
    EXPECT_EQ(coverage_factor(0.95, std::nextafter(5.0, 0.0)).value(), coverage_factor(0.95, 5.0).value());
}

TEST(CoverageFactorTest, what_has_no_factor_is_refused) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double infinity = std::numeric_limits<double>::infinity();
    for (const double probability : {0.0, 1.0, -0.1, 1.5, nan}) {
        EXPECT_FALSE(coverage_factor(probability, 5.0)) << probability;
    }
    for (const double degrees : {0.0, 0.99, -1.0, nan, infinity}) {
        const auto result = coverage_factor(0.95, degrees);
        ASSERT_FALSE(result) << degrees;
        EXPECT_EQ(result.error().item, "degrees of freedom");
    }
}

std::vector<Component> gauge_block() {
    std::vector<Component> components;
    for (const auto& row : test::data_rows("welch_satterthwaite.csv")) {
        components.push_back({test::cell_number(row.at(0)), test::cell_number(row.at(1))});
    }
    return components;
}

TEST(EffectiveDegreesOfFreedomTest, are_those_of_the_published_gauge_block) {
    const auto components = gauge_block();
    double squares = 0.0;
    for (const auto& component : components) {
        squares += component.standard_uncertainty * component.standard_uncertainty;
    }
    const double combined = std::sqrt(squares);
    EXPECT_NEAR(combined, 32.0, 0.5);
    const auto effective = effective_degrees_of_freedom(components);
    ASSERT_TRUE(effective);
    test::OutsideCheck degrees{"effective degrees of freedom (Welch-Satterthwaite)", gum_example};
    degrees.near("gauge block, combined uncertainty not rounded", *effective, 16.76, 0.005);
    EXPECT_EQ(std::floor(*effective), 16.0);
    // Published as "about 93 nm" from 32 nm rounded; unrounded it is 92.5.
    test::OutsideCheck expanded{"expanded uncertainty at 99 %", gum_example, "nm"};
    expanded.near("gauge block", coverage_factor(0.99, effective).value() * combined, 93.0, 1.0);
}

TEST(EffectiveDegreesOfFreedomTest, do_not_depend_on_the_unit) {
    auto components = gauge_block();
    const auto before = effective_degrees_of_freedom(components);
    for (auto& component : components) {
        component.standard_uncertainty *= 1e-120;
    }
    EXPECT_NEAR(effective_degrees_of_freedom(components).value(), before.value(), 1e-9);
}

TEST(EffectiveDegreesOfFreedomTest, are_infinite_where_no_component_has_any) {
    EXPECT_EQ(effective_degrees_of_freedom({}), std::nullopt);
    const std::vector<Component> type_b{{1.0, std::nullopt}, {2.0, std::nullopt}};
    EXPECT_EQ(effective_degrees_of_freedom(type_b), std::nullopt);
    const std::vector<Component> no_spread{{0.0, 4.0}, {2.0, std::nullopt}};
    EXPECT_EQ(effective_degrees_of_freedom(no_spread), std::nullopt);
}

TEST(EffectiveDegreesOfFreedomTest, of_one_component_are_its_own) {
    const std::vector<Component> one{{0.3, 7.0}};
    EXPECT_NEAR(effective_degrees_of_freedom(one).value(), 7.0, 1e-12);
}

TEST(EvaluateTest, repeated_readings_follow_the_guide_step_by_step) {
    // By hand: 43, 45, 47 s have mean 45, s = 2, u_A = 2/sqrt(3); with u_B = 2: u_c = sqrt(4/3 + 4)
    // = 2.309401; nu = (16/3)^2 / ((4/3)^2 / 2) = 32; k = t_95(32); t_95(30) = 2.04 and t_95(35) = 2.03 in
    // GUM table G.2.
    const auto result = evaluate(times({43.0, 45.0, 47.0}), seconds(2.0));
    ASSERT_TRUE(result) << result.error().text();
    const auto& r = result.value();
    EXPECT_EQ(r.count, 3);
    EXPECT_DOUBLE_EQ(in_seconds(r.mean), 45.0);
    ASSERT_TRUE(r.standard_deviation);
    EXPECT_DOUBLE_EQ(in_seconds(*r.standard_deviation), 2.0);
    EXPECT_EQ(r.spread_from, SpreadFrom::readings);
    EXPECT_NEAR(in_seconds(r.random), 1.154701, 1e-6);
    EXPECT_EQ(in_seconds(r.systematic), 2.0);
    EXPECT_NEAR(in_seconds(r.standard), 2.309401, 1e-6);
    ASSERT_TRUE(r.degrees_of_freedom);
    EXPECT_NEAR(*r.degrees_of_freedom, 32.0, 1e-9);
    test::OutsideCheck check{"coverage factor of three readings, from the middle of its neighbours",
                             gum_table};
    check.near("32 degrees of freedom", r.coverage_factor, 0.5 * (2.03 + 2.04), 0.005 + 0.005);
    EXPECT_DOUBLE_EQ(in_seconds(r.expanded), r.coverage_factor * in_seconds(r.standard));
}

TEST(EvaluateTest, without_a_systematic_part_two_readings_have_the_factor_of_one_degree_of_freedom) {
    // GUM table G.2: 12.71 for one degree of freedom. Values chosen so that rounding could fall below it.
    const auto result = evaluate(times({44.1, 44.3}), seconds(0.0));
    ASSERT_TRUE(result);
    test::OutsideCheck check{"coverage factor of two readings", gum_table};
    check.near("1 degree of freedom", result.value().coverage_factor, 12.71, 0.005);
}

TEST(EvaluateTest, the_systematic_part_does_not_shrink_with_repeats) {
    std::vector<Duration> many;
    for (int i = 0; i < 1000; ++i) {
        many.push_back(seconds(i % 2 == 0 ? 44.0 : 46.0));
    }
    const auto result = evaluate(many, seconds(2.0));
    ASSERT_TRUE(result);
    EXPECT_LT(in_seconds(result.value().random), 0.04);
    EXPECT_GE(in_seconds(result.value().standard), 2.0);
}

TEST(EvaluateTest, one_reading_takes_the_pooled_spread) {
    const auto result = evaluate(times({60.0}), seconds(0.0), Spread{9.0, 4});
    ASSERT_TRUE(result);
    const auto& r = result.value();
    EXPECT_EQ(r.spread_from, SpreadFrom::pooled);
    EXPECT_EQ(r.standard_deviation, std::nullopt);
    EXPECT_DOUBLE_EQ(in_seconds(r.random), 3.0);
    EXPECT_NEAR(r.degrees_of_freedom.value(), 4.0, 1e-12);
    test::OutsideCheck check{"coverage factor of one reading with pooled spread", gum_table};
    check.near("4 degrees of freedom", r.coverage_factor, 2.78, 0.005);
}

TEST(EvaluateTest, one_reading_with_nothing_to_pool_takes_an_assumed_share) {
    const auto result = evaluate(times({60.0}), seconds(4.0));
    ASSERT_TRUE(result);
    const auto& r = result.value();
    EXPECT_EQ(r.count, 1);
    EXPECT_EQ(r.spread_from, SpreadFrom::assumed);
    EXPECT_DOUBLE_EQ(in_seconds(r.random), 3.0);
    EXPECT_DOUBLE_EQ(in_seconds(r.standard), 5.0);
    EXPECT_EQ(r.degrees_of_freedom, std::nullopt);
    test::OutsideCheck check{"coverage factor of one reading with an assumed spread", gum_table};
    check.near("no degrees of freedom", r.coverage_factor, 1.960, 0.0005);
    EXPECT_NEAR(in_seconds(r.expanded), 9.80, 0.005);
}

TEST(EvaluateTest, repeated_readings_ignore_the_pooled_spread) {
    const auto alone = evaluate(times({44.0, 46.0}), seconds(1.0));
    const auto with_pool = evaluate(times({44.0, 46.0}), seconds(1.0), Spread{900.0, 4});
    EXPECT_EQ(in_seconds(alone.value().expanded), in_seconds(with_pool.value().expanded));
}

TEST(EvaluateTest, equal_readings_leave_the_systematic_part) {
    const auto result = evaluate(times({45.0, 45.0, 45.0}), seconds(0.1));
    ASSERT_TRUE(result);
    EXPECT_EQ(in_seconds(result.value().random), 0.0);
    EXPECT_EQ(in_seconds(result.value().standard), 0.1);
    EXPECT_EQ(result.value().degrees_of_freedom, std::nullopt);
}

TEST(EvaluateTest, what_is_no_reading_is_refused_by_its_number) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double infinity = std::numeric_limits<double>::infinity();
    for (const double bad : {0.0, -1.0, nan, infinity, 86'400.001}) {
        const auto result = evaluate(times({45.0, bad}), seconds(0.1));
        ASSERT_FALSE(result) << bad;
        EXPECT_EQ(result.error().item, "reading 2") << bad;
        EXPECT_THAT(result.error().accepted, HasSubstr("24 h"));
    }
    EXPECT_TRUE(evaluate(times({86'400.0}), seconds(0.1)));
    EXPECT_EQ(evaluate({}, seconds(0.1)).error().item, "readings");
}

TEST(EvaluateTest, what_is_no_uncertainty_is_refused) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    const auto one = times({45.0});
    EXPECT_EQ(evaluate(one, seconds(-0.1)).error().item, "systematic uncertainty");
    EXPECT_EQ(evaluate(one, seconds(nan)).error().item, "systematic uncertainty");
    EXPECT_EQ(evaluate(one, seconds(0.1), Spread{-1.0, 2}).error().item, "pooled variance");
    EXPECT_EQ(evaluate(one, seconds(0.1), Spread{1.0, 0}).error().item, "pooled degrees of freedom");
    EXPECT_EQ(evaluate(one, seconds(0.1), std::nullopt, 1.01).error().item, "share of a single reading");
    EXPECT_EQ(evaluate(one, seconds(0.1), std::nullopt, -0.01).error().item, "share of a single reading");
}

TEST(PooledTest, variances_count_by_their_degrees_of_freedom) {
    const std::vector<Spread> groups{{4.0, 2}, {9.0, 1}, {100.0, 0}};
    const auto result = pooled(groups);
    ASSERT_TRUE(result);
    EXPECT_DOUBLE_EQ(result->variance_s2, 17.0 / 3.0);
    EXPECT_EQ(result->degrees_of_freedom, 3);
}

TEST(PooledTest, nothing_to_pool_gives_nothing) {
    EXPECT_FALSE(pooled({}));
    const std::vector<Spread> singles{{0.0, 0}};
    EXPECT_FALSE(pooled(singles));
}

TEST(OutlierTest, of_the_published_example_is_found) {
    std::vector<Duration> readings;
    for (const auto& row : test::data_rows("grubbs_example.csv")) {
        readings.push_back(seconds(test::cell_number(row.at(0))));
    }
    ASSERT_EQ(readings.size(), 8U);
    EXPECT_EQ(outlier(readings), 7U);
    const auto all = evaluate(readings, seconds(0.0));
    ASSERT_TRUE(all) << all.error().text();
    const double deviation = in_seconds(all.value().standard_deviation.value());
    constexpr auto example = "NIST/SEMATECH e-Handbook, 1.3.5.17.1, worked example, second hand";
    test::OutsideCheck s{"standard deviation of readings", example};
    s.near("all eight", deviation, 15.85256, 0.5e-5);
    test::OutsideCheck g{"G of the reading that stands out (Grubbs' test)", example};
    g.near("245.57", in_seconds(readings.back() - all.value().mean) / deviation, 2.468765, 0.5e-6);
    readings.pop_back();
    EXPECT_EQ(outlier(readings), std::nullopt) << "without it the other seven agree";
}

/// Grubbs' G above which outlier() names a reading, found from outside: n - 1 values that alternate around
/// the same middle, and the last moved out by bisection to where it begins to be named.
double g_where_naming_begins(int n) {
    std::vector<Duration> readings;
    for (int i = 0; i < n; ++i) {
        readings.push_back(seconds(i % 2 == 0 ? 101.0 : 99.0));
    }
    double near = 101.0;
    double far = 1e6;
    for (int i = 0; i < 200; ++i) {
        const double middle = 0.5 * (near + far);
        readings.back() = seconds(middle);
        (outlier(readings) ? far : near) = middle;
    }
    readings.back() = seconds(near);
    EXPECT_EQ(outlier(readings), std::nullopt) << n << " readings, the last at " << near;
    readings.back() = seconds(far);
    EXPECT_EQ(outlier(readings), static_cast<std::size_t>(n - 1)) << n << " readings, the last at " << far;

    double mean = 0.0;
    for (const auto& reading : readings) {
        mean += in_seconds(reading) / n;
    }
    double squares = 0.0;
    for (const auto& reading : readings) {
        squares += (in_seconds(reading) - mean) * (in_seconds(reading) - mean);
    }
    return (far - mean) / std::sqrt(squares / (n - 1));
}

TEST(OutlierTest, the_limit_is_the_published_one_for_every_number_of_readings) {
    test::OutsideCheck check{"limit of Grubbs' G, two-sided, 5 %",
                             "Harvey, Analytical Chemistry 2.1, Appendix 7"};
    for (const auto& row : test::data_rows("grubbs.csv")) {
        // Printed to 0.001, some of them rounded up and some cut off.
        const auto n = static_cast<int>(test::cell_number(row.at(0)));
        check.near(row.at(0) + " readings", g_where_naming_begins(n), test::cell_number(row.at(1)), 0.001);
    }
}

TEST(OutlierTest, a_reading_that_is_too_short_stands_out_as_well) {
    EXPECT_EQ(outlier(times({45.0, 45.2, 20.0, 44.9, 45.1})), 2U);
}

TEST(OutlierTest, fewer_than_three_readings_or_equal_ones_have_none) {
    EXPECT_EQ(outlier({}), std::nullopt);
    EXPECT_EQ(outlier(times({45.0, 450.0})), std::nullopt);
    EXPECT_EQ(outlier(times({45.1, 45.1, 45.1})), std::nullopt);
    EXPECT_EQ(outlier(times({45.1, 45.1, 45.1, 45.1, 45.1, 45.1, 45.1})), std::nullopt);
}

TimingResult result_of(std::initializer_list<double> values, double systematic) {
    return evaluate(times(values), seconds(systematic)).value();
}

TEST(CompareTest, banks_far_apart_differ_and_banks_close_together_do_not) {
    const auto a = result_of({44.0, 45.0, 46.0}, 0.1);
    EXPECT_TRUE(compare(a, result_of({64.0, 65.0, 66.0}, 0.1)).differs);
    EXPECT_TRUE(compare(result_of({64.0, 65.0, 66.0}, 0.1), a).differs);
    EXPECT_FALSE(compare(a, result_of({44.5, 45.5, 46.5}, 0.1)).differs);
}

TEST(CompareTest, a_difference_carries_both_uncertainties) {
    // By hand: s = 1, n = 3 and u_B = 0 on both sides: u^2 = 1/3 + 1/3, nu = (2/3)^2 / (2 (1/3)^2 / 2) = 4, k
    // = 2.776.
    const auto a = result_of({44.0, 45.0, 46.0}, 0.0);
    const auto b = result_of({47.0, 48.0, 49.0}, 0.0);
    const auto d = difference(b, a);
    EXPECT_DOUBLE_EQ(in_seconds(d.mean), 3.0);
    EXPECT_NEAR(in_seconds(d.standard), std::sqrt(2.0 / 3.0), 1e-12);
    EXPECT_NEAR(d.degrees_of_freedom.value(), 4.0, 1e-9);
    test::OutsideCheck check{"expanded uncertainty of a difference over its standard one", gum_table};
    check.near("4 degrees of freedom", in_seconds(d.expanded) / std::sqrt(2.0 / 3.0), 2.78, 0.005);
    EXPECT_EQ(d.standard_deviation, std::nullopt);
    const auto comparison = compare(b, a);
    EXPECT_DOUBLE_EQ(in_seconds(comparison.difference), 3.0);
    EXPECT_EQ(in_seconds(comparison.expanded), in_seconds(d.expanded));
    EXPECT_TRUE(comparison.differs);
}

TEST(CompareTest, the_weaker_source_of_spread_is_named) {
    const auto assumed = result_of({45.0}, 0.1);
    const auto read = result_of({44.0, 46.0}, 0.1);
    EXPECT_EQ(difference(assumed, read).spread_from, SpreadFrom::assumed);
    EXPECT_EQ(difference(read, assumed).spread_from, SpreadFrom::assumed);
    EXPECT_EQ(difference(read, assumed).count, 1);
}

}  // namespace
}  // namespace wetfront
