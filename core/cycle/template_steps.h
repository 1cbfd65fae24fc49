// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "records/setting_template.h"

namespace wetfront {

// The steps of one setting of a controller: least, least + resolution, ... up to most. All of them ask for a
// setting that check_template() accepts. Numbers are in the setting's unit.

enum class StepDirection { up, down, nearest };

/// The step at the value, or the next one in that direction; a value within a millionth of a step is at it,
/// and half way between two the nearest is the lower. None where there is no step on that side; for the
/// nearest, where the value lies more than half a step outside.
[[nodiscard]] std::optional<double> step_for(const TemplateSetting& setting, const AnyQuantity& value,
                                             StepDirection direction);

/// The smallest step not below the value that is a whole multiple of the period; none if there is none.
[[nodiscard]] std::optional<double> multiple_for(const TemplateSetting& setting, const AnyQuantity& value,
                                                 Duration period);
/// Whether a time is a whole multiple (1 or more) of a period, both in s, to a millionth of the period.
[[nodiscard]] bool is_multiple(double time, double period);

/// The value itself, or the first or last step where it lies beyond them.
[[nodiscard]] AnyQuantity within_steps(const TemplateSetting& setting, const AnyQuantity& value);

/// True if the value lies a whole step or more beyond the first or the last one.
[[nodiscard]] bool is_out_of_range(const TemplateSetting& setting, const AnyQuantity& value);

[[nodiscard]] AnyQuantity last_step(const TemplateSetting& setting);

/// What a number of that setting says; a time of day with Scale::clock.
[[nodiscard]] AnyQuantity quantity_of(const TemplateSetting& setting, double number);

/// True if the number is that value, to a millionth of a step.
[[nodiscard]] bool same_number(const TemplateSetting& setting, double number, const AnyQuantity& value);

/// As it is entered: "75", "2.5", "09:30".
[[nodiscard]] std::string number_text(const TemplateSetting& setting, double number);

}  // namespace wetfront
