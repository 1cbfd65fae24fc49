// SPDX-License-Identifier: Apache-2.0
#include "charts/placed_label.h"

#include <gmock/gmock.h>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;

QFont font_of() {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(16);
    return font;
}

QImage image_of(const PlacedLabel& label) {
    return painted(300, 80, [&](QPainter& painter) {
        painter.setFont(font_of());
        painter.setPen(Qt::black);
        paint_label(painter, label);
    });
}

TEST(PlacedLabelTest, lines_stand_one_below_the_other_inside_the_box) {
    PlacedLabel label = label_sized(QStringLiteral("outside\n35 °C, 30 %"), 200.0, QFontMetricsF{font_of()});
    label.box.moveTopLeft({40, 20});
    QImage image = image_of(label);
    const QRect upper{40, 20, static_cast<int>(label.box.width()), static_cast<int>(label.box.height() / 2)};
    EXPECT_GT(count_pixels(image.copy(upper), is_line), 50);
    EXPECT_GT(count_pixels(image.copy(upper.translated(0, upper.height())), is_line), 50);
    QPainter painter{&image};
    painter.fillRect(label.box, Qt::white);
    painter.end();
    EXPECT_EQ(count_pixels(image, is_line), 0);
}

TEST(PlacedLabelTest, a_line_that_is_too_wide_ends_in_an_ellipsis_and_the_others_stay) {
    const QString text = QStringLiteral("short\n") + QStringLiteral("long ").repeated(30);
    const PlacedLabel label = label_sized(text, 120.0, QFontMetricsF{font_of()});
    EXPECT_LE(label.box.width(), 120.0);
    EXPECT_TRUE(label.text.startsWith(QStringLiteral("short\nlong")));
    EXPECT_TRUE(label.text.endsWith(QChar{0x2026}));
}

}  // namespace
}  // namespace wetfront::ui
