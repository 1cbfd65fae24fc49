// SPDX-License-Identifier: Apache-2.0
#include "charts/signature_painter.h"

#include <gtest/gtest.h>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;

const QRectF field{10.0, 20.0, 500.0, 200.0};

QImage painted_with(const std::vector<Stroke>& strokes) {
    return painted(520, 240,
                   [&](QPainter& painter) { paint_strokes(painter, field, strokes, Qt::black, 3.0); });
}

TEST(SignaturePainterTest, the_corners_of_the_field_are_those_of_its_rectangle) {
    EXPECT_EQ(place_of({0, 0}, field), field.topLeft());
    EXPECT_EQ(place_of({field_width, field_height}, field), field.bottomRight());
    EXPECT_EQ(place_of({500, 250}, field), QPointF(110.0, 70.0));
}

TEST(SignaturePainterTest, a_line_has_ink_along_it_and_none_beside_it) {
    const QImage image = painted_with({{{{500, 250}, {1500, 250}, {1500, 750}}}});
    for (const QPoint on : {QPoint{110, 70}, {210, 70}, {310, 70}, {310, 120}, {310, 170}}) {
        EXPECT_TRUE(is_line(image.pixel(on))) << on.x() << ", " << on.y();
    }
    for (const QPoint beside : {QPoint{100, 70}, {210, 80}, {320, 120}, {210, 120}}) {
        EXPECT_FALSE(is_line(image.pixel(beside))) << beside.x() << ", " << beside.y();
    }
}

TEST(SignaturePainterTest, a_dot_is_seen) {
    EXPECT_TRUE(is_line(painted_with({{{{1250, 500}}}}).pixel(260, 120)));
}

TEST(SignaturePainterTest, a_long_line_has_no_gap) {
    Stroke stroke;
    for (int x = 0; x <= 2500; x += 5) {
        stroke.points.push_back({x, 500});
    }
    const auto columns = columns_with(painted_with({stroke}), 118, 123, is_line);
    EXPECT_GE(columns.size(), 500U);
}

}  // namespace
}  // namespace wetfront::ui
