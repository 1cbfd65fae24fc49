// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <random>

#include "bad_houses.h"
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
    EXPECT_THAT(ids, testing::ElementsAreArray({"limits-unusable",
                                                "pads-off-in-extreme-heat",
                                                "pad-hours-end-in-heat",
                                                "pad-hours-begin-in-heat",
                                                "cut-off-stops-pads-in-heat",
                                                "cut-off-below-own-humidity",
                                                "pads-chill-young-birds",
                                                "rinse-on-young-birds",
                                                "pump-never-runs",
                                                "pump-never-rests",
                                                "base-below-fill",
                                                "base-below-need",
                                                "drying-outruns-supply",
                                                "ceiling-below-wet-through",
                                                "gap-outlasts-wet-pad",
                                                "ceiling-below-base",
                                                "trim-shortens-without-end",
                                                "trim-rows-out-of-order",
                                                "trim-against-heat",
                                                "lowest-temperature-above-start",
                                                "shown-on-time-differs",
                                                "entered-fill-differs",
                                                "entered-wet-through-differs",
                                                "pad-hours-into-night",
                                                "pad-hours-begin-early",
                                                "start-below-target",
                                                "rinse-below-wet-through",
                                                "rinse-outside-pad-hours",
                                                "rinse-before-heat",
                                                "rest-too-short",
                                                "period-below-usual",
                                                "period-above-usual",
                                                "trim-in-one-step",
                                                "trim-within-dead-band",
                                                "review-before-answer",
                                                "review-off-period",
                                                "cut-off-by-unfit-sensor",
                                                "pad-hours-empty",
                                                "setting-out-of-range",
                                                "setting-not-on-controller",
                                                "setting-off-resolution",
                                                "rests-against-intent",
                                                "start-temperature-high",
                                                "start-temperature-low",
                                                "humidity-cut-off-useless",
                                                "humidity-cut-off-early",
                                                "pump-cannot-fill-header",
                                                "header-starves-outlets",
                                                "circulation-below-minimum",
                                                "make-up-too-small",
                                                "sump-runs-dry",
                                                "pad-cools-less-than-expected",
                                                "bank-cools-less",
                                                "outlets-clogged",
                                                "fill-slower-than-expected",
                                                "bank-wets-slower",
                                                "bank-fills-slower",
                                                "bank-gets-less-water",
                                                "sump-runs-over",
                                                "cycles-below-two",
                                                "bleed-too-small",
                                                "water-scales-pads",
                                                "bank-takes-up-less",
                                                "fill-faster-than-expected",
                                                "outlets-pass-too-much",
                                                "header-uneven",
                                                "flow-below-ten-evaporations",
                                                "reserve-short",
                                                "ph-out-of-range",
                                                "pad-cools-more-than-expected",
                                                "face-velocity-above-design",
                                                "face-velocity-uneven",
                                                "face-points-few",
                                                "pad-pressure-drop-high",
                                                "pad-pressure-drop-low",
                                                "house-static-pressure-high",
                                                "air-speed-below-500",
                                                "on-times-without-fill",
                                                "pad-not-dry-at-start",
                                                "flow-disagrees-with-timing",
                                                "flow-methods-disagree",
                                                "flow-unsure",
                                                "fans-mixed",
                                                "limits-less-safe"}));
}

void expect_whole(const Finding& finding) {
    EXPECT_FALSE(finding.message.empty()) << finding.rule;
    EXPECT_FALSE(finding.remedy.empty()) << finding.rule;
    EXPECT_FALSE(finding.source.empty()) << finding.rule;
    // A pH is no quantity; its number stands in the message, as what is wrong with limits does.
    EXPECT_EQ(finding.values.empty(), finding.rule == "ph-out-of-range" ||
                                          finding.rule == "limits-unusable" ||
                                          finding.rule == "on-times-without-fill")
        << finding.rule;
    std::vector<Message> texts{finding.message, finding.remedy};
    for (const auto& cause : finding.causes) {
        texts.push_back(cause.cause);
        texts.push_back(cause.next_check);
    }
    for (const auto& each : texts) {
        for (const auto system : {UnitSystem::si, UnitSystem::us}) {
            const auto text = in_english(each, system);
            EXPECT_THAT(text, testing::Not(testing::ContainsRegex("%[1-9]"))) << finding.rule;
            EXPECT_THAT(text, testing::EndsWith(".")) << finding.rule;
        }
    }
}

