// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <span>

#include "timing/readings.h"

namespace wetfront {

/// Why a press cannot be what its button said. It stays in the journal and is shown with this; nothing is
/// worked out from it.
enum class PressDoubt {
    second_press,  ///< a second finger, or the same one trembling: within 0.3 s of the press before
    too_soon,      ///< water cannot have done that so soon after the pump was switched
};

/// Soonest time from the switching of the pump to what the mark says, in seconds; 0 for pump events. Assumed,
/// no source, and far below any real house, so that nothing real is doubted: water has to come up the riser
/// and along the header (2 s) and down the pad (3 s); a wet pad goes on dripping for some seconds (1 s) and
/// holds water for minutes (10 s).
[[nodiscard]] double soonest_s(MarkKind kind);

/// The doubtful ones of a visit's marks (any order; undone ones are left out), by their id.
[[nodiscard]] std::map<Id, PressDoubt> doubtful_presses(std::span<const Mark> marks,
                                                        std::span<const BankOfPump> banks);

}  // namespace wetfront
