// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "store/rows.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// True if the visit's marks leave a pump running, or a bank dripping or drying after a stop in the last 24
/// h, or a pump watched in a proof run within the last hour.
[[nodiscard]] Result<bool> stopwatch_runs(Statements& sql, const Id& visit, const Clock& clock);

}  // namespace wetfront::store_detail
