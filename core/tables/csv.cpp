// SPDX-License-Identifier: Apache-2.0
#include "tables/csv.h"

#include <string_view>

#include "base/numbers.h"

namespace wetfront {
namespace {

std::string quoted(std::string text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string inside;
    for (const char sign : text) {
        inside.append(sign == '"' ? 2 : 1, sign);
    }
    return '"' + inside + '"';
}

struct CellText {
    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(double number) const { return print_exact(number); }
    std::string operator()(bool flag) const { return flag ? "true" : "false"; }
    std::string operator()(const std::string& text) const {
        constexpr std::string_view begins_a_formula = "=+-@\t\r\n";
        const bool guarded = !text.empty() && begins_a_formula.find(text.front()) != std::string_view::npos;
        return quoted(guarded ? "'" + text : text);
    }
};

}  // namespace

std::string csv_text(const Table& table) {
    std::string out;
    const auto add = [&](bool first, const std::string& cell) { out += (first ? "" : ",") + cell; };
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        add(i == 0, quoted(table.columns[i]));
    }
    out += "\r\n";
    for (const auto& row : table.rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            add(i == 0, std::visit(CellText{}, row[i]));
        }
        out += "\r\n";
    }
    return out;
}

}  // namespace wetfront
