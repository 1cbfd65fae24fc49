// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include <random>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::ElementsAre;
using testing::Ge;
using testing::IsEmpty;
using testing::SizeIs;

std::vector<std::string> rules_of(const std::vector<Finding>& findings) {
    std::vector<std::string> rules;
    for (const auto& finding : findings) {
        rules.push_back(finding.rule);
    }
    return rules;
}

TEST(RulesTest, the_catalogue_has_these_rules_under_stable_ids) {
    std::vector<std::string> ids;
    for (const auto& rule : all_rules()) {
        ids.emplace_back(rule.id);
    }
    EXPECT_THAT(ids, ElementsAre("pump-never-rests", "base-below-fill", "ceiling-below-wet-through",
                                 "gap-outlasts-wet-pad", "pad-not-dry-at-start", "flow-disagrees-with-timing",
                                 "fans-mixed"));
}

TEST(RulesTest, a_rule_names_its_findings_after_itself_and_gives_remedy_and_source) {
    RuleCase house{4, 4};
    house.cycle("300s", "300s", 1);
    house.cycle("20s", "300s", 2);
    house.cycle("100s", "300s", 3);
    house.found(3).on_time_ceiling = typed<Duration>("120s");
    house.cycle("100s", "900s", 4);
    for (int bank = 1; bank <= 4; ++bank) {
        house.timed(bank).fill = RuleCase::reading(45.0, 2.0);
        house.timed(bank).wet_through = RuleCase::reading(150.0, 5.0);
        house.timed(bank).dry_out = RuleCase::reading(600.0, 60.0);
    }
    Reading short_one;
    short_one.kind = TimingKind::wet_through;
    short_one.bank = Id{"bank-1"};
    short_one.value = seconds(90.0);
    short_one.not_used = NotUsed::pads_not_dry;
    house.timings.readings = {short_one};
    house.timed(1).fans_mixed = true;
    auto& disagreeing = house.advised(1).banks.at(0);
    disagreeing.share_from_timings = 0.1;
    disagreeing.share_from_flow = 0.2;
    disagreeing.shares_disagree = true;
    for (const auto& rule : all_rules()) {
        const auto findings = house.findings(rule.check);
        ASSERT_THAT(findings, SizeIs(Ge(1U))) << rule.id;
        for (const auto& finding : findings) {
            EXPECT_EQ(finding.rule, rule.id);
            EXPECT_FALSE(finding.message.empty());
            EXPECT_FALSE(finding.remedy.empty());
            EXPECT_FALSE(finding.source.empty());
            EXPECT_FALSE(finding.values.empty());
            for (const auto& text : {english(finding.message), english(finding.remedy)}) {
                EXPECT_THAT(text, testing::Not(testing::ContainsRegex("%[1-9]")));
                EXPECT_EQ(text.back(), '.') << text;
            }
        }
    }
}

TEST(RulesTest, findings_come_worst_first_then_by_rule_then_by_house) {
    VisitBuilder visit{4, 2};
    visit.run(1, {.fill = 45.0, .wet_through = 90.0, .pads = PadsAtStart::not_dry});
    for (int bank = 1; bank <= 4; ++bank) {
        visit.run(bank, {.fill = 45.0, .wet_through = 150.0, .dry_out = 1200.0});
    }
    visit.found(2).base_on_time = typed<Duration>("30s");
    visit.found(2).period = typed<Duration>("300s");
    visit.found(1).base_on_time = typed<Duration>("300s");
    visit.found(1).period = typed<Duration>("300s");
    const auto timings = timings_of(visit.file());
    const auto findings = check(visit.file(), timings, {}, WhichSettings::found);
    EXPECT_THAT(rules_of(findings), ElementsAre("base-below-fill", "base-below-fill", "pump-never-rests",
                                                "pad-not-dry-at-start"));
    EXPECT_EQ(findings.at(0).bank, Id{"bank-3"});
    EXPECT_EQ(findings.at(1).bank, Id{"bank-4"});
    EXPECT_EQ(findings.at(2).timer, Id{"timer-1"});
}

TEST(RulesTest, found_and_left_are_judged_apart) {
    VisitBuilder visit;
    visit.found().base_on_time = typed<Duration>("300s");
    visit.found().period = typed<Duration>("300s");
    visit.left().base_on_time = typed<Duration>("120s");
    visit.left().period = typed<Duration>("300s");
    EXPECT_THAT(check(visit.file(), {}, {}, WhichSettings::found), SizeIs(1));
    EXPECT_THAT(check(visit.file(), {}, {}, WhichSettings::left), IsEmpty());
}

TEST(RulesTest, an_empty_visit_has_no_findings) {
    EXPECT_THAT(check({}, {}, {}, WhichSettings::found), IsEmpty());
}

TEST(RulesTest, settings_of_a_timer_that_the_house_does_not_have_are_not_judged) {
    RuleCase house;
    house.cycle("300s", "300s");
    house.found().timer = Id{"timer-elsewhere"};
    EXPECT_THAT(house.findings(pump_never_rests), IsEmpty());
}

// Advice and rules must not contradict each other: what is advised gets at most notes.
TEST(RulesTest, advised_settings_get_neither_fault_nor_waste) {
    std::mt19937 random{20260701};
    const auto between = [&](double least, double most) {
        return least + (most - least) * static_cast<double>(random()) / 4294967296.0;
    };
    int cycled = 0;
    int continuous = 0;
    for (int house = 0; house < 300; ++house) {
        const auto kind = house % 2 == 0 ? TimerKind::trimmed : TimerKind::fixed_interval;
        VisitBuilder visit{1 + house % 4, 1, kind};
        visit.both_weathers();
        for (int bank = 1; bank <= 1 + house % 4; ++bank) {
            const double fill = between(15.0, 120.0);
            const bool wet_start = house % 5 == 4;
            if (wet_start) {
                visit.run(bank, {.fill = fill,
                                 .wet_through = fill + 100.0,
                                 .pads = PadsAtStart::not_dry,
                                 .stands_for = between(60.0, 300.0)});
                visit.run(
                    bank,
                    {.fill = fill, .wet_through = fill + between(5.0, 60.0), .pads = PadsAtStart::dripping});
            } else {
                visit.run(bank, {.fill = fill,
                                 .wet_through = fill + between(20.0, 240.0),
                                 .dry_out = between(300.0, 2400.0)});
            }
        }
        const auto timings = timings_of(visit.file());
        const auto advice = advise(visit.file());
        visit.file().visit.left = {as_settings(advice.timers.at(0))};
        (advice.timers.at(0).cycled ? cycled : continuous) += 1;
        for (const auto& finding : check(visit.file(), timings, advice, WhichSettings::left)) {
            EXPECT_EQ(finding.severity, Severity::note)
                << "house " << house << ": " << finding.rule << ": " << english(finding.message);
        }
    }
    EXPECT_GT(cycled, 50);
    EXPECT_GT(continuous, 50);
}

}  // namespace
}  // namespace wetfront::test
