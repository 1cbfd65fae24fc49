// SPDX-License-Identifier: Apache-2.0
#include "water/flow_measurement.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

Volume litres(double value) {
    return from_si<Volume>(1e-3 * value);
}

double in_litres_per_min(VolumeFlow flow) {
    return 60e3 * in_si(flow);
}

VolumeFlow litres_per_min(double value) {
    return from_si<VolumeFlow>(value / 60e3);
}

MeasuredFlow flow_of(const Result<MeasuredFlow>& result) {
    EXPECT_TRUE(result) << result.error().text();
    return result ? result.value() : MeasuredFlow{};
}

std::string advice_in(const MeasuredFlow& flow) {
    return flow.advice ? in_english(*flow.advice, UnitSystem::us) : std::string{};
}

// The row of tests/data/pad_and_practice.csv with that id; its source stands in the last column.
std::vector<std::string> row_of(const std::string& id) {
    const auto rows = test::data_rows("pad_and_practice.csv");
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.front() == id; });
    EXPECT_NE(found, rows.end()) << id;
    return found == rows.end() ? std::vector<std::string>(7) : *found;
}

// 5 US gal at 45 US gpm: 5/45 min = 6.667 s. 0.10 s / 6.667 s = 1.5 % (hand timing of an interval as
// published), a bucket known to 2 %: sqrt(1.5^2 + 2^2) = 2.5 %, twice which is 5 %.
TEST(FlowMeasurementTest, a_bucket_under_a_full_header_is_uncertain_by_five_percent_and_says_so) {
    const auto hand = row_of("TIM-1");
    EXPECT_NEAR(in_seconds(FlowUncertainty{}.hand), test::cell_number(hand.at(4)), 1e-12) << hand.at(6);
    const auto got = flow_of(flow_by_bucket(from_si<Volume>(5 * 3.785411784e-3), seconds(60.0 * 5 / 45)));
    EXPECT_NEAR(in_si(got.flow) / 3.785411784e-3 * 60.0, 45.0, 1e-9);
    EXPECT_NEAR(in_si(got.share()), 0.05, 1e-9);
    EXPECT_EQ(advice_in(got),
              "A vessel that fills in 6.7 s is uncertain by 5%: shut the make-up and time how fast the sump "
              "falls instead.");
}

TEST(FlowMeasurementTest, a_short_fill_of_a_well_known_bucket_is_still_advised_against) {
    FlowUncertainty parts;
    parts.bucket = 0.005;
    const auto at = [&](double time) { return flow_of(flow_by_bucket(litres(100.0), seconds(time), parts)); };
    EXPECT_LT(in_si(at(29.9).share()), 0.03);
    EXPECT_TRUE(at(29.9).advice);
    EXPECT_FALSE(at(30.0).advice);
}

// 2 m2 x 0.3 m / 120 s = 5 L/s = 300 L/min. Parts: area 1 %, two readings of 1 mm in 300 mm 0.4714 %, hand
// 0.0833 %; root of the sum of squares 1.1087 %, twice which is 2.2174 %.
TEST(FlowMeasurementTest, a_drawdown_is_area_times_fall_over_time) {
    const auto got = flow_of(flow_by_drawdown(from_si<Area>(2.0), 0.3_m, 120_s));
    EXPECT_NEAR(in_litres_per_min(got.flow), 300.0, 1e-9);
    EXPECT_NEAR(100.0 * in_si(got.share()), 2.2174, 1e-3);
    EXPECT_FALSE(got.spread);
    EXPECT_FALSE(got.advice);
}

TEST(FlowMeasurementTest, a_small_fall_is_advised_to_be_larger) {
    const auto got = flow_of(flow_by_drawdown(from_si<Area>(2.0), 50_mm, 20_s));
    EXPECT_GT(in_si(got.share()), 0.05);
    EXPECT_NE(advice_in(got).find("let it fall further"), std::string::npos) << advice_in(got);
    EXPECT_NE(advice_in(got).find("1.969 in"), std::string::npos) << advice_in(got);
}

