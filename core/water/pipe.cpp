// SPDX-License-Identifier: Apache-2.0
#include "water/pipe.h"

#include <cmath>
#include <numbers>
#include <string>

#include "base/numbers.h"

namespace wetfront {

namespace {

constexpr double laminar_to = 2000.0;
constexpr double turbulent_from = 4000.0;
constexpr double roughest = 0.05;

}  // namespace

PipeFriction::PipeFriction(double bore, double relative_roughness, double viscosity)
    : bore_{bore},
      viscosity_{viscosity},
      rough_{relative_roughness / 3.7},
      rough_start_{std::pow(rough_, 1.11)},
      at_4000_{} {
    Memory nothing;
    at_4000_ = turbulent(turbulent_from, nothing);
}

Result<PipeFriction> PipeFriction::of(std::string_view item, Length bore, Length roughness,
                                      KinematicViscosity viscosity) {
    const double d = in_si(bore);
    const double e = in_si(roughness);
    if (!(d > 0.0 && d <= 1.0)) {
        return bad_input(std::string{item} + " bore", print_number(1e3 * d, 3) + " mm",
                         "above 0 mm, at most 1000 mm");
    }
    if (!(e >= 0.0 && e <= roughest * d)) {
        return bad_input(std::string{item} + " roughness", print_number(1e3 * e, 4) + " mm",
                         "0 to a twentieth of the bore, here " + print_number(1e3 * roughest * d, 4) + " mm");
    }
    if (!(in_si(viscosity) > 0.0) || !std::isfinite(in_si(viscosity))) {
        return bad_input("water viscosity", print_number(1e6 * in_si(viscosity), 4) + " mm2/s",
                         "more than 0 mm2/s");
    }
    return PipeFriction{d, e / d, in_si(viscosity)};
}

// Halley's steps on g(x) = x + 2 log10(e/3.7 + 2.51 x / Re), x = 1/sqrt(f). They start from Haaland's
// explicit formula (J. Fluids Eng. 105, 1983), which lies within 2 %, or from a value close by. g rises and
// bends one way only, so every step goes nearer; each cubes the deviation, so that the step after one of 1e-5
// would be below the last digit.
PipeFriction::Factor PipeFriction::turbulent(double reynolds, Memory& last) const {
    constexpr double c = 2.0 / std::numbers::ln10;
    const double b = 2.51 / reynolds;
    const bool close_by = reynolds < 1.5 * last.reynolds && last.reynolds < 1.5 * reynolds;
    double x = close_by ? last.root + last.slope * (reynolds - last.reynolds)
                        : -1.8 * std::log10(rough_start_ + 6.9 / reynolds);
    for (int step = 0; step < 8; ++step) {
        const double inside = rough_ + b * x;
        const double g = x + c * std::log(inside);
        const double bend = b / inside;
        const double g1 = 1.0 + c * bend;
        const double g2 = -c * bend * bend;
        const double change = -2.0 * g * g1 / (2.0 * g1 * g1 - g * g2);
        x += change;
        if (std::abs(change) < 1e-5 * x) {
            break;
        }
    }
    const double bend = b / (rough_ + b * x);
    const double x_slope = c * bend * x / (reynolds * (1.0 + c * bend));
    last = {reynolds, x, x_slope};
    return {1.0 / (x * x), -2.0 * x_slope / (x * x * x)};
}

PipeFriction::Factor PipeFriction::factor(double reynolds, Memory& last) const {
    if (reynolds <= laminar_to) {
        return {64.0 / reynolds, -64.0 / (reynolds * reynolds)};
    }
    if (reynolds >= turbulent_from) {
        return turbulent(reynolds, last);
    }
    // Hermite's form of the cubic, s from 0 to 1 over the transition.
    const double width = turbulent_from - laminar_to;
    const double s = (reynolds - laminar_to) / width;
    const double f0 = 64.0 / laminar_to;
    const double m0 = -64.0 / (laminar_to * laminar_to) * width;
    const double f1 = at_4000_.value;
    const double m1 = at_4000_.slope * width;
    const double square = 3.0 * (f1 - f0) - 2.0 * m0 - m1;
    const double cube = 2.0 * (f0 - f1) + m0 + m1;
    return {f0 + s * (m0 + s * (square + s * cube)), (m0 + s * (2.0 * square + 3.0 * s * cube)) / width};
}

PipeFriction::Gradient PipeFriction::at(double velocity) const {
    Memory nothing;
    return at(velocity, nothing);
}

PipeFriction::Gradient PipeFriction::at(double velocity, Memory& last) const {
    const double reynolds = velocity * bore_ / viscosity_;
    if (reynolds <= laminar_to) {  // without the division, which fails for still water
        const double slope = 32.0 * viscosity_ / (standard_gravity * bore_ * bore_);
        return {slope * velocity, slope};
    }
    const Factor f = factor(reynolds, last);
    const double per = velocity / (2.0 * standard_gravity * bore_);
    return {f.value * velocity * per, (2.0 * f.value + f.slope * reynolds) * per};
}

Result<double> friction_factor(double reynolds, double relative_roughness) {
    if (!(reynolds > 0.0 && reynolds <= 1e8)) {
        return bad_input("Reynolds number", print_number(reynolds, 1), "above 0, at most 1e8");
    }
    if (!(relative_roughness >= 0.0 && relative_roughness <= roughest)) {
        return bad_input("relative roughness", print_number(relative_roughness, 6), "0 to 0.05");
    }
    PipeFriction::Memory nothing;
    return PipeFriction{1.0, relative_roughness, 1.0}.factor(reynolds, nothing).value;
}

Result<Length> friction_loss(VolumeFlow flow, Length length, Length bore, Length roughness) {
    if (!(in_si(flow) >= 0.0) || !std::isfinite(in_si(flow))) {
        return bad_input("flow in the pipe", print_number(in_si(flow), 6) + " m3/s", "0 m3/s or more");
    }
    if (!(in_si(length) >= 0.0) || !std::isfinite(in_si(length))) {
        return bad_input("pipe length", print_number(in_si(length), 3) + " m", "0 m or more");
    }
    WF_TRY(const auto pipe, PipeFriction::of("pipe", bore, roughness));
    const double d = in_si(bore);
    const double velocity = 4.0 * in_si(flow) / (std::numbers::pi * d * d);
    return from_si<Length>(in_si(length) * pipe.at(velocity).head);
}

}  // namespace wetfront
