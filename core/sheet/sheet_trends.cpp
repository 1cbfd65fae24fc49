// SPDX-License-Identifier: Apache-2.0
#include "sheet/blocks.h"

// What became of the readings over the visits.
namespace wetfront {

void add_trends(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    SheetTable table{{WF_TEXT("Bank"), WF_TEXT("Over the visits"), WF_TEXT("At first"), WF_TEXT("Now")},
                     {},
                     {0.2, 0.52, 0.14, 0.14}};
    std::vector<Message> more;
    for (const auto& followed : inputs.trends) {
        const auto& values = followed.series.values;
        const auto* bank = house.bank(followed.series.bank);
        if (bank == nullptr || values.size() < 2) {
            continue;
        }
        const auto name = label_of(house, *bank);
        auto cells = row({name, words_of(followed), shown(values.front().value), shown(values.back().value)});
        cells[1].marked = gets_worse(followed);
        table.rows.push_back(std::move(cells));
        for (const auto& words : {shift_words(followed), limit_words(followed)}) {
            if (!words.empty()) {
                more.push_back({WF_TEXT("%1, %2: %3"), {name, label_of(followed.series.what), words}});
            }
        }
    }
    if (table.rows.empty()) {
        return;
    }
    blocks.emplace_back(SheetHeading{WF_TEXT("Against earlier visits")});
    blocks.emplace_back(std::move(table));
    for (auto& words : more) {
        blocks.emplace_back(SheetParagraph{std::move(words), false});
    }
    blocks.emplace_back(SheetParagraph{WF_TEXT("Trend: Mann-Kendall test at 5 %, slope by Theil-Sen with "
                                               "limits at 95 %, from the last maintenance of that "
                                               "bank on. Fewer than 5 visits are too few to tell."),
                                       false});
}

}  // namespace wetfront
