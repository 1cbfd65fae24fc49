// SPDX-License-Identifier: Apache-2.0
#include "charts/day_painter.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>

#include "charts/axis_ticks.h"

namespace wetfront::ui {
namespace {

constexpr double finest_degree = 0.1;
constexpr double hours_a_day = 24.0;
constexpr int hours_a_tick = 3;

bool is_drawable(const DayPicture& picture) {
    const auto count = picture.outside.size();
    return std::isfinite(picture.least) && std::isfinite(picture.most) && picture.most > picture.least &&
           count > 0 && !picture.plans.empty() &&
           std::all_of(picture.plans.begin(), picture.plans.end(), [&](const DayPlan& plan) {
               return plan.behind_pad.size() == count && plan.house.size() == count &&
                      plan.wet_share.size() == count && plan.pumping.size() == count;
           });
}

bool is_free(const QRectF& box, const std::vector<PlacedLabel>& labels) {
    return std::none_of(labels.begin(), labels.end(),
                        [&](const PlacedLabel& other) { return other.box.intersects(box); });
}

// Where it is hottest outside the lines are farthest apart: above its line there, or below it.
void name_line(DayGeometry& place, const DayPicture& picture, const std::vector<double>& line,
               const QString& text, const QFontMetricsF& metrics) {
    if (text.isEmpty()) {
        return;
    }
    const auto slot = static_cast<std::size_t>(
        std::max_element(picture.outside.begin(), picture.outside.end()) - picture.outside.begin());
    const QPointF at = place.at(slot, line.size(), line[slot]);
    PlacedLabel label = label_sized(text, 0.5 * place.air.width(), metrics);
    const double gap = 0.2 * metrics.height();
    const auto limit_y = picture.limit ? std::optional{place.at(0, 1, *picture.limit).y()} : std::nullopt;
    const double left = std::clamp(at.x() - label.box.width() / 2.0, place.air.left(),
                                   std::max(place.air.left(), place.air.right() - label.box.width()));
    const double above = at.y() - label.box.height() - gap;
    // Farther up where the limit is in the way.
    for (const double top :
         {above, at.y() + gap, above - label.box.height(), at.y() + 3.0 * gap + label.box.height()}) {
        label.box.moveTopLeft({left, top});
        const bool crossed =
            limit_y && *limit_y > label.box.top() - 0.2 * gap && *limit_y < label.box.bottom() + 0.2 * gap;
        if (!crossed && place.air.contains(label.box) && is_free(label.box, place.labels)) {
            place.labels.push_back(label);
            return;
        }
    }
}

void add_hours(DayGeometry& place, const DayPicture& picture, const QFontMetricsF& metrics, double below) {
    for (int hour = 0; hour <= static_cast<int>(hours_a_day); hour += hours_a_tick) {
        const double x = place.air.left() + place.air.width() * hour / hours_a_day;
        const int shown = (static_cast<int>(std::lround(picture.from_hour)) + hour) % 24;
        PlacedLabel label = label_sized(QStringLiteral("%1:00").arg(shown, 2, 10, QLatin1Char{'0'}),
                                        place.air.width(), metrics);
        label.box.moveTopLeft(
            {std::clamp(x - label.box.width() / 2.0, place.air.left(), place.air.right() - label.box.width()),
             below});
        const bool free =
            place.hour_ticks.empty() ||
            place.hour_ticks.back().label.box.right() + 0.5 * metrics.height() < label.box.left();
        place.hour_ticks.push_back({x, free ? label : PlacedLabel{place.hour_ticks.back().label.box, {}}});
    }
}

/// Steps of a share over the slots, filled down to the lower edge.
QPainterPath steps_of(const QRectF& lane, const std::vector<double>& shares, bool closed) {
    QPainterPath path;
    const double wide = lane.width() / static_cast<double>(shares.size());
    const auto y = [&](double share) { return lane.bottom() - lane.height() * std::clamp(share, 0.0, 1.0); };
    path.moveTo(lane.left(), closed ? lane.bottom() : y(shares.front()));
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const double x = lane.left() + wide * static_cast<double>(i);
        path.lineTo(x, y(shares[i]));
        path.lineTo(x + wide, y(shares[i]));
    }
    if (closed) {
        path.lineTo(lane.right(), lane.bottom());
        path.closeSubpath();
    }
    return path;
}

void paint_line(QPainter& painter, const DayGeometry& place, const std::vector<double>& values,
                const QPen& pen) {
    QPolygonF line;
    for (std::size_t i = 0; i < values.size(); ++i) {
        line << place.at(i, values.size(), values[i]);
    }
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line);
}

