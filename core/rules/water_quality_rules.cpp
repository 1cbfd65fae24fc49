// SPDX-License-Identifier: Apache-2.0
#include "rules/water_quality_rules.h"

#include "base/numbers.h"
#include "rules/rule_parts.h"
#include "water/bleed.h"
#include "water/scaling.h"

namespace wetfront {
namespace {

constexpr double clearly_positive = 0.3;

std::optional<double> cycles_of(const Conditions& conditions) {
    if (!conditions.conductivity || !conditions.sump_conductivity) {
        return std::nullopt;
    }
    const auto cycles =
        cycles_from_conductivity(conditions.conductivity->value(), conditions.sump_conductivity->value());
    return cycles ? std::optional{cycles.value()} : std::nullopt;
}

std::optional<MassFlow> evaporation_of_house(const RuleInputs& inputs) {
    const auto& design = inputs.advice.weather.design;
    std::vector<const PadBank*> banks;
    for (const auto& bank : inputs.file.house.banks) {
        banks.push_back(&bank);
    }
    return design ? evaporation_of(inputs, *design, banks) : std::nullopt;
}

/// Make-up water at the sump's pH and temperature.
std::optional<WaterTest> make_up_of(const RuleInputs& inputs) {
    const auto& conditions = inputs.file.visit.conditions;
    const auto& calcium = conditions.calcium_hardness ? conditions.calcium_hardness : conditions.hardness;
    const auto& weather = inputs.advice.weather.test;
    if (!conditions.sump_ph || !calcium || !conditions.alkalinity || !conditions.conductivity ||
        (!conditions.sump_temperature && !weather)) {
        return std::nullopt;
    }
    WaterTest water;
    water.temperature =
        conditions.sump_temperature ? conditions.sump_temperature->value() : weather->wet_bulb;
    water.ph = *conditions.sump_ph;
    water.calcium_hardness = calcium->value();
    water.alkalinity = conditions.alkalinity->value();
    if (conditions.dissolved_solids) {
        water.dissolved_solids = conditions.dissolved_solids->value();
    } else {
        const auto solids = dissolved_solids_from(conditions.conductivity->value());
        if (!solids) {
            return std::nullopt;
        }
        water.dissolved_solids = solids.value();
    }
    return water;
}

/// The sump's water against the point where it scales.
struct JudgedWater {
    double cycles = 1.0;
    double langelier = 0.0;
    std::optional<double> most_cycles;  ///< at which the index is 0

