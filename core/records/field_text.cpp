// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "base/numbers.h"
#include "records/file_shape.h"
#include "records/range_words.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

// Far beyond anything that a timer could show, and where numbers still add up.
constexpr double most_in_a_record = 1e12;

bool has_range(const Field& field) {
    return std::isfinite(field.least) && std::isfinite(field.most);
}

// Four digits are enough to name a limit, however small it is.
std::string four_digits(double value) {
    const double size = std::abs(value);
    const int decimals =
        size == 0.0 ? 0 : std::clamp(3 - static_cast<int>(std::floor(std::log10(size))), 0, 12);
    return print_number(value, decimals);
}

std::string limit_text(double si, const Field& field, Kind kind, UnitSystem system) {
    if (kind == Kind::duration && si >= 7200.0) {
        return show({kind, si}, system).joined(system);
    }
    const bool in_minutes = kind == Kind::duration && std::abs(si) >= 120.0 && std::fmod(si, 60.0) == 0.0;
    const auto& unit = *display_unit(kind, system, in_minutes ? Scale::coarse : field.scale).unit;
    return QuantityText{four_digits(number_in(unit, si)), std::string{unit.display}}.joined(system);
}

// The symbols that only US text uses; whoever typed one reads limits in US units.
UnitSystem system_of_text(std::string_view text) {
    constexpr std::array us_units{"ft",    "in",     "ft2",    "ft²",       "gal",        "ft3",
                                  "ft³",   "ft/min", "gpm",    "cfm",       "lb/h",       "Btu/h",
                                  "hp",    "inHg",   "inH2O",  "inH₂O",     "degF",       "°F",
                                  "gr/lb", "ppm",    "gr/gal", "gal/h/ft2", "gal/(h·ft²)"};
    for (const std::string_view unit : us_units) {
        if (text.ends_with(unit) && text.size() > unit.size()) {
            const char before = text[text.size() - unit.size() - 1];
            if (before == ' ' || before == '.' || (before >= '0' && before <= '9')) {
                return UnitSystem::us;
            }
        }
    }
    return UnitSystem::si;
}

}  // namespace

Message range_words(const Field& field, Kind kind, UnitSystem system) {
    if (!has_range(field)) {
        return {};
    }
    return {WF_TEXT("%1 to %2"),
            {limit_text(field.least, field, kind, system), limit_text(field.most, field, kind, system)}};
}

std::string range_text(const Field& field, Kind kind, UnitSystem system) {
    return in_english(range_words(field, kind, system), system);
}

bool in_range(const Field& field, double si) {
    const double slack = 1e-12 * std::max(std::abs(field.least), std::abs(field.most));
    return !has_range(field) || (si >= field.least - slack && si <= field.most + slack);
}

Result<void> check_range(const Field& field, const AnyQuantity& value, std::string_view text,
                         std::string_view item) {
    if (field.kept ? std::abs(value.si) <= most_in_a_record : in_range(field, value.si)) {
        return boost::outcome_v2::success();
    }
    return bad_input(std::string{item}, text,
                     std::string{field.kept ? "more than a record can hold; usual is " : "must be "} +
                         range_text(field, value.kind, system_of_text(text)));
}

Result<void> check_text(std::string_view text, std::size_t most_characters, std::string_view item) {
    if (!is_utf8(text)) {
        return bad_input(std::string{item}, text, "not UTF-8");
    }
    if (std::any_of(text.begin(), text.end(), [](char c) { return (c >= '\0' && c < ' ') || c == '\x7f'; })) {
        return bad_input(std::string{item}, text, "holds a control character; write plain text in one line");
    }
    const auto continued = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
    const auto characters =
        text.size() - static_cast<std::size_t>(std::count_if(text.begin(), text.end(), continued));
    if (characters > most_characters) {
        return bad_input(std::string{item}, text,
                         "at most " + std::to_string(most_characters) + " characters");
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront
