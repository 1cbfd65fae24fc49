// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QImage>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const button_page = R"(
import QtQuick
import Wetfront.Theme
import Wetfront.Controls
Rectangle {
    color: Theme.ground
    property QtObject theme: Theme
    property int clicks: 0
    property bool allowed: true
    ActionButton { x: 40; y: 40; text: "Print"; kind: "primary"; enabled: parent.allowed; onClicked: parent.clicks += 1 }
}
)";

class ActionButtonTest : public testing::Test {
protected:
    int clicks() { return window_.get("clicks").toInt(); }
    /// The colour a hair outside the button's left edge, where only a ring around it can be.
    QColor colour_outside() {
        const QRectF place = hand_.find(QStringLiteral("Print")).place();
        const QImage image = window_.window().grabWindow();
        const double scale = image.width() / 400.0;
        return image.pixelColor((QPointF(place.left() - 3, place.center().y()) * scale).toPoint());
    }
    QColor theme_colour(const char* name) {
        return window_.get("theme").value<QObject*>()->property(name).value<QColor>();
    }

    QmlWindow window_{QString::fromUtf8(button_page), QSize(400, 200)};
    Hand hand_{window_.window()};
};

TEST_F(ActionButtonTest, mouse_space_and_enter_click) {
    hand_.click(QStringLiteral("Print"));
    hand_.key(Qt::Key_Space);
    hand_.key(Qt::Key_Return);
    hand_.key(Qt::Key_Enter);
    EXPECT_EQ(clicks(), 4);
}

TEST_F(ActionButtonTest, a_button_that_is_off_does_nothing_and_takes_no_keyboard) {
    window_.set("allowed", false);
    hand_.click(QStringLiteral("Print"));
    hand_.key(Qt::Key_Tab);
    hand_.key(Qt::Key_Space);
    EXPECT_EQ(clicks(), 0);
    EXPECT_EQ(hand_.focused(), "");
}

TEST_F(ActionButtonTest, the_keyboard_focus_is_seen_as_a_ring) {
    EXPECT_EQ(colour_outside(), theme_colour("ground"));
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(colour_outside(), theme_colour("focus"));
}

}  // namespace
}  // namespace wetfront::ui
