// SPDX-License-Identifier: Apache-2.0
#include "trend/history_words.h"

#include <algorithm>
#include <cmath>

namespace wetfront {
namespace {

// A slope in the kind of the values, without its sign.
AnyQuantity a_year(const BankSeries& series, double slope) {
    AnyQuantity quantity = series.values.front().value;
    quantity.si = std::abs(slope);
    return quantity;
}

TrendVerdict verdict_on(std::span<const FollowedTrend> all, const Id& bank, Followed what) {
    const auto found = std::ranges::find_if(
        all, [&](const FollowedTrend& each) { return each.series.bank == bank && each.series.what == what; });
    return found == all.end() ? TrendVerdict::too_few : found->trend.verdict;
}

}  // namespace

Result<std::vector<FollowedTrend>> trends_of(std::span<const VisitFile> visits) {
    std::vector<FollowedTrend> all;
    for (auto& series : history_of(visits)) {
        WF_TRY(auto trend, trend_of(series));
        WF_TRY(const auto change, change_of(series));
        all.push_back({std::move(series), std::move(trend), change});
    }
    return all;
}

Message words_of(const FollowedTrend& followed) {
    const auto& [series, trend, change] = followed;
    const auto label = label_of(series.what);
    const int visits = static_cast<int>(series.values.size());
    const auto changing = [&](const char* with_limits, const char* at_least_some) -> Message {
        const auto& line = *trend.line;
        const auto slope = a_year(series, line.slope);
        // Ties can leave one limit at 0 or beyond it although the order of the values is a trend.
        if (line.least && line.most && *line.least * *line.most > 0.0) {
            const auto [less, more] = std::minmax({std::abs(*line.least), std::abs(*line.most)});
            return {with_limits, {label, slope, a_year(series, less), a_year(series, more), visits}};
        }
        return {at_least_some, {label, slope, visits}};
    };
    switch (trend.verdict) {
        case TrendVerdict::too_few:
            return {WF_TEXT("%1: too few visits for a trend, %2 of %3."),
                    {label, visits, static_cast<int>(fewest_for_a_trend)}};
        case TrendVerdict::none_seen:
            return {WF_TEXT("%1: no trend is seen in %2 visits."), {label, visits}};
        case TrendVerdict::rising:
            return changing(WF_TEXT("%1 rises by %2 a year, at 95 % by %3 to %4; %5 visits."),
                            WF_TEXT("%1 rises, by about %2 a year; %3 visits."));
        case TrendVerdict::falling:
            return changing(WF_TEXT("%1 falls by %2 a year, at 95 % by %3 to %4; %5 visits."),
                            WF_TEXT("%1 falls, by about %2 a year; %3 visits."));
    }
    return {};
}

Message shift_words(const FollowedTrend& followed) {
    if (!followed.change) {
        return {};
    }
    const auto since = followed.series.values.size() - followed.change->began_at;
    return {followed.change->up ? WF_TEXT("It has been higher than in the first %1 visits for the last %2.")
                                : WF_TEXT("It has been lower than in the first %1 visits for the last %2."),
            {static_cast<int>(fewest_before_a_change), static_cast<int>(since)}};
}

Message likely_cause(std::span<const FollowedTrend> all, const Id& bank) {
    const auto is = [&](Followed what, TrendVerdict verdict) {
        return verdict_on(all, bank, what) == verdict;
    };
    if (is(Followed::flow, TrendVerdict::falling) || is(Followed::fill, TrendVerdict::rising)) {
        return WF_TEXT(
            "Less water comes into the header: look at the pump, its strainer, the sump's level and the "
            "valves.");
    }
    if (is(Followed::wetting, TrendVerdict::rising) || is(Followed::wet_through, TrendVerdict::rising)) {
        return WF_TEXT(
            "Water takes longer through the pad: look for clogged outlets in the header and for scale or "
            "blind "
            "flutes in the pad.");
    }
    if (is(Followed::effectiveness, TrendVerdict::falling)) {
        return WF_TEXT(
            "The pad cools less than it did: look for scale, dust, sagging pads and gaps beside them.");
    }
    return {};
}

}  // namespace wetfront
