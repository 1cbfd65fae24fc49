// SPDX-License-Identifier: Apache-2.0
#include "rules/guidance_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase starting_at(const char* temperature, std::optional<double> age = 35.0) {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>(temperature);
    house.conditions().bird_age_days = age;
    return house;
}

TEST(StartTemperatureTest, what_a_controller_does_not_have_is_not_looked_at) {
    for (const char* start : {"70degF", "95degF"}) {
        auto house = starting_at(start);
        house.builder.timer(1).kind = TimerKind::fixed_interval;
        EXPECT_THAT(house.findings(start_temperature_low), IsEmpty()) << start;
        EXPECT_THAT(house.findings(start_temperature_high), IsEmpty()) << start;
    }
}

// "Low to mid 80s degF" with older birds, not in the 70s: Univ. of Georgia, 2011.
TEST(StartTemperatureTest, in_the_seventies_it_is_waste_with_older_birds) {
    EXPECT_THAT(starting_at("80degF").findings(start_temperature_low), IsEmpty());
    auto house = starting_at("77degF");
    const auto findings = house.findings(start_temperature_low);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "start-temperature-low");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_NEAR(value_in(findings[0], "beyond"), 3.0 * 5.0 / 9.0, 1e-9);
    EXPECT_THAT(house.findings(start_temperature_high), IsEmpty());
    EXPECT_THAT(starting_at("79.9degF").findings(start_temperature_low), SizeIs(1));
}

TEST(StartTemperatureTest, above_the_mid_eighties_it_is_a_fault_with_older_birds) {
    EXPECT_THAT(starting_at("86degF").findings(start_temperature_high), IsEmpty());
    EXPECT_THAT(starting_at("30degC").findings(start_temperature_high), IsEmpty());
    auto house = starting_at("32.5degC");
    const auto findings = house.findings(start_temperature_high);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "start-temperature-high");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_NEAR(value_in(findings[0], "beyond"), 2.5, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("birds of 35 days"));
    EXPECT_THAT(starting_at("30.1degC").findings(start_temperature_high), SizeIs(1));
}

TEST(StartTemperatureTest, nothing_is_said_for_young_birds_or_without_age_or_setting) {
    for (const auto age : {std::optional<double>{}, std::optional{27.9}}) {
        EXPECT_THAT(starting_at("70degF", age).findings(start_temperature_low), IsEmpty());
        EXPECT_THAT(starting_at("95degF", age).findings(start_temperature_high), IsEmpty());
    }
    EXPECT_THAT(starting_at("70degF", 28.0).findings(start_temperature_low), SizeIs(1));
    auto not_set = starting_at("70degF");
    not_set.found().start_temperature.reset();
    EXPECT_THAT(not_set.findings(start_temperature_low), IsEmpty());
    EXPECT_THAT(not_set.findings(start_temperature_high), IsEmpty());
}

// 500 ft/min, 2.54 m/s: Czarick, Fairchild, Leu, Univ. of Georgia, 2019.
TEST(AirSpeedTest, less_than_500_feet_a_minute_down_the_house_is_a_note_with_the_airflow_missing) {
    RuleCase house;
    house.house().fan_airflow = typed<VolumeFlow>("101.6m3/s");
    house.house().cross_section = typed<Area>("40m2");
    EXPECT_THAT(house.findings(air_speed_below_500), IsEmpty());
    house.house().fan_airflow = typed<VolumeFlow>("91.6m3/s");
    const auto findings = house.findings(air_speed_below_500);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "air-speed-below-500");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "missing_airflow"), 10.0, 1e-9);
    house.conditions().bird_age_days = 10.0;
    EXPECT_THAT(house.findings(air_speed_below_500), IsEmpty());
    house.conditions().bird_age_days = 40.0;
    EXPECT_THAT(house.findings(air_speed_below_500), SizeIs(1));
    house.house().cross_section.reset();
    EXPECT_THAT(house.findings(air_speed_below_500), IsEmpty());
    house.house().cross_section = typed<Area>("40m2");
    house.house().fan_airflow.reset();
    EXPECT_THAT(house.findings(air_speed_below_500), IsEmpty());
}

// Air at 1.5 m/s through 150 mm; published effectiveness 0.75 to within a hundredth or two.
RuleCase cut_off(const char* humidity, const char* start = "80degF") {
    RuleCase house;
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    house.found().start_temperature = typed<Temperature>(start);
    house.found().humidity_cut_off = typed<Fraction>(humidity);
    return house;
}

// Worked out in the source's terms: 80 degF and 85 % give 2.6 degF, 80 % give 3.6 degF, the limit of 2.0 K.
TEST(HumidityCutOffTest, a_cut_off_where_pads_hardly_cool_is_waste_with_the_one_that_serves) {
    EXPECT_THAT(cut_off("80%").findings(humidity_cut_off_useless), IsEmpty());
    auto house = cut_off("85%");
    const auto findings = house.findings(humidity_cut_off_useless);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "humidity-cut-off-useless");
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_NEAR(value_in(findings[0], "cooling_at_cut_off") * 1.8, 2.6, 0.15);
    EXPECT_NEAR(value_in(findings[0], "serving_cut_off"), 0.80, 0.011);
    EXPECT_THAT(house.findings(humidity_cut_off_early), IsEmpty());
}

TEST(HumidityCutOffTest, a_cut_off_far_below_the_limit_is_a_note_with_the_cooling_lost) {
    EXPECT_THAT(cut_off("75%").findings(humidity_cut_off_early), IsEmpty());
    auto house = cut_off("55%");
    const auto findings = house.findings(humidity_cut_off_early);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "humidity-cut-off-early");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_GT(value_in(findings[0], "cooling_at_cut_off"), 3.0);
    EXPECT_THAT(house.findings(humidity_cut_off_useless), IsEmpty());
}

TEST(HumidityCutOffTest, only_a_sensor_outside_is_judged) {
    for (const char* humidity : {"40%", "95%"}) {
        auto inside = cut_off(humidity);
        inside.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::in_house}};
        auto both = cut_off(humidity);
        both.house().sensors.push_back({Id{"t"}, SensorKind::humidity, SensorPlace::in_house});
        auto unknown = cut_off(humidity);
        unknown.house().sensors.clear();
        for (auto* house : {&inside, &both, &unknown}) {
            EXPECT_THAT(house->findings(humidity_cut_off_useless), IsEmpty());
            EXPECT_THAT(house->findings(humidity_cut_off_early), IsEmpty());
        }
    }
}

TEST(HumidityCutOffTest, each_missing_input_silences_it) {
    for (const char* humidity : {"40%", "95%"}) {
        auto no_start = cut_off(humidity);
        no_start.found().start_temperature.reset();
        auto no_cut_off = cut_off(humidity);
        no_cut_off.found().humidity_cut_off.reset();
        auto assumed = cut_off(humidity);
        assumed.conditions().face_velocity.reset();
        for (auto* house : {&no_start, &no_cut_off, &assumed}) {
            EXPECT_THAT(house->findings(humidity_cut_off_useless), IsEmpty());
            EXPECT_THAT(house->findings(humidity_cut_off_early), IsEmpty());
        }
    }
}

}  // namespace
}  // namespace wetfront::test
