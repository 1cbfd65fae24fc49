// SPDX-License-Identifier: Apache-2.0
#include "tables/csv.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

std::string one_cell(TableCell cell) {
    const auto text = csv_text({"t", {"c"}, {{std::move(cell)}}});
    return text.substr(3, text.size() - 5);  // without "c", its line end and the last line end
}

// The example of RFC 4180, section 2, rules 5 to 7.
TEST(CsvTest, commas_quotes_and_line_ends_are_quoted_as_the_rfc_does) {
    EXPECT_EQ(csv_text({"t",
                        {"field_name", "second"},
                        {{std::string{"aaa"}, std::string{"b\r\nbb"}},
                         {std::string{"b\"bb"}, std::string{"c,c"}}}}),
              "field_name,second\r\naaa,\"b\r\nbb\"\r\n\"b\"\"bb\",\"c,c\"\r\n");
}

TEST(CsvTest, nothing_is_an_empty_cell_and_a_flag_a_word) {
    EXPECT_EQ(csv_text({"t", {"a", "b", "c"}, {{{}, true, false}}}), "a,b,c\r\n,true,false\r\n");
}

TEST(CsvTest, a_text_that_is_a_formula_to_a_spreadsheet_is_guarded) {
    for (const char* text : {"=1+1", "+1", "-1", "@SUM(A1)", "=HYPERLINK(\"http://x\";\"y\")"}) {
        const auto cell = one_cell(std::string{text});
        EXPECT_EQ(cell[cell.front() == '"' ? 1 : 0], '\'') << cell;
    }
    EXPECT_EQ(one_cell(std::string{"\t=1"}), "'\t=1");
    EXPECT_EQ(one_cell(std::string{"\r=1"}), "\"'\r=1\"");
    EXPECT_EQ(one_cell(std::string{"House 2 = old"}), "House 2 = old");
}

TEST(CsvTest, a_number_below_zero_is_no_formula_and_reads_back_to_its_last_digit) {
    EXPECT_EQ(one_cell(-2.5), "-2.5");
    EXPECT_EQ(std::stod(one_cell(0.1 + 0.2)), 0.1 + 0.2);
}

TEST(CsvTest, a_table_without_rows_is_its_headings) {
    EXPECT_EQ(csv_text({"t", {"a", "b"}, {}}), "a,b\r\n");
}

}  // namespace
}  // namespace wetfront
