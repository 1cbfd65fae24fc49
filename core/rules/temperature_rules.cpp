// SPDX-License-Identifier: Apache-2.0
#include "rules/temperature_rules.h"

#include <cmath>

#include "pad/wet_pad.h"
#include "rules/design_clock.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

std::vector<TimerView> timers_with_start(const RuleInputs& inputs) {
    std::vector<TimerView> views;
    for (const auto& view : timers_with_settings(inputs)) {
        if (view.can_hold(TemplateKey::start_temperature) && view.settings().start_temperature) {
            views.push_back(view);
        }
    }
    return views;
}

}  // namespace

std::vector<Finding> lowest_temperature_above_start(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_start(inputs)) {
        const auto& lowest = view.settings().lowest_house_temperature;
        if (!lowest || !view.can_hold(TemplateKey::lowest_house_temperature)) {
            continue;
        }
        const auto start = view.settings().start_temperature->value();
        const TemperatureDifference above = lowest->value() - start;
        if (in_si(above) < -rounding) {
            continue;
        }
        const bool delays = in_si(above) > rounding;
        auto finding = finding_on(view, nullptr, "lowest-temperature-above-start",
                                  delays ? Severity::fault : Severity::note);
        finding.message =
            delays
                ? Message{WF_TEXT("Below the lowest house temperature of %1 the pads are off, so that they "
                                  "never start at %2 as set: birds wait another %3."),
                          {any(lowest->value()), any(start), any(above)}}
                : Message{WF_TEXT("Start and lowest house temperature are both %1: pads go off as soon as "
                                  "they cool, and on and off again with every tenth of a degree."),
                          {any(start)}};
        finding.remedy = {WF_TEXT("Set the lowest house temperature below the start temperature of %1, by as "
                                  "much as the grower wants the pads to hold."),
                          {any(start)}};
        finding.source = "strictly below it pads are off: common practice, no source";
        finding.values = {{"lowest_house_temperature", any(lowest->value())},
                          {"start_temperature", any(start)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> start_below_target(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_start(inputs)) {
        if (!view.settings().target || !view.can_hold(TemplateKey::target)) {
            continue;
        }
        const auto start = view.settings().start_temperature->value();
        const auto target = view.settings().target->value();
        const TemperatureDifference below = target - start;
        if (in_si(below) <= rounding) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "start-below-target", Severity::waste);
        finding.message = {
            WF_TEXT("Pads may start at %1, %2 below the target of %3: they wet and cool a house that the "
                    "controller is still warming."),
            {any(start), any(below), any(target)}};
        finding.remedy = WF_TEXT(
            "Set the start temperature above the target, high enough for all tunnel fans to be on first.");
        finding.source = common_practice;
        finding.values = {{"start_temperature", any(start)}, {"target", any(target)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

/// What comes through the best pad when pads start, with the water that air holds at the design hour, else at
/// the readings.
std::optional<Temperature> air_at_start(const RuleInputs& inputs, const TimerView& view) {
    const auto& weather = inputs.advice.weather;
    const auto& air = weather.design ? weather.design : weather.test;
    const auto pad = best_pad(inputs, view);
    if (!air || !pad) {
        return std::nullopt;
    }
    const auto at_start = air_from_humidity_ratio(view.settings().start_temperature->value(),
                                                  air->humidity_ratio, air->pressure);
    if (!at_start) {
        return std::nullopt;
    }
    const auto behind = air_behind_pad(at_start.value(), *pad);
    return behind ? std::optional{behind.value().dry_bulb} : std::nullopt;
}

}  // namespace

std::vector<Finding> pads_chill_young_birds(const RuleInputs& inputs) {
    const auto& margins = inputs.advice.margins;
    const auto& age = inputs.file.visit.conditions.bird_age_days;
    std::vector<Finding> findings;
    if (!age || *age >= margins.older_birds_days) {
        return findings;
    }
    for (const auto& view : timers_with_start(inputs)) {
        const auto start = view.settings().start_temperature->value();
        if (in_kelvin(start) > in_kelvin(margins.warmest_start) + rounding) {
            continue;
        }
        const auto days = static_cast<int>(std::floor(*age));
        auto finding = finding_on(view, nullptr, "pads-chill-young-birds",
                                  *age < age_of_chicks_days ? Severity::harm : Severity::note);
        finding.values = {{"start_temperature", any(start)}};
        if (const auto comes_in = air_at_start(inputs, view)) {
            finding.message = {WF_TEXT("Pads may start at %1 with birds of %2 days: air then comes in at %3, "
                                       "wet and fast, and chills them."),
                               {any(start), days, any(*comes_in)}};
            finding.values.push_back({"air_behind_pad", any(*comes_in)});
        } else {
            finding.message = {WF_TEXT("Pads may start at %1 with birds of %2 days: air comes in wet and "
                                       "fast, and chills them."),
                               {any(start), days}};
        }
        finding.remedy = {
            WF_TEXT("Leave the pads off but against heat, and agree with the grower from which house "
                    "temperature on, above %1, that is; from %2 days on the published start holds."),
            {any(margins.warmest_start), static_cast<int>(std::lround(margins.older_birds_days))}};
        finding.source =
            limit_source(margins, {Limit::start_band, Limit::older_birds},
                         "published starts are for older birds: Univ. of Georgia, night-time pad operation, "
                         "2011; 14 and 28 days: common practice, no source");
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
