// SPDX-License-Identifier: Apache-2.0
#include "day/engine.h"

#include <algorithm>
#include <cmath>

namespace wetfront {

using namespace day_detail;

namespace {

constexpr double hunting_calls = 4;
constexpr double wet_share_off = 1e-5;     // from a parabola, of all pads' air: about 1 mK
constexpr double longest_supplied = 60.0;  // step, s

}  // namespace

DaySimulator::Engine::Engine(const DayHouse& house, WeatherTable table, const SimulationChoice& choice)
    : house_{house}, table_{std::move(table)}, choice_{choice}, air_{house} {
    for (const auto& bank : house_.banks) {
        banks_.emplace_back(bank, house_.columns);
    }
    wet_.resize(banks_.size());
    wet_middle_.resize(banks_.size());
    wet_end_.resize(banks_.size());
}

void DaySimulator::Engine::set_up(std::span<const TimerPlan> plans) {
    now_ = 0.0;
    slot_begin_ = 0.0;
    stage_ = 0;
    stage_ups_in_hour_ = 0;
    hunting_hours_ = 0;
    air_is_known_ = false;
    for (auto& bank : banks_) {
        bank.columns.fill_with(1.0, bank.now);
        bank.drying = DryingCurve{};
        bank.timer = none;
        bank.step = 0.0;
        bank.before = never_known;
        bank.taken_up = bank.supplied = bank.drained = bank.began_to_dry = 0.0;
    }
    const double clock = table_.clock_at_start + in_seconds(house_.clock_ahead);
    timers_.clear();
    for (std::size_t t = 0; t < plans.size(); ++t) {
        auto& timer = timers_.emplace_back(plans[t], clock);
        for (const auto p : house_.timers[t].pumps) {
            const auto& pump = house_.pumps[p];
            timer.bleed += 1000.0 * in_si(pump.bleed);
            for (const auto b : pump.banks) {
                timer.banks.push_back(b);
                timer.flow += banks_[b].columns.flow();
                banks_[b].timer = t;
            }
        }
    }
    load_hour(0);
    std::fill(wet_.begin(), wet_.end(), 0.0);
    // Fans begin where the dry house puts them, stage by stage.
    shown_ = air_.at(hour_air_, 0.0, wet_).house;
    const auto& stages = house_.fan_stages;
    while (stage_ + 1 < stages.size() &&
           shown_ >= in_celsius(*house_.target) + in_si(stages[stage_ + 1].above_target)) {
        ++stage_;
        load_hour(0);
        shown_ = air_.at(hour_air_, 0.0, wet_).house;
    }
    for (auto& timer : timers_) {
        timer.state.begin(shown_, hour_air_.humidity.at(0.0));
    }
}

void DaySimulator::Engine::load_hour(std::size_t hour) {
    hour_ = hour;
    hour_begin_ = hour_s * static_cast<double>(hour);
    const double by_the_sun = table_.clock_at_start + hour_begin_ + in_seconds(house_.clock_ahead) -
                              in_seconds(house_.clock_ahead_of_sun);
    air_.load(table_.hours[hour], by_the_sun, stage_, hour_air_);
    for (std::size_t b = 0; b < banks_.size(); ++b) {
        const auto& drying = hour_air_.drying[b];
        const double holds = banks_[b].columns.holds();
        banks_[b].drying.turn_to({drying.c0 / holds, drying.c1 / holds, drying.c2 / holds}, hour_begin_,
                                 now_);
    }
    air_is_known_ = false;
}

Result<void> DaySimulator::Engine::run(std::span<const TimerPlan> plans, DayResult& into,
                                       const std::function<bool(double)>& go_on) {
    const double end_of_all = hour_s * static_cast<double>(table_.hours.size());
    const double slot = in_seconds(choice_.slot);
    constexpr int most_steps_a_day = 1'000'000;
    set_up(plans);
    Tally tally{house_, slot, into};
    tally.begin(table_.from, timers_.size());
    int steps = 0;
    while (now_ < end_of_all - at_once) {
        for (auto& timer : timers_) {
            if (timer.regular ? !stays_wet(timer) : may_be_regular(timer)) {
                timer.regular ? leave(timer) : enter(timer);
            }
        }
        double end = smooth_step(std::max(horizon(), now_ + at_once));
        gather_thresholds();
        const auto passed = thresholds_.empty() ? std::nullopt : sensor(end).first_crossing(thresholds_);
        if (passed && passed->after < end - now_ - at_once) {
            end = end_at(thresholds_[passed->threshold].value, now_ + std::max(passed->after, at_once));
        }
        WF_CHECK(commit(end, tally, into));
        if (++steps > most_steps_a_day) {
            return bad_input("simulation", "pumps or fans switch without end",
                             "a larger fan or call band, or a sensor with a lag");
        }
        if (now_ >= slot_begin_ + slot - at_once) {
            tally.close_slot(slot);
            slot_begin_ += slot;
        }
        if (now_ >= hour_begin_ + hour_s - at_once) {
            end_hour();
            if (hour_ + 1 == table_.hours.size()) {
                break;
            }
            load_hour(hour_ + 1);
            if (hour_ % 24 == 0) {
                steps = 0;
                if (go_on && !go_on(now_ / end_of_all)) {
                    return bad_input("simulation", "ended before it was through", "to begin again");
                }
            }
        }
        if (passed) {
            pass(owners_[passed->threshold], thresholds_[passed->threshold], into);
        }
        switchings(into);
    }
    close(tally, into);
    return boost::outcome_v2::success();
}

double DaySimulator::Engine::horizon() {
    double end = std::min(hour_begin_ + hour_s, slot_begin_ + in_seconds(choice_.slot));
    for (const auto& timer : timers_) {
        end = std::min({end, timer.state.next_clock(), timer.state.next_review(),
                        timer.regular ? never : timer.state.next_switch(), next_humidity_switch(timer)});
    }
    for (auto& bank : banks_) {
        bank.step_applies = false;
        if (bank.timer == none || !timers_[bank.timer].regular) {
            end = std::min(end, longest_step(bank, end));
        }
    }
    return end;
}

double DaySimulator::Engine::next_humidity_switch(const Timer& timer) const {
    if (!timer.state.plan().cut_off) {
        return never;
    }
    std::array<double, 2> crossed{};
    const int count = hour_air_.humidity.roots(*timer.state.plan().cut_off, hour_s, crossed);
    for (int i = 0; i < count; ++i) {
        const double at = hour_begin_ + crossed[static_cast<std::size_t>(i)];
        if (at > now_ + at_once) {
            return at;
        }
    }
    return never;
}

double DaySimulator::Engine::longest_step(Bank& bank, double end) const {
    const double c = bank.columns.constant_share();
    const double largest = bank.now.largest();
    const double so_far = bank.drying.at(now_);
    if (largest < c - 1e-9) {
        const double reached = so_far + c - largest;
        return bank.drying.at(end) <= reached ? end : bank.drying.time_of(reached, now_, end);
    }
    const double b = bank.drying.rate_at(now_);
    const double pump_start = bank.timer == none ? never : timers_[bank.timer].state.pump_start();
    const double first = pump_start + bank.columns.first_arrival();
    if (now_ >= first - at_once) {
        if (bank.step <= 0.0) {
            bank.step = 4.0 * shortest_step(bank);
        }
        bank.step_applies = true;
        return now_ + bank.step;
    }
    // What decays by exp(-k t) from a wet share is a parabola to (k t)^3 / 125 of it: about a ten-thousandth.
    const double wet = bank.columns.wet_share(bank.now);
    const double k = b / (1.0 - c);
    const double longest = k > 0.0 && wet > 0.0 ? std::min(std::cbrt(0.00125 / wet), 1.0) / k : never;
    return std::min(now_ + longest, first);
}

void DaySimulator::Engine::try_step(double end) {
    const double middle = 0.5 * (now_ + end);
    for (std::size_t b = 0; b < banks_.size(); ++b) {
        auto& bank = banks_[b];
        const bool regular = bank.timer != none && timers_[bank.timer].regular;
        if (regular) {
            bank.trial = {bank.drying.at(end) - bank.drying.at(now_), 0.0, 0.0, 0.0};
            wet_[b] = wet_middle_[b] = wet_end_[b] = 1.0;
            continue;
        }
        const double pump_start = bank.timer == none ? never : timers_[bank.timer].state.pump_start();
        bank.trial = bank.columns.advance(bank.now, bank.middle, now_, middle, bank.drying, pump_start);
        bank.trial.add(bank.columns.advance(bank.middle, bank.end, middle, end, bank.drying, pump_start));
        if (!air_is_known_) {
            wet_[b] = bank.columns.wet_share(bank.now);
        }
        wet_middle_[b] = bank.columns.wet_share(bank.middle);
        wet_end_[b] = bank.columns.wet_share(bank.end);
    }
    if (!air_is_known_) {
        step_.air[0] = air_.at(hour_air_, now_ - hour_begin_, wet_);
    }
    step_.air[1] = air_.at(hour_air_, middle - hour_begin_, wet_middle_);
    step_.air[2] = air_.at(hour_air_, end - hour_begin_, wet_end_);
}

// A shorter step has a better parabola, on which the sensor passes a little earlier or later.
double DaySimulator::Engine::end_at(double threshold, double end) {
    for (int i = 0; i < 2; ++i) {
        try_step(end);
        const double length = end - now_;
        const auto reading = sensor(end);
        const double later = (threshold - reading.at(length)) / reading.slope(length);
        if (!(std::abs(later) < 0.2 * length) || std::abs(later) < at_once) {
            return end;
        }
        end += later;
    }
    try_step(end);
    return end;
}

LaggedSensor DaySimulator::Engine::sensor(double end) const {
    const double length = end - now_;
    const auto& [first, middle, last] = step_.air;
    // The curvature of a few milliseconds is nothing but rounding.
    const double between = length < 0.01 ? 0.5 * (first.house + last.house) : middle.house;
    return {in_seconds(house_.sensor_lag), shown_,
            Parabola::through(first.house, between, last.house, length), length};
}

void DaySimulator::Engine::gather_thresholds() {
    thresholds_.clear();
    owners_.clear();
    for (std::size_t t = 0; t < timers_.size(); ++t) {
        const auto found = timers_[t].state.thresholds();
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (found[i]) {
                thresholds_.push_back(*found[i]);
                owners_.push_back({t, i});
            }
        }
    }
    const auto& stages = house_.fan_stages;
    if (stage_ + 1 < stages.size()) {
        thresholds_.push_back({in_celsius(*house_.target) + in_si(stages[stage_ + 1].above_target), true});
        owners_.push_back({none, 0});
    }
    if (stage_ > 0) {
        thresholds_.push_back(
            {in_celsius(*house_.target) + in_si(stages[stage_].above_target) - in_si(house_.fan_band),
             false});
        owners_.push_back({none, 1});
    }
}

