// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "day/weather.h"
#include "records/visit.h"
#include "store/store.h"

namespace wetfront {

// The demo: an invented farm with three houses over the summers of 2024 to 2026, one of them from 2022 on.
// Everything is made by code and the same on every machine; no name, number or reading was taken from
// anywhere.
//   House Alder: well set.   House Birch: its pump never rests.   House Cedar: its banks differ, and more so
//   each year since the outlets of the worse one were cleaned.

/// Every visit, house by house, oldest first; each with the farm and house it speaks of. All are signed but
/// the last of House Cedar.
[[nodiscard]] std::vector<VisitFile> demo_visits();

/// The last visit to House Alder, signed: what `example visit` prints.
[[nodiscard]] VisitFile example_visit();

/// Four days of weather around that visit, 6 to 9 July 2026: what `example weather` prints.
[[nodiscard]] Weather demo_weather();

/// Adds every demo visit to a store.
[[nodiscard]] Result<void> fill_store(Store& store);

}  // namespace wetfront
