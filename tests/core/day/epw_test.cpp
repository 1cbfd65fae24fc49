// SPDX-License-Identifier: Apache-2.0
#include "day/epw.h"

#include <gtest/gtest.h>

#include "made_epw.h"

namespace wetfront {
namespace {

using test::MadeEpw;

WeatherFile read(const MadeEpw& epw) {
    auto file = read_epw(epw.text());
    EXPECT_TRUE(file) << (file ? "" : file.error().text());
    return file ? std::move(file).value() : WeatherFile{};
}

void expect_refused_at(const MadeEpw& epw, const std::string& where, const std::string& accepted) {
    const auto file = read_epw(epw.text());
    ASSERT_FALSE(file) << where;
    EXPECT_EQ(file.error().item, where) << file.error().text();
    EXPECT_NE(file.error().accepted.find(accepted), std::string::npos) << file.error().text();
    EXPECT_EQ(file.error().kind, Error::Kind::bad_input);
}

std::string clock_of(WallTime time) {
    return local_date(time) + " " + local_clock(time);
}

WallTime later(WallTime time, std::size_t hours) {
    time.unix_ms += static_cast<std::int64_t>(hours) * 3'600'000;
    return time;
}

std::vector<std::string> notes_of(const WeatherFile& file) {
    std::vector<std::string> notes;
    for (const auto& note : file.notes) {
        notes.push_back(in_english(note, UnitSystem::si));
    }
    return notes;
}

constexpr int first_july = 182;  // day of a year without 29 February

TEST(EpwTest, a_record_stands_for_the_end_of_its_hour_in_standard_time) {
    const auto file = read(MadeEpw{2021}.with(MadeEpw::line_of(first_july, 15), 7, "37.5"));
    ASSERT_EQ(file.runs.size(), 1U);
    const auto& run = file.runs.front();
    EXPECT_EQ(to_iso8601(run.from), "2021-01-01T01:00:00.000-06:00");
    ASSERT_EQ(run.hours.size(), 8760U);
    EXPECT_EQ(clock_of(later(run.from, 8759)), "2022-01-01 00:00");
    const std::size_t at = 24 * (first_july - 1) + 14;
    EXPECT_EQ(clock_of(later(run.from, at)), "2021-07-01 15:00");
    EXPECT_DOUBLE_EQ(in_celsius(run.hours.at(at).dry_bulb), 37.5);
    EXPECT_DOUBLE_EQ(in_celsius(run.hours.at(at + 1).dry_bulb), 30.0);
    EXPECT_TRUE(file.gaps.empty());
    EXPECT_TRUE(file.notes.empty());
}

TEST(EpwTest, the_station_is_the_source) {
    EXPECT_EQ(read(MadeEpw{2021}).runs.front().source, "Inventon, Nowhere, XXX, made for tests");
}

TEST(EpwTest, a_time_zone_of_part_hours_is_taken_to_the_minute) {
    const auto file = read(MadeEpw{2021}.with(1, 9, "5.75"));
    EXPECT_EQ(to_iso8601(file.runs.front().from), "2021-01-01T01:00:00.000+05:45");
}

TEST(EpwTest, the_dew_point_comes_before_the_humidity_that_is_printed_coarser) {
    const auto air = read(MadeEpw{2021}).runs.front().hours.front();
    EXPECT_NEAR(in_celsius(air.dew_point.value()), 15.0, 1e-9);
    EXPECT_DOUBLE_EQ(in_si(air.pressure), 100000.0);
    const auto without = read(MadeEpw{2021}.with(9, 8, "99.9")).runs.front().hours;
    EXPECT_DOUBLE_EQ(in_si(without.at(0).relative_humidity), 0.40);
    EXPECT_NEAR(in_celsius(without.at(1).dew_point.value()), 15.0, 1e-9);
}

TEST(EpwTest, missing_values_end_a_run_and_are_told_from_hour_to_hour) {
    MadeEpw epw{2021};
    for (const int hour : {10, 11, 12}) {
        epw.with(MadeEpw::line_of(first_july, hour), 7, "99.9");
    }
    const auto file = read(epw);
    ASSERT_EQ(file.runs.size(), 2U);
    EXPECT_EQ(clock_of(later(file.runs[0].from, file.runs[0].hours.size() - 1)), "2021-07-01 09:00");
    EXPECT_EQ(clock_of(file.runs[1].from), "2021-07-01 13:00");
    ASSERT_EQ(file.gaps.size(), 1U);
    EXPECT_EQ(clock_of(file.gaps[0].from), "2021-07-01 10:00");
    EXPECT_EQ(clock_of(file.gaps[0].to), "2021-07-01 12:00");
    EXPECT_EQ(file.gaps[0].cause, WeatherGap::Cause::value_missing);
    EXPECT_EQ(file.gaps[0].line, MadeEpw::line_of(first_july, 10));
}

TEST(EpwTest, each_missing_code_of_the_format_is_one_and_so_is_nothing) {
    for (const char* code : {"99.9", "99.90", "999", ""}) {
        EXPECT_EQ(read(MadeEpw{2021}.with(20, 7, code)).gaps.size(), 1U) << code;
    }
    for (const char* code : {"999", "999.", "9999", ""}) {
        auto epw = MadeEpw{2021}.with(20, 8, "99.9").with(20, 9, code);
        EXPECT_EQ(read(epw).gaps.size(), 1U) << code;
    }
    EXPECT_TRUE(read(MadeEpw{2021}.with(20, 9, "999")).gaps.empty());  // the dew point is there
}

TEST(EpwTest, an_hour_without_pressure_has_that_of_the_elevation_and_a_note) {
    for (const char* code : {"999999", "999999.", ""}) {
        const auto file = read(MadeEpw{2021}.with(9, 10, code));
        EXPECT_TRUE(file.gaps.empty());
        // ASHRAE Fundamentals 2017 ch. 1 eq. 3 at 200 m, by hand: 101325 (1 - 0.00451154)^5.2559 = 98,945 Pa.
        EXPECT_NEAR(in_si(file.runs.front().hours.front().pressure), 98945.0, 1.0);
        EXPECT_EQ(notes_of(file),
                  std::vector<std::string>{"Hours without an air pressure: 1; they have that of the standard "
                                           "atmosphere at the station's elevation, 98.95 kPa."});
    }
}

TEST(EpwTest, a_year_of_several_years_is_dated_as_one_without_a_jump) {
    const auto file = read(MadeEpw{0, false, [](int month) { return 1990 + month; }});
    ASSERT_EQ(file.runs.size(), 1U);
    EXPECT_EQ(to_iso8601(file.runs.front().from), "2001-01-01T01:00:00.000-06:00");
    EXPECT_EQ(file.runs.front().hours.size(), 8760U);
    EXPECT_TRUE(file.gaps.empty());
    EXPECT_EQ(notes_of(file),
              std::vector<std::string>{"A year made of months of several years; it is dated 2001."});
}

TEST(EpwTest, a_typical_year_with_29_february_is_dated_as_a_leap_year) {
    const auto file = read(MadeEpw{0, true, [](int month) { return month == 2 ? 1996 : 1990 + month; }});
    EXPECT_EQ(local_date(file.runs.front().from), "2004-01-01");
    EXPECT_EQ(file.runs.front().hours.size(), 8784U);
}

TEST(EpwTest, a_leap_year_has_8784_hours) {
    const auto file = read(MadeEpw{2020, true});
    ASSERT_EQ(file.runs.size(), 1U);
    EXPECT_EQ(file.runs.front().hours.size(), 8784U);
    EXPECT_EQ(clock_of(later(file.runs.front().from, 8783)), "2021-01-01 00:00");
}

TEST(EpwTest, a_leap_year_without_its_29_february_has_a_gap_there) {
    const auto file = read(MadeEpw{2020});
    ASSERT_EQ(file.runs.size(), 2U);
    ASSERT_EQ(file.gaps.size(), 1U);
    EXPECT_EQ(clock_of(file.gaps[0].from), "2020-02-29 01:00");
    EXPECT_EQ(clock_of(file.gaps[0].to), "2020-03-01 00:00");
    EXPECT_EQ(file.gaps[0].cause, WeatherGap::Cause::not_in_file);
    EXPECT_EQ(clock_of(file.runs[1].from), "2020-03-01 01:00");
}

TEST(EpwTest, 29_february_against_the_header_is_refused_in_its_line) {
    const auto leap_day = MadeEpw::line_of(31 + 28 + 1, 1);
    const auto where = "line " + std::to_string(leap_day) + ", column 2 (month, day, hour)";
    expect_refused_at(MadeEpw{2020, true}.with(5, 2, "No"), where, "line 5 says that leap years are not");
    expect_refused_at(MadeEpw{2021, true}, where, "that year has no 29 February");
    expect_refused_at(MadeEpw{2020, false}.with(5, 2, "Yes"), where, "2/29: line 5 says");
}

TEST(EpwTest, a_daylight_saving_period_moves_no_hour_and_is_told) {
    const auto plain = read(MadeEpw{2021});
    const auto file = read(MadeEpw{2021}.with(5, 3, "3/14").with(5, 4, "2nd Sunday in November"));
    EXPECT_EQ(file.runs.front().from, plain.runs.front().from);
    EXPECT_EQ(file.runs.front().hours.size(), 8760U);
    EXPECT_EQ(notes_of(file),
              std::vector<std::string>{
                  "The file names daylight saving from 3/14 to 2nd Sunday in November; its hours are in "
                  "standard time all year, as the format has them."});
}

TEST(EpwTest, both_spellings_of_the_holidays_line_and_both_line_ends_are_read) {
    MadeEpw epw{2021};
    epw.line(5) = "HOLIDAYS/DAYLIGHT SAVING,No,0,0,0";
    EXPECT_EQ(read(epw).runs.front().hours.size(), 8760U);
    EXPECT_EQ(read_epw(epw.text("\r\n")).value().runs.front().hours.size(), 8760U);
    EXPECT_EQ(read_epw(epw.text() + "\n\n").value().runs.front().hours.size(), 8760U);
}

TEST(EpwTest, a_dew_point_a_tenth_above_the_dry_bulb_is_saturated_air_and_more_is_refused) {
    const auto file = read(MadeEpw{2021}.with(9, 8, "30.1"));
    EXPECT_NEAR(in_si(file.runs.front().hours.front().relative_humidity), 1.0, 1e-12);
    expect_refused_at(MadeEpw{2021}.with(9, 8, "30.2"), "line 9, column 8 (dew point)",
                      "to the dry bulb, 30 degC");
}

TEST(EpwTest, header_lines_that_are_wrong_are_named_with_line_and_column) {
    const auto with_header = [](std::size_t line, const char* text) {
        MadeEpw epw{2021};
        epw.line(line) = text;
        return epw;
    };
    expect_refused_at(with_header(2, "TYPICAL/EXTREME PERIODS,0"), "line 2", "DESIGN CONDITIONS");
    expect_refused_at(with_header(7, "COMMENTS 1,twice"), "line 7", "COMMENTS 2");
    expect_refused_at(with_header(8, "2021,1,1,1"), "line 8", "DATA PERIODS");
    expect_refused_at(with_header(1, "LOCATION,Inventon,Nowhere"), "line 1", "at least 10 columns, not 3");
    expect_refused_at(MadeEpw{2021}.with(1, 9, "15"), "line 1, column 9 (time zone)", "-12 to 14 h");
    expect_refused_at(MadeEpw{2021}.with(1, 9, "-6.001"), "line 1, column 9 (time zone)", "whole minutes");
    expect_refused_at(MadeEpw{2021}.with(1, 9, "six"), "line 1, column 9 (time zone)", "number");
    expect_refused_at(MadeEpw{2021}.with(1, 10, "4500"), "line 1, column 10 (elevation)", "-500 to 4000 m");
    expect_refused_at(MadeEpw{2021}.with(1, 10, ""), "line 1, column 10 (elevation)", "number");
    expect_refused_at(MadeEpw{2021}.with(5, 2, "Perhaps"), "line 5, column 2 (leap years observed)",
                      "Yes or No");
    expect_refused_at(MadeEpw{2021}.with(5, 3, "3/14"), "line 5, column 4 (daylight saving)", "both days");
    expect_refused_at(with_header(5, "HOLIDAYS/DAYLIGHT SAVINGS,No"), "line 5", "at least 4 columns");
    expect_refused_at(MadeEpw{2021}.with(8, 2, "2"), "line 8, column 2 (data periods)", "from 1 to 1");
    expect_refused_at(MadeEpw{2021}.with(8, 3, "4"), "line 8, column 3 (records an hour)", "from 1 to 1");
    expect_refused_at(MadeEpw{2021}.with(8, 6, "6/1"), "line 8, column 6 (first day)", "a whole year");
    expect_refused_at(MadeEpw{2021}.with(8, 7, "1/7"), "line 8, column 7 (last day)", "a whole year");
    expect_refused_at(with_header(8, "DATA PERIODS,1,1,Data"), "line 8", "at least 7 columns");
}

TEST(EpwTest, dates_of_the_data_period_are_read_in_the_ways_in_which_they_are_written) {
    for (const auto& [first, last] :
         {std::pair{"1/1", "12/31"}, std::pair{"01/01/2021", "12/31/2021"}, std::pair{"1", "365"}}) {
        EXPECT_TRUE(read_epw(MadeEpw{2021}.with(8, 6, first).with(8, 7, last).text())) << first;
    }
}

TEST(EpwTest, a_file_cut_short_anywhere_is_refused_and_nothing_of_it_is_used) {
    const auto text = MadeEpw{2021}.text();
    for (const double share : {0.0, 0.00005, 0.0003, 0.2, 0.5, 0.75, 0.999}) {
        const auto length = static_cast<std::size_t>(share * static_cast<double>(text.size()));
        EXPECT_FALSE(read_epw(text.substr(0, length))) << share;
    }
    const auto day_short = read_epw(text.substr(0, text.rfind("2021,12,31,24")));
    ASSERT_FALSE(day_short);
    EXPECT_EQ(day_short.error().item, "line 8767");
    EXPECT_EQ(day_short.error().read, "8759 records");
    EXPECT_NE(day_short.error().accepted.find("8760"), std::string::npos);
}

TEST(EpwTest, a_line_of_34_or_36_columns_is_refused_by_its_number) {
    MadeEpw fewer{2021};
    auto& cut = fewer.line(4000);
    cut.resize(cut.size() - 2);
    expect_refused_at(fewer, "line 4000", "35 columns");
    MadeEpw more{2021};
    more.line(4001) += ",0";
    expect_refused_at(more, "line 4001", "35 columns");
}

TEST(EpwTest, an_hour_left_out_twice_or_out_of_turn_is_refused_in_its_line) {
    MadeEpw left_out{2021};
    left_out.lines.erase(left_out.lines.begin() + 100);
    expect_refused_at(left_out, "line 101, column 2 (month, day, hour)", "1/4 hour 21");
    MadeEpw twice{2021};
    twice.lines.insert(twice.lines.begin() + 100, twice.line(100));
    expect_refused_at(twice, "line 101, column 2 (month, day, hour)", "1/4 hour 21");
    MadeEpw longer{2021};
    longer.lines.push_back(MadeEpw::record(2022, 1, 1, 1));
    expect_refused_at(longer, "line 8769", "a year is over");
}

TEST(EpwTest, values_outside_the_format_or_outside_moist_air_are_named_with_line_and_column) {
    expect_refused_at(MadeEpw{2021}.with(50, 7, "70"), "line 50, column 7 (dry bulb)", "below 70");
    expect_refused_at(MadeEpw{2021}.with(50, 7, "-70"), "line 50, column 7 (dry bulb)", "above -70");
    expect_refused_at(MadeEpw{2021}.with(50, 7, "hot"), "line 50, column 7 (dry bulb)", "number");
    expect_refused_at(MadeEpw{2021}.with(50, 7, "-45").with(50, 8, "-50"), "line 50, column 7 (dry bulb)",
                      "-40 to 80 degC");
    expect_refused_at(MadeEpw{2021}.with(50, 8, "-71"), "line 50, column 8 (dew point)", "above -70");
    expect_refused_at(MadeEpw{2021}.with(50, 9, "111"), "line 50, column 9 (relative humidity)", "0 to 110");
    expect_refused_at(MadeEpw{2021}.with(50, 9, "-1"), "line 50, column 9 (relative humidity)", "0 to 110");
    expect_refused_at(MadeEpw{2021}.with(50, 8, "99.9").with(50, 9, "105"),
                      "line 50, column 9 (relative humidity)", "0 to 100 %");
    expect_refused_at(MadeEpw{2021}.with(50, 10, "120000"), "line 50, column 10 (air pressure)",
                      "below 120000");
    expect_refused_at(MadeEpw{2021}.with(50, 10, "115000"), "line 50, column 10 (air pressure)",
                      "60 to 110 kPa");
    expect_refused_at(MadeEpw{2021}.with(50, 2, "13"), "line 50, column 2 (month)", "1 to 12");
    expect_refused_at(MadeEpw{2021}.with(50, 4, "25"), "line 50, column 4 (hour)", "1 to 24");
    expect_refused_at(MadeEpw{2021}.with(50, 5, "61"), "line 50, column 5 (minute)", "0 to 60");
    expect_refused_at(MadeEpw{2021}.with(50, 1, "21"), "line 50, column 1 (year)", "1900 to 2199");
}

TEST(EpwTest, a_file_without_two_hours_in_a_row_is_refused) {
    MadeEpw epw{2021};
    for (std::size_t line = 9; line <= epw.lines.size(); ++line) {
        epw.with(line, 7, line % 2 == 0 ? "30" : "99.9");
    }
    const auto file = read_epw(epw.text());
    ASSERT_FALSE(file);
    EXPECT_NE(file.error().accepted.find("two hours in a row"), std::string::npos);
}

TEST(EpwTest, a_text_of_more_than_8_million_bytes_is_refused_unread) {
    const auto file = read_epw("LOCATION," + std::string(most_weather_bytes, 'x'));
    ASSERT_FALSE(file);
    EXPECT_EQ(file.error().item, "weather file");
}

}  // namespace
}  // namespace wetfront
