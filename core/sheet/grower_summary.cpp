// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "rules/checklists.h"
#include "sheet/blocks.h"
#include "trend/settings_history.h"

// One page in plain words for whoever lives with the house.
namespace wetfront {
namespace {

/// What fits on one page beside the rest, worst first.
constexpr std::size_t most_things_to_do = 4;
constexpr std::size_t most_changes = 8;

void add_verdicts(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    blocks.emplace_back(SheetHeading{WF_TEXT("What your pads need")});
    for (const auto& timer : house.timers) {
        if (const auto* advice = inputs.advice.of(timer.id)) {
            blocks.emplace_back(
                SheetParagraph{{WF_TEXT("%1: %2"), {label_of(house, timer), advice->verdict}}, true});
        }
    }
    blocks.emplace_back(SheetParagraph{inputs.advice.truth, false});
}

void add_changes(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    SheetTable table{
        {WF_TEXT("Changed in the timer"), WF_TEXT("Before"), WF_TEXT("Now")}, {}, {0.5, 0.25, 0.25}};
    std::size_t changes = 0;
    for (const auto& timer : house.timers) {
        const auto* found = visit.found_of(timer.id);
        const auto* left = visit.left_of(timer.id);
        if (found == nullptr || left == nullptr) {
            continue;
        }
        const auto text = [](const std::optional<AnyQuantity>& value) {
            return value ? shown(*value) : not_entered();
        };
        for (const auto& change : changes_between(*found, *left)) {
            if (++changes <= most_changes) {
                table.rows.push_back(row({{WF_TEXT("%1, %2"), {label_of(house, timer), label_of(change)}},
                                          text(change.before),
                                          text(change.after)}));
            }
        }
    }
    if (table.rows.empty()) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("Nothing was changed in the timers."), false});
        return;
    }
    blocks.emplace_back(std::move(table));
    if (changes > most_changes) {
        blocks.emplace_back(SheetParagraph{
            {WF_TEXT("And %1 more, on the commissioning sheet."), {static_cast<int>(changes - most_changes)}},
            false});
    }
}

void add_things_to_do(Blocks& blocks, const SheetInputs& inputs) {
    blocks.emplace_back(SheetHeading{WF_TEXT("What is left to do")});
    const auto& findings = inputs.file.visit.left.empty() ? inputs.found : inputs.left;
    std::vector<Message> things;
    for (const auto& finding : findings) {  // worst first
        if (finding.severity > Severity::note && !finding.remedy.empty()) {
            things.push_back({WF_TEXT("%1: %2"), {label_of(finding.severity), finding.remedy}});
        }
    }
    for (const auto& point : inputs.file.visit.open_points) {
        things.push_back(verbatim(point));
    }
    for (std::size_t i = 0; i < std::min(things.size(), most_things_to_do); ++i) {
        blocks.emplace_back(SheetParagraph{std::move(things[i]), i == 0});
    }
    if (things.empty()) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("Nothing that this visit has found."), false});
    } else if (things.size() > most_things_to_do) {
        blocks.emplace_back(SheetParagraph{{WF_TEXT("And %1 more, on the commissioning sheet."),
                                            {static_cast<int>(things.size() - most_things_to_do)}},
                                           false});
    }
}

}  // namespace

SheetContent grower_summary(const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    SheetContent sheet;
    sheet.title = {WF_TEXT("%1: your pads in short"), {as_written(house.name)}};
    sheet.id = visit.id.text;
    sheet.revision = inputs.revision;
    sheet.draft = !visit.is_signed();
    sheet.running_head = {WF_TEXT("Service firm: %1. Farm: %2. House: %3"),
                          {as_written(farm.service_firm), as_written(farm.name), as_written(house.name)}};
    auto& blocks = sheet.blocks;
    blocks.emplace_back(
        SheetParagraph{{WF_TEXT("Visited on %1. The whole record is the commissioning sheet of that "
                                "visit; this page is not in its place."),
                        {local_date(visit.started)}},
                       false});
    add_verdicts(blocks, inputs);
    add_changes(blocks, inputs);
    add_timelines(blocks, inputs);
    add_things_to_do(blocks, inputs);
    blocks.emplace_back(SheetHeading{WF_TEXT("In the heat")});
    blocks.emplace_back(
        SheetParagraph{WF_TEXT("Birds die within the hour when pads stop in the heat. If a pad stays dry "
                               "while the pump is called for, put "
                               "the pump on by hand, watch the birds, and call the service firm."),
                       true});
    blocks.emplace_back(SheetParagraph{codes_come_first(), false});
    return sheet;
}

}  // namespace wetfront
