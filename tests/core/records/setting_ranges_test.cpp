// SPDX-License-Identifier: Apache-2.0
#include "records/setting_ranges.h"

#include <gmock/gmock.h>

namespace wetfront::test {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

template <class Q>
Entered<Q> typed(const char* text) {
    return Entered<Q>::parse(text, "test").value();
}

TEST(SettingRangesTest, a_value_is_usual_at_its_limit_and_not_beyond) {
    TimerSettings settings;
    settings.period = typed<Duration>("4h");
    settings.base_on_time = typed<Duration>("0s");
    EXPECT_THAT(unusual_settings(settings), IsEmpty());
    settings.period = typed<Duration>("14401s");
    settings.base_on_time = typed<Duration>("-1s");
    const auto unusual = unusual_settings(settings);
    ASSERT_THAT(unusual, SizeIs(2));
    EXPECT_STREQ(unusual[0].field.key, "period");
    EXPECT_EQ(unusual[0].value.si, 14401.0);
    EXPECT_STREQ(unusual[1].field.key, "base_on_time");
}

TEST(SettingRangesTest, a_trim_row_is_told_by_its_number) {
    TimerSettings settings;
    settings.trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("10s")},
                          {typed<TemperatureDifference>("2K"), typed<Duration>("-700s")}};
    const auto unusual = unusual_settings(settings);
    ASSERT_THAT(unusual, SizeIs(1));
    EXPECT_EQ(unusual[0].row, 2);
    EXPECT_STREQ(unusual[0].field.key, "change");
}

TEST(SettingRangesTest, without_what_is_unusual_all_else_stays) {
    TimerSettings settings;
    settings.timer = Id{"timer-1"};
    settings.target = typed<Temperature>("-100degC");
    settings.humidity_cut_off = typed<Fraction>("80%");
    settings.trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>("-700s")}};
    auto wanted = settings;
    wanted.target.reset();
    wanted.trim_rows.front().change.reset();
    EXPECT_EQ(without_unusual(settings), wanted);
    EXPECT_EQ(without_unusual(wanted), wanted);
}

}  // namespace
}  // namespace wetfront::test
