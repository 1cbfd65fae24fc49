// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "air/moist_air.h"

namespace wetfront {

/// The hottest day that a house is built for, hour by hour in apparent solar time: a clock is ahead of it by
/// up to 2 h, by the site's longitude and in summer time.
struct DesignDay {
    std::array<MoistAir, 24> hours;  ///< [h] at h o'clock; [0] is midnight
};

/// Share of the daily range by which the hour (0 to 23, solar) is cooler than the hottest: ASHRAE Handbook -
/// Fundamentals 2021 (SI), ch. 14, table 6 (read second hand; the same numbers stand in four programs
/// that name ASHRAE). 0 at 14 and 15 o'clock, 1 at 5.
[[nodiscard]] double share_of_daily_range(int solar_hour);

/// Dry bulb of each hour: that of the hottest less daily range times share of the hour (ch. 14, example 9).
/// Humidity ratio: that of the hottest hour all day, and saturated air where that much does not fit in.
/// Simplification: the source lets the wet bulb fall with a range of its own, which nobody on a farm knows;
/// in its example the dew point that comes of it stays within 0.2 K all day. Range 0 to 35 K (0 to 63 degF);
/// outside, or an hour outside the range of moist air, is an error.
[[nodiscard]] Result<DesignDay> design_day(const MoistAir& hottest, TemperatureDifference daily_range);

}  // namespace wetfront
