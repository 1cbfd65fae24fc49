// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <vector>

#include "records/visit.h"
#include "timing/doubtful_presses.h"
#include "timing/stopwatch_guide.h"
#include "viewmodels/press_clock.h"

namespace wetfront::ui {

// What the stopwatch and the proof run share: a press as a mark, its words, what undo and redo mean.

/// The mark of a press, timed as the press was; the rest is left to whoever makes it.
[[nodiscard]] Mark mark_of(const Press& press, Id id, const PossibleMark& what, const Id& pump);

/// "Water at the far end of Bank 1".
[[nodiscard]] QString mark_words(MarkKind kind, const QString& bank);

[[nodiscard]] std::map<Id, PressDoubt> doubts_of(const VisitFile& file);
/// "too soon for water: not used"; empty where there is no doubt.
[[nodiscard]] QString doubt_words(const std::map<Id, PressDoubt>& doubts, const Id& mark);

/// In the order in which they were pressed.
[[nodiscard]] bool earlier_in_time(const Mark& a, const Mark& b);

/// The newest mark of that pump and sort that stands: what undo takes back. None: nullptr.
[[nodiscard]] const Mark* last_standing(const std::vector<Mark>& marks, const Id& pump, MarksOf of);
/// The first one taken back after it: what redo brings back. None: nullptr.
[[nodiscard]] const Mark* next_undone(const std::vector<Mark>& marks, const Id& pump, MarksOf of);

}  // namespace wetfront::ui
