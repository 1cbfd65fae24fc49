// SPDX-License-Identifier: Apache-2.0
#include "trend/trend.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>
#include <sstream>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

/// One value a year.
std::vector<DatedValue> yearly(const std::vector<double>& values) {
    std::vector<DatedValue> series;
    for (const double value : values) {
        series.push_back({static_cast<double>(series.size()), value});
    }
    return series;
}

std::vector<double> numbers_in(const std::string& cell) {
    std::istringstream stream{cell};
    return {std::istream_iterator<double>{stream}, {}};
}

template <class T>
T value_of(const Result<T>& result) {
    EXPECT_TRUE(result) << result.error().text();
    return result.value();
}

/// The published worked examples: name, series, and the cells of their row.
std::vector<std::vector<std::string>> examples() {
    auto rows = test::data_rows("trend_test.csv");
    std::erase_if(rows, [](const auto& row) { return row.front() == "id"; });
    return rows;
}

TEST(MannKendallTest, s_variance_and_z_are_those_of_the_published_examples) {
    test::OutsideCheck s{"Mann-Kendall S", "EPA QA/G-9S p. 109; Wisconsin NR 746"};
    test::OutsideCheck variance{"Mann-Kendall variance", "EPA QA/G-9S p. 109; Wisconsin NR 746"};
    test::OutsideCheck z{"Mann-Kendall Z", "EPA QA/G-9S p. 109; Wisconsin NR 746"};
    for (const auto& row : examples()) {
        const auto got = value_of(mann_kendall(yearly(numbers_in(row.at(1)))));
        s.near(row.at(0), got.s, test::cell_number(row.at(3)), 1e-12);
        variance.near(row.at(0), got.variance, test::cell_number(row.at(4)), 5e-5);
        z.near(row.at(0), got.z, test::cell_number(row.at(5)), 6e-5);
    }
}

TEST(MannKendallTest, above_the_counted_ones_the_probability_is_the_published_one) {
    test::OutsideCheck p{"Mann-Kendall p from Z", "EPA QA/G-9S p. 109, p computed"};
    for (const auto& row : examples()) {
        const auto series = yearly(numbers_in(row.at(1)));
        if (series.size() > most_counted) {
            p.near(row.at(0), value_of(mann_kendall(series)).p, test::cell_number(row.at(6)), 5.1e-5);
        }
    }
}

TEST(MannKendallTest, few_values_have_the_probabilities_of_the_table) {
    test::OutsideCheck share{"Mann-Kendall, counted probabilities", "all orders enumerated"};
    auto rows = test::data_rows("mann_kendall_exact.csv");
    for (const auto& row : rows) {
        if (row.front() == "n") {
            continue;
        }
        const std::vector<int> all_differ(static_cast<std::size_t>(test::cell_number(row.at(0))), 1);
        share.near("n " + row.at(0) + ", S " + row.at(1),
                   share_of_orders(static_cast<int>(test::cell_number(row.at(1))), all_differ),
                   test::cell_number(row.at(2)), 1e-5 * test::cell_number(row.at(2)));
    }
}

// Against trying every order, here.
TEST(MannKendallTest, equal_values_are_counted_as_trying_every_order_counts_them) {
    for (const auto& values :
         {std::vector<double>{1, 1, 2, 3, 4}, {1, 1, 1, 2, 2, 3}, {5, 5, 5, 5, 7, 8, 8}}) {
        const auto wanted = value_of(mann_kendall(yearly(values)));
        auto order = values;
        std::ranges::sort(order);
        int orders = 0;
        int as_far = 0;
        do {
            ++orders;
            as_far += std::abs(value_of(mann_kendall(yearly(order))).s) >= std::abs(wanted.s) ? 1 : 0;
        } while (std::ranges::next_permutation(order).found);
        EXPECT_NEAR(wanted.p, static_cast<double>(as_far) / orders, 1e-12);
    }
}

TEST(MannKendallTest, a_series_that_never_changes_has_no_trend) {
    const auto got = value_of(mann_kendall(yearly({3, 3, 3, 3, 3, 3})));
    EXPECT_EQ(got.s, 0);
    EXPECT_EQ(got.p, 1.0);
}

TEST(MannKendallTest, the_order_in_which_values_are_given_does_not_matter) {
    const auto series = yearly({12, 15, 11, 18, 21, 19, 25});
    auto shuffled = series;
    std::ranges::shuffle(shuffled, std::mt19937{7});
    EXPECT_EQ(value_of(mann_kendall(shuffled)).s, value_of(mann_kendall(series)).s);
}