    [[nodiscard]] bool scales() const { return langelier > clearly_positive; }
    [[nodiscard]] bool bleed_helps() const { return most_cycles && *most_cycles >= least_published_cycles; }
};

std::optional<JudgedWater> judged_water(const RuleInputs& inputs) {
    const auto cycles = cycles_of(inputs.file.visit.conditions);
    const auto make_up = make_up_of(inputs);
    if (!cycles || !make_up) {
        return std::nullopt;
    }
    auto sump = *make_up;
    sump.calcium_hardness *= *cycles;
    sump.alkalinity *= *cycles;
    sump.dissolved_solids *= *cycles;
    const auto index = scaling_index(sump);
    const auto most = most_cycles_for_langelier(*make_up, 0.0);
    if (!index || !most) {
        return std::nullopt;
    }
    return JudgedWater{*cycles, index.value().langelier, most.value().cycles};
}

AnyQuantity ratio(double value) {
    return {Kind::fraction, value};
}

/// What leaves as water where it carries the salts of that many cycles.
VolumeFlow let_out(MassFlow evaporation, double cycles) {
    return volume_flow_of(evaporation / (cycles - 1.0));
}

/// "one farm's water left 168 g for each 1,000 L used; ..."
Message scale_by_that_farm(MassFlow evaporation, double cycles) {
    const auto used = volume_flow_of(evaporation) * (cycles / (cycles - 1.0)) * seconds(3600.0);
    const auto scale = scale_by_one_farm(used);
    return scale
               ? Message{WF_TEXT("By one farm's figure (Griggs, MS thesis, Auburn University) that would be "
                                 "up to %1 of scale in an hour like the design hour."),
                         {any(scale.value())}}
               : Message{};
}

Finding scaling_finding(const RuleInputs& inputs, const JudgedWater& water, const char* rule) {
    auto finding = finding_about(nullptr, rule, Severity::waste);
    finding.message = {
        WF_TEXT(
            "The sump holds %1 times the salts of the make-up, and its Langelier index of +%2 says that it "
            "lays down scale: pads clog and wear out early."),
        {print_number(water.cycles, 1), print_fixed(water.langelier, 1)}};
    finding.values = {{"cycles", ratio(water.cycles)}};
    if (const auto evaporation = evaporation_of_house(inputs); evaporation && water.cycles > 1.0) {
        finding.message = {WF_TEXT("%1 %2"),
                           {std::move(finding.message), scale_by_that_farm(*evaporation, water.cycles)}};
        finding.values.push_back({"let_out", any(let_out(*evaporation, water.cycles))});
    }
    finding.source = "Langelier index as printed with worked examples; 0.3: assumed for kits and formula";
    return finding;
}

}  // namespace

std::vector<Finding> cycles_below_two(const RuleInputs& inputs) {
    constexpr double just_filled = 1.05;
    const auto cycles = cycles_of(inputs.file.visit.conditions);
    const auto water = judged_water(inputs);
    if (!cycles || *cycles >= least_published_cycles || (water && water->langelier > 0.0)) {
        return {};
    }
    const bool fresh = *cycles < just_filled;
    auto finding = finding_about(nullptr, "cycles-below-two", fresh ? Severity::note : Severity::waste);
    finding.source = "concentration ratio at least 2: EnergyPlus Engineering Reference, blow-down";
    finding.values = {{"cycles", ratio(*cycles)}};
    finding.causes = {
        {WF_TEXT("The bleed is open too wide."), WF_TEXT("Catch the bleed in a vessel for a minute.")},
        {WF_TEXT("The sump runs over: a float set too high, or one that sticks."),
         WF_TEXT("Watch the overflow through a stop of the pump.")},
        {WF_TEXT("A leak, or water that is blown off the pads."),
         WF_TEXT("Look for wet ground along pipe, gutter and pads.")}};
    if (fresh) {
        finding.message = {
            WF_TEXT("The sump holds hardly more salts than the make-up (%1 times): it was just filled, or it "
                    "loses more water than it evaporates."),
            {print_number(*cycles, 2)}};
        finding.remedy = WF_TEXT("Test it again after a day of running; if it stands, find where it goes.");
        return {finding};
    }
    const auto evaporation = evaporation_of_house(inputs);
    if (evaporation) {
        const VolumeFlow now = let_out(*evaporation, *cycles);
        const VolumeFlow enough = let_out(*evaporation, least_published_cycles);
        const Volume wasted = (now - enough) * seconds(3600.0);
        finding.message = {
            WF_TEXT("The sump holds only %1 times the salts of the make-up, where at least %2 times is "
                    "published: of the water let out, %3 are wasted in an hour like the design hour."),
            {print_number(*cycles, 1), print_number(least_published_cycles, 0), any(wasted)}};
        finding.values.push_back({"let_out", any(now)});
        finding.values.push_back({"enough", any(enough)});
        finding.values.push_back({"wasted_per_hour", any(wasted)});
        finding.remedy = {WF_TEXT("Bleed no more than %1 at the design hour, leaks and drift counted in."),
                          {any(enough)}};
    } else {
        const auto share = 1.0 - (*cycles - 1.0) / (least_published_cycles - 1.0);
        finding.message = {
            WF_TEXT("The sump holds only %1 times the salts of the make-up, where at least %2 times is "
                    "published: %3 of the water let out is wasted."),
            {print_number(*cycles, 1), print_number(least_published_cycles, 0), ratio(share)}};
        finding.remedy = WF_TEXT("Bleed less, and find where else water goes.");
    }
    return {finding};
}

std::vector<Finding> bleed_too_small(const RuleInputs& inputs) {
    const auto water = judged_water(inputs);
    if (!water || !water->scales() || !water->bleed_helps()) {
        return {};
    }
    auto finding = scaling_finding(inputs, *water, "bleed-too-small");
    const auto most = print_number(*water->most_cycles, 1);
    finding.values.push_back({"most_cycles", ratio(*water->most_cycles)});
    if (const auto evaporation = evaporation_of_house(inputs)) {
        const auto bleed = let_out(*evaporation, *water->most_cycles);
        finding.remedy = {
            WF_TEXT(
                "Bleed %1 at the design hour, leaks and drift counted in: that holds it at %2 times, where "
                "the index is 0 at this pH."),
            {any(bleed), most}};
        finding.values.push_back({"bleed", any(bleed)});
    } else {
        finding.remedy = {WF_TEXT("Bleed more, down to %1 times, where the index is 0 at this pH."), {most}};
    }
    return {finding};
}

std::vector<Finding> water_scales_pads(const RuleInputs& inputs) {
    const auto water = judged_water(inputs);
    if (!water || !water->scales() || water->bleed_helps()) {
        return {};
    }
    auto finding = scaling_finding(inputs, *water, "water-scales-pads");
    finding.remedy = WF_TEXT(
        "Bleeding alone does not hold this water: keep the pads wet while they are in use, rinse them, and "
        "ask a water treatment firm before anything is added. Never mix acid with bleach.");
    return {finding};
}

std::vector<Finding> ph_out_of_range(const RuleInputs& inputs) {
    constexpr double least = 6.0;
    constexpr double most = 8.0;
    const auto& ph = inputs.file.visit.conditions.sump_ph;
    if (!ph || (*ph >= least && *ph <= most)) {
        return {};
    }
    auto finding = finding_about(nullptr, "ph-out-of-range", Severity::note);
    const std::vector<Message::Arg> args{print_number(*ph, 1), print_number(least, 0), print_number(most, 0)};
    finding.message =
        *ph < least
            ? Message{WF_TEXT("The sump's pH is %1, below the published %2 to %3: it eats metal, and "
                              "softens the pads' paper."),
                      args}
            : Message{WF_TEXT("The sump's pH is %1, above the published %2 to %3: the water lays down "
                              "scale more readily."),
                      args};
    finding.remedy =
        *ph < least ? Message{WF_TEXT("Stop dosing acid, drain and refill, and test again.")}
                    : Message{WF_TEXT("Bleed more, and test again; acid only by someone trained for it, and "
                                      "never with bleach.")};
    finding.source = "Univ. of Illinois Extension, 2019; what it does: common practice, no source";
    return {finding};
}

}  // namespace wetfront
