// SPDX-License-Identifier: Apache-2.0
#include "charts/history_painter.h"

#include <QDate>
#include <QLineF>
#include <QPainterPath>
#include <QPen>
#include <QPolygonF>
#include <algorithm>
#include <array>
#include <cmath>

#include "charts/axis_ticks.h"

namespace wetfront::ui {
namespace {

constexpr int shapes = 10;
constexpr int patterns = signs_apart / shapes;
constexpr int most_event_rows = 3;
constexpr double finest_value = 1e-6;

bool is_drawable(const HistoryPicture& picture) {
    return std::isfinite(picture.from) && std::isfinite(picture.to) && picture.to > picture.from &&
           std::isfinite(picture.least) && std::isfinite(picture.most) && picture.most > picture.least;
}

bool in_sight(const HistoryPicture& picture, double day) {
    return day >= picture.from && day <= picture.to;
}

const QDate first_day{1970, 1, 1};

QDate date_of(double day) {
    return first_day.addDays(static_cast<qint64>(std::floor(day)));
}

double day_of(const QDate& date) {
    return static_cast<double>(first_day.daysTo(date));
}

QString number_text(double value, int decimals, const QString& decimal_mark) {
    // No tick reads "-0".
    QString text = QString::number(value == 0.0 ? 0.0 : value, 'f', decimals);
    return text.replace(QLatin1Char{'.'}, decimal_mark);
}

bool overlaps_any(const QRectF& box, const std::vector<PlacedLabel>& labels, double gap) {
    return std::any_of(labels.begin(), labels.end(), [&](const PlacedLabel& other) {
        return other.box.adjusted(-gap, 0.0, gap, 0.0).intersects(box);
    });
}

// Firsts of months, so many months apart that their names stand clear of each other.
void add_day_ticks(HistoryGeometry& place, const HistoryPicture& picture, const QFontMetricsF& metrics,
                   double below) {
    constexpr std::array steps{1, 3, 6, 12, 24, 60, 120, 240};
    constexpr double days_a_month = 365.25 / 12.0;
    const double a_day = place.plot.width() / (place.to - place.from);
    const auto wide = [&](int step) {
        const QString longest = step < 12 ? QStringLiteral("0000-00") : QStringLiteral("0000");
        return metrics.horizontalAdvance(longest) + 0.8 * metrics.height();
    };
    const auto step = std::find_if(steps.begin(), steps.end(),
                                   [&](int months) { return months * days_a_month * a_day >= wide(months); });
    if (step == steps.end()) {
        return;
    }
    const QDate from = date_of(picture.from);
    const int first_month = from.year() * 12 + from.month() - 1;
    for (int month = first_month - first_month % *step;; month += *step) {
        const QDate date{month / 12, month % 12 + 1, 1};
        const double day = day_of(date);
        if (day > picture.to) {
            return;
        }
        if (day < picture.from) {
            continue;
        }
        const double x = place.at(day, place.least).x();
        PlacedLabel label =
            label_sized(date.toString(*step < 12 ? QStringLiteral("yyyy-MM") : QStringLiteral("yyyy")),
                        place.plot.width(), metrics);
        label.box.moveTopLeft(
            {std::clamp(x - label.box.width() / 2.0, place.plot.left(),
                        std::max(place.plot.left(), place.plot.right() - label.box.width())),
             below});
        // One that was moved in at an edge may meet its neighbour.
        const bool free = place.day_ticks.empty() || !place.day_ticks.back().label.box.intersects(label.box);
        if (free) {
            place.day_ticks.push_back({x, label});
        }
    }
}

void add_season_names(HistoryGeometry& place, const HistoryPicture& picture, const QFontMetricsF& metrics,
                      double below) {
    for (const auto& season : picture.seasons) {
        const double from = std::max(season.from, picture.from);
        const double to = std::min(season.to, picture.to);
        if (to <= from) {
            continue;
        }
        PlacedLabel name = label_sized(season.label, place.plot.width(), metrics);
        const double middle = place.at((from + to) / 2.0, place.least).x();
        name.box.moveTopLeft({middle - name.box.width() / 2.0, below});
        if (name.box.left() >= place.plot.left() && name.box.right() <= place.plot.right() &&
            !overlaps_any(name.box, place.season_names, 0.4 * metrics.height())) {
            place.season_names.push_back(name);
        }
    }
}

// False if one found no room in so many rows.
bool add_event_names(HistoryGeometry& place, const HistoryPicture& picture, const QFontMetricsF& metrics,
                     int rows) {
    bool all = true;
    for (const auto& event : picture.events) {
        if (!in_sight(picture, event.day) || event.label.isEmpty()) {
            continue;
        }
        PlacedLabel name = label_sized(event.label, 0.5 * place.plot.width(), metrics);
        const double x = place.at(event.day, place.least).x();
        bool placed = false;
        for (int row = 1; row <= rows && !placed; ++row) {
            name.box.moveTopLeft({std::clamp(x - 0.2 * metrics.height(), place.plot.left(),
                                             place.plot.right() - name.box.width()),
                                  place.plot.top() - row * metrics.height()});
            placed = !overlaps_any(name.box, place.event_names, 0.5 * metrics.height());
        }
        if (placed) {
            place.event_names.push_back(name);
        }
        all = all && placed;
    }
    return all;
}

void add_limit_name(HistoryGeometry& place, const HistoryPicture& picture, const QFontMetricsF& metrics,
                    double stroke) {
    if (!picture.limit || picture.limit->label.isEmpty() || picture.limit->value < place.least ||
        picture.limit->value > place.most) {
        return;
    }
    PlacedLabel name = label_sized(picture.limit->label, 0.6 * place.plot.width(), metrics);
    const double y = place.at(place.from, picture.limit->value).y();
    const double above = y - 2.0 * stroke - name.box.height();
    name.box.moveTopLeft(
        {place.plot.left() + 2.0 * stroke, above > place.plot.top() + stroke ? above : y + 2.0 * stroke});
    if (place.plot.contains(name.box)) {
        place.limit_name = name;
    }
}

HistoryGeometry laid_out(const QRectF& area, const HistoryPicture& picture, const QFontMetricsF& metrics,
                         double stroke, int event_rows) {
    const QRectF inner = area.adjusted(stroke, stroke, -stroke, -stroke);
    const double height = metrics.height();
    HistoryGeometry place;
    place.from = picture.from;
    place.to = picture.to;
    place.least = picture.least;
    place.most = picture.most;
    place.mark_radius = 0.32 * height;
    const double tick = 0.3 * height;
    const double above = 1.3 * height + event_rows * height;
    const double below = tick + height + (picture.seasons.empty() ? 0.0 : height);
    const double plot_height = inner.height() - above - below;
    const auto ticks = ticks_of(picture.least, picture.most, plot_height, 1.6 * height, finest_value);
    std::vector<PlacedLabel> numbers;
    double widest = 0.0;
    for (const double value : ticks.values) {
        numbers.push_back(
            label_sized(number_text(value, ticks.decimals, picture.decimal_mark), inner.width(), metrics));
        widest = std::max(widest, numbers.back().box.width());
    }
    const double before = widest + tick + 0.4 * height;
    place.plot = QRectF{inner.left() + before, inner.top() + above, inner.width() - before - 0.5 * height,
                        plot_height};
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const double y = place.at(place.from, ticks.values[i]).y();
        numbers[i].box.moveTopRight({place.plot.left() - tick - 0.2 * height, y - 0.5 * height});
        place.value_ticks.push_back({y, numbers[i]});
    }
    place.title = label_sized(picture.title, inner.width(), metrics);
    place.title.box.moveTopLeft(inner.topLeft());
    add_day_ticks(place, picture, metrics, place.plot.bottom() + tick);
    add_season_names(place, picture, metrics, place.plot.bottom() + tick + height);
    add_limit_name(place, picture, metrics, stroke);
    return place;
}

QPen dashed(const QColor& color, double width, std::initializer_list<double> pattern) {
    QPen pen = pen_of(color, width);
    pen.setDashPattern(QList<qreal>(pattern.begin(), pattern.end()));
    return pen;
}

QPen line_pen(int sign, const QColor& color, double width) {
    switch (sign / shapes % patterns) {
        case 1:
            return dashed(color, width, {5.0, 3.0});
        case 2:
            return dashed(color, width, {1.5, 2.5});
        default:
            return pen_of(color, width);
    }
}

QPolygonF triangle(QPointF centre, double r) {
    return QPolygonF{} << centre + QPointF{0.0, -1.2 * r} << centre + QPointF{1.1 * r, 0.8 * r}
                       << centre + QPointF{-1.1 * r, 0.8 * r};
}

QPolygonF diamond(QPointF centre, double r) {
    const double far = 1.3 * r;
    return QPolygonF{} << centre + QPointF{0.0, -far} << centre + QPointF{far, 0.0}
                       << centre + QPointF{0.0, far} << centre + QPointF{-far, 0.0};
}

void paint_mark(QPainter& painter, QPointF centre, double r, int sign, const Ink& ink) {
    painter.setPen(pen_of(ink.line, ink.stroke));
    const auto fill = [&](bool filled) { painter.setBrush(filled ? ink.line : ink.ground); };
    const double side = 0.9 * r;
    const QRectF square{centre.x() - side, centre.y() - side, 2.0 * side, 2.0 * side};
    switch (sign % shapes) {
        case 0:
        case 5:
            fill(sign % shapes == 0);
            painter.drawEllipse(centre, r, r);
            break;
        case 1:
        case 6:
            fill(sign % shapes == 6);
            painter.drawRect(square);
            break;
        case 2:
        case 7:
            fill(sign % shapes == 2);
            painter.drawPolygon(triangle(centre, r));
            break;
        case 3:
        case 8:
            fill(sign % shapes == 8);
            painter.drawPolygon(diamond(centre, r));
            break;
        case 4:
            painter.setPen(pen_of(ink.line, 1.4 * ink.stroke));
            painter.drawLine(square.topLeft(), square.bottomRight());
            painter.drawLine(square.topRight(), square.bottomLeft());
            break;
        default:
            painter.setPen(pen_of(ink.line, 1.4 * ink.stroke));
            painter.drawLine(centre - QPointF{1.2 * r, 0.0}, centre + QPointF{1.2 * r, 0.0});
            painter.drawLine(centre - QPointF{0.0, 1.2 * r}, centre + QPointF{0.0, 1.2 * r});
            break;
    }
}

class HistoryDrawing {
public:
    HistoryDrawing(QPainter& painter, const HistoryPicture& picture, const Ink& ink, HistoryGeometry place)
        : painter_{painter}, picture_{picture}, ink_{ink}, place_{std::move(place)} {}

