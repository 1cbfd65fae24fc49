// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/limits_view_model.h"

#include <set>

#include "timed_visit.h"

namespace wetfront::ui {
namespace {

class LimitsViewModelTest : public TimedVisit {
protected:
    struct Place {
        FormModel* form = nullptr;
        int row = -1;
    };
    [[nodiscard]] Place place(const QString& key) {
        for (const auto& group : limits_.groups()) {
            auto* form = group.toMap().value(QStringLiteral("form")).value<FormModel*>();
            for (int i = 0; i < form->count(); ++i) {
                if (form->data(form->index(i), FormModel::KeyRole).toString() == key) {
                    return {form, i};
                }
            }
        }
        throw std::runtime_error{"no line has the key " + key.toStdString()};
    }
    [[nodiscard]] QString text(const char* key, FormModel::Role role) {
        const auto [form, row] = place(QLatin1String(key));
        return form->data(form->index(row), role).toString();
    }
    QString enter(const char* key, const char* entry) {
        const auto [form, row] = place(QLatin1String(key));
        return form->enter(row, QLatin1String(entry));
    }
    [[nodiscard]] Limits stored() { return store_.farm(record_->file().farm.id).value().limits; }

    LimitsViewModel limits_{*record_, nullptr};
};

TEST_F(LimitsViewModelTest, every_limit_of_the_record_has_its_line_with_value_and_source) {
    Limits record;
    std::set<QString> seen;
    each_field(record, [&](const Field& field, const auto&) {
        seen.insert(QLatin1String(field.key));
        EXPECT_FALSE(text(field.key, FormModel::NumberRole).isEmpty()) << field.key;
        EXPECT_FALSE(text(field.key, FormModel::TypedNumberRole).isEmpty()) << field.key;
        EXPECT_TRUE(text(field.key, FormModel::OwnRole).isEmpty()) << field.key;
        EXPECT_TRUE(text(field.key, FormModel::BesideRole).startsWith(QStringLiteral("The program's own (")))
            << field.key;
    });
    int lines = 0;
    for (const auto& group : limits_.groups()) {
        lines += group.toMap().value(QStringLiteral("form")).value<FormModel*>()->count();
    }
    EXPECT_EQ(static_cast<std::size_t>(lines), seen.size());
    EXPECT_EQ(limits_.groups().size(), 4);
    EXPECT_EQ(limits_.summary(), QStringLiteral("the program's own"));
    EXPECT_TRUE(text("coolest_start", FormModel::BesideRole).contains(QStringLiteral("published")));
    EXPECT_TRUE(
        text("coolest_start", FormModel::BesideRole).contains(QStringLiteral("University of Georgia")));
    EXPECT_TRUE(text("least_rest", FormModel::BesideRole).contains(QStringLiteral("assumed")));
    EXPECT_EQ(text("night", FormModel::NumberRole), QStringLiteral("22:00"));
    EXPECT_EQ(text("older_birds_days", FormModel::NumberRole), QStringLiteral("28"));
}

TEST_F(LimitsViewModelTest, a_change_is_stored_with_the_farm_and_advice_and_findings_follow) {
    const double before = advised_s(Setting::base_on_time);
    int announced = 0;
    QObject::connect(&limits_, &LimitsViewModel::changed, [&] { ++announced; });
    EXPECT_EQ(enter("water_margin", "200 %"), QString{});
    EXPECT_GT(announced, 0);
    ASSERT_TRUE(stored().water_margin);
    EXPECT_EQ(stored().water_margin->text(), "200 %");
    EXPECT_EQ(limits_.summary(), QStringLiteral("1 changed"));
    EXPECT_EQ(text("water_margin", FormModel::OwnRole), formatter_.text(AnyQuantity{Kind::fraction, 1.25}));
    EXPECT_TRUE(
        text("water_margin", FormModel::BesideRole).startsWith(QStringLiteral("Changed for this farm")));
    EXPECT_GT(advised_s(Setting::base_on_time), before);
    EXPECT_EQ(enter("water_margin", "110%"), QString{});
    const auto& findings = record_->found_findings();
    EXPECT_EQ(std::ranges::count(findings, "limits-less-safe", &Finding::rule), 1);
}

TEST_F(LimitsViewModelTest, one_press_goes_back_and_the_programs_own_value_is_not_kept) {
    EXPECT_EQ(enter("least_rest", "90s"), QString{});
    EXPECT_EQ(enter("least_rest", ""), QString{});
    EXPECT_EQ(stored(), Limits{});
    EXPECT_EQ(enter("least_rest", "90s"), QString{});
    EXPECT_EQ(enter("least_rest", "1 min"), QString{});
    EXPECT_EQ(stored(), Limits{});
    EXPECT_TRUE(text("least_rest", FormModel::OwnRole).isEmpty());
}

TEST_F(LimitsViewModelTest, what_cannot_be_used_beside_the_others_is_refused_in_words) {
    EXPECT_TRUE(enter("least_rest", "10min").contains(QStringLiteral("less than the longest period")));
    EXPECT_TRUE(enter("start_temperature", "35degC").contains(QStringLiteral("within the band")));
    EXPECT_TRUE(enter("night", "02:00").contains(QStringLiteral("12:00 to 24:00")));
    EXPECT_EQ(stored(), Limits{});
    EXPECT_EQ(enter("warmest_start", "36degC"), QString{});
    EXPECT_EQ(enter("start_temperature", "35degC"), QString{});
    EXPECT_TRUE(enter("warmest_start", "").contains(QStringLiteral("within the band")));
    EXPECT_EQ(stored().warmest_start->text(), "36degC");
    EXPECT_TRUE(limits_.problem().isEmpty());
}

TEST_F(LimitsViewModelTest, limits_of_a_file_that_cannot_be_used_together_are_said_and_can_be_put_right) {
    record_->farm().limits.least_rest = Entered<Duration>::of(seconds(600.0));
    ASSERT_TRUE(record_->save_farm());
    EXPECT_TRUE(limits_.problem().contains(QStringLiteral("shortest rest")));
    EXPECT_EQ(enter("least_rest", ""), QString{});
    EXPECT_TRUE(limits_.problem().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
