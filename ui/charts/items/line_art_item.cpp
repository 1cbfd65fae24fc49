// SPDX-License-Identifier: Apache-2.0
#include "items/line_art_item.h"

#include <QPainter>
#include <QSvgRenderer>

namespace wetfront::ui {
namespace {

QString paint_of(const QColor& colour) {
    return colour.alpha() == 0 ? QStringLiteral("none") : colour.name(QColor::HexRgb);
}

}  // namespace

LineArtItem::LineArtItem(QQuickItem* parent) : QQuickPaintedItem{parent} {
    setAntialiasing(true);
    connect(this, &LineArtItem::drawing_changed, this, [this] { update(); });
}

void LineArtItem::paint(QPainter* painter) {
    if (path_.isEmpty() || width() <= 0.0 || height() <= 0.0) {
        return;
    }
    const QSizeF box = grid_ > 0.0 ? QSizeF{grid_, grid_} : QSizeF{width(), height()};
    const QString drawing =
        QStringLiteral(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\"><path d=\"%3\" stroke=\"%4\" "
            "fill=\"%5\" stroke-width=\"%6\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/></svg>")
            .arg(QString::number(box.width()), QString::number(box.height()), path_.toHtmlEscaped(),
                 paint_of(colour_), paint_of(fill_), QString::number(thickness_ * box.width() / width()));
    QSvgRenderer renderer{drawing.toUtf8()};
    painter->setRenderHint(QPainter::Antialiasing);
    renderer.render(painter, boundingRect());
}

}  // namespace wetfront::ui
