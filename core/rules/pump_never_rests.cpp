// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "rules/design_clock.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

/// What the advised cycle would save in an hour against a pump that never rests.
struct Saving {
    Duration run;
    Duration base;  ///< on-time to be entered for that run
    Duration period;
    Duration pumping;              ///< less in every hour
    std::optional<Volume> pumped;  ///< less in every hour; none unless the flow of every pump was measured
    std::optional<Duration> called_for;  ///< on the design day; none where that is not known
};

std::optional<VolumeFlow> measured_flow(const TimerView& view, const VisitWater& water) {
    VolumeFlow total = from_si<VolumeFlow>(0.0);
    for (const auto& id : view.timer.pumps) {
        const auto* pump = water.pump(id);
        const auto flow = pump != nullptr ? pump->measured() : std::nullopt;
        if (!flow) {
            return std::nullopt;
        }
        total += *flow;
    }
    return view.timer.pumps.empty() ? std::nullopt : std::optional{total};
}

std::optional<Saving> saving_of_cycle(const RuleInputs& inputs, const TimerView& view) {
    const auto period = view.advised_in_cycle(Setting::period);
    const auto base = view.advised_in_cycle(Setting::base_on_time);
    const auto run = view.advised_run();
    if (!period || !base || !run || at_least(*run, *period)) {
        return std::nullopt;
    }
    Saving saving{*run,    *base,
                  *period, seconds(an_hour * (1.0 - in_seconds(*run) / in_seconds(*period))),
                  {},      called_for(inputs, view)};
    if (const auto flow = measured_flow(view, inputs.advice.water)) {
        saving.pumped = *flow * saving.pumping;
    }
    return saving;
}

/// Running without rest is intended, is all that this timer can do, or is what the advice comes to.
bool nothing_to_change(const TimerView& view) {
    const auto& intended = view.settings().continuous_intended;
    const bool only_way = view.timer.kind == TimerKind::on_demand && !intended;
    return intended.value_or(false) || only_way || view.no_cycle_fits();
}

Severity severity_of(const TimerView& view, const std::optional<Saving>& saving) {
    if (nothing_to_change(view)) {
        return Severity::note;
    }
    if (view.settings().continuous_intended) {
        return Severity::fault;
    }
    return saving ? Severity::waste : Severity::note;
}

Message cause(const TimerView& view) {
    if (view.timer.kind == TimerKind::on_demand) {
        return WF_TEXT("The pump runs for as long as pads are called for and never rests");
    }
    if (view.always_on()) {
        return {WF_TEXT("A run of %1 fills the whole period of %2, so the pump never rests"),
                {any(*view.base_at_longest_fill()), any(*view.period())}};
    }
    return {
        WF_TEXT("Trimming can lengthen a run to %1 in a period of %2, and from then on the pump never rests"),
        {any(*view.ceiling()), any(*view.period())}};
}

Message saved_in_an_hour(const Saving& saving) {
    if (saving.pumped) {
        return {
            WF_TEXT("a cycle of %1 in %2 cools the same with %3 less pumping in every hour, %4 of water"),
            {any(saving.run), any(saving.period), any(saving.pumping, Scale::coarse), any(*saving.pumped)}};
    }
    return {WF_TEXT("a cycle of %1 in %2 cools the same with %3 less pumping in every hour"),
            {any(saving.run), any(saving.period), any(saving.pumping, Scale::coarse)}};
}

Message what_a_cycle_saves(const Saving& saving) {
    if (!saving.called_for) {
        return saved_in_an_hour(saving);
    }
    const auto pumping = any(to_the_minute(in_a_day(saving.pumping, *saving.called_for)));
    if (saving.pumped) {
        return {WF_TEXT("%1; on the design day, with pads called for during %2, up to %3 less pumping and %4 "
                        "less water"),
                {saved_in_an_hour(saving), any(*saving.called_for), pumping,
                 any(in_a_day(*saving.pumped, *saving.called_for))}};
    }
    return {WF_TEXT("%1; on the design day, with pads called for during %2, up to %3 less pumping"),
            {saved_in_an_hour(saving), any(*saving.called_for), pumping}};
}

