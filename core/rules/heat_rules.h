// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Settings that keep pads off when birds depend on them: the humidity cut-off and where its sensor hangs, and
// whatever else bars pads in an hour in which moving air no longer cools.
namespace wetfront {

/// With the only humidity sensors outside: in an hour of the design day, or at the readings, it is 35 degC
/// (assumed) or hotter and damper than the cut-off. Harm, with the time and the degrees lost. Needs the
/// cut-off, and the design day with its range or the weather of the readings.
[[nodiscard]] std::vector<Finding> cut_off_stops_pads_in_heat(const RuleInputs& inputs);

/// With the only humidity sensors in the house: the pads themselves make more humidity than the cut-off, at
/// the design hour, else in the weather of the readings; in the house, not behind a pad, taken 3 K warmer
/// (assumed). Harm, with that humidity. Needs cut-off, a bank and a weather.
[[nodiscard]] std::vector<Finding> cut_off_below_own_humidity(const RuleInputs& inputs);

/// A cut-off that may read air which pads have wetted: a sensor in the house, or one there and one outside;
/// or no humidity sensor is described. Note. Needs the cut-off; silent where cut_off_below_own_humidity
/// speaks.
[[nodiscard]] std::vector<Finding> cut_off_by_unfit_sensor(const RuleInputs& inputs);

/// In an hour of the design day of 37.8 degC (100 degF) or more, in which moving air alone heats birds (Univ.
/// of Kentucky poultry manual, ch. 7), pad hours, cut-off, start or lowest house temperature, or an on-time
/// of 0 keep the pads off. Harm, with the time, the hottest and what bars them; fans are never to be stopped.
/// Without a daily range its hottest hour alone is looked at, at 15:00. Needs the design day.
[[nodiscard]] std::vector<Finding> pads_off_in_extreme_heat(const RuleInputs& inputs);

}  // namespace wetfront
