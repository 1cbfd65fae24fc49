// SPDX-License-Identifier: Apache-2.0
#include "charts/history_painter.h"

#include <gmock/gmock.h>

#include <QDate>
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

constexpr int history_width = 500;
constexpr int history_height = 280;

QFont history_font(int pixels = 12) {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(pixels);
    return font;
}

double day(int year, int month = 1, int of_month = 1) {
    return static_cast<double>(QDate{1970, 1, 1}.daysTo({year, month, of_month}));
}

// Four years, 0 to 200.
HistoryPicture empty_history() {
    HistoryPicture picture;
    picture.from = day(2022);
    picture.to = day(2026);
    picture.least = 0.0;
    picture.most = 200.0;
    picture.title = QStringLiteral("Wet-through time, s");
    picture.decimal_mark = QStringLiteral(".");
    return picture;
}

HistoryPicture with_points(HistoryPicture picture, const std::vector<HistoryPoint>& points, int sign = 0) {
    picture.lines.push_back({points, sign});
    return picture;
}

QImage image_of(const HistoryPicture& picture, int w = history_width, int h = history_height,
                const Ink& ink = plain_ink()) {
    return painted(w, h, [&](QPainter& painter) {
        paint_history(painter, QRectF(0, 0, w, h), picture, ink, history_font());
    });
}

HistoryGeometry place_of(const HistoryPicture& picture, int w = history_width, int h = history_height) {
    return history_geometry(QRectF(0, 0, w, h), picture, QFontMetricsF{history_font()}, plain_ink().stroke);
}

// By rule of three from the plot's edges.
QPointF place_of_value(const QRectF& plot, double at, double value) {
    return {plot.left() + (at - day(2022)) / (day(2026) - day(2022)) * plot.width(),
            plot.bottom() - value / 200.0 * plot.height()};
}

bool is_any_ink(QRgb pixel) {
    return (pixel & 0xffffff) != 0xffffff;
}

bool is_yellow(QRgb pixel) {
    return qRed(pixel) > 200 && qGreen(pixel) > 200 && qBlue(pixel) < 235;
}

bool dark_at(const QImage& image, QPointF at) {
    return is_line(image.pixel(static_cast<int>(at.x()), static_cast<int>(at.y())));
}

bool share_room(const QRectF& a, const QRectF& b) {
    const QRectF common = a.intersected(b);
    return common.width() > 0.01 && common.height() > 0.01;
}

TEST(HistoryPainterTest, a_value_stands_at_its_day) {
    for (const auto& [at, value] :
         {std::pair{day(2022, 7), 50.0}, {day(2024), 120.0}, {day(2025, 10), 180.0}}) {
        const auto picture = with_points(empty_history(), {{at, value}});
        EXPECT_TRUE(dark_at(image_of(picture), place_of_value(place_of(picture).plot, at, value)))
            << at << ", " << value;
    }
}

TEST(HistoryPainterTest, a_bar_reaches_as_far_as_the_uncertainty) {
    const auto picture = with_points(empty_history(), {{day(2024), 100.0, 40.0}});
    const auto plot = place_of(picture).plot;
    const QPointF centre = place_of_value(plot, day(2024), 100.0);
    const auto rows = rows_with(image_of(picture), static_cast<int>(centre.x()), is_line);
    EXPECT_NEAR(rows.front(), place_of_value(plot, day(2024), 140.0).y(), 2.0);
    // Below, the axis follows.
    const auto bottom = std::find_if(rows.begin(), rows.end(), [&](int row) {
        return row > centre.y() && std::find(rows.begin(), rows.end(), row + 1) == rows.end();
    });
    EXPECT_NEAR(*bottom, place_of_value(plot, day(2024), 60.0).y(), 2.0);
    const auto without = with_points(empty_history(), {{day(2024), 100.0}});
    EXPECT_FALSE(dark_at(image_of(without), place_of_value(plot, day(2024), 135.0)));
}

