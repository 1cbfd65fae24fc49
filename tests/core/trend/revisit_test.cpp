// SPDX-License-Identifier: Apache-2.0
#include "trend/revisit.h"

#include <gtest/gtest.h>

#include "support/visit_builder.h"

namespace wetfront {
namespace {

const WallTime first_of_july = parse_iso8601("2026-07-01T10:00:00-05:00", "test").value();

std::string day_of(std::optional<Severity> worst_left, bool worsening) {
    return local_date(revisit_after(first_of_july, worst_left, worsening).due);
}

TEST(RevisitTest, a_house_in_order_is_due_after_a_year) {
    EXPECT_EQ(day_of({}, false), "2027-07-01");
    EXPECT_EQ(day_of(Severity::note, false), "2027-07-01");
    EXPECT_EQ(day_of(Severity::waste, false), "2027-07-01");
}

TEST(RevisitTest, a_trend_to_the_worse_halves_the_year) {
    EXPECT_EQ(day_of({}, true), "2026-12-30");
}

TEST(RevisitTest, what_was_left_in_fault_or_harm_comes_before_any_trend) {
    for (const auto severity : {Severity::fault, Severity::harm}) {
        for (const bool worsening : {false, true}) {
            EXPECT_EQ(day_of(severity, worsening), "2026-07-31");
        }
    }
}

TEST(RevisitTest, each_date_says_why) {
    EXPECT_NE(revisit_after(first_of_july, Severity::harm, false).why,
              revisit_after(first_of_july, {}, true).why);
    EXPECT_NE(revisit_after(first_of_july, {}, true).why, revisit_after(first_of_july, {}, false).why);
}

/// One visit a year, each with that wet-through time.
std::vector<VisitFile> visited_yearly(const std::vector<double>& wet_through) {
    std::vector<VisitFile> visits;
    for (std::size_t i = 0; i < wet_through.size(); ++i) {
        test::VisitBuilder visit;
        visit.run(1, {.fill = 40.0, .wet_through = wet_through[i]});
        auto& file = visits.emplace_back(visit.file());
        file.visit.id = Id{"visit-" + std::to_string(i + 1)};
        file.visit.started.unix_ms += static_cast<std::int64_t>(i) * 365 * 86'400'000;
    }
    return visits;
}

bool gets_worse_with(const std::vector<double>& wet_through) {
    const auto visits = visited_yearly(wet_through);
    return is_worsening(test::VisitBuilder{}.file().house, visits);
}

TEST(RevisitTest, wet_through_that_creeps_up_over_six_visits_is_a_trend_to_the_worse) {
    EXPECT_TRUE(gets_worse_with({110, 120, 131, 140, 152, 160}));
}

TEST(RevisitTest, wet_through_that_stays_or_falls_is_none) {
    EXPECT_FALSE(gets_worse_with({110, 112, 109, 111, 110, 111}));
    EXPECT_FALSE(gets_worse_with({160, 152, 140, 131, 120, 110}));
    EXPECT_FALSE(gets_worse_with({110, 160}));
    EXPECT_FALSE(gets_worse_with({}));
}

}  // namespace
}  // namespace wetfront
