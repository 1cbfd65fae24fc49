// SPDX-License-Identifier: Apache-2.0
#include "rules/pad_hours_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

using Check = std::vector<Finding> (*)(const RuleInputs&);

TimeOfDay at(const char* text) {
    return TimeOfDay::parse(text, "test").value();
}

// 36 degC less 20 K by the published shares meets a start of 28 degC at a share of 0.4: 0.15 / 0.17 of the
// way from 9 to 10 by the sun, and 0.01 / 0.11 from 19 to 20. By a clock an hour ahead: 10:52.9 and 20:05.5.
RuleCase with_hours(const char* from, const char* to) {
    RuleCase house;
    house.builder.both_weathers();
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("20K");
    house.found().start_temperature = typed<Temperature>("28degC");
    house.found().pad_hours_from = at(from);
    house.found().pad_hours_to = at(to);
    return house;
}

TEST(PadHoursEndInHeatTest, up_to_an_hour_is_too_close_to_call_more_is_harm) {
    EXPECT_THAT(with_hours("10:53", "20:05").findings(pad_hours_end_in_heat), IsEmpty());
    const auto close = with_hours("10:53", "20:04").findings(pad_hours_end_in_heat);
    ASSERT_THAT(close, SizeIs(1));
    EXPECT_EQ(close[0].severity, Severity::note);
    EXPECT_THAT(english(close[0].message), HasSubstr("too close to call"));
    EXPECT_EQ(with_hours("10:53", "19:05").findings(pad_hours_end_in_heat).at(0).severity, Severity::note);
    EXPECT_EQ(with_hours("10:53", "19:04").findings(pad_hours_end_in_heat).at(0).severity, Severity::harm);
}

// From 17:00, 16:00 by the sun with a share of 0.06, 34.8 degC, until 20:05.
TEST(PadHoursEndInHeatTest, it_tells_how_long_and_how_hot) {
    const auto findings = with_hours("10:53", "17:00").findings(pad_hours_end_in_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "without_pads"), 185.0 * 60.0, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "hottest_without_pads"), 273.15 + 34.8, 1e-9);
    EXPECT_GT(value_in(findings[0], "cooling_lost"), 2.0);
    EXPECT_EQ(english(findings[0].remedy), "Let pads run from 10:45 to 20:15.");
}

TEST(PadHoursEndInHeatTest, the_remedy_goes_to_the_farms_step_of_a_time_of_day) {
    auto house = with_hours("10:53", "17:00");
    house.advice.margins.clock_step = seconds(1800.0);
    EXPECT_EQ(english(house.findings(pad_hours_end_in_heat).at(0).remedy),
              "Let pads run from 10:30 to 20:30.");
    house.advice.margins.clock_step = seconds(60.0);
    EXPECT_EQ(english(house.findings(pad_hours_end_in_heat).at(0).remedy),
              "Let pads run from 10:52 to 20:06.");
}

// From 10:53 to 13:00; a minute before, 11.983 by the sun, the share is 0.13 + 0.1 / 60.
TEST(PadHoursBeginInHeatTest, the_same_in_the_morning) {
    EXPECT_THAT(with_hours("10:53", "20:05").findings(pad_hours_begin_in_heat), IsEmpty());
    EXPECT_EQ(with_hours("11:53", "20:05").findings(pad_hours_begin_in_heat).at(0).severity, Severity::note);
    EXPECT_EQ(with_hours("11:54", "20:05").findings(pad_hours_begin_in_heat).at(0).severity, Severity::harm);
    const auto findings = with_hours("13:00", "20:05").findings(pad_hours_begin_in_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "without_pads"), 127.0 * 60.0, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "hottest_without_pads"), 273.15 + 36.0 - 20.0 * (0.13 + 0.1 / 60.0),
                1e-6);
}

TEST(PadHoursEndInHeatTest, where_nights_are_hot_too_the_hours_are_to_be_left_open) {
    auto house = with_hours("08:00", "18:00");
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("5K");
    const auto findings = house.findings(pad_hours_end_in_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::harm);
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Leave the hours open"));
    EXPECT_THAT(house.findings(pad_hours_into_night), IsEmpty());
    EXPECT_THAT(house.findings(pad_hours_begin_early), IsEmpty());
}

TEST(PadHoursIntoNightTest, where_no_drying_was_timed_an_end_at_22_counts) {
    EXPECT_THAT(with_hours("10:53", "21:59").findings(pad_hours_into_night), IsEmpty());
    const auto findings = with_hours("10:53", "22:00").findings(pad_hours_into_night);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "extra_wet"), 115.0 * 60.0, 1e-9);
    EXPECT_EQ(english(findings[0].remedy), "End the pad hours at 20:15, so that pads dry once a day.");
}

RuleCase drying_in(double dry_out, const char* to) {
    auto house = with_hours("10:53", to);
    auto& asked = house.advised().banks.at(0).question.emplace();
    asked.fill = seconds(45.0);
    asked.start = DryStart{seconds(150.0), seconds(dry_out)};
    return house;
}

