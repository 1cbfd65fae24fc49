// SPDX-License-Identifier: Apache-2.0
#include "day/timer_state.h"

#include <algorithm>
#include <cmath>

namespace wetfront::day_detail {
namespace {

constexpr double day = 86400.0;

}  // namespace

PlanNumbers::PlanNumbers(const TimerPlan& plan)
    : pumping{plan.pumping},
      period{in_seconds(plan.period)},
      base{in_seconds(plan.base)},
      ceiling{in_seconds(plan.ceiling.value_or(plan.base))},
      dead_band{in_si(plan.dead_band)},
      review{in_seconds(plan.review_interval)},
      rinse_length{in_seconds(plan.rinse_length)} {
    if (plan.start_temperature) {
        start = in_celsius(*plan.start_temperature);
        call_end = *start - in_si(plan.call_band);
    }
    if (plan.lowest_house_temperature) {
        lowest = in_celsius(*plan.lowest_house_temperature);
    }
    if (plan.humidity_cut_off) {
        cut_off = in_si(*plan.humidity_cut_off);
    }
    if (plan.hours_from && plan.hours_to && *plan.hours_from != *plan.hours_to) {
        hours_from = in_seconds(*plan.hours_from);
        hours_to = in_seconds(*plan.hours_to);
    }
    if (plan.target) {
        target = in_celsius(*plan.target);
    }
    for (const auto& row : plan.trim_rows) {
        rows.push_back({in_si(row.above_target), in_seconds(row.change)});
    }
    if (plan.rinse_at && rinse_length > 0.0 && in_cycles()) {
        rinse_at = in_seconds(*plan.rinse_at);
    }
}

double PlanNumbers::change_at(double shown) const {
    const double above = shown - target;
    const auto hotter =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.above > above; });
    if (hotter != rows.begin()) {
        return std::prev(hotter)->change;
    }
    if (above < -dead_band) {
        const auto adds =
            std::find_if(rows.begin(), rows.end(), [](const Row& row) { return row.change > 0.0; });
        return adds != rows.end() ? -adds->change : 0.0;
    }
    return 0.0;
}

TimerState::TimerState(const TimerPlan& plan, double clock) : plan_{plan}, clock_at_start_{clock} {}

void TimerState::begin(double shown, double humidity) {
    called_ = !plan_.start || shown >= *plan_.start;
    warm_ = !plan_.lowest || shown >= *plan_.lowest;
    dry_outside_ = !plan_.cut_off || humidity <= *plan_.cut_off;
    in_hours_ = within_hours(0.0);
    if (plan_.hours_from) {
        next_hours_ = std::min(next_time_of(*plan_.hours_from, 0.0), next_time_of(plan_.hours_to, 0.0));
    }
    if (plan_.rinse_at) {
        rinse_due_ = *plan_.rinse_at - clock_at_start_;  // of the first day, even if that hour is past
    }
    decide(0.0);
}

bool TimerState::within_hours(double now) const {
    if (!plan_.hours_from) {
        return true;
    }
    const double clock = clock_at_start_ + now + 1e-3;  // what begins now has begun
    const double time_of_day = clock - day * std::floor(clock / day);
    const bool after = time_of_day >= *plan_.hours_from;
    const bool before = time_of_day < plan_.hours_to;
    return *plan_.hours_from < plan_.hours_to ? after && before : after || before;
}

double TimerState::next_time_of(double time_of_day, double now) const {
    const double clock = clock_at_start_ + now;
    double next = time_of_day + day * std::floor((clock - time_of_day) / day) - clock_at_start_;
    while (next <= now + at_once) {
        next += day;
    }
    return next;
}

bool TimerState::plain_cycle() const {
    return active_ && plan_.in_cycles() && !rinsing_ && run_on_ == on_time_ && on_time_ < plan_.period;
}

bool TimerState::never_rests() const {
    return running_ && !rinsing_ && (!plan_.in_cycles() || (run_on_ == on_time_ && on_time_ >= plan_.period));
}

std::array<std::optional<Threshold>, 2> TimerState::thresholds() const {
    std::array<std::optional<Threshold>, 2> found;
    if (plan_.pumping == Pumping::never) {
        return found;
    }
    if (plan_.start) {
        found[0] = called_ ? Threshold{plan_.call_end, false} : Threshold{*plan_.start, true};
    }
    if (plan_.lowest) {
        found[1] = Threshold{*plan_.lowest, !warm_};
    }
    return found;
}

