// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

namespace wetfront::ui {

/// The values of an axis that get a tick, in ascending order, and how many digits behind the point they need.
struct AxisTicks {
    std::vector<double> values;
    int decimals = 0;
};

/// At whole multiples of 1, 2 or 5 times a power of ten, not finer than `finest` (a power of ten, above 0),
/// at least `least` apart on an axis of that length. None where the axis is shorter than that or spans
/// nothing.
[[nodiscard]] AxisTicks ticks_of(double from, double to, double length, double least, double finest);

}  // namespace wetfront::ui
