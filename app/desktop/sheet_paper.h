// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "viewmodels/sheet_paper.h"

namespace wetfront::ui {

/// Joins the sheet step to the painter: page pictures, PDF, and the print dialog of the system.
[[nodiscard]] SheetPaper sheet_paper(const QString& folder);

}  // namespace wetfront::ui
