// SPDX-License-Identifier: Apache-2.0
#include "rules/entered_timings.h"

#include <gmock/gmock.h>

#include "rule_case.h"
#include "rules/single_settings.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

RuleCase with_fill_entered(const char* entered) {
    RuleCase house{2};
    house.timed(1).fill = RuleCase::reading(30.0, 2.0);
    house.timed(2).fill = RuleCase::reading(45.0, 3.0);
    house.found().entered_fill = typed<Duration>(entered);
    return house;
}

// The slowest bank takes 45 s, give or take 3 s; 30 % more are 58.5 s.
TEST(EnteredFillDiffersTest, it_is_compared_with_the_slowest_bank) {
    for (const char* agrees : {"42s", "45s", "58.5s"}) {
        EXPECT_THAT(with_fill_entered(agrees).findings(entered_fill_differs), IsEmpty()) << agrees;
    }
    const auto low = with_fill_entered("41s").findings(entered_fill_differs);
    ASSERT_THAT(low, SizeIs(1));
    EXPECT_EQ(low[0].severity, Severity::fault);
    EXPECT_EQ(low[0].bank, Id{"bank-2"});
    EXPECT_THAT(english(low[0].message), HasSubstr("ends 4 s too soon"));
    EXPECT_EQ(english(low[0].remedy), "Enter 48 s, the reading and its uncertainty.");
    const auto high = with_fill_entered("59s").findings(entered_fill_differs);
    ASSERT_THAT(high, SizeIs(1));
    EXPECT_EQ(high[0].severity, Severity::waste);
    EXPECT_THAT(english(high[0].message), HasSubstr("pumps 14 s too long"));
}

TEST(EnteredFillDiffersTest, nothing_without_entry_or_reading_or_on_demand) {
    auto no_entry = with_fill_entered("10s");
    no_entry.found().entered_fill.reset();
    EXPECT_THAT(no_entry.findings(entered_fill_differs), IsEmpty());
    auto no_reading = with_fill_entered("10s");
    no_reading.timed(1).fill.reset();
    no_reading.timed(2).fill.reset();
    EXPECT_THAT(no_reading.findings(entered_fill_differs), IsEmpty());
    auto on_demand = with_fill_entered("10s");
    on_demand.builder.timer(1).kind = TimerKind::on_demand;
    EXPECT_THAT(on_demand.findings(entered_fill_differs), IsEmpty());
}

TEST(EnteredWetThroughDiffersTest, it_is_compared_with_wet_through_and_not_with_fill) {
    RuleCase house;
    house.timed(1).fill = RuleCase::reading(45.0, 3.0);
    house.found().entered_wet_through = typed<Duration>("100s");
    EXPECT_THAT(house.findings(entered_wet_through_differs), IsEmpty());
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    const auto findings = house.findings(entered_wet_through_differs);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "entered-wet-through-differs");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    for (const char* agrees : {"144s", "195s"}) {
        house.found().entered_wet_through = typed<Duration>(agrees);
        EXPECT_THAT(house.findings(entered_wet_through_differs), IsEmpty()) << agrees;
    }
    house.found().entered_wet_through = typed<Duration>("196s");
    EXPECT_EQ(house.findings(entered_wet_through_differs).at(0).severity, Severity::waste);
}

RuleCase showing(const char* shown) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.found().shown_on_time = typed<Duration>(shown);
    return house;
}

TEST(ShownOnTimeDiffersTest, within_a_step_of_the_base_it_agrees) {
    for (const char* agrees : {"89s", "90s", "91s"}) {
        EXPECT_THAT(showing(agrees).findings(shown_on_time_differs), IsEmpty()) << agrees;
    }
    // Ten seconds in each of twelve runs an hour.
    const auto low = showing("80s").findings(shown_on_time_differs);
    ASSERT_THAT(low, SizeIs(1));
    EXPECT_EQ(low[0].severity, Severity::fault);
    EXPECT_THAT(english(low[0].message), HasSubstr("10 s less in every run than is set, 120 s in an hour."));
    EXPECT_EQ(showing("92s").findings(shown_on_time_differs).at(0).severity, Severity::fault);
    auto coarse = showing("95s");
    coarse.builder.timer(1).resolution = typed<Duration>("5s");
    EXPECT_THAT(coarse.findings(shown_on_time_differs), IsEmpty());
}

