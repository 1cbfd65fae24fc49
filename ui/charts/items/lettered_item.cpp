// SPDX-License-Identifier: Apache-2.0
#include "items/lettered_item.h"

#include <QFontInfo>

namespace wetfront::ui {

LetteredItem::LetteredItem(QQuickItem* parent) : InkedItem{parent} {
    connect(this, &LetteredItem::font_changed, this, [this] { update(); });
}

QFont LetteredItem::sized_font() const {
    QFont sized = font_;
    sized.setPixelSize(QFontInfo{font_}.pixelSize());
    return sized;
}

}  // namespace wetfront::ui
