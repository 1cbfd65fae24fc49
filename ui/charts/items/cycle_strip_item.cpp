// SPDX-License-Identifier: Apache-2.0
#include "items/cycle_strip_item.h"

#include "charts/strip_painter.h"
#include "format/formatter.h"

namespace wetfront::ui {
namespace {

// Times read the same in both unit systems.
QString translated(const Message& message) {
    return Formatter{UnitSystem::si, QLocale{}}.text(message);
}

std::optional<double> number(const QVariantMap& map, const char* key) {
    const auto found = map.constFind(QLatin1String{key});
    if (found == map.constEnd() || !found->isValid() || found->isNull()) {
        return std::nullopt;
    }
    bool is_number = false;
    const double value = found->toDouble(&is_number);
    return is_number ? std::optional{value} : std::nullopt;
}

}  // namespace

CycleStrip strip_of(const QVariantMap& map) {
    CycleStrip strip;
    strip.label = verbatim(map.value(QStringLiteral("label")).toString().toStdString());
    strip.period_s = number(map, "period").value_or(0.0);
    strip.continuous = map.value(QStringLiteral("continuous")).toBool();
    strip.on_s = number(map, "on").value_or(0.0);
    strip.fill_s = number(map, "fill").value_or(0.0);
    strip.ceiling_s = number(map, "ceiling");
    strip.wet_through_s = number(map, "wetThrough");
    strip.run_off_s = number(map, "runOff");
    strip.dry_patch_s = number(map, "dryPatch");
    strip.lowest_level = number(map, "lowestLevel");
    strip.drip_returns_s = number(map, "dripReturns");
    return strip;
}

CycleStripItem::CycleStripItem(QQuickItem* parent) : LetteredItem{parent} {
    connect(this, &CycleStripItem::strips_changed, this, [this] { update(); });
}

void CycleStripItem::paint(QPainter* painter) {
    std::vector<CycleStrip> strips;
    for (const QVariant& strip : std::as_const(strips_)) {
        strips.push_back(strip_of(strip.toMap()));
    }
    paint_cycle_strips(*painter, boundingRect(), strips, ink(), sized_font(), translated);
}

StripSignItem::StripSignItem(QQuickItem* parent) : InkedItem{parent} {
    connect(this, &StripSignItem::sign_changed, this, [this] { update(); });
}

void StripSignItem::paint(QPainter* painter) {
    if (sign_ >= 0 && sign_ < static_cast<int>(all_strip_signs.size())) {
        paint_sign(*painter, boundingRect(), all_strip_signs[static_cast<std::size_t>(sign_)], ink());
    }
}

QString StripSignItem::text() const {
    if (sign_ < 0 || sign_ >= static_cast<int>(all_strip_signs.size())) {
        return {};
    }
    return translated(label_of(all_strip_signs[static_cast<std::size_t>(sign_)]));
}

}  // namespace wetfront::ui
