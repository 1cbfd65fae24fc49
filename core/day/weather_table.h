// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <vector>

#include "day/parabola.h"
#include "day/weather.h"

namespace wetfront::day_detail {

inline constexpr double hour_s = 3600.0;
inline constexpr double day_s = 86400.0;

/// Outside air in one moment; degC, kg/kg, kg of dry air per m3.
struct OutsideAir {
    double dry_bulb = 0.0;
    double ratio = 0.0;
    double wet_bulb = 0.0;
    double humidity = 0.0;
    double dry_air = 0.0;
};

/// The air of one hour: at its beginning, middle and end, all at the pressure of its beginning.
struct OutsideHour {
    std::array<OutsideAir, 3> nodes;
    double pressure = 101325.0;
};

/// A weather as the simulation reads it.
struct WeatherTable {
    WallTime from;
    double clock_at_start = 0.0;  ///< seconds since midnight, by the weather's clock
    std::vector<OutsideHour> hours;
};

/// Errors: fewer than 2 or more than 100,000 hours; air beyond the range of moist air.
[[nodiscard]] Result<WeatherTable> weather_table(const Weather& weather);

/// Humidity ratio on the wet-bulb line, `wet` the wet bulb and `saturated` the ratio of saturated air at it
/// (ASHRAE Fundamentals 2017, chapter 1, eq. 33; over ice eq. 35).
[[nodiscard]] double ratio_on_line(double dry_bulb, double wet, double saturated);
/// Humidity ratio of saturated air, which that temperature and pressure have.
[[nodiscard]] double saturated_ratio(double celsius, double pressure);

}  // namespace wetfront::day_detail
