// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Single settings, and pairs of them that contradict each other, whatever the readings are.
namespace wetfront {

/// Base on-time 0: no run begins by itself. Fault; says after which review trimming makes the first one, or
/// that none ever comes. Needs base on-time; silent on a timer on demand.
[[nodiscard]] std::vector<Finding> pump_never_runs(const RuleInputs& inputs);

/// Ceiling below the base, as both stand on the controller: which of the two the timer holds is open. Fault,
/// with what every hour lacks where it is the ceiling. Needs base on-time and ceiling of a trimmed timer.
[[nodiscard]] std::vector<Finding> ceiling_below_base(const RuleInputs& inputs);

/// The longest run that can be reached leaves a rest above 0 and below 60 s (assumed): waste, with the starts
/// in an hour and the pumping that they save. Needs period and base on-time; for trimming the ceiling and a
/// row that adds time. Silent where the pump never rests.
[[nodiscard]] std::vector<Finding> rest_too_short(const RuleInputs& inputs);

/// Period below 5 min, the lower end of what is usual (common practice, no source): waste, with the starts in
/// an hour beyond twelve and, where fill was timed, the pumping that only fills headers. Needs the period;
/// silent where the pump never rests.
[[nodiscard]] std::vector<Finding> period_below_usual(const RuleInputs& inputs);

/// Period above 10 min, the upper end (same), with a bank of which nobody timed how long it stays wet: note.
/// Where that was timed, gap_outlasts_wet_pad judges by the reading. Needs period and base on-time.
[[nodiscard]] std::vector<Finding> period_above_usual(const RuleInputs& inputs);

/// A time that is at none of the timer's steps, which count from the least that its controller is described
/// with, else from 0: the timer holds another one than is written here. Note, with the next that it can hold.
/// Needs the step.
[[nodiscard]] std::vector<Finding> setting_off_resolution(const RuleInputs& inputs);

/// Running without rest is wanted, but the pump rests. Note, with the rest in an hour. Needs period, base
/// on-time, and that somebody said so.
[[nodiscard]] std::vector<Finding> rests_against_intent(const RuleInputs& inputs);

}  // namespace wetfront
