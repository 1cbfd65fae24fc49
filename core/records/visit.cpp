// SPDX-License-Identifier: Apache-2.0
#include "records/visit.h"

#include <algorithm>

namespace wetfront {
namespace {

const TimerSettings* settings_of(const std::vector<TimerSettings>& all, const Id& timer) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const TimerSettings& settings) { return settings.timer == timer; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

bool Visit::ticked(std::string_view wanted) const {
    return std::any_of(ticks.begin(), ticks.end(),
                       [&](const Tick& tick) { return tick.id == wanted && tick.done; });
}

const TimerSettings* Visit::found_of(const Id& timer) const {
    return settings_of(found, timer);
}
const TimerSettings* Visit::left_of(const Id& timer) const {
    return settings_of(left, timer);
}

const PumpFlow* Visit::measured_flow(const Id& pump) const {
    const auto found = std::ranges::find(conditions.flows, pump, &PumpFlow::pump);
    return found == conditions.flows.end() ? nullptr : &*found;
}

const BankConditions* Visit::conditions_at(const Id& bank) const {
    const auto found = std::ranges::find(conditions.at_banks, bank, &BankConditions::bank);
    return found == conditions.at_banks.end() ? nullptr : &*found;
}

VisitTimings timings_of(const VisitFile& file) {
    std::vector<BankOfPump> banks;
    banks.reserve(file.house.banks.size());
    for (const auto& bank : file.house.banks) {
        banks.push_back({bank.id, bank.pump});
    }
    return timings_of(file.visit.marks, banks, file.visit.set_aside);
}

}  // namespace wetfront
