// SPDX-License-Identifier: Apache-2.0
#include "records/house.h"

#include <gtest/gtest.h>

namespace wetfront::test {
namespace {

House two_pump_house() {
    House house;
    house.pumps.resize(2);
    house.pumps[0].id = Id{"p1"};
    house.pumps[1].id = Id{"p2"};
    house.banks.resize(3);
    for (std::size_t i = 0; i < 3; ++i) {
        house.banks[i].id = Id{"b" + std::to_string(i + 1)};
        house.banks[i].pump = Id{i == 2 ? "p2" : "p1"};
    }
    house.timers.resize(1);
    house.timers[0].id = Id{"t1"};
    house.timers[0].pumps = {Id{"p1"}};
    return house;
}

TEST(HouseTest, parts_are_found_by_their_id) {
    const auto house = two_pump_house();
    EXPECT_EQ(house.pump(Id{"p2"}), &house.pumps[1]);
    EXPECT_EQ(house.bank(Id{"b3"}), &house.banks[2]);
    EXPECT_EQ(house.timer(Id{"t1"}), &house.timers[0]);
    EXPECT_EQ(house.pump(Id{"b1"}), nullptr);
    EXPECT_EQ(house.bank(Id{"p1"}), nullptr);
    EXPECT_EQ(house.timer(Id{}), nullptr);
}

TEST(HouseTest, a_timer_drives_the_banks_of_its_pumps_and_no_other) {
    auto house = two_pump_house();
    EXPECT_EQ(house.banks_of(house.timers[0]),
              (std::vector<const PadBank*>{&house.banks[0], &house.banks[1]}));
    house.timers[0].pumps = {Id{"p2"}, Id{"p1"}};
    EXPECT_EQ(house.banks_of(house.timers[0]).size(), 3U);
}

TEST(HouseTest, a_pump_feeds_the_banks_that_name_it) {
    House house;
    house.pumps.resize(2);
    house.pumps[0].id = Id{"a"};
    house.pumps[1].id = Id{"b"};
    house.banks.resize(3);
    house.banks[0].pump = house.banks[2].pump = Id{"a"};
    EXPECT_EQ(house.banks_of(house.pumps[0]),
              (std::vector<const PadBank*>{&house.banks[0], &house.banks[2]}));
    EXPECT_TRUE(house.banks_of(house.pumps[1]).empty());
}

}  // namespace
}  // namespace wetfront::test
