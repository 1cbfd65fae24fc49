// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "day/day_house.h"
#include "day/weather.h"

namespace wetfront::test {

/// What small steps make of a day.
struct FineDay {
    double evaporated = 0.0;  ///< kg
    double pumped = 0.0;      ///< kg
    double returned = 0.0;    ///< kg
    double pump_on = 0.0;     ///< s, over all timers
    long starts = 0;          ///< over all timers
    double house = 0.0;       ///< K s, of degC
    double hottest = -300.0;  ///< degC
    double cooling = 0.0;     ///< K s behind the pads
    double lost = 0.0;        ///< K s
    double above_house = 0.0;
    double index = 0.0;  ///< K s, of degC
    double above_index = 0.0;
    double litter_wet = 0.0;
    double bird_heat = 0.0;  ///< J
};

/// The equations of day/simulate.h and the rules of day/day_house.h by small steps, Heun's rule for the
/// columns: nothing of it is shared with the program but moist air, pads and the heat of a bird. Steps are at
/// most `step` long and end where something is due; where the sensor passes a limit, a step is cut there.
/// What outside air is and what is felt in the house is worked out at least every 10 s.
[[nodiscard]] FineDay fine_steps(const DayHouse& house, const Weather& weather,
                                 std::span<const TimerPlan> plans, double step = 1.0);

}  // namespace wetfront::test
