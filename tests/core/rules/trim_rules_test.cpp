// SPDX-License-Identifier: Apache-2.0
#include "rules/trim_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TrimRow row(const char* above, const char* change) {
    return {typed<TemperatureDifference>(above), typed<Duration>(change)};
}

RuleCase trimmed(std::vector<TrimRow> rows) {
    RuleCase house;
    house.cycle("90s", "300s");
    house.found().on_time_ceiling = typed<Duration>("150s");
    house.found().trim_rows = std::move(rows);
    return house;
}

using Check = std::vector<Finding> (*)(const RuleInputs&);

TEST(TrimRowsOutOfOrderTest, rows_must_rise_one_above_the_other) {
    EXPECT_THAT(trimmed({row("1K", "5s"), row("1.1K", "10s")}).findings(trim_rows_out_of_order), IsEmpty());
    for (const char* second : {"1K", "0.9K"}) {
        const auto findings = trimmed({row("1K", "5s"), row(second, "10s")}).findings(trim_rows_out_of_order);
        ASSERT_THAT(findings, SizeIs(1)) << second;
        EXPECT_EQ(findings[0].severity, Severity::fault);
        EXPECT_THAT(english(findings[0].message), HasSubstr("Trim row 2 at"));
    }
}

TEST(TrimRowsOutOfOrderTest, rows_without_degrees_are_not_compared) {
    auto house = trimmed({row("2K", "5s"), row("1K", "10s")});
    house.found().trim_rows[1].above_target.reset();
    EXPECT_THAT(house.findings(trim_rows_out_of_order), IsEmpty());
}

TEST(TrimAgainstHeatTest, a_hotter_row_must_not_give_less) {
    EXPECT_THAT(trimmed({row("1K", "10s"), row("2K", "10s")}).findings(trim_against_heat), IsEmpty());
    const auto findings = trimmed({row("1K", "10s"), row("2K", "4s")}).findings(trim_against_heat);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(value_in(findings[0], "less_at_a_review"), 6.0);
}

TEST(TrimAgainstHeatTest, rows_out_of_order_or_half_set_are_not_compared) {
    EXPECT_THAT(trimmed({row("2K", "10s"), row("1K", "4s")}).findings(trim_against_heat), IsEmpty());
    auto house = trimmed({row("1K", "10s"), row("2K", "4s")});
    house.found().trim_rows[0].change.reset();
    EXPECT_THAT(house.findings(trim_against_heat), IsEmpty());
}

// 90 s less 5 s: after nine reviews 45 s are left, which just fill; after the tenth 40 s. Every 10 min: 100
// min.
TEST(TrimShortensWithoutEndTest, it_tells_after_how_many_reviews_the_header_is_no_longer_filled) {
    auto house = trimmed({row("1K", "-5s"), row("2K", "15s")});
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.found().review_interval = typed<Duration>("10min");
    const auto findings = house.findings(trim_shortens_without_end);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_THAT(english(findings[0].message), HasSubstr("after 10 of them, in 100 min"));
    EXPECT_THAT(english(findings[0].message), HasSubstr("shorter than the 45 s"));
}

TEST(TrimShortensWithoutEndTest, without_a_fill_reading_it_ends_at_nothing) {
    const auto findings = trimmed({row("1K", "-5s")}).findings(trim_shortens_without_end);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("nothing is left of it"));
}

TEST(TrimShortensWithoutEndTest, rows_that_add_or_change_nothing_are_harmless) {
    EXPECT_THAT(trimmed({row("1K", "0s"), row("2K", "15s")}).findings(trim_shortens_without_end), IsEmpty());
}

TEST(TrimShortensWithoutEndTest, one_row_that_is_too_much_by_itself_is_for_base_below_fill) {
    auto house = trimmed({row("1K", "-46s")});
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    EXPECT_THAT(house.findings(trim_shortens_without_end), IsEmpty());
    EXPECT_THAT(house.findings(base_below_fill), SizeIs(1));
    house.found().trim_rows = {row("1K", "-45s")};
    EXPECT_THAT(house.findings(trim_shortens_without_end), SizeIs(1));
}

// From 90 to 150 s in one go; quarters are 15 s. Twelve runs an hour: 12 min more.
TEST(TrimInOneStepTest, a_step_as_large_as_the_room_is_waste) {
    EXPECT_THAT(trimmed({row("1K", "59s")}).findings(trim_in_one_step), IsEmpty());
    const auto findings = trimmed({row("1K", "60s")}).findings(trim_in_one_step);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "more_pumping_per_hour"), 720.0, 1e-9);
    EXPECT_EQ(english(findings[0].remedy), "Take steps of about 15 s.");
}

TEST(TrimInOneStepTest, a_timer_that_has_no_finer_step_is_not_blamed) {
    auto house = trimmed({row("1K", "60s")});
    house.builder.timer(1).resolution = typed<Duration>("60s");
    EXPECT_THAT(house.findings(trim_in_one_step), IsEmpty());
}

