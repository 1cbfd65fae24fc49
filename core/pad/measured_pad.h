// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "air/moist_air.h"

namespace wetfront {

/// How far an instrument may be off either way. The defaults are assumed, for hand instruments without a
/// calibration; what the instrument's own papers say replaces them. Temperatures 0 to 5 K, humidity 0 to 20 %
/// points.
struct InstrumentAccuracy {
    TemperatureDifference dry_bulb = from_si<TemperatureDifference>(0.5);
    TemperatureDifference behind_pad = from_si<TemperatureDifference>(0.5);
    TemperatureDifference wet_bulb = from_si<TemperatureDifference>(0.5);  ///< where a wet bulb was read
    Fraction relative_humidity = from_si<Fraction>(0.03);                  ///< where humidity was read
};

/// What the humidity of the outside air was read with.
enum class HumidityFrom { hygrometer, wet_bulb_thermometer };

/// An effectiveness with its uncertainty, each a share of the wet-bulb depression.
struct MeasuredEffectiveness {
    Fraction value;  ///< as it came out: below 0 or above 1 by less than `expanded` is an answer
    Fraction standard;
    double coverage_factor = 0.0;  ///< k; 2 is about 95 %, as no part has few degrees of freedom
    Fraction expanded;             ///< k times standard
    // Parts of `standard`, to say which instrument matters.
    Fraction from_dry_bulb;
    Fraction from_behind_pad;
    Fraction from_humidity;
    bool outside_bounds = false;  ///< not within 0 to 1, but by no more than its uncertainty
};

/// e = (T_in - T_out) / (T_in - T_wb) with its uncertainty from the instruments, taken as independent of each
/// other. One thermometer carried from outside to behind the pad shares its error between both places, so
/// that less is left of it: for that the result is on the cautious side. Errors: wet bulb outside below 0.1
/// degC, where pads freeze; air so close to saturation that the depression is not at least twice its own
/// expanded uncertainty; an effectiveness outside 0 to 1 by more than its uncertainty; an accuracy that
/// cannot be.
[[nodiscard]] Result<MeasuredEffectiveness> effectiveness_with_uncertainty(
    const MoistAir& outside, Temperature behind_pad, HumidityFrom humidity_from,
    const InstrumentAccuracy& accuracy = {});

/// Standard uncertainty of the published polynomial for a clean new pad, assumed: its source states none.
inline constexpr Fraction assumed_polynomial_uncertainty = from_si<Fraction>(0.05);

/// A difference in effectiveness that is worth a search for its cause, assumed: a fifth of the depression.
inline constexpr Fraction assumed_difference_that_matters = from_si<Fraction>(0.2);

enum class EffectivenessVerdict {
    agrees,         ///< a difference that matters can be ruled out
    clearly_lower,  ///< measured lies below expected by more than the uncertainty of the difference
    clearly_higher,
    too_close,  ///< to call: neither; better instruments or a drier hour would tell
};

struct EffectivenessComparison {
    Fraction difference;  ///< measured less expected
    Fraction expanded;    ///< uncertainty of the difference, k = 2
    EffectivenessVerdict verdict = EffectivenessVerdict::too_close;
};

/// Measured against expected effectiveness (0 to 1), whose standard uncertainty is `expected_standard` (0 to
/// 1). Clearly lower or higher: 0 lies outside difference +- expanded. Agrees: all of difference +- expanded
/// lies within the difference that matters.
[[nodiscard]] Result<EffectivenessComparison> compare_effectiveness(
    const MeasuredEffectiveness& measured, Fraction expected,
    Fraction expected_standard = assumed_polynomial_uncertainty);

}  // namespace wetfront
