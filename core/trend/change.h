// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "base/result.h"

namespace wetfront {

/// A cumulative sum that watches for a shift of the mean to either side; all in the unit of the values.
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 (tabular form).
struct CusumPlan {
    double target = 0.0;    ///< what the values are about while nothing changes
    double slack = 0.0;     ///< k: half the shift worth finding; 0 or more
    double decision = 0.0;  ///< h: a sum above it is a change; above 0
};

/// The two sums after one value.
struct CusumSums {
    double above = 0.0;  ///< of what exceeded target + slack, never below 0
    double below = 0.0;  ///< of what fell short of target - slack, never below 0

    friend bool operator==(const CusumSums&, const CusumSums&) = default;
};

/// Bad input for a plan out of range and for values that are not finite.
[[nodiscard]] Result<std::vector<CusumSums>> cusum(std::span<const double> values, const CusumPlan& plan);

struct Change {
    std::size_t seen_at = 0;   ///< index of the first value whose sum exceeds the decision
    std::size_t began_at = 0;  ///< index of the value with which that sum began to grow from 0
    bool up = false;
};

/// The first change, none if no sum exceeds the decision. Errors of cusum().
[[nodiscard]] Result<std::optional<Change>> first_change(std::span<const double> values,
                                                         const CusumPlan& plan);

}  // namespace wetfront
