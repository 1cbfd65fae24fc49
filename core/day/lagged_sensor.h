// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>

#include "day/parabola.h"

namespace wetfront::day_detail {

/// A limit that the sensor can pass: rising it is reached, falling it is undercut.
struct Threshold {
    double value = 0.0;
    bool rising = true;
};

struct Crossing {
    double after = 0.0;  ///< seconds
    std::size_t threshold = 0;
};

/// What a sensor of first order shows while the air that it hangs in follows a parabola of time, degC. Lag 0:
/// the air itself.
class LaggedSensor {
public:
    /// From a reading `shown`; `air` over the `length` seconds to come.
    LaggedSensor(double lag, double shown, const Parabola& air, double length);

    [[nodiscard]] double at(double seconds) const;
    [[nodiscard]] double slope(double seconds) const;  ///< K/s

    /// The first of the thresholds that is passed, to a microsecond; at once where it is passed already.
    [[nodiscard]] std::optional<Crossing> first_crossing(std::span<const Threshold> thresholds) const;

private:
    [[nodiscard]] std::optional<Crossing> in_piece(std::span<const Threshold> thresholds, double from,
                                                   double to) const;

    double lag_;
    double length_;
    Parabola air_;
    Parabola follows_;    ///< what is shown once the reading it began with is forgotten
    double start_ = 0.0;  ///< shown less that, at the beginning
};

}  // namespace wetfront::day_detail
