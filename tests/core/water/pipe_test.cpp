// SPDX-License-Identifier: Apache-2.0
#include "water/pipe.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using test::cell_number;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

double factor(double reynolds, double relative_roughness) {
    const auto f = friction_factor(reynolds, relative_roughness);
    EXPECT_TRUE(f) << f.error().text();
    return f ? f.value() : nan;
}

TEST(PipeTest, colebrook_gives_the_factors_of_an_open_library) {
    test::OutsideCheck check{"friction factor (Colebrook)", "open library fluids, tests/test_friction.py"};
    for (const auto& row : test::data_rows("friction_factor.csv")) {
        // Its Colebrook is solved by a method of its own, to about 1e-13.
        if (row.at(0) == "Colebrook") {
            check.within(row.at(0), factor(1e5, 1e-4), cell_number(row.at(1)), 1e-12);
        } else if (row.at(0) == "Colebrook smooth Re=1e5 eD=0") {
            check.within(row.at(0), factor(1e5, 0.0), cell_number(row.at(1)), 1e-12);
        } else if (row.at(0) == "laminar Re=128") {
            check.within(row.at(0), factor(128.0, 1e-4), cell_number(row.at(1)), 1e-15);
        }
    }
}

TEST(PipeTest, colebrook_gives_the_factors_at_points_of_moodys_chart) {
    test::OutsideCheck check{"friction factor at points of Moody's chart",
                             "computed table (Colebrook iterated, 6 digits)"};
    for (const auto& row : test::data_rows("friction_factor_grid.csv")) {
        if (row.at(0) == "Re") {
            continue;
        }
        check.near("Re " + row.at(0) + ", e/D " + row.at(1),
                   factor(cell_number(row.at(0)), cell_number(row.at(1))), cell_number(row.at(2)), 0.6e-7);
    }
}

// The equation itself, over the whole range: what is left of it tells how well it is solved.
TEST(PipeTest, colebrooks_equation_is_met_to_the_last_digits_everywhere) {
    test::OutsideCheck check{"Colebrook's equation, left side against right side", "the equation"};
    for (const double roughness : {0.0, 1e-8, 1e-6, 3e-5, 1e-3, 0.01, 0.05}) {
        for (double reynolds = 4000.0; reynolds < 1e8; reynolds *= 1.7) {
            const double root = std::sqrt(factor(reynolds, roughness));
            check.within("Re " + std::to_string(reynolds) + ", e/D " + std::to_string(roughness), 1.0 / root,
                         -2.0 * std::log10(roughness / 3.7 + 2.51 / (reynolds * root)), 1e-13);
        }
    }
}

// Dunlop's cubic as EPANET 2's source writes it, R = Re / 2000, with FA the turbulent factor at 4,000 and
// FB = 2 (FA + dF/dR there): his end is Swamee and Jain's formula, here it is Colebrook's.
TEST(PipeTest, between_laminar_and_turbulent_the_factor_is_dunlops_cubic) {
    test::OutsideCheck check{"friction factor between laminar and turbulent",
                             "Dunlop's cubic in the form of EPANET 2's source"};
    for (const double roughness : {0.0, 1e-4, 0.002, 0.03}) {
        const double step = 1.0;
        const double fa = factor(4000.0, roughness);
        // One-sided, second order: below 4,000 the cubic itself would be looked at.
        const double slope =
            (-3.0 * fa + 4.0 * factor(4000.0 + step, roughness) - factor(4000.0 + 2.0 * step, roughness)) /
            (2.0 * step) * 2000.0;
        const double fb = 2.0 * (fa + slope);
        const double x1 = 7.0 * fa - fb;
        const double x2 = 0.128 - 17.0 * fa + 2.5 * fb;
        const double x3 = -0.128 + 13.0 * fa - 2.0 * fb;
        const double x4 = 0.032 - 3.0 * fa + 0.5 * fb;
        for (double reynolds = 2000.0; reynolds <= 4000.0; reynolds += 125.0) {
            const double r = reynolds / 2000.0;
            check.within("Re " + std::to_string(reynolds) + ", e/D " + std::to_string(roughness),
                         factor(reynolds, roughness), x1 + r * (x2 + r * (x3 + r * x4)), 1e-7);
        }
    }
}

