// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// Fewer points than this give a mean that is not firm: the speed goes from 0.76 to 3.05 m/s (150 to 600
/// ft/min) along one pad (Mississippi State P3329). The number is common practice, no source.
inline constexpr int least_face_points = 5;

/// Air speed at a pad's face from several anemometer points.
struct FaceVelocity {
    int points = 0;
    Velocity mean;
    Velocity lowest;
    Velocity highest;
    bool firm = false;  ///< at least `least_face_points`
    // None for a single point.
    std::optional<Velocity> standard_deviation;
    std::optional<Fraction> variation;  ///< coefficient of variation: standard deviation over mean
    std::optional<Velocity> standard;   ///< standard uncertainty of the mean
    std::optional<double>
        coverage_factor;               ///< k, 95 %, Student's t with one degree of freedom less than points
    std::optional<Velocity> expanded;  ///< k times standard
};

/// Fans' airflow (above 0) over the wetted face area (above 0) of all banks that they draw through; the
/// result at most 10 m/s. Airflow of the same air as the face velocity: outside air.
[[nodiscard]] Result<Velocity> face_velocity_from_fans(VolumeFlow airflow, Area wetted_face);

/// Points of 0 to 10 m/s, each for an equal part of the face; at least one, not all 0. The uncertainty is
/// that of the spread along the pad; what the anemometer itself is off is not in it.
[[nodiscard]] Result<FaceVelocity> face_velocity_from_points(std::span<const Velocity> points);

}  // namespace wetfront
