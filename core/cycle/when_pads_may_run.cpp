// SPDX-License-Identifier: Apache-2.0
#include "cycle/when_pads_may_run.h"

#include <algorithm>
#include <cmath>

#include "cycle/pads_work.h"

namespace wetfront {
namespace {

constexpr const char* short_air_source = "ASHRAE Handbook - Fundamentals 2017, ch. 1";
constexpr const char* pad_source = "EnergyPlus Engineering Reference, direct evaporative cooler";

BirdAge age_of(const PadsQuestion& asked) {
    const auto& days = asked.file.visit.conditions.bird_age_days;
    if (!days) {
        return BirdAge::unknown;
    }
    return *days < asked.margins.older_birds_days ? BirdAge::young : BirdAge::older;
}

std::optional<Velocity> air_speed_of(const House& house) {
    if (!house.fan_airflow || !house.cross_section || !(in_si(house.cross_section->value()) > 0.0)) {
        return std::nullopt;
    }
    return house.fan_airflow->value() / house.cross_section->value();
}

std::optional<BestPad> best_pad_of(const std::vector<BankEvidence>& banks) {
    std::optional<BestPad> best;
    for (const auto& bank : banks) {
        if (!best || bank.effectiveness.value > best->effectiveness) {
            best = BestPad{bank.effectiveness.value, bank.effectiveness.origin};
        }
    }
    return best;
}

PadsWork work_of(const PadsQuestion& asked) {
    PadsWork work{asked, age_of(asked)};
    if (work.age != BirdAge::young) {
        work.start = asked.margins.start_temperature;
    }
    work.air_speed = air_speed_of(asked.file.house);
    work.pad = best_pad_of(asked.banks);
    return work;
}

}  // namespace

ReasonInput start_input(const PadsWork& work) {
    return limit_input(work.asked.margins, Limit::start_temperature, WF_TEXT("start temperature"), "T_start",
                       any(*work.start));
}

ReasonInput pad_input(const BestPad& pad) {
    return {WF_TEXT("how far the best pad cools towards the wet bulb"), "e", any(pad.effectiveness),
            pad.origin, pad.origin == Origin::published ? pad_source : ""};
}

ReasonInput least_cooling_input(const CycleMargins& margins) {
    return limit_input(margins, Limit::least_cooling, WF_TEXT("least cooling that is worth the damp"), "dT",
                       any(margins.least_cooling));
}

namespace {

// --- Start temperature and lowest house temperature (rule 8)

Reason why_start(const PadsWork& work) {
    const auto& margins = work.asked.margins;
    const auto band = limit_text(margins, Limit::start_band).source;
    const auto speed = limit_text(margins, Limit::air_speed).source;
    Reason reason;
    reason.rule = "start temperature";
    reason.brief = {WF_TEXT("for birds from %1 days on, with all tunnel fans on"),
                    {static_cast<int>(std::lround(margins.older_birds_days))}};
    const Message from_where =
        is_changed(margins, Limit::start_band)
            ? Message{WF_TEXT("Older birds of this farm are to get pads from %1 to %2 on, as somebody chose; "
                              "published are the low to mid 80s °F"),
                      {any(margins.coolest_start), any(margins.warmest_start)}}
            : Message{WF_TEXT("Older birds need pads from the low to mid 80s °F, %1 to %2"),
                      {any(margins.coolest_start), any(margins.warmest_start)}};
    reason.explanation = {
        WF_TEXT("%1: below that, moving air does it and pads only make the house damp. Start them only with "
                "all tunnel fans on and at least %2 of air down the house."),
        {from_where, any(margins.least_air_speed)}};
    reason.formula = "T_low <= T_start <= T_high";
    reason.inputs = {limit_input(margins, Limit::start_band, WF_TEXT("coolest start with older birds"),
                                 "T_low", any(margins.coolest_start)),
                     limit_input(margins, Limit::start_band, WF_TEXT("warmest start with older birds"),
                                 "T_high", any(margins.warmest_start)),
                     start_input(work),
                     limit_input(margins, Limit::air_speed, WF_TEXT("least air speed down the house"),
                                 "V_least", any(margins.least_air_speed))};
    if (work.air_speed) {
        reason.inputs.push_back({WF_TEXT("air speed down the house, fans over cross-section"), "V",
                                 any(*work.air_speed), Origin::derived, ""});
    }
    reason.source = band + "; " + speed;
    return reason;
}

Reason why_no_start(const PadsWork& work) {
    Reason reason;
    reason.rule = "start temperature";
    reason.brief = WF_TEXT("young birds: pads off but against heat");
    reason.explanation = {
        WF_TEXT(
            "The birds are %1 days old. What is published holds for older ones, here from %2 days on: "
            "young birds are chilled by wet, moving air. Leave the pads off but against heat, and ask the "
            "grower from which house temperature that is."),
        {static_cast<int>(std::lround(*work.asked.file.visit.conditions.bird_age_days)),
         static_cast<int>(std::lround(work.asked.margins.older_birds_days))}};
    reason.source = "common practice, no source";
    return reason;
}

Reason why_lowest(const PadsWork& work) {
    Reason reason;
    reason.rule = "lowest house temperature";
    reason.brief = WF_TEXT("the grower's own limit, below the start");
    reason.explanation = WF_TEXT(
        "A hard limit apart from the start temperature: strictly below it the pads are off, whatever else "
        "calls for them. No number for it is published, so none is advised: agree on it with the grower. It "
        "has to lie below the start temperature.");
    reason.formula = "T_lowest < T_start";
    if (work.start) {
        reason.inputs = {start_input(work)};
    }
    reason.source = "common practice, no source";
    return reason;
}

// --- Humidity cut-off (rule 7)

struct HumiditySensors {
    bool outside = false;
    bool inside = false;
};

HumiditySensors humidity_sensors_of(const House& house) {
    HumiditySensors sensors;
    for (const auto& sensor : house.sensors) {
        if (sensor.kind == SensorKind::humidity) {
            (sensor.place == SensorPlace::outside ? sensors.outside : sensors.inside) = true;
        }
    }
    return sensors;
}

Reason no_cut_off(Message brief, Message explanation) {
    Reason reason;
    reason.rule = "humidity cut-off";
    reason.brief = std::move(brief);
    reason.explanation = std::move(explanation);
    reason.source = "common practice, no source";
    return reason;
}

Reason why_cut_off(const PadsWork& work, Fraction exact, Fraction rounded) {
    const auto& margins = work.asked.margins;
    Reason reason;
    reason.rule = "humidity cut-off";
    reason.brief = {WF_TEXT("above it pads cool by less than %1 at the start temperature"),
                    {any(margins.least_cooling)}};
    reason.explanation = {
        WF_TEXT("With more than %1 outside, pads as good as these cool air of %2 by less than %3: the house "
                "gets damp for next to nothing. In hotter air they cool more at the same humidity: from %4 "
                "outside no humidity may stop them."),
        {any(rounded), any(*work.start), any(margins.least_cooling), any(margins.hot_outside)}};
    reason.formula = "e (T_start - T_wb) = dT at the cut-off";
    reason.inputs = {
        start_input(work),
        pad_input(*work.pad),
        least_cooling_input(margins),
        {WF_TEXT("air pressure"), "p", any(work.asked.weather.pressure), Origin::derived, short_air_source}};
    reason.exact = any(exact);
    reason.rounding = Rounding::down;
    reason.resolution = any(margins.humidity_step);
    reason.source = limit_text(margins, Limit::least_cooling).source + "; air: " + short_air_source;
    return reason;
}

SettingAdvice cut_off(const PadsWork& work, PadsAdvice& advice) {
    const auto& margins = work.asked.margins;
    const auto none = [](Message brief, Message explanation) {
        return SettingAdvice{Setting::humidity_cut_off, std::nullopt,
                             no_cut_off(std::move(brief), std::move(explanation))};
    };
    const auto sensors = humidity_sensors_of(work.asked.file.house);
    if (sensors.inside && !sensors.outside) {
        return none(
            WF_TEXT("none: the sensor hangs in the house"),
            WF_TEXT("The humidity sensor hangs in the house or behind the pads, where the pads make "
                    "the air damp themselves: a cut-off would shut them off while they work. Leave it "
                    "off, or hang the sensor outside."));
    }
    if (!sensors.outside) {
        return none(WF_TEXT("where does the humidity sensor hang?"),
                    WF_TEXT("No humidity sensor is described. A cut-off serves only where the sensor hangs "
                            "outside: describe it with the house. Without one, leave the cut-off off."));
    }
    if (!work.start) {
        return none(
            WF_TEXT("no start temperature is advised"),
            WF_TEXT("A cut-off is worked out at the start temperature, and for birds of this age none "
                    "is advised."));
    }
    if (!work.pad) {
        return none(WF_TEXT("no pads are described"),
                    WF_TEXT("No pad bank is fed by this timer's pumps: describe them first."));
    }
    const auto exact =
        serving_humidity(*work.start, work.pad->effectiveness, work.asked.weather.pressure, margins);
    if (!exact) {
        return none(WF_TEXT("cannot be worked out"),
                    {WF_TEXT("At the start temperature these pads cool by less than %1 in any air, or what "
                             "was entered cannot be used (%2)."),
                     {any(margins.least_cooling), exact.error().text()}});
    }
    const auto rounded = rounded_down(exact.value(), margins.humidity_step);
    if (sensors.inside) {
        return none(
            WF_TEXT("which sensor does it read?"),
            {WF_TEXT("Humidity is sensed outside and in the house. Where this timer reads the sensor "
                     "outside, %1 is the cut-off; where it reads the other, leave it off, as the pads "
                     "would shut themselves off."),
             {any(rounded)}});
    }
    advice.assumed.push_back(limit_text(margins, Limit::least_cooling).text);
    advice.assumed.push_back(limit_text(margins, Limit::humidity_step).text);
    return {Setting::humidity_cut_off, any(rounded), why_cut_off(work, exact.value(), rounded)};
}

// --- What else has to be said

void add_notes(const PadsWork& work, PadsAdvice& advice) {
    const auto& margins = work.asked.margins;
    if (!work.start) {
        return;
    }
    if (work.age == BirdAge::unknown) {
        advice.notes.push_back(
            {WF_TEXT("The age of the birds is not entered: the start temperature holds from %1 "
                     "days on, and younger birds need another."),
             {static_cast<int>(std::lround(margins.older_birds_days))}});
    }
    if (!work.air_speed) {
        advice.notes.push_back(
            {WF_TEXT("Air speed down the house is not known: enter the fans' airflow and the "
                     "cross-section. Pads want at least %1."),
             {any(margins.least_air_speed)}});
    } else if (*work.air_speed < margins.least_air_speed * (1.0 - 1e-9)) {
        advice.notes.push_back(
            {WF_TEXT("Air goes down the house at %1: pads want at least %2. Bring the fans up "
                     "first."),
             {any(*work.air_speed), any(margins.least_air_speed)}});
    }
    const auto& visit = work.asked.file.visit;
    const auto* left = visit.left_of(work.asked.timer.id);
    const auto* holds = left != nullptr ? left : visit.found_of(work.asked.timer.id);
    if (holds != nullptr && holds->lowest_house_temperature &&
        holds->lowest_house_temperature->value() >= *work.start) {
        advice.notes.push_back(
            {WF_TEXT(
                 "The lowest house temperature is set to %1, not below the start temperature advised, %2: "
                 "lower it, or it decides when pads start."),
             {any(holds->lowest_house_temperature->value()), any(*work.start)}});
    }
}

bool on_controller(const Timer& timer, Setting setting) {
    return timer.controller && std::ranges::any_of(timer.controller->settings, [&](const auto& described) {
               return setting_of(described.setting) == setting;
           });
}

// The other kinds of timer have few such settings or none, but something calls for their pads.
void tell_caller(const PadsWork& work, const std::optional<AdvisedHours>& told, PadsAdvice& advice) {
    const auto& timer = work.asked.timer;
    if (on_controller(timer, Setting::start_temperature)) {
        if (told && !on_controller(timer, Setting::pad_hours_from)) {
            advice.notes.push_back({WF_TEXT("This timer has no pad hours: let what calls for these pads do "
                                            "so between %1 and %2 only."),
                                    {any(told->from, Scale::clock), any(told->to, Scale::clock)}});
        }
        return;
    }
    if (!work.start) {
        advice.notes.push_back(why_no_start(work).explanation);
    } else if (told) {
        advice.notes.push_back(
            {WF_TEXT("This timer has no start temperature and no pad hours: let what calls for "
                     "these pads do so from %1 on in the house, with all tunnel fans on, and "
                     "between %2 and %3."),
             {any(*work.start), any(told->from, Scale::clock), any(told->to, Scale::clock)}});
    } else {
        advice.notes.push_back(
            {WF_TEXT("This timer has no start temperature: let what calls for these pads do so "
                     "from %1 on in the house, with all tunnel fans on."),
             {any(*work.start)}});
    }
}

}  // namespace

PadsAdvice when_pads_may_run(const PadsQuestion& question) {
    if (question.timer.kind != TimerKind::trimmed && question.banks.empty()) {
        return {};
    }
    const auto work = work_of(question);
    const auto& margins = question.margins;
    PadsAdvice advice;
    if (work.start) {
        advice.settings.push_back({Setting::start_temperature, any(*work.start), why_start(work)});
        advice.assumed.push_back(limit_text(margins, Limit::start_temperature).text);
    } else {
        advice.settings.push_back({Setting::start_temperature, std::nullopt, why_no_start(work)});
    }
    advice.assumed.push_back(limit_text(margins, Limit::older_birds).text);
    for (const auto published : {Limit::start_band, Limit::air_speed}) {
        if (is_changed(margins, published)) {
            advice.assumed.push_back(limit_text(margins, published).text);
        }
    }
    advice.settings.push_back({Setting::lowest_house_temperature, std::nullopt, why_lowest(work)});
    advice.settings.push_back(cut_off(work, advice));
    const auto told = add_pad_hours(work, advice);
    const bool used_pad = std::any_of(advice.settings.begin() + 2, advice.settings.end(),
                                      [](const SettingAdvice& each) { return each.value.has_value(); });
    if (used_pad && work.pad->origin == Origin::assumed) {
        advice.assumed.push_back({WF_TEXT("pad effectiveness %1"), {any(work.pad->effectiveness)}});
    }
    add_notes(work, advice);
    if (question.timer.kind != TimerKind::trimmed) {
        std::erase_if(advice.settings, [&](const SettingAdvice& each) {
            return !on_controller(question.timer, each.setting);
        });
        tell_caller(work, told, advice);
    }
    return advice;
}

}  // namespace wetfront
