// SPDX-License-Identifier: Apache-2.0
#include "rules/water_need.h"

#include "pad/wetting_column.h"
#include "rules/likely_causes.h"
#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

const char* const balance_source =
    "water balance of the pad, from this bank's own readings; continuous pumping is the reference: "
    "University of Georgia, Poultry Housing Tips 21(7) 2009 and 34(10) 2022";

/// What one bank gets in a period and what it needs, in seconds of supply.
struct Balance {
    OnTimeBounds bounds;  ///< as advised, with margin and uncertainty
    Duration need;        ///< fill and what evaporates, neither margin nor uncertainty
    Duration on;
    Duration period;
    Duration evaporates;  ///< in a period
    Duration lacks;       ///< in a period; below 0 where there is enough
    /// The same by the wetting column, whose pad slows down once it is mostly dry: the need above holds for
    /// any drying curve, and lies on the safe side of it.
    Duration column_evaporates;
    Duration column_lacks;
};

std::optional<Balance> balance_of(const TimerView& view, const PadBank& bank) {
    const auto* advice = view.advice_for(bank);
    const auto on = view.shortest_run();
    const auto period = view.period();
    if (advice == nullptr || !advice->question || !on || !period || at_least(*on, *period) ||
        !at_least(*on, advice->question->fill)) {
        return std::nullopt;
    }
    const auto& question = *advice->question;
    const auto bounds = on_time_bounds(question, *period, view.margins);
    const auto over = drying_over_supply(question, view.margins);
    if (!bounds || !over) {
        return std::nullopt;
    }
    Balance balance{bounds.value(), {}, *on, *period, {}, {}, {}, {}};
    balance.evaporates = *period * bounds.value().evaporated_share * question.evaporation_ratio;
    balance.need = question.fill + balance.evaporates;
    balance.lacks = balance.need - *on;
    balance.column_evaporates = *period * over.value();
    balance.column_lacks = question.fill + balance.column_evaporates - *on;
    return balance;
}

/// How long the far end lasts from wet, where a dry start tells what it holds: the share that dries at
/// constant rate, drained by what lacks in a period.
std::optional<Duration> lasts(const TimerView& view, const PadBank& bank, const Balance& balance) {
    const auto& question = *view.advice_for(bank)->question;
    const auto* dry = std::get_if<DryStart>(&question.start);
    if (dry == nullptr) {
        return std::nullopt;
    }
    const auto holds = view.margins.constant_share * (dry->wet_through - question.fill);
    return balance.period * (in_seconds(holds) / in_seconds(balance.column_lacks));
}

Message need_remedy(const TimerView& view, const Balance& balance) {
    constexpr auto base = TemplateKey::base_on_time;
    const auto enough = view.entry_for(base, balance.bounds.need);
    return advised_cycle_or(
        view,
        at_least(view.run_behind(base, enough), balance.period)
            ? Message{WF_TEXT("Let the pump run without rest while pads are called for: no cycle fits here.")}
            : Message{WF_TEXT("Raise the on-time to %1 in this period."), {any(enough)}});
}

std::vector<NamedValue> need_values(const TimerView& view, const Balance& balance) {
    return {{"period", any(balance.period)},
            {view.can_shorten() ? "shortest_run" : "base_on_time", any(balance.on)},
            {"need", any(balance.need)},
            {"need_with_margin", any(balance.bounds.need)}};
}

Message how_it_ends(const TimerView& view, const PadBank& bank, const Balance& balance,
                    const std::optional<CoolingLost>& lost) {
    const auto dry_after = lasts(view, bank, balance);
    if (dry_after && lost) {
        return {WF_TEXT("a wet pad begins to dry there after %1, and the air comes in up to %2 warmer"),
                {any(*dry_after, Scale::coarse), any(lost->lost)}};
    }
    if (dry_after) {
        return {WF_TEXT("a wet pad begins to dry there after %1"), {any(*dry_after, Scale::coarse)}};
    }
    if (lost) {
        return {WF_TEXT("it dries out there, and the air comes in up to %1 warmer"), {any(lost->lost)}};
    }
    return WF_TEXT("it dries out there");
}

std::optional<CoolingLost> lost_at_far_end(const RuleInputs& inputs, const PadBank& bank,
                                           const Balance& balance) {
    if (in_seconds(balance.column_lacks) <= 0.0) {
        return std::nullopt;
    }
    const double share = in_seconds(balance.column_lacks) / in_seconds(balance.column_evaporates);
    const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, bank);
    return cooling_lost(inputs.advice.weather, share * in_si(pad.value));
}