TEST(PipeTest, the_factor_has_no_step_where_the_kinds_of_flow_meet) {
    for (const double roughness : {0.0, 1e-3, 0.05}) {
        for (const double border : {2000.0, 4000.0}) {
            EXPECT_NEAR(factor(border * (1.0 - 1e-9), roughness), factor(border * (1.0 + 1e-9), roughness),
                        1e-9)
                << "Re " << border << ", e/D " << roughness;
        }
    }
}

// As the source of EPANET 2 computes it: Swamee and Jain from 4,000, Dunlop's cubic in R = Re / 2000 down to
// 2,000.
double epanets_factor(double reynolds, double roughness) {
    const double y2 = roughness / 3.7 + 5.74 / std::pow(std::max(reynolds, 4000.0), 0.9);
    const double y3 = -0.86858896380650365530 * std::log(y2);
    const double fa = 1.0 / (y3 * y3);
    if (reynolds >= 4000.0) {
        return fa;
    }
    const double fb = fa * (2.0 - 0.00514215 / (y2 * y3));
    const double r = reynolds / 2000.0;
    return 7.0 * fa - fb +
           r * (0.128 - 17.0 * fa + 2.5 * fb +
                r * (-0.128 + 13.0 * fa - 2.0 * fb + r * (0.032 - 3.0 * fa + 0.5 * fb)));
}

// EPANET takes Swamee and Jain's factor, g = 32.2 ft/s2 and 1.0219e-6 m2/s: with these put in place of ours,
// what is left are the digits of the table.
TEST(PipeTest, single_pipes_lose_what_epanet_says_once_its_constants_are_taken_out) {
    test::OutsideCheck check{"head lost in single pipes, EPANET's factor and constants taken out",
                             "EPANET 2.3.5, second hand"};
    test::OutsideCheck plain{"head lost in single pipes", "EPANET 2.3.5, second hand"};
    for (const auto& row : test::data_rows("pipe_loss.csv")) {
        if (row.at(0) != "D-W") {  // Hazen and Williams' formula is not offered
            continue;
        }
        const double bore = cell_number(row.at(2)) / 1000.0;
        const double roughness = cell_number(row.at(1)) / 1000.0;
        const double flow = cell_number(row.at(3)) / 1000.0;
        const auto got = friction_loss(from_si<VolumeFlow>(flow), from_si<Length>(100.0),
                                       from_si<Length>(bore), from_si<Length>(roughness));
        ASSERT_TRUE(got) << got.error().text();
        const std::string input = row.at(2) + " mm, " + row.at(3) + " L/s";
        const double velocity = flow / (std::numbers::pi / 4.0 * bore * bore);
        const double reynolds = velocity * bore / 1.0219e-6;
        const double theirs = epanets_factor(reynolds, roughness / bore);
        const double ours = factor(velocity * bore / water_viscosity_si, roughness / bore);
        check.within(input, in_si(got.value()) * theirs / ours * standard_gravity / (32.2 * 0.3048),
                     cell_number(row.at(4)), 1e-4);
        // Factor 1.3 %, g 0.1 %; viscosity 1.8 %, whose fifth root counts.
        plain.within(input, in_si(got.value()), cell_number(row.at(4)), 0.018);
    }
}

TEST(PipeTest, laminar_loss_is_that_of_hagen_and_poiseuille) {
    test::OutsideCheck check{"head lost in laminar flow", "Hagen and Poiseuille, 128 nu L Q / (pi g D^4)"};
    for (const double flow : {1e-7, 1e-6, 1e-5}) {
        const auto got = friction_loss(from_si<VolumeFlow>(flow), from_si<Length>(30.0),
                                       from_si<Length>(0.04), from_si<Length>(1e-5));
        ASSERT_TRUE(got);
        check.within(std::to_string(1e6 * flow) + " mL/s", in_si(got.value()),
                     128.0 * 1.0034e-6 * 30.0 * flow / (std::numbers::pi * 9.80665 * std::pow(0.04, 4)),
                     1e-12);
    }
}

