// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/form_model.h"

#include <gtest/gtest.h>

#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

class FormModelTest : public testing::Test {
protected:
    FormModelTest() {
        form_.set_fields(form_lines<PadBank>(
            [this]() -> PadBank& { return bank_; }, {"name", "pump_end", "length", "thickness"},
            [this]() -> Result<void> {
                ++saves_;
                if (disk_full_) {
                    return storage_error("records", "disk full", "make room");
                }
                return boost::outcome_v2::success();
            }));
    }

    [[nodiscard]] QVariant at(int row, FormModel::Role role) const {
        return form_.data(form_.index(row), role);
    }

    static constexpr int name = 0;
    static constexpr int pump_end = 1;
    static constexpr int length = 2;
    static constexpr int thickness = 3;
    PadBank bank_;
    int saves_ = 0;
    bool disk_full_ = false;
    Formatter formatter_{UnitSystem::us};
    FormModel form_{formatter_, nullptr};
};

TEST_F(FormModelTest, a_typed_entry_is_kept_as_typed_and_saved_once) {
    EXPECT_EQ(form_.enter(length, QStringLiteral("80 ft")), QString{});
    ASSERT_TRUE(bank_.length.has_value());
    EXPECT_EQ(bank_.length->text(), "80 ft");
    EXPECT_EQ(saves_, 1);
}

// 80 ft is 24.384 m exactly (the foot is 0.3048 m).
TEST_F(FormModelTest, switching_units_shows_another_number_and_changes_no_record) {
    form_.enter(length, QStringLiteral("80ft"));
    EXPECT_EQ(at(length, FormModel::NumberRole), QStringLiteral("80"));
    formatter_.set_units(UnitSystem::si);
    form_.refresh();
    EXPECT_EQ(at(length, FormModel::NumberRole), QStringLiteral("24.38"));
    EXPECT_EQ(at(length, FormModel::UnitRole), QStringLiteral("m"));
    EXPECT_EQ(bank_.length->text(), "80ft");
    EXPECT_EQ(saves_, 1);
}

TEST_F(FormModelTest, an_entry_is_offered_again_as_it_was_typed) {
    form_.enter(thickness, QStringLiteral("150mm"));
    EXPECT_EQ(at(thickness, FormModel::TypedNumberRole), QStringLiteral("150"));
    EXPECT_EQ(at(thickness, FormModel::TypedUnitRole), QStringLiteral("mm"));
}

TEST_F(FormModelTest, the_usual_unit_of_the_reader_is_offered_first) {
    EXPECT_EQ(at(thickness, FormModel::UnitsRole).toStringList().front(), QStringLiteral("in"));
    formatter_.set_units(UnitSystem::si);
    EXPECT_EQ(at(thickness, FormModel::UnitsRole).toStringList().front(), QStringLiteral("mm"));
}

TEST_F(FormModelTest, an_entry_out_of_range_is_refused_and_leaves_what_was_there) {
    form_.enter(length, QStringLiteral("80ft"));
    EXPECT_NE(form_.enter(length, QStringLiteral("3000m")), QString{});
    EXPECT_EQ(bank_.length->text(), "80ft");
    EXPECT_EQ(saves_, 1);
}

// The pad's range, 0.5 m to 200 m, with the foot of 0.3048 m and to four digits.
TEST_F(FormModelTest, range_and_refusal_are_in_the_readers_units_and_with_his_decimal_mark) {
    EXPECT_EQ(form_.enter(length, QStringLiteral("3000 m")),
              QStringLiteral("3000 m is beyond what goes here: 1.64 ft to 656.2 ft."));
    formatter_.set_units(UnitSystem::si);
    formatter_.set_locale(QLocale{QLocale::Spanish, QLocale::Argentina});
    EXPECT_EQ(at(length, FormModel::RangeRole), QStringLiteral("0,5 m to 200 m"));
    EXPECT_EQ(form_.enter(length, QStringLiteral("0.1 m")),
              QStringLiteral("0.1 m is beyond what goes here: 0,5 m to 200 m."));
}

TEST_F(FormModelTest, a_number_without_its_unit_is_refused) {
    EXPECT_TRUE(form_.enter(length, QStringLiteral("80")).contains(QStringLiteral("unit")));
    EXPECT_FALSE(bank_.length.has_value());
}

TEST_F(FormModelTest, an_entry_that_could_not_be_stored_is_taken_back) {
    disk_full_ = true;
    EXPECT_TRUE(form_.enter(length, QStringLiteral("80ft")).contains(QStringLiteral("disk full")));
    EXPECT_FALSE(bank_.length.has_value());
}

TEST_F(FormModelTest, an_empty_text_takes_the_entry_out) {
    form_.enter(length, QStringLiteral("80ft"));
    EXPECT_EQ(form_.enter(length, QString{}), QString{});
    EXPECT_FALSE(bank_.length.has_value());
    EXPECT_EQ(at(length, FormModel::NumberRole), QString{});
}

TEST_F(FormModelTest, a_choice_takes_only_what_is_on_its_list) {
    EXPECT_EQ(form_.enter(pump_end, QStringLiteral("right")), QString{});
    EXPECT_EQ(bank_.pump_end, PumpEnd::right);
    EXPECT_NE(form_.enter(pump_end, QStringLiteral("middle")), QString{});
    EXPECT_EQ(bank_.pump_end, PumpEnd::right);
}

TEST_F(FormModelTest, a_text_of_more_than_200_characters_is_refused) {
    EXPECT_EQ(form_.enter(name, QString(200, QLatin1Char('a'))), QString{});
    EXPECT_NE(form_.enter(name, QString(201, QLatin1Char('b'))), QString{});
    EXPECT_EQ(bank_.name, std::string(200, 'a'));
}

TEST_F(FormModelTest, a_line_that_is_not_there_is_refused) {
    EXPECT_NE(form_.enter(-1, QStringLiteral("80ft")), QString{});
    EXPECT_NE(form_.enter(4, QStringLiteral("80ft")), QString{});
    EXPECT_EQ(saves_, 0);
}

}  // namespace
}  // namespace wetfront::ui
