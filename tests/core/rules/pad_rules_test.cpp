// SPDX-License-Identifier: Apache-2.0
#include "rules/pad_rules.h"

#include <gmock/gmock.h>

#include "pad/wet_pad.h"
#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// 350 ft/min (1.778 m/s) for 6 in and 225 ft/min (1.143 m/s) for 4 in: Czarick & Fairchild, Univ. of Georgia,
// Poultry Housing Tips 26(4), 2014.
RuleCase air_through(const char* thickness, const char* speed) {
    RuleCase house;
    house.builder.bank(1).thickness = typed<Length>(thickness);
    house.conditions().face_velocity = typed<Velocity>(speed);
    return house;
}

TEST(FaceVelocityTest, air_faster_than_the_design_speed_is_a_note_with_the_face_that_it_needs) {
    EXPECT_THAT(air_through("6in", "350ft/min").findings(face_velocity_above_design), IsEmpty());
    EXPECT_THAT(air_through("4in", "225ft/min").findings(face_velocity_above_design), IsEmpty());
    EXPECT_THAT(air_through("4in", "227ft/min").findings(face_velocity_above_design), SizeIs(1));
    auto house = air_through("6in", "420ft/min");
    const auto findings = house.findings(face_velocity_above_design);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "face-velocity-above-design");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "more_face"), 0.2, 1e-9);
    EXPECT_TRUE(std::isnan(value_in(findings[0], "cooling_lost"))) << "no weather";
    house.builder.both_weathers();
    const auto thickness = house.builder.bank(1).thickness->value();
    const double lost = in_si(expected_effectiveness(from_si<Velocity>(1.778), thickness).value()) -
                        in_si(expected_effectiveness(from_si<Velocity>(1.2 * 1.778), thickness).value());
    EXPECT_NEAR(value_in(house.findings(face_velocity_above_design).at(0), "cooling_lost"), 12.0 * lost,
                1e-9);
}

TEST(FaceVelocityTest, without_speed_or_a_published_thickness_nothing_is_found) {
    EXPECT_THAT(air_through("200mm", "3m/s").findings(face_velocity_above_design), IsEmpty());
    auto no_thickness = air_through("6in", "3m/s");
    no_thickness.builder.bank(1).thickness.reset();
    EXPECT_THAT(no_thickness.findings(face_velocity_above_design), IsEmpty());
    auto no_speed = air_through("6in", "3m/s");
    no_speed.conditions().face_velocity.reset();
    EXPECT_THAT(no_speed.findings(face_velocity_above_design), IsEmpty());
}

RuleCase points(std::initializer_list<const char*> speeds) {
    RuleCase house;
    for (const char* speed : speeds) {
        house.at(1).face_points.push_back({typed<Velocity>(speed)});
    }
    return house;
}

// Mean 1.9 m/s, s = 0.158, U = 2.776 x 0.158 / sqrt(5) = 0.196: 1.704 is below 1.778, which only the spread
// explains.
TEST(FaceVelocityTest, the_spread_of_points_counts) {
    EXPECT_THAT(
        points({"1.7m/s", "1.8m/s", "1.9m/s", "2.0m/s", "2.1m/s"}).findings(face_velocity_above_design),
        IsEmpty());
    EXPECT_THAT(
        points({"1.9m/s", "1.9m/s", "1.9m/s", "1.9m/s", "1.9m/s"}).findings(face_velocity_above_design),
        SizeIs(1));
}

TEST(FacePointsTest, fewer_than_five_points_are_a_note) {
    auto few = points({"1.2m/s", "1.3m/s", "1.2m/s", "1.3m/s"});
    const auto findings = few.findings(face_points_few);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "face-points-few");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("comes from 4 points of the face (5 would do)"));
    EXPECT_THAT(english(points({"1.2m/s"}).findings(face_points_few).at(0).message), HasSubstr("one point"));
    EXPECT_THAT(points({"1.2m/s", "1.3m/s", "1.2m/s", "1.3m/s", "1.2m/s"}).findings(face_points_few),
                IsEmpty());
    EXPECT_THAT(air_through("6in", "1m/s").findings(face_points_few), IsEmpty());
}