TEST(HistoryPainterTest, a_line_runs_from_visit_to_visit_but_not_across_an_event) {
    auto picture = with_points(empty_history(), {{day(2023), 50.0}, {day(2024), 150.0}, {day(2025), 50.0}});
    const auto half_way = [&](const QImage& image, double at) {
        const QPointF on_line = place_of_value(place_of(picture).plot, at, 100.0);
        return image.copy(QRect{static_cast<int>(on_line.x()) - 4, static_cast<int>(on_line.y()) - 4, 9, 9});
    };
    EXPECT_GT(count_pixels(half_way(image_of(picture), day(2023, 7, 2)), is_line), 4);
    // Elsewhere between the two, so that its own line does not lie there.
    picture.events.push_back({day(2023, 2), {}});
    EXPECT_EQ(count_pixels(half_way(image_of(picture), day(2023, 7, 2)), is_line), 0);
    EXPECT_GT(count_pixels(half_way(image_of(picture), day(2024, 7, 1)), is_line), 4);
}

TEST(HistoryPainterTest, a_setting_holds_until_it_is_changed) {
    auto picture = with_points(empty_history(), {{day(2023), 50.0}, {day(2025), 150.0}});
    picture.stepped = true;
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    EXPECT_TRUE(dark_at(image, place_of_value(plot, day(2024, 11), 50.0))) << "not yet";
    EXPECT_TRUE(dark_at(image, place_of_value(plot, day(2025), 100.0))) << "straight up";
    EXPECT_FALSE(dark_at(image, place_of_value(plot, day(2024), 100.0))) << "not across";
}

TEST(HistoryPainterTest, an_event_is_a_line_from_top_to_bottom_with_its_name_above_it) {
    auto picture = empty_history();
    picture.events.push_back({day(2024), QStringLiteral("New pads")});
    const auto place = place_of(picture);
    ASSERT_THAT(place.event_names, SizeIs(1));
    const auto& name = place.event_names.front();
    EXPECT_EQ(name.text, "New pads");
    const double x = place_of_value(place.plot, day(2024), 0.0).x();
    EXPECT_LE(name.box.bottom(), place.plot.top() + 0.5);
    EXPECT_GE(x, name.box.left() - 1.0);
    EXPECT_LE(x, name.box.right());
    const auto rows = rows_with(image_of(picture), static_cast<int>(x), is_line);
    const auto inside = std::count_if(rows.begin(), rows.end(), [&](int row) {
        return row > place.plot.top() && row < place.plot.bottom() - 2;
    });
    EXPECT_GT(static_cast<double>(inside), 0.5 * place.plot.height());
    EXPECT_LT(static_cast<double>(inside), 0.8 * place.plot.height()) << "dashed";
}

TEST(HistoryPainterTest, names_of_events_never_lie_on_each_other_or_on_the_title) {
    for (const int apart : {400, 200, 90, 30, 5, 0}) {
        auto picture = empty_history();
        for (int i = 0; i < 4; ++i) {
            picture.events.push_back({day(2023) + i * apart, QStringLiteral("Outlets cleaned")});
        }
        const auto place = place_of(picture);
        EXPECT_THAT(place.event_names, Not(IsEmpty()));
        std::vector<QRectF> boxes{place.title.box, place.plot};
        for (const auto& name : place.event_names) {
            for (const auto& box : boxes) {
                EXPECT_FALSE(share_room(box, name.box)) << apart << " days apart";
            }
            EXPECT_GE(name.box.left(), place.plot.left() - 0.01);
            EXPECT_LE(name.box.right(), place.plot.right() + 0.01);
            boxes.push_back(name.box);
        }
    }
}

TEST(HistoryPainterTest, summers_are_shaded_and_named) {
    auto picture = empty_history();
    for (const int year : {2022, 2023, 2024, 2025}) {
        picture.seasons.push_back({day(year, 6), day(year, 9), QStringLiteral("summer")});
    }
    const auto place = place_of(picture);
    EXPECT_THAT(place.season_names, SizeIs(4));
    const QImage image = image_of(picture);
    const auto at = [&](double when) {
        const QPointF point = place_of_value(place.plot, when, 130.0);
        return image.pixel(static_cast<int>(point.x()), static_cast<int>(point.y()));
    };
    EXPECT_TRUE(is_yellow(at(day(2023, 7, 15))));
    EXPECT_FALSE(is_yellow(at(day(2023, 11))));
    for (const auto& name : place.season_names) {
        EXPECT_GE(name.box.top(), place.plot.bottom());
    }
}

