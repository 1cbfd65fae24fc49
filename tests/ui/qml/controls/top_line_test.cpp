// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const top_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property alias pumpOff: line.pumpOffText
    property alias backVisible: line.backVisible
    property int backs: 0
    TopLine { id: line; width: parent.width; text: "Start the pump."; onBackAsked: parent.backs += 1 }
}
)";

class TopLineTest : public testing::Test {
protected:
    QmlWindow window_{QString::fromUtf8(top_page), QSize(800, 200)};
    Hand hand_{window_.window()};
};

TEST_F(TopLineTest, the_time_left_stands_there_only_while_a_pump_is_off) {
    EXPECT_TRUE(hand_.shows(QStringLiteral("Start the pump.")));
    EXPECT_FALSE(hand_.shows(QStringLiteral("Pump off: 12:30 left")));
    window_.set("pumpOff", QStringLiteral("Pump off: 12:30 left"));
    EXPECT_TRUE(hand_.shows(QStringLiteral("Pump off: 12:30 left")));
}

TEST_F(TopLineTest, back_is_asked_of_the_page) {
    EXPECT_FALSE(hand_.shows(QStringLiteral("Back")));
    window_.set("backVisible", true);
    hand_.click(QStringLiteral("Back"));
    EXPECT_EQ(window_.get("backs").toInt(), 1);
}

}  // namespace
}  // namespace wetfront::ui
