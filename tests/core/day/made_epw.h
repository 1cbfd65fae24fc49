// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

namespace wetfront::test {

/// An EPW file made up for tests, line by line, so that each can break what it is about. Every record says 30
/// degC, dew point 15 degC, 40 % and 100,000 Pa.
struct MadeEpw {
    std::vector<std::string> lines;

    /// Of a year; with 29 February or without. Years of typical months come from `year_of_month` (1 to 12).
    explicit MadeEpw(int year, bool leap_day = false, const std::function<int(int)>& year_of_month = {}) {
        lines = {"LOCATION,Inventon,Nowhere,XXX,made for tests,000000,35.0,-95.0,-6.0,200.0",
                 "DESIGN CONDITIONS,0",
                 "TYPICAL/EXTREME PERIODS,0",
                 "GROUND TEMPERATURES,0",
                 std::string{"HOLIDAYS/DAYLIGHT SAVINGS,"} + (leap_day ? "Yes" : "No") + ",0,0,0",
                 "COMMENTS 1,made for tests",
                 "COMMENTS 2,",
                 "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31"};
        constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int month = 1; month <= 12; ++month) {
            const int last = days.at(static_cast<std::size_t>(month - 1)) + (month == 2 && leap_day ? 1 : 0);
            for (int day = 1; day <= last; ++day) {
                for (int hour = 1; hour <= 24; ++hour) {
                    lines.push_back(record(year_of_month ? year_of_month(month) : year, month, day, hour));
                }
            }
        }
    }

    static std::string record(int year, int month, int day, int hour,
                              const std::string& air = "30.0,15.0,40,100000") {
        std::string text = std::to_string(year) + "," + std::to_string(month) + "," + std::to_string(day) +
                           "," + std::to_string(hour) + ",60,?9,";
        text += air;
        for (int column = 11; column <= 35; ++column) {
            text += ",0";
        }
        return text;
    }

    /// Line from 1 of an hour in a year without 29 February.
    static std::size_t line_of(int day_of_year, int hour) {
        return 8 + static_cast<std::size_t>(24 * (day_of_year - 1) + hour);
    }
    std::string& line(std::size_t number) { return lines.at(number - 1); }
    /// Puts other text into a column (from 1) of a line.
    MadeEpw& with(std::size_t number, std::size_t column, const std::string& cell) {
        std::string& text = line(number);
        std::size_t begin = 0;
        for (std::size_t i = 1; i < column; ++i) {
            begin = text.find(',', begin) + 1;
        }
        text.replace(begin, std::min(text.find(',', begin), text.size()) - begin, cell);
        return *this;
    }

    [[nodiscard]] std::string text(const std::string& line_end = "\n") const {
        std::string all;
        for (const auto& each : lines) {
            all += each + line_end;
        }
        return all;
    }
};

}  // namespace wetfront::test
