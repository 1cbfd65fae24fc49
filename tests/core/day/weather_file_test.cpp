// SPDX-License-Identifier: Apache-2.0
#include "day/weather_file.h"

#include <gtest/gtest.h>

#include "day/epw.h"
#include "made_epw.h"

namespace wetfront {
namespace {

using namespace literals;
using namespace std::chrono_literals;
using std::chrono::July;
using std::chrono::June;

constexpr auto first_july_26 = 2026y / July / 1;

/// Hours from that time on, the dry bulb counting them up from 20 degC in tenths.
Weather counted(const char* from, int hours) {
    Weather weather{"counted", parse_iso8601(from, "test").value(), {}};
    for (int h = 0; h < hours; ++h) {
        weather.hours.push_back(air_from_humidity(celsius(20.0 + 0.1 * h), 50_percent, 101325_Pa).value());
    }
    return weather;
}

double tenths_above_20(const MoistAir& air) {
    return (in_celsius(air.dry_bulb) - 20.0) / 0.1;
}

TEST(WeatherFileTest, days_are_cut_from_midnight_to_midnight_of_the_offset) {
    const auto weather = counted("2026-06-30T22:00:00-06:00", 80);
    const auto cut = days_of(weather, first_july_26, 2026y / July / 2).value();
    EXPECT_EQ(to_iso8601(cut.from), "2026-07-01T00:00:00.000-06:00");
    ASSERT_EQ(cut.hours.size(), 49U);
    EXPECT_NEAR(tenths_above_20(cut.hours.front()), 2.0, 1e-9);
    EXPECT_NEAR(tenths_above_20(cut.hours.back()), 50.0, 1e-9);
    EXPECT_EQ(cut.source, "counted");
}

TEST(WeatherFileTest, one_day_has_25_hours_on_both_sides_of_it) {
    const auto exact = counted("2026-07-01T00:00:00-06:00", 25);
    EXPECT_EQ(days_of(exact, first_july_26, first_july_26).value().hours.size(), 25U);
    EXPECT_FALSE(days_of(counted("2026-07-01T00:00:00-06:00", 24), first_july_26, first_july_26));
    EXPECT_FALSE(days_of(counted("2026-07-01T01:00:00-06:00", 30), first_july_26, first_july_26));
}

TEST(WeatherFileTest, hours_beside_midnight_give_the_one_before_and_the_one_behind) {
    const auto cut = days_of(counted("2026-06-30T22:30:00-06:00", 40), first_july_26, first_july_26).value();
    EXPECT_EQ(local_clock(cut.from), "23:30");
    EXPECT_EQ(local_date(cut.from), "2026-06-30");
    EXPECT_EQ(cut.hours.size(), 26U);  // to 00:30 of the 2nd
}

TEST(WeatherFileTest, days_that_are_not_there_are_refused_with_what_is) {
    const auto cut = days_of(counted("2026-07-01T00:00:00-06:00", 30), first_july_26, 2026y / July / 2);
    ASSERT_FALSE(cut);
    EXPECT_EQ(cut.error().read, "2026-07-01 00:00 to 2026-07-03 00:00");
    EXPECT_EQ(cut.error().accepted, "the weather goes from 2026-07-01 00:00 to 2026-07-02 05:00");
}

TEST(WeatherFileTest, dates_the_wrong_way_round_or_of_no_calendar_are_refused) {
    const auto weather = counted("2026-06-20T00:00:00-06:00", 500);
    EXPECT_FALSE(days_of(weather, 2026y / July / 2, first_july_26));
    EXPECT_FALSE(days_of(weather, 2026y / June / 31, first_july_26));
    EXPECT_EQ(parse_day("2026-07-01", "--from").value(), first_july_26);
    for (const char* text : {"2026-02-29", "2026-7-1", "today", "", "2026-07-01T00:00:00Z"}) {
        const auto day = parse_day(text, "--from");
        ASSERT_FALSE(day) << text;
        EXPECT_EQ(day.error().item, "--from");
    }
}

WeatherFile with_a_gap() {
    test::MadeEpw epw{2021};
    epw.with(test::MadeEpw::line_of(182, 10), 7, "99.9");
    return read_epw(epw.text()).value();
}

TEST(WeatherFileTest, days_of_a_file_come_from_the_run_that_has_them_all) {
    const auto file = with_a_gap();
    const auto before = days_of(file, 2021y / June / 28, 2021y / June / 30).value();
    EXPECT_EQ(to_iso8601(before.from), "2021-06-28T00:00:00.000-06:00");
    EXPECT_EQ(before.hours.size(), 73U);
    const auto behind = days_of(file, 2021y / July / 2, 2021y / July / 2).value();
    EXPECT_EQ(to_iso8601(behind.from), "2021-07-02T00:00:00.000-06:00");
}

TEST(WeatherFileTest, days_with_a_gap_among_them_are_refused_by_its_hours) {
    const auto file = with_a_gap();
    const auto cut = days_of(file, 2021y / June / 30, 2021y / July / 1);
    ASSERT_FALSE(cut);
    EXPECT_NE(cut.error().accepted.find("2021-07-01 10:00 to 2021-07-01 10:00: a value is missing"),
              std::string::npos)
        << cut.error().text();
    const auto all = whole_of(file);
    ASSERT_FALSE(all);
    EXPECT_NE(all.error().accepted.find("2021-07-01 10:00"), std::string::npos);
}

TEST(WeatherFileTest, a_file_without_gaps_is_one_weather) {
    EXPECT_EQ(whole_of(read_epw(test::MadeEpw{2021}.text()).value()).value().hours.size(), 8760U);
    // What lacks before the first hour and behind the last breaks nothing.
    test::MadeEpw ends{2021};
    ends.with(9, 7, "99.9").with(8768, 7, "99.9");
    EXPECT_EQ(whole_of(read_epw(ends.text()).value()).value().hours.size(), 8758U);
}

TEST(WeatherFileTest, the_first_day_of_a_year_begins_an_hour_late_and_is_refused) {
    const auto file = read_epw(test::MadeEpw{2021}.text()).value();
    const auto cut = days_of(file, 2021y / 1 / 1, 2021y / 1 / 3);
    ASSERT_FALSE(cut);
    EXPECT_NE(cut.error().accepted.find("from 2021-01-01 01:00"), std::string::npos);
    EXPECT_TRUE(days_of(file, 2021y / 12 / 31, 2021y / 12 / 31));
}

TEST(WeatherFileTest, the_kind_of_a_file_is_told_by_how_it_begins) {
    EXPECT_EQ(read_weather_file(test::MadeEpw{2021}.text(), "x", 101325_Pa).value().runs.front().source,
              "Inventon, Nowhere, XXX, made for tests");
    EXPECT_EQ(read_weather_file("time,dry bulb [degC],relative humidity [%]\n2026-07-01T10:00:00Z,30,50\n"
                                "2026-07-01T11:00:00Z,30,50\n",
                                "x", 101325_Pa)
                  .value()
                  .runs.front()
                  .source,
              "x");
}

}  // namespace
}  // namespace wetfront
