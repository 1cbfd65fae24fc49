// SPDX-License-Identifier: Apache-2.0
// Headers with and without a pump curve against EPANET, another program. It runs before this test and leaves
// its answers in the build folder; without them the test fails.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <sstream>
#include <string>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"
#include "water/header.h"

namespace wetfront {
namespace {

using test::cell_number;

const std::string source = "EPANET 2.3.5 (epanet-js 0.9.0), random headers";

struct Row {
    std::string id;
    Header header;
    bool pumped;
    double inlet_head;
    Supply supply;
    double flow;
    double first;
    double last;
    double first_head;
    double last_head;
};

std::vector<PumpPoint> pump_of(const std::string& cell) {
    std::vector<PumpPoint> points;
    std::istringstream text{cell};
    for (std::string point; std::getline(text, point, ';');) {
        const auto colon = point.find(':');
        points.push_back({from_si<VolumeFlow>(cell_number(point.substr(0, colon))),
                          from_si<Length>(cell_number(point.substr(colon + 1)))});
    }
    return points;
}

// id,outlets,length_m,bore_mm,roughness_mm,outlet_bore_mm,spacing_m,discharge_coefficient,rise_m,mode,
// inlet_head_m,lift_m,supply_length_m,supply_bore_mm,pump_points,flow,first,last,first_head_m,last_head_m
Row row_of(const std::vector<std::string>& cells) {
    const auto number = [&](std::size_t column) { return cell_number(cells.at(column)); };
    const auto mm = [&](std::size_t column) { return from_si<Length>(number(column) / 1000.0); };
    auto header =
        even_header(from_si<Length>(number(2)), mm(3), mm(5), from_si<Length>(number(6)), number(7));
    EXPECT_TRUE(header) << header.error().text();
    Row row;
    row.id = cells.at(0);
    row.header = header.value();
    row.header.roughness = mm(4);
    row.header.rise = from_si<Length>(number(8));
    EXPECT_EQ(static_cast<double>(row.header.outlets.size()), number(1)) << row.id;
    row.pumped = cells.at(9) == "pump";
    row.inlet_head = number(10);
    row.supply = {pump_of(cells.at(14)), from_si<Length>(number(11)), from_si<Length>(number(12)), mm(13),
                  row.header.roughness};
    row.flow = number(15);
    row.first = number(16);
    row.last = number(17);
    row.first_head = number(18);
    row.last_head = number(19);
    return row;
}

std::vector<Row> rows(bool pumped) {
    std::vector<Row> result;
    for (const auto& cells : test::outside_rows("epanet_headers.csv")) {
        Row row = row_of(cells);
        if (row.pumped == pumped) {
            result.push_back(std::move(row));
        }
    }
    EXPECT_GE(result.size(), 25U);
    return result;
}

// What may be between the two: EPANET's friction factor is Swamee and Jain's, up to 1.2 % off Colebrook's at
// these Reynolds numbers (friction_factor_grid.csv) and up to 2 % in the transition, and its g is 32.2 ft/s2,
// 0.08 % more than ours. So the head lost may differ by 2.1 %; heads by that share of what is lost; flows, as
// roots of heads, by half as much of the head they have.
constexpr double of_the_loss = 0.021;

double climb(const Row& row) {
    return in_si(row.header.rise) * in_si(row.header.outlets.back().at) / in_si(row.header.length);
}

// In the header.
double loss(const Row& row) {
    return row.inlet_head - climb(row) - row.last_head;
}

// In the supply pipe: what EPANET's flow takes from the curve, less lift and inlet head.
double supply_loss(const Row& row) {
    const auto& points = row.supply.pump;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (row.flow <= in_si(points[i].flow)) {
            const double part =
                (row.flow - in_si(points[i - 1].flow)) / in_si(points[i].flow - points[i - 1].flow);
            return std::lerp(in_si(points[i - 1].head), in_si(points[i].head), part) -
                   in_si(row.supply.static_lift) - row.inlet_head;
        }
    }
    return 0.0;
}

void compare(const Row& row, const HeaderFlow& got, test::OutsideCheck& flows, test::OutsideCheck& heads) {
    const double lost = loss(row) + supply_loss(row);
    const double share = 0.5 * of_the_loss * lost / std::min(row.first_head, row.last_head);
    flows.within(row.id + ", all outlets", in_si(got.flow), row.flow, share);
    flows.within(row.id + ", first outlet", in_si(got.outlets.front()), row.first, share);
    flows.within(row.id + ", last outlet", in_si(got.outlets.back()), row.last, share);
    heads.near(row.id + ", first outlet", in_si(got.first_head), row.first_head, of_the_loss * lost);
    heads.near(row.id + ", last outlet", in_si(got.last_head), row.last_head, of_the_loss * lost);
}

TEST(EpanetTest, headers_under_a_given_head_give_what_epanet_says) {
    test::OutsideCheck flows{"flow of headers and outlets under a head", source};
    test::OutsideCheck heads{"head at outlets under a head", source, "m"};
    for (const Row& row : rows(false)) {
        const auto got = flow_for_head(row.header, from_si<Length>(row.inlet_head));
        ASSERT_TRUE(got) << row.id << ": " << got.error().text();
        compare(row, got.value(), flows, heads);
    }
}

TEST(EpanetTest, headers_on_a_pump_curve_meet_it_where_epanet_says) {
    test::OutsideCheck flows{"flow of headers and outlets on a pump", source};
    test::OutsideCheck heads{"head at outlets on a pump", source, "m"};
    for (const Row& row : rows(true)) {
        const auto got = flow_on_pump(std::span{&row.header, 1}, row.supply);
        ASSERT_TRUE(got) << row.id << ": " << got.error().text();
        compare(row, got.value().headers.front(), flows, heads);
    }
}

TEST(EpanetTest, headers_given_epanets_flow_need_the_head_that_epanet_found) {
    test::OutsideCheck heads{"inlet head for a flow", source, "m"};
    for (const bool pumped : {false, true}) {
        for (const Row& row : rows(pumped)) {
            const auto got = head_for_flow(row.header, from_si<VolumeFlow>(row.flow));
            ASSERT_TRUE(got) << row.id << ": " << got.error().text();
            heads.near(row.id, in_si(got.value().inlet_head), row.inlet_head, of_the_loss * loss(row));
        }
    }
}

}  // namespace
}  // namespace wetfront
