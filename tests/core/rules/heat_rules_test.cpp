// SPDX-License-Identifier: Apache-2.0
#include "rules/heat_rules.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase with_cut_off(const char* cut_off, std::vector<SensorPlace> places = {SensorPlace::outside}) {
    RuleCase house;
    house.found().humidity_cut_off = typed<Fraction>(cut_off);
    for (const auto place : places) {
        house.house().sensors.push_back(
            {Id{"sensor-" + std::to_string(house.house().sensors.size())}, SensorKind::humidity, place});
    }
    return house;
}

// Vapour at 36 degC with a wet bulb of 24: 2.985 kPa less 0.000662 * 101.325 * 12 K = 2.18 kPa of 5.95 kPa,
// 37 %.
RuleCase on_design_day(const char* cut_off, const char* dry_bulb = "36degC") {
    auto house = with_cut_off(cut_off);
    house.builder.both_weathers();
    house.conditions().outside_dry_bulb.reset();
    house.builder.file().farm.design_dry_bulb = typed<Temperature>(dry_bulb);
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("20K");
    return house;
}

TEST(CutOffStopsPadsInHeatTest, a_cut_off_below_the_humidity_of_hot_hours_is_harm) {
    EXPECT_THAT(on_design_day("45%").findings(cut_off_stops_pads_in_heat), IsEmpty());
    const auto findings = on_design_day("30%").findings(cut_off_stops_pads_in_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::harm);
    EXPECT_NEAR(value_in(findings[0], "humidity_outside"), 0.367, 0.01);
    EXPECT_THAT(english(findings[0].message), HasSubstr("birds lose 9 °C of cooling"));
}

TEST(CutOffStopsPadsInHeatTest, hot_is_35_degC_and_not_a_tenth_below) {
    EXPECT_THAT(on_design_day("30%", "35degC").findings(cut_off_stops_pads_in_heat), SizeIs(1));
    EXPECT_THAT(on_design_day("30%", "34.9degC").findings(cut_off_stops_pads_in_heat), IsEmpty());
}

TEST(CutOffStopsPadsInHeatTest, the_weather_of_the_readings_is_looked_at_too) {
    auto house = with_cut_off("40%");
    house.conditions().outside_dry_bulb = typed<Temperature>("35degC");
    house.conditions().outside_humidity = typed<Fraction>("45%");
    EXPECT_THAT(english(house.findings(cut_off_stops_pads_in_heat).at(0).message),
                HasSubstr("at the readings"));
    house.found().humidity_cut_off = typed<Fraction>("45.1%");
    EXPECT_THAT(house.findings(cut_off_stops_pads_in_heat), IsEmpty());
    house.found().humidity_cut_off = typed<Fraction>("40%");
    house.conditions().outside_dry_bulb = typed<Temperature>("34.9degC");
    EXPECT_THAT(house.findings(cut_off_stops_pads_in_heat), IsEmpty());
}

TEST(CutOffStopsPadsInHeatTest, cut_off_a_sensor_outside_alone_and_a_weather_are_needed) {
    auto no_cut_off = on_design_day("30%");
    no_cut_off.found().humidity_cut_off.reset();
    EXPECT_THAT(no_cut_off.findings(cut_off_stops_pads_in_heat), IsEmpty());
    auto no_sensor = on_design_day("30%");
    no_sensor.house().sensors.clear();
    EXPECT_THAT(no_sensor.findings(cut_off_stops_pads_in_heat), IsEmpty());
    auto inside = on_design_day("30%");
    inside.house().sensors[0].place = SensorPlace::in_house;
    EXPECT_THAT(inside.findings(cut_off_stops_pads_in_heat), IsEmpty());
    EXPECT_THAT(with_cut_off("30%").findings(cut_off_stops_pads_in_heat), IsEmpty());
}

// A pad of 0.75 (assumed) brings 36 degC with a wet bulb of 24 to 27 degC: vapour 2.985 kPa less 0.000662 *
// 101.325 * 3 K = 2.784 kPa, of 3.567 kPa 78 %; warmed to 30 degC, of 4.246 kPa 65.6 %.
TEST(CutOffBelowOwnHumidityTest, behind_a_pad_and_in_the_house_pads_make_more_than_that) {
    const auto with = [](const char* cut_off, SensorPlace place) {
        auto house = with_cut_off(cut_off, {place});
        house.builder.both_weathers();
        return house;
    };
    const auto behind = with("77%", SensorPlace::behind_pad).findings(cut_off_below_own_humidity);
    ASSERT_THAT(behind, SizeIs(1));
    EXPECT_EQ(behind[0].severity, Severity::harm);
    EXPECT_NEAR(value_in(behind[0], "own_humidity"), 0.78, 0.005);
    EXPECT_THAT(with("79%", SensorPlace::behind_pad).findings(cut_off_below_own_humidity), IsEmpty());
    EXPECT_THAT(with("65%", SensorPlace::in_house).findings(cut_off_below_own_humidity), SizeIs(1));
    EXPECT_THAT(with("67%", SensorPlace::in_house).findings(cut_off_below_own_humidity), IsEmpty());
}

