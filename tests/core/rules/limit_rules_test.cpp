// SPDX-License-Identifier: Apache-2.0
#include "rules/limit_rules.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "rule_case.h"
#include "rules/guidance_rules.h"
#include "rules/heat_rules.h"
#include "rules/pad_hours_rules.h"
#include "rules/rinse_rules.h"
#include "rules/single_settings.h"
#include "rules/temperature_rules.h"
#include "rules/trim_rules.h"
#include "rules/water_need.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

using Change = void (*)(CycleMargins&);

/// A limit moved to either side of the program's own.
struct Side {
    const char* name;
    Change less_safe;
    Change safer;
    const char* told;  ///< part of what is said on the less safe side
    const char* remedy;
};
std::ostream& operator<<(std::ostream& out, const Side& side) {
    return out << side.name;
}

class LessSafeSide : public testing::TestWithParam<Side> {};

TEST_P(LessSafeSide, is_a_note_with_its_cost_and_the_other_side_is_none) {
    const auto& side = GetParam();
    RuleCase house;
    EXPECT_THAT(house.findings(limits_less_safe), IsEmpty());
    side.safer(house.advice.margins);
    EXPECT_THAT(house.findings(limits_less_safe), IsEmpty());
    house.advice.margins = {};
    side.less_safe(house.advice.margins);
    const auto findings = house.findings(limits_less_safe);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "limits-less-safe");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr(side.told));
    EXPECT_THAT(english(findings[0].remedy), HasSubstr(side.remedy));
    EXPECT_NE(value_in(findings[0], "limit"), value_in(findings[0], "own"));
    EXPECT_THAT(findings[0].source, HasSubstr("the program's own value: "));
}

INSTANTIATE_TEST_SUITE_P(
    each, LessSafeSide,
    testing::Values(
        Side{"water margin", [](CycleMargins& m) { m.water_margin = 1.24; },
             [](CycleMargins& m) { m.water_margin = 1.26; }, "Runs bring 124 % of the water",
             "Set it back to 125 %"},
        Side{"rest", [](CycleMargins& m) { m.least_rest = seconds(59.0); },
             [](CycleMargins& m) { m.least_rest = seconds(61.0); }, "Rests of 59 s", "Set it back to 60 s"},
        Side{"gap share", [](CycleMargins& m) { m.drying_share = 0.6; },
             [](CycleMargins& m) { m.drying_share = 0.49; }, "leaves 40 % of it", "Set it back to 50 %"},
        Side{"constant share", [](CycleMargins& m) { m.constant_share = 0.6; },
             [](CycleMargins& m) { m.constant_share = 0.8; }, "rinses get shorter", "Set it back to 70 %"},
        Side{"warmest start", [](CycleMargins& m) { m.warmest_start = from_si<Temperature>(273.15 + 31.5); },
             [](CycleMargins& m) { m.warmest_start = from_si<Temperature>(273.15 + 29.0); },
             "1.5 °C above the published band", "Set it back to 27 °C to 30 °C"},
        Side{"coolest start", [](CycleMargins& m) { m.coolest_start = from_si<Temperature>(273.15 + 25.0); },
             [](CycleMargins& m) { m.coolest_start = from_si<Temperature>(273.15 + 28.0); },
             "2 °C below the published band", "Set it back to 27 °C to 30 °C"},
        Side{"older birds", [](CycleMargins& m) { m.older_birds_days = 21.0; },
             [](CycleMargins& m) { m.older_birds_days = 35.0; }, "from 21 days on, not from 28",
             "Set it back to 28"},
        Side{"air speed", [](CycleMargins& m) { m.least_air_speed = from_si<Velocity>(2.0); },
             [](CycleMargins& m) { m.least_air_speed = from_si<Velocity>(3.0); }, "from 2 m/s",
             "Set it back to 2.5"},
        Side{"least cooling", [](CycleMargins& m) { m.least_cooling = from_si<TemperatureDifference>(3.0); },
             [](CycleMargins& m) { m.least_cooling = from_si<TemperatureDifference>(1.5); },
             "until they cool by 3 °C, not by 2 °C", "Set it back to 2 °C"},
        Side{"hot outside", [](CycleMargins& m) { m.hot_outside = from_si<Temperature>(273.15 + 38.0); },
             [](CycleMargins& m) { m.hot_outside = from_si<Temperature>(273.15 + 33.0); },
             "Up to 38 °C outside", "Set it back to 35 °C"},
        Side{"night", [](CycleMargins& m) { m.night = seconds(23.0 * 3600.0); },
             [](CycleMargins& m) { m.night = seconds(21.0 * 3600.0); }, "wet until 23:00",
             "Set it back to 22:00"}),
    [](const auto& side) {
        std::string name = side.param.name;
        std::ranges::replace(name, ' ', '_');
        return name;
    });

