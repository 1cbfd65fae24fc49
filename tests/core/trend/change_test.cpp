// SPDX-License-Identifier: Apache-2.0
#include "trend/change.h"

#include <gmock/gmock.h>

#include <limits>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

constexpr CusumPlan handbook{325.0, 0.3175, 4.1959};

std::vector<std::vector<std::string>> table() {
    auto rows = test::data_rows("cusum.csv");
    std::erase_if(rows, [](const auto& row) { return row.front() == "i"; });
    return rows;
}

std::vector<double> table_values() {
    std::vector<double> values;
    for (const auto& row : table()) {
        values.push_back(test::cell_number(row.at(1)));
    }
    return values;
}

TEST(CusumTest, the_sums_are_those_of_the_published_table) {
    test::OutsideCheck above{"CUSUM, upper sum", "NIST/SEMATECH e-Handbook 6.3.2.3, second hand"};
    test::OutsideCheck below{"CUSUM, lower sum", "NIST/SEMATECH e-Handbook 6.3.2.3, second hand"};
    const auto sums = cusum(table_values(), handbook);
    ASSERT_TRUE(sums);
    for (std::size_t i = 0; const auto& row : table()) {
        above.near("value " + row.at(0), sums.value().at(i).above, test::cell_number(row.at(2)), 5e-5);
        below.near("value " + row.at(0), sums.value().at(i).below, test::cell_number(row.at(3)), 5e-5);
        ++i;
    }
}

TEST(CusumTest, the_change_is_seen_at_the_14th_value_as_published_and_began_with_the_13th) {
    const auto change = first_change(table_values(), handbook);
    ASSERT_TRUE(change && change.value());
    EXPECT_EQ(change.value()->seen_at, 13U);
    EXPECT_EQ(change.value()->began_at, 12U);
    EXPECT_TRUE(change.value()->up);
}

TEST(CusumTest, a_fall_is_a_change_to_the_other_side) {
    auto values = table_values();
    for (auto& value : values) {
        value = 650.0 - value;
    }
    const auto change = first_change(values, handbook);
    ASSERT_TRUE(change && change.value());
    EXPECT_EQ(change.value()->seen_at, 13U);
    EXPECT_FALSE(change.value()->up);
}

TEST(CusumTest, values_within_the_slack_never_add_up) {
    const std::vector<double> values(1000, 325.3);
    const auto change = first_change(values, handbook);
    ASSERT_TRUE(change);
    EXPECT_FALSE(change.value());
}

TEST(CusumTest, no_value_is_no_change) {
    const auto change = first_change({}, handbook);
    ASSERT_TRUE(change);
    EXPECT_FALSE(change.value());
}

TEST(CusumTest, a_plan_out_of_range_and_a_value_that_is_no_number_are_refused) {
    const std::vector<double> one{1.0};
    constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(cusum(one, {0.0, -0.1, 1.0}));
    EXPECT_FALSE(cusum(one, {0.0, 0.1, 0.0}));
    EXPECT_FALSE(cusum(one, {no_number, 0.1, 1.0}));
    EXPECT_FALSE(cusum(std::vector<double>{no_number}, {0.0, 0.1, 1.0}));
}

}  // namespace
}  // namespace wetfront
