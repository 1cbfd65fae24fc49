// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "water/header.h"
#include "water/pipe.h"

namespace wetfront {

/// Water in a header, followed from its far side towards the inlet, with the slopes of head and velocity over
/// whatever the march was started from: that is what lets Newton's method be used. SI; no allocation.
struct HeaderMarch {
    double head;  ///< gauge, m
    double head_slope;
    double velocity;  ///< m/s, towards the far end
    double velocity_slope;
    PipeFriction::Memory friction = {};

    /// Up a stretch of `length` m whose lower course lies `climb` m above its upper one.
    void up_pipe(const PipeFriction& pipe, double length, double climb) {
        const auto lost = pipe.at(velocity, friction);
        head += climb + length * lost.head;
        head_slope += length * lost.per_velocity * velocity_slope;
    }

    /// Up past an outlet; what it gives, as the velocity in the header that it takes away.
    ///
    /// The outlet sees the head h before it, and past it the share `recovery` of the velocity head that is
    /// lost comes back: h_past = h + recovery (v^2 - v_past^2) / (2 g), v = v_past + capacity sqrt(h). This
    /// is a quadratic in sqrt(h); its other root is not above 0. Outlets whose head is not above 0 give
    /// nothing.
    double up_outlet(double capacity, double recovery) {
        if (!(head > 0.0)) {
            return 0.0;
        }
        const double regain = recovery * capacity / standard_gravity;
        const double a = 1.0 + 0.5 * regain * capacity;
        const double b = regain * velocity;
        const double root = 2.0 * head / (b + std::sqrt(b * b + 4.0 * a * head));
        const double root_slope = (head_slope - regain * velocity_slope * root) / (2.0 * a * root + b);
        head = root * root;
        head_slope = 2.0 * root * root_slope;
        velocity += capacity * root;
        velocity_slope += capacity * root_slope;
        return capacity * root;
    }
};

/// Velocity in the header for the square root of an outlet's head, m/s per sqrt(m): q = Cd A sqrt(2 g h) over
/// the header's area.
[[nodiscard]] inline double capacity_of(const Outlet& outlet, double header_bore) {
    const double ratio = in_si(outlet.bore) / header_bore;
    return outlet.discharge_coefficient * outlet.open_share * ratio * ratio *
           std::sqrt(2.0 * standard_gravity);
}

}  // namespace wetfront
