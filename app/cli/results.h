// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/json_output.h"

namespace wetfront {

/// What a command worked out, in the order in which it is shown: one list for text and JSON.
class Results {
public:
    /// A quantity. `key` without its unit; `note` stands behind the value in text.
    template <class Q>
    void add(std::string key, std::string label, Q value, std::string note = {},
             Scale scale = Scale::normal) {
        add_any(std::move(key), std::move(label), any(value, scale), std::move(note));
    }
    void add_any(std::string key, std::string label, AnyQuantity value, std::string note = {});
    /// Digits behind the point of the result added last, where the usual ones are too few or too many.
    void with_decimals(int us, int si);
    /// A quantity that there is none of, and why: null in JSON; without a why it is left out of the text.
    void missing(std::string key, std::string label, Kind kind, std::string why);
    /// A number without a unit, with so many digits behind the point in text.
    void number(std::string key, std::string label, double value, int decimals, std::string note = {});
    void missing_number(std::string key, std::string label, std::string why);

    [[nodiscard]] JsonObject json() const;

private:
    friend void print_results(std::ostream& out, UnitSystem units, std::span<const Results> columns,
                              std::span<const std::string> headings);

    struct Row {
        std::string key;  ///< with its unit
        std::string label;
        std::optional<AnyQuantity> value;
        bool plain = false;  ///< a number without a unit
        std::optional<int> us_decimals, si_decimals;
        std::string note;  ///< without a value: why
    };
    [[nodiscard]] static std::string shown(const Row& row, UnitSystem units);

    std::vector<Row> rows_;
};

/// Rows of cells, each column as wide as its widest cell.
void print_table(std::ostream& out, const std::vector<std::vector<std::string>>& rows);

/// Label, value and note of each result, aligned. Several lists of the same results stand side by side under
/// their headings; the notes are then those of the first.
void print_results(std::ostream& out, UnitSystem units, std::span<const Results> columns,
                   std::span<const std::string> headings);
inline void print_results(std::ostream& out, UnitSystem units, const Results& results) {
    print_results(out, units, {&results, 1}, {});
}

/// A quantity with the unit of that system and so many digits behind the point.
[[nodiscard]] std::string shown_with(const AnyQuantity& quantity, UnitSystem units, int us_decimals,
                                     int si_decimals);

/// How results come about, for a reader who wants to check them.
struct Explanation {
    std::string_view results;  ///< labels as in the text, "; " between
    std::string_view formula;
    std::string_view source;
    std::string_view range;
};
void print_explanations(std::ostream& out, std::span<const Explanation> explanations);
[[nodiscard]] JsonObject explanations_json(std::span<const Explanation> explanations);

/// The only one of several options that was given, as its place in the list; `words` tells what to give. An
/// error where none or more than one was.
[[nodiscard]] Result<std::size_t> only_one(std::string_view names,
                                           std::initializer_list<const std::optional<std::string>*> options,
                                           std::string_view words);

}  // namespace wetfront
