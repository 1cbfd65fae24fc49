// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// On 100 s of 300 s with a fill of 40 s: the far end is unsupplied for 240 s.
RuleCase gap_of_240_s(TimerKind kind = TimerKind::trimmed) {
    RuleCase house{1, 1, kind};
    house.cycle("100s", "300s");
    house.timed(1).fill = RuleCase::reading(40.0, 2.0);
    return house;
}

TEST(GapOutlastsWetPadTest, a_gap_longer_than_the_dry_out_time_is_a_fault_with_the_dry_time) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(200.0, 10.0);
    const auto findings = house.findings(gap_outlasts_wet_pad);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "gap-outlasts-wet-pad");
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "gap"), 240.0, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "dry_per_period"), 40.0, 1e-9);
    EXPECT_EQ(english(findings[0].message),
              "The far end of Bank 1 is without water for 240 s in every period but stays wet for 200 s in "
              "the weather of "
              "the reading: it is dry for 40 s before water comes back, dries 12 times an hour, cools less "
              "and scales.");
}

struct Limit {
    double dry_out;
    double ratio;
    const char* severity;  ///< "" for no finding
};
std::ostream& operator<<(std::ostream& out, const Limit& limit) {
    return out << "dry-out " << limit.dry_out << " s, E_design/E_test " << limit.ratio;
}

class GapLimit : public testing::TestWithParam<Limit> {};

// U of the dry-out time is 10 s; a gap of 240 s. Worked by hand: fault where dry-out / ratio < 240; too close
// to call where (dry-out - 10) / ratio < 240; more than half of the dry-out where dry-out / ratio < 480.
INSTANTIATE_TEST_SUITE_P(both_sides, GapLimit,
                         testing::Values(Limit{239.9, 1.0, "fault"}, Limit{240.0, 1.0, "note"},
                                         Limit{249.9, 1.0, "note"}, Limit{250.0, 1.0, "note"},
                                         Limit{479.9, 1.0, "note"}, Limit{480.0, 1.0, ""},
                                         Limit{359.9, 1.5, "fault"}, Limit{360.0, 1.5, "note"},
                                         Limit{719.9, 1.5, "note"}, Limit{720.0, 1.5, ""},
                                         Limit{192.0, 0.8, "note"}, Limit{191.9, 0.8, "fault"}));

TEST_P(GapLimit, decides_the_severity) {
    const auto& limit = GetParam();
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(limit.dry_out, 10.0);
    house.advised().evaporation_ratio = limit.ratio;
    const auto findings = house.findings(gap_outlasts_wet_pad);
    EXPECT_EQ(findings.empty() ? "" : name_of(findings[0].severity), limit.severity);
}

TEST(GapOutlastsWetPadTest, near_the_limit_it_says_too_close_to_call_and_beyond_that_more_than_half) {
    auto house = gap_of_240_s();
    house.advised().evaporation_ratio = 1.0;
    house.timed(1).dry_out = RuleCase::reading(249.9, 10.0);
    EXPECT_THAT(english(house.findings(gap_outlasts_wet_pad).at(0).message), HasSubstr("too close to call"));
    house.timed(1).dry_out = RuleCase::reading(250.0, 10.0);
    EXPECT_THAT(english(house.findings(gap_outlasts_wet_pad).at(0).message),
                HasSubstr("without water for 240 s of the 250 s that it stays wet at the design hour"));
}

TEST(GapOutlastsWetPadTest, a_gap_beyond_what_a_wet_start_proved_is_a_note) {
    // Tested: 200 s off and 40 s of filling, together the gap of 240 s.
    auto house = gap_of_240_s();
    house.timed(1).wet_off = RuleCase::reading(200.0, 4.0);
    house.timed(1).wet_return = RuleCase::reading(70.0, 4.0);
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
    house.timed(1).wet_off = RuleCase::reading(199.0, 4.0);
    const auto findings = house.findings(gap_outlasts_wet_pad);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_THAT(english(findings[0].message), HasSubstr("not proven"));
}

TEST(GapOutlastsWetPadTest, a_wet_start_in_milder_weather_proves_less) {
    auto house = gap_of_240_s();
    house.timed(1).wet_off = RuleCase::reading(300.0, 4.0);
    house.timed(1).wet_return = RuleCase::reading(70.0, 4.0);
    house.advised().evaporation_ratio = 1.4;  // 340 s / 1.4 = 242.9 s
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
    house.advised().evaporation_ratio = 1.45;  // 234.5 s
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), SizeIs(1));
}

