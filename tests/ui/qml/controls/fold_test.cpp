// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const fold_page = R"(
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
ScrollColumn {
    id: page
    property string summary: "4 of 9 entered"
    property int made: 0
    Repeater {
        model: 4
        delegate: TickLine {
            required property int index
            text: "Line " + index
            Layout.fillWidth: true
        }
    }
    Fold {
        title: "Water test"
        summary: page.summary
        Layout.fillWidth: true
        content: Component {
            ColumnLayout {
                Component.onCompleted: page.made += 1
                TickLine { text: "Hardness" }
                TickLine { text: "Alkalinity" }
            }
        }
    }
}
)";

class FoldTest : public testing::Test {
protected:
    [[nodiscard]] Heard fold() { return hand_.find(QStringLiteral("Water test")); }

    QmlWindow window_{QString::fromUtf8(fold_page), QSize(600, 300)};
    Hand hand_{window_.window()};
};

TEST_F(FoldTest, content_is_made_when_it_is_opened_and_gone_when_it_is_folded) {
    EXPECT_FALSE(hand_.shows(QStringLiteral("Hardness")));
    EXPECT_EQ(window_.get("made").toInt(), 0);
    hand_.click(QStringLiteral("Water test"));
    EXPECT_TRUE(hand_.shows(QStringLiteral("Hardness")));
    EXPECT_EQ(window_.get("made").toInt(), 1);
    hand_.click(QStringLiteral("Water test"));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(hand_.shows(QStringLiteral("Hardness")));
}

TEST_F(FoldTest, it_tells_whether_it_is_open_and_what_is_in_it) {
    EXPECT_EQ(fold().description, "folded; 4 of 9 entered");
    EXPECT_FALSE(fold().state.checked);
    hand_.click(QStringLiteral("Water test"));
    window_.set("summary", QStringLiteral("5 of 9 entered"));
    EXPECT_EQ(fold().description, "open; 5 of 9 entered");
    EXPECT_TRUE(fold().state.checked);
}

TEST_F(FoldTest, space_and_enter_open_and_fold_it_and_tab_goes_into_it) {
    for (int i = 0; i < 5; ++i) {
        hand_.key(Qt::Key_Tab);
    }
    ASSERT_EQ(hand_.focused(), "Water test");
    hand_.key(Qt::Key_Space);
    EXPECT_TRUE(fold().state.checked);
    hand_.key(Qt::Key_Tab);
    EXPECT_EQ(hand_.focused(), "Hardness");
    hand_.key(Qt::Key_Backtab);
    hand_.key(Qt::Key_Return);
    EXPECT_FALSE(fold().state.checked);
}

TEST_F(FoldTest, opened_at_the_lower_edge_it_brings_its_content_into_sight) {
    hand_.click(QStringLiteral("Water test"));
    EXPECT_TRUE(hand_.shows(QStringLiteral("Alkalinity")));
    const QRectF place = hand_.find(QStringLiteral("Alkalinity")).place();
    EXPECT_TRUE(QRectF(0, 0, 600, 300).contains(place)) << "from " << place.top() << " to " << place.bottom();
}

}  // namespace
}  // namespace wetfront::ui
