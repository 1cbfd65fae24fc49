// SPDX-License-Identifier: Apache-2.0
#include "day/weather_csv.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

using namespace literals;

constexpr const char* plain_heading = "time,dry bulb [degC],relative humidity [%]\n";

Result<WeatherFile> read_rows(const std::string& rows, const std::string& heading = plain_heading) {
    return read_weather_csv(heading + rows, "logger.csv", 98000_Pa);
}

WeatherFile file_of(const std::string& rows, const std::string& heading = plain_heading) {
    auto file = read_rows(rows, heading);
    EXPECT_TRUE(file) << (file ? "" : file.error().text());
    return file ? std::move(file).value() : WeatherFile{};
}

void expect_csv_refused(const std::string& rows, const std::string& where, const std::string& accepted,
                        const std::string& heading = plain_heading) {
    const auto file = read_rows(rows, heading);
    ASSERT_FALSE(file) << where;
    EXPECT_EQ(file.error().item, where) << file.error().text();
    EXPECT_NE(file.error().accepted.find(accepted), std::string::npos) << file.error().text();
}

/// One row, so many hours after 1 July 2026, 10:00 at -05:00.
std::string row_at(int hour, const std::string& values = "30,50") {
    return "2026-07-01T" + std::to_string(10 + hour) + ":00:00-05:00," + values + "\n";
}

TEST(WeatherCsvTest, rows_become_hours_with_the_offset_of_the_file) {
    const auto file = file_of(row_at(0, "30,50") + row_at(1, "32.5,45") + row_at(2, "34,40"));
    ASSERT_EQ(file.runs.size(), 1U);
    const auto& run = file.runs.front();
    EXPECT_EQ(run.source, "logger.csv");
    EXPECT_EQ(to_iso8601(run.from), "2026-07-01T10:00:00.000-05:00");
    ASSERT_EQ(run.hours.size(), 3U);
    EXPECT_NEAR(in_celsius(run.hours[1].dry_bulb), 32.5, 1e-9);
    EXPECT_NEAR(in_si(run.hours[1].relative_humidity), 0.45, 1e-12);
    EXPECT_TRUE(file.gaps.empty());
}

TEST(WeatherCsvTest, columns_stand_in_any_order_with_any_unit_of_theirs) {
    // 86 degF is 30 degC, 68 degF is 20 degC, 29.53 inHg is 100,000 Pa within 2 Pa.
    const auto file =
        file_of("29.53,68,2026-07-01T10:00:00-05:00,86\n29.53,68,2026-07-01T11:00:00-05:00,86\n",
                "pressure [inHg],dew point [degF],time,dry bulb [\u00b0F]\n");
    const auto& air = file.runs.front().hours.front();
    EXPECT_NEAR(in_celsius(air.dry_bulb), 30.0, 1e-9);
    EXPECT_NEAR(in_celsius(air.dew_point.value()), 20.0, 1e-9);
    EXPECT_NEAR(in_si(air.pressure), 100000.0, 2.0);
    EXPECT_TRUE(file.notes.empty());
}

TEST(WeatherCsvTest, a_wet_bulb_is_read_as_one) {
    const auto file =
        file_of(row_at(0, "33,77") + row_at(1, "33,77"), "time,dry bulb [degC],wet bulb [degF]\n");
    EXPECT_NEAR(in_celsius(file.runs.front().hours.front().wet_bulb), 25.0, 1e-9);
}

