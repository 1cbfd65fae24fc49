// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "own_margins.h"
#include "pad/wetting_column.h"

namespace wetfront {
namespace {

/// A bank as nature has it; the advice sees only what a stopwatch shows.
struct TrueBank {
    double a;  ///< at the far end, test weather
    double b;  ///< test weather
    double c;
    double fill;
    double ratio;          ///< E_design / E_test
    double outlets = 1.0;  ///< q_far / least q as the advice knows it; what it does not know comes on top
};

ColumnRates rates(double a, double b, double c) {
    return {from_si<Rate>(a), from_si<Rate>(b), c};
}

enum class Method { dry_fans_off, dry_fans_on, wet_start };

// What a perfect observer reads off the far end.
BankQuestion readings_of(const TrueBank& bank, Method method, double off) {
    BankQuestion question;
    question.fill = seconds(bank.fill);
    question.evaporation_ratio = bank.ratio;
    question.weakest_outlet_ratio = bank.outlets;
    question.uncertainty = seconds(0.0);
    const auto in_test = rates(bank.a, bank.b, bank.c);
    if (method == Method::wet_start) {
        const auto fill = seconds(bank.fill);
        const double deficit = deficit_after_drying(in_test, 0.0, seconds(off) + fill);
        question.start = WetStart{seconds(off), fill + time_to_drip(in_test, deficit).value()};
        return question;
    }
    const bool fans_on = method == Method::dry_fans_on;
    const auto wetting = time_to_drip(rates(bank.a, fans_on ? bank.b : 0.0, bank.c), 1.0).value();
    question.start = DryStart{question.fill + wetting, seconds(bank.c / bank.b), fans_on};
    return question;
}

// The largest deficit of any column over several periods at the design hour, starting wet. Twenty columns and
// the far end; water arrives at share x of the header at x t_fill; one column, `weak`, gets 0.8 of the far
// end's flow.
double largest_deficit(const TrueBank& bank, double period, double on_time, int weak, double& last_start) {
    double largest = 0.0;
    for (int i = 0; i <= 20; ++i) {
        const double x = i == 20 ? 1.0 : (i + 0.5) / 20.0;
        const double arrival = x * bank.fill;
        const auto column =
            rates(bank.a * (i == weak ? 0.8 / bank.outlets : 1.0), bank.b * bank.ratio, bank.c);
        double d = 0.0;
        for (int run = 0; run < 6; ++run) {
            d = deficit_after_drying(column, d, seconds(arrival));
            largest = std::max(largest, d / bank.c);
            d = deficit_after_supply(column, d, seconds(on_time - arrival));
            last_start = std::max(last_start, run == 5 ? d : 0.0);
            d = deficit_after_drying(column, d, seconds(period - on_time));
            largest = std::max(largest, d / bank.c);
        }
    }
    return largest;
}

TEST(CycleSafetyTest, no_approved_cycle_dries_any_column_of_20000_random_banks) {
    std::mt19937_64 random{20260701};
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>{low, high}(random);
    };
    const std::array<double, 3> resolutions{1.0, 5.0, 15.0};
    std::array<int, 3> approved{};
    for (int i = 0; i < 20000; ++i) {
        TrueBank bank{};
        bank.c = between(0.5, 0.95);
        bank.a = 1.0 / between(30.0, 400.0);
        bank.b = bank.a * std::exp(between(std::log(0.01), std::log(0.7)));
        bank.fill = between(10.0, 150.0);
        bank.ratio = between(0.6, 2.5);
        bank.outlets = random() % 2 == 0 ? 1.0 : between(1.0, 1.5);
        const auto method = static_cast<Method>(random() % 3);
        // A wet start is valid while no part dried.
        const double off = between(0.2, 1.0) * bank.c / bank.b - bank.fill;
        if (method == Method::wet_start && off < 5.0) {
            continue;
        }
        const auto question = readings_of(bank, method, off);
        const auto answer = best_cycle({question}, seconds(resolutions[random() % 3]));
        ASSERT_TRUE(answer) << answer.error().text();
        if (!answer.value().cycled) {
            continue;
        }
        ++approved[static_cast<std::size_t>(method)];
        const int weak = static_cast<int>(random() % 21);
        // Base and ceiling: whatever the trim can reach.
        for (const auto& on_time : {*answer.value().base, *answer.value().ceiling}) {
            double at_start = 0.0;
            const double worst =
                largest_deficit(bank, in_seconds(answer.value().period), in_seconds(on_time), weak, at_start);
            ASSERT_LE(worst, 1.0) << "bank " << i << ": a " << bank.a << ", b " << bank.b << ", c " << bank.c
                                  << ", fill " << bank.fill << ", ratio " << bank.ratio << ", outlets "
                                  << bank.outlets << ", method " << static_cast<int>(method) << ", period "
                                  << in_seconds(answer.value().period) << ", on-time " << in_seconds(on_time)
                                  << ", weak column " << weak;
            // Each run ends with the pad full again, so no later period differs from these.
            ASSERT_LE(at_start, 1e-9) << "bank " << i << " is not full at the end of a run";
        }
    }
    // The sweep would prove nothing if it approved nothing.
    for (const int count : approved) {
        EXPECT_GT(count, 1000);
    }
}

// The sweep can fail: what it accepts lies within a few percent of what dries a pad.
TEST(CycleSafetyTest, a_run_shorter_than_the_need_dries_the_weak_column) {
    const TrueBank bank{1.0 / 120.0, 0.95 / 1200.0, 0.95, 45.0, 1.0};
    const auto answer = best_cycle({readings_of(bank, Method::dry_fans_off, 0.0)}, seconds(0.1)).value();
    ASSERT_TRUE(answer.cycled);
    double at_start = 0.0;
    (void)largest_deficit(bank, in_seconds(answer.period), 0.9 * in_seconds(*answer.base), 20, at_start);
    EXPECT_GT(at_start, 0.01);
}

// What the fans were doing when a cycle was calibrated does not change what it leads to: same bank, three
// methods.
TEST(CycleSafetyTest, every_way_of_timing_a_bank_gives_back_what_it_is_made_of) {
    for (const double c : {0.5, 0.7, 0.9}) {
        for (const double share : {0.02, 0.1, 0.4}) {
            const TrueBank bank{1.0 / 150.0, share / 150.0, c, 40.0, 1.0};
            for (const bool fans_on : {false, true}) {
                const auto question =
                    readings_of(bank, fans_on ? Method::dry_fans_on : Method::dry_fans_off, 0.0);
                const auto& start = std::get<DryStart>(question.start);
                const auto got =
                    rates_from_timings(start.wet_through - question.fill, start.dry_out, fans_on, c).value();
                EXPECT_NEAR(in_si(got.wetting), bank.a, 1e-9 * bank.a) << "c " << c << ", b/a " << share;
                EXPECT_NEAR(in_si(got.drying), bank.b, 1e-9 * bank.b) << "c " << c << ", b/a " << share;
                // Whatever c is, the share used is not below the true one.
                EXPECT_GE(evaporated_share(question).value(), share * (1.0 - 1e-9)) << "c " << c;
            }
            const auto from_wet = readings_of(bank, Method::wet_start, 0.8 * c / bank.b - bank.fill);
            EXPECT_NEAR(evaporated_share(from_wet).value(), share, 1e-9) << "c " << c;
        }
    }
}

}  // namespace
}  // namespace wetfront
