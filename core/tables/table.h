// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <variant>
#include <vector>

namespace wetfront {

/// Nothing where nothing was entered or measured; numbers in the unit that the column's heading names.
using TableCell = std::variant<std::monostate, std::string, double, bool>;

/// What a spreadsheet or a program of somebody else takes: one heading a column, one row a thing.
struct Table {
    std::string name;                          ///< "readings"
    std::vector<std::string> columns;          ///< as file_key() makes them: "value_s"
    std::vector<std::vector<TableCell>> rows;  ///< each as long as `columns`
};

}  // namespace wetfront
