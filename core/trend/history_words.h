// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "trend/house_history.h"
#include "trend/series_limit.h"
#include "units/message.h"

namespace wetfront {

/// A series with what is judged of it: its trend, its first lasting shift, and the limit that it may reach.
struct FollowedTrend {
    BankSeries series;
    Trend trend;
    std::optional<Change> change = {};  ///< counted in series.since_last_event()
    std::optional<SeriesLimit> limit = {};
};

/// All series of a house as it is now, with limits as after its last visit; errors of trend_of().
[[nodiscard]] Result<std::vector<FollowedTrend>> trends_of(const House& house,
                                                           std::span<const VisitFile> visits);

/// The same as they stood after that visit, whatever came later: of the visits that started before it, with
/// the visit as it is given. Nothing where there is no earlier one, or where the visits cannot be put in
/// order.
[[nodiscard]] std::vector<FollowedTrend> trends_after(const VisitFile& visit,
                                                      std::span<const VisitFile> of_house);

/// When the trend reaches the limit, in the time of dated(series.since_last_event()); none without a trend.
[[nodiscard]] std::optional<Reached> limit_reached(const FollowedTrend& followed);

/// Whether the trend is one for the worse: times that grow, flow or effectiveness that falls.
[[nodiscard]] bool gets_worse(const FollowedTrend& followed);

/// What became of it and how sure that is, in one sentence. With fewer than `fewest_for_a_trend` visits it
/// says that these are too few, never that there is no trend.
[[nodiscard]] Message words_of(const FollowedTrend& followed);

/// Since which visit it has been higher or lower than at first; empty where it has not.
[[nodiscard]] Message shift_words(const FollowedTrend& followed);

/// No month is named that lies further behind the last visit: a line through a few visits does not tell it.
inline constexpr double farthest_told_years = 10.0;
/// About when the limit is reached, with the range of that; or that it has been passed. Empty where there is
/// no limit, no trend, or a trend away from it.
[[nodiscard]] Message limit_words(const FollowedTrend& followed);

/// What most likely lies behind trends for the worse. Common practice, no source.
enum class TrendCause { less_water, slower_wetting, less_cooling };
/// Of one bank; none where nothing of it gets worse. `all` may hold other banks too.
[[nodiscard]] std::optional<TrendCause> likely_cause(std::span<const FollowedTrend> all, const Id& bank);
[[nodiscard]] Message words_of(TrendCause cause);
/// What to do about it, in one sentence.
[[nodiscard]] Message remedy_of(TrendCause cause);

}  // namespace wetfront
