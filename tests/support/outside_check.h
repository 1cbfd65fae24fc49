// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace wetfront::test {

/// One comparison of ours with something outside: a published table, another program, a limit known in closed
/// form. Each point fails the test where it is off by more than its limit; what was compared and the largest
/// deviation (of the point nearest to its limit) go into the table of checks that tests/README.md shows.
/// Lives inside one test, one for each subject and source; compares at least one point, or the test fails.
class OutsideCheck {
public:
    /// `subject` as the table names it, "wet bulb"; `source` with edition and how it was read; `unit` of the
    /// deviation, empty for plain numbers.
    OutsideCheck(std::string subject, std::string source, std::string unit = "");
    OutsideCheck(const OutsideCheck&) = delete;
    OutsideCheck& operator=(const OutsideCheck&) = delete;
    /// Fails the test if nothing was compared; else leaves its row in the folder that WETFRONT_CHECKS names,
    /// if it names one.
    ~OutsideCheck();

    /// Differs by at most `limit`. `input` says which point it is.
    void near(const std::string& input, double got, double wanted, double limit);
    /// Differs by at most `share` of what is wanted (which is not 0). A check is all near() or all within().
    void within(const std::string& input, double got, double wanted, double share);

private:
    void count(bool relative, double got, double wanted, double limit);

    std::string subject_;
    std::string source_;
    std::string unit_;
    bool relative_ = false;
    bool rounding_ = true;  ///< no point is off by more than the last digits of a double
    int points_ = 0;
    // Of the point that comes nearest to its limit:
    double most_used_ = 0.0;  ///< share of the limit
    double deviation_ = 0.0;
    double limit_ = 0.0;
};

}  // namespace wetfront::test
