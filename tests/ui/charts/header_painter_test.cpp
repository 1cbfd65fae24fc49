// SPDX-License-Identifier: Apache-2.0
#include "charts/header_painter.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;
using testing::Each;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

constexpr int width = 600;
constexpr int height = 240;

QFont font_of(int pixels = 12) {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(pixels);
    return font;
}

bool any_ink(QRgb pixel) {
    return (pixel & 0xffffff) != 0xffffff;
}

// Outlets in the middles of equal stretches.
HeaderPicture picture_of(const std::vector<double>& flows) {
    HeaderPicture picture;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        picture.outlets.push_back(
            {(static_cast<double>(i) + 0.5) / static_cast<double>(flows.size()), flows[i]});
    }
    return picture;
}

std::vector<double> falling(int count) {
    std::vector<double> flows;
    for (int i = 0; i < count; ++i) {
        flows.push_back(1.1 - 0.2 * i / (count - 1));
    }
    return flows;
}

HeaderPicture worded(HeaderPicture picture) {
    picture.inlet_head = QStringLiteral("inlet head 2.13 m");
    picture.uniformity = QStringLiteral("low-quarter uniformity 94 %");
    picture.first = QStringLiteral("first outlet 1.31 L/min");
    picture.last = QStringLiteral("last outlet 1.10 L/min");
    picture.mean = QStringLiteral("mean 1.20 L/min");
    picture.lowest = QStringLiteral("lowest 1.10 L/min");
    picture.low_quarter = QStringLiteral("lowest quarter");
    picture.bars_name = QStringLiteral("no static recovery");
    picture.other_name = QStringLiteral("full static recovery");
    return picture;
}

QImage image_of(const HeaderPicture& picture, int w = width, int h = height) {
    return painted(w, h, [&](QPainter& painter) {
        paint_header(painter, QRectF(0, 0, w, h), picture, plain_ink(), font_of());
    });
}

HeaderGeometry place_of(const HeaderPicture& picture, int w = width, int h = height) {
    return header_geometry(QRectF(0, 0, w, h), picture, QFontMetricsF{font_of()}, plain_ink().stroke);
}

// Pixels that a bar reaches down from the header, at a share of the way along.
double length_at(const QImage& image, const HeaderGeometry& place, double share) {
    const auto rows = rows_with(image, static_cast<int>(std::lround(place.along(share))), is_water);
    return rows.empty() ? 0.0 : rows.back() + 1 - place.face.top();
}

QRect bar_inside(const HeaderGeometry& place, const OutletShare& outlet) {
    const double x = place.along(outlet.at);
    return QRectF{QPointF{x - place.bar_width / 2.0, place.face.top()},
                  QPointF{x + place.bar_width / 2.0, place.below(outlet.flow)}}
        .toAlignedRect()
        .adjusted(3, 4, -3, -4);
}

double share_of_paper(const QImage& image, const QRect& rect) {
    const int paper = count_pixels(image.copy(rect), [](QRgb pixel) { return qGray(pixel) > 235; });
    return static_cast<double>(paper) / (rect.width() * rect.height());
}

TEST(HeaderPainterTest, bars_are_as_long_as_their_flows) {
    // None at the mean, whose line would cover its end.
    const auto picture = picture_of({1.25, 1.1, 0.75, 0.9, 0.5, 1.5});
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    const double longest = length_at(image, place, picture.outlets.back().at);
    ASSERT_GT(longest, 0.4 * height);
    for (const auto& outlet : picture.outlets) {
        EXPECT_NEAR(length_at(image, place, outlet.at) / longest, outlet.flow / 1.5, 1.5 / longest)
            << "flow " << outlet.flow;
    }
}

TEST(HeaderPainterTest, an_outlet_without_flow_has_no_bar) {
    const auto picture = picture_of({1.2, 0.0, 1.2, 1.2, 1.2, 1.2});
    const auto place = place_of(picture);
    EXPECT_LE(length_at(image_of(picture), place, picture.outlets[1].at), 0.0);
}

