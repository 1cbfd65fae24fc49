// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "format/formatter.h"
#include "print/flow.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

/// What a block is set with.
struct Measure {
    const Formatter& formatter;
    double width;  ///< of the body, sheet units
};

// A block as rows, in the reader's language and units; the rows keep nothing of the block. One function a
// kind.
[[nodiscard]] Rows rows_of(const SheetHeading& heading, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetParagraph& paragraph, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetFacts& facts, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetTable& table, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetTimeline& timeline, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetBanks& banks, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetFindings& findings, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetPhotos& photos, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetChecks& checks, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetCautions& cautions, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetSignatures& signatures, const Measure& measure);
[[nodiscard]] Rows rows_of(const SheetCode& code, const Measure& measure);

/// The sheet's title, above all blocks.
[[nodiscard]] Rows title_rows(const SheetContent& content, const Measure& measure);

}  // namespace wetfront::ui
