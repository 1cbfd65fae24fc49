// SPDX-License-Identifier: Apache-2.0
#include "cycle/expected_fill.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

template <class Q>
Optional<Q> entry(const char* text) {
    return Entered<Q>::parse(text, "test").value();
}

VisitFile one_bank() {
    VisitFile file;
    file.house.pumps.push_back({Id{"pump"}, "Pump", {}, {}, {}});
    PadBank bank;
    bank.id = Id{"bank"};
    bank.pump = Id{"pump"};
    bank.length = entry<Length>("20m");
    bank.header_bore = entry<Length>("52.04mm");
    file.house.banks.push_back(bank);
    file.visit.conditions.flows.push_back({Id{"pump"}, entry<VolumeFlow>("2L/s")});
    return file;
}

// By hand: pi/4 * 0.05204^2 * 20 = 0.0425397 m3; / 0.002 m3/s = 21.2699 s; * 1.75 = 37.222 s.
TEST(ExpectedFillTest, is_pipe_volume_over_flow_times_the_healthy_ratio) {
    const auto fill = expected_fill(one_bank(), Id{"bank"});
    ASSERT_TRUE(fill);
    EXPECT_NEAR(in_seconds(*fill), 37.222, 0.001);
}

// Two equal banks share the flow: each takes twice as long.
TEST(ExpectedFillTest, shares_the_flow_of_a_pump_by_pad_length) {
    auto file = one_bank();
    auto second = file.house.banks.front();
    second.id = Id{"second"};
    file.house.banks.push_back(second);
    EXPECT_NEAR(in_seconds(*expected_fill(file, Id{"bank"})), 74.444, 0.002);
}

// 4 L of riser at 2 L/s: two seconds more.
TEST(ExpectedFillTest, adds_the_riser) {
    auto file = one_bank();
    file.house.pumps.front().riser_volume = entry<Volume>("4L");
    EXPECT_NEAR(in_seconds(*expected_fill(file, Id{"bank"})), 39.222, 0.001);
}

TEST(ExpectedFillTest, is_unknown_without_flow_bore_or_length) {
    auto no_flow = one_bank();
    no_flow.visit.conditions.flows.clear();
    auto no_bore = one_bank();
    no_bore.house.banks.front().header_bore.reset();
    auto no_length = one_bank();
    no_length.house.banks.front().length.reset();
    for (const auto& file : {no_flow, no_bore, no_length}) {
        EXPECT_FALSE(expected_fill(file, Id{"bank"}));
    }
    EXPECT_FALSE(expected_fill(one_bank(), Id{"no such bank"}));
}

}  // namespace
}  // namespace wetfront
