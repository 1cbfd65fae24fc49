// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "items/air_item.h"
#include "items/cycle_strip_item.h"
#include "items/header_item.h"
#include "items/history_item.h"
#include "seen.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

using namespace test;

QString page(const char* item) {
    return QStringLiteral(
               "import QtQuick\nimport Wetfront.Charts\n"
               "Rectangle { color: \"white\"; property alias drawing: one\n%1 }")
        .arg(QString::fromUtf8(item));
}

QObject* drawing(QmlWindow& window) {
    return window.get("drawing").value<QObject*>();
}

TEST(ItemsTest, a_bank_shows_its_water_in_the_colour_of_the_page) {
    QmlWindow window{
        page("BankItem { id: one; anchors.fill: parent; waterColor: \"#0000ff\"; running: true\n"
             "headerFront: 1; wetFront: [1, 1, 0.5, 0.2]; dripping: [true, true, false, false] }"),
        QSize{400, 200}};
    EXPECT_GT(count_pixels(window.window().grabWindow(), is_water), 400 * 200 / 10);
}

TEST(ItemsTest, a_bank_is_painted_anew_when_its_water_moves) {
    QmlWindow window{page("BankItem { id: one; anchors.fill: parent; waterColor: \"#0000ff\" }"),
                     QSize{400, 200}};
    const int before = count_pixels(window.window().grabWindow(), is_water);
    EXPECT_TRUE(drawing(window)->setProperty("wetFront", QVariant::fromValue(QList<qreal>(20, 1.0))));
    EXPECT_GT(count_pixels(window.window().grabWindow(), is_water), before + 5000);
}

TEST(ItemsTest, the_pump_changes_its_end) {
    QmlWindow window{page("BankItem { id: one; anchors.fill: parent; waterColor: \"#0000ff\"; running: true; "
                          "pumpOnLeft: false }"),
                     QSize{400, 200}};
    const auto columns = columns_with(window.window().grabWindow(), 0, 200, is_strong_water);
    EXPECT_THAT(columns, testing::Not(testing::IsEmpty()));
    EXPECT_THAT(columns, testing::Each(testing::Gt(300)));
}

TEST(ItemsTest, strips_are_painted_from_maps_and_anew_when_they_change) {
    QmlWindow window{
        page(
            "CycleStripItem { id: one; anchors.fill: parent; warmColor: \"#ff0000\"; font.pixelSize: 12\n"
            "strips: [{label: \"found\", period: 600, on: 200, fill: 45, wetThrough: 120, dryPatch: 400}] }"),
        QSize{500, 120}};
    EXPECT_GT(count_pixels(window.window().grabWindow(), is_warm), 100);
    EXPECT_TRUE(drawing(window)->setProperty("strips", QVariantList{}));
    EXPECT_EQ(count_pixels(window.window().grabWindow(), is_warm), 0);
}

TEST(ItemsTest, a_sign_knows_its_words) {
    QmlWindow window{page("StripSignItem { id: one; sign: 0; width: 30; height: 16 }"), QSize{100, 50}};
    EXPECT_EQ(drawing(window)->property("text").toString(), "header fills");
    EXPECT_TRUE(drawing(window)->setProperty("sign", 99));
    EXPECT_EQ(drawing(window)->property("text").toString(), "");
}

TEST(ItemsTest, what_a_map_leaves_out_is_not_known) {
    const CycleStrip strip =
        strip_of({{"label", "left"}, {"period", 300}, {"on", 85}, {"fill", 45}, {"ceiling", QVariant{}}});
    EXPECT_EQ(strip.period_s, 300);
    EXPECT_EQ(strip.on_s, 85);
    EXPECT_EQ(strip.fill_s, 45);
    EXPECT_FALSE(strip.continuous);
    EXPECT_EQ(strip.ceiling_s, std::nullopt);
    EXPECT_EQ(strip.wet_through_s, std::nullopt);
    EXPECT_EQ(strip.run_off_s, std::nullopt);
    EXPECT_EQ(strip.dry_patch_s, std::nullopt);
    EXPECT_EQ(strip.lowest_level, std::nullopt);
    EXPECT_EQ(strip.drip_returns_s, std::nullopt);
    EXPECT_EQ(strip.label, verbatim("left"));
}

