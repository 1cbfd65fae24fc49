// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const text_page = R"(
import QtQuick
import Wetfront.Controls
Column {
    property string name: "House 1"
    property var edits: []
    property bool trims: false
    property string edited: edits.join("|")
    TextFieldRow {
        width: parent.width
        label: "Name of the house"
        text: parent.name
        onEdited: text => { parent.edits = parent.edits.concat(text); parent.name = parent.trims ? text.trim() : text }
    }
    ActionButton { text: "Next" }
}
)";

class TextFieldRowTest : public testing::Test {
protected:
    QString edited() { return window_.get("edited").toString(); }
    void start() {
        hand_.click(QStringLiteral("Name of the house"));
        hand_.key(Qt::Key_End);
    }

    QmlWindow window_{QString::fromUtf8(text_page), QSize(600, 300)};
    Hand hand_{window_.window()};
};

TEST_F(TextFieldRowTest, enter_hands_over_what_was_typed_once) {
    start();
    hand_.type(QStringLiteral(" b"));
    EXPECT_EQ(edited(), "");
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(edited(), "House 1 b");
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(edited(), "House 1 b");
}

TEST_F(TextFieldRowTest, leaving_the_field_hands_over_what_was_typed) {
    start();
    hand_.type(QStringLiteral("2"));
    hand_.click(QStringLiteral("Next"));
    EXPECT_EQ(edited(), "House 12");
}

TEST_F(TextFieldRowTest, a_pause_hands_over_what_was_typed) {
    start();
    hand_.type(QStringLiteral("3"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return edited() == "House 13"; }));
}

TEST_F(TextFieldRowTest, a_new_value_of_the_page_is_shown) {
    window_.set("name", "House 7");
    start();
    hand_.type(QStringLiteral("x"));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(edited(), "House 7x");
}

TEST_F(TextFieldRowTest,
       a_new_value_of_the_page_is_shown_while_the_field_has_the_keyboard_and_not_entered_over) {
    start();
    hand_.type(QStringLiteral(" b"));
    hand_.key(Qt::Key_Return);
    window_.set("name", "House 1");
    hand_.click(QStringLiteral("Next"));
    EXPECT_EQ(edited(), "House 1 b") << "the old words were entered again";
    EXPECT_EQ(window_.get("name").toString(), "House 1");
}

// A page that keeps the words without their spaces at the ends.
TEST_F(TextFieldRowTest, the_pages_answer_does_not_take_what_is_being_typed) {
    window_.set("trims", true);
    start();
    hand_.type(QStringLiteral(" "));
    EXPECT_TRUE(QTest::qWaitFor([&] { return edited() == "House 1 "; }));
    hand_.type(QStringLiteral("b"));
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(edited(), "House 1 |House 1 b");
}

}  // namespace
}  // namespace wetfront::ui
