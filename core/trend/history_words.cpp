// SPDX-License-Identifier: Apache-2.0
#include "trend/history_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

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

// "Fill time", or "Fill time since 2026-05-04 (New pads)".
Message followed_label(const BankSeries& series) {
    if (series.events.empty()) {
        return label_of(series.what);
    }
    const auto& last = series.events.back();
    return {WF_TEXT("%1 since %2 (%3)"), {label_of(series.what), local_date(last.on), label_of(last.what)}};
}

// "August 2028".
Message month_words(WallTime at) {
    static constexpr std::array months{WF_TEXT("January %1"), WF_TEXT("February %1"), WF_TEXT("March %1"),
                                       WF_TEXT("April %1"),   WF_TEXT("May %1"),      WF_TEXT("June %1"),
                                       WF_TEXT("July %1"),    WF_TEXT("August %1"),   WF_TEXT("September %1"),
                                       WF_TEXT("October %1"), WF_TEXT("November %1"), WF_TEXT("December %1")};
    const auto day = local_date(at);  // 2028-08-01
    const auto month = static_cast<std::size_t>(std::stoi(day.substr(5, 2)) - 1);
    return {months.at(month), {day.substr(0, 4)}};
}

double last_time(const FollowedTrend& followed) {
    return dated(followed.series.since_last_event()).back().at;
}

bool has_trend(const Trend& trend) {
    return trend.verdict == TrendVerdict::rising || trend.verdict == TrendVerdict::falling;
}

struct LimitSentences {
    const char* between;   ///< %1 what sets it, %2 likely, %3 earliest, %4 latest
    const char* at_least;  ///< the same without %4
    const char* far;       ///< %1, %2 years
    const char* passed;    ///< %1, %2 the limit itself
};

LimitSentences sentences_on(SeriesLimit::From from) {
    switch (from) {
        case SeriesLimit::From::base_on_time:
            return {
                WF_TEXT("At this rate the base on-time of %1 in the timer is no longer enough about %2; at "
                        "95 % between %3 and %4."),
                WF_TEXT("At this rate the base on-time of %1 in the timer is no longer enough about %2; at "
                        "95 % not before %3."),
                WF_TEXT("At this rate the base on-time of %1 in the timer is enough for more than %2 "
                        "years."),
                WF_TEXT("By its trend it has passed %2, up to which the base on-time of %1 in the timer "
                        "is enough.")};
        case SeriesLimit::From::least_circulation:
            return {
                WF_TEXT("At this rate it falls below the least circulation of %1 about %2; at 95 % between "
                        "%3 and %4."),
                WF_TEXT("At this rate it falls below the least circulation of %1 about %2; at 95 % not "
                        "before %3."),
                WF_TEXT("At this rate it stays above the least circulation of %1 for more than %2 years."),
                WF_TEXT("By its trend it is below %2, the least circulation of %1.")};
    }
    return {};
}

}  // namespace

Result<std::vector<FollowedTrend>> trends_of(const House& house, std::span<const VisitFile> visits) {
    std::vector<FollowedTrend> all;
    for (auto& series : history_of(house, visits)) {
        WF_TRY(auto trend, trend_of(series));
        WF_TRY(const auto change, change_of(series));
        all.push_back({std::move(series), std::move(trend), change, {}});
    }
    const auto standing = standing_visits(visits);
    if (standing.empty()) {
        return all;
    }
    const auto& last = *standing.back();
    const auto advice = advise(last);
    for (auto& followed : all) {
        if (const auto* bank = last.house.bank(followed.series.bank)) {
            followed.limit = limit_of(last, advice, *bank, followed.series.what);
        }
    }
    return all;
}

std::optional<Reached> limit_reached(const FollowedTrend& followed) {
    if (!followed.limit || !has_trend(followed.trend)) {
        return std::nullopt;
    }
    const auto judged = dated(followed.series.since_last_event());
    return when_reached(followed.trend, judged, followed.limit->value.si, judged.back().at);
}

bool gets_worse(const FollowedTrend& followed) {
    const bool falls_for_the_worse =
        followed.series.what == Followed::flow || followed.series.what == Followed::effectiveness;
    return followed.trend.verdict == (falls_for_the_worse ? TrendVerdict::falling : TrendVerdict::rising);
}

