// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "rules/checklists.h"
#include "sheet/blocks.h"

// What was found wrong, what to mind, what was checked, who signs.
namespace wetfront {
namespace {

Message place_of(const House& house, const Finding& finding) {
    const auto* timer = house.timer(finding.timer);
    const auto* bank = house.bank(finding.bank);
    if (timer != nullptr && bank != nullptr) {
        return {WF_TEXT("%1, %2"), {label_of(house, *timer), label_of(house, *bank)}};
    }
    if (timer != nullptr) {
        return label_of(house, *timer);
    }
    return bank != nullptr ? label_of(house, *bank) : WF_TEXT("whole house");
}

void add_list(Blocks& blocks, const House& house, const std::vector<Finding>& findings, Message none) {
    SheetFindings list;
    for (const auto& finding : findings) {
        auto& printed = list.findings.emplace_back(SheetFinding{
            finding.severity, place_of(house, finding), finding.message, finding.remedy, finding.source});
        for (const auto& likely : finding.causes) {
            printed.causes.push_back(likely.cause);
        }
    }
    std::ranges::stable_sort(list.findings, std::greater{}, &SheetFinding::severity);
    if (list.findings.empty()) {
        blocks.emplace_back(SheetParagraph{std::move(none), false});
        return;
    }
    blocks.emplace_back(std::move(list));
}

void add_checklist(Blocks& blocks, const Visit& visit, Step step, Message title) {
    blocks.emplace_back(SheetHeading{std::move(title)});
    SheetChecks checks;
    for (const auto& line : checklist(step)) {
        const auto tick = std::ranges::find(visit.ticks, line.id, &Tick::id);
        const bool known = tick != visit.ticks.end();
        const bool done = known && tick->done;
        checks.lines.push_back({line.text, done, known ? tick->note : std::string{},
                                done ? Message{WF_TEXT("done")} : Message{WF_TEXT("NOT done")}});
    }
    blocks.emplace_back(std::move(checks));
}

}  // namespace

void add_findings(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    blocks.emplace_back(SheetHeading{WF_TEXT("Findings on what was found")});
    add_list(blocks, house, inputs.found,
             visit.found.empty() ? WF_TEXT("Settings found: not entered, so none of them was checked.")
                                 : WF_TEXT("None by the rules of this program."));
    // A finding about the readings alone is not one about the settings left: it stands above already.
    std::vector<Finding> remaining;
    std::ranges::copy_if(inputs.left, std::back_inserter(remaining), [&](const Finding& finding) {
        return !finding.timer.empty() || std::ranges::find(inputs.found, finding) == inputs.found.end();
    });
    blocks.emplace_back(SheetHeading{WF_TEXT("Findings that remain on what was left")});
    add_list(blocks, house, remaining,
             visit.left.empty() ? WF_TEXT("Settings left: not entered, so none of them was checked.")
                                : WF_TEXT("None by the rules of this program."));
}

void add_cautions(Blocks& blocks) {
    blocks.emplace_back(SheetHeading{WF_TEXT("Cautions")});
    blocks.emplace_back(SheetParagraph{codes_come_first(), true});
    SheetCautions lines;
    for (const auto& caution : cautions()) {
        lines.lines.push_back({caution.word, caution.text});
    }
    blocks.emplace_back(std::move(lines));
}

void add_checks(Blocks& blocks, const SheetInputs& inputs) {
    const auto& visit = inputs.file.visit;
    add_checklist(blocks, visit, Step::safety, WF_TEXT("Checked before the work"));
    add_checklist(blocks, visit, Step::before_leaving, WF_TEXT("Checked before leaving"));
}

void add_open_points(Blocks& blocks, const SheetInputs& inputs) {
    blocks.emplace_back(SheetHeading{WF_TEXT("Open points")});
    const auto& visit = inputs.file.visit;
    const auto heading_only = blocks.size();
    for (const auto& point : visit.open_points) {
        blocks.emplace_back(SheetParagraph{verbatim(point), false});
    }
    // A signature does not close a line that nobody ticked.
    for (const auto step : {Step::safety, Step::before_leaving}) {
        for (const auto* line : open_lines(step, visit)) {
            blocks.emplace_back(SheetParagraph{{WF_TEXT("Not done: %1"), {line->text}}, true});
        }
    }
    if (blocks.size() == heading_only) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("None entered."), false});
    }
}

void add_signatures(Blocks& blocks, const SheetInputs& inputs) {
    const auto& visit = inputs.file.visit;
    blocks.emplace_back(SheetHeading{WF_TEXT("Signatures")});
    SheetSignatures lines;
    for (const auto& signature : visit.signatures) {
        lines.lines.push_back({as_written(signature.person.role), signature.person.name,
                               local_date(signature.at) + " " + local_clock(signature.at), signature.drawn});
    }
    for (const auto& person : visit.persons) {
        const auto signed_by = std::ranges::find(visit.signatures, person, &Signature::person);
        if (signed_by == visit.signatures.end()) {
            lines.lines.push_back(
                {{WF_TEXT("%1, %2"), {as_written(person.name), as_written(person.role)}}, {}, {}});
        }
    }
    if (lines.lines.empty()) {
        lines.lines.push_back({WF_TEXT("For the service firm"), {}, {}});
    }
    if (lines.lines.size() < 2) {
        lines.lines.push_back({WF_TEXT("For the grower"), {}, {}});
    }
    blocks.emplace_back(std::move(lines));
}

void add_code(Blocks& blocks, const SheetInputs& inputs) {
    if (inputs.record_hash.empty()) {
        return;
    }
    const auto& id = inputs.file.visit.id.text;
    const auto revision = std::to_string(inputs.revision);
    blocks.emplace_back(SheetHeading{WF_TEXT("Record of this visit")});
    blocks.emplace_back(SheetCode{
        "Wetfront visit " + id + " revision " + revision + " sha256 " + inputs.record_hash,
        {{WF_TEXT("Visit %1, revision %2"), {id, inputs.revision}},
         {WF_TEXT("SHA-256 of its record: %1"), {inputs.record_hash}},
         WF_TEXT(
             "The code holds both. Whoever has the record can tell whether it is the one that this sheet was "
             "made from: the hash of what the command \"store show\" writes as JSON is this one.")}});
}

}  // namespace wetfront