TEST(ShownOnTimeDiffersTest, trimming_may_have_brought_it_up_to_the_ceiling_or_down) {
    auto house = showing("150s");
    house.trims_to("150s");
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
    house.found().shown_on_time = typed<Duration>("152s");
    EXPECT_THAT(house.findings(shown_on_time_differs), SizeIs(1));
    house.found().shown_on_time = typed<Duration>("40s");
    EXPECT_THAT(house.findings(shown_on_time_differs), SizeIs(1));
    house.found().trim_rows.push_back({typed<TemperatureDifference>("2K"), typed<Duration>("-5s")});
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
}

TEST(ShownOnTimeDiffersTest, a_difference_as_long_as_the_fill_points_at_how_it_counts) {
    auto house = showing("135s");
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    EXPECT_THAT(causes_of(house.findings(shown_on_time_differs).at(0)).at(0), HasSubstr("full header"));
    house.found().shown_on_time = typed<Duration>("170s");
    EXPECT_THAT(causes_of(house.findings(shown_on_time_differs).at(0)).at(0), HasSubstr("Another setting"));
}

TEST(ShownOnTimeDiffersTest, nothing_without_it_without_base_or_without_the_ceiling_it_could_climb_to) {
    auto house = showing("200s");
    house.found().shown_on_time.reset();
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
    house = showing("200s");
    house.found().base_on_time.reset();
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
    house = showing("200s");
    house.trims_to("150s");
    house.found().on_time_ceiling.reset();
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
}

/// One bank that fills in 45 s, on a controller that counts from a full header in steps of 5 s.
RuleCase counted_from_full_header() {
    RuleCase house;
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = CountsFrom::full_header;
    choose_controller(house.builder.timer(1), described);
    return house;
}

TEST(OnTimesWithoutFillTest, runs_that_are_not_known_are_said_and_not_judged) {
    auto house = counted_from_full_header();
    house.cycle("20s", "300s");
    EXPECT_THAT(house.findings(on_times_without_fill), IsEmpty());
    house.timed(1).fill.reset();
    const auto findings = house.findings(on_times_without_fill);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Time the fill"));
    house.cycle("300s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
    house.found().entered_fill = typed<Duration>("45s");
    EXPECT_THAT(house.findings(on_times_without_fill), IsEmpty()) << "it was told the fill";
    EXPECT_THAT(house.findings(pump_never_rests), SizeIs(1));
}

TEST(OnTimesWithoutFillTest, a_timer_that_counts_from_pump_start_needs_no_fill) {
    RuleCase house;
    house.cycle("20s", "300s");
    EXPECT_THAT(house.findings(on_times_without_fill), IsEmpty());
}

TEST(FromFullHeaderTest, an_on_time_shorter_than_the_fill_is_a_run_that_fills_the_header) {
    auto house = counted_from_full_header();
    house.cycle("20s", "300s");
    EXPECT_THAT(house.findings(base_below_fill), IsEmpty()) << "a run of 65 s";
    forget_controller(house.builder.timer(1));
    EXPECT_THAT(house.findings(base_below_fill), SizeIs(1)) << "a run of 20 s";
}

TEST(FromFullHeaderTest, an_on_time_that_ends_with_the_period_once_the_header_is_full_never_rests) {
    auto house = counted_from_full_header();
    house.cycle("255s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), SizeIs(1)) << "255 s and 45 s of filling";
    house.cycle("250s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(FromFullHeaderTest, of_two_banks_the_slower_decides_whether_the_pump_rests) {
    RuleCase house{2};
    house.timed(1).fill = RuleCase::reading(30.0, 2.0);
    house.timed(2).fill = RuleCase::reading(60.0, 2.0);
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = CountsFrom::full_header;
    choose_controller(house.builder.timer(1), described);
    house.cycle("240s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), SizeIs(1)) << "240 s and 60 s";
    house.cycle("235s", "300s");
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

TEST(FromFullHeaderTest, shown_and_set_on_times_count_alike) {
    auto house = counted_from_full_header();
    house.cycle("60s", "300s");
    house.found().shown_on_time = typed<Duration>("60s");
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty());
    house.found().shown_on_time = typed<Duration>("105s");
    EXPECT_THAT(house.findings(shown_on_time_differs), SizeIs(1)) << "the whole run is shown";
}

TEST(FromFullHeaderTest, steps_are_those_of_what_stands_on_the_controller) {
    auto house = counted_from_full_header();
    house.timed(1).fill = RuleCase::reading(43.0, 2.0);
    house.cycle("60s", "300s");
    EXPECT_THAT(house.findings(setting_off_resolution), IsEmpty()) << "103 s is no step of 5 s";
    house.cycle("61s", "300s");
    EXPECT_THAT(house.findings(setting_off_resolution), SizeIs(1));
}

}  // namespace
}  // namespace wetfront::test
