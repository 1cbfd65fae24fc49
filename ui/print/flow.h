// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainter>
#include <QRectF>
#include <functional>
#include <memory>
#include <vector>

namespace wetfront::ui {

/// The sheet is laid out in these units, on every device alike, so that screen, printer and file break pages
/// at the same places: 20 to a point, 1440 to an inch.
constexpr double pt = 20.0;
constexpr double units_per_inch = 72.0 * pt;

/// Something that is never cut: a line of text, a drawing.
struct Line {
    double height = 0.0;
    std::function<void(QPainter&, QPointF top_left)> paint;
};

/// Lines below one another.
struct Cell {
    double x = 0.0;  ///< from the left edge of the body
    std::vector<Line> lines;
};

/// Cells beside one another. A row that is higher than `most_chunk_height` is split between lines.
struct Row {
    using Decoration = std::function<void(QPainter&, const QRectF& rect, bool first, bool last)>;

    std::vector<Cell> cells;
    double space_before = 0.0;    ///< dropped at the top of a page
    double padding = 0.0;         ///< above and below the lines
    bool keep_with_next = false;  ///< never the last on a page
    Decoration decoration;        ///< painted under each piece: is it the row's first, the row's last?
    std::shared_ptr<const Row>
        repeated_head;  ///< painted above where this row, or the rest of it, begins a page
};
using Rows = std::vector<Row>;

/// Keeps the last row of a list in the company of the one before it.
void keep_last_two(Rows& rows);

constexpr double most_chunk_height = 170.0 * pt;

/// The most that can be repeated on top of a page.
constexpr double most_head_height = 90.0 * pt;

/// A piece of a row at its place. `lines` holds, a cell, the first line and the one behind the last.
struct Placed {
    std::shared_ptr<const Row> row;
    std::vector<std::pair<std::size_t, std::size_t>> lines;
    double top = 0.0;  ///< from the top of the body
    double height = 0.0;
    bool first = true;
    bool last = true;
};
using Page = std::vector<Placed>;

/// Rows to pages of `page_height` (at least twice `most_chunk_height`). Every line is placed exactly once, in
/// order; nothing is higher than the page as long as no line is higher than `most_chunk_height`. At least one
/// page.
[[nodiscard]] std::vector<Page> paginate(const Rows& rows, double page_height);

/// Paints one page's rows; the painter's origin is the top left corner of the body.
void paint_rows(QPainter& painter, const Page& page, double body_width);

}  // namespace wetfront::ui
