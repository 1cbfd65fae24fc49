// SPDX-License-Identifier: Apache-2.0
#include "day/weather_runs.h"

#include <algorithm>

namespace wetfront::weather_detail {

void WeatherRuns::close() {
    if (open_ && file_.runs.back().hours.size() == 1) {
        const auto at = file_.runs.back().from;
        file_.gaps.push_back({at, at, WeatherGap::Cause::alone, line_of_run_});
        file_.runs.pop_back();
    }
    open_ = false;
}

void WeatherRuns::add(std::int64_t unix_ms, std::size_t line, const std::optional<MoistAir>& air) {
    if (last_ && unix_ms > *last_ + hour_ms) {
        close();
        file_.gaps.push_back(
            {time(*last_ + hour_ms), time(unix_ms - hour_ms), WeatherGap::Cause::not_in_file, 0});
    }
    last_ = unix_ms;
    auto& gaps = file_.gaps;
    if (!air) {
        close();
        const bool goes_on = !gaps.empty() && gaps.back().cause == WeatherGap::Cause::value_missing &&
                             gaps.back().to.unix_ms == unix_ms - hour_ms;
        if (goes_on) {
            gaps.back().to = time(unix_ms);
        } else {
            gaps.push_back({time(unix_ms), time(unix_ms), WeatherGap::Cause::value_missing, line});
        }
        return;
    }
    if (!open_) {
        file_.runs.push_back({source_, time(unix_ms), {}});
        open_ = true;
        line_of_run_ = line;
    }
    file_.runs.back().hours.push_back(*air);
}

Result<WeatherFile> WeatherRuns::finish(std::vector<Message> notes) && {
    close();
    if (file_.runs.empty()) {
        return bad_input("weather file", "", "it needs at least two hours in a row, with every value");
    }
    file_.notes = std::move(notes);
    return std::move(file_);
}

std::string cell_name(std::size_t line, std::size_t column, std::string_view what) {
    return "line " + std::to_string(line) + ", column " + std::to_string(column) + " (" + printable(what) +
           ")";
}

std::string_view without_blanks(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string_view take_line(std::string_view& rest) {
    const auto end = std::min(rest.find('\n'), rest.size());
    auto line = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (line.ends_with('\r')) {
        line.remove_suffix(1);
    }
    return line;
}

Error located(const Error& error, std::size_t line, std::span<const CellOf> cells) {
    const auto* cell = &cells.front();
    for (const auto& each : cells) {
        if (each.what == error.item) {
            cell = &each;
        }
    }
    return bad_input(cell_name(line, cell->column, error.item), error.read, error.accepted);
}

}  // namespace wetfront::weather_detail
