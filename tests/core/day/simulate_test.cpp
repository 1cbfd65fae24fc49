// SPDX-License-Identifier: Apache-2.0
#include "day/simulate.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "air/comfort.h"
#include "day_examples.h"
#include "random_day.h"
#include "support/outside_check.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;

DayResult day_of(const DayHouse& house, const Weather& weather, const TimerPlan& plan) {
    const auto result = simulate(house, weather, std::vector{plan});
    EXPECT_TRUE(result) << result.error().text();
    return result.value();
}

// A pump that never rests in air that stays the same: after the first hour every slot is the same, the air is
// that of pad/wet_pad.h and the water that of its evaporation.
TEST(SteadyDayTest, a_pad_that_is_always_wet_is_the_wet_pad_of_the_wind_tunnel) {
    const auto house = plain_house();
    const auto air = hot_dry_air();
    const auto day = day_of(house, same_air(air, 4), continuous());
    const auto behind = air_behind_pad(air, 70_percent).value();
    const double flux = in_si(evaporation(air, 70_percent, from_si<Velocity>(40.0 / 36.0)).value());
    ASSERT_EQ(day.course.size(), 4u);
    for (std::size_t h = 1; h < 4; ++h) {
        EXPECT_NEAR(in_celsius(day.course[h].behind_pad), in_celsius(behind.dry_bulb), 0.005);
        EXPECT_NEAR(in_si(day.course[h].evaporated), 3600.0 * 36.0 * flux, 1e-6 * 3600.0 * 36.0 * flux);
        EXPECT_DOUBLE_EQ(day.course[h].wet_share, 1.0);
        EXPECT_NEAR(in_celsius(day.course[h].index), in_celsius(temperature_humidity_index(behind)), 0.01);
    }
    EXPECT_EQ(day.totals.pump_starts, 1);
    EXPECT_NEAR(in_si(*day.totals.pump_energy), 750.0 * 4.0 * 3600.0, 1e-3);
}

// Supplied at a from bone dry with the fans off would take 1/a; in air that is saturated nothing dries, so
// the column is wet after 1/a, the far end a fill later.
TEST(DryStartTest, where_nothing_evaporates_the_pad_is_wet_after_its_wetting_time) {
    auto house = plain_house();
    house.columns = 1;
    const auto saturated = air_from_humidity(30_degC, 100_percent, 101325_Pa).value();
    const double tau = 1.0 / in_si(house.banks[0].wetting);
    const auto day = day_of(house, same_air(saturated, 1), continuous());
    EXPECT_NEAR(in_si(day.totals.evaporated), 0.0, 1e-9);
    EXPECT_NEAR(in_si(day.water.stored),
                in_si(house.banks[0].holds) + 20.0 * 1000.0 * in_si(house.banks[0].flow), 1e-6);
    // Wet share: 0 until the front is at its middle (20 s), then rising to 1 at 0.3 tau after.
    const double dry_for = 20.0 + 0.15 * tau;
    EXPECT_NEAR(day.course[0].wet_share, 1.0 - dry_for / 3600.0, 1e-4);
}

// No pump: nothing happens but weather, and the air behind the pads is the air outside.
TEST(DryDayTest, without_a_pump_the_pads_do_nothing) {
    const auto day = day_of(plain_house(), same_air(hot_dry_air(), 3), TimerPlan{});
    EXPECT_EQ(in_si(day.totals.evaporated), 0.0);
    EXPECT_EQ(in_si(day.totals.pumped), 0.0);
    EXPECT_EQ(day.totals.pump_starts, 0);
    EXPECT_NEAR(in_celsius(day.course[2].behind_pad), 35.0, 1e-9);
    EXPECT_NEAR(in_celsius(day.totals.mean_house), 35.0, 1e-9);
    EXPECT_EQ(day.totals.wet_dry_cycles, 0.0);
}

// One run in a period of an hour: from d = 0 the columns lose b t until c and then all but exp(-k t) of what
// is left; what evaporated in the hour after the run is that, in closed form.
TEST(DryingTest, a_pad_left_alone_dries_by_its_closed_form) {
    auto house = plain_house(600.0);
    house.columns = 1;
    const auto day = day_of(house, same_air(hot_dry_air(), 2), cycles(7200.0, 3600.0));
    const double b = 0.7 / 600.0;
    const double left = 0.3 * std::exp(-b / 0.3 * (3600.0 - 600.0));
    EXPECT_NEAR(in_si(day.course[1].evaporated), (1.0 - left) * in_si(house.banks[0].holds),
                1e-6 * in_si(house.banks[0].holds));
    EXPECT_NEAR(day.totals.wet_dry_cycles, 1.0, 1e-12);
    // The wet share falls from 1 at 600 s: mean over the hour.
    EXPECT_NEAR(day.course[1].wet_share, (600.0 + 0.3 / b * (1.0 - left / 0.3)) / 3600.0, 1e-4);
}

