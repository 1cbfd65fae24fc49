// SPDX-License-Identifier: Apache-2.0
#include "day/visit_day.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "day/simulate.h"
#include "support/visit_builder.h"

namespace wetfront {
namespace {

using namespace literals;
using test::VisitBuilder;

constexpr double dried_after_s = 900.0;

/// Two banks on one pump, both timed from dry, with fans that are described.
VisitBuilder timed_house(TimerKind kind = TimerKind::trimmed) {
    VisitBuilder made{2, 1, kind};
    made.both_weathers();
    made.file().farm.design_daily_range = test::typed<TemperatureDifference>("12K");
    made.file().house.fan_airflow = test::typed<VolumeFlow>("80m3/s");
    for (const int bank : {1, 2}) {
        made.run(bank, {.fill = 40.0, .wet_through = 130.0, .dry_out = dried_after_s});
    }
    return made;
}

std::vector<std::string> in_words(const std::vector<Message>& messages) {
    std::vector<std::string> all;
    for (const auto& each : messages) {
        all.push_back(in_english(each, UnitSystem::si));
    }
    return all;
}

DayHouse house_of_visit(VisitBuilder& made) {
    auto house = day_house_of(made.file(), advise(made.file()));
    EXPECT_EQ(in_words(house.missing), std::vector<std::string>{});
    return house.house.value();
}

VisitDayPlans plans_of_visit(VisitBuilder& made, DaySettings which) {
    return day_plans_of(made.file(), advise(made.file()), which);
}

TEST(VisitDayTest, a_simulated_pad_dries_when_the_stopwatch_saw_it_dry) {
    auto made = timed_house();
    const auto house = house_of_visit(made);
    // In the weather of the readings, wetted for an hour, then left.
    Weather weather{"test", {0, 0}, {}};
    weather.hours.assign(4, *advise(made.file()).weather.test);
    TimerPlan plan;
    plan.pumping = Pumping::while_called;
    plan.hours_from = 0_s;
    plan.hours_to = 3600_s;
    const auto day = simulate(house, weather, std::vector{plan}, {60_s, false}).value();
    const auto wet_until = static_cast<std::size_t>((3600.0 + dried_after_s) / 60.0);
    EXPECT_NEAR(day.slots.at(wet_until - 1).wet_share, 1.0, 1e-9);
    EXPECT_LT(day.slots.at(wet_until + 1).wet_share, 0.999);
}

TEST(VisitDayTest, air_is_shared_by_the_faces_and_all_of_it_goes_through_them) {
    auto made = timed_house();
    made.bank(1).length = test::typed<Length>("27m");
    made.bank(2).length = test::typed<Length>("9m");
    const auto house = house_of_visit(made);
    EXPECT_NEAR(house.banks.at(0).face_share, 0.75, 1e-12);
    EXPECT_NEAR(house.banks.at(1).face_share, 0.25, 1e-12);
    EXPECT_NEAR(in_si(house.fan_stages.at(0).airflow), 80.0, 1e-9);
}

TEST(VisitDayTest, pumps_and_timers_keep_the_order_and_the_banks_of_the_house) {
    VisitBuilder made{4, 2};
    made.both_weathers();
    made.file().house.fan_airflow = test::typed<VolumeFlow>("80m3/s");
    for (const int bank : {1, 2, 3, 4}) {
        made.run(bank, {.fill = 40.0, .wet_through = 130.0, .dry_out = dried_after_s});
    }
    made.file().house.pumps[1].bleed_flow = test::typed<VolumeFlow>("2L/min");
    const auto house = house_of_visit(made);
    EXPECT_EQ(house.pumps.at(0).banks, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(house.pumps.at(1).banks, (std::vector<std::size_t>{2, 3}));
    EXPECT_EQ(house.timers.at(1).pumps, std::vector<std::size_t>{1});
    EXPECT_NEAR(in_si(house.pumps.at(1).bleed), 2e-3 / 60.0, 1e-12);
}

TEST(VisitDayTest, water_that_was_not_measured_is_what_the_pad_took_up_and_that_is_told) {
    auto made = timed_house();
    const auto assumed = in_words(day_house_of(made.file(), advise(made.file())).assumed);
    EXPECT_NE(std::ranges::find(assumed, "Bank 1: as much water as the pad took up by the stopwatch."),
              assumed.end());
    const auto bank = house_of_visit(made).banks.at(0);
    EXPECT_NEAR(1000.0 * in_si(bank.flow), in_si(bank.holds) / (130.0 - 40.0), 1e-9);
}

TEST(VisitDayTest, what_is_missing_is_named_bank_by_bank) {
    auto made = timed_house();
    made.bank(2).height.reset();
    auto house = day_house_of(made.file(), advise(made.file()));
    EXPECT_FALSE(house.house);
    const auto missing = in_words(house.missing);
    ASSERT_FALSE(missing.empty());
    EXPECT_NE(missing.back().find("Bank 2: length, height"), std::string::npos) << missing.back();

    VisitBuilder untimed{1};
    untimed.both_weathers();
    house = day_house_of(untimed.file(), advise(untimed.file()));
    EXPECT_FALSE(house.house);
    EXPECT_NE(in_words(house.missing).front().find("Bank 1: readings of the water"), std::string::npos);
}

TEST(VisitDayTest, settings_found_are_simulated_as_they_stand) {
    auto made = timed_house();
    auto& found = made.found();
    found.target = test::typed<Temperature>("24degC");
    found.start_temperature = test::typed<Temperature>("28degC");
    found.lowest_house_temperature = test::typed<Temperature>("20degC");
    found.pad_hours_from = TimeOfDay{10 * 60};
    found.pad_hours_to = TimeOfDay{20 * 60 + 30};
    found.period = test::typed<Duration>("5min");
    found.base_on_time = test::typed<Duration>("90s");
    found.on_time_ceiling = test::typed<Duration>("150s");
    found.trim_rows = {{test::typed<TemperatureDifference>("3K"), test::typed<Duration>("20s")},
                       {test::typed<TemperatureDifference>("1K"), test::typed<Duration>("10s")}};
    found.review_interval = test::typed<Duration>("15min");
    found.rinse_at = TimeOfDay{9 * 60};
    found.rinse_length = test::typed<Duration>("4min");
    const auto plans = plans_of_visit(made, DaySettings::found);
    ASSERT_EQ(plans.plans.size(), 1U);
    const auto& plan = plans.plans[0];
    EXPECT_EQ(plan.pumping, Pumping::in_cycles);
    EXPECT_NEAR(in_celsius(*plan.target), 24.0, 1e-9);
    EXPECT_NEAR(in_celsius(*plan.start_temperature), 28.0, 1e-9);
    EXPECT_NEAR(in_celsius(*plan.lowest_house_temperature), 20.0, 1e-9);
    EXPECT_EQ(in_seconds(*plan.hours_from), 36000.0);
    EXPECT_EQ(in_seconds(*plan.hours_to), 73800.0);
    EXPECT_EQ(in_seconds(plan.period), 300.0);
    EXPECT_EQ(in_seconds(plan.base), 90.0);
    EXPECT_EQ(in_seconds(*plan.ceiling), 150.0);
    ASSERT_EQ(plan.trim_rows.size(), 2U);
    EXPECT_EQ(in_seconds(plan.trim_rows[0].change), 10.0);  // rising by degrees
    EXPECT_EQ(in_seconds(plan.review_interval), 900.0);
    EXPECT_EQ(in_seconds(*plan.rinse_at), 32400.0);
    EXPECT_EQ(in_seconds(plan.rinse_length), 240.0);
    EXPECT_TRUE(plans.notes.empty());
}

TEST(VisitDayTest, advised_settings_are_those_to_enter_with_the_growers_target) {
    auto made = timed_house();
    made.found().target = test::typed<Temperature>("23degC");
    const auto advice = advise(made.file());
    ASSERT_TRUE(advice.timers.at(0).cycled);
    const auto plans = plans_of_visit(made, DaySettings::advised);
    ASSERT_EQ(plans.plans.size(), 1U) << in_words(plans.missing).size();
    const auto wanted = as_settings(advice.timers[0]);
    EXPECT_EQ(plans.plans[0].pumping, Pumping::in_cycles);
    EXPECT_EQ(in_seconds(plans.plans[0].base), in_seconds(wanted.base_on_time->value()));
    EXPECT_EQ(in_seconds(plans.plans[0].period), in_seconds(wanted.period->value()));
    EXPECT_NEAR(in_celsius(*plans.plans[0].target), 23.0, 1e-9);
}

TEST(VisitDayTest, continuous_is_on_while_called_and_none_is_never) {
    auto made = timed_house();
    EXPECT_EQ(plans_of_visit(made, DaySettings::continuous).plans.at(0).pumping, Pumping::while_called);
    EXPECT_EQ(plans_of_visit(made, DaySettings::none).plans.at(0).pumping, Pumping::never);
}

TEST(VisitDayTest, a_timer_on_demand_is_on_while_called) {
    auto made = timed_house(TimerKind::on_demand);
    made.found().start_temperature = test::typed<Temperature>("28degC");
    const auto plans = plans_of_visit(made, DaySettings::found);
    ASSERT_EQ(plans.plans.size(), 1U);
    EXPECT_EQ(plans.plans[0].pumping, Pumping::while_called);
}

TEST(VisitDayTest, settings_that_were_not_entered_are_missing_by_the_timers_name) {
    auto made = timed_house();
    const auto none = plans_of_visit(made, DaySettings::left);
    EXPECT_TRUE(none.plans.empty());
    EXPECT_EQ(in_words(none.missing), std::vector<std::string>{"Timer 1: these settings were not entered"});
    made.left().period = test::typed<Duration>("5min");
    EXPECT_EQ(in_words(plans_of_visit(made, DaySettings::left).missing),
              std::vector<std::string>{"Timer 1: period and base on-time, from pump start"});
}

TEST(VisitDayTest, what_is_set_and_cannot_be_simulated_is_told) {
    auto made = timed_house();
    auto& found = made.found();
    found.period = test::typed<Duration>("5min");
    found.base_on_time = test::typed<Duration>("90s");
    found.humidity_cut_off = test::typed<Fraction>("85%");
    found.trim_rows = {{test::typed<TemperatureDifference>("1K"), test::typed<Duration>("10s")}};
    auto plans = plans_of_visit(made, DaySettings::found);
    EXPECT_EQ(plans.notes.size(), 2U);
    EXPECT_FALSE(plans.plans.at(0).humidity_cut_off);
    EXPECT_TRUE(plans.plans.at(0).trim_rows.empty());
    made.file().house.sensors = {{Id{"outside"}, SensorKind::humidity, SensorPlace::outside}};
    plans = plans_of_visit(made, DaySettings::found);
    EXPECT_EQ(plans.notes.size(), 1U);
    EXPECT_NEAR(in_si(plans.plans.at(0).humidity_cut_off.value()), 0.85, 1e-12);
}

TEST(VisitDayTest, the_design_day_is_that_of_the_farm_on_the_day_of_the_visit) {
    auto made = timed_house();
    const auto weather = design_weather_of(made.file(), advise(made.file())).value();
    EXPECT_EQ(to_iso8601(weather.from), "2026-07-01T00:00:00.000-05:00");
    EXPECT_NEAR(in_celsius(weather.hours.at(16).dry_bulb), 36.0, 1e-9);  // 15 by the sun
    made.file().farm.design_daily_range.reset();
    const auto without = design_weather_of(made.file(), advise(made.file()));
    ASSERT_FALSE(without);
    EXPECT_NE(without.error().accepted.find("daily range"), std::string::npos);
}

}  // namespace
}  // namespace wetfront
