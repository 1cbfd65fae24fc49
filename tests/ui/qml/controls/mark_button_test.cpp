// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QPointingDevice>
#include <QTest>
#include <memory>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const mark_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property int marks: 0
    property int others: 0
    property bool allowed: true
    property int keys: 0
    focus: true
    Keys.onSpacePressed: keys += 1
    MarkButton {
        width: parent.width / 2; height: parent.height
        text: "First drip"
        enabled: parent.allowed
        onPressed: parent.marks += 1
    }
    MarkButton {
        x: parent.width / 2; width: parent.width / 2; height: parent.height
        text: "Dripping ends"
        onPressed: parent.others += 1
    }
}
)";

class MarkButtonTest : public testing::Test {
protected:
    int marks() { return window_.get("marks").toInt(); }

    QmlWindow window_{QString::fromUtf8(mark_page), QSize(1024, 600)};
    Hand hand_{window_.window()};
};

TEST_F(MarkButtonTest, a_mark_counts_when_the_finger_goes_down) {
    hand_.press(QStringLiteral("First drip"));
    EXPECT_EQ(marks(), 1);
}

TEST_F(MarkButtonTest, lifting_the_finger_marks_nothing) {
    hand_.press(QStringLiteral("First drip"));
    hand_.release(QStringLiteral("First drip"));
    EXPECT_EQ(marks(), 1);
}

TEST_F(MarkButtonTest, sliding_off_before_lifting_takes_no_mark_back) {
    hand_.press(QStringLiteral("First drip"));
    QTest::mouseMove(&window_.window(), QPoint(1000, 10));
    QTest::mouseRelease(&window_.window(), Qt::LeftButton, Qt::NoModifier, QPoint(1000, 10));
    EXPECT_EQ(marks(), 1);
    EXPECT_EQ(window_.get("others").toInt(), 0);
}

TEST_F(MarkButtonTest, two_fingers_mark_on_two_buttons_at_once) {
    const std::unique_ptr<QPointingDevice> screen(QTest::createTouchDevice());
    QTest::touchEvent(&window_.window(), screen.get()).press(0, QPoint(200, 300));
    EXPECT_EQ(marks(), 1);
    QTest::touchEvent(&window_.window(), screen.get()).stationary(0).press(1, QPoint(800, 300));
    EXPECT_EQ(window_.get("others").toInt(), 1);
    QTest::touchEvent(&window_.window(), screen.get())
        .release(0, QPoint(200, 300))
        .release(1, QPoint(800, 300));
    EXPECT_EQ(marks(), 1);
}

TEST_F(MarkButtonTest, a_button_that_is_off_marks_nothing) {
    window_.set("allowed", false);
    hand_.click(QStringLiteral("First drip"));
    EXPECT_EQ(marks(), 0);
}

TEST_F(MarkButtonTest, keys_are_left_to_the_page) {
    hand_.click(QStringLiteral("First drip"));
    hand_.key(Qt::Key_Space);
    EXPECT_EQ(marks(), 1);
    EXPECT_EQ(window_.get("keys").toInt(), 1);
}

}  // namespace
}  // namespace wetfront::ui
