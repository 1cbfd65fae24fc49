// SPDX-License-Identifier: Apache-2.0
#include "timing/uncertainty.h"

#include <algorithm>
#include <array>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <string>

#include "base/numbers.h"

namespace wetfront {
namespace {

constexpr double coverage = 0.95;
constexpr double outlier_level = 0.05;
constexpr double rounding_noise = 1e-9;

/// Upper point of the standard normal (no degrees of freedom) or Student's distribution with that tail.
double upper_point(double tail, std::optional<double> degrees_of_freedom) {
    if (!degrees_of_freedom) {
        return boost::math::quantile(boost::math::complement(boost::math::normal{}, tail));
    }
    return boost::math::quantile(boost::math::complement(boost::math::students_t{*degrees_of_freedom}, tail));
}

double mean_of(std::span<const Duration> readings) {
    double sum = 0.0;
    for (const auto& reading : readings) {
        sum += in_seconds(reading);
    }
    return sum / static_cast<double>(readings.size());
}

/// Sample variance, n - 1 in the denominator; for two readings or more.
double variance_of(std::span<const Duration> readings, double mean) {
    double squares = 0.0;
    for (const auto& reading : readings) {
        const double deviation = in_seconds(reading) - mean;
        squares += deviation * deviation;
    }
    return squares / static_cast<double>(readings.size() - 1);
}

Error refused(std::string item, double value, std::string accepted) {
    return bad_input(std::move(item), print_exact(value), std::move(accepted));
}

bool finite_from_zero(double value) {
    return std::isfinite(value) && value >= 0.0;
}

std::optional<Error> problem_with(std::span<const Duration> readings, Duration systematic,
                                  const std::optional<Spread>& pooled_spread, double single_reading_share) {
    if (readings.empty()) {
        return bad_input("readings", "", "at least one reading is needed");
    }
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double value = in_seconds(readings[i]);
        if (!std::isfinite(value) || value <= 0.0 || value > longest_reading_s) {
            return bad_input("reading " + std::to_string(i + 1), print_exact(value) + " s",
                             "a reading is longer than 0 s and at most 24 h");
        }
    }
    if (!finite_from_zero(in_seconds(systematic))) {
        return refused("systematic uncertainty", in_seconds(systematic), "a time in s that is not negative");
    }
    if (pooled_spread && !finite_from_zero(pooled_spread->variance_s2)) {
        return refused("pooled variance", pooled_spread->variance_s2, "a finite number that is not negative");
    }
    if (pooled_spread && pooled_spread->degrees_of_freedom < 1) {
        return refused("pooled degrees of freedom", pooled_spread->degrees_of_freedom, "1 or more");
    }
    if (!finite_from_zero(single_reading_share) || single_reading_share > 1.0) {
        return refused("share of a single reading", single_reading_share, "a share from 0 to 1");
    }
    return std::nullopt;
}

/// Fills in what follows from the two parts of the uncertainty.
void expand(TimingResult& result, std::span<const Component> components) {
    result.degrees_of_freedom = effective_degrees_of_freedom(components);
    // Never below the smallest of its components, so at least 1: there is always a factor.
    result.coverage_factor = coverage_factor(coverage, result.degrees_of_freedom).value();
    result.expanded = result.coverage_factor * result.standard;
}

Duration in_quadrature(Duration a, Duration b) {
    return seconds(std::hypot(in_seconds(a), in_seconds(b)));
}

}  // namespace

std::optional<Spread> pooled(std::span<const Spread> groups) {
    Spread sum;
    double squares = 0.0;
    for (const auto& group : groups) {
        if (group.degrees_of_freedom > 0) {
            squares += group.variance_s2 * group.degrees_of_freedom;
            sum.degrees_of_freedom += group.degrees_of_freedom;
        }
    }
    if (sum.degrees_of_freedom == 0) {
        return std::nullopt;
    }
    sum.variance_s2 = squares / sum.degrees_of_freedom;
    return sum;
}

Result<double> coverage_factor(double probability, std::optional<double> degrees_of_freedom) {
    if (!(probability > 0.0 && probability < 1.0)) {
        return refused("coverage probability", probability, "a share between 0 and 1");
    }
    if (!degrees_of_freedom) {
        return upper_point((1.0 - probability) / 2.0, std::nullopt);
    }
    const double whole = std::floor(*degrees_of_freedom + rounding_noise);
    if (!std::isfinite(whole) || whole < 1.0) {
        return refused("degrees of freedom", *degrees_of_freedom, "a finite number, 1 or more");
    }
    return upper_point((1.0 - probability) / 2.0, whole);
}

