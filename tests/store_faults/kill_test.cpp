// SPDX-License-Identifier: Apache-2.0
// A program that is killed: 500 times here, as often as wanted by store_kills.
#include "kills.h"

#include <gtest/gtest.h>

#include <iostream>

namespace wetfront::test {
namespace {

class KillTest : public testing::TestWithParam<unsigned> {};

TEST_P(KillTest, after_each_of_125_kills_every_acknowledged_entry_is_there_once) {
    const auto counts = kill_writers(125, GetParam());
    std::cout << text_of(counts) << '\n';
    EXPECT_EQ(counts.wrong, "");
    EXPECT_EQ(counts.kills, 125);
    EXPECT_GT(counts.acknowledged, 300);
    EXPECT_GT(counts.while_opening, 0);
}

INSTANTIATE_TEST_SUITE_P(Seeds, KillTest, testing::Values(1U, 2U, 3U, 4U),
                         [](const auto& seed) { return "seed_" + std::to_string(seed.param); });

}  // namespace
}  // namespace wetfront::test
