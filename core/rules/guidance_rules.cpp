// SPDX-License-Identifier: Apache-2.0
#include "rules/guidance_rules.h"

#include <algorithm>
#include <cmath>

#include "cycle/pad_hours.h"
#include "pad/measured_pad.h"
#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

constexpr const char* start_source =
    "low to mid 80s degF with older birds: Univ. of Georgia, night-time pad operation, 2011; 28 days: common "
    "practice, no source";

// "Not in the 70s", which lies a third of a degree below the band that advice keeps to, unless another band
// was chosen for the farm.
Temperature coolest_start(const CycleMargins& margins) {
    constexpr auto published = from_si<Temperature>((80.0 + 459.67) * 5.0 / 9.0);
    return is_changed(margins, Limit::start_band) ? margins.coolest_start : published;
}

std::vector<TimerView> timers_with_start_for_older_birds(const RuleInputs& inputs) {
    const auto& age = inputs.file.visit.conditions.bird_age_days;
    if (!age || *age < inputs.advice.margins.older_birds_days) {
        return {};
    }
    std::vector<TimerView> views;
    for (const auto& view : timers_with_settings(inputs)) {
        if (view.can_hold(TemplateKey::start_temperature) && view.settings().start_temperature) {
            views.push_back(view);
        }
    }
    return views;
}

Finding start_finding(const TimerView& view, const char* rule, Severity severity,
                      TemperatureDifference beyond) {
    auto finding = finding_on(view, nullptr, rule, severity);
    finding.remedy = {WF_TEXT("Set it to between %1 and %2, with all tunnel fans on before."),
                      {any(view.margins.coolest_start), any(view.margins.warmest_start)}};
    finding.source = limit_source(view.margins, {Limit::start_band, Limit::older_birds}, start_source);
    finding.values = {{"start_temperature", any(view.settings().start_temperature->value())},
                      {"beyond", any(beyond)}};
    return finding;
}

}  // namespace

