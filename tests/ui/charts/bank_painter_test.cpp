// SPDX-License-Identifier: Apache-2.0
#include "charts/bank_painter.h"

#include <gmock/gmock.h>

#include <cmath>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;
using testing::Each;
using testing::Gt;
using testing::IsEmpty;
using testing::Lt;
using testing::Not;

constexpr int width = 600;
constexpr int height = 300;

QImage image_of(const BankPicture& picture, int w = width, int h = height) {
    return painted(w, h,
                   [&](QPainter& painter) { paint_bank(painter, QRectF(0, 0, w, h), picture, plain_ink()); });
}

BankGeometry place(bool pump_on_left = true, double aspect = 0.0) {
    return bank_geometry(QRectF(0, 0, width, height), pump_on_left, aspect, plain_ink().stroke);
}

std::vector<double> even(double depth) {
    return std::vector<double>(20, depth);
}

TEST(BankPainterTest, the_header_lies_above_the_pad_and_the_gutter_below) {
    const auto p = place();
    EXPECT_LT(p.header.bottom(), p.pad.top());
    EXPECT_LT(p.pad.bottom(), p.gutter.top());
    EXPECT_LE(p.sump.bottom(), height);
}

TEST(BankPainterTest, the_pump_stands_at_its_true_end) {
    BankPicture picture;
    picture.running = true;  // the pump is filled with the colour of water
    const auto left = columns_with(image_of(picture), 0, height, is_strong_water);
    EXPECT_THAT(left, Not(IsEmpty()));
    EXPECT_THAT(left, Each(Lt(width / 4)));
    picture.pump_on_left = false;
    const auto right = columns_with(image_of(picture), 0, height, is_strong_water);
    EXPECT_THAT(right, Not(IsEmpty()));
    EXPECT_THAT(right, Each(Gt(3 * width / 4)));
}

TEST(BankPainterTest, a_stopped_pump_is_not_filled) {
    EXPECT_EQ(count_pixels(image_of(BankPicture{}), is_strong_water), 0);
}

// Along the header the hatching reaches as far as the water does, from the pump's end.
TEST(BankPainterTest, the_header_is_hatched_up_to_the_front) {
    for (const double front : {0.25, 0.5, 0.8}) {
        for (const bool pump_on_left : {true, false}) {
            BankPicture picture;
            picture.pump_on_left = pump_on_left;
            picture.header_front = front;
            const auto header = place(pump_on_left).header;
            const auto wet = columns_with(image_of(picture), static_cast<int>(header.top()) + 2,
                                          static_cast<int>(header.bottom()) - 1, is_strong_water);
            ASSERT_THAT(wet, Not(IsEmpty()));
            const double reached = pump_on_left ? (wet.back() + 1 - header.left()) / header.width()
                                                : (header.right() - wet.front()) / header.width();
            EXPECT_NEAR(reached, front, 3.0 / header.width()) << "pump on left " << pump_on_left;
        }
    }
}

TEST(BankPainterTest, the_pad_is_wet_down_to_the_depth_of_each_column) {
    BankPicture picture;
    for (int i = 0; i < 20; ++i) {
        picture.wet_front.push_back(0.9 - 0.04 * i);
    }
    const QImage image = image_of(picture);
    const auto pad = place().pad;
    for (const int column : {2, 10, 17}) {
        const auto rows =
            rows_with(image, static_cast<int>(pad.left() + (column + 0.5) / 20.0 * pad.width()), is_water);
        ASSERT_THAT(rows, Not(IsEmpty()));
        EXPECT_NEAR((rows.back() + 1 - pad.top()) / pad.height(), 0.9 - 0.04 * column, 3.0 / pad.height())
            << "column " << column;
    }
}

TEST(BankPainterTest, columns_count_from_the_pumps_end) {
    BankPicture picture;
    picture.wet_front = even(0.0);
    picture.wet_front.front() = 1.0;
    const auto pad = place().pad;
    const auto middle = static_cast<int>(pad.center().y());
    EXPECT_THAT(columns_with(image_of(picture), middle, middle + 1, is_water),
                Each(Lt(pad.left() + pad.width() / 10.0)));
    picture.pump_on_left = false;
    const auto mirrored = place(false).pad;
    const auto wet = columns_with(image_of(picture), middle, middle + 1, is_water);
    EXPECT_THAT(wet, Not(IsEmpty()));
    EXPECT_THAT(wet, Each(Gt(mirrored.right() - mirrored.width() / 10.0)));
}

