// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <vector>

#include "print/flow.h"
#include "records/finding.h"

namespace wetfront::ui {

/// A box, ticked or empty, one line of body text high.
[[nodiscard]] Line tick_box(bool done);

/// How bad it is as a shape, told apart without colour, and its word beside it.
[[nodiscard]] Line severity_mark(Severity severity, const QString& word);

/// Room for either mark with the longest of these words, and a gap to what stands beside it.
[[nodiscard]] double marks_width(const std::vector<QString>& words);

/// The word of a caution; words of injury with the triangle in front.
[[nodiscard]] Line signal_mark(bool injury, const QString& word);

}  // namespace wetfront::ui
