// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "trend/house_history.h"
#include "units/message.h"

namespace wetfront {

/// A series with its trend and its first lasting shift.
struct FollowedTrend {
    BankSeries series;
    Trend trend;
    std::optional<Change> change = {};
};

/// All series of a house; errors of trend_of().
[[nodiscard]] Result<std::vector<FollowedTrend>> trends_of(std::span<const VisitFile> visits);

/// What became of it and how sure that is, in one sentence. With fewer than `fewest_for_a_trend` visits it
/// says that these are too few, never that there is no trend.
[[nodiscard]] Message words_of(const FollowedTrend& followed);

/// Since when it has been higher or lower than at first; empty where it has not.
[[nodiscard]] Message shift_words(const FollowedTrend& followed);

/// What most likely lies behind the trends of one bank, and what to look at; empty where none of them leads
/// to worse wetting. Common practice, no source. `all` may hold other banks too.
[[nodiscard]] Message likely_cause(std::span<const FollowedTrend> all, const Id& bank);

}  // namespace wetfront
