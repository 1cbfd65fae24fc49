// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// What the controller itself says: timings that were entered into it, and the on-time that it shows.
namespace wetfront {

/// The controller's entered fill or wet-through against the slowest reading of the timer's banks. Below it by
/// more than the reading's uncertainty: fault, with the seconds that every run comes short. Above it by more
/// than 30 % and the uncertainty: waste, with the seconds too many. Needs the entry and a reading; a timer on
/// demand uses neither.
[[nodiscard]] std::vector<Finding> entered_fill_differs(const RuleInputs& inputs);
[[nodiscard]] std::vector<Finding> entered_wet_through_differs(const RuleInputs& inputs);

/// The on-time that the controller shows cannot come of the settings: below the base (unless rows take time
/// off) or above what trimming can reach, by more than a step of the timer. Fault, with the difference and
/// what it makes of pumping in an hour; likely causes. Needs it and the base.
[[nodiscard]] std::vector<Finding> shown_on_time_differs(const RuleInputs& inputs);

/// The timer's controller counts its on-times from a full header, and no fill time is known: neither was it
/// told one nor has every bank a used fill reading. None of the rules on runs looks at such on-times. Note.
[[nodiscard]] std::vector<Finding> on_times_without_fill(const RuleInputs& inputs);

}  // namespace wetfront
