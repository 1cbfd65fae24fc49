// SPDX-License-Identifier: Apache-2.0
#include "rules/design_clock.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::ContainsRegex;
using testing::HasSubstr;
using testing::Not;

/// A design day without a range: 36 °C at every hour.
RuleCase day_of_one_temperature() {
    RuleCase house;
    house.builder.both_weathers();
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("0K");
    house.found().start_temperature = typed<Temperature>("30degC");
    return house;
}

std::optional<double> hours_called_for(RuleCase& house) {
    house.advice.weather = weather_of(house.builder.file());
    const RuleInputs inputs{house.builder.file(), house.timings, house.advice,
                            house.builder.file().visit.found};
    const auto called = called_for(inputs, timers_with_settings(inputs).at(0));
    return called ? std::optional{in_seconds(*called) / 3600.0} : std::nullopt;
}

TEST(CalledForTest, a_day_that_is_always_warm_calls_all_day_or_for_the_pad_hours) {
    auto house = day_of_one_temperature();
    EXPECT_EQ(hours_called_for(house), 24.0);
    house.found().pad_hours_from = TimeOfDay{10 * 60};
    house.found().pad_hours_to = TimeOfDay{20 * 60};
    EXPECT_EQ(hours_called_for(house), 10.0);
}

TEST(CalledForTest, a_start_at_the_temperature_of_the_day_calls_and_above_it_never) {
    auto house = day_of_one_temperature();
    house.found().start_temperature = typed<Temperature>("35.99degC");
    EXPECT_EQ(hours_called_for(house), 24.0);
    house.found().start_temperature = typed<Temperature>("36.01degC");
    EXPECT_EQ(hours_called_for(house), std::nullopt);
}

TEST(CalledForTest, a_start_that_the_timer_cannot_hold_is_not_looked_at) {
    auto house = day_of_one_temperature();
    house.builder.timer(1).kind = TimerKind::fixed_interval;
    house.found().start_temperature = typed<Temperature>("45degC");
    EXPECT_EQ(hours_called_for(house), std::nullopt) << "and none is advised";
    house.advised().when_pads_may_run = {{Setting::start_temperature, any(celsius(30.0)), {}}};
    EXPECT_EQ(hours_called_for(house), 24.0);
}

// 36 °C with a wet bulb of 24 °C is about 36 % relative humidity.
TEST(CalledForTest, a_cut_off_counts_where_an_outside_sensor_reads_it) {
    auto house = day_of_one_temperature();
    house.found().humidity_cut_off = typed<Fraction>("20%");
    EXPECT_EQ(hours_called_for(house), 24.0);
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    EXPECT_EQ(hours_called_for(house), std::nullopt);
    house.found().humidity_cut_off = typed<Fraction>("80%");
    EXPECT_EQ(hours_called_for(house), 24.0);
}

TEST(CalledForTest, without_the_hours_of_the_day_or_a_start_it_is_not_known) {
    auto house = day_of_one_temperature();
    house.found().start_temperature.reset();
    house.found().period = typed<Duration>("300s");
    EXPECT_EQ(hours_called_for(house), std::nullopt);
    auto no_range = day_of_one_temperature();
    no_range.builder.file().farm.design_daily_range.reset();
    EXPECT_EQ(hours_called_for(no_range), std::nullopt);
}

/// Pad hours of 10 h.
RuleCase ten_hours() {
    auto house = day_of_one_temperature();
    house.found().pad_hours_from = TimeOfDay{10 * 60};
    house.found().pad_hours_to = TimeOfDay{20 * 60};
    return house;
}

// 215 s of every 300 s saved: 43 min an hour, in 10 h 7 h 10 min. 100 L/min: 43000 L.
TEST(CostOfADayTest, a_pump_that_never_rests_costs_pumping_and_water_in_a_day) {
    auto house = ten_hours();
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    house.flows("100L/min");
    const auto finding = house.findings(pump_never_rests).at(0);
    EXPECT_THAT(english(finding.message), HasSubstr("43 min less pumping in every hour"));
    EXPECT_THAT(english(finding.message),
                HasSubstr("on the design day, with pads called for during 10 h, up to 7 h 10 min less "
                          "pumping and 43000 L less water"));
    EXPECT_NEAR(value_in(finding, "pumping_saved_per_day"), 25800.0, 1e-6);
    EXPECT_NEAR(value_in(finding, "water_not_pumped_per_day"), 43.0, 1e-9);
}

TEST(CostOfADayTest, without_the_day_it_is_told_for_an_hour_as_ever) {
    auto house = ten_hours();
    house.builder.file().farm.design_daily_range.reset();
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    const auto message = english(house.findings(pump_never_rests).at(0).message);
    EXPECT_THAT(message, HasSubstr("43 min less pumping in every hour"));
    EXPECT_THAT(message, Not(HasSubstr("design day")));
}

TEST(CostOfADayTest, water_that_never_reaches_the_far_end_leaves_it_dry_for_all_those_hours) {
    auto house = ten_hours();
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.cycle("30s", "300s");
    const auto finding = house.findings(base_below_fill).at(0);
    EXPECT_THAT(english(finding.message), HasSubstr("dry for all the 10 h"));
    EXPECT_EQ(value_in(finding, "dry_per_day"), 36000.0);
}

// Without water for 900 - 100 + 45 = 845 s, wet for 695 s: 150 s dry of 900 s, a sixth of 10 h.
TEST(CostOfADayTest, a_gap_that_outlasts_the_wet_pad_is_told_in_hours_of_a_day) {
    auto house = ten_hours();
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.timed(1).dry_out = RuleCase::reading(695.0, 10.0);
    house.cycle("100s", "900s");
    const auto finding = house.findings(gap_outlasts_wet_pad).at(0);
    EXPECT_THAT(english(finding.message),
                HasSubstr("Up to 100 min dry on the design day, of 10 h in which pads are called for."));
    EXPECT_NEAR(value_in(finding, "dry_per_day"), 6000.0, 1e-9);
}

}  // namespace
}  // namespace wetfront::test
