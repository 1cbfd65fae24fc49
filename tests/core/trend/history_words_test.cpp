// SPDX-License-Identifier: Apache-2.0
#include "trend/history_words.h"

#include <gmock/gmock.h>

namespace wetfront {
namespace {

/// One value a year of one bank; no visits behind it.
FollowedTrend followed(Followed what, const std::vector<double>& seconds_each, const char* bank = "bank-1") {
    FollowedTrend made{{Id{bank}, what, {}}, {}};
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

TEST(ShiftWordsTest, a_step_is_told_by_the_visits_since_it_and_none_where_there_is_none) {
    auto stepped = followed(Followed::wet_through, {110, 110, 110, 110, 150, 150, 150});
    EXPECT_TRUE(shift_words(stepped).empty()) << "no change was found in it yet";
    stepped.change = Change{4, 4, true};
    EXPECT_EQ(in_english(shift_words(stepped), UnitSystem::si),
              "It has been higher than in the first 3 visits for the last 3.");
}

TEST(LikelyCauseTest, less_water_is_named_before_what_follows_from_it) {
    const std::vector all{followed(Followed::fill, {40, 44, 48, 52, 56}),
                          followed(Followed::wet_through, {110, 120, 130, 140, 150})};
    EXPECT_THAT(in_english(likely_cause(all, Id{"bank-1"}), UnitSystem::si), testing::HasSubstr("pump"));
}

TEST(LikelyCauseTest, slower_wetting_at_the_same_fill_points_to_outlets_and_pad) {
    const std::vector all{followed(Followed::fill, {40, 40, 40, 40, 40}),
                          followed(Followed::wet_through, {110, 120, 130, 140, 150})};
    EXPECT_THAT(in_english(likely_cause(all, Id{"bank-1"}), UnitSystem::si), testing::HasSubstr("scale"));
}

TEST(LikelyCauseTest, another_banks_trend_is_no_cause_here) {
    const std::vector all{followed(Followed::wet_through, {110, 120, 130, 140, 150}, "bank-2")};
    EXPECT_TRUE(likely_cause(all, Id{"bank-1"}).empty());
}

TEST(LikelyCauseTest, what_gets_better_needs_no_cause) {
    const std::vector all{followed(Followed::wet_through, {150, 140, 130, 120, 110})};
    EXPECT_TRUE(likely_cause(all, Id{"bank-1"}).empty());
}

}  // namespace
}  // namespace wetfront
