// SPDX-License-Identifier: Apache-2.0
#include "water/header.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <random>

#include "support/data_table.h"
#include "support/outside_check.h"
#include "water/pipe.h"

namespace wetfront {
namespace {

using test::cell_number;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double foot = 0.3048;
constexpr double inch = 0.0254;
constexpr double gpm = 3.785411784e-3 / 60.0;

Length metres(double value) {
    return from_si<Length>(value);
}

Header even(double length, double bore, double outlet_bore, double spacing, double cd = 0.6) {
    auto made = even_header(metres(length), metres(bore), metres(outlet_bore), metres(spacing), cd);
    EXPECT_TRUE(made) << made.error().text();
    return made ? std::move(made.value()) : Header{};
}

HeaderFlow under(const Header& header, double head) {
    auto got = flow_for_head(header, metres(head));
    EXPECT_TRUE(got) << got.error().text();
    return got ? std::move(got.value()) : HeaderFlow{};
}

HeaderFlow fed(const Header& header, double flow) {
    auto got = head_for_flow(header, from_si<VolumeFlow>(flow));
    EXPECT_TRUE(got) << got.error().text();
    return got ? std::move(got.value()) : HeaderFlow{};
}

// What any header at work must obey, followed from the inlet to the far end with heads and flows as given:
// energy between outlets, orifice law at each, nothing from an outlet without head.
void expect_lawful(const Header& header, const HeaderFlow& got, const std::string& which) {
    const double area = std::numbers::pi / 4.0 * std::pow(in_si(header.bore), 2);
    double flow = in_si(got.flow);
    double head = in_si(got.inlet_head);
    const double scale = std::abs(head) + std::abs(in_si(header.rise));
    double at = 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < header.outlets.size(); ++i) {
        const Outlet& outlet = header.outlets[i];
        const double stretch = in_si(outlet.at) - at;
        at = in_si(outlet.at);
        const double through = std::max(flow, 0.0);  // rounding may leave less than nothing at the far end
        head -= stretch * in_si(header.rise) / in_si(header.length);
        head -=
            in_si(friction_loss(from_si<VolumeFlow>(through), metres(stretch), header.bore, header.roughness)
                      .value());
        const double given = in_si(got.outlets[i]);
        const double hole = outlet.discharge_coefficient * outlet.open_share * std::numbers::pi / 4.0 *
                            std::pow(in_si(outlet.bore), 2);
        if (hole > 0.0) {
            const double needs = std::pow(given / hole, 2) / (2.0 * 9.80665);
            ASSERT_NEAR(needs, std::max(head, 0.0), 1e-9 * scale) << which << ", outlet " << i + 1;
        } else {
            ASSERT_EQ(given, 0.0) << which << ", outlet " << i + 1;
        }
        const double left = std::max(flow - given, 0.0);
        head += header.static_recovery * (through * through - left * left) / (2.0 * 9.80665 * area * area);
        flow -= given;
        sum += given;
    }
    EXPECT_NEAR(sum, in_si(got.flow), 1e-12 * sum) << which;
}

TEST(HeaderTest, even_outlets_begin_one_spacing_from_the_inlet_and_fill_the_length) {
    const Header header = even(60.0 * foot, 0.05, 0.006, foot);
    ASSERT_EQ(header.outlets.size(), 60U);
    EXPECT_NEAR(in_si(header.outlets.front().at), foot, 1e-12);
    EXPECT_NEAR(in_si(header.outlets.back().at), 60.0 * foot, 1e-9);
    EXPECT_EQ(even(1.0, 0.05, 0.006, 0.3).outlets.size(), 3U);
}

TEST(HeaderTest, one_outlet_at_the_inlet_gives_what_tables_of_drilled_pipe_say) {
    test::OutsideCheck minnesota{"outlet of drilled pipe",
                                 "Univ. of Minnesota pressure distribution worksheet, printed to 0.01 gpm",
                                 "gpm"};
    test::OutsideCheck jersey{"outlet of drilled pipe", "N.J. Admin. Code 7:9A-9.7, rows up to 1.7 % high"};
    struct Table {
        const char* file;
        std::vector<double> holes;  // in
    };
    for (const Table& table : {Table{"outlet_discharge.csv", {0.125, 0.1875, 0.21875, 0.25}},
                               Table{"outlet_discharge_nj.csv", {0.25, 0.3125, 0.375, 0.4375, 0.5}}}) {
        for (const auto& row : test::data_rows(table.file)) {
            if (row.at(0) == "head_ft") {
                continue;
            }
            for (std::size_t i = 0; i < table.holes.size(); ++i) {
                Header header;
                header.length = metres(1.0);
                header.bore = metres(0.1);
                header.outlets = {Outlet{metres(0.0), metres(table.holes[i] * inch)}};
                const double got = in_si(under(header, cell_number(row.at(0)) * foot).flow) / gpm;
                const std::string input = std::to_string(table.holes[i]) + " in, " + row.at(0) + " ft";
                if (table.holes.size() == 4) {
                    minnesota.near(input, got, cell_number(row.at(i + 1)), 0.01);
                } else {
                    jersey.within(input, got, cell_number(row.at(i + 1)), 0.02);
                }
            }
        }
    }
}

// Darcy-Weisbach as here: 0.1 % on flow and 0.3 % on the end head for EPANET's other constants and factor.
// Hazen- Williams is not offered; on single plastic pipes it differs from Darcy-Weisbach by up to 12 % of the
// head lost (pipe_loss.csv), which is then allowed here, and by half of that share of the head for flows.
TEST(HeaderTest, level_headers_give_what_epanet_says) {
    const std::string source = "EPANET 2.3.5, second hand";
    test::OutsideCheck flow{"header, flow (Darcy-Weisbach)", source};
    test::OutsideCheck head{"header, end head (Darcy-Weisbach)", source};
    test::OutsideCheck other{"header, end head against Hazen-Williams", source + ", another friction formula",
                             "m"};
    for (const auto& row : test::data_rows("header_flow.csv")) {
        if (row.at(0) == "N") {
            continue;
        }
        const auto number = [&](std::size_t column) { return cell_number(row.at(column)); };
        const Header header =
            even(number(0) * number(1), number(2) / 1000.0, number(3) / 1000.0, number(1), number(4));
        ASSERT_EQ(static_cast<double>(header.outlets.size()), number(0));
        const HeaderFlow got = under(header, number(5));
        const std::string input = row.at(0) + " outlets of " + row.at(3) + " mm";
        if (row.at(6) == "D-W") {
            flow.within(input, 1000.0 * in_si(got.flow), number(8), 0.001);
            flow.within(input + ", first", 1000.0 * in_si(got.outlets.front()), number(11), 0.001);
            flow.within(input + ", last", 1000.0 * in_si(got.outlets.back()), number(12), 0.0015);
            head.within(input, in_si(got.last_head), number(10), 0.003);
            head.within(input + ", first", in_si(got.first_head), number(9), 0.003);
        } else {
            other.near(input, in_si(got.last_head), number(10), 0.12 * (number(5) - number(10)) + 1e-4);
        }
    }
}

TEST(HeaderTest, heads_fall_outlet_by_outlet_as_published) {
    test::OutsideCheck check{"header, head at each outlet", "EPANET 2.3.5, Hazen-Williams, second hand", "m"};
    const HeaderFlow got = under(even(10.0 * foot, 0.02624, 0.00635, foot), 1.0);
    for (const auto& row : test::data_rows("header_profile.csv")) {
        if (row.at(0) == "outlet_from_inlet") {
            continue;
        }
        const auto outlet = static_cast<std::size_t>(cell_number(row.at(0))) - 1;
        const double hole = 0.6 * std::numbers::pi / 4.0 * std::pow(0.00635, 2);
        const double head = std::pow(in_si(got.outlets.at(outlet)) / hole, 2) / (2.0 * 9.80665);
        check.near("outlet " + row.at(0), head, cell_number(row.at(1)),
                   0.12 * (1.0 - cell_number(row.at(1))));
    }
}

// The case is published without its outlets: 60 ft of 2 in (52.04 mm) at 45 gpm, first over last 1.19 without
// and 1.11 with recovery. Friction and recovery don't depend on the outlets, the share of the head that they
// are does. So outlets are looked for that give 1.19 without recovery, whatever their number; with it they
// must give 1.11.
TEST(HeaderTest, static_recovery_brings_a_common_header_from_1_19_to_1_11) {
    test::OutsideCheck check{"first over last outlet with full static recovery",
                             "published case, 60 ft of 2 in at 45 gpm; outlets fitted to 1.19 without"};
    for (const double count : {30.0, 45.0, 60.0, 120.0}) {
        const auto first_over_last = [&](double outlet_bore, double recovery) {
            Header header = even(60.0 * foot, 0.05204, outlet_bore, 60.0 * foot / count);
            header.static_recovery = recovery;
            const HeaderFlow got = fed(header, 45.0 * gpm);
            return in_si(got.outlets.front()) / in_si(got.outlets.back());
        };
        double small = 0.002;  // wider outlets work under less head, of which friction is a larger share
        double wide = 0.02;
        for (int halving = 0; halving < 50; ++halving) {
            const double middle = 0.5 * (small + wide);
            (first_over_last(middle, 0.0) < 1.19 ? small : wide) = middle;
        }
        ASSERT_NEAR(first_over_last(small, 0.0), 1.19, 1e-6);
        check.near(
            std::to_string(static_cast<int>(count)) + " outlets of " + std::to_string(1000.0 * small) + " mm",
            first_over_last(small, 1.0), 1.11, 0.005);
    }
}

// The sheet's band for a solver with friction only at C 130 is -11 to +17 % of its counts; plastic as smooth
// as here loses 22 to 30 % less than C 130, and the count goes with the loss to the power 1/2.85, so up to 12
// % more fit.
TEST(HeaderTest, as_many_outlets_keep_within_a_tenth_as_the_worksheet_says) {
    test::OutsideCheck check{"most outlets of a lateral for 10 % variation",
                             "Univ. of Minnesota worksheet 2011, a band of -11 to +31 %"};
    std::map<std::string, double> bores;
    for (const auto& row : test::data_rows("pvc_bore.csv")) {
        if (row.at(0) != "nominal_in") {
            bores[row.at(0)] = cell_number(row.at(8)) / 1000.0;
        }
    }
    const std::array<std::string, 5> pipes{"1", "1-1/4", "1-1/2", "2", "3"};
    // With 1 ft of head at the end; 1.3 ft at the inlet leave that only where outlets vary by less than 13 %.
    const auto varies_too_much = [](const Header& header) {
        double low = foot;
        double high = 1.3 * foot;
        if (in_si(under(header, high).last_head) < foot) {
            return true;
        }
        for (int halving = 0; halving < 20; ++halving) {
            const double middle = 0.5 * (low + high);
            (in_si(under(header, middle).last_head) < foot ? low : high) = middle;
        }
        const HeaderFlow got = under(header, high);
        return in_si(got.lowest) < 0.9 * in_si(got.highest);
    };
    for (const auto& row : test::data_rows("header_outlet_limit.csv")) {
        if (row.at(0) == "hole_in") {
            continue;
        }
        const double hole = cell_number(row.at(0)) * inch;
        const double spacing = cell_number(row.at(1)) * foot;
        for (std::size_t i = 0; i < pipes.size(); ++i) {
            int fit = 1;
            int beyond = 300;
            while (beyond - fit > 1) {
                const int middle = (fit + beyond) / 2;
                const Header header = even(middle * spacing, bores.at(pipes[i]), hole, spacing);
                (varies_too_much(header) ? beyond : fit) = middle;
            }
            const double printed = cell_number(row.at(2 + i));
            // Middle of the band, which is one-sided.
            check.within(row.at(0) + " in every " + row.at(1) + " ft, pipe " + pipes[i] + " in",
                         static_cast<double>(fit), 1.10 * printed, 0.21 / 1.10);
        }
    }
}

// Nearly equal outlets (100 m of head, of which friction is less than a ten-thousandth) in a pipe so rough
// and wide that the friction factor is constant: exponent 2.
TEST(HeaderTest, friction_with_equal_outlets_is_christiansens_share_of_that_of_the_full_flow) {
    const std::string source = "Christiansen 1942, exact sums for exponent 2, printed to 5 digits";
    test::OutsideCheck whole{"friction with equal outlets, first one spacing from the inlet", source};
    test::OutsideCheck half{"friction with equal outlets, first half a spacing from the inlet", source};
    for (const auto& row : test::data_rows("christiansen_F.csv")) {
        if (row.at(0) == "N") {
            continue;
        }
        const double count = cell_number(row.at(0));
        for (const bool begins_at_half : {false, true}) {
            const double spacing = 0.01 / count;
            Header header;
            header.length = metres(0.01);
            header.bore = metres(1.0);
            header.roughness = metres(0.05);
            for (double i = 1.0; i <= count; ++i) {
                const double at = std::min((begins_at_half ? i - 0.5 : i) * spacing, 0.01);
                header.outlets.push_back({metres(at), metres(0.7 / std::sqrt(count))});
            }
            const HeaderFlow got = under(header, 100.0);
            const double lost = in_si(got.inlet_head) - in_si(got.last_head);
            const double full = in_si(
                friction_loss(got.flow, header.outlets.back().at, header.bore, header.roughness).value());
            (begins_at_half ? half : whole)
                .near(row.at(0) + " outlets", lost / full, cell_number(row.at(begins_at_half ? 11 : 4)),
                      3e-5);
        }
    }
}

TEST(HeaderTest, without_friction_all_outlets_give_the_same) {
    // A bore so wide that the loss is nothing beside the head.
    const HeaderFlow got = under(even(2.0, 1.0, 0.005, 0.1), 1.0);
    EXPECT_NEAR(in_si(got.lowest), in_si(got.highest), 1e-8 * in_si(got.highest));
    EXPECT_NEAR(got.uniformity.christiansen, 1.0, 1e-9);
    EXPECT_NEAR(got.uniformity.low_quarter, 1.0, 1e-9);
}

TEST(HeaderTest, without_head_there_is_no_flow_and_none_gives_more_than_another) {
    const HeaderFlow got = under(even(30.0, 0.04, 0.005, 0.1), 0.0);
    EXPECT_EQ(in_si(got.flow), 0.0);
    EXPECT_EQ(in_si(got.highest), 0.0);
    EXPECT_EQ(in_si(got.first_head), 0.0);
    EXPECT_EQ(got.outlets.size(), 300U);
    EXPECT_EQ(got.uniformity.christiansen, 1.0);
}

TEST(HeaderTest, mixed_clogged_sloped_and_recovering_headers_obey_the_laws_all_the_way) {
    std::mt19937 random{7};
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>{low, high}(random);
    };
    for (int trial = 0; trial < 1500; ++trial) {
        Header header;
        header.length = metres(between(0.5, 60.0));
        header.bore = metres(between(0.01, 0.1));
        header.roughness = metres(in_si(header.bore) * (trial % 3 == 0 ? 0.0 : between(0.0, 0.05)));
        header.rise = metres(trial % 2 == 0 ? 0.0 : between(-0.05, 0.05) * in_si(header.length));
        header.static_recovery = trial % 5 == 0 ? 0.0 : between(0.0, 1.0);
        const auto count = static_cast<std::size_t>(between(1.0, 120.0));
        std::vector<double> places(count);
        std::generate(places.begin(), places.end(), [&] { return between(0.0, in_si(header.length)); });
        std::sort(places.begin(), places.end());
        for (const double place : places) {
            header.outlets.push_back({metres(place), metres(in_si(header.bore) * between(0.02, 0.4)),
                                      between(0.3, 1.0), between(0.0, 1.0) < 0.1 ? 0.0 : between(0.2, 1.0)});
        }
        const double head = std::pow(10.0, between(-2.0, 1.5));
        const HeaderFlow got = under(header, head);
        ASSERT_NEAR(in_si(got.inlet_head), head, 1e-10 * (head + std::abs(in_si(header.rise))));
        expect_lawful(header, got, "trial " + std::to_string(trial));
        if (in_si(got.flow) > 1e-6 && in_si(got.flow) < 0.1) {
            const HeaderFlow back = fed(header, in_si(got.flow));
            ASSERT_NEAR(in_si(back.inlet_head), head, 1e-8 * (head + std::abs(in_si(header.rise)))) << trial;
        }
    }
}

