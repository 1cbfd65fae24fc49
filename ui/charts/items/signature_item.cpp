// SPDX-License-Identifier: Apache-2.0
#include "items/signature_item.h"

#include <QMouseEvent>
#include <QTouchEvent>
#include <algorithm>
#include <cmath>

#include "charts/signature_painter.h"

namespace wetfront::ui {
namespace {

// A line that goes on for longer is handed on in pieces, so that no line takes long to thin.
constexpr std::size_t most_points_at_once = 2'000;
// A finger that has not moved farther than this since it came down may be a hand that rests.
constexpr int most_of_a_rest = 25;

}  // namespace

SignatureItem::SignatureItem(QQuickItem* parent) : QQuickPaintedItem{parent} {
    setAntialiasing(true);
    setKeepMouseGrab(true);
    setKeepTouchGrab(true);
    connect(this, &SignatureItem::look_changed, this, [this] { update(); });
    connect(this, &QQuickItem::visibleChanged, this, &SignatureItem::drop);
}

qreal SignatureItem::aspect() {
    return static_cast<qreal>(field_width) / field_height;
}

QStringList SignatureItem::strokes() const {
    QStringList list;
    for (const auto& stroke : strokes_) {
        list.append(QString::fromStdString(stroke.text()));
    }
    return list;
}

void SignatureItem::set_strokes(const QStringList& strokes) {
    std::vector<Stroke> read;
    for (const auto& text : strokes) {
        if (auto stroke = Stroke::parse(text.toStdString(), "stroke")) {
            read.push_back(std::move(stroke).value());
        }
    }
    if (read != strokes_) {
        strokes_ = std::move(read);
        update();
        emit strokes_changed();
    }
}

void SignatureItem::set_drawable(bool drawable) {
    if (drawable != drawable_) {
        drawable_ = drawable;
        setAcceptedMouseButtons(drawable ? Qt::LeftButton : Qt::NoButton);
        setAcceptTouchEvents(drawable);
        drop();
        emit drawable_changed();
    }
}

void SignatureItem::paint(QPainter* painter) {
    const QRectF field = boundingRect();
    paint_strokes(*painter, field, strokes_, line_color_, thickness_);
    if (!drawn_.points.empty()) {
        paint_strokes(*painter, field, {drawn_}, line_color_, thickness_);
    }
}

void SignatureItem::go_on(QPointF to) {
    if (width() <= 0.0 || height() <= 0.0 || !boundingRect().contains(to)) {
        finish();
        return;
    }
    const FieldPoint point{static_cast<int>(std::lround(to.x() * field_width / width())),
                           static_cast<int>(std::lround(to.y() * field_height / height()))};
    auto& points = drawn_.points;
    if (!points.empty() && points.back() == point) {
        return;
    }
    if (points.size() == most_points_at_once) {
        const FieldPoint last = points.back();
        finish();
        points.push_back(last);
    }
    points.push_back(point);
    const QRectF field = boundingRect();
    const QPointF from = place_of(points.size() > 1 ? points[points.size() - 2] : point, field);
    const qreal around = thickness_ + 1.0;
    update(QRectF{from, place_of(point, field)}
               .normalized()
               .adjusted(-around, -around, around, around)
               .toAlignedRect());
}

void SignatureItem::finish() {
    if (drawn_.points.empty()) {
        return;
    }
    const Stroke done = thinned(drawn_);
    drawn_ = {};
    emit strokeDrawn(QString::fromStdString(done.text()));
    update();
}

void SignatureItem::drop() {
    drawn_ = {};
    finger_.reset();
    update();
}

bool SignatureItem::rests() const {
    const auto& points = drawn_.points;
    if (points.empty()) {
        return true;
    }
    return std::ranges::all_of(points, [&](const FieldPoint& point) {
        return std::abs(point.x - points.front().x) <= most_of_a_rest &&
               std::abs(point.y - points.front().y) <= most_of_a_rest;
    });
}

void SignatureItem::mousePressEvent(QMouseEvent* event) {
    drop();
    go_on(event->position());
}
void SignatureItem::mouseMoveEvent(QMouseEvent* event) {
    go_on(event->position());
}
void SignatureItem::mouseReleaseEvent(QMouseEvent* event) {
    go_on(event->position());
    finish();
}
// Taken away in the middle of a line.
void SignatureItem::mouseUngrabEvent() {
    drop();
}

// Moves come by the filter below.
void SignatureItem::touchEvent(QTouchEvent* event) {
    event->accept();
    if (event->type() == QEvent::TouchCancel) {
        drop();
        return;
    }
    for (const auto& point : event->points()) {
        if (point.state() == QEventPoint::Pressed && (!finger_ || rests())) {
            drop();
            finger_ = point.id();
            go_on(point.position());
        } else if (point.state() == QEventPoint::Released && finger_ == point.id()) {
            go_on(point.position());
            finish();
            finger_.reset();
        }
    }
}
void SignatureItem::touchUngrabEvent() {
    drop();
}

void SignatureItem::itemChange(ItemChange change, const ItemChangeData& data) {
    if (change == ItemSceneChange) {
        watch(data.window);
    }
    QQuickPaintedItem::itemChange(change, data);
}

void SignatureItem::watch(QQuickWindow* window) {
    if (window_) {
        window_->removeEventFilter(this);
    }
    window_ = window;
    if (window_) {
        window_->installEventFilter(this);
    }
}

// Qt Quick hands on one move of a finger a frame, which makes corners of a quick hand's curves: they are
// taken where all of them arrive.
bool SignatureItem::eventFilter(QObject* watched, QEvent* event) {
    if (finger_ && event->type() == QEvent::TouchUpdate) {
        for (const auto& point : static_cast<QTouchEvent*>(event)->points()) {
            if (point.id() == *finger_ && point.state() == QEventPoint::Updated) {
                go_on(mapFromScene(point.position()));
            }
        }
    }
    return QQuickPaintedItem::eventFilter(watched, event);
}

}  // namespace wetfront::ui
