// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const choice_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property string unit: "us"
    property string asked: ""
    ChoiceRow {
        width: parent.width
        label: "Units"
        model: [{ value: "us", text: "US customary" }, { value: "si", text: "Metric" }]
        current: parent.unit
        onChosen: value => parent.asked += value + " "
    }
}
)";

class ChoiceRowTest : public testing::Test {
protected:
    bool chosen(const char* name) { return hand_.find(QString::fromUtf8(name)).state.checked; }

    QmlWindow window_{QString::fromUtf8(choice_page), QSize(600, 300)};
    Hand hand_{window_.window()};
};

TEST_F(ChoiceRowTest, exactly_the_current_value_is_marked) {
    EXPECT_TRUE(chosen("US customary"));
    EXPECT_FALSE(chosen("Metric"));
    window_.set("unit", "si");
    EXPECT_FALSE(chosen("US customary"));
    EXPECT_TRUE(chosen("Metric"));
}

TEST_F(ChoiceRowTest, a_press_asks_and_the_page_decides) {
    hand_.click(QStringLiteral("Metric"));
    EXPECT_EQ(window_.get("asked").toString(), "si ");
    EXPECT_TRUE(chosen("US customary"));
}

TEST_F(ChoiceRowTest, arrows_choose_the_neighbour_and_stop_at_the_end) {
    hand_.key(Qt::Key_Tab);
    hand_.key(Qt::Key_Right);
    hand_.key(Qt::Key_Right);
    EXPECT_EQ(hand_.focused(), "Metric");
    hand_.key(Qt::Key_Left);
    EXPECT_EQ(window_.get("asked").toString(), "si us ");
}

}  // namespace
}  // namespace wetfront::ui
