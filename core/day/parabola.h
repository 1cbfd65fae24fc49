// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <utility>

namespace wetfront::day_detail {

/// c0 + c1 x + c2 x^2.
struct Parabola {
    double c0 = 0.0;
    double c1 = 0.0;
    double c2 = 0.0;

    /// Through the values at 0, half of and the whole of `length`, which is above 0.
    static Parabola through(double first, double middle, double last, double length) {
        const double rise = last - first;
        const double bend = 2.0 * (first + last - 2.0 * middle);
        return {first, (rise - bend) / length, bend / (length * length)};
    }
    [[nodiscard]] double at(double x) const { return c0 + x * (c1 + x * c2); }
    [[nodiscard]] double integral_to(double x) const { return x * (c0 + x * (c1 / 2.0 + x * c2 / 3.0)); }
    /// Of what lies from 0 to `length`.
    [[nodiscard]] std::pair<double, double> range(double length) const {
        double low = std::min(c0, at(length));
        double high = std::max(c0, at(length));
        const double vertex = c2 != 0.0 ? -c1 / (2.0 * c2) : -1.0;
        if (vertex > 0.0 && vertex < length) {
            low = std::min(low, at(vertex));
            high = std::max(high, at(vertex));
        }
        return {low, high};
    }
    /// Where it has that value, between 0 and `length`, rising; how many there are.
    int roots(double value, double length, std::array<double, 2>& found) const {
        const double c = c0 - value;
        int count = 0;
        const auto keep = [&](double x) {
            if (x > 0.0 && x < length) {
                found[static_cast<std::size_t>(count++)] = x;
            }
        };
        const double square = c1 * c1 - 4.0 * c2 * c;
        if (square <= 0.0) {
            return 0;  // touched at most
        }
        const double q = -0.5 * (c1 + std::copysign(std::sqrt(square), c1));
        if (c2 != 0.0) {
            keep(q / c2);
        }
        if (q != 0.0) {
            keep(c / q);
        }
        if (count == 2 && found[0] > found[1]) {
            std::swap(found[0], found[1]);
        }
        return count;
    }
    /// Of the time from 0 to `length`, that at which it is above the value.
    [[nodiscard]] double time_above(double value, double length) const {
        std::array<double, 2> crossed{};
        const int count = roots(value, length, crossed);
        double above = 0.0;
        double from = 0.0;
        for (int i = 0; i <= count; ++i) {
            const double to = i < count ? crossed[static_cast<std::size_t>(i)] : length;
            above += at(0.5 * (from + to)) > value ? to - from : 0.0;
            from = to;
        }
        return above;
    }
};

/// Where a function that changes sign between two places does so, to a microsecond.
template <class Function>
double zero_between(const Function& f, double low, double high) {
    const double at_low = f(low);
    const double at_high = f(high);
    if (at_low == 0.0 || at_high == 0.0) {
        return at_low == 0.0 ? low : high;
    }
    std::uintmax_t steps = 100;
    const auto found = boost::math::tools::toms748_solve(
        f, low, high, at_low, at_high, [](double a, double b) { return b - a < 1e-6; }, steps);
    return 0.5 * (found.first + found.second);
}

}  // namespace wetfront::day_detail
