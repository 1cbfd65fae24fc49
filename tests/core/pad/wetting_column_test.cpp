// SPDX-License-Identifier: Apache-2.0
#include "pad/wetting_column.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace wetfront {
namespace {

using namespace literals;

ColumnRates rates(double a, double b, double c = 0.7) {
    return {from_si<Rate>(a), from_si<Rate>(b), c};
}

double phi(double d, double c) {
    return d <= c ? 1.0 : (1.0 - d) / (1.0 - c);
}

// The differential equation stepped with the midpoint rule, apart from the closed forms: d' = b phi(d) - a.
double step(double d, double a, double b, double c, double dt) {
    const double middle = std::clamp(d + 0.5 * dt * (b * phi(d, c) - a), 0.0, 1.0);
    return std::clamp(d + dt * (b * phi(middle, c) - a), 0.0, 1.0);
}
double integrated(double d, double a, double b, double c, double time) {
    constexpr int steps = 20000;
    for (int i = 0; i < steps; ++i) {
        d = step(d, a, b, c, time / steps);
    }
    return d;
}
// Time until the stepped column drips.
double stepped_drip_time(double d, double a, double b, double c) {
    constexpr double dt = 0.002;
    double t = 0.0;
    while (d > 0.0) {
        const double next = step(d, a, b, c, dt);
        if (next <= 0.0) {
            return t + dt * d / (dt * (a - b));
        }
        d = next;
        t += dt;
    }
    return t;
}

struct Case {
    double a, b, c;
};
const std::vector<Case> cases{{0.01, 0.0007, 0.7}, {0.01, 0.009, 0.5}, {0.004, 0.006, 0.7},
                              {0.005, 0.005, 0.6}, {0.02, 0.0, 0.7},   {0.008, 0.003, 0.95},
                              {0.001, 0.004, 0.3}};

TEST(WettingColumnTest, supply_in_closed_form_is_the_stepped_equation) {
    for (const auto& [a, b, c] : cases) {
        for (const double d : {0.0, 0.2, 0.699, 0.7, 0.85, 1.0}) {
            for (const double t : {1.0, 45.0, 200.0, 1500.0}) {
                EXPECT_NEAR(deficit_after_supply(rates(a, b, c), d, seconds(t)), integrated(d, a, b, c, t),
                            2e-5)
                    << "a " << a << ", b " << b << ", c " << c << ", from " << d << " for " << t << " s";
            }
        }
    }
}

TEST(WettingColumnTest, drying_in_closed_form_is_the_stepped_equation) {
    for (const auto& [a, b, c] : cases) {
        for (const double d : {0.0, 0.2, 0.699, 0.7, 0.85, 1.0}) {
            for (const double t : {1.0, 45.0, 200.0, 1500.0}) {
                EXPECT_NEAR(deficit_after_drying(rates(a, b, c), d, seconds(t)), integrated(d, 0.0, b, c, t),
                            2e-5)
                    << "b " << b << ", c " << c << ", from " << d << " for " << t << " s";
            }
        }
    }
}

TEST(WettingColumnTest, time_to_drip_is_when_the_stepped_column_drips) {
    for (const auto& [a, b, c] : cases) {
        if (a <= b) {
            continue;
        }
        for (const double d : {0.1, 0.7, 0.9, 1.0}) {
            EXPECT_NEAR(in_seconds(time_to_drip(rates(a, b, c), d).value()), stepped_drip_time(d, a, b, c),
                        0.05)
                << "a " << a << ", b " << b << ", c " << c << ", from " << d;
        }
    }
}

TEST(WettingColumnTest, cutting_a_time_in_two_changes_nothing) {
    for (const auto& [a, b, c] : cases) {
        for (const double d : {0.0, 0.5, 0.75, 1.0}) {
            for (const double share : {0.1, 0.5, 0.9}) {
                const auto r = rates(a, b, c);
                const auto first = seconds(300.0 * share);
                const auto rest = seconds(300.0 * (1.0 - share));
                EXPECT_NEAR(deficit_after_supply(r, deficit_after_supply(r, d, first), rest),
                            deficit_after_supply(r, d, 300_s), 1e-12);
                EXPECT_NEAR(deficit_after_drying(r, deficit_after_drying(r, d, first), rest),
                            deficit_after_drying(r, d, 300_s), 1e-12);
            }
        }
    }
}

TEST(WettingColumnTest, a_full_column_stays_full_under_supply_and_a_dry_one_dry_without) {
    EXPECT_EQ(deficit_after_supply(rates(0.01, 0.002), 0.0, 1000_s), 0.0);
    EXPECT_EQ(deficit_after_drying(rates(0.01, 0.002), 1.0, 1000_s), 1.0);
}

TEST(WettingColumnTest, a_column_that_dries_faster_than_it_is_fed_settles_part_wet) {
    // b phi = a: phi = 1/2, so d = 1 - (1 - c) / 2 = 0.85.
    EXPECT_NEAR(deficit_after_supply(rates(0.002, 0.004), 0.0, 100000_s), 0.85, 1e-9);
    EXPECT_NEAR(deficit_after_supply(rates(0.002, 0.004), 1.0, 100000_s), 0.85, 1e-9);
    EXPECT_FALSE(time_to_drip(rates(0.002, 0.004), 1.0));
    EXPECT_FALSE(time_to_drip(rates(0.004, 0.004), 0.5));
}

TEST(WettingColumnTest, the_wet_share_is_whole_up_to_the_constant_rate_share) {
    EXPECT_EQ(wet_share(rates(0.01, 0.001), 0.0), 1.0);
    EXPECT_EQ(wet_share(rates(0.01, 0.001), 0.7), 1.0);
    EXPECT_NEAR(wet_share(rates(0.01, 0.001), 0.85), 0.5, 1e-12);
    EXPECT_EQ(wet_share(rates(0.01, 0.001), 1.0), 0.0);
}

TEST(WettingColumnTest, rates_come_back_from_readings_with_the_fans_off) {
    for (const auto& [a, b, c] : cases) {
        if (b == 0.0) {
            continue;
        }
        // Without drying a dry column drips after 1 / a; a full one shows its first dry patch after c / b.
        const double tau_w = stepped_drip_time(1.0, a, 0.0, c);
        const auto got = rates_from_timings(seconds(tau_w), seconds(c / b), false, c).value();
        EXPECT_NEAR(in_si(got.wetting), a, 1e-4 * a);
        EXPECT_NEAR(in_si(got.drying), b, 1e-12);
    }
}

TEST(WettingColumnTest, rates_come_back_from_readings_with_the_fans_on) {
    for (const auto& [a, b, c] : cases) {
        if (b == 0.0 || a <= b) {
            continue;
        }
        const double tau_w = stepped_drip_time(1.0, a, b, c);
        const auto got = rates_from_timings(seconds(tau_w), seconds(c / b), true, c).value();
        EXPECT_NEAR(in_si(got.wetting), a, 1e-4 * a) << "b " << b << ", c " << c;
        EXPECT_NEAR(in_si(got.drying), b, 1e-12);
    }
}

TEST(WettingColumnTest, fans_that_dry_next_to_nothing_change_no_rate) {
    const auto on = rates_from_timings(120_s, seconds(1e9), true).value();
    const auto off = rates_from_timings(120_s, seconds(1e9), false).value();
    EXPECT_NEAR(in_si(on.wetting), in_si(off.wetting), 1e-6 * in_si(off.wetting));
}

TEST(WettingColumnTest, the_evaporated_share_comes_back_from_a_wet_start) {
    for (const auto& [a, b, c] : cases) {
        if (b == 0.0 || a <= b) {
            continue;
        }
        const double fill = 30.0;
        const double off = std::min(200.0, 0.9 * c / b - fill);  // no part dries
        ASSERT_GT(off, 0.0);
        const double deficit = integrated(0.0, 0.0, b, c, off + fill);
        const double drip_return = fill + stepped_drip_time(deficit, a, b, c);
        const auto got = evaporated_share_from_wet_start(seconds(off), seconds(drip_return), seconds(fill));
        EXPECT_NEAR(got.value(), b / a, 1e-4) << "a " << a << ", b " << b;
    }
}

TEST(WettingColumnTest, timings_that_cannot_be_are_named) {
    const auto none = rates_from_timings(0_s, 1200_s, false);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().item, "wetting time");
    EXPECT_FALSE(rates_from_timings(seconds(-1.0), 1200_s, false));
    EXPECT_FALSE(rates_from_timings(120_s, 0_s, false));
    EXPECT_FALSE(rates_from_timings(120_s, seconds(std::nan("")), false));
    EXPECT_FALSE(rates_from_timings(120_s, 1200_s, false, 0.0));
    EXPECT_FALSE(rates_from_timings(120_s, 1200_s, false, 1.0));
    EXPECT_FALSE(evaporated_share_from_wet_start(300_s, 45_s, 45_s));
    EXPECT_TRUE(evaporated_share_from_wet_start(300_s, 46_s, 45_s));
    EXPECT_FALSE(evaporated_share_from_wet_start(0_s, 60_s, 45_s));
    EXPECT_FALSE(evaporated_share_from_wet_start(300_s, 60_s, 0_s));
}

