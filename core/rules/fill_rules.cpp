// SPDX-License-Identifier: Apache-2.0
#include "rules/fill_rules.h"

#include "rules/likely_causes.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

/// A fill that was read beside the one that is to be expected.
struct JudgedFill {
    const PadBank* bank = nullptr;
    TimingResult read;
    ExpectedFill expected;
    VolumeFlow flow;
    bool flow_measured = false;
    bool supply_pipe_known = false;
};

std::vector<JudgedFill> judged_fills(const RuleInputs& inputs) {
    std::vector<JudgedFill> fills;
    const auto& water = inputs.advice.water;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* timed = inputs.timings.of(bank.id);
        const auto expected = expected_fill(water, bank);
        if (timed == nullptr || !timed->fill || !expected) {
            continue;
        }
        const auto& supplied = *water.bank(bank.id);
        fills.push_back({&bank, *timed->fill, *expected, *supplied.flow, supplied.flow_measured,
                         water.pump(bank.pump)->riser.has_value()});
    }
    return fills;
}

Finding finding_of(const JudgedFill& fill, const char* rule, Severity severity) {
    auto finding = finding_about(fill.bank, rule, severity);
    finding.source = fill.expected.from_front
                         ? "filling front from flow, bore and outlets; its model has no source of its own"
                         : "pipe volume over flow, times 1.3 to 2.2: common practice, no source";
    finding.values = {{"fill", any(fill.read.mean)},
                      {"fill_uncertainty", any(fill.read.expanded)},
                      {"expected_fill", any(fill.expected.usual)},
                      {"least_expected", any(fill.expected.least)},
                      {"most_expected", any(fill.expected.most)},
                      {"flow", any(fill.flow)}};
    return finding;
}

std::vector<LikelyCause> causes_of_slow(const JudgedFill& fill) {
    std::vector<LikelyCause> causes;
    if (fill.flow_measured) {
        causes = {likely::air_on_suction(), likely::water_lost_at_header(), likely::wrong_description(),
                  likely::clogged_filter(), likely::half_shut_valve()};
    } else {
        causes = {likely::clogged_filter(), likely::half_shut_valve(),      likely::air_on_suction(),
                  likely::worn_pump(),      likely::water_lost_at_header(), likely::leaking_supply()};
    }
    if (!fill.supply_pipe_known) {
        causes.insert(
            causes.begin(),
            {WF_TEXT("The pipe from pump to header, which is not entered, holds the difference."),
             WF_TEXT("Enter its length and bore, or time the water to the pump end of the header.")});
    }
    return causes;
}

}  // namespace

std::vector<Finding> fill_slower_than_expected(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& fill : judged_fills(inputs)) {
        if (fill.read.mean - fill.read.expanded <= fill.expected.most) {
            continue;
        }
        const auto late = fill.read.mean - fill.expected.usual;
        auto finding = finding_of(fill, "fill-slower-than-expected",
                                  fill.supply_pipe_known ? Severity::waste : Severity::note);
        finding.message = {
            WF_TEXT("Water takes %1 ± %2 to the far end of %3; at %4 about %5 is to be expected, at most %6. "
                    "Every run pumps %7 longer before the far end gets water."),
            {any(fill.read.mean), any(fill.read.expanded), label_of(inputs.file.house, *fill.bank),
             any(fill.flow), any(fill.expected.usual), any(fill.expected.most), any(late)}};
        finding.remedy = WF_TEXT(
            "Find the cause, likeliest first, then time the fill again: settings built on this one carry "
            "the loss along.");
        finding.causes = causes_of_slow(fill);
        finding.values.push_back({"later", any(late)});
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> fill_faster_than_expected(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& fill : judged_fills(inputs)) {
        if (fill.read.mean + fill.read.expanded >= fill.expected.least) {
            continue;
        }
        const auto early = fill.expected.usual - fill.read.mean;
        auto finding = finding_of(fill, "fill-faster-than-expected", Severity::note);
        finding.message = {
            WF_TEXT("Water is at the far end of %1 after only %2 ± %3; at %4 about %5 is to be expected, at "
                    "least %6. If the header was not empty, an on-time built on this is up to %7 short."),
            {label_of(inputs.file.house, *fill.bank), any(fill.read.mean), any(fill.read.expanded),
             any(fill.flow), any(fill.expected.usual), any(fill.expected.least), any(early)}};
        finding.remedy = WF_TEXT("Time the fill again from an empty header.");
        finding.causes = {likely::header_not_empty(), likely::wrong_description()};
        if (!fill.expected.from_front) {
            // Less is lost on the way; but never does the pipe alone fill faster than its volume over flow.
            finding.causes.insert(finding.causes.begin() + 1, likely::clogged_outlets());
        }
        finding.values.push_back({"earlier", any(early)});
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
