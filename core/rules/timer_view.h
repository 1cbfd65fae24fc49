// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/bank_evidence.h"
#include "cycle/pump_runs.h"
#include "rules/rules.h"

namespace wetfront {

/// A timer of the house with what it holds and what is advised for it: what most rules look at.
struct TimerView {
    const House& house;
    const Timer& timer;
    const TimerSettings& on_controller;  ///< as they stand there, in its own counting
    const TimerAdvice* advice;           ///< none: nothing was worked out for it
    std::vector<const PadBank*> banks;
    const CycleMargins& margins;  ///< that the advice was made with
    const VisitTimings& timings;
    std::optional<PumpRuns> runs;  ///< of a timer that counts from a full header

    [[nodiscard]] bool can_hold(TemplateKey key) const { return wetfront::can_hold(timer, key); }
    /// On-times from pump start, whatever the controller counts from.
    [[nodiscard]] const TimerSettings& settings() const;
    /// The base where the header that fills slowest decides; else on_time(). For whether the pump rests.
    [[nodiscard]] std::optional<Duration> base_at_longest_fill() const;

    [[nodiscard]] std::optional<Duration> period() const;
    /// The pump run per period before any trimming; none on a timer on demand.
    [[nodiscard]] std::optional<Duration> on_time() const;
    /// The shortest run that the trim rows can reach, so far as they tell: the base with the row that takes
    /// off most, not below 0. Where a timer takes a row off at every review, runs get shorter still; a record
    /// does not say where that ends.
    [[nodiscard]] std::optional<Duration> shortest_run() const;
    /// The shortest run lies below the base.
    [[nodiscard]] bool can_shorten() const;
    /// A finding's message about the shortest run, which says so where that is not the base.
    [[nodiscard]] Message at_shortest_run(Message message) const;
    /// Its remedy, which takes out the rows that shorten the run where there are any.
    [[nodiscard]] Message without_shortening(Message remedy) const;
    /// The longest run that trimming may reach; only a trimmed timer has one.
    [[nodiscard]] std::optional<Duration> ceiling() const;
    /// The longest run that can be reached: the base, or the ceiling above it where some trim row climbs.
    /// None without a base, or where a row climbs and no ceiling is known.
    [[nodiscard]] std::optional<Duration> longest_run() const;
    /// Some trim row lengthens the on-time, so that it can climb to the ceiling.
    [[nodiscard]] bool can_climb() const;
    /// The pump runs without rest before any trimming: on demand, or an on-time that fills the period.
    [[nodiscard]] bool always_on() const;
    /// From base to ceiling, as both stand on the controller: what trim rows climb through. Below 0 where the
    /// ceiling lies below the base; none where one of the two is not set or the timer is not trimmed.
    [[nodiscard]] std::optional<Duration> trim_room() const;
    /// What is advised for that setting as it is to be entered (settings_to_enter()): as the controller
    /// counts, at a step that it holds. None where no value is advised or it cannot be held.
    [[nodiscard]] std::optional<AnyQuantity> advised(Setting setting) const;
    /// The same of a time where a cycle is advised; none where no cycle is.
    [[nodiscard]] std::optional<Duration> advised_in_cycle(Setting setting) const;
    /// The pump's run behind the base on-time that is advised in a cycle.
    [[nodiscard]] std::optional<Duration> advised_run() const;
    /// No cycle is advised, and not for want of a reading: every bank was looked at and no period fits.
    [[nodiscard]] bool no_cycle_fits() const;
    /// What was worked out for one of its banks; none if nothing was.
    [[nodiscard]] const BankAdvice* advice_for(const PadBank& bank) const;
    /// E_design / E_test of a bank; none where a weather is missing.
    [[nodiscard]] std::optional<double> evaporation_ratio(const PadBank& bank) const;
    [[nodiscard]] Message name(const PadBank& bank) const { return label_of(house, bank); }
    /// Pad hours let pads run in that minute of the day. Hours that end before they begin go past midnight;
    /// where one of the two is not set, or both are the same, they are taken to bar nothing.
    [[nodiscard]] bool pads_may_run_at(int minute) const;
    [[nodiscard]] bool has_pad_hours() const;
    /// What is to be entered for a time so that the pump runs at least that long: for base and ceiling less
    /// the header's filling where the controller counts so; up to a step that it holds, of 1 s where its
    /// steps are not known.
    [[nodiscard]] Duration entry_for(TemplateKey key, Duration run) const;
    /// The pump's run behind such an entry.
    [[nodiscard]] Duration run_behind(TemplateKey key, Duration entry) const;
};

/// The timers of the house for which there are settings, in the house's order.
[[nodiscard]] std::vector<TimerView> timers_with_settings(const RuleInputs& inputs);

/// Limits are met at the limit itself, whatever unit either value was typed in.
[[nodiscard]] bool at_least(Duration value, Duration limit);

/// A finding about a timer, and about one of its banks if given.
[[nodiscard]] Finding finding_on(const TimerView& view, const PadBank* bank, const char* rule,
                                 Severity severity);

/// The remedy of most findings on a cycle: the advised one; running without rest where none fits; else
/// `otherwise`.
[[nodiscard]] Message advised_cycle_or(const TimerView& view, Message otherwise);

}  // namespace wetfront
