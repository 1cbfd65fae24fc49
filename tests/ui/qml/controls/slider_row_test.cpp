// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const slider_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property real seconds: 85
    property real found: 30
    property real advised: 85
    SliderRow {
        width: parent.width
        label: "Base on-time"
        text: parent.seconds + " s"
        from: 5
        to: 605
        stepSize: 5
        value: parent.seconds
        ticks: [
            { at: parent.found, text: "found " + parent.found + " s", advised: false },
            { at: parent.advised, text: "advised " + parent.advised + " s", advised: true }
        ]
        onMoved: value => parent.seconds = value
    }
}
)";

class SliderRowTest : public testing::Test {
protected:
    Heard slider() { return hand_.find(QStringLiteral("Base on-time")); }
    double seconds() { return window_.get("seconds").toDouble(); }

    QmlWindow window_{QString::fromUtf8(slider_page), QSize(1000, 300)};
    Hand hand_{window_.window()};
};

TEST_F(SliderRowTest, says_its_name_its_value_and_what_it_is_compared_with) {
    EXPECT_EQ(slider().role, QAccessible::Slider);
    EXPECT_EQ(slider().description.toStdString(), "85 s; found 30 s; advised 85 s");
    auto* const value = QAccessible::queryAccessibleInterface(slider().item)->valueInterface();
    ASSERT_NE(value, nullptr);
    EXPECT_EQ(value->currentValue().toDouble(), 85.0);
}

TEST_F(SliderRowTest, a_finger_moves_it_in_steps) {
    hand_.drag(slider(), 0.15, 0.5);
    EXPECT_EQ(seconds(), 305.0);  // half way from 5 to 605
    hand_.drag(slider(), 0.5, 0.3337);
    EXPECT_EQ(std::fmod(seconds(), 5.0), 0.0);
    EXPECT_LT(seconds(), 305.0);
}

TEST_F(SliderRowTest, a_finger_beyond_the_last_step_stops_there) {
    hand_.drag(slider(), 0.15, 0.999);
    EXPECT_EQ(seconds(), 605.0);
}

TEST_F(SliderRowTest, arrow_keys_move_it_by_one_step) {
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(hand_.focused(), "Base on-time");
    hand_.key(Qt::Key_Right);
    EXPECT_EQ(seconds(), 90.0);
    hand_.key(Qt::Key_Left);
    hand_.key(Qt::Key_Left);
    EXPECT_EQ(seconds(), 80.0);
}

TEST_F(SliderRowTest, it_follows_the_page_after_it_was_moved_by_hand) {
    hand_.drag(slider(), 0.15, 0.5);
    window_.set("seconds", 85.0);
    EXPECT_TRUE(slider().description.startsWith(QStringLiteral("85 s")))
        << slider().description.toStdString();
    EXPECT_EQ(
        QAccessible::queryAccessibleInterface(slider().item)->valueInterface()->currentValue().toDouble(),
        85.0);
}

}  // namespace
}  // namespace wetfront::ui
