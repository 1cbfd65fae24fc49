// SPDX-License-Identifier: Apache-2.0
#include "records/stroke.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace wetfront::test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

/// A line across the field that is that long.
Stroke stroke_of_length(int length) {
    return {{{0, 500}, {length, 500}}};
}

std::vector<Stroke> strokes_of_two_points(std::size_t count) {
    return std::vector<Stroke>(count, stroke_of_length(400));
}

/// From the point to the straight piece between a and b, by the cross product and the two ends.
double distance(const FieldPoint& point, const FieldPoint& a, const FieldPoint& b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double px = point.x - a.x;
    const double py = point.y - a.y;
    const double along = px * dx + py * dy;
    const double length2 = dx * dx + dy * dy;
    if (along <= 0.0 || length2 == 0.0) {
        return std::hypot(px, py);
    }
    if (along >= length2) {
        return std::hypot(point.x - b.x, point.y - b.y);
    }
    return std::abs(px * dy - py * dx) / std::sqrt(length2);
}

TEST(StrokeTest, the_points_of_a_line_are_written_as_a_polyline_has_them_and_read_back) {
    const Stroke stroke{{{0, 0}, {2500, 1000}, {7, 30}}};
    EXPECT_EQ(stroke.text(), "0,0 2500,1000 7,30");
    const auto back = Stroke::parse(stroke.text(), "drawn");
    ASSERT_TRUE(back) << back.error().text();
    EXPECT_EQ(back.value(), stroke);
}

TEST(StrokeTest, what_is_no_point_of_the_field_is_refused_and_told) {
    for (const char* text : {"",
                             " ",
                             "1",
                             "1,",
                             ",1",
                             "1,2 ",
                             " 1,2",
                             "1,2  3,4",
                             "1 2",
                             "1,2,3",
                             "-1,2",
                             "1,-2",
                             "+1,2",
                             "1.5,2",
                             "01,2",
                             "1,00",
                             "2501,0",
                             "0,1001",
                             "99999999999999999999,1",
                             "a,b",
                             "1,2;3,4",
                             "1,2\n3,4"}) {
        const auto stroke = Stroke::parse(text, "visit.signatures[0].drawn[1]");
        ASSERT_FALSE(stroke) << text;
        EXPECT_EQ(stroke.error().kind, Error::Kind::bad_input);
        EXPECT_EQ(stroke.error().item, "visit.signatures[0].drawn[1]");
        EXPECT_THAT(stroke.error().accepted, HasSubstr("0 to 2500 across and 0 to 1000 down"));
    }
}

TEST(StrokeTest, a_line_has_as_many_points_as_a_signature_and_not_one_more) {
    Stroke stroke;
    stroke.points.assign(most_drawn_points, {1, 2});
    EXPECT_TRUE(Stroke::parse(stroke.text(), "drawn"));
    stroke.points.push_back({1, 2});
    EXPECT_FALSE(Stroke::parse(stroke.text(), "drawn"));
}

TEST(StrokeTest, points_on_a_straight_line_go_and_corners_stay) {
    const Stroke corner{{{0, 0}, {100, 0}, {200, 0}, {300, 0}, {300, 100}, {300, 250}}};
    EXPECT_THAT(thinned(corner).points,
                ElementsAre(FieldPoint{0, 0}, FieldPoint{300, 0}, FieldPoint{300, 250}));
}

// By hand: the middle point stands 3 and 4 above the line between its neighbours.
TEST(StrokeTest, a_bend_goes_up_to_the_tolerance_and_stays_beyond_it) {
    EXPECT_EQ(thinned({{{0, 100}, {500, 97}, {1000, 100}}}).points.size(), 2U);
    EXPECT_EQ(thinned({{{0, 100}, {500, 96}, {1000, 100}}}).points.size(), 3U);
}

TEST(StrokeTest, a_dot_stays_a_dot_and_a_closed_loop_stays_closed) {
    EXPECT_THAT(thinned({{{5, 6}}}).points, ElementsAre(FieldPoint{5, 6}));
    EXPECT_THAT(thinned({{{5, 6}, {6, 6}, {5, 6}}}).points, ElementsAre(FieldPoint{5, 6}));
    const auto loop = thinned({{{0, 0}, {200, 0}, {200, 200}, {0, 200}, {0, 0}}});
    EXPECT_EQ(loop.points.size(), 5U);
    EXPECT_EQ(loop.points.front(), loop.points.back());
}