// Mean 1.44, s = 0.329: 22.8 %. Mean 1.4, s = 0.548: 39.1 %.
TEST(FacePointsTest, a_wide_spread_is_a_note) {
    EXPECT_THAT(points({"1.2m/s", "1.2m/s", "1.2m/s", "1.8m/s", "1.8m/s"}).findings(face_velocity_uneven),
                IsEmpty());
    auto house = points({"1m/s", "1m/s", "1m/s", "2m/s", "2m/s"});
    const auto findings = house.findings(face_velocity_uneven);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "face-velocity-uneven");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "variation"), 0.3912, 1e-4);
    EXPECT_THAT(points({"1m/s", "3m/s"}).findings(face_velocity_uneven), IsEmpty()) << "too few to say";
}

// At 1.2 m/s 3.9 to 11.25 Pa are published (Franco et al. 2010); the manometer counts as 2.5 Pa off.
RuleCase pressure_drop(const char* drop) {
    auto house = air_through("150mm", "1.2m/s");
    house.at(1).pressure_drop = typed<PressureDifference>(drop);
    return house;
}

TEST(PadPressureDropTest, more_than_published_and_the_manometers_accuracy_is_a_note) {
    EXPECT_THAT(pressure_drop("13.7Pa").findings(pad_pressure_drop_high), IsEmpty());
    auto house = pressure_drop("13.8Pa");
    const auto findings = house.findings(pad_pressure_drop_high);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pad-pressure-drop-high");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "published_most"), 11.25, 1e-9);
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("scale, algae or dust"));
    EXPECT_THAT(house.findings(pad_pressure_drop_low), IsEmpty());
}

TEST(PadPressureDropTest, less_than_published_is_a_note) {
    EXPECT_THAT(pressure_drop("1.5Pa").findings(pad_pressure_drop_low), IsEmpty());
    auto house = pressure_drop("1.3Pa");
    const auto findings = house.findings(pad_pressure_drop_low);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pad-pressure-drop-low");
    EXPECT_THAT(causes_of(findings[0]).front(), HasSubstr("goes around the pad"));
    EXPECT_THAT(house.findings(pad_pressure_drop_high), IsEmpty());
}

TEST(PadPressureDropTest, where_nothing_is_published_or_read_nothing_is_found) {
    auto fast = pressure_drop("60Pa");
    fast.conditions().face_velocity = typed<Velocity>("2.5m/s");
    EXPECT_THAT(fast.findings(pad_pressure_drop_high), IsEmpty());
    EXPECT_THAT(air_through("150mm", "1.2m/s").findings(pad_pressure_drop_high), IsEmpty());
    auto no_speed = pressure_drop("60Pa");
    no_speed.conditions().face_velocity.reset();
    EXPECT_THAT(no_speed.findings(pad_pressure_drop_high), IsEmpty());
}

// 0.10 to 0.20 inH2O, 25 to 50 Pa, with pads: Czarick & Fairchild 2014.
TEST(HouseStaticPressureTest, more_than_fifty_pascals_and_the_manometers_accuracy_is_a_note) {
    RuleCase house;
    EXPECT_THAT(house.findings(house_static_pressure_high), IsEmpty());
    house.conditions().static_pressure = typed<PressureDifference>("52.5Pa");
    EXPECT_THAT(house.findings(house_static_pressure_high), IsEmpty());
    house.conditions().static_pressure = typed<PressureDifference>("52.6Pa");
    const auto findings = house.findings(house_static_pressure_high);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "house-static-pressure-high");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "most"), 50.0, 1e-9);
    EXPECT_THAT(findings[0].causes, SizeIs(3));
}

}  // namespace
}  // namespace wetfront::test
