// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Temperatures of a trimmed timer against each other and against the birds' age.
namespace wetfront {

/// Pads are off strictly below the lowest house temperature. Above the start temperature it decides when they
/// start: fault, with the degrees that birds wait. At it, pads go on and off at one temperature: note. Needs
/// both.
[[nodiscard]] std::vector<Finding> lowest_temperature_above_start(const RuleInputs& inputs);

/// Start temperature below the target: pads wet the air of a house that is still to be warmed. Waste, with
/// the degrees. Needs both.
[[nodiscard]] std::vector<Finding> start_below_target(const RuleInputs& inputs);

/// Pads may start at or below 30 degC (the published band is for older birds) with birds known to be younger
/// than 28 days. Harm below 14 days, note above (both ages: common practice, no source), with the temperature
/// of the air that comes in then. Needs bird age and start temperature; the temperature also a weather.
[[nodiscard]] std::vector<Finding> pads_chill_young_birds(const RuleInputs& inputs);

}  // namespace wetfront
