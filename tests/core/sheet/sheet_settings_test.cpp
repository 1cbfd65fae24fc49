// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include <algorithm>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

std::vector<std::string> texts_of(const std::vector<SheetTable::Cell>& row) {
    std::vector<std::string> texts;
    for (const auto& cell : row) {
        texts.push_back(MadeSheet::english(cell.text));
    }
    return texts;
}

/// First cells of every row with a mark in the tables of found, advised and left.
std::vector<std::string> marked(const MadeSheet& sheet) {
    std::vector<std::string> names;
    for (const auto& table : sheet.all<SheetTable>()) {
        const bool settings = MadeSheet::english(table.columns.back()) == "Left";
        for (const auto& row : table.rows) {
            if (settings && std::ranges::any_of(row, &SheetTable::Cell::marked)) {
                names.push_back(MadeSheet::english(row.front().text));
            }
        }
    }
    return names;
}

std::string advised(const MadeSheet& sheet, Setting setting) {
    const auto* advice = sheet.advice.timers.at(0).advised(setting);
    return advice != nullptr && advice->value ? show(*advice->value, UnitSystem::si).joined(UnitSystem::si)
                                              : "none";
}

class SheetSettingsOverBanks : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(banks, SheetSettingsOverBanks, testing::Values(1, 4, 8));

TEST_P(SheetSettingsOverBanks, found_advised_and_left_stand_side_by_side_in_four_groups) {
    auto file = complete_visit(GetParam());
    fill_settings(file.visit.left[0]);
    const MadeSheet sheet{file};
    ASSERT_TRUE(sheet.advice.timers.at(0).cycled) << MadeSheet::english(sheet.advice.timers.at(0).verdict);
    EXPECT_THAT(
        sheet.rows("When pads may run"),
        ElementsAre(
            ElementsAre("Target", "23.3 °C", "no advice", "23.3 °C"),
            ElementsAre("Start temperature", "28 °C", advised(sheet, Setting::start_temperature), "28 °C"),
            ElementsAre("Lowest house temperature", "21 °C", "the grower's own limit, below the start",
                        "21 °C"),
            ElementsAre("Humidity cut-off", "83 %", advised(sheet, Setting::humidity_cut_off), "83 %"),
            ElementsAre("Pad hours from", "09:30", advised(sheet, Setting::pad_hours_from), "09:30"),
            ElementsAre("Pad hours to", "19:00", advised(sheet, Setting::pad_hours_to), "19:00")));
    // The slowest bank fills in 40.5 + n s and wets through in 139.5 + 2 n s.
    const auto fill = "read: " + show_text(seconds(40.5 + GetParam()), UnitSystem::si);
    const auto wet = "read: " + show_text(seconds(139.5 + 2 * GetParam()), UnitSystem::si);
    EXPECT_THAT(
        sheet.rows("How long"),
        ElementsAre(
            ElementsAre("Period", "5 min", advised(sheet, Setting::period), "5 min"),
            ElementsAre("Base on-time", "30 s", advised(sheet, Setting::base_on_time), "30 s"),
            ElementsAre("On-time ceiling", "5 min", advised(sheet, Setting::on_time_ceiling), "5 min"),
            ElementsAre("Entered fill", "41 s", fill, "41 s"),
            ElementsAre("Entered wet-through", "111 s", wet, "111 s"),
            ElementsAre("Shown on-time", "33 s", "no advice", "33 s"),
            ElementsAre("Pump meant to run without rest", "no", "no advice", "no")));
    const auto step = "from " + advised(sheet, Setting::trim_dead_band) +
                      " above target: " + advised(sheet, Setting::trim_step) + " longer";
    EXPECT_THAT(sheet.rows("How it adapts"),
                ElementsAre(ElementsAre("Trim row 1", "from 1 °C above target: 15 s longer", step,
                                        "from 1 °C above target: 15 s longer"),
                            ElementsAre("Trim row 2", "from 2 °C above target: 10 s shorter", "no row",
                                        "from 2 °C above target: 10 s shorter"),
                            ElementsAre("Review interval", "12 min", advised(sheet, Setting::review_interval),
                                        "12 min")));
    EXPECT_THAT(
        sheet.rows("Rinse"),
        ElementsAre(ElementsAre("Rinse time", "08:00", Not(IsEmpty()), "08:00"),
                    ElementsAre("Rinse length", "7 min", advised(sheet, Setting::rinse_length), "7 min")));
}

TEST_P(SheetSettingsOverBanks, settings_left_as_advised_carry_no_mark) {
    const MadeSheet sheet{complete_visit(GetParam())};
    EXPECT_THAT(marked(sheet), IsEmpty());
}

