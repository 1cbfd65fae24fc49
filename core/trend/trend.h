// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "base/enum_names.h"
#include "base/result.h"

namespace wetfront {

/// One value of a series on a time axis, both in whatever unit the series is kept in.
struct DatedValue {
    double at = 0.0;  ///< time since the series' own zero
    double value = 0.0;

    friend bool operator==(const DatedValue&, const DatedValue&) = default;
};

/// Fewer values than this and no two-sided test can reach p < 0.05, however steep they climb: of four, the
/// best order that there is has p = 2/24.
constexpr std::size_t fewest_for_a_trend = 5;
/// Up to that many values the probability is counted, not approximated (EPA QA/G-9S, 4.3.4.1 and table A-11).
constexpr std::size_t most_counted = 10;

/// Mann-Kendall: whether later values tend to be higher or lower than earlier ones, whatever their
/// distribution; only the order in time counts.
/// Source: EPA QA/G-9S (2006), 4.3.4: S, its variance with ties, continuity correction.
struct MannKendall {
    int s = 0;              ///< rising pairs less falling pairs
    double variance = 0.0;  ///< of S without a trend, ties among values counted
    double z = 0.0;         ///< (S - sign S) / sqrt(variance); 0 where S or the variance is
    /// Two-sided probability of an S at least as far from 0 without a trend. Up to `most_counted` values from
    /// all orders in which they could have come, equal values among them; above that from z.
    double p = 1.0;
};

/// Takes them in the order of their times. Bad input where there are fewer than two, where one is not finite
/// and where two have the same time.
[[nodiscard]] Result<MannKendall> mann_kendall(std::vector<DatedValue> series);

/// The number of orders, out of all in which the values could have come, with S of at least `s`, as a share.
/// Exact: the orders of a multiset by their inversions are counted by the Gaussian multinomial coefficient
/// (MacMahon; Stanley, Enumerative Combinatorics 1, 2nd ed., 1.7.1). `sizes`: how many values are equal in
/// each group of equal ones; at most `most_counted` in all.
[[nodiscard]] double share_of_orders(int s, const std::vector<int>& sizes);

/// The line through the middle of a series.
/// Source: Sen 1968; EPA QA/G-9S (2006), 4.3.3: median of the slopes of all pairs. Limits: Hollander and
/// Wolfe, Nonparametric Statistical Methods, 9.3: ranks among the slopes, from the distribution of S, without
/// ties.
struct TheilSen {
    double slope = 0.0;  ///< value a time
    /// 95 % limits of the slope; none where too few values allow no such limits.
    std::optional<double> least;
    std::optional<double> most;
    double at_zero = 0.0;  ///< median of value - slope * at (Helsel and Hirsch 2002, 10.1)

    [[nodiscard]] double at(double time) const { return at_zero + slope * time; }
};

/// The same errors as mann_kendall().
[[nodiscard]] Result<TheilSen> theil_sen(std::vector<DatedValue> series);

/// Whether a series goes up or down, and how sure that is.
enum class TrendVerdict { too_few, none_seen, rising, falling };
// clang-format off
template <> struct EnumNames<TrendVerdict> { static constexpr std::array all{
    EnumName{TrendVerdict::too_few, "too few visits"}, EnumName{TrendVerdict::none_seen, "none seen"},
    EnumName{TrendVerdict::rising, "rising"}, EnumName{TrendVerdict::falling, "falling"}}; };
// clang-format on

struct Trend {
    TrendVerdict verdict = TrendVerdict::too_few;
    /// None with fewer than `fewest_for_a_trend` values.
    std::optional<MannKendall> test;
    std::optional<TheilSen> line;
};

/// A trend where p < 0.05. Errors as above; fewer than two values are no error here but too few.
[[nodiscard]] Result<Trend> trend_of(const std::vector<DatedValue>& series);

/// Median of the times: where the limits of a slope are laid through its line.
[[nodiscard]] double middle_of(const std::vector<DatedValue>& series);

/// When the line reaches a value: as it stands, and by its steepest and flattest slope.
struct Reached {
    double likely = 0.0;           ///< on the series' time axis
    double earliest = 0.0;         ///< by the slope's limit that gets there sooner; not before `now`
    std::optional<double> latest;  ///< none: by its flattest slope, it is never reached
};

/// None where the series has no trend, where its trend leads away from the value, or where the line has
/// passed it at `now` already. The slope's limits are laid through the line at middle_of() the series.
[[nodiscard]] std::optional<Reached> when_reached(const Trend& trend, const std::vector<DatedValue>& series,
                                                  double value, double now);

}  // namespace wetfront
