// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const ticks_page = R"(
import QtQuick
import Wetfront.Controls
Column {
    property bool ticked: false
    property string asked: ""
    TickLine {
        width: parent.width
        text: "Breaker on"
        ticked: parent.ticked
        onToggled: wanted => parent.asked += wanted ? "tick " : "untick "
    }
    TickLine { width: parent.width; text: "Alarm armed" }
}
)";

class TickLineTest : public testing::Test {
protected:
    QString asked() { return window_.get("asked").toString(); }

    QmlWindow window_{QString::fromUtf8(ticks_page), QSize(600, 300)};
    Hand hand_{window_.window()};
};

TEST_F(TickLineTest, a_press_asks_for_the_other_state_and_ticks_nothing_by_itself) {
    hand_.click(QStringLiteral("Breaker on"));
    EXPECT_EQ(asked(), "tick ");
    EXPECT_FALSE(hand_.find(QStringLiteral("Breaker on")).state.checked);
    window_.set("ticked", true);
    EXPECT_TRUE(hand_.find(QStringLiteral("Breaker on")).state.checked);
    hand_.click(QStringLiteral("Breaker on"));
    EXPECT_EQ(asked(), "tick untick ");
}

TEST_F(TickLineTest, space_and_enter_tick_and_tab_goes_on) {
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(hand_.focused(), "Breaker on");
    hand_.key(Qt::Key_Space);
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(asked(), "tick tick ");
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(hand_.focused(), "Alarm armed");
}

}  // namespace
}  // namespace wetfront::ui
