// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace wetfront {

/// One record of a comma-separated text.
struct CsvLine {
    std::size_t line = 0;  ///< where it begins, from 1
    std::vector<std::string> cells;
};

/// Goes through a text as RFC 4180 has it: commas between cells, LF or CR LF behind a record, cells in quotes
/// where they hold a comma, a quote (doubled) or a line end. Line ends behind the last record are no records.
/// The text has to outlive it.
class CsvLines {
public:
    explicit CsvLines(std::string_view text) : rest_{text} {}

    /// The next record; none at the end. Errors, with their line: a quote that is not closed, a quote within
    /// a cell that does not begin with one, text behind a closing quote.
    [[nodiscard]] Result<std::optional<CsvLine>> next();

private:
    [[nodiscard]] Result<std::string> cell();
    [[nodiscard]] Result<std::string> quoted_cell();
    [[nodiscard]] bool at_line_end() const;

    std::string_view rest_;
    std::size_t line_ = 1;
};

}  // namespace wetfront
