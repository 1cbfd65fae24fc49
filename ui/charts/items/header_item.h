// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>
#include <QVariantMap>

#include "charts/header_painter.h"
#include "items/bank_item.h"

namespace wetfront::ui {

/// A header with the flow of its outlets: the picture of header_painter.h. `picture` is a map: pumpOnLeft
/// (bool, true where missing), outlets and other (lists of points: x the share of the way from the pump's
/// end, y the flow over the mean), and the texts inletHead, uniformity, first, last, mean, lowest,
/// lowQuarter, barsName, otherName. An empty map: nothing is drawn.
class HeaderItem : public wetfront::ui::InkedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantMap picture MEMBER picture_ NOTIFY picture_changed)
    Q_PROPERTY(QFont font MEMBER font_ NOTIFY picture_changed)

public:
    explicit HeaderItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void picture_changed();

private:
    QVariantMap picture_;
    QFont font_;
};

/// The picture that such a map describes.
[[nodiscard]] HeaderPicture header_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