// 100 s less 30 s: unsupplied for 300 - 70 + 40 = 270 s.
TEST(GapOutlastsWetPadTest, the_shortest_run_of_the_trim_rows_makes_the_gap) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(260.0, 5.0);
    ASSERT_EQ(house.findings(gap_outlasts_wet_pad).at(0).severity, Severity::note);
    house.found().trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("-30s")}};
    const auto findings = house.findings(gap_outlasts_wet_pad);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_NEAR(value_in(findings[0], "gap"), 270.0, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "dry_per_period"), 10.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("brought the run down to 70 s"));
}

// An on-time that fills the period rests all the same once a row has taken 240 s off it: 300 - 60 + 40 = 280.
TEST(GapOutlastsWetPadTest, a_base_without_rest_is_judged_where_a_row_brings_it_down) {
    auto house = gap_of_240_s();
    house.cycle("300s", "300s");
    house.timed(1).dry_out = RuleCase::reading(200.0, 5.0);
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
    house.found().trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("-240s")}};
    ASSERT_THAT(house.findings(gap_outlasts_wet_pad), SizeIs(1));
    EXPECT_NEAR(value_in(house.findings(gap_outlasts_wet_pad)[0], "gap"), 280.0, 1e-9);
}

TEST(GapOutlastsWetPadTest, milder_weather_never_stretches_what_a_wet_start_proved) {
    auto house = gap_of_240_s();
    house.timed(1).wet_off = RuleCase::reading(199.0, 4.0);
    house.timed(1).wet_return = RuleCase::reading(70.0, 4.0);
    house.advised().evaporation_ratio = 0.5;
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), SizeIs(1));
}

TEST(GapOutlastsWetPadTest, the_ratio_of_the_bank_itself_is_used) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(480.0, 10.0);
    house.advised().evaporation_ratio = 3.0;
    house.advised().banks.at(0).question =
        BankQuestion{seconds(40.0), seconds(1.0), DryStart{}, 1.0, {}, {}, 1.0, {}};
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
}

TEST(GapOutlastsWetPadTest, each_missing_input_silences_it) {
    auto complete = gap_of_240_s();
    complete.timed(1).dry_out = RuleCase::reading(100.0, 10.0);
    ASSERT_THAT(complete.findings(gap_outlasts_wet_pad), SizeIs(1));
    auto no_period = complete;
    no_period.found().period.reset();
    EXPECT_THAT(no_period.findings(gap_outlasts_wet_pad), IsEmpty());
    auto no_on_time = complete;
    no_on_time.found().base_on_time.reset();
    EXPECT_THAT(no_on_time.findings(gap_outlasts_wet_pad), IsEmpty());
    auto no_fill = complete;
    no_fill.timed(1).fill.reset();
    EXPECT_THAT(no_fill.findings(gap_outlasts_wet_pad), IsEmpty());
    auto no_dry_out = complete;
    no_dry_out.timed(1).dry_out.reset();
    EXPECT_THAT(no_dry_out.findings(gap_outlasts_wet_pad), IsEmpty());
    auto half_a_wet_start = no_dry_out;
    half_a_wet_start.timed(1).wet_off = RuleCase::reading(10.0, 1.0);
    EXPECT_THAT(half_a_wet_start.findings(gap_outlasts_wet_pad), IsEmpty());
}

TEST(GapOutlastsWetPadTest, a_pump_without_rest_leaves_no_gap) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(30.0, 3.0);
    house.cycle("300s", "300s");
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
}

TEST(GapOutlastsWetPadTest, a_run_below_the_fill_time_is_left_to_the_rule_on_filling) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(100.0, 10.0);
    house.cycle("39.9s", "300s");
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), IsEmpty());
    EXPECT_THAT(house.findings(base_below_fill), SizeIs(1));
    house.cycle("40s", "300s");
    EXPECT_THAT(house.findings(gap_outlasts_wet_pad), SizeIs(1));
}

TEST(GapOutlastsWetPadTest, a_fixed_interval_is_judged_and_a_timer_on_demand_is_not) {
    for (const auto kind : {TimerKind::fixed_interval, TimerKind::on_demand}) {
        auto house = gap_of_240_s(kind);
        house.timed(1).dry_out = RuleCase::reading(100.0, 10.0);
        EXPECT_THAT(house.findings(gap_outlasts_wet_pad), SizeIs(kind == TimerKind::on_demand ? 0 : 1));
    }
}

TEST(GapOutlastsWetPadTest, every_bank_that_dries_is_named) {
    RuleCase house{4};
    house.cycle("100s", "300s");
    for (int bank = 1; bank <= 4; ++bank) {
        house.timed(bank).fill = RuleCase::reading(40.0, 2.0);
        house.timed(bank).dry_out = RuleCase::reading(bank % 2 == 0 ? 100.0 : 900.0, 10.0);
    }
    const auto findings = house.findings(gap_outlasts_wet_pad);
    ASSERT_THAT(findings, SizeIs(2));
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_EQ(findings[1].bank, Id{"bank-4"});
}