TEST(FlowMeasurementTest, a_poorly_known_area_is_advised_to_be_measured) {
    FlowUncertainty parts;
    parts.sump_area = 0.05;
    const auto got = flow_of(flow_by_drawdown(from_si<Area>(2.0), 0.3_m, 120_s, parts));
    EXPECT_NE(advice_in(got).find("area better"), std::string::npos) << advice_in(got);
}

// 900 L in 180 s = 300 L/min; sqrt(1^2 + (0.1 / 180 x 100)^2) = 1.00154 %, twice which is 2.00308 %.
TEST(FlowMeasurementTest, a_meter_is_volume_over_time) {
    const auto got = flow_of(flow_by_meter(litres(900.0), 180_s));
    EXPECT_NEAR(in_litres_per_min(got.flow), 300.0, 1e-9);
    EXPECT_NEAR(100.0 * in_si(got.share()), 2.00308, 1e-4);
    EXPECT_FALSE(got.advice);
    EXPECT_TRUE(flow_of(flow_by_meter(litres(10.0), 2_s)).advice);
}

// Catches of 2, 2.2 and 2.4 L/min at 3 of 100 outlets: mean 2.2, s = 0.2, s / mean = 9.0909 %; of the mean
// 9.0909 % x sqrt(0.97 / 3) = 5.1693 %. Timing: 0.1 s in 30 s = 1/300 of each rate, sqrt(2^2 + 2.2^2 + 2.4^2)
// / 6.6 / 300 = 0.19297 %. Vessel 1 %. Root of the sum of squares 5.2687 %, U 10.537 %.
TEST(FlowMeasurementTest, catches_are_their_mean_times_the_outlets_with_their_spread) {
    const std::vector<Catch> catches{{litres(1.0), 30_s}, {litres(1.1), 30_s}, {litres(1.2), 30_s}};
    const auto got = flow_of(flow_by_catches(catches, 100));
    EXPECT_NEAR(in_litres_per_min(got.flow), 220.0, 1e-9);
    ASSERT_TRUE(got.spread);
    EXPECT_NEAR(100.0 * in_si(*got.spread), 9.0909, 1e-3);
    EXPECT_NEAR(100.0 * in_si(got.share()), 10.537, 1e-3);
    EXPECT_NE(advice_in(got).find("catch at more outlets"), std::string::npos) << advice_in(got);
}

// Vessel 1 %, timing 0.19297 % as above: 1.01845 %, U 2.0369 %.
TEST(FlowMeasurementTest, spread_adds_nothing_where_every_outlet_was_caught) {
    const std::vector<Catch> catches{{litres(1.0), 30_s}, {litres(1.1), 30_s}, {litres(1.2), 30_s}};
    const auto got = flow_of(flow_by_catches(catches, 3));
    EXPECT_NEAR(in_litres_per_min(got.flow), 6.6, 1e-9);
    EXPECT_NEAR(100.0 * in_si(got.share()), 2.0369, 1e-3);
    EXPECT_FALSE(got.advice);
}

TEST(FlowMeasurementTest, a_mean_of_flows_is_not_a_mean_of_times) {
    // 1 L in 30 s and in 60 s: 2 and 1 L/min, mean 1.5.
    const std::vector<Catch> catches{{litres(1.0), 30_s}, {litres(1.0), 60_s}};
    EXPECT_NEAR(in_litres_per_min(flow_of(flow_by_catches(catches, 10)).flow), 15.0, 1e-9);
}

TEST(FlowMeasurementTest, short_fills_at_outlets_are_advised_to_be_longer) {
    const std::vector<Catch> catches{{litres(1.0), 45_s}, {litres(0.2), 9_s}};
    EXPECT_EQ(advice_in(flow_of(flow_by_catches(catches, 2))).substr(0, 76),
              "A fill took only 9 s: take a larger vessel, so that each fill takes 30 s to ");
}

