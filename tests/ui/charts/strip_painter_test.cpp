// SPDX-License-Identifier: Apache-2.0
#include "charts/strip_painter.h"

#include <gmock/gmock.h>

#include "format/formatter.h"
#include "seen.h"

namespace wetfront::ui {
namespace {

using namespace test;
using testing::DoubleNear;
using testing::Each;
using testing::ElementsAre;
using testing::Gt;
using testing::IsEmpty;
using testing::Not;

// A strip painted over 1000 pixels: with an axis of 500 s, two pixels are one second.
constexpr int left = 20;
constexpr int span = 1000;
constexpr int tall = 100;
constexpr double two_pixels = 2.0;

CycleStrip cycle(double period, double on, double fill) {
    CycleStrip strip;
    strip.label = "found";
    strip.period_s = period;
    strip.on_s = on;
    strip.fill_s = fill;
    return strip;
}

struct Seen {
    QImage image;
    StripLanes lanes;

    [[nodiscard]] std::vector<int> header(const Look& look) const { return in(lanes.header, look); }
    [[nodiscard]] std::vector<int> pad(const Look& look) const { return in(lanes.pad, look); }
    [[nodiscard]] std::vector<int> pad_top(const Look& look) const {
        return columns_with(image, static_cast<int>(lanes.pad.top()) + 3,
                            static_cast<int>(lanes.pad.top()) + 5, look);
    }
    [[nodiscard]] std::vector<int> drops(const Look& look) const {
        return columns_with(image, static_cast<int>(lanes.drops_top), static_cast<int>(lanes.ticks_top) - 1,
                            look);
    }
    [[nodiscard]] std::vector<int> ticks(const Look& look) const {
        return columns_with(image, static_cast<int>(lanes.ticks_top), tall, look);
    }

private:
    [[nodiscard]] std::vector<int> in(const QRectF& lane, const Look& look) const {
        return columns_with(image, static_cast<int>(lane.top()) + 3, static_cast<int>(lane.bottom()) - 2,
                            look);
    }
};

Seen seen(const CycleStrip& strip, double end_s, std::optional<double> present_s = std::nullopt) {
    const QRectF area(left, 0, span, tall);
    return {
        painted(span + 2 * left, tall,
                [&](QPainter& painter) { paint_strip(painter, area, strip, end_s, present_s, plain_ink()); }),
        strip_lanes(area)};
}

double seconds_at(double x, double end_s) {
    return (x - left) / span * end_s;
}
bool any_ink(QRgb pixel) {
    return (pixel & 0xffffff) != 0xffffff;
}
// The tint of the full header: evenly between water and paper.
bool is_tint(QRgb pixel) {
    return qBlue(pixel) > 240 && qRed(pixel) > 60 && qRed(pixel) < 130;
}

TEST(StripPainterTest, the_header_is_hatched_for_the_fill_time_and_full_until_the_pump_stops) {
    for (const double fill : {20.0, 45.0, 110.0}) {
        const auto strip = seen(cycle(300, 150, fill), 300);
        const auto full = strip.header(is_tint);
        ASSERT_THAT(full, Not(IsEmpty()));
        // The end of the fill is a line; the tint begins behind it.
        const auto solid = columns_with(strip.image, static_cast<int>(strip.lanes.header.top()) + 3,
                                        static_cast<int>(strip.lanes.header.top()) + 4, is_tint);
        EXPECT_NEAR(seconds_at(last(full) + 1, 300), 150, two_pixels * 300 / span);
        int first_of_run = solid.back();
        for (auto it = solid.rbegin(); it != solid.rend() && *it >= first_of_run - 1; ++it) {
            first_of_run = *it;
        }
        EXPECT_NEAR(seconds_at(first_of_run, 300), fill, two_pixels * 300 / span);
    }
}

TEST(StripPainterTest, a_strip_ends_with_its_period_under_a_longer_axis) {
    const auto strip = seen(cycle(300, 100, 45), 600);
    EXPECT_NEAR(seconds_at(last(strip.header(is_line)), 600), 300, two_pixels * 600 / span);
    EXPECT_NEAR(seconds_at(last(strip.pad(any_ink)), 600), 300, two_pixels * 600 / span);
}

TEST(StripPainterTest, the_far_end_is_wet_through_at_the_wet_through_time_and_drips_from_then_on) {
    auto strip = cycle(300, 240, 45);
    strip.wet_through_s = 165;
    const auto shown = seen(strip, 300);
    // Just below the top of the lane the steep edge arrives a little before its end: 3 to 5 of 38 pixels.
    const auto full = shown.pad_top(is_strong_water);
    ASSERT_THAT(full, Not(IsEmpty()));
    EXPECT_NEAR(seconds_at(last(full) + 1, 300), 240, two_pixels * 300 / span);
    const auto drops = shown.drops(is_strong_water);
    ASSERT_THAT(drops, Not(IsEmpty()));
    EXPECT_GE(seconds_at(first(drops), 300), 165);
    EXPECT_LE(seconds_at(first(drops), 300), 165 + 8);
    EXPECT_LE(seconds_at(last(drops), 300), 240);
}

TEST(StripPainterTest, the_far_end_rises_in_proportion_from_fill_to_wet_through) {
    auto strip = cycle(300, 240, 60);
    strip.wet_through_s = 180;
    const auto shown = seen(strip, 300);
    // Half way, at 120 s, the far end's edge stands at half of the lane.
    const int x = left + 120 * span / 300;
    const auto rows =
        rows_with(shown.image, x, [](QRgb pixel) { return qBlue(pixel) > 200 && qRed(pixel) < 40; });
    std::vector<int> in_pad;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(in_pad),
                 [&](int y) { return y > shown.lanes.pad.top() + 2; });
    ASSERT_THAT(in_pad, Not(IsEmpty()));
    EXPECT_NEAR(in_pad.front(), shown.lanes.pad.center().y(), 2.0);
}

TEST(StripPainterTest, an_on_time_shorter_than_the_wet_through_never_drips) {
    auto strip = cycle(300, 85, 45);
    strip.wet_through_s = 165;
    strip.run_off_s = 60;
    EXPECT_THAT(seen(strip, 300).drops(is_strong_water), IsEmpty());
}

TEST(StripPainterTest, dripping_goes_on_for_the_run_off_time_after_the_stop) {
    auto strip = cycle(600, 200, 45);
    strip.wet_through_s = 120;
    strip.run_off_s = 150;
    const auto drops = seen(strip, 600).drops(is_water);
    EXPECT_GT(seconds_at(last(drops), 600), 325);
    EXPECT_LE(seconds_at(last(drops), 600), 350);
}

TEST(StripPainterTest, the_first_dry_patch_is_crossed_from_its_time_to_the_next_start) {
    auto strip = cycle(600, 200, 45);
    strip.wet_through_s = 120;
    strip.dry_patch_s = 450;
    const auto warm = seen(strip, 600).pad(is_warm);
    ASSERT_THAT(warm, Not(IsEmpty()));
    EXPECT_NEAR(seconds_at(first(warm), 600), 450, two_pixels * 600 / span);
    EXPECT_GT(seconds_at(last(warm), 600), 580);
}

TEST(StripPainterTest, a_pad_that_does_not_dry_shows_no_warm_colour) {
    EXPECT_THAT(seen(cycle(600, 200, 45), 600).pad(is_warm), IsEmpty());
}

/// The far end waits 600 - 200 + 100 = 500 s and is down to half; it drips again at 150 s.
CycleStrip cycle_that_holds() {
    auto strip = cycle(600, 200, 100);
    strip.wet_through_s = 220;
    strip.run_off_s = 150;
    strip.lowest_level = 0.5;
    strip.drip_returns_s = 150;
    return strip;
}

/// Where lines of water stand in the pad lane at a time, as levels (0 to 1) from the lowest up.
std::vector<double> lines_at(const Seen& shown, double time_s, double end_s) {
    const int x = left + static_cast<int>(std::lround(time_s / end_s * span));
    const auto& pad = shown.lanes.pad;
    std::vector<int> rows =
        rows_with(shown.image, x, [](QRgb pixel) { return qBlue(pixel) > 200 && qRed(pixel) < 60; });
    std::erase_if(rows, [&](int y) { return y < pad.top() + 1 || y > pad.bottom() - 1; });
    std::vector<double> levels;
    for (auto it = rows.rbegin(); it != rows.rend();) {
        const auto end = std::adjacent_find(it, rows.rend(), [](int a, int b) { return b < a - 1; });
        const auto past = end == rows.rend() ? end : std::next(end);
        levels.push_back((pad.bottom() - (*it + *std::prev(past) + 1) / 2.0) / pad.height());
        it = past;
    }
    return levels;
}

// Down from 1 by 0.5 over 500 s: 1 - 0.5 * 400 / 500 = 0.6 at both ends of the period.
TEST(StripPainterTest, a_pad_that_stays_wet_begins_its_period_as_it_ends) {
    const auto shown = seen(cycle_that_holds(), 600);
    const double close = 2.0 / shown.lanes.pad.height();
    EXPECT_THAT(lines_at(shown, 400, 600), ElementsAre(DoubleNear(1.0 - 0.5 * 200 / 500, close)));
    EXPECT_THAT(lines_at(shown, 596, 600), ElementsAre(DoubleNear(1.0 - 0.5 * 396 / 500, close)));
    const auto start = lines_at(shown, 4, 600);
    ASSERT_FALSE(start.empty());
    EXPECT_NEAR(start.front(), 1.0 - 0.5 * 404 / 500, close);
}

// The far end falls on until the fill, then rises to full at 150 s; half way, at 125 s, it holds 0.75. The
// pump's end rises as steeply from 0.6 at once: 0.5 in 50 s, so 0.6 + 20 / 100 at 20 s.
TEST(StripPainterTest, the_far_end_of_a_wet_pad_falls_until_the_fill_and_the_pump_end_rises_at_once) {
    const auto shown = seen(cycle_that_holds(), 600);
    const double close = 2.0 / shown.lanes.pad.height();
    EXPECT_THAT(lines_at(shown, 20, 600),
                ElementsAre(DoubleNear(1.0 - 0.5 * 420 / 500, close), DoubleNear(0.6 + 20.0 / 100.0, close)));
    EXPECT_THAT(lines_at(shown, 125, 600), ElementsAre(DoubleNear(0.75, close)));
}

TEST(StripPainterTest, a_pad_that_stays_wet_drips_from_its_return_to_the_end_of_the_run_off) {
    const auto drops = seen(cycle_that_holds(), 600).drops(is_strong_water);
    ASSERT_THAT(drops, Not(IsEmpty()));
    EXPECT_GE(seconds_at(first(drops), 600), 150);
    EXPECT_LE(seconds_at(first(drops), 600), 166);
    EXPECT_GT(seconds_at(last(drops), 600), 325);
    EXPECT_LE(seconds_at(last(drops), 600), 350);
}

TEST(StripPainterTest, run_off_from_a_wet_pad_draws_no_line_down_to_empty) {
    // Half way through the run-off such a line would stand at a half.
    EXPECT_THAT(lines_at(seen(cycle_that_holds(), 600), 275, 600), ElementsAre(Gt(0.85)));
}

TEST(StripPainterTest, above_what_a_wet_pad_holds_the_lane_is_empty_and_below_it_is_not) {
    const auto shown = seen(cycle_that_holds(), 600);
    const int resting = left + 550 * span / 600;
    const auto water =
        rows_with(shown.image, resting, [](QRgb pixel) { return qBlue(pixel) - qRed(pixel) > 15; });
    ASSERT_THAT(water, Not(IsEmpty()));
    const auto& pad = shown.lanes.pad;
    EXPECT_NEAR(pad.bottom() - water.front(), (1.0 - 0.5 * 350 / 500) * pad.height(), 3.0);
    EXPECT_NEAR(water.back(), pad.bottom(), 3.0);
}

// In black ink the level still stands out from what is drawn on either side of it.
TEST(StripPainterTest, the_level_of_a_wet_pad_reads_in_black_and_white) {
    const QRectF area(left, 0, span, tall);
    const QImage image = painted(span + 2 * left, tall, [&](QPainter& painter) {
        paint_strip(painter, area, cycle_that_holds(), 600, std::nullopt, paper_ink(2.0));
    });
    const auto pad = strip_lanes(area).pad;
    const auto grey = [&](double time_s, double level) {
        return qGray(image.pixel(left + static_cast<int>(time_s / 600 * span),
                                 static_cast<int>(pad.bottom() - level * pad.height())));
    };
    for (const double time_s : {400.0, 500.0, 590.0}) {
        const double level = 1.0 - 0.5 * (time_s - 200) / 500;
        EXPECT_LT(grey(time_s, level) + 60, grey(time_s, level - 0.15)) << time_s;
        EXPECT_EQ(grey(time_s, 0.5 + level / 2.0), 255) << time_s;
    }
}

TEST(StripPainterTest, a_level_without_the_return_of_the_drip_or_without_a_rest_is_drawn_from_dry) {
    auto no_return = cycle_that_holds();
    no_return.drip_returns_s.reset();
    auto from_dry = no_return;
    from_dry.lowest_level.reset();
    EXPECT_EQ(seen(no_return, 600).image, seen(from_dry, 600).image);
    auto continuous = cycle_that_holds();
    continuous.continuous = true;
    from_dry.continuous = true;
    EXPECT_EQ(seen(continuous, 600).image, seen(from_dry, 600).image);
}

TEST(StripPainterTest, on_time_and_ceiling_are_ticks_at_their_times) {
    auto strip = cycle(300, 100, 45);
    strip.ceiling_s = 200;
    const auto ticks = seen(strip, 300).ticks(is_line);
    ASSERT_THAT(ticks, Not(IsEmpty()));
    // Two triangles, each as wide to either side of its time.
    const auto gap = std::adjacent_find(ticks.begin(), ticks.end(), [](int a, int b) { return b > a + 40; });
    ASSERT_NE(gap, ticks.end());
    EXPECT_NEAR(seconds_at((ticks.front() + *gap + 1) / 2.0, 300), 100, two_pixels * 300 / span);
    EXPECT_NEAR(seconds_at((*std::next(gap) + ticks.back() + 1) / 2.0, 300), 200, two_pixels * 300 / span);
}

TEST(StripPainterTest, a_ceiling_beyond_the_axis_is_marked_at_its_end) {
    auto strip = cycle(300, 100, 45);
    strip.ceiling_s = 900;
    const auto ticks = seen(strip, 300).ticks(is_line);
    ASSERT_THAT(ticks, Not(IsEmpty()));
    EXPECT_NEAR(ticks.back(), left + span, 3);
}

TEST(StripPainterTest, the_present_setting_is_a_line_through_the_strip) {
    const auto strip = seen(cycle(600, 100, 45), 600, 250.0);
    const auto line = columns_with(strip.image, static_cast<int>(strip.lanes.header.top()) + 3,
                                   static_cast<int>(strip.lanes.header.bottom()) - 2, is_line);
    const auto near =
        std::find_if(line.begin(), line.end(), [](int x) { return std::abs(seconds_at(x, 600) - 250) < 3; });
    EXPECT_NE(near, line.end());
}

TEST(StripPainterTest, a_pump_that_never_rests_runs_to_the_end_and_has_no_tick_for_its_on_time) {
    auto continuous = cycle(300, 0, 45);
    continuous.continuous = true;
    for (const auto& strip : {continuous, cycle(300, 300, 45), cycle(300, 400, 45)}) {
        const auto shown = seen(strip, 300);
        EXPECT_GT(last(shown.header(is_tint)), left + span - 3);
        EXPECT_THAT(shown.ticks(is_line), IsEmpty());
    }
}

TEST(StripPainterTest, continuous_pumping_spans_the_axis_of_the_others) {
    auto continuous = cycle(0, 0, 45);
    continuous.continuous = true;
    const auto shown = seen(continuous, 600);
    EXPECT_GT(last(shown.header(is_tint)), left + span - 3);
}

TEST(StripPainterTest, an_unknown_period_draws_nothing) {
    EXPECT_EQ(count_pixels(seen(cycle(0, 85, 45), 600).image, any_ink), 0);
}

TEST(StripPainterTest, a_pump_that_stops_before_the_header_is_full_never_fills_it) {
    const auto strip = seen(cycle(300, 30, 45), 300);
    EXPECT_LE(seconds_at(last(strip.header(is_tint)), 300), 30 + two_pixels * 300 / span);
    EXPECT_NEAR(seconds_at(last(strip.header(is_strong_water)) + 1, 300), 30, two_pixels * 300 / span);
}

TEST(StripPainterTest, absurd_times_paint_nothing_outside_the_strip) {
    auto strip = cycle(300, 280, 1000);
    strip.wet_through_s = 20;
    strip.run_off_s = 5000;
    strip.dry_patch_s = 10;
    strip.ceiling_s = 1e6;
    const auto ink = columns_with(seen(strip, 300).image, 0, tall, any_ink);
    EXPECT_THAT(ink, Each(testing::AllOf(testing::Ge(left - 8), testing::Le(left + span + 8))));
}

TEST(StripPainterTest, absurd_levels_paint_nothing_outside_the_pad_lane) {
    for (const double level : {-3.0, 1.0, 7.0}) {
        for (const double returns : {-50.0, 45.0, 1e6}) {
            auto strip = cycle(300, 100, 45);
            strip.lowest_level = level;
            strip.drip_returns_s = returns;
            const auto shown = seen(strip, 300);
            EXPECT_THAT(columns_with(shown.image, 0, tall, any_ink),
                        Each(testing::AllOf(testing::Ge(left - 8), testing::Le(left + span + 8))));
            EXPECT_THAT(columns_with(shown.image, static_cast<int>(shown.lanes.header.bottom()) + 3,
                                     static_cast<int>(shown.lanes.pad.top()) - 2, any_ink),
                        IsEmpty());
        }
    }
}

TEST(StripPainterTest, the_axis_spans_the_longest_period) {
    EXPECT_EQ(axis_end_s({cycle(300, 85, 45), cycle(600, 200, 45), cycle(0, 900, 45)}), 600);
    EXPECT_EQ(axis_end_s({cycle(0, 85, 45)}), 0);
    auto continuous = cycle(0, 0, 45);
    continuous.continuous = true;
    continuous.wet_through_s = 165;
    EXPECT_EQ(axis_end_s({continuous}), 1.5 * 165);
}

std::vector<std::string> asked_of(double end_s) {
    std::vector<std::string> asked;
    const Formatter formatter{UnitSystem::si};
    painted(400, 30, [&](QPainter& painter) {
        QFont font{"DejaVu Sans"};
        font.setPixelSize(12);
        paint_time_axis(painter, QRectF(0, 0, 400, 30), end_s, plain_ink(), font, [&](const Message& text) {
            asked.push_back(formatter.text(text).toStdString());
            return formatter.text(text);
        });
    });
    return asked;
}

TEST(StripPainterTest, the_axis_ends_with_its_unit_in_minutes_from_four_minutes_on) {
    EXPECT_EQ(asked_of(600), std::vector<std::string>{"10 min"});
    EXPECT_EQ(asked_of(180), std::vector<std::string>{"180 s"});
}

/// The longest unbroken horizontal line, from its first to its last column.
std::vector<int> longest_line(const QImage& image) {
    std::vector<int> longest;
    for (int y = 0; y < image.height(); ++y) {
        std::vector<int> run;
        for (int x = 0; x < image.width(); ++x) {
            if (!is_line(image.pixel(x, y))) {
                run.clear();
                continue;
            }
            run.push_back(x);
            if (run.size() > longest.size()) {
                longest = run;
            }
        }
    }
    return longest;
}

TEST(StripPainterTest, strips_of_five_and_ten_minutes_stand_to_scale_under_one_axis) {
    const Formatter formatter{UnitSystem::si};
    QFont font{"DejaVu Sans"};
    font.setPixelSize(12);
    const QImage image = painted(800, 160, [&](QPainter& painter) {
        paint_cycle_strips(painter, QRectF(0, 0, 800, 160), {cycle(300, 100, 45), cycle(600, 200, 45)},
                           plain_ink(), font, [&](const Message& text) { return formatter.text(text); });
    });
    // The axis and the outlines of the longer strip span the same; the outlines' right ends are measured from
    // its left one.
    const auto upper = columns_with(image, 5, 15, is_line);
    const auto lower = columns_with(image, 78, 88, is_line);
    const auto axis = longest_line(image);
    ASSERT_FALSE(upper.empty() || lower.empty() || axis.empty());
    const double start = axis.front();
    EXPECT_NEAR((upper.back() - start) / (lower.back() - start), 0.5, 0.01);
    EXPECT_NEAR(axis.back(), lower.back(), 2);
}

TEST(StripPainterTest, labels_of_any_length_stay_in_the_area) {
    auto strip = cycle(300, 100, 45);
    strip.label = verbatim(std::string(200, 'W'));
    const Formatter formatter{UnitSystem::si};
    QFont font{"DejaVu Sans"};
    font.setPixelSize(12);
    const QImage image = painted(500, 120, [&](QPainter& painter) {
        paint_cycle_strips(painter, QRectF(50, 20, 400, 80), {strip, strip}, plain_ink(), font,
                           [&](const Message& text) { return formatter.text(text); });
    });
    EXPECT_THAT(columns_with(image, 0, 120, any_ink),
                Each(testing::AllOf(testing::Ge(49), testing::Le(450))));
    EXPECT_GT(columns_with(image, 0, 120, is_line).size(), 200U);
}

TEST(StripPainterTest, a_strip_says_its_cycle_in_words) {
    const Formatter formatter{UnitSystem::us};
    EXPECT_EQ(formatter.text(note_of(cycle(300, 85, 45))), "85 s on, every 5 min");
    EXPECT_EQ(formatter.text(note_of(cycle(300, 300, 45))), "The pump never rests");
    EXPECT_EQ(formatter.text(note_of(cycle(0, 85, 45))), "No cycle known");
}

TEST(StripPainterTest, a_strip_says_whether_its_pad_stays_wet_or_starts_dry) {
    const Formatter formatter{UnitSystem::us};
    EXPECT_EQ(formatter.text(pad_note_of(cycle_that_holds())), "pad stays wet");
    auto from_dry = cycle_that_holds();
    from_dry.lowest_level.reset();
    EXPECT_EQ(formatter.text(pad_note_of(from_dry)), "from a dry pad");
    EXPECT_TRUE(pad_note_of(cycle(300, 85, 45)).empty());
    EXPECT_TRUE(pad_note_of(cycle(0, 85, 45)).empty());
}

TEST(StripPainterTest, the_present_setting_is_that_of_the_first_strip_when_there_are_others) {
    EXPECT_EQ(present_setting_s({cycle(300, 85, 45), cycle(300, 100, 45)}), 85);
    EXPECT_EQ(present_setting_s({cycle(300, 85, 45)}), std::nullopt);
    EXPECT_EQ(present_setting_s({cycle(0, 85, 45), cycle(300, 100, 45)}), std::nullopt);
}

TEST(StripPainterTest, every_sign_of_the_legend_leaves_ink_has_words_and_stays_in_its_area) {
    for (const auto sign : all_strip_signs) {
        const QImage image = painted(60, 40, [&](QPainter& painter) {
            paint_sign(painter, QRectF(15, 10, 30, 18), sign, plain_ink());
        });
        const int number = static_cast<int>(sign);
        EXPECT_FALSE(label_of(sign).empty()) << number;
        EXPECT_GT(count_pixels(image.copy(15, 10, 30, 18), any_ink), 8) << number;
        EXPECT_THAT(columns_with(image, 0, 40, any_ink),
                    Each(testing::AllOf(testing::Ge(14), testing::Le(45))))
            << number;
    }
}

}  // namespace
}  // namespace wetfront::ui
