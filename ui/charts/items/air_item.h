// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>
#include <QVariantMap>

#include "charts/air_painter.h"
#include "items/bank_item.h"

namespace wetfront::ui {

/// The air outside, behind the pad and in the house: the picture of air_painter.h. `picture` is a map:
/// temperature and water (maps of from, to, title), curves (maps of kind: "saturation", "humidity" or
/// "wetBulb"; points, a list with x the temperature and y the water; label), and outside, behindPad, house
/// (maps of temperature, water, label), left out where not known. An empty map: nothing is drawn.
class AirItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantMap picture MEMBER picture_ NOTIFY picture_changed)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY picture_changed)

public:
    explicit AirItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void picture_changed();

private:
    QVariantMap picture_;
    QFont font_;
};

/// The picture that such a map describes. A curve of another kind, and a state without its two numbers, are
/// left out.
[[nodiscard]] AirPicture air_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
