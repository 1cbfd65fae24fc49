// SPDX-License-Identifier: Apache-2.0
// Timings, advice and all rules for a house of four banks: to stay under 1 ms. The headers are worked out
// once and kept, as the wizard does, because they change only with what is entered about them; their own time
// stands apart.
#include <benchmark/benchmark.h>

#include "demo/demo.h"
#include "rules/rules.h"

namespace {

using namespace wetfront;

// The example visit with its banks (and what was timed on them) doubled until there are four.
VisitFile four_banks() {
    VisitFile file = example_visit();
    auto& house = file.house;
    while (house.banks.size() < 4) {
        PadBank bank = house.banks[house.banks.size() % 2];
        const Id original = bank.id;
        bank.id = Id{original.text + "-" + std::to_string(house.banks.size())};
        const auto marks = file.visit.marks;
        for (Mark mark : marks) {
            if (mark.bank == original) {
                mark.id = Id{mark.id.text + "-" + bank.id.text.substr(bank.id.text.size() - 1)};
                mark.bank = bank.id;
                file.visit.marks.push_back(mark);
            }
        }
        house.banks.push_back(bank);
    }
    return file;
}

void derive_and_check(benchmark::State& state) {
    const VisitFile file = four_banks();
    const auto water = water_of(file);
    for (auto _ : state) {
        const auto timings = timings_of(file);
        const auto advice = advise(file, water);
        benchmark::DoNotOptimize(check(file, timings, advice, WhichSettings::found));
    }
    state.counters["banks"] = static_cast<double>(file.house.banks.size());
    state.counters["marks"] = static_cast<double>(file.visit.marks.size());
}
BENCHMARK(derive_and_check)->Unit(benchmark::kMicrosecond);

void water_of_four_banks(benchmark::State& state) {
    const VisitFile file = four_banks();
    for (auto _ : state) {
        benchmark::DoNotOptimize(water_of(file));
    }
    state.counters["outlets"] = static_cast<double>(water_of(file).banks.front().header->outlets.size());
}
BENCHMARK(water_of_four_banks)->Unit(benchmark::kMicrosecond);

}  // namespace
