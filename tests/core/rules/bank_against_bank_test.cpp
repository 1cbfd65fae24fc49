// SPDX-License-Identifier: Apache-2.0
#include "rules/bank_against_bank.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase wetting(double first, double second, double expanded = 4.0) {
    RuleCase house{2};
    house.timed(1).wetting = RuleCase::reading(first, expanded);
    house.timed(2).wetting = RuleCase::reading(second, expanded);
    return house;
}

// More than 30 % on the smaller: 130 s is not, 131 s is.
TEST(BankAgainstBankTest, a_bank_that_wets_more_than_thirty_percent_slower_on_the_same_pump_is_waste) {
    EXPECT_THAT(wetting(100.0, 130.0).findings(bank_wets_slower), IsEmpty());
    auto house = wetting(100.0, 131.0);
    const auto findings = house.findings(bank_wets_slower);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bank-wets-slower");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_NEAR(value_in(findings[0], "ratio"), 1.31, 1e-12);
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("Bank 2 takes 131 s to drip, Bank 1 on the same pump"));
}

// sqrt(25^2 + 25^2) = 35.4 s explain 35 s, not 36 s.
TEST(BankAgainstBankTest, what_the_uncertainties_explain_is_not_found) {
    EXPECT_THAT(wetting(100.0, 135.0, 25.0).findings(bank_wets_slower), IsEmpty());
    EXPECT_THAT(wetting(100.0, 136.0, 25.0).findings(bank_wets_slower), SizeIs(1));
}

// Clogged outlets let the header fill as soon as ever; a valve or air makes it late as well.
TEST(BankAgainstBankTest, the_fill_times_rank_the_causes_of_slow_wetting) {
    auto house = wetting(100.0, 150.0);
    house.timed(1).fill = RuleCase::reading(45.0, 3.0);
    house.timed(2).fill = RuleCase::reading(46.0, 3.0);
    EXPECT_EQ(causes_of(house.findings(bank_wets_slower).at(0)).front(), "Clogged outlets.");
    house.timed(2).fill = RuleCase::reading(70.0, 3.0);
    EXPECT_THAT(causes_of(house.findings(bank_wets_slower).at(0)).front(), HasSubstr("valve"));
    EXPECT_THAT(house.findings(bank_fills_slower), IsEmpty()) << "told in one finding";
}

TEST(BankAgainstBankTest, only_like_is_compared_with_like) {
    auto heights = wetting(100.0, 200.0);
    heights.builder.bank(2).height = typed<Length>("1.2m");
    EXPECT_THAT(heights.findings(bank_wets_slower), IsEmpty());
    auto thickness = wetting(100.0, 200.0);
    thickness.builder.bank(2).thickness.reset();
    EXPECT_THAT(thickness.findings(bank_wets_slower), IsEmpty());
    auto fans = wetting(100.0, 200.0);
    fans.timed(2).fans_ran_during_wet_through = true;
    EXPECT_THAT(fans.findings(bank_wets_slower), IsEmpty());
    auto outlets = wetting(100.0, 200.0);
    outlets.builder.bank(1).outlet_bore = typed<Length>("4mm");
    outlets.builder.bank(2).outlet_bore = typed<Length>("3mm");
    EXPECT_THAT(outlets.findings(bank_wets_slower), IsEmpty());
    auto unread = wetting(100.0, 200.0);
    unread.timed(1).wetting.reset();
    EXPECT_THAT(unread.findings(bank_wets_slower), IsEmpty());
    auto alone = wetting(100.0, 200.0);
    alone.builder.bank(2).pump = Id{"pump-other"};
    EXPECT_THAT(alone.findings(bank_wets_slower), IsEmpty());
}

// Twice the outlets' area: about twice the flow for each metre, and half the time is as it should be.
TEST(BankAgainstBankTest, wetting_is_scaled_by_the_flow_where_headers_are_described) {
    auto house = wetting(100.0, 200.0);
    house.flows("300L/min");
    for (const int bank : {1, 2}) {
        house.builder.bank(bank).header_bore = typed<Length>("100mm");
        house.builder.bank(bank).outlet_bore = typed<Length>("3mm");
        house.builder.bank(bank).outlet_spacing = typed<Length>(bank == 1 ? "150mm" : "300mm");
    }
    EXPECT_THAT(house.findings(bank_wets_slower), IsEmpty());
    house.timed(2).wetting = RuleCase::reading(100.0, 4.0);
    const auto findings = house.findings(bank_wets_slower);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].bank, Id{"bank-1"}) << "with twice the water it should have been sooner";
}

TEST(BankAgainstBankTest, a_header_that_fills_more_slowly_than_its_twin_is_told_with_the_seconds) {
    RuleCase house{2};
    house.timed(1).fill = RuleCase::reading(50.0, 3.0);
    house.timed(2).fill = RuleCase::reading(65.0, 3.0);
    EXPECT_THAT(house.findings(bank_fills_slower), IsEmpty());
    house.timed(2).fill = RuleCase::reading(66.0, 3.0);
    const auto findings = house.findings(bank_fills_slower);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bank-fills-slower");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_NEAR(value_in(findings[0], "later"), 16.0, 1e-12);
    house.builder.bank(2).length = typed<Length>("20m");
    EXPECT_THAT(house.findings(bank_fills_slower), IsEmpty());
    house.builder.bank(2).length.reset();
    EXPECT_THAT(house.findings(bank_fills_slower), IsEmpty());
}

