// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "viewmodels/sheet_paper.h"

namespace wetfront::ui {

/// Where sheets go on a stick or card.
[[nodiscard]] QString sheets_folder_on(const QString& medium);

/// What a failure means to a person who wanted a file in `place`: what happened, and what to do.
[[nodiscard]] QString stick_words(const FileFailure& failure, const QString& place);

[[nodiscard]] QString no_stick_words();

/// None, or that the medium is not plugged in any more: its folder may still be there, on the machine's own
/// disk. Asked before a file is written and once more after it.
[[nodiscard]] std::optional<FileFailure> pulled_out(const SheetPaper& paper, const QString& medium);

}  // namespace wetfront::ui
