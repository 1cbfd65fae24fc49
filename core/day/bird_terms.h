// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

namespace wetfront::day_detail {

/// The heat of birds (bird_heat.h) as polynomials of the temperature, degC; W. Sums over birds are multiples.
struct BirdTerms {
    double at_20 = 0.0;  ///< total heat at 20 degC

    [[nodiscard]] double total_at(double t) const { return at_20 * (1.4 - 0.02 * t); }
    [[nodiscard]] double sensible_at(double t) const {
        return at_20 * (sensible_constant + t * (sensible_slope + t * sensible_bend));
    }

    // 0.61 (1000 + 20 (20 - t)) - 0.228 t^2, per 1000 W
    static constexpr double sensible_constant = 0.61 * 1.4;
    static constexpr double sensible_slope = -0.61 * 0.02;
    static constexpr double sensible_bend = -0.228e-3;
};

[[nodiscard]] inline BirdTerms bird_terms(double mass, double birds = 1.0) {
    return {birds * 10.62 * std::pow(mass, 0.75)};
}

}  // namespace wetfront::day_detail
