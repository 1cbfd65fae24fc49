// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <iosfwd>

#include "cli/json_output.h"
#include "day/day_result.h"

namespace wetfront {

/// Everything of a simulated day or season but its runs: `hours`, `totals`, `balance_error`, `timers`.
[[nodiscard]] JsonObject day_json(const DayResult& day);

/// The hours of up to two days, else a line for each day; then the totals.
void print_day(std::ostream& out, const DayResult& day, UnitSystem units);

}  // namespace wetfront
