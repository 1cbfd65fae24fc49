// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// How a trimmed timer adapts its on-time: the rows, and how often they are looked at. All silent on other
// kinds, and where the pump never rests before any trimming.
namespace wetfront {

/// A row stands at no higher degrees above target than the one before it: which of them counts is open.
/// Fault, with both. Needs the degrees of two rows in a row.
[[nodiscard]] std::vector<Finding> trim_rows_out_of_order(const RuleInputs& inputs);

/// A hotter house gets less: a row changes the on-time by less than a cooler row before it. Fault, with the
/// difference at a review. Needs degrees and change of both; speaks only of rows in order.
[[nodiscard]] std::vector<Finding> trim_against_heat(const RuleInputs& inputs);

/// A row takes time off: at every review again, unless the timer holds the base as its shortest run. Fault,
/// with the reviews, and the time, until the run no longer fills the slowest header (or is nothing, where
/// fill was not timed). Needs base on-time; silent where one such row is already too much (base_below_fill).
[[nodiscard]] std::vector<Finding> trim_shortens_without_end(const RuleInputs& inputs);

/// One review goes from base to ceiling: trimming has two positions only. Waste, with the pumping that comes
/// with the first tenth of a degree. Needs base on-time and a ceiling above it; silent where the timer's
/// steps allow no more than one, and where a step as large is advised: a controller may hold base and ceiling
/// closer together than they were advised.
[[nodiscard]] std::vector<Finding> trim_in_one_step(const RuleInputs& inputs);

/// A row that adds time already less than 0.5 K (assumed) above target: within what a sensor wavers. Waste:
/// the on-time climbs to its ceiling at target. Needs degrees and change of the row.
[[nodiscard]] std::vector<Finding> trim_within_dead_band(const RuleInputs& inputs);

/// On-time reviewed before the house has answered (10 min: assumed; common practice, no source), with rows
/// that change something. Waste, with the time from base to ceiling where both are known. Needs the review
/// interval.
[[nodiscard]] std::vector<Finding> review_before_answer(const RuleInputs& inputs);

/// Review interval that is no whole number of periods: some runs see two reviews or are cut. Note, with the
/// next multiple. Needs both, and rows that change something.
[[nodiscard]] std::vector<Finding> review_off_period(const RuleInputs& inputs);

}  // namespace wetfront
