// SPDX-License-Identifier: Apache-2.0
#include "rules/single_settings.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TEST(PumpNeverRunsTest, a_base_of_nothing_is_a_fault_and_one_second_is_not) {
    RuleCase house;
    house.cycle("0s", "300s");
    const auto findings = house.findings(pump_never_runs);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_THAT(english(findings[0].message), HasSubstr("the pump never runs"));
    house.cycle("1s", "300s");
    EXPECT_THAT(house.findings(pump_never_runs), IsEmpty());
}

TEST(PumpNeverRunsTest, rows_that_add_time_make_a_first_run_after_a_review) {
    RuleCase house;
    house.cycle("0s", "300s");
    house.trims_to("120s");
    EXPECT_THAT(english(house.findings(pump_never_runs).at(0).message),
                HasSubstr("no run begins before trimming makes one."));
    house.found().review_interval = typed<Duration>("10min");
    EXPECT_THAT(english(house.findings(pump_never_runs).at(0).message), HasSubstr("10 min after pads"));
}

TEST(PumpNeverRunsTest, without_a_base_or_on_demand_nothing_is_found) {
    RuleCase no_base;
    no_base.found().period = typed<Duration>("300s");
    EXPECT_THAT(no_base.findings(pump_never_runs), IsEmpty());
    RuleCase on_demand{1, 1, TimerKind::on_demand};
    on_demand.cycle("0s", "300s");
    EXPECT_THAT(on_demand.findings(pump_never_runs), IsEmpty());
}

TEST(PumpNeverRunsTest, the_rule_about_fill_does_not_say_it_again) {
    RuleCase house;
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.cycle("0s", "300s");
    EXPECT_THAT(house.findings(base_below_fill), IsEmpty());
    house.cycle("1s", "300s");
    EXPECT_THAT(house.findings(base_below_fill), SizeIs(1));
}

// 150 s less 120 s in each of twelve runs an hour: 6 min.
TEST(CeilingBelowBaseTest, it_is_a_fault_with_what_an_hour_lacks_and_none_at_the_base) {
    RuleCase house;
    house.cycle("150s", "300s");
    house.found().on_time_ceiling = typed<Duration>("120s");
    const auto findings = house.findings(ceiling_below_base);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_THAT(english(findings[0].message), HasSubstr("30 s less water in every run, 6 min in an hour"));
    EXPECT_EQ(english(findings[0].remedy), "Raise the ceiling to the base, 150 s, or above.");
    house.found().on_time_ceiling = typed<Duration>("2.5min");
    EXPECT_THAT(house.findings(ceiling_below_base), IsEmpty());
}

TEST(CeilingBelowBaseTest, the_period_need_not_be_known_but_base_and_ceiling_must) {
    RuleCase house;
    house.cycle("150s", "300s");
    house.found().on_time_ceiling = typed<Duration>("120s");
    house.found().period.reset();
    EXPECT_THAT(house.findings(ceiling_below_base), SizeIs(1));
    house.found().base_on_time.reset();
    EXPECT_THAT(house.findings(ceiling_below_base), IsEmpty());
    house.cycle("150s", "300s");
    house.found().on_time_ceiling.reset();
    EXPECT_THAT(house.findings(ceiling_below_base), IsEmpty());
    RuleCase fixed{1, 1, TimerKind::fixed_interval};
    fixed.cycle("150s", "300s");
    fixed.found().on_time_ceiling = typed<Duration>("120s");
    EXPECT_THAT(fixed.findings(ceiling_below_base), IsEmpty());
}

// Twelve starts an hour save twelve times 59 s.
TEST(RestTooShortTest, a_rest_below_a_minute_is_waste_and_a_minute_is_not) {
    RuleCase house;
    house.cycle("241s", "300s");
    const auto findings = house.findings(rest_too_short);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(value_in(findings[0], "rest"), 59.0);
    EXPECT_THAT(english(findings[0].message), HasSubstr("started 12 times an hour to save 708 s"));
    house.cycle("240s", "300s");
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
}

TEST(RestTooShortTest, the_ceiling_counts_where_a_row_climbs_to_it) {
    RuleCase house;
    house.cycle("100s", "300s");
    house.trims_to("250s");
    EXPECT_THAT(house.findings(rest_too_short), SizeIs(1));
    house.trims_to("250s", "-5s");
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
    house.trims_to("250s");
    house.found().on_time_ceiling.reset();
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
}

TEST(RestTooShortTest, it_leaves_a_pump_without_rest_to_the_rule_about_that_and_needs_both_times) {
    RuleCase house;
    house.cycle("300s", "300s");
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
    house.cycle("280s", "300s");
    house.found().period.reset();
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
    house.cycle("280s", "300s");
    house.found().base_on_time.reset();
    EXPECT_THAT(house.findings(rest_too_short), IsEmpty());
}

// 150 s: 24 starts an hour instead of 12; filling 45 s twelve times more takes 9 min.
TEST(PeriodBelowUsualTest, below_five_minutes_it_is_waste_with_what_filling_costs) {
    RuleCase house;
    house.cycle("80s", "150s");
    EXPECT_THAT(english(house.findings(period_below_usual).at(0).message),
                HasSubstr("24 times an hour, 12 more than one of 5 min"));
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    const auto findings = house.findings(period_below_usual);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "filling_per_hour"), 540.0, 1e-9);
    house.cycle("80s", "5min");
    EXPECT_THAT(house.findings(period_below_usual), IsEmpty());
}

TEST(PeriodBelowUsualTest, nothing_without_a_period_or_where_the_pump_never_rests) {
    RuleCase house;
    house.found().base_on_time = typed<Duration>("80s");
    EXPECT_THAT(house.findings(period_below_usual), IsEmpty());
    house.cycle("150s", "150s");
    EXPECT_THAT(house.findings(period_below_usual), IsEmpty());
}

TEST(PeriodAboveUsualTest, above_ten_minutes_it_is_a_note_until_somebody_timed_how_long_pads_stay_wet) {
    RuleCase house;
    house.cycle("100s", "10min");
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
    house.cycle("100s", "601s");
    const auto findings = house.findings(period_above_usual);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_THAT(english(findings[0].message), HasSubstr("without water for 501 s"));
    house.timed(1).dry_out = RuleCase::reading(900.0, 60.0);
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
    house.timed(1).dry_out.reset();
    house.timed(1).wet_off = RuleCase::reading(200.0, 4.0);
    house.timed(1).wet_return = RuleCase::reading(60.0, 4.0);
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
}

TEST(PeriodAboveUsualTest, nothing_without_period_or_on_time_or_where_the_pump_never_rests) {
    RuleCase house;
    house.cycle("100s", "20min");
    house.found().base_on_time.reset();
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
    house.cycle("100s", "20min");
    house.found().period.reset();
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
    house.cycle("20min", "20min");
    EXPECT_THAT(house.findings(period_above_usual), IsEmpty());
}

TEST(SettingOffResolutionTest, a_time_between_two_steps_is_a_note_with_the_next_longer) {
    RuleCase house;
    house.builder.timer(1).resolution = typed<Duration>("5s");
    house.builder.timer(1).period_resolution = typed<Duration>("1min");
    house.cycle("85s", "5min");
    EXPECT_THAT(house.findings(setting_off_resolution), IsEmpty());
    house.cycle("86s", "330s");
    const auto findings = house.findings(setting_off_resolution);
    ASSERT_THAT(findings, SizeIs(2));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(value_in(findings[0], "period"), 330.0);
    EXPECT_EQ(value_in(findings[1], "base_on_time"), 86.0);
    EXPECT_THAT(english(findings[1].remedy), HasSubstr("90 s is the next longer"));
}

TEST(SettingOffResolutionTest, ceiling_rows_and_rinse_count_on_a_trimmed_timer_only) {
    for (const auto kind : {TimerKind::trimmed, TimerKind::fixed_interval, TimerKind::on_demand}) {
        RuleCase house{1, 1, kind};
        house.builder.timer(1).resolution = typed<Duration>("5s");
        house.trims_to("121s", "7s");
        house.found().rinse_length = typed<Duration>("301s");
        EXPECT_THAT(house.findings(setting_off_resolution), SizeIs(kind == TimerKind::trimmed ? 3 : 0));
    }
}

TEST(SettingOffResolutionTest, nothing_where_the_step_is_not_known) {
    RuleCase house;
    house.cycle("86.5s", "301s");
    EXPECT_THAT(house.findings(setting_off_resolution), IsEmpty());
}

// 2, 7, 12, ... s.
TEST(SettingOffResolutionTest, steps_count_from_the_least_that_a_described_controller_holds) {
    RuleCase house;
    auto described = generic_template(TimerKind::trimmed);
    for (auto& setting : described.settings) {
        if (setting.setting == TemplateKey::base_on_time) {
            setting.least = 2.0;
        }
    }
    choose_controller(house.builder.timer(1), described);
    for (const char* held : {"2s", "7s", "12s"}) {
        house.cycle(held, "5min");
        EXPECT_THAT(house.findings(setting_off_resolution), IsEmpty()) << held;
    }
    for (const char* off : {"8s", "10s"}) {
        house.cycle(off, "5min");
        const auto findings = house.findings(setting_off_resolution);
        ASSERT_THAT(findings, SizeIs(1)) << off;
        EXPECT_THAT(english(findings[0].message), HasSubstr("steps of 5 s"));
        EXPECT_THAT(english(findings[0].remedy), HasSubstr("12 s is the next longer")) << off;
    }
    house.cycle("1s", "5min");
    EXPECT_THAT(house.findings(setting_off_resolution), IsEmpty()) << "below what it holds";
}

// 200 s in every 300 s.
TEST(RestsAgainstIntentTest, a_rest_where_none_is_wanted_is_a_note) {
    RuleCase house;
    house.cycle("100s", "300s");
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
    house.found().continuous_intended = false;
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
    house.found().continuous_intended = true;
    const auto findings = house.findings(rests_against_intent);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("lets it rest 40 min in every hour"));
    house.cycle("300s", "300s");
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
    house.found().period.reset();
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
