// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/strip_map.h"

#include <gtest/gtest.h>

namespace wetfront::ui {
namespace {

TEST(StripMapTest, every_time_that_is_known_is_passed_on) {
    CycleStrip strip;
    strip.label = "advised";
    strip.period_s = 300.0;
    strip.on_s = 130.0;
    strip.ceiling_s = 200.0;
    strip.fill_s = 45.0;
    strip.wet_through_s = 195.0;
    strip.run_off_s = 90.0;
    strip.dry_patch_s = 280.0;
    strip.lowest_level = 0.75;
    strip.drip_returns_s = 85.5;
    const QVariantMap expected{{"label", "advised"},  {"period", 300.0},    {"continuous", false},
                               {"on", 130.0},         {"ceiling", 200.0},   {"fill", 45.0},
                               {"wetThrough", 195.0}, {"runOff", 90.0},     {"dryPatch", 280.0},
                               {"lowestLevel", 0.75}, {"dripReturns", 85.5}};
    EXPECT_EQ(strip_map(strip, Formatter{UnitSystem::si}), expected);
}

TEST(StripMapTest, what_is_not_known_is_left_out) {
    const auto map = strip_map(CycleStrip{}, Formatter{UnitSystem::si});
    EXPECT_EQ(map.keys(), (QStringList{"continuous", "fill", "label", "on", "period"}));
}

}  // namespace
}  // namespace wetfront::ui
