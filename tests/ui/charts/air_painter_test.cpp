// SPDX-License-Identifier: Apache-2.0
#include "charts/air_painter.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

constexpr int width = 420;
constexpr int height = 220;

QFont font_of(int pixels = 12) {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(pixels);
    return font;
}

bool any_ink(QRgb pixel) {
    return (pixel & 0xffffff) != 0xffffff;
}

// 10 to 45 across, 0 to 35 up: one to one, so that a state's place is seen at once.
AirPicture empty_picture() {
    AirPicture picture;
    picture.temperature = {10.0, 45.0, QStringLiteral("air temperature, °C")};
    picture.water = {0.0, 35.0, QStringLiteral("water in the air, g/kg")};
    return picture;
}

// Curves of about the true shape; nothing is read from them here.
AirPicture with_curves(AirPicture picture) {
    for (const double share : {1.0, 0.5}) {
        AirCurve curve;
        curve.kind = share > 0.9 ? AirCurveKind::saturation : AirCurveKind::humidity;
        for (double t = 10.0; t <= 45.0; t += 1.0) {
            curve.points << QPointF{t, share * 7.6 * std::exp(0.06 * (t - 10.0))};
        }
        curve.label = share > 0.9 ? QStringLiteral("100 %") : QStringLiteral("50 %");
        picture.curves.push_back(curve);
    }
    return picture;
}

AirPicture with_states(AirPicture picture, QPointF outside, QPointF behind_pad, QPointF house) {
    picture.outside = AirState{outside, QStringLiteral("outside\n35.0 °C, 30 %")};
    picture.behind_pad = AirState{behind_pad, QStringLiteral("behind the pad\n24.5 °C, 79 %")};
    picture.house = AirState{house, QStringLiteral("in the house\n27.0 °C, 70 %")};
    return picture;
}

QImage image_of(const AirPicture& picture, int w = width, int h = height, const Ink& ink = plain_ink()) {
    return painted(
        w, h, [&](QPainter& painter) { paint_air(painter, QRectF(0, 0, w, h), picture, ink, font_of()); });
}

AirGeometry place_of(const AirPicture& picture, int w = width, int h = height) {
    return air_geometry(QRectF(0, 0, w, h), picture, QFontMetricsF{font_of()}, plain_ink().stroke);
}

// Where a state lies, by rule of three from the plot's edges.
QPointF expected_place(const QRectF& plot, QPointF state) {
    return {plot.left() + (state.x() - 10.0) / 35.0 * plot.width(),
            plot.bottom() - state.y() / 35.0 * plot.height()};
}

QPointF middle_of(const QImage& image, const Look& look) {
    QPointF sum;
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (look(image.pixel(x, y))) {
                sum += QPointF{x + 0.5, y + 0.5};
                ++count;
            }
        }
    }
    return count == 0 ? QPointF{-1e6, -1e6} : sum / count;
}

bool overlap(const QRectF& a, const QRectF& b) {
    const QRectF common = a.intersected(b);
    return common.width() * common.height() > 0.01;
}

TEST(AirPainterTest, a_state_stands_at_its_temperature_and_water) {
    for (const QPointF state : {QPointF{15, 5}, QPointF{27, 18}, QPointF{40, 30}}) {
        auto picture = empty_picture();
        picture.behind_pad = AirState{state, {}};  // the only thing in the colour of water
        const QPointF seen = middle_of(image_of(picture), is_strong_water);
        const QPointF wanted = expected_place(place_of(picture).plot, state);
        EXPECT_NEAR(seen.x(), wanted.x(), 1.0) << state.x() << ", " << state.y();
        EXPECT_NEAR(seen.y(), wanted.y(), 2.0) << state.x() << ", " << state.y();
    }
}

