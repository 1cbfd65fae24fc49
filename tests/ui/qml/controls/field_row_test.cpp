// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const field_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property int asked: 0
    property string value: ""
    property string error: ""
    property bool fixed: false
    FieldRow {
        width: parent.width
        label: "Header length"
        value: parent.value
        errorText: parent.error
        readOnly: parent.fixed
        onClicked: parent.asked += 1
    }
}
)";

class FieldRowTest : public testing::Test {
protected:
    int asked() { return window_.get("asked").toInt(); }

    QmlWindow window_{QString::fromUtf8(field_page), QSize(700, 300)};
    Hand hand_{window_.window()};
};

TEST_F(FieldRowTest, press_enter_and_space_ask_for_the_pad_and_a_digit_is_not_swallowed) {
    hand_.click(QStringLiteral("Header length"));
    hand_.key(Qt::Key_Return);
    hand_.key(Qt::Key_Space);
    hand_.type(QStringLiteral("7"));
    EXPECT_EQ(asked(), 3);
}

TEST_F(FieldRowTest, no_value_is_told_as_not_measured) {
    EXPECT_EQ(hand_.find(QStringLiteral("Header length")).description, "not measured");
    window_.set("value", QStringLiteral("120 ft"));
    EXPECT_EQ(hand_.find(QStringLiteral("Header length")).description, "120 ft");
}

TEST_F(FieldRowTest, what_is_wrong_stands_below_in_words) {
    window_.set("error", QStringLiteral("3 km was read; 3 to 600 ft is accepted."));
    EXPECT_TRUE(hand_.shows(QStringLiteral("3 km was read; 3 to 600 ft is accepted.")));
}

TEST_F(FieldRowTest, a_value_that_is_only_shown_asks_for_nothing) {
    window_.set("fixed", true);
    hand_.click(QStringLiteral("Header length"));
    EXPECT_EQ(asked(), 0);
}

}  // namespace
}  // namespace wetfront::ui