TEST(TrimInOneStepTest, a_step_as_large_as_the_advised_one_is_not_blamed) {
    auto house = trimmed({row("1K", "60s")});
    house.advise_cycle(90.0, 300.0);
    house.advised().cycle.push_back({Setting::trim_step, any(seconds(60.0)), {}});
    EXPECT_THAT(house.findings(trim_in_one_step), IsEmpty());
    house.advised().cycle.back().value = any(seconds(59.0));
    EXPECT_THAT(house.findings(trim_in_one_step), SizeIs(1));
}

TEST(TrimInOneStepTest, base_and_ceiling_above_it_are_needed) {
    auto house = trimmed({row("1K", "60s")});
    house.found().on_time_ceiling = typed<Duration>("90s");
    EXPECT_THAT(house.findings(trim_in_one_step), IsEmpty());
    house.found().on_time_ceiling.reset();
    EXPECT_THAT(house.findings(trim_in_one_step), IsEmpty());
}

TEST(TrimWithinDeadBandTest, a_row_below_half_a_kelvin_is_waste) {
    EXPECT_THAT(trimmed({row("0.5K", "15s")}).findings(trim_within_dead_band), IsEmpty());
    EXPECT_THAT(trimmed({row("0.9degF", "15s")}).findings(trim_within_dead_band), IsEmpty());
    const auto findings = trimmed({row("0.4K", "15s")}).findings(trim_within_dead_band);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_THAT(trimmed({row("0.4K", "0s")}).findings(trim_within_dead_band), IsEmpty());
    auto house = trimmed({row("0.4K", "15s")});
    house.found().trim_rows[0].above_target.reset();
    EXPECT_THAT(house.findings(trim_within_dead_band), IsEmpty());
}

// Four steps of 15 s from 90 to 150 s: 20 min at a review every 5 min.
TEST(ReviewBeforeAnswerTest, below_ten_minutes_it_is_waste_with_the_time_to_the_ceiling) {
    auto house = trimmed({row("1K", "15s")});
    house.found().review_interval = typed<Duration>("10min");
    EXPECT_THAT(house.findings(review_before_answer), IsEmpty());
    house.found().review_interval = typed<Duration>("5min");
    const auto findings = house.findings(review_before_answer);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::waste);
    EXPECT_NEAR(value_in(findings[0], "base_to_ceiling_in"), 1200.0, 1e-9);
    EXPECT_EQ(english(findings[0].remedy), "Review it every 10 min.");
    house.found().trim_rows = {row("1K", "0s")};
    EXPECT_THAT(house.findings(review_before_answer), IsEmpty());
}

TEST(ReviewOffPeriodTest, a_review_that_is_no_multiple_of_the_period_is_a_note) {
    auto house = trimmed({row("1K", "15s")});
    for (const char* fits : {"5min", "10min", "15min"}) {
        house.found().review_interval = typed<Duration>(fits);
        EXPECT_THAT(house.findings(review_off_period), IsEmpty()) << fits;
    }
    for (const char* off : {"150s", "12min"}) {
        house.found().review_interval = typed<Duration>(off);
        const auto findings = house.findings(review_off_period);
        ASSERT_THAT(findings, SizeIs(1)) << off;
        EXPECT_EQ(findings[0].severity, Severity::note);
    }
    EXPECT_EQ(english(house.findings(review_off_period).at(0).remedy), "Review it every 15 min.");
    house.found().period.reset();
    EXPECT_THAT(house.findings(review_off_period), IsEmpty());
}

TEST(TrimRulesTest, none_speaks_without_rows_or_review_on_another_timer_or_where_the_pump_never_rests) {
    const std::vector<TrimRow> bad{row("0.2K", "100s"), row("0.1K", "-10s"), row("3K", "-20s")};
    for (const Check check :
         {trim_rows_out_of_order, trim_against_heat, trim_shortens_without_end, trim_in_one_step,
          trim_within_dead_band, review_before_answer, review_off_period}) {
        auto house = trimmed(bad);
        house.found().review_interval = typed<Duration>("4min");
        EXPECT_THAT(house.findings(check), SizeIs(testing::Ge(1U)));
        house.cycle("300s", "300s");
        EXPECT_THAT(house.findings(check), IsEmpty());
        house.cycle("90s", "300s");
        house.builder.timer(1).kind = TimerKind::fixed_interval;
        EXPECT_THAT(house.findings(check), IsEmpty());
        house.builder.timer(1).kind = TimerKind::trimmed;
        house.found().trim_rows.clear();
        EXPECT_THAT(house.findings(check), IsEmpty());
    }
    auto no_review = trimmed({row("1K", "15s")});
    EXPECT_THAT(no_review.findings(review_before_answer), IsEmpty());
    EXPECT_THAT(no_review.findings(review_off_period), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
