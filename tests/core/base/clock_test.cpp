// SPDX-License-Identifier: Apache-2.0
#include "base/clock.h"

#include <gmock/gmock.h>

#include <random>

namespace wetfront {
namespace {

struct Moment {
    const char* text;
    std::int64_t unix_ms;
    std::int32_t offset;
};
class GoodTime : public testing::TestWithParam<Moment> {};
TEST_P(GoodTime, is_read_to_the_millisecond) {
    const auto [text, unix_ms, offset] = GetParam();
    const auto result = parse_iso8601(text, "started");
    ASSERT_TRUE(result) << text << ": " << result.error().text();
    EXPECT_EQ(result.value().unix_ms, unix_ms) << text;
    EXPECT_EQ(result.value().utc_offset_minutes, offset) << text;
}
// Days counted by hand: 1970-01-01 to 2000-01-01 is 30 * 365 + 7 leap days = 10 957, to 2026-01-01 20 454, to
// 2024-01-01 19 723. The 2022 row is the worked example of RFC 9562, appendix A.6 (0x017F22E279B0 ms).
INSTANTIATE_TEST_SUITE_P(
    Iso8601, GoodTime,
    testing::Values(Moment{"1970-01-01T00:00:00Z", 0, 0},
                    Moment{"1970-01-01T00:00:00+14:00", -50'400'000, 840},
                    Moment{"2000-02-29T00:00:00Z", (10'957LL + 59) * 86'400'000, 0},
                    Moment{"2000-03-01T00:00:00Z", (10'957LL + 60) * 86'400'000, 0},
                    Moment{"2024-02-29T23:59:59.999Z", (19'723LL + 60) * 86'400'000 - 1, 0},
                    Moment{"2022-02-22T14:22:22-05:00", 0x017F22E279B0, -300},
                    Moment{"2026-07-01T05:00:00-05:00", (20'454LL + 181) * 86'400'000 + 36'000'000, -300},
                    Moment{"2026-07-01T15:30:00+05:30", (20'454LL + 181) * 86'400'000 + 36'000'000, 330},
                    Moment{"2026-07-01T10:00:00.25Z", (20'454LL + 181) * 86'400'000 + 36'000'250, 0},
                    Moment{"2026-07-01T10:00:00.2509999999Z", (20'454LL + 181) * 86'400'000 + 36'000'250,
                           0}));

class BadTime : public testing::TestWithParam<const char*> {};
TEST_P(BadTime, is_refused_with_an_example_of_a_good_one) {
    const auto result = parse_iso8601(GetParam(), "started");
    ASSERT_FALSE(result) << GetParam() << " was read as " << to_iso8601(result.value());
    EXPECT_EQ(result.error().item, "started");
    EXPECT_THAT(result.error().accepted, testing::HasSubstr("2026-07-01T10:04:05-05:00"));
}
INSTANTIATE_TEST_SUITE_P(
    Iso8601, BadTime,
    testing::Values("", "2026", "2026-07-01", "2026-07-01T10:00:00", "2026-07-01T10:00Z",
                    "2026-07-01 10:00:00Z", "2026-07-01t10:00:00Z", "2026-7-1T10:00:00Z",
                    "2025-02-29T10:00:00Z", "2100-02-29T10:00:00Z", "2026-00-10T10:00:00Z",
                    "2026-13-10T10:00:00Z", "2026-04-31T10:00:00Z", "2026-07-00T10:00:00Z",
                    "2026-07-01T24:00:00Z", "2026-07-01T10:60:00Z", "2026-07-01T10:00:60Z",
                    "2026-07-01T10:00:00.Z", "2026-07-01T10:00:00,5Z", "2026-07-01T10:00:00+15:00",
                    "2026-07-01T10:00:00+14:01", "2026-07-01T10:00:00-14:30", "2026-07-01T10:00:00+05:60",
                    "2026-07-01T10:00:00+0500", "2026-07-01T10:00:00+05", "2026-07-01T10:00:00Zx",
                    "2026-07-01T10:00:00Z ", " 2026-07-01T10:00:00Z", "+026-07-01T10:00:00Z",
                    "2026--7-01T10:00:00Z", "2026-07-01T-1:00:00Z", "1969-12-31T23:59:59Z",
                    "2200-01-01T00:00:00Z", "2026-07-01T10:00:00.\xFFZ",
                    "2026\xE2\x80\x93"
                    "07-01T10:00:00Z"));

TEST(ClockTest, ten_megabytes_after_a_good_time_are_refused_with_a_short_text) {
    const auto result = parse_iso8601("2026-07-01T10:00:00." + std::string(10'000'000, '1') + "x", "started");
    ASSERT_FALSE(result);
    EXPECT_LT(result.error().text().size(), 300U);
}

TEST(ClockTest, a_time_prints_with_milliseconds_and_the_offset_of_its_place) {
    EXPECT_EQ(to_iso8601({0x017F22E279B0, -300}), "2022-02-22T14:22:22.000-05:00");
    EXPECT_EQ(to_iso8601({-1, 0}), "1969-12-31T23:59:59.999+00:00");
    EXPECT_EQ(to_iso8601({0x017F22E279B0, 345}), "2022-02-23T01:07:22.000+05:45");
}

TEST(ClockTest, date_and_clock_are_those_of_the_place) {
    const WallTime late_evening{0x017F22E279B0, 330};  // 19:22 UTC on the 22nd
    EXPECT_EQ(local_date(late_evening), "2022-02-23");
    EXPECT_EQ(local_clock(late_evening), "00:52");
}

TEST(ClockTest, every_printed_time_reads_back_as_itself) {
    std::mt19937_64 random{7};
    // 1971-01-01 to 2199-01-01 in days, so that no offset leaves the accepted years.
    std::uniform_int_distribution<std::int64_t> ms{365LL * 86'400'000, 83'640LL * 86'400'000};
    std::uniform_int_distribution<std::int32_t> offset{-840, 840};
    for (int i = 0; i < 20'000; ++i) {
        const WallTime time{ms(random), offset(random)};
        const auto text = to_iso8601(time);
        const auto result = parse_iso8601(text, "time");
        ASSERT_TRUE(result) << text;
        ASSERT_EQ(result.value(), time) << text;
    }
}

TEST(ClockTest, the_boot_clock_keeps_one_boot_id_and_never_runs_backwards) {
    const SystemClock clock;
    const auto first = clock.boot_now();
    const auto second = clock.boot_now();
    EXPECT_FALSE(first.boot_id.empty());
    EXPECT_EQ(first.boot_id, second.boot_id);
    EXPECT_LE(first.boot_ns, second.boot_ns);
}

}  // namespace
}  // namespace wetfront
