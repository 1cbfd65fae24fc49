// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rule_case.h"

namespace wetfront::test {

// Houses in which, between them, every rule finds something.
inline RuleCase house_with_bad_settings() {
    RuleCase house{4, 4};
    house.cycle("300s", "300s", 1);
    house.cycle("20s", "300s", 2);
    house.cycle("100s", "300s", 3);
    house.found(3).on_time_ceiling = typed<Duration>("120s");
    house.cycle("100s", "900s", 4);
    for (int bank = 1; bank <= 4; ++bank) {
        house.timed(bank).fill = RuleCase::reading(45.0, 2.0);
        house.timed(bank).wet_through = RuleCase::reading(150.0, 5.0);
        house.timed(bank).dry_out = RuleCase::reading(600.0, 60.0);
    }
    Reading short_one;
    short_one.kind = TimingKind::wet_through;
    short_one.bank = Id{"bank-1"};
    short_one.value = seconds(90.0);
    short_one.not_used = NotUsed::pads_not_dry;
    house.timings.readings = {short_one};
    house.timed(1).fans_mixed = true;
    auto& disagreeing = house.advised(1).banks.at(0);
    disagreeing.share_from_timings = 0.1;
    disagreeing.share_from_flow = 0.2;
    disagreeing.shares_disagree = true;
    house.conditions().bird_age_days = 40.0;
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    for (int timer = 1; timer <= 4; ++timer) {
        house.found(timer).start_temperature = typed<Temperature>(timer % 2 == 0 ? "75degF" : "92degF");
        house.found(timer).humidity_cut_off = typed<Fraction>(timer % 2 == 0 ? "90%" : "40%");
    }
    house.house().fan_airflow = typed<VolumeFlow>("80m3/s");
    house.house().cross_section = typed<Area>("40m2");
    house.conditions().static_pressure = typed<PressureDifference>("70Pa");
    return house;
}

inline TimerSettings& contradicting(TimerSettings& settings) {
    settings.target = typed<Temperature>("30degC");
    settings.start_temperature = typed<Temperature>("26degC");
    settings.lowest_house_temperature = typed<Temperature>("28degC");
    settings.review_interval = typed<Duration>("4min");
    settings.rinse_at = TimeOfDay{5 * 60};
    settings.rinse_length = typed<Duration>("31s");
    settings.entered_fill = typed<Duration>("10s");
    settings.entered_wet_through = typed<Duration>("20s");
    settings.shown_on_time = typed<Duration>("400s");
    return settings;
}

// Settings that contradict each other, the readings and the weather.
inline RuleCase house_with_contradicting_settings(double bird_age_days) {
    RuleCase house{4, 4};
    house.builder.both_weathers();
    house.builder.file().farm.design_dry_bulb = typed<Temperature>("40degC");
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("12K");
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    house.conditions().bird_age_days = bird_age_days;
    house.cycle("90s", "200s", 1);
    house.cycle("280s", "300s", 2);
    house.cycle("50s", "20min", 3);
    house.cycle("0s", "300s", 4);
    const auto row = [](const char* above, const char* change) {
        return TrimRow{typed<TemperatureDifference>(above), typed<Duration>(change)};
    };
    house.trims_to("60s", "-5s", 1);
    house.trims_to("150s", "200s", 3);
    house.found(1).trim_rows = {row("2K", "-5s"), row("1K", "-5s")};
    house.found(3).trim_rows = {row("0.1K", "200s"), row("1K", "5s")};
    for (int timer = 1; timer <= 4; ++timer) {
        contradicting(house.found(timer)).humidity_cut_off = typed<Fraction>("5%");
        house.builder.timer(timer).resolution = typed<Duration>("2s");
        if (timer < 3) {
            house.timed(timer).fill = RuleCase::reading(45.0, 2.0);
            house.timed(timer).wet_through = RuleCase::reading(150.0, 5.0);
        }
        auto& asked = house.advised(timer).banks.at(0).question.emplace();
        asked.fill = seconds(45.0);
        asked.start = DryStart{seconds(150.0), seconds(timer == 4 ? 30.0 : 400.0)};
    }
    house.found(1).pad_hours_from = TimeOfDay{15 * 60};
    house.found(1).pad_hours_to = TimeOfDay{16 * 60};
    house.found(2).start_temperature = typed<Temperature>("32degC");
    house.found(2).pad_hours_from = TimeOfDay{6 * 60};
    house.found(2).pad_hours_to = TimeOfDay{23 * 60 + 59};
    house.found(3).pad_hours_from = house.found(3).pad_hours_to = TimeOfDay{9 * 60};
    house.found(3).continuous_intended = true;
    return house;
}

inline RuleCase house_with_unusual_settings() {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>("85degC");
    house.found().shown_on_time = typed<Duration>("9h");
    return house;
}

/// A plain controller holds base on-times up to 1 h.
inline RuleCase house_with_a_value_beyond_its_controller() {
    RuleCase house;
    choose_controller(house.builder.timer(1), generic_template(TimerKind::trimmed));
    house.found().base_on_time = typed<Duration>("2h");
    return house;
}

inline RuleCase house_without_the_fill_that_its_controller_counts_from() {
    RuleCase house;
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = CountsFrom::full_header;
    choose_controller(house.builder.timer(1), described);
    house.cycle("75s", "300s");
    return house;
}

/// With a humidity sensor in the house, or none.
inline RuleCase house_with_unfit_sensor(bool in_house) {
    RuleCase house;
    house.builder.both_weathers();
    house.found().humidity_cut_off = typed<Fraction>("50%");
    if (in_house) {
        house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::in_house}};
    }
    return house;
}

