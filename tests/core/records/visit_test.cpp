// SPDX-License-Identifier: Apache-2.0
#include "records/visit.h"

#include <gtest/gtest.h>

#include "made_visits.h"

namespace wetfront::test {
namespace {

Mark mark(const char* id, MarkKind kind, double seconds_since_boot) {
    Mark made;
    made.id = Id{id};
    made.kind = kind;
    made.pump = Id{"pump"};
    made.bank = kind == MarkKind::pump_start || kind == MarkKind::pump_stop ? Id{} : Id{"bank"};
    made.at = {"boot", static_cast<std::int64_t>(seconds_since_boot * 1e9)};
    made.timed_by = TimedBy::event_stamp;
    made.pads = PadsAtStart::dry;
    return made;
}

TEST(VisitTest, only_a_line_that_is_done_counts_as_ticked) {
    Visit visit;
    visit.ticks = {{"a", true, ""}, {"b", false, "no ladder"}};
    EXPECT_TRUE(visit.ticked("a"));
    EXPECT_FALSE(visit.ticked("b"));
    EXPECT_FALSE(visit.ticked("c"));
}

TEST(VisitTest, settings_and_measurements_are_found_by_what_they_belong_to) {
    Visit visit;
    visit.found.resize(2);
    visit.found[1].timer = Id{"t2"};
    visit.conditions.flows.resize(2);
    visit.conditions.flows[1].pump = Id{"p2"};
    visit.conditions.at_banks.resize(2);
    visit.conditions.at_banks[1].bank = Id{"b2"};
    EXPECT_EQ(visit.found_of(Id{"t2"}), &visit.found[1]);
    EXPECT_EQ(visit.left_of(Id{"t2"}), nullptr);
    EXPECT_EQ(visit.measured_flow(Id{"p2"}), &visit.conditions.flows[1]);
    EXPECT_EQ(visit.measured_flow(Id{"p1"}), nullptr);
    EXPECT_EQ(visit.conditions_at(Id{"b2"}), &visit.conditions.at_banks[1]);
    EXPECT_EQ(visit.conditions_at(Id{"b1"}), nullptr);
}

TEST(VisitTest, timings_come_from_the_marks_of_the_visit_with_the_pump_of_each_bank) {
    VisitFile file;
    file.house.banks.resize(1);
    file.house.banks[0].id = Id{"bank"};
    file.house.banks[0].pump = Id{"pump"};
    file.visit.marks = {mark("m1", MarkKind::pump_start, 100.0),
                        mark("m2", MarkKind::water_at_far_end, 145.0)};
    const auto timings = timings_of(file);
    ASSERT_NE(timings.of(Id{"bank"}), nullptr);
    ASSERT_TRUE(timings.of(Id{"bank"})->fill);
    EXPECT_NEAR(in_seconds(timings.of(Id{"bank"})->fill->mean), 45.0, 1e-9);
    file.visit.set_aside = {{Id{"m2"}, "looked away"}};
    EXPECT_FALSE(timings_of(file).of(Id{"bank"})->fill);
}

}  // namespace
}  // namespace wetfront::test
