// SPDX-License-Identifier: Apache-2.0
#include "rules/rules.h"

#include <algorithm>

#include "records/setting_ranges.h"
#include "rules/bank_against_bank.h"
#include "rules/circulation_rules.h"
#include "rules/entered_timings.h"
#include "rules/fill_rules.h"
#include "rules/guidance_rules.h"
#include "rules/header_rules.h"
#include "rules/heat_rules.h"
#include "rules/limit_rules.h"
#include "rules/pad_hours_rules.h"
#include "rules/pad_rules.h"
#include "rules/rinse_rules.h"
#include "rules/setting_range_rules.h"
#include "rules/single_settings.h"
#include "rules/sump_rules.h"
#include "rules/temperature_rules.h"
#include "rules/trim_rules.h"
#include "rules/water_need.h"
#include "rules/water_quality_rules.h"

namespace wetfront {

const std::vector<Rule>& all_rules() {
    static const std::vector<Rule> rules{
        {"limits-unusable", limits_unusable},
        {"pads-off-in-extreme-heat", pads_off_in_extreme_heat},
        {"pad-hours-end-in-heat", pad_hours_end_in_heat},
        {"pad-hours-begin-in-heat", pad_hours_begin_in_heat},
        {"cut-off-stops-pads-in-heat", cut_off_stops_pads_in_heat},
        {"cut-off-below-own-humidity", cut_off_below_own_humidity},
        {"pads-chill-young-birds", pads_chill_young_birds},
        {"rinse-on-young-birds", rinse_on_young_birds},
        {"pump-never-runs", pump_never_runs},
        {"pump-never-rests", pump_never_rests},
        {"base-below-fill", base_below_fill},
        {"base-below-need", base_below_need},
        {"drying-outruns-supply", drying_outruns_supply_of_bank},
        {"ceiling-below-wet-through", ceiling_below_wet_through},
        {"gap-outlasts-wet-pad", gap_outlasts_wet_pad},
        {"ceiling-below-base", ceiling_below_base},
        {"trim-shortens-without-end", trim_shortens_without_end},
        {"trim-rows-out-of-order", trim_rows_out_of_order},
        {"trim-against-heat", trim_against_heat},
        {"lowest-temperature-above-start", lowest_temperature_above_start},
        {"shown-on-time-differs", shown_on_time_differs},
        {"entered-fill-differs", entered_fill_differs},
        {"entered-wet-through-differs", entered_wet_through_differs},
        {"pad-hours-into-night", pad_hours_into_night},
        {"pad-hours-begin-early", pad_hours_begin_early},
        {"start-below-target", start_below_target},
        {"rinse-below-wet-through", rinse_below_wet_through},
        {"rinse-outside-pad-hours", rinse_outside_pad_hours},
        {"rinse-before-heat", rinse_before_heat},
        {"rest-too-short", rest_too_short},
        {"period-below-usual", period_below_usual},
        {"period-above-usual", period_above_usual},
        {"trim-in-one-step", trim_in_one_step},
        {"trim-within-dead-band", trim_within_dead_band},
        {"review-before-answer", review_before_answer},
        {"review-off-period", review_off_period},
        {"cut-off-by-unfit-sensor", cut_off_by_unfit_sensor},
        {"pad-hours-empty", pad_hours_empty},
        {"setting-out-of-range", setting_out_of_range, true},
        {"setting-not-on-controller", setting_not_on_controller},
        {"setting-off-resolution", setting_off_resolution},
        {"rests-against-intent", rests_against_intent},
        {"start-temperature-high", start_temperature_high},
        {"start-temperature-low", start_temperature_low},
        {"humidity-cut-off-useless", humidity_cut_off_useless},
        {"humidity-cut-off-early", humidity_cut_off_early},
        {"pump-cannot-fill-header", pump_cannot_fill_header},
        {"header-starves-outlets", header_starves_outlets},
        {"circulation-below-minimum", circulation_below_minimum},
        {"make-up-too-small", make_up_too_small},
        {"sump-runs-dry", sump_runs_dry},
        {"pad-cools-less-than-expected", pad_cools_less_than_expected},
        {"bank-cools-less", bank_cools_less},
        {"outlets-clogged", outlets_clogged},
        {"fill-slower-than-expected", fill_slower_than_expected},
        {"bank-wets-slower", bank_wets_slower},
        {"bank-fills-slower", bank_fills_slower},
        {"bank-gets-less-water", bank_gets_less_water},
        {"sump-runs-over", sump_runs_over},
        {"cycles-below-two", cycles_below_two},
        {"bleed-too-small", bleed_too_small},
        {"water-scales-pads", water_scales_pads},
        {"bank-takes-up-less", bank_takes_up_less},
        {"fill-faster-than-expected", fill_faster_than_expected},
        {"outlets-pass-too-much", outlets_pass_too_much},
        {"header-uneven", header_uneven},
        {"flow-below-ten-evaporations", flow_below_ten_evaporations},
        {"reserve-short", reserve_short},
        {"ph-out-of-range", ph_out_of_range},
        {"pad-cools-more-than-expected", pad_cools_more_than_expected},
        {"face-velocity-above-design", face_velocity_above_design},
        {"face-velocity-uneven", face_velocity_uneven},
        {"face-points-few", face_points_few},
        {"pad-pressure-drop-high", pad_pressure_drop_high},
        {"pad-pressure-drop-low", pad_pressure_drop_low},
        {"house-static-pressure-high", house_static_pressure_high},
        {"air-speed-below-500", air_speed_below_500},
        {"on-times-without-fill", on_times_without_fill},
        {"pad-not-dry-at-start", pad_not_dry_at_start},
        {"flow-disagrees-with-timing", flow_disagrees_with_timing},
        {"flow-methods-disagree", flow_methods_disagree},
        {"flow-unsure", flow_unsure},
        {"fans-mixed", fans_mixed},
        {"limits-less-safe", limits_less_safe},
    };
    return rules;
}

std::vector<Finding> check(const VisitFile& file, const VisitTimings& timings, const Advice& advice,
                           WhichSettings which) {
    const auto& settings = which == WhichSettings::found ? file.visit.found : file.visit.left;
    std::vector<TimerSettings> usual;
    std::ranges::transform(settings, std::back_inserter(usual), without_unusual);
    const RuleInputs as_read{file, timings, advice, settings};
    const RuleInputs to_judge{file, timings, advice, usual};
    std::vector<Finding> findings;
    for (const auto& rule : all_rules()) {
        std::ranges::move(rule.check(rule.as_read ? as_read : to_judge), std::back_inserter(findings));
    }
    std::ranges::stable_sort(findings, std::greater{}, &Finding::severity);
    return findings;
}

}  // namespace wetfront
