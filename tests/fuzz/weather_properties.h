// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "day/weather_file.h"
#include "properties.h"

namespace wetfront::fuzz {

/// Runs and gaps of a file follow each other hour by hour, from the first to the last, and none is half one.
inline void must_be_whole(const WeatherFile& file) {
    constexpr std::int64_t hour_ms = 3'600'000;
    must(!file.runs.empty(), "a file that is read holds weather");
    auto next = file.runs.front().from.unix_ms;
    if (!file.gaps.empty()) {
        next = std::min(next, file.gaps.front().from.unix_ms);
    }
    auto run = file.runs.begin();
    auto gap = file.gaps.begin();
    while (run != file.runs.end() || gap != file.gaps.end()) {
        if (run != file.runs.end() && run->from.unix_ms == next) {
            must(run->hours.size() >= 2, "a run has at least two hours");
            next += hour_ms * static_cast<std::int64_t>(run->hours.size());
            ++run;
        } else {
            must(gap != file.gaps.end() && gap->from.unix_ms == next, "an hour is in a run or in a gap");
            must(gap->to >= gap->from, "a gap ends where it begins or later");
            must(!gap_words(*gap).empty(), "a gap can be told");
            next = gap->to.unix_ms + hour_ms;
            ++gap;
        }
    }
    for (const auto& each : file.runs) {
        for (const auto& air : each.hours) {
            must(std::isfinite(in_kelvin(air.wet_bulb)) && in_si(air.relative_humidity) <= 1.0 &&
                     in_kelvin(air.wet_bulb) <= in_kelvin(air.dry_bulb) + 1e-6,
                 "every hour is moist air");
        }
    }
    for (const auto& note : file.notes) {
        must(!in_english(note, UnitSystem::us).empty(), "a note can be shown");
    }
}

}  // namespace wetfront::fuzz
