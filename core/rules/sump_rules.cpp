// SPDX-License-Identifier: Apache-2.0
#include "rules/sump_rules.h"

#include <algorithm>
#include <numbers>

#include "rules/rule_parts.h"
#include "water/bleed.h"
#include "water/sump.h"

namespace wetfront {
namespace {

constexpr const char* added_up = "volumes and flows added up";

std::optional<Volume> headers_of(const std::vector<const PadBank*>& banks) {
    auto sum = from_si<Volume>(0.0);
    for (const auto* bank : banks) {
        if (!bank->header_bore || !bank->length) {
            return std::nullopt;
        }
        const auto bore = bank->header_bore->value();
        sum += std::numbers::pi / 4.0 * bore * bore * bank->length->value();
    }
    return banks.empty() ? std::nullopt : std::optional{sum};
}

std::optional<Volume> taken_up_by(const RuleInputs& inputs, const std::vector<const PadBank*>& banks) {
    auto sum = from_si<Volume>(0.0);
    for (const auto* bank : banks) {
        const auto* water = inputs.advice.water.bank(bank->id);
        const auto* timed = inputs.timings.of(bank->id);
        if (water == nullptr || !water->flow || timed == nullptr || !timed->wetting ||
            in_seconds(timed->wetting->mean) <= 0.0) {
            return std::nullopt;
        }
        sum += *water->flow * timed->wetting->mean;
    }
    return sum;
}

Duration longest_wet_through(const RuleInputs& inputs, const std::vector<const PadBank*>& banks) {
    auto longest = seconds(0.0);
    for (const auto* bank : banks) {
        const auto* timed = inputs.timings.of(bank->id);
        if (timed != nullptr && timed->wet_through) {
            longest = std::max(longest, timed->wet_through->mean);
        }
    }
    return longest;
}

MassFlow mass_of(VolumeFlow water) {
    return water * from_si<Density>(1000.0);
}

std::optional<MassFlow> leaving(const RuleInputs& inputs, const Pump& pump) {
    if (!pump.bleed_flow) {
        return std::nullopt;
    }
    const auto* measured = inputs.file.visit.measured_flow(pump.id);
    const auto lost =
        measured != nullptr && measured->lost ? measured->lost->value() : from_si<VolumeFlow>(0.0);
    return mass_of(pump.bleed_flow->value() + lost);
}

/// A pump with how its sump fares.
struct JudgedSump {
    const Pump* pump = nullptr;
    std::vector<const PadBank*> banks;
    SumpBalance balance;
};

std::vector<JudgedSump> judged_sumps(const RuleInputs& inputs) {
    std::vector<JudgedSump> judged;
    for (const auto& pump : inputs.file.house.pumps) {
        const auto banks = inputs.file.house.banks_of(pump);
        const auto* water = inputs.advice.water.pump(pump.id);
        const auto& design = inputs.advice.weather.design;
        Sump sump;
        const auto entered = [](const auto& entry, auto& target) {
            if (entry) {
                target = entry->value();
            }
        };
        entered(pump.sump_volume, sump.usable);
        entered(pump.sump_area, sump.area);
        entered(pump.sump_freeboard, sump.freeboard);
        entered(pump.make_up_flow, sump.make_up);
        SumpDemand demand;
        demand.header = headers_of(banks);
        demand.riser = water != nullptr ? water->riser : std::nullopt;
        demand.pads = taken_up_by(inputs, banks);
        demand.evaporation = design ? evaporation_of(inputs, *design, banks) : std::nullopt;
        demand.bleed = leaving(inputs, pump);
        if (auto balance = sump_balance(sump, demand)) {
            judged.push_back({&pump, banks, balance.value()});
        }
    }
    return judged;
}

bool too_small(const SumpBalance& balance) {
    return balance.make_up_left && in_si(*balance.make_up_left) < 0.0;
}

Finding finding_of(const char* rule, Severity severity, Message message, Message remedy) {
    auto finding = finding_about(nullptr, rule, severity);
    finding.message = std::move(message);
    finding.remedy = std::move(remedy);
    finding.source = added_up;
    return finding;
}

Message without_bleed(const SumpBalance& balance) {
    return balance.need_is_least ? Message{WF_TEXT("evaporation alone")}
                                 : Message{WF_TEXT("evaporation and bleed")};
}

}  // namespace

std::vector<Finding> sump_runs_over(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& [pump, banks, balance] : judged_sumps(inputs)) {
        if (!balance.freeboard_left || in_si(*balance.freeboard_left) >= 0.0) {
            continue;
        }
        const auto lost = -*balance.freeboard_left;
        auto finding = finding_of(
            "sump-runs-over", Severity::waste,
            {WF_TEXT("At every stop of %1 at least %2 run back, but above the working level the sump takes "
                     "only %3: %4 run over each time, and are made up again."),
             {label_of(inputs.file.house, *pump), any(*balance.run_back), any(*balance.freeboard_volume),
              any(lost)}},
            WF_TEXT("Set the float lower; if the pump then draws air at a start, the sump is too small."));
        finding.values = {{"runs_back", any(*balance.run_back)},
                          {"freeboard_volume", any(*balance.freeboard_volume)},
                          {"lost_each_stop", any(lost)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> sump_runs_dry(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& [pump, banks, balance] : judged_sumps(inputs)) {
        if (!balance.left_after_start || in_si(*balance.left_after_start) >= 0.0) {
            continue;
        }
        const Volume missing = -*balance.left_after_start;
        const auto make_up = pump->make_up_flow ? pump->make_up_flow->value() : from_si<VolumeFlow>(0.0);
        const bool carried = make_up * longest_wet_through(inputs, banks) >= missing;
        const std::vector<Message::Arg> args{label_of(inputs.file.house, *pump), any(*balance.draw_down),
                                             any(*balance.usable), any(missing)};
        auto finding =
            carried
                ? finding_of("sump-runs-dry", Severity::note,
                             {WF_TEXT("A start of %1 from dry pads takes %2 out of a sump of %3; only the "
                                      "make-up brings the missing %4 in time."),
                              args},
                             WF_TEXT("See that the make-up is open and at full flow before a dry start."))
                : finding_of("sump-runs-dry", Severity::fault,
                             {WF_TEXT("A start of %1 from dry pads takes %2 out of a sump of %3: with %4 "
                                      "still missing it draws air, and the far end stays dry."),
                              args},
                             WF_TEXT("Raise the float as far as what runs back allows, start in two steps, "
                                     "or use a larger sump."));
        finding.values = {{"draw_down", any(*balance.draw_down)},
                          {"sump_volume", any(*balance.usable)},
                          {"missing", any(missing)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> make_up_too_small(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& [pump, banks, balance] : judged_sumps(inputs)) {
        if (!too_small(balance)) {
            continue;
        }
        const VolumeFlow missing = -*balance.make_up_left;
        const auto need = volume_flow_of(*balance.need);
        const auto name = label_of(inputs.file.house, *pump);
        Message message{
            WF_TEXT("The make-up of %1 brings %2; the design hour asks for %4 (%3), so %5 is missing"),
            {name, any(pump->make_up_flow->value()), without_bleed(balance), any(need), any(missing)}};
        auto finding = finding_of(
            "make-up-too-small", Severity::fault,
            {WF_TEXT("%1, and the sump empties while the birds need it most."), {message}},
            WF_TEXT("Open the make-up valve fully and clean its screen; then a larger valve or a second "
                    "line, by whoever may work on the water supply."));
        finding.values = {{"make_up", any(pump->make_up_flow->value())},
                          {"needed", any(need)},
                          {"missing_flow", any(missing)}};
        if (balance.usable) {
            const Duration lasts = *balance.usable / missing;
            finding.message = {WF_TEXT("%1: a full sump lasts %2 from there, then the pump draws air."),
                               {std::move(message), any(lasts, Scale::coarse)}};
            finding.values.push_back({"lasts", any(lasts)});
        }
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> reserve_short(const RuleInputs& inputs) {
    constexpr double least = 1800.0;  // s
    std::vector<Finding> findings;
    for (const auto& [pump, banks, balance] : judged_sumps(inputs)) {
        if (!balance.reserve || too_small(balance) || in_seconds(*balance.reserve) >= least) {
            continue;
        }
        auto finding = finding_of(
            "reserve-short", Severity::note,
            {WF_TEXT(
                 "Should the make-up of %1 fail at the design hour, its sump of %2 lasts %3 against %4 of "
                 "%5; then the pads dry and the house heats up."),
             {label_of(inputs.file.house, *pump), any(*balance.usable), any(*balance.reserve, Scale::coarse),
              any(volume_flow_of(*balance.need)), without_bleed(balance)}},
            WF_TEXT("Put a low-level alarm into the sump that reaches somebody within that time."));
        finding.source = "volumes and flows added up; half an hour: common practice, no source";
        finding.values = {{"reserve", any(*balance.reserve)},
                          {"sump_volume", any(*balance.usable)},
                          {"needed", any(volume_flow_of(*balance.need))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
