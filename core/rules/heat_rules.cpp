// SPDX-License-Identifier: Apache-2.0
#include "rules/heat_rules.h"

#include <algorithm>

#include "pad/wet_pad.h"
#include "rules/design_clock.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

const char* const cut_off_source =
    "35 degC: assumed; a cut-off there costs birds: common practice, no source";
constexpr auto warms_up_in_house = from_si<TemperatureDifference>(3.0);
constexpr auto air_alone_heats = from_si<Temperature>((100.0 + 459.67) * 5.0 / 9.0);

struct HumiditySensors {
    bool outside = false;
    bool in_house = false;
    bool behind_pad = false;

    [[nodiscard]] bool inside() const { return in_house || behind_pad; }
    [[nodiscard]] bool only_outside() const { return outside && !inside(); }
};

HumiditySensors humidity_sensors_of(const House& house) {
    HumiditySensors sensors;
    for (const auto& sensor : house.sensors) {
        if (sensor.kind != SensorKind::humidity) {
            continue;
        }
        switch (sensor.place) {
            case SensorPlace::outside:
                sensors.outside = true;
                break;
            case SensorPlace::in_house:
                sensors.in_house = true;
                break;
            case SensorPlace::behind_pad:
                sensors.behind_pad = true;
                break;
        }
    }
    return sensors;
}

std::vector<TimerView> timers_with_cut_off(const RuleInputs& inputs) {
    std::vector<TimerView> views;
    for (const auto& view : timers_with_settings(inputs)) {
        if (view.can_hold(TemplateKey::humidity_cut_off) && view.settings().humidity_cut_off) {
            views.push_back(view);
        }
    }
    return views;
}

Finding stops_in_heat(const TimerView& view, Temperature outside, Fraction humidity, Message message) {
    auto finding = finding_on(view, nullptr, "cut-off-stops-pads-in-heat", Severity::harm);
    finding.message = std::move(message);
    const auto advised = view.advised(Setting::humidity_cut_off);
    finding.remedy =
        advised && advised->si >= in_si(humidity)
            ? Message{WF_TEXT("Set the humidity cut-off to %1, as advised."), {*advised}}
            : Message{
                  WF_TEXT("Raise the humidity cut-off above %1, or leave it off: in such heat no humidity "
                          "may stop the pads."),
                  {any(humidity)}};
    finding.source = limit_source(view.margins, {Limit::hot_outside}, cut_off_source);
    finding.values = {{"humidity_cut_off", any(view.settings().humidity_cut_off->value())},
                      {"outside", any(outside)},
                      {"humidity_outside", any(humidity)}};
    return finding;
}

}  // namespace

std::vector<Finding> cut_off_stops_pads_in_heat(const RuleInputs& inputs) {
    const auto& margins = inputs.advice.margins;
    const auto hot = margins.hot_outside;
    const auto& weather = inputs.advice.weather;
    std::vector<Finding> findings;
    if (!humidity_sensors_of(inputs.file.house).only_outside()) {
        return findings;
    }
    for (const auto& view : timers_with_cut_off(inputs)) {
        const auto cut_off = view.settings().humidity_cut_off->value();
        const auto stops = [&](Temperature outside, Fraction humidity) {
            return in_kelvin(outside) >= in_kelvin(hot) - rounding && humidity > cut_off;
        };
        const auto part =
            weather.day
                ? part_of(*weather.day, margins,
                          [&](int, const AirAt& air) { return stops(air.dry_bulb, air.relative_humidity); })
                : std::nullopt;
        if (part) {
            const auto air = air_at(*weather.day, part->at, margins);
            const double pad =
                in_si(best_pad(inputs, view).value_or(from_si<Fraction>(assumed_effectiveness)));
            const auto lost =
                from_si<TemperatureDifference>(pad * (in_kelvin(air.dry_bulb) - in_kelvin(air.wet_bulb)));
            findings.push_back(stops_in_heat(
                view, air.dry_bulb, air.relative_humidity,
                {WF_TEXT("The humidity cut-off of %1 stops the pads for %2 of the design day in which it is "
                         "%3 or hotter outside: at up to %4 and %5 birds lose %6 of cooling."),
                 {any(cut_off), any(of_minutes(part->minutes)), any(hot), any(air.dry_bulb),
                  any(air.relative_humidity), any(lost)}}));
        } else if (weather.test && stops(weather.test->dry_bulb, weather.test->relative_humidity)) {
            findings.push_back(stops_in_heat(
                view, weather.test->dry_bulb, weather.test->relative_humidity,
                {WF_TEXT("With %1 and %2 outside at the readings, the humidity cut-off of %3 kept the pads "
                         "off in heat in which birds need them."),
                 {any(weather.test->dry_bulb), any(weather.test->relative_humidity), any(cut_off)}}));
        }
    }
    return findings;
}