// Black ink at one and the same place: what differs is the shape.
TEST(AirPainterTest, the_three_marks_are_told_apart_by_shape_alone) {
    const std::vector<std::optional<AirState> AirPicture::*> states{
        &AirPicture::outside, &AirPicture::behind_pad, &AirPicture::house};
    std::vector<QImage> marks;
    for (const auto state : states) {
        auto picture = empty_picture();
        picture.*state = AirState{{25, 15}, {}};
        const QPointF centre = expected_place(place_of(picture).plot, {25, 15});
        marks.push_back(image_of(picture, width, height, paper_ink(1.5))
                            .copy(QRectF{centre.x() - 9.0, centre.y() - 9.0, 18.0, 18.0}.toAlignedRect()));
        EXPECT_GT(count_pixels(marks.back(), is_line), 25);
    }
    for (std::size_t i = 0; i < marks.size(); ++i) {
        for (std::size_t k = i + 1; k < marks.size(); ++k) {
            int differing = 0;
            for (int y = 0; y < marks[i].height(); ++y) {
                for (int x = 0; x < marks[i].width(); ++x) {
                    differing += is_line(marks[i].pixel(x, y)) != is_line(marks[k].pixel(x, y)) ? 1 : 0;
                }
            }
            EXPECT_GT(differing, 30) << "marks " << i << " and " << k;
        }
    }
}

TEST(AirPainterTest, marks_on_one_place_are_all_seen) {
    const auto all = with_states(empty_picture(), {25, 15}, {25, 15}, {25, 15});
    const auto mark = [&](const AirPicture& picture) {
        const QPointF centre = expected_place(place_of(all).plot, {25, 15});
        return image_of(picture).copy(QRectF{centre.x() - 8.0, centre.y() - 8.0, 16.0, 16.0}.toAlignedRect());
    };
    for (const auto state : {&AirPicture::outside, &AirPicture::behind_pad, &AirPicture::house}) {
        auto less = all;
        (less.*state).reset();
        EXPECT_NE(mark(less), mark(all));
    }
}

TEST(AirPainterTest, the_gain_is_an_arrow_from_behind_the_pad_to_the_house) {
    const auto picture = with_states(empty_picture(), {40, 8}, {20, 18}, {34, 18});
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    const auto warm = columns_with(image, 0, height, is_warm);
    ASSERT_THAT(warm, Not(IsEmpty()));
    const double tail = expected_place(plot, {20, 18}).x();
    const double tip = expected_place(plot, {34, 18}).x();
    EXPECT_GT(first(warm), tail);
    EXPECT_LT(last(warm), tip);
    EXPECT_GT(last(warm) - first(warm), 0.7 * (tip - tail));
    // Its head is at the house: there it is taller than at its tail.
    const auto tall = [&](int from, int to) {
        int rows = 0;
        for (int y = 0; y < height; ++y) {
            bool any = false;
            for (int x = from; x <= to; ++x) {
                any = any || is_warm(image.pixel(x, y));
            }
            rows += any ? 1 : 0;
        }
        return rows;
    };
    EXPECT_GT(tall(last(warm) - 6, last(warm)), 2 * tall(first(warm), first(warm) + 6));
}

TEST(AirPainterTest, the_pad_works_along_an_arrow_from_outside_to_behind_the_pad) {
    const auto picture = with_states(empty_picture(), {40, 8}, {20, 18}, {20, 30});
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    for (const double share : {0.3, 0.5, 0.7}) {
        const QPointF point =
            expected_place(plot, QPointF{40, 8} + share * (QPointF{20, 18} - QPointF{40, 8}));
        EXPECT_TRUE(is_strong_water(image.pixel(static_cast<int>(point.x()), static_cast<int>(point.y()))))
            << "at " << share << " of the way";
    }
}

TEST(AirPainterTest, a_missing_state_takes_its_arrows_with_it) {
    const auto all = with_states(empty_picture(), {40, 8}, {20, 18}, {34, 18});
    auto no_house = all;
    no_house.house.reset();
    EXPECT_EQ(count_pixels(image_of(no_house), is_warm), 0);
    EXPECT_THAT(place_of(no_house).labels, SizeIs(2));
    auto no_pad = all;
    no_pad.behind_pad.reset();
    EXPECT_EQ(count_pixels(image_of(no_pad), is_warm), 0);
    EXPECT_EQ(count_pixels(image_of(no_pad), is_strong_water), 0);
    auto no_outside = all;
    no_outside.outside.reset();
    EXPECT_GT(count_pixels(image_of(no_outside), is_warm), 0);
    EXPECT_LT(count_pixels(image_of(no_outside), is_strong_water),
              count_pixels(image_of(all), is_strong_water) / 2);
    EXPECT_GT(count_pixels(image_of(empty_picture()), is_line), 100);  // the axes alone
}

