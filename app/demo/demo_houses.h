// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/visit.h"

namespace wetfront {

/// A text of ours that is known to parse; ends the program otherwise, so that a slip shows at the first
/// start.
template <class Q>
[[nodiscard]] Entered<Q> typed(std::string_view text) {
    return Entered<Q>::parse(text, "demo").value();
}

[[nodiscard]] Farm demo_farm();
[[nodiscard]] House alder(const Farm& farm);  ///< one pump, two banks, a trimmed timer
[[nodiscard]] House birch(const Farm& farm);  ///< one pump, two banks, a trimmed timer in steps of 5 s
[[nodiscard]] House cedar(const Farm& farm);  ///< two pumps with one bank each, one timer

/// What the grower wants whatever the cycle: when pads may run.
[[nodiscard]] TimerSettings when_pads_may_run(const Id& timer);

}  // namespace wetfront