TEST(RulesTest, a_rule_names_its_findings_after_itself_and_gives_remedy_and_source) {
    std::vector<RuleCase> houses{house_with_bad_settings(),
                                 house_with_bad_headers(),
                                 house_with_bad_air_and_sumps(),
                                 house_with_water("750uS/cm", 5.5),
                                 house_with_water("2500uS/cm", 7.0),
                                 house_with_water("1200uS/cm", 9.0),
                                 house_with_contradicting_settings(10.0),
                                 house_with_contradicting_settings(40.0),
                                 house_with_unfit_sensor(true),
                                 house_with_unfit_sensor(false),
                                 house_with_chosen_limits(),
                                 house_with_unusual_settings(),
                                 house_with_a_value_beyond_its_controller(),
                                 house_without_the_fill_that_its_controller_counts_from()};
    for (const auto& rule : all_rules()) {
        std::vector<Finding> findings;
        for (auto& house : houses) {
            std::ranges::move(house.findings(rule.check), std::back_inserter(findings));
        }
        EXPECT_THAT(findings, SizeIs(Ge(1U))) << rule.id;
        for (const auto& finding : findings) {
            EXPECT_EQ(finding.rule, rule.id);
            expect_whole(finding);
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

/// Houses as chance makes them, timed in all ways.
class AnyHouse {
public:
    VisitBuilder next(int house) {
        const auto kind = house % 2 == 0 ? TimerKind::trimmed : TimerKind::fixed_interval;
        VisitBuilder visit{1 + house % 4, 1, kind};
        visit.both_weathers();
        if (house % 3 != 0) {
            visit.file().farm.design_daily_range =
                Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(between(0.0, 20.0)));
            visit.file().farm.design_dry_bulb = Entered<Temperature>::of(celsius(between(30.0, 44.0)));
            visit.file().house.sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
            visit.file().visit.conditions.bird_age_days = between(1.0, 50.0);
        }
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
        return visit;
    }
    double between(double least, double most) {
        return least + (most - least) * static_cast<double>(random_()) / 4294967296.0;
    }

private:
    std::mt19937 random_{20260701};
};

/// What is left gets at most notes; those on banks aside, which here are as unlike as chance makes them.
void expect_notes_at_most(const VisitFile& file, const Advice& advice, const std::string& where) {
    for (const auto& finding : check(file, timings_of(file), advice, WhichSettings::left)) {
        if (!finding.timer.empty()) {
            EXPECT_EQ(finding.severity, Severity::note)
                << where << ": " << finding.rule << ": " << english(finding.message);
        }
    }
}

// Advice and rules must not contradict each other: what is advised gets at most notes.
TEST(RulesTest, advised_settings_get_neither_fault_nor_waste) {
    AnyHouse any_house;
    int cycled = 0;
    int continuous = 0;
    for (int house = 0; house < 300; ++house) {
        auto visit = any_house.next(house);
        const auto advice = advise(visit.file());
        visit.file().visit.left = {as_settings(advice.timers.at(0))};
        (advice.timers.at(0).cycled ? cycled : continuous) += 1;
        expect_notes_at_most(visit.file(), advice, "house " + std::to_string(house));
    }
    EXPECT_GT(cycled, 50);
    EXPECT_GT(continuous, 50);
}

// The same of what a controller then holds, wherever it counts from, if it can hold what is advised.
TEST(RulesTest, advised_settings_as_a_controller_holds_them_get_neither_fault_nor_waste) {
    AnyHouse any_house;
    int judged = 0;
    for (int house = 0; house < 300; ++house) {
        auto visit = any_house.next(house);
        auto described = generic_template(visit.timer(1).kind);
        described.counts_from = house % 4 < 2 ? CountsFrom::pump_start : CountsFrom::full_header;
        for (auto& setting : described.settings) {
            if (kind_of(setting.setting) == Kind::duration && !is_time_of_day(setting.setting) &&
                setting.unit == "s" && setting.setting != TemplateKey::trim_change) {
                setting.resolution = std::round(any_house.between(1.0, 8.0));
                setting.least = std::round(any_house.between(0.0, 6.0));
            }
        }
        choose_controller(visit.timer(1), described);
        const auto advice = advise(visit.file());
        const auto& fit = *advice.timers.at(0).fit;
        if (!std::ranges::all_of(fit.lines, [](const auto& line) { return line.problems.empty(); })) {
            continue;
        }
        ++judged;
        visit.file().visit.left = {settings_to_enter(advice.timers.at(0))};
        expect_notes_at_most(visit.file(), advice, "house " + std::to_string(house));
    }
    EXPECT_GT(judged, 100);
}

}  // namespace
}  // namespace wetfront::test