TEST(CutOffBelowOwnHumidityTest, nothing_without_cut_off_weather_or_bank_or_with_a_sensor_outside_as_well) {
    auto house = with_cut_off("50%", {SensorPlace::in_house});
    EXPECT_THAT(house.findings(cut_off_below_own_humidity), IsEmpty());
    house.builder.both_weathers();
    EXPECT_THAT(house.findings(cut_off_below_own_humidity), SizeIs(1));
    auto no_cut_off = house;
    no_cut_off.found().humidity_cut_off.reset();
    EXPECT_THAT(no_cut_off.findings(cut_off_below_own_humidity), IsEmpty());
    auto no_bank = house;
    no_bank.house().banks.clear();
    EXPECT_THAT(no_bank.findings(cut_off_below_own_humidity), IsEmpty());
    house.house().sensors.push_back({Id{"other"}, SensorKind::humidity, SensorPlace::outside});
    EXPECT_THAT(house.findings(cut_off_below_own_humidity), IsEmpty());
}

TEST(CutOffByUnfitSensorTest, only_a_sensor_outside_alone_is_fit) {
    EXPECT_THAT(with_cut_off("80%").findings(cut_off_by_unfit_sensor), IsEmpty());
    EXPECT_THAT(english(with_cut_off("80%", {}).findings(cut_off_by_unfit_sensor).at(0).message),
                HasSubstr("no humidity sensor is described"));
    EXPECT_THAT(english(with_cut_off("80%", {SensorPlace::outside, SensorPlace::in_house})
                            .findings(cut_off_by_unfit_sensor)
                            .at(0)
                            .message),
                HasSubstr("both outside and in the house"));
    const auto inside = with_cut_off("95%", {SensorPlace::in_house}).findings(cut_off_by_unfit_sensor);
    ASSERT_THAT(inside, SizeIs(1));
    EXPECT_EQ(inside[0].severity, Severity::note);
    auto no_cut_off = with_cut_off("80%", {});
    no_cut_off.found().humidity_cut_off.reset();
    EXPECT_THAT(no_cut_off.findings(cut_off_by_unfit_sensor), IsEmpty());
}

TEST(CutOffByUnfitSensorTest, it_is_silent_where_harm_is_said_already) {
    auto house = with_cut_off("50%", {SensorPlace::in_house});
    house.builder.both_weathers();
    EXPECT_THAT(house.findings(cut_off_by_unfit_sensor), IsEmpty());
}

// 38 degC less 10 K: at or above 37.78 up to a share of 0.0222, from 0.556 of the way from 13 to 14 by the
// sun until 0.37 from 15 to 16; by a clock an hour ahead from 14:33 until 16:22.
RuleCase in_extreme_heat(const char* dry_bulb = "38degC") {
    RuleCase house;
    house.builder.file().farm.design_dry_bulb = typed<Temperature>(dry_bulb);
    house.builder.file().farm.design_wet_bulb = typed<Temperature>("24degC");
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("10K");
    house.found().pad_hours_from = TimeOfDay{10 * 60};
    house.found().pad_hours_to = TimeOfDay{20 * 60};
    return house;
}

TEST(PadsOffInExtremeHeatTest, pad_hours_that_end_in_it_are_harm) {
    EXPECT_THAT(in_extreme_heat().findings(pads_off_in_extreme_heat), IsEmpty());
    auto house = in_extreme_heat();
    house.found().pad_hours_to = TimeOfDay{15 * 60};
    const auto findings = house.findings(pads_off_in_extreme_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::harm);
    EXPECT_NEAR(value_in(findings[0], "without_pads"), 82.0 * 60.0, 300.0);
    EXPECT_THAT(english(findings[0].message), HasSubstr("pad hours keeps the pads off"));
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Never stop fans."));
}

TEST(PadsOffInExtremeHeatTest, at_100_degF_and_not_below) {
    auto at_limit = in_extreme_heat("100degF");
    at_limit.found().pad_hours_to = TimeOfDay{15 * 60};
    EXPECT_THAT(at_limit.findings(pads_off_in_extreme_heat), SizeIs(1));
    auto below = in_extreme_heat("99.9degF");
    below.found().pad_hours_to = TimeOfDay{15 * 60};
    EXPECT_THAT(below.findings(pads_off_in_extreme_heat), IsEmpty());
}

