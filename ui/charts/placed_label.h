// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFontMetricsF>
#include <QPainter>
#include <QRectF>
#include <QString>

namespace wetfront::ui {

/// A text and where it stands, in the painter's units. Lines are parted by line feeds.
struct PlacedLabel {
    QRectF box;
    QString text;
};

/// A label as large as its text, its top left corner at 0, 0. A line wider than `widest` ends in an ellipsis.
[[nodiscard]] PlacedLabel label_sized(const QString& text, double widest, const QFontMetricsF& metrics);

/// In the painter's font and pen; the font is the one that the label was sized with.
void paint_label(QPainter& painter, const PlacedLabel& label);

}  // namespace wetfront::ui
