// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "items/cycle_strip_item.h"
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

}  // namespace
}  // namespace wetfront::ui
