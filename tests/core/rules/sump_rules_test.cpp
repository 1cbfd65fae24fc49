// SPDX-License-Identifier: Apache-2.0
#include "rules/sump_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// 18 m of 50 mm bore hold 35.34 L.
RuleCase with_header() {
    RuleCase house;
    house.builder.bank(1).header_bore = typed<Length>("50mm");
    return house;
}

TEST(SumpRunsOverTest, what_does_not_fit_above_the_working_level_is_wasted_at_each_stop) {
    auto house = with_header();
    house.pump().sump_area = typed<Area>("1m2");
    house.pump().sump_freeboard = typed<Length>("36mm");
    EXPECT_THAT(house.findings(sump_runs_over), IsEmpty());
    house.pump().sump_freeboard = typed<Length>("30mm");
    const auto findings = house.findings(sump_runs_over);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "sump-runs-over");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "lost_each_stop"), 5.343e-3, 1e-6);
    // A supply pipe that drains back takes its share.
    house.pump().sump_freeboard = typed<Length>("36mm");
    house.pump().riser_volume = typed<Volume>("2L");
    EXPECT_THAT(house.findings(sump_runs_over), SizeIs(1));
}

TEST(SumpRunsOverTest, each_missing_input_silences_it) {
    const auto complete = [] {
        auto house = with_header();
        house.pump().sump_area = typed<Area>("1m2");
        house.pump().sump_freeboard = typed<Length>("10mm");
        return house;
    };
    ASSERT_THAT(complete().findings(sump_runs_over), SizeIs(1));
    auto no_area = complete();
    no_area.pump().sump_area.reset();
    auto no_freeboard = complete();
    no_freeboard.pump().sump_freeboard.reset();
    auto no_bore = complete();
    no_bore.builder.bank(1).header_bore.reset();
    for (auto* house : {&no_area, &no_freeboard, &no_bore}) {
        EXPECT_THAT(house->findings(sump_runs_over), IsEmpty());
    }
}

// Header 35.34 L and 100 L/min for 100 s, 166.67 L, into the pad: 202.01 L.
RuleCase dry_start(const char* sump) {
    auto house = with_header();
    house.pump().sump_volume = typed<Volume>(sump);
    house.flows("100L/min");
    house.timed(1).wetting = RuleCase::reading(100.0, 4.0);
    house.timed(1).wet_through = RuleCase::reading(140.0, 4.0);
    return house;
}

TEST(SumpRunsDryTest, a_start_that_takes_more_than_the_sump_holds_is_a_fault) {
    EXPECT_THAT(dry_start("203L").findings(sump_runs_dry), IsEmpty());
    auto house = dry_start("200L");
    const auto findings = house.findings(sump_runs_dry);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "sump-runs-dry");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_NEAR(value_in(findings[0], "missing"), 2.01e-3, 1e-5);
}

// 10 L/min for 140 s bring 23.3 L.
TEST(SumpRunsDryTest, make_up_that_carries_the_rest_makes_it_a_note) {
    auto house = dry_start("179L");
    house.pump().make_up_flow = typed<VolumeFlow>("10L/min");
    EXPECT_EQ(house.findings(sump_runs_dry).at(0).severity, Severity::note);
    house.pump().sump_volume = typed<Volume>("178L");
    EXPECT_EQ(house.findings(sump_runs_dry).at(0).severity, Severity::fault);
}

TEST(SumpRunsDryTest, without_volume_or_header_nothing_is_found_and_without_flow_the_header_alone_counts) {
    auto no_volume = dry_start("10L");
    no_volume.pump().sump_volume.reset();
    EXPECT_THAT(no_volume.findings(sump_runs_dry), IsEmpty());
    auto no_bore = dry_start("10L");
    no_bore.builder.bank(1).header_bore.reset();
    EXPECT_THAT(no_bore.findings(sump_runs_dry), IsEmpty());
    auto no_flow = dry_start("36L");
    no_flow.conditions().flows.clear();
    EXPECT_THAT(no_flow.findings(sump_runs_dry), IsEmpty());
    no_flow.pump().sump_volume = typed<Volume>("35L");
    EXPECT_THAT(no_flow.findings(sump_runs_dry), SizeIs(1));
}

