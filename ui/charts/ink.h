// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QPainter>
#include <QRectF>

namespace wetfront::ui {

/// What a drawing is drawn with. Hatching and shape say the same as the colours, so that black ink alone is
/// enough.
struct Ink {
    QColor line{0x1c, 0x22, 0x27};    ///< outlines and text
    QColor faint{0xb4, 0xba, 0xbd};   ///< pad texture, unused lanes
    QColor ground{0xff, 0xff, 0xff};  ///< behind everything
    QColor water{0x1f, 0x5f, 0x8b};
    QColor warm{0xa8, 0x4a, 0x12};  ///< drying
    double stroke = 1.5;    ///< main line, in the painter's units; hatching and drops are measured in it
    bool line_art = false;  ///< for paper: wet is drawn in lines instead of a tint
};

/// Black on white line art; `stroke` in the painter's units.
[[nodiscard]] Ink paper_ink(double stroke);

/// A solid line of that colour with square joints.
[[nodiscard]] QPen pen_of(const QColor& color, double width);

/// The colour, see-through: `strength` 0 to 1.
[[nodiscard]] QColor tint(const QColor& color, double strength);

/// Slanting lines that fill `area`, `spacing` apart across the x axis; vector lines, nothing outside the
/// area.
void hatch(QPainter& painter, const QRectF& area, double spacing, const QPen& pen);

/// Crosses in the warm colour: drying. About `step` apart, at least one.
void crosses(QPainter& painter, const QRectF& area, double step, const Ink& ink);

/// A falling drop with its tip up; `size` is its height.
void paint_drop(QPainter& painter, QPointF tip, double size, const QColor& color);

/// A pump (ISO 1219: a circle with the triangle of flow, here upward), filled while it runs.
void paint_pump(QPainter& painter, QPointF centre, double radius, bool running, const Ink& ink);

}  // namespace wetfront::ui
