// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "charts/day_painter.h"
#include "items/picture_item.h"

namespace wetfront::ui {

/// A day of the pads: the picture of day_painter.h. `picture` is a map: least, most, fromHour, title,
/// decimalMark, outsideLabel, behindLabel, houseLabel, wetLabel, pumpLabel, outside (list of numbers), plans
/// (list of maps of label, behindPad, house, wetShare, pumping), limit and limitLabel, left out where there
/// is none.
class DayItem : public wetfront::ui::PictureItem {
    Q_OBJECT
    QML_ELEMENT

public:
    using PictureItem::PictureItem;

private:
    void draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const override;
};

/// The picture that such a map describes.
[[nodiscard]] DayPicture day_picture_of(const QVariantMap& map);

}  // namespace wetfront::ui
