// SPDX-License-Identifier: Apache-2.0
#include "rules/water_quality_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"
#include "water/scaling.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase conductivities(const char* make_up, const char* sump) {
    RuleCase house;
    house.conditions().conductivity = typed<Conductivity>(make_up);
    house.conditions().sump_conductivity = typed<Conductivity>(sump);
    return house;
}

TEST(CyclesBelowTwoTest, a_sump_less_than_twice_as_concentrated_is_waste) {
    EXPECT_THAT(conductivities("500uS/cm", "1000uS/cm").findings(cycles_below_two), IsEmpty());
    auto house = conductivities("500uS/cm", "750uS/cm");
    const auto findings = house.findings(cycles_below_two);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "cycles-below-two");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "cycles"), 1.5, 1e-12);
    // At 1.5 times 2 E leave as water, at 2 times 1 E: half is wasted.
    EXPECT_THAT(english(findings[0].message), HasSubstr("50 % of the water let out is wasted"));
}

TEST(CyclesBelowTwoTest, where_evaporation_is_known_the_water_is_counted) {
    auto house = conductivities("500uS/cm", "750uS/cm");
    house.builder.both_weathers();
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    const auto weather = weather_of(house.builder.file());
    const double evaporated =
        in_si(evaporation_of(house.builder.file(), weather, *weather.design, house.builder.bank(1)).value());
    const auto findings = house.findings(cycles_below_two);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_NEAR(value_in(findings[0], "enough"), evaporated / 1000.0, 1e-12);
    EXPECT_NEAR(value_in(findings[0], "wasted_per_hour"), 3600.0 * evaporated / 1000.0, 1e-9);
}

TEST(CyclesBelowTwoTest, a_sump_just_filled_is_a_note) {
    EXPECT_EQ(conductivities("500uS/cm", "524uS/cm").findings(cycles_below_two).at(0).severity,
              Severity::note);
    EXPECT_EQ(conductivities("500uS/cm", "526uS/cm").findings(cycles_below_two).at(0).severity,
              Severity::waste);
}

TEST(CyclesBelowTwoTest, without_both_conductivities_nothing_is_found) {
    auto no_sump = conductivities("500uS/cm", "750uS/cm");
    no_sump.conditions().sump_conductivity.reset();
    EXPECT_THAT(no_sump.findings(cycles_below_two), IsEmpty());
    auto no_make_up = conductivities("500uS/cm", "750uS/cm");
    no_make_up.conditions().conductivity.reset();
    EXPECT_THAT(no_make_up.findings(cycles_below_two), IsEmpty());
}

// Hardness and alkalinity of the make-up with solids of 0.65 x 500 mg/L, held in the sump at that many cycles
// and 22 degC, with a pH that sets the Langelier index there: pH = pHs + index.
RuleCase sump_at(double cycles, double langelier) {
    auto house = conductivities("500uS/cm", "500uS/cm");
    house.conditions().sump_conductivity = Entered<Conductivity>::of(from_si<Conductivity>(500e-4 * cycles));
    house.conditions().calcium_hardness = typed<Concentration>("110mg/L");
    house.conditions().alkalinity = typed<Concentration>("120mg/L");
    house.conditions().sump_temperature = typed<Temperature>("22degC");
    WaterTest sump;
    sump.temperature = celsius(22.0);
    sump.ph = 7.0;
    sump.calcium_hardness = from_si<Concentration>(0.110 * cycles);
    sump.alkalinity = from_si<Concentration>(0.120 * cycles);
    sump.dissolved_solids = from_si<Concentration>(0.325 * cycles);
    house.conditions().sump_ph = scaling_index(sump).value().saturation_ph + langelier;
    return house;
}

// The index falls by 1.9 log10 R to the make-up's at that pH: from 0.31 at 4 times to -0.834, so that it is 0
// at 10^(0.834/1.9) = 2.747 times.
TEST(BleedTooSmallTest, water_that_more_bleed_would_hold_is_waste_with_that_bleed) {
    EXPECT_THAT(sump_at(4.0, 0.29).findings(bleed_too_small), IsEmpty());
    auto house = sump_at(4.0, 0.31);
    const auto findings = house.findings(bleed_too_small);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "bleed-too-small");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "most_cycles"), 2.747, 1e-3);
    EXPECT_THAT(english(findings[0].message), HasSubstr("4 times the salts of the make-up"));
    EXPECT_THAT(english(findings[0].message), HasSubstr("Langelier index of +0.3"));
    EXPECT_THAT(house.findings(water_scales_pads), IsEmpty());
    house.builder.both_weathers();
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    const auto weather = weather_of(house.builder.file());
    const double evaporated =
        in_si(evaporation_of(house.builder.file(), weather, *weather.design, house.builder.bank(1)).value());
    const auto counted = house.findings(bleed_too_small).at(0);
    EXPECT_NEAR(value_in(counted, "bleed"), evaporated / 1000.0 / 1.747, 1e-3 * evaporated / 1000.0);
    // 168 g for each 1,000 L used, 4/3 of what evaporates.
    EXPECT_THAT(english(counted.message), HasSubstr("Griggs, MS thesis, Auburn University"));
}

