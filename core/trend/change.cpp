// SPDX-License-Identifier: Apache-2.0
#include "trend/change.h"

#include <algorithm>
#include <cmath>

namespace wetfront {
namespace {

Result<void> check(const CusumPlan& plan) {
    if (!std::isfinite(plan.target)) {
        return bad_input("target of a cumulative sum", "not a number", "a finite number");
    }
    if (!std::isfinite(plan.slack) || plan.slack < 0.0) {
        return bad_input("slack of a cumulative sum", "below 0 or not a number", "0 or more");
    }
    if (!std::isfinite(plan.decision) || plan.decision <= 0.0) {
        return bad_input("decision of a cumulative sum", "0, less or not a number", "above 0");
    }
    return boost::outcome_v2::success();
}

// The index after the last one, up to `seen_at`, at which that sum was 0.
std::size_t began(std::span<const CusumSums> sums, std::size_t seen_at, double CusumSums::*side) {
    std::size_t first = seen_at;
    while (first > 0 && sums[first - 1].*side > 0.0) {
        --first;
    }
    return first;
}

}  // namespace

Result<std::vector<CusumSums>> cusum(std::span<const double> values, const CusumPlan& plan) {
    WF_CHECK(check(plan));
    std::vector<CusumSums> sums;
    CusumSums sum;
    for (const double value : values) {
        if (!std::isfinite(value)) {
            return bad_input("a value of a series", "not a number", "a finite number");
        }
        sum.above = std::max(0.0, sum.above + value - plan.target - plan.slack);
        sum.below = std::max(0.0, sum.below + plan.target - plan.slack - value);
        sums.push_back(sum);
    }
    return sums;
}

Result<std::optional<Change>> first_change(std::span<const double> values, const CusumPlan& plan) {
    WF_TRY(const auto sums, cusum(values, plan));
    const auto seen = std::ranges::find_if(
        sums, [&](const CusumSums& sum) { return sum.above > plan.decision || sum.below > plan.decision; });
    if (seen == sums.end()) {
        return std::optional<Change>{};
    }
    Change change;
    change.seen_at = static_cast<std::size_t>(seen - sums.begin());
    change.up = seen->above > plan.decision;
    change.began_at = began(sums, change.seen_at, change.up ? &CusumSums::above : &CusumSums::below);
    return std::optional{change};
}

}  // namespace wetfront
