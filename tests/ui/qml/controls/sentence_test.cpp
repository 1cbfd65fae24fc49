// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

QString filled(const QString& text, const QString& values) {
    QmlWindow window{QStringLiteral("import QtQuick\nimport Wetfront.Controls\nItem { property string said: "
                                    "Sentence.fill(\"%1\", %2) }")
                         .arg(text, values),
                     QSize(100, 100)};
    return window.get("said").toString();
}

TEST(SentenceTest, a_place_written_into_a_value_stays_as_written) {
    EXPECT_EQ(filled(QStringLiteral("%1: %2"), QStringLiteral("['House %2', 'Farm %1']")),
              QStringLiteral("House %2: Farm %1"));
}

TEST(SentenceTest, a_translation_may_turn_the_places_round_and_repeat_one) {
    EXPECT_EQ(filled(QStringLiteral("%2 of %1, %2"), QStringLiteral("[5, 'two']")),
              QStringLiteral("two of 5, two"));
}

}  // namespace
}  // namespace wetfront::ui
