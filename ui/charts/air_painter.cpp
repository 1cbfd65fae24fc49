// SPDX-License-Identifier: Apache-2.0
#include "charts/air_painter.h"

#include <QLineF>
#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

#include "charts/axis_ticks.h"

namespace wetfront::ui {
namespace {

constexpr double clear_of_mark = 1.7;  ///< half the side of what a mark needs, over its radius
constexpr double widest_label = 0.6;   ///< over the plot's width

bool is_drawable(const AirAxis& axis) {
    return std::isfinite(axis.from) && std::isfinite(axis.to) && axis.to > axis.from;
}

bool is_inside(const AirAxis& axis, double value) {
    return value >= axis.from && value <= axis.to;
}

bool is_inside(const AirPicture& picture, QPointF state) {
    return is_inside(picture.temperature, state.x()) && is_inside(picture.water, state.y());
}

const AirState* drawn(const AirPicture& picture, const std::optional<AirState>& state) {
    return state && is_inside(picture, state->at) ? &*state : nullptr;
}

// Whole numbers.
std::vector<double> ticks_on(const AirAxis& axis, double length, double least) {
    return ticks_of(axis.from, axis.to, length, least, 1.0).values;
}

bool crosses_box(const QLineF& line, const QRectF& box) {
    if (box.contains(line.p1()) || box.contains(line.p2())) {
        return true;
    }
    const QLineF falling{box.topLeft(), box.bottomRight()};
    const QLineF rising{box.bottomLeft(), box.topRight()};
    return line.intersects(falling, nullptr) == QLineF::BoundedIntersection ||
           line.intersects(rising, nullptr) == QLineF::BoundedIntersection;
}

QPointF nearest_in(const QRectF& box, QPointF point) {
    return {std::clamp(point.x(), box.left(), box.right()), std::clamp(point.y(), box.top(), box.bottom())};
}

// Finds places for labels one after the other.
class LabelPlacer {
public:
    LabelPlacer(const QRectF& room, double line_height) : room_{room}, line_height_{line_height} {}

    void add_mark(QPointF centre, double half_side) {
        marks_.push_back(centre);
        taken_.push_back(
            QRectF{centre.x() - half_side, centre.y() - half_side, 2.0 * half_side, 2.0 * half_side});
    }
    void add_line(const QPolygonF& line, int weight = 1) { lines_.push_back({line, weight}); }

    /// Moves the label beside `anchor`, `gap` away from it, or further out up to `reach`, and keeps it clear
    /// of whatever comes later. How far the place is from a good one; nothing, and not moved, where there is
    /// none.
    std::optional<double> place(PlacedLabel& label, QPointF anchor, double gap, double reach) {
        constexpr int directions = 16;
        const QSizeF size = label.box.size();
        double least_cost = 0.0;
        std::optional<QRectF> best;
        for (double away = gap; away <= reach && (!best || away < least_cost); away += 0.5 * line_height_) {
            for (int i = 0; i < directions; ++i) {
                const double angle = 2.0 * std::numbers::pi * i / directions;
                const QPointF direction{std::cos(angle), -std::sin(angle)};
                // Its nearest point lies about that far away.
                QRectF box{QPointF{}, size};
                box.moveCenter(
                    anchor + away * direction +
                    QPointF{direction.x() * size.width() / 2.0, direction.y() * size.height() / 2.0});
                if (!is_free(box)) {
                    continue;
                }
                const double cost =
                    away + line_height_ * (2.5 * crossings(box) + 2.0 * nearer_marks(box, anchor));
                if (!best || cost < least_cost) {
                    least_cost = cost;
                    best = box;
                }
            }
        }
        if (!best) {
            return std::nullopt;
        }
        label.box = *best;
        taken_.push_back(*best);
        return least_cost;
    }

private:
    struct Line {
        QPolygonF points;
        int weight;
    };

    [[nodiscard]] bool is_free(const QRectF& box) const {
        const double margin = 0.3 * line_height_;
        return room_.contains(box) && std::none_of(taken_.begin(), taken_.end(), [&](const QRectF& other) {
                   return other.adjusted(-margin, 0.0, margin, 0.0).intersects(box);
               });
    }

    [[nodiscard]] int crossings(const QRectF& box) const {
        int count = 0;
        for (const Line& line : lines_) {
            for (int i = 1; i < line.points.size(); ++i) {
                if (crosses_box(QLineF{line.points[i - 1], line.points[i]}, box)) {
                    count += line.weight;
                    break;
                }
            }
        }
        return count;
    }

