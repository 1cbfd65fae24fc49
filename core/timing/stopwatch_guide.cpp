// SPDX-License-Identifier: Apache-2.0
#include "timing/stopwatch_guide.h"

#include <algorithm>

namespace wetfront {
namespace {

bool marked(const PumpState& pump, MarkKind kind, const Id& bank) {
    return std::any_of(pump.marks_since.begin(), pump.marks_since.end(),
                       [&](const Mark& mark) { return mark.kind == kind && mark.bank == bank; });
}

// The arrivals still to come, the bank at hand first: a person marks what he stands in front of.
std::vector<PossibleMark> arrivals_to_come(const PumpState& pump, std::span<const Id> banks,
                                           const Id& at_bank, MarkKind first, MarkKind second) {
    std::vector<Id> order{banks.begin(), banks.end()};
    std::stable_partition(order.begin(), order.end(), [&](const Id& bank) { return bank == at_bank; });
    std::vector<PossibleMark> to_come;
    for (const auto& bank : order) {
        if (!marked(pump, first, bank) && !marked(pump, second, bank)) {
            to_come.push_back({first, bank});
        }
        if (!marked(pump, second, bank)) {
            to_come.push_back({second, bank});
        }
    }
    return to_come;
}

}  // namespace

StopwatchGuide stopwatch_guide(const PumpState& pump, std::span<const Id> banks, const Id& at_bank,
                               PadsAtStart next_start) {
    std::vector<PossibleMark> offers;
    const PossibleMark start{MarkKind::pump_start, {}};
    const PossibleMark stop{MarkKind::pump_stop, {}};
    if (pump.running) {
        offers = arrivals_to_come(pump, banks, at_bank, MarkKind::water_at_far_end, MarkKind::far_end_drips);
        offers.push_back(stop);
    } else if (!pump.since) {
        offers = next_start == PadsAtStart::dripping ? std::vector{stop, start} : std::vector{start, stop};
    } else if (next_start == PadsAtStart::dripping) {
        offers = {start};
    } else {
        offers = arrivals_to_come(pump, banks, at_bank, MarkKind::drip_ends, MarkKind::first_dry_patch);
        // Dripping ends minutes before anything dries, on every bank.
        std::stable_partition(offers.begin(), offers.end(),
                              [](const PossibleMark& mark) { return mark.kind == MarkKind::drip_ends; });
        offers.push_back(start);
    }
    return {offers.front(), {offers.begin() + 1, offers.end()}};
}

bool is_being_timed(const PumpState& pump, std::span<const Id> banks) {
    if (!pump.since) {
        return false;
    }
    return pump.running || std::any_of(banks.begin(), banks.end(), [&](const Id& bank) {
               return !marked(pump, MarkKind::first_dry_patch, bank);
           });
}

}  // namespace wetfront
