// SPDX-License-Identifier: Apache-2.0
#include "trend/history_words.h"

#include <gmock/gmock.h>

#include <set>

namespace wetfront {
namespace {

/// One value a year of one bank; no visits behind it.
FollowedTrend followed(Followed what, const std::vector<double>& seconds_each, const char* bank = "bank-1") {
    FollowedTrend made{{Id{bank}, what, {}, {}}, {}};
    for (const double value : seconds_each) {
        const auto years = static_cast<double>(made.series.values.size());
        made.series.values.push_back(
            {Id{"visit"}, {static_cast<std::int64_t>(years * 31'557'600'000.0), 0}, any(seconds(value)), {}});
    }
    made.trend = trend_of(made.series).value();
    return made;
}

std::string said(const FollowedTrend& each) {
    return in_english(words_of(each), UnitSystem::si);
}

TEST(HistoryWordsTest, few_visits_are_too_few_and_never_no_trend) {
    EXPECT_EQ(said(followed(Followed::wet_through, {110, 130, 150, 170})),
              "Wet-through time: too few visits for a trend, 4 of 5.");
}

TEST(HistoryWordsTest, a_rise_is_told_by_the_year_with_its_limits) {
    EXPECT_EQ(said(followed(Followed::wet_through, {110, 121, 129, 141, 150})),
              "Wet-through time rises by 10 s a year, at 95 % by 8 s to 12 s; 5 visits.");
}

TEST(HistoryWordsTest, a_fall_is_told_without_a_minus) {
    EXPECT_EQ(said(followed(Followed::fill, {60, 56, 52, 48, 44, 40})),
              "Fill time falls by 4 s a year, at 95 % by 4 s to 4 s; 6 visits.");
}

TEST(HistoryWordsTest, values_that_go_up_and_down_have_no_trend_that_is_seen) {
    EXPECT_EQ(said(followed(Followed::fill, {40, 42, 39, 41, 40, 42})),
              "Fill time: no trend is seen in 6 visits.");
}

/// The same with the limit that a base on-time of 110 s sets.
FollowedTrend limited(const std::vector<double>& seconds_each, double limit_s) {
    auto made = followed(Followed::wet_through, seconds_each);
    made.limit = SeriesLimit{any(seconds(limit_s)), SeriesLimit::From::base_on_time, any(seconds(110.0))};
    return made;
}

std::string limit_said(const FollowedTrend& each) {
    return in_english(limit_words(each), UnitSystem::si);
}

Maintenance new_pads(double years) {
    return {Id{"done"}, {static_cast<std::int64_t>(years * 31'557'600'000.0), 0}, Upkeep::new_pads, {}, {},
            {}};
}

TEST(HistoryWordsTest, after_work_it_is_told_since_when_and_what_it_was) {
    auto since = followed(Followed::wet_through, {110, 121, 129, 141, 150});
    since.series.events = {new_pads(2.5)};
    since.trend = trend_of(since.series).value();
    EXPECT_EQ(said(since),
              "Wet-through time since 1972-07-02 (New pads): too few visits for a trend, 2 of 5.");
    since.series.events = {new_pads(4.5)};
    since.trend = trend_of(since.series).value();
    EXPECT_EQ(said(since), "Wet-through time since 1974-07-02 (New pads): not measured yet.");
}

TEST(ShiftWordsTest, a_step_is_told_by_the_visit_since_which_it_is_there_and_none_where_there_is_none) {
    auto stepped = followed(Followed::wet_through, {110, 110, 110, 110, 150, 150, 150});
    EXPECT_TRUE(shift_words(stepped).empty()) << "no change was found in it yet";
    stepped.change = Change{4, 4, true};
    EXPECT_EQ(in_english(shift_words(stepped), UnitSystem::si),
              "Since the visit of 1974-01-01 it has been higher than in the first 3 that count here.");
}

// The slope of 10 s a year, 8 to 12 s at 95 %, through 130 s at the start of 1972, as trend_test.cpp works
// them out by hand: 190.5 s after 6.05, 5.04 and 7.56 years from there.
TEST(LimitWordsTest, a_limit_ahead_is_told_by_its_month_with_the_range) {
    EXPECT_EQ(
        limit_said(limited({110, 121, 129, 141, 150}, 190.5)),
        "At this rate the base on-time of 110 s in the timer is no longer enough about January 1978; at "
        "95 % between January 1977 and July 1979.");
}

// 234.6 s is 104.6 s above the middle: 10.46 years, 8.72 at the steepest, 13.1 at the flattest, and the last
// visit was two years after the middle.
TEST(LimitWordsTest, a_range_that_ends_too_far_ahead_has_no_end) {
    EXPECT_EQ(
        limit_said(limited({110, 121, 129, 141, 150}, 234.6)),
        "At this rate the base on-time of 110 s in the timer is no longer enough about June 1982; at 95 % "
        "not before September 1980.");
}

TEST(LimitWordsTest, what_lies_more_than_ten_years_ahead_has_no_month) {
    EXPECT_EQ(limit_said(limited({110, 121, 129, 141, 150}, 251.0)),
              "At this rate the base on-time of 110 s in the timer is enough for more than 10 years.");
}

TEST(LimitWordsTest, a_limit_that_was_passed_is_told_without_a_month) {
    EXPECT_EQ(
        limit_said(limited({110, 121, 129, 141, 150}, 145.0)),
        "By its trend it has passed 145 s, up to which the base on-time of 110 s in the timer is enough.");
}

TEST(LimitWordsTest, without_a_trend_or_with_one_for_the_better_nothing_is_told) {
    EXPECT_EQ(limit_said(limited({110, 121, 129, 141}, 190.0)), "");
    EXPECT_EQ(limit_said(limited({110, 112, 109, 111, 110, 112}, 111.0)), "");
    EXPECT_EQ(limit_said(limited({150, 141, 129, 121, 110}, 100.0)), "");
}

TEST(LimitWordsTest, a_flow_that_falls_is_held_against_the_least_circulation) {
    FollowedTrend made{{Id{"bank-1"}, Followed::flow, {}, {}}, {}};
    for (int year = 0; year < 6; ++year) {
        made.series.values.push_back({Id{"visit"},
                                      {static_cast<std::int64_t>(year * 31'557'600'000.0), 0},
                                      any(from_si<VolumeFlow>(0.0044 - 0.0001 * year)),
                                      {}});
    }
    made.trend = trend_of(made.series).value();
    made.limit = SeriesLimit{any(from_si<VolumeFlow>(0.00339)), SeriesLimit::From::least_circulation,
                             any(from_si<FlowPerLength>(0.00017))};
    EXPECT_THAT(limit_said(made),
                testing::StartsWith("At this rate it falls below the least circulation of"));
    EXPECT_THAT(limit_said(made), testing::HasSubstr("about February 1980"));
}

std::string cause_said(const std::vector<FollowedTrend>& all, const char* bank = "bank-1") {
    const auto cause = likely_cause(all, Id{bank});
    return cause ? in_english(words_of(*cause), UnitSystem::si) : std::string{};
}

TEST(LikelyCauseTest, less_water_is_named_before_what_follows_from_it) {
    const std::vector all{followed(Followed::fill, {40, 44, 48, 52, 56}),
                          followed(Followed::wet_through, {110, 120, 130, 140, 150})};
    EXPECT_THAT(cause_said(all), testing::HasSubstr("pump"));
}

TEST(LikelyCauseTest, slower_wetting_at_the_same_fill_points_to_outlets_and_pad) {
    const std::vector all{followed(Followed::fill, {40, 40, 40, 40, 40}),
                          followed(Followed::wet_through, {110, 120, 130, 140, 150})};
    EXPECT_THAT(cause_said(all), testing::HasSubstr("scale"));
}

TEST(LikelyCauseTest, another_banks_trend_is_no_cause_here) {
    const std::vector all{followed(Followed::wet_through, {110, 120, 130, 140, 150}, "bank-2")};
    EXPECT_EQ(cause_said(all), "");
}

TEST(LikelyCauseTest, what_gets_better_needs_no_cause) {
    const std::vector all{followed(Followed::wet_through, {150, 140, 130, 120, 110})};
    EXPECT_EQ(cause_said(all), "");
}

TEST(LikelyCauseTest, every_cause_has_its_own_sentence_on_what_to_do) {
    std::set<std::string> sentences;
    for (const auto cause : {TrendCause::less_water, TrendCause::slower_wetting, TrendCause::less_cooling}) {
        const auto sentence = in_english(remedy_of(cause), UnitSystem::si);
        EXPECT_THAT(sentence, testing::StartsWith("What to do: "));
        sentences.insert(sentence);
    }
    EXPECT_EQ(sentences.size(), 3U);
}

}  // namespace
}  // namespace wetfront
