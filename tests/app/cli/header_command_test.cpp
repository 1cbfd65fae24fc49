// SPDX-License-Identifier: Apache-2.0
#include "water/header.h"

#include <numeric>

#include "base/numbers.h"
#include "explained.h"
#include "support/data_table.h"
#include "support/outside_check.h"
#include "water/filling.h"

namespace wetfront::test {
namespace {

using Words = std::vector<std::string>;

const Words pipe{"header", "--length",         "18m", "--bore", "50mm", "--outlet-bore",
                 "3mm",    "--outlet-spacing", "0.1m"};
const Words fed = pipe + Words{"--flow", "170L/min"};

Header as_in_pipe() {
    return even_header(from_si<Length>(18.0), from_si<Length>(0.05), from_si<Length>(0.003),
                       from_si<Length>(0.1))
        .value();
}

double number(const nlohmann::json& json, const char* key) {
    return json.at(key).get<double>();
}

TEST(HeaderCommandTest, the_json_object_has_exactly_these_keys) {
    const std::set<std::string> of_one_recovery{"inlet_head_m",
                                                "flow_m3_per_s",
                                                "inlet_velocity_m_per_s",
                                                "lowest_outlet_m3_per_s",
                                                "highest_outlet_m3_per_s",
                                                "first_outlet_m3_per_s",
                                                "last_outlet_m3_per_s",
                                                "first_to_last_outlet",
                                                "first_head_m",
                                                "last_head_m",
                                                "distribution_uniformity",
                                                "christiansen_uniformity",
                                                "fill_s",
                                                "pipe_volume_time_s",
                                                "pump_head_m",
                                                "supply_loss_m",
                                                "outlet_flows_m3_per_s",
                                                "fill_front_s",
                                                "fill_missing"};
    auto all = of_one_recovery;
    all.insert({"outlets", "static_recovery", "with_full_recovery"});
    for (const auto& feed : {Words{"--flow", "170L/min"},
                             {"--head", "0.7m"},
                             {"--pump", "0L/min:6m,400L/min:0m"},
                             {"--flow", "9L/min"}}) {
        const auto json = run(pipe + feed + Words{"--json"}).json();
        EXPECT_EQ(keys_of(json), all) << feed.front() << feed.back();
        EXPECT_EQ(keys_of(json.at("with_full_recovery")), of_one_recovery) << feed.front();
        EXPECT_EQ(json.at("outlets"), 180);
        EXPECT_EQ(json.at("outlet_flows_m3_per_s").size(), 180U);
    }
}

TEST(HeaderCommandTest, a_header_solved_by_another_program_comes_out_of_the_command) {
    const std::string source = "EPANET 2.3.5, second hand";
    OutsideCheck flow{"wetfront-cli header, flows", source};
    OutsideCheck uniformity{"wetfront-cli header, both uniformities", source};
    for (const auto& row : data_rows("header_flow.csv")) {
        if (row.at(6) != "D-W") {
            continue;
        }
        const double length = cell_number(row.at(0)) * cell_number(row.at(1));
        const auto json = run({"header", "--length", print_exact(length) + "m", "--bore", row.at(2) + "mm",
                               "--outlet-bore", row.at(3) + "mm", "--outlet-spacing", row.at(1) + "m",
                               "--discharge-coefficient", row.at(4), "--head", row.at(5) + "m", "--roughness",
                               row.at(7) + "mm", "--static-recovery", "0", "--json"})
                              .json();
        const auto litres = [&](const char* key) { return 1000.0 * number(json, key); };
        flow.within("in all", litres("flow_m3_per_s"), cell_number(row.at(8)), 0.001);
        flow.within("first", litres("first_outlet_m3_per_s"), cell_number(row.at(11)), 0.001);
        flow.within("last", litres("last_outlet_m3_per_s"), cell_number(row.at(12)), 0.001);
        uniformity.near("Christiansen", number(json, "christiansen_uniformity"),
                        cell_number(row.at(13)) / 100.0, 1e-3);
        uniformity.near("low quarter", number(json, "distribution_uniformity"),
                        cell_number(row.at(14)) / 100.0, 1e-3);
    }
}

TEST(HeaderCommandTest, the_numbers_are_those_of_the_library_to_the_last_digit) {
    const auto json = run(fed + Words{"--json"}).json();
    auto header = as_in_pipe();
    const auto flow = from_si<VolumeFlow>(170e-3 / 60.0);
    for (const double recovery : {0.0, 1.0}) {
        header.static_recovery = recovery;
        const auto& shown = recovery == 0.0 ? json : json.at("with_full_recovery");
        const auto at_work = head_for_flow(header, flow).value();
        const auto filling = filling_of(header, at_work.flow).value();
        EXPECT_EQ(number(shown, "inlet_head_m"), in_si(at_work.inlet_head));
        EXPECT_EQ(number(shown, "lowest_outlet_m3_per_s"), in_si(at_work.lowest));
        EXPECT_EQ(number(shown, "highest_outlet_m3_per_s"), in_si(at_work.highest));
        EXPECT_EQ(number(shown, "distribution_uniformity"), at_work.uniformity.low_quarter);
        EXPECT_EQ(number(shown, "christiansen_uniformity"), at_work.uniformity.christiansen);
        EXPECT_EQ(number(shown, "fill_s"), in_seconds(filling.fill));
        for (std::size_t i = 0; i < header.outlets.size(); ++i) {
            EXPECT_EQ(shown.at("outlet_flows_m3_per_s").at(i).get<double>(), in_si(at_work.outlets[i])) << i;
            EXPECT_EQ(shown.at("fill_front_s").at(i).get<double>(), in_seconds(filling.arrivals[i])) << i;
        }
    }
}

TEST(HeaderCommandTest, what_goes_in_comes_out_of_the_outlets) {
    const auto json = run(fed + Words{"--json"}).json();
    const auto flows = json.at("outlet_flows_m3_per_s").get<std::vector<double>>();
    const double flow = 170e-3 / 60.0;
    EXPECT_NEAR(std::accumulate(flows.begin(), flows.end(), 0.0), flow, 1e-9 * flow);
    EXPECT_EQ(number(json, "lowest_outlet_m3_per_s"), *std::min_element(flows.begin(), flows.end()));
    EXPECT_EQ(number(json, "highest_outlet_m3_per_s"), *std::max_element(flows.begin(), flows.end()));
}

TEST(HeaderCommandTest, static_recovery_evens_the_outlets_out_and_both_ends_are_shown) {
    const auto ratio = [](const nlohmann::json& json) { return number(json, "first_to_last_outlet"); };
    const auto both = run(fed + Words{"--json"}).json();
    const auto half = run(fed + Words{"--static-recovery", "0.5", "--json"}).json();
    EXPECT_EQ(both.at("static_recovery"), 0.0);
    EXPECT_GT(ratio(both), ratio(half));
    EXPECT_GT(ratio(half), ratio(both.at("with_full_recovery")));
    EXPECT_EQ(half.at("with_full_recovery"), both.at("with_full_recovery"));
    const auto text = run(fed).out;
    EXPECT_NE(text.find("recovery 0"), std::string::npos) << text;
    EXPECT_NE(text.find("recovery 1"), std::string::npos) << text;
    EXPECT_NE(text.find("both ends are shown"), std::string::npos) << text;
    EXPECT_EQ(run(fed + Words{"--static-recovery", "0.5"}).out.find("recovery 1"), std::string::npos);
}

TEST(HeaderCommandTest, head_and_flow_answer_each_other) {
    const auto json = run(fed + Words{"--json"}).json();
    const auto back =
        run(pipe + Words{"--head", print_exact(number(json, "inlet_head_m")) + "m", "--json"}).json();
    EXPECT_NEAR(number(back, "flow_m3_per_s"), number(json, "flow_m3_per_s"), 1e-9);
}

TEST(HeaderCommandTest, a_pump_works_where_its_curve_meets_header_lift_and_supply_pipe) {
    // One straight line from 6 m at no flow to 0 m at 400 L/min.
    const auto json = run(pipe + Words{"--pump", "0L/min:6m,400L/min:0m", "--static-lift", "1.5m",
                                       "--supply-length", "3m", "--supply-bore", "50mm", "--json"})
                          .json();
    const double flow = number(json, "flow_m3_per_s");
    const double pump_head = number(json, "pump_head_m");
    EXPECT_NEAR(pump_head, 6.0 * (1.0 - flow / (400e-3 / 60.0)), 1e-6);
    EXPECT_NEAR(pump_head, 1.5 + number(json, "supply_loss_m") + number(json, "inlet_head_m"), 1e-6);
    EXPECT_GT(number(json, "supply_loss_m"), 0.0);
    const auto same = run(pipe + Words{"--flow", print_exact(flow) + "m3/s", "--json"}).json();
    EXPECT_NEAR(number(same, "inlet_head_m"), number(json, "inlet_head_m"), 1e-6);
    EXPECT_TRUE(same.at("pump_head_m").is_null());
}

TEST(HeaderCommandTest, water_comes_along_the_header_outlet_by_outlet) {
    const auto json = run(fed + Words{"--json"}).json();
    const auto front = json.at("fill_front_s").get<std::vector<double>>();
    EXPECT_TRUE(std::is_sorted(front.begin(), front.end()));
    EXPECT_GT(front.front(), 0.0);
    EXPECT_LE(front.back(), number(json, "fill_s"));
    // pi/4 (50 mm)^2 18 m at 170 L/min, by hand: 0.035343 m3 / 0.00283333 m3/s.
    EXPECT_NEAR(number(json, "pipe_volume_time_s"), 12.474, 1e-3);
    EXPECT_GT(number(json, "fill_s"), number(json, "pipe_volume_time_s"));
    EXPECT_TRUE(json.at("fill_missing").is_null());
}

TEST(HeaderCommandTest, a_flow_that_does_not_fill_the_header_has_no_fill_time_and_a_reason) {
    const auto starved = pipe + Words{"--flow", "9L/min"};
    const auto json = run(starved + Words{"--json"}).json();
    EXPECT_TRUE(json.at("fill_s").is_null());
    EXPECT_TRUE(json.at("fill_front_s").is_null());
    EXPECT_NE(json.at("fill_missing").get<std::string>().find("the water comes"), std::string::npos);
    EXPECT_NE(run(starved).out.find("the water comes"), std::string::npos) << run(starved).out;
}

TEST(HeaderCommandTest, options_change_what_they_say) {
    const auto flow = [](const Words& more) {
        return number(run(pipe + Words{"--head", "0.7m", "--json"} + more).json(), "flow_m3_per_s");
    };
    const double clean = flow({});
    // An outlet's flow goes by Cd times its open area: a tenth of the area less is a tenth of Cd less.
    EXPECT_NEAR(flow({"--clogged", "10%"}), flow({"--discharge-coefficient", "0.54"}), 1e-12);
    EXPECT_LT(flow({"--clogged", "10%"}), clean);
    EXPECT_EQ(flow({"--clogged", "0%"}), clean);
    EXPECT_EQ(flow({"--discharge-coefficient", "0.6", "--roughness", "0.0015mm"}), clean);
    EXPECT_LT(flow({"--roughness", "0.5mm"}), clean);
    EXPECT_LT(flow({"--rise", "100mm"}), clean);
    EXPECT_GT(flow({"--rise", "-100mm"}), clean);
}

TEST(HeaderCommandTest, text_is_in_the_units_asked_for_and_names_what_is_assumed) {
    const auto us = run(fed).out;
    const auto si = run(fed + Words{"--units", "si"}).out;
    EXPECT_NE(us.find("180 outlets of 0.118 in"), std::string::npos) << us;
    EXPECT_NE(us.find("gpm"), std::string::npos) << us;
    EXPECT_NE(si.find("180 outlets of 3 mm, 100 mm apart, in a header of 18 m, 50 mm inside"),
              std::string::npos)
        << si;
    EXPECT_NE(si.find("170 L/min"), std::string::npos) << si;
    EXPECT_NE(us.find("Discharge coefficient 0.6 assumed"), std::string::npos) << us;
    EXPECT_EQ(run(fed + Words{"--discharge-coefficient", "0.62"}).out.find("Discharge coefficient"),
              std::string::npos);
}

TEST(HeaderCommandTest, the_table_goes_from_the_first_outlet_to_the_last) {
    const auto si = run(fed + Words{"--units", "si", "--static-recovery", "0"}).out;
    EXPECT_NE(si.find("\n1       0.1 m"), std::string::npos) << si;
    EXPECT_NE(si.find("\n180     18 m"), std::string::npos) << si;
    const auto one =
        run({"header", "--length", "1m", "--bore", "50mm", "--outlet-bore", "3mm", "--outlet-spacing", "1m",
             "--head", "1m", "--units", "si", "--static-recovery", "0"});
    EXPECT_EQ(one.status, 0) << one.err;
    EXPECT_NE(one.out.find("\n1       1 m"), std::string::npos) << one.out;
}

TEST(HeaderCommandTest, explain_tells_formula_source_and_range_of_every_result) {
    const auto explained = run(pipe + Words{"--pump", "0L/min:6m,400L/min:0m", "--explain"});
    expect_all_explained(explained);
    EXPECT_NE(explained.out.find("Colebrook 1939"), std::string::npos);
    EXPECT_NE(explained.out.find("Christiansen 1942"), std::string::npos);
}

TEST(HeaderCommandTest, exactly_one_feed_is_given_and_what_belongs_to_the_pump_only_with_it) {
    const std::string once = "--flow, --head, --pump: give exactly one of them";
    expect_refused(run(pipe), once);
    expect_refused(run(fed + Words{"--head", "1m"}), once);
    expect_refused(run(fed + Words{"--pump", "0L/min:6m,400L/min:0m"}), once);
    expect_refused(run(fed + Words{"--static-lift", "1m"}), "--static-lift: '1m': only with --pump");
    expect_refused(run(fed + Words{"--supply-length", "1m"}), "only with --pump");
    expect_refused(run(fed + Words{"--supply-bore", "50mm"}), "only with --pump");
    const auto pumped = pipe + Words{"--pump", "0L/min:6m,400L/min:0m"};
    expect_refused(run(pumped + Words{"--supply-length", "1m"}), "--supply-bore: missing");
    expect_refused(run(pumped + Words{"--supply-bore", "50mm"}), "--supply-length: missing");
}

TEST(HeaderCommandTest, a_bad_pump_curve_is_named_by_its_point) {
    const auto with = [](const char* curve) { return run(pipe + Words{"--pump", curve}); };
    expect_refused(with("0L/min:6m,400L/min"), "--pump, point 2");
    expect_refused(with("0L/min:6m,,400L/min:0m"), "--pump, point 2");
    expect_refused(with("0:6m,400L/min:0m"), "--pump, point 1, flow: '0': the unit is missing");
    expect_refused(with("0L/min:6m,400L/min:0"), "--pump, point 2, head");
    expect_refused(with("0L/min:6m"), "pump curve");
    expect_refused(with("0L/min:6m,400L/min:7m"), "fall");
    expect_refused(with("0L/min:6m,20L/min:5m"), "pump curve");
    expect_refused(run(pipe + Words{"--pump", "0L/min:6m,400L/min:0m", "--static-lift", "7m"}), "lift");
}

TEST(HeaderCommandTest, bad_sizes_are_refused_by_input_and_limit) {
    const auto with = [](const char* length, const char* bore, const char* outlet, const char* spacing,
                         const Words& more = {"--flow", "170L/min"}) {
        return run(Words{"header", "--length", length, "--bore", bore, "--outlet-bore", outlet,
                         "--outlet-spacing", spacing} +
                   more);
    };
    expect_refused(with("18m", "-50mm", "3mm", "0.1m"), "bore");
    expect_refused(with("18m", "50mm", "50mm", "0.1m"), "bore");
    expect_refused(with("18m", "50mm", "0mm", "0.1m"), "bore");
    expect_refused(with("0m", "50mm", "3mm", "0.1m"), "length");
    expect_refused(with("18m", "50mm", "3mm", "19m"), "spacing");
    expect_refused(with("18m", "50mm", "3mm", "0m"), "spacing");
    expect_refused(with("18", "50mm", "3mm", "0.1m"), "--length: '18': the unit is missing");
    expect_refused(with("18m", "50", "3mm", "0.1m"), "--bore");
    expect_refused(with("18m", "50mm", "3", "0.1m"), "--outlet-bore");
    expect_refused(with("18m", "50mm", "3mm", "0.1"), "--outlet-spacing");
    expect_refused(with("18m", "50mm", "3mm", "0.1m", {"--flow", "0L/min"}), "flow");
    expect_refused(with("18m", "50mm", "3mm", "0.1m", {"--flow", "nanL/min"}), "--flow");
    expect_refused(with("18m", "50mm", "3mm", "0.1m", {"--head", "101m"}), "100 m");
    const auto also = [&](const char* option, const char* value) { return run(fed + Words{option, value}); };
    expect_refused(also("--discharge-coefficient", "1.1"), "discharge");
    expect_refused(also("--discharge-coefficient", "x"), "--discharge-coefficient");
    expect_refused(also("--static-recovery", "1.1"), "recovery");
    expect_refused(also("--static-recovery", "-0.1"), "recovery");
    expect_refused(also("--clogged", "100%"), "--clogged");
    expect_refused(also("--clogged", "-1%"), "--clogged");
    expect_refused(also("--roughness", "-1mm"), "roughness");
    expect_refused(also("--rise", "1"), "--rise");
    expect_refused(run({"header", "--bore", "50mm", "--outlet-bore", "3mm", "--outlet-spacing", "1m"}),
                   "--length");
}

}  // namespace
}  // namespace wetfront::test
