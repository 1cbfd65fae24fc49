// SPDX-License-Identifier: Apache-2.0
#include "batch/sheet_choice.h"

#include <gtest/gtest.h>

#include "batch_records.h"

namespace wetfront::test {
namespace {

class SheetChoiceTest : public BatchRecords {
protected:
    [[nodiscard]] std::vector<std::string> chosen(const SheetChoice& choice) const {
        std::vector<std::string> ids;
        const auto visits = visits_chosen(store_, house_, choice);
        EXPECT_TRUE(visits) << visits.error().text();
        for (const auto& id : visits.value()) {
            ids.push_back(id.text);
        }
        return ids;
    }
    using Ids = std::vector<std::string>;
};

TEST_F(SheetChoiceTest, signed_visits_come_earliest_first_and_open_ones_not_at_all) {
    add("2025-06-01", "a");
    add("2026-06-01", "b");
    add("2026-06-02", "c", Signed::no);
    EXPECT_EQ(chosen({SheetVisits::every_signed}), (Ids{"a", "b"}));
    EXPECT_EQ(chosen({SheetVisits::last}), (Ids{"c"}));
}

TEST_F(SheetChoiceTest, both_days_of_a_span_belong_to_it) {
    add("2025-06-01", "a");
    add("2026-01-01", "b");
    add("2026-06-30", "c");
    EXPECT_EQ(chosen({SheetVisits::every_signed, "2026-01-01", "2026-06-30"}), (Ids{"b", "c"}));
    EXPECT_EQ(chosen({SheetVisits::every_signed, "2026-01-02", ""}), (Ids{"c"}));
    EXPECT_EQ(chosen({SheetVisits::last, "", "2026-06-29"}), (Ids{"b"}));
    EXPECT_TRUE(chosen({SheetVisits::last, "2027-01-01", ""}).empty());
}

TEST_F(SheetChoiceTest, a_visit_that_a_signed_correction_replaces_gets_no_sheet) {
    add("2026-06-01", "wrong");
    add("2026-06-01", "right", Signed::yes, "wrong");
    EXPECT_EQ(chosen({SheetVisits::every_signed}), (Ids{"right"}));
    EXPECT_EQ(chosen({SheetVisits::last}), (Ids{"right"}));
}

TEST_F(SheetChoiceTest, a_signed_sheet_stands_until_its_correction_is_signed) {
    add("2026-06-01", "stands");
    add("2026-06-01", "open", Signed::no, "stands");
    EXPECT_EQ(chosen({SheetVisits::every_signed}), (Ids{"stands"}));
    EXPECT_EQ(chosen({SheetVisits::last}), (Ids{"open"}));
}

TEST_F(SheetChoiceTest, houses_and_farms_that_are_named_come_once_and_in_the_order_of_the_list) {
    add("2026-06-01", "a");
    const auto other = add_house("House 10");
    const auto third = add_house("House 9");
    const std::vector<Id> named{other, house_};
    const auto two = houses_chosen(store_, named, {});
    ASSERT_TRUE(two);
    EXPECT_EQ(two.value().size(), 2U);
    EXPECT_EQ(two.value().front(), other);
    const std::vector<Id> farms{file_.farm.id};
    const auto all = houses_chosen(store_, named, farms);
    ASSERT_TRUE(all);
    EXPECT_EQ(all.value().size(), 3U);
    EXPECT_EQ(all.value().front(), third);
    EXPECT_EQ(houses_chosen(store_, {}, {}).value(), all.value());
    const std::vector<Id> unknown{Id{"unknown"}};
    EXPECT_FALSE(houses_chosen(store_, unknown, {}));
    EXPECT_FALSE(houses_chosen(store_, {}, unknown));
}

TEST_F(SheetChoiceTest, a_day_is_a_day_of_the_calendar) {
    EXPECT_EQ(parse_day("2028-02-29", "--from").value(), "2028-02-29");
    for (const auto* text : {"", "2026", "2026-02-29", "2026-7-1", "2026-07-01T10:00", "01.07.2026"}) {
        EXPECT_FALSE(parse_day(text, "--from")) << text;
    }
}

}  // namespace
}  // namespace wetfront::test
