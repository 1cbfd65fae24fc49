// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

TEST(FlowDisagreesWithTimingTest, two_shares_far_apart_are_a_note_with_both_and_what_to_measure_again) {
    RuleCase house{2};
    auto& bank = house.advised().banks.at(1);
    bank.share_from_timings = 0.08;
    bank.share_from_flow = 0.125;
    EXPECT_THAT(house.findings(flow_disagrees_with_timing), IsEmpty());
    bank.shares_disagree = true;
    const auto findings = house.findings(flow_disagrees_with_timing);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "flow-disagrees-with-timing");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_TRUE(findings[0].timer.empty()) << "it is about readings, not about settings";
    EXPECT_EQ(english(findings[0].message),
              "Of the water that goes to Bank 2, 8 % evaporates by the stopwatch but 12.5 % by flow and air. "
              "They are more than 30 % apart, so one of the two is wrong; the larger is used.");
    EXPECT_EQ(english(findings[0].remedy),
              "Measure the flow again by drawing down the sump with the make-up shut, and time again from a "
              "dry pad.");
    EXPECT_EQ(value_in(findings[0], "share_from_timings"), 0.08);
    EXPECT_EQ(value_in(findings[0], "share_from_flow"), 0.125);
}

TEST(FansMixedTest, wet_through_with_fans_now_on_now_off_is_a_note_on_that_bank) {
    RuleCase house{2};
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    house.timed(2).wet_through = RuleCase::reading(150.0, 6.0);
    EXPECT_THAT(house.findings(fans_mixed), IsEmpty());
    house.timed(2).fans_mixed = true;
    const auto findings = house.findings(fans_mixed);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "fans-mixed");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_THAT(english(findings[0].message), testing::HasSubstr("count as read with the fans off"));
    EXPECT_THAT(english(findings[0].remedy), testing::HasSubstr("fans in one state"));
}

}  // namespace
}  // namespace wetfront::test
