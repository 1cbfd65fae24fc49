// SPDX-License-Identifier: Apache-2.0
#include "items/picture_item.h"

#include <QFontInfo>

namespace wetfront::ui {

PictureItem::PictureItem(QQuickItem* parent) : InkedItem{parent} {
    connect(this, &PictureItem::picture_changed, this, [this] { update(); });
}

void PictureItem::paint(QPainter* painter) {
    if (picture_.isEmpty()) {
        return;
    }
    QFont sized = font_;
    sized.setPixelSize(QFontInfo{font_}.pixelSize());
    draw(*painter, picture_, sized);
}

}  // namespace wetfront::ui
