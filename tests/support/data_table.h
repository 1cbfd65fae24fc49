// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

namespace wetfront::test {

/// Rows of a comma-separated file in tests/data; lines that start with '#' name the source and are skipped,
/// cells in double quotes may hold commas. Fails the process if the file is missing or holds no row: a table
/// test never passes on nothing.
[[nodiscard]] std::vector<std::vector<std::string>> data_rows(const std::string& file_name);

/// The same of a file that a fixture of tests/outside wrote.
[[nodiscard]] std::vector<std::vector<std::string>> outside_rows(const std::string& file_name);

/// A cell as a number; fails the process on anything else.
[[nodiscard]] double cell_number(const std::string& cell);

/// The whole of a file in tests/data.
[[nodiscard]] std::string data_text(const std::string& file_name);

}  // namespace wetfront::test
