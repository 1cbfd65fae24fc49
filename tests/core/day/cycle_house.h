// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <random>

#include "air/design_day.h"
#include "cycle/bank_cycle.h"
#include "day/design_weather.h"
#include "day/optimiser.h"
#include "pad/wet_pad.h"

namespace wetfront::test {

/// A drawn house with one timer on a drawn design day, and what a stopwatch would have read off its banks in
/// the weather of the design hour.
struct CycleHouse {
    DayHouse house;
    Weather weather;
    OptimiserQuestion question;
    std::vector<BankQuestion> banks;

    [[nodiscard]] CycleAnswer closed_form() const {
        return best_cycle(banks, question.steps.step, CycleMargins{}).value();
    }
    /// The question with what the closed form advises, if it advises a cycle.
    [[nodiscard]] OptimiserQuestion with_advice() const {
        auto asked = question;
        if (const auto answer = closed_form(); answer.cycled) {
            asked.advised =
                TimerCycle{answer.period, *answer.base, question.trim_above ? *answer.ceiling : *answer.base};
        }
        return asked;
    }
};

class CycleHouses {
public:
    explicit CycleHouses(std::uint32_t seed) : random_{seed} {}

    CycleHouse next(int columns, double step_s) {
        CycleHouse made;
        const auto pressure = from_si<AbsolutePressure>(99000.0);
        const double wet = between(21.0, 27.0);
        const auto hottest =
            air_from_wet_bulb(celsius(wet + between(8.0, 15.0)), celsius(wet), pressure).value();
        const auto day = design_day(hottest, from_si<TemperatureDifference>(between(8.0, 14.0))).value();
        made.weather =
            design_day_weather(day, seconds(3600.0), std::chrono::year{2026} / std::chrono::July / 15, -300)
                .value();
        made.house.columns = columns;
        const double airflow = between(60.0, 160.0);
        made.house.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(airflow)}};
        made.house.flock = {between(5000.0, 30000.0), from_si<Mass>(between(1.0, 3.0))};
        made.house.building_gain = from_si<Power>(between(0.0, 80e3));
        const int banks = one_in(2) ? 1 : 2;
        made.house.pumps.emplace_back();
        for (int b = 0; b < banks; ++b) {
            add_bank(made, hottest, airflow, 1.0 / banks);
            made.house.pumps[0].banks.push_back(static_cast<std::size_t>(b));
        }
        made.house.timers = {{{0}}};
        TimerPlan plan;
        plan.start_temperature = celsius(between(26.0, 30.0));
        plan.target = celsius(between(22.0, 26.0));
        if (one_in(2)) {
            plan.hours_from = seconds(3600.0 * between(8.0, 11.0));
            plan.hours_to = seconds(3600.0 * between(19.0, 22.0));
        }
        auto& question = made.question;
        question.plans = {plan};
        question.steps = {
            {seconds(300.0), seconds(600.0)}, seconds(step_s), seconds(step_s), {}, seconds(60.0)};
        if (one_in(2)) {
            question.trim_above = from_si<TemperatureDifference>(0.5);
        }
        return made;
    }

private:
    double between(double low, double high) { return std::uniform_real_distribution{low, high}(random_); }
    bool one_in(int count) { return std::uniform_int_distribution{1, count}(random_) == 1; }

    void add_bank(CycleHouse& made, const MoistAir& hottest, double airflow, double share) {
        DayBank bank;
        bank.face_share = share;
        bank.constant_share = between(0.5, 0.9);
        const auto effectiveness = from_si<Fraction>(between(0.6, 0.85));
        bank.effectiveness = {effectiveness};
        // At 1 m/s the face has as many square metres as air goes through it in m3/s.
        const double evaporated =
            in_si(evaporation(hottest, effectiveness, from_si<Velocity>(1.0)).value()) * airflow * share;
        const double wetting = 1.0 / between(40.0, 200.0);
        const double drying = wetting * std::exp(between(std::log(0.03), std::log(0.4)));
        bank.holds = from_si<Mass>(evaporated / drying);
        bank.wetting = from_si<Rate>(wetting);
        bank.flow = from_si<VolumeFlow>(wetting * in_si(bank.holds) / 1000.0);
        bank.fill = seconds(between(10.0, 90.0));
        BankQuestion read;
        read.fill = bank.fill;
        read.uncertainty = seconds(0.0);
        read.start =
            DryStart{bank.fill + seconds(1.0 / wetting), seconds(bank.constant_share / drying), false};
        made.house.banks.push_back(std::move(bank));
        made.banks.push_back(read);
    }

    std::mt19937 random_;
};

}  // namespace wetfront::test
