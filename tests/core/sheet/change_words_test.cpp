// SPDX-License-Identifier: Apache-2.0
#include "sheet/change_words.h"

#include <gtest/gtest.h>

#include "rules/checklists.h"
#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

/// Of a house with two banks on one timer.
class ChangeWordsTest : public testing::Test {
protected:
    [[nodiscard]] std::string visit(const std::vector<FieldChange>& changes) {
        return in_english(change_words(file_, changed_places(file_.visit, changes), "Visit"), UnitSystem::us);
    }
    [[nodiscard]] std::string house(const std::vector<FieldChange>& changes) {
        return in_english(change_words(file_, changed_places(file_.house, changes), "House"), UnitSystem::us);
    }

    VisitFile file_ = VisitBuilder{2}.file();
};

TEST_F(ChangeWordsTest, a_value_goes_back_to_another_in_the_readers_units) {
    EXPECT_EQ(visit({{"/conditions/outside_dry_bulb", "35degC", "30degC"}}),
              "Outside temperature: 95 °F back to 86 °F");
    EXPECT_EQ(visit({{"/conditions/ph", "7.2", "7.4"}}), "pH of the make-up water: 7.2 back to 7.4");
}

TEST_F(ChangeWordsTest, a_setting_names_its_timer_and_whether_it_was_found_or_left) {
    file_.visit.found = {TimerSettings{}};
    file_.visit.found.front().timer = file_.house.timers.front().id;
    const auto timer = file_.house.timers.front().name;
    EXPECT_EQ(visit({{"/found/0/period", "5min", "6min"}}), timer + " as found: Period: 5 min back to 6 min");
    EXPECT_EQ(visit({{"/found/0/trim_rows/1/change", "5s", "10s"}}),
              timer + " as found, Trim rows 2: On-time changes by: 5 s back to 10 s");
    EXPECT_EQ(visit({{"/left", R"([{"timer":"timer-1","rinse_at":"21:00"}])", ""}}),
              timer + " as left: Rinse time: 21:00 taken out");
}

TEST_F(ChangeWordsTest, what_was_new_is_taken_out_and_what_was_taken_out_comes_back) {
    EXPECT_EQ(visit({{"/conditions/house_humidity", "60%", ""}}), "House relative humidity: 60% taken out");
    EXPECT_EQ(house({{"/banks/2", "", R"({"id":"b","name":"Bank 3","pump":"pump-1"})"}}),
              "Pad banks: Bank 3 put back in");
}

TEST_F(ChangeWordsTest, maintenance_that_was_entered_is_told_by_what_was_done) {
    const char* const done =
        R"({"id":"m","on":"2026-05-04T00:00:00.000-05:00","what":"new pads","banks":["bank-1"],"note":"60 ft"})";
    EXPECT_EQ(house({{"/maintenance", std::string{"["} + done + "]", ""}}),
              "What was done: New pads taken out");
    EXPECT_EQ(house({{"/maintenance/1", "", done}}), "What was done: New pads put back in");
}

TEST_F(ChangeWordsTest, a_part_is_called_by_its_name_and_a_choice_by_its_words) {
    EXPECT_EQ(house({{"/banks/1/pump_end", "left", "right"}}),
              file_.house.banks[1].name + ": End with the pump: left end back to right end");
    EXPECT_EQ(house({{"/timers/0/pumps/1", "pump-1", ""}}),
              file_.house.timers[0].name + ": Switches: " + file_.house.pumps[0].name + " taken out");
    EXPECT_EQ(house({{"/pumps/0/name", "Sump pump", "Pump 1"}}), "Pump: Sump pump back to Pump 1");
}

