// SPDX-License-Identifier: Apache-2.0
#include "day/csv_lines.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

using CsvCells = std::vector<std::string>;

std::vector<CsvLine> all_lines(std::string_view text) {
    CsvLines lines{text};
    std::vector<CsvLine> all;
    while (true) {
        auto line = lines.next();
        EXPECT_TRUE(line);
        if (!line || !line.value()) {
            return all;
        }
        all.push_back(*line.value());
    }
}

Error first_error(std::string_view text) {
    CsvLines lines{text};
    while (true) {
        const auto line = lines.next();
        if (!line) {
            return line.error();
        }
        if (!line.value()) {
            ADD_FAILURE() << "no error in " << text;
            return {};
        }
    }
}

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST(CsvLinesTest, the_examples_of_the_rfc_are_read) {
    for (const char* text : {"aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa,bbb,ccc\r\nzzz,yyy,xxx",
                             "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"}) {
        const auto lines = all_lines(text);
        ASSERT_EQ(lines.size(), 2U) << text;
        EXPECT_EQ(lines[0].cells, (CsvCells{"aaa", "bbb", "ccc"})) << text;
        EXPECT_EQ(lines[1].cells, (CsvCells{"zzz", "yyy", "xxx"})) << text;
    }
    EXPECT_EQ(all_lines("\"aaa\",\"b\r\nbb\",\"ccc\"\r\n").front().cells,
              (CsvCells{"aaa", "b\r\nbb", "ccc"}));
    EXPECT_EQ(all_lines("\"aaa\",\"b\"\"bb\",\"ccc\"").front().cells, (CsvCells{"aaa", "b\"bb", "ccc"}));
}

TEST(CsvLinesTest, lines_are_counted_through_quoted_line_ends) {
    const auto lines = all_lines("a\n\"b\nb\"\nc\n");
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[1].line, 2U);
    EXPECT_EQ(lines[2].line, 4U);
}

TEST(CsvLinesTest, empty_cells_and_blanks_stay_as_they_are) {
    EXPECT_EQ(all_lines("a,,b\n").front().cells, (CsvCells{"a", "", "b"}));
    EXPECT_EQ(all_lines(",\n").front().cells, (CsvCells{"", ""}));
    EXPECT_EQ(all_lines(" a , b").front().cells, (CsvCells{" a ", " b"}));
    EXPECT_EQ(all_lines("a,\"\"\n").front().cells, (CsvCells{"a", ""}));
}

TEST(CsvLinesTest, an_empty_line_is_a_record_but_behind_the_last_one) {
    const auto lines = all_lines("a\n\nb\n\r\n\n");
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[1].cells, CsvCells{""});
    EXPECT_TRUE(all_lines("").empty());
    EXPECT_TRUE(all_lines("\r\n").empty());
}

TEST(CsvLinesTest, quotes_in_the_wrong_place_are_refused_by_their_line) {
    EXPECT_EQ(first_error("a\nb\n\"c\nd\n").item, "line 3");
    EXPECT_NE(first_error("a\n\"b").accepted.find("closed"), std::string::npos);
    EXPECT_EQ(first_error("a\nb\"c\n").item, "line 2");
    EXPECT_NE(first_error("a\n\"b\"c\n").accepted.find("behind a closing quote"), std::string::npos);
}

}  // namespace
}  // namespace wetfront
