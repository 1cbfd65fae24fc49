// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>

#include "timing/mark.h"

namespace wetfront::ui {

/// Milliseconds since a mark: by the boot clock, or, if the machine has restarted since, by the wall clock
/// (not verified).
[[nodiscard]] std::int64_t ms_since(const Mark& mark, const Clock& clock);

/// A pump event longer ago than a day belongs to no test that is still going on.
constexpr std::int64_t longest_test_ms = 24LL * 60 * 60 * 1000;

}  // namespace wetfront::ui
