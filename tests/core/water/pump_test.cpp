// SPDX-License-Identifier: Apache-2.0
// Headers side by side on one flow, and on a pump's curve.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "support/outside_check.h"
#include "water/header.h"
#include "water/pipe.h"

namespace wetfront {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

Length metres(double value) {
    return from_si<Length>(value);
}

PumpPoint point(double flow, double head) {
    return {from_si<VolumeFlow>(flow), metres(head)};
}

Header even(double length, double bore = 0.05, double outlet_bore = 0.004) {
    auto made = even_header(metres(length), metres(bore), metres(outlet_bore), metres(0.1));
    EXPECT_TRUE(made) << made.error().text();
    return made ? std::move(made.value()) : Header{};
}

// One outlet right at the inlet: no friction.
Header one_hole(double outlet_bore) {
    Header header;
    header.length = metres(1.0);
    header.bore = metres(0.1);
    header.outlets = {Outlet{metres(0.0), metres(outlet_bore)}};
    return header;
}

double hole_area(double bore) {
    return std::numbers::pi / 4.0 * bore * bore;
}

TEST(PumpTest, two_like_headers_share_a_flow_evenly) {
    const std::array headers{even(12.0), even(12.0)};
    const auto got = shared_flow(headers, from_si<VolumeFlow>(4e-3));
    ASSERT_TRUE(got) << got.error().text();
    ASSERT_EQ(got.value().size(), 2U);
    for (const HeaderFlow& each : got.value()) {
        EXPECT_NEAR(in_si(each.flow), 2e-3, 1e-14);
    }
    const auto alone = head_for_flow(headers[0], from_si<VolumeFlow>(2e-3));
    ASSERT_TRUE(alone);
    EXPECT_NEAR(in_si(alone.value().inlet_head), in_si(got.value()[0].inlet_head), 1e-10);
}

TEST(PumpTest, like_headers_among_others_take_as_much_as_worked_out_alone) {
    const std::array headers{even(12.0), even(25.0, 0.04, 0.005), even(12.0)};
    const auto got = shared_flow(headers, from_si<VolumeFlow>(5e-3));
    ASSERT_TRUE(got) << got.error().text();
    const auto& flows = got.value();
    EXPECT_EQ(in_si(flows[0].flow), in_si(flows[2].flow));
    double sum = 0.0;
    for (std::size_t i = 0; i < headers.size(); ++i) {
        sum += in_si(flows[i].flow);
        const auto alone = head_for_flow(headers[i], flows[i].flow);
        ASSERT_TRUE(alone) << alone.error().text();
        EXPECT_NEAR(in_si(alone.value().inlet_head), in_si(flows[1].inlet_head), 1e-9) << i;
    }
    EXPECT_NEAR(sum, 5e-3, 1e-13);
}

TEST(PumpTest, unlike_headers_have_one_head_and_the_whole_flow) {
    std::array headers{even(12.0), even(25.0, 0.04, 0.005), even(8.0, 0.06, 0.003)};
    headers[1].rise = metres(0.1);
    headers[2].static_recovery = 0.7;
    for (const double flow : {1e-5, 1e-3, 6e-3, 2e-2}) {
        const auto got = shared_flow(headers, from_si<VolumeFlow>(flow));
        ASSERT_TRUE(got) << got.error().text();
        double sum = 0.0;
        for (const HeaderFlow& each : got.value()) {
            EXPECT_NEAR(in_si(each.inlet_head), in_si(got.value()[0].inlet_head), 1e-10) << flow;
            sum += in_si(each.flow);
        }
        EXPECT_NEAR(sum, flow, 1e-11 * flow);
    }
}

TEST(PumpTest, holes_share_a_flow_by_their_area) {
    const std::array headers{one_hole(0.01), one_hole(0.02)};
    const auto got = shared_flow(headers, from_si<VolumeFlow>(1e-3));
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value()[0].flow), 0.2e-3, 1e-14);
    EXPECT_NEAR(in_si(got.value()[1].flow), 0.8e-3, 1e-14);
}

// H = a - b Q meets lift + (Q / c)^2, c = Cd A sqrt(2 g): Q^2 + b c^2 Q - (a - lift) c^2 = 0.
TEST(PumpTest, a_straight_curve_meets_a_hole_where_the_quadratic_says) {
    test::OutsideCheck check{"flow on a straight pump curve through one outlet", "closed form, a quadratic"};
    for (const double lift : {-0.5, 0.0, 1.0, 3.9}) {
        const double a = 4.0;
        const double b = 4.0 / 0.01;
        const double c = 0.6 * hole_area(0.03) * std::sqrt(2.0 * 9.80665);
        const double wanted =
            0.5 * (-b * c * c + std::sqrt(b * b * std::pow(c, 4) + 4.0 * (a - lift) * c * c));
        const Header header = one_hole(0.03);
        const Supply supply{{point(0.0, 4.0), point(0.01, 0.0)}, metres(lift)};
        const auto got = flow_on_pump(std::span{&header, 1}, supply);
        ASSERT_TRUE(got) << got.error().text();
        check.within("lift " + std::to_string(lift) + " m", in_si(got.value().flow), wanted, 1e-11);
        EXPECT_NEAR(in_si(got.value().pump_head), a - b * wanted, 1e-9);
    }
}

