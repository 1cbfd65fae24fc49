// SPDX-License-Identifier: Apache-2.0
#include "cli/results.h"

#include <algorithm>
#include <ostream>

#include "base/numbers.h"

namespace wetfront {
namespace {

// A character of UTF-8 counts once.
std::size_t width_of(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

}  // namespace

std::string shown_with(const AnyQuantity& quantity, UnitSystem units, int us_decimals, int si_decimals) {
    const auto& unit = *display_unit(quantity.kind, units, quantity.scale).unit;
    const int decimals = units == UnitSystem::us ? us_decimals : si_decimals;
    return QuantityText{print_number(number_in(unit, quantity.si), decimals), std::string{unit.display}}
        .joined(units);
}

void Results::add_any(std::string key, std::string label, AnyQuantity value, std::string note) {
    Row row;
    row.key = file_key(key, value.kind);
    row.label = std::move(label);
    row.value = value;
    row.note = std::move(note);
    rows_.push_back(std::move(row));
}

void Results::with_decimals(int us, int si) {
    rows_.back().us_decimals = us;
    rows_.back().si_decimals = si;
}

void Results::missing(std::string key, std::string label, Kind kind, std::string why) {
    Row row;
    row.key = file_key(key, kind);
    row.label = std::move(label);
    row.note = std::move(why);
    rows_.push_back(std::move(row));
}

void Results::number(std::string key, std::string label, double value, int decimals, std::string note) {
    add_any(std::move(key), std::move(label), {Kind::fraction, value}, std::move(note));
    rows_.back().plain = true;
    with_decimals(decimals, decimals);
}

void Results::missing_number(std::string key, std::string label, std::string why) {
    missing(std::move(key), std::move(label), Kind::fraction, std::move(why));
}

JsonObject Results::json() const {
    JsonObject object = JsonObject::object();
    for (const auto& row : rows_) {
        object[row.key] = row.value ? JsonObject(file_number(*row.value)) : JsonObject(nullptr);
    }
    return object;
}

std::string Results::shown(const Row& row, UnitSystem units) {
    if (!row.value) {
        return "-";
    }
    if (row.plain) {
        return print_fixed(row.value->si, row.us_decimals.value_or(3));
    }
    if (row.us_decimals && row.si_decimals) {
        return shown_with(*row.value, units, *row.us_decimals, *row.si_decimals);
    }
    return show(*row.value, units).joined(units);
}

void print_table(std::ostream& out, const std::vector<std::vector<std::string>>& rows) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t c = 0; c < row.size(); ++c) {
            widths[c] = std::max(widths[c], width_of(row[c]));
        }
    }
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t c = 0; c < row.size(); ++c) {
            line += row[c] + std::string(widths[c] - width_of(row[c]) + 2, ' ');
        }
        out << line.substr(0, line.find_last_not_of(' ') + 1) << '\n';
    }
}

void print_results(std::ostream& out, UnitSystem units, std::span<const Results> columns,
                   std::span<const std::string> headings) {
    std::vector<std::vector<std::string>> table;
    if (!headings.empty()) {
        table.emplace_back(1);
        table.back().insert(table.back().end(), headings.begin(), headings.end());
    }
    const auto& first = columns.front().rows_;
    for (std::size_t r = 0; r < first.size(); ++r) {
        if (!first[r].value && first[r].note.empty()) {
            continue;
        }
        auto& line = table.emplace_back(std::vector{first[r].label});
        for (const auto& column : columns) {
            line.push_back(Results::shown(column.rows_[r], units));
        }
        line.push_back(first[r].note.empty() ? "" : "(" + first[r].note + ")");
    }
    print_table(out, table);
}

void print_explanations(std::ostream& out, std::span<const Explanation> explanations) {
    out << "\nHow these come about:\n";
    for (const auto& each : explanations) {
        out << "  " << each.results << '\n';
        out << "    " << each.formula << '\n';
        out << "    source: " << each.source << '\n';
        out << "    range:  " << each.range << '\n';
    }
}

JsonObject explanations_json(std::span<const Explanation> explanations) {
    auto list = JsonObject::array();
    for (const auto& each : explanations) {
        list.push_back({{"results", each.results},
                        {"formula", each.formula},
                        {"source", each.source},
                        {"range", each.range}});
    }
    return list;
}

Result<std::size_t> only_one(std::string_view names,
                             std::initializer_list<const std::optional<std::string>*> options,
                             std::string_view words) {
    std::optional<std::size_t> found;
    std::size_t place = 0;
    for (const auto* option : options) {
        if (option->has_value()) {
            if (found) {
                return bad_input(std::string{names}, "", std::string{words});
            }
            found = place;
        }
        ++place;
    }
    if (!found) {
        return bad_input(std::string{names}, "", std::string{words});
    }
    return *found;
}

}  // namespace wetfront
