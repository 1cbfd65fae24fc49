// SPDX-License-Identifier: Apache-2.0
#include "base/enum_names.h"

#include <gtest/gtest.h>

namespace wetfront {
enum class Weather { dry, wet, unnamed };
template <>
struct EnumNames<Weather> {
    static constexpr std::array all{EnumName{Weather::dry, "dry air"}, EnumName{Weather::wet, "wet air"}};
};
namespace {

TEST(EnumNamesTest, a_name_and_its_enumerator_lead_to_each_other) {
    EXPECT_EQ(enum_name(Weather::wet), "wet air");
    EXPECT_EQ(enum_value<Weather>("wet air"), Weather::wet);
}

TEST(EnumNamesTest, an_unknown_name_has_no_enumerator_and_the_other_way_round) {
    EXPECT_EQ(enum_value<Weather>("Wet air"), std::nullopt);
    EXPECT_EQ(enum_value<Weather>(""), std::nullopt);
    EXPECT_EQ(enum_name(Weather::unnamed), "");
}

static_assert(NamedEnum<Weather>);
static_assert(!NamedEnum<int>);

}  // namespace
}  // namespace wetfront
