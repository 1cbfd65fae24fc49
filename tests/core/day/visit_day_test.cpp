// SPDX-License-Identifier: Apache-2.0
#include "day/visit_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "day/simulate.h"
#include "day_examples.h"
#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::vector<std::string> texts_of(const std::vector<Message>& messages) {
    std::vector<std::string> texts;
    for (const auto& message : messages) {
        texts.push_back(in_english(message, UnitSystem::si));
    }
    return texts;
}

VisitBuilder timed_house() {
    VisitBuilder visit;
    visit.both_weathers();
    visit.file().house.fan_airflow = typed<VolumeFlow>("40m3/s");
    visit.run(1, {.fill = 45.0, .wet_through = 140.0, .run_off = 30.0, .dry_out = 900.0});
    return visit;
}

VisitDay day_of_visit(const VisitFile& file) {
    return visit_day(file, advise(file));
}

TEST(VisitDayTest, a_timed_bank_becomes_columns_that_dry_as_the_stopwatch_saw) {
    auto visit = timed_house();
    const auto& file = visit.file();
    const auto day = day_of_visit(file);
    ASSERT_TRUE(day.house) << testing::PrintToString(texts_of(day.missing));
    const auto& bank = day.house->banks[0];
    EXPECT_NEAR(in_si(bank.wetting), 1.0 / 95.0, 1e-9);  // fans off: 1 / (wet-through less fill)
    EXPECT_DOUBLE_EQ(in_seconds(bank.fill), 45.0);
    // In the weather of the readings, a pad that was wet dries to its first patch in 900 s: one run, then
    // rest.
    TimerPlan once;
    once.pumping = Pumping::in_cycles;
    once.base = 3600_s;
    once.period = 7200_s;
    auto house = *day.house;
    house.columns = 1;
    const auto air = advise(file).weather.test.value();
    const auto result = simulate(house, same_air(air, 2), std::vector{once}, {60_s, false}).value();
    EXPECT_DOUBLE_EQ(result.course[60 + 14].wet_share, 1.0);
    EXPECT_LT(result.course[60 + 15].wet_share, 1.0);
}

TEST(VisitDayTest, every_way_is_run_as_its_settings_say) {
    auto visit = timed_house();
    auto& found = visit.found();
    found.period = typed<Duration>("10min");
    found.base_on_time = typed<Duration>("100s");
    found.on_time_ceiling = typed<Duration>("200s");
    found.target = typed<Temperature>("24degC");
    found.start_temperature = typed<Temperature>("26degC");
    found.trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("10s")}};
    found.pad_hours_from = TimeOfDay{600};
    found.pad_hours_to = TimeOfDay{1320};
    const auto day = day_of_visit(visit.file());
    ASSERT_TRUE(day.house);
    ASSERT_TRUE(day.found.plans);
    const auto& plan = day.found.plans->front();
    EXPECT_EQ(plan.pumping, Pumping::in_cycles);
    EXPECT_DOUBLE_EQ(in_seconds(plan.period), 600.0);
    EXPECT_DOUBLE_EQ(in_seconds(plan.base), 100.0);
    EXPECT_DOUBLE_EQ(in_seconds(*plan.ceiling), 200.0);
    EXPECT_DOUBLE_EQ(in_celsius(*plan.start_temperature), 26.0);
    EXPECT_DOUBLE_EQ(in_seconds(*plan.hours_to), 22.0 * 3600.0);
    ASSERT_EQ(plan.trim_rows.size(), 1u);
    EXPECT_FALSE(day.left.plans);
    EXPECT_THAT(texts_of(day.left.missing), Contains("Timer 1: settings left"));
    ASSERT_TRUE(day.advised.plans);
    ASSERT_TRUE(day.continuous.plans);
    EXPECT_EQ(day.continuous.plans->front().pumping, Pumping::while_called);
    EXPECT_EQ(day.continuous.plans->front().start_temperature, day.advised.plans->front().start_temperature);
    EXPECT_EQ(day.none.plans->front().pumping, Pumping::never);
    const auto weather = same_air(hot_dry_air(), 24);
    double cooling_found = 0.0;
    for (const auto* way : {&day.found, &day.advised, &day.continuous, &day.none}) {
        const auto result = simulate(*day.house, weather, *way->plans);
        ASSERT_TRUE(result) << result.error().text();
        EXPECT_LT(result.value().water.error(), 1e-9);
        cooling_found = way == &day.found ? result.value().totals.cooling : cooling_found;
    }
    EXPECT_GT(cooling_found, 0.0);
}