TEST(BankPainterTest, a_dry_pad_holds_no_water) {
    BankPicture picture;
    picture.wet_front = even(0.0);
    const auto pad = place().pad.toAlignedRect();
    EXPECT_EQ(count_pixels(image_of(picture).copy(pad), is_water), 0);
}

TEST(BankPainterTest, drops_fall_below_the_columns_that_drip) {
    BankPicture picture;
    picture.wet_front = even(1.0);
    picture.dripping.assign(20, false);
    picture.dripping[3] = true;
    const auto p = place();
    const auto drops = columns_with(image_of(picture), static_cast<int>(p.pad.bottom()) + 3,
                                    static_cast<int>(p.gutter.top()) - 1, is_strong_water);
    const double middle = p.pad.left() + 3.5 / 20.0 * p.pad.width();
    std::vector<int> beside_the_riser;
    std::copy_if(drops.begin(), drops.end(), std::back_inserter(beside_the_riser),
                 [&](int x) { return x > p.pad.left(); });
    EXPECT_THAT(beside_the_riser, Not(IsEmpty()));
    EXPECT_THAT(beside_the_riser, Each(testing::AllOf(Gt(middle - 6.0), Lt(middle + 6.0))));
}

TEST(BankPainterTest, a_drying_column_is_marked_in_the_warm_colour_and_only_there) {
    BankPicture picture;
    picture.wet_front = even(1.0);
    picture.drying.assign(20, false);
    picture.drying[18] = true;
    const auto pad = place().pad;
    const auto warm = columns_with(image_of(picture), 0, height, is_warm);
    EXPECT_THAT(warm, Not(IsEmpty()));
    EXPECT_THAT(
        warm, Each(testing::AllOf(Gt(pad.left() + 0.89 * pad.width()), Lt(pad.left() + 0.96 * pad.width()))));
}

TEST(BankPainterTest, a_share_out_of_range_is_drawn_as_the_nearest_end) {
    BankPicture beyond;
    beyond.header_front = 1.7;
    beyond.wet_front = even(2.0);
    BankPicture full;
    full.header_front = 1.0;
    full.wet_front = even(1.0);
    EXPECT_EQ(image_of(beyond), image_of(full));
}

TEST(BankPainterTest, a_long_bank_is_drawn_lower_than_a_short_one_and_never_as_a_line) {
    EXPECT_LT(place(true, 8.0).pad.height(), place(true, 3.0).pad.height());
    EXPECT_GT(place(true, 100.0).pad.height(), 0.15 * height);
}

TEST(BankPainterTest, nothing_is_painted_outside_its_area) {
    BankPicture picture;
    picture.running = true;
    picture.header_front = 1.0;
    picture.wet_front = even(1.0);
    picture.dripping.assign(20, true);
    picture.drying.assign(20, true);
    for (const QSize size :
         {QSize{120, 60}, QSize{160, 80}, QSize{600, 300}, QSize{300, 600}, QSize{900, 100}}) {
        for (const bool line_art : {true, false}) {
            const QRect area{QPoint{40, 40}, size};
            QImage image = painted(size.width() + 80, size.height() + 80, [&](QPainter& painter) {
                Ink ink = plain_ink();
                ink.line_art = line_art;
                paint_bank(painter, area, picture, ink);
            });
            EXPECT_GT(count_pixels(image.copy(area), is_line), 100);
            QPainter painter{&image};
            painter.fillRect(area, Qt::white);
            painter.end();
            EXPECT_EQ(count_pixels(image, [](QRgb pixel) { return (pixel & 0xffffff) != 0xffffff; }), 0)
                << size.width() << " x " << size.height() << (line_art ? " in line art" : "");
        }
    }
}

TEST(BankPainterTest, a_wet_pad_in_line_art_is_drawn_in_lines_that_let_the_paper_through) {
    BankPicture picture;
    picture.wet_front = even(1.0);
    const auto pad = place().pad.toAlignedRect().adjusted(3, 3, -3, -3);
    const QImage image = painted(width, height, [&](QPainter& painter) {
        Ink ink = plain_ink();
        ink.line_art = true;
        paint_bank(painter, QRectF(0, 0, width, height), picture, ink);
    });
    const QImage face = image.copy(pad);
    EXPECT_GT(count_pixels(face, is_water), face.width() * face.height() / 8);
    EXPECT_GT(count_pixels(face, [](QRgb pixel) { return (pixel & 0xffffff) == 0xffffff; }),
              face.width() * face.height() / 8);
}

}  // namespace
}  // namespace wetfront::ui
