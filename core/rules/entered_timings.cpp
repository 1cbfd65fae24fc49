// SPDX-License-Identifier: Apache-2.0
#include "rules/entered_timings.h"

#include <algorithm>
#include <cmath>

#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

struct SlowestReading {
    const PadBank* bank;
    TimingResult time;
};

std::optional<SlowestReading> slowest_of(const TimerView& view, const VisitTimings& timings,
                                         std::optional<TimingResult> BankTimings::*which) {
    std::optional<SlowestReading> slowest;
    for (const auto* bank : view.banks) {
        const auto* timed = timings.of(bank->id);
        if (timed != nullptr && timed->*which && (!slowest || (timed->*which)->mean > slowest->time.mean)) {
            slowest = SlowestReading{bank, *(timed->*which)};
        }
    }
    return slowest;
}

/// One of the two timings that controllers ask for.
struct EnteredTiming {
    const char* rule;
    TemplateKey key;
    Message name;
    Optional<Duration> TimerSettings::*entry;
    std::optional<TimingResult> BankTimings::*reading;
};

std::vector<Finding> compared(const RuleInputs& inputs, const EnteredTiming& which) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto& entry = view.settings().*(which.entry);
        const auto slowest = slowest_of(view, inputs.timings, which.reading);
        if (view.timer.kind == TimerKind::on_demand || !entry || !slowest) {
            continue;
        }
        const auto entered = entry->value();
        const auto& read = slowest->time;
        const bool low = !at_least(entered, read.mean - read.expanded);
        if (!low &&
            !clearly_above(in_seconds(entered), 0.0, in_seconds(read.mean), in_seconds(read.expanded))) {
            continue;
        }
        auto finding = finding_on(view, slowest->bank, which.rule, low ? Severity::fault : Severity::waste);
        finding.message =
            low ? Message{WF_TEXT("The controller was told a %1 of %2, but %3 takes %4: every run that it "
                                  "works out from that ends %5 too soon for the far end."),
                          {which.name, any(entered), view.name(*slowest->bank), any(read.mean),
                           any(read.mean - entered)}}
                : Message{WF_TEXT("The controller was told a %1 of %2, but the slowest, %3, takes %4: every "
                                  "run that it works out from that pumps %5 too long."),
                          {which.name, any(entered), view.name(*slowest->bank), any(read.mean),
                           any(entered - read.mean)}};
        finding.remedy = {WF_TEXT("Enter %1, the reading and its uncertainty."),
                          {any(view.entry_for(which.key, read.mean + read.expanded))}};
        finding.source = "common practice, no source; the limit is the reading itself";
        finding.values = {{std::string{enum_name(which.key)}, any(entered)},
                          {"reading", any(read.mean)},
                          {"reading_uncertainty", any(read.expanded)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace

std::vector<Finding> entered_fill_differs(const RuleInputs& inputs) {
    return compared(inputs, {"entered-fill-differs", TemplateKey::entered_fill, WF_TEXT("fill time"),
                             &TimerSettings::entered_fill, &BankTimings::fill});
}

std::vector<Finding> entered_wet_through_differs(const RuleInputs& inputs) {
    return compared(
        inputs, {"entered-wet-through-differs", TemplateKey::entered_wet_through, WF_TEXT("wet-through time"),
                 &TimerSettings::entered_wet_through, &BankTimings::wet_through});
}

namespace {

/// The on-times that a timer can show, by what it holds; all three as the controller counts.
struct Reach {
    Duration base;
    Duration least;
    Duration most;
};

std::optional<Reach> reach_of(const TimerView& view) {
    if (view.timer.kind == TimerKind::on_demand || !view.on_controller.base_on_time) {
        return std::nullopt;
    }
    const auto base = view.on_controller.base_on_time->value();
    Reach reach{base, base, base};
    if (view.timer.kind == TimerKind::trimmed &&
        std::ranges::any_of(view.on_controller.trim_rows, [](const TrimRow& row) {
            return row.change && in_seconds(row.change->value()) < 0.0;
        })) {
        reach.least = seconds(0.0);  // such rows take time off at every review again
    }
    if (view.can_climb()) {
        const auto room = view.trim_room();
        if (!room) {
            return std::nullopt;
        }
        reach.most = base + std::max(seconds(0.0), *room);
    }
    return reach;
}

std::vector<LikelyCause> causes_of_other_on_time(const TimerView& view, const VisitTimings& timings,
                                                 Duration above_base) {
    LikelyCause another{WF_TEXT("Another setting or an earlier trim changes the on-time."),
                        WF_TEXT("Go through every page of the controller that speaks of pads; let one review "
                                "pass and read it again.")};
    LikelyCause full_header{
        WF_TEXT("The on-time counts from a full header, and what is shown is the whole run."),
        WF_TEXT("Time one run from pump start to pump stop.")};
    const auto fill = slowest_of(view, timings, &BankTimings::fill);
    const bool by_a_fill =
        fill && std::abs(in_seconds(above_base - fill->time.mean)) <= in_seconds(fill->time.expanded) + 1.0;
    if (counts_from_full_header(view.timer)) {
        return {another};
    }
    return by_a_fill ? std::vector{full_header, another} : std::vector{another, full_header};
}

}  // namespace

std::vector<Finding> shown_on_time_differs(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto& entry = view.on_controller.shown_on_time;
        const auto reach = reach_of(view);
        if (!entry || !reach) {
            continue;
        }
        const auto shown = entry->value();
        const auto step = view.timer.resolution ? view.timer.resolution->value() : seconds(1.0);
        const bool low = !at_least(shown + step, reach->least);
        if (!low && at_least(reach->most + step, shown)) {
            continue;
        }
        const auto off = low ? reach->least - shown : shown - reach->most;
        auto finding = finding_on(view, nullptr, "shown-on-time-differs", Severity::fault);
        finding.values = {{"shown_on_time", any(shown)},
                          {low ? "base_on_time" : "longest_run", any(low ? reach->least : reach->most)},
                          {"off_by", any(off)}};
        const Message what =
            low ? Message{WF_TEXT("The timer shows an on-time of %1 now, but its settings allow no less than "
                                  "%2: pads get %3 less in every run than is set"),
                          {any(shown), any(reach->least), any(off)}}
                : Message{WF_TEXT("The timer shows an on-time of %1 now, but its settings allow no more than "
                                  "%2: it runs %3 longer in every period than is set"),
                          {any(shown), any(reach->most), any(off)}};
        if (const auto period = view.period(); period && in_seconds(*period) > 0.0) {
            const auto hourly = off * (an_hour / in_seconds(*period));
            finding.message = {WF_TEXT("%1, %2 in an hour."), {what, any(hourly)}};
            finding.values.push_back({"off_by_per_hour", any(hourly)});
        } else {
            finding.message = {WF_TEXT("%1."), {what}};
        }
        finding.remedy = WF_TEXT("Find out what sets the run before anything else is changed.");
        finding.source = "common practice, no source; the limits are the settings themselves";
        finding.causes = causes_of_other_on_time(view, inputs.timings, shown - reach->base);
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> on_times_without_fill(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        if (!view.runs || !view.runs->fill_missing || view.timer.kind == TimerKind::on_demand) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "on-times-without-fill", Severity::note);
        finding.message = WF_TEXT(
            "This controller counts its on-times from a full header, and no fill time is known: how "
            "long the pump runs, and so whether the pads get enough, is not judged.");
        finding.remedy = WF_TEXT("Time the fill of every bank on this timer.");
        finding.source = "as the controller is described";
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
