// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli_run.h"

namespace wetfront::test {

/// The labels of the results in text output: what stands before the first double blank, in the first block of
/// lines that have one.
inline std::set<std::string> labels_of(const std::string& text) {
    std::set<std::string> labels;
    std::istringstream lines{text};
    std::string line;
    while (std::getline(lines, line) && !(line.empty() && !labels.empty())) {
        const auto end = line.find("  ");
        if (end != std::string::npos && end > 0) {
            labels.insert(line.substr(0, end));
        }
    }
    return labels;
}

/// The labels that --explain tells about; each must have a formula, a source and a range.
inline std::set<std::string> explained_in(const std::string& text) {
    std::set<std::string> labels;
    std::istringstream lines{text.substr(std::min(text.find("How these come about:\n"), text.size()))};
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line)) {
        for (std::size_t from = 2; from < line.size();) {
            const auto to = std::min(line.find("; ", from), line.size());
            labels.insert(line.substr(from, to - from));
            from = to + 2;
        }
        for (const char* start : {"    ", "    source: ", "    range:  "}) {
            std::getline(lines, line);
            EXPECT_EQ(line.rfind(start, 0), 0U) << line;
            EXPECT_GT(line.size(), std::string{start}.size()) << line;
        }
    }
    return labels;
}

/// Every result of that run, made with --explain, is explained.
inline void expect_all_explained(const CliRun& run) {
    const auto labels = labels_of(run.out);
    const auto explained = explained_in(run.out);
    EXPECT_FALSE(labels.empty()) << run.out << run.err;
    for (const auto& label : labels) {
        EXPECT_EQ(explained.count(label), 1U) << "not explained: " << label << "\n" << run.out;
    }
}

inline std::vector<std::string> operator+(std::vector<std::string> arguments,
                                          const std::vector<std::string>& more) {
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

}  // namespace wetfront::test
