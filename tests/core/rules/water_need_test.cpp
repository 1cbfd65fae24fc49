// SPDX-License-Identifier: Apache-2.0
#include "rules/water_need.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

BankQuestion question(double fill, double wet_through, double dry_out) {
    BankQuestion asked;
    asked.fill = seconds(fill);
    asked.start = DryStart{seconds(wet_through), seconds(dry_out)};
    asked.uncertainty = seconds(0.0);
    return asked;
}

// Of what is supplied, 105 s / 1050 s = 0.1 evaporates: 30 s in 300 s, on top of 45 s of fill. With a margin
// of 1.25 that is 82.5 s.
RuleCase running(const char* on, const char* period = "300s") {
    RuleCase house;
    house.cycle(on, period);
    house.advised().banks.at(0).question = question(45.0, 150.0, 1050.0);
    return house;
}

TEST(BaseBelowNeedTest, below_what_evaporates_it_is_a_fault_up_to_the_margin_a_note) {
    EXPECT_EQ(running("74s").findings(base_below_need).at(0).severity, Severity::fault);
    EXPECT_EQ(running("75s").findings(base_below_need).at(0).severity, Severity::note);
    EXPECT_EQ(running("82s").findings(base_below_need).at(0).severity, Severity::note);
    EXPECT_THAT(running("82.5s").findings(base_below_need), IsEmpty());
}

// By the wetting column 0.7 times as much evaporates, 21 s of supply in a period. A run of 60 s brings 15 s
// and lacks 6 s; 0.7 * 105 s = 73.5 s of supply last 12.25 periods, 61.25 min.
TEST(BaseBelowNeedTest, it_tells_what_lacks_and_how_long_a_wet_pad_lasts) {
    const auto findings = running("60s").findings(base_below_need);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "lacks_per_period"), 6.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("a wet pad begins to dry there after 61.2 min"));
    EXPECT_EQ(english(findings[0].remedy), "Raise the on-time to 83 s in this period.");
}

// Where the column finds enough, 25 s for 21 s, another drying curve may ask for up to 30 s.
TEST(BaseBelowNeedTest, what_depends_on_how_a_pad_dries_is_said_so) {
    const auto findings = running("70s").findings(base_below_need);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_NEAR(value_in(findings[0], "may_lack_per_period"), 5.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("it stays wet for sure from 75 s on only."));
}

// 6 s of 21 s lack: 2/7 of 0.75 (assumed) of the 12 K between 36 degC and its wet bulb of 24.
TEST(BaseBelowNeedTest, it_tells_the_degrees_lost_where_a_weather_is_known) {
    auto house = running("60s");
    EXPECT_TRUE(std::isnan(value_in(house.findings(base_below_need).at(0), "cooling_lost")));
    house.builder.both_weathers();
    EXPECT_NEAR(value_in(house.findings(base_below_need).at(0), "cooling_lost"), 9.0 * 2.0 / 7.0, 1e-9);
}

TEST(BaseBelowNeedTest, more_evaporation_at_the_design_hour_asks_for_more) {
    auto house = running("90s");
    EXPECT_THAT(house.findings(base_below_need), IsEmpty());
    house.advised().banks.at(0).question->evaporation_ratio = 2.0;  // 45 s + 60 s
    EXPECT_NEAR(value_in(house.findings(base_below_need).at(0), "need"), 105.0, 1e-9);
}

TEST(BaseBelowNeedTest, trim_rows_that_take_time_off_are_counted) {
    auto house = running("90s");
    house.found().trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("-20s")}};
    const auto findings = house.findings(base_below_need);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(value_in(findings[0], "shortest_run"), 70.0);
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Take out the trim rows"));
}

// s = 20 / 200, so s / (1 + s) = 1/11 of the supply evaporates: 27.3 s in 300 s, and 45 s of fill.
TEST(BaseBelowNeedTest, a_wet_start_serves_too_but_tells_no_time_until_dry) {
    auto house = running("70s");
    auto& asked = *house.advised().banks.at(0).question;
    asked.start = WetStart{seconds(155.0), seconds(65.0)};
    const auto findings = house.findings(base_below_need);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "need"), 45.0 + 300.0 / 11.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("so that it dries out there."));
}

TEST(BaseBelowNeedTest, a_run_below_fill_is_for_base_below_fill) {
    EXPECT_THAT(running("44s").findings(base_below_need), IsEmpty());
    EXPECT_THAT(running("45s").findings(base_below_need), SizeIs(1));
}

TEST(BaseBelowNeedTest, nothing_without_period_on_time_or_readings_or_where_the_pump_never_rests) {
    auto no_period = running("60s");
    no_period.found().period.reset();
    EXPECT_THAT(no_period.findings(base_below_need), IsEmpty());
    auto no_on_time = running("60s");
    no_on_time.found().base_on_time.reset();
    EXPECT_THAT(no_on_time.findings(base_below_need), IsEmpty());
    auto no_question = running("60s");
    no_question.advised().banks.at(0).question.reset();
    EXPECT_THAT(no_question.findings(base_below_need), IsEmpty());
    EXPECT_THAT(running("60s", "60s").findings(base_below_need), IsEmpty());
}

// Drying 0.7 / t_dry over wetting 1 / 105 s is one at t_dry = 73.5 s.
TEST(DryingOutrunsSupplyTest, a_pad_that_dries_as_fast_as_it_is_supplied_is_a_fault_of_the_equipment) {
    RuleCase house;
    house.advised().banks.at(0).question = question(45.0, 150.0, 74.0);
    EXPECT_THAT(house.findings(drying_outruns_supply_of_bank), IsEmpty());
    house.advised().banks.at(0).question = question(45.0, 150.0, 73.4);
    EXPECT_THAT(house.findings(drying_outruns_supply_of_bank), SizeIs(1));
    // At half of that time it gets half; of 0.75 times 12 K half is lost.
    house.builder.both_weathers();
    house.advised().banks.at(0).question = question(45.0, 150.0, 36.75);
    const auto findings = house.findings(drying_outruns_supply_of_bank);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_TRUE(findings[0].timer.empty());
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "supplied_share"), 0.5, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "cooling_lost"), 4.5, 1e-9);
    EXPECT_FALSE(findings[0].causes.empty());
}

TEST(DryingOutrunsSupplyTest, without_readings_nothing_is_found) {
    RuleCase house;
    house.cycle("60s", "300s");
    EXPECT_THAT(house.findings(drying_outruns_supply_of_bank), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
