// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <vector>

#include "cycle/advice.h"
#include "day/optimiser.h"
#include "day/visit_day.h"
#include "day/weather.h"

namespace wetfront {

/// What the search found for one timer.
struct CheapestCycle {
    Id timer;
    OptimiserAnswer answer;
    TimerSettings settings;  ///< those advised with this cycle in them, on-times from pump start
};

/// For each timer for which a cycle is advised: of all cycles that its controller can hold and that no rule
/// calls a fault or harm, the one that pumps least and cools as well as continuous pumping on that weather;
/// the other timers run as advised. `day` has a house and the advised way to run. Errors: those of the
/// simulation; ended by `go_on`, which is asked before each timer.
[[nodiscard]] Result<std::vector<CheapestCycle>> cheapest_cycles(const VisitFile& file, const Advice& advice,
                                                                 const VisitDay& day, const Weather& weather,
                                                                 const std::function<bool()>& go_on = {});

/// The cycle, what it saves against the one advised, and what keeps it from pumping less.
[[nodiscard]] Message words_of(const CheapestCycle& found, const House& house);

}  // namespace wetfront
