// SPDX-License-Identifier: Apache-2.0
#include "rules/header_rules.h"

#include <algorithm>

#include "rules/likely_causes.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

constexpr const char* by_orifice_law = "orifice law with friction by Darcy and Weisbach";

/// The weakest outlet's flow over the strongest's.
double evenness(const HeaderFlow& flow) {
    return in_si(flow.lowest) / in_si(flow.highest);
}

int dry_outlets(const HeaderFlow& flow) {
    return static_cast<int>(
        std::ranges::count_if(flow.outlets, [](VolumeFlow outlet) { return in_si(outlet) <= 0.0; }));
}

/// Outlets without water however much head is regained; 0 where the header was not worked out.
int starved_outlets(const BankWater& water) {
    return water.plain && water.recovered ? std::min(dry_outlets(*water.plain), dry_outlets(*water.recovered))
                                          : 0;
}

}  // namespace

namespace {

/// Water was timed at the far end all the same: then what was entered is wrong, not the header.
Finding contradicted(const RuleInputs& inputs, const PadBank& bank, const char* rule) {
    const auto& water = *inputs.advice.water.bank(bank.id);
    const auto fill = any(inputs.timings.of(bank.id)->fill->mean);
    auto finding = finding_about(&bank, rule, Severity::note);
    finding.message = {
        WF_TEXT(
            "As entered, the header of %1 would not bring water to its far end at %2, yet water was timed "
            "there after %3: flow, bore, outlets or slope are not as entered, and all that follows from "
            "them is wrong."),
        {label_of(inputs.file.house, bank), any(*water.flow), fill}};
    finding.remedy = WF_TEXT("Measure the flow again, and the header's bore, outlets and slope.");
    finding.values = {{"flow", any(*water.flow)}, {"fill", fill}};
    return finding;
}

bool far_end_was_timed(const RuleInputs& inputs, const PadBank& bank) {
    const auto* timed = inputs.timings.of(bank.id);
    return timed != nullptr && timed->fill.has_value();
}

}  // namespace

