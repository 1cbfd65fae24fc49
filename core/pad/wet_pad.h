// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "air/moist_air.h"

namespace wetfront {

/// Saturation effectiveness of rigid cellulose media, eleven-term polynomial in face velocity and thickness
/// (EnergyPlus Engineering Reference, direct evaporative cooler). Face velocity 0.5 to 3 m/s, thickness 50 to
/// 300 mm; outside is an error.
[[nodiscard]] Result<Fraction> expected_effectiveness(Velocity face_velocity, Length thickness);

/// e = (T_in - T_out) / (T_in - T_wb). An error if the air is saturated or the result lies outside 0 to 1.
[[nodiscard]] Result<Fraction> measured_effectiveness(const MoistAir& outside, Temperature behind_pad);

/// Air behind a wet pad of that effectiveness (0 to 1): along the wet-bulb line.
[[nodiscard]] Result<MoistAir> air_behind_pad(const MoistAir& outside, Fraction effectiveness);

/// Water evaporated per face area of wet pad: mass flow of dry air through the face times the humidity it
/// gains. Face velocity 0 to 5 m/s, in outside air.
[[nodiscard]] Result<EvaporationFlux> evaporation(const MoistAir& outside, Fraction effectiveness,
                                                  Velocity face_velocity);

/// E_design / E_test: how much more a pad evaporates in one weather than in another, with the same fans and
/// the same effectiveness. Needs neither airflow nor pad area, as both cancel. An error if the test weather
/// evaporates nothing.
[[nodiscard]] Result<double> evaporation_ratio(const MoistAir& design, const MoistAir& test,
                                               Fraction effectiveness);

}  // namespace wetfront
