// SPDX-License-Identifier: Apache-2.0
#include "pad/pressure_drop.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "pad/both_units.h"

namespace wetfront {
namespace {

constexpr double thickness_margin = 0.005;
constexpr double speed_margin = 0.05;

struct DesignPoint {
    double thickness;
    double velocity;
};
constexpr std::array design_points{DesignPoint{0.15, 1.778}, DesignPoint{0.10, 1.143}};

// 12.5 Pa, a tenth either way as it is printed to a single digit, 0.05 inH2O, and a tenth for a speed that is
// 5 % off, as the drop goes at most with the square of it.
constexpr double design_lowest = 0.8 * 12.5;
constexpr double design_highest = 1.2 * 12.5;

constexpr double tunnel_lowest = 3.9;
constexpr double tunnel_highest = 11.25;

bool at_design_point(double velocity, double thickness) {
    return std::any_of(design_points.begin(), design_points.end(), [&](const auto& point) {
        return std::abs(thickness - point.thickness) <= thickness_margin &&
               std::abs(velocity - point.velocity) <= speed_margin * point.velocity;
    });
}

bool in_wind_tunnel(double velocity, double thickness) {
    return velocity >= 1.0 && velocity <= 1.5 && thickness >= 0.05 && thickness <= 0.15 + thickness_margin;
}

PublishedPressureDrop range(double lowest, double highest, PressureDropSource source) {
    return {from_si<PressureDifference>(lowest), from_si<PressureDifference>(highest), source};
}

}  // namespace

Result<PublishedPressureDrop> published_pressure_drop(Velocity face_velocity, Length thickness) {
    const double v = in_si(face_velocity);
    const double d = in_si(thickness);
    if (!(v > 0.0 && v <= 10.0)) {
        return bad_input("face velocity", in_both_units(face_velocity),
                         "more than 0, up to 10 m/s (1969 ft/min)");
    }
    if (!(d >= 0.05 && d <= 0.3)) {
        return bad_input("pad thickness", in_both_units(thickness, Scale::fine),
                         "50 to 300 mm (2 to 11.8 in)");
    }
    const bool design = at_design_point(v, d);
    const bool tunnel = in_wind_tunnel(v, d);
    if (design && tunnel) {
        return range(tunnel_lowest, design_highest, PressureDropSource::both);
    }
    if (design) {
        return range(design_lowest, design_highest, PressureDropSource::design_speed);
    }
    if (tunnel) {
        return range(tunnel_lowest, tunnel_highest, PressureDropSource::wind_tunnel);
    }
    return bad_input(
        "published pressure drop",
        in_both_units(face_velocity) + " through " + in_both_units(thickness, Scale::fine),
        "measure it: published only for 1 to 1.5 m/s (197 to 295 ft/min) through 50 to 150 mm and "
        "1.78 m/s (350 ft/min) through 150 mm (6 in)");
}

Result<PressureDropVerdict> compare_pressure_drop(PressureDifference measured,
                                                  const PublishedPressureDrop& published,
                                                  PressureDifference accuracy) {
    const double drop = in_si(measured);
    const double error = in_si(accuracy);
    if (!(drop >= 0.0 && drop <= 500.0)) {
        return bad_input("pressure drop across the pad", in_both_units(measured),
                         "0 to 500 Pa (0 to 2 inH2O)");
    }
    if (!(error >= 0.0 && error <= 50.0)) {
        return bad_input("accuracy of the manometer", in_both_units(accuracy), "0 to 50 Pa (0 to 0.2 inH2O)");
    }
    if (drop - error > in_si(published.highest)) {
        return PressureDropVerdict::higher;
    }
    if (drop + error < in_si(published.lowest)) {
        return PressureDropVerdict::lower;
    }
    return drop >= in_si(published.lowest) && drop <= in_si(published.highest)
               ? PressureDropVerdict::within
               : PressureDropVerdict::too_close;
}

}  // namespace wetfront