// Hands that walk at random: the definition of the method is checked point by point.
TEST(StrokeTest, no_point_left_out_lies_farther_than_the_tolerance_from_the_line_that_stays) {
    std::mt19937 random{7};
    for (int run = 0; run < 300; ++run) {
        Stroke drawn;
        double x = 1250.0;
        double y = 500.0;
        double direction = 0.0;
        const int count = 1 + static_cast<int>(random() % 400);
        for (int i = 0; i < count; ++i) {
            direction += static_cast<double>(random() % 100) / 100.0 - 0.5;
            x = std::clamp(x + 12.0 * std::cos(direction), 0.0, 2500.0);
            y = std::clamp(y + 12.0 * std::sin(direction), 0.0, 1000.0);
            // Each point once, so that it is known which of them stay.
            const FieldPoint point{static_cast<int>(x), static_cast<int>(y)};
            if (std::ranges::find(drawn.points, point) == drawn.points.end()) {
                drawn.points.push_back(point);
            }
        }
        const Stroke thin = thinned(drawn);
        ASSERT_FALSE(thin.points.empty());
        EXPECT_LE(thin.points.size(), drawn.points.size());
        EXPECT_EQ(thin.points.front(), drawn.points.front());
        std::size_t piece = 0;
        for (const auto& point : drawn.points) {
            if (piece + 1 < thin.points.size() && point == thin.points[piece + 1]) {
                ++piece;
                continue;
            }
            const auto& from = thin.points[piece];
            const auto& to = thin.points[std::min(piece + 1, thin.points.size() - 1)];
            ASSERT_LE(distance(point, from, to), thinning_tolerance + 1e-9)
                << "run " << run << ": " << point.x << "," << point.y;
        }
        EXPECT_EQ(piece + 1, thin.points.size())
            << "run " << run << ": a point that was not drawn in this order";
        EXPECT_EQ(thinned(thin), thin) << "run " << run;
    }
}

TEST(StrokeTest, a_dot_or_a_touch_is_no_signature_and_a_cross_is_one) {
    EXPECT_FALSE(is_signature({}));
    EXPECT_FALSE(is_signature({Stroke{{{800, 500}}}}));
    EXPECT_FALSE(is_signature(std::vector<Stroke>(10, Stroke{{{800, 500}}})));
    EXPECT_FALSE(is_signature({stroke_of_length(299)}));
    EXPECT_TRUE(is_signature({stroke_of_length(300)}));
    EXPECT_TRUE(is_signature({Stroke{{{800, 400}, {920, 520}}}, Stroke{{{920, 400}, {800, 520}}}}));
}

TEST(StrokeTest, a_signature_has_its_limits_and_none_at_all_is_no_error) {
    EXPECT_TRUE(check_drawn({}, "drawn"));
    EXPECT_TRUE(check_drawn(strokes_of_two_points(most_strokes), "drawn"));
    const auto too_many = check_drawn(strokes_of_two_points(most_strokes + 1), "drawn");
    ASSERT_FALSE(too_many);
    EXPECT_EQ(too_many.error().item, "drawn");
    EXPECT_THAT(too_many.error().accepted, HasSubstr("at most 60 lines"));

    std::vector<Stroke> full{stroke_of_length(400)};
    full.push_back({});
    full.back().points.assign(most_drawn_points - 2, {1, 2});
    EXPECT_TRUE(check_drawn(full, "drawn"));
    full.back().points.push_back({1, 2});
    const auto over = check_drawn(full, "drawn");
    ASSERT_FALSE(over);
    EXPECT_THAT(over.error().accepted, HasSubstr("1000 points together"));

    const auto touched = check_drawn({stroke_of_length(299)}, "drawn");
    ASSERT_FALSE(touched);
    EXPECT_THAT(touched.error().accepted, HasSubstr("too short for a signature"));
}

}  // namespace
}  // namespace wetfront::test
