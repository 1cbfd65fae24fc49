// SPDX-License-Identifier: Apache-2.0
#include "rules/rinse_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase rinsing(const char* length) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.found().rinse_length = typed<Duration>(length);
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    return house;
}

TEST(RinseBelowWetThroughTest, a_rinse_shorter_than_the_reading_is_waste) {
    EXPECT_THAT(rinsing("150s").findings(rinse_below_wet_through), IsEmpty());
    const auto findings = rinsing("149s").findings(rinse_below_wet_through);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_THAT(english(findings[0].message), HasSubstr("ends 1 s before the far end of Bank 1"));
    EXPECT_EQ(english(findings[0].remedy), "Rinse for at least 150 s.");
}

TEST(RinseBelowWetThroughTest, fans_at_the_design_hour_make_it_longer) {
    auto house = rinsing("170s");
    house.advised().banks.at(0).rinse = RinseNeed{seconds(180.0), seconds(60.0), false};
    EXPECT_EQ(value_in(house.findings(rinse_below_wet_through).at(0), "from_dry"), 180.0);
    house.found().rinse_length = typed<Duration>("180s");
    EXPECT_THAT(house.findings(rinse_below_wet_through), IsEmpty());
}

TEST(RinseBelowWetThroughTest, a_length_of_nothing_counts_where_an_hour_is_set) {
    auto house = rinsing("0s");
    EXPECT_THAT(house.findings(rinse_below_wet_through), IsEmpty());
    house.found().rinse_at = TimeOfDay{9 * 60};
    EXPECT_THAT(house.findings(rinse_below_wet_through), SizeIs(1));
}

TEST(RinseBelowWetThroughTest, nothing_without_length_or_reading_or_where_the_pump_never_rests) {
    auto no_length = rinsing("60s");
    no_length.found().rinse_length.reset();
    EXPECT_THAT(no_length.findings(rinse_below_wet_through), IsEmpty());
    auto no_reading = rinsing("60s");
    no_reading.timed(1).wet_through.reset();
    EXPECT_THAT(no_reading.findings(rinse_below_wet_through), IsEmpty());
    auto continuous = rinsing("60s");
    continuous.cycle("300s", "300s");
    EXPECT_THAT(continuous.findings(rinse_below_wet_through), IsEmpty());
    auto fixed = rinsing("60s");
    fixed.builder.timer(1).kind = TimerKind::fixed_interval;
    EXPECT_THAT(fixed.findings(rinse_below_wet_through), IsEmpty());
}

RuleCase rinsing_at(int minute) {
    RuleCase house;
    house.found().rinse_at = TimeOfDay{minute};
    house.found().pad_hours_from = TimeOfDay{10 * 60};
    house.found().pad_hours_to = TimeOfDay{20 * 60};
    return house;
}

TEST(RinseOutsidePadHoursTest, it_may_begin_with_the_pad_hours_and_not_a_minute_sooner) {
    EXPECT_THAT(rinsing_at(10 * 60).findings(rinse_outside_pad_hours), IsEmpty());
    EXPECT_THAT(rinsing_at(20 * 60 - 1).findings(rinse_outside_pad_hours), IsEmpty());
    EXPECT_THAT(rinsing_at(20 * 60).findings(rinse_outside_pad_hours), SizeIs(1));
    const auto findings = rinsing_at(7 * 60).findings(rinse_outside_pad_hours);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(value_in(findings[0], "before_pad_hours"), 3.0 * 3600.0);
}

TEST(RinseOutsidePadHoursTest, hours_may_go_past_midnight) {
    auto house = rinsing_at(30);
    house.found().pad_hours_to = TimeOfDay{60};
    EXPECT_THAT(house.findings(rinse_outside_pad_hours), IsEmpty());
    house.found().rinse_at = TimeOfDay{60};
    EXPECT_THAT(house.findings(rinse_outside_pad_hours), SizeIs(1));
}

