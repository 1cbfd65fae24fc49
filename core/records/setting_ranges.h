// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "records/fields.h"

namespace wetfront {

// Whatever is found in a timer is kept (Field::kept). What lies outside its usual range is for a finding and
// for people: nothing is worked out from it.

/// A value outside its usual range.
struct UnusualSetting {
    Field field;
    int row = 0;  ///< of the trim rows, from 1; 0: of none
    AnyQuantity value;
};

/// In the order of fields.h.
[[nodiscard]] std::vector<UnusualSetting> unusual_settings(const TimerSettings& settings);

/// The same settings as if nobody had read those values.
[[nodiscard]] TimerSettings without_unusual(TimerSettings settings);

}  // namespace wetfront