// So warm a night that the pads are wanted until midnight and beyond: 24 h in the advice, a time of the clock
// in the timer.
TEST(SheetSettingsTest, pad_hours_that_end_past_midnight_are_the_same_hour_of_the_clock) {
    auto file = complete_visit(1);
    Advice advice;
    for (const auto* range : {"7K", "8K", "9K", "10K", "11K"}) {
        file.farm.design_daily_range = typed<TemperatureDifference>(range);
        advice = advise(file);
        const auto* end = advice.timers.front().advised(Setting::pad_hours_to);
        if (end->value && end->value->si >= 86400.0) {
            break;
        }
    }
    ASSERT_GE(advice.timers.front().advised(Setting::pad_hours_to)->value.value().si, 86400.0);
    file.visit.left[0].pad_hours_to = as_settings(advice.timers.front()).pad_hours_to;
    const MadeSheet sheet{file};
    EXPECT_THAT(marked(sheet), testing::Not(testing::Contains("Pad hours to")));
}

TEST(SheetSettingsTest, each_deviation_is_marked_and_only_on_what_was_left) {
    auto file = complete_visit(1);
    fill_settings(file.visit.left[0]);
    file.visit.left[0].period = typed<Duration>("300s");
    const MadeSheet sheet{file};
    EXPECT_THAT(marked(sheet), ElementsAre("Start temperature", "Humidity cut-off", "Pad hours from",
                                           "Pad hours to", "Base on-time", "On-time ceiling", "Trim row 1",
                                           "Trim row 2", "Review interval", "Rinse length"));
    const auto row = sheet.row("Base on-time");
    EXPECT_FALSE(row.at(1).marked);
    EXPECT_FALSE(row.at(2).marked);
    EXPECT_TRUE(row.at(3).marked);
}

TEST(SheetSettingsTest, one_second_beside_the_advice_is_a_deviation_and_the_same_in_minutes_is_none) {
    auto file = complete_visit(1);
    file.visit.left[0].period = typed<Duration>("5min");
    EXPECT_THAT(marked(MadeSheet{file}), IsEmpty());
    file.visit.left[0].period = typed<Duration>("301s");
    EXPECT_THAT(marked(MadeSheet{file}), ElementsAre("Period"));
}

TEST(SheetSettingsTest, what_was_not_entered_says_so_and_is_no_deviation) {
    auto file = complete_visit(1);
    file.visit.left.clear();
    const MadeSheet sheet{file};
    EXPECT_EQ(texts_of(sheet.row("Base on-time")).at(3), "not entered");
    EXPECT_EQ(texts_of(sheet.row("Trim row 1")).at(3), "not entered");
    EXPECT_THAT(marked(sheet), IsEmpty());
}

TEST(SheetSettingsTest, running_without_rest_is_as_advised_whatever_the_period) {
    auto file = complete_visit(1);
    file.farm.design_wet_bulb.reset();  // no cycle can be advised
    auto& left = file.visit.left[0];
    left.period = typed<Duration>("10min");
    left.base_on_time = typed<Duration>("10min");
    left.on_time_ceiling = typed<Duration>("10min");
    EXPECT_THAT(marked(MadeSheet{file}), IsEmpty());
    left.base_on_time = typed<Duration>("599s");
    EXPECT_THAT(marked(MadeSheet{file}), Contains("Base on-time"));
}

TEST(SheetSettingsTest, a_fixed_interval_timer_shows_only_what_it_has) {
    auto file = complete_visit(1);
    file.house.timers[0].kind = TimerKind::fixed_interval;
    for (auto* settings : {&file.visit.found[0], &file.visit.left[0]}) {
        *settings = {};
        settings->timer = file.house.timers[0].id;
        settings->period = typed<Duration>("300s");
        settings->base_on_time = typed<Duration>("100s");
    }
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.rows("How long"), SizeIs(3));
    EXPECT_THAT(sheet.rows("Rinse"), ElementsAre(ElementsAre("this timer has none", "", "", "")));
    EXPECT_THAT(sheet.rows("How it adapts"), ElementsAre(ElementsAre("this timer has none", "", "", "")));
    EXPECT_THAT(sheet.rows("When pads may run"), ElementsAre(ElementsAre("this timer has none", "", "", "")));
}

TEST(SheetSettingsTest, what_was_entered_for_a_simple_timer_is_never_left_out) {
    auto file = complete_visit(1);
    file.house.timers[0].kind = TimerKind::on_demand;
    const MadeSheet sheet{file};
    EXPECT_EQ(texts_of(sheet.row("Rinse length")).at(1), "7 min");
    EXPECT_EQ(texts_of(sheet.row("Trim row 2")).at(1), "from 2 °C above target: 10 s shorter");
}

