// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "day/engine.h"

namespace wetfront {

using namespace day_detail;

namespace {

constexpr double rounding = 1e-12;

}  // namespace

// What a change does to the pump, with the columns as they are at that moment.
template <class Change>
void DaySimulator::Engine::change(Timer& timer, Change change_state, DayResult& into) {
    if (timer.regular) {
        leave(timer);
    }
    const double start = timer.state.pump_start();
    change_state(timer.state);
    if (start == timer.state.pump_start()) {
        return;
    }
    if (start != never) {
        for (const auto b : timer.banks) {
            const auto& columns = banks_[b].columns;
            banks_[b].drained += columns.flow() * columns.filling_time(now_ - start);
        }
        if (choice_.keep_runs) {
            into.runs.push_back(
                {static_cast<std::size_t>(&timer - timers_.data()), seconds(start), seconds(now_)});
        }
    }
    for (const auto b : timer.banks) {
        banks_[b].step = 0.0;
        banks_[b].before = never_known;
    }
}

void DaySimulator::Engine::pass(const Owner& owner, const Threshold& threshold, DayResult& into) {
    // The reading lies on the far side, whatever rounding says.
    shown_ = threshold.rising ? std::max(shown_, threshold.value) : std::min(shown_, threshold.value - 1e-9);
    if (owner.timer != none) {
        change(
            timers_[owner.timer], [&](TimerState& state) { state.passed(owner.threshold, now_); }, into);
        return;
    }
    if (threshold.rising) {
        ++stage_;
        ++stage_ups_in_hour_;
    } else {
        --stage_;
    }
    load_hour(hour_);
}

void DaySimulator::Engine::switchings(DayResult& into) {
    for (auto& timer : timers_) {
        auto& state = timer.state;
        while (state.next_clock() <= now_ + at_once) {
            change(
                timer, [&](TimerState& s) { s.clock(now_); }, into);
        }
        if (state.plan().cut_off) {
            const double second = std::min(now_ - hour_begin_ + 1e-3, hour_s);
            const bool humid = hour_air_.humidity.at(second) > *state.plan().cut_off;
            if (humid == state.dry_outside()) {
                change(
                    timer, [&](TimerState& s) { s.humidity_is(humid, now_); }, into);
            }
        }
        while (!timer.regular && state.next_switch() <= now_ + at_once) {
            change(
                timer, [&](TimerState& s) { s.pump_switch(now_); }, into);
        }
        if (state.next_review() <= now_ + at_once) {
            if (timer.regular && state.reviewed(shown_) != state.on_time()) {
                leave(timer);
            }
            state.review(now_, shown_);
        }
    }
}

// The far column is dry for longest and has the shortest time to be wetted in, so it stands for all. From the
// end of the last run on, at the highest drying rate of this hour; then in every further period.
bool DaySimulator::Engine::stays_wet(const Timer& timer) const {
    const auto& state = timer.state;
    return std::all_of(timer.banks.begin(), timer.banks.end(), [&](std::size_t index) {
        const auto& bank = banks_[index];
        const double a = bank.columns.wetting();
        const double b = bank.drying.highest_rate() * (1.0 + rounding);
        if (!(b < a)) {
            return false;
        }
        if (!state.rests()) {
            return true;
        }
        const double period = state.plan().period;
        const double on = state.on_time();
        const double arrival = bank.columns.last_arrival();
        const double c = bank.columns.constant_share();
        if (!(on > arrival && b * (period - on + arrival) <= c && a * (on - arrival) >= b * period)) {
            return false;
        }
        const double run = state.cycle_start() + (state.running() ? 0.0 : period);
        const double dried =
            bank.drying.at(now_) - (timer.regular ? bank.at_last_stop : bank.drying.at(now_));
        const double to_arrival = run + arrival - now_;
        return (to_arrival <= 0.0 || dried + b * to_arrival <= c) &&
               a * (on - arrival) >= dried + b * (run + on - now_);
    });
}

bool DaySimulator::Engine::may_be_regular(const Timer& timer) const {
    const auto& state = timer.state;
    if (!state.active()) {
        return false;
    }
    if (state.plain_cycle() ? state.running() : !state.never_rests()) {
        return false;
    }
    return std::all_of(
               timer.banks.begin(), timer.banks.end(),
               [&](std::size_t b) {
                   return banks_[b].now.all_zero() &&
                          (!state.running() || now_ >= state.pump_start() + banks_[b].columns.last_arrival());
               }) &&
           stays_wet(timer);
}

void DaySimulator::Engine::enter(Timer& timer) {
    timer.regular = true;
    timer.entered = now_;
    timer.stops = 0;
    for (const auto b : timer.banks) {
        banks_[b].entered = banks_[b].at_last_stop = banks_[b].drying.at(now_);
    }
}

void DaySimulator::Engine::leave(Timer& timer) {
    const auto& state = timer.state;
    const double on = state.on_time();
    for (const auto b : timer.banks) {
        auto& bank = banks_[b];
        const auto& columns = bank.columns;
        if (state.rests()) {
            columns.in_cycle(now_, bank.drying, bank.at_last_stop, state.pump_start(), bank.now);
            const double running = state.running() ? now_ - state.pump_start() : 0.0;
            const auto stops = static_cast<double>(timer.stops);
            bank.supplied +=
                stops * (on - columns.filling_time(on)) + running - columns.filling_time(running);
            bank.drained += stops * columns.flow() * columns.filling_time(on);
        } else {
            columns.fill_with(0.0, bank.now);
            bank.supplied += now_ - timer.entered;
        }
        bank.taken_up += bank.drying.at(now_) - bank.entered - columns.mean(bank.now);
        bank.step = 0.0;
        bank.before = never_known;
    }
    timer.regular = false;
}

// All that a regular timer does from now to the end of the step; how long its pumps ran.
double DaySimulator::Engine::follow(std::size_t index, double end, DayResult& into) {
    auto& timer = timers_[index];
    auto& state = timer.state;
    if (!state.rests()) {
        state.catch_up(end);
        return end - now_;
    }
    const double on = state.on_time();
    const double period = state.plan().period;
    const double first_cycle = state.cycle_start();
    const auto on_so_far = [&](double time) {
        return state.running() ? std::max(0.0, time - state.cycle_start()) : on;
    };
    const double before = on_so_far(now_);
    const std::int64_t stopped_before = state.running() ? 0 : 1;
    const auto periods = state.catch_up(end);
    const std::int64_t stops = periods + (state.running() ? 0 : 1) - stopped_before;
    timer.stops += stops;
    if (stops > 0) {
        const double last_stop = state.cycle_start() + on - (state.running() ? period : 0.0);
        for (const auto b : timer.banks) {
            banks_[b].at_last_stop = banks_[b].drying.at(last_stop);
        }
        if (choice_.keep_runs) {
            for (std::int64_t i = stopped_before; i < stopped_before + stops; ++i) {
                const double start = first_cycle + static_cast<double>(i) * period;
                into.runs.push_back({index, seconds(start), seconds(start + on)});
            }
        }
    }
    return static_cast<double>(periods) * on + on_so_far(end) - before;
}

void DaySimulator::Engine::close(Tally& tally, DayResult& into) {
    tally.close(now_);
    double stored = 0.0;
    double returned = 0.0;
    double energy = 0.0;
    bool energy_known = true;
    auto& totals = into.totals;
    for (std::size_t t = 0; t < timers_.size(); ++t) {
        auto& timer = timers_[t];
        if (timer.regular) {
            leave(timer);
        }
        auto& of = into.timers[t];
        of.called = seconds(timer.called);
        of.pump_on = seconds(timer.pump_on);
        // A run that would begin just as the weather ends is none.
        const bool too_late = timer.state.running() && now_ - timer.state.pump_start() < at_once;
        of.pump_starts = timer.state.starts - (too_late ? 1 : 0);
        of.calls = timer.state.calls;
        of.longest_on_time = seconds(timer.state.longest_on_time);
        for (const auto b : timer.banks) {
            of.wet_dry_cycles += banks_[b].began_to_dry / static_cast<double>(timer.banks.size());
        }
        const auto& pumps = house_.timers[t].pumps;
        totals.pump_starts += of.pump_starts * static_cast<std::int64_t>(pumps.size());
        for (const auto p : pumps) {
            if (timer.pump_on > 0.0 && !house_.pumps[p].power) {
                energy_known = false;
            } else if (house_.pumps[p].power) {
                energy += in_si(*house_.pumps[p].power) * timer.pump_on;
            }
        }
        if (timer.state.running()) {
            const double running = now_ - timer.state.pump_start();
            for (const auto b : timer.banks) {
                stored += banks_[b].columns.flow() * banks_[b].columns.filling_time(running);
            }
            if (choice_.keep_runs && !too_late) {
                into.runs.push_back({t, seconds(timer.state.pump_start()), seconds(now_)});
            }
        }
    }
    for (std::size_t b = 0; b < banks_.size(); ++b) {
        const auto& bank = banks_[b];
        totals.wet_dry_cycles += air_.face_share(b) * bank.began_to_dry;
        stored += bank.columns.holds() * (1.0 - bank.columns.mean(bank.now));
        returned += bank.columns.flow() * bank.supplied - bank.columns.holds() * bank.taken_up + bank.drained;
    }
    into.water.stored = from_si<Mass>(stored);
    into.water.returned = from_si<Mass>(returned);
    totals.hunting_hours = hunting_hours_;
    if (energy_known) {
        totals.pump_energy = from_si<Energy>(energy);
        if (house_.prices.energy) {
            constexpr double joules_in_kwh = 3.6e6;
            totals.energy_cost = energy / joules_in_kwh * *house_.prices.energy;
        }
    }
    if (house_.prices.water) {
        totals.water_cost = (in_si(totals.evaporated) + in_si(totals.bled)) / 1000.0 * *house_.prices.water;
    }
    std::stable_sort(into.runs.begin(), into.runs.end(),
                     [](const PumpRun& one, const PumpRun& other) { return one.stop < other.stop; });
}

}  // namespace wetfront
