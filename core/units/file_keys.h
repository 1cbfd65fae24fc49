// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "units/quantity_text.h"

// How numbers are named in files that other programs read: the unit stands in the key or the column's
// heading.
namespace wetfront {

/// The unit of such a number: SI, temperatures in degC. Empty for a plain share.
[[nodiscard]] std::string file_unit(Kind kind);
/// The number in that unit.
[[nodiscard]] double file_number(const AnyQuantity& quantity);
/// "period" and a time give "period_s": name and unit in letters that a key can hold.
[[nodiscard]] std::string file_key(const std::string& name, Kind kind);

}  // namespace wetfront
