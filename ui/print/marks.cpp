// SPDX-License-Identifier: Apache-2.0
#include "print/marks.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>

#include "print/type.h"

namespace wetfront::ui {
namespace {

constexpr double mark_room = 13.0 * pt;

void paint_word(QPainter& painter, QPointF top_left, const QString& word) {
    for (const Line& line : text_lines(word, Face::strong, 100.0 * mark_room, mark_room)) {
        line.paint(painter, top_left);
    }
}

void paint_severity(QPainter& painter, QPointF centre, Severity severity) {
    const double r = 3.6 * pt;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{Qt::black, 0.9 * pt});
    switch (severity) {
        case Severity::harm:  // full diamond
            painter.setBrush(Qt::black);
            painter.drawPolygon(QPolygonF{}
                                << centre + QPointF{0.0, -1.3 * r} << centre + QPointF{1.3 * r, 0.0}
                                << centre + QPointF{0.0, 1.3 * r} << centre + QPointF{-1.3 * r, 0.0});
            break;
        case Severity::fault:  // full square
            painter.setBrush(Qt::black);
            painter.drawRect(QRectF{centre.x() - r, centre.y() - r, 2.0 * r, 2.0 * r});
            break;
        case Severity::waste: {  // circle, lower half full
            painter.setBrush(Qt::white);
            painter.drawEllipse(centre, r, r);
            QPainterPath half;
            half.moveTo(centre);
            half.arcTo(QRectF{centre.x() - r, centre.y() - r, 2.0 * r, 2.0 * r}, 180.0, 180.0);
            painter.fillPath(half, Qt::black);
            break;
        }
        case Severity::note:  // open circle
            painter.setBrush(Qt::white);
            painter.drawEllipse(centre, r, r);
            break;
    }
}

}  // namespace

double marks_width(const std::vector<QString>& words) {
    double widest = 0.0;
    for (const auto& word : words) {
        widest = std::max(widest, width_of(word, Face::strong));
    }
    return mark_room + widest + 8.0 * pt;
}

Line tick_box(bool done) {
    const double height = leading_of(Face::body);
    return {height, [height, done](QPainter& painter, QPointF top_left) {
                const double side = 7.6 * pt;
                const QRectF box{top_left.x() + 0.5 * pt, top_left.y() + (height - side) / 2.0, side, side};
                painter.save();
                painter.setRenderHint(QPainter::Antialiasing);
                painter.setPen(QPen{Qt::black, 0.7 * pt});
                painter.setBrush(Qt::white);
                painter.drawRect(box);
                if (done) {
                    painter.setPen(QPen{Qt::black, 1.3 * pt, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
                    painter.drawPolyline(QPolygonF{} << box.topLeft() + QPointF{0.2, 0.52} * side
                                                     << box.topLeft() + QPointF{0.43, 0.76} * side
                                                     << box.topLeft() + QPointF{0.84, 0.2} * side);
                }
                painter.restore();
            }};
}

Line severity_mark(Severity severity, const QString& word) {
    const double height = leading_of(Face::strong);
    return {height, [height, severity, word](QPainter& painter, QPointF top_left) {
                painter.save();
                paint_severity(painter, top_left + QPointF{5.0 * pt, height / 2.0}, severity);
                painter.restore();
                paint_word(painter, top_left, word);
            }};
}

Line signal_mark(bool injury, const QString& word) {
    const double height = leading_of(Face::strong);
    return {height, [height, injury, word](QPainter& painter, QPointF top_left) {
                if (injury) {
                    painter.save();
                    painter.setRenderHint(QPainter::Antialiasing);
                    const QPointF top = top_left + QPointF{5.0 * pt, height / 2.0 - 4.6 * pt};
                    painter.setPen(QPen{Qt::black, 1.0 * pt, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin});
                    painter.setBrush(Qt::white);
                    painter.drawPolygon(QPolygonF{} << top << top + QPointF{4.8 * pt, 8.4 * pt}
                                                    << top + QPointF{-4.8 * pt, 8.4 * pt});
                    painter.drawLine(top + QPointF{0.0, 2.9 * pt}, top + QPointF{0.0, 5.6 * pt});
                    painter.drawLine(top + QPointF{0.0, 6.4 * pt}, top + QPointF{0.0, 7.4 * pt});
                    painter.restore();
                }
                paint_word(painter, top_left, word);
            }};
}

}  // namespace wetfront::ui
