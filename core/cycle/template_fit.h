// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "cycle/advice.h"
#include "cycle/pump_runs.h"
#include "cycle/template_lines.h"

namespace wetfront {

/// Each value goes to a step that the controller holds, in the direction that is safe:
/// - period: nearest; on a tie the shorter, which leaves the far end dry for less long;
/// - base on-time, rinse length: up, so that no part lacks water;
/// - on-time ceiling: down, so that the rest stays, but never below the base as it is held;
/// - trim change: up (a change that takes off takes off less); degrees above target: up, as a narrower band
///   would hunt and the base carries the pads anyway;
/// - review interval: up, and to a multiple of the period where the controller demands it;
/// - start temperature: up, never into the 70s °F; lowest house temperature: up, so that cold birds stay dry;
/// - humidity cut-off: down, as pads above it are not worth their damp;
/// - pad hours: outward, from down and to up, as they were advised: ending while it is hot is harm;
/// - rinse time: up, so that it stays within the pad hours;
/// - target and what a controller is told or shows (fill, wet-through, on-time): nearest.
/// What no step can hold in that direction gets no number but a problem. What lies a step or more out of
/// range on the safe side gets the first or last step; that is a problem too, but for base and ceiling, which
/// are checked again as they are held.
///
/// Where the on-time counts from a full header, the fill is taken off base and ceiling as pump_runs() will
/// add it again: the entered fill as it is held, else the shortest measured fill off the base and the longest
/// off the ceiling. Shown on-time and `TemplateFit::settings` are in the controller's counting.
///
/// The advised period may move to the nearest that is held; base, ceiling and review interval are then worked
/// out anew for it. In the end everything is checked again at what is held: the base against what the banks
/// need, the rest, the published band of start temperatures, and what the controller demands between
/// settings.
///
/// `measured`: the fill by the readings of all banks, measured_fill(); without it an on-time that counts from
/// a full header is a problem.
[[nodiscard]] TemplateFit fit_to_template(const SettingTemplate& described, const TimerAdvice& advice,
                                          const CycleMargins& margins, std::optional<HeaderFill> measured);

/// The same for settings that somebody chose: nothing is worked out anew, and a base or rest that is too
/// short for `banks` is a problem. Without banks only the controller's own limits are checked.
[[nodiscard]] TemplateFit fit_to_template(const SettingTemplate& described, const TimerSettings& wanted,
                                          const std::vector<BankQuestion>& banks = {},
                                          const CycleMargins& margins = {});

}  // namespace wetfront
