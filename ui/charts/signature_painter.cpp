// SPDX-License-Identifier: Apache-2.0
#include "charts/signature_painter.h"

#include <QPen>
#include <QPolygonF>
#include <algorithm>

namespace wetfront::ui {
namespace {

// Long polylines are slow to paint; round ends hide where one stops and the next goes on.
constexpr std::size_t most_in_one_line = 64;

}  // namespace

QPointF place_of(const FieldPoint& point, const QRectF& field) {
    return {field.x() + point.x * field.width() / field_width,
            field.y() + point.y * field.height() / field_height};
}

void paint_strokes(QPainter& painter, const QRectF& field, const std::vector<Stroke>& strokes,
                   const QColor& color, double thickness) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{color, thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    for (const auto& [points] : strokes) {
        if (points.size() == 1) {
            painter.drawPoint(place_of(points.front(), field));
        }
        for (std::size_t from = 0; from + 1 < points.size(); from += most_in_one_line - 1) {
            QPolygonF line;
            for (std::size_t i = from; i < std::min(from + most_in_one_line, points.size()); ++i) {
                line.append(place_of(points[i], field));
            }
            painter.drawPolyline(line);
        }
    }
    painter.restore();
}

}  // namespace wetfront::ui
