// SPDX-License-Identifier: Apache-2.0
#include "rules/single_settings.h"

#include <algorithm>
#include <cmath>

#include "cycle/template_steps.h"
#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

constexpr auto shortest_usual_period = from_si<Duration>(300.0);
constexpr auto longest_usual_period = from_si<Duration>(600.0);

bool is_zero(Duration value) {
    return in_seconds(value) <= 0.0;
}

int times_an_hour(Duration period) {
    return static_cast<int>(std::lround(an_hour / in_seconds(period)));
}

/// The longest fill among the banks of a timer; none where none was timed.
std::optional<Duration> longest_fill(const TimerView& view, const VisitTimings& timings) {
    std::optional<Duration> longest;
    for (const auto* bank : view.banks) {
        const auto* timed = timings.of(bank->id);
        if (timed != nullptr && timed->fill) {
            longest = std::max(longest.value_or(timed->fill->mean), timed->fill->mean);
        }
    }
    return longest;
}

Message zero_message(const TimerView& view) {
    if (!view.can_climb()) {
        return WF_TEXT(
            "The base on-time is 0 s and nothing lengthens it: the pump never runs, and the pads "
            "stay dry however hot it gets.");
    }
    if (view.settings().review_interval) {
        return {WF_TEXT("The base on-time is 0 s: no run begins before trimming makes one, %1 after pads are "
                        "called for at the soonest."),
                {any(view.settings().review_interval->value())}};
    }
    return WF_TEXT("The base on-time is 0 s: no run begins before trimming makes one.");
}

}  // namespace

