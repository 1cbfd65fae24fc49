// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <iosfwd>

#include "cli/json_output.h"
#include "cycle/template_fit.h"

namespace wetfront {

/// Lines in the order in which the controller asks, what it has no setting for, and the template's name.
[[nodiscard]] JsonObject fit_json(const SettingTemplate& described, const TemplateFit& fit, UnitSystem units);

/// "label   number unit", each with what changed and what this controller cannot do below it.
void print_fit(std::ostream& out, const SettingTemplate& described, const TemplateFit& fit, UnitSystem units);

}  // namespace wetfront
