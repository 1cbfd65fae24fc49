// SPDX-License-Identifier: Apache-2.0
#include "cycle/bank_cycle.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "cycle/rinse.h"
#include "own_margins.h"
#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

BankQuestion dry(double fill, double wet, double dry_out, bool fans_on = false) {
    BankQuestion bank;
    bank.fill = seconds(fill);
    bank.start = DryStart{seconds(wet), seconds(dry_out), fans_on};
    bank.uncertainty = 0_s;
    return bank;
}

BankQuestion wet(double fill, double off, double drip_return) {
    BankQuestion bank;
    bank.fill = seconds(fill);
    bank.start = WetStart{seconds(off), seconds(drip_return)};
    bank.uncertainty = 0_s;
    return bank;
}

OnTimeBounds bounds(const BankQuestion& bank, double period = 300.0) {
    return on_time_bounds(bank, seconds(period), {}).value();
}

CycleAnswer best(const BankQuestion& bank, double resolution = 1.0) {
    return best_cycle({bank}, seconds(resolution)).value();
}

// Circulation of ten times the evaporation (Univ. of Georgia, Poultry Housing Tips 14(4), 2002; WAT-2 of the
// table): 45 s to fill + 1.25 * 300 s / 10 = 82.5 s.
TEST(BankCycleTest, ten_times_the_evaporation_asks_for_82_and_a_half_seconds) {
    const auto rows = test::data_rows("pad_and_practice.csv");
    const auto row =
        std::find_if(rows.begin(), rows.end(), [](const auto& r) { return r.front() == "WAT-2"; });
    ASSERT_NE(row, rows.end());
    auto from_flow = dry(45.0, 46.0, 1200.0);
    from_flow.evaporated_share = 1.0 / test::cell_number(row->at(4));
    test::OutsideCheck check{
        "on-time at a circulation of ten times the evaporation",
        "Univ. of Georgia, Poultry Housing Tips 14(4), 2002; worked by hand (in the test)", "s"};
    check.near("by the flow", in_seconds(bounds(from_flow).need), 82.5, 1e-9);
    // The same by the stopwatch: wetting takes a tenth of the dry-out time.
    check.near("by the stopwatch", in_seconds(bounds(dry(45.0, 165.0, 1200.0)).need), 82.5, 1e-9);
    EXPECT_EQ(best(dry(45.0, 165.0, 1200.0)).base, std::optional{83_s});
    EXPECT_EQ(best(dry(45.0, 165.0, 1200.0), 5.0).base, std::optional{85_s});
}

TEST(BankCycleTest, fans_on_during_wet_through_lower_the_share_that_evaporates) {
    // kappa = 120 / (1200 + 120) = 1/11; 45 + 1.25 * 300 / 11 = 79.0909...
    const auto got = bounds(dry(45.0, 165.0, 1200.0, true));
    EXPECT_NEAR(got.evaporated_share, 1.0 / 11.0, 1e-12);
    EXPECT_NEAR(in_seconds(got.need), 45.0 + 375.0 / 11.0, 1e-9);
}

TEST(BankCycleTest, a_wet_start_serves_instead_of_the_dry_readings) {
    // s = (75 - 45) / (255 + 45) = 0.1, kappa = 0.1 / 1.1; the gap tested is 300 s, so 300 + 45 - 300 = 45 s.
    const auto got = bounds(wet(45.0, 255.0, 75.0));
    EXPECT_NEAR(got.evaporated_share, 1.0 / 11.0, 1e-12);
    EXPECT_NEAR(in_seconds(got.need), 45.0 + 375.0 / 11.0, 1e-9);
    EXPECT_NEAR(in_seconds(got.gap_bound), 45.0, 1e-9);
}

TEST(BankCycleTest, hotter_weather_shortens_the_gap_that_either_start_allows) {
    auto from_dry = dry(45.0, 165.0, 900.0);
    auto from_wet = wet(45.0, 255.0, 75.0);
    from_dry.evaporation_ratio = 1.5;
    from_wet.evaporation_ratio = 1.5;
    // 300 + 45 - 0.5 * 900 / 1.5 = 45; 300 + 45 - 300 / 1.5 = 145.
    EXPECT_NEAR(in_seconds(bounds(from_dry).gap_bound), 45.0, 1e-9);
    EXPECT_NEAR(in_seconds(bounds(from_wet).gap_bound), 145.0, 1e-9);
    EXPECT_NEAR(in_seconds(longest_gap(from_dry, {})), 300.0, 1e-9);
    EXPECT_NEAR(in_seconds(longest_gap(from_wet, {})), 200.0, 1e-9);
}

