// SPDX-License-Identifier: Apache-2.0
#include "rules/temperature_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase starting_at(const char* start, const char* lowest) {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>(start);
    house.found().lowest_house_temperature = typed<Temperature>(lowest);
    return house;
}

TEST(LowestTemperatureAboveStartTest, above_it_birds_wait_at_it_pads_flutter_below_it_is_as_it_should_be) {
    const auto above = starting_at("28degC", "30degC").findings(lowest_temperature_above_start);
    ASSERT_THAT(above, SizeIs(1));
    EXPECT_EQ(above[0].severity, Severity::fault);
    EXPECT_THAT(english(above[0].message), HasSubstr("birds wait another 2 °C"));
    EXPECT_EQ(starting_at("82.4degF", "28degC").findings(lowest_temperature_above_start).at(0).severity,
              Severity::note);
    EXPECT_THAT(starting_at("28degC", "27.9degC").findings(lowest_temperature_above_start), IsEmpty());
}

TEST(LowestTemperatureAboveStartTest, both_must_be_set_on_a_trimmed_timer) {
    auto no_start = starting_at("28degC", "30degC");
    no_start.found().start_temperature.reset();
    EXPECT_THAT(no_start.findings(lowest_temperature_above_start), IsEmpty());
    auto no_lowest = starting_at("28degC", "30degC");
    no_lowest.found().lowest_house_temperature.reset();
    EXPECT_THAT(no_lowest.findings(lowest_temperature_above_start), IsEmpty());
    auto fixed = starting_at("28degC", "30degC");
    fixed.builder.timer(1).kind = TimerKind::fixed_interval;
    EXPECT_THAT(fixed.findings(lowest_temperature_above_start), IsEmpty());
}

TEST(StartBelowTargetTest, below_the_target_it_is_waste_and_at_it_nothing) {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>("25degC");
    EXPECT_THAT(house.findings(start_below_target), IsEmpty());
    house.found().target = typed<Temperature>("77degF");
    EXPECT_THAT(house.findings(start_below_target), IsEmpty());
    house.found().target = typed<Temperature>("26.5degC");
    const auto findings = house.findings(start_below_target);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_THAT(english(findings[0].message), HasSubstr("1.5 °C below the target"));
    house.found().start_temperature.reset();
    EXPECT_THAT(house.findings(start_below_target), IsEmpty());
}

RuleCase with_birds_of(double days, const char* start = "28degC") {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>(start);
    house.conditions().bird_age_days = days;
    return house;
}

TEST(PadsChillYoungBirdsTest, harm_with_chicks_a_note_until_older_nothing_then) {
    EXPECT_EQ(with_birds_of(13.9).findings(pads_chill_young_birds).at(0).severity, Severity::harm);
    EXPECT_EQ(with_birds_of(14.0).findings(pads_chill_young_birds).at(0).severity, Severity::note);
    EXPECT_EQ(with_birds_of(27.9).findings(pads_chill_young_birds).at(0).severity, Severity::note);
    EXPECT_THAT(with_birds_of(28.0).findings(pads_chill_young_birds), IsEmpty());
}

TEST(PadsChillYoungBirdsTest, a_start_above_the_published_band_is_a_guard_against_heat) {
    EXPECT_THAT(with_birds_of(7.0, "30degC").findings(pads_chill_young_birds), SizeIs(1));
    EXPECT_THAT(with_birds_of(7.0, "30.1degC").findings(pads_chill_young_birds), IsEmpty());
}

// Design air, 36 degC with a wet bulb of 24: its water at 28 degC makes a wet bulb near 21.7 degC (constant
// enthalpy within a few tenths), and an assumed pad of 0.75 brings the air to about 28 - 0.75 * 6.3 = 23.3.
TEST(PadsChillYoungBirdsTest, it_tells_what_comes_in_where_a_weather_is_known) {
    auto house = with_birds_of(7.0);
    EXPECT_TRUE(std::isnan(value_in(house.findings(pads_chill_young_birds).at(0), "air_behind_pad")));
    house.builder.both_weathers();
    EXPECT_NEAR(value_in(house.findings(pads_chill_young_birds).at(0), "air_behind_pad"), 273.15 + 23.3, 0.5);
}

TEST(PadsChillYoungBirdsTest, nothing_without_age_or_start) {
    auto no_age = with_birds_of(7.0);
    no_age.conditions().bird_age_days.reset();
    EXPECT_THAT(no_age.findings(pads_chill_young_birds), IsEmpty());
    auto no_start = with_birds_of(7.0);
    no_start.found().start_temperature.reset();
    EXPECT_THAT(no_start.findings(pads_chill_young_birds), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