TEST(SheetSettingsTest, the_truth_about_timers_stands_first_with_its_source) {
    const MadeSheet sheet{complete_visit(1)};
    const auto lines = sheet.below<SheetParagraph>("Settings");
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_THAT(MadeSheet::english(lines[0].text), HasSubstr("no extra cooling"));
    EXPECT_TRUE(lines[0].strong);
    EXPECT_THAT(MadeSheet::english(lines[1].text), HasSubstr("University of Georgia"));
}

TEST(SheetSettingsTest, each_advised_value_stands_with_its_reason_and_source) {
    const MadeSheet sheet{complete_visit(1)};
    const auto& advice = sheet.advice.timers.at(0);
    const auto rows = sheet.rows("Best cycle");
    ASSERT_EQ(rows.size(), advice.cycle.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].at(0), MadeSheet::english(label_of(advice.cycle[i].setting)));
        const auto brief = MadeSheet::english(advice.cycle[i].reason.brief);
        EXPECT_THAT(rows[i].at(2), advice.cycle[i].value
                                       ? HasSubstr(brief)
                                       : HasSubstr(MadeSheet::english(advice.cycle[i].reason.explanation)));
        EXPECT_EQ(rows[i].at(3), advice.cycle[i].reason.source);
    }
    EXPECT_THAT(rows, Contains(ElementsAre("Base on-time", advised(sheet, Setting::base_on_time),
                                           HasSubstr("rounded up"), testing::_)));
    EXPECT_THAT(sheet.rows("Without rest"),
                ElementsAre(ElementsAre("Period", "5 min", Not(IsEmpty()), Not(IsEmpty())),
                            ElementsAre("Base on-time", "5 min", Not(IsEmpty()), Not(IsEmpty())),
                            ElementsAre("On-time ceiling", "5 min", Not(IsEmpty()), Not(IsEmpty()))));
}

TEST(SheetSettingsTest, a_setting_without_a_value_is_worded_the_same_in_both_tables) {
    const MadeSheet sheet{complete_visit(1)};
    EXPECT_EQ(sheet.rows("Rinse").at(0).at(2), "at the first call of the day");
    EXPECT_THAT(sheet.rows("Best cycle"), Contains(ElementsAre("Rinse time", "at the first call of the day",
                                                               HasSubstr("inside pad hours"), testing::_)));
}

TEST(SheetSettingsTest, what_is_assumed_and_what_is_missing_is_listed) {
    auto file = complete_visit(1);
    const MadeSheet complete{file};
    ASSERT_THAT(complete.advice.assumed, Not(IsEmpty()));
    for (const auto& assumed : complete.advice.assumed) {
        EXPECT_THAT(complete.paragraphs("Assumed"), Contains(MadeSheet::english(assumed)));
    }
    file.farm.design_wet_bulb.reset();
    const MadeSheet lacking{file};
    ASSERT_THAT(lacking.advice.missing, Not(IsEmpty()));
    for (const auto& missing : lacking.advice.missing) {
        EXPECT_THAT(lacking.paragraphs("Missing for the advice"), Contains(MadeSheet::english(missing)));
    }
    EXPECT_THAT(lacking.rows("Best cycle"), IsEmpty());
}

TEST(SheetSettingsTest, the_reason_for_differing_from_the_advice_stands_under_the_settings) {
    auto file = complete_visit(1);
    const std::string heading = "As found, advised and as left: Timer 1 (trimmed by temperature)";
    EXPECT_THAT(MadeSheet{file}.below<SheetParagraph>(heading), IsEmpty());
    file.visit.left[0].deviation_reason = "The grower saves water.";
    const auto below = MadeSheet{file}.below<SheetParagraph>(heading);
    ASSERT_THAT(below, SizeIs(1));
    EXPECT_EQ(MadeSheet::english(below[0].text), "Why it differs from the advice: The grower saves water.");
}

TEST(SheetSettingsTest, each_timer_has_its_own_tables_and_reasons) {
    auto file = complete_visit(8, 2);
    file.visit.left[1].period = typed<Duration>("9min");
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.below("As found, advised and as left: Timer 1 (trimmed by temperature)"), SizeIs(4));
    EXPECT_THAT(sheet.below("As found, advised and as left: Timer 2 (trimmed by temperature)"), SizeIs(4));
    EXPECT_THAT(marked(sheet), ElementsAre("Period"));
    EXPECT_EQ(sheet.below<SheetTable>("Why: Timer 2").empty(), false);
}