TEST(BankCycleTest, the_larger_of_stopwatch_and_flow_is_used) {
    auto bank = dry(45.0, 165.0, 1200.0);
    bank.evaporated_share = 0.08;
    EXPECT_NEAR(bounds(bank).evaporated_share, 0.1, 1e-12);
    bank.evaporated_share = 0.2;
    EXPECT_NEAR(bounds(bank).evaporated_share, 0.2, 1e-12);
    EXPECT_NEAR(in_seconds(bounds(bank).need), 45.0 + 75.0, 1e-9);
}

TEST(BankCycleTest, the_weakest_outlet_scales_the_wetting_time) {
    auto bank = dry(45.0, 165.0, 1200.0);
    bank.weakest_outlet_ratio = 1.2;
    // As if wetting took 144 s: 45 + 1.25 * 300 * 144 / 1200 = 90.
    EXPECT_NEAR(in_seconds(bounds(bank).need), 90.0, 1e-9);
}

// u2 = ((1 - s) u_fill)2 + (s u_wet)2 + (s tau_w u_dry / t_dry)2 with s = 1.25 * 300 * 1.2 / 1500 = 0.3,
// tau_w = 120: u2 = (0.7 * 2)2 + (0.3 * 3)2 + (0.3 * 120 * 75 / 1500)2 = 1.96 + 0.81 + 3.24 = 6.01.
TEST(BankCycleTest, uncertainty_with_fans_off_is_that_of_the_formula) {
    auto bank = dry(45.0, 165.0, 1500.0);
    bank.uncertainty.reset();
    bank.u_fill = 2_s;
    std::get<DryStart>(bank.start).u_wet_through = 3_s;
    std::get<DryStart>(bank.start).u_dry_out = 75_s;
    bank.evaporation_ratio = 1.2;
    const auto got = bounds(bank);
    EXPECT_NEAR(in_seconds(got.uncertainty), 2.0 * std::sqrt(6.01), 1e-6);
    EXPECT_NEAR(in_seconds(got.need), 45.0 + 0.3 * 120.0 + 2.0 * std::sqrt(6.01), 1e-6);
    EXPECT_NEAR(in_seconds(got.fill_bound), 45.0 + 2.0 * std::sqrt(6.01), 1e-6);
}

// Fans on: kappa = tau / (t_dry + tau), so its slopes are -+ t_dry / (t_dry + tau)2 for fill and wet-through
// and
// - tau / (t_dry + tau)2 for dry-out; here G = 1.25 * 300 = 375, t_dry 1200, tau 120: 375 * 1200 / 1320^2 =
// 0.2582645, 375 * 120 / 1320^2 = 0.02582645.
TEST(BankCycleTest, uncertainty_with_fans_on_follows_the_slopes_by_hand) {
    auto bank = dry(45.0, 165.0, 1200.0, true);
    bank.uncertainty.reset();
    bank.u_fill = 2_s;
    std::get<DryStart>(bank.start).u_wet_through = 3_s;
    std::get<DryStart>(bank.start).u_dry_out = 60_s;
    const double wanted = 2.0 * std::sqrt(std::pow((1.0 - 0.2582645) * 2.0, 2) +
                                          std::pow(0.2582645 * 3.0, 2) + std::pow(0.02582645 * 60.0, 2));
    EXPECT_NEAR(in_seconds(bounds(bank).uncertainty), wanted, 1e-5);
}

