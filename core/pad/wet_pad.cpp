// SPDX-License-Identifier: Apache-2.0
#include "pad/wet_pad.h"

#include <algorithm>

#include "base/numbers.h"
#include "pad/both_units.h"

namespace wetfront {
namespace {

Result<double> checked_effectiveness(Fraction effectiveness) {
    const double e = in_si(effectiveness);
    if (!(e >= 0.0 && e <= 1.0)) {
        return bad_input("effectiveness", print_number(100.0 * e, 1) + " %", "0 to 100 %");
    }
    return e;
}

double depression(const MoistAir& air) {
    return in_kelvin(air.dry_bulb) - in_kelvin(air.wet_bulb);
}

// Water gained per cubic metre of outside air that goes through a wet pad, kg/m3.
Result<double> gain_per_volume(const MoistAir& outside, Fraction effectiveness) {
    WF_TRY(const auto leaving, air_behind_pad(outside, effectiveness));
    return (in_si(leaving.humidity_ratio) - in_si(outside.humidity_ratio)) / in_si(outside.specific_volume);
}

}  // namespace

// Source: EnergyPlus source, EvaporativeCoolers.cc (comment beside the sizing of the direct rigid-media
// cooler); the same eleven terms stand in the EnergyPlus Engineering Reference, "Direct Evaporative Cooler".
// (That manual prints its first pad equation, the definition of effectiveness, with the sign reversed.) V in
// m/s, D in m. Accuracy: a least-squares fit to maker's curves, of unstated spread; a clean new pad, evenly
// wet.
Result<Fraction> expected_effectiveness(Velocity face_velocity, Length thickness) {
    const double v = in_si(face_velocity);
    const double d = in_si(thickness);
    if (!(v >= 0.5 && v <= 3.0)) {
        return bad_input("face velocity", print_number(v, 3) + " m/s", "0.5 to 3 m/s (98 to 591 ft/min)");
    }
    if (!(d >= 0.05 && d <= 0.3)) {
        return bad_input("pad thickness", print_number(1000.0 * d, 1) + " mm", "50 to 300 mm (2 to 11.8 in)");
    }
    const double e = 0.792714 + 0.958569 * d - 0.25193 * v - 1.03215 * d * d + 0.0262659 * v * v +
                     0.914869 * d * v - 1.48241 * v * d * d - 0.018992 * v * v * v * d +
                     1.13137 * d * d * d * v + 0.0327622 * v * v * v * d * d - 0.145384 * d * d * d * v * v;
    return from_si<Fraction>(e);
}

Result<Fraction> measured_effectiveness(const MoistAir& outside, Temperature behind_pad) {
    const double possible = depression(outside);
    if (possible <= 0.0) {
        return bad_input("outside air", "saturated", "air whose wet bulb lies below its dry bulb");
    }
    const double e = (in_kelvin(outside.dry_bulb) - in_kelvin(behind_pad)) / possible;
    if (!(e >= 0.0 && e <= 1.0)) {
        return bad_input("temperature behind the pad", in_both_units(behind_pad),
                         "between the wet bulb outside, " + in_both_units(outside.wet_bulb) +
                             ", and the dry bulb, " + in_both_units(outside.dry_bulb));
    }
    return from_si<Fraction>(e);
}

Result<MoistAir> air_behind_pad(const MoistAir& outside, Fraction effectiveness) {
    WF_TRY(const double e, checked_effectiveness(effectiveness));
    const double wet = in_kelvin(outside.wet_bulb);
    const double leaving = std::max(wet, in_kelvin(outside.dry_bulb) - e * depression(outside));
    return air_from_wet_bulb(from_si<Temperature>(leaving), outside.wet_bulb, outside.pressure);
}

Result<EvaporationFlux> evaporation(const MoistAir& outside, Fraction effectiveness, Velocity face_velocity) {
    const double v = in_si(face_velocity);
    if (!(v >= 0.0 && v <= 5.0)) {
        return bad_input("face velocity", print_number(v, 3) + " m/s", "0 to 5 m/s (0 to 984 ft/min)");
    }
    WF_TRY(const double gain, gain_per_volume(outside, effectiveness));
    return from_si<EvaporationFlux>(v * gain);
}

// Simplification: fans move the same volume of outside air in both weathers; the density of the air that they
// really see, behind the pad, changes by about a percent between a mild and a hot day.
Result<double> evaporation_ratio(const MoistAir& design, const MoistAir& test, Fraction effectiveness) {
    WF_TRY(const double at_design, gain_per_volume(design, effectiveness));
    WF_TRY(const double at_test, gain_per_volume(test, effectiveness));
    // Below a tenth of a gram per cubic metre a dry-out time says nothing about any other weather.
    if (at_test < 1e-4) {
        return bad_input("weather of the test", "hardly anything evaporates",
                         "air that is clearly drier than saturated; in this one the readings tell nothing "
                         "about a hot day");
    }
    return std::max(0.0, at_design) / at_test;
}

}  // namespace wetfront
