// SPDX-License-Identifier: Apache-2.0
#include "day/lagged_sensor.h"

#include <algorithm>
#include <cmath>

// lag s' = air - s. With air = c0 + c1 x + c2 x^2 the solution is a parabola that trails it, plus
// (s0 - that) exp(-x / lag).
namespace wetfront::day_detail {

LaggedSensor::LaggedSensor(double lag, double shown, const Parabola& air, double length)
    : lag_{lag}, length_{length}, air_{air}, follows_{air} {
    if (lag_ > 0.0) {
        follows_ = {air.c0 - lag * air.c1 + 2.0 * lag * lag * air.c2, air.c1 - 2.0 * lag * air.c2, air.c2};
        start_ = shown - follows_.c0;
    }
}

double LaggedSensor::at(double seconds) const {
    return follows_.at(seconds) + (lag_ > 0.0 ? start_ * std::exp(-seconds / lag_) : 0.0);
}

double LaggedSensor::slope(double seconds) const {
    const double trailing = follows_.c1 + 2.0 * follows_.c2 * seconds;
    return trailing - (lag_ > 0.0 ? start_ / lag_ * std::exp(-seconds / lag_) : 0.0);
}

std::optional<Crossing> LaggedSensor::first_crossing(std::span<const Threshold> thresholds) const {
    // A reading stays between the air's extremes and itself, so that most pieces of time need no search.
    const auto range = air_.range(length_);
    const double shown = at(0.0);
    const double low = std::min(range.first, shown);
    const double high = std::max(range.second, shown);
    if (std::none_of(thresholds.begin(), thresholds.end(), [&](const Threshold& threshold) {
            return threshold.rising ? threshold.value <= high : threshold.value > low;
        })) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < thresholds.size(); ++i) {
        if (thresholds[i].rising == (shown >= thresholds[i].value)) {
            return Crossing{0.0, i};
        }
    }
    // The curvature has one zero at most, so the slope has two: pieces in which the reading only rises or
    // falls.
    std::array<double, 4> cuts{};
    std::size_t count = 0;
    double bend = length_;
    const double ratio = lag_ > 0.0 && start_ != 0.0 ? -2.0 * follows_.c2 * lag_ * lag_ / start_ : 0.0;
    if (ratio > 0.0) {
        bend = std::clamp(-lag_ * std::log(ratio), 0.0, length_);
    }
    for (const auto& [from, to] : {std::pair{0.0, bend}, std::pair{bend, length_}}) {
        if (to > from && slope(from) * slope(to) < 0.0) {
            cuts[count++] = zero_between([&](double x) { return slope(x); }, from, to);
        }
    }
    cuts[count++] = length_;
    double from = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        if (auto found = in_piece(thresholds, from, cuts[i])) {
            return found;
        }
        from = cuts[i];
    }
    return std::nullopt;
}

std::optional<Crossing> LaggedSensor::in_piece(std::span<const Threshold> thresholds, double from,
                                               double to) const {
    const double begin = at(from);
    const double end = at(to);
    std::optional<Crossing> first;
    for (std::size_t i = 0; i < thresholds.size(); ++i) {
        const double value = thresholds[i].value;
        const bool rising = thresholds[i].rising;
        const bool passed = rising ? begin < value && end >= value : begin >= value && end < value;
        if (!passed) {
            continue;
        }
        const double after = zero_between([&](double x) { return at(x) - value; }, from, to);
        if (!first || after < first->after) {
            first = Crossing{after, i};
        }
    }
    return first;
}

}  // namespace wetfront::day_detail
