// SPDX-License-Identifier: Apache-2.0
#include "rules/circulation_rules.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "rules/rule_parts.h"
#include "water/bleed.h"
#include "water/flow_measurement.h"

namespace wetfront {
namespace {

constexpr const char* circulation_source = "Univ. of Georgia, Poultry Housing Tips 14(4), 2002";

/// Of a flow of which nobody said how it was measured: as of a bucket under a full header; assumed.
constexpr double assumed_flow_uncertainty = 0.05;

/// A pump's flow with the pads that it wets.
struct PumpedPads {
    const Pump* pump = nullptr;
    std::vector<const PadBank*> banks;
    const FlowEvidence* flow = nullptr;
    Length length;
    Circulation circulation;

    /// By how much of itself the flow may be off.
    [[nodiscard]] double uncertain_share() const {
        return flow->expanded ? in_si(*flow->expanded) / in_si(flow->flow) : assumed_flow_uncertainty;
    }
};

std::optional<Length> one_thickness(const std::vector<const PadBank*>& banks) {
    for (const auto* bank : banks) {
        if (!bank->thickness ||
            std::abs(in_si(bank->thickness->value() - banks.front()->thickness->value())) > 1e-3) {
            return std::nullopt;
        }
    }
    return banks.front()->thickness->value();
}

std::optional<PumpedPads> pads_on(const RuleInputs& inputs, const Pump& pump) {
    const auto* water = inputs.advice.water.pump(pump.id);
    const auto banks = inputs.file.house.banks_of(pump);
    const auto length = length_of(banks);
    if (water == nullptr || water->flow() == nullptr || in_si(water->flow()->flow) <= 0.0 || !length) {
        return std::nullopt;
    }
    const auto& design = inputs.advice.weather.design;
    auto judged = circulation(water->flow()->flow, *length, one_thickness(banks),
                              design ? evaporation_of(inputs, *design, banks) : std::nullopt);
    if (!judged) {
        return std::nullopt;
    }
    return PumpedPads{&pump, banks, water->flow(), *length, judged.value()};
}

bool below_minimum(const PumpedPads& pads) {
    const auto& least = pads.circulation.published_least;
    return least && pads.circulation.flow < *least * (1.0 - 1e-9);
}

bool clearly_below_minimum(const PumpedPads& pads) {
    return below_minimum(pads) &&
           pads.circulation.flow * (1.0 + pads.uncertain_share()) < *pads.circulation.published_least;
}

std::vector<const FlowEvidence*> measurements(const PumpWater& water) {
    std::vector<const FlowEvidence*> all;
    for (const auto& flow : water.flows) {
        if (flow.measured() && flow.expanded) {
            all.push_back(&flow);
        }
    }
    return all;
}

/// Two measurements that cannot both be right.
struct Disagreement {
    const FlowEvidence* a = nullptr;
    const FlowEvidence* b = nullptr;
    FlowAgreement agreement;
};

std::optional<Disagreement> worst_disagreement(const PumpWater& water) {
    std::optional<Disagreement> worst;
    const auto all = measurements(water);
    const auto beyond = [](const FlowAgreement& each) {
        return std::abs(in_si(each.difference)) / in_si(each.limit);
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const auto agreed = agreement({all[i]->flow, *all[i]->expanded, {}, {}},
                                          {all[j]->flow, *all[j]->expanded, {}, {}});
            if (!agreed.agree && (!worst || beyond(agreed) > beyond(worst->agreement))) {
                worst = Disagreement{all[i], all[j], agreed};
            }
        }
    }
    return worst;
}

}  // namespace

