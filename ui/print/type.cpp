// SPDX-License-Identifier: Apache-2.0
#include "print/type.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <cmath>
#include <memory>

namespace wetfront::ui {
namespace {

double size_of(Face face) {
    switch (face) {
        case Face::title:
            return 19.0;
        case Face::heading:
            return 11.0;
        case Face::body:
        case Face::strong:
            return 8.5;
        case Face::small:
        case Face::small_strong:
            return 7.5;
    }
    return 8.5;
}

}  // namespace

QFont font_of(Face face) {
    const bool serif = face == Face::title || face == Face::heading;
    QFont font{serif ? QStringLiteral("DejaVu Serif") : QStringLiteral("DejaVu Sans")};
    font.setStyleHint(serif ? QFont::Serif : QFont::SansSerif);
    font.setPixelSize(static_cast<int>(std::lround(size_of(face) * pt)));
    font.setBold(face == Face::heading || face == Face::strong || face == Face::small_strong);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setLetterSpacing(QFont::PercentageSpacing, 100.01);
    return font;
}

double leading_of(Face face) {
    return std::round(1.36 * size_of(face) * pt);
}

double width_of(const QString& text, Face face) {
    return QFontMetricsF{font_of(face)}.horizontalAdvance(text);
}

std::vector<Line> text_lines(const QString& text, Face face, double width, double indent,
                             Qt::Alignment alignment) {
    if (text.isEmpty()) {
        return {};
    }
    QString shown = text;
    shown.replace(u'\n', QChar::LineSeparator);
    auto layout = std::make_shared<QTextLayout>(shown, font_of(face));
    QTextOption option{alignment};
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout->setTextOption(option);
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
        line.setLineWidth(width - indent);
        line.setPosition({0.0, 0.0});
    }
    layout->endLayout();

    std::vector<Line> lines;
    const double leading = leading_of(face);
    for (int i = 0; i < layout->lineCount(); ++i) {
        // Each line stands in the middle of its leading.
        const double drop = (leading - layout->lineAt(i).height()) / 2.0;
        lines.push_back({leading, [layout, i, drop, indent](QPainter& painter, QPointF top_left) {
                             painter.setPen(Qt::black);
                             layout->lineAt(i).draw(&painter, top_left + QPointF{indent, drop});
                         }});
    }
    return lines;
}

Line gap(double height) {
    return {height, {}};
}

void append(std::vector<Line>& lines, std::vector<Line> more) {
    std::move(more.begin(), more.end(), std::back_inserter(lines));
}

}  // namespace wetfront::ui
