// SPDX-License-Identifier: Apache-2.0
#include "tables/visit_tables.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <map>

#include "support/visit_builder.h"

namespace wetfront {
namespace {

using test::VisitBuilder;
using testing::Contains;
using testing::Key;
using testing::Pair;
using testing::SizeIs;

using RowByName = std::map<std::string, TableCell>;

std::vector<RowByName> rows_of(const Table& table) {
    std::vector<RowByName> rows;
    for (const auto& row : table.rows) {
        EXPECT_EQ(row.size(), table.columns.size());
        auto& named = rows.emplace_back();
        for (std::size_t i = 0; i < row.size(); ++i) {
            named[table.columns[i]] = row[i];
        }
        EXPECT_EQ(named.size(), table.columns.size()) << "a heading stands twice";
    }
    return rows;
}

TableCell text(const char* words) {
    return std::string{words};
}

VisitBuilder timed_visit() {
    VisitBuilder visit{1};
    visit.run(1, {.fill = 45.0, .wet_through = 140.0});
    return visit;
}

TEST(ReadingsTableTest, each_reading_is_a_row_with_its_seconds_and_its_bank) {
    const auto file = timed_visit().file();
    const auto rows = rows_of(readings_table({file}));
    const auto fill =
        std::ranges::find_if(rows, [](const auto& row) { return row.at("reading") == text("fill"); });
    ASSERT_NE(fill, rows.end());
    EXPECT_NEAR(std::get<double>(fill->at("value_s")), 45.0, 1e-9);
    EXPECT_EQ(fill->at("bank"), TableCell{file.house.banks[0].id.text});
    EXPECT_EQ(fill->at("visit"), TableCell{file.visit.id.text});
    EXPECT_EQ(fill->at("used"), TableCell{true});
    EXPECT_EQ(fill->at("not_used_because"), TableCell{});
}

TEST(ReadingsTableTest, a_reading_that_was_set_aside_is_there_with_its_reason) {
    auto file = timed_visit().file();
    const auto readings = timings_of(file).readings;
    file.visit.set_aside = {{readings.front().end_mark, "hose kinked"}};
    const auto rows = rows_of(readings_table({file}));
    ASSERT_THAT(rows, SizeIs(readings.size()));
    EXPECT_EQ(rows[0].at("used"), TableCell{false});
    EXPECT_EQ(rows[0].at("not_used_because"), text("set aside"));
    EXPECT_EQ(rows[0].at("set_aside_because"), text("hose kinked"));
}

TEST(SettingsTableTest, found_advised_and_left_are_rows_of_one_timer) {
    auto file = timed_visit().file();
    TimerSettings found;
    found.timer = file.house.timers[0].id;
    found.period = Entered<Duration>::parse("5min", "period").value();
    found.start_temperature = Entered<Temperature>::parse("82degF", "start").value();
    found.pad_hours_from = TimeOfDay{9 * 60 + 30};
    found.trim_rows = {{Entered<TemperatureDifference>::parse("2K", "above").value(),
                        Entered<Duration>::parse("-10s", "change").value()}};
    file.visit.found = {found};
    file.visit.left = {found};
    const auto rows = rows_of(settings_table({file}));
    ASSERT_THAT(rows, SizeIs(3));
    EXPECT_EQ(rows[0].at("which"), text("found"));
    EXPECT_EQ(rows[1].at("which"), text("advised"));
    EXPECT_EQ(rows[2].at("which"), text("left"));
    EXPECT_EQ(rows[0].at("period_s"), TableCell{300.0});
    EXPECT_NEAR(std::get<double>(rows[0].at("start_temperature_degC")), (82.0 - 32.0) / 1.8, 1e-9);
    EXPECT_EQ(rows[0].at("pad_hours_from"), text("09:30"));
    EXPECT_EQ(rows[0].at("trim_1_above_target_K"), TableCell{2.0});
    EXPECT_EQ(rows[0].at("trim_1_change_s"), TableCell{-10.0});
    EXPECT_EQ(rows[0].at("trim_2_change_s"), TableCell{});
    EXPECT_EQ(rows[0].at("rinse_at"), TableCell{});
}

TEST(SettingsTableTest, a_timer_of_which_nothing_was_entered_has_its_advice_alone) {
    const auto rows = rows_of(settings_table({timed_visit().file()}));
    ASSERT_THAT(rows, SizeIs(1));
    EXPECT_EQ(rows[0].at("which"), text("advised"));
}

TEST(FindingsTableTest, a_finding_names_its_rule_severity_remedy_and_source) {
    auto file = timed_visit().file();
    TimerSettings found;
    found.timer = file.house.timers[0].id;
    found.period = Entered<Duration>::parse("5min", "period").value();
    found.base_on_time = Entered<Duration>::parse("20s", "base").value();  // ends before the water is there
    file.visit.found = {found};
    const auto rows = rows_of(findings_table({file}, UnitSystem::si));
    const auto about = std::ranges::find_if(rows, [](const auto& row) {
        return row.at("severity") == text("harm") || row.at("severity") == text("fault");
    });
    ASSERT_NE(about, rows.end());
    EXPECT_EQ(about->at("on"), text("found"));
    for (const char* column : {"rule", "message", "remedy", "source"}) {
        EXPECT_NE(about->at(column), TableCell{}) << column;
    }
}

TEST(VisitTablesTest, without_visits_the_headings_stand_alone) {
    for (const auto& table : {readings_table({}), settings_table({}), findings_table({}, UnitSystem::us)}) {
        EXPECT_TRUE(table.rows.empty()) << table.name;
        EXPECT_GT(table.columns.size(), 10U) << table.name;
    }
}

}  // namespace
}  // namespace wetfront