/// The last plan is drawn through and thick, the one before it thin and in dashes.
QPen plan_pen(const QColor& color, double stroke, bool last) {
    QPen pen = pen_of(color, last ? 1.8 * stroke : stroke);
    if (!last) {
        pen.setDashPattern({5.0, 3.0});
    }
    return pen;
}

void paint_axes(QPainter& painter, const DayGeometry& place, const Ink& ink) {
    painter.setPen(pen_of(ink.faint, 0.6 * ink.stroke));
    for (const auto& tick : place.value_ticks) {
        painter.drawLine(QPointF{place.air.left(), tick.at}, QPointF{place.air.right(), tick.at});
    }
    const double bottom = place.pumps.back().bottom();
    for (const auto& tick : place.hour_ticks) {
        painter.drawLine(QPointF{tick.at, place.air.top()}, QPointF{tick.at, bottom});
    }
    painter.setPen(pen_of(ink.line, 0.8 * ink.stroke));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place.air);
    painter.drawRect(place.wet);
    for (const auto& lane : place.pumps) {
        painter.drawRect(lane);
    }
}

}  // namespace

QPointF DayGeometry::at(std::size_t slot, std::size_t count, double value) const {
    const double x =
        air.left() + air.width() * (static_cast<double>(slot) + 0.5) / static_cast<double>(count);
    return {x, air.bottom() - air.height() * (value - least) / (most - least)};
}

DayGeometry day_geometry(const QRectF& area, const DayPicture& picture, const QFontMetricsF& metrics,
                         double stroke) {
    const QRectF inner = area.adjusted(stroke, stroke, -stroke, -stroke);
    const double height = metrics.height();
    DayGeometry place;
    place.least = picture.least;
    place.most = picture.most;
    double names = 0.0;
    for (const auto& plan : picture.plans) {
        names = std::max(names, metrics.horizontalAdvance(plan.label));
    }
    const auto lanes = static_cast<double>(picture.plans.size());
    const double lane = std::max(1.1 * height, 0.05 * inner.height());
    const double wet = std::max(2.0 * height, 0.13 * inner.height());
    // From the top: title, air, title, wet share, title, a lane for each plan, hours.
    const double air =
        inner.height() - 3.0 * 1.3 * height - wet - lanes * (lane + 0.3 * height) - 1.5 * height;
    const auto ticks = ticks_of(picture.least, picture.most, air, 1.6 * height, finest_degree);
    std::vector<PlacedLabel> numbers;
    double before = names;
    for (const double value : ticks.values) {
        auto text = QString::number(value == 0.0 ? 0.0 : value, 'f', ticks.decimals);
        numbers.push_back(
            label_sized(text.replace(QLatin1Char{'.'}, picture.decimal_mark), inner.width(), metrics));
        before = std::max(before, numbers.back().box.width());
    }
    const double left = inner.left() + before + 0.6 * height;
    const double width = inner.right() - left - 0.5 * height;
    double y = inner.top();
    const auto title = [&](const QString& text) {
        auto label = label_sized(text, width, metrics);
        label.box.moveTopLeft({left, y});
        place.labels.push_back(label);
        y += 1.3 * height;
    };
    title(picture.title);
    place.air = QRectF{left, y, width, air};
    y = place.air.bottom();
    title(picture.wet_label);
    place.wet = QRectF{left, y, width, wet};
    y = place.wet.bottom();
    title(picture.pump_label);
    for (const auto& plan : picture.plans) {
        place.pumps.emplace_back(left, y, width, lane);
        auto name = label_sized(plan.label, before, metrics);
        name.box.moveTopRight({left - 0.4 * height, y + (lane - height) / 2.0});
        place.labels.push_back(name);
        y += lane + 0.3 * height;
    }
    if (air <= 0.0 || width <= 0.0) {
        return place;
    }
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const double at = place.at(0, 1, ticks.values[i]).y();
        numbers[i].box.moveTopRight({left - 0.4 * height, at - 0.5 * height});
        place.value_ticks.push_back({at, numbers[i]});
    }
    add_hours(place, picture, metrics, y);
    if (picture.limit && *picture.limit > picture.least && *picture.limit < picture.most) {
        auto label = label_sized(picture.limit_label, 0.5 * width, metrics);
        label.box.moveBottomLeft({left + 0.3 * height, place.at(0, 1, *picture.limit).y() - stroke});
        if (place.air.contains(label.box)) {
            place.labels.push_back(label);
        }
    }
    const auto& last = picture.plans.back();
    name_line(place, picture, picture.outside, picture.outside_label, metrics);
    name_line(place, picture, last.house, picture.house_label, metrics);
    name_line(place, picture, last.behind_pad, picture.behind_label, metrics);
    return place;
}