// Wet start: kappa = (t_r - t_fill) / (t_off + t_r); slopes - 1 / (t_off + t_r) for fill, (t_off + t_fill) /
// (t_off + t_r)2 for the return, - (t_r - t_fill) / (t_off + t_r)2 for off. Here t_off + t_r = 330, G = 375:
// 1.1363636, 375 * 300 / 330^2 = 1.0330579, 375 * 30 / 330^2 = 0.1033058.
TEST(BankCycleTest, uncertainty_of_a_wet_start_follows_the_slopes_by_hand) {
    auto bank = wet(45.0, 255.0, 75.0);
    bank.uncertainty.reset();
    bank.u_fill = 2_s;
    std::get<WetStart>(bank.start).u_drip_return = 2_s;
    std::get<WetStart>(bank.start).u_off = 1_s;
    const double wanted = 2.0 * std::sqrt(std::pow((1.0 - 1.1363636) * 2.0, 2) +
                                          std::pow(1.0330579 * 2.0, 2) + std::pow(0.1033058, 2));
    EXPECT_NEAR(in_seconds(bounds(bank).uncertainty), wanted, 1e-5);
}

TEST(BankCycleTest, a_given_uncertainty_stands_for_the_whole) {
    auto bank = dry(45.0, 165.0, 1200.0);
    bank.u_fill = 5_s;
    bank.uncertainty = 7_s;
    EXPECT_NEAR(in_seconds(bounds(bank).need), 89.5, 1e-9);
}

TEST(BankCycleTest, without_evaporation_the_run_only_fills_the_header_and_bridges_the_gap) {
    auto nothing_dries = dry(45.0, 165.0, 1200.0);
    nothing_dries.evaporation_ratio = 1e-12;
    nothing_dries.uncertainty = 4_s;
    const auto answer = best(nothing_dries);
    EXPECT_EQ(answer.base, std::optional{49_s});  // t_fill + U
    // A pad that dries in a short time of the test and takes up water at once: rule 2 alone, 300 + 45 - 0.5 *
    // 450 = 120.
    const auto quick = best(dry(45.0, 45.5, 450.0));
    EXPECT_EQ(quick.base, std::optional{120_s});
    EXPECT_EQ(quick.limited_by, std::optional{LimitedBy::no_part_dries});
}

TEST(BankCycleTest, each_limit_is_named_where_it_decides) {
    EXPECT_EQ(best(dry(45.0, 165.0, 1200.0)).limited_by, std::optional{LimitedBy::enough_water});
    EXPECT_EQ(best(dry(45.0, 65.0, 400.0)).limited_by, std::optional{LimitedBy::no_part_dries});
    EXPECT_EQ(name_of(LimitedBy::enough_water), "enough water");
    EXPECT_EQ(name_of(LimitedBy::no_part_dries), "no part dries");
    EXPECT_EQ(name_of(LimitedBy::header_fill), "header fill");
}

TEST(BankCycleTest, ceiling_is_the_wet_through_time_as_far_as_the_rest_allows) {
    const auto answer = best(dry(45.0, 165.0, 1200.0));
    EXPECT_EQ(answer.ceiling, std::optional{165_s});
    EXPECT_EQ(answer.trim_step, std::optional{21_s});  // (165 - 83) / 4 = 20.5, up
    // Wet-through of 270 s would leave 30 s of rest: 240 s, in steps of 7 s 238 s. Base: 45 + 375 * 225 /
    // 2250 = 82.5.
    const auto slow = best(dry(45.0, 270.0, 2250.0), 7.0);
    EXPECT_EQ(slow.base, std::optional{84_s});
    EXPECT_EQ(slow.ceiling, std::optional{238_s});
}

TEST(BankCycleTest, ceiling_is_never_below_the_base_and_then_nothing_is_trimmed) {
    // 300 + 45 - 0.5 * 300 = 195 s to bridge the gap, wet-through only 75 s.
    const auto answer = best(dry(45.0, 75.0, 300.0));
    EXPECT_EQ(answer.base, std::optional{195_s});
    EXPECT_EQ(answer.ceiling, answer.base);
    EXPECT_FALSE(answer.trim_step);
}

TEST(BankCycleTest, a_wet_start_leaves_base_and_ceiling_the_same) {
    const auto answer = best(wet(45.0, 255.0, 75.0));
    ASSERT_TRUE(answer.cycled);
    EXPECT_EQ(answer.ceiling, answer.base);
    EXPECT_FALSE(answer.trim_step);
}

