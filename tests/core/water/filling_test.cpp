// SPDX-License-Identifier: Apache-2.0
#include "water/filling.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>
#include <random>

#include "support/outside_check.h"
#include "water/pipe.h"

namespace wetfront {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double g = 9.80665;

Length metres(double value) {
    return from_si<Length>(value);
}

Header even(double length, double bore, double outlet_bore, double spacing) {
    auto made = even_header(metres(length), metres(bore), metres(outlet_bore), metres(spacing));
    EXPECT_TRUE(made) << made.error().text();
    return made ? std::move(made.value()) : Header{};
}

Filling filled(const Header& header, double flow) {
    auto got = filling_of(header, from_si<VolumeFlow>(flow));
    EXPECT_TRUE(got) << got.error().text();
    return got ? std::move(got.value()) : Filling{};
}

double volume(const Header& header) {
    return std::numbers::pi / 4.0 * std::pow(in_si(header.bore), 2) * in_si(header.length);
}

// 18 m of 52 mm, outlets of 3.2 mm every 76 mm, fed with 2.4 L/s: 8 L/min for each metre of pad.
Header healthy() {
    return even(18.0, 0.052, 0.0032, 0.0762);
}
constexpr double healthy_flow = 2.4e-3;

TEST(FillingTest, without_outlets_filling_takes_volume_over_flow) {
    test::OutsideCheck check{"filling without outlets", "closed form, pipe volume over flow", "s"};
    Header header;
    header.length = metres(18.0);
    header.bore = metres(0.052);
    for (const double flow : {1e-5, 1e-3, 2e-2}) {
        const Filling got = filled(header, flow);
        check.near(std::to_string(1e3 * flow) + " L/s", in_si(got.fill), volume(header) / flow,
                   1e-12 * volume(header) / flow);
        EXPECT_NEAR(in_si(got.pipe_time), in_si(got.fill), 1e-12 * in_si(got.fill));
        EXPECT_EQ(in_si(got.supplied), 0.0);
        EXPECT_NEAR(got.arrival_share(0.37), 0.37, 1e-12);
    }
}

TEST(FillingTest, blocked_outlets_count_as_none) {
    Header header = healthy();
    for (Outlet& outlet : header.outlets) {
        outlet.open_share = 0.0;
    }
    const Filling got = filled(header, healthy_flow);
    EXPECT_NEAR(in_si(got.fill), volume(header) / healthy_flow, 1e-11);
}

// The share that the outlets take goes with their area: at a thousandth of it, they take a thousandth.
TEST(FillingTest, tiny_outlets_lengthen_filling_by_as_little_as_they_give) {
    const Filling wide = filled(even(18.0, 0.052, 1e-3, 0.1), healthy_flow);
    const Filling tiny = filled(even(18.0, 0.052, 1e-4, 0.1), healthy_flow);
    const double by_wide = in_si(wide.fill - wide.pipe_time);
    const double by_tiny = in_si(tiny.fill - tiny.pipe_time);
    EXPECT_GT(by_tiny, 0.0);
    EXPECT_NEAR(by_tiny / by_wide, 0.01, 0.001);
}

// A wide pipe slowly filled has no friction: every outlet behind the front sees half the bore, gives
// q = Cd A sqrt(g D), and with n of them the front goes at (Q - n q) over the pipe's area.
TEST(FillingTest, without_friction_arrivals_are_those_of_the_sum_by_hand) {
    test::OutsideCheck check{"arrival of the front at each outlet, no friction",
                             "closed form, sum of A s / (Q - n q)", "s"};
    const Header header = even(10.0, 0.5, 0.01, 0.5);
    const double q = 0.6 * std::numbers::pi / 4.0 * 0.01 * 0.01 * std::sqrt(g * 0.5);
    const double flow = 40.0 * q;
    const Filling got = filled(header, flow);
    ASSERT_EQ(got.arrivals.size(), 20U);
    double time = 0.0;
    for (std::size_t n = 0; n < got.arrivals.size(); ++n) {
        time += volume(header) / 20.0 / (flow - static_cast<double>(n) * q);
        // What friction there is: under 1e-6 m of head beside 0.25 m.
        check.near("outlet " + std::to_string(n + 1), in_si(got.arrivals[n]), time, 4e-6 * time);
    }
    EXPECT_NEAR(in_si(got.fill), in_si(got.arrivals.back()), 1e-9 * time);
}

// The same front, stepped by a plain method of its own: bisection for the front's speed, many small steps.
TEST(FillingTest, with_friction_a_plain_step_by_step_front_comes_at_the_same_time) {
    test::OutsideCheck check{"filling of a header with friction",
                             "plain step-by-step integration in the test"};
    for (const double rise : {0.0, 0.1, -0.1}) {
        for (const double recovery : {0.0, 1.0}) {
            Header header = even(12.0, 0.04, 0.0056, 0.8);
            header.rise = metres(rise);
            header.static_recovery = recovery;
            const double flow = 1.2e-3;
            const double area = std::numbers::pi / 4.0 * 0.04 * 0.04;
            const double hole = 0.6 * std::numbers::pi / 4.0 * 0.0056 * 0.0056;
            const auto taken = [&](double front, double speed) {
                double head = 0.02;
                double through = area * speed;
                double at = front;
                for (std::size_t i = header.outlets.size(); i-- > 0;) {
                    const double here = in_si(header.outlets[i].at);
                    if (here > front) {
                        continue;
                    }
                    head += rise * (at - here) / 12.0 +
                            in_si(friction_loss(from_si<VolumeFlow>(through), metres(at - here), header.bore,
                                                header.roughness)
                                      .value());
                    at = here;
                    if (head <= 0.0) {
                        continue;
                    }
                    // Head before the outlet, by fixed point: what is regained depends on what it gives.
                    double before = head;
                    for (int round = 0; round < 12; ++round) {
                        const double given = hole * std::sqrt(2.0 * g * before);
                        before = head - recovery * (std::pow(through + given, 2) - through * through) /
                                            (2.0 * g * area * area);
                    }
                    through += hole * std::sqrt(2.0 * g * before);
                    head = before;
                }
                return through;
            };
            const int steps = 600;
            double time = 0.0;
            for (int step = 0; step < steps; ++step) {
                const double front = 12.0 * (step + 0.5) / steps;
                double low = 0.0;
                double high = flow / area;
                for (int halving = 0; halving < 34; ++halving) {
                    const double middle = 0.5 * (low + high);
                    (taken(front, middle) < flow ? low : high) = middle;
                }
                time += 12.0 / steps / low;
            }
            check.within("rise " + std::to_string(rise) + " m, recovery " + std::to_string(recovery),
                         in_si(filled(header, flow).fill), time, 1e-5);
        }
    }
}

TEST(FillingTest, what_is_pumped_is_what_the_outlets_gave_and_what_fills_the_pipe) {
    test::OutsideCheck check{"water pumped while filling", "conservation: outlets and pipe volume"};
    std::mt19937 random{11};
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>{low, high}(random);
    };
    int done = 0;
    for (int trial = 0; trial < 80; ++trial) {
        Header header =
            even(between(3.0, 30.0), between(0.03, 0.08), between(0.002, 0.005), between(0.07, 0.5));
        header.rise = metres(between(-0.01, 0.01) * in_si(header.length));
        header.static_recovery = between(0.0, 1.0);
        const double flow = between(1.0, 4.0) * 1e-3;
        const auto got = filling_of(header, from_si<VolumeFlow>(flow));
        if (!got) {
            continue;  // the pump is too weak for it
        }
        ++done;
        check.within("trial " + std::to_string(trial), flow * in_si(got.value().fill),
                     in_si(got.value().supplied) + volume(header), 1e-9);
    }
    EXPECT_GT(done, 50);
}

