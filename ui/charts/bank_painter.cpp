// SPDX-License-Identifier: Apache-2.0
#include "charts/bank_painter.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>

namespace wetfront::ui {
namespace {

double share(double value) {
    return std::clamp(value, 0.0, 1.0);
}

// Depth of the wetted region at a share of the way along, straight between the middles of the columns.
double depth_at(const std::vector<double>& columns, double along) {
    const double position = along * static_cast<double>(columns.size()) - 0.5;
    const auto last = static_cast<double>(columns.size() - 1);
    const double low = std::clamp(std::floor(position), 0.0, last);
    const double high = std::min(low + 1.0, last);
    const double part = std::clamp(position - low, 0.0, 1.0);
    return share(columns[static_cast<std::size_t>(low)]) * (1.0 - part) +
           share(columns[static_cast<std::size_t>(high)]) * part;
}

class BankDrawing {
public:
    BankDrawing(QPainter& painter, const QRectF& area, const BankPicture& picture, const Ink& ink)
        : painter_{painter},
          picture_{picture},
          ink_{ink},
          place_{bank_geometry(area, picture.pump_on_left, picture.aspect, ink.stroke)} {}

    void paint() {
        paint_pad();
        paint_wet();
        paint_drying();
        outline(place_.pad);
        paint_header();
        paint_drops();
        paint_water_circuit();
    }

private:
    void outline(const QRectF& rect) {
        painter_.setPen(pen_of(ink_.line, ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(rect);
    }

    // Flutes: two families of slanting lines, as a corrugated pad shows at its face.
    void paint_pad() {
        painter_.fillRect(place_.pad, ink_.ground);
        const double spacing = std::max(place_.pad.height() / 9.0, 3.5 * ink_.stroke);
        const double half = spacing / 2.0;
        painter_.setPen(pen_of(ink_.faint, 0.45 * ink_.stroke));
        for (double y = place_.pad.top() + spacing; y < place_.pad.bottom() - half / 2.0; y += spacing) {
            QPolygonF zigzag;
            double x = place_.pad.left();
            for (int i = 0; x <= place_.pad.right(); ++i, x += spacing) {
                zigzag << QPointF{x, y + (i % 2 == 0 ? -half : half) / 2.0};
            }
            painter_.drawPolyline(zigzag);
        }
    }

    [[nodiscard]] QPolygonF front_line() const {
        QPolygonF front;
        constexpr int steps = 120;
        for (int i = 0; i <= steps; ++i) {
            const double along = static_cast<double>(i) / steps;
            front << QPointF{place_.along(along),
                             place_.pad.top() + place_.pad.height() * depth_at(picture_.wet_front, along)};
        }
        return front;
    }

    void paint_wet() {
        const bool any = std::any_of(picture_.wet_front.begin(), picture_.wet_front.end(),
                                     [](double depth) { return depth > 0.0; });
        if (!any) {
            return;
        }
        const QPolygonF front = front_line();
        if (ink_.line_art) {
            painter_.setPen(pen_of(ink_.water, 0.5 * ink_.stroke));
            const double spacing = 2.5 * ink_.stroke;
            for (double x = place_.pad.left() + spacing; x < place_.pad.right(); x += spacing) {
                const double from_left = (x - place_.pad.left()) / place_.pad.width();
                const double depth =
                    depth_at(picture_.wet_front, place_.pump_on_left ? from_left : 1.0 - from_left);
                if (depth > 0.0) {
                    painter_.drawLine(QPointF{x, place_.pad.top()},
                                      QPointF{x, place_.pad.top() + depth * place_.pad.height()});
                }
            }
        } else {
            QPolygonF wet = front;
            wet << QPointF{place_.along(1.0), place_.pad.top()}
                << QPointF{place_.along(0.0), place_.pad.top()};
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(tint(ink_.water, 0.62));
            painter_.drawPolygon(wet);
        }
        painter_.setPen(pen_of(ink_.water, 1.3 * ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPolyline(front);
    }

    [[nodiscard]] QRectF column_rect(std::size_t column, std::size_t columns) const {
        const double count = static_cast<double>(columns);
        const double a = place_.along(static_cast<double>(column) / count);
        const double b = place_.along(static_cast<double>(column + 1) / count);
        return QRectF{QPointF{std::min(a, b), place_.pad.top()},
                      QPointF{std::max(a, b), place_.pad.bottom()}};
    }

    // Dry patches: the ground shows again, crossed and framed. Neighbouring columns make one patch.
    void paint_drying() {
        const std::size_t columns = picture_.drying.size();
        for (std::size_t i = 0; i < columns; ++i) {
            if (!picture_.drying[i]) {
                continue;
            }
            QRectF patch = column_rect(i, columns);
            while (i + 1 < columns && picture_.drying[i + 1]) {
                patch = patch.united(column_rect(++i, columns));
            }
            patch.adjust(0.0, 0.4 * patch.height(), 0.0, -0.1 * patch.height());
            painter_.fillRect(patch, ink_.ground);
            painter_.setPen(pen_of(ink_.warm, ink_.stroke));
            painter_.setBrush(Qt::NoBrush);
            painter_.drawRect(patch);
            crosses(painter_, patch, std::max(5.0 * ink_.stroke, patch.height() / 4.0), ink_);
        }
    }

    void paint_header() {
        const QRectF& pipe = place_.header;
        painter_.fillRect(pipe, ink_.ground);
        const double front = share(picture_.header_front);
        if (front > 0.0) {
            const double start = place_.along(0.0);
            const double end = place_.along(front);
            const QRectF water{QPointF{std::min(start, end), pipe.top()},
                               QPointF{std::max(start, end), pipe.bottom()}};
            if (!ink_.line_art) {
                painter_.fillRect(water, tint(ink_.water, 0.25));
            }
            hatch(painter_, water, 2.6 * ink_.stroke, pen_of(ink_.water, 0.9 * ink_.stroke));
            if (front < 1.0) {
                painter_.setPen(pen_of(ink_.water, 1.8 * ink_.stroke));
                painter_.drawLine(QPointF{end, pipe.top()}, QPointF{end, pipe.bottom()});
            }
        }
        outline(pipe);
        // Outlets, one a column of the model.
        painter_.setPen(pen_of(ink_.line, 0.7 * ink_.stroke));
        constexpr int outlets = 20;
        for (int i = 0; i < outlets; ++i) {
            const double x = place_.along((i + 0.5) / outlets);
            painter_.drawLine(QPointF{x, pipe.bottom()}, QPointF{x, place_.pad.top()});
        }
    }

    void paint_drops() {
        const double gap = place_.gutter.top() - place_.pad.bottom();
        const double size = std::min(0.62 * gap, 5.0 * ink_.stroke);
        for (std::size_t i = 0; i < picture_.dripping.size(); ++i) {
            if (picture_.dripping[i]) {
                const double lower = i % 2 == 0 ? 0.08 : 0.34;
                const QPointF tip{column_rect(i, picture_.dripping.size()).center().x(),
                                  place_.pad.bottom() + lower * gap + ink_.stroke / 2.0};
                paint_drop(painter_, tip, size, ink_.water);
            }
        }
    }

    // Gutter, sump with its water, the pump and its riser.
    void paint_water_circuit() {
        const bool drips =
            std::find(picture_.dripping.begin(), picture_.dripping.end(), true) != picture_.dripping.end();
        const QRectF& gutter = place_.gutter;
        painter_.setPen(pen_of(ink_.line, ink_.stroke));
        painter_.setBrush(drips ? QBrush{tint(ink_.water, ink_.line_art ? 0.35 : 0.45)}
                                : QBrush{Qt::NoBrush});
        painter_.drawRect(gutter);

        const QRectF& sump = place_.sump;
        const QRectF water = sump.adjusted(0.0, 0.36 * sump.height(), 0.0, 0.0);
        if (ink_.line_art) {
            painter_.setPen(pen_of(ink_.water, 0.5 * ink_.stroke));
            for (double y = water.top(); y < water.bottom(); y += 3.0 * ink_.stroke) {
                painter_.drawLine(QPointF{water.left(), y}, QPointF{water.right(), y});
            }
        } else {
            painter_.fillRect(water, tint(ink_.water, 0.3));
        }
        painter_.setPen(pen_of(ink_.line, ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        // Its wall is lower where the gutter comes in.
        const double left_top = place_.pump_on_left ? sump.top() : gutter.bottom();
        const double right_top = place_.pump_on_left ? gutter.bottom() : sump.top();
        painter_.drawPolyline(QPolygonF{} << QPointF{sump.left(), left_top} << sump.bottomLeft()
                                          << sump.bottomRight() << QPointF{sump.right(), right_top});

        const double r = place_.pump_radius;
        const double pipe_y = place_.header.center().y();
        const QPointF elbow{place_.pump.x(), pipe_y};
        const double pipe_width = picture_.running ? 2.6 * ink_.stroke : 1.6 * ink_.stroke;
        QPen riser = pen_of(picture_.running ? ink_.water : ink_.line, pipe_width);
        riser.setJoinStyle(Qt::RoundJoin);
        painter_.setPen(riser);
        painter_.drawPolyline(QPolygonF{} << QPointF{place_.pump.x(), place_.pump.y() - r} << elbow
                                          << QPointF{place_.along(0.0), pipe_y});

        paint_pump(painter_, place_.pump, r, picture_.running, ink_);
    }

    QPainter& painter_;
    const BankPicture& picture_;
    const Ink& ink_;
    BankGeometry place_;
};

}  // namespace

double BankGeometry::along(double share_of_way) const {
    return pump_on_left ? pad.left() + share_of_way * pad.width() : pad.right() - share_of_way * pad.width();
}

BankGeometry bank_geometry(const QRectF& area, bool pump_on_left, double aspect, double stroke) {
    const QRectF inner = area.adjusted(stroke, stroke, -stroke, -stroke);
    const double unit = std::min(inner.height(), inner.width() / 2.0);
    const double side = 0.26 * unit;  // for riser, pump and sump beside the pad
    const double header = 0.09 * unit;
    const double outlet = 0.05 * unit;
    const double drip = 0.13 * unit;
    const double gutter = 0.05 * unit;
    const double sump_depth = 0.2 * unit;

    const double pad_width = inner.width() - side;
    const double room = inner.height() - header - outlet - drip - sump_depth;
    // A true shape would leave a bank of thirty metres as a line: its height is drawn at least at half of the
    // room.
    const double pad_height = aspect > 0.0 ? std::clamp(pad_width / aspect, 0.5 * room, room) : room;
    const double top = inner.top() + (room - pad_height) / 2.0;

    BankGeometry place;
    place.pump_on_left = pump_on_left;
    const double pad_left = pump_on_left ? inner.left() + side : inner.left();
    place.header = QRectF{pad_left, top, pad_width, header};
    place.pad = QRectF{pad_left, place.header.bottom() + outlet, pad_width, pad_height};
    const double gutter_top = place.pad.bottom() + drip;
    place.gutter = QRectF{pad_left, gutter_top, pad_width, gutter};
    const double sump_width = 0.96 * side;
    place.sump =
        QRectF{pump_on_left ? inner.left() : inner.right() - sump_width, gutter_top, sump_width, sump_depth};
    if (pump_on_left) {
        place.gutter.setLeft(place.sump.right());
    } else {
        place.gutter.setRight(place.sump.left());
    }
    place.pump_radius = 0.085 * unit;
    place.pump = QPointF{place.sump.center().x() + (pump_on_left ? -0.06 : 0.06) * side,
                         place.sump.bottom() - 0.5 * sump_depth};
    return place;
}

void paint_bank(QPainter& painter, const QRectF& area, const BankPicture& picture, const Ink& ink) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    BankDrawing{painter, area, picture, ink}.paint();
    painter.restore();
}

}  // namespace wetfront::ui
