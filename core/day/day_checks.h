// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "base/result.h"
#include "day/simulate.h"

namespace wetfront::day_detail {

/// Every value within the range that day_house.h states, or the first that is not.
[[nodiscard]] Result<void> check_house(const DayHouse& house);
[[nodiscard]] Result<void> check_plans(const DayHouse& house, std::span<const TimerPlan> plans);
[[nodiscard]] Result<void> check_choice(const SimulationChoice& choice);

}  // namespace wetfront::day_detail
