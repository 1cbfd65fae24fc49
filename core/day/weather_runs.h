// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "day/weather_file.h"

// What the two readers of weather files share.
namespace wetfront::weather_detail {

inline constexpr std::int64_t hour_ms = 3'600'000;
inline constexpr std::int64_t day_ms = 24 * hour_ms;

/// Puts the hours of a file together into runs, and what lacks into gaps.
class WeatherRuns {
public:
    WeatherRuns(std::string source, std::int32_t utc_offset_minutes)
        : source_{std::move(source)}, offset_{utc_offset_minutes} {}

    /// The next hour: a whole number of hours, at least one, after the one before. Without air it is a gap.
    void add(std::int64_t unix_ms, std::size_t line, const std::optional<MoistAir>& air);

    /// An error if there are no two hours in a row.
    [[nodiscard]] Result<WeatherFile> finish(std::vector<Message> notes) &&;

private:
    [[nodiscard]] WallTime time(std::int64_t unix_ms) const { return {unix_ms, offset_}; }
    void close();

    std::string source_;
    std::int32_t offset_;
    WeatherFile file_;
    bool open_ = false;  ///< the last run goes on
    std::size_t line_of_run_ = 0;
    std::optional<std::int64_t> last_;
};

/// "line 12, column 7 (dry bulb)"; both counted from 1, a column being what stands between two commas.
[[nodiscard]] std::string cell_name(std::size_t line, std::size_t column, std::string_view what);

[[nodiscard]] std::string_view without_blanks(std::string_view text);

/// Takes the text up to and without its next line end (LF or CR LF) off the front of `rest`.
[[nodiscard]] std::string_view take_line(std::string_view& rest);

/// Where a value of the air stands in a line; `what` as moist_air.h calls it in its errors.
struct CellOf {
    std::string_view what;
    std::size_t column;
};
/// An error of moist_air.h with the place of the value that it is about; that of the first cell where it
/// names none of them.
[[nodiscard]] Error located(const Error& error, std::size_t line, std::span<const CellOf> cells);

}  // namespace wetfront::weather_detail