    void paint() {
        painter_.fillRect(place_.plot, ink_.ground);
        painter_.save();
        painter_.setClipRect(place_.plot, Qt::IntersectClip);
        for (const auto& season : picture_.seasons) {
            shade(season);
        }
        paint_grid();
        if (picture_.trend) {
            paint_band(*picture_.trend);
        }
        for (const auto& event : picture_.events) {
            const QPointF foot = place_.at(event.day, place_.least);
            painter_.setPen(dashed(ink_.line, 1.2 * ink_.stroke, {4.0, 2.5}));
            painter_.drawLine(QPointF{foot.x(), place_.plot.top()}, foot);
        }
        if (picture_.limit) {
            painter_.setPen(dashed(ink_.warm, 1.6 * ink_.stroke, {8.0, 2.5, 1.5, 2.5}));
            painter_.drawLine(place_.at(place_.from, picture_.limit->value),
                              place_.at(place_.to, picture_.limit->value));
        }
        if (picture_.trend) {
            paint_trend(*picture_.trend);
        }
        for (std::size_t i = 0; i < picture_.lines.size(); ++i) {
            const bool stands_out =
                picture_.lines.size() > 1 && picture_.picked && picture_.picked->line == i;
            paint_line(picture_.lines[i], stands_out ? 2.4 : 0.9);
        }
        for (const auto& line : picture_.lines) {
            paint_points(line);
        }
        paint_picked();
        painter_.restore();
        paint_axes();
    }

private:
    void shade(const HistorySeason& season) {
        const QRectF area{place_.at(season.from, place_.most), place_.at(season.to, place_.least)};
        const QRectF seen = area.intersected(place_.plot);
        if (ink_.line_art) {
            hatch(painter_, seen, 5.0 * ink_.stroke, pen_of(ink_.faint, 0.5 * ink_.stroke));
        } else if (!seen.isEmpty()) {
            painter_.fillRect(seen, tint(ink_.faint, 0.22));
        }
    }