/// A house whose pads evaporate at the design hour, with that water as volume per second.
struct Evaporating {
    RuleCase house;
    double evaporated = 0.0;
};

Evaporating evaporating() {
    Evaporating made;
    made.house.builder.both_weathers();
    made.house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    const auto& file = made.house.builder.file();
    const auto weather = weather_of(file);
    made.evaporated =
        in_si(evaporation_of(file, weather, *weather.design, file.house.banks[0]).value()) / 1000.0;
    return made;
}

Optional<VolumeFlow> flow_of(double si) {
    return Entered<VolumeFlow>::of(from_si<VolumeFlow>(si));
}

TEST(MakeUpTooSmallTest, make_up_below_evaporation_and_bleed_is_a_fault_with_how_long_the_sump_lasts) {
    auto [house, evaporated] = evaporating();
    house.pump().make_up_flow = flow_of(1.001 * evaporated);
    EXPECT_THAT(house.findings(make_up_too_small), IsEmpty());
    house.pump().make_up_flow = flow_of(0.75 * evaporated);
    const auto findings = house.findings(make_up_too_small);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "make-up-too-small");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("the design hour asks for 10 L/min (evaporation alone)"));
    EXPECT_NEAR(value_in(findings[0], "missing_flow"), 0.25 * evaporated, 1e-6 * evaporated);
    house.pump().sump_volume = Entered<Volume>::of(from_si<Volume>(evaporated * 1000.0));
    EXPECT_NEAR(value_in(house.findings(make_up_too_small).at(0), "lasts"), 4000.0, 0.1);
    // Bleed comes on top.
    house.pump().make_up_flow = flow_of(1.2 * evaporated);
    house.pump().bleed_flow = flow_of(0.3 * evaporated);
    EXPECT_THAT(english(house.findings(make_up_too_small).at(0).message), HasSubstr("evaporation and bleed"));
}

TEST(MakeUpTooSmallTest, each_missing_input_silences_it) {
    auto [complete, evaporated] = evaporating();
    complete.pump().make_up_flow = flow_of(0.5 * evaporated);
    ASSERT_THAT(complete.findings(make_up_too_small), SizeIs(1));
    auto no_make_up = complete;
    no_make_up.pump().make_up_flow.reset();
    auto no_design = complete;
    no_design.builder.file().farm.design_dry_bulb.reset();
    auto no_speed = complete;
    no_speed.conditions().face_velocity.reset();
    auto no_height = complete;
    no_height.builder.bank(1).height.reset();
    for (auto* house : {&no_make_up, &no_design, &no_speed, &no_height}) {
        EXPECT_THAT(house->findings(make_up_too_small), IsEmpty());
    }
}

TEST(ReserveShortTest, less_than_half_an_hour_without_make_up_is_a_note) {
    auto [house, evaporated] = evaporating();
    house.pump().sump_volume = Entered<Volume>::of(from_si<Volume>(evaporated * 1801.0));
    EXPECT_THAT(house.findings(reserve_short), IsEmpty());
    house.pump().sump_volume = Entered<Volume>::of(from_si<Volume>(evaporated * 1799.0));
    const auto findings = house.findings(reserve_short);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "reserve-short");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "reserve"), 1799.0, 0.1);
    house.pump().make_up_flow = flow_of(0.5 * evaporated);
    EXPECT_THAT(house.findings(reserve_short), IsEmpty()) << "told by make-up-too-small";
    house.pump().make_up_flow.reset();
    house.pump().sump_volume.reset();
    EXPECT_THAT(house.findings(reserve_short), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
