// SPDX-License-Identifier: Apache-2.0
#include "rules/rule_parts.h"

#include <algorithm>
#include <cmath>

#include "rules/likely_causes.h"

namespace wetfront {

Finding finding_about(const PadBank* bank, const char* rule, Severity severity) {
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    if (bank != nullptr) {
        finding.bank = bank->id;
    }
    return finding;
}

std::optional<Length> length_of(const std::vector<const PadBank*>& banks) {
    auto sum = from_si<Length>(0.0);
    for (const auto* bank : banks) {
        if (!bank->length) {
            return std::nullopt;
        }
        sum += bank->length->value();
    }
    return banks.empty() ? std::nullopt : std::optional{sum};
}

std::optional<MassFlow> evaporation_of(const RuleInputs& inputs, const MoistAir& outside,
                                       const std::vector<const PadBank*>& banks) {
    auto sum = from_si<MassFlow>(0.0);
    for (const auto* bank : banks) {
        const auto one = evaporation_of(inputs.file, inputs.advice.weather, outside, *bank);
        if (!one) {
            return std::nullopt;
        }
        sum += *one;
    }
    return banks.empty() ? std::nullopt : std::optional{sum};
}

bool clearly_above(double high, double high_expanded, double low, double low_expanded) {
    return high > 1.3 * low && high - low > std::hypot(high_expanded, low_expanded);
}

// An outlet's flow goes with its open area and the root of its head. Simplification: friction along the
// header counts with the outlets, so that the share is a little high where the header is narrow.
std::optional<double> open_share_of(const RuleInputs& inputs, const PadBank& bank) {
    const auto* water = inputs.advice.water.bank(bank.id);
    const auto* at = inputs.file.visit.conditions_at(bank.id);
    if (water == nullptr || at == nullptr || !at->inlet_head || !water->flow_measured || !water->plain ||
        !water->recovered || in_si(at->inlet_head->value()) <= 0.0) {
        return std::nullopt;
    }
    const double described = std::max(in_si(water->plain->inlet_head), in_si(water->recovered->inlet_head));
    return std::sqrt(described / in_si(at->inlet_head->value()));
}

std::vector<LikelyCause> causes_of_low_flow(const RuleInputs& inputs,
                                            const std::vector<const PadBank*>& banks) {
    bool head_read = false;
    bool clogged = false;
    for (const auto* bank : banks) {
        if (const auto open = open_share_of(inputs, *bank)) {
            head_read = true;
            clogged = clogged || *open < least_open_share;
        }
    }
    std::vector<LikelyCause> causes{likely::clogged_filter(), likely::half_shut_valve(), likely::worn_pump(),
                                    likely::air_on_suction()};
    const bool outlets_first = clogged || !head_read;
    causes.insert(outlets_first ? causes.begin() : causes.end(), likely::clogged_outlets());
    return causes;
}

Message CoolingLost::when() const {
    return at_design ? Message{WF_TEXT("at the design hour")}
                     : Message{WF_TEXT("in the weather of the readings")};
}

std::optional<CoolingLost> cooling_lost(const VisitWeather& weather, double share) {
    const auto& air = weather.design ? weather.design : weather.test;
    if (!air) {
        return std::nullopt;
    }
    return CoolingLost{
        from_si<TemperatureDifference>(share * (in_kelvin(air->dry_bulb) - in_kelvin(air->wet_bulb))),
        weather.design.has_value()};
}

}  // namespace wetfront
