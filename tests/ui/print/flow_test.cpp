// SPDX-License-Identifier: Apache-2.0
#include "print/flow.h"

#include <gmock/gmock.h>

#include <random>

namespace wetfront::ui {
namespace {

constexpr double page = 4.0 * most_chunk_height;

Row row_of(std::size_t lines, double height) {
    Row row;
    row.cells.push_back({0.0, std::vector<Line>(lines, Line{height, {}})});
    return row;
}

double height_of(const Page& placed) {
    return placed.empty() ? 0.0 : placed.back().top + placed.back().height;
}

TEST(FlowTest, nothing_is_one_empty_page) {
    EXPECT_EQ(paginate({}, page).size(), 1U);
    EXPECT_TRUE(paginate({}, page).front().empty());
}

TEST(FlowTest, rows_stand_below_one_another_with_their_space) {
    Row second = row_of(1, 100.0);
    second.space_before = 30.0;
    const auto pages = paginate({row_of(2, 100.0), second}, page);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_EQ(pages[0][1].top, 230.0);
    EXPECT_EQ(pages[0][1].height, 100.0);
}

TEST(FlowTest, space_before_is_dropped_at_the_top_of_a_page) {
    Row row = row_of(1, most_chunk_height);
    row.space_before = 50.0;
    const auto pages = paginate(Rows(8, row), page);
    for (const auto& placed : pages) {
        EXPECT_EQ(placed.front().top, 0.0);
    }
}

TEST(FlowTest, a_row_that_is_kept_with_the_next_never_ends_a_page) {
    for (std::size_t before = 1; before < 12; ++before) {
        Rows rows(before, row_of(1, most_chunk_height / 2.0));
        Row heading = row_of(1, 100.0);
        heading.keep_with_next = true;
        rows.push_back(heading);
        rows.push_back(row_of(1, most_chunk_height / 2.0));
        for (const auto& placed : paginate(rows, page)) {
            EXPECT_FALSE(placed.back().row->keep_with_next) << before;
        }
    }
}

TEST(FlowTest, a_chain_that_no_page_holds_is_broken_and_still_fits) {
    Row row = row_of(1, most_chunk_height);
    row.keep_with_next = true;
    const auto pages = paginate(Rows(11, row), page);
    std::size_t count = 0;
    for (const auto& placed : pages) {
        EXPECT_LE(height_of(placed), page);
        count += placed.size();
    }
    EXPECT_EQ(count, 11U);
}

TEST(FlowTest, a_head_is_repeated_where_its_rows_begin_a_page) {
    Row head = row_of(1, 200.0);
    head.keep_with_next = true;
    Row row = row_of(1, most_chunk_height / 3.0);
    row.repeated_head = std::make_shared<const Row>(head);
    Rows rows{head};
    rows.insert(rows.end(), 40, row);
    const auto pages = paginate(rows, page);
    ASSERT_GT(pages.size(), 2U);
    for (const auto& placed : pages) {
        EXPECT_EQ(placed.front().height, 200.0);
        EXPECT_NE(placed[1].height, 200.0);
        EXPECT_LE(height_of(placed), page);
    }
}

TEST(FlowTest, the_last_row_of_a_list_has_company) {
    Rows rows(3, row_of(1, 10.0));
    keep_last_two(rows);
    EXPECT_FALSE(rows[0].keep_with_next);
    EXPECT_TRUE(rows[1].keep_with_next);
    EXPECT_FALSE(rows[2].keep_with_next);
}

// Rows of every shape: each line is placed once and in order, nothing overlaps, nothing is below the page's
// end.
TEST(FlowTest, every_line_of_any_rows_is_placed_once_and_within_its_page) {
    std::mt19937 random{20260701};
    const auto below = [&](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(random);
    };
    for (int round = 0; round < 300; ++round) {
        Rows rows;
        std::vector<std::size_t> wanted;
        const auto head = std::make_shared<const Row>(row_of(1, 300.0));
        for (std::size_t i = below(40); i > 0; --i) {
            Row row;
            for (std::size_t cells = 1 + below(4); cells > 0; --cells) {
                const double height = 50.0 + static_cast<double>(below(400));
                row.cells.push_back({0.0, std::vector<Line>(below(60), Line{height, {}})});
                wanted.push_back(row.cells.back().lines.size());
            }
            row.space_before = static_cast<double>(below(200));
            row.padding = static_cast<double>(below(60));
            row.keep_with_next = below(3) == 0;
            if (below(3) == 0) {
                row.repeated_head = head;
            }
            rows.push_back(std::move(row));
        }
        std::vector<std::size_t> placed_lines;
        const Row* current = nullptr;
        for (const auto& placed_page : paginate(rows, page)) {
            double y = 0.0;
            for (const auto& placed : placed_page) {
                EXPECT_GE(placed.top, y - 1e-9);
                y = placed.top + placed.height;
                if (placed.row == head) {
                    continue;
                }
                if (placed.first) {
                    current = placed.row.get();
                    placed_lines.resize(placed_lines.size() + placed.lines.size(), 0);
                }
                ASSERT_EQ(placed.row.get(), current);
                for (std::size_t c = 0; c < placed.lines.size(); ++c) {
                    auto& next = placed_lines[placed_lines.size() - placed.lines.size() + c];
                    ASSERT_EQ(placed.lines[c].first, next);
                    next = placed.lines[c].second;
                }
            }
            EXPECT_LE(y, page + 1e-9) << "round " << round;
        }
        EXPECT_EQ(placed_lines, wanted) << "round " << round;
    }
}

}  // namespace
}  // namespace wetfront::ui