// Conservation, as far as columns go: what is supplied is what evaporates, what is stored and what drips.
// Evaporation is integrated on its own over b phi(d(t)) by Simpson's rule between the moments at which the
// curve has a corner, dripping from the moment at which the column drips.
double simpson(const ColumnRates& r, double d, double t, bool supplied) {
    constexpr int pieces = 400;
    const double h = t / pieces;
    double sum = 0.0;
    for (int i = 0; i <= pieces; ++i) {
        const auto at = seconds(h * i);
        const double now = supplied ? deficit_after_supply(r, d, at) : deficit_after_drying(r, d, at);
        const double weight = i == 0 || i == pieces ? 1.0 : (i % 2 == 1 ? 4.0 : 2.0);
        sum += weight * in_si(r.drying) * wet_share(r, now);
    }
    return sum * h / 3.0;
}
// Moment at which the deficit passes c, by bisection; `t` if it does not.
double corner(const ColumnRates& r, double d, double t, bool supplied) {
    const auto above = [&](double at) {
        return (supplied ? deficit_after_supply(r, d, seconds(at))
                         : deficit_after_drying(r, d, seconds(at))) > r.constant_share;
    };
    if (above(0.0) == above(t)) {
        return t;
    }
    double low = 0.0;
    double high = t;
    for (int i = 0; i < 100; ++i) {
        const double middle = 0.5 * (low + high);
        (above(middle) == above(0.0) ? low : high) = middle;
    }
    return high;
}

