// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const finding_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property alias severity: card.severity
    property int reasons: 0
    FindingCard {
        id: card
        width: parent.width
        severity: "harm"
        message: "The cut-off is too low."
        consequence: "The pads shut off."
        remedy: "Raise it."
        source: "a source"
        hasReason: true
        onReasonAsked: parent.reasons += 1
    }
}
)";

class FindingCardTest : public testing::Test {
protected:
    QmlWindow window_{QString::fromUtf8(finding_page), QSize(600, 400)};
    Hand hand_{window_.window()};
};

TEST_F(FindingCardTest, the_severity_is_a_word_before_the_message) {
    for (const auto& [key, word] :
         {std::pair{"harm", "Harm"}, {"fault", "Fault"}, {"waste", "Waste"}, {"note", "Note"}}) {
        window_.set("severity", QString::fromUtf8(key));
        EXPECT_TRUE(hand_.shows(QStringLiteral("%1: The cut-off is too low.").arg(QString::fromUtf8(word))))
            << key;
    }
}

TEST_F(FindingCardTest, consequence_and_remedy_are_told_without_opening_it) {
    EXPECT_EQ(hand_.find(QStringLiteral("Harm: The cut-off is too low.")).description,
              "The pads shut off. Raise it.");
}

TEST_F(FindingCardTest, the_source_opens_and_closes_on_touch) {
    EXPECT_FALSE(hand_.shows(QStringLiteral("Source: a source")));
    hand_.click(QStringLiteral("Harm: The cut-off is too low."));
    EXPECT_TRUE(hand_.shows(QStringLiteral("Source: a source")));
    hand_.key(Qt::Key_Return);
    EXPECT_FALSE(hand_.shows(QStringLiteral("Source: a source")));
}

TEST_F(FindingCardTest, the_reason_can_be_asked_for) {
    hand_.key(Qt::Key_Tab);
    hand_.key(Qt::Key_Return);
    hand_.click(QStringLiteral("Show the reason"));
    EXPECT_EQ(window_.get("reasons").toInt(), 1);
    EXPECT_TRUE(hand_.shows(QStringLiteral("Source: a source"))) << "asking for the reason closed the card";
}

}  // namespace
}  // namespace wetfront::ui