TEST(MannKendallTest, turned_round_in_time_it_is_the_same_to_the_other_side) {
    std::mt19937 random{11};
    std::uniform_int_distribution<int> value{0, 6};
    for (int n = 2; n <= 14; ++n) {
        std::vector<double> values(static_cast<std::size_t>(n));
        std::ranges::generate(values, [&] { return value(random); });
        const auto forwards = value_of(mann_kendall(yearly(values)));
        std::ranges::reverse(values);
        const auto backwards = value_of(mann_kendall(yearly(values)));
        EXPECT_EQ(forwards.s, -backwards.s);
        EXPECT_NEAR(forwards.p, backwards.p, 1e-12);
    }
}

TEST(MannKendallTest, what_is_no_series_is_refused) {
    EXPECT_FALSE(mann_kendall({}));
    EXPECT_FALSE(mann_kendall({{0.0, 1.0}}));
    EXPECT_FALSE(mann_kendall({{0.0, 1.0}, {0.0, 2.0}}));
    EXPECT_FALSE(mann_kendall({{0.0, 1.0}, {1.0, std::numeric_limits<double>::quiet_NaN()}}));
    EXPECT_FALSE(mann_kendall({{0.0, 1.0}, {std::numeric_limits<double>::infinity(), 2.0}}));
}

TEST(TheilSenTest, the_slope_is_that_of_the_worked_examples) {
    test::OutsideCheck slope{"Theil-Sen slope",
                             "data of EPA QA/G-9S p. 109 and Wisconsin NR 746, slope computed"};
    for (const auto& row : examples()) {
        slope.near(row.at(0), value_of(theil_sen(yearly(numbers_in(row.at(1))))).slope,
                   test::cell_number(row.at(7)), 5e-5);
    }
}

TEST(TheilSenTest, a_straight_line_is_found_whatever_one_wild_value_says) {
    auto series = yearly({10, 12, 14, 16, 18, 20, 22, 24, 26});
    series[4].value = 500.0;
    const auto line = value_of(theil_sen(series));
    EXPECT_DOUBLE_EQ(line.slope, 2.0);
    EXPECT_DOUBLE_EQ(line.at_zero, 10.0);
}

TEST(TheilSenTest, times_need_not_be_evenly_spaced) {
    EXPECT_DOUBLE_EQ(value_of(theil_sen({{0.0, 1.0}, {0.5, 2.0}, {4.0, 9.0}, {4.1, 9.2}, {9.0, 19.0}})).slope,
                     2.0);
}

// Five values: of the ten slopes only the whole range has 95 %, as S = 8 comes up by chance in 2 x 4.2 %.
TEST(TheilSenTest, the_limits_of_five_values_are_the_least_and_the_steepest_slope) {
    const auto line = value_of(theil_sen(yearly({1.0, 2.0, 4.0, 3.0, 8.0})));
    ASSERT_TRUE(line.least && line.most);
    EXPECT_DOUBLE_EQ(*line.least, -1.0);
    EXPECT_DOUBLE_EQ(*line.most, 5.0);
}

TEST(TheilSenTest, four_values_have_no_95_percent_limits) {
    const auto line = value_of(theil_sen(yearly({1.0, 2.0, 4.0, 8.0})));
    EXPECT_FALSE(line.least);
    EXPECT_FALSE(line.most);
}

// Coverage of the limits, which are to hold the true slope in 95 of 100 series or somewhat more.
TEST(TheilSenTest, the_limits_hold_the_true_slope_as_often_as_they_say) {
    std::mt19937 random{20260701};
    std::normal_distribution<double> noise{0.0, 5.0};
    for (const int n : {6, 8, 10, 14, 20}) {
        int held = 0;
        constexpr int series_tried = 2000;
        for (int tried = 0; tried < series_tried; ++tried) {
            std::vector<double> values(static_cast<std::size_t>(n));
            for (std::size_t i = 0; i < values.size(); ++i) {
                values[i] = 100.0 + 3.0 * static_cast<double>(i) + noise(random);
            }
            const auto line = value_of(theil_sen(yearly(values)));
            held += *line.least <= 3.0 && 3.0 <= *line.most ? 1 : 0;
        }
        // Three standard deviations of such a count are 1.5 %.
        EXPECT_GE(held, series_tried * 0.935) << n << " values";
    }
}

TEST(TrendTest, fewer_than_five_values_are_too_few_and_not_without_a_trend) {
    EXPECT_EQ(value_of(trend_of(yearly({}))).verdict, TrendVerdict::too_few);
    EXPECT_EQ(value_of(trend_of(yearly({1, 2, 3, 4}))).verdict, TrendVerdict::too_few);
    EXPECT_EQ(value_of(trend_of(yearly({1, 2, 3, 4, 5}))).verdict, TrendVerdict::rising);
}

