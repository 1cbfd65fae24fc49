// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/settings_view_model.h"

#include "timed_visit.h"

namespace wetfront::ui {
namespace {

class SettingsViewModelTest : public TimedVisit {
protected:
    static int row(const FormModel* form, const char* key) {
        for (int i = 0; i < form->count(); ++i) {
            if (form->data(form->index(i), FormModel::KeyRole).toString() == QLatin1String(key)) {
                return i;
            }
        }
        ADD_FAILURE() << "no line holds " << key;
        return -1;
    }
    static QString beside(const FormModel* form, const char* key) {
        return form->data(form->index(row(form, key)), FormModel::BesideRole).toString();
    }
    static void enter(FormModel* form, const char* key, const QString& text) {
        EXPECT_EQ(form->enter(row(form, key), text), QString{});
    }
    [[nodiscard]] QString shown(Setting setting) {
        return formatter_.text(*advice().advised(setting)->value);
    }
    [[nodiscard]] const TimerSettings& left() { return *record_->file().visit.left_of(timer()); }

    SettingsViewModel left_{*record_, WhichSettings::left, nullptr};
};

TEST_F(SettingsViewModelTest, found_and_advised_stand_beside_each_entry_of_what_is_left) {
    record_->visit().found.front().base_on_time = Entered<Duration>::of(seconds(33.0));
    ASSERT_TRUE(record_->save_visit());
    EXPECT_EQ(beside(left_.howLong(), "base_on_time"),
              QString::fromUtf8("found 33 s · advised %1").arg(shown(Setting::base_on_time)));
    enter(left_.howLong(), "base_on_time", QStringLiteral("20s"));
    EXPECT_EQ(beside(left_.howLong(), "base_on_time"),
              QString::fromUtf8("found 33 s · ≠ advised %1").arg(shown(Setting::base_on_time)));
}

TEST_F(SettingsViewModelTest, where_no_value_is_advised_it_says_why) {
    const auto text = beside(left_.whenPadsMayRun(), "lowest_house_temperature");
    ASSERT_FALSE(advice().advised(Setting::lowest_house_temperature)->value);
    EXPECT_TRUE(
        text.endsWith(formatter_.text(advice().advised(Setting::lowest_house_temperature)->reason.brief)))
        << text.toStdString();
}

TEST_F(SettingsViewModelTest, advice_is_taken_over_into_an_empty_timer_without_a_question) {
    EXPECT_TRUE(left_.overwritten().isEmpty());
    EXPECT_EQ(left_.copyAdvice(), QString{});
    for (const auto setting : {Setting::start_temperature, Setting::period, Setting::base_on_time,
                               Setting::on_time_ceiling, Setting::rinse_length}) {
        EXPECT_NEAR(held(left(), setting)->si, advised_s(setting), 1e-9) << key_of(setting);
    }
    EXPECT_TRUE(left_.differences().isEmpty());
}

TEST_F(SettingsViewModelTest, what_is_not_advised_stays_as_it_was_found) {
    const auto found = *record_->file().visit.found_of(timer());
    ASSERT_TRUE(found.target);
    EXPECT_EQ(left_.copyAdvice(), QString{});
    EXPECT_EQ(left().target, found.target);
    EXPECT_EQ(left().lowest_house_temperature, found.lowest_house_temperature);
}

TEST_F(SettingsViewModelTest, entries_that_advice_would_replace_are_named_before) {
    enter(left_.howLong(), "base_on_time", QStringLiteral("20s"));
    enter(left_.howLong(), "period", QString::fromStdString(as_settings(advice()).period->text()));
    EXPECT_EQ(left_.overwritten(),
              QStringList{QStringLiteral("Base on-time: 20 s becomes %1").arg(shown(Setting::base_on_time))});
    EXPECT_EQ(left_.copyAdvice(), QString{});
    EXPECT_TRUE(left_.overwritten().isEmpty());
}

TEST_F(SettingsViewModelTest, trim_rows_that_go_are_named_before) {
    left_.copyAdvice();
    record_->visit().left.front().trim_rows.push_back(
        {Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(2.0)),
         Entered<Duration>::of(seconds(20.0))});
    ASSERT_TRUE(record_->save_visit());
    ASSERT_EQ(left_.overwritten().size(), 1);
    EXPECT_TRUE(left_.overwritten().front().contains(QStringLiteral("Trim rows")));
}

TEST_F(SettingsViewModelTest, a_difference_has_its_meaning_and_is_kept_with_a_reason) {
    left_.copyAdvice();
    EXPECT_EQ(left_.whyDifferent()->count(), 0);
    enter(left_.howLong(), "base_on_time", QStringLiteral("20s"));
    ASSERT_EQ(left_.differences().size(), 1);
    const auto difference = left_.differences().front().toMap();
    EXPECT_EQ(difference.value(QStringLiteral("text")),
              QStringLiteral("20 s instead of %1").arg(shown(Setting::base_on_time)));
    EXPECT_TRUE(difference.value(QStringLiteral("meaning")).toString().startsWith(QStringLiteral("Shorter")));
    enter(left_.whyDifferent(), "deviation_reason", QStringLiteral("The grower saves water."));
    const auto stored = store_.visit(record_->file().visit.id).value();
    EXPECT_EQ(stored.left_of(timer())->deviation_reason, "The grower saves water.");
}

TEST_F(SettingsViewModelTest, a_reason_goes_with_what_it_explained_and_is_named_before) {
    left_.copyAdvice();
    enter(left_.howLong(), "base_on_time", QStringLiteral("20s"));
    enter(left_.whyDifferent(), "deviation_reason", QStringLiteral("The grower saves water."));
    EXPECT_TRUE(left_.overwritten().join(u'\n').contains(QStringLiteral("The grower saves water.")));
    EXPECT_EQ(left_.copyAdvice(), QString{});
    EXPECT_EQ(left().deviation_reason, "");
    EXPECT_EQ(left_.whyDifferent()->count(), 0);
}

TEST_F(SettingsViewModelTest, what_was_found_is_asked_for_no_reason) {
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    EXPECT_TRUE(found.differences().isEmpty());
    EXPECT_EQ(found.whyDifferent()->count(), 0);
}

}  // namespace
}  // namespace wetfront::ui