TEST(HeaderTest, more_head_gives_every_outlet_more) {
    Header header = even(24.0, 0.04, 0.004, 0.15);
    header.rise = metres(0.05);
    HeaderFlow before = under(header, 0.001);
    for (double head = 0.004; head < 90.0; head *= 1.5) {
        HeaderFlow now = under(header, head);
        for (std::size_t i = 0; i < now.outlets.size(); ++i) {
            ASSERT_GE(now.outlets[i], before.outlets[i]) << "outlet " << i + 1 << " at " << head << " m";
        }
        ASSERT_GT(now.flow, before.flow);
        before = std::move(now);
    }
}

TEST(HeaderTest, a_far_end_that_stands_too_high_gives_nothing) {
    Header header = even(20.0, 0.05, 0.004, 0.5);
    header.rise = metres(1.0);
    const HeaderFlow got = under(header, 0.4);
    EXPECT_GT(in_si(got.outlets.front()), 0.0);
    EXPECT_EQ(in_si(got.outlets.back()), 0.0);
    EXPECT_LT(in_si(got.last_head), 0.0);
    // Below the first outlet, 0.025 m up, nothing runs at all.
    const HeaderFlow none = under(header, 0.02);
    EXPECT_EQ(in_si(none.flow), 0.0);
    EXPECT_NEAR(in_si(none.first_head), -0.005, 1e-12);
    EXPECT_NEAR(in_si(none.last_head), -0.98, 1e-12);
}

