// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "store/pen.h"
#include "store/store.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

[[nodiscard]] bool is_removed(Statements& sql, RecordKind kind, const Id& id);
/// An error that says what to bring back first.
[[nodiscard]] Result<void> check_not_removed(Statements& sql, RecordKind kind, const Id& id);

/// Store::set_removed() with its rules. Adds nothing if that is the present state.
[[nodiscard]] Result<void> set_removed(const Pen& pen, RecordKind kind, const Id& id, bool removed,
                                       const Clock& clock);

/// Removed last comes first.
[[nodiscard]] std::vector<RemovedRecord> removed_records(Statements& sql);

}  // namespace wetfront::store_detail
