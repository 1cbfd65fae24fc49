// SPDX-License-Identifier: Apache-2.0
#include "charts/header_painter.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>
#include <utility>

namespace wetfront::ui {
namespace {

constexpr double bar_strength = 0.56;
constexpr double spread_strength = 0.2;  ///< between the least and the most of a band
constexpr double bar_share = 0.62;       ///< of the way from one outlet to the next

// Only what can be drawn, from the pump's end on.
std::vector<OutletShare> drawable(std::vector<OutletShare> outlets) {
    outlets.erase(std::remove_if(outlets.begin(), outlets.end(),
                                 [](const OutletShare& outlet) {
                                     return !std::isfinite(outlet.at) || !std::isfinite(outlet.flow);
                                 }),
                  outlets.end());
    for (OutletShare& outlet : outlets) {
        outlet = {std::clamp(outlet.at, 0.0, 1.0), std::max(outlet.flow, 0.0)};
    }
    std::stable_sort(outlets.begin(), outlets.end(),
                     [](const OutletShare& a, const OutletShare& b) { return a.at < b.at; });
    return outlets;
}

// Indices, rising flow. At equal flow the far end counts as lower: it is looked at first.
std::vector<std::size_t> by_flow(const std::vector<OutletShare>& outlets) {
    std::vector<std::size_t> order(outlets.size());
    std::iota(order.rbegin(), order.rend(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return outlets[a].flow < outlets[b].flow; });
    return order;
}

std::vector<bool> lowest_quarter(const std::vector<OutletShare>& outlets) {
    std::vector<bool> low(outlets.size(), false);
    const auto order = by_flow(outlets);
    const std::size_t count = std::min(order.size(), std::max<std::size_t>(1, (order.size() + 2) / 4));
    for (std::size_t i = 0; i < count; ++i) {
        low[order[i]] = outlets[order[i]].flow <= 0.999;
    }
    return low;
}

// A stretch of the header with several outlets.
struct Cell {
    double from = 0.0;  ///< share of the way
    double to = 0.0;
    double least = 0.0;
    double most = 0.0;
    int outlets = 0;
    int low = 0;

    [[nodiscard]] bool is_low() const { return 2 * low > outlets; }
};

// Two outlets a cell or more, so that none is empty by chance of rounding.
std::vector<Cell> cells_of(const std::vector<OutletShare>& outlets, const std::vector<bool>& low,
                           double widest_count) {
    const auto count = static_cast<std::size_t>(
        std::max(1.0, std::min(widest_count, std::floor(0.5 * static_cast<double>(outlets.size())))));
    std::vector<Cell> cells(count);
    for (std::size_t i = 0; i < count; ++i) {
        cells[i].from = static_cast<double>(i) / static_cast<double>(count);
        cells[i].to = static_cast<double>(i + 1) / static_cast<double>(count);
    }
    for (std::size_t i = 0; i < outlets.size(); ++i) {
        Cell& cell =
            cells[std::min(static_cast<std::size_t>(outlets[i].at * static_cast<double>(count)), count - 1)];
        cell.least = cell.outlets == 0 ? outlets[i].flow : std::min(cell.least, outlets[i].flow);
        cell.most = std::max(cell.most, outlets[i].flow);
        ++cell.outlets;
        cell.low += low[i] ? 1 : 0;
    }
    return cells;
}

class HeaderDrawing {
public:
    HeaderDrawing(QPainter& painter, const HeaderPicture& picture, const Ink& ink, HeaderGeometry place)
        : painter_{painter},
          picture_{picture},
          ink_{ink},
          place_{std::move(place)},
          outlets_{drawable(picture.outlets)},
          low_{lowest_quarter(outlets_)} {}

    void paint() {
        painter_.fillRect(place_.face, ink_.ground);
        outline(place_.face, 0.6 * ink_.stroke);
        if (!outlets_.empty()) {
            if (place_.merged) {
                paint_band();
            } else {
                paint_bars();
            }
            painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
            const double mean_y = place_.below(1.0);
            painter_.drawLine(QPointF{place_.face.left(), mean_y}, QPointF{place_.face.right(), mean_y});
            mark_lowest();
        }
        paint_other();
        paint_pipe();
        painter_.setPen(ink_.line);
        for (const PlacedLabel& label : place_.labels) {
            paint_label(painter_, label);
        }
        for (const auto& entry : place_.legend) {
            paint_sign(entry.sign, entry.sign_box);
            painter_.setPen(ink_.line);
            paint_label(painter_, entry.label);
        }
    }

private:
    void outline(const QRectF& rect, double width) {
        painter_.setPen(pen_of(ink_.line, width));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(rect);
    }

