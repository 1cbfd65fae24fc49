// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "air/moist_air.h"

namespace wetfront {

/// Temperature-humidity index of broilers, read in degC: 0.85 dry bulb + 0.15 wet bulb. Tao and Xin 2003,
/// Trans. ASAE 46(2):491-497 (abstract). Found at 35 to 41 degC; others apply it to milder air, so it is
/// given for all air.
[[nodiscard]] Temperature temperature_humidity_index(const MoistAir& air);

/// The same with the wind that birds feel, read in degC: THVI = THI V^-0.058, same source. Only where it was
/// tested: dry bulb 35 to 41 degC, air velocity 0.2 to 1.2 m/s; outside is an error. The source's classes are
/// not given, as their limits are not published with it.
[[nodiscard]] Result<Temperature> temperature_humidity_velocity_index(const MoistAir& air, Velocity velocity);

}  // namespace wetfront