TEST(HeaderTest, a_rising_header_favours_its_first_outlets_and_a_falling_one_its_last) {
    Header header = even(15.0, 0.1, 0.003, 0.5);
    header.rise = metres(0.1);
    EXPECT_GT(under(header, 1.0).outlets.front(), under(header, 1.0).outlets.back());
    header.rise = metres(-0.1);
    EXPECT_LT(under(header, 1.0).outlets.front(), under(header, 1.0).outlets.back());
}

TEST(HeaderTest, a_header_whose_outlets_take_all_its_water_on_the_way_is_still_solved) {
    // 5,000 wide outlets in a narrow pipe: next to nothing reaches the last.
    const Header header = even(500.0, 0.01, 0.009, 0.1);
    const HeaderFlow got = under(header, 1.0);
    expect_lawful(header, got, "500 m of 10 mm");
    EXPECT_LT(in_si(got.outlets.back()), 1e-6 * in_si(got.outlets.front()));
}

TEST(HeaderTest, a_blocked_outlet_gives_nothing_and_a_half_blocked_one_half) {
    Header header = even(2.0, 0.2, 0.004, 0.5);
    header.outlets[1].open_share = 0.0;
    header.outlets[2].open_share = 0.5;
    const HeaderFlow got = under(header, 1.0);
    EXPECT_EQ(in_si(got.outlets[1]), 0.0);
    EXPECT_NEAR(in_si(got.outlets[2]), 0.5 * in_si(got.outlets[0]), 1e-6 * in_si(got.outlets[0]));
}

