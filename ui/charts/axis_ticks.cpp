// SPDX-License-Identifier: Apache-2.0
#include "charts/axis_ticks.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace wetfront::ui {

AxisTicks ticks_of(double from, double to, double length, double least, double finest) {
    AxisTicks ticks;
    if (!(to > from) || length < least) {
        return ticks;
    }
    const double needed = (to - from) * least / length;
    const double power = std::max(std::log10(finest), std::floor(std::log10(needed)));
    double step = std::pow(10.0, power);
    constexpr std::array factors{2.0, 2.5, 2.0};
    for (std::size_t i = 0; step < needed; ++i) {
        step *= factors[i % factors.size()];
    }
    ticks.decimals = static_cast<int>(std::max(0.0, -std::floor(std::log10(step * (1.0 + 1e-9)))));
    // Multiples, not sums: the error of a sum would grow from tick to tick.
    for (double count = std::ceil(from / step); count * step <= to; count += 1.0) {
        ticks.values.push_back(count * step);
    }
    return ticks;
}

}  // namespace wetfront::ui