std::vector<Finding> start_temperature_low(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_start_for_older_birds(inputs)) {
        const auto coolest = coolest_start(view.margins);
        const TemperatureDifference below = coolest - view.settings().start_temperature->value();
        if (in_si(below) <= rounding) {
            continue;
        }
        auto finding = start_finding(view, "start-temperature-low", Severity::waste, below);
        finding.message = {
            WF_TEXT("Pads may start at %1, %2 below the %3 from which older birds need them: air is wetted "
                    "where moving it would do, litter gets damp, and water is used for little."),
            {any(view.settings().start_temperature->value()), any(below), any(coolest)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> start_temperature_high(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto warmest_start = inputs.advice.margins.warmest_start;
    for (const auto& view : timers_with_start_for_older_birds(inputs)) {
        const TemperatureDifference above = view.settings().start_temperature->value() - warmest_start;
        if (in_si(above) <= rounding) {
            continue;
        }
        auto finding = start_finding(view, "start-temperature-high", Severity::fault, above);
        finding.message = {WF_TEXT("Pads wait until the house is at %1, %2 above the %3 by which birds of %4 "
                                   "days need them: they stand that much hotter before any cooling begins."),
                           {any(view.settings().start_temperature->value()), any(above), any(warmest_start),
                            static_cast<int>(std::lround(*inputs.file.visit.conditions.bird_age_days))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> air_speed_below_500(const RuleInputs& inputs) {
    const auto& margins = inputs.advice.margins;
    const auto least = margins.least_air_speed;
    const auto& house = inputs.file.house;
    const auto& age = inputs.file.visit.conditions.bird_age_days;
    if (!house.fan_airflow || !house.cross_section || in_si(house.cross_section->value()) <= 0.0 ||
        (age && *age < margins.older_birds_days)) {
        return {};
    }
    const Velocity speed = house.fan_airflow->value() / house.cross_section->value();
    if (speed >= least * (1.0 - 1e-9)) {
        return {};
    }
    const VolumeFlow missing = (least - speed) * house.cross_section->value();
    auto finding = finding_about(nullptr, "air-speed-below-500", Severity::note);
    finding.message = {
        WF_TEXT(
            "With all fans that run with the pads, air goes down the house at %1, below the %2 that older "
            "birds should have before pads are used: %3 is missing."),
        {any(speed), any(least), any(missing, Scale::coarse)}};
    finding.remedy = WF_TEXT(
        "Raise the air speed first: belts, shutters and blades clean, every fan running, leaks of the house "
        "closed; then more fans. Guards stay on.");
    finding.source =
        limit_source(margins, {Limit::air_speed}, "Czarick, Fairchild, Leu, Univ. of Georgia, 2019");
    finding.values = {{"air_speed", any(speed)}, {"least", any(least)}, {"missing_airflow", any(missing)}};
    return {finding};
}

namespace {

constexpr const char* least_cooling_source =
    "2.0 K (3.6 degF) at the start temperature, worked out from effectiveness and wet bulb; under 3 degF "
    "above "
    "80 %: Univ. of Georgia";

/// What a timer's pads do at their start temperature.
struct CutOff {
    TimerView view;
    Temperature start;
    Fraction humidity;
    AbsolutePressure pressure;
    double best = 0.0;  ///< effectiveness of its banks
    double worst = 1.0;
    double best_upper = 0.0;  ///< with their uncertainty
    double worst_lower = 1.0;

    /// Wet-bulb depression, K, at the start temperature and that humidity; none out of the air's range.
    [[nodiscard]] std::optional<double> depression(double relative_humidity) const {
        const auto air = air_from_humidity(start, from_si<Fraction>(relative_humidity), pressure);
        return air ? std::optional{in_kelvin(air.value().dry_bulb) - in_kelvin(air.value().wet_bulb)}
                   : std::nullopt;
    }
    /// K; what is worth the damp.
    [[nodiscard]] double least_cooling() const { return in_si(view.margins.least_cooling); }
    /// Humidity, rounded down to its step, up to which pads of that effectiveness cool by that much.
    [[nodiscard]] std::optional<Fraction> serving(double effectiveness) const {
        const auto humidity =
            serving_humidity(start, from_si<Fraction>(effectiveness), pressure, view.margins);
        return humidity ? std::optional{rounded_down(humidity.value(), view.margins.humidity_step)}
                        : std::nullopt;
    }
};

bool senses_outside_only(const House& house) {
    bool outside = false;
    for (const auto& sensor : house.sensors) {
        if (sensor.kind == SensorKind::humidity) {
            if (sensor.place != SensorPlace::outside) {
                return false;
            }
            outside = true;
        }
    }
    return outside;
}

AbsolutePressure pressure_of(const VisitWeather& weather) {
    if (weather.test) {
        return weather.test->pressure;
    }
    return weather.design ? weather.design->pressure : from_si<AbsolutePressure>(101325.0);
}

std::optional<CutOff> cut_off_of(const RuleInputs& inputs, const TimerView& view) {
    if (!view.can_hold(TemplateKey::start_temperature) || !view.settings().start_temperature ||
        !view.can_hold(TemplateKey::humidity_cut_off) || !view.settings().humidity_cut_off ||
        view.banks.empty()) {
        return std::nullopt;
    }
    CutOff cut_off{view, view.settings().start_temperature->value(),
                   view.settings().humidity_cut_off->value(), pressure_of(inputs.advice.weather)};
    for (const auto* bank : view.banks) {
        const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, *bank);
        if (pad.origin == Origin::assumed || in_si(pad.value) <= 0.0) {
            return std::nullopt;
        }
        const double e = in_si(pad.value);
        const double expanded = pad.origin == Origin::measured && pad.measured
                                    ? in_si(pad.measured->expanded)
                                    : 2.0 * in_si(assumed_polynomial_uncertainty);
        cut_off.best = std::max(cut_off.best, e);
        cut_off.worst = std::min(cut_off.worst, e);
        cut_off.best_upper = std::max(cut_off.best_upper, std::min(1.0, e + expanded));
        cut_off.worst_lower = std::min(cut_off.worst_lower, e - expanded);
    }
    return cut_off;
}

std::vector<CutOff> cut_offs(const RuleInputs& inputs) {
    std::vector<CutOff> list;
    if (senses_outside_only(inputs.file.house)) {
        for (const auto& view : timers_with_settings(inputs)) {
            if (const auto cut_off = cut_off_of(inputs, view)) {
                list.push_back(*cut_off);
            }
        }
    }
    return list;
}

Finding cut_off_finding(const CutOff& cut_off, const char* rule, Severity severity, double cooling,
                        Fraction serving) {
    auto finding = finding_on(cut_off.view, nullptr, rule, severity);
    finding.remedy = {WF_TEXT("Set the humidity cut-off to %1."), {any(serving)}};
    finding.source = limit_source(cut_off.view.margins, {Limit::least_cooling}, least_cooling_source);
    finding.values = {{"humidity_cut_off", any(cut_off.humidity)},
                      {"start_temperature", any(cut_off.start)},
                      {"cooling_at_cut_off", any(from_si<TemperatureDifference>(cooling))},
                      {"serving_cut_off", any(serving)}};
    return finding;
}

}  // namespace

std::vector<Finding> humidity_cut_off_useless(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& cut_off : cut_offs(inputs)) {
        const auto depression = cut_off.depression(in_si(cut_off.humidity));
        const auto serving = cut_off.serving(cut_off.best);
        if (!depression || !serving || cut_off.best_upper * *depression >= cut_off.least_cooling()) {
            continue;
        }
        const double cooling = cut_off.best * *depression;
        auto finding =
            cut_off_finding(cut_off, "humidity-cut-off-useless", Severity::waste, cooling, *serving);
        finding.message = {
            WF_TEXT("Pads may run up to %1 humidity outside, but at %2 they cool by only %3 there: the house "
                    "gets damp for next to nothing."),
            {any(cut_off.humidity), any(cut_off.start), any(from_si<TemperatureDifference>(cooling))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> humidity_cut_off_early(const RuleInputs& inputs) {
    constexpr double ten_points = 0.10;
    std::vector<Finding> findings;
    for (const auto& cut_off : cut_offs(inputs)) {
        const double above = in_si(cut_off.humidity) + ten_points;
        const auto depression = cut_off.depression(in_si(cut_off.humidity));
        const auto depression_above = cut_off.depression(above);
        const auto serving = cut_off.serving(cut_off.worst);
        if (!depression || !depression_above || !serving ||
            cut_off.worst_lower * *depression_above < cut_off.least_cooling()) {
            continue;
        }
        const double cooling = cut_off.worst * *depression;
        auto finding = cut_off_finding(cut_off, "humidity-cut-off-early", Severity::note, cooling, *serving);
        finding.message = {
            WF_TEXT(
                "Pads stop at %1 humidity outside, where at %2 they still cool by %3: that much cooling is "
                "lost although it is there."),
            {any(cut_off.humidity), any(cut_off.start), any(from_si<TemperatureDifference>(cooling))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
