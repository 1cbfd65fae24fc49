// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QFontMetricsF>

#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

const char* const text_page = R"(
import QtQuick
import Wetfront.Controls
Item {
    property string name
    property real textWidth: line.contentWidth
    property font textFont: line.font
    property string spoken: line.Accessible.name
    PlainWords { id: line; text: parent.name; width: parent.width }
}
)";

// A tag that is taken for one is not drawn, an entity is drawn as one letter: either makes the line shorter.
class PlainWordsTest : public testing::TestWithParam<const char*> {};
TEST_P(PlainWordsTest, shows_a_name_that_looks_like_markup_letter_by_letter) {
    QmlWindow window{QString::fromUtf8(text_page), QSize(900, 100)};
    const QString name = QString::fromUtf8(GetParam());
    window.set("name", name);
    const QFontMetricsF metrics{window.get("textFont").value<QFont>()};
    EXPECT_NEAR(window.get("textWidth").toDouble(), metrics.horizontalAdvance(name), 2.0);
    EXPECT_EQ(window.get("spoken").toString(), name);
}
INSTANTIATE_TEST_SUITE_P(Names, PlainWordsTest,
                         testing::Values("<b>House 1</b>", "<img src=\"file:///etc/hostname\">",
                                         "<a href=\"https://example.org\">House 1</a>",
                                         "Tom &amp; <i>Ann</i>"));

}  // namespace
}  // namespace wetfront::ui