TEST(HeaderTest, headers_that_cannot_be_are_refused_by_name_and_limit) {
    struct Case {
        void (*spoil)(Header&);
        const char* item;
    };
    const std::array cases{
        Case{[](Header& h) { h.length = metres(0.0); }, "header length"},
        Case{[](Header& h) { h.length = metres(nan); }, "header length"},
        Case{[](Header& h) { h.length = metres(501.0); }, "header length"},
        Case{[](Header& h) { h.bore = metres(-0.05); }, "header bore"},
        Case{[](Header& h) { h.bore = metres(nan); }, "header bore"},
        Case{[](Header& h) { h.roughness = metres(-1e-6); }, "header roughness"},
        Case{[](Header& h) { h.roughness = metres(0.003); }, "header roughness"},
        Case{[](Header& h) { h.rise = metres(nan); }, "header rise"},
        Case{[](Header& h) { h.rise = metres(-11.0); }, "header rise"},
        Case{[](Header& h) { h.static_recovery = 1.01; }, "header static recovery"},
        Case{[](Header& h) { h.static_recovery = nan; }, "header static recovery"},
        Case{[](Header& h) { h.outlets.clear(); }, "header outlets"},
        Case{[](Header& h) { h.outlets.resize(5001, h.outlets.back()); }, "header outlets"},
        Case{[](Header& h) { h.outlets.back().at = metres(10.01); }, "header outlet 10 position"},
        Case{[](Header& h) { h.outlets.front().at = metres(-0.1); }, "header outlet 1 position"},
        Case{[](Header& h) { h.outlets[1].at = metres(nan); }, "header outlet 2 position"},
        Case{[](Header& h) { h.outlets[2].at = metres(1.5); }, "header outlet 3 position"},
        Case{[](Header& h) { h.outlets[2].bore = metres(0.0); }, "header outlet 3 bore"},
        Case{[](Header& h) { h.outlets[2].bore = metres(0.05); }, "header outlet 3 bore"},
        Case{[](Header& h) { h.outlets[2].bore = metres(nan); }, "header outlet 3 bore"},
        Case{[](Header& h) { h.outlets[0].discharge_coefficient = 0.0; },
             "header outlet 1 discharge coefficient"},
        Case{[](Header& h) { h.outlets[0].discharge_coefficient = 1.1; },
             "header outlet 1 discharge coefficient"},
        Case{[](Header& h) { h.outlets[0].open_share = -0.1; }, "header outlet 1 open share"},
        Case{[](Header& h) { h.outlets[0].open_share = nan; }, "header outlet 1 open share"},
    };
    for (const Case& each : cases) {
        Header header = even(10.0, 0.05, 0.005, 1.0);
        each.spoil(header);
        const auto got = flow_for_head(header, metres(1.0));
        ASSERT_FALSE(got) << each.item;
        EXPECT_EQ(got.error().item, each.item) << got.error().text();
        EXPECT_FALSE(got.error().accepted.empty());
    }
    const Header header = even(10.0, 0.05, 0.005, 1.0);
    for (const double head : {-0.1, 100.1, nan}) {
        EXPECT_EQ(flow_for_head(header, metres(head)).error().item, "head at the inlet") << head;
    }
}

