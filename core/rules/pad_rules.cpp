// SPDX-License-Identifier: Apache-2.0
#include "rules/pad_rules.h"

#include <cmath>

#include "pad/pressure_drop.h"
#include "pad/wet_pad.h"
#include "rules/likely_causes.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

constexpr const char* tips_26 = "Czarick & Fairchild, Univ. of Georgia, Poultry Housing Tips 26(4), 2014";

/// Published for 6 in and 4 in pads: 350 and 225 ft/min.
std::optional<Velocity> design_speed(Length thickness) {
    constexpr double margin = 5e-3;
    if (std::abs(in_si(thickness) - 0.15) <= margin) {
        return from_si<Velocity>(1.778);
    }
    if (std::abs(in_si(thickness) - 0.10) <= margin) {
        return from_si<Velocity>(1.143);
    }
    return std::nullopt;
}

Velocity uncertainty_of(const PadFace& face) {
    return face.points && face.points->expanded ? *face.points->expanded : from_si<Velocity>(0.0);
}

/// A measured pressure drop with the published one for that pad.
struct JudgedDrop {
    const PadBank* bank = nullptr;
    PressureDifference measured;
    PublishedPressureDrop published;
    Velocity speed;
    PressureDropVerdict verdict = PressureDropVerdict::within;
};

std::vector<JudgedDrop> judged_drops(const RuleInputs& inputs) {
    std::vector<JudgedDrop> drops;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* at = inputs.file.visit.conditions_at(bank.id);
        const auto face = face_of(inputs.file, bank);
        if (at == nullptr || !at->pressure_drop || !face || !bank.thickness) {
            continue;
        }
        const auto published = published_pressure_drop(face->speed, bank.thickness->value());
        if (!published) {
            continue;
        }
        const auto verdict = compare_pressure_drop(at->pressure_drop->value(), published.value());
        if (verdict) {
            drops.push_back(
                {&bank, at->pressure_drop->value(), published.value(), face->speed, verdict.value()});
        }
    }
    return drops;
}

const char* source_of(PressureDropSource source) {
    constexpr const char* franco =
        "Franco, Valera, Madueno, Pena, Trans. ASABE 53(2):565-576, 2010, abstract";
    switch (source) {
        case PressureDropSource::design_speed:
            return tips_26;
        case PressureDropSource::wind_tunnel:
            return franco;
        case PressureDropSource::both:
            return "Czarick & Fairchild, Univ. of Georgia, Poultry Housing Tips 26(4), 2014; Franco et al., "
                   "Trans. ASABE 53(2):565-576, 2010, abstract";
    }
    return tips_26;
}

Finding drop_finding(const JudgedDrop& drop, const char* rule) {
    auto finding = finding_about(drop.bank, rule, Severity::note);
    finding.source = source_of(drop.published.source);
    finding.values = {{"pressure_drop", any(drop.measured)},
                      {"published_least", any(drop.published.lowest)},
                      {"published_most", any(drop.published.highest)},
                      {"face_velocity", any(drop.speed)}};
    return finding;
}

}  // namespace