TEST(PumpTest, pump_head_is_lift_and_supply_loss_and_inlet_head) {
    std::array headers{even(18.0), even(12.0, 0.04)};
    headers[0].static_recovery = 0.5;
    const Supply supply{{point(0.0, 6.0), point(2e-3, 5.5), point(5e-3, 4.0), point(1e-2, 0.5)},
                        metres(1.8),
                        metres(7.0),
                        metres(0.05),
                        metres(5e-5)};
    const auto got = flow_on_pump(headers, supply);
    ASSERT_TRUE(got) << got.error().text();
    const PumpedFlow& flow = got.value();
    ASSERT_EQ(flow.headers.size(), 2U);
    EXPECT_NEAR(in_si(flow.headers[0].flow + flow.headers[1].flow), in_si(flow.flow), 1e-12);
    EXPECT_NEAR(in_si(flow.headers[0].inlet_head), in_si(flow.headers[1].inlet_head), 1e-10);
    EXPECT_NEAR(in_si(flow.pump_head), 1.8 + in_si(flow.supply_loss) + in_si(flow.headers[0].inlet_head),
                1e-9);
    const auto loss = friction_loss(flow.flow, metres(7.0), metres(0.05), metres(5e-5));
    ASSERT_TRUE(loss);
    EXPECT_NEAR(in_si(flow.supply_loss), in_si(loss.value()), 1e-12);
    // On the piece of the curve that the flow lies on.
    ASSERT_GT(in_si(flow.flow), 5e-3);
    ASSERT_LT(in_si(flow.flow), 1e-2);
    EXPECT_NEAR(in_si(flow.pump_head), 4.0 - 3.5 * (in_si(flow.flow) - 5e-3) / 5e-3, 1e-9);
}

TEST(PumpTest, a_longer_supply_pipe_or_a_higher_lift_gives_less) {
    const Header header = even(18.0);
    Supply supply{{point(0.0, 6.0), point(2e-2, 0.0)}, metres(1.0), metres(0.0), metres(0.04)};
    const auto flow = [&] {
        const auto got = flow_on_pump(std::span{&header, 1}, supply);
        EXPECT_TRUE(got) << got.error().text();
        return in_si(got.value().flow);
    };
    const double first = flow();
    supply.pipe_length = metres(20.0);
    const double with_pipe = flow();
    EXPECT_LT(with_pipe, first);
    supply.static_lift = metres(3.0);
    EXPECT_LT(flow(), with_pipe);
}

TEST(PumpTest, a_clogged_header_takes_less_and_leaves_more_to_the_other) {
    std::array headers{even(18.0), even(18.0)};
    const Supply supply{{point(0.0, 6.0), point(2e-2, 0.0)}, metres(1.0)};
    const auto clean = flow_on_pump(headers, supply);
    for (Outlet& outlet : headers[0].outlets) {
        outlet.open_share = 0.6;
    }
    const auto clogged = flow_on_pump(headers, supply);
    ASSERT_TRUE(clean && clogged);
    EXPECT_LT(clogged.value().headers[0].flow, clean.value().headers[0].flow);
    EXPECT_GT(clogged.value().headers[1].flow, clean.value().headers[1].flow);
    EXPECT_LT(clogged.value().flow, clean.value().flow);
}

TEST(PumpTest, pumps_that_cannot_be_or_cannot_serve_are_refused_by_name_and_limit) {
    struct Case {
        const char* what;
        Supply supply;
        const char* item;
    };
    const std::vector<PumpPoint> good{point(0.0, 6.0), point(1e-2, 0.0)};
    const std::array cases{
        Case{"no curve", {{}}, "pump curve"},
        Case{"one point", {{point(0.0, 6.0)}}, "pump curve"},
        Case{"rising", {{point(0.0, 6.0), point(1e-3, 6.5)}}, "pump curve point 2 head"},
        Case{"level", {{point(0.0, 6.0), point(1e-3, 6.0)}}, "pump curve point 2 head"},
        Case{"backwards", {{point(1e-3, 6.0), point(0.0, 5.0)}}, "pump curve point 2 flow"},
        Case{"negative flow", {{point(-1e-3, 6.0), point(1e-3, 5.0)}}, "pump curve point 1 flow"},
        Case{"NaN flow", {{point(0.0, 6.0), point(nan, 5.0)}}, "pump curve point 2 flow"},
        Case{"NaN head", {{point(0.0, nan), point(1e-3, 5.0)}}, "pump curve point 1 head"},
        Case{"negative head", {{point(0.0, 6.0), point(1e-3, -5.0)}}, "pump curve point 2 head"},
        Case{"head without end",
             {{point(0.0, std::numeric_limits<double>::infinity()), point(1e-3, 5.0)}},
             "pump curve point 1 head"},
        Case{"lift too high", {good, metres(6.1)}, "static lift"},
        Case{"lift NaN", {good, metres(nan)}, "static lift"},
        Case{"pipe of negative length", {good, metres(1.0), metres(-1.0)}, "supply pipe length"},
        Case{"pipe without bore", {good, metres(1.0), metres(1.0)}, "supply pipe bore"},
        Case{"pipe with NaN bore", {good, metres(1.0), metres(1.0), metres(nan)}, "supply pipe bore"},
        Case{"pipe too rough",
             {good, metres(1.0), metres(1.0), metres(0.05), metres(0.01)},
             "supply pipe roughness"},
        Case{"curve too short", {{point(0.0, 6.0), point(1e-4, 5.9)}}, "pump curve"},
        Case{"curve that starts too late", {{point(9e-3, 1.0), point(1e-2, 0.0)}, metres(0.5)}, "pump curve"},
        Case{"pump far too strong", {{point(0.0, 2000.0), point(0.1, 1900.0)}}, "pump curve"},
    };
    const Header header = even(10.0);
    for (const Case& each : cases) {
        const auto got = flow_on_pump(std::span{&header, 1}, each.supply);
        ASSERT_FALSE(got) << each.what;
        EXPECT_EQ(got.error().item, each.item) << each.what << ": " << got.error().text();
        EXPECT_FALSE(got.error().accepted.empty()) << each.what;
    }
}

