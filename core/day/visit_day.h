// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/advice.h"
#include "day/day_house.h"

namespace wetfront {

/// One way to run all timers of a house; no plans where it is not known how one of them would run.
struct WayToRun {
    std::optional<std::vector<TimerPlan>> plans;
    std::vector<Message> missing;  ///< what it takes to know that
    std::vector<Message> assumed;  ///< what is not entered, and what it was taken to be
};

/// A visit as the simulation asks for it (day/simulate.h), but for the weather.
struct VisitDay {
    std::optional<DayHouse> house;  ///< none: something is missing
    std::vector<Message> missing;
    std::vector<Message> assumed;
    WayToRun found;       ///< the settings found
    WayToRun advised;     ///< the advice: its cycle, or continuous pumping where none is advised
    WayToRun left;        ///< the settings left
    WayToRun continuous;  ///< pumps on while the advised settings call for pads
    WayToRun none;        ///< no pads
};

/// Banks by their readings, in the weather of these: a dry start gives both rates; a wet start gives how much
/// of the water evaporates, and the pad is taken to begin to dry just when the tested pause was over, which
/// is the soonest that it can (assumed). Where a measured flow says that a larger share evaporates, that
/// counts, as in the advice. Nothing fails: what is missing or assumed is said.
///
/// A target that the advice does not speak of is that of the settings left, else found; so is a start
/// temperature that is not advised. The weather's clock is taken to be the timers'.
[[nodiscard]] VisitDay visit_day(const VisitFile& file, const Advice& advice);

}  // namespace wetfront
