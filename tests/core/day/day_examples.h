// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "day/simulate.h"
#include "pad/wet_pad.h"

namespace wetfront::test {

/// Air that stays the same for so many hours, from midnight on.
inline Weather same_air(const MoistAir& air, int hours) {
    Weather weather;
    weather.source = "the same all along";
    weather.from = {1'782'864'000'000, 0};  // 2026-07-01T00:00Z
    weather.hours.assign(static_cast<std::size_t>(hours) + 1, air);
    return weather;
}

inline MoistAir hot_dry_air() {
    return air_from_humidity(35_degC, 30_percent, 101325_Pa).value();
}

/// One bank of 36 m2 with 40 m3/s through it and a far end that fills in 40 s; it holds so much that a wet
/// pad dries out in `dry_out` seconds in hot dry air, and is supplied five times what it loses then.
inline DayHouse plain_house(double dry_out = 600.0) {
    DayHouse house;
    DayBank bank;
    bank.effectiveness = {70_percent};
    const double flux = in_si(evaporation(hot_dry_air(), 70_percent, from_si<Velocity>(40.0 / 36.0)).value());
    const double drying = 0.7 / dry_out;
    bank.holds = water_held({from_si<Rate>(1.0), from_si<Rate>(drying), 0.7}, from_si<EvaporationFlux>(flux),
                            from_si<Area>(36.0))
                     .value();
    bank.wetting = from_si<Rate>(5.0 * drying);
    bank.flow = from_si<VolumeFlow>(1.2 * 5.0 * drying * in_si(bank.holds) / 1000.0);
    bank.fill = 40_s;
    house.banks = {bank};
    house.pumps = {{{0}, from_si<Power>(750.0)}};
    house.timers = {{{0}}};
    house.fan_stages = {{from_si<TemperatureDifference>(0.0), from_si<VolumeFlow>(40.0)}};
    return house;
}

inline TimerPlan continuous() {
    TimerPlan plan;
    plan.pumping = Pumping::while_called;
    return plan;
}

inline TimerPlan cycles(double period, double on) {
    TimerPlan plan;
    plan.pumping = Pumping::in_cycles;
    plan.period = seconds(period);
    plan.base = seconds(on);
    return plan;
}

}  // namespace wetfront::test