TEST(RinseOutsidePadHoursTest, all_three_times_are_needed) {
    auto no_rinse = rinsing_at(7 * 60);
    no_rinse.found().rinse_at.reset();
    EXPECT_THAT(no_rinse.findings(rinse_outside_pad_hours), IsEmpty());
    auto no_from = rinsing_at(7 * 60);
    no_from.found().pad_hours_from.reset();
    EXPECT_THAT(no_from.findings(rinse_outside_pad_hours), IsEmpty());
    auto no_to = rinsing_at(7 * 60);
    no_to.found().pad_hours_to.reset();
    EXPECT_THAT(no_to.findings(rinse_outside_pad_hours), IsEmpty());
}

TEST(RinseOutsidePadHoursTest, a_rinse_that_pad_hours_keep_off_does_not_stand_in_for_a_ceiling) {
    auto house = rinsing("300s");
    house.found().on_time_ceiling = typed<Duration>("120s");
    EXPECT_EQ(house.findings(ceiling_below_wet_through).at(0).severity, Severity::note);
    house.found().rinse_at = TimeOfDay{7 * 60};
    house.found().pad_hours_from = TimeOfDay{10 * 60};
    house.found().pad_hours_to = TimeOfDay{20 * 60};
    EXPECT_EQ(house.findings(ceiling_below_wet_through).at(0).severity, Severity::fault);
}

// 36 degC less 10 K: by the published shares it is 36 - 0.74 * 10 = 28.6 degC at 8 by the sun, 9 by a clock
// that is an hour ahead, and 36 - 0.91 * 10 = 26.9 degC an hour before.
RuleCase rinsing_on_the_design_day(int minute) {
    RuleCase house;
    house.builder.both_weathers();
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("10K");
    house.found().rinse_at = TimeOfDay{minute};
    house.found().start_temperature = typed<Temperature>("28degC");
    return house;
}

TEST(RinseBeforeHeatTest, cooler_than_the_start_on_the_design_day_is_waste) {
    EXPECT_THAT(rinsing_on_the_design_day(9 * 60).findings(rinse_before_heat), IsEmpty());
    const auto findings = rinsing_on_the_design_day(8 * 60).findings(rinse_before_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "below"), 1.1, 1e-9);
}

TEST(RinseBeforeHeatTest, rinse_hour_start_and_daily_range_are_needed) {
    auto no_hour = rinsing_on_the_design_day(8 * 60);
    no_hour.found().rinse_at.reset();
    EXPECT_THAT(no_hour.findings(rinse_before_heat), IsEmpty());
    auto no_start = rinsing_on_the_design_day(8 * 60);
    no_start.found().start_temperature.reset();
    EXPECT_THAT(no_start.findings(rinse_before_heat), IsEmpty());
    auto no_range = rinsing_on_the_design_day(8 * 60);
    no_range.builder.file().farm.design_daily_range.reset();
    EXPECT_THAT(no_range.findings(rinse_before_heat), IsEmpty());
}

TEST(RinseOnYoungBirdsTest, harm_with_chicks_a_fault_until_older_nothing_then) {
    auto house = rinsing("300s");
    house.found().rinse_at = TimeOfDay{9 * 60};
    EXPECT_THAT(house.findings(rinse_on_young_birds), IsEmpty());
    house.conditions().bird_age_days = 13.0;
    EXPECT_EQ(house.findings(rinse_on_young_birds).at(0).severity, Severity::harm);
    house.conditions().bird_age_days = 14.0;
    EXPECT_EQ(house.findings(rinse_on_young_birds).at(0).severity, Severity::fault);
    house.conditions().bird_age_days = 28.0;
    EXPECT_THAT(house.findings(rinse_on_young_birds), IsEmpty());
}

TEST(RinseOnYoungBirdsTest, a_rinse_without_an_hour_or_a_length_is_none) {
    auto house = rinsing("0s");
    house.conditions().bird_age_days = 13.0;
    house.found().rinse_at = TimeOfDay{9 * 60};
    EXPECT_THAT(house.findings(rinse_on_young_birds), IsEmpty());
    house.found().rinse_length.reset();
    EXPECT_THAT(house.findings(rinse_on_young_birds), IsEmpty());
    house.found().rinse_length = typed<Duration>("300s");
    house.found().rinse_at.reset();
    EXPECT_THAT(house.findings(rinse_on_young_birds), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
