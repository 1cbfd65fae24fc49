// SPDX-License-Identifier: Apache-2.0
#include "items/history_item.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace wetfront::ui {
namespace {

constexpr double fewest_days = 180.0;
constexpr double zoom_step = 1.6;

QVariant at(const QVariantMap& map, const char* key) {
    return map.value(QString::fromLatin1(key));
}

double number(const QVariantMap& map, const char* key) {
    return at(map, key).toDouble();
}

QString words(const QVariantMap& map, const char* key) {
    return at(map, key).toString();
}

std::optional<double> number_or_none(const QVariantMap& map, const char* key) {
    bool is_there = false;
    const double value = at(map, key).toDouble(&is_there);
    return is_there ? std::optional{value} : std::nullopt;
}

template <class T, class Make>
std::vector<T> list_of(const QVariantMap& map, const char* key, const Make& make) {
    std::vector<T> list;
    const auto items = at(map, key).toList();
    for (const auto& item : items) {
        list.push_back(make(item.toMap()));
    }
    return list;
}

HistoryLine line_of(const QVariantMap& map) {
    return {list_of<HistoryPoint>(
                map, "points",
                [](const QVariantMap& point) {
                    return HistoryPoint{number(point, "day"), number(point, "value"), number(point, "half")};
                }),
            std::max(0, at(map, "sign").toInt())};
}

HistoryTrend trend_of(const QVariantMap& map) {
    return {number(map, "from"),          number(map, "knownTo"),     number(map, "to"),
            number(map, "middle"),        number(map, "atMiddle"),    number(map, "slope"),
            number_or_none(map, "least"), number_or_none(map, "most")};
}

}  // namespace

HistoryPicture history_picture_of(const QVariantMap& map) {
    HistoryPicture picture;
    picture.from = number(map, "from");
    picture.to = number(map, "to");
    picture.least = number(map, "least");
    picture.most = number(map, "most");
    picture.title = words(map, "title");
    picture.decimal_mark = words(map, "decimalMark");
    picture.stepped = at(map, "stepped").toBool();
    picture.lines = list_of<HistoryLine>(map, "lines", line_of);
    if (const auto trend = at(map, "trend").toMap(); !trend.isEmpty()) {
        picture.trend = trend_of(trend);
    }
    if (const auto limit = at(map, "limit").toMap(); !limit.isEmpty()) {
        picture.limit = HistoryLimit{number(limit, "value"), words(limit, "label")};
    }
    picture.seasons = list_of<HistorySeason>(map, "seasons", [](const QVariantMap& season) {
        return HistorySeason{number(season, "from"), number(season, "to"), words(season, "label")};
    });
    picture.events = list_of<HistoryEvent>(map, "events", [](const QVariantMap& event) {
        return HistoryEvent{number(event, "day"), words(event, "label")};
    });
    return picture;
}

HistoryItem::HistoryItem(QQuickItem* parent) : LetteredItem{parent} {
    connect(this, &HistoryItem::picture_changed, this, [this] { update(); });
    connect(this, &HistoryItem::view_changed, this, [this] { update(); });
    connect(this, &HistoryItem::picked_changed, this, [this] { update(); });
}

void HistoryItem::setPicture(const QVariantMap& picture) {
    map_ = picture;
    shown_ = history_picture_of(map_);
    all_from_ = shown_.from;
    all_to_ = shown_.to;
    emit picture_changed();
    emit view_changed();
    emit picked_changed();
}

void HistoryItem::paint(QPainter* painter) {
    paint_history(*painter, boundingRect(), shown_, ink(), sized_font());
}

bool HistoryItem::zoomed() const {
    return shown_.from > all_from_ || shown_.to < all_to_;
}

bool HistoryItem::canZoomIn() const {
    return shown_.to - shown_.from > fewest_days;
}

QString HistoryItem::told() const {
    if (!picked_point()) {
        return {};
    }
    const auto line = at(map_, "lines").toList().at(static_cast<qsizetype>(shown_.picked->line)).toMap();
    const auto point = at(line, "points").toList().at(static_cast<qsizetype>(shown_.picked->point)).toMap();
    return words(point, "words");
}

int HistoryItem::pickedLine() const {
    return shown_.picked ? static_cast<int>(shown_.picked->line) : -1;
}

const HistoryPoint* HistoryItem::picked_point() const {
    return shown_.picked ? &shown_.lines[shown_.picked->line].points[shown_.picked->point] : nullptr;
}

HistoryGeometry HistoryItem::geometry() const {
    return history_geometry(boundingRect(), shown_, QFontMetricsF{sized_font()}, ink().stroke);
}

