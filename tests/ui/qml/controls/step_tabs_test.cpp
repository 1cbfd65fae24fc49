// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const tabs_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property int asked: -1
    property alias current: tabs.current
    property alias upright: tabs.vertical
    StepTabs {
        id: tabs
        anchors.fill: parent
        onChosen: index => parent.asked = index
        model: ListModel {
            ListElement { title: "Safety"; complete: true; problem: "" }
            ListElement { title: "House and banks"; complete: false; problem: "Bank 2 has no pump" }
            ListElement { title: "Time the water"; complete: false; problem: "" }
            ListElement { title: "Conditions"; complete: false; problem: "" }
            ListElement { title: "Advice"; complete: false; problem: "" }
            ListElement { title: "Sheet"; complete: false; problem: "" }
        }
    }
}
)";

class StepTabsTest : public testing::Test {
protected:
    int asked() { return window_.get("asked").toInt(); }

    QmlWindow window_{QString::fromUtf8(tabs_page), QSize(300, 300)};
    Hand hand_{window_.window()};
};

TEST_F(StepTabsTest, a_press_asks_for_the_step_and_leaves_going_there_to_the_page) {
    hand_.click(QStringLiteral("3. Time the water"));
    EXPECT_EQ(asked(), 2);
    EXPECT_EQ(window_.get("current").toInt(), 0);
}

TEST_F(StepTabsTest, arrows_walk_the_steps_and_enter_asks_for_one) {
    hand_.click(QStringLiteral("1. Safety"));
    hand_.key(Qt::Key_Down);
    hand_.key(Qt::Key_Down);
    EXPECT_EQ(hand_.focused(), "3. Time the water");
    hand_.key(Qt::Key_Up);
    EXPECT_EQ(asked(), 0) << "walking alone must not change the page";
    hand_.key(Qt::Key_Return);
    EXPECT_EQ(asked(), 1);
}

TEST_F(StepTabsTest, complete_and_problem_are_told_in_words) {
    EXPECT_EQ(hand_.find(QStringLiteral("1. Safety")).description, "complete");
    EXPECT_EQ(hand_.find(QStringLiteral("2. House and banks")).description, "Bank 2 has no pump");
    EXPECT_EQ(hand_.find(QStringLiteral("3. Time the water")).description, "");
}

TEST_F(StepTabsTest, the_current_step_is_scrolled_into_sight) {
    for (const bool upright : {true, false}) {
        window_.set("upright", upright);
        window_.set("current", 0);
        window_.set("current", 5);
        const QRectF place = hand_.find(QStringLiteral("6. Sheet")).place();
        EXPECT_TRUE(QRectF(0, 0, 300, 300).contains(place))
            << (upright ? "list" : "strip") << ": x " << place.x() << ", y " << place.y();
    }
}

}  // namespace
}  // namespace wetfront::ui
