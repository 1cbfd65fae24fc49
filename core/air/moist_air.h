// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// A state of moist air. ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1; perfect-gas relations, no
/// enhancement factor (tables that include it differ by up to 0.5 % between 5 and 35 degC).
struct MoistAir {
    AbsolutePressure pressure;
    Temperature dry_bulb;
    Temperature wet_bulb;
    Fraction relative_humidity;
    HumidityRatio humidity_ratio;
    SpecificEnthalpy enthalpy;
    SpecificVolume specific_volume;
    Density density;  ///< of the moist air
};

// Range of all of these: dry bulb -40 to 80 degC, pressure 60 to 110 kPa; outside it is an error naming input
// and limit.

/// Pressure of the standard atmosphere (eq. 3); elevation -500 to 4,000 m.
[[nodiscard]] Result<AbsolutePressure> standard_pressure(Length elevation);

/// Pressure of saturated water vapour over ice below 0 degC (eq. 5) and over water (eq. 6); -100 to 200 degC.
[[nodiscard]] Result<AbsolutePressure> saturation_pressure(Temperature temperature);

/// Humidity ratio of air that a wet bulb of `wet_bulb` at `dry_bulb` stands for (eqs. 33 and 35).
[[nodiscard]] Result<HumidityRatio> humidity_ratio_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                                 AbsolutePressure pressure);

/// Relative humidity 0 to 100 %.
[[nodiscard]] Result<MoistAir> air_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                                 AbsolutePressure pressure);

/// Wet bulb not above dry bulb.
[[nodiscard]] Result<MoistAir> air_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                 AbsolutePressure pressure);

}  // namespace wetfront
