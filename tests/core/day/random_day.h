// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "day/day_house.h"
#include "day/weather.h"

namespace wetfront::test {

/// A house, a weather of some hours and a plan for each timer, all of it drawn.
struct RandomDay {
    DayHouse house;
    Weather weather;
    std::vector<TimerPlan> plans;
};

class RandomDays {
public:
    explicit RandomDays(std::uint32_t seed) : random_{seed} {}

    RandomDay next(int hours, int most_columns) {
        RandomDay day;
        day.house = house(most_columns);
        day.weather = weather(hours);
        for (std::size_t t = 0; t < day.house.timers.size(); ++t) {
            day.plans.push_back(plan());
            if (in_seconds(day.house.sensor_lag) == 0.0) {  // a limit without a band would only chatter
                day.plans.back().lowest_house_temperature.reset();
            }
        }
        return day;
    }

    double between(double low, double high) { return std::uniform_real_distribution{low, high}(random_); }
    bool one_in(int count) { return std::uniform_int_distribution{1, count}(random_) == 1; }
    int whole(int low, int high) { return std::uniform_int_distribution{low, high}(random_); }

    Weather weather(int hours) {
        Weather weather;
        weather.source = "drawn";
        weather.from = {1'783'000'800'000 + 3'600'000LL * whole(0, 23), 0};
        double t = between(24.0, 37.0);
        double humidity = between(0.15, 0.75);
        const double swing = between(-2.0, 2.0);
        const double pressure = between(88e3, 103e3);
        for (int h = 0; h <= hours; ++h) {
            weather.hours.push_back(air_from_humidity(celsius(t), from_si<Fraction>(humidity),
                                                      from_si<AbsolutePressure>(pressure))
                                        .value());
            t = std::clamp(t + swing + between(-1.0, 1.0), 15.0, 42.0);
            humidity = std::clamp(humidity - 0.03 * swing + between(-0.02, 0.02), 0.08, 0.95);
        }
        return weather;
    }

    DayHouse house(int most_columns) {
        DayHouse house;
        const int banks = whole(1, 3);
        house.columns = whole(2, most_columns);
        const double airflow = between(40.0, 150.0);
        double rest = 1.0;
        for (int b = 0; b < banks; ++b) {
            DayBank bank;
            bank.face_share = b + 1 == banks ? rest : rest * between(0.3, 0.6);
            rest -= bank.face_share;
            bank.effectiveness = {from_si<Fraction>(between(0.55, 0.85))};
            bank.constant_share = between(0.5, 0.9);
            // About 4 g/kg gained: dries out in 5 to 20 minutes, and is supplied 3 to 20 times as much.
            const double dries = 1.2 * airflow * bank.face_share * 0.004;
            bank.holds = from_si<Mass>(dries * between(300.0, 1200.0) / bank.constant_share);
            const double supply = dries * between(3.0, 20.0);
            bank.wetting = from_si<Rate>(supply / in_si(bank.holds));
            bank.flow = from_si<VolumeFlow>(supply / 1000.0 * between(1.0, 1.5));
            bank.riser = seconds(one_in(2) ? 0.0 : between(1.0, 10.0));
            bank.fill = bank.riser + seconds(between(10.0, 90.0));
            if (one_in(2)) {
                bank.arrival_shares = {0.0, 0.5, 1.0};
                bank.arrival_times = {0.0, between(0.2, 0.45), 1.0};
            }
            house.banks.push_back(bank);
        }
        const bool together = one_in(2);
        for (int b = 0; b < banks; ++b) {
            DayPump pump;
            pump.banks = {static_cast<std::size_t>(b)};
            pump.power = from_si<Power>(between(300.0, 1500.0));
            pump.bleed = from_si<VolumeFlow>(one_in(2) ? 0.0 : between(0.0, 1e-4));
            house.pumps.push_back(pump);
        }
        for (int b = 0; b < banks; ++b) {
            if (together && b > 0) {
                house.timers.front().pumps.push_back(static_cast<std::size_t>(b));
            } else {
                house.timers.push_back({{static_cast<std::size_t>(b)}});
            }
        }
        house.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(airflow)}};
        house.sensor_lag = seconds(one_in(4) ? 0.0 : between(60.0, 400.0));
        if (one_in(3)) {
            house.fan_stages = {
                {from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(0.6 * airflow)},
                {from_si<TemperatureDifference>(between(2.0, 6.0)), from_si<VolumeFlow>(airflow)}};
            house.target = celsius(between(21.0, 26.0));
            house.sensor_lag = seconds(between(60.0, 400.0));
            house.fan_band = from_si<TemperatureDifference>(between(0.3, 1.0));
        }
        house.flock = {between(5000.0, 30000.0), from_si<Mass>(between(0.5, 3.5))};
        house.building_gain = from_si<Power>(between(0.0, 60e3));
        house.clock_ahead = seconds(one_in(2) ? 0.0 : 3600.0);
        return house;
    }

    TimerPlan plan() {
        TimerPlan plan;
        const int kind = whole(1, 10);
        plan.pumping = kind == 1 ? Pumping::never : kind <= 3 ? Pumping::while_called : Pumping::in_cycles;
        if (!one_in(4)) {
            plan.start_temperature = celsius(between(24.0, 30.0));
            plan.call_band = from_si<TemperatureDifference>(between(0.3, 2.0));
        }
        if (one_in(4)) {
            plan.lowest_house_temperature = celsius(between(18.0, 24.0));
        }
        if (one_in(5)) {
            plan.humidity_cut_off = from_si<Fraction>(between(0.4, 0.9));
        }
        if (one_in(4)) {
            plan.hours_from = seconds(60.0 * whole(0, 1439));
            plan.hours_to = seconds(60.0 * whole(0, 1439));
        }
        plan.period = seconds(one_in(2) ? 300.0 : 600.0);
        plan.base = seconds(whole(20, 200));
        plan.ceiling = plan.base + seconds(whole(0, 400));
        if (one_in(2)) {
            plan.target = celsius(between(21.0, 27.0));
            plan.trim_rows = {{from_si<TemperatureDifference>(0.5), seconds(whole(5, 30))},
                              {from_si<TemperatureDifference>(between(1.0, 4.0)), seconds(whole(10, 60))}};
            plan.review_interval = seconds(one_in(2) ? 600.0 : 780.0);
        }
        if (one_in(4)) {
            plan.rinse_at = seconds(3600.0 * whole(0, 23));
            plan.rinse_length = seconds(whole(120, 400));
        }
        return plan;
    }

private:
    std::mt19937 random_;
};

}  // namespace wetfront::test