TEST(HeaderPainterTest, the_line_of_the_mean_lies_at_the_end_of_a_bar_of_the_mean) {
    const auto picture = picture_of({1.0, 1.3, 0.7});
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    // Between two bars nothing else is drawn: the frame's lower edge comes after it.
    const auto rows = rows_with(image, static_cast<int>(place.along(1.0 / 3.0)), [](QRgb pixel) {
        return qGray(pixel) < 140 && qBlue(pixel) - qRed(pixel) < 15;
    });
    std::vector<int> below_pipe;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(below_pipe),
                 [&](int y) { return y > place.face.top() + 5; });
    ASSERT_THAT(below_pipe, Not(IsEmpty()));
    const double mean_length = below_pipe.front() + 0.5 - place.face.top();
    EXPECT_NEAR(mean_length / length_at(image, place, picture.outlets[1].at), 1.0 / 1.3,
                2.0 / (0.7 * place.face.height()));
}

TEST(HeaderPainterTest, the_pump_stands_at_its_true_end) {
    auto picture = picture_of({});
    const auto riser_and_pump = [&] {
        return columns_with(image_of(picture), height / 3, height, is_strong_water);
    };
    EXPECT_THAT(riser_and_pump(), Not(IsEmpty()));
    EXPECT_THAT(riser_and_pump(), Each(testing::Lt(width / 8)));
    picture.pump_on_left = false;
    EXPECT_THAT(riser_and_pump(), Not(IsEmpty()));
    EXPECT_THAT(riser_and_pump(), Each(testing::Gt(7 * width / 8)));
}

TEST(HeaderPainterTest, a_header_with_its_pump_at_the_right_is_the_mirror_of_one_at_the_left) {
    auto picture = picture_of({1.4, 1.2, 1.1, 0.8, 0.5});
    const QImage left = image_of(picture);
    picture.pump_on_left = false;
    const QImage right = image_of(picture).mirrored(true, false);
    const auto place = place_of(picture);
    for (const double depth : {0.2, 0.4, 0.6, 0.85}) {
        const int y = static_cast<int>(place.face.top() + depth * place.face.height());
        EXPECT_EQ(columns_with(left, y, y + 8, is_water), columns_with(right, y, y + 8, is_water))
            << "at depth " << depth;
    }
}

// n / 4 to the nearest, at least one: 1.25 -> 1, 1.5 -> 2, 2.5 -> 3.
TEST(HeaderPainterTest, the_lowest_quarter_is_hatched_and_the_others_are_filled) {
    struct Row {
        int outlets;
        int hatched;
    };
    for (const auto& row : {Row{2, 1}, Row{3, 1}, Row{4, 1}, Row{5, 1}, Row{6, 2}, Row{8, 2}, Row{10, 3}}) {
        const auto picture = picture_of(falling(row.outlets));
        const auto place = place_of(picture);
        // As a grey print shows it.
        const QImage grey = image_of(picture).convertToFormat(QImage::Format_Grayscale8);
        for (int i = 0; i < row.outlets; ++i) {
            const double paper =
                share_of_paper(grey, bar_inside(place, picture.outlets[static_cast<std::size_t>(i)]));
            if (i < row.outlets - row.hatched) {
                EXPECT_EQ(paper, 0.0) << "outlet " << i << " of " << row.outlets;
            } else {
                EXPECT_GT(paper, 0.25) << "outlet " << i << " of " << row.outlets;
                EXPECT_LT(paper, 0.85) << "outlet " << i << " of " << row.outlets;
            }
        }
    }
}

TEST(HeaderPainterTest, nothing_is_hatched_where_all_outlets_give_the_same) {
    const auto picture = picture_of(std::vector<double>(8, 1.0));
    const QImage image = image_of(picture);
    for (const auto& outlet : picture.outlets) {
        EXPECT_EQ(share_of_paper(image, bar_inside(place_of(picture), outlet)), 0.0);
    }
}

