// SPDX-License-Identifier: Apache-2.0
#include "base/result.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

Result<int> half_of(int value) {
    if (value % 2 != 0) {
        return bad_input("value", std::to_string(value), "an even number");
    }
    return value / 2;
}

Result<int> quarter_of(int value) {
    WF_TRY(const int half, half_of(value));
    WF_TRY(const int quarter, half_of(half));
    return quarter;
}

Result<std::string> checked(int value) {
    WF_CHECK(half_of(value));
    return std::string{"even"};
}

TEST(ResultTest, a_function_goes_on_with_the_value_of_what_it_tried) {
    EXPECT_EQ(quarter_of(12).value(), 3);
}

TEST(ResultTest, a_function_is_left_with_the_first_error) {
    const auto first = quarter_of(5);
    ASSERT_FALSE(first);
    EXPECT_EQ(first.error().read, "5");
    const auto second = quarter_of(6);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().read, "3");
}

TEST(ResultTest, a_check_passes_on_the_error_only) {
    EXPECT_EQ(checked(4).value(), "even");
    EXPECT_EQ(checked(3).error(), bad_input("value", "3", "an even number"));
}

TEST(ResultTest, an_error_reads_as_item_what_was_read_and_what_is_accepted) {
    EXPECT_EQ(bad_input("header length", "3km", "write m or ft").text(),
              "header length: '3km': write m or ft");
    EXPECT_EQ(bad_input("header length", "", "write m or ft").text(), "header length: write m or ft");
    EXPECT_EQ(storage_error("visits.db", "disk full", "nothing was lost").text(),
              "visits.db: disk full: nothing was lost");
}

TEST(ResultTest, long_and_unprintable_text_is_made_fit_to_show) {
    EXPECT_EQ(printable("a\tb\n"), "a?b?");
    EXPECT_EQ(printable("a\x1B[31m\x7F"), "a?[31m?");
    EXPECT_EQ(printable("\xC2\x9B"
                        "31m"),
              "?31m")
        << "an eight-bit control sequence must not reach a terminal";
    EXPECT_EQ(printable("°F", 60), "°F");
    EXPECT_EQ(printable("\xE2\x82", 60), "??");
    EXPECT_EQ(printable(std::string(1000, 'x'), 10), "xxxxxxxxxx...");
    EXPECT_EQ(printable("0123456789", 10), "0123456789");
}

TEST(ResultTest, a_character_is_never_cut_in_two) {
    const auto shown = printable("ääääää", 5);
    EXPECT_EQ(shown, "äää...");
    EXPECT_TRUE(is_utf8(shown));
}

struct Bytes {
    std::string_view text;
    bool valid;
};
class Utf8 : public testing::TestWithParam<Bytes> {};
// Unicode Standard 15.0, table 3-7 (well-formed UTF-8 byte sequences): both sides of each limit.
TEST_P(Utf8, is_told_from_broken_bytes) {
    EXPECT_EQ(is_utf8(GetParam().text), GetParam().valid);
}
INSTANTIATE_TEST_SUITE_P(
    Sequences, Utf8,
    testing::Values(Bytes{"", true}, Bytes{"plain", true}, Bytes{"\x7F", true}, Bytes{"\x80", false},
                    Bytes{"\xC1\xBF", false}, Bytes{"\xC2\x80", true}, Bytes{"\xDF\xBF", true},
                    Bytes{"\xC2", false}, Bytes{"\xC2\x7F", false}, Bytes{"\xE0\x9F\xBF", false},
                    Bytes{"\xE0\xA0\x80", true}, Bytes{"\xED\x9F\xBF", true}, Bytes{"\xED\xA0\x80", false},
                    Bytes{"\xEE\x80\x80", true}, Bytes{"\xE2\x82", false}, Bytes{"\xF0\x8F\xBF\xBF", false},
                    Bytes{"\xF0\x90\x80\x80", true}, Bytes{"\xF4\x8F\xBF\xBF", true},
                    Bytes{"\xF4\x90\x80\x80", false}, Bytes{"\xF5\x80\x80\x80", false}, Bytes{"\xFF", false},
                    Bytes{"ok\xF0\x9F\x92\xA7", true}, Bytes{"ok\xF0\x9F\x92", false}));

}  // namespace
}  // namespace wetfront
