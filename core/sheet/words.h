// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/house.h"
#include "timing/readings.h"
#include "units/message.h"

namespace wetfront {

// What people call things that files and journals name by key; for translation.

[[nodiscard]] Message label_of(TimingKind kind);  ///< "Wet-through"
[[nodiscard]] Message label_of(NotUsed why);      ///< "not used: the pad was not dry"
[[nodiscard]] Message label_of(StartedBy who);
[[nodiscard]] Message label_of(SpreadFrom origin);
[[nodiscard]] Message label_of(PumpEnd end);
[[nodiscard]] Message label_of(TimerKind kind);
[[nodiscard]] Message label_of(SensorKind kind);
[[nodiscard]] Message label_of(SensorPlace place);
[[nodiscard]] Message label_of(CountsFrom start);

/// How a time is read, in one line.
[[nodiscard]] Message method_of(TimingKind kind);

}  // namespace wetfront
