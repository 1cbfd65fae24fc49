// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cycle/bank_cycle.h"
#include "pad/wetting_column.h"
#include "rules/design_clock.h"

// Rules about the length of a run: does water reach the far end, and is a dry pad wet there when the run
// ends.
namespace wetfront {
namespace {

const char* const own_reading = "common practice, no source; the limit is this bank's own reading";

/// A run that leaves the pad wetter by less than this share of what it holds leads nowhere within a day.
constexpr double least_gain = 1e-3;

/// Runs that take longer than that to wet a dry pad leave birds without it (assumed).
constexpr auto longest_wetting = from_si<Duration>(3600.0);

struct TimedBank {
    const PadBank* bank = nullptr;
    TimingResult time;
};

std::optional<TimedBank> slowest_to_wet(const TimerView& view, const VisitTimings& timings) {
    std::optional<TimedBank> slowest;
    for (const auto* bank : view.banks) {
        const auto* timed = timings.of(bank->id);
        if (timed != nullptr && timed->wet_through &&
            (!slowest || timed->wet_through->mean > slowest->time.mean)) {
            slowest = TimedBank{bank, *timed->wet_through};
        }
    }
    return slowest;
}

/// The rinse of a timer, where one runs: none where pad hours keep it off.
std::optional<Duration> rinse_of(const TimerView& view) {
    const auto& at = view.settings().rinse_at;
    const auto& length = view.settings().rinse_length;
    const bool barred = at && view.can_hold(TemplateKey::rinse_at) && !view.pads_may_run_at(at->minutes);
    if (!view.can_hold(TemplateKey::rinse_length) || !length || barred) {
        return std::nullopt;
    }
    return length->value();
}

bool rinse_covers(const TimerView& view, Duration wet_through) {
    const auto rinse = rinse_of(view);
    return rinse && at_least(*rinse, wet_through);
}

/// In which run after the pads start dry, and after a rinse where there is one, the far end drips; none if in
/// no run, or if that cannot be known.
/// Source: the wetting column (closed forms), evaporation at the design hour
/// where both weathers are known.
/// Simplification: each run fills the header anew from pump start.
std::optional<int> run_that_drips(const TimerView& view, const PadBank& pads, const BankTimings& bank) {
    const auto on = view.shortest_run();
    if (!bank.fill || !bank.wetting || !bank.dry_out || !view.period() || !on) {
        return std::nullopt;
    }
    const auto supplied = *on - bank.fill->mean;
    const auto calibrated = rates_from_timings(bank.wetting->mean, bank.dry_out->mean,
                                               bank.fans_ran_during_wet_through, view.margins.constant_share);
    if (!calibrated || in_seconds(supplied) <= 0.0) {
        return std::nullopt;
    }
    auto rates = calibrated.value();
    rates.drying *= view.evaporation_ratio(pads).value_or(1.0);
    const auto rinsed = std::max(seconds(0.0), rinse_of(view).value_or(seconds(0.0)) - bank.fill->mean);
    double deficit = deficit_after_supply(rates, 1.0, rinsed);
    for (int run = 1;; ++run) {
        const double wetted = deficit_after_supply(rates, deficit, supplied);
        if (wetted <= 0.0) {
            return run;
        }
        const double before_next = deficit_after_drying(rates, wetted, *view.period() - supplied);
        if (before_next > deficit - least_gain) {
            return std::nullopt;
        }
        deficit = before_next;
    }
}

std::vector<NamedValue> run_values(const char* run_name, Duration run, const char* limit_name,
                                   const TimingResult& limit) {
    return {{run_name, any(run)},
            {limit_name, any(limit.mean)},
            {std::string{limit_name} + "_uncertainty", any(limit.expanded)}};
}

Message set_at_least(Duration enough) {
    return {WF_TEXT("Set at least %1, or repeat the reading."), {any(enough)}};
}

Finding too_close_to_call(const TimerView& view, const PadBank& bank, const char* rule, Message message,
                          Message remedy) {
    auto finding = finding_on(view, &bank, rule, Severity::note);
    finding.message = std::move(message);
    finding.remedy = std::move(remedy);
    finding.source = own_reading;
    return finding;
}

const char* name_of_shortest(const TimerView& view) {
    return view.can_shorten() ? "shortest_run" : "base_on_time";
}

/// The share of a header that water has reached after that share of the fill time: the inverse of g.
double reached_share(const Filling& filling, double time) {
    const auto after = std::ranges::upper_bound(filling.times, time);
    if (after == filling.times.begin() || after == filling.times.end()) {
        return after == filling.times.begin() ? 0.0 : 1.0;
    }
    const auto i = static_cast<std::size_t>(after - filling.times.begin());
    const double part = (time - filling.times[i - 1]) / (filling.times[i] - filling.times[i - 1]);
    return filling.shares[i - 1] + part * (filling.shares[i] - filling.shares[i - 1]);
}

/// Share of a bank that a run shorter than its fill time leaves without water. The front comes through the
/// supply pipe, where its volume is known, then along the header: by the filling front where outlets are
/// described, else at a steady speed.
double dry_share_of(const VisitWater& water, const PadBank& bank, Duration on, Duration fill) {
    const auto* pump = water.pump(bank.pump);
    const auto* supplied = water.bank(bank.id);
    auto in_pipe = seconds(0.0);
    if (pump != nullptr && pump->riser && pump->flow() != nullptr && in_si(pump->flow()->flow) > 0.0) {
        in_pipe = *pump->riser / pump->flow()->flow;
    }
    if (in_pipe >= fill) {
        in_pipe = seconds(0.0);  // contradicted by the reading
    }
    const double time = std::max(0.0, in_seconds(on - in_pipe) / in_seconds(fill - in_pipe));
    return 1.0 - (supplied != nullptr && supplied->filling ? reached_share(*supplied->filling, time) : time);
}

Finding fill_not_reached(const RuleInputs& inputs, const TimerView& view, const PadBank& bank, Duration on,
                         const TimingResult& fill) {
    auto finding = finding_on(view, &bank, "base-below-fill", Severity::fault);
    const auto dry_share = from_si<Fraction>(dry_share_of(inputs.advice.water, bank, on, fill.mean));
    Message what{
        WF_TEXT("Water needs %1 to reach the far end of %2, but a run lasts %3: in every period about "
                "%4 of this pad gets no water at all."),
        {any(fill.mean), view.name(bank), any(on), any(dry_share)}};
    const auto dry_a_day = called_for(inputs, view);
    if (dry_a_day) {
        what = {
            WF_TEXT("%1 On the design day that far end is dry for all the %2 in which pads are called for."),
            {std::move(what), any(*dry_a_day)}};
    }
    finding.message = view.at_shortest_run(std::move(what));
    const auto advised = view.advised_in_cycle(Setting::base_on_time);
    const auto period = view.advised_in_cycle(Setting::period);
    const auto run = view.advised_run();
    if (advised && period && run && at_least(*run, fill.mean)) {
        finding.remedy = {WF_TEXT("Set the on-time to %1 in the advised period of %2."),
                          {any(*advised), any(*period)}};
    } else if (view.no_cycle_fits()) {
        finding.remedy =
            WF_TEXT("Let the pump run without rest while pads are called for: no cycle fits here.");
    } else {
        finding.remedy = {WF_TEXT("Raise the on-time above %1; what the pad drinks comes on top of that."),
                          {any(view.entry_for(TemplateKey::base_on_time, fill.mean + fill.expanded))}};
    }
    finding.remedy = view.without_shortening(std::move(finding.remedy));
    finding.source = own_reading;
    finding.values = run_values(name_of_shortest(view), on, "fill", fill);
    finding.values.push_back({"dry_share", any(dry_share)});
    if (dry_a_day) {
        finding.values.push_back({"dry_per_day", any(*dry_a_day)});
    }
    return finding;
}

Message ceiling_message(const TimerView& view, const TimedBank& slowest, Duration longest,
                        std::optional<int> drips_in) {
    const auto wet_through = any(slowest.time.mean);
    const auto name = view.name(*slowest.bank);
    if (rinse_covers(view, slowest.time.mean)) {
        return {WF_TEXT("The longest timed run of %1 is shorter than the %2 that %3 needs from dry, so only "
                        "the rinse "
                        "of %4 wets its far end."),
                {any(longest), wet_through, name, any(view.settings().rinse_length->value())}};
    }
    if (const auto rinse = rinse_of(view); drips_in && *drips_in == 1 && rinse) {
        return {WF_TEXT("The longest timed run of %1 is shorter than the %2 that %3 needs from dry: only the "
                        "rinse of %4 and the run after it wet its far end."),
                {any(longest), wet_through, name, any(*rinse)}};
    }
    if (drips_in) {
        return {
            WF_TEXT(
                "The run of %1 is shorter than the %2 that %3 needs from dry: after a dry start its far end "
                "drips only in run %4, %5 later."),
            {any(*view.shortest_run()), wet_through, name, *drips_in,
             any((*drips_in - 1.0) * *view.period(), Scale::coarse)}};
    }
    return {WF_TEXT("The longest timed run of %1 is %2 shorter than the %3 that %4 needs from dry: no single "
                    "run wets "
                    "its far end."),
            {any(longest), any(slowest.time.mean - longest), wet_through, name}};
}

/// A run entered so leaves the pump its rest in the period that is set.
bool leaves_rest(const TimerView& view, TemplateKey key, Duration entry) {
    return view.period() && at_least(*view.period() - view.margins.least_rest, view.run_behind(key, entry));
}

/// What already wets the pads is kept.
Message keep_wetting(const TimerView& view, const TimingResult& wet_through) {
    if (rinse_covers(view, wet_through.mean)) {
        return {WF_TEXT("Keep the rinse of %1: the pads have to be wet through before birds depend on them."),
                {any(view.settings().rinse_length->value())}};
    }
    return WF_TEXT(
        "Let the runs begin early enough for the pads to be wet through before birds depend on them.");
}

Message rinse_at_least(const TimerView& view, Duration enough) {
    const auto holds = view.entry_for(TemplateKey::rinse_length, enough);
    const auto rinse = std::max(holds, view.advised_in_cycle(Setting::rinse_length).value_or(holds));
    return {WF_TEXT("Set a morning rinse of at least %1"), {any(rinse)}};
}

/// Never another ceiling than the advised one, and none that leaves the pump no rest.
Message ceiling_remedy(const TimerView& view, const TimingResult& wet_through, Severity severity) {
    const bool trimmed = view.timer.kind == TimerKind::trimmed;
    const auto advised = view.advised_in_cycle(Setting::on_time_ceiling);
    const bool high_enough = !advised || at_least(view.on_controller.on_time_ceiling->value(), *advised);
    if (severity == Severity::note && (!trimmed || (rinse_covers(view, wet_through.mean) && high_enough))) {
        return keep_wetting(view, wet_through);
    }
    const auto enough = wet_through.mean + wet_through.expanded;
    if (!view.can_hold(TemplateKey::rinse_length)) {
        return {
            WF_TEXT("Run the pump by hand for %1 before the timed runs begin, and set the advised on-time "
                    "and period."),
            {any(rounded_up(enough, seconds(1.0)))}};
    }
    if (view.no_cycle_fits()) {
        return WF_TEXT("Let the pump run without rest while pads are called for: no cycle fits here.");
    }
    const auto rinse = rinse_at_least(view, enough);
    if (!trimmed) {
        return {WF_TEXT("%1, and the advised on-time and period."), {rinse}};
    }
    if (advised) {
        return {WF_TEXT("%1 and the on-time ceiling to %2, as advised."), {rinse, any(*advised)}};
    }
    const auto ceiling = view.entry_for(TemplateKey::on_time_ceiling, enough);
    if (leaves_rest(view, TemplateKey::on_time_ceiling, ceiling)) {
        return {WF_TEXT("%1, and raise the ceiling to %2 too."), {rinse, any(ceiling)}};
    }
    return {WF_TEXT("%1: in this period a ceiling that long would leave the pump no rest."), {rinse}};
}

Message ceiling_remedy_if_close(const TimerView& view, const TimingResult& wet_through) {
    const auto enough = wet_through.mean + wet_through.expanded;
    const bool trimmed = view.timer.kind == TimerKind::trimmed;
    const auto longest = trimmed ? TemplateKey::on_time_ceiling : TemplateKey::base_on_time;
    const auto entry = view.entry_for(longest, enough);
    if (view.can_hold(TemplateKey::rinse_length) &&
        (view.advised_in_cycle(Setting::on_time_ceiling) || !leaves_rest(view, longest, entry))) {
        return {WF_TEXT("%1, or repeat the reading."), {rinse_at_least(view, enough)}};
    }
    return set_at_least(entry);
}

}  // namespace

std::vector<Finding> ceiling_below_wet_through(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const bool trimmed = view.timer.kind == TimerKind::trimmed;
        const auto longest = trimmed ? view.ceiling() : view.on_time();
        const auto slowest = slowest_to_wet(view, inputs.timings);
        if (!longest || !slowest || view.always_on() ||
            (view.period() && at_least(*longest, *view.period()))) {
            continue;
        }
        const auto& wet_through = slowest->time;
        const char* name = trimmed ? "on_time_ceiling" : "base_on_time";
        if (!at_least(*longest, wet_through.mean)) {
            const auto drips_in = run_that_drips(view, *slowest->bank, *inputs.timings.of(slowest->bank->id));
            const bool soon = drips_in && at_least(longest_wetting, (*drips_in - 1.0) * *view.period());
            const auto severity =
                rinse_covers(view, wet_through.mean) || soon ? Severity::note : Severity::fault;
            auto finding = finding_on(view, slowest->bank, "ceiling-below-wet-through", severity);
            finding.message = ceiling_message(view, *slowest, *longest, drips_in);
            finding.remedy = ceiling_remedy(view, wet_through, severity);
            finding.source = own_reading;
            finding.values = run_values(name, *longest, "wet_through", wet_through);
            findings.push_back(std::move(finding));
        } else if (!at_least(*longest, wet_through.mean + wet_through.expanded) &&
                   !rinse_covers(view, wet_through.mean + wet_through.expanded)) {
            auto finding = too_close_to_call(
                view, *slowest->bank, "ceiling-below-wet-through",
                {WF_TEXT("Whether the longest timed run of %1 wets the far end of %2 from dry is too close "
                         "to call: that "
                         "takes %3 ± %4."),
                 {any(*longest), view.name(*slowest->bank), any(wet_through.mean),
                  any(wet_through.expanded)}},
                ceiling_remedy_if_close(view, wet_through));
            finding.values = run_values(name, *longest, "wet_through", wet_through);
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

std::vector<Finding> base_below_fill(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto on = view.shortest_run();
        const bool never_runs = on && in_seconds(*view.on_time()) <= 0.0;  // pump_never_runs speaks
        if (!on || never_runs || (view.period() && at_least(*on, *view.period()))) {
            continue;
        }
        for (const auto* bank : view.banks) {
            const auto* timed = inputs.timings.of(bank->id);
            if (timed == nullptr || !timed->fill) {
                continue;
            }
            const auto& fill = *timed->fill;
            if (!at_least(*on, fill.mean)) {
                findings.push_back(fill_not_reached(inputs, view, *bank, *on, fill));
            } else if (!at_least(*on, fill.mean + fill.expanded)) {
                auto finding = too_close_to_call(
                    view, *bank, "base-below-fill",
                    view.at_shortest_run(
                        {WF_TEXT(
                             "Whether a run of %1 brings water to the far end of %2 is too close to call: "
                             "that takes %3 ± %4."),
                         {any(*on), view.name(*bank), any(fill.mean), any(fill.expanded)}}),
                    view.without_shortening(
                        set_at_least(view.entry_for(TemplateKey::base_on_time, fill.mean + fill.expanded))));
                finding.values = run_values(name_of_shortest(view), *on, "fill", fill);
                findings.push_back(std::move(finding));
            }
        }
    }
    return findings;
}

}  // namespace wetfront