TEST(HeaderTest, outlets_that_do_not_fit_are_refused_with_what_would_fit) {
    const auto item = [](double length, double bore, double outlet, double spacing) {
        const auto got = even_header(metres(length), metres(bore), metres(outlet), metres(spacing));
        EXPECT_FALSE(got);
        return got ? std::string{} : got.error().item;
    };
    EXPECT_EQ(item(1.0, 0.05, 0.005, 1.1), "outlet spacing");
    EXPECT_EQ(item(1.0, 0.05, 0.005, 0.0), "outlet spacing");
    EXPECT_EQ(item(1.0, 0.05, 0.005, nan), "outlet spacing");
    EXPECT_EQ(item(10.0, 0.05, 0.005, 0.0019), "outlet spacing");
    EXPECT_EQ(item(10.0, 0.05, 0.05, 1.0), "header outlet 1 bore");
    EXPECT_EQ(item(10.0, 0.05, -0.005, 1.0), "header outlet 1 bore");
    EXPECT_EQ(item(-10.0, 0.05, 0.005, 1.0), "header length");
    EXPECT_EQ(item(10.0, 0.0, 0.005, 1.0), "header bore");
    EXPECT_EQ(even_header(metres(1.0), metres(0.05), metres(0.005), metres(1.1)).error().accepted,
              "at most the header's length of 1 m: the first outlet is one spacing from the inlet");
}

}  // namespace
}  // namespace wetfront
