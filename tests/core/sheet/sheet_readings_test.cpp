// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

class SheetReadingsOverBanks : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(banks, SheetReadingsOverBanks, testing::Values(1, 4, 8));

std::vector<std::vector<std::string>> rows_below(const MadeSheet& sheet, const std::string& heading) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& table : sheet.below<SheetTable>(heading)) {
        for (const auto& row : table.rows) {
            auto& texts = rows.emplace_back();
            for (const auto& cell : row) {
                texts.push_back(MadeSheet::english(cell.text));
            }
        }
    }
    return rows;
}

TEST_P(SheetReadingsOverBanks, every_reading_of_every_bank_is_printed) {
    const MadeSheet sheet{complete_visit(GetParam())};
    const auto rows = rows_below(sheet, "Readings");
    // Three runs of four times each.
    ASSERT_THAT(rows, SizeIs(static_cast<std::size_t>(GetParam()) * 12U));
    for (int bank = 1; bank <= GetParam(); ++bank) {
        const auto name = "Bank " + std::to_string(bank);
        for (const double more : {0.0, 1.5, 3.0}) {
            const auto printed = [](double value) { return show_text(seconds(value), UnitSystem::si); };
            for (const auto& [label, value] : {std::pair{"Fill", 39.0 + bank + more},
                                               {"Wet-through", 138.0 + 2.0 * bank + more},
                                               {"Run-off", 95.0 + bank + more},
                                               {"Dry-out", 2400.0 + 10.0 * bank + more}}) {
                const auto* fans =
                    std::string{label} == "Dry-out" || std::string{label} == "Run-off" ? "on" : "off";
                EXPECT_THAT(rows, Contains(ElementsAre(name, label, printed(value), "technician here", fans,
                                                       "used")));
            }
        }
    }
}

TEST_P(SheetReadingsOverBanks, every_mean_stands_with_its_uncertainty) {
    const MadeSheet sheet{complete_visit(GetParam())};
    const auto rows = rows_below(sheet, "Times of each bank");
    // Fill, wet-through, their difference, run-off and dry-out.
    ASSERT_THAT(rows, SizeIs(static_cast<std::size_t>(GetParam()) * 5U));
    for (int bank = 1; bank <= GetParam(); ++bank) {
        const auto& fill = *sheet.timings.of(Id{"bank-" + std::to_string(bank)})->fill;
        const auto& row = rows.at(static_cast<std::size_t>(bank - 1) * 5U);
        EXPECT_EQ(row.at(0), "Bank " + std::to_string(bank));
        EXPECT_EQ(row.at(1), "Fill");
        EXPECT_EQ(row.at(2), "3");
        EXPECT_EQ(row.at(3), show_text(seconds(40.5 + bank), UnitSystem::si));
        EXPECT_EQ(row.at(4), "± " + show_text(fill.expanded, UnitSystem::si));
        EXPECT_EQ(row.at(7), "these readings");
    }
}

// Readings 40, 41.5, 43 s: s = 1.5 s, u_A = 1.5 / sqrt(3) = 0.8660 s, u_B = 0.10 s, u = 0.8718 s;
// degrees of freedom 2 (0.8718/0.8660)^4 = 2.05, cut to 2, where Student's t is 4.303 (95 %, two-sided):
// U = 3.75 s, printed to 0.1 s.
TEST(SheetReadingsTest, the_uncertainty_of_the_fill_time_is_that_of_a_hand_calculation) {
    const MadeSheet sheet{complete_visit(1)};
    EXPECT_THAT(rows_below(sheet, "Times of each bank").at(0),
                ElementsAre("Bank 1", "Fill", "3", "41.5 s", "± 3.8 s", "4.30", "2", "these readings"));
}

// A dry-out time is uncertain by 5 % for what is seen, whatever its spread: hardly any limit to the degrees
// of freedom.
TEST(SheetReadingsTest, more_degrees_of_freedom_than_matter_are_not_counted_out) {
    const auto row = rows_below(MadeSheet{complete_visit(1)}, "Times of each bank").at(4);
    EXPECT_EQ(row.at(1), "Dry-out");
    EXPECT_EQ(row.at(5), "1.96");
    EXPECT_EQ(row.at(6), "over 1000");
}

TEST(SheetReadingsTest, one_reading_says_where_its_spread_comes_from) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0});
    const auto rows = rows_below(MadeSheet{visit.file()}, "Times of each bank");
    EXPECT_THAT(rows.at(0).at(2), "1");
    EXPECT_EQ(rows.at(0).at(6), "not limited");
    EXPECT_EQ(rows.at(0).at(7), "assumed");
}

TEST(SheetReadingsTest, what_was_not_timed_says_not_measured) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0});
    const auto rows = rows_below(MadeSheet{visit.file()}, "Times of each bank");
    ASSERT_THAT(rows, SizeIs(4));
    EXPECT_THAT(rows.at(1), ElementsAre("Bank 1", "Wet-through", "0", "not measured", "", "", "", ""));
    EXPECT_EQ(rows.at(2).at(3), "not measured");
    EXPECT_EQ(rows.at(3).at(3), "not measured");
}

