// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <chrono>
#include <optional>
#include <vector>

#include "cycle/advice.h"
#include "day/day_house.h"
#include "day/weather.h"

namespace wetfront {

/// Whose settings a day is worked out with.
enum class DaySettings {
    found,
    advised,  ///< as the timer's controller can hold them
    left,
    continuous,  ///< pumps on while pads are called, at the times that are advised
    none,        ///< no pads
};
[[nodiscard]] Message label_of(DaySettings which);

/// A visit's house as a day is worked out for it.
struct VisitDay {
    DayHouse house;
    std::vector<Message> missing;  ///< what has to be entered or timed first; not empty: there is no day
    std::vector<Message> assumed;  ///< what stands in for what was not entered
};

/// The house with what was measured at the visit: columns from the timings of each bank (a wet start says how
/// much evaporates and not how fast a dry pad takes up water: that is missing then), the weather of its
/// readings, fans, birds and prices. Flow that was not measured is assumed: the least circulation of 9.31
/// L/min for each metre of pad (Univ. of Georgia, Poultry Housing Tips 14(4), 2002), or what the pad took up
/// if that is more.
[[nodiscard]] VisitDay visit_day(const VisitFile& file, const Advice& advice);

/// What its timers do under those settings, in the house's order, or what is missing for it.
struct DayPlans {
    std::vector<TimerPlan> plans;
    std::vector<Message> missing;
    std::vector<Message> notes;  ///< what of the settings a day does not know
};
[[nodiscard]] DayPlans day_plans(const VisitFile& file, const Advice& advice, DaySettings which);

/// The farm's design day, midnight to midnight by the clock there, dated on the visit's day; none where it is
/// not entered (VisitWeather::missing says what).
[[nodiscard]] std::optional<Weather> design_weather(const VisitFile& file, const Advice& advice);

}  // namespace wetfront