Message consequence(const TimerView& view, const std::optional<Saving>& saving) {
    if (view.settings().continuous_intended.value_or(false)) {
        return WF_TEXT("that is what is wanted here");
    }
    if (view.timer.kind == TimerKind::on_demand) {
        return view.settings().continuous_intended ? Message{WF_TEXT("a cycle was wanted here")}
                                                   : Message{WF_TEXT("no cycle would cool better")};
    }
    if (view.no_cycle_fits()) {
        return WF_TEXT("no cycle keeps these pads wet, and running without rest is what is advised");
    }
    if (saving) {
        return what_a_cycle_saves(*saving);
    }
    if (view.settings().continuous_intended) {
        return WF_TEXT("a cycle was wanted here");
    }
    return WF_TEXT("whether a cycle cools the same is not known, because readings are missing");
}

Message remedy(const TimerView& view, Severity severity, const std::optional<Saving>& saving) {
    if (severity == Severity::note) {
        return nothing_to_change(view)
                   ? Message{WF_TEXT("Nothing to change.")}
                   : Message{WF_TEXT("Take the readings that the advice names as missing.")};
    }
    if (view.timer.kind == TimerKind::on_demand) {
        return WF_TEXT("Use a timer that holds an on-time and a period.");
    }
    if (!saving) {
        return WF_TEXT(
            "Bring every on-time below the period; how far, the readings named as missing will tell.");
    }
    if (const auto ceiling = view.advised_in_cycle(Setting::on_time_ceiling);
        ceiling && view.timer.kind == TimerKind::trimmed) {
        return {WF_TEXT("Set the base on-time to %1, the on-time ceiling to %2 and the period to %3."),
                {any(saving->base), any(*ceiling), any(saving->period)}};
    }
    return {WF_TEXT("Set the on-time to %1 and the period to %2."), {any(saving->base), any(saving->period)}};
}

std::vector<NamedValue> values(const TimerView& view, const std::optional<Saving>& saving) {
    std::vector<NamedValue> values;
    if (view.period() && view.on_time()) {
        values.push_back({"period", any(*view.period())});
        values.push_back({"base_on_time", any(*view.base_at_longest_fill())});
        if (view.ceiling()) {
            values.push_back({"on_time_ceiling", any(*view.ceiling())});
        }
    }
    if (saving) {
        values.push_back({"pumping_saved_per_hour", any(saving->pumping)});
        if (saving->pumped) {
            values.push_back({"water_not_pumped_per_hour", any(*saving->pumped)});
        }
        if (saving->called_for) {
            values.push_back({"called_for_per_day", any(*saving->called_for)});
            values.push_back({"pumping_saved_per_day", any(in_a_day(saving->pumping, *saving->called_for))});
            if (saving->pumped) {
                values.push_back(
                    {"water_not_pumped_per_day", any(in_a_day(*saving->pumped, *saving->called_for))});
            }
        }
    }
    return values;
}

bool never_rests(const TimerView& view) {
    if (view.always_on()) {
        return true;
    }
    return view.period() && view.on_time() && view.can_climb() && view.ceiling() &&
           at_least(*view.ceiling(), *view.period());
}

}  // namespace

std::vector<Finding> pump_never_rests(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        if (!never_rests(view)) {
            continue;
        }
        const auto saving = saving_of_cycle(inputs, view);
        const auto severity = severity_of(view, saving);
        auto finding = finding_on(view, nullptr, "pump-never-rests", severity);
        finding.message = {WF_TEXT("%1; %2."), {cause(view), consequence(view, saving)}};
        finding.remedy = remedy(view, severity, saving);
        finding.source =
            "Continuous pumping is the reference: University of Georgia, Poultry Housing Tips 21(7) 2009 and "
            "34(10) 2022; "
            "the limit is the period itself";
        finding.values = values(view, saving);
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