TEST(ItemsTest, every_key_of_a_map_is_read) {
    const CycleStrip strip = strip_of({{"continuous", true},
                                       {"ceiling", 200},
                                       {"wetThrough", 165.5},
                                       {"runOff", 60},
                                       {"dryPatch", 280},
                                       {"lowestLevel", 0.75},
                                       {"dripReturns", 90.5}});
    EXPECT_TRUE(strip.continuous);
    EXPECT_EQ(strip.ceiling_s, 200);
    EXPECT_EQ(strip.wet_through_s, 165.5);
    EXPECT_EQ(strip.run_off_s, 60);
    EXPECT_EQ(strip.dry_patch_s, 280);
    EXPECT_EQ(strip.lowest_level, 0.75);
    EXPECT_EQ(strip.drip_returns_s, 90.5);
}

TEST(ItemsTest, a_header_is_painted_from_a_map_and_anew_when_it_changes) {
    QmlWindow window{page("HeaderItem { id: one; anchors.fill: parent; waterColor: \"#0000ff\"\n"
                          "font.pixelSize: 12; picture: ({outlets: [Qt.point(0.2, 1.2), Qt.point(0.5, 1), "
                          "Qt.point(0.8, 0.8)], first: \"first\"}) }"),
                     QSize{400, 200}};
    const int three = count_pixels(window.window().grabWindow(), is_water);
    const QVariantMap one_outlet{{"outlets", QVariantList{QPointF{0.5, 1.0}}}};
    EXPECT_TRUE(drawing(window)->setProperty("picture", one_outlet));
    const int one = count_pixels(window.window().grabWindow(), is_water);
    EXPECT_LT(one, three);
    EXPECT_TRUE(drawing(window)->setProperty("picture", QVariantMap{}));
    EXPECT_EQ(count_pixels(window.window().grabWindow(), is_water), 0);
    EXPECT_GT(one, 0);
}

TEST(ItemsTest, every_key_of_a_headers_map_is_read) {
    const HeaderPicture picture =
        header_picture_of({{"pumpOnLeft", false},
                           {"outlets", QVariantList{QPointF{0.25, 1.5}}},
                           {"other", QVariant::fromValue(QList{QPointF{0.5, 0.75}})},
                           {"inletHead", "a"},
                           {"uniformity", "b"},
                           {"first", "c"},
                           {"last", "d"},
                           {"mean", "e"},
                           {"lowest", "f"},
                           {"lowQuarter", "g"},
                           {"barsName", "h"},
                           {"otherName", "i"}});
    EXPECT_FALSE(picture.pump_on_left);
    ASSERT_EQ(picture.outlets.size(), 1U);
    EXPECT_EQ(picture.outlets[0].at, 0.25);
    EXPECT_EQ(picture.outlets[0].flow, 1.5);
    ASSERT_EQ(picture.other.size(), 1U);
    EXPECT_EQ(picture.other[0].at, 0.5);
    EXPECT_EQ(picture.other[0].flow, 0.75);
    EXPECT_EQ(picture.inlet_head + picture.uniformity + picture.first + picture.last + picture.mean +
                  picture.lowest + picture.low_quarter + picture.bars_name + picture.other_name,
              "abcdefghi");
}

TEST(ItemsTest, a_header_whose_map_names_no_end_has_its_pump_on_the_left) {
    EXPECT_TRUE(header_picture_of({}).pump_on_left);
    EXPECT_TRUE(header_picture_of({}).outlets.empty());
}

