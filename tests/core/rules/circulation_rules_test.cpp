// SPDX-License-Identifier: Apache-2.0
#include "rules/circulation_rules.h"

#include <gmock/gmock.h>

#include "rule_case.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

// 0.75 US gpm/ft for 6 in pads (Univ. of Georgia, Poultry Housing Tips 14(4), 2002) is 9.3145 L/min for each
// metre, 167.66 L/min for 18 m.
struct Limit {
    double flow;      ///< L/min
    double expanded;  ///< L/min; 0: not known
    const char* severity;
};
std::ostream& operator<<(std::ostream& out, const Limit& limit) {
    return out << limit.flow << " ± " << limit.expanded << " L/min";
}

RuleCase stated_flow(double flow, double expanded, FlowFrom from = FlowFrom::drawdown) {
    RuleCase house;
    auto& pump = house.advice.water.pumps.emplace_back();
    pump.pump = Id{"pump-1"};
    FlowEvidence evidence;
    evidence.flow = from_si<VolumeFlow>(flow / 60000.0);
    evidence.from = from;
    if (expanded > 0.0) {
        evidence.expanded = from_si<VolumeFlow>(expanded / 60000.0);
    }
    pump.flows.push_back(evidence);
    return house;
}

class CirculationLimit : public testing::TestWithParam<Limit> {};
INSTANTIATE_TEST_SUITE_P(both_sides, CirculationLimit,
                         testing::Values(Limit{167.7, 3.0, ""}, Limit{167.6, 3.0, "note"},
                                         Limit{164.7, 3.0, "note"}, Limit{164.6, 3.0, "fault"},
                                         Limit{167.7, 0.0, ""}, Limit{159.7, 0.0, "note"},
                                         Limit{159.6, 0.0, "fault"}));

TEST_P(CirculationLimit, decides_the_severity) {
    auto house = stated_flow(GetParam().flow, GetParam().expanded);
    const auto findings = house.findings_as_stated(circulation_below_minimum);
    EXPECT_EQ(findings.empty() ? "" : name_of(findings[0].severity), GetParam().severity);
}

TEST(CirculationRulesTest, too_little_water_is_told_with_what_is_missing) {
    auto house = stated_flow(120.0, 3.0);
    const auto findings = house.findings_as_stated(circulation_below_minimum);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "circulation-below-minimum");
    EXPECT_EQ(findings[0].bank, Id{"bank-1"});
    EXPECT_NEAR(value_in(findings[0], "missing_flow") * 60000.0, 47.66, 0.01);
    EXPECT_THAT(english(findings[0].message), HasSubstr("48 L/min is missing"));
    EXPECT_EQ(causes_of(findings[0]).front(), "Clogged outlets.");
}

TEST(CirculationRulesTest, a_flow_that_was_worked_out_makes_a_note) {
    auto house = stated_flow(120.0, 0.0, FlowFrom::pump_curve);
    EXPECT_EQ(house.findings_as_stated(circulation_below_minimum).at(0).severity, Severity::note);
}

// The head read at the header tells clogged outlets from a weak pump.
TEST(CirculationRulesTest, the_head_at_the_header_ranks_the_causes) {
    auto house = stated_flow(120.0, 3.0);
    auto& water = house.advice.water.banks.emplace_back();
    water.bank = Id{"bank-1"};
    water.flow = from_si<VolumeFlow>(2e-3);
    water.flow_measured = true;
    water.plain.emplace().inlet_head = from_si<Length>(1.0);
    water.recovered.emplace().inlet_head = from_si<Length>(1.0);
    house.at(1).inlet_head = typed<Length>("1m");
    const auto weak = causes_of(house.findings_as_stated(circulation_below_minimum).at(0));
    EXPECT_THAT(weak.front(), HasSubstr("filter"));
    EXPECT_EQ(weak.back(), "Clogged outlets.");
    house.at(1).inlet_head = typed<Length>("2m");
    EXPECT_EQ(causes_of(house.findings_as_stated(circulation_below_minimum).at(0)).front(),
              "Clogged outlets.");
}

TEST(CirculationRulesTest, a_number_is_published_for_one_thickness_only) {
    auto thin = stated_flow(50.0, 1.0);
    thin.builder.bank(1).thickness = typed<Length>("100mm");
    EXPECT_THAT(thin.findings_as_stated(circulation_below_minimum), IsEmpty());
    auto unknown = stated_flow(50.0, 1.0);
    unknown.builder.bank(1).thickness.reset();
    EXPECT_THAT(unknown.findings_as_stated(circulation_below_minimum), IsEmpty());
}

TEST(CirculationRulesTest, without_flow_or_a_length_nothing_is_found) {
    auto no_length = stated_flow(50.0, 1.0);
    no_length.builder.bank(1).length.reset();
    EXPECT_THAT(no_length.findings_as_stated(circulation_below_minimum), IsEmpty());
    RuleCase no_flow;
    EXPECT_THAT(no_flow.findings(circulation_below_minimum), IsEmpty());
}

// A pump with two banks: one flow over both lengths.
TEST(CirculationRulesTest, all_pads_of_a_pump_count_together) {
    RuleCase house{2};
    house.flows("330L/min");  // 9.17 L/min for each metre of 36 m: within 5 % of the limit
    const auto findings = house.findings(circulation_below_minimum);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_TRUE(findings[0].bank.empty());
}

