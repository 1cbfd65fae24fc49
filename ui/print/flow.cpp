// SPDX-License-Identifier: Apache-2.0
#include "print/flow.h"

#include <algorithm>

namespace wetfront::ui {
namespace {

struct Chunk {
    std::shared_ptr<const Row> row;
    std::vector<std::pair<std::size_t, std::size_t>> lines;
    double height = 0.0;
    bool first = true;
    bool last = true;

    [[nodiscard]] double space_before() const { return first ? row->space_before : 0.0; }
    [[nodiscard]] bool keep_with_next() const { return last && row->keep_with_next; }
};

double height_of(const Cell& cell, std::pair<std::size_t, std::size_t> lines) {
    double height = 0.0;
    for (std::size_t i = lines.first; i < lines.second; ++i) {
        height += cell.lines[i].height;
    }
    return height;
}

// As many lines of each cell as fit one piece; at least one line, so that every piece moves on.
std::vector<Chunk> chunks_of(const std::shared_ptr<const Row>& row) {
    std::vector<Chunk> chunks;
    std::vector<std::size_t> next(row->cells.size(), 0);
    bool more = true;
    while (more) {
        Chunk chunk{row, {}, 0.0, chunks.empty(), false};
        more = false;
        for (std::size_t c = 0; c < row->cells.size(); ++c) {
            const auto& lines = row->cells[c].lines;
            const std::size_t from = next[c];
            double height = 0.0;
            while (next[c] < lines.size() &&
                   (next[c] == from || height + lines[next[c]].height <= most_chunk_height)) {
                height += lines[next[c]].height;
                ++next[c];
            }
            chunk.lines.emplace_back(from, next[c]);
            chunk.height = std::max(chunk.height, height_of(row->cells[c], chunk.lines.back()));
            more = more || next[c] < lines.size();
        }
        chunk.height += 2.0 * row->padding;
        chunk.last = !more;
        chunks.push_back(std::move(chunk));
    }
    return chunks;
}

Chunk head_chunk(const std::shared_ptr<const Row>& head) {
    Chunk chunk{head, {}, 0.0, true, true};
    for (const auto& cell : head->cells) {
        chunk.lines.emplace_back(0, cell.lines.size());
        chunk.height = std::max(chunk.height, height_of(cell, chunk.lines.back()));
    }
    chunk.height += 2.0 * head->padding;
    return chunk;
}

// What has to stand on one page from chunk `i` on.
double chain_height(const std::vector<Chunk>& chunks, std::size_t i) {
    double height = chunks[i].height;
    while (chunks[i].keep_with_next() && i + 1 < chunks.size()) {
        ++i;
        height += chunks[i].space_before() + chunks[i].height;
    }
    return height;
}

}  // namespace

void keep_last_two(Rows& rows) {
    if (rows.size() > 1) {
        rows[rows.size() - 2].keep_with_next = true;
    }
}

std::vector<Page> paginate(const Rows& rows, double page_height) {
    std::vector<Chunk> chunks;
    for (const auto& row : rows) {
        auto pieces = chunks_of(std::make_shared<const Row>(row));
        std::move(pieces.begin(), pieces.end(), std::back_inserter(chunks));
    }
    std::vector<Page> pages(1);
    double y = 0.0;
    const auto place = [&](const Chunk& chunk) {
        pages.back().push_back({chunk.row, chunk.lines, y, chunk.height, chunk.first, chunk.last});
        y += chunk.height;
    };
    for (std::size_t i = 0; i < chunks.size(); ++i) {
        const double space = y > 0.0 ? chunks[i].space_before() : 0.0;
        const bool chain_fits = y + space + chain_height(chunks, i) <= page_height;
        // A chain that no page could hold is broken where the page ends, not before its beginning.
        const bool worth_moving =
            chain_height(chunks, i) <= page_height || y + space + chunks[i].height > page_height;
        if (!chain_fits && worth_moving && y > 0.0) {
            pages.emplace_back();
            y = 0.0;
            if (chunks[i].row->repeated_head) {
                place(head_chunk(chunks[i].row->repeated_head));
            }
        } else {
            y += space;
        }
        place(chunks[i]);
    }
    return pages;
}

void paint_rows(QPainter& painter, const Page& page, double body_width) {
    for (const auto& placed : page) {
        if (placed.row->decoration) {
            painter.save();
            placed.row->decoration(painter, QRectF{0.0, placed.top, body_width, placed.height}, placed.first,
                                   placed.last);
            painter.restore();
        }
        for (std::size_t c = 0; c < placed.row->cells.size(); ++c) {
            const Cell& cell = placed.row->cells[c];
            double y = placed.top + placed.row->padding;
            for (std::size_t i = placed.lines[c].first; i < placed.lines[c].second; ++i) {
                if (cell.lines[i].paint) {
                    cell.lines[i].paint(painter, QPointF{cell.x, y});
                }
                y += cell.lines[i].height;
            }
        }
    }
}

}  // namespace wetfront::ui