namespace {

/// The humidity at the sensor while pads work: behind the best pad, and in the house in air that has warmed
/// up.
std::optional<Fraction> own_humidity(const RuleInputs& inputs, const TimerView& view,
                                     const HumiditySensors& sensors) {
    const auto& weather = inputs.advice.weather;
    const auto& outside = weather.design ? weather.design : weather.test;
    const auto pad = best_pad(inputs, view);
    if (!outside || !pad) {
        return std::nullopt;
    }
    const auto behind = air_behind_pad(*outside, *pad);
    if (!behind) {
        return std::nullopt;
    }
    if (sensors.behind_pad) {
        return behind.value().relative_humidity;
    }
    const auto warmed = air_from_humidity_ratio(behind.value().dry_bulb + warms_up_in_house,
                                                behind.value().humidity_ratio, behind.value().pressure);
    return warmed ? std::optional{warmed.value().relative_humidity} : std::nullopt;
}

/// The humidity that pads make where it is above that timer's cut-off and no sensor hangs elsewhere.
std::optional<Fraction> shuts_itself_off(const RuleInputs& inputs, const TimerView& view) {
    const auto sensors = humidity_sensors_of(inputs.file.house);
    if (!sensors.inside() || sensors.outside) {
        return std::nullopt;
    }
    const auto own = own_humidity(inputs, view, sensors);
    return own && *own > view.settings().humidity_cut_off->value() ? own : std::nullopt;
}

}  // namespace

