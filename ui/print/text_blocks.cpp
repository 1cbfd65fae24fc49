// SPDX-License-Identifier: Apache-2.0
#include <QPen>
#include <algorithm>
#include <numeric>

#include "print/blocks.h"
#include "print/marks.h"
#include "print/type.h"

namespace wetfront::ui {
namespace {

Row row_of(std::vector<Line> lines, double space_before) {
    Row row;
    row.cells.push_back({0.0, std::move(lines)});
    row.space_before = space_before;
    return row;
}

struct Pair {
    QString label;
    QString value;
};

// Label and value beside one another from x on.
void add_pair(Row& row, const Pair& pair, double x, double width) {
    const double label_width = 0.4 * width;
    const double between = 6.0 * pt;
    row.cells.push_back({x, text_lines(pair.label, Face::small, label_width - between)});
    if (!row.cells.back().lines.empty()) {
        // Down to the value's baseline: the label is set smaller.
        row.cells.back().lines.insert(row.cells.back().lines.begin(), gap(0.9 * pt));
    }
    row.cells.push_back({x + label_width, text_lines(pair.value, Face::body, width - label_width)});
}

bool is_short(const Pair& pair, double width) {
    constexpr std::size_t most_lines = 4;
    return text_lines(pair.label, Face::small, 0.4 * width - 6.0 * pt).size() <= most_lines &&
           text_lines(pair.value, Face::body, 0.6 * width).size() <= most_lines;
}

// Column widths that fill the body: the shares given, or equal ones where they make no sense.
std::vector<double> column_widths(const SheetTable& table, double width) {
    std::vector<double> shares = table.widths;
    const bool usable = shares.size() == table.columns.size() &&
                        std::all_of(shares.begin(), shares.end(), [](double share) { return share > 0.0; });
    if (!usable) {
        shares.assign(table.columns.size(), 1.0);
    }
    const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (double& share : shares) {
        share *= width / sum;
    }
    return shares;
}

}  // namespace

Rows title_rows(const SheetContent& content, const Measure& measure) {
    Row row = row_of(text_lines(measure.formatter.text(content.title), Face::title, measure.width), 0.0);
    row.cells.front().lines.push_back(gap(5.0 * pt));
    row.decoration = [](QPainter& painter, const QRectF& rect, bool, bool last) {
        if (last) {
            painter.setPen(QPen{Qt::black, 1.6 * pt});
            painter.drawLine(rect.bottomLeft(), rect.bottomRight());
        }
    };
    return {row};
}

Rows rows_of(const SheetHeading& heading, const Measure& measure) {
    Row row =
        row_of(text_lines(measure.formatter.text(heading.text), Face::heading, measure.width), 13.0 * pt);
    row.cells.front().lines.push_back(gap(2.5 * pt));
    row.keep_with_next = true;
    row.decoration = [](QPainter& painter, const QRectF& rect, bool, bool last) {
        if (last) {
            painter.setPen(QPen{Qt::black, 0.7 * pt});
            painter.drawLine(rect.bottomLeft(), rect.bottomRight());
        }
    };
    return {row};
}

Rows rows_of(const SheetParagraph& paragraph, const Measure& measure) {
    const Face face = paragraph.strong ? Face::strong : Face::body;
    return {row_of(text_lines(measure.formatter.text(paragraph.text), face, measure.width), 4.0 * pt)};
}

Rows rows_of(const SheetFacts& facts, const Measure& measure) {
    const double between = 16.0 * pt;
    const double half = (measure.width - between) / 2.0;
    Rows rows;
    bool left_taken = false;
    for (const auto& fact : facts.facts) {
        const Pair pair{measure.formatter.text(fact.label), measure.formatter.text(fact.value)};
        if (is_short(pair, half)) {
            if (left_taken) {
                add_pair(rows.back(), pair, half + between, half);
            } else {
                rows.emplace_back();
                add_pair(rows.back(), pair, 0.0, half);
            }
            left_taken = !left_taken;
        } else {
            rows.emplace_back();
            // The value starts where those of the left column do.
            add_pair(rows.back(), pair, 0.0, half);
            rows.back().cells.back().lines = text_lines(pair.value, Face::body, measure.width - 0.4 * half);
            left_taken = false;
        }
    }
    for (auto& row : rows) {
        row.space_before = 1.0 * pt;
        row.padding = 1.3 * pt;
    }
    if (!rows.empty()) {
        rows.front().space_before = 4.0 * pt;
    }
    return rows;
}

Rows rows_of(const SheetTable& table, const Measure& measure) {
    const auto widths = column_widths(table, measure.width);
    const double between = 6.0 * pt;
    Row head;
    double x = 0.0;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        head.cells.push_back({x, text_lines(measure.formatter.text(table.columns[c]), Face::small_strong,
                                            widths[c] - between)});
        x += widths[c];
    }
    head.space_before = 6.0 * pt;
    head.padding = 2.0 * pt;
    head.keep_with_next = true;
    head.decoration = [](QPainter& painter, const QRectF& rect, bool, bool last) {
        if (last) {
            painter.setPen(QPen{Qt::black, 0.7 * pt});
            painter.drawLine(rect.bottomLeft(), rect.bottomRight());
        }
    };
    double head_height = 2.0 * head.padding;
    for (const auto& cell : head.cells) {
        head_height = std::max(head_height, 2.0 * head.padding + static_cast<double>(cell.lines.size()) *
                                                                     leading_of(Face::small_strong));
    }
    const auto shared_head = std::make_shared<const Row>(head);

    Rows rows{head};
    for (const auto& cells : table.rows) {
        Row row;
        x = 0.0;
        for (std::size_t c = 0; c < std::min(cells.size(), widths.size()); ++c) {
            QString text = measure.formatter.text(cells[c].text);
            if (cells[c].marked) {
                text.prepend(QStringLiteral("\u2260 "));
            }
            row.cells.push_back(
                {x, text_lines(text, cells[c].marked ? Face::strong : Face::body, widths[c] - between)});
            x += widths[c];
        }
        row.padding = 2.2 * pt;
        if (head_height <= most_head_height) {
            row.repeated_head = shared_head;
        }
        row.decoration = [](QPainter& painter, const QRectF& rect, bool, bool last) {
            if (last) {
                painter.setPen(QPen{QColor{0x90, 0x90, 0x90}, 0.4 * pt});
                painter.drawLine(rect.bottomLeft(), rect.bottomRight());
            }
        };
        rows.push_back(std::move(row));
    }
    keep_last_two(rows);
    return rows;
}

Rows rows_of(const SheetChecks& checks, const Measure& measure) {
    const double indent = 18.0 * pt;
    Rows rows;
    for (const auto& check : checks.lines) {
        Row row;
        row.cells.push_back({0.0, {tick_box(check.done)}});
        QString text = measure.formatter.text(check.text);
        if (!check.word.empty()) {
            text.prepend(measure.formatter.text(check.word) + QStringLiteral(": "));
        }
        auto lines = text_lines(text, check.done ? Face::body : Face::strong, measure.width - indent);
        if (!check.note.empty()) {
            append(lines, text_lines(measure.formatter.text(Message{WF_TEXT("Note: %1"), {check.note}}),
                                     Face::small, measure.width - indent));
        }
        row.cells.push_back({indent, std::move(lines)});
        row.space_before = rows.empty() ? 4.0 * pt : 1.0 * pt;
        row.padding = 1.2 * pt;
        rows.push_back(std::move(row));
    }
    keep_last_two(rows);
    return rows;
}

}  // namespace wetfront::ui
