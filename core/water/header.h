// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/result.h"
#include "units/quantities.h"
#include "water/uniformity.h"

namespace wetfront {

// Limits within which a header is computed: wider than any that is built, and narrow enough that a slip of a
// unit is noticed.
inline constexpr std::size_t most_outlets = 5000;  ///< of one header
inline constexpr double longest_header_m = 500.0;
inline constexpr double highest_head_m = 100.0;  ///< at a header's inlet
inline constexpr double least_flow_si = 1e-9;    ///< m3/s, where a flow is given
inline constexpr double most_flow_si = 0.1;      ///< m3/s

/// One hole of a header.
struct Outlet {
    Length at;    ///< from the header's inlet, 0 to the header's length
    Length bore;  ///< above 0, below the header's bore
    /// Cd, (0, 1]. 0.6 for holes drilled in plastic pipe: that of the Univ. of Minnesota pressure
    /// distribution worksheet's table, to its last digit.
    double discharge_coefficient = 0.6;
    double open_share = 1.0;  ///< of its area, [0, 1]: 1 clean, 0 blocked
    friend bool operator==(const Outlet&, const Outlet&) = default;
};

/// A distribution pipe over one bank, fed at one end and closed at the other.
struct Header {
    Length length;  ///< from the inlet to the closed end; above 0, at most 500 m
    Length bore;    ///< inside; above 0, at most 1 m
    /// Absolute, 0 to a twentieth of the bore. 0.0015 mm as for drawn tubing on Moody's chart (from memory).
    Length roughness = from_si<Length>(1.5e-6);
    /// Of the far end above the inlet, evenly along it, at most its length; below 0 where it falls.
    Length rise = from_si<Length>(0.0);
    /// Share of the velocity head regained past an outlet, [0, 1]. Nobody knows it for a given pipe: compute
    /// both 0 and 1 and show both.
    double static_recovery = 0.0;
    std::vector<Outlet> outlets;  ///< from the inlet to the far end; 1 to 5,000
    friend bool operator==(const Header&, const Header&) = default;
};

/// Equal outlets, `spacing` apart, the first one spacing from the inlet, as many as fit in the length.
/// Errors: none fits, or more than 5,000; a size not positive; an outlet as wide as the header.
[[nodiscard]] Result<Header> even_header(Length length, Length bore, Length outlet_bore, Length spacing,
                                         double discharge_coefficient = 0.6);

/// A header at work: what each outlet gives.
struct HeaderFlow {
    std::vector<VolumeFlow> outlets;  ///< in the header's order
    VolumeFlow flow;                  ///< their sum
    Length inlet_head;                ///< gauge, at the inlet
    Velocity inlet_velocity;
    Length first_head;  ///< gauge, at the first and the last outlet
    Length last_head;
    VolumeFlow lowest;
    VolumeFlow highest;
    Uniformity uniformity;  ///< 1 where nothing flows
};

// Model: each outlet is an orifice, q = Cd A sqrt(2 g h) (Torricelli), A its open area, h the gauge head at
// the pipe's axis before it; friction between outlets by Darcy and Weisbach with the factor of pipe.h; past
// each outlet the share r of the velocity head that is lost comes back as pressure, r (v^2 - v_past^2) / (2
// g). Water at 20 degC, g = 9.80665 m/s2. Accuracy: the equations are met to 1e-9; what a header gives is
// known about as well as its Cd and bores, 5 % or so (common practice, no source). Simplifications: steady
// flow; no loss at the inlet nor in branching off; nothing flows back through an outlet whose head is not
// above 0: it gives nothing, and the header may run part empty there.
//
// Errors: a value outside its limits above, by name ("header outlet 3 bore"; "header 2 outlet 3 bore" where
// there are several headers), and what stands at each function.

/// Flows for a head at the inlet: 0 to 100 m.
[[nodiscard]] Result<HeaderFlow> flow_for_head(const Header& header, Length inlet_head);

/// Head for a flow into the inlet: 1e-9 to 0.1 m3/s. Errors: every outlet blocked; a flow that would take
/// over 100 m of head; one too small to fill a header that falls, which runs part empty then.
[[nodiscard]] Result<HeaderFlow> head_for_flow(const Header& header, VolumeFlow flow);

/// Headers fed side by side from one pump: all have the same inlet head, and their flows add up to `flow`. In
/// the order given. Errors: those of head_for_flow(); no header.
[[nodiscard]] Result<std::vector<HeaderFlow>> shared_flow(std::span<const Header> headers, VolumeFlow flow);

/// A point of a pump's curve.
struct PumpPoint {
    VolumeFlow flow;
    Length head;
};

/// What is between the sump and the headers.
struct Supply {
    /// Flow rising from point to point, head falling; straight lines between points. At least two.
    std::vector<PumpPoint> pump;
    Length static_lift = from_si<Length>(0.0);  ///< of the headers' inlets above the water in the sump
    Length pipe_length = from_si<Length>(0.0);  ///< of the supply pipe; 0: no loss counted
    Length pipe_bore = from_si<Length>(0.0);    ///< above 0 where there is a pipe
    Length roughness = from_si<Length>(1.5e-6);
};

/// A pump with its headers at work.
struct PumpedFlow {
    VolumeFlow flow;
    Length pump_head;
    Length supply_loss;  ///< friction in the supply pipe
    std::vector<HeaderFlow> headers;
};

/// Where pump curve and headers meet: pump head = static lift + friction in the supply pipe + head at the
/// inlets. Errors: a curve with fewer than two points or one that does not fall; a lift that the pump cannot
/// reach; a meeting point before the curve's first or beyond its last flow; over 100 m at the inlets; headers
/// that fall so much that they take more than the pump gives; every outlet blocked; no header.
[[nodiscard]] Result<PumpedFlow> flow_on_pump(std::span<const Header> headers, const Supply& supply);

}  // namespace wetfront
