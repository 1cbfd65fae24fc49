// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "day/house_air.h"
#include "day/lagged_sensor.h"
#include "day/pad_columns.h"
#include "day/simulate.h"
#include "day/tally.h"
#include "day/timer_state.h"
#include "day/weather_table.h"

namespace wetfront {

/// Goes from step to step: a step ends where something switches, where the weather's hour or the result's
/// slot ends, or where a pad that is partly dry has changed as much as a parabola can follow.
///
/// A timer whose cycle (or whose continuous pump) keeps every column on its constant rate and brings it back
/// to 0 in each run is *regular*: the far column alone decides, over the highest drying rate of the hour, and
/// all its periods up to the end of a step are one. Its columns are worked out again when it stops being so.
class DaySimulator::Engine {
public:
    Engine(const DayHouse& house, day_detail::WeatherTable table, const SimulationChoice& choice);

    Result<void> run(std::span<const TimerPlan> plans, DayResult& into,
                     const std::function<bool(double)>& go_on);
    [[nodiscard]] const DayHouse& house() const { return house_; }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    static constexpr double never_known = -1.0;

    struct Bank {
        Bank(const DayBank& bank, int columns_of_it) : columns{bank, columns_of_it} {}
        day_detail::PadColumns columns;
        day_detail::DryingCurve drying;
        std::size_t timer = none;
        day_detail::Deficits now;
        day_detail::Deficits middle;
        day_detail::Deficits end;
        day_detail::ColumnWork trial;  ///< of the step in hand
        double step = 0.0;             ///< longest, of a supplied pad that is partly dry
        bool step_applies = false;     ///< now
        double before = never_known;  ///< when its wet share was `wet_before`, in the middle of the last step
        double wet_before = 0.0;
        // While its timer is regular
        double entered = 0.0;       ///< B then
        double at_last_stop = 0.0;  ///< B then
        // Since the beginning
        double taken_up = 0.0;  ///< shares of what it holds
        double supplied = 0.0;  ///< s
        double drained = 0.0;   ///< kg, at stops
        double began_to_dry = 0.0;
    };
    struct Timer {
        Timer(const TimerPlan& plan, double clock) : state{plan, clock} {}
        day_detail::TimerState state;
        std::vector<std::size_t> banks;
        double flow = 0.0;   ///< kg/s of all its pumps
        double bleed = 0.0;  ///< kg/s
        bool regular = false;
        double entered = 0.0;    ///< when it became so
        std::int64_t stops = 0;  ///< of its pumps since
        double pump_on = 0.0;
        double called = 0.0;
        std::int64_t calls_before_hour = 0;
    };

    struct Owner {
        std::size_t timer;      ///< `none`: the fans
        std::size_t threshold;  ///< of the timer; of the fans 0 up, 1 down
    };

    void set_up(std::span<const TimerPlan> plans);
    void load_hour(std::size_t hour);
    void turn_drying();

    // Steps
    [[nodiscard]] double horizon();
    [[nodiscard]] double next_humidity_switch(const Timer& timer) const;
    [[nodiscard]] double longest_step(Bank& bank, double end) const;
    void try_step(double end);
    [[nodiscard]] double smooth_step(double end);
    [[nodiscard]] double end_at(double threshold, double end);
    [[nodiscard]] day_detail::LaggedSensor sensor(double end) const;
    void gather_thresholds();
    Result<void> commit(double end, day_detail::Tally& tally, DayResult& into);
    [[nodiscard]] double shortest_step(const Bank& bank) const;
    /// How far the wet shares of partly dry, supplied pads may be from a parabola within the step, as a share
    /// of what is allowed; sets how long the next step of each may be.
    [[nodiscard]] double roughness(double end);

    // Switchings
    void pass(const Owner& owner, const day_detail::Threshold& threshold, DayResult& into);
    void switchings(DayResult& into);
    template <class Change>
    void change(Timer& timer, Change change_state, DayResult& into);
    void end_hour();

    // Regular timers
    [[nodiscard]] bool stays_wet(const Timer& timer) const;
    [[nodiscard]] bool may_be_regular(const Timer& timer) const;
    void enter(Timer& timer);
    void leave(Timer& timer);
    [[nodiscard]] double follow(std::size_t timer, double end, DayResult& into);

    void close(day_detail::Tally& tally, DayResult& into);

    DayHouse house_;
    day_detail::WeatherTable table_;
    SimulationChoice choice_;
    day_detail::HouseAir air_;
    std::vector<Bank> banks_;
    std::vector<Timer> timers_;

    // The moment
    double now_ = 0.0;
    std::size_t hour_ = 0;
    double hour_begin_ = 0.0;
    std::size_t stage_ = 0;
    day_detail::HourAir hour_air_;
    double shown_ = 0.0;         ///< by the sensor
    bool air_is_known_ = false;  ///< step_.air[2] and felt[2] are those of now
    double slot_begin_ = 0.0;
    int stage_ups_in_hour_ = 0;
    std::int64_t hunting_hours_ = 0;

    // The step in hand
    day_detail::StepRecord step_;
    std::vector<double> wet_;
    std::vector<double> wet_middle_;
    std::vector<double> wet_end_;
    std::vector<day_detail::Threshold> thresholds_;
    std::vector<Owner> owners_;
};

}  // namespace wetfront