TEST(WettingColumnTest, water_is_conserved_over_a_day_of_cycles) {
    for (const auto& [a, b, c] : cases) {
        const auto r = rates(a, b, c);
        double d = 1.0;
        double supplied = 0.0;
        double evaporated = 0.0;
        double dripped = 0.0;
        for (int period = 0; period < 40; ++period) {
            const bool on_demand = period % 10 == 9;
            for (const bool on : {true, false}) {
                const double t = on ? (on_demand ? 700.0 : 90.0) : 210.0;
                const double turn = corner(r, d, t, on);
                const double at_turn = (on ? deficit_after_supply(r, d, seconds(turn))
                                           : deficit_after_drying(r, d, seconds(turn)));
                evaporated += simpson(r, d, turn, on) + simpson(r, at_turn, t - turn, on);
                if (on) {
                    supplied += a * t;
                    const auto drip = time_to_drip(r, d);
                    dripped += drip ? (a - b) * std::max(0.0, t - in_seconds(drip.value())) : 0.0;
                }
                d = on ? deficit_after_supply(r, d, seconds(t)) : deficit_after_drying(r, d, seconds(t));
            }
        }
        const double stored = 1.0 - d;
        EXPECT_NEAR(supplied, evaporated + stored + dripped, 1e-9 * supplied)
            << "a " << a << ", b " << b << ", c " << c;
    }
}

}  // namespace
}  // namespace wetfront
