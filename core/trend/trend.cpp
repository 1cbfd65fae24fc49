// SPDX-License-Identifier: Apache-2.0
#include "trend/trend.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <string>

namespace wetfront {
namespace {

constexpr double two_sided = 0.05;

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) {
        return *middle;
    }
    return (*middle + *std::max_element(values.begin(), middle)) / 2.0;
}

Result<void> sort_and_check(std::vector<DatedValue>& series) {
    if (series.size() < 2) {
        return bad_input("values of a series", std::to_string(series.size()), "2 or more");
    }
    for (const auto& each : series) {
        if (!std::isfinite(each.at) || !std::isfinite(each.value)) {
            return bad_input("a value of a series", "not a number", "a finite number");
        }
    }
    std::ranges::sort(series, {}, &DatedValue::at);
    if (std::ranges::adjacent_find(series, {}, &DatedValue::at) != series.end()) {
        return bad_input("times of a series", "two that are equal", "one value a time");
    }
    return boost::outcome_v2::success();
}

std::vector<int> sizes_of_ties(const std::vector<DatedValue>& series) {
    std::vector<double> values;
    for (const auto& each : series) {
        values.push_back(each.value);
    }
    std::ranges::sort(values);
    std::vector<int> sizes;
    for (auto it = values.begin(); it != values.end();) {
        const auto next = std::upper_bound(it, values.end(), *it);
        sizes.push_back(static_cast<int>(next - it));
        it = next;
    }
    return sizes;
}

// 18 times the variance of S of n values without a trend; that of each group of equal ones comes off it.
double spread_of(int n) {
    return static_cast<double>(n) * (n - 1) * (2.0 * n + 5.0);
}

int pairs_in(int n) {
    return n * (n - 1) / 2;
}

// Orders of values without ties that have each number of inversions: the product of 1 + q + ... + q^(k-1).
std::vector<double> orders_by_inversions(int n) {
    std::vector<double> counts{1.0};
    for (int k = 2; k <= n; ++k) {
        std::vector<double> next(counts.size() + static_cast<std::size_t>(k) - 1);
        for (std::size_t i = 0; i < counts.size(); ++i) {
            for (std::size_t j = 0; j < static_cast<std::size_t>(k); ++j) {
                next[i + j] += counts[i];
            }
        }
        counts = std::move(next);
    }
    return counts;
}

// The quotient of two such polynomials, which leaves no rest.
std::vector<double> divided(std::vector<double> counts, const std::vector<double>& by) {
    std::vector<double> quotient(counts.size() - by.size() + 1);
    for (std::size_t i = 0; i < quotient.size(); ++i) {
        quotient[i] = counts[i];  // the lowest term of a divisor is 1
        for (std::size_t j = 0; j < by.size(); ++j) {
            counts[i + j] -= quotient[i] * by[j];
        }
    }
    return quotient;
}

// How many ranks from the middle the 95 % limits of the slope lie: the least S whose one-sided probability is
// at most a half of 5 %, less 2 (Hollander and Wolfe); beyond the counted ones from the normal distribution.
// None: not even the steepest order is as rare.
std::optional<double> ranks_from_middle(int n, double variance) {
    if (n > static_cast<int>(most_counted)) {
        return quantile(boost::math::normal{}, 1.0 - two_sided / 2.0) * std::sqrt(variance);
    }
    const std::vector<int> all_differ(static_cast<std::size_t>(n), 1);
    for (int s = pairs_in(n) % 2; s <= pairs_in(n); s += 2) {
        if (share_of_orders(s, all_differ) <= two_sided / 2.0) {
            return s - 2;
        }
    }
    return std::nullopt;
}

}  // namespace

double share_of_orders(int s, const std::vector<int>& sizes) {
    int n = 0;
    int most_s = 0;
    for (const int size : sizes) {
        n += size;
        most_s -= pairs_in(size);
    }
    most_s += pairs_in(n);  // every pair of unequal values rises
    auto counts = orders_by_inversions(n);
    for (const int size : sizes) {
        counts = divided(std::move(counts), orders_by_inversions(size));
    }
    double all = 0.0;
    double as_far = 0.0;
    for (std::size_t inversions = 0; inversions < counts.size(); ++inversions) {
        all += counts[inversions];
        if (most_s - 2 * static_cast<int>(inversions) >= s) {
            as_far += counts[inversions];
        }
    }
    return as_far / all;
}

