// SPDX-License-Identifier: Apache-2.0
#include "support/outside_check.h"

#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <limits>
#include <string>
#include <vector>

namespace wetfront::test {
namespace {

namespace fs = std::filesystem;

/// What is compared here is made up, so its rows go to a folder of their own, not into the table of checks.
class OutsideCheckTest : public testing::Test {
protected:
    void SetUp() override {
        folder_ = fs::path{testing::TempDir()} /
                  (std::string{"wetfront-"} + testing::UnitTest::GetInstance()->current_test_info()->name());
        fs::remove_all(folder_);
        fs::create_directories(folder_);
        ASSERT_EQ(setenv("WETFRONT_CHECKS", folder_.c_str(), 1), 0);
    }
    void TearDown() override { fs::remove_all(folder_); }

    /// What the checks left, from the name of the test on.
    [[nodiscard]] std::vector<std::string> rows() const {
        std::vector<std::string> found;
        for (const auto& entry : fs::directory_iterator{folder_}) {
            std::ifstream file{entry.path()};
            std::string text{std::istreambuf_iterator<char>{file}, {}};
            found.push_back(text.substr(text.find('\t') + 1));
        }
        return found;
    }

private:
    fs::path folder_;
};

void near_once(double got, double wanted, double limit) {
    OutsideCheck check{"bore", "table 1", "mm"};
    check.near("first row", got, wanted, limit);
}

void within_once(double got, double wanted, double share) {
    OutsideCheck check{"bore", "table 1"};
    check.within("first row", got, wanted, share);
}

void nothing() {
    const OutsideCheck check{"bore", "table 1"};
}

void mixed() {
    OutsideCheck check{"bore", "table 1"};
    check.near("first row", 1.0, 1.0, 0.1);
    check.within("second row", 1.0, 1.0, 0.1);
}

void the_same_twice() {
    near_once(1.0, 1.0, 0.1);
    near_once(2.0, 2.0, 0.1);
}

TEST_F(OutsideCheckTest, a_point_beyond_its_limit_fails_and_says_what_it_is) {
    EXPECT_NONFATAL_FAILURE(near_once(1.0, 1.5, 0.25),
                            "bore at first row: got 1, wanted 1.5, limit 0.25; table 1");
}

TEST_F(OutsideCheckTest, a_point_beyond_its_share_fails) {
    EXPECT_NONFATAL_FAILURE(within_once(1.0, 1.5, 0.25), "got 1, wanted 1.5, limit 25 %; table 1");
}

TEST_F(OutsideCheckTest, what_is_no_number_fails) {
    EXPECT_NONFATAL_FAILURE(near_once(std::numeric_limits<double>::quiet_NaN(), 1.2, 0.1), "wanted 1.2");
}

TEST_F(OutsideCheckTest, a_share_of_nothing_fails) {
    EXPECT_NONFATAL_FAILURE(within_once(0.0, 0.0, 0.1), "no share of 0");
}

TEST_F(OutsideCheckTest, a_check_that_compares_nothing_fails) {
    EXPECT_NONFATAL_FAILURE(nothing(), "nothing was compared with table 1");
}

TEST_F(OutsideCheckTest, differences_and_shares_in_one_check_fail) {
    EXPECT_NONFATAL_FAILURE(mixed(), "near() and within() in one check");
}

TEST_F(OutsideCheckTest, a_second_check_that_would_hide_the_first_fails) {
    EXPECT_NONFATAL_FAILURE(the_same_twice(), "compared twice in this test");
}

TEST_F(OutsideCheckTest, the_row_is_of_the_point_nearest_to_its_limit) {
    {
        OutsideCheck check{"bore", "table 1", "mm"};
        check.near("far from its limit", 12.0, 10.0, 8.0);
        check.near("near to its limit", 10.75, 10.0, 1.0);
        check.near("exact", 10.0, 10.0, 1.0);
    }
    const std::vector<std::string> wanted{
        "OutsideCheckTest.the_row_is_of_the_point_nearest_to_its_limit\tbore\ttable 1\t3\t0.75\t1\tmm\n"};
    EXPECT_EQ(rows(), wanted);
}

TEST_F(OutsideCheckTest, a_row_of_shares_is_in_percent) {
    within_once(1.25, 1.0, 0.5);
    const std::vector<std::string> wanted{
        "OutsideCheckTest.a_row_of_shares_is_in_percent\tbore\ttable 1\t1\t25\t50\t%\n"};
    EXPECT_EQ(rows(), wanted);
}

TEST_F(OutsideCheckTest, the_last_digits_of_a_number_are_called_rounding) {
    near_once(1e6 + 1e-9, 1e6, 1.0);
    const std::vector<std::string> wanted{
        "OutsideCheckTest.the_last_digits_of_a_number_are_called_rounding\tbore\ttable 1\t1\trounding\t1"
        "\tmm\n"};
    EXPECT_EQ(rows(), wanted);
}

TEST_F(OutsideCheckTest, checks_with_different_sources_leave_a_row_each) {
    near_once(1.0, 1.0, 0.1);
    {
        OutsideCheck check{"bore", "table 2", "mm"};
        check.near("first row", 1.0, 1.0, 0.1);
    }
    EXPECT_EQ(rows().size(), 2U);
}

}  // namespace
}  // namespace wetfront::test
