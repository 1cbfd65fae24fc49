// SPDX-License-Identifier: Apache-2.0
// An EPW file. What is given is its beginning; where nothing is wrong with that, plain records make the rest
// of the year, so that a short input can be a whole file.
#include <algorithm>
#include <chrono>
#include <string>

#include "day/epw.h"
#include "weather_properties.h"

namespace {

using namespace wetfront;

constexpr std::ptrdiff_t header_lines = 8;

std::string rest_of_year(std::ptrdiff_t records, bool leap) {
    std::string rest;
    const auto year = std::chrono::year{leap ? 2020 : 2021};
    const int days = leap ? 366 : 365;
    for (int hour = static_cast<int>(records); hour < 24 * days; ++hour) {
        const std::chrono::year_month_day date{std::chrono::sys_days{year / 1 / 1} +
                                               std::chrono::days{hour / 24}};
        rest += std::to_string(static_cast<int>(year)) + "," +
                std::to_string(static_cast<unsigned>(date.month())) + "," +
                std::to_string(static_cast<unsigned>(date.day())) + "," + std::to_string(hour % 24 + 1) +
                ",60,?9,25,10,40,100000,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0\n";
    }
    return rest;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    auto text = std::string{fuzz::text_of(data, size)};
    const auto alone = read_epw(text);
    fuzz::must(!alone.has_value(), "so short a text is no whole year");
    fuzz::must_be_told_well(alone.error());
    if (!alone.error().accepted.starts_with("a whole year")) {
        return 0;
    }
    while (text.ends_with('\n') || text.ends_with('\r')) {
        text.pop_back();
    }
    text += '\n';
    const auto records = std::ranges::count(text, '\n') - header_lines;
    for (const bool leap : {false, true}) {
        const auto whole = read_epw(text + rest_of_year(records, leap));
        if (!whole) {
            fuzz::must_be_told_well(whole.error());
        } else {
            fuzz::must_be_whole(whole.value());
        }
    }
    return 0;
}