TEST(SheetReadingsTest, a_wet_start_is_printed_and_wet_through_stays_unmeasured) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0, .wet_through = 90.0, .pads = PadsAtStart::not_dry, .stands_for = 200.0});
    visit.run(1, {.fill = 45.0, .wet_through = 75.0, .pads = PadsAtStart::dripping});
    const MadeSheet sheet{visit.file()};
    const auto readings = rows_below(sheet, "Readings");
    EXPECT_THAT(readings, Contains(ElementsAre("Bank 1", "Wet start: pump off", "200 s", testing::_,
                                               testing::_, "used")));
    EXPECT_THAT(readings, Contains(ElementsAre("Bank 1", "Wet start: drip returns", "75 s", testing::_,
                                               testing::_, "used")));
    EXPECT_THAT(readings,
                Contains(ElementsAre("Bank 1", "Wet-through", "90 s", testing::_, testing::_,
                                     "not used: the pad was not dry at the start, so it is too short")));
    EXPECT_THAT(rows_below(sheet, "Times of each bank"),
                Contains(ElementsAre("Bank 1", "Wet-through", "0", "not measured", "", "", "", "")));
}

TEST(SheetReadingsTest, a_reading_set_aside_keeps_its_value_and_the_reason) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0}).run(1, {.fill = 71.0});
    for (const auto& mark : visit.file().visit.marks) {
        if (mark.kind == MarkKind::water_at_far_end) {
            visit.file().visit.set_aside = {{mark.id, "float stuck"}};
        }
    }
    EXPECT_THAT(rows_below(MadeSheet{visit.file()}, "Readings"),
                Contains(ElementsAre("Bank 1", "Fill", "71 s", testing::_, testing::_,
                                     "not used: set aside, \"float stuck\"")));
}

TEST(SheetReadingsTest, an_upper_bound_is_shown_and_not_used) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0, .water_seen = Seen::already_there, .started_by = StartedBy::me_then_walk});
    EXPECT_THAT(rows_below(MadeSheet{visit.file()}, "Readings"),
                Contains(ElementsAre("Bank 1", "Fill", "45 s", "technician, walked", "off",
                                     "not used: already there when seen, an upper bound")));
}

// Grubbs' test, n = 5, 5 % two-sided: critical 1.715; 45, 45, 46, 46, 80 gives (80 - 52.4)/15.45 = 1.786.
TEST(SheetReadingsTest, a_reading_that_stands_out_is_used_and_marked) {
    VisitBuilder visit;
    for (const double fill : {45.0, 45.0, 46.0, 46.0, 80.0}) {
        visit.run(1, {.fill = fill});
    }
    const MadeSheet sheet{visit.file()};
    int marked = 0;
    const auto tables = sheet.below<SheetTable>("Readings");
    for (const auto& row : tables.at(0).rows) {
        if (row.back().marked) {
            ++marked;
            EXPECT_EQ(MadeSheet::english(row.at(2).text), "80 s");
            EXPECT_EQ(MadeSheet::english(row.back().text), "used, but stands out from the others");
        }
    }
    EXPECT_EQ(marked, 1);
}

TEST(SheetReadingsTest, the_method_is_told_in_one_line_for_each_time_read) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0, .dry_out = 1500.0});
    const auto lines = MadeSheet{visit.file()}.paragraphs("Method");
    ASSERT_THAT(lines, SizeIs(3));
    EXPECT_THAT(lines[0], HasSubstr("Fill: from pump start"));
    EXPECT_THAT(lines[1], HasSubstr("Dry-out: from pump stop"));
    EXPECT_THAT(lines[2], HasSubstr("hand 0.1 s"));
}

TEST(SheetReadingsTest, one_bank_has_nothing_to_be_compared_with) {
    const MadeSheet sheet{complete_visit(1)};
    EXPECT_THAT(sheet.below<SheetTable>("Bank against bank"), IsEmpty());
    EXPECT_THAT(sheet.paragraphs("Bank against bank"),
                ElementsAre("No two banks were timed in the same way: nothing to compare."));
}

TEST(SheetReadingsTest, each_other_bank_is_compared_with_the_shortest_for_each_time) {
    for (const int banks : {4, 8}) {
        const MadeSheet sheet{complete_visit(banks)};
        const auto rows = rows_below(sheet, "Bank against bank");
        ASSERT_THAT(rows, SizeIs(4U * static_cast<std::size_t>(banks - 1)));
        // Fill grows by 1 s a bank, with ± 3.8 s each.
        EXPECT_THAT(rows.at(0),
                    ElementsAre("Fill", "Bank 2", "Bank 1", "1 s", testing::_, "same within uncertainty"));
    }
}

TEST(SheetReadingsTest, a_bank_that_differs_is_marked) {
    VisitBuilder visit{2};
    for (const double more : {0.0, 0.5, 1.0}) {
        visit.run(1, {.fill = 45.0 + more}).run(2, {.fill = 95.0 + more});
    }
    const MadeSheet sheet{visit.file()};
    const auto row = sheet.below<SheetTable>("Bank against bank").at(0).rows.at(0);
    EXPECT_EQ(MadeSheet::english(row.at(1).text), "Bank 2");
    EXPECT_EQ(MadeSheet::english(row.at(3).text), "50 s");
    EXPECT_EQ(MadeSheet::english(row.at(5).text), "differs");
    EXPECT_TRUE(row.at(5).marked);
}

}  // namespace
}  // namespace wetfront::test