std::vector<Finding> pump_never_runs(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        if (!view.on_time() || !is_zero(*view.on_time())) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "pump-never-runs", Severity::fault);
        finding.message = zero_message(view);
        finding.remedy = advised_cycle_or(
            view,
            WF_TEXT("Set an on-time above the fill time; how far, the readings named as missing tell."));
        finding.source = common_practice;
        finding.values = {{"base_on_time", any(*view.on_time())}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> ceiling_below_base(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto room = view.trim_room();
        if (!room || at_least(*room, seconds(0.0))) {
            continue;
        }
        const auto base = view.on_controller.base_on_time->value();
        const auto ceiling = view.on_controller.on_time_ceiling->value();
        const auto less = base - ceiling;
        auto finding = finding_on(view, nullptr, "ceiling-below-base", Severity::fault);
        if (view.period() && !is_zero(*view.period())) {
            const auto hourly = less * (an_hour / in_seconds(*view.period()));
            finding.message = {
                WF_TEXT("The on-time ceiling of %1 is below the base of %2: where the timer holds the "
                        "ceiling, pads get %3 less water in every run, %4 in an hour; where it holds the "
                        "base, nothing is ever trimmed."),
                {any(ceiling), any(base), any(less), any(hourly)}};
        } else {
            finding.message = {
                WF_TEXT("The on-time ceiling of %1 is below the base of %2: where the timer holds the "
                        "ceiling, pads get %3 less water in every run; where it holds the base, nothing is "
                        "ever trimmed."),
                {any(ceiling), any(base), any(less)}};
        }
        const auto advised = view.advised_in_cycle(Setting::on_time_ceiling);
        const auto advised_base = view.advised_in_cycle(Setting::base_on_time);
        finding.remedy =
            advised && advised_base
                ? Message{WF_TEXT("Set the base on-time to %1 and the ceiling to %2, as advised."),
                          {any(*advised_base), any(*advised)}}
                : Message{WF_TEXT("Raise the ceiling to the base, %1, or above."),
                          {any(view.entry_for(TemplateKey::on_time_ceiling,
                                              view.run_behind(TemplateKey::on_time_ceiling, base)))}};
        finding.source = "a ceiling is the longest run that trimming may reach: common practice, no source";
        finding.values = {{"base_on_time", any(base)}, {"on_time_ceiling", any(ceiling)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> rest_too_short(const RuleInputs& inputs) {
    const auto least = inputs.advice.margins.least_rest;
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto longest = view.longest_run();
        const auto period = view.period();
        if (!longest || !period || is_zero(*longest) || at_least(*longest, *period) ||
            at_least(*period - *longest, least)) {
            continue;
        }
        const auto rest = *period - *longest;
        const auto saved = rest * (an_hour / in_seconds(*period));
        auto finding = finding_on(view, nullptr, "rest-too-short", Severity::waste);
        finding.message = {
            WF_TEXT("Runs of up to %1 in %2 leave the pump a rest of %3, shorter than %4: it is started %5 "
                    "times an hour to save %6 of pumping, and wears by it."),
            {any(*longest), any(*period), any(rest), any(least), times_an_hour(*period), any(saved)}};
        finding.remedy = advised_cycle_or(
            view, {WF_TEXT("Leave a rest of at least %1, or let the pump run without rest."), {any(least)}});
        finding.source = limit_source(inputs.advice.margins, {Limit::least_rest},
                                      "60 s: assumed; common practice, no source");
        finding.values = {{"period", any(*period)}, {"longest_run", any(*longest)}, {"rest", any(rest)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> period_below_usual(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto period = view.period();
        if (!period || is_zero(*period) || at_least(*period, shortest_usual_period) || view.always_on()) {
            continue;
        }
        const int starts = times_an_hour(*period);
        const int more = starts - times_an_hour(shortest_usual_period);
        if (more <= 0) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "period-below-usual", Severity::waste);
        finding.values = {{"period", any(*period)}};
        if (const auto fill = longest_fill(view, inputs.timings)) {
            const auto filling = *fill * static_cast<double>(more);
            finding.message = {
                WF_TEXT("A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many "
                        "times more the header is filled anew, %5 of pumping that wets no pad."),
                {any(*period), starts, more, any(shortest_usual_period), any(filling)}};
            finding.values.push_back({"filling_per_hour", any(filling)});
        } else {
            finding.message = {
                WF_TEXT("A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many "
                        "times more the header is filled anew, which wets no pad."),
                {any(*period), starts, more, any(shortest_usual_period)}};
        }
        finding.remedy = advised_cycle_or(view, {WF_TEXT("Lengthen the period to between %1 and %2."),
                                                 {any(shortest_usual_period), any(longest_usual_period)}});
        finding.source = "5 to 10 min: common practice, no source";
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> period_above_usual(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto period = view.period();
        const auto on = view.shortest_run();
        if (!period || !on || at_least(longest_usual_period, *period) || at_least(*on, *period)) {
            continue;
        }
        for (const auto* bank : view.banks) {
            const auto* timed = inputs.timings.of(bank->id);
            if (timed != nullptr && (timed->dry_out || (timed->wet_off && timed->wet_return))) {
                continue;
            }
            auto finding = finding_on(view, bank, "period-above-usual", Severity::note);
            finding.message = {
                WF_TEXT("In a period of %1 the pads of %2 are without water for %3; nobody has timed whether "
                        "they stay wet that long."),
                {any(*period), view.name(*bank), any(*period - *on)}};
            finding.remedy = {
                WF_TEXT("Time the dry-out, or a wet start where pads can't be dried; until then a period of "
                        "at most %1."),
                {any(longest_usual_period)}};
            finding.source = "5 to 10 min: common practice, no source";
            finding.values = {{"period", any(*period)}, {"shortest_run", any(*on)}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

namespace {

/// A time that a timer was given, its steps, and the next longer that it can hold.
struct OffStep {
    Setting setting;
    Duration value;
    Duration step;
    Duration next;
};

void add_if_off(std::vector<OffStep>& off, Setting setting, const Optional<Duration>& value,
                const Optional<Duration>& step) {
    if (!value || !step || in_seconds(step->value()) <= 0.0) {
        return;
    }
    const double steps = in_seconds(value->value()) / in_seconds(step->value());
    if (std::abs(steps - std::round(steps)) > 1e-6) {
        off.push_back({setting, value->value(), step->value(), std::ceil(steps) * step->value()});
    }
}

std::vector<OffStep> off_steps_of_timer(const TimerView& view) {
    const auto& timer = view.timer;
    const auto& settings = view.on_controller;
    std::vector<OffStep> off;
    if (timer.kind == TimerKind::on_demand) {
        return off;
    }
    add_if_off(off, Setting::period, settings.period, timer.period_resolution);
    add_if_off(off, Setting::base_on_time, settings.base_on_time, timer.resolution);
    if (timer.kind == TimerKind::trimmed) {
        add_if_off(off, Setting::on_time_ceiling, settings.on_time_ceiling, timer.resolution);
        for (const auto& row : settings.trim_rows) {
            add_if_off(off, Setting::trim_step, row.change, timer.resolution);
        }
        add_if_off(off, Setting::rinse_length, settings.rinse_length, timer.resolution);
    }
    return off;
}

// What lies beyond the first or last step is for setting_not_on_controller().
void add_if_off(std::vector<OffStep>& off, const TemplateSetting& described, Setting setting,
                const AnyQuantity& value) {
    const auto next = step_for(described, value, StepDirection::up);
    if (!next || same_number(described, *next, value) || !step_for(described, value, StepDirection::down)) {
        return;
    }
    off.push_back({setting, seconds(value.si), seconds(to_si(*unit_of(described), *described.resolution)),
                   seconds(quantity_of(described, *next).si)});
}

// The steps of a described controller count from the least that it holds.
std::vector<OffStep> off_steps_of_controller(const TimerView& view, const SettingTemplate& described) {
    std::vector<OffStep> off;
    for (const auto& each : described.settings) {
        const auto setting = setting_of(each.setting);
        if (!setting || kind_of(each.setting) != Kind::duration || is_time_of_day(each.setting)) {
            continue;
        }
        const auto rows =
            each.setting == TemplateKey::trim_change ? view.on_controller.trim_rows.size() : std::size_t{1};
        for (std::size_t row = 0; row < rows; ++row) {
            if (const auto value = held(view.on_controller, each.setting, row)) {
                add_if_off(off, each, *setting, *value);
            }
        }
    }
    return off;
}

}  // namespace

std::vector<Finding> setting_off_resolution(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto* described = described_controller(view.timer);
        const auto off =
            described != nullptr ? off_steps_of_controller(view, *described) : off_steps_of_timer(view);
        for (const auto& [setting, value, step, next] : off) {
            auto finding = finding_on(view, nullptr, "setting-off-resolution", Severity::note);
            finding.message = {
                WF_TEXT("This timer holds steps of %1, so that %2 of %3 is not what runs: one of the two was "
                        "misread, or the timer rounds, by up to %4."),
                {any(step), label_of(setting), any(value), any(step)}};
            finding.remedy = {
                WF_TEXT("Read both again at the timer; to set it, %1 is the next longer it can hold."),
                {any(next)}};
            finding.source = "the timer's own step, as described with the house";
            finding.values = {{std::string{key_of(setting)}, any(value)}, {"step", any(step)}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

std::vector<Finding> rests_against_intent(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto on = view.base_at_longest_fill();
        const auto period = view.period();
        if (!view.settings().continuous_intended.value_or(false) || !on || !period ||
            at_least(*on, *period)) {
            continue;
        }
        const auto rest = (*period - *on) * (an_hour / in_seconds(*period));
        auto finding = finding_on(view, nullptr, "rests-against-intent", Severity::note);
        finding.message = {
            WF_TEXT("The pump is meant to run without rest, but a run of %1 in %2 lets it rest %3 in every "
                    "hour."),
            {any(*on), any(*period), any(rest)}};
        finding.remedy = {
            WF_TEXT(
                "Set the on-time to %1, so that a run lasts the whole period, or take back that it is meant "
                "so."),
            {any(view.entry_for(TemplateKey::base_on_time, *period))}};
        finding.source = "as stated with the settings";
        finding.values = {{"period", any(*period)}, {"base_on_time", any(*on)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
