// SPDX-License-Identifier: Apache-2.0
#include "rules/timer_view.h"

#include <algorithm>

#include "cycle/bank_cycle.h"
#include "cycle/template_steps.h"

namespace wetfront {
namespace {

std::optional<Duration> value_of(const Optional<Duration>& entry) {
    return entry ? std::optional{entry->value()} : std::nullopt;
}

/// What lies between pump start and the moment from which a time counts.
Duration filling(const TimerView& view, TemplateKey key) {
    if (!view.runs || !view.runs->fill) {
        return seconds(0.0);
    }
    switch (key) {
        case TemplateKey::base_on_time:
            return view.runs->fill->shortest;
        case TemplateKey::on_time_ceiling:
            return view.runs->fill->longest;
        default:
            return seconds(0.0);
    }
}

}  // namespace

bool at_least(Duration value, Duration limit) {
    return in_seconds(value) >= in_seconds(limit) - 1e-9;
}

const TimerSettings& TimerView::settings() const {
    return runs ? runs->settings : on_controller;
}

std::optional<Duration> TimerView::base_at_longest_fill() const {
    const auto base = on_time();
    return base && runs && runs->fill ? std::optional{*base + runs->fill->longest - runs->fill->shortest}
                                      : base;
}

std::optional<Duration> TimerView::period() const {
    return timer.kind == TimerKind::on_demand ? std::nullopt : value_of(settings().period);
}

std::optional<Duration> TimerView::on_time() const {
    return timer.kind == TimerKind::on_demand ? std::nullopt : value_of(settings().base_on_time);
}

std::optional<Duration> TimerView::ceiling() const {
    return timer.kind == TimerKind::trimmed ? value_of(settings().on_time_ceiling) : std::nullopt;
}

bool TimerView::can_climb() const {
    return timer.kind == TimerKind::trimmed &&
           std::ranges::any_of(settings().trim_rows, [](const TrimRow& row) {
               return row.change && in_seconds(row.change->value()) > 0.0;
           });
}

std::optional<Duration> TimerView::longest_run() const {
    const auto base = base_at_longest_fill();
    if (!base || !can_climb()) {
        return base;
    }
    return ceiling() ? std::optional{std::max(*base, *ceiling())} : std::nullopt;
}

std::optional<Duration> TimerView::shortest_run() const {
    auto run = on_time();
    if (!run || timer.kind != TimerKind::trimmed) {
        return run;
    }
    auto taken_off = seconds(0.0);
    for (const auto& row : settings().trim_rows) {
        if (row.change) {
            taken_off = std::min(taken_off, row.change->value());
        }
    }
    return std::max(seconds(0.0), *run + taken_off);
}

bool TimerView::can_shorten() const {
    return on_time() && *shortest_run() < *on_time();
}

Message TimerView::at_shortest_run(Message message) const {
    if (!can_shorten()) {
        return message;
    }
    return {WF_TEXT("When trimming has brought the run down to %1: %2"),
            {any(*shortest_run()), std::move(message)}};
}

Message TimerView::without_shortening(Message remedy) const {
    if (!can_shorten()) {
        return remedy;
    }
    return {WF_TEXT("%1 Take out the trim rows that shorten the run: the base is the shortest that serves."),
            {std::move(remedy)}};
}

bool TimerView::always_on() const {
    if (timer.kind == TimerKind::on_demand) {
        return true;
    }
    return period() && on_time() && at_least(*base_at_longest_fill(), *period());
}

std::optional<Duration> TimerView::trim_room() const {
    if (timer.kind != TimerKind::trimmed || !on_controller.base_on_time || !on_controller.on_time_ceiling) {
        return std::nullopt;
    }
    return on_controller.on_time_ceiling->value() - on_controller.base_on_time->value();
}

std::optional<AnyQuantity> TimerView::advised(Setting setting) const {
    return advice != nullptr ? held(settings_to_enter(*advice), setting) : std::nullopt;
}

std::optional<Duration> TimerView::advised_in_cycle(Setting setting) const {
    const auto value = advice != nullptr && advice->cycled ? advised(setting) : std::nullopt;
    return value ? std::optional{seconds(value->si)} : std::nullopt;
}

std::optional<Duration> TimerView::advised_run() const {
    if (advice == nullptr || !advice->cycled) {
        return std::nullopt;
    }
    return value_of(pump_runs(house, timings, timer, settings_to_enter(*advice)).settings.base_on_time);
}

bool TimerView::no_cycle_fits() const {
    return advice != nullptr && !advice->cycled && !advice->banks.empty() &&
           std::ranges::all_of(advice->banks, [](const BankAdvice& bank) { return bank.bounds.has_value(); });
}

const BankAdvice* TimerView::advice_for(const PadBank& bank) const {
    if (advice == nullptr) {
        return nullptr;
    }
    const auto found = std::ranges::find(advice->banks, bank.id, &BankAdvice::bank);
    return found == advice->banks.end() ? nullptr : &*found;
}

std::optional<double> TimerView::evaporation_ratio(const PadBank& bank) const {
    if (const auto* own = advice_for(bank); own != nullptr && own->question) {
        return own->question->evaporation_ratio;
    }
    return advice != nullptr ? advice->evaporation_ratio : std::nullopt;
}

bool TimerView::has_pad_hours() const {
    return can_hold(TemplateKey::pad_hours_from) && settings().pad_hours_from && settings().pad_hours_to &&
           settings().pad_hours_from != settings().pad_hours_to;
}

bool TimerView::pads_may_run_at(int minute) const {
    if (!has_pad_hours()) {
        return true;
    }
    const int from = settings().pad_hours_from->minutes;
    const int to = settings().pad_hours_to->minutes;
    return from < to ? minute >= from && minute < to : minute >= from || minute < to;
}

Duration TimerView::entry_for(TemplateKey key, Duration run) const {
    const auto counted = std::max(seconds(0.0), run - filling(*this, key));
    const auto* described = described_controller(timer);
    if (const auto* setting = described != nullptr ? described->setting(key) : nullptr) {
        if (const auto step = step_for(*setting, any(counted), StepDirection::up)) {
            return seconds(quantity_of(*setting, *step).si);
        }
    }
    return rounded_up(counted, timer.resolution ? timer.resolution->value() : seconds(1.0));
}

Duration TimerView::run_behind(TemplateKey key, Duration entry) const {
    return entry + filling(*this, key);
}

std::vector<TimerView> timers_with_settings(const RuleInputs& inputs) {
    std::vector<TimerView> views;
    for (const auto& timer : inputs.file.house.timers) {
        const auto settings = std::ranges::find(inputs.settings, timer.id, &TimerSettings::timer);
        if (settings != inputs.settings.end()) {
            views.push_back({inputs.file.house, timer, *settings, inputs.advice.of(timer.id),
                             inputs.file.house.banks_of(timer), inputs.advice.margins, inputs.timings,
                             std::nullopt});
            if (counts_from_full_header(timer)) {
                views.back().runs = pump_runs(inputs.file.house, inputs.timings, timer, *settings);
            }
        }
    }
    return views;
}

Finding finding_on(const TimerView& view, const PadBank* bank, const char* rule, Severity severity) {
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.timer = view.timer.id;
    if (bank != nullptr) {
        finding.bank = bank->id;
    }
    return finding;
}

Message advised_cycle_or(const TimerView& view, Message otherwise) {
    const auto base = view.advised_in_cycle(Setting::base_on_time);
    const auto period = view.advised_in_cycle(Setting::period);
    if (base && period) {
        return {WF_TEXT("Set the on-time to %1 and the period to %2, as advised."),
                {any(*base), any(*period)}};
    }
    if (view.no_cycle_fits()) {
        return WF_TEXT("Let the pump run without rest while pads are called for: no cycle fits here.");
    }
    return otherwise;
}

}  // namespace wetfront
