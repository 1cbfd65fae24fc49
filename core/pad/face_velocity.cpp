// SPDX-License-Identifier: Apache-2.0
#include "pad/face_velocity.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "base/numbers.h"
#include "pad/both_units.h"

namespace wetfront {
namespace {

constexpr double fastest = 10.0;  // m/s; three times the highest published at a pad
constexpr double tail = 0.025;    // of a two-sided 95 %

constexpr const char* accepted_speeds = "0 to 10 m/s (0 to 1969 ft/min)";

}  // namespace

Result<Velocity> face_velocity_from_fans(VolumeFlow airflow, Area wetted_face) {
    const double flow = in_si(airflow);
    const double area = in_si(wetted_face);
    if (!(flow > 0.0) || !std::isfinite(flow)) {
        return bad_input("airflow of the fans", print_number(flow, 3) + " m³/s", "more than 0 m³/s");
    }
    if (!(area > 0.0) || !std::isfinite(area)) {
        return bad_input("wetted face of the pads", print_number(area, 3) + " m²", "more than 0 m²");
    }
    const double velocity = flow / area;
    if (velocity > fastest) {
        return bad_input("airflow of the fans over the wetted face of the pads",
                         in_both_units(from_si<Velocity>(velocity)), accepted_speeds);
    }
    return from_si<Velocity>(velocity);
}

// Mean, experimental standard deviation and that of the mean: GUM JCGM 100:2008, eqs. 3 to 5; k from
// Student's distribution, annex G.3. Simplification: the points count as a random sample, though speed falls
// or rises steadily along some pads; evenly spread points then do better than this says.
Result<FaceVelocity> face_velocity_from_points(std::span<const Velocity> points) {
    if (points.empty()) {
        return bad_input("air speeds at the pad face", "none", "at least one, better five or more");
    }
    double sum = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double v = in_si(points[i]);
        if (!(v >= 0.0 && v <= fastest)) {
            return bad_input("air speed at point " + std::to_string(i + 1), in_both_units(points[i]),
                             accepted_speeds);
        }
        sum += v;
    }
    if (sum <= 0.0) {
        return bad_input("air speeds at the pad face", "all 0", "at least one above 0: fans running");
    }
    const auto n = static_cast<double>(points.size());
    const double mean = sum / n;
    const auto [lowest, highest] = std::minmax_element(points.begin(), points.end());
    FaceVelocity face;
    face.points = static_cast<int>(points.size());
    face.mean = from_si<Velocity>(mean);
    face.lowest = *lowest;
    face.highest = *highest;
    face.firm = face.points >= least_face_points;
    if (face.points > 1) {
        double squares = 0.0;
        for (const auto& point : points) {
            squares += (in_si(point) - mean) * (in_si(point) - mean);
        }
        const double deviation = std::sqrt(squares / (n - 1.0));
        const double standard = deviation / std::sqrt(n);
        const double k =
            boost::math::quantile(boost::math::complement(boost::math::students_t{n - 1.0}, tail));
        face.standard_deviation = from_si<Velocity>(deviation);
        face.variation = from_si<Fraction>(deviation / mean);
        face.standard = from_si<Velocity>(standard);
        face.coverage_factor = k;
        face.expanded = from_si<Velocity>(k * standard);
    }
    return face;
}

}  // namespace wetfront