TEST(AirPainterTest, a_state_beyond_the_axes_or_not_finite_is_not_drawn) {
    const QImage without = image_of(empty_picture());
    for (const QPointF state : {QPointF{9, 10}, QPointF{46, 10}, QPointF{20, 36}, QPointF{20, -1},
                                QPointF{std::numeric_limits<double>::quiet_NaN(), 10.0}}) {
        auto picture = empty_picture();
        picture.outside = AirState{state, QStringLiteral("outside")};
        EXPECT_EQ(image_of(picture), without) << state.x() << ", " << state.y();
    }
}

TEST(AirPainterTest, a_curve_runs_through_its_points) {
    auto picture = empty_picture();
    picture.curves.push_back(
        {AirCurveKind::saturation, QPolygonF{} << QPointF{12, 5} << QPointF{30, 12} << QPointF{40, 33}, {}});
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    for (const QPointF point : {QPointF{21, 8.5}, QPointF{30, 12}, QPointF{35, 22.5}}) {
        const QPointF at = expected_place(plot, point);
        EXPECT_TRUE(is_line(image.pixel(static_cast<int>(at.x()), static_cast<int>(at.y()))))
            << point.x() << ", " << point.y();
    }
}

TEST(AirPainterTest, the_kinds_of_curve_are_told_apart_without_colour) {
    const auto image = [](AirCurveKind kind) {
        auto picture = empty_picture();
        picture.curves.push_back({kind, QPolygonF{} << QPointF{12, 15} << QPointF{44, 15}, {}});
        const QPointF from = expected_place(place_of(picture).plot, {12, 15});
        const QPointF to = expected_place(place_of(picture).plot, {44, 15});
        return image_of(picture, width, height, paper_ink(2.0))
            .copy(QRect{static_cast<int>(from.x()), static_cast<int>(from.y()) - 5,
                        static_cast<int>(to.x() - from.x()), 10});
    };
    const auto thickness = [](const QImage& line) {
        int darkness = 0;
        for (int y = 0; y < line.height(); ++y) {
            darkness += 255 - qGray(line.pixel(2, y));
        }
        return darkness / 255.0;
    };
    EXPECT_GT(thickness(image(AirCurveKind::saturation)), 2.0 * thickness(image(AirCurveKind::humidity)));
    const auto covered = [](const QImage& line) {
        return static_cast<double>(columns_with(line, 0, line.height(), any_ink).size()) / line.width();
    };
    EXPECT_GT(covered(image(AirCurveKind::humidity)), 0.99);
    EXPECT_LT(covered(image(AirCurveKind::wet_bulb)), 0.75);
}

TEST(AirPainterTest, a_curve_is_cut_off_at_the_axes_and_named_where_it_leaves) {
    auto picture = empty_picture();
    // Leaves through the top half way between 20 and 30.
    picture.curves.push_back({AirCurveKind::saturation, QPolygonF{} << QPointF{20, 0} << QPointF{30, 70},
                              QStringLiteral("100 %")});
    const auto place = place_of(picture);
    ASSERT_THAT(place.labels, SizeIs(1));
    const QPointF leaves = expected_place(place.plot, {25, 35});
    const QRectF box = place.labels.front().box;
    EXPECT_LT(std::abs(box.center().x() - leaves.x()), box.width() + 20.0);
    EXPECT_LT(box.top() - leaves.y(), 2.0 * box.height());
    const QImage image = image_of(picture);
    const auto above = columns_with(image, 0, static_cast<int>(place.plot.top()) - 1, is_line);
    // Above the plot there is only the title.
    EXPECT_LE(last(above), place.titles.front().box.right());
    EXPECT_LT(place.titles.front().box.right(), leaves.x());
}

struct Constellation {
    const char* name;
    QPointF outside;
    QPointF behind_pad;
    QPointF house;
};
const std::vector<Constellation> constellations{
    {"a dry day", {38, 8}, {24, 14}, {27, 14.5}},
    {"a common day", {35, 11}, {25, 15}, {27, 15.5}},
    {"a damp day", {32, 20}, {28, 22}, {29, 22}},
    {"fog", {26, 20}, {26, 20}, {26.2, 20}},
    {"all on one place", {30, 12}, {30, 12}, {30, 12}},
    {"in the upper right corner", {44.9, 34.9}, {44, 34.5}, {44.5, 34.9}},
    {"in the lower left corner", {10, 0}, {10, 0.5}, {10.5, 0}},
    {"in the lower right corner", {45, 0}, {44, 1}, {45, 1}},
    {"in the upper left corner", {10, 35}, {11, 34}, {12, 35}},
    {"far apart", {44, 2}, {12, 7}, {25, 30}},
    {"a house warmer than outside", {30, 10}, {22, 13}, {38, 14}},
    {"one above the other", {25, 5}, {25, 15}, {25, 25}},
};

