// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Pad hours of a trimmed timer against the design day. Pads help while it is at or above the timer's own
// start temperature outside and its best pad cools by at least 2.0 K (helpful_hours). The sun's hours are 0
// to 2 h behind the clock's, 1 h assumed: what lies within an hour is too close to call, and a note. All need
// start temperature, both hours, a bank, and the design day with its daily range; hours that begin and end
// at one time are for pad_hours_empty alone. Silent with birds known to be younger than 28 days, for whom
// pads are a guard against extreme heat only (pads_off_in_extreme_heat).
namespace wetfront {

/// Pads would still help when the hours end. Harm for more than an hour, note below, with the time without
/// pads, the hottest of it and the degrees lost.
[[nodiscard]] std::vector<Finding> pad_hours_end_in_heat(const RuleInputs& inputs);

/// Pads would already help when the hours begin: the same in the morning.
[[nodiscard]] std::vector<Finding> pad_hours_begin_in_heat(const RuleInputs& inputs);

/// Hours end more than an hour after pads stop helping, and the slowest pad is not dry by 22:00 (assumed;
/// rule of thumb, Univ. of Georgia 2011): waste, with the extra wet hours. Where no pad was timed until its
/// first dry patch, hours that end at or after 22:00 count.
[[nodiscard]] std::vector<Finding> pad_hours_into_night(const RuleInputs& inputs);

/// Hours begin more than an hour before pads begin to help: waste, with the hours and the degrees below the
/// start temperature.
[[nodiscard]] std::vector<Finding> pad_hours_begin_early(const RuleInputs& inputs);

/// Hours that begin and end at one time: whether that is never or always differs. Note. Needs both.
[[nodiscard]] std::vector<Finding> pad_hours_empty(const RuleInputs& inputs);

}  // namespace wetfront
