// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "rule_case.h"
#include "rules/bank_against_bank.h"
#include "rules/pad_rules.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// 32 degC and 45 %, 1.5 m/s through 150 mm: about three quarters of 9.5 K are to be expected. Design hour: 36
// degC over a wet bulb of 24 degC, 12 K.
RuleCase behind(const char* temperature, int banks = 1) {
    RuleCase house{banks};
    house.builder.both_weathers();
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    house.conditions().behind_pad = typed<Temperature>(temperature);
    return house;
}

TEST(PadCoolsLessTest, clearly_less_than_published_is_a_fault_with_the_kelvins_of_the_design_hour) {
    EXPECT_THAT(behind("25.5degC").findings(pad_cools_less_than_expected), IsEmpty());
    auto house = behind("28degC");
    const auto findings = house.findings(pad_cools_less_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pad-cools-less-than-expected");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    const double less =
        value_in(findings[0], "expected_effectiveness") - value_in(findings[0], "effectiveness");
    EXPECT_GT(less, value_in(findings[0], "difference_uncertainty"));
    EXPECT_NEAR(value_in(findings[0], "cooling_lost"), 12.0 * less, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("at the design hour"));
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("Dry streaks"));
}

TEST(PadCoolsLessTest, without_a_design_day_the_weather_of_the_readings_tells_the_kelvins) {
    auto house = behind("28degC");
    house.builder.file().farm.design_wet_bulb.reset();
    EXPECT_THAT(english(house.findings(pad_cools_less_than_expected).at(0).message),
                HasSubstr("in the weather of the readings"));
}

TEST(PadCoolsLessTest, one_reading_for_all_banks_is_judged_once) {
    auto house = behind("28degC", 3);
    const auto findings = house.findings(pad_cools_less_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_TRUE(findings[0].bank.empty());
    house.at(2).behind_pad = typed<Temperature>("28.5degC");
    const auto two = house.findings(pad_cools_less_than_expected);
    ASSERT_THAT(two, SizeIs(2));
    EXPECT_EQ(two[1].bank, Id{"bank-2"});
    EXPECT_THAT(house.findings(bank_cools_less), IsEmpty());
}

// Thermometers good to 3 K leave some 40 % of the depression open.
TEST(PadCoolsLessTest, a_large_shortfall_that_is_too_close_to_call_names_the_instrument_that_limits) {
    auto house = behind("28degC");
    house.conditions().thermometer_accuracy = typed<TemperatureDifference>("3K");
    const auto findings = house.findings(pad_cools_less_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("comes from the temperature"));
    house.conditions().behind_pad = typed<Temperature>("26degC");
    EXPECT_THAT(house.findings(pad_cools_less_than_expected), IsEmpty());
    // In damp air a hygrometer good to 10 % leaves most of what is unsure.
    auto damp = behind("29.6degC");
    damp.conditions().outside_humidity = typed<Fraction>("70%");
    damp.conditions().hygrometer_accuracy = typed<Fraction>("10%");
    const auto in_damp_air = damp.findings(pad_cools_less_than_expected);
    ASSERT_THAT(in_damp_air, SizeIs(1));
    EXPECT_EQ(in_damp_air[0].severity, Severity::note);
    EXPECT_THAT(english(in_damp_air[0].message), HasSubstr("comes from the humidity outside"));
}

TEST(PadCoolsLessTest, each_missing_input_silences_it) {
    auto no_reading = behind("28degC");
    no_reading.conditions().behind_pad.reset();
    auto no_humidity = behind("28degC");
    no_humidity.conditions().outside_humidity.reset();
    auto no_speed = behind("28degC");
    no_speed.conditions().face_velocity.reset();
    auto no_thickness = behind("28degC");
    no_thickness.builder.bank(1).thickness.reset();
    for (auto* house : {&no_reading, &no_humidity, &no_speed, &no_thickness}) {
        EXPECT_THAT(house->findings(pad_cools_less_than_expected), IsEmpty());
        EXPECT_THAT(house->findings(pad_cools_more_than_expected), IsEmpty());
    }
}

TEST(PadCoolsMoreTest, clearly_more_than_published_is_a_wrong_reading) {
    EXPECT_THAT(behind("24.5degC").findings(pad_cools_more_than_expected), IsEmpty());
    auto house = behind("22.8degC");
    const auto findings = house.findings(pad_cools_more_than_expected);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pad-cools-more-than-expected");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(house.findings(pad_cools_less_than_expected), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
