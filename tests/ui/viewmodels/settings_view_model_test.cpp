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

TEST_F(SettingsViewModelTest, what_is_found_outside_what_is_usual_is_kept_and_says_so) {
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    auto* form = found.howLong();
    const auto warning = [&] {
        return form->data(form->index(row(form, "period")), FormModel::WarningRole).toString();
    };
    EXPECT_EQ(warning(), QString{});
    enter(form, "period", QStringLiteral("-5 s"));
    EXPECT_EQ(warning(), QStringLiteral("outside what is usual: kept as found"));
    EXPECT_EQ(record_->file().visit.found_of(timer())->period->text(), "-5 s");
    const auto index = form->index(row(form, "period"));
    EXPECT_TRUE(form->data(index, FormModel::MinusRole).toBool());
    EXPECT_TRUE(form->data(index, FormModel::RangeRole).toString().startsWith(QStringLiteral("usual: 1 s")));
    enter(form, "period", QStringLiteral("300 s"));
    EXPECT_EQ(warning(), QString{});
}

TEST_F(SettingsViewModelTest, a_trim_row_is_kept_as_found_too) {
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    enter(found.howItAdapts(), "change", QStringLiteral("-3000 s"));
    EXPECT_EQ(record_->file().visit.found_of(timer())->trim_rows.front().change->text(), "-3000 s");
}

TEST_F(SettingsViewModelTest, what_is_left_is_typed_within_its_range_and_may_stay_as_it_was_found) {
    for (const auto& [form, key, text] :
         {std::tuple{left_.howLong(), "period", "-5 s"}, {left_.howItAdapts(), "change", "-3000 s"}}) {
        const auto refusal = form->enter(row(form, key), QString::fromLatin1(text));
        EXPECT_TRUE(refusal.contains(QStringLiteral("beyond what goes here"))) << refusal.toStdString();
    }
    EXPECT_EQ(record_->file().visit.left_of(timer()), nullptr);
    record_->visit().found.front().target = Entered<Temperature>::of(celsius(-100.0));
    ASSERT_TRUE(record_->save_visit());
    EXPECT_EQ(left_.copyAdvice(), QString{});
    EXPECT_EQ(left().target, record_->file().visit.found_of(timer())->target);
}

TEST_F(SettingsViewModelTest, the_record_knows_when_what_is_left_was_changed_last) {
    EXPECT_EQ(left_.copyAdvice(), QString{});
    ASSERT_TRUE(left().changed);
    EXPECT_EQ(left().changed->at, clock_.boot_now());
    const auto copied = *left().changed;
    clock_.advance_ms(60'000);
    enter(left_.howLong(), "continuous_intended", QStringLiteral("yes"));
    EXPECT_EQ(*left().changed, copied) << "a wish sets nothing in the timer";
    enter(left_.howLong(), "base_on_time", QStringLiteral("20 s"));
    EXPECT_EQ(left().changed->at, clock_.boot_now());
}

TEST_F(SettingsViewModelTest, settings_that_are_taken_out_again_leave_nothing_behind) {
    enter(left_.howLong(), "period", QStringLiteral("300 s"));
    enter(left_.howLong(), "period", QString{});
    EXPECT_EQ(record_->file().visit.left_of(timer()), nullptr);
}

}  // namespace
}  // namespace wetfront::ui
