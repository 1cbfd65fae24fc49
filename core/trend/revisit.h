// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>

#include "records/finding.h"
#include "records/visit.h"

namespace wetfront {

/// When a house is to be visited again at the latest, and why.
struct Revisit {
    WallTime due;
    Message why;
};

/// From the start of its latest visit: after 30 days where a harm or fault was left, after 182 days where
/// what was measured over the years leads to worse wetting, else after 365 days, before the next hot season.
/// All three: common practice, no source. `worst_left`: of the findings on the settings left; none: there is
/// none.
[[nodiscard]] Revisit revisit_after(WallTime latest, std::optional<Severity> worst_left, bool worsening);

/// True if some trend of the house is one for the worse (gets_worse(), history_words.h), judged since the
/// last maintenance. False where the visits cannot be put in order. `visits`: of that house, in any order.
[[nodiscard]] bool is_worsening(const House& house, std::span<const VisitFile> visits);

}  // namespace wetfront
