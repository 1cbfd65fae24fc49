// SPDX-License-Identifier: Apache-2.0
#include "cycle/drip_return.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace wetfront::test {
namespace {

BankQuestion dry_start(double fill, double wet_through, double dry_out) {
    BankQuestion bank;
    bank.fill = seconds(fill);
    bank.start = DryStart{seconds(wet_through), seconds(dry_out)};
    return bank;
}

BankQuestion wet_start(double fill, double off, double drip_return) {
    BankQuestion bank;
    bank.fill = seconds(fill);
    bank.start = WetStart{seconds(off), seconds(drip_return)};
    return bank;
}

// By hand: tau_w = 140 - 40 = 100 s, a = 1/100; b = 0.7/2400; pause = 300 - 90 + 40 = 250 s; d = 250 b =
// 0.0729167; until drip d/(a - b) = 0.0729167/0.00970833 = 7.5107 s; from the start 40 + 7.5107.
TEST(DripReturnTest, the_pause_is_made_up_for_at_the_rate_of_supply_less_drying) {
    const auto expected = expected_drip_return(dry_start(40.0, 140.0, 2400.0), seconds(300.0), seconds(90.0));
    ASSERT_TRUE(expected);
    EXPECT_NEAR(in_seconds(expected->mean), 47.5107, 1e-4);
    EXPECT_EQ(in_seconds(expected->expanded), 0.0) << "readings without uncertainty";
}

// By hand: s = (60 - 40)/(600 + 40) = 1/32; pause 250 s; 40 + 250/32 = 47.8125 s.
TEST(DripReturnTest, a_wet_start_scales_with_the_pause) {
    const auto expected = expected_drip_return(wet_start(40.0, 600.0, 60.0), seconds(300.0), seconds(90.0));
    ASSERT_TRUE(expected);
    EXPECT_NEAR(in_seconds(expected->mean), 47.8125, 1e-9);
}

TEST(DripReturnTest, a_wet_start_says_nothing_of_a_longer_pause_than_it_proved) {
    const auto bank = wet_start(40.0, 600.0, 60.0);
    EXPECT_TRUE(expected_drip_return(bank, seconds(690.0), seconds(90.0))) << "pause 640 s, as tested";
    EXPECT_FALSE(expected_drip_return(bank, seconds(691.0), seconds(90.0)));
}

TEST(DripReturnTest, a_pump_that_never_rests_has_no_return_of_the_drip) {
    EXPECT_FALSE(expected_drip_return(dry_start(40.0, 140.0, 2400.0), seconds(300.0), seconds(300.0)));
    EXPECT_FALSE(expected_drip_return(dry_start(40.0, 140.0, 2400.0), seconds(300.0), seconds(310.0)));
}

// a = 1/100 and b = 0.7/60: supply never catches up.
TEST(DripReturnTest, where_drying_outruns_supply_no_drip_is_expected) {
    EXPECT_FALSE(expected_drip_return(dry_start(40.0, 140.0, 60.0), seconds(300.0), seconds(90.0)));
}

// By hand, with a = 1/tau and b = 0.7/t: return = fill + pause tau b/(1 - tau b).
//   fill 41: tau = 99, pause 251, b = 1/3428.57: 41 + 251/(34.6320 - 1) = 48.4631, less 47.5107: 0.9524
//   wet-through 142: tau = 102: 40 + 250/(33.6134 - 1) = 47.6655: 0.1548
//   dry-out 2520: b = 1/3600: 40 + 250/(36 - 1) = 47.1429: 0.3678
// sqrt(0.9524^2 + 0.1548^2 + 0.3678^2) = 1.0327; times 1.9600 = 2.0240.
TEST(DripReturnTest, the_uncertainties_of_the_readings_come_through) {
    auto bank = dry_start(40.0, 140.0, 2400.0);
    bank.u_fill = seconds(1.0);
    auto& start = std::get<DryStart>(bank.start);
    start.u_wet_through = seconds(2.0);
    start.u_dry_out = seconds(120.0);
    const auto expected = expected_drip_return(bank, seconds(300.0), seconds(90.0));
    ASSERT_TRUE(expected);
    EXPECT_NEAR(in_seconds(expected->standard), 1.0327, 2e-4);
    EXPECT_NEAR(in_seconds(expected->expanded), 2.0240, 4e-4);
}

// The same column stepped through 1 ms at a time over several cycles, until it repeats; the pause is long
// enough for drying to slow down (beyond c).
TEST(DripReturnTest, it_is_where_a_column_that_is_stepped_through_settles) {
    constexpr double fill = 40.0;
    constexpr double period = 900.0;
    constexpr double on = 400.0;
    constexpr double c = 0.7;
    constexpr double a = 1.0 / 60.0;
    constexpr double b = c / 450.0;
    constexpr double step = 1e-3;
    double deficit = 0.0;
    double drips_at = 0.0;
    for (int cycle = 0; cycle < 4; ++cycle) {
        drips_at = 0.0;
        const auto steps = static_cast<int>(period / step);
        for (int i = 0; i < steps; ++i) {
            const double t = i * step;
            const bool supplied = t >= fill && t < on;
            const double phi = deficit <= c ? 1.0 : (1.0 - deficit) / (1.0 - c);
            deficit = std::max(0.0, deficit + step * (b * phi - (supplied ? a : 0.0)));
            if (supplied && deficit == 0.0 && drips_at == 0.0) {
                drips_at = t;
            }
        }
    }
    const auto expected =
        expected_drip_return(dry_start(fill, fill + 60.0, 450.0), seconds(period), seconds(on));
    ASSERT_TRUE(expected);
    EXPECT_NEAR(in_seconds(expected->mean), drips_at, 0.05) << "1 ms steps";
}

}  // namespace
}  // namespace wetfront::test