void paint_day(QPainter& painter, const QRectF& area, const DayPicture& picture, const Ink& ink,
               const QFont& font) {
    if (!is_drawable(picture)) {
        return;
    }
    const QFontMetricsF metrics{font};
    const auto place = day_geometry(area, picture, metrics, ink.stroke);
    if (place.air.height() < 2.0 * metrics.height() || place.air.width() < 4.0 * metrics.height()) {
        return;
    }
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    paint_axes(painter, place, ink);
    painter.save();
    painter.setClipRect(place.air, Qt::IntersectClip);
    if (picture.limit) {
        const double y = place.at(0, 1, *picture.limit).y();
        painter.setPen(pen_of(ink.line, ink.stroke));
        painter.drawLine(QPointF{place.air.left(), y}, QPointF{place.air.right(), y});
    }
    QPen outside = pen_of(ink.line, ink.stroke);
    outside.setDashPattern({1.0, 2.5});
    paint_line(painter, place, picture.outside, outside);
    for (std::size_t i = 0; i < picture.plans.size(); ++i) {
        const bool last = i + 1 == picture.plans.size();
        paint_line(painter, place, picture.plans[i].house, plan_pen(ink.warm, ink.stroke, last));
        paint_line(painter, place, picture.plans[i].behind_pad, plan_pen(ink.water, ink.stroke, last));
    }
    painter.restore();
    for (std::size_t i = 0; i < picture.plans.size(); ++i) {
        const auto& plan = picture.plans[i];
        const bool last = i + 1 == picture.plans.size();
        if (last) {
            painter.fillPath(steps_of(place.wet, plan.wet_share, true), tint(ink.water, 0.25));
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(plan_pen(ink.water, ink.stroke, last));
        painter.drawPath(steps_of(place.wet, plan.wet_share, false));
        painter.fillPath(steps_of(place.pumps[i], plan.pumping, true), ink.line_art ? ink.line : ink.water);
    }
    painter.setPen(pen_of(ink.line, ink.stroke));
    for (const auto* ticks : {&place.value_ticks, &place.hour_ticks}) {
        for (const auto& tick : *ticks) {
            paint_label(painter, tick.label);
        }
    }
    for (const auto& label : place.labels) {
        paint_label(painter, label);
    }
    painter.restore();
}

}  // namespace wetfront::ui