void TimerState::passed(std::size_t threshold, double now) {
    bool& state = threshold == 0 ? called_ : warm_;
    state = !state;
    decide(now);
}

void TimerState::humidity_is(bool above_cut_off, double now) {
    dry_outside_ = !above_cut_off;
    decide(now);
}

void TimerState::clock(double now) {
    if (next_hours_ <= now + at_once) {
        in_hours_ = within_hours(now);
        next_hours_ = std::min(next_time_of(*plan_.hours_from, now), next_time_of(plan_.hours_to, now));
        decide(now);
    }
    if (active_ && rinse_due_ <= now + at_once) {
        start_rinse(now);
    }
}

void TimerState::decide(double now) {
    const bool was = active_;
    active_ = called_ && warm_ && dry_outside_ && in_hours_ && plan_.pumping != Pumping::never;
    if (active_ && !was) {
        start_call(now);
    } else if (was && !active_) {
        stop(now);
        rinsing_ = false;
        next_switch_ = never;
    }
}

void TimerState::start_call(double now) {
    ++calls;
    if (!plan_.in_cycles()) {
        ++starts;
        running_ = true;
        pump_start_ = now;
        next_switch_ = never;
        return;
    }
    on_time_ = plan_.base;
    longest_on_time = std::max(longest_on_time, on_time_);
    next_review_ = now + plan_.review;
    const auto day_of = [&](double time) { return std::floor((clock_at_start_ + time + 1e-3) / day); };
    while (day_of(rinse_due_) < day_of(now)) {
        rinse_due_ += day;
    }
    if (rinse_due_ <= now + at_once) {
        start_rinse(now);
    } else {
        start_run(now);
    }
}

void TimerState::start_run(double now) {
    cycle_start_ = now;
    run_on_ = on_time_;
    if (!running_) {
        ++starts;
        running_ = true;
        pump_start_ = now;
    }
    if (on_time_ < plan_.period) {
        next_switch_ = now + on_time_;
    } else {
        next_switch_ = plan_.trims() ? now + plan_.period : never;
    }
}

void TimerState::start_rinse(double now) {
    if (!running_) {
        ++starts;
        running_ = true;
        pump_start_ = now;
    }
    rinsing_ = true;
    rinse_due_ += day;
    next_switch_ = now + plan_.rinse_length;
}

void TimerState::stop(double now) {
    if (running_) {
        running_ = false;
        run_length_ = now - pump_start_;
    }
}

void TimerState::pump_switch(double now) {
    if (rinsing_) {
        rinsing_ = false;
        if (on_time_ >= plan_.period) {
            start_run(now);
            return;
        }
        run_on_ = on_time_;
        cycle_start_ = now - on_time_;  // the rinse stands for a run
        stop(now);
        next_switch_ = cycle_start_ + plan_.period;
    } else if (running_ && run_on_ < plan_.period) {
        stop(now);
        next_switch_ = cycle_start_ + plan_.period;
    } else {
        start_run(now);
    }
}

double TimerState::reviewed(double shown) const {
    return std::clamp(on_time_ + plan_.change_at(shown), plan_.base, plan_.ceiling);
}

void TimerState::review(double now, double shown) {
    on_time_ = reviewed(shown);
    longest_on_time = std::max(longest_on_time, on_time_);
    next_review_ = now + plan_.review;
}

std::int64_t TimerState::catch_up(double now) {
    if (!plan_.in_cycles()) {
        return 0;
    }
    const double passed_periods = std::floor((now - cycle_start_) / plan_.period + 1e-8);
    cycle_start_ += passed_periods * plan_.period;
    if (on_time_ >= plan_.period) {
        next_switch_ = plan_.trims() ? cycle_start_ + plan_.period : never;
        return 0;
    }
    running_ = now - cycle_start_ < on_time_;
    pump_start_ = cycle_start_;
    run_length_ = on_time_;
    next_switch_ = cycle_start_ + (running_ ? on_time_ : plan_.period);
    starts += static_cast<std::int64_t>(passed_periods);
    return static_cast<std::int64_t>(passed_periods);
}

}  // namespace wetfront::day_detail