// As many days as asked for, within all there are.
void HistoryItem::set_view(double from, double to) {
    const double all = all_to_ - all_from_;
    const double days = std::clamp(to - from, std::min(fewest_days, all), all);
    const double middle = (from + to) / 2.0;
    const double start = std::clamp(middle - days / 2.0, all_from_, all_to_ - days);
    if (start != shown_.from || start + days != shown_.to) {
        shown_.from = start;
        shown_.to = start + days;
        emit view_changed();
    }
}

void HistoryItem::zoomIn() {
    zoomAt(width() / 2.0, zoom_step);
}

void HistoryItem::zoomOut() {
    zoomAt(width() / 2.0, 1.0 / zoom_step);
}

void HistoryItem::showAll() {
    set_view(all_from_, all_to_);
}

void HistoryItem::zoomAt(qreal x, qreal factor) {
    holdView();
    moveView(x, x, factor);
}

void HistoryItem::holdView() {
    held_from_ = shown_.from;
    held_to_ = shown_.to;
}

void HistoryItem::moveView(qreal from, qreal to, qreal scale) {
    const auto plot = geometry().plot;
    if (plot.width() <= 0.0 || !(scale > 0.0)) {
        return;
    }
    const double all = all_to_ - all_from_;
    const double days = std::clamp((held_to_ - held_from_) / scale, std::min(fewest_days, all), all);
    const double held = held_from_ + (from - plot.left()) / plot.width() * (held_to_ - held_from_);
    const double first = held - (to - plot.left()) / plot.width() * days;
    set_view(first, first + days);
}

void HistoryItem::set_picked(const std::optional<HistoryPick>& picked) {
    if (picked != shown_.picked) {
        shown_.picked = picked;
        emit picked_changed();
    }
    const auto* point = picked_point();
    if (point != nullptr && (point->day < shown_.from || point->day > shown_.to)) {
        const double half = (shown_.to - shown_.from) / 2.0;
        set_view(point->day - half, point->day + half);
    }
}

void HistoryItem::pick(qreal x, qreal y) {
    const auto place = geometry();
    // A gloved finger is broad: three times the height of a line.
    const double reach = 3.0 * QFontMetricsF{sized_font()}.height();
    set_picked(nearest_point(place, shown_, {x, y}, reach));
}

std::optional<HistoryPick> HistoryItem::last_in_sight() const {
    std::optional<HistoryPick> last;
    for (std::size_t i = 0; i < shown_.lines.size(); ++i) {
        const auto& points = shown_.lines[i].points;
        for (std::size_t k = 0; k < points.size(); ++k) {
            const bool later = !last || points[k].day > shown_.lines[last->line].points[last->point].day;
            if (points[k].day >= shown_.from && points[k].day <= shown_.to && later) {
                last = HistoryPick{i, k};
            }
        }
    }
    return last;
}

void HistoryItem::walk(int by) {
    if (!shown_.picked) {
        set_picked(last_in_sight());
        return;
    }
    const auto last = static_cast<int>(shown_.lines[shown_.picked->line].points.size()) - 1;
    const int to = std::clamp(static_cast<int>(shown_.picked->point) + by, 0, last);
    set_picked(HistoryPick{shown_.picked->line, static_cast<std::size_t>(to)});
}

void HistoryItem::walkLines(int by) {
    const auto* point = picked_point();
    if (point == nullptr) {
        set_picked(last_in_sight());
        return;
    }
    const double day = point->day;
    const int last = static_cast<int>(shown_.lines.size()) - 1;
    for (int line = static_cast<int>(shown_.picked->line) + by; line >= 0 && line <= last; line += by) {
        const auto& points = shown_.lines[static_cast<std::size_t>(line)].points;
        if (!points.empty()) {
            const auto nearest = std::ranges::min_element(
                points, {}, [day](const HistoryPoint& each) { return std::abs(each.day - day); });
            set_picked(HistoryPick{static_cast<std::size_t>(line),
                                   static_cast<std::size_t>(nearest - points.begin())});
            return;
        }
    }
}

void HistoryItem::pickLine(int line) {
    if (line >= 0 && line < static_cast<int>(shown_.lines.size()) &&
        !shown_.lines[static_cast<std::size_t>(line)].points.empty()) {
        const auto index = static_cast<std::size_t>(line);
        set_picked(HistoryPick{index, shown_.lines[index].points.size() - 1});
    }
}

HistorySignItem::HistorySignItem(QQuickItem* parent) : InkedItem{parent} {
    connect(this, &HistorySignItem::sign_changed, this, [this] { update(); });
}

void HistorySignItem::paint(QPainter* painter) {
    paint_history_sign(*painter, boundingRect(), std::max(0, sign_), ink());
}

}  // namespace wetfront::ui
