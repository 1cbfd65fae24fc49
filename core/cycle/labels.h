// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/house.h"
#include "units/message.h"

namespace wetfront {

// A part of the house as people say it: its name, or "bank 2" where nobody named it.
[[nodiscard]] Message label_of(const House& house, const PadBank& bank);
[[nodiscard]] Message label_of(const House& house, const Pump& pump);
[[nodiscard]] Message label_of(const House& house, const Timer& timer);

}  // namespace wetfront