TEST(AirPainterTest, labels_lie_inside_clear_of_each_other_and_of_the_marks) {
    for (const QSize size : {QSize{900, 260}, QSize{420, 220}, QSize{360, 220}, QSize{360, 400}}) {
        for (const auto& states : constellations) {
            const auto picture =
                with_states(with_curves(empty_picture()), states.outside, states.behind_pad, states.house);
            const auto place = place_of(picture, size.width(), size.height());
            const std::string which = std::string{states.name} + " at " + std::to_string(size.width());
            std::vector<QRectF> boxes;
            QStringList texts;
            for (const auto& label : place.labels) {
                EXPECT_TRUE(place.plot.contains(label.box)) << which << ": " << label.text.toStdString();
                boxes.push_back(label.box);
                texts << label.text;
            }
            for (const auto* state : {&picture.outside, &picture.behind_pad, &picture.house}) {
                EXPECT_TRUE(texts.contains((*state)->label))
                    << which << ": " << (*state)->label.toStdString() << " is missing";
                const QPointF mark = expected_place(place.plot, (*state)->at);
                const double r = 1.4 * place.mark_radius;
                for (const QRectF& box : boxes) {
                    EXPECT_FALSE(overlap(box, QRectF{mark.x() - r, mark.y() - r, 2.0 * r, 2.0 * r}))
                        << which << ": a label lies on a mark";
                }
            }
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                for (std::size_t k = i + 1; k < boxes.size(); ++k) {
                    EXPECT_FALSE(overlap(boxes[i], boxes[k]))
                        << which << ": " << texts[static_cast<int>(i)].toStdString() << " and "
                        << texts[static_cast<int>(k)].toStdString();
                }
            }
        }
    }
}

TEST(AirPainterTest, a_label_far_from_its_mark_is_tied_to_it_by_a_line) {
    const auto picture = with_states(empty_picture(), {30, 12}, {30, 12}, {30, 12});
    for (const int h : {160, 220, 300}) {
        const auto place = place_of(picture, 300, h);
        for (const auto& label : place.labels) {
            const QPointF mark = expected_place(place.plot, {30, 12});
            const QPointF nearest{std::clamp(mark.x(), label.box.left(), label.box.right()),
                                  std::clamp(mark.y(), label.box.top(), label.box.bottom())};
            const bool tied =
                std::any_of(place.leaders.begin(), place.leaders.end(), [&](const QLineF& line) {
                    return QLineF{line.p2(), nearest}.length() < 0.5;
                });
            const double away = QLineF{mark, nearest}.length();
            EXPECT_TRUE(tied || away < 30.0) << label.text.toStdString() << ", away " << away;
        }
    }
}

TEST(AirPainterTest, ticks_are_whole_numbers_at_their_places_and_clear_of_each_other) {
    for (const QSize size : {QSize{900, 260}, QSize{420, 220}, QSize{360, 220}, QSize{240, 160}}) {
        const auto place = place_of(empty_picture(), size.width(), size.height());
        EXPECT_THAT(place.temperature_ticks, SizeIs(testing::Ge(3)));
        EXPECT_THAT(place.water_ticks, SizeIs(testing::Ge(3)));
        std::vector<QRectF> boxes;
        for (const auto& tick : place.temperature_ticks) {
            EXPECT_NEAR(tick.at.x(), expected_place(place.plot, {tick.label.text.toDouble(), 0.0}).x(), 0.01);
            boxes.push_back(tick.label.box);
        }
        for (const auto& tick : place.water_ticks) {
            EXPECT_NEAR(tick.at.y(), expected_place(place.plot, {10.0, tick.label.text.toDouble()}).y(),
                        0.01);
            boxes.push_back(tick.label.box);
        }
        for (const auto& title : place.titles) {
            boxes.push_back(title.box);
        }
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            EXPECT_TRUE(QRectF(QPointF{}, QSizeF{size}).contains(boxes[i])) << size.width() << " part " << i;
            EXPECT_FALSE(overlap(boxes[i], place.plot)) << size.width() << " part " << i;
            for (std::size_t k = i + 1; k < boxes.size(); ++k) {
                EXPECT_FALSE(overlap(boxes[i], boxes[k])) << size.width() << " parts " << i << ", " << k;
            }
        }
    }
}