RuleCase ten_times(double times) {
    RuleCase house;
    house.builder.both_weathers();
    house.conditions().face_velocity = typed<Velocity>("1.5m/s");
    house.builder.bank(1).thickness = typed<Length>("100mm");
    const auto weather = weather_of(house.builder.file());
    const auto evaporated =
        evaporation_of(house.builder.file(), weather, *weather.design, house.builder.bank(1));
    house.conditions().flows.emplace_back().pump = Id{"pump-1"};
    house.conditions().flows.back().flow =
        Entered<VolumeFlow>::of(from_si<VolumeFlow>(times * in_si(evaporated.value()) / 1000.0));
    return house;
}

// A flow of unknown uncertainty counts as 5 % off: 10 / 1.05 = 9.524.
TEST(CirculationRulesTest, less_than_ten_times_the_evaporation_is_a_note) {
    EXPECT_THAT(ten_times(9.53).findings(flow_below_ten_evaporations), IsEmpty());
    const auto findings = ten_times(9.52).findings(flow_below_ten_evaporations);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "flow-below-ten-evaporations");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "wanted_flow") / value_in(findings[0], "evaporated"), 10.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("9.5 times"));
}

TEST(CirculationRulesTest, ten_evaporations_need_design_weather_and_air_speed) {
    auto no_weather = ten_times(5.0);
    no_weather.builder.file().farm.design_wet_bulb.reset();
    EXPECT_THAT(no_weather.findings(flow_below_ten_evaporations), IsEmpty());
    auto no_speed = ten_times(5.0);
    no_speed.conditions().face_velocity.reset();
    EXPECT_THAT(no_speed.findings(flow_below_ten_evaporations), IsEmpty());
}

TEST(CirculationRulesTest, a_pump_below_the_minimum_is_told_so_once) {
    auto house = ten_times(2.0);
    house.builder.bank(1).thickness = typed<Length>("150mm");
    ASSERT_EQ(house.findings(circulation_below_minimum).at(0).severity, Severity::fault);
    EXPECT_THAT(house.findings(flow_below_ten_evaporations), IsEmpty());
}

void add_flow(RuleCase& house, double flow, std::optional<double> expanded, FlowFrom from) {
    FlowEvidence evidence;
    evidence.flow = from_si<VolumeFlow>(flow / 60000.0);
    evidence.from = from;
    if (expanded) {
        evidence.expanded = from_si<VolumeFlow>(*expanded / 60000.0);
    }
    house.advice.water.pumps.at(0).flows.push_back(evidence);
}

// sqrt(3^2 + 4^2) = 5 L/min.
TEST(CirculationRulesTest, two_methods_apart_by_more_than_both_uncertainties_disagree) {
    auto agree = stated_flow(200.0, 3.0);
    add_flow(agree, 195.1, 4.0, FlowFrom::meter);
    EXPECT_THAT(agree.findings_as_stated(flow_methods_disagree), IsEmpty());
    auto house = stated_flow(200.0, 3.0);
    add_flow(house, 199.0, 4.0, FlowFrom::meter);
    add_flow(house, 194.9, 4.0, FlowFrom::catches);
    const auto findings = house.findings_as_stated(flow_methods_disagree);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "flow-methods-disagree");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_NEAR(value_in(findings[0], "difference") * 60000.0, 5.1, 1e-9);
    EXPECT_NEAR(value_in(findings[0], "limit") * 60000.0, 5.0, 1e-9);
    EXPECT_THAT(english(findings[0].message), HasSubstr("by sump drawdown but 195 L/min by catches"));
}

TEST(CirculationRulesTest, a_flow_of_unknown_uncertainty_or_worked_out_is_no_second_opinion) {
    auto house = stated_flow(200.0, 3.0);
    add_flow(house, 100.0, std::nullopt, FlowFrom::entered);
    add_flow(house, 100.0, 1.0, FlowFrom::pump_curve);
    EXPECT_THAT(house.findings_as_stated(flow_methods_disagree), IsEmpty());
    EXPECT_THAT(RuleCase{}.findings(flow_methods_disagree), IsEmpty());
}

TEST(CirculationRulesTest, an_unsure_flow_is_a_note_with_how_to_measure_better) {
    RuleCase house;
    house.conditions().flows.emplace_back().pump = Id{"pump-1"};
    auto& flow = house.conditions().flows.back();
    flow.bucket_volume = typed<Volume>("20L");
    flow.bucket_time = typed<Duration>("6s");  // 4 % brim, 3.3 % hand
    const auto findings = house.findings(flow_unsure);
    ASSERT_THAT(findings, SizeIs(1));
    EXPECT_EQ(findings[0].rule, "flow-unsure");
    EXPECT_EQ(findings[0].severity, Severity::note);
    EXPECT_FALSE(findings[0].remedy.empty());
    EXPECT_THAT(english(findings[0].message), HasSubstr("200 L/min by bucket"));
    // The surest flow is used, and a meter needs no advice.
    flow.meter_volume = typed<Volume>("1000L");
    flow.meter_time = typed<Duration>("300s");
    EXPECT_THAT(house.findings(flow_unsure), IsEmpty());
    EXPECT_THAT(RuleCase{}.findings(flow_unsure), IsEmpty());
}

TEST(CirculationRulesTest, an_unsure_flow_is_left_to_the_rule_on_methods_where_two_disagree) {
    auto house = stated_flow(200.0, 20.0);
    house.advice.water.pumps.at(0).flows.at(0).advice = Message{"Measure longer."};
    ASSERT_THAT(house.findings_as_stated(flow_unsure), SizeIs(1));
    add_flow(house, 100.0, 4.0, FlowFrom::meter);
    EXPECT_THAT(house.findings_as_stated(flow_unsure), IsEmpty());
    EXPECT_THAT(house.findings_as_stated(flow_methods_disagree), SizeIs(1));
}

}  // namespace
}  // namespace wetfront::test
