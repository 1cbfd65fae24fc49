// SPDX-License-Identifier: Apache-2.0
#include "water/uniformity.h"

#include <gtest/gtest.h>

#include <array>
#include <limits>
#include <sstream>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

std::vector<double> numbers_in(const std::string& cell) {
    std::istringstream text{cell};
    std::vector<double> numbers;
    for (std::string word; text >> word;) {
        numbers.push_back(test::cell_number(word));
    }
    return numbers;
}

// The published values are whole percents in the first row and seven digits in the second; the first row's
// exact values stand in its provenance.
TEST(UniformityTest, published_catches_give_their_published_coefficients) {
    const std::string source = "spreval package examples (NC Extension AG-553-1), public pages";
    test::OutsideCheck christiansen{"Christiansen's coefficient", source, "% points"};
    test::OutsideCheck low_quarter{"low-quarter uniformity", source, "% points"};
    for (const auto& row : test::data_rows("uniformity.csv")) {
        if (row.at(0) == "id") {
            continue;
        }
        const auto got = uniformity_of(numbers_in(row.at(1)));
        ASSERT_TRUE(got) << got.error().text();
        const double printed_to = row.at(0) == "U-1" ? 0.5 : 1e-5;
        christiansen.near(row.at(0), 100.0 * got.value().christiansen, test::cell_number(row.at(2)),
                          printed_to);
        low_quarter.near(row.at(0), 100.0 * got.value().low_quarter, test::cell_number(row.at(3)),
                         printed_to);
    }
}

TEST(UniformityTest, equal_outlets_are_wholly_even) {
    const auto got = uniformity_of(std::vector<double>(40, 0.37));
    ASSERT_TRUE(got);
    EXPECT_NEAR(got.value().christiansen, 1.0, 1e-12);
    EXPECT_NEAR(got.value().low_quarter, 1.0, 1e-12);
}

TEST(UniformityTest, one_outlet_is_wholly_even) {
    const auto got = uniformity_of(std::array{0.2});
    ASSERT_TRUE(got);
    EXPECT_EQ(got.value().low_quarter, 1.0);
}

TEST(UniformityTest, flows_that_are_none_or_impossible_are_refused_by_name) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const auto& flows : {std::vector<double>{}, {0.0, 0.0}, {1.0, -0.1}, {1.0, nan}}) {
        const auto got = uniformity_of(flows);
        ASSERT_FALSE(got);
        EXPECT_NE(got.error().text().find("outlet flow"), std::string::npos) << got.error().text();
    }
}

}  // namespace
}  // namespace wetfront
