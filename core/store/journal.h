// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "base/result.h"
#include "store/pen.h"
#include "timing/mark.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// A mark with the visit that it belongs to.
struct JournalMark {
    Id visit;
    Mark mark;
};

/// In the order of writing, undone ones included.
[[nodiscard]] std::vector<Mark> marks_of(Statements& sql, const Id& visit);
[[nodiscard]] std::optional<JournalMark> mark_with(Statements& sql, const Id& mark);

/// Adds the mark, and if it is undone the change that says so. The same mark again adds nothing.
[[nodiscard]] Result<void> add_mark(const Pen& pen, const Id& visit, const Mark& mark);
/// Adds a change unless that is the present state.
void set_undone(const Pen& pen, const Mark& present, bool undone);

}  // namespace wetfront::store_detail