TEST(NeverRestingTest, an_on_time_as_long_as_the_period_is_continuous_pumping) {
    const auto house = plain_house();
    const auto weather = same_air(hot_dry_air(), 5);
    const auto never_rests = day_of(house, weather, cycles(300.0, 300.0));
    const auto always_on = day_of(house, weather, continuous());
    EXPECT_DOUBLE_EQ(in_si(never_rests.totals.pumped), in_si(always_on.totals.pumped));
    EXPECT_NEAR(in_si(never_rests.totals.evaporated), in_si(always_on.totals.evaporated), 1e-6);
    EXPECT_EQ(never_rests.totals.pump_starts, 1);
}

TEST(CycleTest, one_that_keeps_the_pad_wet_cools_as_much_with_less_pumping) {
    const auto house = plain_house(600.0);
    const auto weather = same_air(hot_dry_air(), 6);
    const auto cycled = day_of(house, weather, cycles(300.0, 150.0));
    const auto always_on = day_of(house, weather, continuous());
    EXPECT_NEAR(cycled.totals.cooling, always_on.totals.cooling, 1e-3);
    EXPECT_NEAR(in_si(cycled.totals.evaporated), in_si(always_on.totals.evaporated), 1e-3);
    EXPECT_NEAR(in_si(cycled.totals.pumped), 0.5 * in_si(always_on.totals.pumped),
                1e-9 * in_si(always_on.totals.pumped));
    EXPECT_EQ(cycled.totals.pump_starts, 6 * 12);
    EXPECT_EQ(cycled.totals.wet_dry_cycles, 0.0);
}

TEST(CycleTest, one_that_is_too_short_dries_the_pad_in_every_period) {
    const auto day = day_of(plain_house(250.0), same_air(hot_dry_air(), 6), cycles(600.0, 80.0));
    EXPECT_GT(day.totals.wet_dry_cycles, 6 * 5.5);
    EXPECT_GT(day.totals.lost_to_dry_pad, 1.0);
}

TEST(RunsTest, are_kept_as_the_timer_made_them) {
    const auto house = plain_house();
    auto plan = cycles(300.0, 100.0);
    plan.rinse_at = seconds(1800.0);
    plan.rinse_length = 240_s;
    const auto result = simulate(house, same_air(hot_dry_air(), 1), std::vector{plan}, {3600_s, true});
    ASSERT_TRUE(result);
    const auto& runs = result.value().runs;
    // Six runs before the rinse at half past midnight; it stands for a run, so that 200 s of rest follow.
    ASSERT_EQ(runs.size(), 6u + 1u + 5u);
    EXPECT_NEAR(in_seconds(runs[5].start), 1500.0, 1e-6);
    EXPECT_NEAR(in_seconds(runs[5].stop), 1600.0, 1e-6);
    EXPECT_NEAR(in_seconds(runs[6].start), 1800.0, 1e-6);
    EXPECT_NEAR(in_seconds(runs[6].stop), 2040.0, 1e-6);
    EXPECT_NEAR(in_seconds(runs[7].start), 2240.0, 1e-6);
}

TEST(PadHoursTest, keep_pumps_off_outside_them) {
    auto plan = continuous();
    plan.hours_from = seconds(2.0 * 3600.0);
    plan.hours_to = seconds(4.0 * 3600.0);
    auto house = plain_house();
    house.clock_ahead = seconds(3600.0);
    const auto result = simulate(house, same_air(hot_dry_air(), 6), std::vector{plan}, {3600_s, true});
    ASSERT_TRUE(result);
    ASSERT_EQ(result.value().runs.size(), 1u);
    EXPECT_NEAR(in_seconds(result.value().runs[0].start), 3600.0, 1e-6);  // 2 o'clock there, 1 by the weather
    EXPECT_NEAR(in_seconds(result.value().runs[0].stop), 3.0 * 3600.0, 1e-6);
}

// Warming evenly through the start temperature: a sensor of first order trails by its lag, so the call comes
// when the air was there, plus the lag (the start of the ramp is long forgotten).
TEST(StartTemperatureTest, is_reached_to_the_millisecond_by_a_sensor_that_trails) {
    auto house = plain_house();
    house.sensor_lag = 180_s;
    Weather weather;
    weather.from = {1'782'864'000'000, 0};
    for (int h = 0; h <= 4; ++h) {
        weather.hours.push_back(
            air_from_humidity_ratio(celsius(24.0 + 2.0 * h), from_si<HumidityRatio>(0.01), 101325_Pa)
                .value());
    }
    auto plan = continuous();
    plan.start_temperature = 29_degC;
    const auto result = simulate(house, weather, std::vector{plan}, {3600_s, true});
    ASSERT_TRUE(result);
    ASSERT_FALSE(result.value().runs.empty());
    EXPECT_NEAR(in_seconds(result.value().runs[0].start), 2.5 * 3600.0 + 180.0, 0.001);
}

