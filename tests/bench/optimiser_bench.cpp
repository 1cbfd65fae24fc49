// SPDX-License-Identifier: Apache-2.0
// The best cycle of one timer with two banks on a design day, at the columns and the resolution of a real
// house. The counter share_of_half_second, of processor time, is to stay below 1; days says how many were
// simulated for it.
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <ctime>
#include <iostream>

#include "day/cycle_house.h"

namespace {

using namespace wetfront;

/// The first drawn house with two banks whose timer is trimmed, or is not, and for which a cycle is advised.
test::CycleHouse house_of(bool trims) {
    test::CycleHouses houses{1};
    while (true) {
        auto made = houses.next(20, 1.0);
        if (made.house.banks.size() == 2 && made.question.trim_above.has_value() == trims &&
            made.closed_form().cycled) {
            return made;
        }
    }
}

void optimise(benchmark::State& state) {
    const auto made = house_of(state.range(0) != 0);
    const auto question = made.with_advice();
    int days = 0;
    const auto begin = std::clock();
    for (auto _ : state) {
        auto simulator = DaySimulator::of(made.house, made.weather);
        const auto answer = best_timer_cycle(simulator.value(), question);
        if (!answer) {
            std::cerr << "optimiser_bench: " << answer.error().text() << '\n';
            std::exit(1);
        }
        days = answer.value().simulated;
    }
    const double spent = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    state.counters["share_of_half_second"] = spent / static_cast<double>(state.iterations()) / 0.5;
    state.counters["days"] = days;
}
BENCHMARK(optimise)->Arg(0)->Arg(1)->ArgName("trims")->Unit(benchmark::kMillisecond);

}  // namespace
