// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "day/day_house.h"
#include "day/lagged_sensor.h"
#include "day/pad_columns.h"

namespace wetfront::day_detail {

inline constexpr double at_once = 1e-6;  ///< two moments so near are one, s

/// The numbers of a plan; degC and seconds.
struct PlanNumbers {
    explicit PlanNumbers(const TimerPlan& plan);
    struct Row {
        double above;
        double change;
    };
    Pumping pumping;
    std::optional<double> start;
    double call_end = 0.0;
    std::optional<double> lowest;
    std::optional<double> cut_off;
    std::optional<double> hours_from;
    double hours_to = 0.0;
    double period;
    double base;
    double ceiling;
    double target = 0.0;
    std::vector<Row> rows;
    double dead_band;
    double review;
    std::optional<double> rinse_at;
    double rinse_length;

    [[nodiscard]] bool in_cycles() const { return pumping == Pumping::in_cycles; }
    [[nodiscard]] bool trims() const { return in_cycles() && !rows.empty() && base < ceiling; }
    /// Seconds that a review changes the on-time by.
    [[nodiscard]] double change_at(double shown) const;
};

/// What a timer does, from switching to switching. Times are seconds since the start of the weather; `clock`
/// is the timer's clock then.
class TimerState {
public:
    TimerState(const TimerPlan& plan, double clock);

    /// Before the first moment, with what the sensor shows and how humid it is outside.
    void begin(double shown, double humidity);

    [[nodiscard]] const PlanNumbers& plan() const { return plan_; }
    [[nodiscard]] bool active() const { return active_; }  ///< called and allowed
    [[nodiscard]] bool dry_outside() const { return dry_outside_; }
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] double pump_start() const { return running_ ? pump_start_ : never; }
    /// Of the run in hand or the last one.
    [[nodiscard]] double run_length() const { return run_length_; }
    [[nodiscard]] double on_time() const { return on_time_; }
    /// When the run in hand, or the last one, began its period.
    [[nodiscard]] double cycle_start() const { return cycle_start_; }
    [[nodiscard]] bool rests() const { return plan_.in_cycles() && on_time_ < plan_.period; }
    /// Rests in every period, without a rinse or a new on-time under way.
    [[nodiscard]] bool plain_cycle() const;
    /// Runs, and goes on running until the call ends or the on-time changes.
    [[nodiscard]] bool never_rests() const;

    /// What the sensor has to pass for something to change.
    [[nodiscard]] std::array<std::optional<Threshold>, 2> thresholds() const;

    /// Next moment of each kind after which something changes; `never` where nothing does.
    [[nodiscard]] double next_switch() const { return next_switch_; }
    [[nodiscard]] double next_review() const { return active_ && plan_.trims() ? next_review_ : never; }
    [[nodiscard]] double next_clock() const { return std::min(next_hours_, active_ ? rinse_due_ : never); }

    void passed(std::size_t threshold, double now);  ///< of thresholds()
    void humidity_is(bool above_cut_off, double now);
    void clock(double now);
    void pump_switch(double now);
    /// New on-time for what the sensor shows; the same where nothing changes.
    [[nodiscard]] double reviewed(double shown) const;
    void review(double now, double shown);

    /// Brings a timer that was left alone through whole periods up to date; how many began.
    std::int64_t catch_up(double now);

    // Counted since begin()
    std::int64_t starts = 0;
    std::int64_t calls = 0;
    double longest_on_time = 0.0;

private:
    void decide(double now);
    void start_call(double now);
    void start_run(double now);
    void start_rinse(double now);
    void stop(double now);
    [[nodiscard]] bool within_hours(double now) const;
    [[nodiscard]] double next_time_of(double time_of_day, double now) const;

    PlanNumbers plan_;
    double clock_at_start_;
    bool called_ = false;
    bool warm_ = true;
    bool dry_outside_ = true;
    bool in_hours_ = true;
    bool active_ = false;
    bool running_ = false;
    bool rinsing_ = false;
    double pump_start_ = 0.0;
    double run_length_ = 0.0;
    double cycle_start_ = 0.0;
    double on_time_ = 0.0;
    double run_on_ = 0.0;  ///< on-time that the run in hand, or the last one, was begun with
    double next_switch_ = never;
    double next_review_ = never;
    double next_hours_ = never;
    double rinse_due_ = never;
};

}  // namespace wetfront::day_detail
