// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "charts/history_painter.h"
#include "items/lettered_item.h"

namespace wetfront::ui {

/// Values of visits over the years: the picture of history_painter.h. `picture` is a map: from, to, least,
/// most, title, decimalMark, stepped; lines (list of maps of sign and points: maps of day, value, half,
/// words); trend (map of from, knownTo, to, middle, atMiddle, slope, least, most), limit (map of value,
/// label), seasons (maps of from, to, label), events (maps of day, label). What is not known is left out; an
/// empty map draws nothing.
///
/// It keeps which days are shown and which point is told: both start anew with another picture.
class HistoryItem : public wetfront::ui::LetteredItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantMap picture READ picture WRITE setPicture NOTIFY picture_changed)
    Q_PROPERTY(bool zoomed READ zoomed NOTIFY view_changed)        ///< not all days are shown
    Q_PROPERTY(bool canZoomIn READ canZoomIn NOTIFY view_changed)  ///< down to half a year
    Q_PROPERTY(QString told READ told NOTIFY picked_changed)  ///< words of the point; empty: none is told
    Q_PROPERTY(int pickedLine READ pickedLine NOTIFY picked_changed)  ///< -1: none

public:
    explicit HistoryItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] QVariantMap picture() const { return map_; }
    void setPicture(const QVariantMap& picture);
    [[nodiscard]] bool zoomed() const;
    [[nodiscard]] bool canZoomIn() const;
    [[nodiscard]] QString told() const;
    [[nodiscard]] int pickedLine() const;

    Q_INVOKABLE void zoomIn();
    Q_INVOKABLE void zoomOut();
    Q_INVOKABLE void showAll();
    /// The day at x stays where it is; `factor` above 1 shows fewer days.
    Q_INVOKABLE void zoomAt(qreal x, qreal factor);
    /// A gesture begins: what is shown now is what moveView() starts from.
    Q_INVOKABLE void holdView();
    /// The day that was at `from` when the gesture began now lies at `to`, days `scale` times as wide.
    Q_INVOKABLE void moveView(qreal from, qreal to, qreal scale);
    /// Tells the point nearest to a touch; none is told where there is none near.
    Q_INVOKABLE void pick(qreal x, qreal y);
    /// Tells the next point of the line (1) or the one before (-1), and brings it into sight; at first the
    /// last one in sight.
    Q_INVOKABLE void walk(int by);
    /// Tells of the next line, or the one before, the point nearest in time.
    Q_INVOKABLE void walkLines(int by);
    /// Tells the last point of a line.
    Q_INVOKABLE void pickLine(int line);

signals:
    void picture_changed();
    void view_changed();
    void picked_changed();

private:
    void set_view(double from, double to);
    void set_picked(const std::optional<HistoryPick>& picked);
    [[nodiscard]] const HistoryPoint* picked_point() const;
    [[nodiscard]] std::optional<HistoryPick> last_in_sight() const;
    [[nodiscard]] HistoryGeometry geometry() const;

    QVariantMap map_;
    HistoryPicture shown_;  ///< with the days that are shown
    double all_from_ = 0.0;
    double all_to_ = 0.0;
    double held_from_ = 0.0;
    double held_to_ = 0.0;
};

/// The mark of one line of such a picture.
class HistorySignItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int sign MEMBER sign_ NOTIFY sign_changed)

public:
    explicit HistorySignItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void sign_changed();

private:
    int sign_ = 0;
};

/// The picture that such a map describes.
[[nodiscard]] HistoryPicture history_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
