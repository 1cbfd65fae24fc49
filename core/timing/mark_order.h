// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "timing/doubtful_presses.h"

namespace wetfront {

// How marks stand to each other in time: shared by readings and proof runs; not for other folders.

struct Interval {
    double seconds = 0.0;
    bool verified = false;  ///< both ends on the clock of one boot
};
[[nodiscard]] Interval between(const Mark& from, const Mark& to);

/// A second press within 0.3 s of the one before (none: nullptr) is not a second event.
[[nodiscard]] bool is_same_press(const Mark* before, const Mark& mark);

/// Doubt about a mark of a pump that was switched at `since`, after the one pressed `last` for its bank; each
/// may be nullptr.
[[nodiscard]] std::optional<PressDoubt> doubt_of(const Mark& mark, const Mark* since, const Mark* last);

[[nodiscard]] bool is_pump_event(const Mark& mark);

/// From that mark on nobody watches the pump for that purpose: it is back on automatic, or was switched in a
/// run of the other sort.
[[nodiscard]] bool ends_watching(const Mark& mark, MarksOf of);

/// Marks that stand, oldest first. Within a boot its clock decides, and boots follow each other by the wall
/// time of their first mark, so that a jump of the wall clock cannot reorder the marks of one boot.
[[nodiscard]] std::vector<const Mark*> in_time_order(std::span<const Mark> marks);

/// The pump that the mark names; a bank's mark that names none is its bank's.
[[nodiscard]] const Id& pump_of(const Mark& mark, std::span<const BankOfPump> banks);

/// A signal or a controller adds its own delay to the moment of switching.
[[nodiscard]] bool is_by_signal(StartedBy by);

}  // namespace wetfront