std::vector<Finding> cut_off_below_own_humidity(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_cut_off(inputs)) {
        const auto own = shuts_itself_off(inputs, view);
        if (!own) {
            continue;
        }
        const auto cut_off = view.settings().humidity_cut_off->value();
        auto finding = finding_on(view, nullptr, "cut-off-below-own-humidity", Severity::harm);
        finding.message = {
            WF_TEXT("The humidity sensor hangs in the house, where wet pads make about %1, above the cut-off "
                    "of %2: the pads shut themselves off while they work, most of all when it is hot."),
            {any(*own), any(cut_off)}};
        finding.remedy = WF_TEXT("Leave the cut-off off, or hang the sensor outside, in the shade.");
        finding.source =
            "air behind a wet pad: worked out; 3 K warmer where the sensor hangs in the house: "
            "assumed";
        finding.values = {{"humidity_cut_off", any(cut_off)}, {"own_humidity", any(*own)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> cut_off_by_unfit_sensor(const RuleInputs& inputs) {
    const auto sensors = humidity_sensors_of(inputs.file.house);
    std::vector<Finding> findings;
    if (sensors.only_outside()) {
        return findings;
    }
    for (const auto& view : timers_with_cut_off(inputs)) {
        if (shuts_itself_off(inputs, view)) {
            continue;
        }
        const auto cut_off = any(view.settings().humidity_cut_off->value());
        auto finding = finding_on(view, nullptr, "cut-off-by-unfit-sensor", Severity::note);
        if (!sensors.inside()) {
            finding.message = {WF_TEXT("Pads stop above %1 humidity, but no humidity sensor is described: in "
                                       "the house it would read the damp that pads make, outside it would "
                                       "not."),
                               {cut_off}};
            finding.remedy = WF_TEXT("Look where the sensor hangs and describe it with the house.");
        } else if (sensors.outside) {
            finding.message = {WF_TEXT("Pads stop above %1 humidity, and humidity is sensed both outside and "
                                       "in the house: if the timer reads the one in the house, pads shut "
                                       "themselves off."),
                               {cut_off}};
            finding.remedy = WF_TEXT("Find out which sensor the timer reads, and let it be the one outside.");
        } else {
            finding.message = {
                WF_TEXT("Pads stop above %1 humidity in the house, which pads make themselves: "
                        "on damper days than the one looked at they shut themselves off."),
                {cut_off}};
            finding.remedy = WF_TEXT("Leave the cut-off off, or hang the sensor outside, in the shade.");
        }
        finding.source = common_practice;
        finding.values = {{"humidity_cut_off", cut_off}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

/// What keeps a timer's pads off at that time in that air, as words; the first that does.
std::optional<Message> barred_by(const TimerView& view, const HumiditySensors& sensors, int minute,
                                 Temperature outside, Fraction humidity) {
    const auto& settings = view.settings();
    if (view.on_time() && in_seconds(*view.on_time()) <= 0.0 && !view.can_climb()) {
        return WF_TEXT("an on-time of 0 s");
    }
    if (!view.pads_may_run_at(minute)) {
        return WF_TEXT("pad hours");
    }
    if (sensors.only_outside() && view.can_hold(TemplateKey::humidity_cut_off) && settings.humidity_cut_off &&
        humidity > settings.humidity_cut_off->value()) {
        return WF_TEXT("the humidity cut-off");
    }
    // The house is no cooler than outside air that comes in through dry pads.
    if (view.can_hold(TemplateKey::lowest_house_temperature) && settings.lowest_house_temperature &&
        in_kelvin(settings.lowest_house_temperature->value()) > in_kelvin(outside) + rounding) {
        return WF_TEXT("the lowest house temperature");
    }
    if (view.can_hold(TemplateKey::start_temperature) && settings.start_temperature &&
        in_kelvin(settings.start_temperature->value()) > in_kelvin(outside) + rounding) {
        return WF_TEXT("the start temperature");
    }
    return std::nullopt;
}

}  // namespace

std::vector<Finding> pads_off_in_extreme_heat(const RuleInputs& inputs) {
    const auto& weather = inputs.advice.weather;
    const auto sensors = humidity_sensors_of(inputs.file.house);
    const auto extreme = [](Temperature outside) {
        return in_kelvin(outside) >= in_kelvin(air_alone_heats) - rounding;
    };
    std::vector<Finding> findings;
    if (!weather.design || !inputs.file.farm.design_dry_bulb ||
        !extreme(inputs.file.farm.design_dry_bulb->value())) {
        return findings;
    }
    for (const auto& view : timers_with_settings(inputs)) {
        std::optional<Message> first;
        std::optional<PartOfDay> part;
        if (weather.day) {
            part = part_of(*weather.day, inputs.advice.margins, [&](int minute, const AirAt& air) {
                const auto bar = extreme(air.dry_bulb)
                                     ? barred_by(view, sensors, minute, air.dry_bulb, air.relative_humidity)
                                     : std::nullopt;
                first = first ? first : bar;
                return bar.has_value();
            });
        } else {
            first = barred_by(view, sensors, hottest_minute(view.margins), weather.design->dry_bulb,
                              weather.design->relative_humidity);
        }
        if (!first) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "pads-off-in-extreme-heat", Severity::harm);
        const auto hottest = part ? part->hottest : weather.design->dry_bulb;
        finding.values = {{"hottest_without_pads", any(hottest)}};
        if (part) {
            finding.message = {
                WF_TEXT(
                    "On the design day %1 keeps the pads off for %2 in which it is %3 or more outside, up "
                    "to %4: from there on moving air alone heats birds, and a flock can be lost."),
                {*first, any(of_minutes(part->minutes)), any(air_alone_heats), any(hottest)}};
            finding.values.push_back({"without_pads", any(of_minutes(part->minutes))});
        } else {
            finding.message = {
                WF_TEXT("At the hottest hour of the design day, %2, %1 keeps the pads off: from %3 on moving "
                        "air alone heats birds, and a flock can be lost."),
                {*first, any(hottest), any(air_alone_heats)}};
        }
        finding.remedy = WF_TEXT(
            "Change that setting now, so that pads are there in such heat; where pads are off in it, restore "
            "them at once. Never stop fans.");
        finding.source =
            "above 100 degF moving air without pads heats birds: University of Kentucky poultry "
            "manual, ch. 7";
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