TEST(FlowMeasurementTest, one_outlet_needs_one_catch) {
    const std::vector<Catch> one{{litres(1.0), 40_s}};
    const auto got = flow_of(flow_by_catches(one, 1));
    EXPECT_NEAR(in_litres_per_min(got.flow), 1.5, 1e-9);
    EXPECT_FALSE(got.spread);
    const auto more = flow_by_catches(one, 60);
    ASSERT_FALSE(more);
    EXPECT_EQ(more.error().item, "catches");
    EXPECT_EQ(more.error().accepted, "2 to 60, one an outlet");
}

TEST(FlowMeasurementTest, two_flows_disagree_beyond_the_root_of_their_squared_uncertainties) {
    const auto with = [](double flow, double expanded) {
        MeasuredFlow made;
        made.flow = litres_per_min(flow);
        made.expanded = litres_per_min(expanded);
        return made;
    };
    // sqrt(3^2 + 4^2) = 5
    const auto close = agreement(with(100.0, 3.0), with(104.9, 4.0));
    EXPECT_NEAR(in_litres_per_min(close.limit), 5.0, 1e-9);
    EXPECT_NEAR(in_litres_per_min(close.difference), -4.9, 1e-9);
    EXPECT_TRUE(close.agree);
    EXPECT_FALSE(agreement(with(100.0, 3.0), with(105.1, 4.0)).agree);
    EXPECT_FALSE(agreement(with(105.1, 4.0), with(100.0, 3.0)).agree);
}

TEST(FlowMeasurementTest, the_published_least_circulation_is_kept_exactly) {
    test::OutsideCheck check{"least circulation of a 150 mm pad",
                             "Univ. of Georgia, Poultry Housing Tips 14(4), 2002, in L/(min m)", "L/(min m)"};
    for (const double thickness : {0.150, 0.1524}) {
        const auto got = published_least_circulation(from_si<Length>(thickness));
        ASSERT_TRUE(got) << thickness;
        check.near("WAT-1", 60e3 * in_si(*got), test::cell_number(row_of("WAT-1").at(4)), 5e-4);
    }
}

TEST(FlowMeasurementTest, flow_per_metre_of_pad_converts_as_published) {
    test::OutsideCheck check{"US gpm per ft in L/(min m)", "computed from exact definitions", "L/(min m)"};
    // CON-1: "0.50/0.75/0.80" and "6.210/9.314/9.935"
    const auto row = row_of("CON-1");
    const auto parts = [](const std::string& cell) {
        std::vector<double> numbers;
        for (std::size_t start = 0; start < cell.size();) {
            const auto end = std::min(cell.find('/', start), cell.size());
            numbers.push_back(test::cell_number(cell.substr(start, end - start)));
            start = end + 1;
        }
        return numbers;
    };
    const auto gallons = parts(row.at(2));
    const auto wanted = parts(row.at(4));
    ASSERT_EQ(gallons.size(), wanted.size());
    for (std::size_t i = 0; i < gallons.size(); ++i) {
        // Over 60 ft of pad.
        const auto got = circulation(from_si<VolumeFlow>(60.0 * gallons[i] * 3.785411784e-3 / 60.0),
                                     from_si<Length>(60.0 * 0.3048));
        ASSERT_TRUE(got);
        check.near(std::to_string(gallons[i]), 60e3 * in_si(got.value().flow), wanted[i], 5e-4);
    }
}

TEST(FlowMeasurementTest, nothing_is_said_of_pads_without_a_published_number) {
    for (const double thickness : {0.05, 0.1, 0.1016, 0.144, 0.156, 0.2, nan}) {
        EXPECT_FALSE(published_least_circulation(from_si<Length>(thickness))) << thickness;
    }
    EXPECT_FALSE(circulation(litres_per_min(200.0), 20_m, 100_mm).value().published_least);
    EXPECT_FALSE(circulation(litres_per_min(200.0), 20_m).value().published_least);
    EXPECT_TRUE(circulation(litres_per_min(200.0), 20_m, 150_mm).value().published_least);
}

