// SPDX-License-Identifier: Apache-2.0
#include "rules/fill_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

// 18 m of 50 mm bore hold pi/4 0.05^2 18 = 35.34 L; at 60 L/min that is 35.34 s, and 5 L in the supply pipe
// are 5 s. Without outlets: usual 5 + 1.75 x 35.34 = 66.85 s, from 5 + 1.3 x 35.34 = 50.95 s to 5 + 2.2 x
// 35.34 = 82.75 s.
RuleCase plain_pipe(double fill, double expanded) {
    RuleCase house;
    house.builder.bank(1).header_bore = typed<Length>("50mm");
    house.pump().riser_volume = typed<Volume>("5L");
    house.flows("60L/min");
    house.timed(1).fill = RuleCase::reading(fill, expanded);
    return house;
}

TEST(FillRulesTest, a_fill_slower_than_the_slowest_expected_is_waste_with_the_seconds_lost) {
    auto house = plain_pipe(90.0, 5.0);
    const auto findings = house.findings(fill_slower_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "fill-slower-than-expected");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_TRUE(findings[0].timer.empty());
    EXPECT_NEAR(value_in(findings[0], "most_expected"), 82.75, 0.01);
    EXPECT_NEAR(value_in(findings[0], "later"), 90.0 - 66.85, 0.01);
    EXPECT_THAT(english(findings[0].message), HasSubstr("Water takes 90 s ± 5 s to the far end of Bank 1"));
    EXPECT_THAT(house.findings(fill_faster_than_expected), IsEmpty());
}

TEST(FillRulesTest, within_its_uncertainty_a_slow_fill_is_not_found) {
    EXPECT_THAT(plain_pipe(87.7, 5.0).findings(fill_slower_than_expected), IsEmpty());
    EXPECT_THAT(plain_pipe(87.8, 5.0).findings(fill_slower_than_expected), SizeIs(1));
}

TEST(FillRulesTest, where_the_supply_pipe_is_not_known_it_may_hold_the_difference) {
    auto house = plain_pipe(90.0, 5.0);
    house.pump().riser_volume.reset();
    const auto findings = house.findings(fill_slower_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("which is not entered"));
}

TEST(FillRulesTest, causes_depend_on_whether_the_flow_was_measured) {
    auto measured = plain_pipe(150.0, 5.0);
    EXPECT_THAT(causes_of(measured.findings(fill_slower_than_expected).at(0)).front(),
                HasSubstr("draws air"));
    // The same header, its flow worked out from the head at its inlet.
    RuleCase worked_out;
    auto& bank = worked_out.builder.bank(1);
    bank.header_bore = typed<Length>("50mm");
    bank.outlet_bore = typed<Length>("3mm");
    bank.outlet_spacing = typed<Length>("300mm");
    worked_out.pump().riser_volume = typed<Volume>("5L");
    worked_out.at(1).inlet_head = typed<Length>("1m");
    worked_out.timed(1).fill = RuleCase::reading(150.0, 5.0);
    const auto findings = worked_out.findings(fill_slower_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("filter"));
    EXPECT_THAT(findings[0].source, HasSubstr("filling front"));
    for (const auto& cause : findings[0].causes) {
        EXPECT_FALSE(cause.next_check.empty()) << english(cause.cause);
    }
}

TEST(FillRulesTest, a_fill_faster_than_the_fastest_expected_is_a_note) {
    auto house = plain_pipe(40.0, 5.0);
    const auto findings = house.findings(fill_faster_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "fill-faster-than-expected");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "least_expected"), 50.95, 0.01);
    EXPECT_NEAR(value_in(findings[0], "earlier"), 66.85 - 40.0, 0.01);
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("not empty"));
    EXPECT_THAT(causes_of(findings[0]), Contains("Clogged outlets."));
    EXPECT_THAT(house.findings(fill_slower_than_expected), IsEmpty());
    EXPECT_THAT(plain_pipe(45.9, 5.0).findings(fill_faster_than_expected), SizeIs(1));
    EXPECT_THAT(plain_pipe(46.0, 5.0).findings(fill_faster_than_expected), IsEmpty());
}

// No outlet, clogged or not, makes a pipe fill in less than its volume over its flow.
TEST(FillRulesTest, faster_than_the_pipe_alone_is_never_put_down_to_clogged_outlets) {
    auto house = plain_pipe(30.0, 2.0);
    house.builder.bank(1).outlet_bore = typed<Length>("3mm");
    house.builder.bank(1).outlet_spacing = typed<Length>("300mm");
    const auto findings = house.findings(fill_faster_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "least_expected"), 40.34, 0.01);
    EXPECT_THAT(causes_of(findings[0]), Not(Contains("Clogged outlets.")));
}

TEST(FillRulesTest, each_missing_input_silences_both) {
    for (const double fill : {20.0, 200.0}) {
        auto no_fill = plain_pipe(fill, 1.0);
        no_fill.timed(1).fill.reset();
        auto no_flow = plain_pipe(fill, 1.0);
        no_flow.conditions().flows.clear();
        auto no_bore = plain_pipe(fill, 1.0);
        no_bore.builder.bank(1).header_bore.reset();
        auto no_length = plain_pipe(fill, 1.0);
        no_length.builder.bank(1).length.reset();
        for (auto* house : {&no_fill, &no_flow, &no_bore, &no_length}) {
            EXPECT_THAT(house->findings(fill_slower_than_expected), IsEmpty());
            EXPECT_THAT(house->findings(fill_faster_than_expected), IsEmpty());
        }
    }
}

}  // namespace
}  // namespace wetfront::test
