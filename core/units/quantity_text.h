// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <optional>
#include <string>

#include "base/result.h"
#include "units/kinds.h"

namespace wetfront {

/// A number with its kind, for places that handle many kinds at once. `si` is in the SI unit of the kind.
struct AnyQuantity {
    Kind kind;
    double si;
    Scale scale = Scale::normal;

    friend bool operator==(const AnyQuantity&, const AnyQuantity&) = default;
};

template <class Q>
[[nodiscard]] AnyQuantity any(Q value, Scale scale = Scale::normal) {
    return {KindOf<Q>::value, in_si(value), scale};
}

[[nodiscard]] inline AnyQuantity any_share(double value) {
    return {Kind::fraction, value, Scale::normal};
}

/// Number and unit apart, so that a screen can set them in different sizes.
struct QuantityText {
    std::string number;  ///< point as decimal mark, no thousands mark
    std::string unit;    ///< "s", "°F", "%"; may be empty

    /// "75 s", "82 °F", "40%": a space before the unit but for the percent sign of US text.
    [[nodiscard]] std::string joined(UnitSystem system) const;
};

/// Reads a number with its unit as one text: "45s", "45 s", "95degF", "0.05inH2O", "40%". The unit may be
/// written as typed or as shown. Refuses a bare number (naming the units), another kind's unit, NaN,
/// infinity.
[[nodiscard]] Result<AnyQuantity> parse_any(Kind kind, std::string_view text, std::string_view item);

/// As a person reads it in that system; durations of whole minutes from 5 min up are shown in minutes, from 2
/// h up in hours, minutes and whole seconds: "10 h 30 min".
[[nodiscard]] QuantityText show(const AnyQuantity& quantity, UnitSystem system);

/// As typed in files: the shortest text in that unit that reads back as the same SI number. Where the unit
/// has no such number (not every double can be reached through a factor) it reads back within a few units of
/// the last binary place.
[[nodiscard]] std::string print_any(const AnyQuantity& quantity, const Unit& unit);

/// The unit in which a program writes an entry: the SI one, but % for a share. Static storage.
[[nodiscard]] const Unit& entry_unit(Kind kind);

/// The units a kind accepts, as a person would type them: "s, min or h".
[[nodiscard]] std::string accepted_units(Kind kind);

template <class Q>
[[nodiscard]] Result<Q> parse_quantity(std::string_view text, std::string_view item) {
    auto parsed = parse_any(KindOf<Q>::value, text, item);
    if (!parsed) {
        return parsed.error();
    }
    return from_si<Q>(parsed.value().si);
}

template <class Q>
[[nodiscard]] std::string show_text(Q value, UnitSystem system, Scale scale = Scale::normal) {
    return show(any(value, scale), system).joined(system);
}

/// A typed entry: the text as entered, unit included, and the value it stands for. Showing never changes it.
template <class Q>
class Entered {
public:
    [[nodiscard]] static Result<Entered> parse(std::string_view text, std::string_view item) {
        auto value = parse_quantity<Q>(text, item);
        if (!value) {
            return value.error();
        }
        return Entered{value.value(), std::string{text}};
    }
    /// An entry that a program makes: written in the kind's entry_unit().
    [[nodiscard]] static Entered of(Q value) {
        return Entered{value, print_any(any(value), entry_unit(KindOf<Q>::value))};
    }

    [[nodiscard]] Q value() const { return value_; }
    [[nodiscard]] const std::string& text() const { return text_; }
    friend bool operator==(const Entered& a, const Entered& b) { return a.text_ == b.text_; }

private:
    Entered(Q value, std::string text) : value_{value}, text_{std::move(text)} {}
    Q value_;
    std::string text_;
};

/// A typed entry that may not have been made.
template <class Q>
using Optional = std::optional<Entered<Q>>;

}  // namespace wetfront
