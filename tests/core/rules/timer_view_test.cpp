// SPDX-License-Identifier: Apache-2.0
#include "rules/timer_view.h"

#include <gmock/gmock.h>

#include "cycle/template_fit.h"
#include "rule_case.h"
#include "rules/entered_timings.h"
#include "rules/heat_rules.h"
#include "rules/setting_range_rules.h"
#include "rules/single_settings.h"
#include "rules/trim_rules.h"
#include "rules/water_need.h"

// What remedies say to enter: as the timer's controller counts, at a step that it holds.
namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

using Check = std::vector<Finding> (*)(const RuleInputs&);

std::string remedy(RuleCase& house, Check rule) {
    const auto findings = house.findings(rule);
    EXPECT_THAT(findings, SizeIs(1));
    return findings.empty() ? "no finding" : english(findings.front().remedy);
}

/// A plain trimmed controller holds on-times in steps of 5 s from 0 and a rinse in steps of 1 min.
SettingTemplate plain(CountsFrom counts_from) {
    auto described = generic_template(TimerKind::trimmed);
    described.counts_from = counts_from;
    return described;
}

/// One bank that fills in 45 s, on a controller that counts from a full header.
RuleCase from_full_header(const char* base, const char* period = "300s") {
    RuleCase house;
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    choose_controller(house.builder.timer(1), plain(CountsFrom::full_header));
    house.cycle(base, period);
    return house;
}

/// The same for a second bank that fills in 60 s and a first one that fills in 30 s.
RuleCase with_two_fills(const char* base) {
    RuleCase house{2};
    house.timed(1).fill = RuleCase::reading(30.0, 2.0);
    house.timed(2).fill = RuleCase::reading(60.0, 2.0);
    choose_controller(house.builder.timer(1), plain(CountsFrom::full_header));
    house.cycle(base, "300s");
    return house;
}

/// A cycle of 83 s in 300 s with a ceiling of 163 s as the controller of that house holds it.
void advise_on_controller(RuleCase& house) {
    house.advise_cycle(83.0, 300.0);
    house.advised().cycle.push_back({Setting::on_time_ceiling, any(seconds(163.0)), {}});
    const auto& timer = house.builder.timer(1);
    house.advised().fit = fit_to_template(*timer.controller, house.advised(), house.advice.margins,
                                          measured_fill(house.house(), house.timings, timer));
}

// Of the 83 s 45 s fill the header: 38 s, held as 40 s, a run of 85 s. The pump rests 215 s in 300 s.
TEST(RemedyTest, what_is_advised_is_what_the_sheet_says_to_enter) {
    auto house = from_full_header("255s");
    advise_on_controller(house);
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("a cycle of 85 s in 5 min cools the same with 43 min"));
    EXPECT_EQ(english(findings[0].remedy),
              "Set the base on-time to 40 s, the on-time ceiling to 115 s and the period to 5 min.");
    house.cycle("20s", "150s");
    EXPECT_EQ(remedy(house, period_below_usual),
              "Set the on-time to 40 s and the period to 5 min, as advised.");
    EXPECT_EQ(in_seconds(settings_to_enter(house.advised()).base_on_time->value()), 40.0);
}

TEST(RemedyTest, what_is_advised_is_at_a_step_of_a_controller_that_counts_from_pump_start) {
    RuleCase house;
    choose_controller(house.builder.timer(1), plain(CountsFrom::pump_start));
    house.cycle("20s", "150s");
    advise_on_controller(house);
    EXPECT_EQ(remedy(house, period_below_usual),
              "Set the on-time to 85 s and the period to 5 min, as advised.");
    house.found().period = typed<Duration>("5h");
    EXPECT_THAT(remedy(house, setting_out_of_range), HasSubstr("set it to 5 min, as advised"));
    house.cycle("5h", "300s");
    EXPECT_THAT(remedy(house, setting_out_of_range), HasSubstr("set it to 85 s, as advised"));
}

TEST(RemedyTest, what_the_controller_cannot_hold_is_not_advised) {
    RuleCase house;
    auto described = plain(CountsFrom::pump_start);
    for (auto& setting : described.settings) {
        if (setting.setting == TemplateKey::base_on_time) {
            setting.most = 80.0;
        }
    }
    choose_controller(house.builder.timer(1), described);
    house.cycle("20s", "150s");
    advise_on_controller(house);
    EXPECT_EQ(remedy(house, period_below_usual), "Lengthen the period to between 5 min and 10 min.");
}

// Told a fill of 10 s, the controller makes 20 s a run of 30 s. 45 + 2 s less those 10 s are 37 s.
TEST(RemedyTest, a_run_above_the_fill_time) {
    auto house = from_full_header("20s");
    house.found().entered_fill = typed<Duration>("10s");
    EXPECT_THAT(remedy(house, base_below_fill), HasSubstr("Raise the on-time above 40 s;"));
    house.found().base_on_time = typed<Duration>("36s");
    EXPECT_EQ(remedy(house, base_below_fill), "Set at least 40 s, or repeat the reading.");
    advise_on_controller(house);
    house.found().base_on_time = typed<Duration>("20s");
    EXPECT_EQ(remedy(house, base_below_fill), "Set the on-time to 40 s in the advised period of 5 min.");
}

// 105 / 1050 of what is supplied evaporates: 45 + 1.25 x 30 = 82.5 s in 300 s, 37.5 s of them on a full
// header.
TEST(RemedyTest, a_run_that_brings_what_the_pads_need) {
    auto house = from_full_header("20s");
    auto& asked = house.advised().banks.at(0).question.emplace();
    asked.fill = seconds(45.0);
    asked.start = DryStart{seconds(150.0), seconds(1050.0)};
    asked.uncertainty = seconds(0.0);
    EXPECT_EQ(remedy(house, base_below_need), "Raise the on-time to 40 s in this period.");
}

// 600 s without rain may last 300 s: 900 + 45 - 300 = 645 s of run, 600 s of them on a full header.
TEST(RemedyTest, a_run_that_ends_late_enough_for_the_pad_to_stay_wet) {
    auto house = from_full_header("20s", "900s");
    house.timed(1).dry_out = RuleCase::reading(600.0, 10.0);
    EXPECT_EQ(remedy(house, gap_outlasts_wet_pad),
              "Set the on-time to at least 10 min in this period, or shorten the period.");
}

// 150 + 6 s of run are 111 s on a full header; a rinse counts from pump start, in whole minutes.
TEST(RemedyTest, a_ceiling_that_wets_a_dry_pad_through) {
    auto house = from_full_header("40s");
    house.trims_to("100s");
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    EXPECT_EQ(remedy(house, ceiling_below_wet_through),
              "Set a morning rinse of at least 180 s, and raise the ceiling to 115 s too.");
    house.trims_to("106s");
    EXPECT_EQ(remedy(house, ceiling_below_wet_through), "Set at least 115 s, or repeat the reading.");
    advise_on_controller(house);
    house.trims_to("100s");
    EXPECT_EQ(remedy(house, ceiling_below_wet_through),
              "Set a morning rinse of at least 180 s and the on-time ceiling to 115 s, as advised.");
}

TEST(RemedyTest, a_fixed_timer_whose_controller_rinses_is_not_rinsed_by_hand) {
    RuleCase house{1, 1, TimerKind::fixed_interval};
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.timed(1).wet_through = RuleCase::reading(150.0, 6.0);
    house.cycle("60s", "300s");
    EXPECT_THAT(remedy(house, ceiling_below_wet_through), HasSubstr("by hand for 156 s"));
    auto described = generic_template(TimerKind::fixed_interval);
    described.settings.push_back({TemplateKey::rinse_length, "Rinse", "s", 10.0, 0.0, 600.0, ""});
    choose_controller(house.builder.timer(1), described);
    EXPECT_EQ(remedy(house, ceiling_below_wet_through),
              "Set a morning rinse of at least 160 s, and the advised on-time and period.");
    house.found().rinse_length = typed<Duration>("95s");
    EXPECT_THAT(remedy(house, setting_off_resolution), HasSubstr("100 s is the next longer"));
}

