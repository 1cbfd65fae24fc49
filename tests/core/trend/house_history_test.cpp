// SPDX-License-Identifier: Apache-2.0
#include "trend/house_history.h"

#include <gmock/gmock.h>

#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

constexpr std::int64_t year_ms = 31'557'600'000;  // 365.25 days

/// Visits of one invented house, one a year; each fills in `fill` seconds and is wet through after `through`.
std::vector<VisitFile> visits(const std::vector<MarkedRun>& runs) {
    std::vector<VisitFile> all;
    for (const auto& run : runs) {
        VisitBuilder builder;
        for (int repeat = 0; repeat < 3; ++repeat) {
            builder.run(1, run);
        }
        auto& visit = builder.file().visit;
        visit.id = Id{"visit-" + std::to_string(all.size() + 1)};
        visit.started.unix_ms += static_cast<std::int64_t>(all.size()) * year_ms;
        all.push_back(builder.file());
    }
    return all;
}

MarkedRun filled_and_through(double fill, double through) {
    MarkedRun run;
    run.fill = fill;
    run.wet_through = through;
    return run;
}

std::vector<VisitFile> creeping() {
    std::vector<MarkedRun> runs;
    for (int year = 0; year < 6; ++year) {
        runs.push_back(filled_and_through(40.0, 110.0 + 10.0 * year));
    }
    return visits(runs);
}

/// Of the house as the last visit knew it.
std::vector<BankSeries> history(const std::vector<VisitFile>& files) {
    return history_of(files.back().house, files);
}

/// Work at the builder's only bank, on a day so many years after the first visit.
Maintenance done(Upkeep what, double years) {
    auto on = visits({filled_and_through(40.0, 110.0)}).front().visit.started;
    on.unix_ms += static_cast<std::int64_t>(years * static_cast<double>(year_ms));
    return {Id{"done"}, on, what, {Id{"bank-1"}}, {}, {}};
}

const BankSeries* series_of(const std::vector<BankSeries>& all, Followed what) {
    const auto found = std::ranges::find(all, what, &BankSeries::what);
    return found == all.end() ? nullptr : &*found;
}

TEST(HouseHistoryTest, a_series_holds_what_each_visit_measured_with_its_uncertainty) {
    const auto all = history(creeping());
    const auto* through = series_of(all, Followed::wet_through);
    ASSERT_NE(through, nullptr);
    ASSERT_EQ(through->values.size(), 6U);
    for (std::size_t year = 0; year < 6; ++year) {
        EXPECT_DOUBLE_EQ(through->values[year].value.si, 110.0 + 10.0 * static_cast<double>(year));
        ASSERT_TRUE(through->values[year].expanded);
        EXPECT_GT(through->values[year].expanded->si, 0.0);
    }
}

TEST(HouseHistoryTest, what_no_visit_measured_has_no_series) {
    const auto all = history(creeping());
    EXPECT_EQ(series_of(all, Followed::flow), nullptr);
    EXPECT_EQ(series_of(all, Followed::effectiveness), nullptr);
}

TEST(HouseHistoryTest, a_wet_through_time_that_creeps_up_is_a_rising_trend_of_so_much_a_year) {
    const auto all = history(creeping());
    const auto trend = trend_of(*series_of(all, Followed::wet_through));
    ASSERT_TRUE(trend) << trend.error().text();
    EXPECT_EQ(trend.value().verdict, TrendVerdict::rising);
    EXPECT_NEAR(trend.value().line->slope, 10.0, 1e-9);
    EXPECT_EQ(trend_of(*series_of(all, Followed::fill)).value().verdict, TrendVerdict::none_seen);
}

TEST(HouseHistoryTest, visits_come_in_any_order) {
    auto files = creeping();
    std::ranges::reverse(files);
    const auto all = history(files);
    EXPECT_DOUBLE_EQ(series_of(all, Followed::wet_through)->values.front().value.si, 110.0);
}

TEST(HouseHistoryTest, a_correction_stands_in_place_of_what_it_corrects) {
    auto files = creeping();
    VisitFile corrected = visits({filled_and_through(40.0, 300.0)}).front();
    corrected.visit.id = Id{"correction"};
    corrected.visit.started = files[2].visit.started;
    corrected.visit.replaces = files[2].visit.id;
    files.push_back(corrected);
    const auto all = history(files);
    const auto* through = series_of(all, Followed::wet_through);
    ASSERT_EQ(through->values.size(), 6U);
    EXPECT_EQ(through->values[2].visit, Id{"correction"});
    EXPECT_DOUBLE_EQ(through->values[2].value.si, 300.0);
}

TEST(HouseHistoryTest, a_bank_that_the_house_has_no_more_has_no_series) {
    auto files = creeping();
    files.back().house.banks.front().id = Id{"rebuilt"};
    files.back().visit.marks.clear();
    EXPECT_THAT(history(files), testing::IsEmpty());
}

TEST(HouseHistoryTest, a_flow_that_was_measured_is_followed) {
    auto files = creeping();
    for (auto& file : files) {
        file.visit.conditions.flows.push_back({file.house.pumps.front().id, typed<VolumeFlow>("3L/s")});
    }
    const auto all = history(files);
    const auto* flow = series_of(all, Followed::flow);
    ASSERT_NE(flow, nullptr);
    EXPECT_EQ(flow->values.size(), 6U);
    EXPECT_NEAR(flow->values.front().value.si, 0.003, 1e-12);
}

