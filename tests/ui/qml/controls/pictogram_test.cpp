// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QImage>

#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

int dark_pixels(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += image.pixelColor(x, y).lightness() < 128 ? 1 : 0;
        }
    }
    return count;
}

class PictogramTest : public testing::Test {
protected:
    QmlWindow window_{QStringLiteral("import QtQuick\nimport Wetfront.Controls\nRectangle {\n"
                                     "property alias name: drawing.name\n"
                                     "property var names: Object.keys(drawing.paths)\n"
                                     "Pictogram { id: drawing; size: 96; colour: \"black\" } }"),
                      QSize(96, 96)};
};

TEST_F(PictogramTest, each_leaves_ink_in_the_software_scene_graph) {
    const QStringList names = window_.get("names").toStringList();
    ASSERT_FALSE(names.isEmpty());
    ASSERT_EQ(dark_pixels(window_.window().grabWindow()), 0);
    for (const QString& name : names) {
        window_.set("name", name);
        // A line a tenth of the picture wide and half the picture long, at the least.
        EXPECT_GT(dark_pixels(window_.window().grabWindow()), 96 / 10 * 96 / 2) << name.toStdString();
    }
}

TEST_F(PictogramTest, a_name_that_is_not_there_draws_nothing) {
    window_.set("name", QStringLiteral("zeppelin"));
    EXPECT_EQ(dark_pixels(window_.window().grabWindow()), 0);
}

}  // namespace
}  // namespace wetfront::ui
