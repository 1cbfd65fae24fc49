// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// What was changed for the farm of the margins and limits that the advice is made with.
namespace wetfront {

/// The limits that were changed for the farm cannot be used together, so that advice and findings are made
/// with the program's own: not what somebody wanted. Fault. Needs nothing else.
[[nodiscard]] std::vector<Finding> limits_unusable(const RuleInputs& inputs);

/// A limit lies on the less safe side of the program's own value (the water margin below it, the share of the
/// dry-out time above it, ...): note, one for each, with what it costs. Limits that only describe the site
/// (the clock, how a house answers, a controller's steps) have no less safe side. Needs Advice::margins.
[[nodiscard]] std::vector<Finding> limits_less_safe(const RuleInputs& inputs);

}  // namespace wetfront
