// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// m2/s
using KinematicViscosity = boost::units::quantity<boost::units::si::kinematic_viscosity>;

/// m/s2; standard gravity, exact (3rd General Conference on Weights and Measures, 1901).
inline constexpr double standard_gravity = 9.80665;

/// Of water at 20 degC and atmospheric pressure: 1.0016 mPa s over 998.2 kg/m3 (ISO/TR 3666:1998; from
/// memory). At 10 degC it is 30 % higher, at 30 degC 20 % lower, which changes a header's friction by about a
/// twentieth.
inline constexpr double water_viscosity_si = 1.0034e-6;
[[nodiscard]] inline KinematicViscosity water_viscosity() {
    return from_si<KinematicViscosity>(water_viscosity_si);
}

/// Darcy's friction factor f of a round pipe that runs full: head lost = f (length / bore) v^2 / (2 g).
///  - Reynolds number to 2,000: 64 / Re (Hagen and Poiseuille, exact).
///  - from 4,000: Colebrook 1939 (J. Inst. Civ. Eng. 11), 1/sqrt(f) = -2 log10(e/3.7 + 2.51 / (Re sqrt(f)))
///  with
///    e = roughness / bore, solved to the last digits. Pipes scatter around it by 10 % or so (common
///    practice, no source).
///  - between: flow switches between both kinds and nothing is exact; the cubic in Re that has the value and
///  the
///    slope of the laminar law at 2,000 and of Colebrook's at 4,000, after Dunlop 1991, whose form of it,
///    with an explicit formula for the turbulent end, is found in the source of EPANET 2.
/// Reynolds number above 0, at most 1e8; relative roughness 0 to 0.05, as on Moody's chart.
[[nodiscard]] Result<double> friction_factor(double reynolds, double relative_roughness);

/// A pipe that runs full, ready for many velocities.
class PipeFriction {
public:
    /// Bore above 0, at most 1 m; roughness 0 to 0.05 of the bore; viscosity above 0. `item` names the pipe
    /// in errors: "header".
    [[nodiscard]] static Result<PipeFriction> of(std::string_view item, Length bore, Length roughness,
                                                 KinematicViscosity viscosity = water_viscosity());

    struct Gradient {
        double head;          ///< lost per length of pipe, m/m
        double per_velocity;  ///< its slope over velocity, s/m
    };
    /// At a velocity of 0 or more, m/s. No allocation.
    [[nodiscard]] Gradient at(double velocity) const;

    /// What is known from the last velocity: a march along a pipe goes from one to a slightly higher one.
    struct Memory {
        double reynolds = 0.0;  ///< 0: nothing is known
        double root = 0.0;      ///< 1/sqrt(f) there
        double slope = 0.0;     ///< its slope over the Reynolds number
    };
    /// The same to the last digits, sooner where `last` is from close by.
    [[nodiscard]] Gradient at(double velocity, Memory& last) const;

private:
    struct Factor {
        double value;
        double slope;  ///< over the Reynolds number
    };
    friend Result<double> friction_factor(double reynolds, double relative_roughness);
    PipeFriction(double bore, double relative_roughness, double viscosity);
    [[nodiscard]] Factor factor(double reynolds, Memory& last) const;
    [[nodiscard]] Factor turbulent(double reynolds, Memory& last) const;

    double bore_;
    double viscosity_;
    double rough_;        ///< e / 3.7
    double rough_start_;  ///< its share in the first guess
    Factor at_4000_;
};

/// Head lost by friction in a pipe that runs full of water at 20 degC. Length 0 or more, flow 0 or more, bore
/// and roughness as in PipeFriction.
[[nodiscard]] Result<Length> friction_loss(VolumeFlow flow, Length length, Length bore, Length roughness);

}  // namespace wetfront