TEST(PipeTest, the_slope_over_velocity_is_that_of_the_loss) {
    const auto pipe = PipeFriction::of("pipe", from_si<Length>(0.04), from_si<Length>(2e-5));
    ASSERT_TRUE(pipe);
    // Laminar, in the transition, turbulent.
    for (const double velocity : {0.01, 0.06, 0.08, 0.2, 1.0, 4.0}) {
        const double h = 1e-6 * velocity;
        const double differences =
            (pipe.value().at(velocity + h).head - pipe.value().at(velocity - h).head) / (2.0 * h);
        EXPECT_NEAR(pipe.value().at(velocity).per_velocity, differences, 1e-7 * differences) << velocity;
    }
}

TEST(PipeTest, more_water_always_loses_more_head) {
    for (const double roughness : {0.0, 0.01, 0.05}) {
        const auto pipe = PipeFriction::of("pipe", from_si<Length>(0.05), from_si<Length>(0.05 * roughness));
        ASSERT_TRUE(pipe);
        double before = -1.0;
        for (double velocity = 0.0; velocity < 0.2; velocity += 1e-4) {
            const double lost = pipe.value().at(velocity).head;
            ASSERT_GT(lost, before) << "at " << velocity << " m/s, e/D " << roughness;
            before = lost;
        }
    }
}

TEST(PipeTest, still_water_loses_nothing) {
    const auto got = friction_loss(from_si<VolumeFlow>(0.0), from_si<Length>(10.0), from_si<Length>(0.05),
                                   from_si<Length>(0.0));
    ASSERT_TRUE(got);
    EXPECT_EQ(in_si(got.value()), 0.0);
}

TEST(PipeTest, impossible_numbers_are_refused_by_name_and_limit) {
    EXPECT_EQ(friction_factor(0.0, 0.0).error().item, "Reynolds number");
    EXPECT_EQ(friction_factor(nan, 0.0).error().item, "Reynolds number");
    EXPECT_EQ(friction_factor(1e9, 0.0).error().item, "Reynolds number");
    EXPECT_EQ(friction_factor(1e5, -1e-9).error().item, "relative roughness");
    EXPECT_EQ(friction_factor(1e5, 0.06).error().item, "relative roughness");
    EXPECT_EQ(friction_factor(1e5, nan).error().item, "relative roughness");
    struct Case {
        double flow, length, bore, roughness;
        const char* item;
    };
    for (const Case& c :
         {Case{-1.0, 1.0, 0.05, 0.0, "flow in the pipe"}, Case{nan, 1.0, 0.05, 0.0, "flow in the pipe"},
          Case{1e-3, -1.0, 0.05, 0.0, "pipe length"}, Case{1e-3, nan, 0.05, 0.0, "pipe length"},
          Case{1e-3, 1.0, 0.0, 0.0, "pipe bore"}, Case{1e-3, 1.0, -0.05, 0.0, "pipe bore"},
          Case{1e-3, 1.0, nan, 0.0, "pipe bore"}, Case{1e-3, 1.0, 1.1, 0.0, "pipe bore"},
          Case{1e-3, 1.0, 0.05, -1e-6, "pipe roughness"}, Case{1e-3, 1.0, 0.05, 0.003, "pipe roughness"},
          Case{1e-3, 1.0, 0.05, nan, "pipe roughness"}}) {
        const auto got = friction_loss(from_si<VolumeFlow>(c.flow), from_si<Length>(c.length),
                                       from_si<Length>(c.bore), from_si<Length>(c.roughness));
        ASSERT_FALSE(got) << c.item;
        EXPECT_EQ(got.error().item, c.item) << got.error().text();
        EXPECT_FALSE(got.error().accepted.empty());
    }
    EXPECT_FALSE(PipeFriction::of("pipe", from_si<Length>(0.05), from_si<Length>(0.0),
                                  from_si<KinematicViscosity>(0.0)));
}

}  // namespace
}  // namespace wetfront
