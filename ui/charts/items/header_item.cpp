// SPDX-License-Identifier: Apache-2.0
#include "items/header_item.h"

#include <QPointF>

namespace wetfront::ui {
namespace {

std::vector<OutletShare> outlets_of(const QVariant& list) {
    std::vector<OutletShare> outlets;
    const QVariantList points = list.toList();
    for (const QVariant& each : points) {
        const QPointF point = each.toPointF();
        outlets.push_back({point.x(), point.y()});
    }
    return outlets;
}

}  // namespace

HeaderPicture header_picture_of(const QVariantMap& map) {
    const auto text = [&map](const char* key) { return map.value(QLatin1String{key}).toString(); };
    HeaderPicture picture;
    picture.pump_on_left = map.value(QStringLiteral("pumpOnLeft"), true).toBool();
    picture.outlets = outlets_of(map.value(QStringLiteral("outlets")));
    picture.other = outlets_of(map.value(QStringLiteral("other")));
    picture.inlet_head = text("inletHead");
    picture.uniformity = text("uniformity");
    picture.first = text("first");
    picture.last = text("last");
    picture.mean = text("mean");
    picture.lowest = text("lowest");
    picture.low_quarter = text("lowQuarter");
    picture.bars_name = text("barsName");
    picture.other_name = text("otherName");
    return picture;
}

void HeaderItem::draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const {
    paint_header(painter, boundingRect(), header_picture_of(picture), ink(), font);
}

}  // namespace wetfront::ui
