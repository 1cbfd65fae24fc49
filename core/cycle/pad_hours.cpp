// SPDX-License-Identifier: Apache-2.0
#include "cycle/pad_hours.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "pad/wet_pad.h"

namespace wetfront {
namespace {

constexpr double hour = 3600.0;
constexpr int hours_of_day = 24;
constexpr int hottest = 14;  // and 15, as warm

Result<double> working(Fraction effectiveness) {
    const double e = in_si(effectiveness);
    if (!(e > 0.0 && e <= 1.0)) {
        return bad_input("effectiveness", print_number(100.0 * e, 1) + " %", "more than 0, up to 100 %");
    }
    return e;
}

const MoistAir& at(const DesignDay& day, int solar_hour) {
    return day.hours[static_cast<std::size_t>(((solar_hour % hours_of_day) + hours_of_day) % hours_of_day)];
}

/// By how many kelvins an hour is warm enough, and dry enough, for pads; below 0 it is not.
struct Spare {
    double warm;
    double dry;

    [[nodiscard]] double both() const { return std::min(warm, dry); }
    [[nodiscard]] HoursEnd lacking() const {
        return warm < 0.0 ? HoursEnd::cool_enough : HoursEnd::too_humid;
    }
};

struct Helpful {
    const DesignDay& day;
    Temperature start;
    double effectiveness;
    const CycleMargins& margins;

    [[nodiscard]] Spare spare(int solar_hour) const {
        const auto& air = at(day, solar_hour);
        const double cooling = effectiveness * (in_kelvin(air.dry_bulb) - in_kelvin(air.wet_bulb));
        return {in_kelvin(air.dry_bulb) - in_kelvin(start),
                std::max(cooling - in_si(margins.least_cooling),
                         in_kelvin(air.dry_bulb) - in_kelvin(margins.hot_outside))};
    }

    /// Where the hours end, walking from the hottest in steps of 1 or -1; at most a whole day.
    struct Edge {
        double solar_hour = 0.0;
        HoursEnd by = HoursEnd::cool_enough;
        bool found = false;
    };
    [[nodiscard]] Edge edge(int step) const {
        for (int inside = hottest; std::abs(inside - hottest) < hours_of_day; inside += step) {
            const auto here = spare(inside);
            const auto next = spare(inside + step);
            if (next.both() < 0.0) {
                const double share = here.both() / (here.both() - next.both());
                return {inside + step * share, next.lacking(), true};
            }
        }
        return {};
    }
};

}  // namespace

Result<Fraction> serving_humidity(Temperature start, Fraction effectiveness, AbsolutePressure pressure,
                                  const CycleMargins& margins) {
    WF_TRY(const double e, working(effectiveness));
    const double depression = in_si(margins.least_cooling) / e;
    WF_TRY(const auto air,
           air_from_wet_bulb(start, from_si<Temperature>(in_kelvin(start) - depression), pressure));
    return air.relative_humidity;
}

Fraction rounded_down(Fraction value, Fraction step) {
    const double steps = in_si(value) / in_si(step);
    const double near = std::round(steps);
    return from_si<Fraction>((std::abs(steps - near) < 1e-9 ? near : std::floor(steps)) * in_si(step));
}

Result<HelpfulHours> helpful_hours(const DesignDay& day, Temperature start, Fraction effectiveness,
                                   const CycleMargins& margins) {
    WF_TRY(const double e, working(effectiveness));
    const Helpful helpful{day, start, e, margins};
    HelpfulHours answer;
    const auto best = helpful.spare(hottest);
    if (best.both() < 0.0) {
        answer.kept_by = best.lacking();
        return answer;
    }
    const auto begin = helpful.edge(-1);
    const auto end = helpful.edge(1);
    if (!begin.found || !end.found) {
        answer.when = HelpfulHours::When::always;
        return answer;
    }
    answer.when = HelpfulHours::When::some;
    answer.hours = {seconds(hour * begin.solar_hour) + margins.clock_ahead_of_sun,
                    seconds(hour * end.solar_hour) + margins.clock_ahead_of_sun, end.by};
    return answer;
}

Result<std::optional<Duration>> dry_down(const ColumnRates& rates, const MoistAir& test,
                                         Fraction effectiveness, const DesignDay& day, Duration from,
                                         const CycleMargins& margins) {
    constexpr double minute = 60.0;
    const double solar = in_seconds(from - margins.clock_ahead_of_sun);
    auto in_that_hour = rates;
    int known_hour = -1;
    double deficit = 0.0;
    for (double gone = 0.0; gone < in_seconds(margins.longest_dry_down); gone += minute) {
        const int end_of_hour = static_cast<int>(std::floor((solar + gone) / hour)) + 1;
        if (end_of_hour != known_hour) {
            WF_TRY(const double ratio, evaporation_ratio(at(day, end_of_hour), test, effectiveness));
            in_that_hour.drying = rates.drying * ratio;
            known_hour = end_of_hour;
        }
        deficit = deficit_after_drying(in_that_hour, deficit, seconds(minute));
        if (wet_share(in_that_hour, deficit) <= margins.dry_face) {
            return std::optional{seconds(gone + minute)};
        }
    }
    return std::optional<Duration>{};
}

Result<int> hour_of_most_evaporation(const DesignDay& day, Fraction effectiveness) {
    int most = hottest;
    WF_TRY(const auto at_hottest, evaporation(at(day, hottest), effectiveness, from_si<Velocity>(1.0)));
    double largest = in_si(at_hottest);
    for (int candidate = 0; candidate < hours_of_day; ++candidate) {
        WF_TRY(const auto flux, evaporation(at(day, candidate), effectiveness, from_si<Velocity>(1.0)));
        if (in_si(flux) > largest) {
            largest = in_si(flux);
            most = candidate;
        }
    }
    return most;
}

}  // namespace wetfront
