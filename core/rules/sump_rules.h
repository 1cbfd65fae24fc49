// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// A pump's sump against what pumping asks of it (sump_balance): header and supply pipe from their bores and
// lengths, water taken up by the pads from flow and wetting time, evaporation at the design hour, bleed as
// entered. No settings. Source of all: volumes and flows added up.
namespace wetfront {

/// What runs back at a stop does not fit above the working level: waste, with the volume lost at each stop.
/// Needs surface, freeboard, and bore and length of every header on the pump.
[[nodiscard]] std::vector<Finding> sump_runs_over(const RuleInputs& inputs);

/// A start from dry takes more than the pump can draw: fault. Note where the make-up, running meanwhile,
/// carries the rest. Needs the sump's volume, and bore and length of every header on the pump.
[[nodiscard]] std::vector<Finding> sump_runs_dry(const RuleInputs& inputs);

/// Make-up below evaporation and bleed at the design hour: fault, with the time until the pump draws air
/// where the sump's volume is known. Needs make-up, the design weather, and face speed, length and height of
/// every bank on the pump.
[[nodiscard]] std::vector<Finding> make_up_too_small(const RuleInputs& inputs);

/// If make-up failed at the design hour, the sump would last less than 30 min (common practice, no source):
/// note, for an alarm. Needs volume and evaporation as above; silent where make-up is too small.
[[nodiscard]] std::vector<Finding> reserve_short(const RuleInputs& inputs);

}  // namespace wetfront
