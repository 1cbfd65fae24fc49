// SPDX-License-Identifier: Apache-2.0
#include "cycle/explain.h"

#include <cmath>

namespace wetfront {
namespace {

constexpr const char* air_source = "ASHRAE Handbook - Fundamentals 2017, ch. 1, eqs. 5, 6, 26, 33 and 35";

ReasonInput measured(const char* name, std::string symbol, Duration value) {
    return {name, std::move(symbol), any(value), Origin::measured, {}};
}

ReasonInput evaporation_ratio_input(const BankQuestion& question) {
    if (question.milder_design) {
        return {
            {WF_TEXT(
                 "evaporation at the hottest hour, against that of the test: worked out %1, counts as 1 so "
                 "that the pad stays wet in the weather of the test as well"),
             {any_share(*question.milder_design)}},
            "R",
            any_share(question.evaporation_ratio),
            Origin::assumed,
            air_source};
    }
    return {WF_TEXT("evaporation at the hottest hour, against that of the test"), "R",
            any_share(question.evaporation_ratio), Origin::derived, air_source};
}

// The readings that the bank's formulas use.
std::vector<ReasonInput> readings_of(const BankQuestion& question) {
    std::vector<ReasonInput> inputs{measured(WF_TEXT("fill time"), "t_fill", question.fill)};
    if (const auto* dry = question.dry_start()) {
        inputs.push_back(measured(WF_TEXT("wet-through time"), "t_wet", dry->wet_through));
        inputs.push_back(measured(WF_TEXT("dry-out time"), "t_dry", dry->dry_out));
    } else {
        const auto& wet = std::get<WetStart>(question.start);
        inputs.push_back(measured(WF_TEXT("pump-off time of the wet start"), "t_off", wet.off));
        inputs.push_back(measured(WF_TEXT("return of the drip"), "t_r", wet.drip_return));
    }
    return inputs;
}

bool flow_decided(const BankQuestion& question, double used) {
    return question.evaporated_share && used <= *question.evaporated_share * question.weakest_outlet_ratio;
}

// How kappa came about, in symbols; the share from flow rules where it is the larger.
std::string share_formula(const BankQuestion& question, double used) {
    const std::string outlets = question.weakest_outlet_ratio > 1.0 ? " q_far / q_least" : "";
    if (flow_decided(question, used)) {
        return "kappa = E H / q" + outlets;
    }
    if (const auto* dry = question.dry_start()) {
        return std::string{dry->fans_on ? "kappa = (t_wet - t_fill) / (t_dry + t_wet - t_fill)"
                                        : "kappa = (t_wet - t_fill) / t_dry"} +
               outlets;
    }
    return "kappa = s / (1 + s)" + outlets + ", s = (t_r - t_fill) / (t_off + t_fill)";
}

void add_rounding(Reason& reason, Duration exact, Rounding rounding, const CycleStory& story) {
    reason.exact = any(exact);
    reason.rounding = rounding;
    reason.resolution = any(story.resolution);
    if (story.resolution_assumed) {
        reason.inputs.push_back(
            {WF_TEXT("smallest step of the timer"), "", any(story.resolution), Origin::assumed, {}});
    }
}

Reason why_enough_water(const CycleStory& story, const OnTimeBounds& bounds) {
    Reason reason;
    reason.brief = {WF_TEXT("enough water for %1 at the hottest hour"), {any(bounds.period)}};
    reason.explanation = {WF_TEXT("Filling the header of %1 takes %2. The rest of the run gives its pad what "
                                  "evaporates in %3 at the "
                                  "hottest hour, with a margin and the uncertainty of the readings on top."),
                          {story.bank, any(story.question.fill), any(bounds.period)}};
    const bool by_flow = flow_decided(story.question, bounds.evaporated_share);
    if (by_flow) {
        reason.explanation = {
            WF_TEXT("%1 How much of the water evaporates is taken from the measured flow and "
                    "the air: that is more than the stopwatch gives."),
            {reason.explanation}};
    }
    reason.formula =
        "t_on = t_fill + m P kappa R + U; " + share_formula(story.question, bounds.evaporated_share);
    reason.inputs = readings_of(story.question);
    reason.inputs.push_back(limit_input(story.limits, Limit::water_margin, WF_TEXT("water margin"), "m",
                                        any_share(story.margins.water_margin)));
    reason.inputs.push_back({WF_TEXT("period"), "P", any(bounds.period), Origin::derived, {}});
    reason.inputs.push_back({by_flow ? Message{WF_TEXT("share of the water that evaporates, test, by the "
                                                       "measured flow")}
                                     : Message{WF_TEXT("share of the water that evaporates, test")},
                             "kappa",
                             any_share(bounds.evaporated_share),
                             Origin::derived,
                             {}});
    if (story.question.weakest_outlet_ratio > 1.0) {
        reason.inputs.push_back({WF_TEXT("water at the far end over the weakest outlet's, in kappa already"),
                                 "q_far / q_least", any_share(story.question.weakest_outlet_ratio),
                                 Origin::derived, "outlets as described or caught"});
    }
    reason.inputs.push_back(evaporation_ratio_input(story.question));
    reason.inputs.push_back(
        {WF_TEXT("uncertainty"), "U", any(bounds.uncertainty), Origin::derived, "GUM, JCGM 100:2008"});
    reason.source = "water balance of the pad";
    return reason;
}

Reason why_no_part_dries(const CycleStory& story, const OnTimeBounds& bounds) {
    Reason reason;
    const auto gap = longest_gap(story.question, story.margins);
    reason.brief = {WF_TEXT("no part of the pad dries between two runs"), {}};
    reason.explanation = {WF_TEXT("From stop until water is back at the far end of %1, its pad gets nothing. "
                                  "At the hottest hour that may "
                                  "last %2, so the pump runs for the rest of the %3."),
                          {story.bank, any(gap), any(bounds.period)}};
    reason.inputs = readings_of(story.question);
    if (story.question.dry_start() != nullptr) {
        reason.formula = "t_on = P + t_fill - x t_dry / R";
        reason.inputs.push_back(limit_input(story.limits, Limit::drying_share,
                                            WF_TEXT("share of the dry-out time that a gap may take"), "x",
                                            any_share(story.margins.drying_share)));
    } else {
        reason.formula = "t_on = P + t_fill - (t_off + t_fill) / R";
    }
    reason.inputs.push_back({WF_TEXT("period"), "P", any(bounds.period), Origin::derived, {}});
    reason.inputs.push_back(evaporation_ratio_input(story.question));
    reason.source = "wet-dry edges start scale: ASME IMECE2018 V013T05A049";
    return reason;
}

Reason why_header_fills(const CycleStory& story, const OnTimeBounds& bounds) {
    Reason reason;
    reason.brief = {WF_TEXT("water reaches the far end"), {}};
    reason.explanation = {
        WF_TEXT("Next to nothing evaporates, so the run only has to fill the header of %1."), {story.bank}};
    reason.formula = "t_on = t_fill + U";
    reason.inputs = {
        measured(WF_TEXT("fill time"), "t_fill", story.question.fill),
        {WF_TEXT("uncertainty"), "U", any(bounds.uncertainty), Origin::derived, "GUM, JCGM 100:2008"}};
    reason.source = "common practice, no source";
    return reason;
}

ReasonInput rest_input(const CycleStory& story) {
    return limit_input(story.limits, Limit::least_rest, WF_TEXT("shortest rest"), "rest",
                       any(story.margins.least_rest));
}

const OnTimeBounds& deciding(const CycleStory& story) {
    return story.answer.banks[story.answer.deciding_bank];
}

}  // namespace

Reason why_period(const CycleStory& story) {
    Reason reason;
    reason.rule = "shortest period that fits";
    reason.brief = {WF_TEXT("the shortest period that leaves a rest of %1"), {any(story.margins.least_rest)}};
    reason.explanation = {WF_TEXT("Periods are tried from short to long; %1 is the first in which the pump "
                                  "can rest for at least %2 while "
                                  "every part of the pad stays wet."),
                          {any(story.answer.period), any(story.margins.least_rest)}};
    reason.formula = "t_on <= P - rest";
    reason.inputs = {rest_input(story)};
    for (const auto& period : story.margins.periods) {
        reason.inputs.push_back(
            limit_input(story.limits, Limit::periods, WF_TEXT("period tried"), "P", any(period)));
    }
    reason.exact = any(story.answer.period);
    reason.source = limit_text(story.limits, Limit::periods).source;
    return reason;
}

Reason why_base(const CycleStory& story) {
    const auto& bounds = deciding(story);
    Reason reason;
    switch (bounds.limited_by) {
        case LimitedBy::enough_water:
            reason = why_enough_water(story, bounds);
            break;
        case LimitedBy::no_part_dries:
            reason = why_no_part_dries(story, bounds);
            break;
        case LimitedBy::header_fill:
            reason = why_header_fills(story, bounds);
            break;
    }
    reason.rule = std::string{name_of(bounds.limited_by)};
    add_rounding(reason, bounds.largest(), Rounding::up, story);
    return reason;
}

Reason why_ceiling(const CycleStory& story) {
    Reason reason;
    reason.rule = "on-time ceiling";
    const auto most = story.answer.period - story.margins.least_rest;
    const auto exact = *story.answer.ceiling_exact;
    reason.formula = "ceiling = max(base, min(t_wet + U, P - rest))";
    reason.inputs = {{WF_TEXT("base on-time"), "base", any(*story.answer.base), Origin::derived, {}},
                     {WF_TEXT("period"), "P", any(story.answer.period), Origin::derived, {}},
                     rest_input(story)};
    if (exact == *story.answer.base) {
        reason.brief = WF_TEXT("the base already keeps the pad wet");
        reason.explanation = WF_TEXT(
            "The base on-time keeps every part wet at the hottest hour. A longer run would pump more water "
            "and "
            "cool no better, so there is nothing to trim up to.");
    } else if (exact < most) {
        reason.brief = WF_TEXT("as long as wetting a dry pad takes");
        reason.explanation = WF_TEXT(
            "No run needs to be longer than the slowest wet-through time. Trimming above the base changes "
            "how much is "
            "pumped, not how much is cooled.");
        reason.inputs.push_back({WF_TEXT("longest wet-through time with its uncertainty"),
                                 "t_wet + U",
                                 any(exact),
                                 Origin::measured,
                                 {}});
    } else {
        reason.brief = WF_TEXT("so that the pump still rests");
        reason.explanation = {WF_TEXT("A longer run would leave less than %1 of rest. Trimming above the "
                                      "base changes how much is pumped, "
                                      "not how much is cooled."),
                              {any(story.margins.least_rest)}};
    }
    reason.source = "ceiling below the period: common practice, no source";
    add_rounding(reason, exact, *story.answer.ceiling >= exact ? Rounding::up : Rounding::down, story);
    return reason;
}

Reason why_trim_step(const CycleStory& story) {
    Reason reason;
    reason.rule = "trim step";
    reason.formula = "step = (ceiling - base) / 4";
    reason.inputs = {{WF_TEXT("on-time ceiling"), "ceiling", any(*story.answer.ceiling), Origin::derived, {}},
                     {WF_TEXT("base on-time"), "base", any(*story.answer.base), Origin::derived, {}}};
    reason.source = "a quarter of the span: assumed, can be changed";
    if (!story.answer.trim_step) {
        reason.brief = WF_TEXT("nothing to trim");
        reason.explanation = WF_TEXT("Base and ceiling are the same, so there is nothing to trim.");
        return reason;
    }
    reason.brief = WF_TEXT("four steps from base to ceiling");
    reason.explanation = WF_TEXT(
        "One row: when the house is warmer than the dead band allows, the on-time gains this "
        "much at a review, and four of them reach the ceiling.");
    add_rounding(reason, (*story.answer.ceiling - *story.answer.base) / 4.0, Rounding::up, story);
    return reason;
}

Reason why_dead_band(const CycleMargins& margins) {
    const auto dead_band = margins.dead_band;
    Reason reason;
    reason.rule = "trim dead band";
    reason.brief = {WF_TEXT("no change within %1 of target"), {any(dead_band)}};
    reason.explanation = {
        WF_TEXT("Within %1 above or below target the on-time stays as it is, so that it does not chase "
                "every draught at the sensor."),
        {any(dead_band)}};
    reason.formula = "no change while |T - target| <= band";
    reason.inputs = {limit_input(margins, Limit::dead_band, WF_TEXT("dead band"), "band", any(dead_band))};
    reason.exact = any(dead_band);
    reason.source = limit_source(margins, {Limit::dead_band}, "assumed, can be changed");
    return reason;
}

Reason why_review_interval(Duration period, const CycleMargins& margins) {
    const auto house_lag = margins.house_lag;
    Reason reason;
    reason.rule = "review interval";
    reason.brief = WF_TEXT("time for the house to answer");
    reason.explanation = {
        WF_TEXT("A change of on-time shows in the house only after about %1. The review is the first "
                "whole number of periods that is shorter neither than that nor than %2."),
        {any(house_lag), any(least_review)}};
    reason.formula = "smallest n P >= max(10 min, lag)";
    reason.inputs = {{WF_TEXT("period"), "P", any(period), Origin::derived, {}},
                     limit_input(margins, Limit::house_lag, WF_TEXT("time the house takes to answer"), "lag",
                                 any(house_lag))};
    reason.exact = any(std::max<Duration>(least_review, house_lag));
    reason.rounding = Rounding::up;
    reason.resolution = any(period);
    reason.source =
        "10 min or more, and not shorter than the house takes to answer: common practice, no source";
    return reason;
}

Reason why_rinse_at(const std::optional<AnyQuantity>& from) {
    Reason reason;
    reason.rule = "rinse";
    reason.brief = WF_TEXT("at the first call of the day");
    reason.explanation = WF_TEXT(
        "Rinse at the first call inside pad hours, once the start temperature is reached and the tunnel fans "
        "run. "
        "Never on cold or young birds. Where the timer wants a clock time, take the start of pad hours.");
    if (from) {
        reason.explanation = {
            WF_TEXT(
                "Rinse at the first call inside pad hours, once the start temperature is reached and the "
                "tunnel fans run: on a mild day that is later, or never. Never on cold or young birds. Where "
                "the timer wants a clock time, take the start of pad hours, %1, and only in the hot season."),
            {*from}};
    }
    reason.source = "a rinse in the morning: common practice, no source";
    return reason;
}

Reason why_rinse_length(const CycleStory& story, const RinseNeed& need, const BankQuestion& question,
                        const Message& bank) {
    Reason reason;
    reason.rule = "rinse";
    reason.brief = WF_TEXT("wets a dry pad through and changes the header's water");
    reason.explanation = {
        WF_TEXT("With the fans on at the hottest hour a dry pad of %1 drips after %2; %3 more change the "
                "water in its "
                "header. Sump and make-up must carry it: watch the sump at the first rinse."),
        {bank, any(need.wet_through), any(need.exchange)}};
    reason.formula =
        std::string{
            "t_rinse = t_fill + wetting from dry (a = supply, b R = drying, share c at constant rate) + "} +
        (need.exchange_from_flow ? "3 V_header / flow" : "3 t_fill");
    reason.inputs = readings_of(question);
    reason.inputs.push_back(evaporation_ratio_input(question));
    reason.inputs.push_back(limit_input(story.limits, Limit::constant_share,
                                        WF_TEXT("share of drying at constant rate"), "c",
                                        any_share(story.margins.constant_share)));
    reason.inputs.push_back({WF_TEXT("wet-through with the fans on at the hottest hour"),
                             "t_wet,design",
                             any(need.wet_through),
                             Origin::derived,
                             {}});
    reason.inputs.push_back({WF_TEXT("time to change the header's water"),
                             need.exchange_from_flow ? "3 V_header / flow" : "3 t_fill", any(need.exchange),
                             need.exchange_from_flow ? Origin::derived : Origin::assumed,
                             need.exchange_from_flow ? "" : "flow or bore not known: three fill times"});
    reason.source = "wetting column; 95 % of a well-mixed volume is exchanged by three volumes";
    add_rounding(reason, need.length(), Rounding::up, story);
    return reason;
}

Reason why_no_rinse_length(const Message& bank) {
    Reason reason;
    reason.rule = "rinse";
    reason.brief = WF_TEXT("wet-through was not timed from a dry pad");
    reason.explanation = {
        WF_TEXT("%1 was timed from a wet pad, so nobody knows yet how long a dry one takes. Rinse by hand "
                "until its far end drips evenly, and time that."),
        {bank}};
    reason.source = "wetting column";
    return reason;
}

Reason why_continuous() {
    Reason reason;
    reason.rule = "continuous pumping";
    reason.brief = WF_TEXT("the pump runs all the while it is called for");
    reason.explanation = WF_TEXT(
        "On-time and period are the same, so the pump does not rest while the pads are called for. "
        "No timer cools better than that.");
    reason.formula = "t_on = P";
    reason.source = no_extra_cooling_source;
    return reason;
}

Reason why_not_while_continuous() {
    Reason reason;
    reason.rule = "continuous pumping";
    reason.brief = WF_TEXT("leave it off: the pump does not rest");
    reason.explanation =
        WF_TEXT("With the pump on all the while there is no run to trim and no dry pad to rinse.");
    reason.source = no_extra_cooling_source;
    return reason;
}

Reason why_not_on_demand() {
    Reason reason;
    reason.rule = "on demand";
    reason.brief = WF_TEXT("this timer has no such setting");
    reason.explanation = WF_TEXT(
        "This timer runs the pump all the while the pads are called for. That is continuous pumping: "
        "there is nothing to set.");
    reason.source = no_extra_cooling_source;
    return reason;
}

namespace {

// Whole percents, up for what is needed and down for what is left.
AnyQuantity percents_up(double value) {
    return any_share(std::ceil(100.0 * value - 1e-9) / 100.0);
}
AnyQuantity percents_down(double value) {
    return any_share(std::floor(100.0 * value + 1e-9) / 100.0);
}

// How much flow would make what evaporates fit, as a multiple of today's, and what would make the fill so.
// More flow to each metre of header, by a stronger pump or by fewer metres on it, shortens filling and
// wetting at least in proportion; the uncertainty is left as it is. None: no flow does, as the uncertainty
// alone fills the run.
std::optional<double> flow_that_fits(const OnTimeBounds& bounds, Duration most) {
    const double left = in_seconds(most - bounds.uncertainty);
    return left > 0.0 ? std::optional{in_seconds(bounds.need - bounds.uncertainty) / left} : std::nullopt;
}

Message needs_more_water(const Message& bank, const BankQuestion& question, const OnTimeBounds& bounds,
                         Duration resolution, const CycleMargins& margins) {
    const auto most = bounds.period - margins.least_rest;
    const Message need{
        WF_TEXT("%1: at the hottest hour it needs %2 of pumping in %3 (%4 of it to fill the "
                "header), and %5 is the most that leaves a rest."),
        {bank, any(rounded_up(bounds.need, resolution)), any(bounds.period), any(question.fill), any(most)}};
    const auto times = flow_that_fits(bounds, rounded_down(most, resolution));
    if (!times) {
        return {WF_TEXT("%1 The readings are too uncertain for any cycle: time them again."), {need}};
    }
    return {
        WF_TEXT("%1 More flow (about %2 of what it gets now), a shorter bank on this pump (about %3 of its "
                "length) or a second feed would help."),
        {need, percents_up(*times), percents_down(1.0 / *times)}};
}

Message dries_in_the_gap(const Message& bank, const BankQuestion& question, const OnTimeBounds& bounds,
                         Duration resolution, const CycleMargins& margins) {
    const auto gap = longest_gap(question, margins);
    const Message what{
        WF_TEXT("%1: a rest of %2 and %3 to fill leave the far end without water for %4, and at the "
                "hottest hour it may go without for %5."),
        {bank, any(margins.least_rest), any(question.fill), any(margins.least_rest + question.fill),
         any(gap)}};
    const auto rest = bounds.period - rounded_down(bounds.period - margins.least_rest, resolution);
    const auto fill = gap - rest;
    if (in_seconds(fill) <= 0.0) {
        return {
            WF_TEXT("%1 Even a header that stays full leaves no room for a rest: let the pump run while the "
                    "pads are called for."),
            {what}};
    }
    return {
        WF_TEXT(
            "%1 Filled within %2 it could rest. A header that stays full, a second feed or a shorter bank "
            "on this pump would help."),
        {what, any(rounded_down(fill, seconds(1.0)))}};
}

}  // namespace

std::vector<Message> obstacles_of(const Message& bank, const BankQuestion& question,
                                  const OnTimeBounds& bounds, Duration resolution,
                                  const CycleMargins& margins) {
    std::vector<Message> obstacles;
    const auto over = drying_over_supply(question, margins);
    if (over && over.value() >= 1.0) {
        obstacles.push_back(
            {WF_TEXT("%1: at the hottest hour its pad dries faster than water comes, even with the pump "
                     "always on. Give it more flow, more than %2 of what it gets now: clean outlets and "
                     "strainer, a stronger pump, or a shorter bank on this pump."),
             {bank, percents_up(over.value())}});
        return obstacles;
    }
    const auto most = rounded_down(bounds.period - margins.least_rest, resolution);
    if (rounded_up(bounds.need, resolution) > most) {
        obstacles.push_back(needs_more_water(bank, question, bounds, resolution, margins));
    }
    if (rounded_up(bounds.gap_bound, resolution) > most) {
        obstacles.push_back(dries_in_the_gap(bank, question, bounds, resolution, margins));
    }
    return obstacles;
}

}  // namespace wetfront