std::vector<Finding> face_velocity_above_design(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto face = face_of(inputs.file, bank);
        const auto design = bank.thickness ? design_speed(bank.thickness->value()) : std::nullopt;
        if (!face || !design || face->speed - uncertainty_of(*face) <= *design * (1.0 + 1e-9)) {
            continue;
        }
        const auto more_face = Fraction{face->speed / *design} - from_si<Fraction>(1.0);
        auto finding = finding_about(&bank, "face-velocity-above-design", Severity::note);
        finding.message = {
            WF_TEXT("Air goes through %1 at %2, above the %3 that pads of %4 are made for: it would need %5 "
                    "more pad face."),
            {label_of(inputs.file.house, bank), any(face->speed), any(*design),
             any(bank.thickness->value(), Scale::fine), any(more_face)}};
        finding.values = {{"face_velocity", any(face->speed)},
                          {"design_velocity", any(*design)},
                          {"more_face", any(more_face)}};
        const auto now = expected_effectiveness(face->speed, bank.thickness->value());
        const auto then = expected_effectiveness(*design, bank.thickness->value());
        const auto lost = now && then ? cooling_lost(inputs.advice.weather, in_si(then.value() - now.value()))
                                      : std::nullopt;
        if (lost) {
            finding.message = {WF_TEXT("%1 The air behind is %2 warmer for it %3."),
                               {std::move(finding.message), any(lost->lost), lost->when()}};
            finding.values.push_back({"cooling_lost", any(lost->lost)});
        }
        finding.remedy = WF_TEXT(
            "Clear what blocks part of the face; where none is blocked, more pad. Never stop fans for it in "
            "hot weather.");
        finding.source = tips_26;
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> face_points_few(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto face = face_of(inputs.file, bank);
        if (!face || !face->points || face->points->firm) {
            continue;
        }
        auto finding = finding_about(&bank, "face-points-few", Severity::note);
        finding.message = {
            WF_TEXT("The air speed of %1, %2, comes from %3 of the face (%4 would do); along one pad it goes "
                    "from %5 to %6, so evaporation and expected cooling are as unsure."),
            {label_of(inputs.file.house, bank), any(face->speed),
             face->points->points == 1 ? Message{WF_TEXT("one point")}
                                       : Message{WF_TEXT("%1 points"), {face->points->points}},
             least_face_points, any(from_si<Velocity>(0.762)), any(from_si<Velocity>(3.048))}};
        finding.remedy = {WF_TEXT("Take %1 points or more, evenly spread over the face."),
                          {least_face_points}};
        finding.source =
            "spread along one pad: Mississippi State P3329; five points: common practice, no source";
        finding.values = {{"face_velocity", any(face->speed)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> face_velocity_uneven(const RuleInputs& inputs) {
    constexpr double most_variation = 0.3;
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        const auto face = face_of(inputs.file, bank);
        if (!face || !face->points || !face->points->firm || !face->points->variation ||
            in_si(*face->points->variation) <= most_variation) {
            continue;
        }
        const auto& points = *face->points;
        auto finding = finding_about(&bank, "face-velocity-uneven", Severity::note);
        finding.message = {
            WF_TEXT("Air goes through %1 at %2 in one place and %3 in another, a spread of %4: the fast part "
                    "dries first and cools least."),
            {label_of(inputs.file.house, bank), any(points.lowest), any(points.highest),
             any(*points.variation)}};
        finding.remedy =
            WF_TEXT("Look for what blocks the slow part, outside and inside; judge drying at the fast part.");
        finding.source = common_practice;
        finding.values = {{"lowest", any(points.lowest)},
                          {"highest", any(points.highest)},
                          {"variation", any(*points.variation)}};
        finding.causes = {{WF_TEXT("Something stands in the air's way before or behind the pad."),
                           WF_TEXT("Look for stacked goods, weeds, curtains and doors that are half open.")},
                          likely::passages_clogged(),
                          {WF_TEXT("Fans that pull from one side."),
                           WF_TEXT("Compare with the same fans on both sides of the house.")}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> pad_pressure_drop_high(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& drop : judged_drops(inputs)) {
        if (drop.verdict != PressureDropVerdict::higher) {
            continue;
        }
        auto finding = drop_finding(drop, "pad-pressure-drop-high");
        finding.message = {
            WF_TEXT("The air loses %1 in the pad of %2; a clean one takes %3 to %4 at %5. Fans move less air "
                    "against it."),
            {any(drop.measured), label_of(inputs.file.house, *drop.bank), any(drop.published.lowest),
             any(drop.published.highest), any(drop.speed)}};
        finding.remedy = WF_TEXT("Clean the pad; where crust stays in its passages, replace it.");
        finding.causes = {likely::passages_clogged(),
                          likely::air_too_fast(),
                          {WF_TEXT("More than the pad lies between the manometer's two ends."),
                           WF_TEXT("Hold one end just outside and the other just behind the pad.")}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> pad_pressure_drop_low(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& drop : judged_drops(inputs)) {
        if (drop.verdict != PressureDropVerdict::lower) {
            continue;
        }
        auto finding = drop_finding(drop, "pad-pressure-drop-low");
        finding.message = {
            WF_TEXT(
                "The air loses only %1 in the pad of %2, where a wet one takes %3 to %4 at %5: part of it "
                "goes another way and is not cooled."),
            {any(drop.measured), label_of(inputs.file.house, *drop.bank), any(drop.published.lowest),
             any(drop.published.highest), any(drop.speed)}};
        finding.remedy = WF_TEXT("Close gaps; then measure drop and speed again with the pad wet.");
        finding.causes = {likely::air_around_pad(),
                          {WF_TEXT("The pad was dry when the drop was read."),
                           WF_TEXT("Read it again while the far end drips.")},
                          {WF_TEXT("Thin air: the published values are for low farms."),
                           WF_TEXT("Compare with an earlier visit to this house.")}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> house_static_pressure_high(const RuleInputs& inputs) {
    constexpr auto most = from_si<PressureDifference>(50.0);
    const auto& measured = inputs.file.visit.conditions.static_pressure;
    if (!measured || measured->value() - assumed_manometer_accuracy <= most) {
        return {};
    }
    auto finding = finding_about(nullptr, "house-static-pressure-high", Severity::note);
    finding.message = {
        WF_TEXT("The house stands at %1 below outside, above the %2 to %3 that is usual with pads: the fans "
                "move less air than they are counted for, and pads and birds get less of it."),
        {any(measured->value()), any(from_si<PressureDifference>(25.0)), any(most)}};
    finding.remedy = WF_TEXT("Open the air's way, likeliest first, then read pressure and air speed again.");
    finding.source = tips_26;
    finding.values = {{"static_pressure", any(measured->value())}, {"most", any(most)}};
    finding.causes = {likely::passages_clogged(),
                      {WF_TEXT("Tunnel doors or curtains behind the pads that are not fully open."),
                       WF_TEXT("Read the pressure just behind the pads too: what is lost after them is not "
                               "theirs.")},
                      {WF_TEXT("Too little pad for these fans."),
                       WF_TEXT("Compare the air speed at the pad face with what such pads are made for.")}};
    return {finding};
}

}  // namespace wetfront