TEST(HistoryPainterTest, on_paper_summers_are_hatched) {
    auto picture = empty_history();
    picture.seasons.push_back({day(2023, 6), day(2023, 9), QStringLiteral("summer")});
    const auto plot = place_of(picture).plot;
    const QImage image = image_of(picture, history_width, history_height, paper_ink(1.0));
    const auto patch = [&](double when) {
        const QPointF at = place_of_value(plot, when, 130.0);
        return image.copy(QRect{static_cast<int>(at.x()) - 8, static_cast<int>(at.y()) - 6, 16, 12});
    };
    EXPECT_GT(count_pixels(patch(day(2023, 7, 15)), is_any_ink), 10);
    EXPECT_EQ(count_pixels(patch(day(2024, 7, 15)), is_any_ink), 0);
}

HistoryTrend trend() {
    // 100 at the start of 2024; 20 a year, 10 to 40.
    return {day(2022, 7), day(2025),     day(2025),     day(2024),
            100.0,        20.0 / 365.25, 10.0 / 365.25, 40.0 / 365.25};
}

TEST(HistoryPainterTest, a_trend_runs_through_its_middle_with_a_band_that_is_narrowest_there) {
    auto picture = empty_history();
    picture.trend = trend();
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    const QPointF middle = place_of_value(plot, day(2024), 100.0);
    EXPECT_TRUE(is_strong_water(image.pixel(static_cast<int>(middle.x()), static_cast<int>(middle.y()))));
    const QPointF later = place_of_value(plot, day(2024, 10), 115.0);
    EXPECT_TRUE(is_strong_water(image.pixel(static_cast<int>(later.x()), static_cast<int>(later.y()))));
    const auto tall = [&](double when) {
        return rows_with(image, static_cast<int>(place_of_value(plot, when, 0.0).x()), is_water).size();
    };
    EXPECT_GT(tall(day(2022, 8)), 2 * tall(day(2024)));
    // 1.42 years before the middle the two limits are 30 * 1.42 apart.
    EXPECT_NEAR(static_cast<double>(tall(day(2022, 8))), 30.0 * 1.42 / 200.0 * plot.height(), 4.0);
}

TEST(HistoryPainterTest, without_a_trend_nothing_is_painted_in_its_colour) {
    const auto picture = with_points(empty_history(), {{day(2023), 50.0, 5.0}, {day(2024), 150.0, 5.0}});
    EXPECT_EQ(count_pixels(image_of(picture), is_water), 0);
}

TEST(HistoryPainterTest, beyond_the_last_visit_a_trend_is_dashed) {
    auto picture = empty_history();
    picture.trend = trend();
    picture.trend->least.reset();
    picture.trend->most.reset();
    picture.trend->to = day(2026);
    const QImage image = image_of(picture);
    const auto plot = place_of(picture).plot;
    const auto covered = [&](double from, double to) {
        const int left = static_cast<int>(place_of_value(plot, from, 0.0).x());
        const int right = static_cast<int>(place_of_value(plot, to, 0.0).x());
        const auto columns = columns_with(image, 0, history_height, is_strong_water);
        return static_cast<double>(std::count_if(columns.begin(), columns.end(),
                                                 [&](int x) { return x >= left && x < right; })) /
               (right - left);
    };
    EXPECT_GT(covered(day(2023), day(2024)), 0.98);
    EXPECT_LT(covered(day(2025, 2), day(2025, 12)), 0.85);
    EXPECT_GT(covered(day(2025, 2), day(2025, 12)), 0.3);
}

