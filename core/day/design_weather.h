// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <chrono>

#include "air/design_day.h"
#include "cycle/advice.h"
#include "day/weather.h"

namespace wetfront {

/// The air between two states of it, at a share 0 to 1 of the way: dry bulb and humidity ratio change evenly,
/// the pressure is that of `before`. Saturated air holds less than the line between two saturated states, so
/// where that much water does not fit in, the air is saturated (by up to 0.1 g/kg for 3 K between them).
[[nodiscard]] Result<MoistAir> air_between(const MoistAir& before, const MoistAir& after, double share);

/// The design day as the clock on the wall shows it: 25 hours from midnight to midnight. The design day goes
/// by the sun, and the clock is ahead of it by `clock_ahead_of_sun` (0 to 3 h, CycleMargins); where that is
/// not a whole number of hours, the hours of the clock lie between those of the sun, by air_between(). The
/// last midnight is the first again. `offset_minutes` is that of the clock from UTC, on that day.
[[nodiscard]] Result<Weather> design_day_weather(const DesignDay& day, Duration clock_ahead_of_sun,
                                                 std::chrono::year_month_day date,
                                                 std::int32_t offset_minutes);

/// The farm's design day on the day of the visit, by the clock there. An error says what of it is missing.
[[nodiscard]] Result<Weather> design_weather_of(const VisitFile& file, const Advice& advice);

/// By how much the timers' clocks, which go by that of the visit, are ahead of the weather's. Bad input where
/// they are more than 3 h apart: the weather of another place.
[[nodiscard]] Result<Duration> timers_clock_ahead(const VisitFile& file, const Weather& weather);

}  // namespace wetfront
