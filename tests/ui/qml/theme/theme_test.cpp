// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QColor>
#include <cmath>
#include <string>
#include <vector>

#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

/// Relative luminance of an sRGB colour, 0 to 1. WCAG 2.1, "relative luminance", with the threshold 0.04045
/// of IEC 61966-2-1 (the text of WCAG 2.1 prints 0.03928; the two agree for 8-bit colours).
double luminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

/// WCAG 2.1, "contrast ratio": (L1 + 0.05) / (L2 + 0.05), L1 the lighter; 1 to 21.
double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

struct Pair {
    const char* front;
    const char* ground;
};

const std::vector<Pair>& texts() {
    static const std::vector<Pair> pairs = [] {
        std::vector<Pair> all = {{"waterPaper", "water"}};
        for (const char* front : {"ink", "inkSoft", "water", "warningInk"}) {
            for (const char* ground : {"ground", "surface", "well", "waterTint", "warningTint"}) {
                all.push_back({front, ground});
            }
        }
        return all;
    }();
    return pairs;
}

class ThemeTest : public testing::Test {
protected:
    QObject& theme() { return *window_.get("theme").value<QObject*>(); }
    QColor colour(const char* name) {
        const auto found = theme().property(name).value<QColor>();
        EXPECT_TRUE(found.isValid()) << "the theme has no colour " << name;
        return found;
    }
    double size(const char* name) {
        EXPECT_TRUE(theme().property(name).isValid()) << "the theme has no size " << name;
        return theme().property(name).toDouble();
    }
    void choose(const char* mode) { theme().setProperty("mode", mode); }
    void expect_contrast(const char* mode, const std::vector<Pair>& pairs, double limit) {
        choose(mode);
        for (const Pair& pair : pairs) {
            const double got = contrast(colour(pair.front), colour(pair.ground));
            EXPECT_GE(got, limit) << mode << ": " << pair.front << " on " << pair.ground << ": got " << got
                                  << ":1, wanted at least " << limit << ":1";
        }
    }
    double pad_key(double width, double height) {
        double key = 0;
        QMetaObject::invokeMethod(&theme(), "padKey", Q_RETURN_ARG(double, key), Q_ARG(double, width),
                                  Q_ARG(double, height));
        return key;
    }

    QmlWindow window_{
        QStringLiteral("import QtQuick\nimport Wetfront.Theme\nItem { property QtObject theme: Theme }"),
        QSize(200, 100)};
};

TEST_F(ThemeTest, black_on_white_has_the_largest_contrast_there_is) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::gray, Qt::gray), 1.0, 1e-9);
}

TEST_F(ThemeTest, text_in_the_sun_stands_out_twelve_to_one) {
    expect_contrast("sun", texts(), 12.0);
}

TEST_F(ThemeTest, the_running_time_in_the_sun_stands_out_fifteen_to_one) {
    expect_contrast("sun", {{"ink", "ground"}, {"ink", "surface"}, {"ink", "well"}}, 15.0);
}

// WCAG 2.1, 1.4.6 (AAA).
TEST_F(ThemeTest, text_in_the_shade_stands_out_seven_to_one) {
    expect_contrast("shade", texts(), 7.0);
}

TEST_F(ThemeTest, text_at_night_stands_out_seven_to_one) {
    expect_contrast("night", texts(), 7.0);
}

// WCAG 2.1, 1.4.11: parts that are not text.
TEST_F(ThemeTest, edges_and_signs_stand_out_three_to_one) {
    const std::vector<Pair> parts = {
        {"line", "ground"},     {"line", "surface"},        {"line", "well"},           {"water", "ground"},
        {"water", "surface"},   {"focus", "ground"},        {"focus", "surface"},       {"warning", "ground"},
        {"warning", "surface"}, {"warning", "warningTint"}, {"warningPaper", "warning"}};
    for (const char* mode : {"sun", "shade", "night"}) {
        expect_contrast(mode, parts, 3.0);
    }
}

TEST_F(ThemeTest, what_is_disabled_can_still_be_read) {
    for (const char* mode : {"sun", "shade", "night"}) {
        expect_contrast(mode, {{"disabledInk", "disabledGround"}, {"disabledInk", "surface"}}, 3.0);
    }
}

TEST_F(ThemeTest, each_mode_has_its_own_ground) {
    std::vector<QRgb> grounds;
    for (const char* mode : {"sun", "shade", "night"}) {
        choose(mode);
        grounds.push_back(colour("ground").rgb());
    }
    EXPECT_NE(grounds[0], grounds[1]);
    EXPECT_NE(grounds[1], grounds[2]);
    EXPECT_NE(grounds[0], grounds[2]);
}

TEST_F(ThemeTest, touch_targets_have_their_millimetres_on_any_screen) {
    for (const double dots_per_inch : {96.0, 118.0, 189.0}) {
        const double pixels_per_mm = dots_per_inch / 25.4;
        theme().setProperty("pixelsPerMm", pixels_per_mm);
        // Half a pixel of rounding.
        EXPECT_NEAR(size("target"), 12 * pixels_per_mm, 0.5) << dots_per_inch << " dpi";
        EXPECT_NEAR(size("gap"), 2 * pixels_per_mm, 0.5) << dots_per_inch << " dpi";
        EXPECT_NEAR(size("markHeight"), 30 * pixels_per_mm, 0.5) << dots_per_inch << " dpi";
        EXPECT_NEAR(size("markWidth"), 60 * pixels_per_mm, 0.5) << dots_per_inch << " dpi";
    }
}

TEST_F(ThemeTest, pad_keys_are_twenty_millimetres_where_there_is_room) {
    theme().setProperty("pixelsPerMm", 10);
    // Four keys and three gaps: 4 x 200 + 3 x 20 = 860.
    EXPECT_EQ(pad_key(860, 860), 200);
    EXPECT_EQ(pad_key(5000, 5000), 200);
}

TEST_F(ThemeTest, pad_keys_shrink_with_the_window_down_to_fourteen_millimetres) {
    theme().setProperty("pixelsPerMm", 10);
    // (700 - 60) / 4 = 160; the shorter side decides; (400 - 60) / 4 = 85 would be too small for a glove.
    EXPECT_EQ(pad_key(2000, 700), 160);
    EXPECT_EQ(pad_key(700, 2000), 160);
    EXPECT_EQ(pad_key(2000, 400), 140);
}

}  // namespace
}  // namespace wetfront::ui
