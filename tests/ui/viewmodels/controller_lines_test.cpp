// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/controller_lines.h"

#include "timed_visit.h"
#include "viewmodels/advice_view_model.h"
#include "viewmodels/house_view_model.h"
#include "viewmodels/settings_view_model.h"

namespace wetfront::ui {
namespace {

/// The timer's controller counts on-times in steps of 7 s and calls them by a name of its own; it has two
/// trim rows and no humidity cut-off.
class ControllerLinesTest : public TimedVisit {
protected:
    ControllerLinesTest() {
        described_ = generic_template(TimerKind::trimmed);
        described_.id = Id{"controller"};
        described_.name = "Shed box";
        described_.trim_rows = 2;
        for (auto& setting : described_.settings) {
            if (setting.setting == TemplateKey::base_on_time) {
                setting.label = "Wet run";
                setting.resolution = 7.0;
            }
        }
        std::erase_if(described_.settings, [](const TemplateSetting& each) {
            return each.setting == TemplateKey::humidity_cut_off;
        });
        EXPECT_TRUE(context_.store.save(described_));
    }
    void choose() {
        choose_controller(record_->house().timers.front(), described_);
        EXPECT_TRUE(record_->save_house());
    }

    [[nodiscard]] TimerSettings stored_found() {
        return *store_.visit(record_->file().visit.id).value().found_of(timer());
    }
    [[nodiscard]] static QVariantMap line(const QVariantList& lines, const QString& label) {
        for (const auto& each : lines) {
            if (each.toMap().value("label").toString() == label) {
                return each.toMap();
            }
        }
        return {};
    }
    [[nodiscard]] static QVariant in_form(FormModel* form, const QString& label, FormModel::Role role) {
        for (int row = 0; row < form->count(); ++row) {
            if (form->data(form->index(row), FormModel::LabelRole).toString() == label) {
                return form->data(form->index(row), role);
            }
        }
        ADD_FAILURE() << "no line " << label.toStdString();
        return {};
    }
    [[nodiscard]] static QString enter(FormModel* form, const QString& label, const QString& text) {
        for (int row = 0; row < form->count(); ++row) {
            if (form->data(form->index(row), FormModel::LabelRole).toString() == label) {
                return form->enter(row, text);
            }
        }
        return QStringLiteral("no such line");
    }
    [[nodiscard]] static QStringList labels(FormModel* form) {
        QStringList all;
        for (int row = 0; row < form->count(); ++row) {
            all.append(form->data(form->index(row), FormModel::LabelRole).toString());
        }
        return all;
    }

