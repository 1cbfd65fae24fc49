// SPDX-License-Identifier: Apache-2.0
#include "cycle/margins.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

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

TEST(MarginsTest, limits_on_the_pads_are_checked_on_both_sides) {
    const auto with = [](auto change) {
        CycleMargins margins;
        change(margins);
        return check_house_limits(margins).has_value();
    };
    EXPECT_TRUE(with([](CycleMargins&) {}));
    EXPECT_TRUE(with([](CycleMargins& m) { m.start_temperature = 27_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.start_temperature = 26.9_degC; }));
    EXPECT_TRUE(with([](CycleMargins& m) { m.start_temperature = 30_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.start_temperature = 30.1_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.coolest_start = 14_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.warmest_start = 46_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.older_birds_days = -1.0; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.least_air_speed = 11.0_mps; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.least_cooling = 0.05_K; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.hot_outside = 28_degC; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.humidity_step = 0_percent; }));
    EXPECT_TRUE(with([](CycleMargins& m) { m.night = seconds(24 * 3600.0); }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.night = seconds(24 * 3600.0 + 1.0); }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.dry_face = 0.0; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.longest_dry_down = 0_s; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.clock_ahead_of_sun = seconds(-1.0); }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.clock_step = 0_s; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.clock_step = seconds(std::nan("")); }));
}

}  // namespace
}  // namespace wetfront
