// SPDX-License-Identifier: Apache-2.0
#include "charts/ink.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>

namespace wetfront::ui {

Ink paper_ink(double stroke) {
    Ink ink;
    ink.line = Qt::black;
    ink.faint = QColor{0xb0, 0xb0, 0xb0};
    ink.ground = Qt::white;
    ink.water = Qt::black;
    ink.warm = Qt::black;
    ink.stroke = stroke;
    ink.line_art = true;
    return ink;
}

QPen pen_of(const QColor& color, double width) {
    return QPen{color, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

QColor tint(const QColor& color, double strength) {
    QColor out = color;
    out.setAlphaF(static_cast<float>(strength));
    return out;
}

void hatch(QPainter& painter, const QRectF& area, double spacing, const QPen& pen) {
    if (area.isEmpty() || spacing <= 0.0) {
        return;
    }
    painter.setPen(pen);
    // Each line rises from the bottom at x to the top at x + height; its ends are cut where the area ends.
    for (double x = area.left() - area.height() + spacing / 2.0; x < area.right(); x += spacing) {
        const double from = std::max(x, area.left());
        const double to = std::min(x + area.height(), area.right());
        if (to > from) {
            painter.drawLine(QPointF{from, area.bottom() - (from - x)},
                             QPointF{to, area.bottom() - (to - x)});
        }
    }
}

void crosses(QPainter& painter, const QRectF& area, double step, const Ink& ink) {
    if (area.isEmpty() || step <= 0.0) {
        return;
    }
    // As many whole steps as fit, spread over the area.
    const double columns = std::max(1.0, std::floor(area.width() / step));
    const double rows = std::max(1.0, std::floor(area.height() / step));
    const double arm = 0.28 * std::min({step, area.width(), area.height()});
    painter.setPen(pen_of(ink.warm, 0.9 * ink.stroke));
    for (double row = 0.5; row < rows; row += 1.0) {
        for (double column = 0.5; column < columns; column += 1.0) {
            const QPointF centre{area.left() + area.width() * column / columns,
                                 area.top() + area.height() * row / rows};
            painter.drawLine(centre + QPointF{-arm, -arm}, centre + QPointF{arm, arm});
            painter.drawLine(centre + QPointF{-arm, arm}, centre + QPointF{arm, -arm});
        }
    }
}

void paint_drop(QPainter& painter, QPointF tip, double size, const QColor& color) {
    const double radius = size * 0.32;
    const QPointF centre{tip.x(), tip.y() + size - radius};
    QPainterPath drop{tip};
    drop.quadTo(QPointF{centre.x() + radius * 0.9, centre.y() - radius},
                QPointF{centre.x() + radius, centre.y()});
    drop.arcTo(QRectF{centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius}, 0.0, -180.0);
    drop.quadTo(QPointF{centre.x() - radius * 0.9, centre.y() - radius}, tip);
    painter.fillPath(drop, color);
}

void paint_pump(QPainter& painter, QPointF centre, double radius, bool running, const Ink& ink) {
    painter.setPen(pen_of(ink.line, ink.stroke));
    painter.setBrush(running ? ink.water : ink.ground);
    painter.drawEllipse(centre, radius, radius);
    painter.setBrush(running ? QBrush{ink.ground} : QBrush{Qt::NoBrush});
    painter.drawPolygon(QPolygonF{} << centre + QPointF{0.0, -radius}
                                    << centre + QPointF{0.8 * radius, 0.55 * radius}
                                    << centre + QPointF{-0.8 * radius, 0.55 * radius});
}

}  // namespace wetfront::ui
