// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/reason.h"
#include "records/settings.h"

namespace wetfront {

/// One advised setting. No value means: leave it unset, and the reason says why. A time of day is what has
/// passed since midnight, with Scale::clock.
struct SettingAdvice {
    Setting setting;
    std::optional<AnyQuantity> value;  ///< rounded to the timer's resolution in the safe direction
    Reason reason;
};

}  // namespace wetfront