TEST(HumidityCutOffTest, stops_the_pump_above_it) {
    auto plan = continuous();
    plan.humidity_cut_off = 50_percent;
    const auto humid = air_from_humidity(30_degC, 51_percent, 101325_Pa).value();
    EXPECT_EQ(in_si(day_of(plain_house(), same_air(humid, 2), plan).totals.pumped), 0.0);
    EXPECT_GT(in_si(day_of(plain_house(), same_air(hot_dry_air(), 2), plan).totals.pumped), 0.0);
}

TEST(TrimTest, a_hot_house_reaches_the_ceiling_step_by_step) {
    auto plan = cycles(300.0, 100.0);
    plan.ceiling = 160_s;
    plan.target = 20_degC;
    plan.trim_rows = {{0.5_K, 20_s}};
    const auto day = day_of(plain_house(), same_air(hot_dry_air(), 2), plan);
    EXPECT_EQ(in_seconds(day.timers[0].longest_on_time), 160.0);
    // Reviews at 600, 1,200 and 1,800 s, each for the runs that begin after it: three runs of 100 s, two of
    // 120, two of 140, the rest of 160.
    EXPECT_NEAR(in_seconds(day.timers[0].pump_on), 3 * 100.0 + 2 * 120.0 + 2 * 140.0 + 17 * 160.0, 1e-6);
}

TEST(HuntingTest, is_seen_where_a_pad_that_cools_at_once_ends_its_own_call) {
    auto house = plain_house(150.0);
    house.sensor_lag = 30_s;
    auto plan = continuous();
    plan.start_temperature = 34_degC;
    plan.call_band = 0.5_K;
    const auto weather = same_air(hot_dry_air(), 6);
    EXPECT_GE(day_of(house, weather, plan).totals.hunting_hours, 5);
    plan.start_temperature = 26_degC;  // which the house never undercuts again
    plan.call_band = 8_K;
    EXPECT_EQ(day_of(house, weather, plan).totals.hunting_hours, 0);
}

TEST(FanStageTest, more_air_runs_where_it_is_hot) {
    auto house = plain_house();
    house.target = 25_degC;
    house.fan_stages = {{0_K, from_si<VolumeFlow>(20.0)}, {4_K, from_si<VolumeFlow>(40.0)}};
    EXPECT_DOUBLE_EQ(day_of(house, same_air(hot_dry_air(), 1), TimerPlan{}).course[0].airflow_share, 1.0);
    house.target = 33_degC;
    EXPECT_DOUBLE_EQ(day_of(house, same_air(hot_dry_air(), 1), TimerPlan{}).course[0].airflow_share, 0.5);
}

TEST(BirdsInTheHouseTest, warm_and_moisten_the_air_by_their_heat) {
    auto house = plain_house();
    house.flock = {20000.0, from_si<Mass>(2.0)};
    const auto day = day_of(house, same_air(hot_dry_air(), 2), continuous());
    EXPECT_GT(in_celsius(day.course[1].house), in_celsius(day.course[1].behind_pad) + 1.0);
    EXPECT_LT(day.heat.error(), 1e-4);
    EXPECT_NEAR(in_si(day.heat.evaporated_by_air) / in_si(day.totals.evaporated), 1.0, 1e-4);
}

TEST(CostTest, is_what_prices_make_of_it) {
    auto house = plain_house();
    house.prices = {0.2, 3.0};
    house.pumps[0].bleed = from_si<VolumeFlow>(1e-5);
    const auto day = day_of(house, same_air(hot_dry_air(), 4), continuous());
    EXPECT_NEAR(*day.totals.energy_cost, 0.75 * 4.0 * 0.2, 1e-9);
    EXPECT_NEAR(in_si(day.totals.bled), 4.0 * 3600.0 * 0.01, 1e-6);
    EXPECT_NEAR(*day.totals.water_cost,
                3.0 * (in_si(day.totals.evaporated) + in_si(day.totals.bled)) / 1000.0, 1e-9);
    house.pumps[0].power.reset();
    house.prices.water.reset();
    const auto unknown = day_of(house, same_air(hot_dry_air(), 4), continuous());
    EXPECT_FALSE(unknown.totals.pump_energy);
    EXPECT_FALSE(unknown.totals.energy_cost);
    EXPECT_FALSE(unknown.totals.water_cost);
}

