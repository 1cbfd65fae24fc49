// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "made_visits.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;

/// A visit of a house with two pumps, so that a bank can name the wrong one; one mark of each sort.
VisitFile two_pump_visit() {
    VisitFile file;
    file.farm.id = Id{"farm"};
    file.farm.name = "Farm";
    file.house.id = Id{"house"};
    file.house.farm = file.farm.id;
    file.house.name = "House";
    file.house.pumps.resize(2);
    file.house.banks.resize(2);
    for (std::size_t i = 0; i < 2; ++i) {
        file.house.pumps[i].id = Id{"pump-" + std::to_string(i)};
        file.house.banks[i].id = Id{"bank-" + std::to_string(i)};
        file.house.banks[i].pump = file.house.pumps[i].id;
    }
    file.house.timers.resize(1);
    file.house.timers[0].id = Id{"timer"};
    file.house.timers[0].pumps = {Id{"pump-0"}, Id{"pump-1"}};
    file.house.maintenance = {
        {Id{"cleaned"}, {}, Upkeep::outlets_cleaned, {Id{"bank-0"}, Id{"bank-1"}}, {}, {}},
        {Id{"pumped"}, {}, Upkeep::new_pump, {}, Id{"pump-1"}, {}}};
    file.visit.id = Id{"visit"};
    file.visit.house = file.house.id;
    file.visit.marks.resize(2);
    file.visit.marks[0] = {.id = Id{"mark-0"},
                           .kind = MarkKind::pump_start,
                           .pump = Id{"pump-0"},
                           .bank = {},
                           .at = {},
                           .wall = {},
                           .stamp_error_ns = {},
                           .fans_running = {}};
    file.visit.marks[1] = {.id = Id{"mark-1"},
                           .kind = MarkKind::water_at_far_end,
                           .pump = Id{"pump-0"},
                           .bank = Id{"bank-0"},
                           .at = {},
                           .wall = {},
                           .stamp_error_ns = {},
                           .fans_running = {}};
    file.visit.set_aside = {{Id{"mark-1"}, "late"}};
    file.visit.found.resize(1);
    file.visit.found[0].timer = Id{"timer"};
    file.visit.left = file.visit.found;
    file.visit.proof.resize(2);
    file.visit.proof[0].timer = Id{"timer"};
    file.visit.proof[0].cycles_since_change = 3.0;
    file.visit.proof[1].bank = Id{"bank-0"};
    file.visit.proof[1].even_drip = true;
    file.visit.conditions.flows.emplace_back().pump = Id{"pump-0"};
    file.visit.conditions.at_banks.emplace_back().bank = Id{"bank-0"};
    file.visit.ticks = {{"safety.first", true, ""}};
    file.visit.photos = {{std::string(64, 'a'), Id{"bank-0"}, {}, {}, {}},
                         {std::string(64, '0'), {}, {}, {}, {}}};
    return file;
}

struct Wrong {
    const char* item;
    const char* accepted;
    std::function<void(VisitFile&)> break_it;
};

TEST(RecordChecksTest, a_consistent_file_passes) {
    const auto result = check_references(two_pump_visit());
    EXPECT_TRUE(result) << result.error().text();
}

