// SPDX-License-Identifier: Apache-2.0
#include "rules/pad_hours_rules.h"

#include <algorithm>
#include <cmath>

#include "cycle/bank_cycle.h"
#include "cycle/pad_hours.h"
#include "rules/design_clock.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

constexpr int clock_unsure = 60;  // minutes
const char* const night_source =
    "22:00 to 10:00 without pads, by rule of thumb: University of Georgia, night-time pad operation, 2011; "
    "hours of the design day: ASHRAE Handbook - Fundamentals 2021, ch. 14, table 6, read second hand";

AnyQuantity clock(int minute) {
    return TimeOfDay{(minute % minutes_of_day + minutes_of_day) % minutes_of_day}.since_midnight();
}

/// A timer's hours and those in which pads help, in minutes of the clock around the hottest hour.
struct Hours {
    TimerView view;
    Fraction pad;
    Temperature start;
    bool always = false;  ///< pads help day and night
    int helpful_from = 0;
    int helpful_to = 0;  ///< may lie past midnight
    int hottest = 0;     ///< of the clock
    /// The helpful hours to the farm's step of a time of day, outwards, as advice rounds them.
    int open_from = 0;
    int open_to = 0;
};

int minutes_of(Duration time) {
    return static_cast<int>(std::lround(in_seconds(time) / 60.0));
}

std::vector<Hours> hours_of(const RuleInputs& inputs) {
    const auto& margins = inputs.advice.margins;
    std::vector<Hours> list;
    const auto& day = inputs.advice.weather.day;
    const auto& age = inputs.file.visit.conditions.bird_age_days;
    if (!day || (age && *age < margins.older_birds_days)) {
        return list;
    }
    for (const auto& view : timers_with_settings(inputs)) {
        const auto pad = best_pad(inputs, view);
        if (!view.has_pad_hours() || !view.can_hold(TemplateKey::start_temperature) ||
            !view.settings().start_temperature || !pad) {
            continue;
        }
        const auto start = view.settings().start_temperature->value();
        const auto helpful = helpful_hours(*day, start, *pad, margins);
        if (!helpful || helpful.value().when == HelpfulHours::When::never) {
            continue;
        }
        const int hottest = hottest_minute(margins);
        Hours hours{view, *pad, start, helpful.value().when == HelpfulHours::When::always, 0, 0, hottest};
        hours.helpful_from =
            hours.always ? hottest - minutes_of_day / 2 : minutes_of(helpful.value().hours.from);
        hours.helpful_to = hours.always ? hottest + minutes_of_day / 2 : minutes_of(helpful.value().hours.to);
        hours.open_from = minutes_of(rounded_down(helpful.value().hours.from, margins.clock_step));
        hours.open_to = minutes_of(rounded_up(helpful.value().hours.to, margins.clock_step));
        list.push_back(hours);
    }
    return list;
}

/// What birds go without on one side of the hottest hour.
struct Missed {
    int minutes = 0;
    Temperature hottest = from_si<Temperature>(0.0);
    TemperatureDifference cooling = from_si<TemperatureDifference>(0.0);
};

Missed missed_between(const Hours& hours, const DesignDay& day, int from, int to) {
    Missed missed;
    for (int minute = from; minute < to; ++minute) {
        if (hours.view.pads_may_run_at((minute % minutes_of_day + minutes_of_day) % minutes_of_day)) {
            continue;
        }
        const auto air = air_at(day, minute + minutes_of_day, hours.view.margins);
        missed.minutes += 1;
        if (air.dry_bulb > missed.hottest) {
            missed.hottest = air.dry_bulb;
            missed.cooling = from_si<TemperatureDifference>(
                in_si(hours.pad) * (in_kelvin(air.dry_bulb) - in_kelvin(air.wet_bulb)));
        }
    }
    return missed;
}

Finding missed_finding(const Hours& hours, const char* rule, const Missed& missed) {
    auto finding = finding_on(hours.view, nullptr, rule,
                              missed.minutes > clock_unsure ? Severity::harm : Severity::note);
    finding.source = design_clock_source(hours.view.margins);
    finding.values = {{"without_pads", any(of_minutes(missed.minutes))},
                      {"hottest_without_pads", any(missed.hottest)},
                      {"cooling_lost", any(missed.cooling)}};
    return finding;
}

