// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const busy_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    id: page
    property int cancels: 0
    property bool cancellable: true
    property bool opened: panel.opened
    property real progress: 0.4
    function open() { panel.open() }
    BusyPanel {
        id: panel
        text: "Writing the sheet"
        progress: page.progress
        cancellable: page.cancellable
        onCancelAsked: page.cancels += 1
    }
}
)";

class BusyPanelTest : public testing::Test {
protected:
    BusyPanelTest() {
        QMetaObject::invokeMethod(&window_.root(), "open");
        EXPECT_TRUE(QTest::qWaitFor([&] { return window_.get("opened").toBool(); }));
    }
    int cancels() { return window_.get("cancels").toInt(); }

    QmlWindow window_{QString::fromUtf8(busy_page), QSize(800, 400)};
    Hand hand_{window_.window()};
};

TEST_F(BusyPanelTest, how_far_the_work_is_can_be_heard) {
    EXPECT_TRUE(hand_.shows(QStringLiteral("40 %")));
    window_.set("progress", 0.9);
    EXPECT_TRUE(hand_.shows(QStringLiteral("90 %")));
}

TEST_F(BusyPanelTest, the_button_and_escape_ask_to_cancel_and_leave_the_panel_to_the_page) {
    hand_.click(QStringLiteral("Cancel"));
    hand_.key(Qt::Key_Escape);
    EXPECT_EQ(cancels(), 2);
    EXPECT_TRUE(window_.get("opened").toBool());
}

TEST_F(BusyPanelTest, work_that_must_end_offers_no_way_out) {
    window_.set("cancellable", false);
    EXPECT_FALSE(hand_.shows(QStringLiteral("Cancel")));
    hand_.key(Qt::Key_Escape);
    EXPECT_EQ(cancels(), 0);
    EXPECT_TRUE(window_.get("opened").toBool());
}

}  // namespace
}  // namespace wetfront::ui