    SettingTemplate described_;
};

TEST_F(ControllerLinesTest, the_advice_comes_in_the_labels_and_steps_of_the_controller) {
    choose();
    const AdviceViewModel page{*record_, nullptr};
    EXPECT_EQ(page.controller(), QStringLiteral("Shed box"));
    const auto run = line(page.toEnter(), "Wet run");
    ASSERT_FALSE(run.isEmpty());
    const double held = run.value("number").toString().section(' ', 0, 0).toDouble();
    EXPECT_GE(held, advised_s(Setting::base_on_time));
    EXPECT_LT(held, advised_s(Setting::base_on_time) + 7.0);

    QVariantMap beside;
    for (const auto& group : page.groups()) {
        const auto rows = group.toMap().value("rows").toList();
        EXPECT_TRUE(line(rows, "Humidity cut-off").isEmpty()) << "it has none";
        beside = beside.isEmpty() ? line(rows, "Wet run") : beside;
    }
    EXPECT_EQ(beside.value("trade"), QStringLiteral("Base on-time"));
    EXPECT_EQ(beside.value("advised"), run.value("number")) << "rounded, as it is entered";
}

TEST_F(ControllerLinesTest, a_form_asks_what_the_controller_asks_in_its_words_and_units) {
    choose();
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    auto* how_long = found.howLong();
    EXPECT_EQ(in_form(how_long, "Wet run", FormModel::WhyRole), QStringLiteral("Base on-time"));
    EXPECT_EQ(in_form(how_long, "Wet run", FormModel::RangeRole),
              QStringLiteral("usual: 0 s to 3600 s; anything else is kept as found, and marked"));
    EXPECT_EQ(in_form(how_long, "Period", FormModel::TypedUnitRole), QStringLiteral("min"));
    EXPECT_EQ(in_form(how_long, "Period", FormModel::UnitsRole).toStringList(), QStringList{"min"});
    EXPECT_EQ(enter(how_long, "Period", "7.5 min"), QString{});
    EXPECT_EQ(in_form(how_long, "Period", FormModel::NumberRole), QStringLiteral("7.5"));
    EXPECT_EQ(in_form(how_long, "Period", FormModel::UnitRole), QStringLiteral("min"));
    EXPECT_EQ(stored_found().period->value(), seconds(450.0));
    formatter_.set_units(UnitSystem::si);
    EXPECT_EQ(in_form(found.whenPadsMayRun(), "Start temperature", FormModel::TypedUnitRole),
              QString::fromUtf8("°F"))
        << "the controller's, whatever the reader's";
}

TEST_F(ControllerLinesTest, trim_rows_are_as_many_as_the_controller_has) {
    choose();
    record_->visit().found.front().trim_rows.clear();
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    auto* adapts = found.howItAdapts();
    EXPECT_EQ(enter(adapts, "Row 1: Trim row: change of on-time", "8 s"), QString{});
    EXPECT_EQ(enter(adapts, "Row 2: Trim row: change of on-time", "9 s"), QString{});
    EXPECT_FALSE(labels(adapts).join('|').contains("Row 3"));
    EXPECT_EQ(stored_found().trim_rows.size(), 2U);
}

TEST_F(ControllerLinesTest, an_entry_that_the_controller_is_not_described_with_stays_in_sight) {
    choose();
    record_->visit().found.front().humidity_cut_off.reset();
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    EXPECT_FALSE(labels(found.whenPadsMayRun()).contains("Humidity cut-off"));
    record_->visit().found.front().humidity_cut_off = Entered<Fraction>::of(from_si<Fraction>(0.8));
    ASSERT_TRUE(record_->save_visit());
    EXPECT_TRUE(labels(found.whenPadsMayRun()).contains("Humidity cut-off"));
}

TEST_F(ControllerLinesTest, taking_over_the_advice_leaves_what_the_controller_can_hold) {
    choose();
    SettingsViewModel left{*record_, WhichSettings::left, nullptr};
    EXPECT_EQ(left.copyAdvice(), QString{});
    const auto* taken = record_->file().visit.left_of(timer());
    ASSERT_NE(taken, nullptr);
    EXPECT_EQ(taken->base_on_time->value(), advice().fit->settings.base_on_time->value());
    EXPECT_TRUE(left.differences().isEmpty());
}

TEST_F(ControllerLinesTest, counted_from_a_full_header_all_three_are_in_the_controllers_counting) {
    described_.counts_from = CountsFrom::full_header;
    choose();
    SettingsViewModel left{*record_, WhichSettings::left, nullptr};
    EXPECT_EQ(left.copyAdvice(), QString{});
    const auto held = record_->file().visit.left_of(timer())->base_on_time->value();
    EXPECT_LT(in_seconds(held), advised_s(Setting::base_on_time)) << "less the fill";
    EXPECT_TRUE(left.differences().isEmpty());
    EXPECT_EQ(
        in_form(left.howLong(), "Wet run", FormModel::BesideRole).toString().section(u'·', -1).trimmed(),
        QStringLiteral("advised %1 s").arg(in_seconds(held)));
}

TEST_F(ControllerLinesTest, a_timer_without_a_template_is_as_it_was) {
    const AdviceViewModel page{*record_, nullptr};
    EXPECT_TRUE(page.controller().isEmpty());
    EXPECT_TRUE(page.toEnter().isEmpty());
    SettingsViewModel found{*record_, WhichSettings::found, nullptr};
    EXPECT_TRUE(labels(found.howLong()).contains("Base on-time"));
    EXPECT_TRUE(labels(found.whenPadsMayRun()).contains("Humidity cut-off"));
}

TEST_F(ControllerLinesTest, a_record_that_only_names_a_template_falls_back_on_the_store) {
    auto file = record_->file();
    file.house.timers.front().template_id = described_.id;
    VisitRecord named{context_, file, nullptr};
    const AdviceViewModel page{named, nullptr};
    EXPECT_EQ(page.controller(), QStringLiteral("Shed box"));
    described_.kind = TimerKind::on_demand;
    EXPECT_TRUE(store_.save(described_)) << "a kind that it was not chosen for";
    VisitRecord other{context_, file, nullptr};
    EXPECT_TRUE((AdviceViewModel{other, nullptr}.controller().isEmpty()));
}

TEST_F(ControllerLinesTest, a_template_that_was_edited_is_taken_over_with_a_press_and_not_before) {
    choose();
    HouseViewModel house{*record_, nullptr};
    auto* timers = house.timers();
    const auto news = [&] { return timers->data(timers->index(0), PartsModel::NewsRole).toString(); };
    EXPECT_EQ(news(), QString{});
    described_.settings.front().label = "Aim";
    ASSERT_TRUE(store_.save(described_));
    EXPECT_TRUE(news().contains(QStringLiteral("was changed after it was chosen")));
    EXPECT_NE(record_->file().house.timers.front().controller->settings.front().label, "Aim");
    EXPECT_EQ(timers->takeOver(0), QString{});
    EXPECT_EQ(store_.house(record_->file().house.id).value().timers.front().controller, described_);
    EXPECT_EQ(news(), QString{});
    described_.settings.front().resolution.reset();
    ASSERT_TRUE(store_.save(described_));
    EXPECT_EQ(news(), QString{}) << "one that is not whole is not offered";
}

}  // namespace
}  // namespace wetfront::ui
