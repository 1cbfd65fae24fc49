// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// A state of moist air. ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1; perfect-gas relations, no
/// enhancement factor (tables that include it differ by up to 0.5 % between 5 and 35 degC).
struct MoistAir {
    AbsolutePressure pressure;
    Temperature dry_bulb;
    Temperature wet_bulb;
    /// Over ice below 0.01 degC (where frost forms). None where air holds so little vapour that it would lie
    /// below -100 degC, the end of the saturation equation; dry air has none at all.
    std::optional<Temperature> dew_point;
    Fraction relative_humidity;
    HumidityRatio humidity_ratio;
    SpecificEnthalpy enthalpy;
    SpecificVolume specific_volume;
    Density density;  ///< of the moist air
};

// Range of all that takes a dry bulb: -40 to 80 degC, pressure 60 to 110 kPa. Whatever lies outside a range,
// or is not a number, is an error naming input and limit. Nothing here allocates unless it returns an error.
//
// Wet bulb over ice (eq. 35) and over water (eq. 33) don't meet at 0 degC: with ice on the bulb the same wet
// bulb stands for more humidity, so a narrow band of humidity has two answers. From humidity the one over
// water is given, as a wetted wick has it; a wet bulb below 0 degC that is given is taken as over ice.

/// Pressure of the standard atmosphere (eq. 3); elevation -500 to 4,000 m.
[[nodiscard]] Result<AbsolutePressure> standard_pressure(Length elevation);

/// Pressure of saturated water vapour over ice (eq. 5) up to 0.01 degC, where both equations agree, and over
/// water (eq. 6) above; -100 to 200 degC.
[[nodiscard]] Result<AbsolutePressure> saturation_pressure(Temperature temperature);

/// Humidity ratio of air that a wet bulb of `wet_bulb` at `dry_bulb` stands for (eqs. 33 and 35). Wet bulb
/// not above the dry bulb and not below that of dry air.
[[nodiscard]] Result<HumidityRatio> humidity_ratio_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                                 AbsolutePressure pressure);

/// Wet bulb alone, at less than the cost of the whole state; relative humidity 0 to 100 %.
[[nodiscard]] Result<Temperature> wet_bulb_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                                         AbsolutePressure pressure);

/// Relative humidity 0 to 100 %.
[[nodiscard]] Result<MoistAir> air_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                                 AbsolutePressure pressure);

/// Wet bulb as for humidity_ratio_from_wet_bulb().
[[nodiscard]] Result<MoistAir> air_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                 AbsolutePressure pressure);

/// Dew point -100 degC to the dry bulb.
[[nodiscard]] Result<MoistAir> air_from_dew_point(Temperature dry_bulb, Temperature dew_point,
                                                  AbsolutePressure pressure);

/// Humidity ratio 0 to that of saturated air.
[[nodiscard]] Result<MoistAir> air_from_humidity_ratio(Temperature dry_bulb, HumidityRatio humidity_ratio,
                                                       AbsolutePressure pressure);

}  // namespace wetfront
