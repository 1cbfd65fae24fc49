// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "store/pen.h"
#include "store/store.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// One entry that changed a record.
struct TimelineStep {
    RecordKind kind;
    Id record;
    std::string from;  ///< revision before
    std::string to;    ///< revision that the entry made
    WallTime at;
};

/// What can be undone and redone in a visit (store.h says what belongs to it), the next one at the back of
/// each. Worked out from the revisions alone: one that restores what was before the last step is its undo,
/// one that restores what was undone last is its redo, and any other is a new step, which ends all redoing.
/// What another device wrote, or a choice between two states, is no step, and nothing before it can be
/// undone.
struct Timeline {
    std::vector<TimelineStep> done;
    std::vector<TimelineStep> undone;
};

/// Both empty for a signed visit.
[[nodiscard]] Result<Timeline> timeline_of(Statements& sql, const Id& visit);

/// What differs between two states of a record, by their revisions.
[[nodiscard]] std::vector<FieldChange> changes_between(Statements& sql, const std::string& from,
                                                       const std::string& to);

/// What the step changed.
[[nodiscard]] UndoStep described(Statements& sql, const TimelineStep& step);

/// Adds a revision equal to `revision` to the step's record. An error, and nothing to be kept of the
/// transaction, if marks or settings of the visit would then hang on a part that is no longer there.
[[nodiscard]] Result<void> restore(const Pen& pen, const Id& visit, const TimelineStep& step,
                                   const std::string& revision);

}  // namespace wetfront::store_detail
