// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const confirm_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    id: page
    property int done: 0
    property int kept: 0
    property bool opened: panel.opened
    function ask() {
        panel.ask({ question: "Give up this reading?", keepText: "Keep timing", doText: "Give it up", act: () => done += 1 })
    }
    ConfirmPanel { id: panel; onKept: page.kept += 1 }
}
)";

class ConfirmPanelTest : public testing::Test {
protected:
    void open() {
        QMetaObject::invokeMethod(&window_.root(), "ask");
        ASSERT_TRUE(QTest::qWaitFor([&] { return window_.get("opened").toBool(); }));
    }
    void expect(int done, int kept) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !window_.get("opened").toBool(); }))
            << "the question stays open";
        EXPECT_EQ(window_.get("done").toInt(), done);
        EXPECT_EQ(window_.get("kept").toInt(), kept);
    }

    QmlWindow window_{QString::fromUtf8(confirm_page), QSize(1024, 600)};
    Hand hand_{window_.window()};
};

TEST_F(ConfirmPanelTest, enter_keeps_things_as_they_are) {
    open();
    EXPECT_EQ(hand_.focused(), "Keep timing");
    hand_.key(Qt::Key_Return);
    expect(0, 1);
}

TEST_F(ConfirmPanelTest, escape_keeps_things_as_they_are) {
    open();
    hand_.key(Qt::Key_Escape);
    expect(0, 1);
}

TEST_F(ConfirmPanelTest, the_other_button_does_it_once) {
    open();
    hand_.click(QStringLiteral("Give it up"));
    expect(1, 0);
}

TEST_F(ConfirmPanelTest, a_press_beside_the_question_answers_nothing) {
    open();
    QTest::mouseClick(&window_.window(), Qt::LeftButton, Qt::NoModifier, QPoint(10, 10));
    QTest::qWait(0);
    EXPECT_TRUE(window_.get("opened").toBool());
    EXPECT_EQ(window_.get("done").toInt() + window_.get("kept").toInt(), 0);
}

}  // namespace
}  // namespace wetfront::ui