std::vector<Finding> circulation_below_minimum(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& pump : inputs.file.house.pumps) {
        const auto pads = pads_on(inputs, pump);
        if (!pads || !below_minimum(*pads)) {
            continue;
        }
        const auto least = *pads->circulation.published_least;
        const VolumeFlow missing = (least - pads->circulation.flow) * pads->length;
        const bool clear = clearly_below_minimum(*pads);
        const auto* only_bank = pads->banks.size() == 1 ? pads->banks.front() : nullptr;
        auto finding = finding_about(only_bank, "circulation-below-minimum",
                                     clear && pads->flow->measured() ? Severity::fault : Severity::note);
        const auto name = label_of(inputs.file.house, pump);
        if (clear) {
            finding.message = {
                WF_TEXT("%1 gives %2 (%3), %4 of pad where %5 is the published least: %6 is missing, weak "
                        "outlets leave dry streaks, and dry edges scale."),
                {name, any(pads->flow->flow), label_of(pads->flow->from), any(pads->circulation.flow),
                 any(least), any(missing)}};
            finding.remedy = WF_TEXT(
                "Bring the flow up: find the cause, likeliest first; where all is clean and open, a larger "
                "pump.");
            finding.causes = causes_of_low_flow(inputs, pads->banks);
        } else {
            finding.message = {
                WF_TEXT("Whether %1 gives its pads enough water is too close to call: %2 ± %3 is %4 of pad "
                        "where %5 is the published least."),
                {name, any(pads->flow->flow), any(pads->uncertain_share() * pads->flow->flow),
                 any(pads->circulation.flow), any(least)}};
            finding.remedy = WF_TEXT("Measure the flow again by sump drawdown with the make-up shut.");
        }
        finding.source = circulation_source;
        finding.values = {{"flow", any(pads->flow->flow)},
                          {"flow_per_length", any(pads->circulation.flow)},
                          {"least_flow_per_length", any(least)},
                          {"missing_flow", any(missing)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> flow_below_ten_evaporations(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& pump : inputs.file.house.pumps) {
        const auto pads = pads_on(inputs, pump);
        if (!pads || !pads->circulation.times_evaporation || clearly_below_minimum(*pads)) {
            continue;
        }
        const double times = *pads->circulation.times_evaporation;
        if (times * (1.0 + pads->uncertain_share()) >= published_times_evaporation) {
            continue;
        }
        const auto evaporated = pads->flow->flow / times;
        const VolumeFlow wanted = published_times_evaporation * evaporated;
        auto finding = finding_about(nullptr, "flow-below-ten-evaporations", Severity::note);
        finding.message = {
            WF_TEXT("%1 gives %2, %3 times the %4 that its pads evaporate at the design hour; about %5 times "
                    "is published, or %6. With less, little is left over to rinse salts off the face."),
            {label_of(inputs.file.house, pump), any(pads->flow->flow), print_number(times, 1),
             any(evaporated), print_number(published_times_evaporation, 0), any(wanted)}};
        finding.remedy = WF_TEXT("Bring the flow up, and rinse the pads more often until then.");
        finding.source = circulation_source;
        finding.values = {
            {"flow", any(pads->flow->flow)}, {"evaporated", any(evaporated)}, {"wanted_flow", any(wanted)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> flow_methods_disagree(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& pump : inputs.file.house.pumps) {
        const auto* water = inputs.advice.water.pump(pump.id);
        const auto apart = water != nullptr ? worst_disagreement(*water) : std::nullopt;
        if (!apart) {
            continue;
        }
        const auto difference = from_si<VolumeFlow>(std::abs(in_si(apart->agreement.difference)));
        auto finding = finding_about(nullptr, "flow-methods-disagree", Severity::note);
        finding.message = {
            WF_TEXT("The flow of %1 is %2 %3 but %4 %5: %6 apart, where their uncertainties explain at most "
                    "%7. All that is worked out from it is that unsure."),
            {label_of(inputs.file.house, pump), any(apart->a->flow), label_of(apart->a->from),
             any(apart->b->flow), label_of(apart->b->from), any(difference), any(apart->agreement.limit)}};
        finding.remedy = WF_TEXT(
            "Repeat the sump's drawdown with the make-up shut and before water comes back from the pads; if "
            "it stands, look for leaks or clogged outlets between pump and catches.");
        finding.source =
            "difference against the root of the sum of squares of both uncertainties (GUM, JCGM 100:2008)";
        finding.values = {{"flow", any(apart->a->flow)},
                          {"other_flow", any(apart->b->flow)},
                          {"difference", any(difference)},
                          {"limit", any(apart->agreement.limit)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> flow_unsure(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& pump : inputs.file.house.pumps) {
        const auto* water = inputs.advice.water.pump(pump.id);
        const auto* flow = water != nullptr ? water->flow() : nullptr;
        if (flow == nullptr || !flow->advice || !flow->expanded || worst_disagreement(*water)) {
            continue;
        }
        auto finding = finding_about(nullptr, "flow-unsure", Severity::note);
        finding.message = {
            WF_TEXT("The flow of %1, %2 %3, is known only to ± %4: all that is worked out from it may be off "
                    "by %5."),
            {label_of(inputs.file.house, pump), any(flow->flow), label_of(flow->from), any(*flow->expanded),
             any(Fraction{*flow->expanded / flow->flow})}};
        finding.remedy = *flow->advice;
        finding.source = common_practice;
        finding.values = {{"flow", any(flow->flow)}, {"flow_uncertainty", any(*flow->expanded)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
