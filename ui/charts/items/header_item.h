// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "charts/header_painter.h"
#include "items/picture_item.h"

namespace wetfront::ui {

/// A header with the flow of its outlets: the picture of header_painter.h. `picture` is a map: pumpOnLeft
/// (bool, true where missing), outlets and other (lists of points: x the share of the way from the pump's
/// end, y the flow over the mean), and the texts inletHead, uniformity, first, last, mean, lowest,
/// lowQuarter, barsName, otherName.
class HeaderItem : public wetfront::ui::PictureItem {
    Q_OBJECT
    QML_ELEMENT

public:
    using PictureItem::PictureItem;

private:
    void draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const override;
};

/// The picture that such a map describes.
[[nodiscard]] HeaderPicture header_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