// Until 5 % of the face is wet a pad takes (1 + 0.3 / 0.7 * ln 20) = 2.3 times its dry-out time: a minute of
// it ends long before 22:00, 15 min (and longer in the mild evening) at 21:06 don't, two hours don't at all.
TEST(PadHoursIntoNightTest, the_slowest_pad_has_to_be_dry_by_22) {
    EXPECT_THAT(drying_in(60.0, "21:06").findings(pad_hours_into_night), IsEmpty());
    const auto late = drying_in(900.0, "21:06").findings(pad_hours_into_night);
    ASSERT_THAT(late, SizeIs(1));
    EXPECT_THAT(english(late[0].message), HasSubstr("the slowest pad is dry only at 22:"));
    const auto never = drying_in(7200.0, "21:06").findings(pad_hours_into_night);
    ASSERT_THAT(never, SizeIs(1));
    EXPECT_THAT(english(never[0].message), HasSubstr("they stay wet all night"));
}

TEST(PadHoursIntoNightTest, an_hour_after_pads_stop_helping_is_too_close_to_call) {
    EXPECT_THAT(drying_in(7200.0, "21:05").findings(pad_hours_into_night), IsEmpty());
    EXPECT_THAT(drying_in(7200.0, "21:06").findings(pad_hours_into_night), SizeIs(1));
}

TEST(PadHoursIntoNightTest, an_end_past_midnight_is_later_still) {
    EXPECT_NEAR(value_in(with_hours("10:53", "00:05").findings(pad_hours_into_night).at(0), "extra_wet"),
                240.0 * 60.0, 1e-9);
}

// 09:52 is 8.867 by the sun: 0.74 - 0.867 * 0.19 = 0.5753 of 20 K below 36 degC.
TEST(PadHoursBeginEarlyTest, more_than_an_hour_before_pads_help_is_waste) {
    EXPECT_THAT(with_hours("09:53", "20:05").findings(pad_hours_begin_early), IsEmpty());
    const auto findings = with_hours("09:52", "20:05").findings(pad_hours_begin_early);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "extra"), 61.0 * 60.0, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "outside"), 273.15 + 36.0 - 20.0 * (0.74 - 0.19 * 52.0 / 60.0), 1e-6);
}

TEST(PadHoursEmptyTest, hours_that_begin_and_end_at_one_time_are_a_note_and_nothing_else) {
    auto house = with_hours("09:00", "09:00");
    const auto findings = house.findings(pad_hours_empty);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    for (const Check check :
         {pad_hours_end_in_heat, pad_hours_begin_in_heat, pad_hours_into_night, pad_hours_begin_early}) {
        EXPECT_THAT(house.findings(check), IsEmpty());
    }
    EXPECT_THAT(with_hours("09:00", "09:01").findings(pad_hours_empty), IsEmpty());
    house.found().pad_hours_to.reset();
    EXPECT_THAT(house.findings(pad_hours_empty), IsEmpty());
}

// Hours that miss the heat and reach into the night, so that each rule would speak.
TEST(PadHoursTest, each_needs_start_both_hours_banks_and_the_daily_range_on_a_trimmed_timer) {
    const std::vector<std::pair<Check, std::pair<const char*, const char*>>> bad{
        {pad_hours_end_in_heat, {"10:53", "17:00"}},
        {pad_hours_begin_in_heat, {"13:00", "20:05"}},
        {pad_hours_into_night, {"10:53", "23:00"}},
        {pad_hours_begin_early, {"06:00", "20:05"}}};
    for (const auto& [check, hours] : bad) {
        const auto house = [&] { return with_hours(hours.first, hours.second); };
        EXPECT_THAT(house().findings(check), SizeIs(1));
        auto no_start = house();
        no_start.found().start_temperature.reset();
        EXPECT_THAT(no_start.findings(check), IsEmpty());
        auto no_from = house();
        no_from.found().pad_hours_from.reset();
        EXPECT_THAT(no_from.findings(check), IsEmpty());
        auto no_to = house();
        no_to.found().pad_hours_to.reset();
        EXPECT_THAT(no_to.findings(check), IsEmpty());
        auto no_range = house();
        no_range.builder.file().farm.design_daily_range.reset();
        EXPECT_THAT(no_range.findings(check), IsEmpty());
        auto no_banks = house();
        no_banks.house().banks.clear();
        EXPECT_THAT(no_banks.findings(check), IsEmpty());
        auto too_cool = house();
        too_cool.found().start_temperature = typed<Temperature>("40degC");
        EXPECT_THAT(too_cool.findings(check), IsEmpty());
        auto with_birds = house();
        with_birds.conditions().bird_age_days = 28.0;
        EXPECT_THAT(with_birds.findings(check), SizeIs(1));
        with_birds.conditions().bird_age_days = 27.9;
        EXPECT_THAT(with_birds.findings(check), IsEmpty());
        auto fixed = house();
        fixed.builder.timer(1).kind = TimerKind::fixed_interval;
        EXPECT_THAT(fixed.findings(check), IsEmpty());
    }
}

}  // namespace
}  // namespace wetfront::test
