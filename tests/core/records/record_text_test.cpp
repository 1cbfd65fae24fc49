// SPDX-License-Identifier: Apache-2.0
#include "records/record_text.h"

#include <gtest/gtest.h>

#include "made_visits.h"

namespace wetfront::test {
namespace {

std::string why(const Result<VisitFile>& result) {
    return result ? "accepted" : result.error().text();
}

TEST(RecordTextTest, a_visit_file_reads_back_as_what_was_written) {
    for (unsigned seed = 0; seed < 300; ++seed) {
        const auto file = VisitMaker{seed, seed % 3 == 0 ? 1.0 : 0.5}.file();
        const auto text = visit_file_text(file);
        const auto back = parse_visit_file(text);
        ASSERT_TRUE(back) << "seed " << seed << ": " << why(back) << "\n" << text;
        ASSERT_EQ(back.value(), file) << "seed " << seed << "\n" << text;
        EXPECT_EQ(visit_file_text(back.value()), text);
    }
}

TEST(RecordTextTest, the_lines_for_the_store_read_back_as_what_was_written) {
    auto file = full_visit();
    const auto farm = parse_farm(farm_text(file.farm));
    const auto house = parse_house(house_text(file.house));
    const auto visit = parse_visit(visit_text(file.visit));
    ASSERT_TRUE(farm) << farm.error().text();
    ASSERT_TRUE(house) << house.error().text();
    ASSERT_TRUE(visit) << visit.error().text();
    EXPECT_EQ(farm.value(), file.farm);
    EXPECT_EQ(house.value(), file.house);
    file.visit.marks.clear();
    EXPECT_EQ(visit.value(), file.visit);
    for (const auto& line : {farm_text(file.farm), house_text(file.house), visit_text(file.visit)}) {
        EXPECT_EQ(line.find('\n'), std::string::npos) << line;
    }
}

TEST(RecordTextTest, a_record_that_is_still_being_entered_reads_back_from_the_store) {
    House house;
    house.id = Id{"h"};
    house.farm = Id{"f"};
    house.banks.emplace_back().id = Id{"b"};
    const auto back = parse_house(house_text(house));
    ASSERT_TRUE(back) << back.error().text();
    EXPECT_EQ(back.value(), house);
}

TEST(RecordTextTest, a_typed_text_is_kept_as_it_was_typed) {
    auto file = full_visit();
    file.house.banks[0].length = VisitMaker::entered<Length>("62,50 ft");
    const auto back = parse_visit_file(visit_file_text(file));
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value().house.banks[0].length->text(), "62,50 ft");
}

TEST(RecordTextTest, what_was_not_entered_is_left_out) {
    VisitFile file = VisitMaker{1, 0.0}.file();
    file.visit.open_points.clear();
    file.visit.agreement = {};
    const auto text = visit_file_text(file);
    for (const auto* key : {"elevation", "fan_airflow", "open_points", "agreement", "replaces", "null"}) {
        EXPECT_EQ(text.find(key), std::string::npos) << key << " stands in\n" << text;
    }
}

TEST(RecordTextTest, broken_utf8_in_a_record_is_written_as_replacement_characters) {
    Farm farm;
    farm.id = Id{"f"};
    farm.name = "Far\xFF";
    const auto text = farm_text(farm);
    EXPECT_TRUE(is_utf8(text));
    EXPECT_NE(text.find("Far\xEF\xBF\xBD"), std::string::npos) << text;
}

}  // namespace
}  // namespace wetfront::test