TEST(HistoryPainterTest, a_limit_is_a_line_across_with_its_name) {
    auto picture = empty_history();
    picture.limit = HistoryLimit{150.0, QStringLiteral("limit")};
    const auto place = place_of(picture);
    const QImage image = image_of(picture);
    const int y = static_cast<int>(place_of_value(place.plot, day(2023), 150.0).y());
    const auto columns = columns_with(image, y - 2, y + 3, is_warm);
    EXPECT_NEAR(first(columns), place.plot.left(), 3.0);
    EXPECT_NEAR(last(columns), place.plot.right(), 12.0);
    ASSERT_TRUE(place.limit_name);
    EXPECT_TRUE(place.plot.contains(place.limit_name->box));
    EXPECT_LT(std::abs(place.limit_name->box.center().y() - y), 20.0);
    picture.limit->value = 250.0;
    EXPECT_EQ(count_pixels(image_of(picture), is_warm), 0);
    EXPECT_FALSE(place_of(picture).limit_name);
}

// Each sign by itself in black ink: what differs is shape and dashes.
TEST(HistoryPainterTest, the_signs_of_lines_are_told_apart_without_colour) {
    std::vector<QImage> signs;
    for (int sign = 0; sign < signs_apart; ++sign) {
        signs.push_back(painted(60, 24, [&](QPainter& painter) {
            paint_history_sign(painter, QRectF(0, 0, 60, 24), sign, paper_ink(1.5));
        }));
        EXPECT_GT(count_pixels(signs.back(), is_line), 30) << sign;
    }
    for (std::size_t i = 0; i < signs.size(); ++i) {
        for (std::size_t k = i + 1; k < signs.size(); ++k) {
            int differing = 0;
            for (int y = 0; y < 24; ++y) {
                for (int x = 0; x < 60; ++x) {
                    differing +=
                        std::abs(qGray(signs[i].pixel(x, y)) - qGray(signs[k].pixel(x, y))) > 100 ? 1 : 0;
                }
            }
            EXPECT_GT(differing, 8) << "signs " << i << " and " << k;
        }
    }
}

TEST(HistoryPainterTest, the_point_that_is_told_has_a_ring_and_its_line_stands_out) {
    auto picture = with_points(with_points(empty_history(), {{day(2023), 50.0}, {day(2025), 50.0}}),
                               {{day(2023), 150.0}, {day(2025), 150.0}}, 1);
    const QImage before = image_of(picture);
    picture.picked = HistoryPick{1, 0};
    const QImage after = image_of(picture);
    EXPECT_EQ(count_pixels(before, is_water), 0);
    EXPECT_GT(count_pixels(after, is_strong_water), 20);
    const auto plot = place_of(picture).plot;
    const auto thickness = [&](const QImage& image, double value) {
        const QPointF at = place_of_value(plot, day(2024), value);
        int darkness = 0;
        for (int y = static_cast<int>(at.y()) - 5; y <= static_cast<int>(at.y()) + 5; ++y) {
            darkness += 255 - qGray(image.pixel(static_cast<int>(at.x()), y));
        }
        return darkness;
    };
    EXPECT_GT(thickness(after, 150.0), 2 * thickness(after, 50.0));
}

TEST(HistoryPainterTest, the_nearest_point_is_found_within_reach_and_in_sight_alone) {
    auto picture = with_points(empty_history(), {{day(2021), 50.0}, {day(2023), 50.0}, {day(2025), 150.0}});
    const auto place = place_of(picture);
    const QPointF second = place_of_value(place.plot, day(2023), 50.0);
    EXPECT_EQ(nearest_point(place, picture, second + QPointF{6.0, -6.0}, 20.0), (HistoryPick{0, 1}));
    EXPECT_FALSE(nearest_point(place, picture, second + QPointF{40.0, 0.0}, 20.0));
    EXPECT_FALSE(nearest_point(place, picture, place_of_value(place.plot, day(2021), 50.0), 20.0));
}