TEST(BankCycleTest, the_ceiling_stays_below_the_period) {
    for (double wet_through = 60.0; wet_through < 1000.0; wet_through += 37.0) {
        const auto answer = best(dry(45.0, wet_through, 12.0 * wet_through));
        ASSERT_TRUE(answer.cycled) << wet_through;
        EXPECT_LE(*answer.ceiling, answer.period - 60_s) << wet_through;
    }
}

TEST(BankCycleTest, ten_minutes_are_tried_where_five_do_not_fit) {
    // 150 + 375 * 0.28 = 255 > 240; 150 + 750 * 0.28 = 360 <= 540.
    const auto answer = best(dry(150.0, 500.0, 1250.0));
    EXPECT_TRUE(answer.cycled);
    EXPECT_EQ(answer.period, 600_s);
    EXPECT_EQ(answer.base, std::optional{360_s});
}

TEST(BankCycleTest, a_base_that_leaves_exactly_the_rest_still_fits) {
    // Rule 2: 300 + 40 - 0.5 * 200 = 240 = 300 - 60. A second less of dry-out does not fit, at any period.
    EXPECT_TRUE(best(dry(40.0, 45.0, 200.0)).cycled);
    const auto tight = best(dry(40.0, 45.0, 199.0));
    EXPECT_FALSE(tight.cycled);
    EXPECT_EQ(tight.period, 600_s);
    EXPECT_EQ(tight.limited_by, std::optional{LimitedBy::no_part_dries});
    EXPECT_FALSE(tight.base);
    EXPECT_FALSE(tight.ceiling);
    EXPECT_NEAR(in_seconds(tight.banks.front().gap_bound), 540.5, 1e-9);
}

TEST(BankCycleTest, drying_that_outruns_supply_cannot_be_cycled_and_says_so) {
    // a = 1/200, b = 0.7/130 > a.
    const auto answer = best(dry(20.0, 220.0, 130.0));
    EXPECT_FALSE(answer.cycled);
    EXPECT_TRUE(answer.drying_outruns_supply);
    EXPECT_FALSE(best(dry(20.0, 220.0, 2000.0)).drying_outruns_supply);
    // b R > a where b < a in the test's weather: a = 1/100, b = 0.7/100, R 1.5.
    auto design = dry(20.0, 120.0, 100.0);
    EXPECT_FALSE(drying_outruns_supply(design, {}).value());
    design.evaporation_ratio = 1.5;
    EXPECT_TRUE(drying_outruns_supply(design, {}).value());
    // A wet start gives b / a itself: s = 300 / 60 = 5, kappa = 5/6, R 1.3 -> above 1.
    auto returned = wet(30.0, 30.0, 330.0);
    EXPECT_FALSE(drying_outruns_supply(returned, {}).value());
    returned.evaporation_ratio = 1.3;
    EXPECT_TRUE(drying_outruns_supply(returned, {}).value());
    auto by_flow = dry(45.0, 165.0, 1200.0);
    by_flow.evaporated_share = 1.01;
    EXPECT_TRUE(drying_outruns_supply(by_flow, {}).value());
}

TEST(BankCycleTest, the_worst_bank_decides) {
    const auto easy = dry(30.0, 90.0, 1500.0);
    const auto worst = dry(60.0, 210.0, 1200.0);
    const auto answer = best_cycle({easy, worst, easy}, 1_s).value();
    EXPECT_EQ(answer.deciding_bank, 1U);
    EXPECT_EQ(answer.base, best(worst).base);
    EXPECT_EQ(answer.ceiling, std::optional{210_s});
    ASSERT_EQ(answer.banks.size(), 3U);
    EXPECT_LT(answer.banks[0].largest(), answer.banks[1].largest());
}

TEST(BankCycleTest, one_bank_that_cannot_be_cycled_keeps_its_timer_continuous) {
    EXPECT_FALSE(best_cycle({dry(30.0, 90.0, 1500.0), dry(20.0, 220.0, 130.0)}, 1_s).value().cycled);
}