TEST(RecordChecksTest, every_broken_reference_is_named_by_its_path) {
    const std::vector<Wrong> rows{
        {"farm.name", "a name", [](VisitFile& f) { f.farm.name.clear(); }},
        {"house.farm", "no farm", [](VisitFile& f) { f.house.farm = Id{"other"}; }},
        {"visit.house", "no house", [](VisitFile& f) { f.visit.house = Id{"other"}; }},
        {"house.pumps[1].id", "twice", [](VisitFile& f) { f.house.pumps[1].id = f.house.pumps[0].id; }},
        {"house.banks[1].id", "twice", [](VisitFile& f) { f.house.banks[1].id = f.house.banks[0].id; }},
        {"house.timers[1].id", "twice", [](VisitFile& f) { f.house.timers.push_back(f.house.timers[0]); }},
        {"house.banks[1].pump", "no pump", [](VisitFile& f) { f.house.banks[1].pump = Id{"pump-9"}; }},
        {"house.banks[1].pump", "no pump", [](VisitFile& f) { f.house.banks[1].pump = Id{}; }},
        {"house.timers[0].pumps[1]", "no pump",
         [](VisitFile& f) { f.house.timers[0].pumps[1] = Id{"pump-9"}; }},
        {"house.timers[0].pumps[1]", "twice",
         [](VisitFile& f) { f.house.timers[0].pumps[1] = Id{"pump-0"}; }},
        {"house.maintenance[1].id", "twice", [](VisitFile& f) { f.house.maintenance[1].id = Id{"cleaned"}; }},
        {"house.maintenance[0].banks[1]", "no bank",
         [](VisitFile& f) { f.house.maintenance[0].banks[1] = Id{"pump-1"}; }},
        {"house.maintenance[0].banks[1]", "twice",
         [](VisitFile& f) { f.house.maintenance[0].banks[1] = Id{"bank-0"}; }},
        {"house.maintenance[1].pump", "no pump",
         [](VisitFile& f) { f.house.maintenance[1].pump = Id{"bank-1"}; }},
        {"house.maintenance[1]", "the banks or the pump",
         [](VisitFile& f) { f.house.maintenance[1].pump = Id{}; }},
        {"visit.marks[1].id", "twice", [](VisitFile& f) { f.visit.marks[1].id = Id{"mark-0"}; }},
        {"visit.marks[0].pump", "no pump", [](VisitFile& f) { f.visit.marks[0].pump = Id{"bank-0"}; }},
        {"visit.marks[0].bank", "belongs to a pump",
         [](VisitFile& f) { f.visit.marks[0].bank = Id{"bank-0"}; }},
        {"visit.marks[1].bank", "no bank", [](VisitFile& f) { f.visit.marks[1].bank = Id{}; }},
        {"visit.marks[1].bank", "fed by pump 'pump-1'",
         [](VisitFile& f) { f.visit.marks[1].bank = Id{"bank-1"}; }},
        {"visit.set_aside[0].end_mark", "no mark",
         [](VisitFile& f) { f.visit.set_aside[0].end_mark = Id{"x"}; }},
        {"visit.set_aside[1].end_mark", "twice",
         [](VisitFile& f) { f.visit.set_aside.push_back(f.visit.set_aside[0]); }},
        {"visit.found[0].timer", "no timer", [](VisitFile& f) { f.visit.found[0].timer = Id{"x"}; }},
        {"visit.left[1].timer", "twice", [](VisitFile& f) { f.visit.left.push_back(f.visit.left[0]); }},
        {"visit.conditions.flows[0].pump", "no pump",
         [](VisitFile& f) { f.visit.conditions.flows[0].pump = Id{"x"}; }},
        {"visit.conditions.at_banks[0].bank", "no bank",
         [](VisitFile& f) { f.visit.conditions.at_banks[0].bank = Id{"x"}; }},
        {"visit.conditions.at_banks[1].bank", "twice",
         [](VisitFile& f) { f.visit.conditions.at_banks.push_back(f.visit.conditions.at_banks[0]); }},
        {"visit.conditions.flows[1].pump", "twice",
         [](VisitFile& f) { f.visit.conditions.flows.push_back(f.visit.conditions.flows[0]); }},
        {"visit.photos[1].sha256", "twice",
         [](VisitFile& f) { f.visit.photos[1].sha256 = f.visit.photos[0].sha256; }},
        {"visit.photos[0].sha256", "64 letters", [](VisitFile& f) { f.visit.photos[0].sha256.pop_back(); }},
        {"visit.photos[1].sha256", "64 letters", [](VisitFile& f) { f.visit.photos[1].sha256[7] = 'G'; }},
        {"visit.photos[0].bank", "no bank", [](VisitFile& f) { f.visit.photos[0].bank = Id{"pump-0"}; }},
        {"visit.ticks[1].id", "twice", [](VisitFile& f) { f.visit.ticks.push_back(f.visit.ticks[0]); }},
        {"visit.proof[0].timer", "no timer", [](VisitFile& f) { f.visit.proof[0].timer = Id{"x"}; }},
        {"visit.proof[1].bank", "no bank", [](VisitFile& f) { f.visit.proof[1].bank = Id{"x"}; }},
        {"visit.proof[0]", "either the bank or the timer",
         [](VisitFile& f) { f.visit.proof[0].bank = Id{"bank-1"}; }},
        {"visit.proof[0]", "either the bank or the timer",
         [](VisitFile& f) { f.visit.proof[0].timer = Id{}; }},
        {"visit.proof[2]", "twice", [](VisitFile& f) { f.visit.proof.push_back(f.visit.proof[0]); }},
        {"visit.proof[0].dry_patch", "belongs to a bank",
         [](VisitFile& f) { f.visit.proof[0].dry_patch = false; }},
        {"visit.proof[1].cycles_since_change", "belongs to a timer",
         [](VisitFile& f) { f.visit.proof[1].cycles_since_change = 3.0; }},
        {"visit.replaces", "itself", [](VisitFile& f) { f.visit.replaces = f.visit.id; }},
    };
    for (const auto& row : rows) {
        auto file = two_pump_visit();
        row.break_it(file);
        const auto result = check_references(file);
        ASSERT_FALSE(result) << row.item << " was accepted";
        EXPECT_EQ(result.error().item, row.item) << result.error().text();
        EXPECT_THAT(result.error().accepted, HasSubstr(row.accepted)) << result.error().text();
    }
}