Result<MannKendall> mann_kendall(std::vector<DatedValue> series) {
    WF_CHECK(sort_and_check(series));
    MannKendall result;
    for (std::size_t i = 0; i < series.size(); ++i) {
        for (std::size_t j = i + 1; j < series.size(); ++j) {
            result.s +=
                (series[j].value > series[i].value ? 1 : 0) - (series[j].value < series[i].value ? 1 : 0);
        }
    }
    const auto sizes = sizes_of_ties(series);
    result.variance = spread_of(static_cast<int>(series.size()));
    for (const int size : sizes) {
        result.variance -= spread_of(size);
    }
    result.variance /= 18.0;
    if (result.s == 0 || result.variance <= 0.0) {
        return result;
    }
    const int far = std::abs(result.s);
    result.z = (result.s > 0 ? 1.0 : -1.0) * (far - 1) / std::sqrt(result.variance);
    const double one_sided = series.size() <= most_counted
                                 ? share_of_orders(far, sizes)
                                 : cdf(complement(boost::math::normal{}, std::abs(result.z)));
    result.p = std::min(1.0, 2.0 * one_sided);
    return result;
}

Result<TheilSen> theil_sen(std::vector<DatedValue> series) {
    WF_CHECK(sort_and_check(series));
    std::vector<double> slopes;
    for (std::size_t i = 0; i < series.size(); ++i) {
        for (std::size_t j = i + 1; j < series.size(); ++j) {
            slopes.push_back((series[j].value - series[i].value) / (series[j].at - series[i].at));
        }
    }
    TheilSen line;
    line.slope = median(slopes);
    std::vector<double> rests;
    for (const auto& each : series) {
        rests.push_back(each.value - line.slope * each.at);
    }
    line.at_zero = median(std::move(rests));
    const int n = static_cast<int>(series.size());
    if (const auto ranks = ranks_from_middle(n, spread_of(n) / 18.0)) {
        std::ranges::sort(slopes);
        const double all = static_cast<double>(slopes.size());
        // The slope of that rank from below and, one further than the same from the middle, from above.
        const auto lower = static_cast<std::size_t>(std::max(1.0, std::floor((all - *ranks) / 2.0)));
        line.least = slopes[lower - 1];
        line.most = slopes[slopes.size() - lower];
    }
    return line;
}

Result<Trend> trend_of(const std::vector<DatedValue>& series) {
    Trend trend;
    if (series.size() < fewest_for_a_trend) {
        return trend;
    }
    WF_TRY(trend.test, mann_kendall(series));
    WF_TRY(trend.line, theil_sen(series));
    trend.verdict = trend.test->p >= two_sided ? TrendVerdict::none_seen
                    : trend.test->s > 0        ? TrendVerdict::rising
                                               : TrendVerdict::falling;
    return trend;
}

double middle_of(const std::vector<DatedValue>& series) {
    std::vector<double> times;
    for (const auto& each : series) {
        times.push_back(each.at);
    }
    return median(std::move(times));
}

std::optional<Reached> when_reached(const Trend& trend, const std::vector<DatedValue>& series, double value,
                                    double now) {
    const bool rises = trend.verdict == TrendVerdict::rising;
    if (!rises && trend.verdict != TrendVerdict::falling) {
        return std::nullopt;
    }
    const auto& line = *trend.line;
    const double way = value - line.at(now);
    // Ties can leave a slope of 0 although the order of the values is a trend.
    if (way == 0.0 || (way > 0.0) != rises || line.slope == 0.0 || (line.slope > 0.0) != rises) {
        return std::nullopt;
    }
    const double middle = middle_of(series);
    const auto reached_by = [&](double slope) { return middle + (value - line.at(middle)) / slope; };
    const double steep = (rises ? line.most : line.least).value_or(line.slope);
    const double flat = (rises ? line.least : line.most).value_or(line.slope);
    Reached reached;
    reached.likely = reached_by(line.slope);
    reached.earliest = std::max(now, reached_by(steep));
    if (flat != 0.0 && (flat > 0.0) == rises) {
        reached.latest = reached_by(flat);
    }
    return reached;
}

}  // namespace wetfront
