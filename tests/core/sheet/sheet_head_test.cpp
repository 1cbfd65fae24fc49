// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

TEST(SheetHeadTest, firm_customer_farm_house_and_dates_are_named) {
    const MadeSheet sheet{complete_visit(1)};
    EXPECT_EQ(sheet.fact("Service firm"), "Invented Service");
    EXPECT_EQ(sheet.fact("Customer"), "A. Grower");
    EXPECT_EQ(sheet.fact("Farm"), "Made-up Farm");
    EXPECT_EQ(sheet.fact("House"), "House 7");
    EXPECT_EQ(sheet.fact("Date of work"), "2026-07-01");
    // 1,783,000,000 s after 1970 is 2026-07-02T13:46:40Z.
    EXPECT_EQ(sheet.fact("Date of issue"), "2026-07-02");
}

TEST(SheetHeadTest, work_over_midnight_is_dated_from_and_to) {
    auto file = complete_visit(1);
    file.visit.marks.back().wall.unix_ms += 86'400'000;
    EXPECT_EQ(MadeSheet{file}.fact("Date of work"), "2026-07-01 to 2026-07-02");
}

TEST(SheetHeadTest, a_correction_says_what_it_replaces_and_a_first_sheet_does_not) {
    auto file = complete_visit(1);
    EXPECT_THAT(MadeSheet{file}.texts(), Not(Contains(HasSubstr("replaces"))));
    file.visit.replaces = Id{"visit-0"};
    EXPECT_THAT(MadeSheet{file}.texts(), Contains("This sheet is a correction and replaces sheet visit-0."));
}

TEST(SheetHeadTest, persons_and_instruments_stand_with_role_and_check_date) {
    auto file = complete_visit(1);
    file.visit.instruments.push_back({"Bucket", ""});
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.rows("Person"), ElementsAre(ElementsAre("T. Technician", "service technician"),
                                                  ElementsAre("A. Grower", "grower")));
    EXPECT_THAT(sheet.rows("Instrument"), ElementsAre(ElementsAre("Thermometer 4", "2026-03-14"),
                                                      ElementsAre("Bucket", "not entered")));
}

TEST(SheetHeadTest, without_persons_or_instruments_that_is_said) {
    auto file = complete_visit(1);
    file.visit.persons.clear();
    file.visit.instruments.clear();
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.rows("Person"), ElementsAre(ElementsAre("not entered", "not entered")));
    EXPECT_THAT(sheet.rows("Instrument"), ElementsAre(ElementsAre("not entered", "not entered")));
}

TEST(SheetHeadTest, every_condition_is_printed) {
    const MadeSheet sheet{complete_visit(1)};
    const std::vector<std::pair<std::string, std::string>> expected{
        {"Outside temperature", "32 °C"},
        {"Outside relative humidity", "45 %"},
        {"Barometer", "100.1 kPa"},
        {"Temperature behind the pad", "24.5 °C"},
        {"House temperature", "26.5 °C"},
        {"House relative humidity", "71 %"},
        {"Static pressure", "23 Pa"},
        {"Air speed at the pad face", "1.6 m/s"},
        {"Age of the birds in days", "38"},
        {"Hardness as CaCO3", "210 mg/L"},
        {"Alkalinity as CaCO3", "160 mg/L"},
        {"pH of the make-up water", "7.4"},
        {"Conductivity of the make-up water", "640 µS/cm"},
        {"Elevation", "120 m"},
        {"Design day: hottest outside", "36 °C"},
        {"Design day: wet bulb at that hour", "24 °C"},
        {"Design day: warmest minus coolest", "11 °C"},
        {"Agreed: longest time the pads may be off", "40 min"},
        {"Agreed: house temperature at which the test stops", "31 °C"},
        {"Agreed with", "A. Grower"},
        {"Airflow of the fans that run with the pads", "90 m³/s"},
        {"Humidity sensor", "outside"}};
    for (const auto& [label, value] : expected) {
        EXPECT_EQ(sheet.fact(label), value) << label;
    }
}

// 620 L/min among two equal banks of 18 m: 17.2 L/min for each metre.
TEST(SheetHeadTest, what_was_measured_at_each_bank_stands_in_a_table) {
    const MadeSheet sheet{complete_visit(4, 2)};
    const auto rows = sheet.rows("At the bank");
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_THAT(rows[2], ElementsAre("Bank 3", "24.5 °C", "1.6 m/s, mean of 5 points from 1.4 m/s to 1.8 m/s",
                                     "11 Pa", "17.2 L/(min·m)", testing::MatchesRegex(".+ % to .+ %")));
}

TEST(SheetHeadTest, a_kit_that_nobody_had_leaves_no_gap_but_its_readings_are_printed) {
    auto file = complete_visit(1);
    EXPECT_EQ(MadeSheet{file}.fact("pH of the sump"), "no such fact");
    file.visit.conditions.sump_ph = 8.1;
    EXPECT_EQ(MadeSheet{file}.fact("pH of the sump"), "8.1");
}

TEST(SheetHeadTest, pumps_timers_and_banks_are_described) {
    const MadeSheet sheet{complete_visit(4, 2)};
    EXPECT_THAT(sheet.rows("Pump"), Contains(ElementsAre("Pump 2", "620 L/min", "900 L", "40 L/min", "6 L")));
    EXPECT_THAT(sheet.rows("Timer"),
                Contains(ElementsAre("Timer 2", "trimmed by temperature", "Pump 2", "5 s", "60 s")));
    EXPECT_THAT(sheet.rows("Bank"), Contains(ElementsAre("Bank 3", "Pump 2, from the left end", "18 m",
                                                         "1.5 m", "150 mm", "100 mm", "3 mm", "75 mm")));
}

TEST(SheetHeadTest, each_bank_is_drawn_with_its_pump_at_the_true_end) {
    const MadeSheet sheet{complete_visit(8)};
    const auto drawn = sheet.all<SheetBanks>().at(0).banks;
    ASSERT_EQ(drawn.size(), 8U);
    EXPECT_TRUE(drawn[0].pump_on_left);
    EXPECT_FALSE(drawn[1].pump_on_left);
    EXPECT_EQ(drawn[7].length_m, 18.0);
    EXPECT_EQ(drawn[7].height_m, 1.5);
    // Bank 8: fill 39 + 8 + 1.5 s, wet-through 138 + 16 + 1.5 s, dry-out 2400 + 80 + 1.5 s.
    EXPECT_EQ(MadeSheet::english(drawn[7].caption), "fill 48.5 s, wet-through 155.5 s, dry-out 2481.5 s");
}

TEST(SheetHeadTest, a_bank_that_is_not_described_is_still_drawn) {
    VisitBuilder visit;
    visit.bank(1).length.reset();
    const MadeSheet sheet{visit.file()};
    const auto drawn = sheet.all<SheetBanks>().at(0).banks;
    ASSERT_EQ(drawn.size(), 1U);
    EXPECT_EQ(drawn[0].length_m, 0.0);
    EXPECT_EQ(MadeSheet::english(drawn[0].caption),
              "fill not measured, wet-through not measured, dry-out not measured");
}

}  // namespace
}  // namespace wetfront::test
