// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include <algorithm>
#include <iterator>
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
    EXPECT_THAT(ids, testing::ElementsAreArray({"pump-never-rests",
                                                "base-below-fill",
                                                "ceiling-below-wet-through",
                                                "gap-outlasts-wet-pad",
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
                                                "pad-not-dry-at-start",
                                                "flow-disagrees-with-timing",
                                                "flow-methods-disagree",
                                                "flow-unsure",
                                                "fans-mixed"}));
}

// Houses in which, between them, every rule finds something.
RuleCase house_with_bad_settings() {
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
    house.conditions().bird_age_days = 40.0;
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    house.house().sensors = {{Id{"s"}, SensorKind::humidity, SensorPlace::outside}};
    for (int timer = 1; timer <= 4; ++timer) {
        house.found(timer).start_temperature = typed<Temperature>(timer % 2 == 0 ? "75degF" : "92degF");
        house.found(timer).humidity_cut_off = typed<Fraction>(timer % 2 == 0 ? "90%" : "40%");
    }
    house.house().fan_airflow = typed<VolumeFlow>("80m3/s");
    house.house().cross_section = typed<Area>("40m2");
    house.conditions().static_pressure = typed<PressureDifference>("70Pa");
    return house;
}

/// A header of 18 m, 50 mm, with outlets every 300 mm.
void describe(PadBank& bank, const char* outlets) {
    bank.header_bore = typed<Length>("50mm");
    bank.outlet_bore = typed<Length>(outlets);
    bank.outlet_spacing = typed<Length>("300mm");
}

RuleCase house_with_bad_headers() {
    RuleCase house{5, 5};
    describe(house.builder.bank(1), "5mm");  // does not fill
    house.flows("20L/min", 1);
    describe(house.builder.bank(2), "5mm");  // starves
    house.builder.bank(2).header_rise = typed<Length>("200mm");
    house.flows("20L/min", 2);
    describe(house.builder.bank(3), "3mm");  // uneven, clogged, slow
    house.builder.bank(3).header_bore = typed<Length>("25mm");
    house.flows("60L/min", 3);
    house.at(3).inlet_head = typed<Length>("10m");
    house.timed(3).fill = RuleCase::reading(200.0, 2.0);
    describe(house.builder.bank(4), "3mm");  // passes too much, fast
    house.flows("60L/min", 4);
    house.at(4).inlet_head = typed<Length>("100mm");
    house.timed(4).fill = RuleCase::reading(10.0, 1.0);
    house.timed(3).wetting = RuleCase::reading(400.0, 4.0);
    house.timed(5).wetting = RuleCase::reading(50.0, 4.0);  // takes up less
    house.flows("150L/min", 5);
    auto& unsure = house.conditions().flows.at(4);
    unsure.flow.reset();
    unsure.bucket_volume = typed<Volume>("12.5L");
    unsure.bucket_time = typed<Duration>("5s");
    auto& disagree = house.conditions().flows.at(3);
    disagree.bucket_volume = typed<Volume>("20L");
    disagree.bucket_time = typed<Duration>("40s");
    disagree.meter_volume = typed<Volume>("300L");
    disagree.meter_time = typed<Duration>("300s");
    return house;
}

RuleCase house_with_bad_air_and_sumps() {
    RuleCase house{4, 2};
    house.builder.both_weathers();
    for (int bank = 1; bank <= 4; ++bank) {
        house.builder.bank(bank).header_bore = typed<Length>("50mm");
        house.at(bank).behind_pad = typed<Temperature>("25degC");
        for (const char* speed : {"1.2m/s", "1.2m/s", "1.3m/s", "1.2m/s", "1.2m/s"}) {
            house.at(bank).face_points.push_back({typed<Velocity>(speed)});
        }
    }
    house.at(1).behind_pad = typed<Temperature>("29degC");    // cools less
    house.at(2).behind_pad = typed<Temperature>("22.6degC");  // "cools more"
    house.at(3).behind_pad = typed<Temperature>("25.6degC");  // less than bank 2
    house.at(3).pressure_drop = typed<PressureDifference>("30Pa");
    house.at(4).pressure_drop = typed<PressureDifference>("0Pa");
    house.at(2).face_points = {{typed<Velocity>("2.5m/s")}};
    house.at(1).face_points.at(0).speed = typed<Velocity>("3.5m/s");
    house.timed(1).wetting = RuleCase::reading(200.0, 4.0);
    house.timed(2).wetting = RuleCase::reading(100.0, 4.0);
    house.timed(3).fill = RuleCase::reading(90.0, 4.0);
    house.timed(4).fill = RuleCase::reading(40.0, 4.0);
    house.builder.bank(3).thickness = typed<Length>("100mm");
    house.builder.bank(4).thickness = typed<Length>("100mm");
    house.flows("100L/min", 1);
    house.flows("60L/min", 2);
    house.pump(1).sump_volume = typed<Volume>("50L");
    house.pump(1).make_up_flow = typed<VolumeFlow>("1L/min");
    house.pump(1).sump_area = typed<Area>("0.5m2");
    house.pump(1).sump_freeboard = typed<Length>("20mm");
    house.pump(2).sump_volume = typed<Volume>("200L");
    house.pump(2).make_up_flow = typed<VolumeFlow>("100L/min");
    return house;
}

RuleCase house_with_water(const char* sump, double sump_ph) {
    RuleCase house;
    house.conditions().conductivity = typed<Conductivity>("500uS/cm");
    house.conditions().sump_conductivity = typed<Conductivity>(sump);
    house.conditions().calcium_hardness = typed<Concentration>("110mg/L");
    house.conditions().alkalinity = typed<Concentration>("120mg/L");
    house.conditions().sump_temperature = typed<Temperature>("22degC");
    house.conditions().sump_ph = sump_ph;
    return house;
}

void expect_whole(const Finding& finding) {
    EXPECT_FALSE(finding.message.empty()) << finding.rule;
    EXPECT_FALSE(finding.remedy.empty()) << finding.rule;
    EXPECT_FALSE(finding.source.empty()) << finding.rule;
    // A pH is no quantity; its number stands in the message.
    EXPECT_EQ(finding.values.empty(), finding.rule == "ph-out-of-range") << finding.rule;
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
    std::vector<RuleCase> houses{house_with_bad_settings(),          house_with_bad_headers(),
                                 house_with_bad_air_and_sumps(),     house_with_water("750uS/cm", 5.5),
                                 house_with_water("2500uS/cm", 7.0), house_with_water("1200uS/cm", 9.0)};
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
            if (finding.timer.empty()) {
                continue;  // about the banks, which here are as unlike as chance makes them
            }
            EXPECT_EQ(finding.severity, Severity::note)
                << "house " << house << ": " << finding.rule << ": " << english(finding.message);
        }
    }
    EXPECT_GT(cycled, 50);
    EXPECT_GT(continuous, 50);
}

}  // namespace
}  // namespace wetfront::test
