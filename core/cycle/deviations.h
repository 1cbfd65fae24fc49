// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/advice.h"

namespace wetfront {

/// One setting that a timer holds otherwise than is advised, both as the timer's controller counts.
struct Deviation {
    Setting setting;
    std::size_t row = 0;  ///< of the trim rows, from 0
    AnyQuantity held;
    AnyQuantity advised;
    Message meaning;  ///< what it does, one sentence
};

/// Against settings_to_enter(): what the controller can hold of the advice, where it is described. None where
/// the setting is not held, no value is advised, or the two are the same. Where a cycle is advised, a trim
/// row beyond those advised is advised to change nothing. Where running without rest is advised, any period
/// and on-time that never rest are as advised.
[[nodiscard]] std::optional<Deviation> deviation(const TimerSettings& settings, const TimerAdvice& advice,
                                                 Setting setting, std::size_t row = 0);

/// All of them, in the order of all_settings, trim rows one after the other.
[[nodiscard]] std::vector<Deviation> deviations(const TimerSettings& settings, const TimerAdvice& advice);

/// A time of day is before another or after it by the shorter way around the clock: midnight is after 23:30.
/// The same within a millionth: what is read back from text is not quite what was written.
[[nodiscard]] bool same_value(const AnyQuantity& a, const AnyQuantity& b);

}  // namespace wetfront
