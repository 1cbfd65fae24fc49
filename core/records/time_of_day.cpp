// SPDX-License-Identifier: Apache-2.0
#include "records/time_of_day.h"

#include <cmath>

namespace wetfront {

std::string TimeOfDay::text() const {
    const auto two_digits = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two_digits(minutes / 60) + ":" + two_digits(minutes % 60);
}

Result<TimeOfDay> TimeOfDay::parse(std::string_view text, std::string_view item) {
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9' ? text[i] - '0' : 100; };
    if (text.size() == 5 && text[2] == ':') {
        const int hour = digit(0) * 10 + digit(1);
        const int minute = digit(3) * 10 + digit(4);
        if (hour < 24 && minute < 60) {
            return TimeOfDay{hour * 60 + minute};
        }
    }
    return bad_input(std::string{item}, text, "write a time of day from 00:00 to 23:59, as 09:30");
}

AnyQuantity TimeOfDay::since_midnight() const {
    return any(seconds(60.0 * minutes), Scale::clock);
}

TimeOfDay TimeOfDay::at(Duration since_midnight) {
    constexpr int day = 1440;
    const int rounded = static_cast<int>(std::lround(in_seconds(since_midnight) / 60.0) % day);
    return {(rounded + day) % day};
}

}  // namespace wetfront
