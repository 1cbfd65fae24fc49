// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/to_enter.h"

#include "timed_visit.h"
#include "viewmodels/advice_view_model.h"
#include "viewmodels/settings_view_model.h"

namespace wetfront::ui {
namespace {

/// The timer's controller counts on-times in steps of 7 s and calls them by a name of its own.
class ToEnterTest : public TimedVisit {
protected:
    ToEnterTest() {
        auto described = generic_template(TimerKind::trimmed);
        described.id = Id{"controller"};
        described.name = "Shed box";
        for (auto& setting : described.settings) {
            if (setting.setting == TemplateKey::base_on_time) {
                setting.label = "Wet run";
                setting.resolution = 7.0;
            }
        }
        EXPECT_TRUE(context_.store.save(described));
        record_->house().timers.front().template_id = described.id;
        EXPECT_TRUE(record_->save_house());
    }

    [[nodiscard]] QVariantMap line(const QVariantList& lines, const QString& label) const {
        for (const auto& each : lines) {
            if (each.toMap().value("label").toString() == label) {
                return each.toMap();
            }
        }
        return {};
    }
};

TEST_F(ToEnterTest, the_advice_comes_in_the_labels_and_steps_of_the_controller) {
    const AdviceViewModel page{*record_, nullptr};
    EXPECT_EQ(page.controller(), QStringLiteral("Shed box"));
    const auto run = line(page.toEnter(), "Wet run");
    ASSERT_FALSE(run.isEmpty());
    const double held = run.value("number").toString().section(' ', 0, 0).toDouble();
    EXPECT_GE(held, advised_s(Setting::base_on_time));
    EXPECT_LT(held, advised_s(Setting::base_on_time) + 7.0);
}

TEST_F(ToEnterTest, taking_over_the_advice_leaves_what_the_controller_can_hold) {
    const auto entered = to_enter(*record_, timer());
    ASSERT_TRUE(entered);
    SettingsViewModel left{*record_, WhichSettings::left, nullptr};
    EXPECT_EQ(left.copyAdvice(), QString{});
    const auto* taken = record_->file().visit.left_of(timer());
    ASSERT_NE(taken, nullptr);
    EXPECT_EQ(taken->base_on_time->value(), entered->fit.settings.base_on_time->value());
}

TEST_F(ToEnterTest, a_timer_without_a_template_has_nothing_of_the_sort) {
    record_->house().timers.front().template_id = {};
    ASSERT_TRUE(record_->save_house());
    const AdviceViewModel page{*record_, nullptr};
    EXPECT_TRUE(page.controller().isEmpty());
    EXPECT_TRUE(page.toEnter().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
