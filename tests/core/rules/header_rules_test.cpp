// SPDX-License-Identifier: Apache-2.0
#include "rules/header_rules.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// 60 outlets of 5 mm in 18 m of 50 mm bore. Under half the bore as head each gives 0.6 x pi/4 0.005^2 x
// sqrt(2 g 0.025) = 8.25e-6 m3/s, together 29.7 L/min: less does not fill the header.
RuleCase wide_outlets(const char* flow) {
    RuleCase house;
    auto& bank = house.builder.bank(1);
    bank.header_bore = typed<Length>("50mm");
    bank.outlet_bore = typed<Length>("5mm");
    bank.outlet_spacing = typed<Length>("300mm");
    house.flows(flow);
    return house;
}

TEST(HeaderRulesTest, a_flow_that_the_first_outlets_take_is_a_fault) {
    auto house = wide_outlets("20L/min");
    const auto findings = house.findings(pump_cannot_fill_header);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pump-cannot-fill-header");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "flow"), 20.0 / 60000.0, 1e-12);
    EXPECT_THAT(findings[0].causes, SizeIs(6));
    EXPECT_THAT(wide_outlets("35L/min").findings(pump_cannot_fill_header), IsEmpty());
}

TEST(HeaderRulesTest, water_that_was_timed_at_the_far_end_makes_the_description_wrong_instead) {
    auto house = wide_outlets("20L/min");
    house.timed(1).fill = RuleCase::reading(50.0, 2.0);
    const auto findings = house.findings(pump_cannot_fill_header);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("yet water was timed there after 50 s"));
}

TEST(HeaderRulesTest, outlets_that_a_rising_header_leaves_dry_are_counted) {
    auto house = wide_outlets("20L/min");
    house.builder.bank(1).header_rise = typed<Length>("200mm");
    const auto findings = house.findings(header_starves_outlets);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "header-starves-outlets");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_GT(value_in(findings[0], "starved_share"), 0.0);
    EXPECT_LT(value_in(findings[0], "starved_share"), 1.0);
    EXPECT_THAT(english(findings[0].message), HasSubstr("of the 60 outlets of Bank 1 get no water"));
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("rises or sags"));
    EXPECT_THAT(house.findings(pump_cannot_fill_header), IsEmpty()) << "the worse of the two is told";
    house.builder.bank(1).header_rise = typed<Length>("0mm");
    EXPECT_THAT(house.findings(header_starves_outlets), IsEmpty());
}

TEST(HeaderRulesTest, without_flow_or_description_nothing_is_said_of_the_header) {
    auto no_flow = wide_outlets("20L/min");
    no_flow.conditions().flows.clear();
    auto no_outlets = wide_outlets("20L/min");
    no_outlets.builder.bank(1).outlet_bore.reset();
    for (auto* house : {&no_flow, &no_outlets}) {
        house->builder.bank(1).header_rise = typed<Length>("200mm");
        EXPECT_THAT(house->findings(pump_cannot_fill_header), IsEmpty());
        EXPECT_THAT(house->findings(header_starves_outlets), IsEmpty());
        EXPECT_THAT(house->findings(header_uneven), IsEmpty());
        EXPECT_THAT(house->findings(outlets_clogged), IsEmpty());
        EXPECT_THAT(house->findings(outlets_pass_too_much), IsEmpty());
    }
}

HeaderFlow flow_of(std::initializer_list<double> outlets, double inlet_head = 1.0) {
    HeaderFlow flow;
    double sum = 0.0;
    for (const double outlet : outlets) {
        flow.outlets.push_back(from_si<VolumeFlow>(outlet));
        sum += outlet;
    }
    flow.flow = from_si<VolumeFlow>(sum);
    flow.lowest = from_si<VolumeFlow>(std::ranges::min(outlets));
    flow.highest = from_si<VolumeFlow>(std::ranges::max(outlets));
    flow.inlet_head = from_si<Length>(inlet_head);
    return flow;
}

