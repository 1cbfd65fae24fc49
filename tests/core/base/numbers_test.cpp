// SPDX-License-Identifier: Apache-2.0
#include "base/numbers.h"

#include <gmock/gmock.h>

#include <bit>
#include <cmath>
#include <limits>
#include <locale>
#include <random>

namespace wetfront {
namespace {

using testing::HasSubstr;

struct Written {
    const char* text;
    double value;
};
class AcceptedNumber : public testing::TestWithParam<Written> {};
TEST_P(AcceptedNumber, is_read_as_what_a_person_means) {
    const auto [text, value] = GetParam();
    const auto result = parse_number(text, "length");
    ASSERT_TRUE(result) << text << ": " << result.error().text();
    EXPECT_EQ(result.value(), value) << text;
}
INSTANTIATE_TEST_SUITE_P(Numbers, AcceptedNumber,
                         testing::Values(Written{"45", 45.0}, Written{"-3.5", -3.5}, Written{"+7", 7.0},
                                         Written{"0,75", 0.75}, Written{"1,5", 1.5}, Written{"12,34", 12.34},
                                         Written{"1,2345", 1.2345}, Written{"-0", 0.0}, Written{".5", 0.5},
                                         Written{",5", 0.5}, Written{"5.", 5.0}, Written{"1e-3", 0.001},
                                         Written{"1E3", 1000.0}, Written{"1,5e2", 150.0},
                                         Written{"1e+2", 100.0}, Written{"1.234", 1.234},
                                         Written{"0007", 7.0}));

class RefusedNumber : public testing::TestWithParam<const char*> {};
TEST_P(RefusedNumber, is_refused_by_name_and_says_what_is_accepted) {
    const auto result = parse_number(GetParam(), "header length");
    ASSERT_FALSE(result) << GetParam() << " was read as " << result.value();
    EXPECT_EQ(result.error().kind, Error::Kind::bad_input);
    EXPECT_EQ(result.error().item, "header length");
    EXPECT_THAT(result.error().accepted, HasSubstr("write"));
}
INSTANTIATE_TEST_SUITE_P(Numbers, RefusedNumber,
                         testing::Values("", " ", " 5", "5 ", "abc", "nan", "NaN", "-nan", "nan(1)", "inf",
                                         "-inf", "Infinity", "1e999", "-1e999", "0x10", "0x1p3", "1p3", "1e",
                                         "1e+", "e5", "-", "+", "+-5", "-+5", "++5", "--5", ".", ",", "1.2.3",
                                         "1,2,3", "1.234,5", "1,234.5", "1,234", "12,345", "1,234,567",
                                         "1,234e2", "1 000", "1'000", "1_000", "5m", "1e2.5", "١٢",
                                         "5\xC2\xA0", "\xFF\xFE",
                                         "12345678901234567890123456789012345678901"));

TEST(NumbersTest, a_number_with_a_zero_byte_inside_is_refused) {
    EXPECT_FALSE(parse_number(std::string_view{"1\0002", 3}, "length"));
}

TEST(NumbersTest, ten_megabytes_of_digits_are_refused_with_a_short_text) {
    const std::string text(10'000'000, '7');
    const auto result = parse_number(text, "length");
    ASSERT_FALSE(result);
    EXPECT_LT(result.error().text().size(), 300U);
}

TEST(NumbersTest, invalid_utf8_is_shown_as_question_marks) {
    const auto result = parse_number(
        "4\xFF"
        "5",
        "length");
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().read, "4?5");
}

struct Printed {
    double value;
    int decimals;
    const char* number;
    const char* fixed;
};
class PrintedNumber : public testing::TestWithParam<Printed> {};
TEST_P(PrintedNumber, is_rounded_and_never_shows_a_negative_zero) {
    const auto [value, decimals, number, fixed] = GetParam();
    EXPECT_EQ(print_number(value, decimals), number) << value << " with " << decimals;
    EXPECT_EQ(print_fixed(value, decimals), fixed) << value << " with " << decimals;
}
INSTANTIATE_TEST_SUITE_P(Numbers, PrintedNumber,
                         testing::Values(Printed{79.999, 1, "80", "80.0"},
                                         Printed{79.999, 3, "79.999", "79.999"},
                                         Printed{79.949, 1, "79.9", "79.9"}, Printed{1.5, 0, "2", "2"},
                                         Printed{-0.04, 1, "0", "0.0"}, Printed{-0.0, 2, "0", "0.00"},
                                         Printed{-0.06, 1, "-0.1", "-0.1"}, Printed{100.0, 0, "100", "100"},
                                         Printed{100.0, 2, "100", "100.00"},
                                         Printed{1e15, 0, "1000000000000000", "1000000000000000"},
                                         Printed{45.0, -3, "45", "45"},
                                         Printed{0.5, 15, "0.5", "0.500000000000"}));

TEST(NumbersTest, an_exact_text_has_the_fewest_digits_and_no_needless_exponent) {
    EXPECT_EQ(print_exact(100000.0), "100000");
    EXPECT_EQ(print_exact(0.0254), "0.0254");
    EXPECT_EQ(print_exact(0.1), "0.1");
    EXPECT_EQ(print_exact(0.0), "0");
    EXPECT_EQ(print_exact(1e300), "1e+300");
    EXPECT_EQ(print_exact(1e-9), "1e-09");
}

TEST(NumbersTest, every_exact_text_reads_back_as_the_same_double) {
    std::mt19937_64 bits{20260701};
    int tried = 0;
    while (tried < 20'000) {
        const auto value = std::bit_cast<double>(bits());
        if (!std::isnormal(value)) {
            continue;
        }
        ++tried;
        const auto text = print_exact(value);
        const auto result = parse_number(text, "value");
        ASSERT_TRUE(result) << text;
        ASSERT_EQ(result.value(), value) << text;
    }
    std::uniform_real_distribution<double> plain{-2000.0, 2000.0};
    for (int i = 0; i < 20'000; ++i) {
        const double value = plain(bits);
        ASSERT_EQ(parse_number(print_exact(value), "value").value(), value) << print_exact(value);
    }
}

class CommaPunctuation : public std::numpunct<char> {
protected:
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

TEST(NumbersTest, the_program_language_changes_no_digit) {
    const auto before = std::locale::global(std::locale{std::locale::classic(), new CommaPunctuation});
    const auto read = parse_number("1234.5", "value");
    const auto number = print_number(1234.5, 2);
    const auto exact = print_exact(1234.5);
    std::locale::global(before);
    ASSERT_TRUE(read);
    EXPECT_EQ(read.value(), 1234.5);
    EXPECT_EQ(number, "1234.5");
    EXPECT_EQ(exact, "1234.5");
}

}  // namespace
}  // namespace wetfront