// Uncertainty of these readings is that of hand and seeing, about 2 s standard; a step of 40 s is twenty of
// them.
TEST(HouseHistoryTest, a_step_is_a_change_where_it_happened) {
    std::vector<MarkedRun> runs(4, filled_and_through(40.0, 110.0));
    runs.resize(7, filled_and_through(40.0, 150.0));
    const auto all = history(visits(runs));
    const auto change = change_of(*series_of(all, Followed::wet_through));
    ASSERT_TRUE(change && change.value());
    EXPECT_EQ(change.value()->began_at, 4U);
    EXPECT_TRUE(change.value()->up);
    EXPECT_FALSE(change_of(*series_of(all, Followed::fill)).value());
}

// Against their own mean of 140 s the first of 125, 140 and 155 s would be lower by many times its
// uncertainty.
TEST(HouseHistoryTest, the_values_that_others_are_held_against_are_no_change_themselves) {
    const auto climbing = history(visits({filled_and_through(40.0, 125.0), filled_and_through(40.0, 140.0),
                                          filled_and_through(40.0, 155.0), filled_and_through(40.0, 140.0)}));
    EXPECT_FALSE(change_of(*series_of(climbing, Followed::wet_through)).value());
}

TEST(HouseHistoryTest, three_visits_show_no_change_yet) {
    const auto all = history(visits(
        {filled_and_through(40.0, 110.0), filled_and_through(40.0, 110.0), filled_and_through(40.0, 300.0)}));
    EXPECT_FALSE(change_of(*series_of(all, Followed::wet_through)).value());
}

TEST(HouseHistoryTest, no_visit_is_no_history) {
    EXPECT_THAT(history_of(House{}, {}), testing::IsEmpty());
}

TEST(HouseHistoryTest, new_pads_split_what_the_pads_do_and_not_what_the_header_does) {
    auto files = creeping();
    files.back().house.maintenance = {done(Upkeep::new_pads, 3.5)};
    const auto all = history(files);
    for (const auto what : {Followed::wetting, Followed::wet_through}) {
        ASSERT_EQ(series_of(all, what)->since_last_event().size(), 2U);
        EXPECT_EQ(trend_of(*series_of(all, what)).value().verdict, TrendVerdict::too_few);
        EXPECT_EQ(series_of(all, what)->values.size(), 6U) << "what was before is still shown";
    }
    EXPECT_EQ(series_of(all, Followed::fill)->since_last_event().size(), 6U);
}

TEST(HouseHistoryTest, which_work_concerns_what) {
    const auto concerned = [](Upkeep what) {
        std::string names;
        for (const auto& [followed, name] : EnumNames<Followed>::all) {
            names += concerns(what, followed) ? std::string{name} + " " : "";
        }
        return names;
    };
    EXPECT_EQ(concerned(Upkeep::outlets_cleaned), "fill wetting wet-through flow effectiveness ");
    EXPECT_EQ(concerned(Upkeep::new_pads), "wetting wet-through effectiveness ");
    EXPECT_EQ(concerned(Upkeep::new_pump), "fill wetting wet-through flow ");
    EXPECT_EQ(concerned(Upkeep::other), "fill wetting wet-through flow effectiveness ");
}

TEST(HouseHistoryTest, the_last_of_several_events_counts_and_they_come_in_order) {
    auto files = creeping();
    files.back().house.maintenance = {done(Upkeep::new_pads, 4.5), done(Upkeep::outlets_cleaned, 1.5)};
    const auto all = history(files);
    const auto& through = *series_of(all, Followed::wet_through);
    ASSERT_EQ(through.events.size(), 2U);
    EXPECT_EQ(through.events.front().what, Upkeep::outlets_cleaned);
    EXPECT_EQ(through.since_last_event().size(), 1U);
    EXPECT_EQ(series_of(all, Followed::fill)->since_last_event().size(), 4U);
}

TEST(HouseHistoryTest, a_visit_of_the_same_day_comes_after_what_was_done) {
    auto files = creeping();
    auto cleaned = done(Upkeep::outlets_cleaned, 0.0);
    cleaned.on.unix_ms = files[4].visit.started.unix_ms - 3'600'000;
    files.back().house.maintenance = {cleaned};
    const auto all = history(files);
    const auto judged = series_of(all, Followed::fill)->since_last_event();
    ASSERT_EQ(judged.size(), 2U);
    EXPECT_EQ(judged.front().visit, files[4].visit.id);
}

TEST(HouseHistoryTest, work_at_another_bank_splits_nothing) {
    auto files = creeping();
    auto elsewhere = done(Upkeep::new_pads, 3.5);
    elsewhere.banks = {Id{"bank-9"}};
    files.back().house.maintenance = {elsewhere};
    const auto all = history(files);
    EXPECT_EQ(series_of(all, Followed::wet_through)->since_last_event().size(), 6U);
}

// The step of a test above, but with new pads just before it: what is new is no change of what was.
TEST(HouseHistoryTest, a_step_at_an_event_is_no_change) {
    std::vector<MarkedRun> runs(4, filled_and_through(40.0, 110.0));
    runs.resize(8, filled_and_through(40.0, 150.0));
    auto files = visits(runs);
    files.back().house.maintenance = {done(Upkeep::new_pads, 3.5)};
    const auto all = history(files);
    EXPECT_FALSE(change_of(*series_of(all, Followed::wet_through)).value());
}

TEST(HouseHistoryTest, a_moment_lies_so_many_years_behind_the_first_value) {
    const auto all = history(creeping());
    const auto& values = series_of(all, Followed::fill)->values;
    EXPECT_EQ(moment_at(values, 0.0), values.front().at);
    EXPECT_EQ(moment_at(values, 5.0), values.back().at);
}

}  // namespace
}  // namespace wetfront::test
