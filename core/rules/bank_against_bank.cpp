// SPDX-License-Identifier: Apache-2.0
#include "rules/bank_against_bank.h"

#include <algorithm>
#include <cmath>

#include "pad/measured_pad.h"
#include "rules/likely_causes.h"
#include "rules/rule_parts.h"

namespace wetfront {
namespace {

constexpr const char* thirty_percent = "more than 30 % apart: common practice, no source";

bool about_equal(const Optional<Length>& a, const Optional<Length>& b, double share) {
    return a && b && std::abs(in_si(a->value()) - in_si(b->value())) <= share * in_si(a->value());
}

bool same_or_unknown(const Optional<Length>& a, const Optional<Length>& b) {
    return !a || !b || about_equal(a, b, 0.01);
}

bool same_pad(const PadBank& a, const PadBank& b) {
    return about_equal(a.height, b.height, 0.01) && about_equal(a.thickness, b.thickness, 0.01);
}

bool on_one_timer(const House& house, const PadBank& a, const PadBank& b) {
    return std::ranges::any_of(house.timers, [&](const Timer& timer) {
        return std::ranges::find(timer.pumps, a.pump) != timer.pumps.end() &&
               std::ranges::find(timer.pumps, b.pump) != timer.pumps.end();
    });
}

Severity severity_between(const House& house, const PadBank& a, const PadBank& b) {
    return on_one_timer(house, a, b) ? Severity::waste : Severity::note;
}

/// A number of one bank, larger is worse.
struct Figure {
    double value = 0.0;
    double expanded = 0.0;
};

/// The best of the other banks against which `worse` is clearly above; none if none is.
template <class FigureOf, class Comparable>
const PadBank* clearly_better(const House& house, const PadBank& worse, FigureOf figure_of,
                              Comparable comparable) {
    const std::optional<Figure> own = figure_of(worse);
    const PadBank* best = nullptr;
    Figure best_figure;
    for (const auto& other : house.banks) {
        const std::optional<Figure> figure = figure_of(other);
        if (!own || !figure || other.id == worse.id || !same_pad(worse, other) || !comparable(other) ||
            !clearly_above(own->value, own->expanded, figure->value, figure->expanded)) {
            continue;
        }
        if (best == nullptr || figure->value < best_figure.value) {
            best = &other;
            best_figure = *figure;
        }
    }
    return best;
}

std::optional<FlowPerLength> flow_per_length(const RuleInputs& inputs, const PadBank& bank) {
    const auto* water = inputs.advice.water.bank(bank.id);
    if (water == nullptr || !water->flow || in_si(*water->flow) <= 0.0 || !bank.length) {
        return std::nullopt;
    }
    return *water->flow / bank.length->value();
}

/// Both flows were worked out by the headers' hydraulics, so that their ratio means something.
bool headers_known(const RuleInputs& inputs, const PadBank& a, const PadBank& b) {
    const auto* wa = inputs.advice.water.bank(a.id);
    const auto* wb = inputs.advice.water.bank(b.id);
    return wa != nullptr && wb != nullptr && wa->plain && wb->plain;
}

std::optional<TimingResult> wetting_of(const RuleInputs& inputs, const PadBank& bank) {
    const auto* timed = inputs.timings.of(bank.id);
    return timed != nullptr && timed->wetting && in_seconds(timed->wetting->mean) > 0.0 ? timed->wetting
                                                                                        : std::nullopt;
}

std::optional<TimingResult> fill_of(const RuleInputs& inputs, const PadBank& bank) {
    const auto* timed = inputs.timings.of(bank.id);
    return timed != nullptr ? timed->fill : std::nullopt;
}

bool same_fans(const RuleInputs& inputs, const PadBank& a, const PadBank& b) {
    const auto* ta = inputs.timings.of(a.id);
    const auto* tb = inputs.timings.of(b.id);
    return ta != nullptr && tb != nullptr && !ta->fans_mixed && !tb->fans_mixed &&
           ta->fans_ran_during_wet_through == tb->fans_ran_during_wet_through;
}

const PadBank* wets_faster_than(const RuleInputs& inputs, const PadBank& bank) {
    const auto scaled = [&](const PadBank& each, bool by_flow) -> std::optional<Figure> {
        const auto time = wetting_of(inputs, each);
        const auto flow = flow_per_length(inputs, each);
        if (!time || (by_flow && !flow)) {
            return std::nullopt;
        }
        const double scale = by_flow ? in_si(*flow) : 1.0;
        return Figure{in_seconds(time->mean) * scale, in_seconds(time->expanded) * scale};
    };
    const auto alike = [&](const PadBank& other) {
        return other.pump == bank.pump && same_fans(inputs, bank, other);
    };
    if (const auto* other = clearly_better(
            inputs.file.house, bank, [&](const PadBank& each) { return scaled(each, true); },
            [&](const PadBank& each) { return alike(each) && headers_known(inputs, bank, each); })) {
        return other;
    }
    return clearly_better(
        inputs.file.house, bank, [&](const PadBank& each) { return scaled(each, false); },
        [&](const PadBank& each) {
            return alike(each) && !headers_known(inputs, bank, each) &&
                   same_or_unknown(bank.outlet_bore, each.outlet_bore) &&
                   same_or_unknown(bank.outlet_spacing, each.outlet_spacing);
        });
}

/// Against a bank on the same pump: an outlet that takes less lets the header fill sooner, a valve or air
/// makes both slower.
std::vector<LikelyCause> causes_of_slow_wetting(const RuleInputs& inputs, const PadBank& slower,
                                                const PadBank& other) {
    const auto own = fill_of(inputs, slower);
    const auto others = fill_of(inputs, other);
    const bool fills_later = own && others &&
                             in_seconds(own->mean - others->mean) >
                                 std::hypot(in_seconds(own->expanded), in_seconds(others->expanded));
    if (fills_later) {
        return {likely::half_shut_valve(), likely::air_on_suction(), likely::clogged_outlets(),
                likely::blocked_distribution()};
    }
    return {likely::clogged_outlets(),
            likely::blocked_distribution(),
            {WF_TEXT("The other bank was not bone dry at its start, or drips before it is wet."),
             WF_TEXT("Dry both to the core, look for dry paper between wet streaks, and time both again.")}};
}

}  // namespace

std::vector<Finding> bank_wets_slower(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto& house = inputs.file.house;
    for (const auto& bank : house.banks) {
        const auto* other = wets_faster_than(inputs, bank);
        if (other == nullptr) {
            continue;
        }
        const auto own = wetting_of(inputs, bank)->mean;
        const auto best = wetting_of(inputs, *other)->mean;
        auto finding = finding_about(&bank, "bank-wets-slower", severity_between(house, bank, *other));
        finding.message = {
            WF_TEXT("Once its header is full, %1 takes %2 to drip, %3 on the same pump only %4. The slower "
                    "bank sets the on-time of both."),
            {label_of(house, bank), any(own), label_of(house, *other), any(best)}};
        finding.remedy = WF_TEXT("Find the cause, likeliest first, then time both banks again.");
        finding.source = thirty_percent;
        finding.values = {{"wetting", any(own)},
                          {"wetting_of_other", any(best)},
                          {"ratio", AnyQuantity{Kind::fraction, in_seconds(own) / in_seconds(best)}}};
        finding.causes = causes_of_slow_wetting(inputs, bank, *other);
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> bank_fills_slower(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto& house = inputs.file.house;
    for (const auto& bank : house.banks) {
        if (wets_faster_than(inputs, bank) != nullptr) {
            continue;
        }
        const auto* other = clearly_better(
            house, bank,
            [&](const PadBank& each) -> std::optional<Figure> {
                const auto fill = fill_of(inputs, each);
                return fill ? std::optional{Figure{in_seconds(fill->mean), in_seconds(fill->expanded)}}
                            : std::nullopt;
            },
            [&](const PadBank& each) {
                return each.pump == bank.pump && about_equal(bank.length, each.length, 0.05) &&
                       same_or_unknown(bank.header_bore, each.header_bore);
            });
        if (other == nullptr) {
            continue;
        }
        const auto own = fill_of(inputs, bank)->mean;
        const auto best = fill_of(inputs, *other)->mean;
        auto finding = finding_about(&bank, "bank-fills-slower", severity_between(house, bank, *other));
        finding.message = {
            WF_TEXT("Water takes %1 to the far end of %2, but %3 to that of %4, which has the same header on "
                    "the same pump: every run pumps %5 longer for it."),
            {any(own), label_of(house, bank), any(best), label_of(house, *other), any(own - best)}};
        finding.remedy = WF_TEXT("Find the cause, likeliest first, then time both banks again.");
        finding.source = thirty_percent;
        finding.values = {{"fill", any(own)}, {"fill_of_other", any(best)}, {"later", any(own - best)}};
        finding.causes = {likely::half_shut_valve(), likely::water_lost_at_header(), likely::air_on_suction(),
                          likely::wrong_description()};
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

/// A measured flow's uncertainty counts as the same share of each bank's part.
std::optional<Figure> measured_flow_figure(const RuleInputs& inputs, const PadBank& bank) {
    const auto* water = inputs.advice.water.bank(bank.id);
    const auto* pump = inputs.advice.water.pump(bank.pump);
    const auto flow = flow_per_length(inputs, bank);
    if (!flow || !water->flow_measured || pump == nullptr || pump->flow() == nullptr) {
        return std::nullopt;
    }
    const auto* evidence = pump->flow();
    const double share = evidence->expanded ? in_si(*evidence->expanded) / in_si(evidence->flow) : 0.0;
    return Figure{in_si(*flow), share * in_si(*flow)};
}

/// Volume of water by volume of pad.
std::optional<Figure> taken_up(const RuleInputs& inputs, const PadBank& bank) {
    const auto flow = measured_flow_figure(inputs, bank);
    const auto time = wetting_of(inputs, bank);
    if (!flow || !time || !bank.height || !bank.thickness) {
        return std::nullopt;
    }
    const double pad = in_si(bank.height->value()) * in_si(bank.thickness->value());
    const double value = flow->value * in_seconds(time->mean) / pad;
    return Figure{value, value * std::hypot(flow->expanded / flow->value,
                                            in_seconds(time->expanded) / in_seconds(time->mean))};
}

/// The inverse, where less is worse; its uncertainty as a share stays.
std::optional<Figure> inverse(const std::optional<Figure>& figure) {
    return figure
               ? std::optional{Figure{1.0 / figure->value, figure->expanded / figure->value / figure->value}}
               : std::nullopt;
}

}  // namespace

std::vector<Finding> bank_gets_less_water(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto& house = inputs.file.house;
    for (const auto& bank : house.banks) {
        const auto* other = clearly_better(
            house, bank, [&](const PadBank& each) { return inverse(measured_flow_figure(inputs, each)); },
            [&](const PadBank& each) { return each.pump != bank.pump; });
        if (other == nullptr) {
            continue;
        }
        const auto own = *flow_per_length(inputs, bank);
        const auto best = *flow_per_length(inputs, *other);
        const auto less = AnyQuantity{Kind::fraction, 1.0 - in_si(own) / in_si(best)};
        auto finding = finding_about(&bank, "bank-gets-less-water", severity_between(house, bank, *other));
        finding.message = {WF_TEXT("%1 gets %2 of pad, %3 less than the %4 of %5: it wets later and is "
                                   "rinsed less, and one timer for both has to serve it."),
                           {label_of(house, bank), any(own), less, any(best), label_of(house, *other)}};
        finding.remedy = WF_TEXT("Find the cause, likeliest first, then measure both flows again.");
        finding.source = thirty_percent;
        finding.values = {
            {"flow_per_length", any(own)}, {"flow_per_length_of_other", any(best)}, {"less", less}};
        finding.causes = causes_of_low_flow(inputs, {&bank});
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> bank_takes_up_less(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto& house = inputs.file.house;
    for (const auto& bank : house.banks) {
        const auto* other = clearly_better(
            house, bank, [&](const PadBank& each) { return inverse(taken_up(inputs, each)); },
            [&](const PadBank& each) { return each.pump != bank.pump && same_fans(inputs, bank, each); });
        if (other == nullptr) {
            continue;
        }
        const auto share = [](double value) { return AnyQuantity{Kind::fraction, value}; };
        const double own = taken_up(inputs, bank)->value;
        const double best = taken_up(inputs, *other)->value;
        auto finding = finding_about(&bank, "bank-takes-up-less", Severity::note);
        finding.message = {
            WF_TEXT("Until it drips, %1 takes up water for %2 of its pad's volume, %3 for %4 of its own: it "
                    "drips before it is wet, or was not dry, and its wetting time is then up to %5 too "
                    "short."),
            {label_of(house, bank), share(own), label_of(house, *other), share(best),
             any((best / own - 1.0) * wetting_of(inputs, bank)->mean)}};
        finding.remedy = WF_TEXT(
            "Look for dry paper between wet streaks; if there is none, dry both banks to the core and time "
            "them again.");
        finding.source = thirty_percent;
        finding.values = {{"taken_up", share(own)}, {"taken_up_by_other", share(best)}};
        finding.causes = {likely::scaled_pad(), likely::start_not_dry(), likely::dry_streaks(),
                          likely::blocked_distribution()};
        findings.push_back(std::move(finding));
    }
    return findings;
}

namespace {

/// A bank's effectiveness by its own reading; by how much more than published, where that is known.
struct OwnCooling {
    const PadBank* bank = nullptr;
    double value = 0.0;
    std::optional<double> above_published;
    double from_behind_pad = 0.0;
    bool clearly_lower = false;
};

std::vector<OwnCooling> own_coolings(const RuleInputs& inputs) {
    std::vector<OwnCooling> list;
    for (const auto& bank : inputs.file.house.banks) {
        const auto* at = inputs.file.visit.conditions_at(bank.id);
        if (at == nullptr || !at->behind_pad) {
            continue;
        }
        const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, bank);
        if (!pad.measured) {
            continue;
        }
        OwnCooling own{&bank, in_si(pad.measured->value), {}, in_si(pad.measured->from_behind_pad), false};
        if (pad.expected) {
            own.above_published = own.value - in_si(*pad.expected);
            const auto compared = compare_effectiveness(*pad.measured, *pad.expected);
            own.clearly_lower = compared && compared.value().verdict == EffectivenessVerdict::clearly_lower;
        }
        list.push_back(own);
    }
    return list;
}

/// Outside air is the same for both, so that only the readings behind the pads set them apart.
std::optional<double> clearly_less(const OwnCooling& worse, const OwnCooling& other) {
    constexpr double least_difference = 0.1;
    const double less = worse.above_published && other.above_published
                            ? *other.above_published - *worse.above_published
                            : other.value - worse.value;
    const double expanded = 2.0 * std::hypot(worse.from_behind_pad, other.from_behind_pad);
    return less > std::max(least_difference, expanded) ? std::optional{less} : std::nullopt;
}

}  // namespace

std::vector<Finding> bank_cools_less(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    const auto& house = inputs.file.house;
    const auto coolings = own_coolings(inputs);
    for (const auto& worse : coolings) {
        const OwnCooling* best = nullptr;
        double most = 0.0;
        for (const auto& other : coolings) {
            const auto less = clearly_less(worse, other);
            if (less && *less > most) {
                best = &other;
                most = *less;
            }
        }
        const auto lost = cooling_lost(inputs.advice.weather, most);
        if (best == nullptr || worse.clearly_lower || !lost) {
            continue;
        }
        auto finding = finding_about(worse.bank, "bank-cools-less", Severity::fault);
        finding.message = {WF_TEXT("%1 gives %2 of the possible cooling, %3 gives %4: air behind the worse "
                                   "one is %5 warmer for it %6."),
                           {label_of(house, *worse.bank), AnyQuantity{Kind::fraction, worse.value},
                            label_of(house, *best->bank), AnyQuantity{Kind::fraction, best->value},
                            any(lost->lost), lost->when()}};
        finding.remedy = WF_TEXT("Find the cause, likeliest first; read both banks with one thermometer.");
        finding.source = "a tenth of the possible cooling: common practice, no source";
        finding.values = {{"effectiveness", AnyQuantity{Kind::fraction, worse.value}},
                          {"effectiveness_of_other", AnyQuantity{Kind::fraction, best->value}},
                          {"cooling_lost", any(lost->lost)}};
        finding.causes = {likely::dry_streaks(), likely::scaled_pad(), likely::air_around_pad(),
                          likely::thermometer_misled()};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
