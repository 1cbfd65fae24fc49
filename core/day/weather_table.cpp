// SPDX-License-Identifier: Apache-2.0
#include "day/weather_table.h"

#include <cmath>

#include "air/saturation.h"
#include "base/numbers.h"

namespace wetfront::day_detail {
namespace {

// As in air/moist_air.cpp, of which this is the part that a table of a season needs.
constexpr double water_to_dry_air = 0.621945;
constexpr double dry_air_gas_constant = 287.042;

OutsideAir as_given(const MoistAir& air) {
    return {in_celsius(air.dry_bulb), in_si(air.humidity_ratio), in_celsius(air.wet_bulb),
            in_si(air.relative_humidity), 1.0 / in_si(air.specific_volume)};
}

// Air of that temperature and humidity ratio; saturated where that much does not fit in.
Result<OutsideAir> air_of(double celsius_value, double ratio, double pressure) {
    const double saturation = std::exp(air_detail::log_saturation(celsius_value).value);
    const double vapour = std::min(pressure * ratio / (water_to_dry_air + ratio), saturation);
    const double humidity = vapour / saturation;
    WF_TRY(const auto wet, wet_bulb_from_humidity(celsius(celsius_value), from_si<Fraction>(humidity),
                                                  from_si<AbsolutePressure>(pressure)));
    OutsideAir air;
    air.dry_bulb = celsius_value;
    air.ratio = water_to_dry_air * vapour / (pressure - vapour);
    air.wet_bulb = std::min(in_celsius(wet), celsius_value);
    air.humidity = humidity;
    air.dry_air = (pressure - vapour) / (dry_air_gas_constant * (celsius_value + 273.15));
    return air;
}

}  // namespace

double saturated_ratio(double celsius_value, double pressure) {
    const double vapour = std::exp(air_detail::log_saturation(celsius_value).value);
    return water_to_dry_air * vapour / (pressure - vapour);
}

double ratio_on_line(double dry_bulb, double wet, double saturated) {
    return wet >= 0.0 ? ((2501.0 - 2.326 * wet) * saturated - 1.006 * (dry_bulb - wet)) /
                            (2501.0 + 1.86 * dry_bulb - 4.186 * wet)
                      : ((2830.0 - 0.24 * wet) * saturated - 1.006 * (dry_bulb - wet)) /
                            (2830.0 + 1.86 * dry_bulb - 2.1 * wet);
}

Result<WeatherTable> weather_table(const Weather& weather) {
    constexpr std::size_t most_hours = 100'000;
    const auto count = weather.hours.size();
    if (count < 2 || count > most_hours) {
        return bad_input("weather", std::to_string(count) + " hours", "2 to 100,000 hours");
    }
    WeatherTable table;
    table.from = weather.from;
    const double since_epoch =
        static_cast<double>(weather.from.unix_ms) / 1000.0 + 60.0 * weather.from.utc_offset_minutes;
    table.clock_at_start = since_epoch - day_s * std::floor(since_epoch / day_s);
    table.hours.resize(count - 1);
    for (std::size_t h = 0; h + 1 < count; ++h) {
        const auto& begin = weather.hours[h];
        const auto& end = weather.hours[h + 1];
        auto& hour = table.hours[h];
        hour.pressure = in_si(begin.pressure);
        hour.nodes[0] = as_given(begin);
        WF_TRY(hour.nodes[1],
               air_of(0.5 * (in_celsius(begin.dry_bulb) + in_celsius(end.dry_bulb)),
                      0.5 * (in_si(begin.humidity_ratio) + in_si(end.humidity_ratio)), hour.pressure));
        if (in_si(end.pressure) == hour.pressure) {
            hour.nodes[2] = as_given(end);
        } else {
            WF_TRY(hour.nodes[2], air_of(in_celsius(end.dry_bulb), in_si(end.humidity_ratio), hour.pressure));
        }
    }
    return table;
}

}  // namespace wetfront::day_detail