TEST(LimitsLessSafeTest, what_describes_the_site_has_no_less_safe_side) {
    RuleCase house;
    for (const double share : {0.5, 2.0}) {
        auto& margins = house.advice.margins;
        margins = {};
        margins.clock_ahead_of_sun = share * margins.clock_ahead_of_sun;
        margins.clock_step = share * margins.clock_step;
        margins.house_lag = share * margins.house_lag;
        margins.dead_band = share * margins.dead_band;
        EXPECT_THAT(house.findings(limits_less_safe), IsEmpty());
    }
}

TEST(LimitsUnusableTest, limits_that_cannot_be_used_together_are_a_fault_that_names_the_first) {
    RuleCase house;
    auto& limits = house.builder.file().farm.limits;
    limits.least_rest = typed<Duration>("599s");
    EXPECT_THAT(house.findings(limits_unusable), IsEmpty());
    limits.least_rest = typed<Duration>("600s");
    const auto findings = house.findings(limits_unusable);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_THAT(english(findings[0].message), HasSubstr("cannot be used together (shortest rest: '600 s'"));
}

/// A house that one rule judges by one limit: findings with the program's own, and with another.
struct Moved {
    const char* name;
    RuleCase (*house)();
    std::vector<Finding> (*rule)(const RuleInputs&);
    std::size_t with_own;
    Change change;
    std::size_t with_changed;
};
std::ostream& operator<<(std::ostream& out, const Moved& moved) {
    return out << moved.name;
}

RuleCase trimming() {
    RuleCase house;
    house.cycle("90s", "300s");
    house.trims_to("150s");
    house.found().review_interval = typed<Duration>("600s");
    return house;
}
RuleCase resting_60_s() {
    RuleCase house;
    house.cycle("240s", "300s");
    return house;
}
RuleCase starting_at(const char* start, double age) {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>(start);
    house.conditions().bird_age_days = age;
    return house;
}
RuleCase rinsing_with_birds_of_30_days() {
    RuleCase house;
    house.found().rinse_at = TimeOfDay{600};
    house.found().rinse_length = typed<Duration>("150s");
    house.conditions().bird_age_days = 30.0;
    return house;
}
// 36 degC less 20 K by the published shares meets a start of 28 degC at 10:53 and at 20:05 by a clock an hour
// ahead of the sun (worked out in the tests of the pad hours).
RuleCase with_hours_to(int minute) {
    RuleCase house;
    house.builder.both_weathers();
    house.builder.file().farm.design_daily_range = typed<TemperatureDifference>("20K");
    house.found().start_temperature = typed<Temperature>("28degC");
    house.found().pad_hours_from = TimeOfDay{653};
    house.found().pad_hours_to = TimeOfDay{minute};
    house.found().rinse_at = TimeOfDay{660};
    house.found().rinse_length = typed<Duration>("150s");
    return house;
}
RuleCase cut_off_at_34_9_degC() {
    auto house = with_hours_to(1205);
    house.builder.file().farm.design_dry_bulb = typed<Temperature>("34.9degC");
    house.conditions().outside_dry_bulb.reset();
    house.found().humidity_cut_off = typed<Fraction>("30%");
    house.house().sensors.push_back({Id{"sensor"}, SensorKind::humidity, SensorPlace::outside});
    return house;
}
// A pad of 150 mm at its design speed cools air of 28 degC and 80 % by about 2.5 K.
RuleCase cut_off_at_80_percent() {
    RuleCase house;
    house.found().start_temperature = typed<Temperature>("28degC");
    house.found().humidity_cut_off = typed<Fraction>("80%");
    house.conditions().face_velocity = typed<Velocity>("1.78m/s");
    house.house().sensors.push_back({Id{"sensor"}, SensorKind::humidity, SensorPlace::outside});
    return house;
}
RuleCase moving_air_at(const char* airflow) {
    RuleCase house;
    house.house().fan_airflow = typed<VolumeFlow>(airflow);
    house.house().cross_section = typed<Area>("40m2");
    return house;
}
// On 100 s of 300 s with a fill of 40 s the far end is unsupplied for 240 s, half of the dry-out time.
RuleCase gap_of_half() {
    RuleCase house;
    house.cycle("100s", "300s");
    house.timed(1).fill = RuleCase::reading(40.0, 2.0);
    house.timed(1).dry_out = RuleCase::reading(480.0, 10.0);
    return house;
}
// 105 s of wetting over the dry-out time evaporate; at 1050 s, 45 s + 1.25 times 30 s are 82.5 s.
RuleCase running_82_5_s(double dry_out) {
    RuleCase house;
    house.cycle("82.5s", "300s");
    BankQuestion asked;
    asked.fill = seconds(45.0);
    asked.start = DryStart{seconds(150.0), seconds(dry_out)};
    asked.uncertainty = seconds(0.0);
    house.advised().banks.at(0).question = asked;
    return house;
}

class ChangedLimit : public testing::TestWithParam<Moved> {};

TEST_P(ChangedLimit, moves_the_threshold_of_the_rule_that_judges_by_it) {
    const auto& moved = GetParam();
    auto house = moved.house();
    EXPECT_THAT(house.findings(moved.rule), SizeIs(moved.with_own));
    moved.change(house.advice.margins);
    EXPECT_THAT(house.findings(moved.rule), SizeIs(moved.with_changed));
}

