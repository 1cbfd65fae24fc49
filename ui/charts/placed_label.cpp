// SPDX-License-Identifier: Apache-2.0
#include "charts/placed_label.h"

#include <QStringList>
#include <algorithm>
#include <cmath>

namespace wetfront::ui {

PlacedLabel label_sized(const QString& text, double widest, const QFontMetricsF& metrics) {
    QStringList lines = text.split(QLatin1Char{'\n'});
    double width = 0.0;
    for (QString& line : lines) {
        line = metrics.elidedText(line, Qt::ElideRight, widest);
        width = std::max(width, metrics.horizontalAdvance(line));
    }
    return {QRectF{0.0, 0.0, std::ceil(width), static_cast<double>(lines.size()) * metrics.height()},
            lines.join(QLatin1Char{'\n'})};
}

void paint_label(QPainter& painter, const PlacedLabel& label) {
    const QFontMetricsF metrics{painter.font(), painter.device()};
    double baseline = label.box.top() + metrics.ascent();
    for (const QString& line : label.text.split(QLatin1Char{'\n'})) {
        painter.drawText(QPointF{label.box.left(), baseline}, line);
        baseline += metrics.height();
    }
}

}  // namespace wetfront::ui
