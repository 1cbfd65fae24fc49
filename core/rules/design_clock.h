// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "air/design_day.h"
#include "rules/timer_view.h"

// The design day as a clock on the wall shows it, for rules that hold settings against it.
namespace wetfront {

/// Where the hours come from, and how far the clock is ahead of the sun.
[[nodiscard]] std::string design_clock_source(const CycleMargins& margins);

/// Below that age birds are kept warm, not cooled (common practice, no source).
inline constexpr double age_of_chicks_days = 14.0;

/// Step in which a day is gone through.
inline constexpr int day_step_minutes = 5;

/// What rules ask of the air at a time of day; between two hours each is taken as linear.
struct AirAt {
    Temperature dry_bulb;
    Temperature wet_bulb;
    Fraction relative_humidity;
};
/// `minute` of the clock, 0 or above; whole days are taken off. `margins` say how far the clock is ahead.
[[nodiscard]] AirAt air_at(const DesignDay& day, int minute, const CycleMargins& margins);

/// A part of the design day for which something holds.
struct PartOfDay {
    int minutes = 0;      ///< in all
    Temperature hottest;  ///< outside, within it
    int at = 0;           ///< minute of the clock of the hottest
};
/// The minutes of the day for which `holds`; none if for none.
[[nodiscard]] std::optional<PartOfDay> part_of(
    const DesignDay& day, const CycleMargins& margins,
    const std::function<bool(int minute, const AirAt& air)>& holds);

/// How far the best pad of the timer cools towards the wet bulb; none without banks.
[[nodiscard]] std::optional<Fraction> best_pad(const RuleInputs& inputs, const TimerView& view);

}  // namespace wetfront
