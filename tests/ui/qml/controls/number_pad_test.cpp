// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const pad_page = R"(
import QtQuick
import Wetfront.Theme
import Wetfront.Controls
Item {
    id: page
    property string taken: "nothing"
    property string error: pad.errorText
    property bool opened: pad.opened
    property string entry: ""
    property real pixelsPerMm
    onPixelsPerMmChanged: Theme.pixelsPerMm = pixelsPerMm
    function ask(request) {
        request.label = "Pad length"
        request.accept = text => taken = text
        pad.ask(request)
    }
    function askLength() {
        ask({ text: "120", unit: "ft", units: ["ft", "m"], rangeText: "3 to 600 ft",
              check: text => parseFloat(text) > 600 ? "700 ft was read; 3 to 600 ft is accepted." : "" })
    }
    function askTemperature() { ask({ unit: "°F", negative: true }) }
    function askTime() { ask({ timeOfDay: true }) }
    function askMaybe() { ask({ text: "5", unit: "gpm", mayBeEmpty: true }) }
    ActionButton { text: "Field behind the pad" }
    NumberPad { id: pad }
}
)";

class NumberPadTest : public testing::Test {
protected:
    explicit NumberPadTest(QSize size = QSize(1024, 600)) : window_(QString::fromUtf8(pad_page), size) {
        window_.set("pixelsPerMm", 118 / 25.4);
    }

    void open(const char* function) {
        QMetaObject::invokeMethod(&window_.root(), function);
        EXPECT_TRUE(QTest::qWaitFor([&] { return window_.get("opened").toBool(); }));
    }
    void click(std::initializer_list<const char*> names) {
        for (const char* name : names) {
            hand_.click(QString::fromUtf8(name));
        }
    }
    /// Number and unit as the display shows them.
    QString shown() { return hand_.find(QStringLiteral("entry")).description; }
    QString taken() { return window_.get("taken").toString(); }
    bool closed() {
        return QTest::qWaitFor([&] { return !window_.get("opened").toBool(); });
    }

    QmlWindow window_;
    Hand hand_{window_.window()};
};

TEST_F(NumberPadTest, keys_type_a_number_that_comes_with_its_unit) {
    open("askLength");
    click({"1", "1", "8", "point", "5", "Done"});
    EXPECT_EQ(taken(), "118.5 ft");
    EXPECT_TRUE(closed());
}

TEST_F(NumberPadTest, enter_finishes_the_entry_whatever_was_pressed_before_it) {
    open("askLength");
    click({"m"});
    hand_.type(QStringLiteral("36"));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(taken(), "36 m");
}

TEST_F(NumberPadTest, closing_gives_the_keyboard_back_to_what_had_it) {
    hand_.key(Qt::Key_Tab);
    ASSERT_EQ(hand_.focused(), "Field behind the pad");
    open("askLength");
    hand_.key(Qt::Key_Escape);
    EXPECT_TRUE(closed());
    EXPECT_EQ(hand_.focused(), "Field behind the pad");
}

TEST_F(NumberPadTest, the_old_value_stands_there_and_the_first_digit_replaces_it) {
    open("askLength");
    EXPECT_EQ(shown(), "120 ft");
    click({"7"});
    EXPECT_EQ(shown(), "7 ft");
}

TEST_F(NumberPadTest, erase_takes_the_last_digit_of_the_old_value) {
    open("askLength");
    click({"Erase", "5"});
    EXPECT_EQ(shown(), "125 ft");
}

TEST_F(NumberPadTest, a_point_and_a_comma_typed_on_a_keyboard_are_both_kept_as_typed) {
    open("askLength");
    hand_.type(QStringLiteral("12.5"));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(taken(), "12.5 ft");
    ASSERT_TRUE(closed());
    open("askLength");
    hand_.type(QStringLiteral("12,5"));
    hand_.key(Qt::Key_Enter);
    EXPECT_EQ(taken(), "12,5 ft");
}

TEST_F(NumberPadTest, a_second_decimal_mark_changes_nothing) {
    open("askLength");
    hand_.type(QStringLiteral("1.2,3.4"));
    EXPECT_EQ(shown(), "1.234 ft");
}

TEST_F(NumberPadTest, a_mark_without_a_digit_before_it_gets_a_zero) {
    open("askLength");
    hand_.type(QStringLiteral(".5"));
    EXPECT_EQ(shown(), "0.5 ft");
}

TEST_F(NumberPadTest, letters_do_nothing) {
    open("askLength");
    hand_.type(QStringLiteral("4e2x"));
    EXPECT_EQ(shown(), "42 ft");
}

TEST_F(NumberPadTest, backspace_on_the_keyboard_erases) {
    open("askLength");
    hand_.type(QStringLiteral("45"));
    hand_.key(Qt::Key_Backspace);
    EXPECT_EQ(shown(), "4 ft");
}