TEST(ItemsTest, the_air_is_painted_from_a_map_and_anew_when_it_changes) {
    QmlWindow window{
        page("AirItem { id: one; anchors.fill: parent; warmColor: \"#ff0000\"; waterColor: \"#0000ff\"\n"
             "font.pixelSize: 12; picture: ({temperature: {from: 10, to: 45, title: \"t\"}, "
             "water: {from: 0, to: 30, title: \"w\"}, "
             "curves: [{kind: \"saturation\", points: [Qt.point(10, 8), Qt.point(30, 27)], label: \"100\"}], "
             "outside: {temperature: 40, water: 8, label: \"o\"}, "
             "behindPad: {temperature: 22, water: 14, label: \"b\"}, "
             "house: {temperature: 35, water: 15, label: \"h\"}}) }"),
        QSize{400, 200}};
    EXPECT_GT(count_pixels(window.window().grabWindow(), is_warm), 20);
    EXPECT_GT(count_pixels(window.window().grabWindow(), is_strong_water), 100);
    EXPECT_TRUE(drawing(window)->setProperty("picture", QVariantMap{}));
    EXPECT_EQ(count_pixels(window.window().grabWindow(), [](QRgb p) { return (p & 0xffffff) != 0xffffff; }),
              0);
}

TEST(ItemsTest, every_key_of_the_airs_map_is_read) {
    const auto state = [](double temperature, const char* label) {
        return QVariantMap{{"temperature", temperature}, {"water", 9.5}, {"label", label}};
    };
    const auto curve = [](const char* kind) {
        return QVariantMap{
            {"kind", kind}, {"points", QVariantList{QPointF{1.0, 2.0}, QPointF{3.0, 4.0}}}, {"label", kind}};
    };
    const AirPicture picture = air_picture_of(
        {{"temperature", QVariantMap{{"from", 10}, {"to", 45}, {"title", "t"}}},
         {"water", QVariantMap{{"from", 1}, {"to", 30}, {"title", "w"}}},
         {"curves", QVariantList{curve("saturation"), curve("humidity"), curve("wetBulb"), curve("other")}},
         {"outside", state(35.0, "o")},
         {"behindPad", state(25.0, "b")},
         {"house", state(27.0, "h")}});
    EXPECT_EQ(picture.temperature.from, 10.0);
    EXPECT_EQ(picture.temperature.to, 45.0);
    EXPECT_EQ(picture.temperature.title, "t");
    EXPECT_EQ(picture.water.from, 1.0);
    EXPECT_EQ(picture.water.to, 30.0);
    EXPECT_EQ(picture.water.title, "w");
    ASSERT_EQ(picture.curves.size(), 3U);
    EXPECT_EQ(picture.curves[0].kind, AirCurveKind::saturation);
    EXPECT_EQ(picture.curves[1].kind, AirCurveKind::humidity);
    EXPECT_EQ(picture.curves[2].kind, AirCurveKind::wet_bulb);
    EXPECT_EQ(picture.curves[2].label, "wetBulb");
    EXPECT_EQ(picture.curves[0].points, QPolygonF({QPointF{1.0, 2.0}, QPointF{3.0, 4.0}}));
    ASSERT_TRUE(picture.outside && picture.behind_pad && picture.house);
    EXPECT_EQ(picture.outside->at, QPointF(35.0, 9.5));
    EXPECT_EQ(picture.behind_pad->at, QPointF(25.0, 9.5));
    EXPECT_EQ(picture.house->at, QPointF(27.0, 9.5));
    EXPECT_EQ(picture.outside->label + picture.behind_pad->label + picture.house->label, "obh");
}

TEST(ItemsTest, an_air_state_without_both_numbers_is_not_known) {
    const AirPicture picture = air_picture_of({{"outside", QVariantMap{{"temperature", 35.0}}},
                                               {"house", QVariantMap{{"water", 9.0}, {"label", "h"}}}});
    EXPECT_FALSE(picture.outside);
    EXPECT_FALSE(picture.behind_pad);
    EXPECT_FALSE(picture.house);
}