// From 0.31 at 2.5 times to -0.446: 0 at 1.72 times, below what published guidance lets one bleed to.
TEST(WaterScalesPadsTest, water_that_no_bleed_holds_is_waste_and_needs_treatment) {
    EXPECT_THAT(sump_at(2.5, 0.29).findings(water_scales_pads), IsEmpty());
    auto house = sump_at(2.5, 0.31);
    const auto findings = house.findings(water_scales_pads);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "water-scales-pads");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Never mix acid with bleach"));
    EXPECT_THAT(house.findings(bleed_too_small), IsEmpty());
}

TEST(WaterScalesPadsTest, a_thin_sump_that_scales_all_the_same_is_not_told_to_bleed_less) {
    auto house = sump_at(1.5, 0.31);
    EXPECT_THAT(house.findings(water_scales_pads), SizeIs(1));
    EXPECT_THAT(house.findings(cycles_below_two), IsEmpty());
    EXPECT_THAT(sump_at(1.5, -0.5).findings(cycles_below_two), SizeIs(1));
}

TEST(WaterScalesPadsTest, total_hardness_stands_in_for_calcium_and_the_wet_bulb_for_the_sumps_temperature) {
    auto house = sump_at(2.5, 0.31);
    house.conditions().calcium_hardness.reset();
    EXPECT_THAT(house.findings(water_scales_pads), IsEmpty());
    house.conditions().hardness = typed<Concentration>("110mg/L");
    EXPECT_THAT(house.findings(water_scales_pads), SizeIs(1));
    house.conditions().sump_temperature.reset();
    EXPECT_THAT(house.findings(water_scales_pads), IsEmpty());
    house.builder.both_weathers();  // wet bulb 22.5 degC
    EXPECT_THAT(house.findings(water_scales_pads), SizeIs(1));
}

TEST(WaterScalesPadsTest, each_missing_input_silences_it) {
    auto no_ph = sump_at(2.5, 0.5);
    no_ph.conditions().sump_ph.reset();
    auto no_alkalinity = sump_at(2.5, 0.5);
    no_alkalinity.conditions().alkalinity.reset();
    auto no_sump = sump_at(2.5, 0.5);
    no_sump.conditions().sump_conductivity.reset();
    for (auto* house : {&no_ph, &no_alkalinity, &no_sump}) {
        EXPECT_THAT(house->findings(water_scales_pads), IsEmpty());
        EXPECT_THAT(house->findings(bleed_too_small), IsEmpty());
    }
}

// 6 to 8: Univ. of Illinois Extension, 2019.
TEST(PhOutOfRangeTest, a_sump_below_six_or_above_eight_is_a_note) {
    RuleCase house;
    EXPECT_THAT(house.findings(ph_out_of_range), IsEmpty());
    for (const double good : {6.0, 7.0, 8.0}) {
        house.conditions().sump_ph = good;
        EXPECT_THAT(house.findings(ph_out_of_range), IsEmpty()) << good;
    }
    house.conditions().sump_ph = 5.9;
    const auto low = house.findings(ph_out_of_range);
    ASSERT_THAT(low, SizeIs(1));
    EXPECT_EQ(low[0].rule, "ph-out-of-range");
    EXPECT_EQ(low[0].severity, Severity::note);
    EXPECT_THAT(english(low[0].message), HasSubstr("pH is 5.9, below the published 6 to 8"));
    house.conditions().sump_ph = 8.1;
    EXPECT_THAT(english(house.findings(ph_out_of_range).at(0).message),
                HasSubstr("above the published 6 to 8"));
    house.conditions().sump_ph.reset();
    house.conditions().ph = 9.0;  // of the make-up, which is not what circulates
    EXPECT_THAT(house.findings(ph_out_of_range), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
