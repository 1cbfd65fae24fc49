// SPDX-License-Identifier: Apache-2.0
#include "day/simulate.h"

#include "day/day_checks.h"
#include "day/engine.h"

namespace wetfront {

DaySimulator::DaySimulator(std::unique_ptr<Engine> engine) : engine_{std::move(engine)} {}
DaySimulator::DaySimulator(DaySimulator&&) noexcept = default;
DaySimulator& DaySimulator::operator=(DaySimulator&&) noexcept = default;
DaySimulator::~DaySimulator() = default;

Result<DaySimulator> DaySimulator::of(const DayHouse& house, const Weather& weather,
                                      const SimulationChoice& choice) {
    WF_CHECK(day_detail::check_house(house));
    WF_CHECK(day_detail::check_choice(choice));
    WF_TRY(auto table, day_detail::weather_table(weather));
    return DaySimulator{std::make_unique<Engine>(house, std::move(table), choice)};
}

Result<void> DaySimulator::run(std::span<const TimerPlan> plans, DayResult& into,
                               const std::function<bool(double)>& go_on) {
    WF_CHECK(day_detail::check_plans(engine_->house(), plans));
    return engine_->run(plans, into, go_on);
}

Result<DayResult> simulate(const DayHouse& house, const Weather& weather, std::span<const TimerPlan> plans,
                           const SimulationChoice& choice) {
    WF_TRY(auto simulator, DaySimulator::of(house, weather, choice));
    DayResult result;
    WF_CHECK(simulator.run(plans, result));
    return result;
}

}  // namespace wetfront
