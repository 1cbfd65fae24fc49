// SPDX-License-Identifier: Apache-2.0
#include "store/running.h"

#include <algorithm>

#include "store/journal.h"
#include "store/stored_records.h"
#include "timing/stopwatch_guide.h"

namespace wetfront::store_detail {
namespace {

constexpr std::int64_t day_ms = 86'400'000;  // no reading that is used is longer
constexpr std::int64_t hour_ms = 3'600'000;  // nobody waits longer for the next event of a watched cycle

/// Across a restart only the wall clock can tell, and if it went back it cannot.
bool is_longer_ago(const Mark& mark, std::int64_t limit_ms, const Clock& clock) {
    const auto now = clock.boot_now();
    return now.boot_id == mark.at.boot_id ? (now.boot_ns - mark.at.boot_ns) / 1'000'000 > limit_ms
                                          : clock.wall_now().unix_ms - mark.wall.unix_ms > limit_ms;
}

bool stopwatch_may_run(const PumpState& state, const Clock& clock) {
    return state.running || (state.since && !is_longer_ago(*state.since, day_ms, clock));
}

}  // namespace

/// Asks for the house only where the marks alone leave it open.
Result<bool> stopwatch_runs(Statements& sql, const Id& visit, const Clock& clock) {
    const auto marks = marks_of(sql, visit);
    std::vector<Id> pumps;
    for (const auto& mark : marks) {
        if (std::find(pumps.begin(), pumps.end(), mark.pump) == pumps.end()) {
            pumps.push_back(mark.pump);
        }
    }
    const auto watched = pump_states(marks, pumps, MarksOf::proof_run);
    if (std::any_of(watched.begin(), watched.end(), [&](const PumpState& state) {
            return state.since && !is_longer_ago(*state.since, hour_ms, clock);
        })) {
        return true;
    }
    auto states = pump_states(marks, pumps);
    std::erase_if(states, [&](const PumpState& state) { return !stopwatch_may_run(state, clock); });
    if (states.empty()) {
        return false;
    }
    WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
    WF_TRY(const auto house, present(sql, RecordKind::house, head.house, house_of));
    return std::any_of(states.begin(), states.end(), [&](const PumpState& state) {
        const auto* pump = house.pump(state.pump);
        std::vector<Id> banks;
        for (const auto* bank : pump != nullptr ? house.banks_of(*pump) : std::vector<const PadBank*>{}) {
            banks.push_back(bank->id);
        }
        return is_being_timed(state, banks);
    });
}

}  // namespace wetfront::store_detail
