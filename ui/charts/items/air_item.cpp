// SPDX-License-Identifier: Apache-2.0
#include "items/air_item.h"

#include <QPointF>

namespace wetfront::ui {
namespace {

AirAxis axis_of(const QVariantMap& map) {
    return {map.value(QStringLiteral("from")).toDouble(), map.value(QStringLiteral("to")).toDouble(),
            map.value(QStringLiteral("title")).toString()};
}

std::optional<AirCurveKind> kind_of(const QString& name) {
    if (name == QLatin1String{"saturation"}) {
        return AirCurveKind::saturation;
    }
    if (name == QLatin1String{"humidity"}) {
        return AirCurveKind::humidity;
    }
    if (name == QLatin1String{"wetBulb"}) {
        return AirCurveKind::wet_bulb;
    }
    return std::nullopt;
}

std::optional<AirState> state_of(const QVariantMap& map) {
    bool has_temperature = false;
    bool has_water = false;
    const double temperature = map.value(QStringLiteral("temperature")).toDouble(&has_temperature);
    const double water = map.value(QStringLiteral("water")).toDouble(&has_water);
    if (!has_temperature || !has_water) {
        return std::nullopt;
    }
    return AirState{{temperature, water}, map.value(QStringLiteral("label")).toString()};
}

}  // namespace

AirPicture air_picture_of(const QVariantMap& map) {
    AirPicture picture;
    picture.temperature = axis_of(map.value(QStringLiteral("temperature")).toMap());
    picture.water = axis_of(map.value(QStringLiteral("water")).toMap());
    const QVariantList curves = map.value(QStringLiteral("curves")).toList();
    for (const QVariant& each : curves) {
        const QVariantMap curve = each.toMap();
        const auto kind = kind_of(curve.value(QStringLiteral("kind")).toString());
        if (!kind) {
            continue;
        }
        QPolygonF line;
        const QVariantList points = curve.value(QStringLiteral("points")).toList();
        for (const QVariant& point : points) {
            line << point.toPointF();
        }
        picture.curves.push_back({*kind, line, curve.value(QStringLiteral("label")).toString()});
    }
    picture.outside = state_of(map.value(QStringLiteral("outside")).toMap());
    picture.behind_pad = state_of(map.value(QStringLiteral("behindPad")).toMap());
    picture.house = state_of(map.value(QStringLiteral("house")).toMap());
    return picture;
}

void AirItem::draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const {
    paint_air(painter, boundingRect(), air_picture_of(picture), ink(), font);
}

}  // namespace wetfront::ui
