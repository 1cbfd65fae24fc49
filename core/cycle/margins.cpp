// SPDX-License-Identifier: Apache-2.0
#include "cycle/margins.h"

#include <cmath>

#include "base/numbers.h"

namespace wetfront {
namespace {

AnyQuantity share(double value) {
    return {Kind::fraction, value, Scale::normal};
}

Message periods_text(const std::vector<Duration>& periods) {
    Message list;
    for (const auto& period : periods) {
        list = list.empty() ? Message{"%1", {any(period)}}
                            : Message{WF_TEXT("%1, then %2"), {list, any(period)}};
    }
    return {WF_TEXT("periods tried: %1"), {list}};
}

Result<void> check_limit(const char* item, double value, double least, double most, const char* accepted) {
    if (!(value >= least && value <= most)) {
        return bad_input(item, print_number(value, 3), accepted);
    }
    return boost::outcome_v2::success();
}

}  // namespace

LimitText limit_text(const CycleMargins& margins, Limit limit) {
    switch (limit) {
        case Limit::water_margin:
            return {{WF_TEXT("water margin %1"), {share(margins.water_margin)}}, Origin::assumed, ""};
        case Limit::least_rest:
            return {{WF_TEXT("shortest rest %1"), {any(margins.least_rest)}}, Origin::assumed, ""};
        case Limit::drying_share:
            return {
                {WF_TEXT("share of the dry-out time that a gap may take %1"), {share(margins.drying_share)}},
                Origin::assumed,
                ""};
        case Limit::constant_share:
            return {{WF_TEXT("share of drying at constant rate %1"), {share(margins.constant_share)}},
                    Origin::assumed,
                    ""};
        case Limit::periods:
            return {periods_text(margins.periods), Origin::assumed,
                    "5 to 10 min: common practice, no source"};
        case Limit::house_lag:
            return {{WF_TEXT("time the house takes to answer %1"), {any(margins.house_lag)}},
                    Origin::assumed,
                    "common practice, no source"};
        case Limit::dead_band:
            return {{WF_TEXT("trim dead band %1"), {any(margins.dead_band)}}, Origin::assumed, ""};
        case Limit::start_band:
            return {{WF_TEXT("start temperature with older birds between %1 and %2"),
                     {any(margins.coolest_start), any(margins.warmest_start)}},
                    Origin::published,
                    "low to mid 80s degF: University of Georgia, night-time pad operation, 2011"};
        case Limit::start_temperature:
            return {{WF_TEXT("start temperature %1, from the middle of the published band"),
                     {any(margins.start_temperature)}},
                    Origin::assumed,
                    "band: University of Georgia, night-time pad operation, 2011"};
        case Limit::older_birds:
            return {{WF_TEXT("older birds: from %1 days on"),
                     {static_cast<int>(std::lround(margins.older_birds_days))}},
                    Origin::assumed,
                    "common practice, no source"};
        case Limit::air_speed:
            return {{WF_TEXT("air down the house before pads are used: at least %1"),
                     {any(margins.least_air_speed)}},
                    Origin::published,
                    "500 ft/min: Czarick, Fairchild, Leu, University of Georgia, 2019"};
        case Limit::least_cooling:
            return {{WF_TEXT("least cooling that is worth the damp %1"), {any(margins.least_cooling)}},
                    Origin::assumed,
                    "University of Georgia gives under 3 degF (1.7 K) where it is above 80 % outside"};
        case Limit::hot_outside:
            return {{WF_TEXT("outside temperature from which no humidity stops the pads %1"),
                     {any(margins.hot_outside)}},
                    Origin::assumed,
                    ""};
        case Limit::humidity_step:
            return {{WF_TEXT("smallest step of a humidity %1"), {any(margins.humidity_step)}},
                    Origin::assumed,
                    ""};
        case Limit::night:
            return {{WF_TEXT("pads are to be dry by %1"), {any(margins.night, Scale::clock)}},
                    Origin::assumed,
                    "University of Georgia, night-time pad operation, 2011, names 22:00 to 10:00 as hours "
                    "without pads, by rule of thumb"};
        case Limit::dry_face:
            return {{WF_TEXT("a pad counts as dry with %1 of its face wet"), {share(margins.dry_face)}},
                    Origin::assumed,
                    ""};
        case Limit::longest_dry_down:
            return {{WF_TEXT("a pad not dry %1 after its last run does not dry that night"),
                     {any(margins.longest_dry_down)}},
                    Origin::assumed,
                    ""};
        case Limit::clock_ahead_of_sun:
            return {
                {WF_TEXT("clock ahead of the sun by %1 (summer time, longitude)"),
                 {any(margins.clock_ahead_of_sun)}},
                Origin::assumed,
                "1 or 2 h by site and summer time: ASHRAE Handbook - Fundamentals 2021, ch. 14, read second "
                "hand"};
        case Limit::clock_step:
            return {{WF_TEXT("smallest step of a time of day %1"), {any(margins.clock_step)}},
                    Origin::assumed,
                    ""};
    }
    return {};
}

Result<void> check_house_limits(const CycleMargins& margins) {
    constexpr double hour = 3600.0;
    const double start = in_celsius(margins.start_temperature);
    WF_CHECK(check_limit("coolest start temperature, degC", in_celsius(margins.coolest_start), 15.0, 45.0,
                         "15 to 45 degC"));
    WF_CHECK(check_limit("warmest start temperature, degC", in_celsius(margins.warmest_start), 15.0, 45.0,
                         "15 to 45 degC"));
    WF_CHECK(check_limit("start temperature, degC", start, in_celsius(margins.coolest_start),
                         in_celsius(margins.warmest_start), "within the band of start temperatures"));
    WF_CHECK(check_limit("age of older birds, days", margins.older_birds_days, 0.0, 700.0, "0 to 700 days"));
    WF_CHECK(check_limit("least air speed, m/s", in_si(margins.least_air_speed), 0.0, 10.0, "0 to 10 m/s"));
    WF_CHECK(check_limit("least cooling, K", in_si(margins.least_cooling), 0.1, 10.0, "0.1 to 10 K"));
    WF_CHECK(check_limit("hot outside, degC", in_celsius(margins.hot_outside), start, 55.0,
                         "the start temperature to 55 degC"));
    WF_CHECK(check_limit("step of a humidity", in_si(margins.humidity_step), 0.001, 0.2, "0.1 to 20 %"));
    WF_CHECK(check_limit("night, s after midnight", in_seconds(margins.night), 12.0 * hour, 24.0 * hour,
                         "12:00 to 24:00"));
    WF_CHECK(check_limit("wet share of a dry pad", margins.dry_face, 0.001, 0.5, "0.1 to 50 %"));
    WF_CHECK(check_limit("longest dry-down, s", in_seconds(margins.longest_dry_down), 60.0, 12.0 * hour,
                         "1 min to 12 h"));
    WF_CHECK(check_limit("clock ahead of the sun, s", in_seconds(margins.clock_ahead_of_sun), 0.0, 3.0 * hour,
                         "0 to 3 h"));
    WF_CHECK(
        check_limit("step of a time of day, s", in_seconds(margins.clock_step), 60.0, hour, "1 to 60 min"));
    return boost::outcome_v2::success();
}

}  // namespace wetfront
