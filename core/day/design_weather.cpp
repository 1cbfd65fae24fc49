// SPDX-License-Identifier: Apache-2.0
#include "day/design_weather.h"

#include <algorithm>
#include <cmath>

#include "day/weather_file.h"

namespace wetfront {

Result<MoistAir> air_between(const MoistAir& before, const MoistAir& after, double share) {
    if (!(share > 0.0)) {
        return before;
    }
    const auto between = [&](double a, double b) { return a + share * (b - a); };
    const auto dry_bulb =
        from_si<Temperature>(between(in_kelvin(before.dry_bulb), in_kelvin(after.dry_bulb)));
    const double ratio = between(in_si(before.humidity_ratio), in_si(after.humidity_ratio));
    WF_TRY(const auto saturated, air_from_humidity(dry_bulb, from_si<Fraction>(1.0), before.pressure));
    if (ratio >= in_si(saturated.humidity_ratio)) {
        return saturated;
    }
    return air_from_humidity_ratio(dry_bulb, from_si<HumidityRatio>(ratio), before.pressure);
}

Result<Weather> design_day_weather(const DesignDay& day, Duration clock_ahead_of_sun,
                                   std::chrono::year_month_day date, std::int32_t offset_minutes) {
    constexpr int hours_of_day = 24;
    constexpr std::int64_t minute_ms = 60'000;
    if (!date.ok()) {
        return bad_input("day", "", "a date of the calendar");
    }
    const auto at = [&](int hour) -> const MoistAir& {
        return day.hours.at(static_cast<std::size_t>((hour % hours_of_day + hours_of_day) % hours_of_day));
    };
    const std::int64_t days = std::chrono::sys_days{date}.time_since_epoch().count();
    Weather weather{"design day", {days * 1440 * minute_ms - offset_minutes * minute_ms, offset_minutes}, {}};
    for (int hour = 0; hour <= hours_of_day; ++hour) {
        const double solar = hour - in_seconds(clock_ahead_of_sun) / 3600.0;
        const int before = static_cast<int>(std::floor(solar));
        WF_TRY(weather.hours.emplace_back(), air_between(at(before), at(before + 1), solar - before));
    }
    return weather;
}

Result<Weather> design_weather_of(const VisitFile& file, const Advice& advice) {
    if (!advice.weather.day) {
        return bad_input(
            "design day", "",
            "the farm's design dry bulb, coincident wet bulb and daily range, or a weather file");
    }
    WF_TRY(const auto date, parse_day(local_date(file.visit.started), "visit"));
    return design_day_weather(*advice.weather.day, advice.margins.clock_ahead_of_sun, date,
                              file.visit.started.utc_offset_minutes);
}

Result<Duration> timers_clock_ahead(const VisitFile& file, const Weather& weather) {
    constexpr int most_minutes = 180;
    const int minutes = file.visit.started.utc_offset_minutes - weather.from.utc_offset_minutes;
    if (minutes < -most_minutes || minutes > most_minutes) {
        return bad_input("weather", to_iso8601(weather.from),
                         "a time zone within 3 h of the visit's; is it the weather of another place?");
    }
    return seconds(60.0 * minutes);
}

}  // namespace wetfront
