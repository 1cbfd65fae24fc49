// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;

constexpr const char* heading = "The hottest day, worked out hour by hour";

TEST(SheetDayTest, the_days_as_found_advised_and_left_stand_side_by_side_under_one_sentence) {
    const MadeSheet sheet{complete_visit(2)};
    const auto tables = sheet.below<SheetTable>(heading);
    ASSERT_THAT(tables, SizeIs(1)) << testing::PrintToString(sheet.paragraphs(heading));
    std::vector<std::string> columns;
    for (const auto& column : tables[0].columns) {
        columns.push_back(MadeSheet::english(column));
    }
    EXPECT_THAT(columns, ElementsAre("On that day", "found", "advised", "left"));
    EXPECT_GE(tables[0].rows.size(), 8U);
    EXPECT_THAT(sheet.paragraphs(heading), Contains(HasSubstr("The pumps lift")));
    EXPECT_THAT(sheet.paragraphs(heading), Contains(HasSubstr("Assumed: ")));
}

TEST(SheetDayTest, without_a_design_day_it_says_what_lacks) {
    auto file = complete_visit(2);
    file.farm.design_wet_bulb.reset();
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.below<SheetTable>(heading), SizeIs(0));
    EXPECT_THAT(sheet.paragraphs(heading), ElementsAre(HasSubstr("Not worked out, as it lacks: ")));
}

TEST(SheetDayTest, without_settings_found_there_is_nothing_to_compare) {
    auto file = complete_visit(2);
    file.visit.found.clear();
    EXPECT_THAT(MadeSheet{file}.paragraphs(heading), ElementsAre(HasSubstr("Not worked out")));
}

}  // namespace
}  // namespace wetfront::test