Message words_of(const FollowedTrend& followed) {
    const auto& series = followed.series;
    const auto& trend = followed.trend;
    const auto label = followed_label(series);
    const int visits = static_cast<int>(series.since_last_event().size());
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
            if (visits == 0) {
                return {WF_TEXT("%1: not measured yet."), {label}};
            }
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
    const auto& began = followed.series.since_last_event()[followed.change->began_at];
    return {followed.change->up
                ? WF_TEXT("Since the visit of %1 it has been higher than in the first %2 that count here.")
                : WF_TEXT("Since the visit of %1 it has been lower than in the first %2 that count here."),
            {local_date(began.at), static_cast<int>(fewest_before_a_change)}};
}

Message limit_words(const FollowedTrend& followed) {
    if (!followed.limit || !gets_worse(followed)) {
        return {};
    }
    const auto& limit = *followed.limit;
    const auto words = sentences_on(limit.from);
    const auto judged = followed.series.since_last_event();
    const auto reached = limit_reached(followed);
    if (!reached) {
        // A trend for the worse that does not lead to the limit lies behind it, or has a slope of 0 by ties.
        const double way = limit.value.si - followed.trend.line->at(last_time(followed));
        const bool passed = followed.trend.verdict == TrendVerdict::rising ? way <= 0.0 : way >= 0.0;
        return passed ? Message{words.passed, {limit.set_by, limit.value}} : Message{};
    }
    const double farthest = last_time(followed) + farthest_told_years;
    if (reached->likely > farthest) {
        return {words.far, {limit.set_by, static_cast<int>(farthest_told_years)}};
    }
    const auto month = [&](double years) { return month_words(moment_at(judged, years)); };
    if (!reached->latest || *reached->latest > farthest) {
        return {words.at_least, {limit.set_by, month(reached->likely), month(reached->earliest)}};
    }
    return {words.between,
            {limit.set_by, month(reached->likely), month(reached->earliest), month(*reached->latest)}};
}

std::optional<TrendCause> likely_cause(std::span<const FollowedTrend> all, const Id& bank) {
    const auto is = [&](Followed what, TrendVerdict verdict) {
        return verdict_on(all, bank, what) == verdict;
    };
    if (is(Followed::flow, TrendVerdict::falling) || is(Followed::fill, TrendVerdict::rising)) {
        return TrendCause::less_water;
    }
    if (is(Followed::wetting, TrendVerdict::rising) || is(Followed::wet_through, TrendVerdict::rising)) {
        return TrendCause::slower_wetting;
    }
    if (is(Followed::effectiveness, TrendVerdict::falling)) {
        return TrendCause::less_cooling;
    }
    return std::nullopt;
}

Message words_of(TrendCause cause) {
    switch (cause) {
        case TrendCause::less_water:
            return WF_TEXT(
                "Likely cause: less water comes into the header, from a worn pump, a clogged strainer, a low "
                "sump or a valve that is not fully open.");
        case TrendCause::slower_wetting:
            return WF_TEXT(
                "Likely cause: water takes longer through the pad, by clogged outlets in the header or by "
                "scale and blind flutes in the pad.");
        case TrendCause::less_cooling:
            return WF_TEXT(
                "Likely cause: the pad cools less than it did, by scale, dust, sagging pads or gaps beside "
                "them.");
    }
    return {};
}

Message remedy_of(TrendCause cause) {
    switch (cause) {
        case TrendCause::less_water:
            return WF_TEXT(
                "What to do: clean the strainer, see that the sump is full and the valves are open, then "
                "measure the flow; if it is still low, have the pump looked at.");
        case TrendCause::slower_wetting:
            return WF_TEXT(
                "What to do: clean the outlets, flush the header and time again; if it is still slow, look "
                "for scale in the pad and check the bleed.");
        case TrendCause::less_cooling:
            return WF_TEXT(
                "What to do: clean the pads, close the gaps and measure again; if it stays low, plan new "
                "pads before the next summer.");
    }
    return {};
}

std::vector<FollowedTrend> trends_after(const VisitFile& visit, std::span<const VisitFile> of_house) {
    std::vector<VisitFile> visits;
    std::ranges::copy_if(of_house, std::back_inserter(visits), [&](const VisitFile& each) {
        return each.visit.id != visit.visit.id && each.visit.started < visit.visit.started;
    });
    if (visits.empty()) {
        return {};
    }
    visits.push_back(visit);
    auto trends = trends_of(visit.house, visits);
    return trends ? std::move(trends).value() : std::vector<FollowedTrend>{};
}

}  // namespace wetfront
