// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "pad/measured_pad.h"
#include "rules/likely_causes.h"
#include "rules/pad_rules.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

/// The pads of one reading behind them, measured against published.
struct JudgedPad {
    const PadBank* bank = nullptr;
    bool for_all = false;  ///< one reading stands for several banks
    PadEffectiveness pad;
    EffectivenessComparison comparison;
};

std::vector<JudgedPad> judged_pads(const RuleInputs& inputs) {
    std::vector<JudgedPad> judged;
    const auto& house = inputs.file.house;
    bool shared_judged = false;
    for (const auto& bank : house.banks) {
        const auto* at = inputs.file.visit.conditions_at(bank.id);
        const bool own = at != nullptr && at->behind_pad;
        if (!own && shared_judged) {
            continue;
        }
        const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, bank);
        if (!pad.measured || !pad.expected) {
            continue;
        }
        if (const auto compared = compare_effectiveness(*pad.measured, *pad.expected)) {
            judged.push_back({&bank, !own && house.banks.size() > 1, pad, compared.value()});
            shared_judged = shared_judged || !own;
        }
    }
    return judged;
}

Message limiting_instrument(const MeasuredEffectiveness& measured) {
    if (measured.from_humidity >= measured.from_dry_bulb &&
        measured.from_humidity >= measured.from_behind_pad) {
        return WF_TEXT("the humidity outside");
    }
    return measured.from_behind_pad >= measured.from_dry_bulb
               ? Message{WF_TEXT("the temperature behind the pad")}
               : Message{WF_TEXT("the temperature outside")};
}

Finding finding_of(const RuleInputs& inputs, const JudgedPad& judged, const char* rule, Severity severity) {
    auto finding = finding_about(judged.for_all ? nullptr : judged.bank, rule, severity);
    finding.source =
        "eleven-term polynomial for rigid cellulose media, EnergyPlus Engineering Reference; its uncertainty "
        "is assumed";
    finding.values = {{"effectiveness", any(judged.pad.measured->value)},
                      {"effectiveness_uncertainty", any(judged.pad.measured->expanded)},
                      {"expected_effectiveness", any(*judged.pad.expected)},
                      {"difference_uncertainty", any(judged.comparison.expanded)}};
    if (const auto lost = cooling_lost(inputs.advice.weather, -in_si(judged.comparison.difference))) {
        finding.values.push_back({"cooling_lost", any(lost->lost)});
    }
    return finding;
}

Message name_of(const RuleInputs& inputs, const JudgedPad& judged) {
    return judged.for_all ? Message{WF_TEXT("the pads")} : label_of(inputs.file.house, *judged.bank);
}

Finding cools_less(const RuleInputs& inputs, const JudgedPad& judged) {
    auto finding = finding_of(inputs, judged, "pad-cools-less-than-expected", Severity::fault);
    const auto lost = cooling_lost(inputs.advice.weather, -in_si(judged.comparison.difference));
    finding.message = {
        WF_TEXT(
            "Only %2 of the possible cooling is reached behind %1, where %3 is published for this air speed "
            "and thickness: the air is %4 warmer than it could be %5."),
        {name_of(inputs, judged), any(judged.pad.measured->value), any(*judged.pad.expected), any(lost->lost),
         lost->when()}};
    finding.remedy = WF_TEXT("Find the cause, likeliest first; then read both temperatures again.");
    finding.causes = {likely::dry_streaks(), likely::scaled_pad(), likely::air_around_pad(),
                      likely::thermometer_misled(), likely::air_too_fast()};
    return finding;
}

Finding cools_less_perhaps(const RuleInputs& inputs, const JudgedPad& judged) {
    auto finding = finding_of(inputs, judged, "pad-cools-less-than-expected", Severity::note);
    finding.message = {
        WF_TEXT("By the readings %2 of the possible cooling is reached behind %1, where %3 is published, but "
                "they are good to ± %4 only: too close to call. Most of that comes from %5."),
        {name_of(inputs, judged), any(judged.pad.measured->value), any(*judged.pad.expected),
         any(judged.comparison.expanded), limiting_instrument(*judged.pad.measured)}};
    finding.remedy = {WF_TEXT("Read it again in a drier hour, and %1 with a better instrument."),
                      {limiting_instrument(*judged.pad.measured)}};
    return finding;
}

}  // namespace

std::vector<Finding> pad_cools_less_than_expected(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& judged : judged_pads(inputs)) {
        if (judged.comparison.verdict == EffectivenessVerdict::clearly_lower) {
            findings.push_back(cools_less(inputs, judged));
        } else if (judged.comparison.verdict == EffectivenessVerdict::too_close &&
                   judged.comparison.difference <= -assumed_difference_that_matters) {
            findings.push_back(cools_less_perhaps(inputs, judged));
        }
    }
    return findings;
}

std::vector<Finding> pad_cools_more_than_expected(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& judged : judged_pads(inputs)) {
        if (judged.comparison.verdict != EffectivenessVerdict::clearly_higher) {
            continue;
        }
        auto finding = finding_of(inputs, judged, "pad-cools-more-than-expected", Severity::note);
        finding.message = {
            WF_TEXT("By the readings %2 of the possible cooling is reached behind %1, where a clean new pad "
                    "gives "
                    "%3: a reading is wrong, and so is all evaporation worked out from it."),
            {name_of(inputs, judged), any(judged.pad.measured->value), any(*judged.pad.expected)}};
        finding.remedy = WF_TEXT("Read temperature and humidity outside, and temperature behind, again.");
        finding.causes = {likely::thermometer_misled(),
                          {WF_TEXT("A thermometer behind the pad that is wetted by drops."),
                           WF_TEXT("Shield it from drops and read it again a step farther in.")},
                          {WF_TEXT("A humidity reading that is too high."),
                           WF_TEXT("Let the hygrometer hang in the shade for ten minutes; compare it with a "
                                   "wet bulb.")}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
