// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "day/simulate.h"
#include "units/message.h"

namespace wetfront {

// The cheapest cycle that cools as well: searched for over the settings that a timer can hold, each judged by
// the simulated day.

/// How long a timer's pumps run, from pump start.
struct TimerCycle {
    Duration period;
    Duration base;
    Duration ceiling;  ///< at least the base
    friend bool operator==(const TimerCycle&, const TimerCycle&) = default;
};

/// The cycles that a timer can hold: on-times are `least_on` and whole steps more, up to `most_on`, and leave
/// the rest in every period.
struct CycleSteps {
    std::vector<Duration> periods;  ///< each 10 s or above
    Duration step;                  ///< of an on-time, 0.1 s or above
    Duration least_on;              ///< above 0
    std::optional<Duration> most_on;
    Duration least_rest;  ///< 0 or above
};

/// What may be lost against continuous pumping over the same weather.
struct CoolingLimits {
    /// Lost to pads that are dry while called, more than with continuous pumping, as a share of what that
    /// cools; 0 or above; assumed. (Not the cooling of the whole day: pads that cool less at the hot hours
    /// are called longer at the mild ones, and it comes out the same.)
    double most_lost = 0.01;
    /// of the house at its hottest, 0 or above; assumed. The sum alone would let one hot hour go.
    TemperatureDifference most_warmer = from_si<TemperatureDifference>(0.25);
};

struct OptimiserQuestion {
    std::vector<TimerPlan> plans;  ///< of all timers of the house, in its order
    std::size_t timer = 0;         ///< whose cycle is looked for; its plan says when its pads may run
    CycleSteps steps;
    /// Degrees above target from which the on-time is trimmed up, with a row of a quarter of the way from
    /// base to ceiling, rounded up to the step, at reviews as review_interval() has them; needs the plan's
    /// target. None: base and ceiling are the same.
    std::optional<TemperatureDifference> trim_above;
    Duration house_lag = seconds(600.0);  ///< for the review interval
    CoolingLimits limits;
    std::optional<TimerCycle> advised;  ///< by the closed form; tried like any other, with its neighbours
    /// Why a plan may not stand in the timer, whatever it cools, as a sentence; none: it may. The same for
    /// the same plan.
    std::function<std::optional<Message>(const TimerPlan&)> refused;
};

/// A cycle, or continuous pumping, and what the simulated day makes of it.
struct JudgedCycle {
    std::optional<TimerCycle> cycle;  ///< none: continuous pumping while called
    TimerPlan plan;
    double lost = 0.0;  ///< as CoolingLimits::most_lost; below 0: less than with continuous pumping
    TemperatureDifference warmer;  ///< at the hottest, than with continuous pumping; below 0: cooler
    Mass pumped;
    double wet_dry_cycles = 0.0;
    std::optional<Message> out;  ///< why it is not taken: what it loses, or a rule; none: it may be taken
};

/// The measure: what may be taken is better than what may not; then less pumped, and where that is the same
/// to 1e-9, fewer wet-dry cycles.
[[nodiscard]] bool is_better(const JudgedCycle& a, const JudgedCycle& b);

struct OptimiserAnswer {
    JudgedCycle best;
    JudgedCycle continuous;
    std::optional<JudgedCycle> advised;  ///< the closed form's, where the question has one
    Message binding;                     ///< what keeps it from pumping less
    int simulated = 0;                   ///< how many days it took
};

/// The best cycle of one timer, all else as in the plans; continuous pumping where none may be taken. For
/// each period the shortest runs that lose little enough are found by halving, as longer runs lose less and
/// pump more, then the neighbours of the best are tried, as that holds but for the moments at which pads are
/// called; trying every setting of random houses found no more than 1 % less. Never worse than `advised` by
/// is_better(). The same question has the same answer. Errors: a value of the question outside its range, by
/// name, and those of DaySimulator::run().
[[nodiscard]] Result<OptimiserAnswer> best_timer_cycle(DaySimulator& simulator,
                                                       const OptimiserQuestion& question);

}  // namespace wetfront
