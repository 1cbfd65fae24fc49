// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "water/header.h"

namespace wetfront {

/// How water comes along an empty header while the outlets behind its front already run.
struct Filling {
    std::vector<Duration> arrivals;  ///< at each outlet, from water at the inlet
    Duration fill;                   ///< at the far end of the header
    Duration pipe_time;              ///< pipe volume over flow: what filling would take without outlets
    Volume supplied;  ///< through the outlets until then; flow times fill less the pipe's volume

    /// g: the share of the fill time at which water is at `share` of the header's length; share and result 0
    /// to 1, rising. Straight lines between the points below, which are as near as the outlets and at most a
    /// hundredth of the length apart.
    [[nodiscard]] double arrival_share(double share) const;

    std::vector<double> shares;  ///< of the length, rising from 0 to 1 ...
    std::vector<double> times;   ///< ... and of the fill time, at those
};

/// Filling at a steady flow into the inlet, 1e-9 to 0.1 m3/s; the header may be without outlets.
///
/// Model, without a source of its own: from moment to moment the stretch behind the front works as a header
/// at rest (outlets, friction and static recovery as in header.h), with half the bore as head at the front,
/// where water stands from the pipe's lowest to its highest point. Marching upstream from the front gives the
/// front speed w at which the inlet takes the flow; the time is the integral of dx / w, by the middle of each
/// piece between the points of g, good to about 1e-5 of it. Left out: the water's inertia, a front that runs
/// out flat along the bottom of a pipe that is fed slowly or falls, and air that cannot get out. A healthy
/// header fills in 1.3 to 2.2 times `pipe_time` (common practice, no source).
///
/// An error where no speed above 0 does: then the pump cannot fill the header, and the error says how far the
/// water comes. Errors too for a header beyond the limits of header.h.
[[nodiscard]] Result<Filling> filling_of(const Header& header, VolumeFlow flow);

}  // namespace wetfront