Result<void> DaySimulator::Engine::commit(double end, Tally& tally, DayResult& into) {
    const double length = end - now_;
    // Steps of less, and with less bend, within which humidity and index of the house are straight lines.
    constexpr double short_step = 120.0;
    constexpr double straight = 0.002;  // K
    const auto feel = [&](std::size_t node) -> Result<void> {
        WF_TRY(step_.felt[node],
               HouseAir::felt(step_.air[node].house, step_.air[node].house_ratio, hour_air_.pressure));
        return boost::outcome_v2::success();
    };
    if (!air_is_known_) {
        WF_CHECK(feel(0));
    }
    WF_CHECK(feel(2));
    const double bend = std::abs(step_.air[1].house - 0.5 * (step_.air[0].house + step_.air[2].house));
    if (length > short_step || bend > straight) {
        WF_CHECK(feel(1));
    } else {
        step_.felt[1] = {0.5 * (step_.felt[0].humidity + step_.felt[2].humidity),
                         0.5 * (step_.felt[0].index + step_.felt[2].index), step_.felt[2].fog};
    }
    step_.begin = now_;
    step_.length = length;
    step_.evaporated = step_.pumped = step_.bled = 0.0;
    step_.wet_share = step_.lost = {};
    step_.airflow_share = air_.airflow(stage_) / air_.airflow(air_.stages() - 1);
    const double second = now_ - hour_begin_;
    step_.outside_humidity =
        Parabola::through(hour_air_.humidity.at(second), hour_air_.humidity.at(second + 0.5 * length),
                          hour_air_.humidity.at(second + length), length);
    for (std::size_t b = 0; b < banks_.size(); ++b) {
        auto& bank = banks_[b];
        const std::array<double, 3> wet{wet_[b], wet_middle_[b], wet_end_[b]};
        const double effectiveness = air_.effectiveness(b, stage_);
        const bool called = bank.timer != none && timers_[bank.timer].state.active();
        for (std::size_t i = 0; i < 3; ++i) {
            step_.wet_share[i] += air_.face_share(b) * wet[i];
            if (called) {
                step_.lost[i] += air_.face_share(b) * (1.0 - wet[i]) * effectiveness *
                                 (step_.air[i].outside - step_.air[i].wet_bulb);
            }
        }
        step_.evaporated += bank.columns.holds() * bank.trial.evaporated;
        if (bank.timer == none || !timers_[bank.timer].regular) {
            bank.taken_up += bank.trial.taken_up;
            bank.supplied += bank.trial.supplied;
            bank.began_to_dry += bank.trial.began_to_dry;
            bank.before = 0.5 * (now_ + end);
            bank.wet_before = wet[1];
            std::swap(bank.now, bank.end);
        }
    }
    for (std::size_t t = 0; t < timers_.size(); ++t) {
        auto& timer = timers_[t];
        const double on = timer.regular ? follow(t, end, into) : timer.state.running() ? length : 0.0;
        timer.pump_on += on;
        timer.called += timer.state.active() ? length : 0.0;
        tally.pump_on(t, on);
        step_.pumped += timer.flow * on;
        step_.bled += timer.bleed * on;
    }
    shown_ = sensor(end).at(length);
    tally.add(step_);
    now_ = end;
    step_.air[0] = step_.air[2];
    step_.felt[0] = step_.felt[2];
    wet_ = wet_end_;
    air_is_known_ = true;
    return boost::outcome_v2::success();
}