TEST(HeaderPainterTest, many_outlets_are_a_band_that_still_shows_a_single_blocked_one) {
    auto picture = picture_of(std::vector<double>(300, 1.0));
    const auto even = place_of(picture);
    ASSERT_TRUE(even.merged);
    const std::size_t blocked = 120;
    picture.outlets[blocked].flow = 0.25;
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    // Dark down to the least of its stretch, light from there to the most; dark all the way elsewhere.
    const auto dark_at = [&](std::size_t outlet) {
        const auto rows = rows_with(image, static_cast<int>(place.along(picture.outlets[outlet].at)),
                                    [](QRgb pixel) { return is_water(pixel) && qRed(pixel) < 140; });
        std::vector<int> in_face;
        std::copy_if(rows.begin(), rows.end(), std::back_inserter(in_face),
                     [&](int y) { return y > place.face.top() + 3; });
        return static_cast<double>(in_face.size()) / (place.below(1.0) - place.face.top());
    };
    EXPECT_LT(dark_at(blocked), 0.4);
    EXPECT_NEAR(length_at(image, place, picture.outlets[blocked].at), length_at(image, place, 0.8), 1.5);
    EXPECT_GT(dark_at(60), 0.9);
    EXPECT_GT(dark_at(240), 0.9);
}

TEST(HeaderPainterTest, a_band_has_no_gap_between_its_outlets) {
    for (const int count : {130, 151, 200, 299, 300}) {
        // At the ends of equal stretches, where rounding may take an outlet to the next one.
        HeaderPicture picture;
        for (int i = 0; i < count; ++i) {
            picture.outlets.push_back({(i + 1.0) / count, 1.0});
        }
        const auto place = place_of(picture, 400);
        ASSERT_TRUE(place.merged) << count;
        const int y = static_cast<int>(place.face.center().y());
        const auto seen = columns_with(image_of(picture, 400), y, y + 1, is_water);
        std::vector<int> in_face;
        std::copy_if(seen.begin(), seen.end(), std::back_inserter(in_face),
                     [&](int x) { return x > place.face.left() + 2 && x < place.face.right() - 2; });
        EXPECT_GE(static_cast<int>(in_face.size()), static_cast<int>(place.face.width()) - 5) << count;
    }
}

TEST(HeaderPainterTest, the_lowest_quarter_of_a_band_is_hatched) {
    const auto picture = picture_of(falling(300));
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    const auto paper_between = [&](double from, double to) {
        const QRectF rect{QPointF{place.along(from), place.face.top() + 4.0},
                          QPointF{place.along(to), place.below(0.85)}};
        return share_of_paper(image, rect.toAlignedRect());
    };
    EXPECT_EQ(paper_between(0.02, 0.73), 0.0);
    EXPECT_GT(paper_between(0.77, 0.98), 0.25);
}

TEST(HeaderPainterTest, a_second_solution_is_a_broken_line_at_its_flows) {
    auto picture = picture_of(std::vector<double>(20, 1.0));
    const QImage without = image_of(picture);
    for (const auto& outlet : picture.outlets) {
        picture.other.push_back({outlet.at, 0.5});
    }
    const auto place = place_of(picture);
    const QImage with = image_of(picture);
    const double half_way = place.face.top() + (place.below(1.0) - place.face.top()) / 2.0;
    const auto at = static_cast<int>(half_way);
    EXPECT_THAT(columns_with(without, at - 1, at + 2, is_line), SizeIs(testing::Lt(10)));
    const auto dashes = columns_with(with, at - 1, at + 2, is_line);
    const double run = place.along(picture.outlets.back().at) - place.along(picture.outlets.front().at);
    EXPECT_GT(static_cast<double>(dashes.size()), 0.45 * run);
    EXPECT_LT(static_cast<double>(dashes.size()), 0.8 * run);
}

TEST(HeaderPainterTest, the_lowest_outlet_is_marked_below_the_face) {
    auto picture = picture_of({1.1, 1.0, 0.4, 1.2, 1.0, 0.9, 0.8, 0.7});
    picture.lowest = QStringLiteral("lowest 0.4 L/min");
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    const auto marker = columns_with(image, static_cast<int>(place.marker_top) + 2,
                                     static_cast<int>(place.marker_top + place.marker_size), is_line);
    std::vector<int> beside_the_pump;
    std::copy_if(marker.begin(), marker.end(), std::back_inserter(beside_the_pump),
                 [&](int x) { return x > place.face.left(); });
    ASSERT_THAT(beside_the_pump, Not(IsEmpty()));
    EXPECT_NEAR((first(beside_the_pump) + last(beside_the_pump)) / 2.0, place.along(2.5 / 8.0), 1.5);
}

