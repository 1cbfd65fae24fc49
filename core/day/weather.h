// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "air/moist_air.h"
#include "base/clock.h"

namespace wetfront {

/// The air outside, hour after hour and without a gap. Between two hours dry bulb and humidity ratio change
/// evenly; pressure stays that of the hour before.
struct Weather {
    std::string source;  ///< where it is from, for people: "design day", a station's name
    WallTime from;       ///< when the first hour was; its offset is the site's standard time, all along
    std::vector<MoistAir> hours;  ///< [h] at h full hours after `from`; at least 2
};

}  // namespace wetfront
