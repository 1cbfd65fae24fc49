// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "rules/rules.h"
#include "sheet/sheet.h"

namespace wetfront::test {

/// A made sheet with what it was made from, and its blocks by kind.
class MadeSheet {
public:
    explicit MadeSheet(VisitFile visit_file, int revision = 1, std::string record_hash = {})
        : file{std::move(visit_file)},
          timings{timings_of(file)},
          advice{advise(file)},
          found{check(file, timings, advice, WhichSettings::found)},
          left{check(file, timings, advice, WhichSettings::left)},
          content{commissioning_sheet({file,
                                       timings,
                                       advice,
                                       found,
                                       left,
                                       revision,
                                       {1'783'000'000'000, -300},
                                       std::move(record_hash)})} {}

    template <class Block>
    [[nodiscard]] std::vector<Block> all() const {
        std::vector<Block> blocks;
        for (const auto& block : content.blocks) {
            if (const auto* wanted = std::get_if<Block>(&block)) {
                blocks.push_back(*wanted);
            }
        }
        return blocks;
    }
    /// The blocks below that heading, up to the next one.
    [[nodiscard]] std::vector<SheetBlock> below(const std::string& heading) const {
        std::vector<SheetBlock> blocks;
        bool inside = false;
        for (const auto& block : content.blocks) {
            if (const auto* head = std::get_if<SheetHeading>(&block)) {
                inside = english(head->text) == heading;
            } else if (inside) {
                blocks.push_back(block);
            }
        }
        return blocks;
    }
    template <class Block>
    [[nodiscard]] std::vector<Block> below(const std::string& heading) const {
        std::vector<Block> wanted;
        for (const auto& block : below(heading)) {
            if (const auto* match = std::get_if<Block>(&block)) {
                wanted.push_back(*match);
            }
        }
        return wanted;
    }
    /// The rows of the table whose first column has that title, as texts.
    [[nodiscard]] std::vector<std::vector<std::string>> rows(const std::string& first_column) const {
        std::vector<std::vector<std::string>> rows;
        for (const auto& table : all<SheetTable>()) {
            if (english(table.columns.front()) == first_column) {
                for (const auto& row : table.rows) {
                    auto& texts = rows.emplace_back();
                    for (const auto& cell : row) {
                        texts.push_back(english(cell.text));
                    }
                }
            }
        }
        return rows;
    }
    /// The first row of any table whose first cell reads so; a row without cells if there is none.
    [[nodiscard]] std::vector<SheetTable::Cell> row(const std::string& first_cell) const {
        for (const auto& table : all<SheetTable>()) {
            for (const auto& row : table.rows) {
                if (english(row.front().text) == first_cell) {
                    return row;
                }
            }
        }
        return {};
    }
    /// The value of a fact; "no such fact" if there is none.
    [[nodiscard]] std::string fact(const std::string& label) const {
        for (const auto& facts : all<SheetFacts>()) {
            for (const auto& fact : facts.facts) {
                if (english(fact.label) == label) {
                    return english(fact.value);
                }
            }
        }
        return "no such fact";
    }
    [[nodiscard]] std::vector<std::string> paragraphs(const std::string& heading) const {
        std::vector<std::string> texts;
        for (const auto& paragraph : below<SheetParagraph>(heading)) {
            texts.push_back(english(paragraph.text));
        }
        return texts;
    }
    /// Every text of the sheet, in order.
    [[nodiscard]] std::vector<std::string> texts() const;

    static std::string english(const Message& message) { return in_english(message, UnitSystem::si); }

    VisitFile file;
    VisitTimings timings;
    Advice advice;
    std::vector<Finding> found;
    std::vector<Finding> left;
    SheetContent content;
};

/// Collects the texts of a block.
struct TextsOf {
    std::vector<std::string>& out;

    void add(const Message& text) const { out.push_back(MadeSheet::english(text)); }
    void operator()(const SheetHeading& block) const { add(block.text); }
    void operator()(const SheetParagraph& block) const { add(block.text); }
    void operator()(const SheetFacts& block) const {
        for (const auto& fact : block.facts) {
            add(fact.label);
            add(fact.value);
        }
    }
    void operator()(const SheetTable& block) const {
        for (const auto& column : block.columns) {
            add(column);
        }
        for (const auto& row : block.rows) {
            for (const auto& cell : row) {
                add(cell.text);
            }
        }
    }
    void operator()(const SheetTimeline& block) const {
        add(block.title);
        for (const auto& strip : block.strips) {
            add(strip.label);
        }
    }
    void operator()(const SheetBanks& block) const {
        for (const auto& bank : block.banks) {
            add(bank.name);
            add(bank.caption);
        }
    }
    void operator()(const SheetFindings& block) const {
        for (const auto& finding : block.findings) {
            add(finding.where);
            add(finding.message);
            add(finding.remedy);
            out.push_back(finding.source);
        }
    }
    void operator()(const SheetPhotos& block) const {
        for (const auto& picture : block.pictures) {
            add(picture.caption);
        }
    }
    void operator()(const SheetChecks& block) const {
        for (const auto& line : block.lines) {
            add(line.word);
            add(line.text);
            out.push_back(line.note);
        }
    }
    void operator()(const SheetCautions& block) const {
        for (const auto& line : block.lines) {
            add(line.text);
        }
    }
    void operator()(const SheetSignatures& block) const {
        for (const auto& line : block.lines) {
            add(line.role);
            out.push_back(line.name);
            out.push_back(line.signed_at);
        }
    }
    void operator()(const SheetCode& block) const {
        for (const auto& line : block.lines) {
            add(line);
        }
    }
};

inline std::vector<std::string> MadeSheet::texts() const {
    std::vector<std::string> out{english(content.title), english(content.running_head)};
    for (const auto& block : content.blocks) {
        std::visit(TextsOf{out}, block);
    }
    return out;
}

}  // namespace wetfront::test
