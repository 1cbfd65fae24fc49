// SPDX-License-Identifier: Apache-2.0
#include "support/data_table.h"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>

namespace wetfront::test {
namespace {

[[noreturn]] void give_up(const std::string& why) {
    std::cerr << "test data: " << why << '\n';
    std::abort();
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else if (c != '\r') {
            cells.back() += c;
        }
    }
    return cells;
}

std::string text_of(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    if (!file) {
        give_up("cannot open " + path);
    }
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<std::vector<std::string>> rows_of(const std::string& path) {
    std::istringstream text{text_of(path)};
    std::vector<std::vector<std::string>> rows;
    for (std::string line; std::getline(text, line);) {
        if (!line.empty() && line.front() != '#') {
            rows.push_back(cells_of(line));
        }
    }
    if (rows.empty()) {
        give_up("no row in " + path);
    }
    return rows;
}

}  // namespace

std::string data_text(const std::string& file_name) {
    return text_of(std::string{WETFRONT_TEST_DATA} + "/" + file_name);
}

std::vector<std::vector<std::string>> data_rows(const std::string& file_name) {
    return rows_of(std::string{WETFRONT_TEST_DATA} + "/" + file_name);
}

std::vector<std::vector<std::string>> outside_rows(const std::string& file_name) {
    return rows_of(std::string{WETFRONT_OUTSIDE} + "/" + file_name);
}

double cell_number(const std::string& cell) {
    char* end = nullptr;
    const double value = std::strtod(cell.c_str(), &end);
    if (cell.empty() || end != cell.c_str() + cell.size()) {
        give_up("not a number: " + cell);
    }
    return value;
}

}  // namespace wetfront::test
