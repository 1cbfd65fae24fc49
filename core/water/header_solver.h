// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>

#include "water/header.h"
#include "water/header_march.h"

namespace wetfront {

/// Every value of a header within its limits (header.h); no outlet is fine here. `name` leads the item of an
/// error: "header".
[[nodiscard]] Result<void> check_header(const Header& header, const std::string& name);

/// Finds the state of one header, again and again from close by: a search over pumps or several headers asks
/// for one head after another.
///
/// Unknown is the head u at the furthest outlet that gives water. A march from there to the inlet gives inlet
/// head and flow with their slopes over u; both rise with u, nearly as a power of it where the header is
/// level, so Newton's steps are taken on the logarithms, inside a bracket, which is halved where a step would
/// leave it. At most 200 marches; usually 3 to 6. Residual at most 1e-12 of the target.
///
/// Where a header falls so much that outlets on the way have next to no head, heads near the inlet depend on
/// u more steeply than its digits tell. Then the march starts afresh at the outlet up to which the last two
/// marches agree to 1e-10, between both, and so on towards the inlet; residual at most 1e-9 then.
///
/// No allocation until state(), but for those fresh starts.
class HeaderSolver {
public:
    /// Refers to `header`, which must outlive it. Errors: check_header(); a header without outlets.
    [[nodiscard]] static Result<HeaderSolver> of(const Header& header, const std::string& name);

    struct Flow {
        double value;     ///< m3/s
        double per_head;  ///< its slope over the inlet's head, m2/s
    };
    /// At a head at the inlet, m.
    Flow at_head(double inlet_head);
    /// At a flow, m3/s, above 0; the head at the inlet, m, below 0 where the header falls so much that this
    /// flow does not fill it. Some outlet is open.
    [[nodiscard]] double at_flow(double flow);

    [[nodiscard]] bool all_blocked() const { return capacity_ <= 0.0; }

    /// The state last asked for.
    [[nodiscard]] HeaderFlow state() const;

private:
    enum class Aim { inlet_head, flow };
    HeaderSolver(const Header& header, const PipeFriction& pipe);
    /// A march about to begin: what is just past an outlet, seen from the inlet.
    struct Start {
        std::ptrdiff_t outlet;
        HeaderMarch past;
    };
    void solve(Aim aim, double target);
    void refine(Aim aim, double target, double enough, double low, double high);
    void up_to_before(Start& at) const;
    [[nodiscard]] HeaderMarch march(Start at) const;
    /// Sets furthest_ for a target; what is aimed at, with next to no head there.
    [[nodiscard]] double place_furthest(Aim aim, double target);
    [[nodiscard]] Start start_with(double head) const { return {furthest_, {head, 1.0, 0.0, 0.0}}; }
    [[nodiscard]] double climb_to(std::ptrdiff_t outlet) const;
    [[nodiscard]] double value(Aim aim, const HeaderMarch& at) const {
        return aim == Aim::inlet_head ? at.head : at.velocity * area_;
    }
    [[nodiscard]] double slope(Aim aim, const HeaderMarch& at) const {
        return aim == Aim::inlet_head ? at.head_slope : at.velocity_slope * area_;
    }

    const Header* header_;
    PipeFriction pipe_;
    double bore_;
    double area_;
    double steepness_;  ///< rise over length
    double capacity_ = 0.0;
    std::ptrdiff_t furthest_ = -1;  ///< -1: no outlet gives water
    double furthest_head_ = std::numeric_limits<double>::quiet_NaN();
    std::vector<Start> fresh_starts_;  ///< that refine() took on the way to the inlet; nearly always none
    HeaderMarch inlet_{};
    HeaderMarch next_to_nothing_{};  ///< at the inlet, with next to no head at the last outlet
};

}  // namespace wetfront