TEST(PadsOffInExtremeHeatTest, start_lowest_temperature_and_cut_off_can_bar_pads_as_well) {
    auto start = in_extreme_heat();
    start.found().start_temperature = typed<Temperature>("37degC");
    start.found().lowest_house_temperature = typed<Temperature>("37degC");
    EXPECT_THAT(start.findings(pads_off_in_extreme_heat), IsEmpty());
    start.found().start_temperature = typed<Temperature>("39degC");
    EXPECT_THAT(english(start.findings(pads_off_in_extreme_heat).at(0).message),
                HasSubstr("the start temperature"));
    auto lowest = in_extreme_heat();
    lowest.found().lowest_house_temperature = typed<Temperature>("39degC");
    EXPECT_THAT(english(lowest.findings(pads_off_in_extreme_heat).at(0).message),
                HasSubstr("the lowest house temperature"));
    auto cut_off = in_extreme_heat();
    cut_off.found().humidity_cut_off = typed<Fraction>("20%");
    EXPECT_THAT(cut_off.findings(pads_off_in_extreme_heat), IsEmpty());
    cut_off.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    EXPECT_THAT(english(cut_off.findings(pads_off_in_extreme_heat).at(0).message),
                HasSubstr("the humidity cut-off"));
    cut_off.found().humidity_cut_off = typed<Fraction>("60%");
    EXPECT_THAT(cut_off.findings(pads_off_in_extreme_heat), IsEmpty());
}

TEST(PadsOffInExtremeHeatTest, a_fixed_timer_without_on_time_bars_them_too) {
    RuleCase house{1, 1, TimerKind::fixed_interval};
    house.builder.file().farm = in_extreme_heat().builder.file().farm;
    house.cycle("0s", "300s");
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), SizeIs(1));
    house.cycle("60s", "300s");
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), IsEmpty());
}

/// A fixed-interval timer on that farm whose controller has the settings of `keys` too.
RuleCase on_fixed_interval(const Farm& farm, std::initializer_list<TemplateKey> keys) {
    RuleCase house{1, 1, TimerKind::fixed_interval};
    house.builder.file().farm = farm;
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    auto described = generic_template(TimerKind::fixed_interval);
    for (const auto& setting : generic_template(TimerKind::trimmed).settings) {
        if (std::ranges::find(keys, setting.setting) != keys.end()) {
            described.settings.push_back(setting);
        }
    }
    choose_controller(house.builder.timer(1), described);
    return house;
}

TEST(PadsOffInExtremeHeatTest, what_a_controller_does_not_have_bars_nothing) {
    using Key = TemplateKey;
    const auto found = [](RuleCase house) {
        house.found().start_temperature = typed<Temperature>("39degC");
        house.found().lowest_house_temperature = typed<Temperature>("39degC");
        house.found().humidity_cut_off = typed<Fraction>("20%");
        const auto findings = house.findings(pads_off_in_extreme_heat);
        return findings.empty() ? std::string{} : english(findings.front().message);
    };
    const auto hot = in_extreme_heat().builder.file().farm;
    EXPECT_EQ(found(on_fixed_interval(hot, {})), "");
    EXPECT_THAT(found(on_fixed_interval(hot, {Key::start_temperature})), HasSubstr("the start temperature"));
    EXPECT_THAT(found(on_fixed_interval(hot, {Key::lowest_house_temperature})),
                HasSubstr("the lowest house temperature"));
    EXPECT_THAT(found(on_fixed_interval(hot, {Key::humidity_cut_off})), HasSubstr("the humidity cut-off"));
}

// 14:30 by the sun is 15:30 by a clock that is an hour ahead of it.
TEST(PadsOffInExtremeHeatTest, the_hottest_hour_is_the_clocks) {
    auto house = in_extreme_heat();
    house.builder.file().farm.design_daily_range.reset();
    house.found().pad_hours_to = TimeOfDay{15 * 60 + 15};
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), SizeIs(1));
    house.advice.margins.clock_ahead_of_sun = seconds(0.0);
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), IsEmpty());
}

TEST(PadsOffInExtremeHeatTest, without_a_daily_range_the_hottest_hour_stands_alone) {
    auto house = in_extreme_heat();
    house.builder.file().farm.design_daily_range.reset();
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), IsEmpty());
    house.found().pad_hours_to = TimeOfDay{15 * 60};
    const auto findings = house.findings(pads_off_in_extreme_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("At the hottest hour of the design day, 38 °C,"));
    house.builder.file().farm.design_wet_bulb.reset();
    EXPECT_THAT(house.findings(pads_off_in_extreme_heat), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
