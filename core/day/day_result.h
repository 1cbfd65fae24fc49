// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "base/clock.h"
#include "units/quantities.h"

namespace wetfront {

/// What happened between two times that are one slot apart: means, and sums of water and time.
struct DaySlot {
    Temperature outside;
    Fraction outside_humidity;
    Temperature behind_pad;      ///< all banks' air together
    Temperature house;           ///< at the end of the house, where it is hottest
    Fraction humidity;           ///< there
    Temperature index;           ///< THI there
    double wet_share = 0.0;      ///< of the pads' face that evaporates, by the air that goes through it
    double airflow_share = 0.0;  ///< of the last fan stage's
    Mass evaporated;
    Mass pumped;
    Mass bled;
};

/// One timer with all its pumps and banks, over the whole time.
struct TimerTotals {
    Duration called;               ///< called for and allowed
    Duration pump_on;              ///< of its pumps, which run together
    std::int64_t pump_starts = 0;  ///< of each of its pumps
    std::int64_t calls = 0;
    double wet_dry_cycles = 0.0;  ///< of its pads: how often a column began to dry, mean of its columns
    Duration longest_on_time;     ///< that trimming reached
};

/// pumped + stored before = evaporated + stored after + returned, each added up on its own.
struct WaterBalance {
    Mass pumped;      ///< flow times running time
    Mass evaporated;  ///< integral of b phi over the columns
    Mass stored;      ///< in pads and headers, after less before
    Mass returned;    ///< dripped off, and drained from the headers at each stop (assumed: to the sump)
    [[nodiscard]] double error() const;  ///< of what was pumped; of what evaporated where nothing was pumped
};

/// What heated the house's air against what it carried away, by enthalpy of moist air; water evaporated
/// brings its own as a liquid at the wet bulb. Integrated over the same steps by Simpson's rule, but for the
/// water, which is that of the columns.
struct HeatBalance {
    Energy birds;
    Energy building;
    Energy water;
    Energy carried_away;
    Mass evaporated_by_air;  ///< what the air gained at the pads: compare with WaterBalance::evaporated
    [[nodiscard]] double error() const;  ///< of what was carried away
};

struct DayTotals {
    Duration simulated;
    Temperature mean_house;
    Temperature hottest_house;
    Duration above_house_limit;
    double degree_hours_above_house_limit = 0.0;  ///< K h
    Duration above_index_limit;
    Duration litter_wet;  ///< humidity in the house above its limit
    /// Cooling that pads would have given, had they been wet throughout, while they were called: K h behind
    /// the pads.
    double lost_to_dry_pad = 0.0;
    /// Cooling that all pads gave, K h behind the pads.
    double cooling = 0.0;
    Mass evaporated;
    Mass bled;
    Mass pumped;
    std::optional<Energy> pump_energy;  ///< none: the power of a pump that ran is not entered
    std::int64_t pump_starts = 0;       ///< over all pumps
    double wet_dry_cycles = 0.0;        ///< mean over all banks by their share of the face
    std::optional<double> energy_cost;
    std::optional<double> water_cost;
    /// Hunting: hours (by the weather's clock) in which a timer was called four times or more, or fans
    /// stepped up four times or more (assumed).
    std::int64_t hunting_hours = 0;
    Duration fog;               ///< the house's air could not hold its vapour; it counts as saturated then
    Duration beyond_bird_heat;  ///< outside the temperatures for which the birds' heat is stated
};

/// A run of a timer's pumps, from the start of the weather.
struct PumpRun {
    std::size_t timer = 0;
    Duration start;
    Duration stop;
};

struct DayResult {
    WallTime from;
    Duration slot_length;
    std::vector<DaySlot> course;    ///< slot after slot (Qt takes "slots" for a word of its own)
    std::vector<Duration> pump_on;  ///< [slot * timers + timer]
    std::vector<TimerTotals> timers;
    DayTotals totals;
    WaterBalance water;
    HeatBalance heat;
    std::vector<PumpRun> runs;  ///< in order of their stops, if they were asked for
};

}  // namespace wetfront