Finding short_of_water(const RuleInputs& inputs, const TimerView& view, const PadBank& bank,
                       const Balance& balance) {
    const auto lost = lost_at_far_end(inputs, bank, balance);
    auto finding = finding_on(view, &bank, "base-below-need", Severity::fault);
    finding.values = need_values(view, balance);
    if (in_seconds(balance.column_lacks) > 0.0) {
        finding.message = view.at_shortest_run(
            {WF_TEXT("A run of %1 reaches the far end of %2 but brings too little: at the design hour %3 of "
                     "supply lack in every period of %4, so that %5."),
             {any(balance.on), view.name(bank), any(balance.column_lacks), any(balance.period),
              how_it_ends(view, bank, balance, lost)}});
        finding.values.push_back({"lacks_per_period", any(balance.column_lacks)});
    } else {
        finding.message = view.at_shortest_run(
            {WF_TEXT("A run of %1 reaches the far end of %2, but at the design hour up to %3 of supply lack "
                     "in every period of %4, by how the pad dries towards the end: it stays wet for sure "
                     "from %5 on only."),
             {any(balance.on), view.name(bank), any(balance.lacks), any(balance.period), any(balance.need)}});
        finding.values.push_back({"may_lack_per_period", any(balance.lacks)});
    }
    finding.remedy = view.without_shortening(need_remedy(view, balance));
    finding.source = balance_source;
    if (lost) {
        finding.values.push_back({"cooling_lost", any(lost->lost)});
    }
    return finding;
}

}  // namespace

std::vector<Finding> base_below_need(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        for (const auto* bank : view.banks) {
            const auto balance = balance_of(view, *bank);
            if (!balance || at_least(balance->on, balance->bounds.need)) {
                continue;
            }
            if (!at_least(balance->on, balance->need)) {
                findings.push_back(short_of_water(inputs, view, *bank, *balance));
                continue;
            }
            auto finding = finding_on(view, bank, "base-below-need", Severity::note);
            finding.message = view.at_shortest_run(
                {WF_TEXT(
                     "A run of %1 brings back what evaporates from %2 in %3 at the design hour, which takes "
                     "%4, but margin and uncertainty ask for %5."),
                 {any(balance->on), view.name(*bank), any(balance->period), any(balance->need),
                  any(balance->bounds.need)}});
            finding.remedy = view.without_shortening(need_remedy(view, *balance));
            finding.source = balance_source;
            finding.values = need_values(view, *balance);
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

std::vector<Finding> drying_outruns_supply_of_bank(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& timer : inputs.advice.timers) {
        for (const auto& advice : timer.banks) {
            const auto* bank = inputs.file.house.bank(advice.bank);
            if (bank == nullptr || !advice.question) {
                continue;
            }
            const auto over = drying_over_supply(*advice.question, inputs.advice.margins);
            if (!over || over.value() < 1.0) {
                continue;
            }
            const double gets = 1.0 / over.value();
            const auto pad = effectiveness_of(inputs.file, inputs.advice.weather, *bank);
            const auto lost = cooling_lost(inputs.advice.weather, (1.0 - gets) * in_si(pad.value));
            auto finding = finding_about(bank, "drying-outruns-supply", Severity::fault);
            finding.values = {{"supplied_share", any(from_si<Fraction>(gets))}};
            if (lost) {
                finding.message = {
                    WF_TEXT("At the design hour the far end of %1 gets only %2 of what it could evaporate: "
                            "even with the pump running without rest it stays dry in part, and the air comes "
                            "in up to %3 warmer."),
                    {label_of(inputs.file.house, *bank), any(from_si<Fraction>(gets)), any(lost->lost)}};
                finding.values.push_back({"cooling_lost", any(lost->lost)});
            } else {
                finding.message = {
                    WF_TEXT("At the design hour the far end of %1 gets only %2 of what it could evaporate: "
                            "even with the pump running without rest it stays dry in part."),
                    {label_of(inputs.file.house, *bank), any(from_si<Fraction>(gets))}};
            }
            finding.remedy = WF_TEXT(
                "Bring more water: clean filter and outlets, then a larger pump, a second feed, or fewer "
                "metres of pad on this one. No setting helps; meanwhile run without rest.");
            finding.source = balance_source;
            finding.causes = causes_of_low_flow(inputs, {bank});
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

}  // namespace wetfront
