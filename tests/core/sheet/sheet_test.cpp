// SPDX-License-Identifier: Apache-2.0
#include "sheet/sheet.h"

#include <gmock/gmock.h>

#include <numeric>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ContainsRegex;
using testing::Each;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class SheetOverBanks : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(banks, SheetOverBanks, testing::Values(1, 4, 8));

TEST_P(SheetOverBanks, every_block_of_a_commissioning_sheet_is_there_in_its_order) {
    const MadeSheet sheet{complete_visit(GetParam())};
    std::vector<std::string> headings;
    for (const auto& heading : sheet.all<SheetHeading>()) {
        headings.push_back(MadeSheet::english(heading.text));
    }
    EXPECT_THAT(headings,
                testing::ElementsAre(
                    "House, pumps and banks", "Conditions", "Method", "Readings", "Times of each bank",
                    "Bank against bank", "Settings",
                    "As found, advised and as left: Timer 1 (trimmed by temperature)", "Why: Timer 1",
                    "Assumed", "The hottest day, worked out hour by hour", "Proof run",
                    "Findings on what was found", "Findings that remain on what was left", "Cautions",
                    "Checked before the work", "Checked before leaving", "Open points", "Signatures"));
    EXPECT_EQ(sheet.all<SheetTimeline>().size(), 1U);
    EXPECT_EQ(sheet.all<SheetBanks>().size(), 1U);
}

TEST_P(SheetOverBanks, no_placeholder_is_left_and_nothing_is_missing) {
    const MadeSheet sheet{complete_visit(GetParam())};
    EXPECT_THAT(sheet.texts(), Each(Not(ContainsRegex("%[1-9]"))));
    EXPECT_THAT(sheet.texts(), Each(Not(HasSubstr("not measured"))));
}

TEST_P(SheetOverBanks, tables_are_square_and_fill_the_page) {
    const MadeSheet sheet{complete_visit(GetParam())};
    for (const auto& table : sheet.all<SheetTable>()) {
        const auto title = MadeSheet::english(table.columns.front());
        EXPECT_EQ(table.widths.size(), table.columns.size()) << title;
        EXPECT_NEAR(std::accumulate(table.widths.begin(), table.widths.end(), 0.0), 1.0, 1e-9) << title;
        EXPECT_THAT(table.rows, Not(IsEmpty())) << title;
        for (const auto& row : table.rows) {
            EXPECT_EQ(row.size(), table.columns.size()) << title;
        }
    }
}

TEST(SheetTest, id_revision_and_place_stand_on_every_page) {
    const MadeSheet sheet{complete_visit(1), 3};
    EXPECT_EQ(sheet.content.id, "visit-1");
    EXPECT_EQ(sheet.content.revision, 3);
    EXPECT_EQ(MadeSheet::english(sheet.content.running_head),
              "Service firm: Invented Service. Farm: Made-up Farm. House: House 7");
    EXPECT_EQ(sheet.fact("Revision"), "3");
    EXPECT_EQ(sheet.fact("Sheet"), "visit-1");
}

TEST(SheetTest, it_is_a_draft_until_somebody_signs) {
    auto file = complete_visit(1);
    const MadeSheet draft{file};
    EXPECT_TRUE(draft.content.draft);
    EXPECT_EQ(draft.fact("State"), "draft, not signed");
    file.visit.signatures = {{file.visit.persons[0], file.visit.started}};
    const MadeSheet done{file};
    EXPECT_FALSE(done.content.draft);
    EXPECT_EQ(done.fact("State"), "signed");
}

TEST(SheetTest, an_empty_visit_makes_a_sheet_that_says_what_is_missing) {
    const MadeSheet sheet{VisitFile{}};
    EXPECT_TRUE(sheet.content.draft);
    EXPECT_EQ(sheet.fact("Customer"), "not entered");
    EXPECT_EQ(sheet.fact("Outside temperature"), "not measured");
    EXPECT_THAT(sheet.paragraphs("Method"), Contains("Nothing was timed."));
    EXPECT_THAT(sheet.paragraphs("Readings"), Contains("not measured"));
    EXPECT_THAT(sheet.paragraphs("Findings on what was found"),
                Contains("Settings found: not entered, so none of them was checked."));
    EXPECT_THAT(sheet.texts(), Each(Not(ContainsRegex("%[1-9]"))));
}

TEST(SheetTest, names_that_look_like_placeholders_are_printed_as_they_stand) {
    auto file = complete_visit(1);
    file.house.name = "100 %1 house";
    file.house.banks[0].name = "Bank %2";
    const MadeSheet sheet{file};
    EXPECT_EQ(sheet.fact("House"), "100 %1 house");
    EXPECT_THAT(sheet.rows("Bank").at(0).at(0), "Bank %2");
}

TEST(SheetTest, banks_pumps_and_timers_without_a_name_are_numbered) {
    auto file = complete_visit(2);
    file.house.banks[1].name.clear();
    file.house.timers[0].name.clear();
    file.house.pumps[0].name.clear();
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.texts(), Contains("bank 2"));
    EXPECT_THAT(sheet.texts(), Contains("timer 1"));
    EXPECT_THAT(sheet.texts(), Contains("pump 1"));
}

}  // namespace
}  // namespace wetfront::test