TEST(WeatherCsvTest, without_a_pressure_the_hours_have_that_of_the_site_and_a_note_says_so) {
    const auto file = file_of(row_at(0) + row_at(1));
    EXPECT_DOUBLE_EQ(in_si(file.runs.front().hours.front().pressure), 98000.0);
    ASSERT_EQ(file.notes.size(), 1U);
    EXPECT_EQ(in_english(file.notes[0], UnitSystem::si),
              "Hours without an air pressure: 2; they have that of the site, 98 kPa.");
    const auto some = file_of(row_at(0, "30,50,100") + row_at(1, "30,50,"),
                              "time,dry bulb [degC],relative humidity [%],pressure [kPa]\n");
    EXPECT_DOUBLE_EQ(in_si(some.runs.front().hours[0].pressure), 100000.0);
    EXPECT_DOUBLE_EQ(in_si(some.runs.front().hours[1].pressure), 98000.0);
    ASSERT_EQ(some.notes.size(), 1U);
    EXPECT_NE(in_english(some.notes[0], UnitSystem::si).find(": 1;"), std::string::npos);
}

TEST(WeatherCsvTest, seconds_may_be_left_out_and_utc_may_be_z) {
    const auto file = file_of("2026-07-01T15:00Z,30,50\n2026-07-01T16:00+00:00,30,50\n");
    EXPECT_EQ(to_iso8601(file.runs.front().from), "2026-07-01T15:00:00.000+00:00");
}

TEST(WeatherCsvTest, the_end_of_summer_time_is_one_hour_after_the_other) {
    const auto file = file_of(
        "2026-11-01T00:00:00-05:00,20,50\n2026-11-01T01:00:00-05:00,20,50\n"
        "2026-11-01T01:00:00-06:00,19,50\n2026-11-01T02:00:00-06:00,18,50\n");
    ASSERT_EQ(file.runs.size(), 1U);
    EXPECT_TRUE(file.gaps.empty());
    ASSERT_EQ(file.runs.front().hours.size(), 4U);
    // In standard time, which is the smaller of the two offsets.
    EXPECT_EQ(to_iso8601(file.runs.front().from), "2026-10-31T23:00:00.000-06:00");
    EXPECT_NEAR(in_celsius(file.runs.front().hours[2].dry_bulb), 19.0, 1e-9);
}

TEST(WeatherCsvTest, the_begin_of_summer_time_leaves_no_gap) {
    const auto file = file_of("2026-03-08T01:00:00-06:00,10,50\n2026-03-08T03:00:00-05:00,10,50\n");
    ASSERT_EQ(file.runs.size(), 1U);
    EXPECT_TRUE(file.gaps.empty());
    EXPECT_EQ(file.runs.front().from.utc_offset_minutes, -360);
}

TEST(WeatherCsvTest, a_clock_put_back_without_its_offset_is_an_hour_twice) {
    expect_csv_refused("2026-11-01T01:00:00-05:00,20,50\n2026-11-01T01:00:00-05:00,20,50\n",
                       "line 3, column 1 (time)", "each hour once; line 2 is the same");
}

TEST(WeatherCsvTest, hours_that_lack_are_gaps_from_hour_to_hour) {
    const auto file = file_of(row_at(0) + row_at(1) + row_at(4) + row_at(5));
    ASSERT_EQ(file.runs.size(), 2U);
    ASSERT_EQ(file.gaps.size(), 1U);
    EXPECT_EQ(local_clock(file.gaps[0].from), "12:00");
    EXPECT_EQ(local_clock(file.gaps[0].to), "13:00");
    EXPECT_EQ(file.gaps[0].cause, WeatherGap::Cause::not_in_file);
    EXPECT_EQ(in_english(gap_words(file.gaps[0]), UnitSystem::si),
              "2026-07-01 12:00 to 2026-07-01 13:00: not in the file");
}

TEST(WeatherCsvTest, an_empty_cell_is_a_gap_and_a_lone_hour_beside_it_too) {
    const auto file = file_of(row_at(0) + row_at(1) + row_at(2, "30,") + row_at(3) + row_at(4, ",50") +
                              row_at(5) + row_at(6));
    ASSERT_EQ(file.runs.size(), 2U);
    EXPECT_EQ(local_clock(file.runs[1].from), "15:00");
    ASSERT_EQ(file.gaps.size(), 3U);
    EXPECT_EQ(in_english(gap_words(file.gaps[0]), UnitSystem::si),
              "2026-07-01 12:00 to 2026-07-01 12:00: a value is missing (from line 4 on)");
    EXPECT_EQ(in_english(gap_words(file.gaps[1]), UnitSystem::si),
              "2026-07-01 13:00: a single hour between two gaps (line 5)");
    EXPECT_EQ(file.gaps[2].line, 6U);
}

