// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "charts/air_painter.h"
#include "items/picture_item.h"

namespace wetfront::ui {

/// The air outside, behind the pad and in the house: the picture of air_painter.h. `picture` is a map:
/// temperature and water (maps of from, to, title), curves (maps of kind: "saturation", "humidity" or
/// "wetBulb"; points, a list with x the temperature and y the water; label), and outside, behindPad, house
/// (maps of temperature, water, label), left out where not known.
class AirItem : public wetfront::ui::PictureItem {
    Q_OBJECT
    QML_ELEMENT

public:
    using PictureItem::PictureItem;

private:
    void draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const override;
};

/// The picture that such a map describes. A curve of another kind, and a state without its two numbers, are
/// left out.
[[nodiscard]] AirPicture air_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
