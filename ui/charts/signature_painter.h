// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QPainter>
#include <QRectF>
#include <vector>

#include "records/stroke.h"

namespace wetfront::ui {

/// Where a point of the field lies when the field fills that rectangle.
[[nodiscard]] QPointF place_of(const FieldPoint& point, const QRectF& field);

/// A drawn signature in its field: what was drawn at a point of the field is at that point of the rectangle.
/// `thickness` of the line in the painter's units.
void paint_strokes(QPainter& painter, const QRectF& field, const std::vector<Stroke>& strokes,
                   const QColor& color, double thickness);

}  // namespace wetfront::ui