TEST(VisitDayTest, what_is_missing_is_named_and_nothing_is_computed) {
    VisitBuilder bare;
    const auto day = day_of_visit(bare.file());
    EXPECT_FALSE(day.house);
    EXPECT_THAT(texts_of(day.missing), Not(IsEmpty()));
    auto visit = timed_house();
    visit.file().house.fan_airflow.reset();
    EXPECT_THAT(texts_of(day_of_visit(visit.file()).missing), Contains(HasSubstr("the fans' airflow")));
}

TEST(VisitDayTest, what_is_entered_of_house_farm_and_pump_counts) {
    auto visit = timed_house();
    auto& file = visit.file();
    file.farm.water_price = Entered<WaterPrice>::of(from_si<WaterPrice>(2.5));
    file.farm.energy_price = Entered<EnergyPrice>::of(from_si<EnergyPrice>(0.18 / 3.6e6));
    file.house.birds = 21000.0;
    file.house.bird_mass = typed<Mass>("2.6kg");
    file.house.building_gain = Entered<Power>::of(from_si<Power>(40e3));
    file.house.sensor_lag = typed<Duration>("90s");
    file.house.pumps[0].power = Entered<Power>::of(from_si<Power>(750.0));
    file.house.fan_stages = {{typed<TemperatureDifference>("0K"), typed<VolumeFlow>("25m3/s")},
                             {typed<TemperatureDifference>("3K"), typed<VolumeFlow>("40m3/s")}};
    visit.found().target = typed<Temperature>("24degC");
    const auto day = day_of_visit(file);
    ASSERT_TRUE(day.house);
    EXPECT_DOUBLE_EQ(*day.house->prices.water, 2.5);
    EXPECT_NEAR(*day.house->prices.energy, 0.18, 1e-12);
    EXPECT_DOUBLE_EQ(day.house->flock.birds, 21000.0);
    EXPECT_DOUBLE_EQ(in_si(day.house->flock.mass), 2.6);
    EXPECT_DOUBLE_EQ(in_si(day.house->building_gain), 40e3);
    EXPECT_DOUBLE_EQ(in_seconds(day.house->sensor_lag), 90.0);
    EXPECT_DOUBLE_EQ(in_si(*day.house->pumps[0].power), 750.0);
    ASSERT_EQ(day.house->fan_stages.size(), 2u);
    EXPECT_DOUBLE_EQ(in_celsius(*day.house->target), 24.0);
    // Slower air is cooled more.
    ASSERT_EQ(day.house->banks[0].effectiveness.size(), 2u);
    EXPECT_GT(day.house->banks[0].effectiveness[0], day.house->banks[0].effectiveness[1]);
    EXPECT_THAT(texts_of(day.assumed), Not(Contains(HasSubstr("all fans"))));
}

TEST(VisitDayTest, fan_stages_without_a_target_are_not_used_and_that_is_said) {
    auto visit = timed_house();
    visit.file().house.fan_stages = {{typed<TemperatureDifference>("0K"), typed<VolumeFlow>("25m3/s")},
                                     {typed<TemperatureDifference>("3K"), typed<VolumeFlow>("40m3/s")}};
    const auto day = day_of_visit(visit.file());
    ASSERT_TRUE(day.house);
    EXPECT_EQ(day.house->fan_stages.size(), 1u);
    EXPECT_THAT(texts_of(day.assumed), Contains(HasSubstr("fan stages are not used")));
}

// A wet start tells no rates of its own: the far end did not dry in its pause, and what it evaporates is a
// known share of the water.
TEST(VisitDayTest, a_wet_start_takes_the_pause_that_it_proved) {
    ColumnRates rates{from_si<Rate>(1.0 / 100.0), from_si<Rate>(1.0 / 1500.0), 0.7};
    auto visit = timed_house();
    const auto advice = advise(visit.file());
    auto with_wet_start = advice;
    auto& question = *with_wet_start.timers[0].banks[0].question;
    const double dried = in_si(rates.drying) * (300.0 + 45.0);
    const double back = 45.0 + dried / (in_si(rates.wetting) - in_si(rates.drying));
    question.start = WetStart{300_s, seconds(back)};
    question.evaporated_share.reset();
    const auto day = visit_day(visit.file(), with_wet_start);
    ASSERT_TRUE(day.house);
    const auto& bank = day.house->banks[0];
    // b = c / 345 s, and a larger than b by what the drip's return says.
    EXPECT_NEAR(in_si(bank.wetting), 0.7 / 345.0 * 15.0, 1e-9);
    EXPECT_THAT(texts_of(day.assumed), Contains(HasSubstr("pause tested at the wet start")));
}

TEST(VisitDayTest, what_is_assumed_is_said) {
    const auto day = day_of_visit(timed_house().file());
    const auto assumed = texts_of(day.assumed);
    EXPECT_THAT(assumed, Contains(HasSubstr("lag of the house sensor")));
    EXPECT_THAT(assumed, Contains(HasSubstr("evenly")));
}

}  // namespace
}  // namespace wetfront::test
