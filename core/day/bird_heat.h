// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "units/quantities.h"

namespace wetfront {

/// Heat of one broiler, in air of a temperature. CIGR Section II, 4th report of the working group on
/// climatization of animal houses, "Heat and moisture production at animal and house levels" (Pedersen and
/// Saellvik, 2002), at house level, so with what litter and drinkers evaporate:
///   total at 20 degC   10.62 m^0.75 W, m in kg
///   total at t         by (1000 + 20 (20 - t)) / 1000
///   sensible at t      (0.61 (1000 + 20 (20 - t)) - 0.228 t^2) / 1000 of the total at 20 degC
/// The first two were read second hand in other programs that name the report; the third has the form that is
/// quoted from it for layers (0.64 and 0.240, second hand), its two numbers for broilers are from memory.
///
/// Stated for 10 to 40 degC (from memory). Beyond it the same formula is used, and how long is counted:
/// sensible heat falls below 0 at 40.04 degC, where birds evaporate more than they make.
struct BirdHeat {
    Power total;
    Power sensible;
};
[[nodiscard]] BirdHeat bird_heat(Mass mass, Temperature air);

inline constexpr double coldest_bird_heat_celsius = 10.0;
inline constexpr double hottest_bird_heat_celsius = 40.0;

}  // namespace wetfront
