// SPDX-License-Identifier: Apache-2.0
#include "charts/day_painter.h"

#include <gtest/gtest.h>

#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;

QFont text_font() {
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(14);
    return font;
}

/// A day of 24 slots: outside 20 to 38, pads wet and pumps on from 9 to 21 o'clock. Found wets half.
DayPicture example_day() {
    DayPicture day;
    day.least = 10.0;
    day.most = 40.0;
    day.title = QStringLiteral("Temperature, °C");
    day.decimal_mark = QStringLiteral(".");
    day.outside_label = QStringLiteral("outside");
    day.behind_label = QStringLiteral("behind the pads");
    day.house_label = QStringLiteral("in the house");
    day.wet_label = QStringLiteral("wet share of the pads");
    day.pump_label = QStringLiteral("pumps run");
    DayPlan found{QStringLiteral("found"), {}, {}, {}, {}};
    DayPlan advised{QStringLiteral("advised"), {}, {}, {}, {}};
    for (int hour = 0; hour < 24; ++hour) {
        const bool hot = hour >= 9 && hour < 21;
        day.outside.push_back(hot ? 38.0 : 20.0);
        found.behind_pad.push_back(hot ? 30.0 : 20.0);
        found.house.push_back(hot ? 33.0 : 23.0);
        found.wet_share.push_back(hot ? 0.5 : 0.0);
        found.pumping.push_back(hot ? 1.0 : 0.0);
        advised.behind_pad.push_back(hot ? 24.0 : 20.0);
        advised.house.push_back(hot ? 28.0 : 23.0);
        advised.wet_share.push_back(hot ? 1.0 : 0.0);
        advised.pumping.push_back(hot ? 0.25 : 0.0);
    }
    day.plans = {found, advised};
    return day;
}

const QRectF area{0.0, 0.0, 700.0, 420.0};

DayGeometry laid_out(const DayPicture& day) {
    return day_geometry(area, day, QFontMetricsF{text_font()}, 2.0);
}
QImage drawn(const DayPicture& day, QRectF within = area) {
    return painted(700, 420,
                   [&](QPainter& painter) { paint_day(painter, within, day, plain_ink(), text_font()); });
}

/// Where a slot's middle lies.
int column(const DayPicture& day, std::size_t slot) {
    return static_cast<int>(laid_out(day).at(slot, day.outside.size(), day.least).x());
}
int count_in(const QImage& image, const QRectF& box, const Look& look) {
    return count_pixels(image.copy(box.toAlignedRect()), look);
}

TEST(DayPainterTest, hotter_is_higher_and_later_is_farther_right) {
    const auto place = laid_out(example_day());
    EXPECT_LT(place.at(3, 24, 35.0).y(), place.at(3, 24, 25.0).y());
    EXPECT_LT(place.at(3, 24, 25.0).x(), place.at(4, 24, 25.0).x());
    EXPECT_TRUE(place.air.contains(place.at(0, 24, 10.5)));
    EXPECT_TRUE(place.air.contains(place.at(23, 24, 39.5)));
}

TEST(DayPainterTest, pumps_run_in_the_lane_of_their_plan_while_they_run_and_as_much) {
    const auto day = example_day();
    const auto place = laid_out(day);
    const auto image = drawn(day);
    ASSERT_EQ(place.pumps.size(), 2U);
    const auto inside = [](const QRectF& lane) { return lane.adjusted(3, 3, -3, -3); };
    const int all_day = count_in(image, inside(place.pumps[0]), is_strong_water);
    const int a_quarter = count_in(image, inside(place.pumps[1]), is_strong_water);
    EXPECT_GT(all_day, 2 * a_quarter);
    EXPECT_GT(a_quarter, 0);
    const auto columns = columns_with(image, static_cast<int>(place.pumps[0].top()) + 3,
                                      static_cast<int>(place.pumps[0].bottom()) - 3, is_strong_water);
    EXPECT_NEAR(first(columns), (column(day, 8) + column(day, 9)) / 2, 3);
    EXPECT_NEAR(last(columns), (column(day, 20) + column(day, 21)) / 2, 3);
}

TEST(DayPainterTest, the_wet_share_stands_as_high_as_it_is) {
    const auto day = example_day();
    const auto place = laid_out(day);
    const auto image = drawn(day);
    const auto in_lane = [&](std::size_t slot) {
        std::vector<int> rows;
        for (const int y : rows_with(image, column(day, slot), is_water)) {
            if (y > place.wet.top() - 3 && y < place.wet.bottom() - 3) {
                rows.push_back(y);
            }
        }
        return rows;
    };
    EXPECT_NEAR(first(in_lane(15)), place.wet.top(), 4) << "advised: all of it";
    EXPECT_TRUE(in_lane(3).empty()) << "at night nothing";
}

TEST(DayPainterTest, both_plans_and_the_outside_are_in_the_air) {
    auto day = example_day();
    const auto place = laid_out(day);
    const auto both = drawn(day);
    day.plans.erase(day.plans.begin());
    const auto one = drawn(day);
    const auto air = place.air.adjusted(3, 3, -3, -3);
    EXPECT_GT(count_in(both, air, is_warm), count_in(one, air, is_warm));
    EXPECT_GT(count_in(one, air, is_warm), 0);
    EXPECT_GT(count_in(one, air, is_water), 0);
}

TEST(DayPainterTest, no_label_stands_on_another) {
    const auto place = laid_out(example_day());
    auto labels = place.labels;
    for (const auto* ticks : {&place.value_ticks, &place.hour_ticks}) {
        for (const auto& tick : *ticks) {
            if (!tick.label.text.isEmpty()) {
                labels.push_back(tick.label);
            }
        }
    }
    for (std::size_t i = 0; i < labels.size(); ++i) {
        EXPECT_TRUE(area.contains(labels[i].box)) << labels[i].text.toStdString();
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_FALSE(labels[i].box.intersects(labels[k].box))
                << labels[i].text.toStdString() << " and " << labels[k].text.toStdString();
        }
    }
}

TEST(DayPainterTest, lists_of_unlike_length_an_empty_day_and_no_room_draw_nothing) {
    const auto blank = painted(700, 420, [](QPainter&) {});
    EXPECT_EQ(drawn({}), blank);
    auto torn = example_day();
    torn.plans[0].house.pop_back();
    EXPECT_EQ(drawn(torn), blank);
    EXPECT_EQ(drawn(example_day(), QRectF{0.0, 0.0, 60.0, 40.0}), blank);
}

TEST(DayPainterTest, nothing_is_painted_outside_its_area) {
    const QRectF within{100.0, 40.0, 500.0, 340.0};
    const auto image = drawn(example_day(), within);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!within.contains(QPointF(x + 0.5, y + 0.5))) {
                ASSERT_EQ(image.pixel(x, y), qRgb(255, 255, 255)) << x << " " << y;
            }
        }
    }
}

}  // namespace
}  // namespace wetfront::ui