// Readings fixed: more evaporation at the design hour never shortens the on-time; continuous counts as
// longest.
TEST(BankCycleTest, more_evaporation_never_shortens_the_on_time) {
    for (const bool fans_on : {false, true}) {
        for (const double u : {0.0, 3.0, 9.0}) {
            for (const double wetting : {20.0, 120.0, 400.0}) {
                for (const bool from_wet : {false, true}) {
                    auto bank = from_wet ? wet(45.0, 400.0, 45.0 + 0.2 * wetting)
                                         : dry(45.0, 45.0 + wetting, 1200.0, fans_on);
                    bank.uncertainty.reset();
                    bank.u_fill = seconds(std::min(u, 0.1 * wetting));
                    if (auto* start = std::get_if<DryStart>(&bank.start)) {
                        start->u_wet_through = seconds(u);
                        start->u_dry_out = 60_s;
                    } else {
                        std::get<WetStart>(bank.start).u_drip_return = seconds(u);
                    }
                    double last = 0.0;
                    for (double ratio = 0.05; ratio < 6.0; ratio += 0.05) {
                        bank.evaporation_ratio = ratio;
                        const auto answer = best(bank);
                        const double on_time = answer.cycled ? in_seconds(*answer.base) : 1e9;
                        EXPECT_GE(on_time, last)
                            << "ratio " << ratio << ", u " << u << ", wetting " << wetting
                            << (fans_on ? ", fans on" : "") << (from_wet ? ", wet start" : "");
                        last = on_time;
                    }
                }
            }
        }
    }
}

TEST(BankCycleTest, what_cannot_be_asked_is_named) {
    const auto fill_too_long = best_cycle({dry(165.0, 165.0, 1200.0)}, 1_s);
    ASSERT_FALSE(fill_too_long);
    EXPECT_EQ(fill_too_long.error().item, "wet-through time");
    EXPECT_FALSE(best_cycle({}, 1_s));
    EXPECT_FALSE(best_cycle({dry(0.0, 165.0, 1200.0)}, 1_s));
    EXPECT_FALSE(best_cycle({dry(45.0, 165.0, -1.0)}, 1_s));
    EXPECT_FALSE(best_cycle({dry(45.0, 165.0, 86401.0)}, 1_s));
    EXPECT_FALSE(best_cycle({dry(45.0, std::nan(""), 1200.0)}, 1_s));
    EXPECT_FALSE(best_cycle({wet(75.0, 255.0, 75.0)}, 1_s));
    EXPECT_FALSE(best_cycle({wet(45.0, 0.0, 75.0)}, 1_s));
    EXPECT_FALSE(best_cycle({dry(45.0, 165.0, 1200.0)}, 0_s));
    auto no_evaporation = dry(45.0, 165.0, 1200.0);
    no_evaporation.evaporation_ratio = 0.0;
    EXPECT_FALSE(best_cycle({no_evaporation}, 1_s));
    auto strong_outlet = dry(45.0, 165.0, 1200.0);
    strong_outlet.weakest_outlet_ratio = 0.9;
    EXPECT_FALSE(best_cycle({strong_outlet}, 1_s));
    auto unsure = dry(45.0, 165.0, 1200.0);
    unsure.uncertainty = seconds(-1.0);
    EXPECT_FALSE(best_cycle({unsure}, 1_s));
}

TEST(BankCycleTest, a_wetting_time_within_the_uncertainty_of_the_fill_is_refused) {
    auto bank = dry(45.0, 55.0, 1200.0);
    bank.u_fill = 5_s;
    EXPECT_TRUE(best_cycle({bank}, 1_s));
    bank.u_fill = 5.1_s;
    EXPECT_FALSE(best_cycle({bank}, 1_s));
}

TEST(BankCycleTest, margins_that_are_none_are_refused) {
    const auto with = [](auto change) {
        CycleMargins margins;
        change(margins);
        return best_cycle({dry(45.0, 165.0, 1200.0)}, 1_s, margins).has_value();
    };
    EXPECT_TRUE(with([](CycleMargins& m) { m.water_margin = 1.0; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.water_margin = 0.99; }));
    EXPECT_TRUE(with([](CycleMargins& m) { m.least_rest = 599_s; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.least_rest = 600_s; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.least_rest = seconds(-1.0); }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.drying_share = 1.01; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.constant_share = 1.0; }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.periods.clear(); }));
    EXPECT_FALSE(with([](CycleMargins& m) { m.periods = {0_s}; }));
}

