// SPDX-License-Identifier: Apache-2.0
#include "sheet/sheet.h"

#include <algorithm>

#include "sheet/blocks.h"

namespace wetfront {
Message not_entered() {
    return WF_TEXT("not entered");
}
Message not_measured() {
    return WF_TEXT("not measured");
}
Message as_written(const std::string& text) {
    return text.empty() ? not_entered() : verbatim(text);
}
Message shown(const AnyQuantity& quantity) {
    return {"%1", {quantity}};
}

std::vector<SheetTable::Cell> row(std::vector<Message> texts) {
    std::vector<SheetTable::Cell> cells;
    for (auto& text : texts) {
        cells.push_back({std::move(text), false});
    }
    return cells;
}

SheetContent commissioning_sheet(const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    SheetContent sheet;
    sheet.title = WF_TEXT("Commissioning sheet: cooling pads, pumps and timers");
    sheet.id = visit.id.text;
    sheet.revision = inputs.revision;
    sheet.draft = !visit.is_signed();
    sheet.running_head = {WF_TEXT("Service firm: %1. Farm: %2. House: %3"),
                          {as_written(farm.service_firm), as_written(farm.name), as_written(house.name)}};
    auto& blocks = sheet.blocks;
    add_who_and_where(blocks, inputs);
    add_house(blocks, inputs);
    add_conditions(blocks, inputs);
    add_method(blocks, inputs);
    add_readings(blocks, inputs);
    add_results(blocks, inputs);
    add_bank_comparison(blocks, inputs);
    add_trends(blocks, inputs);
    add_settings(blocks, inputs);
    add_reasons(blocks, inputs);
    add_timelines(blocks, inputs);
    add_day(blocks, inputs);
    add_proof(blocks, inputs);
    add_findings(blocks, inputs);
    add_photos(blocks, inputs);
    add_cautions(blocks);
    add_checks(blocks, inputs);
    add_open_points(blocks, inputs);
    add_signatures(blocks, inputs);
    add_code(blocks, inputs);
    return sheet;
}

}  // namespace wetfront
