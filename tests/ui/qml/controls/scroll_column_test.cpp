// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const scroll_page = R"(
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
ScrollColumn {
    Repeater {
        model: 12
        delegate: TickLine {
            required property int index
            text: "Line " + index
            Layout.fillWidth: true
        }
    }
}
)";

class ScrollColumnTest : public testing::Test {
protected:
    double top() { return window_.get("contentY").toDouble(); }
    void expect_in_sight(const char* name) {
        const QRectF place = hand_.find(QString::fromUtf8(name)).place();
        EXPECT_TRUE(QRectF(0, 0, 400, 300).contains(place))
            << name << " lies from " << place.top() << " to " << place.bottom();
    }

    QmlWindow window_{QString::fromUtf8(scroll_page), QSize(400, 300)};
    Hand hand_{window_.window()};
};

TEST_F(ScrollColumnTest, it_follows_the_keyboard_focus_down_and_up) {
    for (int i = 0; i < 12; ++i) {
        hand_.key(Qt::Key_Tab);
    }
    ASSERT_EQ(hand_.focused(), "Line 11");
    expect_in_sight("Line 11");
    for (int i = 0; i < 11; ++i) {
        hand_.key(Qt::Key_Backtab);
    }
    ASSERT_EQ(hand_.focused(), "Line 0");
    expect_in_sight("Line 0");
}

TEST_F(ScrollColumnTest, end_home_and_the_page_keys_scroll) {
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(top(), 0);
    hand_.key(Qt::Key_PageDown);
    const double one_page = top();
    EXPECT_GT(one_page, 0);
    hand_.key(Qt::Key_End);
    EXPECT_GT(top(), one_page);
    expect_in_sight("Line 11");
    hand_.key(Qt::Key_Home);
    EXPECT_EQ(top(), 0);
}

}  // namespace
}  // namespace wetfront::ui
