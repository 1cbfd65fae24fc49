// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const reason_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property bool opened: sheet.opened
    function explain() {
        sheet.explain({ title: "Base on-time", explanation: "Why it is so long.", formula: "fill time + what dries",
            inputs: [{ name: "Fill time", symbol: "t_fill", value: "45 s", origin: "three readings", source: "a source" }],
            result: "85 s", rounding: "up to 5 s", source: "where it is written" })
    }
    ReasonSheet { id: sheet }
}
)";

class ReasonSheetTest : public testing::Test {
protected:
    ReasonSheetTest() {
        QMetaObject::invokeMethod(&window_.root(), "explain");
        EXPECT_TRUE(QTest::qWaitFor([&] { return window_.get("opened").toBool(); }));
    }
    bool closed() {
        return QTest::qWaitFor([&] { return !window_.get("opened").toBool(); });
    }

    QmlWindow window_{QString::fromUtf8(reason_page), QSize(1024, 600)};
    Hand hand_{window_.window()};
};

TEST_F(ReasonSheetTest, rule_inputs_result_rounding_and_sources_are_all_told) {
    for (const char* words :
         {"Base on-time", "Why it is so long.", "fill time + what dries", "Fill time (t_fill)", "45 s",
          "three readings · a source", "85 s", "up to 5 s", "where it is written"}) {
        EXPECT_TRUE(hand_.shows(QString::fromUtf8(words))) << words;
    }
}

TEST_F(ReasonSheetTest, a_touch_on_the_cross_closes_it) {
    hand_.click(QStringLiteral("Close"));
    EXPECT_TRUE(closed());
}

TEST_F(ReasonSheetTest, a_touch_beside_it_closes_it) {
    QTest::mouseClick(&window_.window(), Qt::LeftButton, Qt::NoModifier, QPoint(5, 5));
    EXPECT_TRUE(closed());
}

TEST_F(ReasonSheetTest, escape_closes_it) {
    hand_.key(Qt::Key_Escape);
    EXPECT_TRUE(closed());
}

}  // namespace
}  // namespace wetfront::ui
