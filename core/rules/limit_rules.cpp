// SPDX-License-Identifier: Apache-2.0
#include "rules/limit_rules.h"

#include <cmath>

#include "rules/rule_parts.h"

namespace wetfront {
namespace {

AnyQuantity percent(double value) {
    return any(from_si<Fraction>(value));
}

/// A limit on its less safe side, and what that costs.
struct LessSafe {
    Limit limit;
    bool holds;
    Message message;
    AnyQuantity value;
    AnyQuantity own;
};

std::vector<LessSafe> how_long_pumps_run(const CycleMargins& now, const CycleMargins& own) {
    return {
        {Limit::water_margin,
         now.water_margin < own.water_margin - rounding,
         {WF_TEXT(
              "Runs bring %1 of the water that a pad evaporates at the hottest hour, not %2 as the program "
              "would: where an outlet clogs or a day is hotter, the far end is the first to dry."),
          {percent(now.water_margin), percent(own.water_margin)}},
         percent(now.water_margin),
         percent(own.water_margin)},
        {Limit::least_rest,
         now.least_rest < own.least_rest - seconds(rounding),
         {WF_TEXT(
              "Rests of %1 are advised where the program asks for %2: a pump that is started again so soon "
              "wears, and its motor has less time to cool."),
          {any(now.least_rest), any(own.least_rest)}},
         any(now.least_rest),
         any(own.least_rest)},
        {Limit::drying_share,
         now.drying_share > own.drying_share + rounding,
         {WF_TEXT(
              "The far end may go without water for %1 of the time that it stays wet, not %2 as the program "
              "would: that leaves %3 of it for a hotter day and an error of the stopwatch before it dries, "
              "cools less and scales."),
          {percent(now.drying_share), percent(own.drying_share), percent(1.0 - now.drying_share)}},
         percent(now.drying_share),
         percent(own.drying_share)},
        {Limit::constant_share,
         now.constant_share < own.constant_share - rounding,
         {WF_TEXT(
              "With a share of drying at constant rate of %1 and not %2, a pad is taken to dry more slowly "
              "at first: rinses get shorter, and that it dries faster than water comes is found later."),
          {percent(now.constant_share), percent(own.constant_share)}},
         percent(now.constant_share),
         percent(own.constant_share)}};
}

std::vector<LessSafe> when_pads_run(const CycleMargins& now, const CycleMargins& own) {
    const auto days = [](double age) { return static_cast<int>(std::lround(age)); };
    const auto as_time = [](double age) { return any(seconds(86400.0 * age), Scale::coarse); };
    const auto degrees = from_si<TemperatureDifference>(rounding);
    return {
        {Limit::start_band,
         now.warmest_start > own.warmest_start + degrees,
         {WF_TEXT("Pads may start as late as %1, %2 above the published band: older birds stand that much "
                  "hotter before any cooling begins."),
          {any(now.warmest_start), any(TemperatureDifference{now.warmest_start - own.warmest_start})}},
         any(now.warmest_start),
         any(own.warmest_start)},
        {Limit::start_band,
         now.coolest_start < own.coolest_start - degrees,
         {WF_TEXT("Pads may start as early as %1, %2 below the published band: air is wetted where moving it "
                  "would do, and litter gets damp."),
          {any(now.coolest_start), any(TemperatureDifference{own.coolest_start - now.coolest_start})}},
         any(now.coolest_start),
         any(own.coolest_start)},
        {Limit::older_birds,
         now.older_birds_days < own.older_birds_days - rounding,
         {WF_TEXT(
              "Birds count as older from %1 days on, not from %2: the start temperature and the rinse then "
              "hold for birds that wet, moving air can chill."),
          {days(now.older_birds_days), days(own.older_birds_days)}},
         as_time(now.older_birds_days),
         as_time(own.older_birds_days)},
        {Limit::air_speed,
         now.least_air_speed < own.least_air_speed * (1.0 - rounding),
         {WF_TEXT("Pads count as usable from %1 of air down the house on, not from %2: slower damp air takes "
                  "less heat off birds."),
          {any(now.least_air_speed), any(own.least_air_speed)}},
         any(now.least_air_speed),
         any(own.least_air_speed)},
        {Limit::least_cooling,
         now.least_cooling > own.least_cooling + degrees,
         {WF_TEXT("Pads count as useless until they cool by %1, not by %2: the humidity cut-off and the pad "
                  "hours take away that much cooling where it is there."),
          {any(now.least_cooling), any(own.least_cooling)}},
         any(now.least_cooling),
         any(own.least_cooling)},
        {Limit::hot_outside,
         now.hot_outside > own.hot_outside + degrees,
         {WF_TEXT(
              "Up to %1 outside, and not only up to %2, humidity may stop the pads: birds are without them "
              "in that heat."),
          {any(now.hot_outside), any(own.hot_outside)}},
         any(now.hot_outside),
         any(own.hot_outside)},
        {Limit::night,
         now.night > own.night + seconds(rounding),
         {WF_TEXT(
              "Pads may stay wet until %1, not only until %2: the house is damp for longer into the night, "
              "and litter with it."),
          {any(now.night, Scale::clock), any(own.night, Scale::clock)}},
         any(now.night, Scale::clock),
         any(own.night, Scale::clock)}};
}

}  // namespace

std::vector<Finding> limits_unusable(const RuleInputs& inputs) {
    const auto changed = margins_of(inputs.file.farm);
    if (changed) {
        return {};
    }
    auto finding = finding_about(nullptr, "limits-unusable", Severity::fault);
    finding.message = {
        WF_TEXT("The margins and limits that were changed for this farm cannot be used together (%1): advice "
                "and findings are made with the program's own, which nobody here may have wanted."),
        {changed.error().text()}};
    finding.remedy = WF_TEXT("Put that limit right, or set it back to the program's own.");
    finding.source = "limits of the advice, each with its source";
    return {finding};
}

std::vector<Finding> limits_less_safe(const RuleInputs& inputs) {
    const auto& now = inputs.advice.margins;
    const CycleMargins own;
    std::vector<Finding> findings;
    for (const auto& list : {when_pads_run(now, own), how_long_pumps_run(now, own)}) {
        for (const auto& each : list) {
            if (!each.holds) {
                continue;
            }
            auto finding = finding_about(nullptr, "limits-less-safe", Severity::note);
            finding.message = each.message;
            finding.remedy = {WF_TEXT("Set it back to %1, or make sure that whoever chose it knows that."),
                              {limit_value(own, each.limit)}};
            const auto source = limit_text(own, each.limit).source;
            finding.source =
                source.empty() ? "the program's own value: assumed" : "the program's own value: " + source;
            finding.values = {{"limit", each.value}, {"own", each.own}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

}  // namespace wetfront
