// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The demo's example visit, not signed, with nothing left yet, at the step Advice.
class WhatIfWalkTest : public testing::TestWithParam<QSize> {
protected:
    WhatIfWalkTest() {
        VisitFile file = example_visit();
        file.visit.signatures.clear();
        file.visit.left.clear();
        const auto added = walk.store().add(file);
        EXPECT_TRUE(added) << added.error().text();
        walk.session().openVisit(QString::fromStdString(file.visit.id.text));
        walk.go_to(Step::advice);
    }

    Heard slider(const char* name) {
        const auto heard = walk.hand().everything();
        const auto found = std::ranges::find_if(heard, [&](const Heard& each) {
            return each.role == QAccessible::Slider && each.name == QLatin1String(name);
        });
        if (found == heard.end()) {
            throw std::runtime_error{std::string{"no slider is called "} + name};
        }
        return *found;
    }
    bool says(const QString& words) {
        const auto heard = walk.hand().everything();
        return std::ranges::any_of(heard, [&](const Heard& each) { return each.name.contains(words); });
    }
    [[nodiscard]] const SettingAdvice& advised(Setting setting) {
        advice_ = advise(walk.stored_visit());
        return *advice_.timers.front().advised(setting);
    }

    Walk walk{GetParam()};
    Advice advice_;
};

// The demo's banks fill in 38 and 41 s; a run far below that leaves the far end dry, and the rules say so.
TEST_P(WhatIfWalkTest, a_finger_moves_the_on_time_the_findings_follow_and_one_press_goes_back) {
    EXPECT_FALSE(walk.hand().shows(QStringLiteral("Back to the advice")));
    walk.hand().click(QStringLiteral("What if"));
    const auto before = slider("Base on-time").description;
    EXPECT_TRUE(before.startsWith(Formatter{}.text(*advised(Setting::base_on_time).value)))
        << before.toStdString();
    const auto cycle = QStringLiteral("one period of the pump's cycle: found, what if");
    const auto drawn = walk.hand().find(cycle).description;

    walk.hand().drag(slider("Base on-time"), 0.16, 0.06);
    EXPECT_NE(slider("Base on-time").description, before);
    EXPECT_NE(walk.hand().find(cycle).description, drawn);
    EXPECT_TRUE(says(QStringLiteral("to reach the far end of"))) << "no finding on a run too short to fill";

    walk.hand().click(QStringLiteral("Back to the advice"));
    EXPECT_EQ(slider("Base on-time").description, before);
    EXPECT_EQ(walk.hand().find(cycle).description, drawn);
    EXPECT_FALSE(says(QStringLiteral("to reach the far end of")));
    EXPECT_TRUE(walk.stored_visit().visit.left.empty()) << "What if stored something";
}

TEST_P(WhatIfWalkTest, arrow_keys_move_by_the_timers_step) {
    walk.hand().click(QStringLiteral("What if"));
    auto* const on_time = walk.session().visit()->advice()->whatIf()->onTime();
    const double before = on_time->value();
    slider("Base on-time").item->forceActiveFocus(Qt::TabFocusReason);
    walk.hand().key(Qt::Key_Right);
    EXPECT_DOUBLE_EQ(on_time->value(), before + on_time->step());
}

TEST_P(WhatIfWalkTest, a_page_that_was_left_opens_with_the_advice_again) {
    walk.hand().click(QStringLiteral("What if"));
    walk.hand().drag(slider("Base on-time"), 0.16, 0.06);
    walk.go_to(Step::conditions);
    EXPECT_FALSE(walk.session().visit()->advice()->whatIf()->open()) << "it goes on working out of sight";
    walk.go_to(Step::advice);
    walk.hand().click(QStringLiteral("What if"));
    EXPECT_FALSE(walk.session().visit()->advice()->whatIf()->moved());
}

TEST_P(WhatIfWalkTest, advice_does_not_overwrite_an_entry_without_a_question) {
    walk.go_to(Step::settings_left);
    walk.enter(QStringLiteral("Base on-time"), QStringLiteral("20"), QStringLiteral("s"));
    const auto on_time = [this] { return walk.stored_visit().visit.left.front().base_on_time->text(); };
    walk.hand().click(QStringLiteral("Take over the advice"));
    ASSERT_TRUE(walk.hand().shows(QStringLiteral("Keep what is entered")));
    walk.hand().click(QStringLiteral("Keep what is entered"));
    EXPECT_EQ(on_time(), "20 s");
    walk.hand().click(QStringLiteral("Take over the advice"));
    walk.hand().click(QStringLiteral("Put the advice in its place"));
    EXPECT_NE(on_time(), "20 s");
}

TEST_P(WhatIfWalkTest, what_differs_from_the_advice_is_kept_with_a_reason) {
    walk.go_to(Step::settings_left);
    EXPECT_FALSE(walk.hand().shows(QStringLiteral("Why it differs from the advice")));
    walk.enter(QStringLiteral("Base on-time"), QStringLiteral("20"), QStringLiteral("s"));
    EXPECT_TRUE(
        walk.hand().find(QStringLiteral("Base on-time")).description.contains(QStringLiteral("20 s")));
    EXPECT_TRUE(says(QStringLiteral("Base on-time: 20 s instead of")));
    walk.write(QStringLiteral("Why it differs from the advice"), QStringLiteral("The grower saves water"));
    EXPECT_EQ(walk.stored_visit().visit.left.front().deviation_reason, "The grower saves water");
}

INSTANTIATE_TEST_SUITE_P(Screens, WhatIfWalkTest, testing::Values(QSize(1024, 600), QSize(800, 1280)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
