// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <utility>
#include <vector>

#include "format/formatter.h"
#include "timing/readings.h"

namespace wetfront::ui {

// The stopwatch's results in a person's words.

/// The results that a bank has, in the order in which they are timed.
[[nodiscard]] std::vector<std::pair<TimingKind, const TimingResult*>> results_of(const BankTimings& bank);

/// Rounded for showing to a step in seconds, above 0.
[[nodiscard]] AnyQuantity rounded_to(Duration value, double step_s);

/// "2 readings, spread 1.4 s", "one reading, spread assumed".
[[nodiscard]] QString spread_words(const TimingResult& result, const Formatter& formatter);

}  // namespace wetfront::ui
