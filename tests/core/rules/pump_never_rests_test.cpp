// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TEST(PumpNeverRestsTest, an_on_time_that_fills_the_period_is_found) {
    RuleCase house;
    house.cycle("300s", "300s");
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pump-never-rests");
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_TRUE(findings[0].bank.empty());
    EXPECT_EQ(value_in(findings[0], "period"), 300.0);
    EXPECT_EQ(value_in(findings[0], "base_on_time"), 300.0);
}

TEST(PumpNeverRestsTest, an_on_time_one_second_short_of_the_period_rests) {
    RuleCase house;
    house.cycle("299s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(PumpNeverRestsTest, the_limit_holds_across_units) {
    RuleCase house;
    house.cycle("5min", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), SizeIs(1));
}

TEST(PumpNeverRestsTest, a_ceiling_that_trimming_reaches_is_found_at_the_period_and_not_a_second_below) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.trims_to("300s");
    const auto at = house.findings(pump_never_rests);
    ASSERT_THAT(at, SizeIs(1));
    EXPECT_THAT(english(at[0].message),
                HasSubstr("Trimming can lengthen a run to 5 min in a period of 5 min"));
    house.trims_to("299s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(PumpNeverRestsTest, a_ceiling_that_no_row_climbs_to_is_harmless) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.trims_to("300s", "-15s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
    house.found().trim_rows.clear();
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(PumpNeverRestsTest, a_fixed_interval_timer_has_no_ceiling) {
    RuleCase house{1, 1, TimerKind::fixed_interval};
    house.cycle("90s", "300s");
    house.trims_to("300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
    house.cycle("300s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), SizeIs(1));
}

TEST(PumpNeverRestsTest, without_period_or_on_time_nothing_is_found) {
    RuleCase house;
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
    house.found().base_on_time = typed<Duration>("300s");
    house.trims_to("300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
    house.found().base_on_time.reset();
    house.found().period = typed<Duration>("300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(PumpNeverRestsTest, it_is_a_note_where_running_without_rest_is_wanted) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    house.found().continuous_intended = true;
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(english(findings[0].message),
              "A run of 5 min fills the whole period of 5 min, so the pump never rests; that is what "
              "is wanted "
              "here.");
    EXPECT_EQ(english(findings[0].remedy), "Nothing to change.");
}

TEST(PumpNeverRestsTest, it_is_a_note_where_no_cycle_fits_even_if_one_was_wanted) {
    for (const std::optional<bool> intended : {std::optional<bool>{}, std::optional{false}}) {
        RuleCase house;
        house.cycle("300s", "300s");
        house.advise_continuous();
        house.found().continuous_intended = intended;
        const auto findings = house.findings(pump_never_rests);
        ASSERT_THAT(findings, SizeIs(1));
        EXPECT_EQ(findings[0].severity, Severity::note) << "intended stated: " << intended.has_value();
        EXPECT_THAT(english(findings[0].message), HasSubstr("running without rest is what is advised"));
    }
}

TEST(PumpNeverRestsTest, it_is_a_note_where_readings_are_missing_and_says_so) {
    RuleCase house;
    house.cycle("300s", "300s");
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("not known, because readings are missing"));
}

// 85 s in 300 s: the pump rests for 215 of every 300 s, that is 43 min of the hour.
TEST(PumpNeverRestsTest, it_is_waste_where_a_cycle_cools_the_same_and_says_what_that_saves) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "pumping_saved_per_hour"), 43.0 * 60.0, 1e-6);
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("a cycle of 85 s in 5 min cools the same with 43 min less pumping in every hour."));
    EXPECT_EQ(english(findings[0].remedy), "Set the on-time to 85 s and the period to 5 min.");
}

// At 200 L/min, 43 min of the hour are 8600 L.
TEST(PumpNeverRestsTest, the_water_not_pumped_is_told_where_the_flow_is_measured) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    house.builder.file().visit.conditions.flows = {{Id{"pump-1"}, typed<VolumeFlow>("200L/min")}};
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "water_not_pumped_per_hour"), 8.6, 1e-9);
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("43 min less pumping in every hour, 8600 L of water."));
}

TEST(PumpNeverRestsTest, the_flow_of_one_of_two_pumps_tells_no_water) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.advise_cycle(85.0, 300.0);
    house.builder.timer(1).pumps.push_back(Id{"pump-other"});
    house.builder.file().visit.conditions.flows = {{Id{"pump-1"}, typed<VolumeFlow>("200L/min")}};
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_TRUE(std::isnan(value_in(findings[0], "water_not_pumped_per_hour")));
}

TEST(PumpNeverRestsTest, it_is_a_fault_where_a_cycle_was_wanted) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.found().continuous_intended = false;
    const auto unknown = house.findings(pump_never_rests);
    ASSERT_THAT(unknown, SizeIs(1));
    EXPECT_EQ(unknown[0].severity, Severity::fault);
    EXPECT_THAT(english(unknown[0].message), HasSubstr("a cycle was wanted here."));
    house.advise_cycle(85.0, 300.0);
    const auto known = house.findings(pump_never_rests);
    ASSERT_THAT(known, SizeIs(1));
    EXPECT_EQ(known[0].severity, Severity::fault);
}

TEST(PumpNeverRestsTest, the_remedy_names_the_ceiling_where_one_is_advised) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.trims_to("300s");
    house.advise_cycle(85.0, 300.0);
    house.advised().cycle.push_back({Setting::on_time_ceiling, any(seconds(150.0)), {}});
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(english(findings[0].remedy),
              "Set the base on-time to 85 s, the on-time ceiling to 150 s and the period to 5 min.");
}

TEST(PumpNeverRestsTest, a_timer_on_demand_never_rests_while_called_for) {
    RuleCase house{1, 1, TimerKind::on_demand};
    house.cycle("60s", "300s");
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(english(findings[0].remedy), "Nothing to change.");
    house.found().continuous_intended = false;
    const auto wanted = house.findings(pump_never_rests);
    ASSERT_THAT(wanted, SizeIs(1));
    EXPECT_EQ(wanted[0].severity, Severity::fault);
    EXPECT_EQ(english(wanted[0].remedy), "Use a timer that holds an on-time and a period.");
}

TEST(PumpNeverRestsTest, each_timer_is_judged_alone_in_the_order_of_the_house) {
    RuleCase house{3, 3};
    house.cycle("300s", "300s", 3);
    house.cycle("100s", "300s", 2);
    house.cycle("600s", "300s", 1);
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(2));
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_EQ(findings[1].timer, Id{"timer-3"});
}

}  // namespace
}  // namespace wetfront::test
