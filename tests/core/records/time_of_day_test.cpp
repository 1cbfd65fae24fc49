// SPDX-License-Identifier: Apache-2.0
#include "records/time_of_day.h"

#include <gtest/gtest.h>

namespace wetfront {
namespace {

TEST(TimeOfDayTest, every_time_of_day_reads_back_as_it_is_written) {
    for (int minutes = 0; minutes < 1440; ++minutes) {
        const auto text = TimeOfDay{minutes}.text();
        ASSERT_EQ(text.size(), 5U);
        const auto back = TimeOfDay::parse(text, "rinse");
        ASSERT_TRUE(back) << text;
        ASSERT_EQ(back.value().minutes, minutes) << text;
    }
}

TEST(TimeOfDayTest, what_is_no_time_of_day_is_refused) {
    for (const auto* text :
         {"", "9:30", "09.30", "24:00", "09:60", "-1:00", "09:30 ", "0930", "ab:cd", "09:3o"}) {
        EXPECT_FALSE(TimeOfDay::parse(text, "rinse")) << text;
    }
}

TEST(TimeOfDayTest, it_is_the_nearest_minute_of_what_has_passed_since_midnight) {
    EXPECT_EQ(TimeOfDay::at(seconds(0.0)), TimeOfDay{0});
    EXPECT_EQ(TimeOfDay::at(seconds(36029.0)), TimeOfDay{600});
    EXPECT_EQ(TimeOfDay::at(seconds(36031.0)), TimeOfDay{601});
    EXPECT_EQ(TimeOfDay::at(seconds(86400.0 + 5400.0)), TimeOfDay{90});
    EXPECT_EQ(TimeOfDay::at(seconds(-900.0)), TimeOfDay{1425});
    EXPECT_EQ(TimeOfDay{570}.since_midnight(), (AnyQuantity{Kind::duration, 34200.0, Scale::clock}));
}

}  // namespace
}  // namespace wetfront