/// A controller that asks for the on-time first, as "Wet run" in steps of a quarter of a minute from 0.1 min
/// on, and has no humidity cut-off.
SettingTemplate firms_own() {
    auto described = generic_template(TimerKind::trimmed);
    described.name = "Shed box";
    for (auto& setting : described.settings) {
        if (setting.setting == TemplateKey::base_on_time) {
            setting.label = "Wet run";
            setting.unit = "min";
            setting.resolution = 0.25;
            setting.least = 0.1;
            setting.most = 30.0;
        }
    }
    std::erase_if(described.settings,
                  [](const TemplateSetting& each) { return each.setting == TemplateKey::humidity_cut_off; });
    std::ranges::swap(described.settings[5], described.settings[6]);
    return described;
}

TEST(SheetSettingsTest, a_described_controller_stands_in_its_labels_order_and_units) {
    auto file = complete_visit(1);
    const auto described = firms_own();
    ASSERT_EQ(described.settings[5].setting, TemplateKey::base_on_time);
    choose_controller(file.house.timers[0], described);
    file.visit.found[0].base_on_time = typed<Duration>("75s");
    file.visit.found[0].humidity_cut_off.reset();
    file.visit.left = {settings_to_enter(advise(file).timers.front())};
    const MadeSheet sheet{file};
    const auto rows = sheet.rows("How long");
    ASSERT_GE(rows.size(), 3U);
    EXPECT_EQ(rows[0][0], "Wet run (Base on-time)") << "before the period, as it asks";
    EXPECT_EQ(rows[0][1], "1.25 min");
    EXPECT_EQ(rows[1][0], "Period (Period)");
    EXPECT_EQ(rows[0][2], rows[0][3]) << "left as advised, rounded to its steps";
    for (const auto& when : sheet.rows("When pads may run")) {
        EXPECT_THAT(when[0], Not(HasSubstr("Humidity cut-off"))) << "it has none";
    }
    EXPECT_THAT(marked(sheet), IsEmpty());
    file.visit.left[0].base_on_time = as_settings(advise(file).timers.front()).base_on_time;
    EXPECT_THAT(marked(MadeSheet{file}), ElementsAre("Wet run (Base on-time)"))
        << "not compared with the advice before rounding";
}

TEST(SheetSettingsTest, what_a_record_holds_beyond_its_controller_is_shown_all_the_same) {
    auto file = complete_visit(1);
    choose_controller(file.house.timers[0], firms_own());
    file.visit.found[0].humidity_cut_off = typed<Fraction>("80%");
    const MadeSheet sheet{file};
    EXPECT_FALSE(sheet.row("Humidity cut-off").empty());
}

TEST(SheetSettingsTest, trim_rows_beyond_those_of_the_controller_are_shown_all_the_same) {
    auto file = complete_visit(1);
    auto described = firms_own();
    described.trim_rows = 1;
    choose_controller(file.house.timers[0], described);
    const auto row = [](const char* above, const char* change) {
        return TrimRow{typed<TemperatureDifference>(above), typed<Duration>(change)};
    };
    file.visit.found[0].trim_rows = {row("1K", "5s"), row("2K", "10s")};
    file.visit.left = {settings_to_enter(advise(file).timers.front())};
    file.visit.left[0].trim_rows = {row("1K", "5s"), row("2K", "10s"), row("3K", "-20s")};
    const MadeSheet sheet{file};
    EXPECT_TRUE(sheet.row("Trim row 1").empty()) << "asked in the controller's own words";
    EXPECT_THAT(texts_of(sheet.row("Trim row 2")),
                ElementsAre("Trim row 2", HasSubstr("10 s longer"), "no row", HasSubstr("10 s longer")));
    EXPECT_THAT(texts_of(sheet.row("Trim row 3")),
                ElementsAre("Trim row 3", "not entered", "no row", HasSubstr("20 s shorter")));
    EXPECT_THAT(marked(sheet), Contains("Trim row 3"));
}

TEST(SheetSettingsTest, trim_rows_left_on_a_fixed_interval_controller_are_shown) {
    auto file = complete_visit(1);
    choose_controller(file.house.timers[0], generic_template(TimerKind::fixed_interval));
    file.visit.found[0].trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("5s")}};
    EXPECT_THAT(texts_of(MadeSheet{file}.row("Trim row 1")),
                ElementsAre("Trim row 1", HasSubstr("5 s longer"), testing::_, testing::_));
}

}  // namespace
}  // namespace wetfront::test
