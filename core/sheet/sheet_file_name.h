// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "records/visit.h"
#include "sheet/sheet.h"

namespace wetfront {

/// The name of a visit's PDF: "Larkrise_House-Alder_2026-07-07_0197f0c2-....pdf", of a summary
/// "....summary.pdf". Of the names only letters of Latin alphabets and digits stay, 40 bytes at most; so
/// nothing from a record leaves the folder. No two visits of a record file get the same name, not even where
/// a medium does not tell capitals apart: a capital in an id is written as '_' and the small letter.
[[nodiscard]] std::string sheet_file_name(const VisitFile& file, SheetKind kind);

}  // namespace wetfront
