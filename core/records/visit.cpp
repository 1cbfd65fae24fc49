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

const ProofNotes* Visit::proof_of_timer(const Id& timer) const {
    const auto found = std::ranges::find(proof, timer, &ProofNotes::timer);
    return timer.empty() || found == proof.end() ? nullptr : &*found;
}

const ProofNotes* Visit::proof_of_bank(const Id& bank) const {
    const auto found = std::ranges::find(proof, bank, &ProofNotes::bank);
    return bank.empty() || found == proof.end() ? nullptr : &*found;
}

std::vector<BankOfPump> banks_of_pumps(const House& house) {
    std::vector<BankOfPump> banks;
    banks.reserve(house.banks.size());
    for (const auto& bank : house.banks) {
        banks.push_back({bank.id, bank.pump});
    }
    return banks;
}

VisitTimings timings_of(const VisitFile& file) {
    return timings_of(file.visit.marks, banks_of_pumps(file.house), file.visit.set_aside);
}

}  // namespace wetfront
