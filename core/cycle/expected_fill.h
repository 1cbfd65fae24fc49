// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "records/visit.h"

namespace wetfront {

/// When water can be expected at a bank's far end: pipe volume divided by the bank's share of its pump's
/// measured flow (by pad length), times 1.75, the middle of 1.3 to 2.2 within which a healthy header fills
/// (outlets run while it fills), plus the riser. Only a picture is drawn from it, never a setting. None where
/// bore, length or flow is unknown.
[[nodiscard]] std::optional<Duration> expected_fill(const VisitFile& file, const Id& bank);

}  // namespace wetfront