TEST_F(NumberPadTest, a_number_out_of_range_is_told_and_not_taken) {
    open("askLength");
    EXPECT_TRUE(hand_.shows(QStringLiteral("3 to 600 ft")));
    hand_.type(QStringLiteral("700"));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(taken(), "nothing");
    EXPECT_TRUE(hand_.shows(QStringLiteral("700 ft was read; 3 to 600 ft is accepted.")));
    EXPECT_TRUE(window_.get("opened").toBool());
    hand_.key(Qt::Key_Backspace);
    EXPECT_EQ(window_.get("error").toString(), "") << "typing on did not take the old complaint away";
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(taken(), "70 ft");
}

TEST_F(NumberPadTest, nothing_typed_is_no_number) {
    open("askTemperature");
    click({"Done"});
    EXPECT_EQ(taken(), "nothing");
    EXPECT_NE(window_.get("error").toString(), "");
}

TEST_F(NumberPadTest, not_measured_is_an_empty_entry_where_the_field_allows_it) {
    open("askMaybe");
    click({"Leave empty"});
    EXPECT_EQ(taken(), "");
    EXPECT_TRUE(closed());
}

TEST_F(NumberPadTest, the_unit_chosen_goes_with_the_number_which_stays_as_typed) {
    open("askLength");
    click({"3", "6", "m", "Done"});
    EXPECT_EQ(taken(), "36 m");
}

TEST_F(NumberPadTest, minus_turns_the_sign_where_it_is_allowed) {
    open("askTemperature");
    click({"minus", "4", "Done"});
    EXPECT_EQ(taken(), QString::fromUtf8("-4 °F"));
}

TEST_F(NumberPadTest, minus_is_neither_shown_nor_typed_where_it_is_not_allowed) {
    open("askLength");
    EXPECT_FALSE(hand_.shows(QStringLiteral("minus")));
    hand_.type(QStringLiteral("-4"));
    EXPECT_EQ(shown(), "4 ft");
}

TEST_F(NumberPadTest, cancel_and_escape_take_nothing) {
    open("askLength");
    click({"4", "Cancel"});
    ASSERT_TRUE(closed());
    open("askLength");
    hand_.type(QStringLiteral("5"));
    hand_.key(Qt::Key_Escape);
    ASSERT_TRUE(closed());
    EXPECT_EQ(taken(), "nothing");
}

TEST_F(NumberPadTest, a_press_beside_the_pad_does_not_close_it) {
    open("askLength");
    QTest::mouseClick(&window_.window(), Qt::LeftButton, Qt::NoModifier, QPoint(20, 300));
    QTest::qWait(0);
    EXPECT_TRUE(window_.get("opened").toBool());
}

struct TimeRow {
    const char* typed;
    const char* taken;
};

class NumberPadTimeTest : public NumberPadTest, public testing::WithParamInterface<TimeRow> {};

TEST_P(NumberPadTimeTest, a_time_of_day_has_hours_and_minutes) {
    open("askTime");
    hand_.type(QString::fromUtf8(GetParam().typed));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(taken().toStdString(), GetParam().taken) << "typed " << GetParam().typed;
}

// 25 cannot be an hour, so 2 is the hour and 5 a minute; "nothing": the time is not complete and is not
// taken.
INSTANTIATE_TEST_SUITE_P(Times, NumberPadTimeTest,
                         testing::Values(TimeRow{"0930", "09:30"}, TimeRow{"930", "09:30"},
                                         TimeRow{"9:30", "09:30"}, TimeRow{"1830", "18:30"},
                                         TimeRow{"1:30", "01:30"}, TimeRow{"2359", "23:59"},
                                         TimeRow{"250", "02:50"}, TimeRow{"1865", "nothing"},
                                         TimeRow{"18", "nothing"}, TimeRow{"9:75", "nothing"},
                                         TimeRow{"0000", "00:00"}));

TEST_F(NumberPadTest, keys_measure_twenty_millimetres_on_a_ten_inch_tablet) {
    open("askLength");
    const double pixels_per_mm = 118 / 25.4;
    for (const char* name : {"0", "1", "5", "9", "point", "Erase", "Cancel", "Done"}) {
        const QRectF place = hand_.find(QString::fromUtf8(name)).place();
        // Half a pixel of rounding.
        EXPECT_GE(place.width(), 20 * pixels_per_mm - 0.5) << name;
        EXPECT_GE(place.height(), 20 * pixels_per_mm - 0.5) << name;
        EXPECT_TRUE(QRectF(0, 0, 1024, 600).contains(place)) << name << " reaches beyond the window";
    }
}

class NumberPadPortraitTest : public NumberPadTest {
protected:
    NumberPadPortraitTest() : NumberPadTest(QSize(800, 1280)) {}
};

TEST_F(NumberPadPortraitTest, the_pad_stands_at_the_bottom_and_fits) {
    open("askLength");
    for (const char* name : {"1", "Erase", "point", "Done", "ft", "m"}) {
        EXPECT_TRUE(QRectF(0, 0, 800, 1280).contains(hand_.find(QString::fromUtf8(name)).place())) << name;
    }
    EXPECT_GT(hand_.find(QStringLiteral("Done")).place().bottom(), 1280 * 0.9);
}

}  // namespace
}  // namespace wetfront::ui