INSTANTIATE_TEST_SUITE_P(
    each, ChangedLimit,
    testing::Values(
        Moved{"rest", resting_60_s, rest_too_short, 0, [](CycleMargins& m) { m.least_rest = seconds(61.0); },
              1},
        Moved{"dead_band", trimming, trim_within_dead_band, 0,
              [](CycleMargins& m) { m.dead_band = from_si<TemperatureDifference>(1.1); }, 1},
        Moved{"house_lag", trimming, review_before_answer, 0,
              [](CycleMargins& m) { m.house_lag = seconds(601.0); }, 1},
        Moved{"coolest_start_up", [] { return starting_at("27.5degC", 35.0); }, start_temperature_low, 0,
              [](CycleMargins& m) { m.coolest_start = from_si<Temperature>(273.15 + 28.0); }, 1},
        Moved{"coolest_start_down", [] { return starting_at("26degC", 35.0); }, start_temperature_low, 1,
              [](CycleMargins& m) { m.coolest_start = from_si<Temperature>(273.15 + 25.9); }, 0},
        Moved{"warmest_start", [] { return starting_at("31degC", 35.0); }, start_temperature_high, 1,
              [](CycleMargins& m) { m.warmest_start = from_si<Temperature>(273.15 + 31.0); }, 0},
        Moved{"older_birds_start", [] { return starting_at("20degC", 30.0); }, start_temperature_low, 1,
              [](CycleMargins& m) { m.older_birds_days = 31.0; }, 0},
        Moved{"older_birds_chill", [] { return starting_at("28degC", 30.0); }, pads_chill_young_birds, 0,
              [](CycleMargins& m) { m.older_birds_days = 31.0; }, 1},
        Moved{"older_birds_rinse", rinsing_with_birds_of_30_days, rinse_on_young_birds, 0,
              [](CycleMargins& m) { m.older_birds_days = 31.0; }, 1},
        Moved{"air_speed", [] { return moving_air_at("104m3/s"); }, air_speed_below_500, 0,
              [](CycleMargins& m) { m.least_air_speed = from_si<Velocity>(2.61); }, 1},
        Moved{"least_cooling", cut_off_at_80_percent, humidity_cut_off_useless, 0,
              [](CycleMargins& m) { m.least_cooling = from_si<TemperatureDifference>(4.0); }, 1},
        Moved{"hot_outside", cut_off_at_34_9_degC, cut_off_stops_pads_in_heat, 0,
              [](CycleMargins& m) { m.hot_outside = from_si<Temperature>(273.15 + 34.9); }, 1},
        Moved{"clock_pad_hours", [] { return with_hours_to(1205); }, pad_hours_end_in_heat, 0,
              [](CycleMargins& m) { m.clock_ahead_of_sun = seconds(7200.0); }, 1},
        Moved{"clock_rinse", [] { return with_hours_to(1205); }, rinse_before_heat, 0,
              [](CycleMargins& m) { m.clock_ahead_of_sun = seconds(7200.0); }, 1},
        Moved{"night", [] { return with_hours_to(1380); }, pad_hours_into_night, 1,
              [](CycleMargins& m) { m.night = seconds(23.5 * 3600.0); }, 0},
        Moved{"gap_share", gap_of_half, gap_outlasts_wet_pad, 0,
              [](CycleMargins& m) { m.drying_share = 0.49; }, 1},
        Moved{"water_margin", [] { return running_82_5_s(1050.0); }, base_below_need, 0,
              [](CycleMargins& m) { m.water_margin = 1.26; }, 1},
        Moved{"constant_share", [] { return running_82_5_s(100.0); }, drying_outruns_supply_of_bank, 0,
              [](CycleMargins& m) { m.constant_share = 0.96; }, 1}),
    [](const auto& moved) { return moved.param.name; });

TEST(ChangedLimitTest, the_source_of_a_finding_says_that_its_limit_was_changed) {
    auto house = resting_60_s();
    house.advice.margins.least_rest = seconds(90.0);
    const auto findings = house.findings(rest_too_short);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("shorter than 90 s"));
    EXPECT_EQ(findings[0].source,
              "changed for this farm; the program's own: 60 s: assumed; common practice, no source");
}

// 300 s less a rest of 150 s leave 150 s, and 156 s are needed from dry.
TEST(ChangedLimitTest, a_ceiling_is_not_raised_into_a_longer_rest) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.found().on_time_ceiling = typed<Duration>("149s");
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    EXPECT_THAT(english(house.findings(ceiling_below_wet_through).at(0).remedy),
                HasSubstr("raise the ceiling"));
    house.advice.margins.least_rest = seconds(150.0);
    EXPECT_THAT(english(house.findings(ceiling_below_wet_through).at(0).remedy),
                HasSubstr("would leave the pump no rest"));
}

}  // namespace
}  // namespace wetfront::test
