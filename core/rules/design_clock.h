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

/// Minute of the clock at which a day is hottest: 14:30 by the sun, between the two hottest of its hours.
[[nodiscard]] int hottest_minute(const CycleMargins& margins);

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

/// How long the design day calls for this timer's pads: outside at or above its start temperature (the
/// advised one where none is set), within its pad hours, and not above a cut-off that an outside sensor
/// reads. To the step of the day. None: the day hour by hour or a start temperature is not known, or no
/// minute calls.
[[nodiscard]] std::optional<Duration> called_for(const RuleInputs& inputs, const TimerView& view);

/// What recurs in every hour in which pads are called for, over the design day.
template <class Q>
[[nodiscard]] Q in_a_day(Q in_an_hour, Duration called_for) {
    return in_an_hour * (in_seconds(called_for) / 3600.0);
}

/// A time of hours as people say it: to the minute.
[[nodiscard]] Duration to_the_minute(Duration time);

/// How far the best pad of the timer cools towards the wet bulb; none without banks.
[[nodiscard]] std::optional<Fraction> best_pad(const RuleInputs& inputs, const TimerView& view);

}  // namespace wetfront