// Ten years, a visit in the middle of each, from 10 to 100.
QVariantMap ten_years() {
    QVariantList points;
    for (int year = 0; year < 10; ++year) {
        points.append(QVariantMap{{"day", 182.0 + 365.0 * year},
                                  {"value", 10.0 * (year + 1)},
                                  {"half", 2.0},
                                  {"words", QString::number(year)}});
    }
    QVariantList other{QVariantMap{{"day", 1000.0}, {"value", 50.0}, {"words", "other"}}};
    return {{"from", 0.0},
            {"to", 3650.0},
            {"least", 0.0},
            {"most", 110.0},
            {"title", "t"},
            {"decimalMark", ","},
            {"stepped", true},
            {"lines", QVariantList{QVariantMap{{"sign", 3}, {"points", points}},
                                   QVariantMap{{"sign", 4}, {"points", other}}}},
            {"trend", QVariantMap{{"from", 1.0},
                                  {"knownTo", 2.0},
                                  {"to", 3.0},
                                  {"middle", 4.0},
                                  {"atMiddle", 5.0},
                                  {"slope", 6.0},
                                  {"least", 7.0},
                                  {"most", 8.0}}},
            {"limit", QVariantMap{{"value", 90.0}, {"label", "l"}}},
            {"seasons", QVariantList{QVariantMap{{"from", 150.0}, {"to", 240.0}, {"label", "s"}}}},
            {"events", QVariantList{QVariantMap{{"day", 700.0}, {"label", "e"}}}}};
}

TEST(ItemsTest, every_key_of_a_historys_map_is_read) {
    const HistoryPicture picture = history_picture_of(ten_years());
    EXPECT_EQ(picture.from, 0.0);
    EXPECT_EQ(picture.to, 3650.0);
    EXPECT_EQ(picture.least, 0.0);
    EXPECT_EQ(picture.most, 110.0);
    EXPECT_EQ(picture.title, "t");
    EXPECT_EQ(picture.decimal_mark, ",");
    EXPECT_TRUE(picture.stepped);
    ASSERT_EQ(picture.lines.size(), 2U);
    EXPECT_EQ(picture.lines[0].sign, 3);
    ASSERT_EQ(picture.lines[0].points.size(), 10U);
    EXPECT_EQ(picture.lines[0].points[1].day, 547.0);
    EXPECT_EQ(picture.lines[0].points[1].value, 20.0);
    EXPECT_EQ(picture.lines[0].points[1].half, 2.0);
    ASSERT_TRUE(picture.trend && picture.limit);
    EXPECT_EQ(picture.trend->from, 1.0);
    EXPECT_EQ(picture.trend->known_to, 2.0);
    EXPECT_EQ(picture.trend->to, 3.0);
    EXPECT_EQ(picture.trend->middle, 4.0);
    EXPECT_EQ(picture.trend->at_middle, 5.0);
    EXPECT_EQ(picture.trend->slope, 6.0);
    EXPECT_EQ(picture.trend->least, 7.0);
    EXPECT_EQ(picture.trend->most, 8.0);
    EXPECT_EQ(picture.limit->value, 90.0);
    EXPECT_EQ(picture.limit->label, "l");
    ASSERT_EQ(picture.seasons.size(), 1U);
    EXPECT_EQ(picture.seasons[0].from + picture.seasons[0].to, 390.0);
    EXPECT_EQ(picture.seasons[0].label, "s");
    ASSERT_EQ(picture.events.size(), 1U);
    EXPECT_EQ(picture.events[0].day, 700.0);
    EXPECT_EQ(picture.events[0].label, "e");
    const HistoryPicture none = history_picture_of({});
    EXPECT_FALSE(none.trend || none.limit || none.picked);
    EXPECT_TRUE(none.lines.empty());
}

/// A history with all that can be done to it.
class HistoryItemTest : public testing::Test {
protected:
    HistoryItemTest() { item().setPicture(ten_years()); }
    HistoryItem& item() { return *qobject_cast<HistoryItem*>(drawing(window_)); }

    QmlWindow window_{page("HistoryItem { id: one; anchors.fill: parent; waterColor: \"#0000ff\"\n"
                           "font.pixelSize: 12 }"),
                      QSize{500, 280}};
};

TEST_F(HistoryItemTest, it_is_painted_and_gone_with_its_map) {
    EXPECT_GT(count_pixels(window_.window().grabWindow(), is_line), 200);
    item().setPicture({});
    EXPECT_EQ(count_pixels(window_.window().grabWindow(), [](QRgb p) { return (p & 0xffffff) != 0xffffff; }),
              0);
}