TEST(RecordChecksTest, notes_of_a_bank_and_of_a_timer_with_the_same_id_are_two) {
    auto file = two_pump_visit();
    file.house.timers[0].id = file.visit.found[0].timer = file.visit.left[0].timer = Id{"bank-0"};
    file.visit.proof[0].timer = Id{"bank-0"};
    const auto result = check_references(file);
    EXPECT_TRUE(result) << result.error().text();
}

TEST(RecordChecksTest, a_design_wet_bulb_above_the_dry_bulb_names_both_and_an_equal_one_is_fog) {
    auto file = two_pump_visit();
    file.farm.design_dry_bulb = VisitMaker::entered<Temperature>("76degF");
    file.farm.design_wet_bulb = VisitMaker::entered<Temperature>("76degF");
    EXPECT_TRUE(check_references(file));
    file.farm.design_wet_bulb = VisitMaker::entered<Temperature>("76.1degF");
    const auto result = check_references(file);
    ASSERT_FALSE(result);
    EXPECT_EQ(
        result.error().text(),
        "farm.design_wet_bulb: '76.1degF': a wet bulb cannot be above farm.design_dry_bulb, here '76degF'");
}

TEST(RecordChecksTest, a_controller_taken_into_a_house_is_whole_and_of_the_timers_kind) {
    auto file = two_pump_visit();
    choose_controller(file.house.timers[0], generic_template(TimerKind::trimmed));
    ASSERT_TRUE(check_references(file));
    auto other = file;
    other.house.timers[0].kind = TimerKind::on_demand;
    const auto unlike = check_references(other);
    ASSERT_FALSE(unlike);
    EXPECT_THAT(unlike.error().text(), HasSubstr("house.timers[0].kind"));
    file.house.timers[0].controller->settings.front().resolution = 0.0;
    const auto no_step = check_references(file);
    ASSERT_FALSE(no_step);
    EXPECT_THAT(no_step.error().text(), HasSubstr("house.timers[0].controller.settings[0].resolution"));
}

TEST(RecordChecksTest, a_visit_file_carries_the_whole_controller) {
    auto file = two_pump_visit();
    choose_controller(file.house.timers[0], generic_template(TimerKind::trimmed));
    const auto read = parse_visit_file(visit_file_text(file));
    ASSERT_TRUE(read) << read.error().text();
    EXPECT_EQ(read.value().house.timers[0].controller, generic_template(TimerKind::trimmed));
}

}  // namespace
}  // namespace wetfront::test
