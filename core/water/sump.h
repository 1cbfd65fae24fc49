// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// A pump's sump. What is not known stays empty, and so do the results that need it.
struct Sump {
    std::optional<Volume> usable;  ///< that the pump can take, at the working level
    std::optional<Area> area;      ///< of the water's surface, above 0
    /// Of water above the pump's intake at the working level; with the area it stands for `usable`, which
    /// goes first where both are given.
    std::optional<Length> depth;
    std::optional<Length> freeboard;    ///< from the working level to where it runs over
    std::optional<VolumeFlow> make_up;  ///< the most that its valve lets in
};

/// What pumping asks of a sump. The header's volume is needed for a start and for a stop; what else is not
/// known there counts as nothing, and the result says that it is a least value.
struct SumpDemand {
    std::optional<Volume> header;         ///< of all headers that the pump fills
    std::optional<Volume> riser;          ///< of the pipe up to them
    std::optional<Volume> pads;           ///< water that the pads take up until they drip
    std::optional<Volume> run_off;        ///< water that still drips from the pads after a stop
    std::optional<MassFlow> evaporation;  ///< with the pads wet
    std::optional<MassFlow> bleed;        ///< with drift and leaks, while the pump runs
    std::optional<double> on_share;       ///< of a period that the pump runs, above 0 to 1; none: no cycle
};

/// How a sump fares. A value is empty where an input for it is not known.
struct SumpBalance {
    std::optional<Volume> usable;

    std::optional<Volume> draw_down;         ///< at a start from dry: header, riser and pads fill
    bool draw_down_is_least = false;         ///< riser or pads not known
    std::optional<Length> level_fall;        ///< by it
    std::optional<Volume> left_after_start;  ///< usable - draw-down; below 0: the pump draws air

    std::optional<Volume> run_back;  ///< at a stop: header and riser drain, pads drip
    bool run_back_is_least = false;  ///< riser or drip not known
    std::optional<Volume> freeboard_volume;
    std::optional<Volume> freeboard_left;  ///< freeboard - run-back; below 0: the sump runs over

    std::optional<MassFlow> need;         ///< evaporation + bleed, for make-up to carry, pumping without rest
    bool need_is_least = false;           ///< bleed not known
    std::optional<MassFlow> need_cycled;  ///< the same in a cycle: bleed by the on-share
    std::optional<VolumeFlow> make_up_left;  ///< make-up - need; below 0: the sump empties

    /// If make-up fails: time until the pump draws air. Pumping without rest: from the working level with
    /// full headers. In a cycle: from the working level at rest, so that what runs back at each stop has to
    /// be lent to each run; 0 where that is more than the sump holds. Empty where no water is used.
    std::optional<Duration> reserve;
    std::optional<Duration> reserve_cycled;
};

/// Model: volumes added up, water of 1000 kg/m3; a level surface of constant area. At a stop header and riser
/// drain into the sump (assumed; where the header drains onto the pad, the same water comes by the pad).
/// Evaporation goes on through a rest, because a cycle keeps the pads wet; bleed stops with the pump.
/// Simplification, on the safe side: make-up does not help while the pads fill. Errors: a value below 0 or
/// not finite, area 0, on-share outside its range.
[[nodiscard]] Result<SumpBalance> sump_balance(const Sump& sump, const SumpDemand& demand);

}  // namespace wetfront
