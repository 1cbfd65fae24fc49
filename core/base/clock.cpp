// SPDX-License-Identifier: Apache-2.0
#include "base/clock.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <fstream>

namespace wetfront {
namespace {

constexpr std::int64_t ms_per_day = 86'400'000;
constexpr int most_offset_minutes = 14 * 60;

struct Civil {
    int year, month, day, hour, minute, second, millisecond;
};

Civil civil_at_place(WallTime time) {
    const std::int64_t local = time.unix_ms + std::int64_t{time.utc_offset_minutes} * 60'000;
    const auto days = std::chrono::floor<std::chrono::days>(std::chrono::milliseconds{local});
    const std::chrono::year_month_day date{std::chrono::sys_days{days}};
    const auto rest = static_cast<int>(local - days.count() * ms_per_day);
    return {static_cast<int>(date.year()),
            static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day())),
            rest / 3'600'000,
            rest / 60'000 % 60,
            rest / 1000 % 60,
            rest % 1000};
}

template <class... Args>
std::string formatted(const char* format, Args... args) {
    std::array<char, 64> buffer{};
    std::snprintf(buffer.data(), buffer.size(), format, args...);
    return buffer.data();
}

/// Reads exactly `digits` digits from the front of `rest`, or fails.
bool take_number(std::string_view& rest, std::size_t digits, int& value) {
    if (rest.size() < digits) {
        return false;
    }
    const auto [end, problem] = std::from_chars(rest.data(), rest.data() + digits, value);
    if (problem != std::errc{} || end != rest.data() + digits || rest[0] == '-') {
        return false;
    }
    rest.remove_prefix(digits);
    return true;
}

bool take_char(std::string_view& rest, char wanted) {
    if (rest.empty() || rest.front() != wanted) {
        return false;
    }
    rest.remove_prefix(1);
    return true;
}

bool take_offset(std::string_view& rest, int& minutes) {
    if (take_char(rest, 'Z')) {
        minutes = 0;
        return rest.empty();
    }
    const bool east = take_char(rest, '+');
    int hours_part = 0;
    int minutes_part = 0;
    if ((!east && !take_char(rest, '-')) || !take_number(rest, 2, hours_part) || !take_char(rest, ':') ||
        !take_number(rest, 2, minutes_part) || !rest.empty() || minutes_part > 59 ||
        hours_part * 60 + minutes_part > most_offset_minutes) {
        return false;
    }
    minutes = (east ? 1 : -1) * (hours_part * 60 + minutes_part);
    return true;
}

// A fraction of a second, cut to milliseconds.
bool take_milliseconds(std::string_view& rest, int& milliseconds) {
    int scale = 100;
    std::size_t digits = 0;
    while (!rest.empty() && rest.front() >= '0' && rest.front() <= '9') {
        milliseconds += (rest.front() - '0') * scale;
        scale /= 10;
        rest.remove_prefix(1);
        ++digits;
    }
    return digits > 0;
}

}  // namespace

std::string to_iso8601(WallTime time) {
    const auto c = civil_at_place(time);
    const int offset = time.utc_offset_minutes < 0 ? -time.utc_offset_minutes : time.utc_offset_minutes;
    return formatted("%04d-%02d-%02dT%02d:%02d:%02d.%03d%c%02d:%02d", c.year, c.month, c.day, c.hour,
                     c.minute, c.second, c.millisecond, time.utc_offset_minutes < 0 ? '-' : '+', offset / 60,
                     offset % 60);
}

std::string local_date(WallTime time) {
    const auto c = civil_at_place(time);
    return formatted("%04d-%02d-%02d", c.year, c.month, c.day);
}

std::string local_clock(WallTime time) {
    const auto c = civil_at_place(time);
    return formatted("%02d:%02d", c.hour, c.minute);
}

Result<WallTime> parse_iso8601(std::string_view text, std::string_view item) {
    const auto refuse = [&] {
        return bad_input(std::string{item}, text,
                         "write date, time and offset, as 2026-07-01T10:04:05-05:00");
    };
    std::string_view rest = text;
    Civil c{};
    int offset = 0;
    if (!take_number(rest, 4, c.year) || !take_char(rest, '-') || !take_number(rest, 2, c.month) ||
        !take_char(rest, '-') || !take_number(rest, 2, c.day) || !take_char(rest, 'T') ||
        !take_number(rest, 2, c.hour) || !take_char(rest, ':') || !take_number(rest, 2, c.minute) ||
        !take_char(rest, ':') || !take_number(rest, 2, c.second)) {
        return refuse();
    }
    if (take_char(rest, '.') && !take_milliseconds(rest, c.millisecond)) {
        return refuse();
    }
    if (!take_offset(rest, offset)) {
        return refuse();
    }
    const std::chrono::year_month_day date{std::chrono::year{c.year},
                                           std::chrono::month{static_cast<unsigned>(c.month)},
                                           std::chrono::day{static_cast<unsigned>(c.day)}};
    if (!date.ok() || c.year < 1970 || c.year > 2199 || c.hour > 23 || c.minute > 59 || c.second > 59) {
        return refuse();
    }
    const std::int64_t days = std::chrono::sys_days{date}.time_since_epoch().count();
    const std::int64_t local =
        days * ms_per_day + c.hour * 3'600'000LL + c.minute * 60'000LL + c.second * 1000LL + c.millisecond;
    return WallTime{local - offset * 60'000LL, offset};
}

BootTime SystemClock::boot_now() const {
    static const std::string id = [] {
        std::ifstream file{"/proc/sys/kernel/random/boot_id"};
        std::string text;
        std::getline(file, text);
        return text;
    }();
    std::timespec now{};
    clock_gettime(CLOCK_BOOTTIME, &now);
    return {id, std::int64_t{now.tv_sec} * 1'000'000'000 + now.tv_nsec};
}

WallTime SystemClock::wall_now() const {
    std::timespec now{};
    clock_gettime(CLOCK_REALTIME, &now);
    std::tm local{};
    localtime_r(&now.tv_sec, &local);
    return {std::int64_t{now.tv_sec} * 1000 + now.tv_nsec / 1'000'000,
            static_cast<std::int32_t>(local.tm_gmtoff / 60)};
}

std::int64_t SystemClock::monotonic_ms() const {
    std::timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return std::int64_t{now.tv_sec} * 1000 + now.tv_nsec / 1'000'000;
}

}  // namespace wetfront
