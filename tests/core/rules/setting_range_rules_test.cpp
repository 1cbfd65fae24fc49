// SPDX-License-Identifier: Apache-2.0
#include "rules/setting_range_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TEST(SettingOutOfRangeTest, a_period_is_flagged_above_four_hours_and_not_at_them) {
    RuleCase house;
    house.found().period = typed<Duration>("4h");
    EXPECT_THAT(house.findings(setting_out_of_range), IsEmpty());
    house.found().period = typed<Duration>("5h");
    const auto findings = house.findings(setting_out_of_range);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::fault);
    EXPECT_EQ(findings[0].timer, Id{"timer-1"});
    EXPECT_THAT(english(findings[0].message),
                HasSubstr("Period of 5 h is outside what is usual, 1 s to 4 h"));
    EXPECT_THAT(english(findings[0].remedy), HasSubstr("Read it again"));
    EXPECT_EQ(value_in(findings[0], "period"), 18000.0);
}

TEST(SettingOutOfRangeTest, what_keeps_pads_off_in_heat_is_harm_and_its_other_end_is_not) {
    const auto severity = [](auto set) {
        RuleCase house;
        set(house.found());
        return house.findings(setting_out_of_range).at(0).severity;
    };
    EXPECT_EQ(severity([](auto& f) { f.start_temperature = typed<Temperature>("51degC"); }), Severity::harm);
    EXPECT_EQ(severity([](auto& f) { f.start_temperature = typed<Temperature>("-1degC"); }), Severity::fault);
    EXPECT_EQ(severity([](auto& f) { f.lowest_house_temperature = typed<Temperature>("46degC"); }),
              Severity::harm);
    EXPECT_EQ(severity([](auto& f) { f.lowest_house_temperature = typed<Temperature>("-21degC"); }),
              Severity::fault);
    EXPECT_EQ(severity([](auto& f) { f.humidity_cut_off = typed<Fraction>("-1%"); }), Severity::harm);
    EXPECT_EQ(severity([](auto& f) { f.humidity_cut_off = typed<Fraction>("150%"); }), Severity::fault);
}

TEST(SettingOutOfRangeTest, what_the_controller_only_shows_is_a_note) {
    RuleCase house;
    house.found().shown_on_time = typed<Duration>("5h");
    EXPECT_EQ(house.findings(setting_out_of_range).at(0).severity, Severity::note);
}

TEST(SettingOutOfRangeTest, a_trim_row_is_named_by_its_number) {
    RuleCase house;
    house.trims_to("120s", "-601s");
    EXPECT_THAT(english(house.findings(setting_out_of_range).at(0).message),
                HasSubstr("Trim row 1: On-time changes by of -601 s"));
}

TEST(SettingOutOfRangeTest, the_remedy_is_the_advised_value_where_there_is_one) {
    RuleCase house;
    house.cycle("100s", "0s");
    house.advise_cycle(85.0, 300.0);
    EXPECT_EQ(english(house.findings(setting_out_of_range).at(0).remedy),
              "Read it again at the controller; if it stands there, set it to 5 min, as advised.");
}

TEST(SettingOutOfRangeTest, nothing_entered_is_nothing_found) {
    RuleCase house;
    house.found().continuous_intended = false;
    EXPECT_THAT(house.findings(setting_out_of_range), IsEmpty());
}

// The pump would rest for -4 h 58 min: no other rule makes a sentence of that.
TEST(SettingOutOfRangeTest, no_other_rule_judges_by_such_a_value) {
    VisitBuilder visit;
    visit.found().period = typed<Duration>("-300s");
    visit.found().base_on_time = typed<Duration>("120s");
    const auto findings = check(visit.file(), timings_of(visit.file()), {}, WhichSettings::found);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "setting-out-of-range");
}

class SettingNotOnControllerTest : public testing::Test {
protected:
    SettingNotOnControllerTest() {
        auto described = generic_template(TimerKind::trimmed);
        for (auto& setting : described.settings) {
            if (setting.setting == TemplateKey::base_on_time) {
                setting = {TemplateKey::base_on_time, "Short run", "s", 15.0, 30.0, 300.0, ""};
            }
        }
        choose_controller(house.builder.timer(1), described);
    }
    [[nodiscard]] std::vector<Finding> with_base(const char* on_time) {
        house.found().base_on_time = typed<Duration>(on_time);
        return house.findings(setting_not_on_controller);
    }

    RuleCase house;
};

TEST_F(SettingNotOnControllerTest, what_lies_from_the_first_step_to_the_last_is_not_named) {
    for (const auto* on_time : {"30s", "80s", "300s", "5min"}) {
        EXPECT_THAT(with_base(on_time), IsEmpty()) << on_time;
    }
}

TEST_F(SettingNotOnControllerTest, what_lies_beyond_them_is_noted_with_the_firms_label) {
    for (const auto* on_time : {"15s", "29s", "301s", "315s"}) {
        const auto findings = with_base(on_time);
        ASSERT_THAT(findings, SizeIs(1)) << on_time;
        EXPECT_EQ(findings[0].severity, Severity::note);
        EXPECT_THAT(english(findings[0].message), HasSubstr("Base on-time (Short run) of"));
        EXPECT_THAT(english(findings[0].message), HasSubstr("it holds 30 s to 5 min"));
    }
}

TEST_F(SettingNotOnControllerTest, without_a_template_nothing_is_said) {
    forget_controller(house.builder.timer(1));
    EXPECT_THAT(with_base("20s"), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
