// SPDX-License-Identifier: Apache-2.0
#include "water/sump.h"

#include <gtest/gtest.h>

#include <limits>

namespace wetfront {
namespace {

using namespace literals;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

Volume litres(double value) {
    return from_si<Volume>(1e-3 * value);
}

MassFlow kg_per_s(double value) {
    return from_si<MassFlow>(value);
}

// 2 m2 with 0.4 m above the intake: 800 L.
Sump usual_sump() {
    Sump sump;
    sump.area = from_si<Area>(2.0);
    sump.depth = 0.4_m;
    sump.freeboard = 0.1_m;
    sump.make_up = from_si<VolumeFlow>(0.4e-3);
    return sump;
}

SumpDemand usual_demand() {
    SumpDemand demand;
    demand.header = litres(120.0);
    demand.riser = litres(10.0);
    demand.pads = litres(300.0);
    demand.run_off = litres(60.0);
    demand.evaporation = kg_per_s(0.3);
    demand.bleed = kg_per_s(0.1);
    demand.on_share = 0.5;
    return demand;
}

SumpBalance balance_of(const Sump& sump, const SumpDemand& demand) {
    const auto got = sump_balance(sump, demand);
    EXPECT_TRUE(got) << got.error().text();
    return got ? got.value() : SumpBalance{};
}

double in_litres(const std::optional<Volume>& volume) {
    return volume ? 1e3 * in_si(*volume) : nan;
}

// 120 + 10 + 300 = 430 L; over 2 m2 that is 0.215 m; 800 - 430 = 370 L stay.
TEST(SumpTest, a_start_takes_header_riser_and_pads) {
    const auto got = balance_of(usual_sump(), usual_demand());
    EXPECT_NEAR(in_litres(got.usable), 800.0, 1e-9);
    EXPECT_NEAR(in_litres(got.draw_down), 430.0, 1e-9);
    EXPECT_FALSE(got.draw_down_is_least);
    ASSERT_TRUE(got.level_fall);
    EXPECT_NEAR(in_si(*got.level_fall), 0.215, 1e-12);
    EXPECT_NEAR(in_litres(got.left_after_start), 370.0, 1e-9);
}

// 120 + 10 + 60 = 190 L into 2 m2 x 0.1 m = 200 L.
TEST(SumpTest, a_stop_gives_back_header_riser_and_drip) {
    const auto got = balance_of(usual_sump(), usual_demand());
    EXPECT_NEAR(in_litres(got.run_back), 190.0, 1e-9);
    EXPECT_FALSE(got.run_back_is_least);
    EXPECT_NEAR(in_litres(got.freeboard_volume), 200.0, 1e-9);
    EXPECT_NEAR(in_litres(got.freeboard_left), 10.0, 1e-9);
}

TEST(SumpTest, a_sump_that_runs_over_or_runs_dry_shows_it_by_what_is_left) {
    auto sump = usual_sump();
    sump.freeboard = 0.05_m;
    sump.depth = 0.2_m;
    const auto got = balance_of(sump, usual_demand());
    EXPECT_NEAR(in_litres(got.freeboard_left), -90.0, 1e-9);
    EXPECT_NEAR(in_litres(got.left_after_start), -30.0, 1e-9);
}

// Need 0.3 + 0.1 = 0.4 kg/s, or 0.4 L/s, just what make-up gives; in a cycle 0.3 + 0.5 x 0.1 = 0.35 kg/s.
TEST(SumpTest, make_up_stands_against_evaporation_and_bleed) {
    auto sump = usual_sump();
    const auto got = balance_of(sump, usual_demand());
    ASSERT_TRUE(got.need && got.need_cycled && got.make_up_left);
    EXPECT_NEAR(in_si(*got.need), 0.4, 1e-12);
    EXPECT_NEAR(in_si(*got.need_cycled), 0.35, 1e-12);
    EXPECT_NEAR(in_si(*got.make_up_left), 0.0, 1e-12);
    sump.make_up = from_si<VolumeFlow>(0.25e-3);
    EXPECT_NEAR(in_si(*balance_of(sump, usual_demand()).make_up_left), -0.15e-3, 1e-12);
}

// 800 L / 0.4 L/s = 2,000 s; in a cycle (800 - 190) L / 0.35 L/s = 1,742.857 s.
TEST(SumpTest, the_reserve_is_what_the_pump_can_take_over_what_is_used) {
    const auto got = balance_of(usual_sump(), usual_demand());
    ASSERT_TRUE(got.reserve && got.reserve_cycled);
    EXPECT_NEAR(in_seconds(*got.reserve), 2000.0, 1e-9);
    EXPECT_NEAR(in_seconds(*got.reserve_cycled), 1742.857142857, 1e-6);
}

// What is in the sump and what was used add up to what was there at the start, second by second.
TEST(SumpTest, the_reserve_ends_when_the_last_usable_litre_is_used) {
    for (const double evaporation : {0.01, 0.3, 2.0}) {
        auto demand = usual_demand();
        demand.evaporation = kg_per_s(evaporation);
        const auto got = balance_of(usual_sump(), demand);
        ASSERT_TRUE(got.reserve && got.need);
        const double used_kg = in_si(*got.need) * in_seconds(*got.reserve);
        EXPECT_NEAR(used_kg, 800.0, 1e-9 * 800.0) << evaporation;
    }
}

TEST(SumpTest, a_sump_smaller_than_what_runs_back_has_no_reserve_in_a_cycle) {
    auto sump = usual_sump();
    sump.usable = litres(150.0);
    const auto got = balance_of(sump, usual_demand());
    ASSERT_TRUE(got.reserve_cycled);
    EXPECT_EQ(in_seconds(*got.reserve_cycled), 0.0);
    ASSERT_TRUE(got.reserve);
    EXPECT_NEAR(in_seconds(*got.reserve), 375.0, 1e-9);
}

TEST(SumpTest, a_volume_goes_before_area_and_depth) {
    auto sump = usual_sump();
    sump.usable = litres(500.0);
    EXPECT_NEAR(in_litres(balance_of(sump, usual_demand()).usable), 500.0, 1e-9);
}

TEST(SumpTest, a_sump_that_uses_no_water_has_no_end_of_its_reserve) {
    auto demand = usual_demand();
    demand.evaporation = kg_per_s(0.0);
    demand.bleed = kg_per_s(0.0);
    const auto got = balance_of(usual_sump(), demand);
    EXPECT_FALSE(got.reserve);
    EXPECT_FALSE(got.reserve_cycled);
    EXPECT_EQ(in_si(*got.need), 0.0);
}

TEST(SumpTest, nothing_known_gives_nothing) {
    const auto got = balance_of({}, {});
    EXPECT_FALSE(got.usable || got.draw_down || got.level_fall || got.left_after_start || got.run_back);
    EXPECT_FALSE(got.freeboard_volume || got.freeboard_left || got.need || got.need_cycled);
    EXPECT_FALSE(got.make_up_left || got.reserve || got.reserve_cycled);
}

TEST(SumpTest, what_is_not_known_makes_a_least_value_and_says_so) {
    SumpDemand demand;
    demand.header = litres(120.0);
    demand.evaporation = kg_per_s(0.3);
    Sump sump;
    sump.usable = litres(800.0);
    const auto got = balance_of(sump, demand);
    EXPECT_NEAR(in_litres(got.draw_down), 120.0, 1e-9);
    EXPECT_TRUE(got.draw_down_is_least);
    EXPECT_NEAR(in_litres(got.run_back), 120.0, 1e-9);
    EXPECT_TRUE(got.run_back_is_least);
    EXPECT_TRUE(got.need_is_least);
    EXPECT_TRUE(got.reserve);
    EXPECT_FALSE(got.level_fall);
    EXPECT_FALSE(got.freeboard_left);
    EXPECT_FALSE(got.make_up_left);
    EXPECT_FALSE(got.reserve_cycled) << "no cycle was given";
}

TEST(SumpTest, one_unknown_part_is_enough_for_a_least_value) {
    auto without_pads = usual_demand();
    without_pads.pads.reset();
    EXPECT_TRUE(balance_of(usual_sump(), without_pads).draw_down_is_least);
    EXPECT_FALSE(balance_of(usual_sump(), without_pads).run_back_is_least);
    auto without_drip = usual_demand();
    without_drip.run_off.reset();
    EXPECT_TRUE(balance_of(usual_sump(), without_drip).run_back_is_least);
    EXPECT_FALSE(balance_of(usual_sump(), without_drip).draw_down_is_least);
    auto without_riser = usual_demand();
    without_riser.riser.reset();
    EXPECT_TRUE(balance_of(usual_sump(), without_riser).draw_down_is_least);
    EXPECT_TRUE(balance_of(usual_sump(), without_riser).run_back_is_least);
}

TEST(SumpTest, a_cycle_of_unknown_headers_has_no_reserve_stated) {
    auto demand = usual_demand();
    demand.header.reset();
    const auto got = balance_of(usual_sump(), demand);
    EXPECT_TRUE(got.reserve);
    EXPECT_TRUE(got.need_cycled);
    EXPECT_FALSE(got.reserve_cycled);
}

TEST(SumpTest, impossible_values_are_named_with_their_limit) {
    struct Case {
        const char* item;
        void (*set)(Sump&, SumpDemand&, double);
    };
    const Case cases[] = {
        {"usable volume of the sump", [](Sump& s, SumpDemand&, double v) { s.usable = from_si<Volume>(v); }},
        {"area of the sump", [](Sump& s, SumpDemand&, double v) { s.area = from_si<Area>(v); }},
        {"depth above the pump's intake",
         [](Sump& s, SumpDemand&, double v) { s.depth = from_si<Length>(v); }},
        {"freeboard of the sump", [](Sump& s, SumpDemand&, double v) { s.freeboard = from_si<Length>(v); }},
        {"make-up flow", [](Sump& s, SumpDemand&, double v) { s.make_up = from_si<VolumeFlow>(v); }},
        {"volume of the headers", [](Sump&, SumpDemand& d, double v) { d.header = from_si<Volume>(v); }},
        {"volume of the riser", [](Sump&, SumpDemand& d, double v) { d.riser = from_si<Volume>(v); }},
        {"water taken up by the pads", [](Sump&, SumpDemand& d, double v) { d.pads = from_si<Volume>(v); }},
        {"water that drips after a stop",
         [](Sump&, SumpDemand& d, double v) { d.run_off = from_si<Volume>(v); }},
        {"evaporation", [](Sump&, SumpDemand& d, double v) { d.evaporation = from_si<MassFlow>(v); }},
        {"bleed", [](Sump&, SumpDemand& d, double v) { d.bleed = from_si<MassFlow>(v); }},
        {"share of the period that the pump runs", [](Sump&, SumpDemand& d, double v) { d.on_share = v; }},
    };
    for (const auto& c : cases) {
        for (const double value : {-0.001, nan, infinity}) {
            auto sump = usual_sump();
            auto demand = usual_demand();
            c.set(sump, demand, value);
            const auto got = sump_balance(sump, demand);
            ASSERT_FALSE(got) << c.item << ' ' << value;
            EXPECT_EQ(got.error().item, c.item) << value;
            EXPECT_FALSE(got.error().accepted.empty());
        }
    }
}

TEST(SumpTest, a_sump_without_surface_and_a_pump_that_never_runs_are_refused) {
    auto sump = usual_sump();
    sump.area = from_si<Area>(0.0);
    EXPECT_EQ(sump_balance(sump, usual_demand()).error().accepted, "above 0 m2");
    for (const double share : {0.0, 1.001}) {
        auto demand = usual_demand();
        demand.on_share = share;
        EXPECT_EQ(sump_balance(usual_sump(), demand).error().accepted, "above 0 to 100 %") << share;
    }
}

}  // namespace
}  // namespace wetfront
