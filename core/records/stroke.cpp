// SPDX-License-Identifier: Apache-2.0
#include "records/stroke.h"

#include <algorithm>
#include <boost/geometry/algorithms/simplify.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/strategies/cartesian/distance_projected_point.hpp>
#include <charconv>
#include <cmath>
#include <optional>

namespace wetfront {
namespace {

// One number has one way of being written, so that a file reads back as it was.
std::optional<int> whole_number(std::string_view digits, int most) {
    const bool plain = !digits.empty() && digits.size() <= 4 && (digits == "0" || digits.front() != '0') &&
                       std::ranges::all_of(digits, [](char c) { return c >= '0' && c <= '9'; });
    int value = 0;
    if (!plain || std::from_chars(digits.data(), digits.data() + digits.size(), value).ec != std::errc{} ||
        value > most) {
        return std::nullopt;
    }
    return value;
}

std::optional<FieldPoint> point_in(std::string_view text) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto x = whole_number(text.substr(0, comma), field_width);
    const auto y = whole_number(text.substr(comma + 1), field_height);
    return x && y ? std::optional{FieldPoint{*x, *y}} : std::nullopt;
}

double length_of(const Stroke& stroke) {
    double length = 0.0;
    for (std::size_t i = 1; i < stroke.points.size(); ++i) {
        length += std::hypot(stroke.points[i].x - stroke.points[i - 1].x,
                             stroke.points[i].y - stroke.points[i - 1].y);
    }
    return length;
}

}  // namespace

std::string Stroke::text() const {
    std::string text;
    for (const auto& [x, y] : points) {
        text += (text.empty() ? "" : " ") + std::to_string(x) + "," + std::to_string(y);
    }
    return text;
}

Result<Stroke> Stroke::parse(std::string_view text, std::string_view item) {
    Stroke stroke;
    std::string_view rest = text;
    while (true) {
        const auto end = std::min(rest.find(' '), rest.size());
        const auto point = point_in(rest.substr(0, end));
        if (!point || stroke.points.size() == most_drawn_points) {
            return bad_input(std::string{item}, text,
                             "write the points of a line as \"212,480 230,455\": whole numbers, 0 to " +
                                 std::to_string(field_width) + " across and 0 to " +
                                 std::to_string(field_height) + " down, at most " +
                                 std::to_string(most_drawn_points) + " points");
        }
        stroke.points.push_back(*point);
        if (end == rest.size()) {
            return stroke;
        }
        rest.remove_prefix(end + 1);
    }
}

Stroke thinned(const Stroke& stroke) {
    namespace geometry = boost::geometry;
    using Point = geometry::model::d2::point_xy<double>;
    geometry::model::linestring<Point> drawn;
    for (const auto& [x, y] : stroke.points) {
        drawn.emplace_back(x, y);
    }
    geometry::model::linestring<Point> kept;
    geometry::simplify(drawn, kept, thinning_tolerance);
    Stroke thin;
    for (const auto& point : kept) {
        thin.points.push_back({static_cast<int>(point.x()), static_cast<int>(point.y())});
    }
    return thin;
}

std::size_t points_of(const std::vector<Stroke>& strokes) {
    std::size_t count = 0;
    for (const auto& stroke : strokes) {
        count += stroke.points.size();
    }
    return count;
}

bool is_signature(const std::vector<Stroke>& strokes) {
    double length = 0.0;
    for (const auto& stroke : strokes) {
        length += length_of(stroke);
    }
    return length >= least_signature_length;
}

Result<void> check_drawn(const std::vector<Stroke>& strokes, std::string_view item) {
    if (strokes.empty()) {
        return boost::outcome_v2::success();
    }
    if (strokes.size() > most_strokes || points_of(strokes) > most_drawn_points) {
        return bad_input(
            std::string{item},
            std::to_string(strokes.size()) + " lines, " + std::to_string(points_of(strokes)) + " points",
            "at most " + std::to_string(most_strokes) + " lines with " + std::to_string(most_drawn_points) +
                " points together");
    }
    if (!is_signature(strokes)) {
        return bad_input(std::string{item}, strokes.front().text(),
                         "too short for a signature; leave the key out where nobody drew one");
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront
