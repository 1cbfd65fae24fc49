// SPDX-License-Identifier: Apache-2.0
#include "day/weather_file.h"

#include "day/epw.h"
#include "day/weather_csv.h"
#include "day/weather_runs.h"

namespace wetfront {
namespace weather_file_detail {
namespace {

using namespace weather_detail;

std::string hour_words(WallTime time) {
    return local_date(time) + " " + local_clock(time);
}

WallTime end_of(const Weather& weather) {
    auto end = weather.from;
    end.unix_ms += hour_ms * static_cast<std::int64_t>(weather.hours.size() - 1);
    return end;
}

/// When a day begins on a clock that is so far ahead of UTC.
WallTime midnight(std::chrono::sys_days day, std::int32_t utc_offset_minutes) {
    return {day.time_since_epoch().count() * day_ms - utc_offset_minutes * 60'000LL, utc_offset_minutes};
}

struct Span {
    WallTime from;
    WallTime to;
};
Result<Span> span_of(std::chrono::year_month_day from, std::chrono::year_month_day to,
                     std::int32_t utc_offset_minutes) {
    if (!from.ok() || !to.ok()) {
        return bad_input("days", "", "dates of the calendar");
    }
    const Span span{midnight(from, utc_offset_minutes),
                    midnight(std::chrono::sys_days{to} + std::chrono::days{1}, utc_offset_minutes)};
    if (span.to <= span.from) {
        return bad_input("days",
                         local_date(span.from) + " to " + local_date(midnight(to, utc_offset_minutes)),
                         "a last day that is not before the first");
    }
    return span;
}

bool covers(const Weather& weather, const Span& span) {
    return weather.from <= span.from && span.to <= end_of(weather);
}

Weather cut_out(const Weather& weather, const Span& span) {
    const auto first = (span.from.unix_ms - weather.from.unix_ms) / hour_ms;
    const auto last = (span.to.unix_ms - weather.from.unix_ms + hour_ms - 1) / hour_ms;
    Weather cut{weather.source, weather.from, {}};
    cut.from.unix_ms += first * hour_ms;
    cut.hours.assign(weather.hours.begin() + first, weather.hours.begin() + last + 1);
    return cut;
}

Error not_covered(const Span& span, WallTime begin, WallTime end) {
    return bad_input("days", hour_words(span.from) + " to " + hour_words(span.to),
                     "the weather goes from " + hour_words(begin) + " to " + hour_words(end));
}

Error broken_by(const WeatherGap& gap) {
    return bad_input("weather", "",
                     "there is none for " + in_english(gap_words(gap), UnitSystem::si) +
                         "; choose days before or behind it");
}

}  // namespace
}  // namespace weather_file_detail

Message gap_words(const WeatherGap& gap) {
    using namespace weather_file_detail;
    const auto from = hour_words(gap.from);
    const auto to = hour_words(gap.to);
    const auto line = std::to_string(gap.line);
    switch (gap.cause) {
        case WeatherGap::Cause::not_in_file:
            return {WF_TEXT("%1 to %2: not in the file"), {from, to}};
        case WeatherGap::Cause::value_missing:
            return {WF_TEXT("%1 to %2: a value is missing (from line %3 on)"), {from, to, line}};
        case WeatherGap::Cause::alone:
            return {WF_TEXT("%1: a single hour between two gaps (line %2)"), {from, line}};
    }
    return {};
}

Result<WeatherFile> read_weather_file(std::string_view text, std::string_view name,
                                      AbsolutePressure site_pressure) {
    return looks_like_epw(text) ? read_epw(text) : read_weather_csv(text, name, site_pressure);
}

Result<Weather> days_of(const Weather& weather, std::chrono::year_month_day from,
                        std::chrono::year_month_day to) {
    using namespace weather_file_detail;
    WF_TRY(const auto span, span_of(from, to, weather.from.utc_offset_minutes));
    if (!covers(weather, span)) {
        return not_covered(span, weather.from, end_of(weather));
    }
    return cut_out(weather, span);
}

Result<Weather> days_of(const WeatherFile& file, std::chrono::year_month_day from,
                        std::chrono::year_month_day to) {
    using namespace weather_file_detail;
    WF_TRY(const auto span, span_of(from, to, file.runs.front().from.utc_offset_minutes));
    for (const auto& run : file.runs) {
        if (covers(run, span)) {
            return cut_out(run, span);
        }
    }
    for (const auto& gap : file.gaps) {
        if (gap.from <= span.to && span.from <= gap.to) {
            return broken_by(gap);
        }
    }
    return not_covered(span, file.runs.front().from, end_of(file.runs.back()));
}

Result<Weather> whole_of(const WeatherFile& file) {
    using namespace weather_file_detail;
    for (const auto& gap : file.gaps) {
        if (file.runs.front().from < gap.from && gap.to < file.runs.back().from) {
            return broken_by(gap);
        }
    }
    return file.runs.front();
}

Result<std::chrono::year_month_day> parse_day(std::string_view text, std::string_view item) {
    const auto midnight = parse_iso8601(std::string{text} + "T00:00:00Z", item);
    if (!midnight) {
        return bad_input(std::string{item}, text, "write a date as 2026-07-01");
    }
    return std::chrono::year_month_day{
        std::chrono::sys_days{std::chrono::days{midnight.value().unix_ms / weather_detail::day_ms}}};
}

}  // namespace wetfront