/// A header of 18 m, 50 mm, with outlets every 300 mm.
inline void describe(PadBank& bank, const char* outlets) {
    bank.header_bore = typed<Length>("50mm");
    bank.outlet_bore = typed<Length>(outlets);
    bank.outlet_spacing = typed<Length>("300mm");
}

inline RuleCase house_with_bad_headers() {
    RuleCase house{5, 5};
    describe(house.builder.bank(1), "5mm");  // does not fill
    house.flows("20L/min", 1);
    describe(house.builder.bank(2), "5mm");  // starves
    house.builder.bank(2).header_rise = typed<Length>("200mm");
    house.flows("20L/min", 2);
    describe(house.builder.bank(3), "3mm");  // uneven, clogged, slow
    house.builder.bank(3).header_bore = typed<Length>("25mm");
    house.flows("60L/min", 3);
    house.at(3).inlet_head = typed<Length>("10m");
    house.timed(3).fill = RuleCase::reading(200.0, 2.0);
    describe(house.builder.bank(4), "3mm");  // passes too much, fast
    house.flows("60L/min", 4);
    house.at(4).inlet_head = typed<Length>("100mm");
    house.timed(4).fill = RuleCase::reading(10.0, 1.0);
    house.timed(3).wetting = RuleCase::reading(400.0, 4.0);
    house.timed(5).wetting = RuleCase::reading(50.0, 4.0);  // takes up less
    house.flows("150L/min", 5);
    auto& unsure = house.conditions().flows.at(4);
    unsure.flow.reset();
    unsure.bucket_volume = typed<Volume>("12.5L");
    unsure.bucket_time = typed<Duration>("5s");
    auto& disagree = house.conditions().flows.at(3);
    disagree.bucket_volume = typed<Volume>("20L");
    disagree.bucket_time = typed<Duration>("40s");
    disagree.meter_volume = typed<Volume>("300L");
    disagree.meter_time = typed<Duration>("300s");
    return house;
}

inline RuleCase house_with_bad_air_and_sumps() {
    RuleCase house{4, 2};
    house.builder.both_weathers();
    for (int bank = 1; bank <= 4; ++bank) {
        house.builder.bank(bank).header_bore = typed<Length>("50mm");
        house.at(bank).behind_pad = typed<Temperature>("25degC");
        for (const char* speed : {"1.2m/s", "1.2m/s", "1.3m/s", "1.2m/s", "1.2m/s"}) {
            house.at(bank).face_points.push_back({typed<Velocity>(speed)});
        }
    }
    house.at(1).behind_pad = typed<Temperature>("29degC");    // cools less
    house.at(2).behind_pad = typed<Temperature>("22.6degC");  // "cools more"
    house.at(3).behind_pad = typed<Temperature>("25.6degC");  // less than bank 2
    house.at(3).pressure_drop = typed<PressureDifference>("30Pa");
    house.at(4).pressure_drop = typed<PressureDifference>("0Pa");
    house.at(2).face_points = {{typed<Velocity>("2.5m/s")}};
    house.at(1).face_points.at(0).speed = typed<Velocity>("3.5m/s");
    house.timed(1).wetting = RuleCase::reading(200.0, 4.0);
    house.timed(2).wetting = RuleCase::reading(100.0, 4.0);
    house.timed(3).fill = RuleCase::reading(90.0, 4.0);
    house.timed(4).fill = RuleCase::reading(40.0, 4.0);
    house.builder.bank(3).thickness = typed<Length>("100mm");
    house.builder.bank(4).thickness = typed<Length>("100mm");
    house.flows("100L/min", 1);
    house.flows("60L/min", 2);
    house.pump(1).sump_volume = typed<Volume>("50L");
    house.pump(1).make_up_flow = typed<VolumeFlow>("1L/min");
    house.pump(1).sump_area = typed<Area>("0.5m2");
    house.pump(1).sump_freeboard = typed<Length>("20mm");
    house.pump(2).sump_volume = typed<Volume>("200L");
    house.pump(2).make_up_flow = typed<VolumeFlow>("100L/min");
    return house;
}

inline RuleCase house_with_water(const char* sump, double sump_ph) {
    RuleCase house;
    house.conditions().conductivity = typed<Conductivity>("500uS/cm");
    house.conditions().sump_conductivity = typed<Conductivity>(sump);
    house.conditions().calcium_hardness = typed<Concentration>("110mg/L");
    house.conditions().alkalinity = typed<Concentration>("120mg/L");
    house.conditions().sump_temperature = typed<Temperature>("22degC");
    house.conditions().sump_ph = sump_ph;
    return house;
}

/// Limits that cannot be used together, and one on its less safe side.
inline RuleCase house_with_chosen_limits() {
    RuleCase house;
    house.builder.file().farm.limits.hot_outside = typed<Temperature>("20degC");
    house.advice.margins.least_rest = seconds(30.0);
    return house;
}

}  // namespace wetfront::test