TEST(WeatherCsvTest, hours_out_of_order_are_refused_and_not_sorted) {
    expect_csv_refused(row_at(1) + row_at(0), "line 3, column 1 (time)", "hours in order; line 2 is later");
}

TEST(WeatherCsvTest, times_beside_the_full_hours_of_the_file_are_refused) {
    expect_csv_refused("2026-07-01T10:00:00-05:00,30,50\n2026-07-01T10:30:00-05:00,30,50\n",
                       "line 3, column 1 (time)", "whole hours after line 2");
    const auto half = file_of("2026-07-01T10:30:00-05:00,30,50\n2026-07-01T11:30:00-05:00,30,50\n");
    EXPECT_EQ(local_clock(half.runs.front().from), "10:30");
}

TEST(WeatherCsvTest, offsets_of_two_sites_are_refused) {
    expect_csv_refused("2026-07-01T10:00:00-05:00,30,50\n2026-07-01T16:00:00Z,30,50\n",
                       "line 3, column 1 (time)", "at most an hour apart");
}

TEST(WeatherCsvTest, a_time_without_offset_or_date_is_refused) {
    for (const char* time :
         {"2026-07-01T10:00:00", "2026-07-01 10:00", "10:00", "", "7/1/2026 10:00", "2026-02-29T10:00:00Z"}) {
        expect_csv_refused(std::string{time} + ",30,50\n", "line 2, column 1 (time)", "2026-07-01T10:04:05");
    }
}

TEST(WeatherCsvTest, headings_are_refused_by_their_column) {
    const auto refused = [](const std::string& heading, const std::string& where,
                            const std::string& accepted) {
        expect_csv_refused(row_at(0) + row_at(1), where, accepted, heading + "\n");
    };
    refused("when,dry bulb [degC],relative humidity [%]", "line 1", "time");
    refused("time,relative humidity [%]", "line 1", "dry bulb [degC]");
    refused("time,dry bulb [degC]", "line 1", "relative humidity [%], wet bulb");
    refused("time;dry bulb [degC];relative humidity [%]", "line 1", "commas");
    refused("time,dry bulb,relative humidity [%]", "line 1, column 2 (heading)", "as dry bulb [degC]");
    refused("time,dry bulb [%],relative humidity [%]", "line 1, column 2 (heading)", "K, degC or degF");
    refused("time,dry bulb [degC,relative humidity [%]", "line 1, column 2 (heading)", "K, degC or degF");
    refused("time,dry bulb [degC],dry bulb [degF],relative humidity [%]", "line 1, column 3 (heading)",
            "column 2 is the same");
    refused("time,dry bulb [degC],relative humidity [%],time", "line 1, column 4 (heading)",
            "column 1 is the same");
    refused("time,dry bulb [degC],relative humidity [%],dew point [degC]", "line 1, column 4 (heading)",
            "one column of humidity; column 3 is one");
}

TEST(WeatherCsvTest, a_column_that_is_not_used_is_told_and_a_remark_is_not) {
    const auto file = file_of(row_at(0, "30,50,3,fine") + row_at(1, "30,50,4,"),
                              "time,dry bulb [degC],relative humidity [%],wind [m/s],remark\n");
    ASSERT_EQ(file.notes.size(), 2U);
    EXPECT_EQ(in_english(file.notes[0], UnitSystem::si), "Column \"wind [m/s]\" is not used.");
}

