// SPDX-License-Identifier: Apache-2.0
#include "items/picture_item.h"

namespace wetfront::ui {

PictureItem::PictureItem(QQuickItem* parent) : LetteredItem{parent} {
    connect(this, &PictureItem::picture_changed, this, [this] { update(); });
}

void PictureItem::paint(QPainter* painter) {
    if (picture_.isEmpty()) {
        return;
    }
    draw(*painter, picture_, sized_font());
}

}  // namespace wetfront::ui
