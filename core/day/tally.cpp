// SPDX-License-Identifier: Apache-2.0
#include "day/tally.h"

#include <algorithm>

#include "day/bird_heat.h"

namespace wetfront::day_detail {
namespace {

// Simpson's rule over a step.
template <class T>
double integral(const std::array<T, 3>& nodes, double length, auto value) {
    return length / 6.0 * (value(nodes[0]) + 4.0 * value(nodes[1]) + value(nodes[2]));
}

template <class T>
Parabola parabola(const std::array<T, 3>& nodes, double length, auto value) {
    return Parabola::through(value(nodes[0]), value(nodes[1]), value(nodes[2]), length);
}

// Integral of what a parabola is above a limit.
double area_above(const Parabola& curve, double limit, double length) {
    std::array<double, 2> crossed{};
    const int count = curve.roots(limit, length, crossed);
    double area = 0.0;
    double from = 0.0;
    for (int i = 0; i <= count; ++i) {
        const double to = i < count ? crossed[static_cast<std::size_t>(i)] : length;
        if (curve.at(0.5 * (from + to)) > limit) {
            area += curve.integral_to(to) - curve.integral_to(from) - limit * (to - from);
        }
        from = to;
    }
    return area;
}

}  // namespace

Tally::Tally(const DayHouse& house, double slot, DayResult& into)
    : house_limit_{in_celsius(house.limits.house)},
      index_limit_{in_celsius(house.limits.index)},
      litter_limit_{in_si(house.limits.litter)},
      into_{into},
      birds_{house.flock.birds > 0.0} {
    into_.slot_length = seconds(slot);
}

void Tally::begin(WallTime from, std::size_t timers) {
    into_.from = from;
    into_.course.clear();
    into_.pump_on.clear();
    into_.runs.clear();
    into_.timers.assign(timers, TimerTotals{});
    into_.totals = DayTotals{};
    into_.water = WaterBalance{};
    into_.heat = HeatBalance{};
    slot_on_.assign(timers, 0.0);
}

void Tally::add(const StepRecord& step) {
    const double length = step.length;
    const auto of_air = [&](auto value) { return integral(step.air, length, value); };
    const auto house_of = [](const AirNow& air) { return air.house; };
    const double outside = of_air([](const AirNow& air) { return air.outside; });
    const double behind = of_air([](const AirNow& air) { return air.behind_pad; });
    const double house = of_air(house_of);
    slot_.outside += outside;
    slot_.outside_humidity += step.outside_humidity.integral_to(length);
    slot_.behind_pad += behind;
    slot_.house += house;
    slot_.humidity += integral(step.felt, length, [](const FeltAir& felt) { return felt.humidity; });
    slot_.index += integral(step.felt, length, [](const FeltAir& felt) { return felt.index; });
    slot_.wet_share += integral(step.wet_share, length, [](double share) { return share; });
    slot_.airflow_share += step.airflow_share * length;
    slot_.evaporated += step.evaporated;
    slot_.pumped += step.pumped;
    slot_.bled += step.bled;

    house_ += house;
    cooling_ += outside - behind;
    lost_ += integral(step.lost, length, [](double lost) { return lost; });
    evaporated_ += step.evaporated;
    pumped_ += step.pumped;
    bled_ += step.bled;

    const auto temperature = parabola(step.air, length, house_of);
    const auto [low, high] = temperature.range(length);
    hottest_ = std::max(hottest_, high);
    if (low > house_limit_) {
        above_house_ += length;
        degrees_above_ += house - house_limit_ * length;
    } else if (high > house_limit_) {
        above_house_ += temperature.time_above(house_limit_, length);
        degrees_above_ += area_above(temperature, house_limit_, length);
    }
    above_index_ += parabola(step.felt, length, [](const FeltAir& felt) {
                        return felt.index;
                    }).time_above(index_limit_, length);
    litter_wet_ += parabola(step.felt, length, [](const FeltAir& felt) {
                       return felt.humidity;
                   }).time_above(litter_limit_, length);
    fog_ += integral(step.felt, length, [](const FeltAir& felt) { return felt.fog ? 1.0 : 0.0; });
    if (birds_) {
        const auto mean = parabola(step.air, length, [](const AirNow& air) { return air.bird_mean; });
        beyond_birds_ += mean.time_above(hottest_bird_heat_celsius, length) + length -
                         mean.time_above(coldest_bird_heat_celsius, length);
    }

    bird_heat_ += of_air([](const AirNow& air) { return air.bird_heat; });
    building_ += of_air([](const AirNow& air) { return air.building; });
    carried_away_ += of_air([](const AirNow& air) { return air.carried_away; });
    by_air_ += of_air([](const AirNow& air) { return air.evaporated; });
    if (step.evaporated > 0.0) {
        const double mean_liquid =
            of_air([](const AirNow& air) { return liquid_heat(air.wet_bulb); }) / length;
        water_heat_ += 1000.0 * step.evaporated * mean_liquid;
    }
}

void Tally::close_slot(double length) {
    const auto mean = [&](double sum) { return sum / length; };
    DaySlot slot;
    slot.outside = celsius(mean(slot_.outside));
    slot.outside_humidity = from_si<Fraction>(mean(slot_.outside_humidity));
    slot.behind_pad = celsius(mean(slot_.behind_pad));
    slot.house = celsius(mean(slot_.house));
    slot.humidity = from_si<Fraction>(mean(slot_.humidity));
    slot.index = celsius(mean(slot_.index));
    slot.wet_share = mean(slot_.wet_share);
    slot.airflow_share = mean(slot_.airflow_share);
    slot.evaporated = from_si<Mass>(slot_.evaporated);
    slot.pumped = from_si<Mass>(slot_.pumped);
    slot.bled = from_si<Mass>(slot_.bled);
    into_.course.push_back(slot);
    for (double& on : slot_on_) {
        into_.pump_on.push_back(seconds(on));
        on = 0.0;
    }
    slot_ = Sums{};
}

void Tally::close(double simulated) {
    constexpr double hour = 3600.0;
    auto& totals = into_.totals;
    totals.simulated = seconds(simulated);
    totals.mean_house = celsius(house_ / simulated);
    totals.hottest_house = celsius(hottest_);
    totals.above_house_limit = seconds(above_house_);
    totals.degree_hours_above_house_limit = degrees_above_ / hour;
    totals.above_index_limit = seconds(above_index_);
    totals.litter_wet = seconds(litter_wet_);
    totals.lost_to_dry_pad = lost_ / hour;
    totals.cooling = cooling_ / hour;
    totals.evaporated = from_si<Mass>(evaporated_);
    totals.pumped = from_si<Mass>(pumped_);
    totals.bled = from_si<Mass>(bled_);
    totals.fog = seconds(fog_);
    totals.beyond_bird_heat = seconds(beyond_birds_);
    into_.water.pumped = totals.pumped;
    into_.water.evaporated = totals.evaporated;
    into_.heat.birds = from_si<Energy>(bird_heat_);
    into_.heat.building = from_si<Energy>(building_);
    into_.heat.water = from_si<Energy>(water_heat_);
    into_.heat.carried_away = from_si<Energy>(carried_away_);
    into_.heat.evaporated_by_air = from_si<Mass>(by_air_);
}

}  // namespace wetfront::day_detail
