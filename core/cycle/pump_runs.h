// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "records/visit.h"
#include "timing/readings.h"

namespace wetfront {

/// How long the headers of one timer take to fill.
struct HeaderFill {
    Duration shortest;
    Duration longest;
};

/// By the readings of its banks: none where one of them has no used fill reading, or there are no banks.
[[nodiscard]] std::optional<HeaderFill> measured_fill(const House& house, const VisitTimings& timings,
                                                      const Timer& timer);

/// What stands in a timer, as runs of its pump from start to stop.
struct PumpRuns {
    TimerSettings settings;  ///< on-times from pump start; not there where the fill is not known
    /// The fill that was added, which is what the controller was told (entered fill), else measured_fill():
    /// the shortest to base and shown on-time, as no bank may be thought to get more water than it does; the
    /// longest to the ceiling, as the pump may not be thought to rest for longer than it does. None: it
    /// counts from pump start, or the fill is not known.
    std::optional<HeaderFill> fill;
    bool fill_missing = false;  ///< there are on-times, and they cannot be turned into runs
};
/// The same settings where the timer counts from pump start.
[[nodiscard]] PumpRuns pump_runs(const House& house, const VisitTimings& timings, const Timer& timer,
                                 const TimerSettings& settings);

}  // namespace wetfront