double DaySimulator::Engine::shortest_step(const Bank& bank) const {
    return (1.0 - bank.columns.constant_share()) /
           (64.0 * std::max(bank.columns.wetting(), bank.drying.rate_at(now_)));
}

// The cubic through the two ends and the middle of the step and the middle of the one before tells how far
// the parabola is off, and finds kinks, where a front comes to a column or a column is wet again.
double DaySimulator::Engine::roughness(double end) {
    double roughest = 0.0;
    const double length = end - now_;
    for (std::size_t b = 0; b < banks_.size(); ++b) {
        auto& bank = banks_[b];
        if (!bank.step_applies) {
            continue;
        }
        double off = std::abs(wet_middle_[b] - 0.5 * (wet_[b] + wet_end_[b]));
        if (bank.before != never_known) {
            const double since = now_ - bank.before;
            const double slope_before = (wet_[b] - bank.wet_before) / since;
            const double slope = (wet_middle_[b] - wet_[b]) / (0.5 * length);
            const double slope_after = (wet_end_[b] - wet_middle_[b]) / (0.5 * length);
            const double bend_before = (slope - slope_before) / (since + 0.5 * length);
            const double bend = (slope_after - slope) / length;
            const double twist = (bend - bend_before) / (since + length);
            off = std::abs(twist) * length * length * length / 20.8;
        }
        const double rough = air_.face_share(b) * off / wet_share_off;
        roughest = std::max(roughest, rough);
        const double change = rough > 1e-3 ? 0.9 / std::cbrt(rough) : 2.0;
        bank.step = std::clamp(length * std::clamp(change, 0.3, 2.0), shortest_step(bank), longest_supplied);
    }
    return roughest;
}

// Tries a step, and shorter ones until the pads can be followed; its end.
double DaySimulator::Engine::smooth_step(double end) {
    try_step(end);
    while (roughness(end) > 1.0) {
        double shorter = end;
        for (const auto& bank : banks_) {
            if (bank.step_applies) {
                shorter = std::min(shorter, now_ + bank.step);
            }
        }
        if (shorter >= end - at_once) {
            break;
        }
        end = shorter;
        try_step(end);
    }
    return end;
}

void DaySimulator::Engine::end_hour() {
    bool hunting = stage_ups_in_hour_ >= hunting_calls;
    for (auto& timer : timers_) {
        hunting |= static_cast<double>(timer.state.calls - timer.calls_before_hour) >= hunting_calls;
        timer.calls_before_hour = timer.state.calls;
    }
    stage_ups_in_hour_ = 0;
    hunting_hours_ += hunting ? 1 : 0;
}

}  // namespace wetfront
