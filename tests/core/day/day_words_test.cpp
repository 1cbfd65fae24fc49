// SPDX-License-Identifier: Apache-2.0
#include "day/day_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// A day with pads wet throughout.
DayTotals wet_day() {
    DayTotals day;
    day.hottest_house = celsius(30.0);
    day.above_house_limit = seconds(3605.0);
    day.cooling = 90.0;
    day.pumped = from_si<Mass>(20'000.0);
    day.evaporated = from_si<Mass>(12'000.0);
    day.pump_starts = 120;
    return day;
}

class DayWordsTest : public testing::Test {
protected:
    [[nodiscard]] DayComparison words() const { return compared(std::array{found, advised}, "USD"); }
    [[nodiscard]] std::string sentence() const { return in_english(words().sentence, UnitSystem::si); }
    /// "first | second | difference" of the row with that name; empty where there is none.
    [[nodiscard]] std::string row(const std::string& what) const {
        for (const auto& each : words().rows) {
            if (in_english(each.what, UnitSystem::si) == what) {
                return in_english(each.values[0], UnitSystem::si) + " | " +
                       in_english(each.values[1], UnitSystem::si) + " | " +
                       in_english(each.difference, UnitSystem::si);
            }
        }
        return {};
    }

    DayTotals found = wet_day();
    DayTotals advised = wet_day();
};

TEST_F(DayWordsTest, two_days_that_are_alike_are_told_so) {
    EXPECT_EQ(sentence(),
              "The house stays as cool as advised as it does as found. The pumps lift about as much water.");
}

TEST_F(DayWordsTest, a_cooler_house_and_less_pumping_are_told_with_their_numbers) {
    found.hottest_house = celsius(31.5);
    advised.pumped = from_si<Mass>(15'000.0);
    EXPECT_EQ(
        sentence(),
        "At the hottest the house stays 1.5 °C cooler as advised than as found. The pumps lift 25 % less "
        "water.");
}

TEST_F(DayWordsTest, it_says_that_the_pads_stay_wet_where_that_is_why) {
    found.hottest_house = celsius(32.0);
    found.lost_to_dry_pad = 10.0;
    found.cooling = 80.0;
    EXPECT_THAT(sentence(), HasSubstr("2 °C cooler as advised than as found, because the pads stay wet."));
    EXPECT_EQ(row("Cooling lost to dry pads"), "11.1 % | 0 % | −11.1 %");
}

TEST_F(DayWordsTest, what_gets_warmer_or_pumps_more_is_not_hidden) {
    advised.hottest_house = celsius(30.5);
    advised.pumped = from_si<Mass>(24'000.0);
    EXPECT_EQ(
        sentence(),
        "At the hottest the house gets 0.5 °C warmer as advised than as found. The pumps lift 20 % more "
        "water.");
}

TEST_F(DayWordsTest, differences_have_their_sign_and_times_no_seconds) {
    advised.above_house_limit = seconds(0.0);
    advised.evaporated = from_si<Mass>(12'500.0);
    EXPECT_EQ(row("Time above the limit of the house"), "60 min | 0 s | −60 min");
    EXPECT_EQ(row("Water evaporated"), "12 m³ | 12.5 m³ | +0.5 m³");
    EXPECT_EQ(row("Pump starts"), "120 | 120 | 0");
}

TEST_F(DayWordsTest, energy_and_cost_are_told_only_where_both_are_known) {
    found.pump_energy = from_si<Energy>(3.6e7);
    EXPECT_EQ(row("Energy of the pumps"), "");
    EXPECT_EQ(row("Cost of power and water"), "");
    advised.pump_energy = from_si<Energy>(1.8e7);
    EXPECT_EQ(row("Energy of the pumps"), "10 kWh | 5 kWh | −5 kWh");
    found.energy_cost = 1.40;
    found.water_cost = 12.0;
    advised.energy_cost = 0.70;
    advised.water_cost = 12.0;
    EXPECT_EQ(row("Cost of power and water"), "13.4 USD | 12.7 USD | −0.7 USD");
    EXPECT_THAT(sentence(), HasSubstr("That saves 0.7 USD."));
    found.energy_cost = 0.70;
    EXPECT_THAT(sentence(), Not(HasSubstr("saves")));
}

}  // namespace
}  // namespace wetfront::test