    // Marks that the label would be taken for theirs.
    [[nodiscard]] int nearer_marks(const QRectF& box, QPointF anchor) const {
        const double own = QLineF{anchor, nearest_in(box, anchor)}.length();
        return static_cast<int>(std::count_if(marks_.begin(), marks_.end(), [&](QPointF mark) {
            return QLineF{mark, nearest_in(box, mark)}.length() < own - 1.0;
        }));
    }

    QRectF room_;
    double line_height_;
    std::vector<QPointF> marks_;
    std::vector<QRectF> taken_;
    std::vector<Line> lines_;
};

// Where a curve, followed to its end, is last inside the axes.
std::optional<QPointF> end_inside(const AirPicture& picture, const QPolygonF& points) {
    for (int i = static_cast<int>(points.size()) - 1; i >= 0; --i) {
        if (!is_inside(picture, points[i])) {
            continue;
        }
        if (i + 1 == points.size()) {
            return points[i];
        }
        // Halving finds where the line to the next point leaves.
        QPointF inside = points[i];
        QPointF outside = points[i + 1];
        constexpr int halvings = 20;
        for (int n = 0; n < halvings; ++n) {
            const QPointF middle = (inside + outside) / 2.0;
            (is_inside(picture, middle) ? inside : outside) = middle;
        }
        return inside;
    }
    return std::nullopt;
}

QPolygonF on_page(const AirGeometry& place, const QPolygonF& points) {
    QPolygonF line;
    for (const QPointF& point : points) {
        if (std::isfinite(point.x()) && std::isfinite(point.y())) {
            line << place.at(point);
        }
    }
    return line;
}

struct StateLabels {
    LabelPlacer placer;  ///< with these labels in it
    std::vector<PlacedLabel> labels;
    std::vector<QLineF> leaders;
    double cost = 0.0;
};

// In the order given; what finds no room costs more than any place.
StateLabels place_states(LabelPlacer placer, const std::vector<const AirState*>& states,
                         const AirGeometry& place, const QFontMetricsF& metrics) {
    StateLabels out{std::move(placer), {}, {}, 0.0};
    const double clear = clear_of_mark * place.mark_radius;
    const double reach = std::hypot(place.plot.width(), place.plot.height());
    for (const AirState* state : states) {
        if (state->label.isEmpty()) {
            continue;
        }
        PlacedLabel label = label_sized(state->label, widest_label * place.plot.width(), metrics);
        const QPointF mark = place.at(state->at);
        const auto cost = out.placer.place(label, mark, 1.1 * clear, reach);
        out.cost += cost.value_or(100.0 * reach);
        if (!cost) {
            continue;
        }
        out.labels.push_back(label);
        const QLineF leader{mark, nearest_in(label.box, mark)};
        if (leader.length() > clear + metrics.height()) {
            out.leaders.push_back(QLineF{leader.pointAt(clear / leader.length()), leader.p2()});
            out.placer.add_line(QPolygonF{} << leader.p1() << leader.p2());
        }
    }
    return out;
}

void place_labels(AirGeometry& place, const AirPicture& picture, const QFontMetricsF& metrics,
                  double stroke) {
    LabelPlacer placer{place.plot.adjusted(2.0 * stroke, stroke, -stroke, -2.0 * stroke), metrics.height()};
    for (const AirCurve& curve : picture.curves) {
        placer.add_line(on_page(place, curve.points), curve.kind == AirCurveKind::saturation ? 2 : 1);
    }
    std::vector<const AirState*> states;
    const AirState* before = nullptr;
    for (const auto* given : {&picture.outside, &picture.behind_pad, &picture.house}) {
        const AirState* state = drawn(picture, *given);
        if (state != nullptr) {
            states.push_back(state);
            placer.add_mark(place.at(state->at), clear_of_mark * place.mark_radius);
            if (before != nullptr) {
                placer.add_line(QPolygonF{} << place.at(before->at) << place.at(state->at), 2);
            }
        }
        before = state;
    }
    // Whoever comes first takes the best place: all orders of at most three are tried.
    std::vector<std::size_t> order(states.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::optional<StateLabels> best;
    do {
        std::vector<const AirState*> in_order;
        for (const std::size_t i : order) {
            in_order.push_back(states[i]);
        }
        StateLabels placed = place_states(placer, in_order, place, metrics);
        if (!best || placed.cost < best->cost) {
            best = std::move(placed);
        }
    } while (std::next_permutation(order.begin(), order.end()));
    place.labels = best->labels;
    place.leaders = best->leaders;
    for (const AirCurve& curve : picture.curves) {
        const auto end = end_inside(picture, curve.points);
        if (!end || curve.label.isEmpty()) {
            continue;
        }
        PlacedLabel label = label_sized(curve.label, widest_label * place.plot.width(), metrics);
        // A label further away would not be read as the curve's.
        if (best->placer.place(label, place.at(*end), 3.0 * stroke, 2.0 * metrics.height())) {
            place.labels.push_back(label);
        }
    }
}

class AirDrawing {
public:
    AirDrawing(QPainter& painter, const AirPicture& picture, const Ink& ink, AirGeometry place)
        : painter_{painter}, picture_{picture}, ink_{ink}, place_{std::move(place)} {}

    void paint() {
        painter_.fillRect(place_.plot, ink_.ground);
        painter_.save();
        painter_.setClipRect(place_.plot, Qt::IntersectClip);
        for (const AirCurve& curve : picture_.curves) {
            painter_.setPen(pen_for(curve.kind));
            painter_.drawPolyline(on_page(place_, curve.points));
        }
        painter_.restore();
        paint_axes();
        const AirState* outside = drawn(picture_, picture_.outside);
        const AirState* behind_pad = drawn(picture_, picture_.behind_pad);
        const AirState* house = drawn(picture_, picture_.house);
        if (outside != nullptr && behind_pad != nullptr) {
            arrow(outside->at, behind_pad->at, pen_of(ink_.water, 2.4 * ink_.stroke), true);
        }
        if (behind_pad != nullptr && house != nullptr) {
            arrow(behind_pad->at, house->at, pen_of(ink_.warm, 1.2 * ink_.stroke), false);
        }
        // From the largest to the smallest, so that each is seen where they lie on one another.
        if (house != nullptr) {
            mark_house(place_.at(house->at));
        }
        if (outside != nullptr) {
            mark_outside(place_.at(outside->at));
        }
        if (behind_pad != nullptr) {
            mark_behind_pad(place_.at(behind_pad->at));
        }
        painter_.setPen(pen_of(ink_.line, 0.6 * ink_.stroke));
        for (const QLineF& leader : place_.leaders) {
            painter_.drawLine(leader);
        }
        painter_.setPen(ink_.line);
        for (const PlacedLabel& label : place_.labels) {
            painter_.fillRect(label.box, ink_.ground);
            paint_label(painter_, label);
        }
    }

private:
    [[nodiscard]] QPen pen_for(AirCurveKind kind) const {
        switch (kind) {
            case AirCurveKind::saturation:
                return pen_of(ink_.line, 1.6 * ink_.stroke);
            case AirCurveKind::humidity:
                return pen_of(ink_.line, 0.6 * ink_.stroke);
            case AirCurveKind::wet_bulb: {
                QPen pen = pen_of(ink_.water, 0.9 * ink_.stroke);
                pen.setDashPattern({2.0, 3.0});
                return pen;
            }
        }
        return {};
    }

    void paint_axes() {
        painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
        painter_.drawPolyline(QPolygonF{} << place_.plot.topLeft() << place_.plot.bottomLeft()
                                          << place_.plot.bottomRight());
        const double length = 0.5 * place_.mark_radius;
        for (const auto& tick : place_.temperature_ticks) {
            painter_.drawLine(tick.at, tick.at + QPointF{0.0, length});
            paint_label(painter_, tick.label);
        }
        for (const auto& tick : place_.water_ticks) {
            painter_.drawLine(tick.at, tick.at - QPointF{length, 0.0});
            paint_label(painter_, tick.label);
        }
        for (const PlacedLabel& title : place_.titles) {
            paint_label(painter_, title);
        }
    }

    // Between the marks; filled at its tip, or open.
    void arrow(QPointF from_state, QPointF to_state, const QPen& pen, bool filled) {
        const QLineF whole{place_.at(from_state), place_.at(to_state)};
        const double clear = 1.5 * place_.mark_radius;
        const double head = 1.1 * place_.mark_radius;
        if (whole.length() < 2.0 * clear + 1.3 * head) {
            return;
        }
        const QPointF along = (whole.p2() - whole.p1()) / whole.length();
        const QPointF across{-along.y(), along.x()};
        const QPointF tip = whole.p2() - clear * along;
        const QPointF neck = tip - head * along;
        const QPolygonF barbs = QPolygonF{} << neck + 0.6 * head * across << tip
                                            << neck - 0.6 * head * across;
        painter_.setPen(pen);
        painter_.drawLine(whole.p1() + clear * along, filled ? neck : tip);
        if (filled) {
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(pen.color());
            painter_.drawPolygon(barbs);
        } else {
            painter_.drawPolyline(barbs);
        }
    }

    void mark_house(QPointF centre) {
        const double r = 1.4 * place_.mark_radius;
        painter_.setPen(pen_of(ink_.line, 1.2 * ink_.stroke));
        painter_.setBrush(ink_.ground);
        painter_.drawPolygon(QPolygonF{} << centre + QPointF{-r, r} << centre + QPointF{-r, -0.2 * r}
                                         << centre + QPointF{0.0, -r} << centre + QPointF{r, -0.2 * r}
                                         << centre + QPointF{r, r});
    }

    void mark_outside(QPointF centre) {
        const double r = 1.05 * place_.mark_radius;
        painter_.setPen(pen_of(ink_.line, 1.2 * ink_.stroke));
        painter_.setBrush(ink_.ground);
        painter_.drawEllipse(centre, r, r);
    }

    void mark_behind_pad(QPointF centre) {
        const double size = 2.3 * place_.mark_radius;
        paint_drop(painter_, centre - QPointF{0.0, 0.6 * size}, size, ink_.water);
    }

    QPainter& painter_;
    const AirPicture& picture_;
    const Ink& ink_;
    AirGeometry place_;
};

}  // namespace

QPointF AirGeometry::at(QPointF state) const {
    const double right = (state.x() - temperature.from) / (temperature.to - temperature.from);
    const double up = (state.y() - water.from) / (water.to - water.from);
    return {plot.left() + right * plot.width(), plot.bottom() - up * plot.height()};
}

AirGeometry air_geometry(const QRectF& area, const AirPicture& picture, const QFontMetricsF& metrics,
                         double stroke) {
    const QRectF inner = area.adjusted(stroke, stroke, -stroke, -stroke);
    const double height = metrics.height();
    AirGeometry place;
    place.temperature = picture.temperature;
    place.water = picture.water;
    place.mark_radius = 0.42 * height;
    const double tick = 0.6 * place.mark_radius;

    const double title_above = picture.water.title.isEmpty() ? 0.5 * height : 1.6 * height;
    const double below = tick + height + (picture.temperature.title.isEmpty() ? 0.0 : height);
    const double plot_height = inner.height() - title_above - below;
    const auto water_ticks = ticks_on(picture.water, plot_height, 1.6 * height);
    double widest = 0.0;
    for (const double value : water_ticks) {
        widest = std::max(widest, metrics.horizontalAdvance(QString::number(std::lround(value))));
    }
    const double before = widest + tick + 0.3 * height;
    place.plot = QRectF{inner.left() + before, inner.top() + title_above,
                        inner.width() - before - 0.75 * height, plot_height};

    for (const double value : water_ticks) {
        const QPointF at{place.plot.left(), place.at({picture.temperature.from, value}).y()};
        PlacedLabel label = label_sized(QString::number(std::lround(value)), inner.width(), metrics);
        label.box.moveTopRight({at.x() - tick - 0.2 * height, at.y() - 0.5 * height});
        place.water_ticks.push_back({at, label});
    }
    for (const double value : ticks_on(picture.temperature, place.plot.width(), 3.0 * height)) {
        const QPointF at{place.at({value, picture.water.from}).x(), place.plot.bottom()};
        PlacedLabel label = label_sized(QString::number(std::lround(value)), inner.width(), metrics);
        // Not below the lowest number of the other axis, and not out of the picture.
        const double leftmost = place.plot.left() - 0.25 * height;
        const double rightmost = std::max(leftmost, inner.right() - label.box.width());
        label.box.moveTopLeft(
            {std::clamp(at.x() - label.box.width() / 2.0, leftmost, rightmost), at.y() + tick});
        place.temperature_ticks.push_back({at, label});
    }
    if (!picture.water.title.isEmpty()) {
        PlacedLabel title = label_sized(picture.water.title, inner.width(), metrics);
        title.box.moveTopLeft(inner.topLeft());
        place.titles.push_back(title);
    }
    if (!picture.temperature.title.isEmpty()) {
        PlacedLabel title = label_sized(picture.temperature.title, inner.width(), metrics);
        title.box.moveBottomRight(inner.bottomRight());
        place.titles.push_back(title);
    }
    place_labels(place, picture, metrics, stroke);
    return place;
}

void paint_air(QPainter& painter, const QRectF& area, const AirPicture& picture, const Ink& ink,
               const QFont& font) {
    if (!is_drawable(picture.temperature) || !is_drawable(picture.water)) {
        return;
    }
    const QFontMetricsF metrics{font, painter.device()};
    AirGeometry place = air_geometry(area, picture, metrics, ink.stroke);
    if (place.plot.width() < metrics.height() || place.plot.height() < metrics.height()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    AirDrawing{painter, picture, ink, std::move(place)}.paint();
    painter.restore();
}

}  // namespace wetfront::ui