std::optional<double> effective_degrees_of_freedom(std::span<const Component> components) {
    // In shares of the largest component, so that fourth powers of small numbers don't vanish.
    double largest = 0.0;
    for (const auto& component : components) {
        largest = std::max(largest, component.standard_uncertainty);
    }
    double combined_squared = 0.0;
    double weighted = 0.0;
    for (const auto& component : components) {
        const double share = largest > 0.0 ? component.standard_uncertainty / largest : 0.0;
        combined_squared += share * share;
        if (component.degrees_of_freedom) {
            weighted += share * share * share * share / *component.degrees_of_freedom;
        }
    }
    if (weighted == 0.0) {
        return std::nullopt;
    }
    const double effective = combined_squared * combined_squared / weighted;
    return std::isfinite(effective) ? std::optional{effective} : std::nullopt;
}

Result<TimingResult> evaluate(std::span<const Duration> readings, Duration systematic,
                              std::optional<Spread> pooled_spread, double single_reading_share) {
    if (auto problem = problem_with(readings, systematic, pooled_spread, single_reading_share)) {
        return *std::move(problem);
    }
    TimingResult result;
    result.count = static_cast<int>(readings.size());
    const double mean = mean_of(readings);
    result.mean = seconds(mean);
    std::optional<double> random_degrees;
    if (result.count > 1) {
        const double variance = variance_of(readings, mean);
        result.standard_deviation = seconds(std::sqrt(variance));
        result.spread_from = SpreadFrom::readings;
        result.random = seconds(std::sqrt(variance / result.count));
        random_degrees = result.count - 1;
    } else if (pooled_spread) {
        result.spread_from = SpreadFrom::pooled;
        result.random = seconds(std::sqrt(pooled_spread->variance_s2));
        random_degrees = pooled_spread->degrees_of_freedom;
    } else {
        result.spread_from = SpreadFrom::assumed;
        result.random = single_reading_share * result.mean;
    }
    result.systematic = systematic;
    result.standard = in_quadrature(result.random, systematic);
    const std::array components{Component{in_seconds(result.random), random_degrees},
                                Component{in_seconds(systematic), std::nullopt}};
    expand(result, components);
    return result;
}

std::optional<std::size_t> outlier(std::span<const Duration> readings) {
    if (readings.size() < 3) {
        return std::nullopt;
    }
    const double mean = mean_of(readings);
    const double deviation = std::sqrt(variance_of(readings, mean));
    const auto distance = [&](Duration reading) { return std::abs(in_seconds(reading) - mean); };
    const auto farthest = std::max_element(readings.begin(), readings.end(),
                                           [&](auto a, auto b) { return distance(a) < distance(b); });
    const auto n = static_cast<double>(readings.size());
    const double t = upper_point(outlier_level / (2.0 * n), n - 2.0);
    const double limit = (n - 1.0) / std::sqrt(n) * std::sqrt(t * t / (n - 2.0 + t * t));
    if (distance(*farthest) <= limit * deviation) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(farthest - readings.begin());
}

TimingResult difference(const TimingResult& a, const TimingResult& b) {
    TimingResult result;
    result.count = std::min(a.count, b.count);
    result.mean = a.mean - b.mean;
    result.spread_from = std::max(a.spread_from, b.spread_from);
    result.random = in_quadrature(a.random, b.random);
    result.systematic = in_quadrature(a.systematic, b.systematic);
    result.standard = in_quadrature(a.standard, b.standard);
    // A combined uncertainty may stand for its own components: u^4 / nu_eff is the sum of theirs.
    const std::array components{Component{in_seconds(a.standard), a.degrees_of_freedom},
                                Component{in_seconds(b.standard), b.degrees_of_freedom}};
    expand(result, components);
    return result;
}

Comparison compare(const TimingResult& a, const TimingResult& b) {
    const auto result = difference(a, b);
    return {result.mean, result.expanded, std::abs(in_seconds(result.mean)) > in_seconds(result.expanded)};
}

}  // namespace wetfront
