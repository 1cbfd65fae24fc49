// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"
#include "day/weather_file.h"
#include "demo/demo.h"

namespace wetfront::test {
namespace {

WeatherFile printed_weather() {
    return read_weather_file(run({"example", "weather"}).out, "example", from_si<AbsolutePressure>(101325.0))
        .value();
}

TEST(WeatherExampleTest, it_reads_back_as_whole_days_around_the_example_visit) {
    const auto file = printed_weather();
    ASSERT_EQ(file.runs.size(), 1U);
    EXPECT_TRUE(file.gaps.empty());
    EXPECT_TRUE(file.notes.empty());
    const auto& weather = file.runs.front();
    EXPECT_EQ(weather.hours.size(), 4U * 24U + 1U);
    const auto visited = parse_day(local_date(example_visit().visit.started), "visit").value();
    EXPECT_EQ(days_of(weather, visited, visited).value().hours.size(), 25U);
    EXPECT_EQ(weather.from.utc_offset_minutes, example_visit().visit.started.utc_offset_minutes);
}

TEST(WeatherExampleTest, every_row_says_that_it_is_invented) {
    const auto text = run({"example", "weather"}).out;
    std::istringstream lines{text};
    std::string line;
    std::getline(lines, line);
    int rows = 0;
    while (std::getline(lines, line)) {
        EXPECT_NE(line.find("invented"), std::string::npos) << line;
        ++rows;
    }
    EXPECT_EQ(rows, 97);
}

TEST(WeatherExampleTest, its_hottest_hours_are_in_the_afternoon_of_the_third_day) {
    const auto weather = printed_weather().runs.front();
    std::size_t hottest = 0;
    for (std::size_t h = 0; h < weather.hours.size(); ++h) {
        if (weather.hours[h].dry_bulb > weather.hours[hottest].dry_bulb) {
            hottest = h;
        }
    }
    EXPECT_EQ(hottest, 2U * 24U + 15U);
    EXPECT_NEAR(in_celsius(weather.hours[hottest].dry_bulb), (99.0 - 32.0) / 1.8, 0.006);
}

}  // namespace
}  // namespace wetfront::test
