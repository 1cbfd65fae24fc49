// SPDX-License-Identifier: Apache-2.0
#include <benchmark/benchmark.h>

#include <chrono>

#include "air/design_day.h"
#include "core/day/fine_steps.h"
#include "day/simulate.h"

// A season of one bank by closed forms, in ratio to the integrator of the tests at steps of 1 s, which gives
// the same results within 0.1 %; a design day of four banks; the cost by days and by columns.
namespace {

using namespace wetfront;

Weather summer(int days) {
    Weather weather;
    weather.source = "design day, over and over, warmer and cooler";
    weather.from = {1'780'272'000'000, 0};
    for (int d = 0; d < days; ++d) {
        const auto hottest =
            air_from_wet_bulb(celsius(33.0 + d % 5), celsius(23.0), from_si<AbsolutePressure>(1e5));
        const auto day = design_day(hottest.value(), from_si<TemperatureDifference>(11.0)).value();
        weather.hours.insert(weather.hours.end(), day.hours.begin(), day.hours.end());
    }
    weather.hours.push_back(weather.hours.front());
    return weather;
}

// Banks that dry out in ten minutes on the hottest hour, supplied six times what evaporates.
DayHouse house_of(int banks, int columns) {
    DayHouse house;
    house.columns = columns;
    const double airflow = 100.0;
    for (int b = 0; b < banks; ++b) {
        DayBank bank;
        bank.face_share = 1.0 / banks;
        bank.effectiveness = {from_si<Fraction>(0.72)};
        const double dries = 1.1 * airflow * bank.face_share * 0.004;
        bank.holds = from_si<Mass>(dries * 600.0 / 0.7);
        bank.wetting = from_si<Rate>(6.0 * dries / in_si(bank.holds));
        bank.flow = from_si<VolumeFlow>(8.0 * dries / 1000.0);
        bank.fill = seconds(45.0 + b);
        house.banks.push_back(bank);
        house.pumps.push_back({{static_cast<std::size_t>(b)}, from_si<Power>(750.0)});
        house.timers.push_back({{static_cast<std::size_t>(b)}});
    }
    house.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(airflow)}};
    house.flock = {20000.0, from_si<Mass>(2.0)};
    house.building_gain = from_si<Power>(30e3);
    return house;
}

std::vector<TimerPlan> cycles(int timers) {
    TimerPlan plan;
    plan.pumping = Pumping::in_cycles;
    plan.start_temperature = celsius(28.0);
    plan.period = seconds(300.0);
    plan.base = seconds(150.0);
    // The call ends where it began with dry pads less what they cool, or it would hunt.
    plan.call_band = from_si<TemperatureDifference>(6.0);
    return std::vector(static_cast<std::size_t>(timers), plan);
}

double seconds_of(const auto& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

void season_of_120_days(benchmark::State& state) {
    const auto house = house_of(1, 40);
    const auto weather = summer(120);
    const auto plans = cycles(1);
    double best = 1e9;
    DayResult result;
    for (auto _ : state) {
        best = std::min(best, seconds_of([&] { result = simulate(house, weather, plans).value(); }));
    }
    // Small steps cost the same every day: a tenth of the days is told ten times.
    constexpr int part = 10;
    const auto some_days = summer(120 / part);
    result = simulate(house, some_days, plans).value();
    test::FineDay fine;
    const double small_steps = part * seconds_of([&] { fine = test::fine_steps(house, some_days, plans); });
    state.counters["seconds_of_small_steps"] = small_steps;
    state.counters["times_faster"] = small_steps / best;
    state.counters["water_off_percent"] = 100.0 * (in_si(result.totals.evaporated) / fine.evaporated - 1.0);
    state.counters["pumped_off_percent"] = 100.0 * (in_si(result.totals.pumped) / fine.pumped - 1.0);
}
BENCHMARK(season_of_120_days)->Unit(benchmark::kMillisecond)->MinTime(0.5);

void design_day_of_four_banks(benchmark::State& state) {
    auto simulator = DaySimulator::of(house_of(4, 20), summer(1)).value();
    const auto plans = cycles(4);
    DayResult result;
    for (auto _ : state) {
        benchmark::DoNotOptimize(simulator.run(plans, result));
    }
}
BENCHMARK(design_day_of_four_banks)->Unit(benchmark::kMillisecond)->MinTime(0.2);

void season_by_days(benchmark::State& state) {
    auto simulator = DaySimulator::of(house_of(1, 20), summer(static_cast<int>(state.range(0)))).value();
    const auto plans = cycles(1);
    DayResult result;
    for (auto _ : state) {
        benchmark::DoNotOptimize(simulator.run(plans, result));
    }
    state.SetComplexityN(state.range(0));
}
BENCHMARK(season_by_days)->RangeMultiplier(2)->Range(8, 128)->Unit(benchmark::kMillisecond)->Complexity();

// A cycle that dries its pad in every period, so that every column is worked out.
void dry_cycles_by_columns(benchmark::State& state) {
    auto simulator = DaySimulator::of(house_of(1, static_cast<int>(state.range(0))), summer(1)).value();
    auto plans = cycles(1);
    plans[0].base = seconds(70.0);
    plans[0].period = seconds(900.0);
    DayResult result;
    for (auto _ : state) {
        benchmark::DoNotOptimize(simulator.run(plans, result));
    }
    state.SetComplexityN(state.range(0));
}
BENCHMARK(dry_cycles_by_columns)
    ->RangeMultiplier(2)
    ->Range(20, 640)
    ->Unit(benchmark::kMillisecond)
    ->Complexity();

}  // namespace