TEST_F(HistoryItemTest, walking_tells_visit_after_visit_and_stops_at_the_ends) {
    EXPECT_EQ(item().told(), "");
    item().walk(-1);
    EXPECT_EQ(item().told(), "9") << "the last one first";
    item().walk(-1);
    EXPECT_EQ(item().told(), "8");
    for (int i = 0; i < 20; ++i) {
        item().walk(-1);
    }
    EXPECT_EQ(item().told(), "0");
    item().walk(1);
    EXPECT_EQ(item().told(), "1");
    EXPECT_GT(count_pixels(window_.window().grabWindow(), is_strong_water), 20) << "a ring around it";
}

TEST_F(HistoryItemTest, the_other_line_is_told_at_the_nearest_day_and_back) {
    item().walk(-1);
    item().walkLines(1);
    EXPECT_EQ(item().told(), "other");
    EXPECT_EQ(item().pickedLine(), 1);
    item().walkLines(1);
    EXPECT_EQ(item().told(), "other") << "there is no third one";
    item().walkLines(-1);
    EXPECT_EQ(item().told(), "2") << "day 912 is nearest to day 1000";
    item().pickLine(0);
    EXPECT_EQ(item().told(), "9");
}

TEST_F(HistoryItemTest, it_is_zoomed_within_all_days_and_down_to_half_a_year) {
    EXPECT_FALSE(item().zoomed());
    item().zoomOut();
    EXPECT_FALSE(item().zoomed());
    int steps = 0;
    while (item().canZoomIn() && steps < 50) {
        item().zoomIn();
        ++steps;
    }
    EXPECT_LT(steps, 10);
    EXPECT_TRUE(item().zoomed());
    item().showAll();
    EXPECT_FALSE(item().zoomed());
}

TEST_F(HistoryItemTest, a_visit_out_of_sight_comes_into_sight_when_it_is_told) {
    item().walk(-1);
    for (int i = 0; i < 4; ++i) {
        item().zoomAt(490.0, 2.0);  // the last years stay
    }
    for (int i = 0; i < 9; ++i) {
        item().walk(-1);
    }
    EXPECT_EQ(item().told(), "0");
    const QImage seen = window_.window().grabWindow();
    EXPECT_GT(count_pixels(seen, is_strong_water), 20) << "its ring is there";
}

// The points lie 365 of 3650 days apart: a tenth of the plot.
TEST_F(HistoryItemTest, a_drag_takes_the_days_along_and_a_pinch_spreads_them_around_the_fingers) {
    item().holdView();
    item().moveView(250.0, 250.0, 2.0);
    EXPECT_TRUE(item().zoomed());
    item().holdView();
    item().moveView(100.0, 400.0, 1.0);
    item().walk(-1);
    const QString before_drag = item().told();
    item().holdView();
    item().moveView(400.0, 100.0, 1.0);
    EXPECT_LT(before_drag.toInt(), 9) << "the last visit was out of sight";
    item().setPicture(ten_years());
    EXPECT_FALSE(item().zoomed()) << "another picture starts anew";
}

TEST_F(HistoryItemTest, a_touch_tells_the_visit_under_it_and_beside_all_none) {
    item().walk(-1);
    item().pick(2.0, 2.0);
    EXPECT_EQ(item().told(), "");
    // Every column of the plot is tried at the height of the value: one of them tells it.
    bool found = false;
    for (int x = 0; x < 500 && !found; x += 5) {
        for (int y = 0; y < 280 && !found; y += 5) {
            item().pick(x, y);
            found = item().told() == "4";
        }
    }
    EXPECT_TRUE(found);
}

TEST(ItemsTest, a_sign_of_a_line_is_painted_in_its_shape) {
    QmlWindow window{page("HistorySignItem { id: one; width: 60; height: 24; sign: 0 }"), QSize{80, 40}};
    const QImage circle = window.window().grabWindow();
    EXPECT_GT(count_pixels(circle, is_line), 30);
    EXPECT_TRUE(drawing(window)->setProperty("sign", 4));
    EXPECT_NE(window.window().grabWindow(), circle);
}

}  // namespace
}  // namespace wetfront::ui
