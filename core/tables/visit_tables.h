// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <vector>

#include "records/visit.h"
#include "tables/table.h"

// What visits hold, as tables for other programs. Every row begins with visit, started (ISO 8601 with
// offset), signed, farm_name, house, house_name. Names stand beside ids; a name may occur twice, an id not.
namespace wetfront {

/// One row a reading, used or not and why; `value_s` in seconds, `at` when its end was marked.
[[nodiscard]] Table readings_table(const std::vector<VisitFile>& visits);

/// One row for each timer and each of found, advised and left; a column for each setting, and a pair for each
/// row of the trim table. Times of day are written "14:30".
[[nodiscard]] Table settings_table(const std::vector<VisitFile>& visits);

/// One row a finding on the settings found and on those left; message and remedy in English, numbers in those
/// units.
[[nodiscard]] Table findings_table(const std::vector<VisitFile>& visits, UnitSystem units);

}  // namespace wetfront