TEST(HeaderPainterTest, every_text_is_seen) {
    const std::vector<QString HeaderPicture::*> texts{
        &HeaderPicture::inlet_head, &HeaderPicture::uniformity,  &HeaderPicture::first,
        &HeaderPicture::last,       &HeaderPicture::mean,        &HeaderPicture::lowest,
        &HeaderPicture::bars_name,  &HeaderPicture::low_quarter, &HeaderPicture::other_name};
    const auto full = worded(picture_of(falling(20)));
    const QImage with = image_of(full);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        auto picture = full;
        (picture.*texts[i]).clear();
        EXPECT_NE(image_of(picture), with) << "text " << i;
    }
}

TEST(HeaderPainterTest, texts_lie_inside_and_clear_of_each_other_and_of_the_drawing) {
    for (const QSize size : {QSize{900, 260}, QSize{420, 220}, QSize{360, 220}, QSize{360, 300}}) {
        for (const bool pump_on_left : {true, false}) {
            for (const int outlets : {1, 20, 300}) {
                auto picture =
                    worded(picture_of(std::vector<double>(static_cast<std::size_t>(outlets), 1.0)));
                picture.pump_on_left = pump_on_left;
                const auto place = place_of(picture, size.width(), size.height());
                std::vector<QRectF> boxes{
                    place.pipe, place.face,
                    QRectF{place.pump.x() - place.pump_radius, place.pump.y() - place.pump_radius,
                           2.0 * place.pump_radius, 2.0 * place.pump_radius}};
                QStringList shown;
                for (const auto& label : place.labels) {
                    boxes.push_back(label.box);
                    shown << label.text;
                }
                for (const auto& entry : place.legend) {
                    boxes.push_back(entry.sign_box);
                    boxes.push_back(entry.label.box);
                    shown << entry.label.text;
                }
                // Whole, none shortened or left out.
                EXPECT_THAT(shown, testing::UnorderedElementsAre(picture.inlet_head, picture.uniformity,
                                                                 picture.first, picture.last, picture.mean,
                                                                 picture.lowest, picture.low_quarter,
                                                                 picture.bars_name, picture.other_name))
                    << size.width();
                for (std::size_t i = 0; i < boxes.size(); ++i) {
                    EXPECT_TRUE(QRectF(QPointF{}, QSizeF{size}).contains(boxes[i]))
                        << size.width() << " part " << i;
                    for (std::size_t k = i + 1; k < boxes.size(); ++k) {
                        const QRectF common = boxes[i].intersected(boxes[k]);
                        EXPECT_LT(common.width() * common.height(), 0.01)
                            << size.width() << " x " << size.height() << " parts " << i << " and " << k;
                    }
                }
            }
        }
    }
}

TEST(HeaderPainterTest, a_text_wider_than_the_picture_is_shortened) {
    auto picture = picture_of(falling(20));
    picture.uniformity = QStringLiteral("low-quarter uniformity ").repeated(10);
    picture.mean = picture.uniformity;
    const auto place = place_of(picture, 300);
    ASSERT_THAT(place.labels, SizeIs(1));
    EXPECT_LE(place.labels.front().box.width(), 300.0);
    EXPECT_TRUE(place.labels.front().text.endsWith(QChar{0x2026}));
    ASSERT_THAT(place.legend, SizeIs(1));
    EXPECT_LE(place.legend.front().label.box.right(), 300.0);
}

TEST(HeaderPainterTest, texts_give_way_before_the_bars_fall_below_a_third_of_the_height) {
    const auto picture = worded(picture_of(falling(20)));
    for (const int h : {80, 100, 120, 150, 220}) {
        EXPECT_GE(place_of(picture, 360, h).face.height(), (h - 2 * plain_ink().stroke) / 3.0) << h;
    }
    EXPECT_THAT(place_of(picture, 360, 100).legend, IsEmpty());
}