    void paint_grid() {
        painter_.setPen(pen_of(tint(ink_.faint, 0.6), 0.5 * ink_.stroke));
        for (const auto& tick : place_.value_ticks) {
            painter_.drawLine(QPointF{place_.plot.left(), tick.at}, QPointF{place_.plot.right(), tick.at});
        }
    }

    [[nodiscard]] QPointF on_trend(const HistoryTrend& trend, double slope, double day) const {
        return place_.at(day, trend.at_middle + slope * (day - trend.middle));
    }

    void paint_band(const HistoryTrend& trend) {
        if (!trend.least || !trend.most) {
            return;
        }
        QPolygonF steep;
        QPolygonF flat;
        for (const double day : {trend.from, trend.middle, trend.to}) {
            steep << on_trend(trend, *trend.most, day);
            flat << on_trend(trend, *trend.least, day);
        }
        QPolygonF around = steep;
        std::for_each(flat.rbegin(), flat.rend(), [&](QPointF point) { around << point; });
        if (!ink_.line_art) {
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(tint(ink_.water, 0.16));
            painter_.drawPolygon(around);
        }
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(dashed(ink_.water, 0.7 * ink_.stroke, {2.0, 3.0}));
        painter_.drawPolyline(steep);
        painter_.drawPolyline(flat);
    }