RuleCase stated_header(HeaderFlow plain, HeaderFlow recovered) {
    RuleCase house;
    auto& water = house.advice.water.banks.emplace_back();
    water.bank = Id{"bank-1"};
    water.flow = plain.flow;
    water.flow_measured = true;
    water.plain = std::move(plain);
    water.recovered = std::move(recovered);
    return house;
}

TEST(HeaderRulesTest, an_outlet_below_nine_tenths_of_the_strongest_is_a_note_if_both_recoveries_say_so) {
    const auto found = [](double plain, double recovered) {
        return stated_header(flow_of({1e-5, 1e-5, plain}), flow_of({1e-5, 1e-5, recovered}))
            .findings_as_stated(header_uneven);
    };
    EXPECT_THAT(found(0.89e-5, 0.901e-5), IsEmpty());
    EXPECT_THAT(found(0.901e-5, 0.89e-5), IsEmpty());
    const auto findings = found(0.89e-5, 0.88e-5);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "header-uneven");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "variation"), 0.11, 1e-12);
    // Mean of 1, 1 and 0.89 over 0.89.
    EXPECT_NEAR(value_in(findings[0], "more_pumping"), 2.89 / 3.0 / 0.89 - 1.0, 1e-12);
    EXPECT_THAT(findings[0].source, HasSubstr("University of Minnesota"));
}

TEST(HeaderRulesTest, a_narrow_header_is_uneven_and_a_wide_one_is_not) {
    const auto with_bore = [](const char* bore) {
        RuleCase house;
        auto& bank = house.builder.bank(1);
        bank.header_bore = typed<Length>(bore);
        bank.outlet_bore = typed<Length>("3mm");
        bank.outlet_spacing = typed<Length>("300mm");
        house.flows("60L/min");
        return house.findings(header_uneven);
    };
    EXPECT_THAT(with_bore("25mm"), SizeIs(1));
    EXPECT_THAT(with_bore("75mm"), IsEmpty());
}

// Head goes with the square of flow over area: 1 / 0.8^2 = 1.5625 times the head for 0.8 of the area.
TEST(HeaderRulesTest, more_head_than_clean_outlets_ask_for_is_waste) {
    auto house = stated_header(flow_of({1e-5}, 1.0), flow_of({1e-5}, 0.9));
    house.at(1).inlet_head = typed<Length>("1.5625m");
    EXPECT_THAT(house.findings_as_stated(outlets_clogged), IsEmpty());
    house.at(1).inlet_head = typed<Length>("4m");
    const auto findings = house.findings_as_stated(outlets_clogged);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "outlets-clogged");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "open_share"), 0.5, 1e-12);
    EXPECT_THAT(english(findings[0].message), HasSubstr("its outlets pass about 50 %"));
    EXPECT_EQ(causes_of(findings[0]).front(), "Clogged outlets.");
    EXPECT_THAT(house.findings_as_stated(outlets_pass_too_much), IsEmpty());
}

TEST(HeaderRulesTest, less_head_than_the_outlets_ask_for_is_a_note) {
    auto house = stated_header(flow_of({1e-5}, 1.0), flow_of({1e-5}, 0.9));
    house.at(1).inlet_head = typed<Length>("0.641m");
    EXPECT_THAT(house.findings_as_stated(outlets_pass_too_much), IsEmpty());
    house.at(1).inlet_head = typed<Length>("0.25m");
    const auto findings = house.findings_as_stated(outlets_pass_too_much);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "outlets-pass-too-much");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "open_share"), 2.0, 1e-12);
    EXPECT_THAT(house.findings_as_stated(outlets_clogged), IsEmpty());
}

TEST(HeaderRulesTest, a_head_says_nothing_where_the_flow_was_worked_out_or_no_head_was_read) {
    auto house = stated_header(flow_of({1e-5}, 1.0), flow_of({1e-5}, 0.9));
    EXPECT_THAT(house.findings_as_stated(outlets_clogged), IsEmpty());
    house.at(1).inlet_head = typed<Length>("4m");
    house.advice.water.banks.front().flow_measured = false;
    EXPECT_THAT(house.findings_as_stated(outlets_clogged), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
