// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const caution_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property alias level: box.level
    CautionBox { id: box; width: parent.width; level: "danger"; message: "Wet floor."; source: "a source" }
}
)";

class CautionBoxTest : public testing::Test {
protected:
    QmlWindow window_{QString::fromUtf8(caution_page), QSize(600, 300)};
    Hand hand_{window_.window()};
};

TEST_F(CautionBoxTest, the_signal_word_is_told_first) {
    for (const auto& [level, word] : {std::pair{"danger", "DANGER"},
                                      {"warning", "WARNING"},
                                      {"caution", "CAUTION"},
                                      {"notice", "NOTICE"}}) {
        window_.set("level", QString::fromUtf8(level));
        EXPECT_TRUE(hand_.shows(QStringLiteral("%1: Wet floor.").arg(QString::fromUtf8(word)))) << level;
    }
}

TEST_F(CautionBoxTest, the_source_opens_on_touch) {
    EXPECT_FALSE(hand_.shows(QStringLiteral("Source: a source")));
    hand_.click(QStringLiteral("DANGER: Wet floor."));
    EXPECT_TRUE(hand_.shows(QStringLiteral("Source: a source")));
}

}  // namespace
}  // namespace wetfront::ui
