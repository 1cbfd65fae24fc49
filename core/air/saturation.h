// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

namespace wetfront::air_detail {

/// Where the equation over ice gives way to the one over water, degC: the triple point, at which the two give
/// the same pressure to 6e-9. (At 0 degC they are 1e-4 apart, so a dew point just there would have no
/// answer.)
inline constexpr double ice_melts = 0.01;

/// ln of the pressure of saturated vapour (of Pa) and its first three derivatives by temperature, degC.
struct LogSaturation {
    double value;
    double slope;
    double bend;
    double twist;
};

// What: pressure of saturated water vapour over ice and over water, with its derivatives from the same terms.
// Source: ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eqs. 5 and 6; derivatives by hand.
// Range: t in degC, -100 to 200. Accuracy: 0.03 % of the handbook's Table 3 (-20 to 150 degC).
inline LogSaturation log_saturation_over_ice(double t) {
    const double kelvin = t + 273.15;
    const double inverse = 1.0 / kelvin;
    constexpr double c1 = -5.6745359e3;
    constexpr double c2 = 6.3925247;
    constexpr double c3 = -9.6778430e-3;
    constexpr double c4 = 6.2215701e-7;
    constexpr double c5 = 2.0747825e-9;
    constexpr double c6 = -9.4840240e-13;
    constexpr double c7 = 4.1635019;
    return {
        c1 * inverse + c2 + kelvin * (c3 + kelvin * (c4 + kelvin * (c5 + kelvin * c6))) +
            c7 * std::log(kelvin),
        (c7 - c1 * inverse) * inverse + c3 + kelvin * (2.0 * c4 + kelvin * (3.0 * c5 + kelvin * 4.0 * c6)),
        (2.0 * c1 * inverse - c7) * inverse * inverse + 2.0 * c4 + kelvin * (6.0 * c5 + kelvin * 12.0 * c6),
        (2.0 * c7 - 6.0 * c1 * inverse) * inverse * inverse * inverse + 6.0 * c5 + kelvin * 24.0 * c6};
}
inline LogSaturation log_saturation_over_water(double t) {
    const double kelvin = t + 273.15;
    const double inverse = 1.0 / kelvin;
    constexpr double c8 = -5.8002206e3;
    constexpr double c9 = 1.3914993;
    constexpr double c10 = -4.8640239e-2;
    constexpr double c11 = 4.1764768e-5;
    constexpr double c12 = -1.4452093e-8;
    constexpr double c13 = 6.5459673;
    return {c8 * inverse + c9 + kelvin * (c10 + kelvin * (c11 + kelvin * c12)) + c13 * std::log(kelvin),
            (c13 - c8 * inverse) * inverse + c10 + kelvin * (2.0 * c11 + kelvin * 3.0 * c12),
            (2.0 * c8 * inverse - c13) * inverse * inverse + 2.0 * c11 + kelvin * 6.0 * c12,
            (2.0 * c13 - 6.0 * c8 * inverse) * inverse * inverse * inverse + 6.0 * c12};
}
inline LogSaturation log_saturation(double t) {
    return t < ice_melts ? log_saturation_over_ice(t) : log_saturation_over_water(t);
}

}  // namespace wetfront::air_detail