// Two pumps, each with a bank of 18 m.
RuleCase two_pumps(const char* first, const char* second) {
    RuleCase house{2, 2};
    house.flows(first, 1);
    house.flows(second, 2);
    return house;
}

// 200 / 153 = 1.307, 200 / 154 = 1.299.
TEST(BankAgainstBankTest, a_bank_with_more_than_thirty_percent_less_water_is_found) {
    EXPECT_THAT(two_pumps("200L/min", "154L/min").findings(bank_gets_less_water), IsEmpty());
    auto house = two_pumps("200L/min", "153L/min");
    const auto findings = house.findings(bank_gets_less_water);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bank-gets-less-water");
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_EQ(findings[0].severity, Severity::note) << "each has its own timer";
    EXPECT_NEAR(value_in(findings[0], "less"), 1.0 - 153.0 / 200.0, 1e-12);
    EXPECT_EQ(causes_of(findings[0]).front(), "Clogged outlets.");
    house.builder.timer(1).pumps.push_back(Id{"pump-2"});
    EXPECT_EQ(house.findings(bank_gets_less_water).at(0).severity, Severity::waste);
}

TEST(BankAgainstBankTest, less_water_needs_two_measured_flows_and_lengths) {
    auto no_flow = two_pumps("200L/min", "100L/min");
    no_flow.conditions().flows.pop_back();
    EXPECT_THAT(no_flow.findings(bank_gets_less_water), IsEmpty());
    auto no_length = two_pumps("200L/min", "100L/min");
    no_length.builder.bank(1).length.reset();
    EXPECT_THAT(no_length.findings(bank_gets_less_water), IsEmpty());
}

// 100 L/min for 100 s over 18 m x 1.5 m x 0.15 m: 0.16667 m3 / 4.05 m3 = 4.115 % of the pad's volume; in 131
// s 5.391 %.
TEST(BankAgainstBankTest, a_pad_that_takes_up_less_than_its_like_is_a_note) {
    auto house = two_pumps("100L/min", "100L/min");
    house.timed(1).wetting = RuleCase::reading(131.0, 4.0);
    house.timed(2).wetting = RuleCase::reading(100.0, 4.0);
    const auto findings = house.findings(bank_takes_up_less);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bank-takes-up-less");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_NEAR(value_in(findings[0], "taken_up"), 0.04115, 1e-5);
    EXPECT_NEAR(value_in(findings[0], "taken_up_by_other"), 0.05391, 1e-5);
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("scaled pad"));
    house.timed(1).wetting = RuleCase::reading(129.9, 4.0);
    EXPECT_THAT(house.findings(bank_takes_up_less), IsEmpty());
}

// More time for less water is the same take-up: nothing is wrong with the pad.
TEST(BankAgainstBankTest, take_up_counts_water_and_not_time) {
    auto house = two_pumps("150L/min", "100L/min");
    house.timed(1).wetting = RuleCase::reading(100.0, 4.0);
    house.timed(2).wetting = RuleCase::reading(150.0, 4.0);
    EXPECT_THAT(house.findings(bank_takes_up_less), IsEmpty());
    EXPECT_THAT(house.findings(bank_gets_less_water), SizeIs(1));
    house.conditions().flows.clear();
    house.timed(2).wetting = RuleCase::reading(400.0, 4.0);
    EXPECT_THAT(house.findings(bank_takes_up_less), IsEmpty());
}

// 32 degC and 45 %: the wet bulb lies 9.5 K lower (ASHRAE 2017, by the program's own air), and a thermometer
// of +-0.5 K leaves 2 sqrt(2) 0.5 / sqrt(3) / 9.5 = 8.6 % of that between two banks.
RuleCase behind_pads(const char* first, const char* second) {
    RuleCase house{2};
    house.builder.both_weathers();
    house.at(1).behind_pad = typed<Temperature>(first);
    house.at(2).behind_pad = typed<Temperature>(second);
    return house;
}

TEST(BankAgainstBankTest, a_bank_that_cools_a_tenth_less_than_the_other_is_a_fault_with_the_kelvins) {
    EXPECT_THAT(behind_pads("25.0degC", "25.9degC").findings(bank_cools_less), IsEmpty());
    auto house = behind_pads("25.0degC", "26.1degC");
    const auto findings = house.findings(bank_cools_less);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bank-cools-less");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    // The same share of the 12 K of the design hour.
    const double less =
        value_in(findings[0], "effectiveness_of_other") - value_in(findings[0], "effectiveness");
    EXPECT_NEAR(value_in(findings[0], "cooling_lost"), 12.0 * less, 1e-9);
    EXPECT_GT(less, 0.1);
}

TEST(BankAgainstBankTest, cooling_is_compared_only_between_readings_of_their_own) {
    auto shared = behind_pads("25.0degC", "28degC");
    shared.at(1).behind_pad.reset();
    shared.conditions().behind_pad = typed<Temperature>("25degC");
    EXPECT_THAT(shared.findings(bank_cools_less), IsEmpty());
    auto no_weather = behind_pads("25.0degC", "28degC");
    no_weather.conditions().outside_humidity.reset();
    EXPECT_THAT(no_weather.findings(bank_cools_less), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