TEST_F(ChangeWordsTest, a_label_reads_behind_its_owner_whatever_it_begins_with) {
    file_.visit.conditions.at_banks = {BankConditions{}};
    file_.visit.conditions.at_banks.front().bank = file_.house.banks.front().id;
    const auto bank = file_.house.banks.front().name;
    EXPECT_EQ(visit({{"/conditions/at_banks/0/behind_pad", "25degC", "20degC"}}),
              bank + ": Temperature behind this pad: 77 °F back to 68 °F");
    EXPECT_EQ(visit({{"/conditions/outside_wet_bulb", "25degC", "20degC"}}),
              "Outside wet bulb: 77 °F back to 68 °F");
}

TEST_F(ChangeWordsTest, every_choice_of_a_house_is_told_in_words) {
    file_.house.sensors = {Sensor{}};
    auto& timer = file_.house.timers.front();
    timer.controller = generic_template(TimerKind::trimmed);
    EXPECT_EQ(house({{"/sensors/0/place", "outside", "in house"}}), "Hangs: outside back to in the house");
    EXPECT_EQ(house({{"/sensors/0/kind", "humidity", "temperature"}}),
              "Sensor: Humidity sensor back to Temperature sensor");
    EXPECT_EQ(house({{"/timers/0/kind", "on demand", "trimmed"}}),
              timer.name + ": Kind of timer: on demand back to trimmed by temperature");
    EXPECT_EQ(house({{"/timers/0/controller/counts_from", "full header", "pump start"}}),
              timer.name + ": Its on-time counts from: a full header back to pump start");
}

TEST_F(ChangeWordsTest, a_tick_is_called_by_its_line) {
    const auto& line = checklist(Step::safety).front();
    file_.visit.ticks = {{std::string{line.id}, true, {}}};
    EXPECT_EQ(visit({{"/ticks/0/done", "true", "false"}}),
              in_english(line.text, UnitSystem::us) + ": not ticked any more");
}

TEST_F(ChangeWordsTest, an_item_that_goes_is_told_before_what_hangs_on_it) {
    EXPECT_EQ(
        house({{"/timers/0/pumps/1", "pump-2", ""}, {"/pumps/1", R"({"id":"pump-2","name":"Pump 2"})", ""}}),
        "Pumps: Pump 2 taken out; other places: 1");
}

TEST_F(ChangeWordsTest, what_cannot_be_said_well_is_counted) {
    EXPECT_EQ(visit({{"/conditions/ph", "7", ""},
                     {"/conditions/hardness", "100ppm", ""},
                     {"/conditions/sump_ph", "7", ""},
                     {"/conditions/barometer", "100kPa", ""}}),
              "Visit, changed places: 4");
    EXPECT_EQ(visit({{"/persons/0/name", "Jo", "Kim"}, {"/persons/1", R"({"name":"Kim"})", ""}}),
              "Persons, changed places: 2");
    EXPECT_EQ(visit({{"/set_aside/0/end_mark", "mark-1", "mark-2"}}), "Visit, changed places: 1");
    EXPECT_EQ(house({}), "House");
}

TEST_F(ChangeWordsTest, a_long_text_is_shortened) {
    const std::string text(300, 'a');
    EXPECT_LT(visit({{"/open_points/0", text, ""}}).size(), 120U);
}

TEST_F(ChangeWordsTest, two_states_stand_side_by_side_under_the_words_of_their_place) {
    const auto& line = checklist(Step::safety).front();
    file_.visit.ticks = {{std::string{line.id}, true, {}}};
    const auto states = state_words(
        file_.house, changed_places(file_.visit, {{"/conditions/outside_dry_bulb", "35degC", "30degC"},
                                                  {"/conditions/house_humidity", "60%", ""},
                                                  {"/ticks/0/done", "true", "false"}}));
    std::string all;
    for (const auto& each : states) {
        for (const auto* message : {&each.place, &each.first, &each.second}) {
            all += in_english(*message, UnitSystem::us) + "|";
        }
    }
    EXPECT_EQ(all, "Outside temperature|95 °F|86 °F|House relative humidity|60%||" +
                       in_english(line.text, UnitSystem::us) + "|yes|no|");
}

}  // namespace
}  // namespace wetfront::test