TEST(SimulatorTest, gives_the_same_again_and_from_another_one) {
    RandomDays random{77};
    for (int i = 0; i < 20; ++i) {
        const auto day = random.next(4, 10);
        auto simulator = DaySimulator::of(day.house, day.weather).value();
        DayResult first;
        DayResult again;
        ASSERT_TRUE(simulator.run(day.plans, first));
        ASSERT_TRUE(simulator.run(day.plans, again));
        const auto other = simulate(day.house, day.weather, day.plans).value();
        for (const auto* result : {&std::as_const(again), &other}) {
            EXPECT_EQ(in_si(result->totals.evaporated), in_si(first.totals.evaporated));
            EXPECT_EQ(in_si(result->totals.mean_house), in_si(first.totals.mean_house));
            EXPECT_EQ(in_si(result->water.returned), in_si(first.water.returned));
            EXPECT_EQ(result->totals.pump_starts, first.totals.pump_starts);
        }
    }
}

TEST(SimulatorTest, longer_runs_never_lose_more_cooling_and_continuous_pumping_loses_least) {
    const auto house = plain_house(250.0);
    const auto weather = same_air(hot_dry_air(), 4);
    double before = 1e9;
    for (const double on : {50.0, 60.0, 80.0, 100.0, 150.0, 200.0, 299.0, 300.0}) {
        const double lost = day_of(house, weather, cycles(300.0, on)).totals.lost_to_dry_pad;
        EXPECT_LE(lost, before + 1e-4) << on;
        before = lost;
    }
    EXPECT_NEAR(before, day_of(house, weather, continuous()).totals.lost_to_dry_pad, 1e-4);
}

TEST(SimulatorTest, can_be_ended_and_says_how_far_it_is) {
    auto simulator = DaySimulator::of(plain_house(), same_air(hot_dry_air(), 24 * 5)).value();
    std::vector<double> shares;
    DayResult result;
    const std::vector plans{continuous()};
    ASSERT_TRUE(simulator.run(plans, result, [&](double share) {
        shares.push_back(share);
        return true;
    }));
    EXPECT_THAT(shares, testing::ElementsAre(testing::DoubleNear(0.2, 1e-9), testing::DoubleNear(0.4, 1e-9),
                                             testing::DoubleNear(0.6, 1e-9), testing::DoubleNear(0.8, 1e-9)));
    const auto ended = simulator.run(plans, result, [](double) { return false; });
    ASSERT_FALSE(ended);
    EXPECT_EQ(ended.error().item, "simulation");
}

TEST(SimulatorTest, refuses_what_is_out_of_range_by_its_name) {
    const auto weather = same_air(hot_dry_air(), 2);
    const auto item_of = [&](auto spoil) {
        auto house = plain_house();
        std::vector plans{cycles(300.0, 100.0)};
        spoil(house, plans[0]);
        const auto result = simulate(house, weather, plans);
        return result ? std::string{"accepted"} : result.error().item;
    };
    const auto house_item = [&](auto spoil) {
        return item_of([&](DayHouse& house, TimerPlan&) { spoil(house); });
    };
    const auto plan_item = [&](auto spoil) {
        return item_of([&](DayHouse&, TimerPlan& plan) { spoil(plan); });
    };
    EXPECT_EQ(house_item([](auto&) {}), "accepted");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].wetting = from_si<Rate>(1.0); }), "bank 1 wetting rate");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].holds = from_si<Mass>(0.0); }), "bank 1 water held");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].constant_share = 1.0; }),
              "bank 1 share of drying at constant rate");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].effectiveness = {120_percent}; }), "bank 1 effectiveness");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].fill = 0_s; }), "bank 1 fill");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].arrival_shares = {0.0, 1.0}; }), "bank 1 arrival shape");
    EXPECT_EQ(house_item([](auto& h) { h.banks[0].face_share = 0.5; }), "shares of the air");
    EXPECT_EQ(house_item([](auto& h) { h.pumps[0].banks = {1}; }), "pump 1");
    EXPECT_EQ(house_item([](auto& h) { h.fan_stages.clear(); }), "fan stages");
    EXPECT_EQ(house_item([](auto& h) { h.columns = 0; }), "columns");
    EXPECT_EQ(house_item([](auto& h) { h.flock.birds = 10.0; }), "mass of a bird");
    EXPECT_EQ(plan_item([](auto& p) { p.period = 1_s; }), "timer 1 period");
    EXPECT_EQ(plan_item([](auto& p) { p.ceiling = 50_s; }), "timer 1 on-time ceiling");
    EXPECT_EQ(plan_item([](auto& p) { p.hours_from = 0_s; }), "timer 1 pad hours");
    EXPECT_EQ(plan_item([](auto& p) { p.trim_rows = {{1_K, 10_s}}; }), "timer 1 target");
    EXPECT_EQ(simulate(plain_house(), same_air(hot_dry_air(), 0), std::vector{continuous()}).error().item,
              "weather");
    EXPECT_EQ(simulate(plain_house(), weather, {}).error().item, "plans");
}

}  // namespace
}  // namespace wetfront::test
