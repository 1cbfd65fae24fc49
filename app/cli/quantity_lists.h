// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <vector>

#include "water/header.h"

namespace wetfront {

/// "45s,47s,46s": readings with their unit, with commas between, so decimals with a point. The error names
/// the reading by its place, from 1.
[[nodiscard]] Result<std::vector<Duration>> readings_of(std::string_view text);

/// "0gpm:40ft,60gpm:20ft": flow and head of each point. The error names the point by its place, from 1, and
/// its part.
[[nodiscard]] Result<std::vector<PumpPoint>> pump_points(std::string_view text);

}  // namespace wetfront
