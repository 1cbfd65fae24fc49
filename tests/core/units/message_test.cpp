// SPDX-License-Identifier: Apache-2.0
#include "units/message.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

TEST(MessageTest, placeholders_take_their_arguments_in_any_order_and_more_than_once) {
    EXPECT_EQ(expand("%2 before %1, %2 again", {"one", "two"}), "two before one, two again");
}

TEST(MessageTest, an_argument_that_looks_like_a_placeholder_is_not_expanded_again) {
    EXPECT_EQ(expand("%1 and %2", {"%2", "%1"}), "%2 and %1");
    const Message message{"House %1: %2", {std::string{"%2 North"}, verbatim("%1%%")}};
    EXPECT_EQ(in_english(message, UnitSystem::us), "House %2 North: %1%%");
}

TEST(MessageTest, percent_signs_that_are_no_placeholder_are_copied) {
    EXPECT_EQ(expand("100 % sure, 5%", {"x"}), "100 % sure, 5%");
    EXPECT_EQ(expand("%0 %a %", {"x"}), "%0 %a %");
    EXPECT_EQ(expand("%%1", {"x"}), "%x");
}

TEST(MessageTest, a_placeholder_without_argument_stays_visible) {
    EXPECT_EQ(expand("%1 %3", {"x"}), "x %3");
}

TEST(MessageTest, a_placeholder_has_one_digit) {
    EXPECT_EQ(expand("%10", {"x"}), "x0");
}

TEST(MessageTest, each_reader_gets_his_own_units) {
    const Message message{"Fill takes %1 at %2, %3 times", {any(79.999_s), any(celsius(35.0)), 3}};
    EXPECT_EQ(in_english(message, UnitSystem::us), "Fill takes 80 s at 95 °F, 3 times");
    EXPECT_EQ(in_english(message, UnitSystem::si), "Fill takes 80 s at 35 °C, 3 times");
}

TEST(MessageTest, messages_nest) {
    const Message inner{"bank %1", {std::string{"A"}}};
    const Message outer{"%1 and %2", {inner, Message{"nothing else"}}};
    EXPECT_EQ(in_english(outer, UnitSystem::si), "bank A and nothing else");
}

TEST(MessageTest, verbatim_text_is_shown_as_it_stands) {
    EXPECT_EQ(in_english(verbatim("Barn %1 \xE2\x84\x96 7"), UnitSystem::us), "Barn %1 \xE2\x84\x96 7");
}

TEST(MessageTest, messages_are_equal_by_text_and_values) {
    const Message a{"%1", {any(45_s)}};
    EXPECT_EQ(a, (Message{"%1", {any(45_s)}}));
    EXPECT_FALSE(a == (Message{"%1", {any(46_s)}}));
    EXPECT_FALSE(a == (Message{"%1!", {any(45_s)}}));
    EXPECT_TRUE(Message{}.empty());
}

}  // namespace
}  // namespace wetfront