TEST(FillingTest, a_healthy_header_fills_in_1_3_to_2_2_pipe_times) {
    const Filling got = filled(healthy(), healthy_flow);
    const double times = in_si(got.fill) / in_si(got.pipe_time);
    EXPECT_GT(times, 1.3);
    EXPECT_LT(times, 2.2);
}

TEST(FillingTest, arrivals_rise_from_outlet_to_outlet_to_the_far_end) {
    const Header header = healthy();
    const Filling got = filled(header, healthy_flow);
    ASSERT_EQ(got.arrivals.size(), header.outlets.size());
    // Nothing runs before the first outlet: the pipe up to there, at the whole flow.
    EXPECT_NEAR(in_si(got.arrivals.front()), volume(header) / 18.0 * 0.0762 / healthy_flow, 1e-12);
    for (std::size_t i = 1; i < got.arrivals.size(); ++i) {
        EXPECT_GT(got.arrivals[i], got.arrivals[i - 1]);
    }
    EXPECT_LE(got.arrivals.back(), got.fill);
}

TEST(FillingTest, the_shape_runs_from_0_to_1_below_the_straight_line_and_through_the_arrivals) {
    const Header header = healthy();
    const Filling got = filled(header, healthy_flow);
    EXPECT_EQ(got.arrival_share(0.0), 0.0);
    EXPECT_EQ(got.arrival_share(1.0), 1.0);
    ASSERT_EQ(got.shares.size(), got.times.size());
    for (std::size_t i = 1; i < got.shares.size(); ++i) {
        EXPECT_GT(got.shares[i], got.shares[i - 1]);
        EXPECT_GT(got.times[i], got.times[i - 1]);
    }
    // The front slows down, so at half the length less than half of the time has gone.
    for (const double share : {0.1, 0.5, 0.9}) {
        EXPECT_LT(got.arrival_share(share), share);
    }
    for (std::size_t i = 0; i < header.outlets.size(); i += 20) {
        EXPECT_NEAR(got.arrival_share(in_si(header.outlets[i].at) / 18.0), got.arrivals[i] / got.fill, 1e-12);
    }
}