    void paint_trend(const HistoryTrend& trend) {
        const double turn = std::clamp(trend.known_to, trend.from, trend.to);
        painter_.setPen(pen_of(ink_.water, 2.0 * ink_.stroke));
        painter_.drawLine(on_trend(trend, trend.slope, trend.from), on_trend(trend, trend.slope, turn));
        if (trend.to > turn) {
            painter_.setPen(dashed(ink_.water, 2.0 * ink_.stroke, {3.0, 2.0}));
            painter_.drawLine(on_trend(trend, trend.slope, turn), on_trend(trend, trend.slope, trend.to));
        }
    }

    [[nodiscard]] bool parted(double one_day, double other_day) const {
        return std::any_of(picture_.events.begin(), picture_.events.end(), [&](const HistoryEvent& event) {
            return one_day < event.day && event.day <= other_day;
        });
    }

    void paint_line(const HistoryLine& line, double width) {
        painter_.setPen(line_pen(line.sign, ink_.line, width * ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        for (std::size_t i = 1; i < line.points.size(); ++i) {
            const auto& before = line.points[i - 1];
            const auto& after = line.points[i];
            if (picture_.stepped) {
                painter_.drawPolyline(QPolygonF{} << place_.at(before.day, before.value)
                                                  << place_.at(after.day, before.value)
                                                  << place_.at(after.day, after.value));
            } else if (!parted(before.day, after.day)) {
                painter_.drawLine(place_.at(before.day, before.value), place_.at(after.day, after.value));
            }
        }
    }

    void paint_points(const HistoryLine& line) {
        for (const auto& point : line.points) {
            const QPointF centre = place_.at(point.day, point.value);
            if (point.half > 0.0) {
                const double cap = 0.8 * place_.mark_radius;
                painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
                const QPointF top = place_.at(point.day, point.value + point.half);
                const QPointF bottom = place_.at(point.day, point.value - point.half);
                painter_.drawLine(top, bottom);
                painter_.drawLine(top - QPointF{cap, 0.0}, top + QPointF{cap, 0.0});
                painter_.drawLine(bottom - QPointF{cap, 0.0}, bottom + QPointF{cap, 0.0});
            }
            paint_mark(painter_, centre, place_.mark_radius, line.sign, ink_);
        }
    }

    void paint_picked() {
        if (!picture_.picked || picture_.picked->line >= picture_.lines.size() ||
            picture_.picked->point >= picture_.lines[picture_.picked->line].points.size()) {
            return;
        }
        const auto& point = picture_.lines[picture_.picked->line].points[picture_.picked->point];
        const QPointF centre = place_.at(point.day, point.value);
        painter_.setPen(pen_of(ink_.water, 0.7 * ink_.stroke));
        painter_.drawLine(QPointF{centre.x(), centre.y() + 2.0 * place_.mark_radius},
                          QPointF{centre.x(), place_.plot.bottom()});
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(pen_of(ink_.water, 2.0 * ink_.stroke));
        painter_.drawEllipse(centre, 2.0 * place_.mark_radius, 2.0 * place_.mark_radius);
    }

    void paint_axes() {
        painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
        painter_.drawPolyline(QPolygonF{} << place_.plot.topLeft() << place_.plot.bottomLeft()
                                          << place_.plot.bottomRight());
        const double length = 0.8 * place_.mark_radius;
        for (const auto& tick : place_.day_ticks) {
            const QPointF at{tick.at, place_.plot.bottom()};
            painter_.drawLine(at, at + QPointF{0.0, length});
            paint_label(painter_, tick.label);
        }
        for (const auto& tick : place_.value_ticks) {
            const QPointF at{place_.plot.left(), tick.at};
            painter_.drawLine(at, at - QPointF{length, 0.0});
            paint_label(painter_, tick.label);
        }
        paint_label(painter_, place_.title);
        for (const auto& name : place_.season_names) {
            paint_label(painter_, name);
        }
        for (const auto& name : place_.event_names) {
            paint_label(painter_, name);
        }
        if (place_.limit_name) {
            painter_.fillRect(place_.limit_name->box, ink_.ground);
            paint_label(painter_, *place_.limit_name);
        }
    }

    QPainter& painter_;
    const HistoryPicture& picture_;
    const Ink& ink_;
    HistoryGeometry place_;
};

}  // namespace

QPointF HistoryGeometry::at(double day, double value) const {
    return {plot.left() + (day - from) / (to - from) * plot.width(),
            plot.bottom() - (value - least) / (most - least) * plot.height()};
}

double HistoryGeometry::day_at(double x) const {
    return from + (x - plot.left()) / plot.width() * (to - from);
}

HistoryGeometry history_geometry(const QRectF& area, const HistoryPicture& picture,
                                 const QFontMetricsF& metrics, double stroke) {
    HistoryGeometry place;
    for (int rows = picture.events.empty() ? 0 : 1; rows <= most_event_rows; ++rows) {
        place = laid_out(area, picture, metrics, stroke, rows);
        if (place.plot.width() <= 0.0 || add_event_names(place, picture, metrics, rows)) {
            break;
        }
    }
    return place;
}

std::optional<HistoryPick> nearest_point(const HistoryGeometry& geometry, const HistoryPicture& picture,
                                         QPointF place, double reach) {
    std::optional<HistoryPick> nearest;
    double least = reach;
    for (std::size_t i = 0; i < picture.lines.size(); ++i) {
        const auto& points = picture.lines[i].points;
        for (std::size_t k = 0; k < points.size(); ++k) {
            const double away = QLineF{place, geometry.at(points[k].day, points[k].value)}.length();
            if (in_sight(picture, points[k].day) && away <= least) {
                least = away;
                nearest = HistoryPick{i, k};
            }
        }
    }
    return nearest;
}

void paint_history(QPainter& painter, const QRectF& area, const HistoryPicture& picture, const Ink& ink,
                   const QFont& font) {
    if (!is_drawable(picture)) {
        return;
    }
    const QFontMetricsF metrics{font, painter.device()};
    HistoryGeometry place = history_geometry(area, picture, metrics, ink.stroke);
    if (place.plot.width() < 3.0 * metrics.height() || place.plot.height() < 2.0 * metrics.height()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    HistoryDrawing{painter, picture, ink, std::move(place)}.paint();
    painter.restore();
}

void paint_history_sign(QPainter& painter, const QRectF& area, int sign, const Ink& ink) {
    const double r = std::min({0.35 * area.height(), 0.35 * area.width(), 5.0 * ink.stroke});
    if (r <= 0.0) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setPen(line_pen(sign, ink.line, 0.9 * ink.stroke));
    painter.drawLine(QPointF{area.left(), area.center().y()}, QPointF{area.right(), area.center().y()});
    paint_mark(painter, area.center(), r, sign, ink);
    painter.restore();
}

}  // namespace wetfront::ui
