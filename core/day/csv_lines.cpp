// SPDX-License-Identifier: Apache-2.0
#include "day/csv_lines.h"

#include <algorithm>

namespace wetfront {
namespace {

Error wrong_line_of_csv(std::size_t line, std::string_view read, const char* accepted) {
    return bad_input("line " + std::to_string(line), read, accepted);
}

}  // namespace

bool CsvLines::at_line_end() const {
    return rest_.empty() || rest_.starts_with('\n') || rest_.starts_with("\r\n");
}

Result<std::string> CsvLines::quoted_cell() {
    const auto begun = line_;
    rest_.remove_prefix(1);
    std::string text;
    while (true) {
        const auto quote = rest_.find('"');
        if (quote == std::string_view::npos) {
            return wrong_line_of_csv(begun, rest_.substr(0, std::min<std::size_t>(rest_.size(), 60)),
                                     "a quote that is closed");
        }
        const auto part = rest_.substr(0, quote);
        line_ += static_cast<std::size_t>(std::ranges::count(part, '\n'));
        text += part;
        rest_.remove_prefix(quote + 1);
        if (!rest_.starts_with('"')) {
            break;
        }
        text += '"';
        rest_.remove_prefix(1);
    }
    if (!at_line_end() && !rest_.starts_with(',')) {
        return wrong_line_of_csv(line_, text, "a comma or the end of the line behind a closing quote");
    }
    return text;
}

Result<std::string> CsvLines::cell() {
    if (rest_.starts_with('"')) {
        return quoted_cell();
    }
    auto text = rest_.substr(0, std::min(rest_.find_first_of(",\n"), rest_.size()));
    rest_.remove_prefix(text.size());
    if (text.ends_with('\r') && !rest_.starts_with(',')) {
        text.remove_suffix(1);
    }
    if (text.find('"') != std::string_view::npos) {
        return wrong_line_of_csv(line_, text, "quotes around the whole cell, those within it doubled");
    }
    return std::string{text};
}

Result<std::optional<CsvLine>> CsvLines::next() {
    if (rest_.find_first_not_of("\r\n") == std::string_view::npos) {
        return std::optional<CsvLine>{};
    }
    CsvLine record{line_, {}};
    while (true) {
        WF_TRY(record.cells.emplace_back(), cell());
        if (!rest_.starts_with(',')) {
            break;
        }
        rest_.remove_prefix(1);
    }
    rest_.remove_prefix(std::min<std::size_t>(rest_.starts_with('\r') ? 2 : 1, rest_.size()));
    ++line_;
    return std::optional{std::move(record)};
}

}  // namespace wetfront