TEST(PumpTest, a_lift_below_the_pumps_head_but_not_below_the_first_outlet_is_refused) {
    Header header = even(10.0);
    header.rise = metres(10.0);  // the first outlet stands 0.1 m up
    const Supply supply{{point(0.0, 6.0), point(1e-2, 0.0)}, metres(5.95)};
    const auto got = flow_on_pump(std::span{&header, 1}, supply);
    ASSERT_FALSE(got);
    EXPECT_EQ(got.error().item, "static lift");
}

TEST(PumpTest, flows_that_cannot_be_are_refused_by_name_and_limit) {
    const std::array headers{even(10.0), even(10.0)};
    for (const double flow : {0.0, -1e-3, nan, 0.11}) {
        EXPECT_EQ(shared_flow(headers, from_si<VolumeFlow>(flow)).error().item, "flow into the headers")
            << flow;
        EXPECT_EQ(head_for_flow(headers[0], from_si<VolumeFlow>(flow)).error().item, "flow into the headers");
    }
    // More than 100 m would press through.
    const std::array narrow{one_hole(0.003), one_hole(0.003)};
    for (const std::size_t count : {1U, 2U}) {
        const auto got = shared_flow(std::span{narrow.data(), count}, from_si<VolumeFlow>(0.01));
        ASSERT_FALSE(got);
        EXPECT_EQ(got.error().item, "flow into the headers") << got.error().text();
    }
    EXPECT_EQ(shared_flow({}, from_si<VolumeFlow>(1e-3)).error().item, "headers");
}

TEST(PumpTest, a_falling_header_wants_a_flow_that_fills_it) {
    std::array headers{even(10.0), even(10.0)};
    for (Header& each : headers) {
        each.rise = metres(-0.5);
    }
    const auto without_pressure = flow_for_head(headers[0], metres(0.0));
    ASSERT_TRUE(without_pressure);
    const double fills = in_si(without_pressure.value().flow);
    ASSERT_GT(fills, 0.0);
    EXPECT_FALSE(head_for_flow(headers[0], from_si<VolumeFlow>(0.9 * fills)));
    EXPECT_TRUE(head_for_flow(headers[0], from_si<VolumeFlow>(1.1 * fills)));
    EXPECT_FALSE(shared_flow(headers, from_si<VolumeFlow>(1.8 * fills)));
    EXPECT_TRUE(shared_flow(headers, from_si<VolumeFlow>(2.2 * fills)));
    const Supply weak{{point(0.0, 1.0), point(0.1, 0.0)}, metres(1.2)};
    EXPECT_EQ(flow_on_pump(headers, weak).error().item, "pump curve");
}

TEST(PumpTest, headers_with_every_outlet_blocked_take_no_flow) {
    std::array headers{one_hole(0.01), one_hole(0.02)};
    for (Header& each : headers) {
        each.outlets[0].open_share = 0.0;
    }
    EXPECT_EQ(shared_flow(headers, from_si<VolumeFlow>(1e-3)).error().item, "header outlets");
    headers[1].outlets[0].open_share = 1.0;
    const auto got = shared_flow(headers, from_si<VolumeFlow>(1e-3));
    ASSERT_TRUE(got) << got.error().text();
    EXPECT_EQ(in_si(got.value()[0].flow), 0.0);
    EXPECT_NEAR(in_si(got.value()[1].flow), 1e-3, 1e-14);
}

TEST(PumpTest, an_error_names_the_header_where_there_are_several) {
    std::array headers{even(10.0), even(10.0)};
    headers[1].outlets[2].bore = metres(-1.0);
    EXPECT_EQ(shared_flow(headers, from_si<VolumeFlow>(1e-3)).error().item, "header 2 outlet 3 bore");
}

}  // namespace
}  // namespace wetfront
