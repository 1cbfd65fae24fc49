// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "store/store.h"

namespace wetfront {

/// All visits of the house, each with house and farm as they are now, the latest first.
[[nodiscard]] Result<std::vector<VisitFile>> visit_files_of(const Store& store, const Id& house);

}  // namespace wetfront
