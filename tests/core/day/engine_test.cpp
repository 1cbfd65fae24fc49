// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <array>

#include "air/design_day.h"
#include "day/simulate.h"
#include "day_examples.h"
#include "fine_steps.h"
#include "random_day.h"

namespace wetfront::test {
namespace {

constexpr std::size_t compared = 9;

struct Compared {
    std::array<double, compared> values;
};

Compared of_ours(const DayResult& day, double simulated) {
    double on = 0.0;
    for (const auto& timer : day.timers) {
        on += in_seconds(timer.pump_on);
    }
    const auto& totals = day.totals;
    return {{in_si(totals.evaporated), in_si(totals.pumped), on, in_celsius(totals.mean_house) * simulated,
             3600.0 * totals.cooling, 3600.0 * totals.lost_to_dry_pad, in_seconds(totals.above_house_limit),
             in_seconds(totals.above_index_limit), in_seconds(totals.litter_wet)}};
}

Compared of_small_steps(const FineDay& day) {
    return {{day.evaporated, day.pumped, day.pump_on, day.house, day.cooling, day.lost, day.above_house,
             day.above_index, day.litter_wet}};
}

// What a difference counts by: water by water, temperatures by what pads do to them (1 K at least), times by
// the whole time.
Compared measures(const FineDay& day, double simulated) {
    const double kelvins = std::max(day.cooling, simulated);
    return {{std::max({day.evaporated, 0.05 * day.pumped, 1.0}), std::max(day.pumped, 1.0), simulated,
             kelvins, kelvins, std::max(kelvins, day.lost), simulated, simulated, simulated}};
}

// By how much a day lies outside what small steps make of it, or of it and its neighbours.
double outside_of(const Compared& ours, const std::vector<FineDay>& fine, double simulated) {
    const auto measure = measures(fine.front(), simulated);
    double largest = 0.0;
    for (std::size_t i = 0; i < compared; ++i) {
        double low = of_small_steps(fine.front()).values[i];
        double high = low;
        for (const auto& day : fine) {
            low = std::min(low, of_small_steps(day).values[i]);
            high = std::max(high, of_small_steps(day).values[i]);
        }
        const double outside = std::max({low - ours.values[i], ours.values[i] - high, 0.0});
        largest = std::max(largest, outside / measure.values[i]);
    }
    return largest;
}

// The same day with all that the sensor is compared with moved by some thousandths of a kelvin.
RandomDay with_sensor_off(RandomDay day, double kelvins) {
    const auto by = from_si<TemperatureDifference>(kelvins);
    const auto move = [&](std::optional<Temperature>& temperature) {
        if (temperature) {
            temperature = *temperature + by;
        }
    };
    move(day.house.target);
    for (auto& plan : day.plans) {
        move(plan.start_temperature);
        move(plan.lowest_house_temperature);
        move(plan.target);
    }
    return day;
}

// The same day with the limits moved that hours are counted above.
RandomDay with_limits_off(RandomDay day, double kelvins) {
    const auto by = from_si<TemperatureDifference>(kelvins);
    day.house.limits.house = day.house.limits.house + by;
    day.house.limits.index = day.house.limits.index + by;
    day.house.limits.litter = day.house.limits.litter + from_si<Fraction>(0.05 * kelvins);
    return day;
}

// Pads that a cycle keeps wet are taken through whole periods at once: a whole design day, with a call in the
// morning, one in the evening and the pads' drying after it.
TEST(SimulationTest, a_design_day_of_wet_cycles_is_that_of_small_steps) {
    const auto hottest = air_from_wet_bulb(36_degC, 24_degC, 100000_Pa).value();
    const auto hours = design_day(hottest, 11_K).value().hours;
    Weather weather;
    weather.from = {1'782'864'000'000, 0};
    weather.hours.assign(hours.begin(), hours.end());
    weather.hours.push_back(hours[0]);
    auto house = plain_house(900.0);
    house.flock = {8000.0, from_si<Mass>(2.2)};
    auto plan = cycles(300.0, 150.0);
    plan.start_temperature = 28_degC;
    plan.call_band = 6_K;
    const std::vector plans{plan};
    const auto result = simulate(house, weather, plans);
    ASSERT_TRUE(result) << result.error().text();
    const auto fine = fine_steps(house, weather, plans);
    const double simulated = 24.0 * 3600.0;
    EXPECT_LT(outside_of(of_ours(result.value(), simulated), {fine}, simulated), 1e-4);
    EXPECT_NEAR(in_si(result.value().water.returned), fine.returned, 1e-4 * fine.returned);
    EXPECT_GT(result.value().totals.pump_starts, 50);
    EXPECT_LT(result.value().water.error(), 1e-9);
}

// A day on which the sensor just reaches a limit, or does not, is one of two days: there a fiftieth of what
// a thermometer resolves decides. Such days are compared with small steps over limits moved by 3 mK to both
// sides, and counted.
TEST(SimulationTest, agrees_with_small_steps_over_a_thousand_random_days) {
    constexpr double agreement = 0.001;
    RandomDays random{20260701};
    int on_the_edge = 0;
    double largest = 0.0;
    for (int i = 0; i < 1000; ++i) {
        const int hours = random.whole(2, 5);
        const double simulated = 3600.0 * hours;
        const auto day = random.next(hours, 6);
        const auto result = simulate(day.house, day.weather, day.plans);
        ASSERT_TRUE(result) << i << ": " << result.error().text();
        const auto ours = of_ours(result.value(), simulated);
        std::vector<FineDay> fine{fine_steps(day.house, day.weather, day.plans)};
        double outside = outside_of(ours, fine, simulated);
        if (outside > agreement) {  // a sensor without lag asks for smaller steps
            fine = {fine_steps(day.house, day.weather, day.plans, 0.1)};
            outside = outside_of(ours, fine, simulated);
        }
        if (outside > agreement) {
            ++on_the_edge;
            for (const double kelvins : {-0.003, 0.003}) {
                for (const auto& neighbour : {with_sensor_off(day, kelvins), with_limits_off(day, kelvins)}) {
                    fine.push_back(fine_steps(neighbour.house, neighbour.weather, neighbour.plans, 0.1));
                }
            }
            outside = outside_of(ours, fine, simulated);
        }
        EXPECT_LT(outside, agreement) << "day " << i;
        largest = std::max(largest, outside);
        EXPECT_LT(result.value().water.error(), 1e-9) << "day " << i;
        EXPECT_LT(result.value().heat.error(), 0.001) << "day " << i;
    }
    EXPECT_LE(on_the_edge, 10);
    RecordProperty("largest difference", std::to_string(largest));
    RecordProperty("days on the edge", on_the_edge);
}

}  // namespace
}  // namespace wetfront::test
