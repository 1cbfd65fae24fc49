// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "cycle/labels.h"
#include "sheet/sheet.h"

namespace wetfront {

// The parts of a commissioning sheet, each appended to the blocks so far. Used by commissioning_sheet() only.

using Blocks = std::vector<SheetBlock>;

void add_who_and_where(Blocks& blocks, const SheetInputs& inputs);
void add_house(Blocks& blocks, const SheetInputs& inputs);
void add_conditions(Blocks& blocks, const SheetInputs& inputs);
void add_method(Blocks& blocks, const SheetInputs& inputs);
void add_readings(Blocks& blocks, const SheetInputs& inputs);
void add_results(Blocks& blocks, const SheetInputs& inputs);
void add_bank_comparison(Blocks& blocks, const SheetInputs& inputs);
void add_trends(Blocks& blocks, const SheetInputs& inputs);
void add_settings(Blocks& blocks, const SheetInputs& inputs);
void add_reasons(Blocks& blocks, const SheetInputs& inputs);
void add_day(Blocks& blocks, const SheetInputs& inputs);
void add_timelines(Blocks& blocks, const SheetInputs& inputs);
void add_proof(Blocks& blocks, const SheetInputs& inputs);
void add_findings(Blocks& blocks, const SheetInputs& inputs);
void add_photos(Blocks& blocks, const SheetInputs& inputs);
void add_checks(Blocks& blocks, const SheetInputs& inputs);
void add_cautions(Blocks& blocks);
void add_open_points(Blocks& blocks, const SheetInputs& inputs);
void add_signatures(Blocks& blocks, const SheetInputs& inputs);
void add_code(Blocks& blocks, const SheetInputs& inputs);

[[nodiscard]] Message not_entered();
[[nodiscard]] Message not_measured();
/// Somebody's own words, or that there are none.
[[nodiscard]] Message as_written(const std::string& text);
[[nodiscard]] Message shown(const AnyQuantity& quantity);
template <class Q>
[[nodiscard]] Message shown_or(const Optional<Q>& entry, Message missing, Scale scale = Scale::normal) {
    return entry ? shown(any(entry->value(), scale)) : std::move(missing);
}
/// Cells of a row that is not marked anywhere.
[[nodiscard]] std::vector<SheetTable::Cell> row(std::vector<Message> texts);
/// The bank of a timer that takes longest to wet through, else to fill; none if nothing was timed.
[[nodiscard]] const BankTimings* slowest_bank(const VisitFile& file, const VisitTimings& timings,
                                              const Timer& timer);

}  // namespace wetfront
