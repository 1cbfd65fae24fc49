// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "store/bundle.h"
#include "store/pen.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// Store::split_records().
[[nodiscard]] std::vector<SplitRecord> split_records(Statements& sql);

/// Store::choose_state().
[[nodiscard]] Result<void> choose_state(const Pen& pen, const std::string& revision);

}  // namespace wetfront::store_detail
