// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/result.h"

namespace wetfront {

/// A decimal number as a person writes it, whatever the machine's language: "45", "-3.5", "0,75", "1e-3".
/// One point or one comma is the decimal mark; a comma before exactly three digits ("1,234") could be a
/// thousands mark and is refused. No blanks, hexadecimal, infinity or NaN.
[[nodiscard]] Result<double> parse_number(std::string_view text, std::string_view item);

/// At most `decimals` (0 to 12) digits behind the point, trailing zeros cut: 45, 1.5. Never an exponent,
/// never "-0".
[[nodiscard]] std::string print_number(double value, int decimals);

/// Exactly `decimals` (0 to 12) digits behind the point.
[[nodiscard]] std::string print_fixed(double value, int decimals);

/// The fewest digits that read back as the same double: "100000", "0.0254"; with an exponent only below 1e-6
/// and from 1e15 up.
[[nodiscard]] std::string print_exact(double value);

}  // namespace wetfront
