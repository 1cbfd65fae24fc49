// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "example_sheet.h"
#include "print/blocks.h"
#include "print/pdf.h"

namespace wetfront::ui {
namespace {

using namespace test;

constexpr double dots = 144.0;  // an inch: two pixels a point

const std::vector<Stroke> around_the_field{{{{0, 0}, {2500, 0}, {2500, 1000}, {0, 1000}, {0, 0}}}};
const std::vector<Stroke> across_the_middle{{{{1000, 500}, {1500, 500}}}};

SheetSignatures signed_with(const std::vector<Stroke>& drawn) {
    SheetSignatures signatures;
    signatures.lines = {{"Technician", "T. Example", "2026-07-01 14:22", drawn}, {"Grower", "", ""}};
    return signatures;
}

QImage page_with(const std::vector<Stroke>& drawn) {
    return preview_pages(sheet_of({SheetHeading{"Signatures"}, signed_with(drawn)}), Paper::letter, si, dots)
        .front();
}

/// Where two pages of one layout differ.
QRect difference(const QImage& a, const QImage& b) {
    QRect box;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            if (a.pixel(x, y) != b.pixel(x, y)) {
                box |= QRect{x, y, 1, 1};
            }
        }
    }
    return box;
}

bool is_black(QRgb pixel) {
    return qGray(pixel) < 60;
}

/// Rows in which the left half of the page is ruled over that many pixels.
int row_ruled_below(const QImage& page, int y, int length) {
    for (; y < page.height(); ++y) {
        int run = 0;
        for (int x = 0; x < page.width() / 2; ++x) {
            run = qGray(page.pixel(x, y)) < 128 ? run + 1 : 0;
            if (run >= length) {
                return y;
            }
        }
    }
    return -1;
}

// The field is 72 points high and two and a half times as wide; the line of ink is one point.
TEST(DrawnBlocksTest, a_drawn_signature_stands_whole_on_its_line_and_every_point_where_it_was_drawn) {
    const QImage page = page_with(around_the_field);
    const QImage middle = page_with(across_the_middle);
    const QRect box = difference(page, middle);
    EXPECT_NEAR(box.width(), 2 * 181, 3);
    EXPECT_NEAR(box.height(), 2 * 73, 3);
    EXPECT_TRUE(is_black(middle.pixel(box.center())));
    for (const double share : {0.3, 0.7}) {
        const QPoint beside{box.left() + static_cast<int>(share * box.width()), box.center().y()};
        EXPECT_FALSE(is_black(middle.pixel(beside))) << share;
    }
    const int rule = row_ruled_below(middle, box.top(), 2 * 200);
    EXPECT_NEAR(rule, box.bottom(), 4) << "it stands on the line";
}

TEST(DrawnBlocksTest, a_signature_is_black_and_as_thick_as_letters_are) {
    const QImage page = page_with(across_the_middle);
    const QRect box = difference(page, page_with(around_the_field));
    int black = 0;
    for (int y = box.center().y() - 20; y <= box.center().y() + 20; ++y) {
        const QRgb pixel = page.pixel(box.center().x(), y);
        EXPECT_TRUE(qRed(pixel) == qGreen(pixel) && qGreen(pixel) == qBlue(pixel)) << y;
        black += is_black(pixel) ? 1 : 0;
    }
    EXPECT_GE(black, 1) << "no pixel of 1/144 inch is black";
}

// Where signatures begin at every height of a page in turn.
TEST(DrawnBlocksTest, a_signature_is_never_parted_from_its_heading_its_name_and_its_line) {
    const Measure measure{si, 500.0 * pt};
    const double page_height = 640.0 * pt;
    SheetSignatures four = signed_with(around_the_field);
    four.lines.push_back(four.lines.front());
    four.lines.push_back(four.lines.front());
    std::size_t on_second_page = 0;
    for (int filled = 0; filled < 640; filled += 7) {
        Row filler;
        filler.cells.push_back(
            {0.0, std::vector<Line>(static_cast<std::size_t>(filled), Line{1.0 * pt, {}})});
        Rows rows{filler};
        for (auto more : {rows_of(SheetHeading{"Signatures"}, measure), rows_of(four, measure)}) {
            std::ranges::move(more, std::back_inserter(rows));
        }
        ASSERT_EQ(rows.size(), 1U + 1U + 6U) << "filler, heading, and for each two signers three rows";
        const auto pages = paginate(rows, page_height);
        std::vector<std::size_t> page_of_row;
        for (std::size_t page = 0; page < pages.size(); ++page) {
            for (const auto& placed : pages[page]) {
                EXPECT_LE(placed.top + placed.height, page_height) << filled;
                if (placed.first) {
                    page_of_row.push_back(page);
                } else {
                    EXPECT_EQ(placed.row->cells.front().lines.size(), static_cast<std::size_t>(filled))
                        << "only the filler may go on";
                }
            }
        }
        ASSERT_EQ(page_of_row.size(), rows.size()) << filled;
        for (const std::size_t row : {2U, 3U, 4U}) {
            EXPECT_EQ(page_of_row[row], page_of_row[1]) << filled << ", row " << row;
        }
        EXPECT_EQ(page_of_row[6], page_of_row[5]) << filled;
        EXPECT_EQ(page_of_row[7], page_of_row[5]) << filled;
        on_second_page += page_of_row[1];
    }
    EXPECT_GT(on_second_page, 10U);
}

TEST(DrawnBlocksTest, without_a_drawing_there_is_room_above_the_line_to_sign_by_hand) {
    SheetSignatures by_hand;
    by_hand.lines = {{"Technician", "T. Example", "2026-07-01 14:22"}};
    const auto rows = rows_of(by_hand, Measure{si, 500.0 * pt});
    ASSERT_EQ(rows.size(), 3U);
    const auto& room = rows[1].cells.front().lines;
    ASSERT_EQ(room.size(), 1U);
    EXPECT_GE(room.front().height, 24.0 * pt);
    EXPECT_FALSE(room.front().paint);
}

}  // namespace
}  // namespace wetfront::ui