TEST(HeaderPainterTest, nothing_is_painted_outside_its_area) {
    for (const QSize size :
         {QSize{200, 80}, QSize{360, 220}, QSize{900, 260}, QSize{300, 500}, QSize{900, 100}}) {
        for (const int outlets : {1, 30, 300}) {
            for (const bool pump_on_left : {true, false}) {
                auto picture =
                    worded(picture_of(std::vector<double>(static_cast<std::size_t>(outlets), 0.9)));
                picture.pump_on_left = pump_on_left;
                picture.outlets.back() = {1.0, 0.2};
                picture.other = {{0.0, 1.4}, {1.0, 1.0}};
                const QRect area{QPoint{40, 40}, size};
                QImage image = painted(size.width() + 80, size.height() + 80, [&](QPainter& painter) {
                    paint_header(painter, area, picture, plain_ink(), font_of());
                });
                EXPECT_GT(count_pixels(image.copy(area), is_line), 100);
                QPainter painter{&image};
                painter.fillRect(area, Qt::white);
                painter.end();
                EXPECT_EQ(count_pixels(image, any_ink), 0)
                    << size.width() << " x " << size.height() << ", " << outlets << " outlets";
            }
        }
    }
}

TEST(HeaderPainterTest, an_area_too_small_for_it_stays_as_clean_around) {
    for (const QSize size :
         {QSize{1, 1}, QSize{12, 12}, QSize{60, 20}, QSize{20, 300}, QSize{300, 40}, QSize{100, 60}}) {
        const QRect area{QPoint{60, 60}, size};
        QImage image = painted(size.width() + 120, size.height() + 120, [&](QPainter& painter) {
            paint_header(painter, area, worded(picture_of(falling(20))), plain_ink(), font_of());
        });
        QPainter painter{&image};
        painter.fillRect(area, Qt::white);
        painter.end();
        EXPECT_EQ(count_pixels(image, any_ink), 0) << size.width() << " x " << size.height();
    }
}

// On paper a unit is a point and the device much finer: lines and letters come out in proportion.
TEST(HeaderPainterTest, it_is_drawn_to_the_painters_scale) {
    const auto picture = picture_of({1.25, 1.0, 0.75, 1.0, 0.5, 1.5});
    const QImage image = painted(1600, 640, [&](QPainter& painter) {
        painter.scale(4.0, 4.0);
        paint_header(painter, QRectF(0, 0, 400, 160), picture, paper_ink(0.8), font_of(8));
    });
    const auto place = header_geometry(QRectF(0, 0, 400, 160), picture, QFontMetricsF{font_of(8)}, 0.8);
    const auto reach = [&](const OutletShare& outlet) {
        auto rows = rows_with(image, static_cast<int>(4.0 * place.along(outlet.at)),
                              [](QRgb pixel) { return qGray(pixel) > 80 && qGray(pixel) < 150; });
        // Apart from the edge of the face's frame.
        rows.erase(std::remove_if(rows.begin(), rows.end(),
                                  [&](int y) { return y > 4.0 * place.face.bottom() - 6.0; }),
                   rows.end());
        return last(rows) + 1 - 4.0 * place.face.top();
    };
    // Grey bars, apart from the black of lines; 1.5 and 1.25 are filled.
    EXPECT_NEAR(reach(picture.outlets[0]) / reach(picture.outlets[5]), 1.25 / 1.5, 0.01);
}

TEST(HeaderPainterTest, numbers_out_of_range_are_drawn_at_the_nearest_end_and_others_not_at_all) {
    HeaderPicture beyond;
    beyond.outlets = {{-0.5, 1.2},
                      {0.5, -3.0},
                      {1.5, 0.8},
                      {std::numeric_limits<double>::quiet_NaN(), 1.0},
                      {0.3, std::numeric_limits<double>::infinity()}};
    HeaderPicture within;
    within.outlets = {{0.0, 1.2}, {0.5, 0.0}, {1.0, 0.8}};
    EXPECT_EQ(image_of(beyond), image_of(within));
}

TEST(HeaderPainterTest, the_painter_is_left_as_it_was) {
    painted(width, height, [](QPainter& painter) {
        painter.setPen(Qt::green);
        const QFont font = painter.font();
        paint_header(painter, QRectF(0, 0, width, height), worded(picture_of(falling(20))), plain_ink(),
                     font_of(17));
        EXPECT_EQ(painter.pen().color(), QColor{Qt::green});
        EXPECT_EQ(painter.font(), font);
        EXPECT_FALSE(painter.hasClipping());
    });
}

}  // namespace
}  // namespace wetfront::ui
