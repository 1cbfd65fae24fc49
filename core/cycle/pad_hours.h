// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "air/design_day.h"
#include "cycle/margins.h"
#include "pad/wetting_column.h"

namespace wetfront {

/// Outside humidity at which a pad of that effectiveness cools air at `start` by just the least cooling that
/// is worth its damp (model rule 7): e (T - T_wb) falls under it above that humidity. Before rounding.
/// Errors: effectiveness outside 0 to 1 (0 excluded); a pad that cannot cool that much however dry the air.
[[nodiscard]] Result<Fraction> serving_humidity(Temperature start, Fraction effectiveness,
                                                AbsolutePressure pressure, const CycleMargins& margins);

/// A value rounded down to a step (above 0); within 1e-9 of a step it is that step.
[[nodiscard]] Fraction rounded_down(Fraction value, Fraction step);

/// What ends the hours in the evening, or keeps them from beginning.
enum class HoursEnd { cool_enough, too_humid };

/// The hours of the design day in which pads help (model rule 9), as the clock shows them, before rounding.
struct PadHours {
    Duration from;  ///< since midnight
    Duration to;    ///< since the same midnight: above 24 h where it is past the next one
    HoursEnd ended_by = HoursEnd::cool_enough;
};
/// Pads help on the design day in every hour, in some, or in none.
struct HelpfulHours {
    enum class When { never, some, always } when = When::never;
    PadHours hours;                            ///< of `some`
    HoursEnd kept_by = HoursEnd::cool_enough;  ///< of `never`: what is lacking at the hottest hour
};

/// Outside at or above `start`, and the pad cools by at least the least cooling or it is too hot outside for
/// any humidity to stop pads. Between two hours both are taken as linear. `effectiveness` above 0 up to 1.
/// The hours lie around the hottest and hang together, as temperature and cooling fall on both sides of it.
[[nodiscard]] Result<HelpfulHours> helpful_hours(const DesignDay& day, Temperature start,
                                                 Fraction effectiveness, const CycleMargins& margins);

/// How long a wet pad takes to dry with the fans on, from that time of the clock on the design day, by the
/// wetting column with the evaporation of each hour; to the minute, rounded up. `rates` are those of the
/// weather `test`. None: not dry within the longest dry-down. Each hour dries as at its end, the cooler side
/// of an evening. Error: a test weather in which hardly anything evaporates.
[[nodiscard]] Result<std::optional<Duration>> dry_down(const ColumnRates& rates, const MoistAir& test,
                                                       Fraction effectiveness, const DesignDay& day,
                                                       Duration from, const CycleMargins& margins);

/// The hour (0 to 23, solar) of the design day in which a pad of that effectiveness evaporates most.
[[nodiscard]] Result<int> hour_of_most_evaporation(const DesignDay& day, Fraction effectiveness);

}  // namespace wetfront