std::vector<Finding> pump_cannot_fill_header(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* water = inputs.advice.water.bank(bank.id);
        if (water == nullptr || !water->does_not_fill || !water->flow || starved_outlets(*water) > 0) {
            continue;
        }
        const auto name = label_of(inputs.file.house, bank);
        Finding finding;
        if (far_end_was_timed(inputs, bank)) {
            finding = contradicted(inputs, bank, "pump-cannot-fill-header");
        } else {
            finding = finding_about(&bank, "pump-cannot-fill-header", Severity::fault);
            finding.message = {
                WF_TEXT(
                    "At %1 the first outlets of %2 take all the water before the header is full: little or "
                    "nothing reaches the far end, and that pad stays dry."),
                {any(*water->flow), name}};
            finding.remedy = WF_TEXT("More flow, or fewer or smaller outlets.");
            finding.causes = causes_of_low_flow(inputs, {&bank});
            finding.causes.push_back(likely::wrong_description());
            finding.values = {{"flow", any(*water->flow)}};
        }
        finding.source = "filling front from flow, bore and outlets; its model has no source of its own";
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> header_starves_outlets(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* water = inputs.advice.water.bank(bank.id);
        const int starved = water != nullptr && water->flow ? starved_outlets(*water) : 0;
        if (starved == 0) {
            continue;
        }
        const int all = static_cast<int>(water->plain->outlets.size());
        Finding finding;
        if (far_end_was_timed(inputs, bank)) {
            finding = contradicted(inputs, bank, "header-starves-outlets");
        } else {
            finding = finding_about(&bank, "header-starves-outlets", Severity::fault);
            finding.message = {
                WF_TEXT("At %1, %2 of the %3 outlets of %4 get no water: the pad below them stays dry."),
                {any(*water->flow), starved, all, label_of(inputs.file.house, bank)}};
            finding.remedy = WF_TEXT("Level the header; if that is done, more flow or smaller outlets.");
            finding.causes = causes_of_low_flow(inputs, {&bank});
            finding.causes.insert(
                finding.causes.begin(),
                {WF_TEXT("A header that rises or sags along its length."),
                 WF_TEXT("Sight along it, or hold a level to it at both ends and the middle.")});
            finding.values = {
                {"flow", any(*water->flow)},
                {"starved_share", AnyQuantity{Kind::fraction, static_cast<double>(starved) / all}}};
        }
        finding.source = by_orifice_law;
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> header_uneven(const RuleInputs& inputs) {
    constexpr double least = 0.9;
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* water = inputs.advice.water.bank(bank.id);
        if (water == nullptr || water->does_not_fill || !water->plain || !water->recovered ||
            starved_outlets(*water) > 0) {
            continue;
        }
        const double even = std::max(evenness(*water->plain), evenness(*water->recovered));
        if (even >= least) {
            continue;
        }
        const auto& flow =
            evenness(*water->plain) > evenness(*water->recovered) ? *water->plain : *water->recovered;
        const double mean = in_si(flow.flow) / static_cast<double>(flow.outlets.size());
        const auto longer = AnyQuantity{Kind::fraction, mean / in_si(flow.lowest) - 1.0};
        const auto variation = AnyQuantity{Kind::fraction, 1.0 - even};
        auto finding = finding_about(&bank, "header-uneven", Severity::note);
        finding.message = {
            WF_TEXT("The weakest outlet of %1 gives %2 less than the strongest (a good header: at most %3); "
                    "to wet the pad below it takes %4 more pumping than the mean outlet would need."),
            {label_of(inputs.file.house, bank), variation, AnyQuantity{Kind::fraction, 1.0 - least}, longer}};
        finding.remedy = WF_TEXT(
            "A wider header, one fed in the middle, smaller outlets at more head, or the weak stretch "
            "cleaned and levelled; until then the advised on-time serves the weakest outlet.");
        finding.source =
            "under 10 % variation in discharge: University of Minnesota pressure distribution worksheet "
            "v11.09.22";
        finding.values = {{"variation", variation},
                          {"more_pumping", longer},
                          {"far_over_weakest", AnyQuantity{Kind::fraction, water->weakest_outlet_ratio}},
                          {"low_quarter", AnyQuantity{Kind::fraction, flow.uniformity.low_quarter}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

Finding head_finding(const RuleInputs& inputs, const PadBank& bank, double open, const char* rule,
                     Severity severity) {
    const auto& water = *inputs.advice.water.bank(bank.id);
    auto finding = finding_about(&bank, rule, severity);
    finding.source =
        "orifice law from measured flow and head; the limit of a fifth is common practice, no source";
    finding.values = {{"inlet_head", any(inputs.file.visit.conditions_at(bank.id)->inlet_head->value())},
                      {"described_head", any(std::max(water.plain->inlet_head, water.recovered->inlet_head))},
                      {"flow", any(*water.flow)},
                      {"open_share", AnyQuantity{Kind::fraction, open}}};
    return finding;
}

}  // namespace

std::vector<Finding> outlets_clogged(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto open = open_share_of(inputs, bank);
        if (!open || *open >= least_open_share) {
            continue;
        }
        auto finding = head_finding(inputs, bank, *open, "outlets-clogged", Severity::waste);
        finding.message = {
            WF_TEXT("%1 takes a head of %2 for %3, where clean outlets would ask for %4: its outlets pass "
                    "about %5 of what they should, and the pump works against the rest."),
            {label_of(inputs.file.house, bank), finding.values[0].value, finding.values[2].value,
             finding.values[1].value, finding.values[3].value}};
        finding.remedy =
            WF_TEXT("Flush the header through its far end, clean the outlets, read flow and head again.");
        finding.causes = {likely::clogged_outlets(), likely::wrong_description()};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> outlets_pass_too_much(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto open = open_share_of(inputs, bank);
        if (!open || *open <= 1.0 / least_open_share) {
            continue;
        }
        auto finding = head_finding(inputs, bank, *open, "outlets-pass-too-much", Severity::note);
        finding.message = {
            WF_TEXT("%1 passes %2 at a head of only %3, where its outlets would ask for %4: water leaves by "
                    "%5 of their area, and what does not go through outlets does not wet the pad."),
            {label_of(inputs.file.house, bank), finding.values[2].value, finding.values[0].value,
             finding.values[1].value, finding.values[3].value}};
        finding.remedy = WF_TEXT("Find where water leaves the header, then read flow and head again.");
        finding.causes = {likely::water_lost_at_header(), likely::wrong_description(),
                          likely::leaking_supply()};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
