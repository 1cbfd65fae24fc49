// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// A pump's flow against the pads that it wets, and against itself measured another way. No settings.
namespace wetfront {

/// Flow for each metre of a pump's pads below the published least one, by more than the flow's uncertainty
/// (5 % where it is not known, assumed); within it a note: too close to call. Fault with what is missing,
/// note where the flow was only worked out. Needs a flow and, of all banks of the pump, length and one
/// thickness of 145 to 155 mm: for others no number is published. Source: 0.75 US gpm/ft for 6 in pads, Univ.
/// of Georgia, Poultry Housing Tips 14(4), 2002.
[[nodiscard]] std::vector<Finding> circulation_below_minimum(const RuleInputs& inputs);

/// Flow below ten times what a pump's pads evaporate at the design hour, by more than its uncertainty as
/// above. Note; silent where circulation is clearly below the minimum. Needs a flow and, of all its banks,
/// length, height and face speed, and the design weather. Same source.
[[nodiscard]] std::vector<Finding> flow_below_ten_evaporations(const RuleInputs& inputs);

/// Two measurements of a pump's flow that differ by more than the root of the sum of squares of their
/// expanded uncertainties: note on the pair farthest beyond it. Needs two methods whose uncertainty is known.
[[nodiscard]] std::vector<Finding> flow_methods_disagree(const RuleInputs& inputs);

/// The flow that is used was measured in a way that leaves it uncertain by more than 3 %, or in too short a
/// time: note, with how to do better. Silent where two methods disagree.
[[nodiscard]] std::vector<Finding> flow_unsure(const RuleInputs& inputs);

}  // namespace wetfront