TEST(RemedyTest, an_on_time_that_lasts_the_whole_period) {
    auto house = from_full_header("200s");
    house.found().continuous_intended = true;
    EXPECT_THAT(remedy(house, rests_against_intent), HasSubstr("Set the on-time to 255 s, so that"));
    house.cycle("255s", "300s");
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
    EXPECT_EQ(remedy(house, pump_never_rests), "Nothing to change.");
}

TEST(RemedyTest, whether_the_pump_rests_is_told_once_whichever_header_fills_first) {
    auto house = with_two_fills("240s");
    house.found().continuous_intended = true;
    EXPECT_THAT(house.findings(rests_against_intent), IsEmpty());
    const auto findings = house.findings(pump_never_rests);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("A run of 5 min fills the whole period of 5 min"));
    EXPECT_EQ(value_in(findings[0], "base_on_time"), 300.0);
}

// The runs behind them, 130 s and 140 s, lie the other way round: the longest fill goes to the ceiling.
TEST(RemedyTest, base_and_ceiling_are_compared_as_they_stand_on_the_controller) {
    auto house = with_two_fills("100s");
    house.found().on_time_ceiling = typed<Duration>("80s");
    const auto findings = house.findings(ceiling_below_base);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("ceiling of 80 s is below the base of 100 s"));
    EXPECT_EQ(english(findings[0].remedy), "Raise the ceiling to the base, 100 s, or above.");
    house.found().on_time_ceiling = typed<Duration>("100s");
    EXPECT_THAT(house.findings(ceiling_below_base), IsEmpty());
}

// From 100 s to 160 s on the controller, whose runs are 130 s and 220 s.
TEST(RemedyTest, trim_rows_climb_through_what_stands_on_the_controller) {
    auto house = with_two_fills("100s");
    house.trims_to("160s", "60s");
    const auto findings = house.findings(trim_in_one_step);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(value_in(findings[0], "base_to_ceiling"), 60.0);
    EXPECT_EQ(english(findings[0].remedy), "Take steps of about 15 s.");
}

TEST(RemedyTest, a_shown_on_time_is_compared_with_what_stands_on_the_controller) {
    auto house = with_two_fills("100s");
    house.found().shown_on_time = typed<Duration>("105s");
    EXPECT_THAT(house.findings(shown_on_time_differs), IsEmpty()) << "within a step of 5 s";
    house.found().shown_on_time = typed<Duration>("125s");
    const auto findings = house.findings(shown_on_time_differs);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_THAT(english(findings[0].message), HasSubstr("allow no more than 100 s: it runs 25 s longer"));
    house.found().shown_on_time = typed<Duration>("160s");
    for (const auto& cause : causes_of(house.findings(shown_on_time_differs).at(0))) {
        EXPECT_THAT(cause, Not(HasSubstr("full header"))) << "it is described so";
    }
}

TEST(RemedyTest, what_a_rinse_and_what_a_controller_is_told_go_to_its_own_steps) {
    RuleCase house;
    auto described = plain(CountsFrom::pump_start);
    described.settings.push_back({TemplateKey::entered_fill, "Fill", "s", 10.0, 0.0, 300.0, ""});
    choose_controller(house.builder.timer(1), described);
    house.timed(1).fill = RuleCase::reading(45.0, 2.0);
    house.found().entered_fill = typed<Duration>("20s");
    EXPECT_EQ(remedy(house, entered_fill_differs), "Enter 50 s, the reading and its uncertainty.");
}

TEST(RemedyTest, no_finding_adds_how_on_times_count_to_a_remedy_without_one) {
    auto house = from_full_header("255s");
    house.timed(1).wet_through = RuleCase::reading(320.0, 6.0);
    house.found().shown_on_time = typed<Duration>("6h");
    house.found().on_time_ceiling = typed<Duration>("61s");
    const auto all = check(house.builder.file(), house.timings, house.advice, WhichSettings::found);
    EXPECT_THAT(all, SizeIs(testing::Ge(4)));
    for (const auto& finding : all) {
        EXPECT_THAT(english(finding.remedy), Not(HasSubstr("less."))) << finding.rule;
        if (finding.rule == "setting-off-resolution") {
            EXPECT_EQ(english(finding.remedy),
                      "Read both again at the timer; to set it, 65 s is the next longer it can hold.");
        }
    }
}

}  // namespace
}  // namespace wetfront::test
