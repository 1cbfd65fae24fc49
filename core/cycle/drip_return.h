// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/bank_cycle.h"
#include "timing/uncertainty.h"

namespace wetfront {

/// When the far end drips again in a steady cycle, from pump start, in the weather of the readings.
///
/// Source: the wetting column in closed form, from even drip at the stop: unsupplied for period - on + fill,
/// then supplied until it drips. Wet start: fill + s (period - on + fill), s = (t_r - t_fill)/(t_off +
/// t_fill). Range: a pause (period - on + fill) above 0, and for a wet start not longer than the one it
/// proved. Accuracy: standard uncertainty by finite differences over the readings; the column itself is
/// assumed. None outside that range, and where supply does not outrun drying.
[[nodiscard]] std::optional<TimingResult> expected_drip_return(const BankQuestion& bank, Duration period,
                                                               Duration on_time);

}  // namespace wetfront
