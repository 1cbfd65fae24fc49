// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "records/record_text.h"

namespace wetfront::test {
namespace {

constexpr Field bank_length{"length", "Pad length", "", 0.5, 200.0};
constexpr Field outlet{"outlet_bore", "Outlet bore", "", 0.0005, 0.03, Scale::fine};
constexpr Field long_time{"period", "Period", "", 1.0, 14400.0};
constexpr Field open_field{"any", "Any"};

TEST(FieldTextTest, a_range_is_shown_in_the_unit_system_asked_for) {
    EXPECT_EQ(range_text(bank_length, Kind::length, UnitSystem::si), "0.5 m to 200 m");
    EXPECT_EQ(range_text(bank_length, Kind::length, UnitSystem::us), "1.64 ft to 656.2 ft");
    EXPECT_EQ(range_text(outlet, Kind::length, UnitSystem::si), "0.5 mm to 30 mm");
    EXPECT_EQ(range_text(outlet, Kind::length, UnitSystem::us), "0.01969 in to 1.181 in");
    EXPECT_EQ(range_text(long_time, Kind::duration, UnitSystem::us), "1 s to 4 h");
}

TEST(FieldTextTest, a_field_without_limits_has_no_range_text_and_accepts_everything) {
    EXPECT_EQ(range_text(open_field, Kind::length, UnitSystem::si), "");
    EXPECT_TRUE(parse_field<Length>(open_field, "1e9m", "any"));
}

TEST(FieldTextTest, limits_are_named_in_the_unit_system_of_the_typed_unit) {
    const auto us = parse_field<Length>(bank_length, "900 ft", "Pad length");
    ASSERT_FALSE(us);
    EXPECT_EQ(us.error().text(), "Pad length: '900 ft': must be 1.64 ft to 656.2 ft");
    const auto si = parse_field<Length>(bank_length, "900m", "Pad length");
    ASSERT_FALSE(si);
    EXPECT_EQ(si.error().text(), "Pad length: '900m': must be 0.5 m to 200 m");
}

TEST(FieldTextTest, a_limit_typed_in_another_unit_is_still_inside) {
    // 273.15 K + 15 K is 59 degF exactly.
    const Field hot{"design_dry_bulb", "", "", 273.15 + 15.0, 273.15 + 55.0};
    EXPECT_TRUE(parse_field<Temperature>(hot, "59degF", "T"));
    EXPECT_TRUE(parse_field<Temperature>(hot, "131degF", "T"));
    EXPECT_FALSE(parse_field<Temperature>(hot, "58.99degF", "T"));
}

TEST(FieldTextTest, a_text_with_a_control_character_or_broken_utf8_is_refused) {
    EXPECT_TRUE(check_text("Zu\xC3\xB1iga 4 \xE2\x80\x94 north", 200, "name"));
    for (const std::string text : {"a\tb", "a\nb", "a\x7F", "a\xFF"}) {
        const auto result = check_text(text, 200, "name");
        ASSERT_FALSE(result) << text;
        EXPECT_EQ(result.error().item, "name");
    }
}

}  // namespace
}  // namespace wetfront::test
