// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "cycle/bank_cycle.h"
#include "rules/design_clock.h"

// Rules about the pad itself: does it stay wet between runs, and was it dry when a wet-through was read.
namespace wetfront {
namespace {

const char* const scaling_source =
    "Wet-dry edges start scale: ASME IMECE2018 V013T05A049; the limit is this bank's own reading, in the "
    "weather of the "
    "design hour where both weathers are known";

/// How one bank fares between two runs.
struct Gap {
    Duration unsupplied;       ///< period - shortest run + fill
    Duration stays_wet;        ///< dry-out time, or what the wet start has tested; in the weather judged
    Duration uncertainty;      ///< expanded, of `stays_wet`
    Duration most_advised;     ///< the share of it that advice uses
    bool tested_only = false;  ///< by a wet start: longer may be fine, nobody has seen it
};

/// The longest gap that the advice would leave to this bank, at the margin that it was made with.
Duration advised_most(const TimerView& view, const PadBank& bank, Duration stays_wet) {
    const auto* advice = view.advice_for(bank);
    if (advice != nullptr && advice->longest_gap && advice->question &&
        std::holds_alternative<DryStart>(advice->question->start)) {
        return *advice->longest_gap;
    }
    return view.margins.drying_share * stays_wet;
}

std::optional<Gap> gap_of(const TimerView& view, const PadBank& bank, const BankTimings& timed) {
    const auto period = view.period();
    const auto on = view.shortest_run();
    if (!period || !on || !timed.fill || at_least(*on, *period) || !at_least(*on, timed.fill->mean)) {
        return std::nullopt;
    }
    const auto unsupplied = *period - *on + timed.fill->mean;
    const double ratio = view.evaporation_ratio(bank).value_or(1.0);
    if (timed.dry_out) {
        const auto stays_wet = timed.dry_out->mean / ratio;
        return Gap{unsupplied, stays_wet, timed.dry_out->expanded / ratio,
                   advised_most(view, bank, stays_wet)};
    }
    if (timed.wet_off && timed.wet_return) {
        // Nobody has seen a longer gap than the one that was tested, however mild the design hour.
        const auto tested = (timed.wet_off->mean + timed.fill->mean) / std::max(1.0, ratio);
        return Gap{unsupplied, tested, seconds(0.0), tested, true};
    }
    return std::nullopt;
}

Message weather(const TimerView& view, const PadBank& bank) {
    const auto* advice = view.advice_for(bank);
    const bool readings_worse = advice != nullptr && advice->question && advice->question->milder_design;
    return view.evaporation_ratio(bank) && !readings_worse
               ? Message{WF_TEXT("at the design hour")}
               : Message{WF_TEXT("in the weather of the reading")};
}

Message longer_run(const TimerView& view, const Gap& gap) {
    constexpr auto base = TemplateKey::base_on_time;
    const auto least_on = view.entry_for(base, *view.shortest_run() + gap.unsupplied - gap.most_advised);
    if (!at_least(view.run_behind(base, least_on), *view.period())) {
        return {WF_TEXT("Set the on-time to at least %1 in this period, or shorten the period."),
                {any(least_on)}};
    }
    return WF_TEXT("Shorten the period.");
}

Message gap_remedy(const TimerView& view, const Gap& gap) {
    return advised_cycle_or(view, longer_run(view, gap));
}

std::vector<NamedValue> gap_values(const TimerView& view, const Gap& gap) {
    return {{"period", any(*view.period())},
            {view.can_shorten() ? "shortest_run" : "base_on_time", any(*view.shortest_run())},
            {"gap", any(gap.unsupplied)},
            {gap.tested_only ? "tested_gap" : "stays_wet", any(gap.stays_wet)}};
}

/// The finding that a gap deserves, from the worst down; none if it is short enough.
std::optional<Finding> judged(const RuleInputs& inputs, const TimerView& view, const PadBank& bank,
                              const Gap& gap) {
    const auto made = [&](Severity severity, Message message) {
        auto finding = finding_on(view, &bank, "gap-outlasts-wet-pad", severity);
        finding.message = view.at_shortest_run(std::move(message));
        finding.remedy = view.without_shortening(gap_remedy(view, gap));
        finding.source = scaling_source;
        finding.values = gap_values(view, gap);
        return finding;
    };
    if (gap.tested_only) {
        if (at_least(gap.stays_wet, gap.unsupplied)) {
            return std::nullopt;
        }
        return made(
            Severity::note,
            {WF_TEXT("The far end of %1 is without water for %2 in every period; nobody has seen it stay wet "
                     "longer than %3 %4, so that it stays wet is not proven."),
             {view.name(bank), any(gap.unsupplied), any(gap.stays_wet), weather(view, bank)}});
    }
    if (!at_least(gap.stays_wet, gap.unsupplied)) {
        const auto dry = gap.unsupplied - gap.stays_wet;
        const int wettings = static_cast<int>(std::lround(3600.0 / in_seconds(*view.period())));
        const Message what{
            WF_TEXT("The far end of %1 is without water for %2 in every period but stays wet for %3 %4: "
                    "it is dry for %5 before water comes back, dries %6 times an hour, cools less and "
                    "scales."),
            {view.name(bank), any(gap.unsupplied), any(gap.stays_wet), weather(view, bank), any(dry),
             wettings}};
        const auto called = called_for(inputs, view);
        if (!called) {
            auto finding = made(Severity::fault, what);
            finding.values.push_back({"dry_per_period", any(dry)});
            return finding;
        }
        // At the design hour's drying: most of the hours in which pads are called for are close to it.
        const auto dry_a_day = *called * (in_seconds(dry) / in_seconds(*view.period()));
        auto finding =
            made(Severity::fault,
                 {WF_TEXT("%1 Up to %2 dry on the design day, of %3 in which pads are called for."),
                  {what, any(to_the_minute(dry_a_day)), any(*called)}});
        finding.values.push_back({"dry_per_period", any(dry)});
        finding.values.push_back({"dry_per_day", any(dry_a_day)});
        return finding;
    }
    if (!at_least(gap.stays_wet - gap.uncertainty, gap.unsupplied)) {
        return made(
            Severity::note,
            {WF_TEXT(
                 "Whether the far end of %1 dries in the %2 without water is too close to call: it stays wet "
                 "for %3 ± %4 %5."),
             {view.name(bank), any(gap.unsupplied), any(gap.stays_wet), any(gap.uncertainty),
              weather(view, bank)}});
    }
    if (!at_least(gap.most_advised, gap.unsupplied)) {
        return made(
            Severity::note,
            {WF_TEXT(
                 "The far end of %1 is without water for %2 of the %3 that it stays wet %4: a weak outlet or "
                 "a hotter day leaves a part dry."),
             {view.name(bank), any(gap.unsupplied), any(gap.stays_wet), weather(view, bank)}});
    }
    return std::nullopt;
}

Message listed(const std::vector<Duration>& values) {
    Message list{"%1", {any(values.front())}};
    for (std::size_t i = 1; i < values.size(); ++i) {
        list = Message{WF_TEXT("%1, %2"), {std::move(list), any(values[i])}};
    }
    return list;
}

Message how_to_read_again(const BankTimings* timed) {
    if (timed != nullptr && timed->wet_through) {
        return {WF_TEXT("Nothing to do: readings from a dry pad are there and are used (%1 of them)."),
                {timed->wet_through->count}};
    }
    if (timed != nullptr && timed->wet_return) {
        return WF_TEXT(
            "Nothing to do for a cycle: the wet start serves; read wet-through when the pad can be dried.");
    }
    return WF_TEXT(
        "Dry the pad with the fans running and time it again; where birds and weather forbid that, time a "
        "wet "
        "start.");
}

}  // namespace

std::vector<Finding> gap_outlasts_wet_pad(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        for (const auto* bank : view.banks) {
            const auto* timed = inputs.timings.of(bank->id);
            if (timed == nullptr) {
                continue;
            }
            if (const auto gap = gap_of(view, *bank, *timed)) {
                if (auto finding = judged(inputs, view, *bank, *gap)) {
                    findings.push_back(*std::move(finding));
                }
            }
        }
    }
    return findings;
}

std::vector<Finding> pad_not_dry_at_start(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& bank : inputs.file.house.banks) {
        std::vector<Duration> too_short;
        for (const auto& reading : inputs.timings.readings) {
            if (reading.bank == bank.id && reading.kind == TimingKind::wet_through &&
                reading.not_used == NotUsed::pads_not_dry) {
                too_short.push_back(reading.value);
            }
        }
        if (too_short.empty()) {
            continue;
        }
        Finding finding;
        finding.rule = "pad-not-dry-at-start";
        finding.bank = bank.id;
        finding.message = {
            WF_TEXT("The pad of %1 was not dry when wet-through was read (%2): such a reading is too short, "
                    "it is kept and not used."),
            {label_of(inputs.file.house, bank), listed(too_short)}};
        finding.remedy = how_to_read_again(inputs.timings.of(bank.id));
        finding.source = "common practice, no source";
        for (const auto& value : too_short) {
            finding.values.push_back({"wet_through_not_used", any(value)});
        }
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