    void hatch_inside(const QPainterPath& shape) {
        if (shape.isEmpty()) {
            return;
        }
        painter_.save();
        painter_.setClipPath(shape, Qt::IntersectClip);
        hatch(painter_, shape.boundingRect(), 3.2 * ink_.stroke, pen_of(ink_.water, 0.9 * ink_.stroke));
        painter_.restore();
    }

    // Filled, or hatched and framed: told apart without their colour.
    void paint_bars() {
        QPainterPath hatched;
        for (std::size_t i = 0; i < outlets_.size(); ++i) {
            const double x = place_.along(outlets_[i].at);
            const QRectF bar{QPointF{x - place_.bar_width / 2.0, place_.face.top()},
                             QPointF{x + place_.bar_width / 2.0, place_.below(outlets_[i].flow)}};
            if (bar.height() <= 0.0) {
                continue;
            }
            if (low_[i]) {
                hatched.addRect(bar);
            } else {
                painter_.fillRect(bar, tint(ink_.water, bar_strength));
            }
        }
        hatch_inside(hatched);
        painter_.setPen(pen_of(ink_.water, 0.5 * ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPath(hatched);
    }

    using Cells = std::vector<Cell>::const_iterator;

    // Neighbouring cells of one kind: one step a cell.
    [[nodiscard]] QPolygonF edge(Cells begin, Cells end, double Cell::*flow) const {
        QPolygonF steps;
        for (auto cell = begin; cell != end; ++cell) {
            const double y = place_.below((*cell).*flow);
            steps << QPointF{place_.along(cell->from), y} << QPointF{place_.along(cell->to), y};
        }
        return steps;
    }

    void paint_run(Cells begin, Cells end) {
        const QPolygonF least = edge(begin, end, &Cell::least);
        const QPolygonF most = edge(begin, end, &Cell::most);
        QPolygonF bars = least;
        bars << QPointF{least.back().x(), place_.face.top()} << QPointF{least.front().x(), place_.face.top()};
        QPolygonF spread = most;
        std::copy(least.rbegin(), least.rend(), std::back_inserter(spread));
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(tint(ink_.water, spread_strength));
        painter_.drawPolygon(spread);
        if (begin->is_low()) {
            QPainterPath shape;
            shape.addPolygon(bars);
            shape.closeSubpath();
            hatch_inside(shape);
        } else {
            painter_.setBrush(tint(ink_.water, bar_strength));
            painter_.drawPolygon(bars);
        }
        painter_.setPen(pen_of(ink_.water, 0.5 * ink_.stroke));
        painter_.drawPolyline(least);
        painter_.setPen(pen_of(ink_.water, ink_.stroke));
        painter_.drawPolyline(most);
    }

    void paint_band() {
        const auto cells = cells_of(outlets_, low_, std::floor(place_.face.width() / (2.0 * ink_.stroke)));
        for (auto begin = cells.begin(); begin != cells.end();) {
            const auto end = std::find_if(begin, cells.end(), [&](const Cell& cell) {
                return cell.is_low() != begin->is_low() || (cell.outlets == 0) != (begin->outlets == 0);
            });
            if (begin->outlets > 0) {
                paint_run(begin, end);
            }
            begin = end;
        }
    }

    [[nodiscard]] QPen other_pen() const {
        QPen pen{ink_.line, 1.3 * ink_.stroke, Qt::CustomDashLine, Qt::FlatCap};
        pen.setDashPattern({4.0, 2.5});
        return pen;
    }

    void paint_other() {
        QPolygonF line;
        for (const OutletShare& outlet : drawable(picture_.other)) {
            line << QPointF{place_.along(outlet.at), place_.below(outlet.flow)};
        }
        if (line.size() == 1) {
            const QPointF only = line.front();
            line = QPolygonF{} << only - QPointF{place_.bar_width, 0.0}
                               << only + QPointF{place_.bar_width, 0.0};
        }
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(other_pen());
        painter_.drawPolyline(line);
    }

    void paint_marker(QPointF tip, double size) {
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(ink_.line);
        painter_.drawPolygon(QPolygonF{} << tip << tip + QPointF{0.6 * size, size}
                                         << tip + QPointF{-0.6 * size, size});
    }

    void mark_lowest() {
        if (picture_.lowest.isEmpty()) {
            return;
        }
        const OutletShare& lowest = outlets_[by_flow(outlets_).front()];
        // An outlet at the very end: the whole of the marker stays below the face.
        const double half = 0.6 * place_.marker_size;
        const double x =
            std::clamp(place_.along(lowest.at), place_.face.left() + half, place_.face.right() - half);
        paint_marker(QPointF{x, place_.marker_top}, place_.marker_size);
    }

    void paint_pipe() {
        const QRectF& pipe = place_.pipe;
        painter_.fillRect(pipe, ink_.ground);
        painter_.fillRect(pipe, tint(ink_.water, 0.25));
        outline(pipe, ink_.stroke);
        const double r = place_.pump_radius;
        QPen riser = pen_of(ink_.water, 2.6 * ink_.stroke);
        riser.setJoinStyle(Qt::RoundJoin);
        painter_.setPen(riser);
        painter_.drawPolyline(
            QPolygonF{} << QPointF{place_.pump.x(), place_.pump.y() - r}
                        << QPointF{place_.pump.x(), pipe.center().y()}
                        << QPointF{place_.pump_on_left ? pipe.left() : pipe.right(), pipe.center().y()});
        paint_pump(painter_, place_.pump, r, true, ink_);
    }

    void paint_sign(HeaderSign sign, const QRectF& box) {
        switch (sign) {
            case HeaderSign::bars:
                painter_.fillRect(box, tint(ink_.water, bar_strength));
                return;
            case HeaderSign::low_quarter: {
                QPainterPath shape;
                shape.addRect(box);
                hatch_inside(shape);
                painter_.setPen(pen_of(ink_.water, 0.5 * ink_.stroke));
                painter_.setBrush(Qt::NoBrush);
                painter_.drawRect(box);
                return;
            }
            case HeaderSign::other:
            case HeaderSign::mean:
                painter_.setPen(sign == HeaderSign::other ? other_pen()
                                                          : pen_of(ink_.line, 0.8 * ink_.stroke));
                painter_.drawLine(QPointF{box.left(), box.center().y()},
                                  QPointF{box.right(), box.center().y()});
                return;
            case HeaderSign::lowest:
                paint_marker(QPointF{box.center().x(), box.top()}, box.height());
                return;
        }
    }

    QPainter& painter_;
    const HeaderPicture& picture_;
    const Ink& ink_;
    HeaderGeometry place_;
    std::vector<OutletShare> outlets_;
    std::vector<bool> low_;
};

// Two labels at the two ends of a line, or one below the other where the line is too short for both. Placed
// from 0, 0 on; the height they take.
double place_at_ends(std::vector<PlacedLabel>& labels, const QRectF& inner, const QString& at_pump,
                     const QString& at_far_end, bool pump_on_left, const QFontMetricsF& metrics) {
    double y = 0.0;
    double room = inner.width();
    const auto place = [&](const QString& text, bool left) {
        if (text.isEmpty()) {
            return;
        }
        PlacedLabel label = label_sized(text, inner.width(), metrics);
        if (label.box.width() > room) {
            y += metrics.height();
            room = inner.width();
        }
        label.box.moveTopLeft({left ? inner.left() : inner.right() - label.box.width(), y});
        room -= label.box.width() + metrics.height();
        labels.push_back(label);
    };
    const auto before = labels.size();
    place(at_pump, pump_on_left);
    place(at_far_end, !pump_on_left);
    return labels.size() > before ? y + metrics.height() : 0.0;
}

// Entries from left to right and on into the next line; placed from y = 0 on. The height they take.
double place_legend(std::vector<HeaderGeometry::LegendEntry>& legend, const QRectF& inner,
                    const HeaderPicture& picture, const QFontMetricsF& metrics) {
    const std::pair<HeaderSign, const QString&> texts[] = {{HeaderSign::bars, picture.bars_name},
                                                           {HeaderSign::other, picture.other_name},
                                                           {HeaderSign::low_quarter, picture.low_quarter},
                                                           {HeaderSign::mean, picture.mean},
                                                           {HeaderSign::lowest, picture.lowest}};
    const double height = metrics.height();
    double x = inner.left();
    double y = 0.0;
    for (const auto& [sign, text] : texts) {
        if (text.isEmpty()) {
            continue;
        }
        const double sign_width = (sign == HeaderSign::lowest ? 0.8 : 1.8) * height;
        const double before_text = sign_width + 0.35 * height;
        PlacedLabel label = label_sized(text, inner.width() - before_text, metrics);
        if (x > inner.left() && x + before_text + label.box.width() > inner.right()) {
            x = inner.left();
            y += height;
        }
        label.box.moveTopLeft({x + before_text, y});
        legend.push_back({sign, QRectF{x, y + 0.22 * height, sign_width, 0.56 * height}, label});
        x = label.box.right() + height;
    }
    return legend.empty() ? 0.0 : y + height;
}

}  // namespace

double HeaderGeometry::along(double share) const {
    const double room = face.width() - 1.4 * bar_width;
    const double way = 0.7 * bar_width + share * room;
    return pump_on_left ? face.left() + way : face.right() - way;
}

double HeaderGeometry::below(double flow) const {
    return face.top() + 0.95 * face.height() * flow / most_flow;
}

HeaderGeometry header_geometry(const QRectF& area, const HeaderPicture& picture, const QFontMetricsF& metrics,
                               double stroke) {
    const QRectF inner = area.adjusted(stroke, stroke, -stroke, -stroke);
    const double gap = 0.25 * metrics.height();
    const double unit = std::min(inner.height(), inner.width() / 2.0);

    HeaderGeometry place;
    place.pump_on_left = picture.pump_on_left;
    place.marker_size = picture.lowest.isEmpty() ? 0.0 : 0.5 * metrics.height();
    std::vector<PlacedLabel> above;
    std::vector<PlacedLabel> ends;
    double above_height =
        place_at_ends(above, inner, picture.inlet_head, picture.uniformity, picture.pump_on_left, metrics);
    double ends_height =
        place_at_ends(ends, inner, picture.first, picture.last, picture.pump_on_left, metrics);
    double legend_height = place_legend(place.legend, inner, picture, metrics);
    const double pipe_height = 0.085 * unit;
    const auto left_for_bars = [&] {
        return inner.height() - above_height - (above_height > 0.0 ? gap : 0.0) - pipe_height -
               place.marker_size - 2.0 * stroke - ends_height - (legend_height > 0.0 ? gap : 0.0) -
               legend_height;
    };
    const double least = inner.height() / 3.0;
    if (left_for_bars() < least) {
        place.legend.clear();
        legend_height = 0.0;
    }
    if (left_for_bars() < least) {
        ends.clear();
        ends_height = 0.0;
    }
    if (left_for_bars() < least) {
        above.clear();
        above_height = 0.0;
    }

    place.pump_radius = 0.075 * unit;
    const double side = 3.0 * place.pump_radius;
    const double face_left = inner.left() + (picture.pump_on_left ? side : 0.0);
    place.pipe = QRectF{face_left, inner.top() + above_height + (above_height > 0.0 ? gap : 0.0),
                        inner.width() - side, pipe_height};
    place.face = QRectF{face_left, place.pipe.bottom(), place.pipe.width(), left_for_bars()};
    place.pump =
        QPointF{picture.pump_on_left ? inner.left() + place.pump_radius : inner.right() - place.pump_radius,
                place.face.bottom() - place.pump_radius};
    place.marker_top = place.face.bottom() + stroke;

    const auto outlets = drawable(picture.outlets);
    const double pitch = place.face.width() / std::max(1.0, static_cast<double>(outlets.size()));
    place.merged = pitch < 4.0 * stroke;
    place.bar_width = place.merged ? 0.0 : std::min(bar_share * pitch, 12.0 * stroke);
    for (const OutletShare& outlet : outlets) {
        place.most_flow = std::max(place.most_flow, outlet.flow);
    }
    for (const OutletShare& outlet : drawable(picture.other)) {
        place.most_flow = std::max(place.most_flow, outlet.flow);
    }

    const double ends_top = place.marker_top + place.marker_size + stroke;
    const double legend_top = ends_top + ends_height + gap;
    for (auto& label : above) {
        label.box.translate(0.0, inner.top());
        place.labels.push_back(label);
    }
    for (auto& label : ends) {
        label.box.translate(0.0, ends_top);
        place.labels.push_back(label);
    }
    for (auto& entry : place.legend) {
        entry.sign_box.translate(0.0, legend_top);
        entry.label.box.translate(0.0, legend_top);
    }
    return place;
}

void paint_header(QPainter& painter, const QRectF& area, const HeaderPicture& picture, const Ink& ink,
                  const QFont& font) {
    const QFontMetricsF metrics{font, painter.device()};
    HeaderGeometry place = header_geometry(area, picture, metrics, ink.stroke);
    if (place.face.width() < 4.0 * metrics.height() || place.face.height() < 2.0 * ink.stroke) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    HeaderDrawing{painter, picture, ink, std::move(place)}.paint();
    painter.restore();
}

}  // namespace wetfront::ui