Message too_close(const Hours& hours, const Missed& missed) {
    return {WF_TEXT("Pads help for %1 on the design day in which the pad hours keep them off, at up to %2 "
                    "with a start at %3: as the sun's hours are not the clock's, that is too close to call."),
            {any(of_minutes(missed.minutes)), any(missed.hottest), any(hours.start)}};
}

Message open_hours(const Hours& hours) {
    if (hours.always) {
        return WF_TEXT("Leave the hours open: on the design day pads help day and night.");
    }
    return {WF_TEXT("Let pads run from %1 to %2."), {clock(hours.open_from), clock(hours.open_to)}};
}

}  // namespace

std::vector<Finding> pad_hours_end_in_heat(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& hours : hours_of(inputs)) {
        const auto missed =
            missed_between(hours, *inputs.advice.weather.day, hours.hottest, hours.helpful_to);
        if (missed.minutes == 0) {
            continue;
        }
        auto finding = missed_finding(hours, "pad-hours-end-in-heat", missed);
        finding.message =
            missed.minutes > clock_unsure
                ? Message{WF_TEXT("Pad hours end at %1, but on the design day it is at or above the start "
                                  "temperature of %2 long after: %3 without pads, at up to %4 outside, up to "
                                  "%5 hotter than need be."),
                          {hours.view.settings().pad_hours_to->since_midnight(), any(hours.start),
                           any(of_minutes(missed.minutes)), any(missed.hottest), any(missed.cooling)}}
                : too_close(hours, missed);
        finding.remedy = open_hours(hours);
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> pad_hours_begin_in_heat(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& hours : hours_of(inputs)) {
        const auto missed =
            missed_between(hours, *inputs.advice.weather.day, hours.helpful_from, hours.hottest);
        if (missed.minutes == 0) {
            continue;
        }
        auto finding = missed_finding(hours, "pad-hours-begin-in-heat", missed);
        finding.message =
            missed.minutes > clock_unsure
                ? Message{WF_TEXT("Pad hours begin at %1, but on the design day it is at or above the start "
                                  "temperature of %2 long before: %3 without pads, at up to %4 outside, up "
                                  "to %5 hotter than need be."),
                          {hours.view.settings().pad_hours_from->since_midnight(), any(hours.start),
                           any(of_minutes(missed.minutes)), any(missed.hottest), any(missed.cooling)}}
                : too_close(hours, missed);
        finding.remedy = open_hours(hours);
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

/// When the pads of a timer are dry after the hours' end; none: not known, or not that night.
struct Dry {
    bool known = true;
    std::optional<Duration> takes;
};

Dry dry_after(const RuleInputs& inputs, const Hours& hours, int end) {
    const auto& weather = inputs.advice.weather;
    Dry dry{true, seconds(0.0)};
    for (const auto* bank : hours.view.banks) {
        const auto* advice = hours.view.advice_for(*bank);
        const auto* start =
            advice != nullptr && advice->question ? std::get_if<DryStart>(&advice->question->start) : nullptr;
        if (start == nullptr || !weather.test) {
            return {false, std::nullopt};
        }
        const auto rates = rates_from_timings(start->wet_through - advice->question->fill, start->dry_out,
                                              start->fans_on, hours.view.margins.constant_share);
        const auto takes = rates ? dry_down(rates.value(), *weather.test,
                                            effectiveness_of(inputs.file, weather, *bank).value, *weather.day,
                                            of_minutes(end), hours.view.margins)
                                 : rates.error();
        if (!takes) {
            return {false, std::nullopt};
        }
        if (!takes.value()) {
            return {true, std::nullopt};
        }
        dry.takes = std::max(*dry.takes, *takes.value());
    }
    return dry;
}

/// The end of the hours, on the side after the hottest hour.
int end_of(const Hours& hours) {
    const int to = hours.view.settings().pad_hours_to->minutes;
    return to < hours.hottest ? to + minutes_of_day : to;
}

int begin_of(const Hours& hours) {
    const int from = hours.view.settings().pad_hours_from->minutes;
    return from > hours.hottest ? from - minutes_of_day : from;
}

bool lets_pads_run_at_hottest(const Hours& hours) {
    return hours.view.pads_may_run_at(hours.hottest);
}

}  // namespace

std::vector<Finding> pad_hours_into_night(const RuleInputs& inputs) {
    const auto night = inputs.advice.margins.night;
    std::vector<Finding> findings;
    for (const auto& hours : hours_of(inputs)) {
        const int end = end_of(hours);
        const int extra = end - hours.helpful_to;
        if (hours.always || !lets_pads_run_at_hottest(hours) || extra <= clock_unsure) {
            continue;
        }
        const auto dry = dry_after(inputs, hours, end);
        const auto wet_until = of_minutes(end) + dry.takes.value_or(seconds(0.0));
        const bool stays_wet = dry.known && !dry.takes;
        if (!stays_wet && (dry.known ? at_least(night, wet_until) : !at_least(of_minutes(end), night))) {
            continue;
        }
        auto finding = finding_on(hours.view, nullptr, "pad-hours-into-night", Severity::waste);
        const auto to = hours.view.settings().pad_hours_to->since_midnight();
        const auto stops_helping = clock(hours.helpful_to);
        const auto extra_wet = any(of_minutes(extra));
        if (stays_wet) {
            finding.message = {
                WF_TEXT("Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting "
                        "damp air, after which they stay wet all night."),
                {to, stops_helping, extra_wet}};
        } else if (dry.known) {
            finding.message = {
                WF_TEXT("Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting "
                        "damp air, and the slowest pad is dry only at %4, later than %5."),
                {to, stops_helping, extra_wet, clock(minutes_of(wet_until)), any(night, Scale::clock)}};
        } else {
            finding.message = {
                WF_TEXT("Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting "
                        "damp air, into the night."),
                {to, stops_helping, extra_wet}};
        }
        finding.remedy = {WF_TEXT("End the pad hours at %1, so that pads dry once a day."),
                          {clock(hours.open_to)}};
        finding.source = limit_source(hours.view.margins, {Limit::night}, night_source);
        finding.values = {{"pad_hours_to", to}, {"stops_helping", stops_helping}, {"extra_wet", extra_wet}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> pad_hours_begin_early(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& hours : hours_of(inputs)) {
        const int begin = begin_of(hours);
        const int extra = hours.helpful_from - begin;
        if (hours.always || !lets_pads_run_at_hottest(hours) || extra <= clock_unsure) {
            continue;
        }
        const auto outside =
            air_at(*inputs.advice.weather.day, begin + minutes_of_day, hours.view.margins).dry_bulb;
        auto finding = finding_on(hours.view, nullptr, "pad-hours-begin-early", Severity::waste);
        const auto from = hours.view.settings().pad_hours_from->since_midnight();
        finding.message = {
            WF_TEXT("Pads may run from %1 on, %2 before they begin to help on the design day: it is %3 "
                    "outside, and birds' heat alone can call for pads in damp morning air."),
            {from, any(of_minutes(extra)), any(outside)}};
        finding.remedy = {WF_TEXT("Begin the pad hours at %1."), {clock(hours.open_from)}};
        finding.source = night_source;
        finding.values = {
            {"pad_hours_from", from}, {"extra", any(of_minutes(extra))}, {"outside", any(outside)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> pad_hours_empty(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto& from = view.settings().pad_hours_from;
        if (!view.can_hold(TemplateKey::pad_hours_from) || !from || from != view.settings().pad_hours_to) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "pad-hours-empty", Severity::note);
        finding.message = {
            WF_TEXT("Pad hours begin and end at %1: on one timer that is all day, on another never, and then "
                    "birds get no pads at all."),
            {from->since_midnight()}};
        finding.remedy =
            WF_TEXT("Set an end that differs, or see with your own eyes that pads run when called for.");
        finding.source = common_practice;
        finding.values = {{"pad_hours_from", from->since_midnight()}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
