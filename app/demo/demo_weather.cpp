// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <chrono>

#include "day/design_weather.h"
#include "demo/demo.h"
#include "demo/demo_houses.h"

namespace wetfront {
namespace {

/// The hottest hour of a day, invented, and how much cooler its coolest is.
struct InventedDay {
    const char* dry_bulb;
    const char* wet_bulb;
    const char* daily_range;
};
constexpr std::array invented_days{
    InventedDay{"92 degF", "75 degF", "18 degF"}, InventedDay{"95 degF", "76 degF", "19 degF"},
    InventedDay{"99 degF", "76 degF", "22 degF"}, InventedDay{"94 degF", "78 degF", "16 degF"}};

}  // namespace

Weather demo_weather() {
    const auto farm = demo_farm();
    const auto pressure = standard_pressure(farm.elevation->value()).value();
    const auto clock_ahead_of_sun = seconds(3600.0);
    constexpr int offset_minutes = -300;
    auto date = std::chrono::sys_days{std::chrono::year{2026} / 7 / 6};
    Weather weather;
    for (const auto& day : invented_days) {
        const auto hottest = air_from_wet_bulb(typed<Temperature>(day.dry_bulb).value(),
                                               typed<Temperature>(day.wet_bulb).value(), pressure)
                                 .value();
        const auto shape = design_day(hottest, typed<TemperatureDifference>(day.daily_range).value()).value();
        const auto one = design_day_weather(shape, clock_ahead_of_sun, date, offset_minutes).value();
        if (weather.hours.empty()) {
            weather = one;
        } else {
            weather.hours.insert(weather.hours.end(), one.hours.begin() + 1, one.hours.end());
        }
        date += std::chrono::days{1};
    }
    weather.source = "invented";
    return weather;
}

}  // namespace wetfront
