// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>
#include <vector>

#include "day/day_house.h"
#include "day/parabola.h"

namespace wetfront::day_detail {

inline constexpr double never = std::numeric_limits<double>::infinity();

/// B, the integral of a bank's drying rate b over time, in shares of what it holds: without supply a column
/// dries by nothing else.
class DryingCurve {
public:
    /// From `time` on b is `rate` of the seconds since `origin`.
    void turn_to(const Parabola& rate, double origin, double time);
    [[nodiscard]] double at(double time) const { return offset_ + rate_.integral_to(time - origin_); }
    [[nodiscard]] double rate_at(double time) const { return rate_.at(time - origin_); }
    /// Largest b within an hour from the origin.
    [[nodiscard]] double highest_rate() const { return highest_; }
    /// Where B reaches a value that it has not had yet; `within`: a time at which it has it.
    [[nodiscard]] double time_of(double value, double from, double within) const;

private:
    Parabola rate_;
    double origin_ = 0.0;
    double offset_ = 0.0;
    double highest_ = 0.0;
};

/// What the columns of a bank did in a piece of time, mean of the columns, each added up on its own.
struct ColumnWork {
    double evaporated = 0.0;  ///< shares of what the bank holds
    double taken_up = 0.0;    ///< the same
    double supplied = 0.0;    ///< seconds
    double began_to_dry = 0.0;

    void add(const ColumnWork& other);
};

/// The deficits of a bank's columns in one moment. Where all are the same, one stands for all.
struct Deficits {
    std::vector<double> of;
    bool uniform = true;
    [[nodiscard]] double largest() const;
    [[nodiscard]] bool all_zero() const;
};

/// The columns of one bank (pad/wetting_column.h), taken from moment to moment in closed form. Seconds, and
/// shares of what the bank holds.
class PadColumns {
public:
    PadColumns(const DayBank& bank, int columns);

    [[nodiscard]] double wetting() const { return a_; }
    [[nodiscard]] double constant_share() const { return c_; }
    [[nodiscard]] double holds() const { return holds_; }  ///< kg
    [[nodiscard]] double flow() const { return flow_; }    ///< kg/s
    [[nodiscard]] double first_arrival() const { return arrivals_.front(); }
    [[nodiscard]] double last_arrival() const { return arrivals_.back(); }

    /// Mean over the columns of the time for which water runs in front of them, for a pump that has run so
    /// long: times the flow, what the header holds then.
    [[nodiscard]] double filling_time(double running) const;

    [[nodiscard]] double wet_share(const Deficits& deficits) const;
    [[nodiscard]] double mean(const Deficits& deficits) const;

    /// From one moment to another, the pump running since `pump_start`, or `never` while it rests. Exact
    /// where columns dry; where they are supplied, with the mean drying between the two moments.
    ColumnWork advance(const Deficits& from, Deficits& to, double begin, double end,
                       const DryingCurve& drying, double pump_start) const;

    /// In a cycle that rewets every column: those that stood at 0 when the last run ended, when B was
    /// `at_last_stop`; the pump running since `pump_start`, or `never`.
    void in_cycle(double now, const DryingCurve& drying, double at_last_stop, double pump_start,
                  Deficits& into) const;

    void fill_with(double deficit, Deficits& into) const;

private:
    struct Interval;
    void dry(double from, double& to, const Interval& interval, ColumnWork& work) const;
    void supply(double from, double& to, const Interval& interval, ColumnWork& work) const;

    double a_;
    double c_;
    double holds_;
    double flow_;
    std::vector<double> arrivals_;  ///< after the start of the pump, rising
};

}  // namespace wetfront::day_detail
