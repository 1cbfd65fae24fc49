// SPDX-License-Identifier: Apache-2.0
#include "base/ids.h"

#include <gtest/gtest.h>

#include <set>
#include <vector>

#include "support/fake_clock.h"

namespace wetfront {
namespace {

TEST(IdsTest, a_new_id_has_the_layout_of_the_published_version_7_example) {
    // RFC 9562, appendix A.6: 2022-02-22T14:22:22-05:00, rand_a CC3, rand_b 18C4DC0C0C07398F (62 bits).
    test::FakeClock clock;
    clock.wall = {0x017F22E279B0, -300};
    std::vector<std::uint64_t> bits{0x18C4DC0C0C07398FU << 2U, 0xCC3U};
    IdSource source{clock, [&] {
                        const auto next = bits.back();
                        bits.pop_back();
                        return next;
                    }};
    EXPECT_EQ(source.next().text, "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(IdsTest, version_and_variant_stand_whatever_the_random_bits_are) {
    const test::FakeClock clock;
    for (const std::uint64_t bits : {std::uint64_t{0}, ~std::uint64_t{0}}) {
        IdSource source{clock, [bits] { return bits; }};
        const auto text = source.next().text;
        ASSERT_EQ(text.size(), 36U);
        EXPECT_EQ(text[14], '7') << text;
        EXPECT_EQ(text[19], bits == 0 ? '8' : 'b') << text;
    }
}

TEST(IdsTest, later_ids_sort_after_earlier_ones) {
    test::FakeClock clock;
    IdSource source{clock};
    auto before = source.next();
    for (int i = 0; i < 100; ++i) {
        clock.advance_ms(1);
        const auto now = source.next();
        EXPECT_LT(before, now) << before.text << " and " << now.text;
        before = now;
    }
}

TEST(IdsTest, ids_of_one_millisecond_differ) {
    const test::FakeClock clock;
    IdSource source{clock};
    std::set<Id> ids;
    for (int i = 0; i < 1000; ++i) {
        ids.insert(source.next());
    }
    EXPECT_EQ(ids.size(), 1000U);
}

TEST(IdsTest, a_new_id_can_be_read_back) {
    const test::FakeClock clock;
    IdSource source{clock};
    const auto id = source.next();
    const auto result = parse_id(id.text, "id");
    ASSERT_TRUE(result);
    EXPECT_EQ(result.value(), id);
}

class BadId : public testing::TestWithParam<std::string> {};
TEST_P(BadId, is_refused) {
    const auto result = parse_id(GetParam(), "pump");
    ASSERT_FALSE(result) << GetParam();
    EXPECT_EQ(result.error().item, "pump");
    EXPECT_EQ(result.error().accepted, "an id has 1 to 64 letters, digits and hyphens");
}
INSTANTIATE_TEST_SUITE_P(Ids, BadId,
                         testing::Values("", " ", "a b", "a_b", "../a", "a/b", "a.b", "\xC3\xA4", "\xFF",
                                         "a\n", std::string(65, 'a'), std::string("a\0b", 3)));

TEST(IdsTest, ten_megabytes_are_no_id_and_give_a_short_error) {
    const auto result = parse_id(std::string(10'000'000, 'a'), "pump");
    ASSERT_FALSE(result);
    EXPECT_LT(result.error().text().size(), 300U);
}

TEST(IdsTest, an_id_may_have_up_to_64_characters) {
    EXPECT_TRUE(parse_id("A", "pump"));
    EXPECT_TRUE(parse_id(std::string(64, 'z'), "pump"));
    EXPECT_TRUE(parse_id("bank-2", "pump"));
}

}  // namespace
}  // namespace wetfront
