// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "records/time_of_day.h"

namespace wetfront {

/// The margins and limits of the advice that were changed for a farm: only what differs from the program's
/// own values, which stand with their sources in cycle/margins.h.
struct Limits {
    // When pads may run
    Optional<Temperature> coolest_start;  ///< of older birds
    Optional<Temperature> warmest_start;
    Optional<Temperature> start_temperature;
    std::optional<double> older_birds_days;
    Optional<Velocity> least_air_speed;
    Optional<TemperatureDifference> least_cooling;
    Optional<Temperature> hot_outside;
    Optional<Fraction> humidity_step;
    std::optional<TimeOfDay> night;
    Optional<Fraction> dry_face;
    Optional<Duration> longest_dry_down;
    Optional<Duration> clock_ahead_of_sun;
    Optional<Duration> clock_step;
    // How long
    Optional<Fraction> water_margin;
    Optional<Duration> least_rest;
    Optional<Fraction> drying_share;
    Optional<Fraction> constant_share;
    Optional<Duration> first_period;  ///< tried before the second
    Optional<Duration> second_period;
    // How it adapts
    Optional<Duration> house_lag;
    Optional<TemperatureDifference> dead_band;

    friend bool operator==(const Limits&, const Limits&) = default;
};

}  // namespace wetfront
