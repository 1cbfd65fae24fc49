// SPDX-License-Identifier: Apache-2.0
#include "rules/rinse_rules.h"

#include <algorithm>
#include <cmath>

#include "rules/design_clock.h"
#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

std::vector<TimerView> timers_that_rinse(const RuleInputs& inputs) {
    std::vector<TimerView> views;
    for (const auto& view : timers_with_settings(inputs)) {
        if (view.can_hold(TemplateKey::rinse_length)) {
            views.push_back(view);
        }
    }
    return views;
}

/// The time of day at which a timer rinses.
std::optional<TimeOfDay> rinses_at(const TimerView& view) {
    return view.can_hold(TemplateKey::rinse_at) ? view.settings().rinse_at : std::nullopt;
}

struct FromDry {
    const PadBank* bank;
    Duration takes;
};

std::optional<FromDry> slowest_from_dry(const TimerView& view, const VisitTimings& timings) {
    std::optional<FromDry> slowest;
    for (const auto* bank : view.banks) {
        const auto* timed = timings.of(bank->id);
        const auto* advice = view.advice_for(*bank);
        std::optional<Duration> takes;
        if (advice != nullptr && advice->rinse) {
            takes = advice->rinse->wet_through;
        } else if (timed != nullptr && timed->wet_through) {
            takes = timed->wet_through->mean;
        }
        if (takes && (!slowest || *takes > slowest->takes)) {
            slowest = FromDry{bank, *takes};
        }
    }
    return slowest;
}

}  // namespace

std::vector<Finding> rinse_below_wet_through(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_rinse(inputs)) {
        const auto& length = view.settings().rinse_length;
        const auto slowest = slowest_from_dry(view, inputs.timings);
        if (!length || !slowest || view.always_on() || at_least(length->value(), slowest->takes) ||
            (in_seconds(length->value()) <= 0.0 && !rinses_at(view))) {
            continue;
        }
        auto finding = finding_on(view, slowest->bank, "rinse-below-wet-through", Severity::waste);
        finding.message = {
            WF_TEXT("The rinse of %1 ends %2 before the far end of %3, which takes %4 from dry with the fans "
                    "on, would drip: what it should wash out stays there."),
            {any(length->value()), any(slowest->takes - length->value()), view.name(*slowest->bank),
             any(slowest->takes)}};
        const auto enough = view.entry_for(TemplateKey::rinse_length, slowest->takes);
        const auto advised = view.advised_in_cycle(Setting::rinse_length);
        finding.remedy = {WF_TEXT("Rinse for at least %1."),
                          {any(std::max(enough, advised.value_or(enough)))}};
        finding.source =
            "wetting column with this bank's own readings; about 5 min: common practice, no "
            "source";
        finding.values = {{"rinse_length", any(length->value())}, {"from_dry", any(slowest->takes)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> rinse_outside_pad_hours(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_rinse(inputs)) {
        const auto at = rinses_at(view);
        if (!at || !view.has_pad_hours() || view.pads_may_run_at(at->minutes)) {
            continue;
        }
        const int wait =
            (view.settings().pad_hours_from->minutes - at->minutes + minutes_of_day) % minutes_of_day;
        const auto waits = seconds(60.0 * wait);
        auto finding = finding_on(view, nullptr, "rinse-outside-pad-hours", Severity::waste);
        finding.message = {
            WF_TEXT("The rinse at %1 lies outside the pad hours, %2 before they begin at %3: it is left out, "
                    "or the pads are dry again when they are needed."),
            {at->since_midnight(), any(waits), view.settings().pad_hours_from->since_midnight()}};
        finding.remedy = {WF_TEXT("Rinse when pad hours begin, at %1."),
                          {view.settings().pad_hours_from->since_midnight()}};
        finding.source = common_practice;
        finding.values = {{"rinse_at", at->since_midnight()},
                          {"pad_hours_from", view.settings().pad_hours_from->since_midnight()},
                          {"before_pad_hours", any(waits)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> rinse_before_heat(const RuleInputs& inputs) {
    const auto& day = inputs.advice.weather.day;
    std::vector<Finding> findings;
    if (!day) {
        return findings;
    }
    for (const auto& view : timers_that_rinse(inputs)) {
        const auto at = rinses_at(view);
        const auto& start = view.settings().start_temperature;
        if (!at || !start || !view.can_hold(TemplateKey::start_temperature)) {
            continue;
        }
        const auto outside = air_at(*day, at->minutes, view.margins).dry_bulb;
        const TemperatureDifference below = start->value() - outside;
        if (in_si(below) <= 0.0) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "rinse-before-heat", Severity::waste);
        finding.message = {
            WF_TEXT("At %1, when the rinse runs, it is %2 outside even on the design day, %3 below the start "
                    "temperature: the house is chilled, and the pads dry off before they are called for."),
            {at->since_midnight(), any(outside), any(below)}};
        finding.remedy = WF_TEXT(
            "Rinse at the first call for pads, or at the hour from which the design day is warm "
            "enough.");
        finding.source = design_clock_source(view.margins);
        finding.values = {
            {"rinse_at", at->since_midnight()}, {"outside", any(outside)}, {"below", any(below)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> rinse_on_young_birds(const RuleInputs& inputs) {
    const auto& age = inputs.file.visit.conditions.bird_age_days;
    const double older = inputs.advice.margins.older_birds_days;
    std::vector<Finding> findings;
    if (!age || *age >= older) {
        return findings;
    }
    for (const auto& view : timers_that_rinse(inputs)) {
        const auto at = rinses_at(view);
        const auto& length = view.settings().rinse_length;
        if (!at || !length || in_seconds(length->value()) <= 0.0) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "rinse-on-young-birds",
                                  *age < age_of_chicks_days ? Severity::harm : Severity::fault);
        finding.message = {
            WF_TEXT("Every day at %1 pads are wetted for %2, whatever the temperature, with birds of %3 "
                    "days: wet, moving air chills birds younger than %4 days."),
            {at->since_midnight(), any(length->value()), static_cast<int>(std::floor(*age)),
             static_cast<int>(std::lround(older))}};
        finding.remedy = {WF_TEXT("Switch the rinse off until the birds are %1 days old."),
                          {static_cast<int>(std::lround(older))}};
        finding.source = limit_source(view.margins, {Limit::older_birds}, common_practice);
        finding.values = {{"rinse_length", any(length->value())}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