TEST(WeatherCsvTest, a_cell_with_a_unit_of_its_own_is_refused) {
    expect_csv_refused(row_at(0, "86degF,50"), "line 2, column 2 (dry bulb)",
                       "its unit stands in the heading, degC");
    expect_csv_refused(row_at(0, "30,fifty"), "line 2, column 3 (relative humidity)", "plain number");
    expect_csv_refused(row_at(0, "30,nan"), "line 2, column 3 (relative humidity)", "plain number");
    expect_csv_refused(row_at(0, "1e400,50"), "line 2, column 2 (dry bulb)", "plain number");
}

TEST(WeatherCsvTest, a_row_of_another_length_is_refused_by_its_line) {
    expect_csv_refused(row_at(0) + row_at(1, "30"), "line 3", "3, as line 1 has");
    expect_csv_refused(row_at(0) + row_at(1, "30,50,1"), "line 3", "3, as line 1 has");
    expect_csv_refused(row_at(0) + "\n" + row_at(1), "line 3", "3, as line 1 has");
}

TEST(WeatherCsvTest, values_outside_the_range_of_moist_air_are_named_with_line_and_column) {
    expect_csv_refused(row_at(0) + row_at(1, "95,50"), "line 3, column 2 (dry bulb)", "-40 to 80 degC");
    expect_csv_refused(row_at(0, "30,101"), "line 2, column 3 (relative humidity)", "0 to 100 %");
    expect_csv_refused(row_at(0, "30,31"), "line 2, column 3 (wet bulb)", "at most the dry bulb",
                       "time,dry bulb [degC],wet bulb [degC]\n");
    expect_csv_refused(row_at(0, "30,31"), "line 2, column 3 (dew point)", "the dry bulb, 30 degC",
                       "time,dry bulb [degC],dew point [degC]\n");
    expect_csv_refused(row_at(0, "30,50,10"), "line 2, column 4 (air pressure)", "60 to 110 kPa",
                       "time,dry bulb [degC],relative humidity [%],pressure [kPa]\n");
}

TEST(WeatherCsvTest, a_file_without_rows_or_headings_or_of_other_bytes_is_refused) {
    expect_csv_refused("", "line 2", "a row for each hour");
    EXPECT_EQ(read_rows("", "").error().item, "weather file");
    EXPECT_EQ(read_rows("\xff\xfe", "").error().accepted, "text in UTF-8");
    EXPECT_FALSE(read_rows(row_at(0)));  // one hour alone
    EXPECT_EQ(read_rows(std::string(most_weather_bytes, 'x')).error().item, "weather file");
}

TEST(WeatherCsvTest, a_byte_order_mark_is_no_part_of_the_first_heading) {
    EXPECT_EQ(file_of(row_at(0) + row_at(1), std::string{"\xEF\xBB\xBF"} + plain_heading).runs.size(), 1U);
}

TEST(WeatherCsvTest, what_is_written_reads_back_to_a_hundredth_with_its_remark) {
    const auto weather = file_of(row_at(0, "33.333,44.444") + row_at(1, "21,100")).runs.front();
    const auto text = weather_csv_text(weather, "say \"invented\", twice");
    EXPECT_NE(text.find(",\"say \"\"invented\"\", twice\"\r\n"), std::string::npos) << text;
    const auto back = read_weather_csv(text, "back", 98000_Pa).value();
    ASSERT_EQ(back.runs.size(), 1U);
    EXPECT_TRUE(back.notes.empty());
    EXPECT_EQ(back.runs.front().from, weather.from);
    ASSERT_EQ(back.runs.front().hours.size(), 2U);
    EXPECT_NEAR(in_celsius(back.runs.front().hours[0].dry_bulb), 33.33, 1e-9);
    EXPECT_NEAR(in_si(back.runs.front().hours[0].relative_humidity), 0.4444, 1e-9);
    EXPECT_NEAR(in_si(back.runs.front().hours[1].relative_humidity), 1.0, 1e-9);
}

}  // namespace
}  // namespace wetfront
