// SPDX-License-Identifier: Apache-2.0
#include "rules/design_clock.h"

#include <algorithm>
#include <cmath>

#include "rules/rule_parts.h"

namespace wetfront {
namespace {

constexpr int hours_of_day = 24;
constexpr int hottest_by_sun = 14 * 60 + 30;

/// The start temperature that a timer holds, else the advised one.
std::optional<Temperature> start_of(const TimerView& view) {
    if (view.can_hold(TemplateKey::start_temperature) && view.settings().start_temperature) {
        return view.settings().start_temperature->value();
    }
    const auto* advised = view.advice != nullptr ? view.advice->advised(Setting::start_temperature) : nullptr;
    return advised != nullptr && advised->value ? std::optional{from_si<Temperature>(advised->value->si)}
                                                : std::nullopt;
}

double between(double a, double b, double share) {
    return a + share * (b - a);
}

}  // namespace

std::string design_clock_source(const CycleMargins& margins) {
    return "hours of the design day: ASHRAE Handbook - Fundamentals 2021, ch. 14, table 6, read second hand; "
           "clock " +
           (is_changed(margins, Limit::clock_ahead_of_sun)
                ? std::string{"ahead of the sun: changed for this farm"}
                : std::string{"1 h ahead of the sun: assumed"});
}

AirAt air_at(const DesignDay& day, int minute, const CycleMargins& margins) {
    const double solar = minute / 60.0 - in_seconds(margins.clock_ahead_of_sun) / 3600.0;
    const double hour = std::floor(solar);
    const auto index = [](double h) {
        return static_cast<std::size_t>((static_cast<int>(h) % hours_of_day + hours_of_day) % hours_of_day);
    };
    const auto& before = day.hours[index(hour)];
    const auto& after = day.hours[index(hour + 1.0)];
    const double share = solar - hour;
    return {
        from_si<Temperature>(between(in_kelvin(before.dry_bulb), in_kelvin(after.dry_bulb), share)),
        from_si<Temperature>(between(in_kelvin(before.wet_bulb), in_kelvin(after.wet_bulb), share)),
        from_si<Fraction>(between(in_si(before.relative_humidity), in_si(after.relative_humidity), share))};
}

int hottest_minute(const CycleMargins& margins) {
    return hottest_by_sun + static_cast<int>(std::lround(in_seconds(margins.clock_ahead_of_sun) / 60.0));
}

std::optional<PartOfDay> part_of(const DesignDay& day, const CycleMargins& margins,
                                 const std::function<bool(int minute, const AirAt& air)>& holds) {
    std::optional<PartOfDay> part;
    for (int minute = 0; minute < minutes_of_day; minute += day_step_minutes) {
        const auto air = air_at(day, minute, margins);
        if (!holds(minute, air)) {
            continue;
        }
        if (!part) {
            part = PartOfDay{0, air.dry_bulb, minute};
        }
        part->minutes += day_step_minutes;
        if (air.dry_bulb > part->hottest) {
            part->hottest = air.dry_bulb;
            part->at = minute;
        }
    }
    return part;
}

std::optional<Duration> called_for(const RuleInputs& inputs, const TimerView& view) {
    const auto& day = inputs.advice.weather.day;
    const auto start = start_of(view);
    if (!day || !start) {
        return std::nullopt;
    }
    const bool outside_sensor = std::ranges::any_of(inputs.file.house.sensors, [](const Sensor& sensor) {
        return sensor.kind == SensorKind::humidity && sensor.place == SensorPlace::outside;
    });
    const auto& cut_off = view.settings().humidity_cut_off;
    const bool cuts = outside_sensor && cut_off && view.can_hold(TemplateKey::humidity_cut_off);
    const auto part = part_of(*day, inputs.advice.margins, [&](int minute, const AirAt& air) {
        return air.dry_bulb >= *start && view.pads_may_run_at(minute) &&
               !(cuts && air.relative_humidity > cut_off->value());
    });
    return part ? std::optional{seconds(60.0 * part->minutes)} : std::nullopt;
}

Duration to_the_minute(Duration time) {
    return seconds(60.0 * std::round(in_seconds(time) / 60.0));
}

std::optional<Fraction> best_pad(const RuleInputs& inputs, const TimerView& view) {
    std::optional<Fraction> best;
    for (const auto* bank : view.banks) {
        const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, *bank).value;
        if (in_si(pad) > 0.0 && (!best || pad > *best)) {
            best = pad;
        }
    }
    return best;
}

}  // namespace wetfront
