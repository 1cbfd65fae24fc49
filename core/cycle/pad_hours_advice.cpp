// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cycle/pads_work.h"

// Pad hours of one timer, each with its reason.
namespace wetfront {
namespace {

constexpr const char* day_source =
    "hours: ASHRAE Handbook - Fundamentals 2021, ch. 14, table 6, read second hand; nights without pads: "
    "University of Georgia, night-time pad operation, 2011";

/// How the slowest pad dries after the last run of the day.
struct Drying {
    bool known = false;               ///< every bank was dried by the stopwatch
    std::optional<Duration> takes{};  ///< none: longer than the longest dry-down
};

/// The hours of a timer as they are advised.
struct Told {
    PadHours exact;
    Duration from;
    Duration to;
    Drying drying;
};

Drying drying_after(const PadsWork& work, Duration end) {
    const auto& weather = work.asked.weather;
    Drying drying{!work.asked.banks.empty(), seconds(0.0)};
    for (const auto& bank : work.asked.banks) {
        const auto* dry = bank.question ? std::get_if<DryStart>(&bank.question->start) : nullptr;
        if (dry == nullptr || !weather.test) {
            return {};
        }
        const auto rates = rates_from_timings(dry->wet_through - bank.question->fill, dry->dry_out,
                                              dry->fans_on, work.asked.margins.constant_share);
        if (!rates) {
            return {};
        }
        const auto takes = dry_down(rates.value(), *weather.test, bank.effectiveness.value, *weather.day, end,
                                    work.asked.margins);
        if (!takes) {
            return {};
        }
        if (!takes.value() || !drying.takes) {
            drying.takes.reset();  // one that stays wet is the slowest
        } else {
            drying.takes = std::max(*drying.takes, *takes.value());
        }
    }
    return drying;
}

AnyQuantity clock(Duration since_midnight) {
    return any(since_midnight, Scale::clock);
}

Message about_drying(const PadsWork& work, const Told& told) {
    const auto& margins = work.asked.margins;
    const Message not_shorter = WF_TEXT(
        "Ending earlier would leave birds without pads while it is hot outside, so the hours are not "
        "shortened.");
    if (!told.drying.known) {
        return WF_TEXT(
            "How long the pads take to dry is not known, as not every bank was timed until its first "
            "dry patch: the hours end by the weather alone.");
    }
    if (!told.drying.takes) {
        return {
            WF_TEXT(
                "On the design day the pads will not dry that night: the slowest is still wet %1 later. %2"),
            {any(margins.longest_dry_down), not_shorter}};
    }
    const auto dry = told.to + *told.drying.takes;
    if (dry > margins.night) {
        return {
            WF_TEXT(
                "With the fans on, the slowest pad is dry at %1, later than the %2 that would be good. %3"),
            {clock(dry), clock(margins.night), not_shorter}};
    }
    return {
        WF_TEXT("With the fans on, the slowest pad is dry at %1, before the night (%2): one dry-down a day."),
        {clock(dry), clock(margins.night)}};
}

Reason hours_reason(const PadsWork& work) {
    const auto& farm = work.asked.file.farm;
    const auto& margins = work.asked.margins;
    Reason reason;
    reason.rule = "pad hours";
    reason.formula = "T(h) = T_max - range f(h) >= T_start and e (T - T_wb) >= dT; clock = sun + ahead";
    reason.inputs = {start_input(work),
                     {WF_TEXT("design day: hottest outside"), "T_max", any(farm.design_dry_bulb->value()),
                      Origin::entered, ""},
                     {WF_TEXT("design day: wet bulb at that hour"), "T_wb",
                      any(farm.design_wet_bulb->value()), Origin::entered, ""},
                     {WF_TEXT("design day: warmest minus coolest"), "range",
                      any(farm.design_daily_range->value()), Origin::entered, ""},
                     pad_input(*work.pad),
                     least_cooling_input(margins),
                     limit_input(margins, Limit::clock_ahead_of_sun, WF_TEXT("clock ahead of the sun"),
                                 "ahead", any(margins.clock_ahead_of_sun))};
    reason.resolution = any(margins.clock_step);
    reason.source = day_source;
    return reason;
}

Reason why_from(const PadsWork& work, const Told& told) {
    auto reason = hours_reason(work);
    reason.brief = WF_TEXT("from then on pads help on the design day");
    reason.explanation = {
        WF_TEXT("On the design day it is at or above the start temperature, %1, outside from %2 on, and the "
                "pads cool by at least %3."),
        {any(*work.start), clock(told.exact.from), any(work.asked.margins.least_cooling)}};
    reason.exact = clock(told.exact.from);
    reason.rounding = Rounding::down;
    return reason;
}

Reason why_to(const PadsWork& work, const Told& told) {
    const auto& margins = work.asked.margins;
    auto reason = hours_reason(work);
    reason.inputs.push_back(
        limit_input(margins, Limit::night, WF_TEXT("pads dry by"), "night", clock(margins.night)));
    if (told.drying.takes && told.drying.known) {
        reason.inputs.push_back({WF_TEXT("time until the slowest pad is dry, fans on"), "t_night",
                                 any(*told.drying.takes), Origin::derived, ""});
    }
    Message end;
    switch (told.exact.ended_by) {
        case HoursEnd::cool_enough:
            reason.brief = WF_TEXT("cooler outside than the start temperature");
            end = {
                WF_TEXT("On the design day it is cooler outside than the start temperature, %1, from %2 on."),
                {any(*work.start), clock(told.exact.to)}};
            break;
        case HoursEnd::too_humid:
            reason.brief = WF_TEXT("too damp outside for pads to cool");
            end = {WF_TEXT("On the design day the air gets too damp: from %2 on pads cool by less than %1."),
                   {any(margins.least_cooling), clock(told.exact.to)}};
            break;
    }
    reason.explanation = {"%1 %2", {end, about_drying(work, told)}};
    reason.exact = clock(told.exact.to);
    reason.rounding = Rounding::up;
    return reason;
}

Reason no_hours(Message brief, Message explanation) {
    Reason reason;
    reason.rule = "pad hours";
    reason.brief = std::move(brief);
    reason.explanation = std::move(explanation);
    reason.source = day_source;
    return reason;
}

Reason why_never(const PadsWork& work, HoursEnd lacking) {
    const auto& margins = work.asked.margins;
    switch (lacking) {
        case HoursEnd::cool_enough:
            return no_hours(
                WF_TEXT("not hot enough on the design day"),
                {WF_TEXT("Even at the hottest hour of the design day it is cooler outside than the "
                         "start temperature, %1: check the design day, or leave the hours open and "
                         "let the start temperature decide."),
                 {any(*work.start)}});
        case HoursEnd::too_humid:
            return no_hours(
                WF_TEXT("too damp on the design day"),
                {WF_TEXT("Even at the hottest hour of the design day pads cool by less than %1: the "
                         "air is too damp. Check the design day."),
                 {any(margins.least_cooling)}});
    }
    return {};
}

// What the hours cannot be worked out without; none: nothing is missing.
std::optional<Reason> lacking_for_hours(const PadsWork& work) {
    const auto& farm = work.asked.file.farm;
    if (!work.start) {
        return no_hours(
            WF_TEXT("no start temperature is advised"),
            WF_TEXT("Pad hours are the hours in which it is hotter than the start temperature, and "
                    "for birds of this age none is advised."));
    }
    if (!work.pad) {
        return no_hours(WF_TEXT("no pads are described"),
                        WF_TEXT("No pad bank is fed by this timer's pumps: describe them first."));
    }
    if (!farm.design_dry_bulb || !farm.design_wet_bulb) {
        return no_hours(
            WF_TEXT("the farm's design day is missing"),
            WF_TEXT("Pad hours come from the farm's design day: enter its temperature, the wet bulb at "
                    "that hour and the daily range."));
    }
    if (!farm.design_daily_range) {
        return no_hours(WF_TEXT("the design day's range is missing"),
                        WF_TEXT("How hot the other hours of the design day are follows from its daily range, "
                                "warmest minus coolest: enter it with the farm."));
    }
    if (!work.asked.weather.day) {
        return no_hours(
            WF_TEXT("the design day cannot be used"),
            WF_TEXT("The farm's design day cannot be used as it was entered; what is wrong with it "
                    "stands with what is missing."));
    }
    return std::nullopt;
}

void add_assumed_hours(const PadsWork& work, const Told& told, PadsAdvice& advice) {
    const auto& margins = work.asked.margins;
    for (const auto limit : {Limit::least_cooling, Limit::hot_outside, Limit::clock_ahead_of_sun,
                             Limit::clock_step, Limit::night}) {
        advice.assumed.push_back(limit_text(margins, limit).text);
    }
    advice.assumed.emplace_back(WF_TEXT("on the design day the air holds as much water all day"));
    if (told.drying.known) {
        for (const auto limit : {Limit::constant_share, Limit::dry_face, Limit::longest_dry_down}) {
            advice.assumed.push_back(limit_text(margins, limit).text);
        }
    }
}

}  // namespace

std::optional<AdvisedHours> add_pad_hours(const PadsWork& work, PadsAdvice& advice) {
    const auto& margins = work.asked.margins;
    const auto neither = [&](const Reason& reason) {
        advice.settings.push_back({Setting::pad_hours_from, std::nullopt, reason});
        advice.settings.push_back({Setting::pad_hours_to, std::nullopt, reason});
        return std::optional<AdvisedHours>{};
    };
    if (const auto lacking = lacking_for_hours(work)) {
        return neither(*lacking);
    }
    const auto helpful =
        helpful_hours(*work.asked.weather.day, *work.start, work.pad->effectiveness, margins);
    if (!helpful) {
        return neither(no_hours(WF_TEXT("cannot be worked out"),
                                {WF_TEXT("Pad hours cannot be worked out: %1."), {helpful.error().text()}}));
    }
    switch (helpful.value().when) {
        case HelpfulHours::When::never:
            return neither(why_never(work, helpful.value().kept_by));
        case HelpfulHours::When::always:
            return neither(no_hours(
                WF_TEXT("leave them open: pads help day and night"),
                {WF_TEXT(
                     "On the design day it is at or above the start temperature, %1, outside day and night: "
                     "no hour may keep the pads off. They will not dry between the days."),
                 {any(*work.start)}}));
        case HelpfulHours::When::some:
            break;
    }
    const auto& exact = helpful.value().hours;
    const auto to = rounded_up(exact.to, margins.clock_step);
    const Told told{exact, rounded_down(exact.from, margins.clock_step), to, drying_after(work, to)};
    advice.settings.push_back({Setting::pad_hours_from, clock(told.from), why_from(work, told)});
    advice.settings.push_back({Setting::pad_hours_to, clock(told.to), why_to(work, told)});
    add_assumed_hours(work, told, advice);
    if (told.drying.known && !told.drying.takes) {
        advice.notes.emplace_back(
            WF_TEXT("After a day as hot as the design day these pads stay wet all night: dry them out on the "
                    "first cooler evening."));
    }
    return AdvisedHours{told.from, told.to};
}

}  // namespace wetfront
