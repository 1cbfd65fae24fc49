// SPDX-License-Identifier: Apache-2.0
#include "print/sheet_pages.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "print/blocks.h"
#include "print/type.h"

namespace wetfront::ui {
namespace {

constexpr double side_margin = 51.0 * pt;  // 18 mm
constexpr double edge_margin = 37.0 * pt;  // 13 mm, to the running head and the footer
constexpr std::size_t most_head_lines = 6;

double height_of(const std::vector<Line>& lines) {
    double height = 0.0;
    for (const auto& line : lines) {
        height += line.height;
    }
    return height;
}

void paint_lines(QPainter& painter, const std::vector<Line>& lines, QPointF top_left) {
    for (const auto& line : lines) {
        line.paint(painter, top_left);
        top_left.ry() += line.height;
    }
}

}  // namespace

SheetPages::SheetPages(const SheetContent& content, QSizeF page, const Formatter& formatter)
    : size_{page * pt} {
    const double width = size_.width() - 2.0 * side_margin;
    running_id_ =
        text_lines(formatter.text(Message{WF_TEXT("%1, revision %2"), {content.id, content.revision}}),
                   Face::small, 0.46 * width, 0.0, Qt::AlignRight);
    const double head_width = 0.52 * width;
    QString head = formatter.text(content.running_head);
    running_head_ = text_lines(head, Face::small, head_width);
    // Names as long as half a page stand in full in the blocks; on top of every page they would leave no room
    // for them.
    while (running_head_.size() > most_head_lines) {
        head.chop(std::max<qsizetype>(head.size() / 20, 2));
        running_head_ = text_lines(head + QChar{0x2026}, Face::small, head_width);
    }
    if (content.draft) {
        draft_ = formatter.text(WF_TEXT("DRAFT"));
        draft_footer_ = formatter.text(WF_TEXT("DRAFT, not signed"));
    }

    const double head_height = std::max(height_of(running_head_), height_of(running_id_));
    const double top = edge_margin + head_height + 16.0 * pt;
    const double bottom = size_.height() - edge_margin - leading_of(Face::small) - 10.0 * pt;
    body_ = QRectF{side_margin, top, width, bottom - top};

    const Measure measure{formatter, width};
    Rows rows = title_rows(content, measure);
    for (const auto& block : content.blocks) {
        auto more = std::visit([&](const auto& one) { return rows_of(one, measure); }, block);
        std::move(more.begin(), more.end(), std::back_inserter(rows));
    }
    pages_ = paginate(rows, body_.height());
    for (int page = 1; page <= count(); ++page) {
        page_numbers_.push_back(formatter.text(Message{WF_TEXT("page %1 of %2"), {page, count()}}));
    }
}

// An outline, not a text: read back from the file it would stand between the sentences. The footer says it as
// text.
void SheetPages::paint_draft(QPainter& painter) const {
    QPainterPath word;
    word.addText({}, font_of(Face::strong), draft_);
    const QRectF box = word.boundingRect();
    const double scale = 0.6 * std::hypot(body_.width(), body_.height()) / box.width();
    painter.save();
    painter.translate(size_.width() / 2.0, size_.height() / 2.0);
    painter.rotate(-std::atan2(body_.height(), body_.width()) * 180.0 / std::numbers::pi);
    painter.scale(scale, scale);
    painter.translate(-box.center());
    painter.fillPath(word, QColor{0xe2, 0xe2, 0xe2});
    painter.restore();
}

void SheetPages::paint(QPainter& painter, int page) const {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (!draft_.isEmpty()) {
        paint_draft(painter);
    }
    const QRectF frame{side_margin, edge_margin, body_.width(), size_.height() - 2.0 * edge_margin};
    paint_lines(painter, running_head_, frame.topLeft());
    paint_lines(painter, running_id_, {frame.left() + 0.54 * frame.width(), frame.top()});
    painter.setPen(QPen{Qt::black, 0.4 * pt});
    const double rule_y = body_.top() - 12.0 * pt;
    painter.drawLine(QPointF{frame.left(), rule_y}, QPointF{frame.right(), rule_y});

    painter.save();
    painter.translate(body_.topLeft());
    paint_rows(painter, pages_[static_cast<std::size_t>(page)], body_.width());
    painter.restore();

    const double footer_y = frame.bottom() - leading_of(Face::small);
    painter.setPen(QPen{Qt::black, 0.4 * pt});
    painter.drawLine(QPointF{frame.left(), footer_y - 3.0 * pt}, QPointF{frame.right(), footer_y - 3.0 * pt});
    paint_lines(painter, text_lines(draft_footer_, Face::small_strong, 0.5 * frame.width()),
                {frame.left(), footer_y});
    const QString& number = page_numbers_[static_cast<std::size_t>(page)];
    paint_lines(painter, text_lines(number, Face::small, 0.5 * frame.width(), 0.0, Qt::AlignRight),
                {frame.center().x(), footer_y});
    painter.restore();
}

}  // namespace wetfront::ui
