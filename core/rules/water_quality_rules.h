// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// The sump's water as tested. Its concentration is its conductivity over that of the make-up; evaporation is
// that of all the house's pads at the design hour, and numbers made from it lack where it is not known. No
// settings.
namespace wetfront {

/// Sump less than twice as concentrated as the make-up: waste, with the water let out beyond what two times
/// needs; a note where it is less than 1.05 times, as in a sump just filled. Silent where its index says
/// that the water scales all the same. Needs both conductivities. Source: concentration ratio at least 2,
/// EnergyPlus Engineering Reference, blow-down.
[[nodiscard]] std::vector<Finding> cycles_below_two(const RuleInputs& inputs);

/// Langelier index of the sump clearly positive (above 0.3, assumed: what test kits and formula leave
/// unsure), and more bleed would bring it to 0 at twice the make-up or more: waste, with that bleed. Needs
/// both conductivities, the sump's pH, alkalinity and hardness (all of it counts as calcium where calcium was
/// not tested); temperature of the sump, else the wet bulb outside. Source: scaling.h.
[[nodiscard]] std::vector<Finding> bleed_too_small(const RuleInputs& inputs);

/// The same index, but no bleed that published guidance allows brings it to 0: waste. Same needs.
[[nodiscard]] std::vector<Finding> water_scales_pads(const RuleInputs& inputs);

/// The sump's pH below 6 or above 8: note. Needs it. Source: Univ. of Illinois Extension, 2019.
[[nodiscard]] std::vector<Finding> ph_out_of_range(const RuleInputs& inputs);

}  // namespace wetfront
