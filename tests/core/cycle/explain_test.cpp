// SPDX-License-Identifier: Apache-2.0
#include "cycle/explain.h"

#include <gmock/gmock.h>

namespace wetfront::test {
namespace {

using testing::HasSubstr;

Reason review_after(double lag) {
    CycleMargins margins;
    margins.house_lag = seconds(lag);
    return why_review_interval(seconds(300.0), margins);
}

TEST(ExplainTest, a_review_interval_says_what_it_was_rounded_up_from_and_names_its_floor) {
    EXPECT_EQ(review_after(300.0).exact->si, 600.0);
    EXPECT_EQ(review_after(720.0).exact->si, 720.0);
    for (const double lag : {300.0, 720.0}) {
        EXPECT_THAT(in_english(review_after(lag).explanation, UnitSystem::si),
                    HasSubstr("shorter neither than that nor than 10 min"));
        EXPECT_GE(in_seconds(review_interval(seconds(300.0), seconds(lag))), review_after(lag).exact->si);
    }
}

}  // namespace
}  // namespace wetfront::test
