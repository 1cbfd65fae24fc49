// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The demo's houses in a real window.
class FindWalkTest : public testing::TestWithParam<QSize> {
protected:
    FindWalkTest() {
        EXPECT_TRUE(fill_store(walk.store()));
        // The list is read anew on the way back to it.
        walk.session().openHouse(QStringLiteral("demo-alder"));
        walk.session().leave();
        walk.hand().click(QStringLiteral("Find"));
    }
    bool lists(const char* house) {
        return walk.hand().shows(QString::fromUtf8(house) + QStringLiteral(", Thimblewick Farm (invented)"));
    }

    Walk walk{GetParam()};
};

TEST_P(FindWalkTest, typed_words_narrow_the_list_and_one_press_brings_all_houses_back) {
    EXPECT_TRUE(lists("House Alder"));
    walk.write(QStringLiteral("House, farm or customer"), QStringLiteral("birch"));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("1 of 3 houses")));
    EXPECT_TRUE(lists("House Birch"));
    EXPECT_FALSE(lists("House Alder"));
    walk.hand().click(QStringLiteral("Show all houses"));
    EXPECT_TRUE(lists("House Alder"));
}

TEST_P(FindWalkTest, a_narrowed_list_stays_narrowed_and_says_so_after_a_look_at_a_house) {
    walk.hand().click(QStringLiteral("Visit open"));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("1 of 3 houses")));
    walk.hand().click(QStringLiteral("House Cedar, Thimblewick Farm (invented)"));
    walk.session().leave();
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("1 of 3 houses")));
    EXPECT_FALSE(lists("House Alder"));
}

INSTANTIATE_TEST_SUITE_P(Screens, FindWalkTest, testing::Values(QSize{1024, 600}, QSize{600, 1024}),
                         [](const testing::TestParamInfo<QSize>& info) {
                             return info.param.width() > info.param.height() ? "landscape" : "portrait";
                         });

}  // namespace
}  // namespace wetfront::ui
