// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "tables/table.h"

namespace wetfront {

/// The table as RFC 4180 has it: headings first, CR LF behind every line, commas between cells, a cell with a
/// comma, a quote or a line end in quotes and its quotes doubled. UTF-8, point as decimal mark, numbers to
/// their last digit, `true` and `false`, an empty cell for nothing.
///
/// Formula guard: a text that a spreadsheet would take for a formula (first sign = + - @, tab or line end)
/// gets an apostrophe in front (OWASP, CSV Injection, from memory). Numbers are never guarded.
[[nodiscard]] std::string csv_text(const Table& table);

}  // namespace wetfront
