// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The demo's example visit, not signed, at the step Advice.
class LimitsWalkTest : public testing::TestWithParam<QSize> {
protected:
    LimitsWalkTest() {
        VisitFile file = example_visit();
        file.visit.signatures.clear();
        file.visit.left.clear();
        const auto added = walk.store().add(file);
        EXPECT_TRUE(added) << added.error().text();
        walk.session().openVisit(QString::fromStdString(file.visit.id.text));
        walk.go_to(Step::advice);
    }
    bool says(const QString& words) {
        const auto heard = walk.hand().everything();
        return std::ranges::any_of(heard, [&](const Heard& each) { return each.name.contains(words); });
    }
    /// As the line of the advice says it: "found 45 s, advised 85 s, left –".
    QString on_time() { return walk.hand().find(QStringLiteral("Base on-time")).description; }
    std::optional<double> advised_on_time() {
        const auto advice = advise(walk.stored_visit());
        const auto& value = advice.timers.front().advised(Setting::base_on_time)->value;
        return value ? std::optional{value->si} : std::nullopt;
    }

    Walk walk{GetParam()};
};

TEST_P(LimitsWalkTest, a_limit_changed_on_the_page_of_the_advice_changes_it_and_goes_back_with_one_press) {
    const auto before = on_time();
    const auto seconds_before = advised_on_time();
    ASSERT_TRUE(seconds_before);
    const auto less_safe = QStringLiteral("Runs bring 110 % of the water");
    EXPECT_FALSE(says(less_safe) || says(QStringLiteral("Runs bring 110% of the water")));

    walk.hand().click(QStringLiteral("Margins and limits"));
    walk.enter(QStringLiteral("Water margin"), QStringLiteral("110"), QStringLiteral("%"));
    EXPECT_NE(on_time(), before);
    ASSERT_TRUE(advised_on_time());
    EXPECT_LT(*advised_on_time(), *seconds_before);
    EXPECT_EQ(walk.stored_visit().farm.limits.water_margin->text(), "110 %");
    EXPECT_TRUE(says(less_safe) || says(QStringLiteral("Runs bring 110% of the water")))
        << "no finding on a limit that is less safe";
    EXPECT_TRUE(says(QStringLiteral("changed for this farm (the program's own: 125")));

    const QString back =
        QStringLiteral("Water margin: back to %1").arg(Formatter{}.text(AnyQuantity{Kind::fraction, 1.25}));
    walk.hand().click(back);
    EXPECT_EQ(on_time(), before);
    EXPECT_EQ(walk.stored_visit().farm.limits, Limits{});
    EXPECT_FALSE(walk.hand().shows(back));
}

TEST_P(LimitsWalkTest, the_step_of_the_house_has_them_too) {
    walk.go_to(Step::house_and_banks);
    walk.hand().click(QStringLiteral("Margins and limits"));
    walk.enter(QStringLiteral("Clock ahead of the sun"), QStringLiteral("90"), QStringLiteral("min"));
    EXPECT_EQ(walk.stored_visit().farm.limits.clock_ahead_of_sun->text(), "90 min");
}

INSTANTIATE_TEST_SUITE_P(Screens, LimitsWalkTest, testing::Values(QSize(1024, 600), QSize(800, 1280)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
