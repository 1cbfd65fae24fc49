// SPDX-License-Identifier: Apache-2.0
#include "cycle/margins.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "records/fields.h"

namespace wetfront {
namespace {

using namespace literals;
using ::testing::HasSubstr;

TEST(MarginsTest, every_limit_is_named_with_its_value_and_a_published_one_with_its_source) {
    std::set<std::string> texts;
    for (const auto limit : all_limits) {
        const auto [text, origin, source] = limit_text({}, limit);
        EXPECT_FALSE(text.args.empty()) << text.text;
        EXPECT_TRUE(texts.insert(in_english(text, UnitSystem::si)).second) << text.text;
        EXPECT_TRUE(origin == Origin::assumed || origin == Origin::published) << text.text;
        if (origin == Origin::published) {
            EXPECT_FALSE(source.empty()) << text.text;
        }
    }
    EXPECT_EQ(texts.size(), 19U);
}

TEST(MarginsTest, what_is_changed_is_told_as_changed) {
    CycleMargins margins;
    margins.start_temperature = 29_degC;
    EXPECT_THAT(in_english(limit_text(margins, Limit::start_temperature).text, UnitSystem::si),
                HasSubstr("29 °C"));
    margins.night = seconds(21.5 * 3600.0);
    EXPECT_THAT(in_english(limit_text(margins, Limit::night).text, UnitSystem::us), HasSubstr("21:30"));
    margins.periods = {300_s, 480_s, 600_s};
    EXPECT_THAT(in_english(limit_text(margins, Limit::periods).text, UnitSystem::us),
                HasSubstr("5 min, then 8 min, then 10 min"));
}

template <class Q>
Optional<Q> typed(const char* text) {
    return Entered<Q>::parse(text, "typed").value();
}

TEST(MarginsOfTest, limits_on_the_pads_are_checked_on_both_sides) {
    const auto with = [](auto change) {
        Farm farm;
        change(farm.limits);
        return margins_of(farm).has_value();
    };
    const auto start = [&](const char* text) {
        return with([&](Limits& l) { l.start_temperature = typed<Temperature>(text); });
    };
    EXPECT_TRUE(start("27degC"));
    EXPECT_FALSE(start("26.9degC"));
    EXPECT_TRUE(start("30degC"));
    EXPECT_FALSE(start("30.1degC"));
    EXPECT_FALSE(with([](Limits& l) { l.coolest_start = typed<Temperature>("14degC"); }));
    EXPECT_FALSE(with([](Limits& l) { l.warmest_start = typed<Temperature>("46degC"); }));
    EXPECT_FALSE(with([](Limits& l) { l.older_birds_days = -1.0; }));
    EXPECT_FALSE(with([](Limits& l) { l.least_air_speed = typed<Velocity>("11m/s"); }));
    EXPECT_FALSE(with([](Limits& l) { l.least_cooling = typed<TemperatureDifference>("0.05K"); }));
    EXPECT_FALSE(with([](Limits& l) { l.hot_outside = typed<Temperature>("28degC"); }));
    EXPECT_FALSE(with([](Limits& l) { l.humidity_step = typed<Fraction>("0%"); }));
    EXPECT_TRUE(with([](Limits& l) { l.night = TimeOfDay{12 * 60}; }));
    EXPECT_FALSE(with([](Limits& l) { l.night = TimeOfDay{12 * 60 - 1}; }));
    EXPECT_FALSE(with([](Limits& l) { l.dry_face = typed<Fraction>("0%"); }));
    EXPECT_FALSE(with([](Limits& l) { l.longest_dry_down = typed<Duration>("0s"); }));
    EXPECT_FALSE(with([](Limits& l) { l.clock_ahead_of_sun = typed<Duration>("-1s"); }));
    EXPECT_FALSE(with([](Limits& l) { l.clock_step = typed<Duration>("0s"); }));
    EXPECT_FALSE(with([](Limits& l) { l.clock_step = Entered<Duration>::of(seconds(std::nan(""))); }));
}

/// A limit of the record with a usable value, and the limit of the advice that it changes.
struct Changed {
    const char* key;
    Limit limit;
    void (*change)(Limits&);
    const char* told;
};

const std::vector<Changed>& changes() {
    static const std::vector<Changed> all{
        {"coolest_start", Limit::start_band,
         [](Limits& l) { l.coolest_start = typed<Temperature>("26degC"); }, "26 °C to 30 °C"},
        {"warmest_start", Limit::start_band,
         [](Limits& l) { l.warmest_start = typed<Temperature>("31degC"); }, "27 °C to 31 °C"},
        {"start_temperature", Limit::start_temperature,
         [](Limits& l) { l.start_temperature = typed<Temperature>("29degC"); }, "start temperature 29 °C"},
        {"older_birds_days", Limit::older_birds, [](Limits& l) { l.older_birds_days = 35.0; },
         "from 35 days"},
        {"least_air_speed", Limit::air_speed, [](Limits& l) { l.least_air_speed = typed<Velocity>("3m/s"); },
         "at least 3 m/s"},
        {"least_cooling", Limit::least_cooling,
         [](Limits& l) { l.least_cooling = typed<TemperatureDifference>("1.5K"); }, "damp 1.5 "},
        {"hot_outside", Limit::hot_outside, [](Limits& l) { l.hot_outside = typed<Temperature>("33degC"); },
         "the pads 33 °C"},
        {"humidity_step", Limit::humidity_step, [](Limits& l) { l.humidity_step = typed<Fraction>("5%"); },
         "humidity 5 %"},
        {"night", Limit::night, [](Limits& l) { l.night = TimeOfDay{21 * 60}; }, "dry by 21:00"},
        {"dry_face", Limit::dry_face, [](Limits& l) { l.dry_face = typed<Fraction>("10%"); }, "with 10 %"},
        {"longest_dry_down", Limit::longest_dry_down,
         [](Limits& l) { l.longest_dry_down = typed<Duration>("5h"); }, "not dry 5 h"},
        {"clock_ahead_of_sun", Limit::clock_ahead_of_sun,
         [](Limits& l) { l.clock_ahead_of_sun = typed<Duration>("90min"); }, "by 90 min"},
        {"clock_step", Limit::clock_step, [](Limits& l) { l.clock_step = typed<Duration>("30min"); },
         "time of day 30 min"},
        {"water_margin", Limit::water_margin, [](Limits& l) { l.water_margin = typed<Fraction>("150%"); },
         "water margin 150 %"},
        {"least_rest", Limit::least_rest, [](Limits& l) { l.least_rest = typed<Duration>("90s"); },
         "shortest rest 90 s"},
        {"drying_share", Limit::drying_share, [](Limits& l) { l.drying_share = typed<Fraction>("40%"); },
         "may take 40 %"},
        {"constant_share", Limit::constant_share,
         [](Limits& l) { l.constant_share = typed<Fraction>("80%"); }, "constant rate 80 %"},
        {"first_period", Limit::periods, [](Limits& l) { l.first_period = typed<Duration>("6min"); },
         "6 min, then 10 min"},
        {"second_period", Limit::periods, [](Limits& l) { l.second_period = typed<Duration>("15min"); },
         "5 min, then 15 min"},
        {"house_lag", Limit::house_lag, [](Limits& l) { l.house_lag = typed<Duration>("15min"); },
         "to answer 15 min"},
        {"dead_band", Limit::dead_band, [](Limits& l) { l.dead_band = typed<TemperatureDifference>("1K"); },
         "dead band 1 "},
    };
    return all;
}

TEST(MarginsOfTest, a_farm_without_limits_has_the_programs_own) {
    const auto margins = margins_of(Farm{});
    ASSERT_TRUE(margins) << margins.error().text();
    for (const auto limit : all_limits) {
        EXPECT_FALSE(is_changed(margins.value(), limit)) << limit_text({}, limit).text.text;
    }
}

TEST(MarginsOfTest, each_limit_of_a_farm_changes_its_limit_of_the_advice_and_no_other) {
    std::set<std::string> keys;
    for (const auto& row : changes()) {
        Farm farm;
        row.change(farm.limits);
        const auto margins = margins_of(farm);
        ASSERT_TRUE(margins) << row.key << ": " << margins.error().text();
        for (const auto limit : all_limits) {
            EXPECT_EQ(is_changed(margins.value(), limit), limit == row.limit)
                << row.key << " and " << limit_text({}, limit).text.text;
        }
        const auto [text, origin, source] = limit_text(margins.value(), row.limit);
        const auto told = in_english(text, UnitSystem::si);
        EXPECT_THAT(told, HasSubstr(row.told));
        EXPECT_THAT(told, HasSubstr(", changed for this farm (the program's own: "));
        EXPECT_EQ(origin, Origin::entered) << told;
        keys.insert(row.key);
    }
    Limits record;
    each_field(record,
               [&](const Field& field, const auto&) { EXPECT_TRUE(keys.contains(field.key)) << field.key; });
}

TEST(MarginsOfTest, the_programs_own_value_typed_in_another_unit_is_no_change) {
    Farm farm;
    farm.limits.least_rest = typed<Duration>("1 min");
    farm.limits.start_temperature = typed<Temperature>("83degF");
    farm.limits.least_air_speed = typed<Velocity>("500ft/min");
    const auto margins = margins_of(farm);
    ASSERT_TRUE(margins);
    for (const auto limit : all_limits) {
        EXPECT_FALSE(is_changed(margins.value(), limit));
    }
}

TEST(MarginsOfTest, limits_that_cannot_be_used_together_are_named_and_the_programs_own_are_used) {
    struct Row {
        void (*change)(Limits&);
        const char* item;
    };
    const std::vector<Row> rows{
        {[](Limits& l) { l.start_temperature = typed<Temperature>("20degC"); }, "start temperature"},
        {[](Limits& l) { l.coolest_start = typed<Temperature>("29degC"); }, "start temperature"},
        {[](Limits& l) { l.hot_outside = typed<Temperature>("25degC"); }, "hot outside"},
        {[](Limits& l) { l.night = TimeOfDay{2 * 60}; }, "night"},
        {[](Limits& l) { l.least_rest = typed<Duration>("10min"); }, "shortest rest"},
        {[](Limits& l) { l.first_period = typed<Duration>("11min"); }, "period tried next"},
    };
    for (const auto& row : rows) {
        Farm farm;
        farm.limits.dead_band = typed<TemperatureDifference>("1K");
        row.change(farm.limits);
        const auto margins = margins_of(farm);
        ASSERT_FALSE(margins) << row.item;
        EXPECT_THAT(margins.error().item, HasSubstr(row.item));
        EXPECT_FALSE(is_changed(usable_margins(farm), Limit::dead_band)) << row.item;
    }
}

TEST(MarginsOfTest, the_programs_own_written_out_for_a_farm_change_nothing) {
    Farm farm;
    farm.limits = every_limit();
    each_field(farm.limits, [](const Field& field, const auto& member) { EXPECT_TRUE(member) << field.key; });
    EXPECT_EQ(farm.limits.start_temperature->text(), "83degF");
    EXPECT_EQ(farm.limits.clock_ahead_of_sun->text(), "60 min");
    const auto margins = margins_of(farm);
    ASSERT_TRUE(margins) << margins.error().text();
    for (const auto limit : all_limits) {
        EXPECT_FALSE(is_changed(margins.value(), limit)) << limit_text({}, limit).text.text;
    }
}

TEST(MarginsTest, a_source_says_when_what_rests_on_it_was_changed) {
    CycleMargins margins;
    EXPECT_EQ(limit_source(margins, {Limit::night, Limit::least_rest}, "somebody"), "somebody");
    margins.least_rest = 90_s;
    EXPECT_EQ(limit_source(margins, {Limit::night, Limit::least_rest}, "somebody"),
              "changed for this farm; the program's own: somebody");
    EXPECT_EQ(limit_source(margins, {Limit::night}, "somebody"), "somebody");
}

}  // namespace
}  // namespace wetfront
