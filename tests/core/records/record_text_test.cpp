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

TEST(RecordTextTest, only_marks_of_a_proof_run_say_so_and_a_file_without_the_key_has_none) {
    auto file = full_visit();
    for (auto& mark : file.visit.marks) {
        mark.proof = false;
    }
    const auto without = visit_file_text(file);
    EXPECT_EQ(without.find("\"proof\": true"), std::string::npos);
    ASSERT_TRUE(parse_visit_file(without)) << why(parse_visit_file(without));
    EXPECT_FALSE(parse_visit_file(without).value().visit.marks[0].proof);

    file.visit.marks[0].proof = true;
    const auto with = visit_file_text(file);
    EXPECT_NE(with.find("\"proof\": true"), std::string::npos) << with;
    const auto back = parse_visit_file(with);
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value(), file);
}

TEST(RecordTextTest, notes_of_a_proof_run_read_back_and_an_impossible_count_of_cycles_is_refused) {
    auto file = full_visit();
    file.visit.proof[0].cycles_since_change = 3.0;
    file.visit.proof[1].even_drip = true;
    file.visit.proof[1].dry_patch = false;
    const auto back = parse_visit_file(visit_file_text(file));
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value().visit.proof, file.visit.proof);
    for (const double cycles : {0.0, 10'001.0}) {
        file.visit.proof[0].cycles_since_change = cycles;
        const auto refused = parse_visit_file(visit_file_text(file));
        ASSERT_FALSE(refused) << cycles;
        EXPECT_EQ(refused.error().item, "visit.proof[0].cycles_since_change");
    }
}

TEST(RecordTextTest, the_reason_for_settings_that_differ_reads_back_and_may_be_missing) {
    auto file = full_visit();
    file.visit.left[0].deviation_reason = "The grower saves water.";
    auto text = visit_file_text(file);
    const auto back = parse_visit_file(text);
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value().visit.left[0].deviation_reason, "The grower saves water.");

    for (auto& settings : file.visit.found) {
        settings.deviation_reason.clear();
    }
    file.visit.left[0].deviation_reason.clear();
    text = visit_file_text(file);
    EXPECT_EQ(text.find("deviation_reason"), std::string::npos) << text;
    const auto without = parse_visit_file(text);
    ASSERT_TRUE(without) << why(without);
    EXPECT_EQ(without.value(), file);
}

TEST(RecordTextTest, a_drawn_signature_reads_back_and_a_file_without_one_has_none) {
    auto file = full_visit();
    file.visit.signatures[0].drawn = {{{{212, 480}, {230, 455}, {2500, 0}}}, {{{7, 1000}}}};
    const auto text = visit_file_text(file);
    EXPECT_NE(text.find("\"212,480 230,455 2500,0\""), std::string::npos) << text;
    const auto back = parse_visit_file(text);
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value().visit.signatures, file.visit.signatures);

    file.visit.signatures[0].drawn.clear();
    const auto without = visit_file_text(file);
    EXPECT_EQ(without.find("drawn"), std::string::npos) << without;
    ASSERT_TRUE(parse_visit_file(without)) << why(parse_visit_file(without));
    EXPECT_EQ(parse_visit_file(without).value(), file);
}

TEST(RecordTextTest, the_largest_signature_takes_less_than_twelve_kilobytes_of_a_record) {
    auto visit = full_visit().visit;
    visit.signatures[0].drawn.clear();
    const auto without = visit_text(visit).size();
    visit.signatures[0].drawn.assign(most_strokes, {{{1000, 1000}}});
    visit.signatures[0].drawn[0].points.assign(most_drawn_points - most_strokes, {2000, 1000});
    visit.signatures[0].drawn[0].points.push_back({1000, 1000});
    ASSERT_TRUE(parse_visit(visit_text(visit))) << parse_visit(visit_text(visit)).error().text();
    EXPECT_LT(visit_text(visit).size() - without, 12'000U);
}

TEST(RecordTextTest, limits_changed_for_a_farm_stand_in_the_file_and_others_do_not) {
    auto file = full_visit();
    file.farm.limits = {};
    EXPECT_EQ(visit_file_text(file).find("limits"), std::string::npos);
    const auto without = parse_visit_file(visit_file_text(file));
    ASSERT_TRUE(without) << why(without);
    EXPECT_EQ(without.value().farm.limits, Limits{});

    file.farm.limits.least_rest = VisitMaker::entered<Duration>("1.5 min");
    file.farm.limits.night = TimeOfDay{21 * 60};
    const auto text = visit_file_text(file);
    EXPECT_NE(text.find("\"least_rest\": \"1.5 min\""), std::string::npos) << text;
    EXPECT_EQ(text.find("dead_band"), std::string::npos) << text;
    const auto back = parse_visit_file(text);
    ASSERT_TRUE(back) << why(back);
    EXPECT_EQ(back.value().farm.limits, file.farm.limits);
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
