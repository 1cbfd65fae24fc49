// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "rules/timer_view.h"

// Rules about what the readings say of each other.
namespace wetfront {
namespace {

const BankAdvice* advice_on(const Advice& advice, const Id& bank) {
    for (const auto& timer : advice.timers) {
        const auto found = std::ranges::find(timer.banks, bank, &BankAdvice::bank);
        if (found != timer.banks.end()) {
            return &*found;
        }
    }
    return nullptr;
}

Finding note_on(const PadBank& bank, const char* rule) {
    Finding finding;
    finding.rule = rule;
    finding.bank = bank.id;
    return finding;
}

}  // namespace

std::vector<Finding> flow_disagrees_with_timing(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* advice = advice_on(inputs.advice, bank.id);
        if (advice == nullptr || !advice->shares_disagree || !advice->share_from_timings ||
            !advice->share_from_flow) {
            continue;
        }
        const AnyQuantity timed{Kind::fraction, *advice->share_from_timings};
        const AnyQuantity by_flow{Kind::fraction, *advice->share_from_flow};
        auto finding = note_on(bank, "flow-disagrees-with-timing");
        finding.message = {
            WF_TEXT(
                "Of the water that goes to %1, %2 evaporates by the stopwatch but %3 by flow and air. They "
                "are more than 30 % apart, so one of the two is wrong; the larger is used."),
            {label_of(inputs.file.house, bank), timed, by_flow}};
        finding.remedy = WF_TEXT(
            "Measure the flow again by drawing down the sump with the make-up shut, and time again from a "
            "dry "
            "pad.");
        finding.source = "water balance of the pad; 30 %: common practice, no source";
        finding.values = {{"share_from_timings", timed}, {"share_from_flow", by_flow}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> fans_mixed(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* timed = inputs.timings.of(bank.id);
        if (timed == nullptr || !timed->fans_mixed || !timed->wet_through) {
            continue;
        }
        auto finding = note_on(bank, "fans-mixed");
        finding.message = {
            WF_TEXT("Wet-through of %1 was read with the fans running at one time and off, or not stated, at "
                    "another: these don't time the same thing. They count as read with the fans off, which "
                    "asks for more water."),
            {label_of(inputs.file.house, bank)}};
        finding.remedy = WF_TEXT(
            "Time it again with the fans in one state throughout, or set aside the readings of the other "
            "state.");
        finding.source = "common practice, no source";
        finding.values = {{"wet_through", any(timed->wet_through->mean)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
