// SPDX-License-Identifier: Apache-2.0
#include "cycle/pump_runs.h"

#include <algorithm>

namespace wetfront {
namespace {

void lengthen(Optional<Duration>& on_time, const std::optional<Duration>& by) {
    if (on_time) {
        on_time = by ? Optional<Duration>{Entered<Duration>::of(on_time->value() + *by)} : std::nullopt;
    }
}

}  // namespace

std::optional<HeaderFill> measured_fill(const House& house, const VisitTimings& timings, const Timer& timer) {
    std::optional<HeaderFill> fill;
    for (const auto* bank : house.banks_of(timer)) {
        const auto* timed = timings.of(bank->id);
        if (timed == nullptr || !timed->fill) {
            return std::nullopt;
        }
        const auto mean = timed->fill->mean;
        fill = fill ? HeaderFill{std::min(fill->shortest, mean), std::max(fill->longest, mean)}
                    : HeaderFill{mean, mean};
    }
    return fill;
}

PumpRuns pump_runs(const House& house, const VisitTimings& timings, const Timer& timer,
                   const TimerSettings& settings) {
    PumpRuns runs{settings, std::nullopt, false};
    if (!counts_from_full_header(timer)) {
        return runs;
    }
    runs.fill = settings.entered_fill
                    ? HeaderFill{settings.entered_fill->value(), settings.entered_fill->value()}
                    : measured_fill(house, timings, timer);
    runs.fill_missing =
        !runs.fill && (settings.base_on_time || settings.on_time_ceiling || settings.shown_on_time);
    const auto shortest = runs.fill ? std::optional{runs.fill->shortest} : std::nullopt;
    const auto longest = runs.fill ? std::optional{runs.fill->longest} : std::nullopt;
    lengthen(runs.settings.base_on_time, shortest);
    lengthen(runs.settings.shown_on_time, shortest);
    lengthen(runs.settings.on_time_ceiling, longest);
    return runs;
}

}  // namespace wetfront