TEST(HistoryPainterTest, days_get_ticks_at_firsts_of_months_or_years_clear_of_each_other) {
    for (const auto& [from, to] : {std::pair{day(2022), day(2026)},
                                   {day(2016), day(2036)},
                                   {day(2025, 5), day(2025, 11)},
                                   {day(2025, 3, 9), day(2026, 8)}}) {
        for (const int w : {260, 500, 900}) {
            auto picture = empty_history();
            picture.from = from;
            picture.to = to;
            const auto place = place_of(picture, w);
            EXPECT_THAT(place.day_ticks, SizeIs(testing::Ge(2))) << from << " at " << w;
            for (std::size_t i = 0; i < place.day_ticks.size(); ++i) {
                const auto& text = place.day_ticks[i].label.text;
                const auto date = text.size() == 4 ? QDate{text.toInt(), 1, 1}
                                                   : QDate::fromString(text, QStringLiteral("yyyy-MM"));
                ASSERT_TRUE(date.isValid()) << text.toStdString();
                EXPECT_NEAR(place.day_ticks[i].at,
                            place.plot.left() +
                                (day(date.year(), date.month()) - from) / (to - from) * place.plot.width(),
                            0.5);
                if (i > 0) {
                    EXPECT_FALSE(share_room(place.day_ticks[i - 1].label.box, place.day_ticks[i].label.box));
                }
            }
        }
    }
}

TEST(HistoryPainterTest, numbers_of_a_narrow_axis_keep_their_digits_and_the_readers_mark) {
    auto picture = empty_history();
    picture.least = 0.71;
    picture.most = 0.79;
    picture.decimal_mark = QStringLiteral(",");
    const auto place = place_of(picture);
    ASSERT_THAT(place.value_ticks, SizeIs(testing::Ge(3)));
    for (const auto& tick : place.value_ticks) {
        const double value = QString{tick.label.text}.replace(QLatin1Char{','}, QLatin1Char{'.'}).toDouble();
        EXPECT_NEAR(tick.at, place.plot.bottom() - (value - 0.71) / 0.08 * place.plot.height(), 0.5);
        EXPECT_TRUE(tick.label.text.contains(QLatin1Char{','})) << tick.label.text.toStdString();
    }
}

TEST(HistoryPainterTest, axes_without_a_span_draw_nothing) {
    auto picture = with_points(empty_history(), {{day(2023), 50.0}});
    for (const double to :
         {picture.from, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        auto wrong = picture;
        wrong.to = to;
        EXPECT_EQ(count_pixels(image_of(wrong), is_any_ink), 0) << to;
    }
    picture.most = picture.least;
    EXPECT_EQ(count_pixels(image_of(picture), is_any_ink), 0);
}

TEST(HistoryPainterTest, nothing_is_painted_outside_its_area_however_small) {
    auto picture =
        with_points(empty_history(), {{day(2020), 50.0, 900.0}, {day(2024), 350.0}, {day(2028), 10.0}});
    picture.trend = trend();
    picture.limit = HistoryLimit{150.0, QStringLiteral("limit")};
    picture.events = {{day(2022, 1, 2), QStringLiteral("Outlets cleaned")},
                      {day(2025, 12, 30), QStringLiteral("Outlets cleaned")}};
    picture.seasons = {{day(2021, 12), day(2022, 3), QStringLiteral("summer")}};
    picture.picked = HistoryPick{0, 1};
    for (const QSize size : {QSize{240, 160}, QSize{500, 280}, QSize{900, 200}, QSize{1, 1}, QSize{60, 20},
                             QSize{20, 300}, QSize{100, 60}}) {
        const QRect area{QPoint{60, 60}, size};
        QImage image = painted(size.width() + 120, size.height() + 120, [&](QPainter& painter) {
            paint_history(painter, area, picture, plain_ink(), history_font());
        });
        QPainter painter{&image};
        painter.fillRect(area, Qt::white);
        painter.end();
        EXPECT_EQ(count_pixels(image, is_any_ink), 0) << size.width() << " x " << size.height();
    }
}

}  // namespace
}  // namespace wetfront::ui
