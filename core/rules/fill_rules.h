// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// The measured fill time of a bank against what pump and pipe should need (expected_fill). Beyond a limit
// means: by more than the reading's expanded uncertainty. Need a used fill reading, a flow (measured, or
// worked out from pump curve or head), bore and length. No settings.
namespace wetfront {

/// Longer than the longest expected. Waste, with the seconds that every run pumps before the far end gets
/// water; note where the supply pipe is not known, which may hold the difference. Causes in order: those of a
/// low flow where it was worked out, those of losing water or drawing air where it was measured.
/// Source: the filling front, or 1.3 to 2.2 times pipe volume over flow (common practice, no source).
[[nodiscard]] std::vector<Finding> fill_slower_than_expected(const RuleInputs& inputs);

/// Shorter than the shortest expected: the header was not empty, or is not as described. Note, as an on-time
/// built on it is too short by the difference. Same source.
[[nodiscard]] std::vector<Finding> fill_faster_than_expected(const RuleInputs& inputs);

}  // namespace wetfront