TEST(AirPainterTest, axes_without_a_span_draw_nothing) {
    for (const double to :
         {10.0, 5.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        auto picture = with_states(with_curves(empty_picture()), {35, 11}, {25, 15}, {27, 15});
        picture.temperature.to = to;
        EXPECT_EQ(count_pixels(image_of(picture), any_ink), 0) << to;
    }
}

TEST(AirPainterTest, nothing_is_painted_outside_its_area) {
    for (const QSize size : {QSize{240, 160}, QSize{360, 220}, QSize{900, 260}, QSize{300, 500}}) {
        for (const auto& states : constellations) {
            auto picture =
                with_states(with_curves(empty_picture()), states.outside, states.behind_pad, states.house);
            picture.curves.push_back(
                {AirCurveKind::wet_bulb, QPolygonF{} << QPointF{-50, 90} << QPointF{90, -50}, {}});
            const QRect area{QPoint{40, 40}, size};
            QImage image = painted(size.width() + 80, size.height() + 80, [&](QPainter& painter) {
                paint_air(painter, area, picture, plain_ink(), font_of());
            });
            EXPECT_GT(count_pixels(image.copy(area), is_line), 100);
            QPainter painter{&image};
            painter.fillRect(area, Qt::white);
            painter.end();
            EXPECT_EQ(count_pixels(image, any_ink), 0)
                << states.name << ", " << size.width() << " x " << size.height();
        }
    }
}

TEST(AirPainterTest, an_area_too_small_for_it_stays_as_clean_around) {
    for (const QSize size :
         {QSize{1, 1}, QSize{12, 12}, QSize{60, 20}, QSize{20, 300}, QSize{300, 40}, QSize{100, 60}}) {
        const QRect area{QPoint{60, 60}, size};
        QImage image = painted(size.width() + 120, size.height() + 120, [&](QPainter& painter) {
            paint_air(painter, area, with_states(with_curves(empty_picture()), {35, 11}, {25, 15}, {27, 15}),
                      plain_ink(), font_of());
        });
        QPainter painter{&image};
        painter.fillRect(area, Qt::white);
        painter.end();
        EXPECT_EQ(count_pixels(image, any_ink), 0) << size.width() << " x " << size.height();
    }
}

TEST(AirPainterTest, it_is_drawn_to_the_painters_scale) {
    auto picture = empty_picture();
    picture.behind_pad = AirState{{27, 18}, {}};
    Ink ink = plain_ink();
    ink.stroke = 0.8;
    const QImage image = painted(1200, 720, [&](QPainter& painter) {
        painter.scale(4.0, 4.0);
        paint_air(painter, QRectF(0, 0, 300, 180), picture, ink, font_of(8));
    });
    const auto place = air_geometry(QRectF(0, 0, 300, 180), picture, QFontMetricsF{font_of(8)}, 0.8);
    const QPointF seen = middle_of(image, is_strong_water) / 4.0;
    const QPointF wanted = expected_place(place.plot, {27, 18});
    EXPECT_NEAR(seen.x(), wanted.x(), 0.5);
    EXPECT_NEAR(seen.y(), wanted.y(), 1.5);
}

TEST(AirPainterTest, the_painter_is_left_as_it_was) {
    painted(width, height, [](QPainter& painter) {
        painter.setPen(Qt::green);
        const QFont font = painter.font();
        paint_air(painter, QRectF(0, 0, width, height),
                  with_states(with_curves(empty_picture()), {35, 11}, {25, 15}, {27, 15}), plain_ink(),
                  font_of(17));
        EXPECT_EQ(painter.pen().color(), QColor{Qt::green});
        EXPECT_EQ(painter.font(), font);
        EXPECT_FALSE(painter.hasClipping());
    });
}

}  // namespace
}  // namespace wetfront::ui