TEST(FillingTest, outlets_in_one_place_and_at_both_ends_are_reached_together) {
    Header header;
    header.length = metres(6.0);
    header.bore = metres(0.05);
    for (const double at : {0.0, 3.0, 3.0, 6.0}) {
        header.outlets.push_back({metres(at), metres(0.004)});
    }
    const Filling got = filled(header, 1e-3);
    EXPECT_EQ(in_si(got.arrivals[0]), 0.0);
    EXPECT_EQ(in_si(got.arrivals[1]), in_si(got.arrivals[2]));
    EXPECT_EQ(in_si(got.arrivals[3]), in_si(got.fill));
    for (std::size_t i = 1; i < got.shares.size(); ++i) {
        EXPECT_GT(got.shares[i], got.shares[i - 1]);
    }
}

TEST(FillingTest, more_flow_never_fills_later) {
    for (const double rise : {0.0, 0.1, -0.1}) {
        Header header = healthy();
        header.rise = metres(rise);
        double before = std::numeric_limits<double>::infinity();
        for (double flow = 1.9e-3; flow < 0.05; flow *= 1.2) {
            const double fill = in_si(filled(header, flow).fill);
            EXPECT_LT(fill, before) << 1e3 * flow << " L/s, rise " << rise;
            before = fill;
        }
    }
}

// Without friction n outlets take n q; 5.5 q come past the fifth, 0.5 m apart, to the sixth and no further.
TEST(FillingTest, a_pump_too_weak_is_told_how_far_its_water_comes) {
    const Header header = even(10.0, 0.5, 0.01, 0.5);
    const double q = 0.6 * std::numbers::pi / 4.0 * 0.01 * 0.01 * std::sqrt(g * 0.5);
    const auto got = filling_of(header, from_si<VolumeFlow>(5.5 * q));
    ASSERT_FALSE(got);
    EXPECT_EQ(got.error().item, "flow into the header");
    EXPECT_NE(got.error().accepted.find("comes 3 m of 10 m"), std::string::npos) << got.error().text();
    // Uphill the water ahead presses on the outlets behind, and stops between two.
    Header rising = even(10.0, 0.1, 0.004, 0.5);
    rising.rise = metres(1.0);
    const auto stops = filling_of(rising, from_si<VolumeFlow>(1.2e-4));
    ASSERT_FALSE(stops);
    EXPECT_NE(stops.error().accepted.find(" m of 10 m"), std::string::npos) << stops.error().text();
}

TEST(FillingTest, impossible_headers_and_flows_are_refused_by_name) {
    const Header good = healthy();
    for (const double flow : {0.0, -1e-3, nan, 0.2}) {
        EXPECT_EQ(filling_of(good, from_si<VolumeFlow>(flow)).error().item, "flow into the header") << flow;
    }
    Header header = good;
    header.bore = metres(-0.05);
    EXPECT_EQ(filling_of(header, from_si<VolumeFlow>(1e-3)).error().item, "header bore");
    header = good;
    header.outlets.back().at = metres(18.1);
    EXPECT_EQ(filling_of(header, from_si<VolumeFlow>(1e-3)).error().item,
              "header outlet " + std::to_string(header.outlets.size()) + " position");
}

}  // namespace
}  // namespace wetfront
