// SPDX-License-Identifier: Apache-2.0
#include "items/bank_item.h"

#include "charts/bank_painter.h"

namespace wetfront::ui {

InkedItem::InkedItem(QQuickItem* parent) : QQuickPaintedItem{parent} {
    const Ink usual;
    line_color_ = usual.line;
    faint_color_ = usual.faint;
    ground_color_ = usual.ground;
    water_color_ = usual.water;
    warm_color_ = usual.warm;
    stroke_ = usual.stroke;
    connect(this, &InkedItem::ink_changed, this, [this] { update(); });
}

Ink InkedItem::ink() const {
    return {line_color_, faint_color_, ground_color_, water_color_, warm_color_, stroke_, false};
}

BankItem::BankItem(QQuickItem* parent) : InkedItem{parent} {
    connect(this, &BankItem::picture_changed, this, [this] { update(); });
}

void BankItem::paint(QPainter* painter) {
    BankPicture picture;
    picture.pump_on_left = pump_on_left_;
    picture.aspect = aspect_;
    picture.header_front = header_front_;
    picture.wet_front.assign(wet_front_.begin(), wet_front_.end());
    picture.dripping.assign(dripping_.begin(), dripping_.end());
    picture.drying.assign(drying_.begin(), drying_.end());
    picture.running = running_;
    paint_bank(*painter, boundingRect(), picture, ink());
}

}  // namespace wetfront::ui
