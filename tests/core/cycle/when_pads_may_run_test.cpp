// SPDX-License-Identifier: Apache-2.0
#include "cycle/when_pads_may_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "cycle/advice.h"
#include "english.h"
#include "pad/wet_pad.h"
#include "timed_visit.h"

namespace wetfront {
namespace {

using namespace literals;
using test::english;
using test::TimedVisit;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr double hour = 3600.0;

/// Everything that the group asks for: range of the design day, sensor outside, birds, air speed, readings.
TimedVisit complete() {
    TimedVisit visit;
    auto& file = visit.file;
    file.farm.design_daily_range = TimedVisit::entry<TemperatureDifference>("14K");
    file.house.sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    file.house.fan_airflow = TimedVisit::entry<VolumeFlow>("100m3/s");
    file.house.cross_section = TimedVisit::entry<Area>("38m2");
    file.visit.conditions.bird_age_days = 40.0;
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    visit.dry_start("south", 60.0, 200.0, 1100.0);
    return visit;
}

TimerAdvice advised(const TimedVisit& visit) {
    return advise(visit.file).timers.front();
}

std::optional<double> value_of(const TimerAdvice& advice, Setting setting) {
    const auto* found = advice.advised(setting);
    return found != nullptr && found->value ? std::optional{found->value->si} : std::nullopt;
}

std::string brief_of(const TimerAdvice& advice, Setting setting) {
    return english(advice.advised(setting)->reason.brief);
}

std::string why_of(const TimerAdvice& advice, Setting setting) {
    return english(advice.advised(setting)->reason.explanation);
}

std::string clock_of(const TimerAdvice& advice, Setting setting) {
    const auto& value = advice.advised(setting)->value;
    return value ? show(*value, UnitSystem::us).joined(UnitSystem::us) : "none";
}

TEST(WhenPadsMayRunTest, a_trimmed_timer_is_told_all_five_in_the_order_of_the_sheet) {
    std::vector<Setting> settings;
    for (const auto& each : advised(complete()).when_pads_may_run) {
        settings.push_back(each.setting);
        EXPECT_EQ(group_of(each.setting), SettingGroup::when_pads_may_run);
    }
    EXPECT_THAT(settings,
                ElementsAre(Setting::start_temperature, Setting::lowest_house_temperature,
                            Setting::humidity_cut_off, Setting::pad_hours_from, Setting::pad_hours_to));
}

TEST(WhenPadsMayRunTest, every_reason_has_words_a_source_and_a_formula_where_there_is_a_value) {
    for (const auto& each : advised(complete()).when_pads_may_run) {
        const auto& reason = each.reason;
        EXPECT_FALSE(reason.rule.empty() || reason.brief.empty() || reason.explanation.empty() ||
                     reason.source.empty())
            << key_of(each.setting);
        if (each.value) {
            EXPECT_FALSE(reason.formula.empty()) << key_of(each.setting);
            EXPECT_FALSE(reason.inputs.empty()) << key_of(each.setting);
        }
        for (const auto& input : reason.inputs) {
            EXPECT_TRUE(input.origin != Origin::published || !input.source.empty()) << english(input.name);
        }
    }
}

// 83 degF, within the 27 to 30 degC of the University of Georgia, 2011.
TEST(WhenPadsMayRunTest, older_birds_get_a_start_within_the_published_band) {
    const auto timer = advised(complete());
    EXPECT_NEAR(*value_of(timer, Setting::start_temperature) - 273.15, 28.3333, 1e-3);
    EXPECT_THAT(why_of(timer, Setting::start_temperature), HasSubstr("all tunnel fans on"));
    EXPECT_THAT(english(timer.notes), Not(Contains(HasSubstr("Air"))));
    EXPECT_THAT(english(timer.notes), Not(Contains(HasSubstr("age of the birds"))));
}

TEST(WhenPadsMayRunTest, young_birds_get_none_and_the_grower_is_asked) {
    auto visit = complete();
    visit.file.visit.conditions.bird_age_days = 28.0;
    EXPECT_TRUE(value_of(advised(visit), Setting::start_temperature));
    visit.file.visit.conditions.bird_age_days = 27.0;
    const auto young = advised(visit);
    EXPECT_THAT(why_of(young, Setting::start_temperature), HasSubstr("27 days old"));
    EXPECT_THAT(why_of(young, Setting::start_temperature), HasSubstr("ask the grower"));
    for (const auto& each : young.when_pads_may_run) {
        EXPECT_FALSE(each.value) << key_of(each.setting);
    }
    EXPECT_EQ(brief_of(young, Setting::pad_hours_to), "no start temperature is advised");
}

TEST(WhenPadsMayRunTest, an_unknown_age_is_said_where_the_start_is_advised) {
    auto visit = complete();
    visit.file.visit.conditions.bird_age_days.reset();
    const auto timer = advised(visit);
    EXPECT_TRUE(value_of(timer, Setting::start_temperature));
    EXPECT_THAT(english(timer.notes), Contains(HasSubstr("holds from 28 days on")));
}

// 96.52 m3/s over 38 m2 is 2.54 m/s (500 ft/min).
TEST(WhenPadsMayRunTest, air_too_slow_or_of_unknown_speed_is_told) {
    auto visit = complete();
    visit.file.house.fan_airflow = TimedVisit::entry<VolumeFlow>("96.52m3/s");
    EXPECT_THAT(english(advised(visit).notes), Not(Contains(HasSubstr("Air goes down"))));
    visit.file.house.fan_airflow = TimedVisit::entry<VolumeFlow>("96m3/s");
    EXPECT_THAT(english(advised(visit).notes), Contains(HasSubstr("Air goes down the house at 2.53 m/s")));
    visit.file.house.cross_section.reset();
    EXPECT_THAT(english(advised(visit).notes), Contains(HasSubstr("Air speed down the house is not known")));
}

TEST(WhenPadsMayRunTest, no_lowest_house_temperature_is_made_up_but_one_above_the_start_is_noticed) {
    auto visit = complete();
    EXPECT_FALSE(value_of(advised(visit), Setting::lowest_house_temperature));
    EXPECT_THAT(why_of(advised(visit), Setting::lowest_house_temperature),
                HasSubstr("No number for it is published"));
    auto& found = visit.file.visit.found.emplace_back();
    found.timer = Id{"timer"};
    found.lowest_house_temperature = TimedVisit::entry<Temperature>("28.3degC");
    EXPECT_THAT(english(advised(visit).notes), Not(Contains(HasSubstr("lowest house temperature"))));
    found.lowest_house_temperature = TimedVisit::entry<Temperature>("83degF");
    EXPECT_THAT(english(advised(visit).notes), Contains(HasSubstr("lowest house temperature")));
    auto& left = visit.file.visit.left.emplace_back();
    left.timer = Id{"timer"};
    left.lowest_house_temperature = TimedVisit::entry<Temperature>("70degF");
    EXPECT_THAT(english(advised(visit).notes), Not(Contains(HasSubstr("lowest house temperature"))));
}

TEST(WhenPadsMayRunTest, a_cut_off_in_whole_percent_is_one_up_to_which_pads_still_cool) {
    const auto visit = complete();
    const auto timer = advised(visit);
    const double cut_off = *value_of(timer, Setting::humidity_cut_off);
    EXPECT_NEAR(100.0 * cut_off, std::round(100.0 * cut_off), 1e-9);
    const auto cooling = [&](double humidity) {
        const auto start = from_si<Temperature>(*value_of(timer, Setting::start_temperature));
        const auto air =
            air_from_humidity(start, from_si<Fraction>(humidity), standard_pressure(150_m).value()).value();
        // 100 m3/s through two banks of 20 m by 1.5 m.
        const auto e = expected_effectiveness(from_si<Velocity>(100.0 / 60.0), 150_mm).value();
        return in_si(e) * (in_kelvin(air.dry_bulb) - in_kelvin(air.wet_bulb));
    };
    EXPECT_GE(cooling(cut_off), 2.0);
    EXPECT_LT(cooling(cut_off + 0.01), 2.0);
    EXPECT_EQ(timer.advised(Setting::humidity_cut_off)->reason.rounding, Rounding::down);
}

TEST(WhenPadsMayRunTest, a_pad_of_unknown_effectiveness_is_assumed_and_listed) {
    auto visit = complete();
    EXPECT_THAT(english(advise(visit.file).assumed), Not(Contains(HasSubstr("pad effectiveness"))));
    visit.file.house.fan_airflow.reset();
    visit.file.visit.marks.clear();
    EXPECT_TRUE(value_of(advised(visit), Setting::humidity_cut_off));
    EXPECT_THAT(english(advise(visit.file).assumed), Contains("pad effectiveness 75 %"));
}

TEST(WhenPadsMayRunTest, only_a_sensor_outside_gets_a_cut_off) {
    auto visit = complete();
    const auto none_with = [&](std::vector<Sensor> sensors, const char* said) {
        visit.file.house.sensors = std::move(sensors);
        const auto timer = advised(visit);
        EXPECT_FALSE(value_of(timer, Setting::humidity_cut_off)) << said;
        EXPECT_THAT(why_of(timer, Setting::humidity_cut_off), HasSubstr(said));
    };
    const Sensor outside{Id{"o"}, SensorKind::humidity, SensorPlace::outside};
    const Sensor inside{Id{"i"}, SensorKind::humidity, SensorPlace::in_house};
    const Sensor behind{Id{"b"}, SensorKind::humidity, SensorPlace::behind_pad};
    const Sensor warmth{Id{"w"}, SensorKind::temperature, SensorPlace::outside};
    none_with({inside}, "shut them off while they work");
    none_with({behind}, "shut them off while they work");
    none_with({}, "No humidity sensor is described");
    none_with({warmth}, "No humidity sensor is described");
    none_with({outside, inside}, "Where this timer reads the sensor outside");
    visit.file.house.sensors = {outside, warmth};
    EXPECT_TRUE(value_of(advised(visit), Setting::humidity_cut_off));
}

// 36 degC less 14 K times the share falls to 28.3333 degC at a share of 0.547619: 9.01401 h (0.55 at 9, 0.38
// at 10), 20.52910 h (0.50 at 20, 0.59 at 21); the clock is 1 h ahead: 10:00.8 and 21:31.7.
TEST(WhenPadsMayRunTest, pad_hours_are_those_of_the_design_day_rounded_outwards) {
    const auto timer = advised(complete());
    EXPECT_EQ(clock_of(timer, Setting::pad_hours_from), "10:00");
    EXPECT_EQ(clock_of(timer, Setting::pad_hours_to), "21:45");
    const auto& from = timer.advised(Setting::pad_hours_from)->reason;
    const auto& to = timer.advised(Setting::pad_hours_to)->reason;
    EXPECT_NEAR(from.exact->si / hour, 10.01401, 1e-4);
    EXPECT_NEAR(to.exact->si / hour, 21.52910, 1e-4);
    EXPECT_EQ(from.rounding, Rounding::down);
    EXPECT_EQ(to.rounding, Rounding::up);
    EXPECT_EQ(to.resolution, std::optional{any(15_min)});
}

TEST(WhenPadsMayRunTest, hours_that_end_too_late_for_the_night_are_told_and_not_shortened) {
    const auto timer = advised(complete());
    EXPECT_THAT(why_of(timer, Setting::pad_hours_to), HasSubstr("later than the 22:00"));
    EXPECT_THAT(why_of(timer, Setting::pad_hours_to), HasSubstr("not shortened"));
}

TEST(WhenPadsMayRunTest, hours_that_leave_time_to_dry_say_when_the_pads_are_dry) {
    auto visit = complete();
    visit.file.farm.design_dry_bulb = TimedVisit::entry<Temperature>("33degC");
    const auto timer = advised(visit);
    EXPECT_THAT(why_of(timer, Setting::pad_hours_to), HasSubstr("before the night (22:00)"));
}

TEST(WhenPadsMayRunTest, a_pad_that_stays_wet_all_night_is_told_and_noted) {
    auto visit = complete();
    visit.file.visit.marks.clear();
    visit.dry_start("north", 45.0, 165.0, 7200.0);
    visit.dry_start("south", 60.0, 200.0, 7200.0);
    const auto timer = advised(visit);
    EXPECT_THAT(why_of(timer, Setting::pad_hours_to), HasSubstr("will not dry that night"));
    EXPECT_THAT(english(timer.notes), Contains(HasSubstr("stay wet all night")));
    EXPECT_EQ(clock_of(timer, Setting::pad_hours_to), "21:45");
}

TEST(WhenPadsMayRunTest, without_a_dry_out_of_every_bank_the_hours_end_by_the_weather_alone) {
    auto visit = complete();
    visit.file.visit.marks.clear();
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    const auto timer = advised(visit);
    EXPECT_EQ(clock_of(timer, Setting::pad_hours_to), "21:45");
    EXPECT_THAT(why_of(timer, Setting::pad_hours_to), HasSubstr("by the weather alone"));
}

TEST(WhenPadsMayRunTest, what_pad_hours_lack_is_named) {
    const auto lacks = [](auto take_away, const char* brief) {
        auto visit = complete();
        take_away(visit.file);
        const auto timer = advised(visit);
        for (const auto setting : {Setting::pad_hours_from, Setting::pad_hours_to}) {
            EXPECT_FALSE(value_of(timer, setting)) << brief;
            EXPECT_EQ(brief_of(timer, setting), brief);
        }
    };
    lacks([](VisitFile& f) { f.farm.design_daily_range.reset(); }, "the design day's range is missing");
    lacks([](VisitFile& f) { f.farm.design_dry_bulb.reset(); }, "the farm's design day is missing");
    lacks([](VisitFile& f) { f.farm.design_wet_bulb.reset(); }, "the farm's design day is missing");
    lacks([](VisitFile& f) { f.farm.design_wet_bulb = TimedVisit::entry<Temperature>("37degC"); },
          "the design day cannot be used");
    lacks([](VisitFile& f) { f.house.timers.front().pumps = {Id{"none"}}; }, "no pads are described");
    lacks([](VisitFile& f) { f.farm.design_dry_bulb = TimedVisit::entry<Temperature>("28degC"); },
          "not hot enough on the design day");
    lacks(
        [](VisitFile& f) {
            f.farm.design_dry_bulb = TimedVisit::entry<Temperature>("32degC");
            f.farm.design_wet_bulb = TimedVisit::entry<Temperature>("30degC");
        },
        "too damp on the design day");
    lacks([](VisitFile& f) { f.farm.design_daily_range = TimedVisit::entry<TemperatureDifference>("5K"); },
          "leave them open: pads help day and night");
}

TEST(WhenPadsMayRunTest, other_kinds_of_timer_have_no_such_settings_but_are_told_what_must_call_for_them) {
    for (const auto kind : {TimerKind::fixed_interval, TimerKind::on_demand}) {
        auto visit = complete();
        visit.timer().kind = kind;
        const auto timer = advised(visit);
        EXPECT_TRUE(timer.when_pads_may_run.empty());
        EXPECT_THAT(english(timer.notes), Contains(HasSubstr("from 28.3 °C on in the house")));
        EXPECT_THAT(english(timer.notes), Contains(HasSubstr("between 10:00 and 21:45")));
        visit.file.farm.design_daily_range.reset();
        EXPECT_THAT(english(advised(visit).notes), Contains(HasSubstr("from 28.3 °C on in the house")));
        visit.file.visit.conditions.bird_age_days = 5.0;
        EXPECT_THAT(english(advised(visit).notes), Contains(HasSubstr("5 days old")));
    }
}

TEST(WhenPadsMayRunTest, with_the_hours_of_the_design_day_nothing_is_assumed_about_its_hottest_one) {
    auto visit = complete();
    EXPECT_THAT(english(advise(visit.file).assumed), Not(Contains(HasSubstr("most water evaporates"))));
    const auto with_range = advised(visit).evaporation_ratio;
    visit.file.farm.design_daily_range.reset();
    EXPECT_THAT(english(advise(visit.file).assumed), Contains(HasSubstr("most water evaporates")));
    EXPECT_EQ(advised(visit).evaporation_ratio, with_range);
}

TEST(WhenPadsMayRunTest, advice_copied_to_what_is_left_holds_them) {
    const auto settings = as_settings(advised(complete()));
    ASSERT_TRUE(settings.start_temperature && settings.humidity_cut_off);
    EXPECT_EQ(settings.start_temperature->text(), "83degF");
    EXPECT_FALSE(settings.lowest_house_temperature);
    ASSERT_TRUE(settings.pad_hours_from && settings.pad_hours_to);
    EXPECT_EQ(settings.pad_hours_from->text(), "10:00");
    EXPECT_EQ(settings.pad_hours_to->text(), "21:45");
    EXPECT_FALSE(settings.rinse_at);
}

TEST(WhenPadsMayRunTest, a_rinse_by_the_clock_is_told_the_start_of_pad_hours) {
    EXPECT_THAT(why_of(advised(complete()), Setting::rinse_at), HasSubstr("start of pad hours, 10:00"));
}

TEST(WhenPadsMayRunTest, a_band_chosen_for_the_farm_is_told_as_chosen) {
    auto visit = complete();
    EXPECT_THAT(why_of(advised(visit), Setting::start_temperature),
                HasSubstr("need pads from the low to mid 80s"));
    visit.file.farm.limits.warmest_start = TimedVisit::entry<Temperature>("32degC");
    visit.file.farm.limits.start_temperature = TimedVisit::entry<Temperature>("31degC");
    const auto timer = advised(visit);
    EXPECT_EQ(value_of(timer, Setting::start_temperature), std::optional{304.15});
    EXPECT_THAT(why_of(timer, Setting::start_temperature), HasSubstr("27 °C to 32 °C on, as somebody chose"));
    const auto& inputs = timer.advised(Setting::start_temperature)->reason.inputs;
    EXPECT_TRUE(std::ranges::all_of(inputs.begin(), inputs.begin() + 3, [](const ReasonInput& input) {
        return input.origin == Origin::entered;
    }));
    EXPECT_THAT(english(inputs[1].name),
                HasSubstr("changed for this farm (the program's own: 27 °C to 30 °C)"));
    EXPECT_THAT(english(advise(visit.file).assumed),
                Contains("start temperature 31 °C, changed for this farm (the program's own: 28.3 °C)"));
}

TEST(WhenPadsMayRunTest, a_clock_two_hours_ahead_moves_the_pad_hours_by_an_hour) {
    auto visit = complete();
    const auto hours = [&](Setting setting) {
        return value_of(advised(visit), setting).value_or(0.0) / hour;
    };
    const auto from = hours(Setting::pad_hours_from);
    const auto to = hours(Setting::pad_hours_to);
    visit.file.farm.limits.clock_ahead_of_sun = TimedVisit::entry<Duration>("2h");
    EXPECT_DOUBLE_EQ(hours(Setting::pad_hours_from), from + 1.0);
    EXPECT_DOUBLE_EQ(hours(Setting::pad_hours_to), to + 1.0);
}

TEST(WhenPadsMayRunTest, a_timer_of_another_kind_is_advised_what_its_controller_can_hold) {
    auto visit = complete();
    auto described = generic_template(TimerKind::on_demand);
    choose_controller(visit.timer(), described);
    const auto advice = advised(visit);
    EXPECT_NEAR(*value_of(advice, Setting::start_temperature), 273.15 + (83.0 - 32.0) / 1.8, 1e-6);
    ASSERT_TRUE(advice.fit);
    EXPECT_EQ(advice.fit->line(TemplateKey::start_temperature)->number, "83");
    EXPECT_THAT(english(advice.notes), Not(Contains(HasSubstr("This timer has no start temperature"))));
    std::erase_if(described.settings,
                  [](const TemplateSetting& each) { return each.setting != TemplateKey::start_temperature; });
    choose_controller(visit.timer(), described);
    const auto start_only = advised(visit);
    ASSERT_EQ(start_only.when_pads_may_run.size(), 1U);
    EXPECT_THAT(english(start_only.notes), Contains(HasSubstr("between 10:00 and 21:45 only")));
    visit.file.visit.conditions.bird_age_days = 5.0;
    EXPECT_FALSE(value_of(advised(visit), Setting::start_temperature)) << "young birds";
}

}  // namespace
}  // namespace wetfront
