// SPDX-License-Identifier: Apache-2.0
#include "base/numbers.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace wetfront {

Result<double> parse_number(std::string_view text, std::string_view item) {
    const auto refuse = [&](const char* accepted) { return bad_input(std::string{item}, text, accepted); };
    if (text.empty() || text.size() > 40) {
        return refuse("write a number of at most 40 characters, as 45 or 1.5");
    }
    std::string plain{text};
    const auto comma = plain.find(',');
    if (comma != std::string::npos) {
        const bool only_mark =
            plain.find_first_of(",.", comma + 1) == std::string::npos && plain.find('.') == std::string::npos;
        const auto digits_end = std::min(plain.find_first_not_of("0123456789", comma + 1), plain.size());
        if (!only_mark || digits_end - comma - 1 == 3) {
            return refuse("write one decimal point and no thousands mark, as 1234.5");
        }
        plain[comma] = '.';
    }
    const char* first = plain.data();
    const char* last = first + plain.size();
    if (*first == '+' && plain.size() > 1 && plain[1] != '-') {
        ++first;
    }
    double value = 0.0;
    const auto [end, problem] = std::from_chars(first, last, value, std::chars_format::general);
    if (problem != std::errc{} || end != last || !std::isfinite(value)) {
        return refuse("write a plain finite number, as 45 or 1.5");
    }
    return value;
}

std::string print_fixed(double value, int decimals) {
    std::array<char, 400> buffer{};
    const auto [end, problem] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                              std::chars_format::fixed, std::clamp(decimals, 0, 12));
    std::string text{buffer.data(), problem == std::errc{} ? end : buffer.data()};
    const bool is_zero = text.find_first_not_of("-0.") == std::string::npos;
    if (is_zero && !text.empty() && text.front() == '-') {
        text.erase(0, 1);
    }
    return text;
}

std::string print_number(double value, int decimals) {
    std::string text = print_fixed(value, decimals);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') {
            text.pop_back();
        }
    }
    return text;
}

std::string print_exact(double value) {
    std::array<char, 64> buffer{};
    const double size = std::abs(value);
    const auto format =
        size == 0.0 || (size >= 1e-6 && size < 1e15) ? std::chars_format::fixed : std::chars_format::general;
    const auto [end, problem] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format);
    return {buffer.data(), problem == std::errc{} ? end : buffer.data()};
}

}  // namespace wetfront
