// SPDX-License-Identifier: Apache-2.0
#include "cycle/margins.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "cycle/shortest_entry.h"

namespace wetfront {
namespace {

constexpr const char* night_source = "University of Georgia, night-time pad operation, 2011";
constexpr const char* changed_text = WF_TEXT("%1, changed for this farm (the program's own: %2)");

/// What is said of a limit with the program's own value.
struct Words {
    const char* text;  ///< with its value as %1
    Origin origin = Origin::assumed;
    std::string source = {};
};

Words words_of(Limit limit) {
    switch (limit) {
        case Limit::water_margin:
            return {WF_TEXT("water margin %1")};
        case Limit::least_rest:
            return {WF_TEXT("shortest rest %1")};
        case Limit::drying_share:
            return {WF_TEXT("share of the dry-out time that a gap may take %1")};
        case Limit::constant_share:
            return {WF_TEXT("share of drying at constant rate %1")};
        case Limit::periods:
            return {WF_TEXT("periods tried: %1"), Origin::assumed, "5 to 10 min: common practice, no source"};
        case Limit::house_lag:
            return {WF_TEXT("time the house takes to answer %1"), Origin::assumed,
                    "common practice, no source"};
        case Limit::dead_band:
            return {WF_TEXT("trim dead band %1")};
        case Limit::start_band:
            return {WF_TEXT("start temperature with older birds %1"), Origin::published,
                    std::string{"low to mid 80s degF: "} + night_source};
        case Limit::start_temperature:
            return {WF_TEXT("start temperature %1"), Origin::assumed,
                    std::string{"from the middle of the published band: "} + night_source};
        case Limit::older_birds:
            return {WF_TEXT("older birds: from %1 days on"), Origin::assumed, "common practice, no source"};
        case Limit::air_speed:
            return {WF_TEXT("air down the house before pads are used: at least %1"), Origin::published,
                    "500 ft/min: Czarick, Fairchild, Leu, University of Georgia, 2019"};
        case Limit::least_cooling:
            return {WF_TEXT("least cooling that is worth the damp %1"), Origin::assumed,
                    "University of Georgia gives under 3 degF (1.7 K) where it is above 80 % outside"};
        case Limit::hot_outside:
            return {WF_TEXT("outside temperature from which no humidity stops the pads %1")};
        case Limit::humidity_step:
            return {WF_TEXT("smallest step of a humidity %1")};
        case Limit::night:
            return {
                WF_TEXT("pads are to be dry by %1"), Origin::assumed,
                std::string{night_source} + ", names 22:00 to 10:00 as hours without pads, by rule of thumb"};
        case Limit::dry_face:
            return {WF_TEXT("a pad counts as dry with %1 of its face wet")};
        case Limit::longest_dry_down:
            return {WF_TEXT("a pad not dry %1 after its last run does not dry that night")};
        case Limit::clock_ahead_of_sun:
            return {WF_TEXT("clock ahead of the sun by %1 (summer time, longitude)"), Origin::assumed,
                    "1 or 2 h by site and summer time: ASHRAE Handbook - Fundamentals 2021, ch. 14, read "
                    "second hand"};
        case Limit::clock_step:
            return {WF_TEXT("smallest step of a time of day %1")};
    }
    return {""};
}

/// The numbers of a limit, as they are shown; a count of days as a duration, which a day is.
std::vector<AnyQuantity> numbers_of(const CycleMargins& margins, Limit limit) {
    switch (limit) {
        case Limit::water_margin:
            return {any_share(margins.water_margin)};
        case Limit::least_rest:
            return {any(margins.least_rest)};
        case Limit::drying_share:
            return {any_share(margins.drying_share)};
        case Limit::constant_share:
            return {any_share(margins.constant_share)};
        case Limit::periods: {
            std::vector<AnyQuantity> periods;
            for (const auto& period : margins.periods) {
                periods.push_back(any(period));
            }
            return periods;
        }
        case Limit::house_lag:
            return {any(margins.house_lag)};
        case Limit::dead_band:
            return {any(margins.dead_band)};
        case Limit::start_band:
            return {any(margins.coolest_start), any(margins.warmest_start)};
        case Limit::start_temperature:
            return {any(margins.start_temperature)};
        case Limit::older_birds:
            return {any(seconds(86400.0 * margins.older_birds_days))};
        case Limit::air_speed:
            return {any(margins.least_air_speed)};
        case Limit::least_cooling:
            return {any(margins.least_cooling)};
        case Limit::hot_outside:
            return {any(margins.hot_outside)};
        case Limit::humidity_step:
            return {any(margins.humidity_step)};
        case Limit::night:
            return {any(margins.night, Scale::clock)};
        case Limit::dry_face:
            return {any_share(margins.dry_face)};
        case Limit::longest_dry_down:
            return {any(margins.longest_dry_down)};
        case Limit::clock_ahead_of_sun:
            return {any(margins.clock_ahead_of_sun)};
        case Limit::clock_step:
            return {any(margins.clock_step)};
    }
    return {};
}

Message changed_from_own(Message said, Limit limit) {
    return {changed_text, {std::move(said), limit_value({}, limit)}};
}

std::string source_of_changed(const std::string& own) {
    return own.empty() ? own : "the program's own: " + own;
}

Result<void> check_limit(const char* item, double value, double least, double most, const char* accepted) {
    if (!(value >= least && value <= most)) {
        return bad_input(item, print_number(value, 3), accepted);
    }
    return boost::outcome_v2::success();
}

Result<void> check_more(const char* item, double value, double below, double most, const char* accepted) {
    return value > below ? check_limit(item, value, below, most, accepted)
                         : bad_input(item, print_number(value, 3), accepted);
}

template <class Q>
void take(const Optional<Q>& changed, Q& margin) {
    if (changed) {
        margin = changed->value();
    }
}

void take(const Optional<Fraction>& changed, double& margin) {
    if (changed) {
        margin = in_si(changed->value());
    }
}

}  // namespace

Message limit_value(const CycleMargins& margins, Limit limit) {
    if (limit == Limit::older_birds) {
        return {"%1", {static_cast<int>(std::lround(margins.older_birds_days))}};
    }
    Message said;
    for (const auto& number : numbers_of(margins, limit)) {
        const char* list = limit == Limit::periods ? WF_TEXT("%1, then %2") : WF_TEXT("%1 to %2");
        said = said.empty() ? Message{"%1", {number}} : Message{list, {std::move(said), number}};
    }
    return said;
}

bool is_changed(const CycleMargins& margins, Limit limit) {
    const auto same = [](const AnyQuantity& one, const AnyQuantity& other) {
        // The same number typed in another unit may miss it by the last bit.
        return std::abs(one.si - other.si) <= 1e-9 * std::max(1.0, std::abs(other.si));
    };
    return !std::ranges::equal(numbers_of(margins, limit), numbers_of({}, limit), same);
}

LimitText limit_text(const CycleMargins& margins, Limit limit) {
    const auto [text, origin, source] = words_of(limit);
    const Message said{text, {limit_value(margins, limit)}};
    if (!is_changed(margins, limit)) {
        return {said, origin, source};
    }
    return {changed_from_own(said, limit), Origin::entered, source_of_changed(source)};
}

ReasonInput limit_input(const CycleMargins& margins, Limit limit, Message name, std::string symbol,
                        AnyQuantity value) {
    const auto about = limit_text(margins, limit);
    return {is_changed(margins, limit) ? changed_from_own(std::move(name), limit) : std::move(name),
            std::move(symbol), value, about.origin, about.source};
}

std::string limit_source(const CycleMargins& margins, std::initializer_list<Limit> limits, std::string own) {
    const bool changed = std::ranges::any_of(limits, [&](Limit limit) { return is_changed(margins, limit); });
    return changed ? "changed for this farm; the program's own: " + own : own;
}

Result<void> check_cycle_limits(const CycleMargins& margins) {
    constexpr double day = 86400.0;
    WF_CHECK(check_limit("water margin", margins.water_margin, 1.0, 10.0, "1 to 10"));
    WF_CHECK(
        check_more("share of the dry-out time", margins.drying_share, 0.0, 1.0, "more than 0, at most 1"));
    if (!(margins.constant_share > 0.0 && margins.constant_share < 1.0)) {
        return bad_input("share of drying at constant rate", print_number(margins.constant_share, 3),
                         "more than 0 and less than 1");
    }
    if (margins.periods.empty()) {
        return bad_input("periods to try", "none", "at least one period");
    }
    double shortest = 0.0;
    for (const auto& period : margins.periods) {
        const double length = in_seconds(period);
        WF_CHECK(check_more("period, s", length, 0.0, day, "more than 0 s, at most 24 h"));
        WF_CHECK(check_limit("period tried next, s", length, shortest, day,
                             "not shorter than the one tried before it"));
        shortest = length;
    }
    const double rest = in_seconds(margins.least_rest);
    if (!(rest >= 0.0 && rest < shortest)) {
        return bad_input(
            "shortest rest", print_number(rest, 3) + " s",
            "0 s or more, and less than the longest period, " + print_number(shortest, 3) + " s");
    }
    WF_CHECK(check_limit("time the house takes to answer, s", in_seconds(margins.house_lag), 0.0, day,
                         "0 s to 24 h"));
    return check_limit("trim dead band, K", in_si(margins.dead_band), 0.0, 20.0, "0 to 20 K");
}

namespace {

/// The same for the limits on when pads may run.
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

}  // namespace

Result<CycleMargins> margins_of(const Farm& farm) {
    const auto& changed = farm.limits;
    CycleMargins margins;
    take(changed.coolest_start, margins.coolest_start);
    take(changed.warmest_start, margins.warmest_start);
    take(changed.start_temperature, margins.start_temperature);
    margins.older_birds_days = changed.older_birds_days.value_or(margins.older_birds_days);
    take(changed.least_air_speed, margins.least_air_speed);
    take(changed.least_cooling, margins.least_cooling);
    take(changed.hot_outside, margins.hot_outside);
    take(changed.humidity_step, margins.humidity_step);
    if (changed.night) {
        margins.night = seconds(changed.night->since_midnight().si);
    }
    take(changed.dry_face, margins.dry_face);
    take(changed.longest_dry_down, margins.longest_dry_down);
    take(changed.clock_ahead_of_sun, margins.clock_ahead_of_sun);
    take(changed.clock_step, margins.clock_step);
    take(changed.water_margin, margins.water_margin);
    take(changed.least_rest, margins.least_rest);
    take(changed.drying_share, margins.drying_share);
    take(changed.constant_share, margins.constant_share);
    take(changed.first_period, margins.periods.front());
    take(changed.second_period, margins.periods.back());
    take(changed.house_lag, margins.house_lag);
    take(changed.dead_band, margins.dead_band);
    WF_CHECK(check_cycle_limits(margins));
    WF_CHECK(check_house_limits(margins));
    return margins;
}

CycleMargins usable_margins(const Farm& farm) {
    auto margins = margins_of(farm);
    return margins ? margins.value() : CycleMargins{};
}

Limits every_limit() {
    const CycleMargins margins;
    const auto share_of = [](double value) { return Entered<Fraction>::of(from_si<Fraction>(value)); };
    // As times are shown, in seconds or minutes.
    const auto as_shown = [](Duration value) {
        const auto entry =
            Entered<Duration>::parse(show(any(value), UnitSystem::si).joined(UnitSystem::si), "");
        return entry && entry.value().value() == value ? entry.value() : Entered<Duration>::of(value);
    };
    Limits limits;
    limits.coolest_start = shortest_entry(margins.coolest_start);
    limits.warmest_start = shortest_entry(margins.warmest_start);
    limits.start_temperature = shortest_entry(margins.start_temperature);
    limits.older_birds_days = margins.older_birds_days;
    limits.least_air_speed = shortest_entry(margins.least_air_speed);
    limits.least_cooling = shortest_entry(margins.least_cooling);
    limits.hot_outside = shortest_entry(margins.hot_outside);
    limits.humidity_step = shortest_entry(margins.humidity_step);
    limits.night = TimeOfDay::at(margins.night);
    limits.dry_face = share_of(margins.dry_face);
    limits.longest_dry_down = as_shown(margins.longest_dry_down);
    limits.clock_ahead_of_sun = as_shown(margins.clock_ahead_of_sun);
    limits.clock_step = as_shown(margins.clock_step);
    limits.water_margin = share_of(margins.water_margin);
    limits.least_rest = as_shown(margins.least_rest);
    limits.drying_share = share_of(margins.drying_share);
    limits.constant_share = share_of(margins.constant_share);
    limits.first_period = as_shown(margins.periods.front());
    limits.second_period = as_shown(margins.periods.back());
    limits.house_lag = as_shown(margins.house_lag);
    limits.dead_band = shortest_entry(margins.dead_band);
    return limits;
}

}  // namespace wetfront
