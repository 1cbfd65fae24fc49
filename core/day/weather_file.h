// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <chrono>
#include <cstddef>
#include <string_view>
#include <vector>

#include "day/weather.h"
#include "units/message.h"

namespace wetfront {

/// Hours without weather that lie before, between or behind the runs of a file.
struct WeatherGap {
    enum class Cause {
        not_in_file,    ///< the file goes from one hour to a later one
        value_missing,  ///< the hour is there, and a value that is needed is not
        alone,          ///< one hour between two gaps: nothing can be worked out between two hours
    };
    WallTime from;  ///< the first hour that lacks
    WallTime to;    ///< the last hour that lacks; the same as `from` for one hour
    Cause cause = Cause::not_in_file;
    std::size_t line = 0;  ///< of the file, where `from` stands; 0 if it is not in the file
};
/// "2026-07-01 14:00 to 2026-07-01 16:00: a value is missing (from line 12 on)".
[[nodiscard]] Message gap_words(const WeatherGap& gap);

/// What a weather file holds. Nothing is filled in: where hours lack, one run ends and the next begins.
struct WeatherFile {
    std::vector<Weather> runs;     ///< at least one, in order of time, never touching each other
    std::vector<WeatherGap> gaps;  ///< in order of time
    std::vector<Message> notes;    ///< how it was read, as far as the file leaves it open
};

/// Longest weather file that is read: an EPW file of a leap year has under 3 MB.
inline constexpr std::size_t most_weather_bytes = 8U << 20U;

/// A weather file of either kind: EPW (epw.h) if it begins as one, else CSV (weather_csv.h). `name` is the
/// source of what a CSV file holds; `site_pressure` counts where a CSV file has none. Errors: those of the
/// two readers, a text longer than most_weather_bytes.
[[nodiscard]] Result<WeatherFile> read_weather_file(std::string_view text, std::string_view name,
                                                    AbsolutePressure site_pressure);

/// Whole days of a weather, from the midnight with which `from` begins to that with which `to` ends, on the
/// clock of the weather's offset; a weather whose hours lie beside midnight gives the hour before it and the
/// hour behind it. Errors: dates that are none or the wrong way round, days that the weather does not cover.
[[nodiscard]] Result<Weather> days_of(const Weather& weather, std::chrono::year_month_day from,
                                      std::chrono::year_month_day to);

/// The same from the run that covers them all; an error names the first gap among them.
[[nodiscard]] Result<Weather> days_of(const WeatherFile& file, std::chrono::year_month_day from,
                                      std::chrono::year_month_day to);

/// All of a file as one weather; an error names its first gap between two runs.
[[nodiscard]] Result<Weather> whole_of(const WeatherFile& file);

/// A calendar day as people write it in files: "2026-07-01"; years 1970 to 2199. `item` names it in errors.
[[nodiscard]] Result<std::chrono::year_month_day> parse_day(std::string_view text, std::string_view item);

}  // namespace wetfront
