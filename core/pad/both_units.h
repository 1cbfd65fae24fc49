// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "units/quantity_text.h"

namespace wetfront {

/// "25 °C (77 °F)": an error's text does not know its reader's units.
template <class Q>
[[nodiscard]] std::string in_both_units(Q value, Scale scale = Scale::normal) {
    return show_text(value, UnitSystem::si, scale) + " (" + show_text(value, UnitSystem::us, scale) + ")";
}

}  // namespace wetfront
