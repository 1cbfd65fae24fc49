// SPDX-License-Identifier: Apache-2.0
#include "units/quantity_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <limits>

#include "base/numbers.h"

namespace wetfront {
namespace {

// Where the number ends: the longest front that can belong to a decimal number. "1e3s" is a number, "1 ft" is
// not "1" and "e".
std::size_t number_length(std::string_view text) {
    std::size_t i = 0;
    const auto digits = [&] {
        while (i < text.size() && ((text[i] >= '0' && text[i] <= '9') || text[i] == '.' || text[i] == ',')) {
            ++i;
        }
    };
    const auto sign = [&] {
        if (i < text.size() && (text[i] == '-' || text[i] == '+')) {
            ++i;
        }
    };
    sign();
    digits();
    if (i > 0 && i + 1 < text.size() && (text[i] == 'e' || text[i] == 'E')) {
        const auto mantissa_end = i;
        ++i;
        sign();
        const auto exponent_start = i;
        digits();
        if (i == exponent_start) {
            i = mantissa_end;
        }
    }
    return i;
}

double rounded_to(double value, int digits) {
    std::array<char, 64> buffer{};
    const auto printed = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::scientific, digits - 1);
    double rounded = value;
    std::from_chars(buffer.data(), printed.ptr, rounded);
    return rounded;
}

QuantityText time_of_day(double since_midnight) {
    constexpr long day = 1440;
    const long minutes = ((std::lround(since_midnight / 60.0) % day) + day) % day;
    const auto two_digits = [](long number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return {two_digits(minutes / 60) + ":" + two_digits(minutes % 60), ""};
}

// From here on minutes are too many to be read; up to there they can be counted.
constexpr double first_in_hours_s = 7200.0;
constexpr double last_in_hours_s = 1e12;

// The last of the units stands apart, as everywhere: "10 h 30" and "min".
QuantityText in_hours(double si) {
    const long total = std::lround(si);
    const long minutes = total / 60 % 60;
    const long rest = total % 60;
    auto number = std::to_string(total / 3600);
    if (minutes == 0 && rest == 0) {
        return {number, "h"};
    }
    number += " h " + std::to_string(minutes);
    return rest == 0 ? QuantityText{number, "min"}
                     : QuantityText{number + " min " + std::to_string(rest), "s"};
}

std::string_view without_outer_blanks(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

}  // namespace

std::string accepted_units(Kind kind) {
    std::string list;
    const auto units = units_of(kind);
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (i > 0) {
            list += i + 1 == units.size() ? " or " : ", ";
        }
        list += units[i].symbol;
    }
    return list;
}

Result<AnyQuantity> parse_any(Kind kind, std::string_view text, std::string_view item) {
    const auto trimmed = without_outer_blanks(text);
    const std::string name{name_of(kind)};
    if (trimmed.empty() || text.size() > 64) {
        return bad_input(std::string{item}, text,
                         "write a " + name + " with its unit: " + accepted_units(kind));
    }
    const auto length = number_length(trimmed);
    const auto symbol = without_outer_blanks(trimmed.substr(length));
    if (length == 0) {
        return bad_input(std::string{item}, text, "write a number with its unit: " + accepted_units(kind));
    }
    const auto parsed = parse_number(trimmed.substr(0, length), item);
    if (!parsed) {
        return bad_input(std::string{item}, text, parsed.error().accepted);
    }
    const double number = parsed.value();
    if (symbol.empty()) {
        return bad_input(std::string{item}, text, "the unit is missing, write " + accepted_units(kind));
    }
    for (const auto& unit : units_of(kind)) {
        if (symbol == unit.symbol || symbol == unit.display) {
            const double si = to_si(unit, number);
            if (!std::isfinite(si)) {
                return bad_input(std::string{item}, text, "write a finite number");
            }
            return AnyQuantity{kind, si};
        }
    }
    return bad_input(std::string{item}, text, "not a unit of " + name + ", write " + accepted_units(kind));
}

std::string QuantityText::joined(UnitSystem system) const {
    if (unit.empty()) {
        return number;
    }
    const bool tight = system == UnitSystem::us && unit == "%";
    return number + (tight ? "" : " ") + unit;
}

QuantityText show(const AnyQuantity& quantity, UnitSystem system) {
    if (quantity.kind == Kind::duration && quantity.scale == Scale::clock) {
        return time_of_day(quantity.si);
    }
    if (quantity.kind == Kind::duration && quantity.si >= first_in_hours_s &&
        quantity.si <= last_in_hours_s) {
        return in_hours(quantity.si);
    }
    auto scale = quantity.scale;
    if (quantity.kind == Kind::duration && quantity.si >= 300.0 && std::fmod(quantity.si, 60.0) == 0.0) {
        scale = Scale::coarse;
    }
    const auto [unit, decimals] = display_unit(quantity.kind, system, scale);
    return {print_number(number_in(*unit, quantity.si), decimals), std::string{unit->display}};
}

std::string print_any(const AnyQuantity& quantity, const Unit& unit) {
    const double exact = number_in(unit, quantity.si);
    const bool is_si = unit.factor == 1.0 && unit.offset == 0.0;
    double number = exact;
    if (!is_si && std::isfinite(exact)) {
        // 95 °F comes back from kelvins as 94.99999999999994: that noise is not to be written.
        const double size = std::abs(quantity.si) + unit.offset * unit.factor;
        const double noise = 4.0 * std::numeric_limits<double>::epsilon() * size;
        int digits = 1;
        do {
            number = rounded_to(exact, digits);
            ++digits;
        } while (std::abs(to_si(unit, number) - quantity.si) > noise && digits <= 17);
    }
    // "0.4 1", as "0.41" would be another number.
    const bool apart = unit.symbol.front() >= '0' && unit.symbol.front() <= '9';
    return print_exact(number) + (apart ? " " : "") + std::string{unit.symbol};
}

const Unit& entry_unit(Kind kind) {
    const auto units = units_of(kind);
    return kind == Kind::fraction ? units[1] : units[0];
}

}  // namespace wetfront
