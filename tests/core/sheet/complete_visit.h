// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cycle/advice.h"
#include "rules/checklists.h"
#include "support/visit_builder.h"

namespace wetfront::test {

/// Settings that fill every line of a timer, written in the units that people type.
inline void fill_settings(TimerSettings& settings) {
    settings.target = typed<Temperature>("74degF");
    settings.start_temperature = typed<Temperature>("28degC");
    settings.lowest_house_temperature = typed<Temperature>("21degC");
    settings.humidity_cut_off = typed<Fraction>("83%");
    settings.pad_hours_from = TimeOfDay{9 * 60 + 30};
    settings.pad_hours_to = TimeOfDay{19 * 60};
    settings.period = typed<Duration>("5min");
    settings.base_on_time = typed<Duration>("30s");
    settings.on_time_ceiling = typed<Duration>("300s");
    settings.trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("15s")},
                          {typed<TemperatureDifference>("2K"), typed<Duration>("-10s")}};
    settings.review_interval = typed<Duration>("12min");
    settings.rinse_at = TimeOfDay{8 * 60};
    settings.rinse_length = typed<Duration>("7min");
    settings.entered_fill = typed<Duration>("41s");
    settings.entered_wet_through = typed<Duration>("111s");
    settings.shown_on_time = typed<Duration>("33s");
    settings.continuous_intended = false;
}

/// A visit to an invented house in which nothing is missing and everything is ticked; the settings left are
/// those advised. Bank n fills in 40 + n s and wets through in 140 + 2 n s, give or take.
inline VisitFile complete_visit(int banks, int timers = 1) {
    VisitBuilder visit{banks, timers};
    visit.both_weathers();
    auto& [farm, house, visited] = visit.file();
    farm.elevation = typed<Length>("120m");
    farm.design_daily_range = typed<TemperatureDifference>("11K");
    house.fan_airflow = typed<VolumeFlow>("90m3/s");
    house.sensors = {{Id{"sensor-1"}, SensorKind::humidity, SensorPlace::outside}};
    for (auto& pump : house.pumps) {
        pump.sump_volume = typed<Volume>("900L");
        pump.make_up_flow = typed<VolumeFlow>("40L/min");
        pump.riser_volume = typed<Volume>("6L");
        const auto flow = std::to_string(310 * banks / timers) + "L/min";
        visited.conditions.flows.push_back({pump.id, typed<VolumeFlow>(flow.c_str())});
    }
    for (auto& bank : house.banks) {
        bank.header_bore = typed<Length>("100mm");
        bank.outlet_bore = typed<Length>("3mm");
        bank.outlet_spacing = typed<Length>("75mm");
    }
    for (const auto& bank : house.banks) {
        auto& at = visited.conditions.at_banks.emplace_back();
        at.bank = bank.id;
        at.pressure_drop = typed<PressureDifference>("11Pa");
        for (const auto* speed : {"1.4m/s", "1.5m/s", "1.6m/s", "1.7m/s", "1.8m/s"}) {
            at.face_points.push_back({typed<Velocity>(speed)});
        }
    }
    for (auto& timer : house.timers) {
        timer.resolution = typed<Duration>("5s");
        timer.period_resolution = typed<Duration>("60s");
    }
    auto& conditions = visited.conditions;
    conditions.barometer = typed<AbsolutePressure>("100.1kPa");
    conditions.behind_pad = typed<Temperature>("24.5degC");
    conditions.house_temperature = typed<Temperature>("26.5degC");
    conditions.house_humidity = typed<Fraction>("71%");
    conditions.static_pressure = typed<PressureDifference>("23Pa");
    conditions.face_velocity = typed<Velocity>("1.6m/s");
    conditions.bird_age_days = 38.0;
    conditions.hardness = typed<Concentration>("210mg/L");
    conditions.alkalinity = typed<Concentration>("160mg/L");
    conditions.ph = 7.4;
    conditions.conductivity = typed<Conductivity>("640uS/cm");
    visited.persons = {{"T. Technician", "service technician"}, {"A. Grower", "grower"}};
    visited.instruments = {{"Thermometer 4", "2026-03-14"}};
    visited.agreement = {typed<Duration>("40min"), typed<Temperature>("31degC"), "A. Grower"};
    visited.open_points = {"Strainer of pump 1 is worn."};
    for (const auto step : {Step::safety, Step::before_leaving}) {
        for (const auto& line : checklist(step)) {
            visited.ticks.push_back({std::string{line.id}, true, ""});
        }
    }
    for (int bank = 1; bank <= banks; ++bank) {
        for (const double more : {0.0, 1.5, 3.0}) {
            visit.run(bank, {.fill = 39.0 + bank + more,
                             .wet_through = 138.0 + 2.0 * bank + more,
                             .run_off = 95.0 + bank + more,
                             .dry_out = 2400.0 + 10.0 * bank + more});
        }
    }
    const auto advice = advise(visit.file());
    for (int timer = 1; timer <= timers; ++timer) {
        fill_settings(visit.found(timer));
        visited.left.push_back(as_settings(*advice.of(visit.timer(timer).id)));
    }
    return visit.file();
}

}  // namespace wetfront::test
