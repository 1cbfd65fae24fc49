// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <vector>

#include "day/day_house.h"
#include "day/day_result.h"
#include "day/house_air.h"

namespace wetfront::day_detail {

/// What went on in one step: its air at the beginning, in the middle and at the end, and what columns and
/// pumps did in it.
struct StepRecord {
    double begin = 0.0;
    double length = 0.0;
    std::array<AirNow, 3> air;
    std::array<FeltAir, 3> felt;
    std::array<double, 3> wet_share{};  ///< of all banks by their share of the face
    std::array<double, 3> lost{};       ///< cooling that dry pad of called banks withholds, K
    Parabola outside_humidity;          ///< of the seconds since the step began
    double evaporated = 0.0;            ///< kg
    double pumped = 0.0;                ///< kg
    double bled = 0.0;                  ///< kg
    double airflow_share = 0.0;
};

/// Adds steps up to slots and totals.
class Tally {
public:
    Tally(const DayHouse& house, double slot, DayResult& into);

    void begin(WallTime from, std::size_t timers);
    void add(const StepRecord& step);
    void pump_on(std::size_t timer, double seconds_on) { slot_on_[timer] += seconds_on; }
    void close_slot(double length);
    void close(double simulated);

private:
    struct Sums {
        double outside = 0.0;
        double outside_humidity = 0.0;
        double behind_pad = 0.0;
        double house = 0.0;
        double humidity = 0.0;
        double index = 0.0;
        double wet_share = 0.0;
        double airflow_share = 0.0;
        double evaporated = 0.0;
        double pumped = 0.0;
        double bled = 0.0;
    };

    double house_limit_;
    double index_limit_;
    double litter_limit_;
    DayResult& into_;
    Sums slot_;
    std::vector<double> slot_on_;
    // Totals
    double house_ = 0.0;
    double hottest_ = -300.0;
    double above_house_ = 0.0;
    double degrees_above_ = 0.0;
    double above_index_ = 0.0;
    double litter_wet_ = 0.0;
    double lost_ = 0.0;
    double cooling_ = 0.0;
    double evaporated_ = 0.0;
    double pumped_ = 0.0;
    double bled_ = 0.0;
    double fog_ = 0.0;
    double beyond_birds_ = 0.0;
    bool birds_;
    double bird_heat_ = 0.0;
    double building_ = 0.0;
    double water_heat_ = 0.0;
    double carried_away_ = 0.0;
    double by_air_ = 0.0;
};

}  // namespace wetfront::day_detail
