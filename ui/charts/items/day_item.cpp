// SPDX-License-Identifier: Apache-2.0
#include "items/day_item.h"

namespace wetfront::ui {
namespace {

std::vector<double> numbers_of(const QVariant& list) {
    std::vector<double> numbers;
    const QVariantList all = list.toList();
    numbers.reserve(static_cast<std::size_t>(all.size()));
    for (const QVariant& each : all) {
        numbers.push_back(each.toDouble());
    }
    return numbers;
}

}  // namespace

DayPicture day_picture_of(const QVariantMap& map) {
    const auto text = [&](const char* key) { return map.value(QLatin1String{key}).toString(); };
    DayPicture picture;
    picture.least = map.value(QStringLiteral("least")).toDouble();
    picture.most = map.value(QStringLiteral("most")).toDouble();
    picture.from_hour = map.value(QStringLiteral("fromHour")).toDouble();
    picture.title = text("title");
    picture.decimal_mark = text("decimalMark");
    picture.outside_label = text("outsideLabel");
    picture.behind_label = text("behindLabel");
    picture.house_label = text("houseLabel");
    picture.wet_label = text("wetLabel");
    picture.pump_label = text("pumpLabel");
    picture.outside = numbers_of(map.value(QStringLiteral("outside")));
    const QVariantList plans = map.value(QStringLiteral("plans")).toList();
    for (const QVariant& each : plans) {
        const QVariantMap plan = each.toMap();
        picture.plans.push_back({plan.value(QStringLiteral("label")).toString(),
                                 numbers_of(plan.value(QStringLiteral("behindPad"))),
                                 numbers_of(plan.value(QStringLiteral("house"))),
                                 numbers_of(plan.value(QStringLiteral("wetShare"))),
                                 numbers_of(plan.value(QStringLiteral("pumping")))});
    }
    bool known = false;
    const double limit = map.value(QStringLiteral("limit")).toDouble(&known);
    if (known) {
        picture.limit = limit;
        picture.limit_label = text("limitLabel");
    }
    return picture;
}

void DayItem::draw(QPainter& painter, const QVariantMap& picture, const QFont& font) const {
    paint_day(painter, boundingRect(), day_picture_of(picture), ink(), font);
}

}  // namespace wetfront::ui
