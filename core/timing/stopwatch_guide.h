// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "timing/readings.h"

namespace wetfront {

/// A mark that can be made now. `bank` is empty for pump events.
struct PossibleMark {
    MarkKind kind = MarkKind::pump_start;
    Id bank;

    friend bool operator==(const PossibleMark&, const PossibleMark&) = default;
};

/// What the stopwatch offers for one pump: the mark that usually comes next, and what else can happen now.
struct StopwatchGuide {
    PossibleMark next;
    std::vector<PossibleMark> others;  ///< never holds `next`
};

/// From what the marks say about the pump, the banks that it feeds (at least one), the bank at which the
/// person stands, and how the next run is meant to start. Pure: the same marks give the same offer after a
/// restart.
[[nodiscard]] StopwatchGuide stopwatch_guide(const PumpState& pump, std::span<const Id> banks,
                                             const Id& at_bank, PadsAtStart next_start);

/// True while something is being timed on that pump: it runs, or a bank drips or dries after a stop.
[[nodiscard]] bool is_being_timed(const PumpState& pump, std::span<const Id> banks);

}  // namespace wetfront
