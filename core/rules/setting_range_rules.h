// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "rules/rules.h"

namespace wetfront {

/// A value of a timer outside its usual range (core/records/fields.h): hardly what the timer does, or a house
/// that runs by it is hurt. Harm where the value, if it stands there, keeps pads from ever running in heat; a
/// note on what the controller was told or shows; fault otherwise. One finding a value. Settings as read; a
/// timer of another kind than the value is for is named too: it was read somewhere.
[[nodiscard]] std::vector<Finding> setting_out_of_range(const RuleInputs& inputs);

/// A value beyond what the timer's controller can hold as its template describes it: the reading or the
/// template is wrong. Note. Needs a timer with a whole template; a setting that the template does not have,
/// and one outside what is usual, are not looked at. Values between two steps: setting-off-resolution.
[[nodiscard]] std::vector<Finding> setting_not_on_controller(const RuleInputs& inputs);

}  // namespace wetfront
