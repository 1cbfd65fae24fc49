// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// The rinse of a trimmed timer: long enough, at an hour that helps, and not on young birds.
namespace wetfront {

/// A rinse shorter than the slowest bank needs from dry (with the fans on at the design hour where that is
/// known, else its reading): its far end is not rinsed. Waste, with the seconds short; whether other runs wet
/// it is for ceiling_below_wet_through. A length of 0 counts where a rinse hour is set. Needs rinse length
/// and a wet-through reading; silent where the pump never rests.
[[nodiscard]] std::vector<Finding> rinse_below_wet_through(const RuleInputs& inputs);

/// The rinse begins when pad hours keep pads off: it doesn't run, or the pads dry again before they are
/// allowed. Waste, with the hours from it to their beginning. Needs rinse hour and both pad hours.
[[nodiscard]] std::vector<Finding> rinse_outside_pad_hours(const RuleInputs& inputs);

/// At the rinse hour it is cooler than the start temperature even on the design day: pads aren't called for
/// yet, the rinse chills and dries off unused. Waste, with the degrees. Needs rinse hour, start temperature
/// and the design day with its daily range.
[[nodiscard]] std::vector<Finding> rinse_before_heat(const RuleInputs& inputs);

/// A rinse at a set hour with birds known to be younger than 28 days: it wets their air whatever the
/// temperature. Harm below 14 days, fault above (both ages: common practice, no source). Needs bird age,
/// rinse hour and a length above 0.
[[nodiscard]] std::vector<Finding> rinse_on_young_birds(const RuleInputs& inputs);

}  // namespace wetfront