// Common practice, no source: a five-minute period with trims every second period is a ten-minute review.
TEST(BankCycleTest, a_five_minute_period_with_trims_every_second_period_is_a_ten_minute_review) {
    EXPECT_EQ(review_interval(300_s, 600_s), 2.0 * 300_s);
    EXPECT_EQ(review_interval(600_s, 600_s), 600_s);
    EXPECT_EQ(review_interval(420_s, 600_s), 840_s);
    EXPECT_EQ(review_interval(300_s, 610_s), 900_s);
    EXPECT_EQ(review_interval(300_s, 60_s), 600_s);
}

TEST(BankCycleTest, rounding_goes_the_way_it_says_and_keeps_whole_steps) {
    EXPECT_EQ(rounded_up(82.5_s, 5_s), 85_s);
    EXPECT_EQ(rounded_down(82.5_s, 5_s), 80_s);
    EXPECT_EQ(rounded_up(85_s, 5_s), 85_s);
    EXPECT_EQ(rounded_down(85_s, 5_s), 85_s);
    EXPECT_NEAR(in_seconds(rounded_up(seconds(0.1 * 3.0), 0.1_s)), 0.3, 1e-12);
    EXPECT_NEAR(in_seconds(rounded_down(seconds(0.7 + 0.1), 0.1_s)), 0.8, 1e-12);
}

// tau_w 120, t_dry 1200, c 0.7, fans off, R 1.2: a = 1/120, b R = 0.7 * 1.2 / 1200 = 0.0007. From dry against
// the fans: (0.3 / 0.0007) ln(a / (a - 0.0007)) + 0.7 / (a - 0.0007) = 428.5714 * 0.0877387 + 91.7031
// = 37.6023 + 91.7031 = 129.305 s after the fill.
TEST(BankCycleTest, a_rinse_wets_a_dry_pad_against_the_fans_and_changes_the_header) {
    auto bank = dry(45.0, 165.0, 1200.0);
    bank.evaporation_ratio = 1.2;
    const auto by_fill = rinse_need(bank, std::nullopt).value();
    EXPECT_NEAR(in_seconds(by_fill.wet_through), 174.305, 0.001);
    EXPECT_NEAR(in_seconds(by_fill.length()), 174.305 + 135.0, 0.001);
    EXPECT_FALSE(by_fill.exchange_from_flow);
    EXPECT_NEAR(in_seconds(rinse_need(bank, 60_s).value().length()), 234.305, 0.001);
}

// Common practice, no source: a rinse of about five minutes in the morning.
TEST(BankCycleTest, five_minutes_of_rinse_are_accepted_where_they_wet_the_pad_through) {
    EXPECT_TRUE(covers_wet_through(rinse_need(dry(45.0, 165.0, 1200.0), std::nullopt).value(), 300_s));
    EXPECT_FALSE(covers_wet_through(rinse_need(dry(60.0, 330.0, 1200.0), std::nullopt).value(), 300_s));
}

TEST(BankCycleTest, no_rinse_length_without_a_wet_through_time_or_enough_water) {
    EXPECT_FALSE(rinse_need(wet(45.0, 255.0, 75.0), std::nullopt));
    EXPECT_FALSE(rinse_need(dry(20.0, 220.0, 130.0), std::nullopt));
}

// 300 s off and 45 s of filling were tested; twice the evaporation halves that, half of it proves no more.
TEST(LongestGapTest, of_a_wet_start_is_never_longer_than_the_gap_that_was_tested) {
    BankQuestion bank;
    bank.fill = seconds(45.0);
    bank.start = WetStart{seconds(300.0), seconds(85.0)};
    bank.evaporation_ratio = 2.0;
    EXPECT_NEAR(in_seconds(longest_gap(bank, {})), 172.5, 1e-9);
    bank.evaporation_ratio = 0.5;
    EXPECT_NEAR(in_seconds(longest_gap(bank, {})), 345.0, 1e-9);
}

}  // namespace
}  // namespace wetfront