TEST(TrendTest, a_steady_fall_is_told_from_noise) {
    EXPECT_EQ(value_of(trend_of(yearly({9, 8, 7, 5, 4, 2}))).verdict, TrendVerdict::falling);
    EXPECT_EQ(value_of(trend_of(yearly({9, 4, 8, 5, 9, 4}))).verdict, TrendVerdict::none_seen);
}

TEST(TrendTest, a_published_series_just_above_the_level_is_no_trend) {
    EXPECT_EQ(value_of(trend_of(yearly({10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15}))).verdict,
              TrendVerdict::none_seen)
        << "EPA QA/G-9S p. 109: Z = 1.685, below 1.96";
}

TEST(WhenReachedTest, a_line_without_noise_reaches_its_limit_where_the_line_does) {
    const auto series = yearly({110, 120, 130, 140, 150, 160});
    const auto reached = when_reached(value_of(trend_of(series)), series, 200.0, 5.0);
    ASSERT_TRUE(reached);
    EXPECT_DOUBLE_EQ(reached->likely, 9.0);
    EXPECT_DOUBLE_EQ(reached->earliest, 9.0);
    ASSERT_TRUE(reached->latest);
    EXPECT_DOUBLE_EQ(*reached->latest, 9.0);
}

TEST(WhenReachedTest, a_falling_line_reaches_what_lies_below_it) {
    const auto series = yearly({60, 58, 56, 54, 52});
    const auto reached = when_reached(value_of(trend_of(series)), series, 40.0, 4.0);
    ASSERT_TRUE(reached);
    EXPECT_DOUBLE_EQ(reached->likely, 10.0);
    EXPECT_FALSE(when_reached(value_of(trend_of(series)), series, 70.0, 4.0));
}

TEST(WhenReachedTest, a_limit_that_the_trend_leads_away_from_or_has_passed_is_not_reached) {
    const auto series = yearly({110, 120, 130, 140, 150, 160});
    const auto trend = value_of(trend_of(series));
    EXPECT_FALSE(when_reached(trend, series, 100.0, 5.0));
    EXPECT_FALSE(when_reached(trend, series, 150.0, 5.0));
}

TEST(WhenReachedTest, without_a_trend_there_is_never_a_date) {
    const auto noise = yearly({9, 4, 8, 5, 9, 4});
    EXPECT_FALSE(when_reached(value_of(trend_of(noise)), noise, 20.0, 5.0));
    const auto few = yearly({1, 2, 3, 4});
    EXPECT_FALSE(when_reached(value_of(trend_of(few)), few, 20.0, 3.0));
}

// By hand: slopes of all pairs of 110, 121, 129, 141, 150 a year are 11, 9.5, 10.33, 10, 8, 10, 9.67, 12,
// 10.5, 9; their median is 10. Of 120 orders one has S = 10 (0.8 %) and five have 8 or more (4.2 %), so the
// limits are the slopes of ranks 1 and 10: 8 and 12. What is left of the values has the median 110; the
// middle year is 2, with 130 on the line. So 190 is reached at 2 + 60/10, 2 + 60/12 and 2 + 60/8.
TEST(WhenReachedTest, the_range_is_that_of_the_slopes_limits_through_the_middle) {
    const auto series = yearly({110, 121, 129, 141, 150});
    const auto reached = when_reached(value_of(trend_of(series)), series, 190.0, 4.0);
    ASSERT_TRUE(reached);
    EXPECT_NEAR(reached->likely, 8.0, 1e-9);
    EXPECT_NEAR(reached->earliest, 7.0, 1e-9);
    ASSERT_TRUE(reached->latest);
    EXPECT_NEAR(*reached->latest, 9.5, 1e-9);
}

TEST(WhenReachedTest, earliest_likely_and_latest_come_in_this_order) {
    std::mt19937 random{3};
    std::normal_distribution<double> noise{0.0, 4.0};
    int reached_at_all = 0;
    for (int tried = 0; tried < 300; ++tried) {
        std::vector<double> values(9);
        for (std::size_t i = 0; i < values.size(); ++i) {
            values[i] = 100.0 + 4.0 * static_cast<double>(i) + noise(random);
        }
        const auto series = yearly(values);
        const auto reached = when_reached(value_of(trend_of(series)), series, 200.0, 8.0);
        if (!reached) {
            continue;
        }
        ++reached_at_all;
        EXPECT_LE(reached->earliest, reached->likely);
        EXPECT_GE(reached->earliest, 8.0);
        EXPECT_GE(reached->latest.value_or(1e9), reached->likely);
    }
    EXPECT_GT(reached_at_all, 250);
}

}  // namespace
}  // namespace wetfront
