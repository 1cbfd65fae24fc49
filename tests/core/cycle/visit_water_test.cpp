// SPDX-License-Identifier: Apache-2.0
#include "cycle/visit_water.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "cycle/advice.h"
#include "english.h"
#include "timed_visit.h"

namespace wetfront {
namespace {

using test::english;
using test::TimedVisit;
using testing::Contains;
using testing::HasSubstr;

// Two headers of 20 m and 50 mm under one pump of 2 L/s.
TimedVisit measured() {
    TimedVisit visit;
    visit.flow().flow = TimedVisit::entry<VolumeFlow>("2L/s");
    return visit;
}

const PadBank& north(const TimedVisit& visit) {
    return visit.file.house.banks.front();
}

double usual_fill(const TimedVisit& visit) {
    const auto fill = expected_fill(water_of(visit.file), north(visit));
    return fill ? in_seconds(fill->usual) : -1.0;
}

// By hand: pi/4 * 0.05^2 * 20 = 0.0392699 m3; over 1 L/s 39.2699 s; times 1.75 is 68.722
// s, 1.3 51.051, 2.2 86.394.
TEST(VisitWaterTest, without_outlets_a_fill_is_expected_at_the_healthy_ratio) {
    const auto visit = measured();
    const auto fill = expected_fill(water_of(visit.file), north(visit));
    ASSERT_TRUE(fill);
    EXPECT_FALSE(fill->from_front);
    EXPECT_NEAR(in_seconds(fill->usual), 68.722, 0.001);
    EXPECT_NEAR(in_seconds(fill->least), 51.051, 0.001);
    EXPECT_NEAR(in_seconds(fill->most), 86.394, 0.001);
}

// 4 L of riser at 2 L/s: two seconds more.
TEST(VisitWaterTest, the_riser_fills_first) {
    auto visit = measured();
    const double without = usual_fill(visit);
    visit.the_pump().riser_volume = TimedVisit::entry<Volume>("4L");
    EXPECT_NEAR(usual_fill(visit), without + 2.0, 1e-9);
}

// pi/4 * 0.05^2 * 10 = 0.0196350 m3 at 2 L/s: 9.817 s.
TEST(VisitWaterTest, a_supply_pipe_stands_in_for_a_riser_volume) {
    auto visit = measured();
    const double without = usual_fill(visit);
    visit.the_pump().supply_length = TimedVisit::entry<Length>("10m");
    visit.the_pump().supply_bore = TimedVisit::entry<Length>("50mm");
    EXPECT_NEAR(usual_fill(visit), without + 9.817, 0.001);
}

TEST(VisitWaterTest, a_fill_is_unknown_without_flow_bore_or_length) {
    auto no_flow = measured();
    no_flow.file.visit.conditions.flows.clear();
    auto no_bore = measured();
    no_bore.bank_at(0).header_bore.reset();
    auto no_length = measured();
    no_length.bank_at(0).length.reset();
    for (const auto& visit : {no_flow, no_bore, no_length}) {
        EXPECT_EQ(usual_fill(visit), -1.0);
    }
}

TEST(VisitWaterTest, described_outlets_give_the_filling_front_and_who_gets_least) {
    auto visit = measured();
    visit.describe_outlets();
    const auto water = water_of(visit.file);
    const auto* bank = water.bank(Id{"north"});
    ASSERT_TRUE(bank != nullptr && bank->plain && bank->recovered && bank->filling);
    EXPECT_EQ(bank->header->outlets.size(), 66U);
    // Equal headers take half each.
    EXPECT_NEAR(in_si(*bank->flow), 1e-3, 1e-8);
    EXPECT_TRUE(bank->flow_measured);
    EXPECT_GE(bank->weakest_outlet_ratio, 1.0);
    const auto fill = expected_fill(water, north(visit));
    ASSERT_TRUE(fill);
    EXPECT_TRUE(fill->from_front);
    EXPECT_GT(fill->usual, bank->filling->pipe_time);
}

// 266 outlets, up to a bore that the header hardly fills against.
TEST(VisitWaterTest, the_front_of_many_outlets_comes_as_fast_as_all_of_them_say) {
    for (const auto* bore : {"1mm", "2mm", "2.5mm"}) {
        auto visit = measured();
        visit.bank_at(0).outlet_bore = TimedVisit::entry<Length>(bore);
        visit.bank_at(0).outlet_spacing = TimedVisit::entry<Length>("75mm");
        const auto water = water_of(visit.file);
        const auto* bank = water.bank(Id{"north"});
        ASSERT_TRUE(bank->filling) << bore;
        const auto whole = filling_of(*bank->header, *bank->flow);
        ASSERT_TRUE(whole) << whole.error().text();
        EXPECT_NEAR(bank->filling->fill / whole.value().fill, 1.0, 0.005) << bore;
        for (const double share : {0.25, 0.5, 0.75, 0.9}) {
            EXPECT_NEAR(bank->filling->arrival_share(share), whole.value().arrival_share(share), 0.005)
                << bore;
        }
    }
}

TEST(VisitWaterTest, headers_that_differ_share_a_pump_by_their_hydraulics_not_by_length) {
    auto visit = measured();
    visit.describe_outlets();
    visit.bank_at(1).outlet_bore = TimedVisit::entry<Length>("4mm");
    const auto water = water_of(visit.file);
    const double north_flow = in_si(*water.bank(Id{"north"})->flow);
    const double south_flow = in_si(*water.bank(Id{"south"})->flow);
    EXPECT_NEAR(north_flow + south_flow, 2e-3, 1e-9);
    // Areas are as 9 to 16; friction takes a little from the larger.
    EXPECT_GT(south_flow, 1.5 * north_flow);
}

TEST(VisitWaterTest,
     a_header_that_falls_to_the_far_end_makes_the_near_outlets_the_weakest_and_asks_for_more_water) {
    auto level = measured();
    level.describe_outlets();
    level.dry_start("north", 45.0, 165.0, 1200.0);
    level.dry_start("south", 45.0, 165.0, 1200.0);
    auto falling = level;
    falling.bank_at(0).header_rise = TimedVisit::entry<Length>("-150mm");
    const auto of = [](const TimedVisit& visit) { return advise(visit.file).timers.front().banks.front(); };
    ASSERT_TRUE(of(level).bounds && of(falling).bounds);
    EXPECT_GT(of(falling).question->weakest_outlet_ratio, of(level).question->weakest_outlet_ratio + 0.02);
    EXPECT_GT(of(falling).bounds->need, of(level).bounds->need);
}

TEST(VisitWaterTest, flows_alone_are_those_that_the_whole_water_has) {
    auto visit = measured();
    for (auto& bank : visit.file.house.banks) {
        bank.outlet_bore = TimedVisit::entry<Length>("3mm");
        bank.outlet_spacing = TimedVisit::entry<Length>("75mm");
    }
    visit.file.house.banks.front().length = TimedVisit::entry<Length>("30m");
    const auto whole = water_of(visit.file);
    const auto flows = measured_flows_of(visit.file);
    for (const auto& bank : visit.file.house.banks) {
        ASSERT_TRUE(whole.bank(bank.id)->flow && flows.bank(bank.id)->flow);
        EXPECT_DOUBLE_EQ(in_si(*flows.bank(bank.id)->flow), in_si(*whole.bank(bank.id)->flow));
        EXPECT_TRUE(flows.bank(bank.id)->flow_measured);
        EXPECT_FALSE(flows.bank(bank.id)->filling);
    }
}

TEST(VisitWaterTest, other_outlets_and_clogging_change_what_the_header_is_taken_to_be) {
    auto visit = measured();
    visit.describe_outlets();
    visit.bank_at(0).outlet_changes.push_back(
        {TimedVisit::entry<Length>("10m"), TimedVisit::entry<Length>("4mm")});
    visit.bank_at(0).clogged_share = TimedVisit::entry<Fraction>("20%");
    const auto water = water_of(visit.file);
    const auto& outlets = water.bank(Id{"north"})->header->outlets;
    EXPECT_NEAR(in_si(outlets.front().bore), 0.003, 1e-12);
    EXPECT_NEAR(in_si(outlets.back().bore), 0.004, 1e-12);
    EXPECT_NEAR(outlets.front().open_share, 0.8, 1e-12);
}

// Area 1.2 m2 falls 50 mm in 60 s: 1 L/s.
TEST(VisitWaterTest, a_drawdown_gives_the_flow_with_its_uncertainty) {
    TimedVisit visit;
    visit.flow().drawdown_fall = TimedVisit::entry<Length>("50mm");
    visit.flow().drawdown_time = TimedVisit::entry<Duration>("60s");
    auto water = water_of(visit.file);
    EXPECT_FALSE(water.pump(Id{"pump"})->measured());
    EXPECT_THAT(english(water.pump(Id{"pump"})->notes), Contains(HasSubstr("water surface is not entered")));
    visit.the_pump().sump_area = TimedVisit::entry<Area>("1.2m2");
    water = water_of(visit.file);
    const auto* flow = water.pump(Id{"pump"})->flow();
    ASSERT_NE(flow, nullptr);
    EXPECT_EQ(flow->from, FlowFrom::drawdown);
    EXPECT_NEAR(in_si(flow->flow), 1e-3, 1e-9);
    ASSERT_TRUE(flow->expanded);
    EXPECT_GT(in_si(*flow->expanded), 0.0);
}

TEST(VisitWaterTest, the_surest_of_several_flows_is_used_and_the_others_are_kept) {
    TimedVisit visit;
    visit.the_pump().sump_area = TimedVisit::entry<Area>("1.2m2");
    visit.flow().drawdown_fall = TimedVisit::entry<Length>("50mm");
    visit.flow().drawdown_time = TimedVisit::entry<Duration>("60s");
    visit.flow().bucket_volume = TimedVisit::entry<Volume>("19L");
    visit.flow().bucket_time = TimedVisit::entry<Duration>("18s");
    const auto water = water_of(visit.file);
    const auto& flows = water.pump(Id{"pump"})->flows;
    ASSERT_EQ(flows.size(), 2U);
    EXPECT_EQ(flows[0].from, FlowFrom::drawdown);
    EXPECT_EQ(flows[1].from, FlowFrom::bucket);
    EXPECT_TRUE(flows[1].advice);
}

// Each outlet 0.9 L in 60 s; 66 outlets in each of two headers: 1.98 L/s.
TEST(VisitWaterTest, catches_at_the_outlets_of_every_header_add_up_to_the_pumps_flow) {
    TimedVisit visit;
    visit.describe_outlets();
    for (const auto* bank : {"north", "south"}) {
        for (const auto* at : {"1m", "10m", "19m"}) {
            visit.at(bank).catches.push_back({TimedVisit::entry<Length>(at),
                                              TimedVisit::entry<Volume>("0.9L"),
                                              TimedVisit::entry<Duration>("60s")});
        }
    }
    const auto water = water_of(visit.file);
    const auto* flow = water.pump(Id{"pump"})->flow();
    ASSERT_NE(flow, nullptr);
    EXPECT_EQ(flow->from, FlowFrom::catches);
    EXPECT_NEAR(in_si(flow->flow), 66 * 2 * 0.9e-3 / 60.0, 1e-9);
    visit.at("south").catches.clear();
    EXPECT_TRUE(water_of(visit.file).pump(Id{"pump"})->flows.empty()) << "half the outlets were not caught";
}

// Far end 1.2 L, least 0.8 L in the same time: 1.5.
TEST(VisitWaterTest, catches_along_the_header_tell_the_weakest_outlet_without_a_description) {
    TimedVisit visit;
    const auto caught = [&](const char* at, const char* volume) {
        visit.at("north").catches.push_back({TimedVisit::entry<Length>(at), TimedVisit::entry<Volume>(volume),
                                             TimedVisit::entry<Duration>("60s")});
    };
    caught("1m", "1.0L");
    caught("8m", "0.8L");
    EXPECT_EQ(water_of(visit.file).bank(Id{"north"})->weakest_outlet_ratio, 1.0);
    caught("19.5m", "1.2L");
    EXPECT_NEAR(water_of(visit.file).bank(Id{"north"})->weakest_outlet_ratio, 1.5, 1e-12);
}

TEST(VisitWaterTest, a_head_at_every_header_gives_a_flow_that_is_no_second_opinion) {
    TimedVisit visit;
    visit.describe_outlets();
    visit.at("north").inlet_head = TimedVisit::entry<Length>("1m");
    EXPECT_EQ(water_of(visit.file).pump(Id{"pump"})->flow(), nullptr);
    visit.at("south").inlet_head = TimedVisit::entry<Length>("1m");
    const auto water = water_of(visit.file);
    const auto* pump = water.pump(Id{"pump"});
    ASSERT_NE(pump->flow(), nullptr);
    EXPECT_EQ(pump->flow()->from, FlowFrom::inlet_head);
    EXPECT_FALSE(pump->measured());
    EXPECT_FALSE(water.bank(Id{"north"})->flow_measured);
    // 0.6 pi/4 0.003^2 sqrt(2 g 1 m) is 18.78 mL/s for an outlet without friction; 132 of them 2.48 L/s.
    EXPECT_NEAR(in_si(pump->flow()->flow), 2.48e-3, 0.1e-3);
}

TEST(VisitWaterTest, a_pump_curve_gives_the_flow_where_nothing_was_measured) {
    TimedVisit visit;
    visit.describe_outlets();
    visit.the_pump().static_lift = TimedVisit::entry<Length>("2m");
    const auto point = [&](const char* flow, const char* head) {
        visit.the_pump().curve.push_back(
            {TimedVisit::entry<VolumeFlow>(flow), TimedVisit::entry<Length>(head)});
    };
    point("0L/s", "6m");
    point("2L/s", "4m");
    point("4L/s", "0m");
    const auto water = water_of(visit.file);
    const auto* flow = water.pump(Id{"pump"})->flow();
    ASSERT_NE(flow, nullptr) << english(water.pump(Id{"pump"})->notes).front();
    EXPECT_EQ(flow->from, FlowFrom::pump_curve);
    EXPECT_GT(in_si(flow->flow), 2e-3);
    EXPECT_LT(in_si(flow->flow), 4e-3);
}

TEST(VisitWaterTest, outlets_that_cannot_be_are_told_and_not_used) {
    auto visit = measured();
    visit.describe_outlets();
    visit.bank_at(0).outlet_bore = TimedVisit::entry<Length>("30mm");
    visit.bank_at(0).header_bore = TimedVisit::entry<Length>("25mm");
    const auto water = water_of(visit.file);
    EXPECT_FALSE(water.bank(Id{"north"})->header);
    EXPECT_THAT(english(water.bank(Id{"north"})->notes), Contains(HasSubstr("Not used")));
    EXPECT_THAT(english(advise(visit.file).notes), Contains(HasSubstr("Not used")));
}

TEST(VisitWaterTest, water_worked_out_before_gives_the_same_advice) {
    auto visit = measured();
    visit.describe_outlets();
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    visit.dry_start("south", 45.0, 165.0, 1200.0);
    const auto once = advise(visit.file);
    const auto again = advise(visit.file, water_of(visit.file));
    EXPECT_EQ(in_english(once.timers.front().verdict, UnitSystem::si),
              in_english(again.timers.front().verdict, UnitSystem::si));
}

}  // namespace
}  // namespace wetfront
