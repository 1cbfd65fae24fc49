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

TEST(HouseTest, a_timer_takes_over_what_its_controller_says) {
    Timer timer;
    timer.kind = TimerKind::on_demand;
    auto chosen = generic_template(TimerKind::fixed_interval);
    chosen.counts_from = CountsFrom::full_header;
    choose_controller(timer, chosen);
    EXPECT_EQ(timer.template_id, chosen.id);
    EXPECT_EQ(timer.controller, chosen);
    EXPECT_EQ(timer.kind, TimerKind::fixed_interval);
    EXPECT_EQ(timer.resolution->value(), seconds(15.0)) << "of the base on-time";
    EXPECT_EQ(timer.period_resolution->value(), seconds(60.0)) << "1 min";
    EXPECT_TRUE(counts_from_full_header(timer));
    forget_controller(timer);
    EXPECT_TRUE(timer.template_id.empty());
    EXPECT_FALSE(timer.controller);
    EXPECT_FALSE(counts_from_full_header(timer));
    EXPECT_EQ(timer.kind, TimerKind::fixed_interval) << "stays as it was";
}

TEST(HouseTest, a_controller_without_an_on_time_says_nothing_of_its_steps) {
    Timer timer;
    timer.resolution = Entered<Duration>::of(seconds(7.0));
    choose_controller(timer, generic_template(TimerKind::on_demand));
    EXPECT_FALSE(timer.resolution || timer.period_resolution);
}

TEST(HouseTest, a_controller_that_is_not_whole_describes_nothing) {
    Timer timer;
    EXPECT_EQ(described_controller(timer), nullptr);
    choose_controller(timer, generic_template(TimerKind::trimmed));
    EXPECT_EQ(described_controller(timer), &*timer.controller);
    timer.controller->settings.front().resolution = 0.0;
    EXPECT_EQ(described_controller(timer), nullptr);
}

TEST(MaintenanceTest, it_is_done_to_the_banks_it_names_and_to_all_that_its_pump_feeds) {
    PadBank first;
    first.id = Id{"b1"};
    first.pump = Id{"p1"};
    PadBank second = first;
    second.id = Id{"b2"};
    PadBank other = first;
    other.id = Id{"b3"};
    other.pump = Id{"p2"};
    const Maintenance to_one{Id{"m"}, {}, Upkeep::new_pads, {Id{"b1"}}, {}, {}};
    EXPECT_TRUE(to_one.done_to(first));
    EXPECT_FALSE(to_one.done_to(second));
    const Maintenance to_pump{Id{"m"}, {}, Upkeep::new_pump, {}, Id{"p1"}, {}};
    EXPECT_TRUE(to_pump.done_to(first));
    EXPECT_TRUE(to_pump.done_to(second));
    EXPECT_FALSE(to_pump.done_to(other));
    PadBank unfed;
    unfed.id = Id{"b4"};
    EXPECT_FALSE(to_one.done_to(unfed)) << "a bank without a pump is not fed by no pump";
}

}  // namespace
}  // namespace wetfront::test
