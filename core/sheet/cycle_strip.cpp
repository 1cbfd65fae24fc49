// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cycle/pump_runs.h"
#include "pad/wetting_column.h"
#include "records/setting_ranges.h"
#include "sheet/blocks.h"

namespace wetfront {
namespace {

/// Orders banks by how long water takes: wet-through first, fill where no wet-through was read.
double slowness(const BankTimings& bank) {
    if (bank.wet_through) {
        return in_seconds(bank.wet_through->mean);
    }
    return bank.fill ? in_seconds(bank.fill->mean) : 0.0;
}

CycleStrip strip_of_run(const TimerSettings& settings, const Timer& timer, Message label) {
    CycleStrip strip;
    strip.label = std::move(label);
    if (timer.kind == TimerKind::on_demand) {
        strip.continuous = true;
        return strip;
    }
    strip.period_s = in_seconds(settings.period->value());
    strip.on_s = std::min(in_seconds(settings.base_on_time->value()), strip.period_s);
    strip.continuous = strip.on_s >= strip.period_s;
    if (timer.kind == TimerKind::trimmed && settings.on_time_ceiling) {
        strip.ceiling_s = in_seconds(settings.on_time_ceiling->value());
    }
    return strip;
}

/// Adds what the far end still holds when water comes back and when it drips again, if it drips again before
/// every stop and no part of it dries.
///
/// Source: the wetting column (closed forms), from even drip at the stop: dry for period - on + fill, then
/// supplied for on - fill. A cycle that begins and ends so repeats.
/// Range: a dry-out and a wet-through were read, and both weathers are known. A wet start says only that its
/// own pause is made up for, not how much the pad holds: nothing is added.
void add_steady_pad(CycleStrip& strip, const BankTimings& bank, std::optional<double> evaporation_ratio,
                    double constant_share) {
    if (strip.continuous || strip.dry_patch_s || !evaporation_ratio || !bank.fill || !bank.wetting ||
        !bank.dry_out) {
        return;
    }
    const auto calibrated = rates_from_timings(bank.wetting->mean, bank.dry_out->mean,
                                               bank.fans_ran_during_wet_through, constant_share);
    if (!calibrated) {
        return;
    }
    auto rates = calibrated.value();
    rates.drying *= *evaporation_ratio;
    const double deficit =
        deficit_after_drying(rates, 0.0, seconds(strip.period_s - strip.on_s + strip.fill_s));
    const auto until_drip = time_to_drip(rates, deficit);
    if (!until_drip || strip.fill_s + in_seconds(until_drip.value()) > strip.on_s) {
        return;
    }
    strip.lowest_level = 1.0 - deficit;
    strip.drip_returns_s = strip.fill_s + in_seconds(until_drip.value());
}

}  // namespace

const BankTimings* slowest_bank(const VisitFile& file, const VisitTimings& timings, const Timer& timer) {
    const BankTimings* slowest = nullptr;
    for (const auto* bank : file.house.banks_of(timer)) {
        const auto* timed = timings.of(bank->id);
        if (timed != nullptr && slowness(*timed) > (slowest == nullptr ? 0.0 : slowness(*slowest))) {
            slowest = timed;
        }
    }
    return slowest;
}

std::optional<CycleStrip> cycle_strip(const VisitFile& file, const VisitTimings& timings,
                                      const TimerSettings& entered, Message label,
                                      std::optional<double> evaporation_ratio) {
    const auto* timer = file.house.timer(entered.timer);
    if (timer == nullptr) {
        return std::nullopt;
    }
    const auto settings = pump_runs(file.house, timings, *timer, without_unusual(entered)).settings;
    if ((timer->kind != TimerKind::on_demand && !(settings.period && settings.base_on_time))) {
        return std::nullopt;
    }
    auto strip = strip_of_run(settings, *timer, std::move(label));
    const auto* bank = slowest_bank(file, timings, *timer);
    if (bank == nullptr) {
        return strip;
    }
    if (bank->fill) {
        strip.fill_s = in_seconds(bank->fill->mean);
    }
    if (bank->wet_through) {
        strip.wet_through_s = in_seconds(bank->wet_through->mean);
    }
    if (bank->run_off) {
        strip.run_off_s = in_seconds(bank->run_off->mean);
    }
    if (bank->dry_out && !strip.continuous) {
        const double patch = strip.on_s + in_seconds(bank->dry_out->mean) / evaporation_ratio.value_or(1.0);
        if (patch < strip.period_s + strip.fill_s) {
            strip.dry_patch_s = patch;
        }
    }
    add_steady_pad(strip, *bank, evaporation_ratio, usable_margins(file.farm).constant_share);
    return strip;
}

void add_timelines(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    const auto& visit = inputs.file.visit;
    for (const auto& timer : house.timers) {
        const auto* advice = inputs.advice.of(timer.id);
        const auto ratio = advice != nullptr ? advice->evaporation_ratio : std::nullopt;
        SheetTimeline timeline;
        const auto* slowest = slowest_bank(inputs.file, inputs.timings, timer);
        timeline.title =
            slowest != nullptr
                ? Message{WF_TEXT("One period of %1 to scale, at its slowest bank, %2"),
                          {label_of(house, timer), label_of(house, *house.bank(slowest->bank))}}
                : Message{WF_TEXT("One period of %1 to scale; no bank was timed"), {label_of(house, timer)}};
        const auto add = [&](const TimerSettings* settings, Message label) {
            auto strip = settings == nullptr
                             ? std::nullopt
                             : cycle_strip(inputs.file, inputs.timings, *settings, label, ratio);
            if (!strip) {
                const bool fill_missing =
                    settings != nullptr &&
                    pump_runs(house, inputs.timings, timer, without_unusual(*settings)).fill_missing;
                strip.emplace().label = {
                    fill_missing ? WF_TEXT("%1: on-time from a full header, and no fill time is known")
                                 : WF_TEXT("%1: period or on-time not entered, or outside what is usual"),
                    {std::move(label)}};
            }
            timeline.strips.push_back(*std::move(strip));
        };
        std::optional<TimerSettings> advised;
        if (advice != nullptr) {
            advised = settings_to_enter(*advice);
        }
        add(visit.found_of(timer.id), WF_TEXT("found"));
        add(advised ? &*advised : nullptr, WF_TEXT("advised"));
        add(visit.left_of(timer.id), WF_TEXT("left"));
        blocks.emplace_back(std::move(timeline));
    }
}

}  // namespace wetfront
