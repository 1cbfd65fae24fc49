// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using testing::SizeIs;

struct Summary {
    explicit Summary(VisitFile visit) : made{std::move(visit)} {
        content = grower_summary({made.file, made.timings, made.advice, made.found, made.left, 1, {}});
        for (const auto& block : content.blocks) {
            std::visit(TextsOf{texts}, block);
        }
    }
    [[nodiscard]] const SheetTable* changes() const {
        for (const auto& block : content.blocks) {
            if (const auto* table = std::get_if<SheetTable>(&block)) {
                return table;
            }
        }
        return nullptr;
    }

    MadeSheet made;
    SheetContent content;
    std::vector<std::string> texts;
};

VisitFile with_periods(const char* found, const char* left) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0, .wet_through = 140.0, .dry_out = 2400.0});
    visit.found().period = typed<Duration>(found);
    visit.left().period = typed<Duration>(left);
    visit.found().base_on_time = typed<Duration>("90s");
    visit.left().base_on_time = typed<Duration>("90s");
    return visit.file();
}

TEST(GrowerSummaryTest, what_was_changed_stands_with_before_and_now_and_nothing_else_does) {
    const Summary summary{with_periods("10min", "5min")};
    const auto* table = summary.changes();
    ASSERT_NE(table, nullptr);
    ASSERT_THAT(table->rows, SizeIs(1));
    EXPECT_THAT(MadeSheet::english(table->rows[0][0].text), HasSubstr("Period"));
    EXPECT_EQ(MadeSheet::english(table->rows[0][1].text), "10 min");
    EXPECT_EQ(MadeSheet::english(table->rows[0][2].text), "5 min");
}

TEST(GrowerSummaryTest, a_change_of_any_row_of_the_trim_table_is_told) {
    auto file = with_periods("5min", "5min");
    const TrimRow first{typed<TemperatureDifference>("1K"), typed<Duration>("10s")};
    file.visit.found[0].trim_rows = {first, {typed<TemperatureDifference>("2K"), typed<Duration>("20s")}};
    file.visit.left[0].trim_rows = {first, {typed<TemperatureDifference>("2K"), typed<Duration>("30s")}};
    const Summary summary{file};
    const auto* table = summary.changes();
    ASSERT_NE(table, nullptr);
    ASSERT_THAT(table->rows, SizeIs(1));
    EXPECT_THAT(MadeSheet::english(table->rows[0][0].text), HasSubstr("Trim row 2"));
    EXPECT_EQ(MadeSheet::english(table->rows[0][2].text), "30 s");
}

TEST(GrowerSummaryTest, nothing_changed_is_said) {
    const Summary summary{with_periods("5min", "5min")};
    EXPECT_EQ(summary.changes(), nullptr);
    EXPECT_THAT(summary.texts, Contains("Nothing was changed in the timers."));
}

TEST(GrowerSummaryTest, what_does_not_fit_on_the_page_is_counted) {
    auto file = with_periods("5min", "5min");
    file.visit.open_points = {"one", "two", "three", "four", "five", "six"};
    const Summary summary{file};
    EXPECT_THAT(summary.texts, Contains(HasSubstr("more, on the commissioning sheet.")));
    EXPECT_THAT(summary.texts, Not(Contains("six")));
}

TEST(GrowerSummaryTest, it_says_what_to_do_when_pads_stop_in_the_heat) {
    EXPECT_THAT(Summary{with_periods("5min", "5min")}.texts, Contains(HasSubstr("put the pump on by hand")));
}

TEST(GrowerSummaryTest, nobody_signs_it) {
    auto file = with_periods("5min", "5min");
    file.visit.signatures = {
        {{"T. Technician", "technician"}, file.visit.started, {{{{0, 0}, {2500, 1000}}}}}};
    const Summary summary{file};
    EXPECT_TRUE(std::ranges::none_of(summary.content.blocks, [](const SheetBlock& block) {
        return std::holds_alternative<SheetSignatures>(block);
    }));
}

TEST(GrowerSummaryTest, it_is_a_draft_until_the_visit_is_signed) {
    auto file = with_periods("5min", "5min");
    EXPECT_TRUE(Summary{file}.content.draft);
    file.visit.signatures = {{{"T. Technician", "technician"}, file.visit.started}};
    EXPECT_FALSE(Summary{file}.content.draft);
}

}  // namespace
}  // namespace wetfront::test
