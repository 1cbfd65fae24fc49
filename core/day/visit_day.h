// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/advice.h"
#include "day/day_house.h"
#include "day/weather.h"
#include "records/visit.h"

namespace wetfront {

// A visit as a simulated day sees it: house and plans of its timers, from the same readings, weathers and
// water as its advice.

struct VisitDayHouse {
    std::optional<DayHouse> house;  ///< none: something is missing
    std::vector<Message> missing;
    std::vector<Message> assumed;  ///< besides what day_house.h assumes for every house
};

/// Banks, pumps and timers in the order of the visit's house. A bank's rates are those of its dry start; it
/// holds what the air of that weather takes up in the time in which it dried, so that the simulated pad dries
/// as fast in that weather as the stopwatch saw it. The air goes through the banks as the speed at their
/// faces says. Water comes as measured, and where it was not, or is less than the pad took up by the
/// stopwatch, as much as that takes. A wet start cannot be simulated, as it does not say what the pad holds.
[[nodiscard]] VisitDayHouse day_house_of(const VisitFile& file, const Advice& advice);

enum class DaySettings { found, advised, left, continuous, none };

struct VisitDayPlans {
    std::vector<TimerPlan> plans;  ///< one for each timer, in the house's order, where nothing is missing
    std::vector<Message> missing;
    std::vector<Message> notes;  ///< what is set and not simulated
};

/// What the timers do by these settings. Continuous: on while called, when the advised settings call; none:
/// never. The target is that of the settings, else that which was left or found.
[[nodiscard]] VisitDayPlans day_plans_of(const VisitFile& file, const Advice& advice, DaySettings which);

/// The farm's design day on the day of the visit, by the clock there. An error says what of it is missing.
[[nodiscard]] Result<Weather> design_weather_of(const VisitFile& file, const Advice& advice);

}  // namespace wetfront