// Without advice, the on-time that leaves half of the dry-out time: 300 + 40 - 0.5 x 230 = 225 s.
TEST(GapOutlastsWetPadTest, the_remedy_is_the_advice_or_the_on_time_that_leaves_half_the_dry_out) {
    auto house = gap_of_240_s();
    house.timed(1).dry_out = RuleCase::reading(230.0, 10.0);
    EXPECT_EQ(english(house.findings(gap_outlasts_wet_pad).at(0).remedy),
              "Set the on-time to at least 225 s in this period, or shorten the period.");
    house.timed(1).dry_out = RuleCase::reading(60.0, 3.0);  // 310 s do not fit into 300 s
    EXPECT_EQ(english(house.findings(gap_outlasts_wet_pad).at(0).remedy), "Shorten the period.");
    house.advise_cycle(200.0, 300.0);
    EXPECT_EQ(english(house.findings(gap_outlasts_wet_pad).at(0).remedy),
              "Set the on-time to 200 s and the period to 5 min, as advised.");
}

Reading wet_through(const char* bank, double value, std::optional<NotUsed> why) {
    Reading reading;
    reading.kind = TimingKind::wet_through;
    reading.bank = Id{bank};
    reading.value = seconds(value);
    reading.not_used = why;
    return reading;
}

TEST(PadNotDryAtStartTest, readings_from_a_pad_that_was_not_dry_are_named) {
    RuleCase house{2};
    house.timings.readings = {wet_through("bank-2", 95.0, NotUsed::pads_not_dry),
                              wet_through("bank-1", 150.0, {}),
                              wet_through("bank-2", 101.0, NotUsed::pads_not_dry)};
    const auto findings = house.findings(pad_not_dry_at_start);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "pad-not-dry-at-start");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_EQ(findings[0].bank, Id{"bank-2"});
    EXPECT_TRUE(findings[0].timer.empty());
    EXPECT_EQ(english(findings[0].message),
              "The pad of Bank 2 was not dry when wet-through was read (95 s, 101 s): such a reading is too "
              "short, it is "
              "kept and not used.");
    EXPECT_THAT(findings[0].values, SizeIs(2));
}

TEST(PadNotDryAtStartTest, readings_from_dry_or_left_out_for_another_reason_are_not) {
    RuleCase house;
    auto fill = wet_through("bank-1", 45.0, NotUsed::pads_not_dry);
    fill.kind = TimingKind::fill;
    house.timings.readings = {wet_through("bank-1", 150.0, {}),
                              wet_through("bank-1", 90.0, NotUsed::set_aside), fill};
    EXPECT_THAT(house.findings(pad_not_dry_at_start), IsEmpty());
}

TEST(PadNotDryAtStartTest, without_readings_or_settings_it_does_not_fail) {
    RuleCase house;
    EXPECT_THAT(house.findings(pad_not_dry_at_start), IsEmpty());
}

TEST(PadNotDryAtStartTest, the_remedy_depends_on_what_else_was_read) {
    RuleCase house;
    house.timings.readings = {wet_through("bank-1", 95.0, NotUsed::pads_not_dry)};
    EXPECT_THAT(english(house.findings(pad_not_dry_at_start).at(0).remedy), HasSubstr("Dry the pad"));
    house.timed(1).wet_return = RuleCase::reading(70.0, 4.0);
    EXPECT_THAT(english(house.findings(pad_not_dry_at_start).at(0).remedy),
                HasSubstr("the wet start serves"));
    house.timed(1).wet_through = RuleCase::reading(150.0, 4.0);
    EXPECT_THAT(english(house.findings(pad_not_dry_at_start).at(0).remedy), HasSubstr("(3 of them)"));
}

TEST(PadNotDryAtStartTest, the_mark_at_pump_start_decides) {
    for (const auto pads : {PadsAtStart::dry, PadsAtStart::not_dry, PadsAtStart::dripping}) {
        VisitBuilder visit;
        visit.run(1, {.fill = 45.0, .wet_through = 150.0, .stands_for = 200.0});
        visit.run(1, {.fill = 45.0, .wet_through = 90.0, .pads = pads});
        const auto timings = timings_of(visit.file());
        const auto findings = pad_not_dry_at_start({visit.file(), timings, {}, {}});
        EXPECT_THAT(findings, SizeIs(pads == PadsAtStart::not_dry ? 1 : 0)) << enum_name(pads);
    }
}

}  // namespace
}  // namespace wetfront::test