// 300 L/min against 0.5 kg/s = 30 L/min.
TEST(FlowMeasurementTest, circulation_is_told_in_times_of_the_evaporation) {
    const auto got = circulation(litres_per_min(300.0), 20_m, std::nullopt, from_si<MassFlow>(0.5));
    ASSERT_TRUE(got && got.value().times_evaporation);
    EXPECT_NEAR(*got.value().times_evaporation, published_times_evaporation, 1e-9);
    EXPECT_NEAR(60e3 * in_si(got.value().flow), 15.0, 1e-9);
    EXPECT_EQ(published_times_evaporation, test::cell_number(row_of("WAT-2").at(4)));
    const auto dry = circulation(litres_per_min(300.0), 20_m, std::nullopt, from_si<MassFlow>(0.0));
    ASSERT_TRUE(dry);
    EXPECT_FALSE(dry.value().times_evaporation);
}

TEST(FlowMeasurementTest, bad_inputs_are_refused_with_their_limit) {
    const auto names = [](const auto& result, const std::string& item) {
        ASSERT_FALSE(result) << item;
        EXPECT_EQ(result.error().item, item);
        EXPECT_FALSE(result.error().accepted.empty());
    };
    for (const double bad : {0.0, -1.0, nan, infinity}) {
        names(flow_by_drawdown(from_si<Area>(bad), 0.1_m, 60_s), "area of the sump");
        names(flow_by_drawdown(from_si<Area>(1.0), from_si<Length>(bad), 60_s), "fall of the level");
        names(flow_by_drawdown(from_si<Area>(1.0), 0.1_m, seconds(bad)), "time");
        names(flow_by_bucket(from_si<Volume>(bad), 60_s), "volume");
        names(flow_by_bucket(litres(20.0), seconds(bad)), "time");
        names(flow_by_meter(from_si<Volume>(bad), 60_s), "volume");
        names(flow_by_meter(litres(20.0), seconds(bad)), "time");
        const std::vector<Catch> catches{{litres(1.0), 30_s}, {from_si<Volume>(bad), 30_s}};
        names(flow_by_catches(catches, 10), "volume");
        names(circulation(litres_per_min(100.0), from_si<Length>(bad)), "pad length");
        names(circulation(litres_per_min(100.0), 10_m, from_si<Length>(bad)), "pad thickness");
    }
    for (const double bad : {-1.0, nan, infinity}) {
        names(circulation(from_si<VolumeFlow>(bad), 10_m), "flow");
        names(circulation(litres_per_min(100.0), 10_m, std::nullopt, from_si<MassFlow>(bad)), "evaporation");
    }
    const std::vector<Catch> none;
    const std::vector<Catch> three(3, {litres(1.0), 30_s});
    names(flow_by_catches(none, 10), "catches");
    names(flow_by_catches(three, 2), "catches");
    names(flow_by_catches(three, 0), "number of outlets");
    names(flow_by_catches(three, 5001), "number of outlets");
}

TEST(FlowMeasurementTest, impossible_uncertainties_are_refused_by_name) {
    struct Case {
        const char* item;
        void (*set)(FlowUncertainty&, double);
    };
    const Case cases[] = {
        {"uncertainty of hand timing", [](FlowUncertainty& p, double v) { p.hand = seconds(v); }},
        {"uncertainty of a level reading", [](FlowUncertainty& p, double v) { p.rule = from_si<Length>(v); }},
        {"uncertainty of the sump's area", [](FlowUncertainty& p, double v) { p.sump_area = v; }},
        {"uncertainty of the meter", [](FlowUncertainty& p, double v) { p.meter = v; }},
        {"uncertainty of the vessel", [](FlowUncertainty& p, double v) { p.vessel = v; }},
        {"uncertainty of the bucket", [](FlowUncertainty& p, double v) { p.bucket = v; }},
    };
    for (const auto& c : cases) {
        for (const double value : {-0.01, 61.0, nan}) {
            FlowUncertainty parts;
            c.set(parts, value);
            const auto got = flow_by_meter(litres(20.0), 30_s, parts);
            ASSERT_FALSE(got) << c.item << ' ' << value;
            EXPECT_EQ(got.error().item, c.item) << value;
        }
    }
}

}  // namespace
}  // namespace wetfront
