// SPDX-License-Identifier: Apache-2.0
#include "support/outside_check.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iomanip>

namespace wetfront::test {
namespace {

// Below this share of the value, what is left depends on compiler and processor.
constexpr double rounding_share = 1e-12;

}  // namespace

OutsideCheck::OutsideCheck(std::string subject, std::string source, std::string unit)
    : subject_{std::move(subject)}, source_{std::move(source)}, unit_{std::move(unit)} {}

void OutsideCheck::near(const std::string& input, double got, double wanted, double limit) {
    EXPECT_NEAR(got, wanted, limit) << subject_ << " at " << input << ": got " << got << ", wanted " << wanted
                                    << ", limit " << limit << "; " << source_;
    count(false, got, wanted, limit);
}

void OutsideCheck::within(const std::string& input, double got, double wanted, double share) {
    EXPECT_NE(wanted, 0.0) << subject_ << " at " << input << ": no share of 0; " << source_;
    EXPECT_NEAR(got, wanted, share * std::abs(wanted))
        << subject_ << " at " << input << ": got " << got << ", wanted " << wanted << ", limit "
        << 100.0 * share << " %; " << source_;
    count(true, got, wanted, share);
}

void OutsideCheck::count(bool relative, double got, double wanted, double limit) {
    EXPECT_TRUE(points_ == 0 || relative == relative_) << subject_ << ": near() and within() in one check";
    const double difference = std::abs(got - wanted);
    const double deviation = relative ? difference / std::abs(wanted) : difference;
    const double used = limit > 0.0 ? deviation / limit : deviation;
    relative_ = relative;
    rounding_ = rounding_ && difference <= rounding_share * (wanted == 0.0 ? 1.0 : std::abs(wanted));
    if (++points_ == 1 || used > most_used_) {
        most_used_ = used;
        deviation_ = deviation;
        limit_ = limit;
    }
}

OutsideCheck::~OutsideCheck() {
    EXPECT_GT(points_, 0) << subject_ << ": nothing was compared with " << source_;
    const auto* test = testing::UnitTest::GetInstance()->current_test_info();
    if (test == nullptr) {
        return;
    }
    const auto name = std::string{test->test_suite_name()} + "." + test->name();
    // One file for each check, whatever signs its texts hold and however long they are.
    const auto key =
        "check_" + std::to_string(std::hash<std::string>{}(name + '\t' + subject_ + '\t' + source_));
    for (int i = 0; i < test->result()->test_property_count(); ++i) {
        EXPECT_STRNE(test->result()->GetTestProperty(i).key(), key.c_str())
            << subject_ << ": compared twice in this test with " << source_
            << "; one row would hide the other";
    }
    testing::Test::RecordProperty(key, points_);
    const char* folder = std::getenv("WETFRONT_CHECKS");
    if (folder == nullptr || *folder == '\0') {
        return;
    }
    const auto path = std::string{folder} + "/" + key + ".tsv";
    const double scale = relative_ ? 100.0 : 1.0;
    std::ofstream row{path};
    row << std::setprecision(9) << test->file() << '\t' << name << '\t' << subject_ << '\t' << source_ << '\t'
        << points_ << '\t';
    if (rounding_) {
        row << "rounding";
    } else {
        row << scale * deviation_;
    }
    row << '\t' << scale * limit_ << '\t' << (relative_ ? "%" : unit_) << '\n';
    if (!row.flush()) {
        ADD_FAILURE() << "cannot write " << path;
    }
}

}  // namespace wetfront::test
