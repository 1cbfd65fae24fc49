// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace wetfront {

// A signature drawn by hand: strokes on a field whose size is the same whatever the screen or paper is. It is
// a picture under a name and a time, no proof of who drew it.

/// A point of the field, from its upper left corner to the right and down, in thousandths of the field's
/// height.
struct FieldPoint {
    int x = 0;  ///< 0 to field_width
    int y = 0;  ///< 0 to field_height
    friend bool operator==(const FieldPoint&, const FieldPoint&) = default;
};
constexpr int field_width = 2500;
constexpr int field_height = 1000;

// These limits are ours, no source: a long name with many loops takes about 300 points.
constexpr std::size_t most_strokes = 60;          ///< of a signature
constexpr std::size_t most_drawn_points = 1'000;  ///< of all its strokes together
/// Thinned strokes stay this near to what was drawn: a thickness of line on paper.
constexpr double thinning_tolerance = 3.0;
/// A touch by accident is no signature: the strokes together are at least this long. A cross with arms of a
/// sixth of the field's height is long enough.
constexpr double least_signature_length = 300.0;

/// One line of it, from pen down to pen up; a single point is a dot.
struct Stroke {
    std::vector<FieldPoint> points;

    /// As the points of an SVG polyline (W3C, SVG 1.1, 9.6): "212,480 230,455".
    [[nodiscard]] std::string text() const;
    /// Points of the field, 1 to most_drawn_points of them, written as text() does.
    [[nodiscard]] static Result<Stroke> parse(std::string_view text, std::string_view item);
    friend bool operator==(const Stroke&, const Stroke&) = default;
};

/// The stroke with fewer points: no point that is left out lies farther than `thinning_tolerance` from the
/// line that stays; its ends stay. Ramer-Douglas-Peucker.
[[nodiscard]] Stroke thinned(const Stroke& stroke);

[[nodiscard]] std::size_t points_of(const std::vector<Stroke>& strokes);

/// Whether somebody signed, and did not just touch the field (least_signature_length).
[[nodiscard]] bool is_signature(const std::vector<Stroke>& strokes);

/// An error if these strokes cannot be kept as a signature: too many of them or of their points, or too
/// short. None at all are no signature, and no error.
[[nodiscard]] Result<void> check_drawn(const std::vector<Stroke>& strokes, std::string_view item);

}  // namespace wetfront
