// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

class SheetFindingsOverBanks : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(banks, SheetFindingsOverBanks, testing::Values(1, 4, 8));

// Found: base 30 s below every fill time, and a ceiling at the period.
TEST_P(SheetFindingsOverBanks, each_finding_stands_with_place_text_remedy_and_source_worst_first) {
    const MadeSheet sheet{complete_visit(GetParam())};
    const auto lists = sheet.below<SheetFindings>("Findings on what was found");
    ASSERT_THAT(lists, SizeIs(1));
    const auto& printed = lists[0].findings;
    ASSERT_EQ(printed.size(), sheet.found.size());
    EXPECT_EQ(std::ranges::count(sheet.found, "base-below-fill", &Finding::rule), GetParam());
    for (std::size_t i = 0; i < printed.size(); ++i) {
        EXPECT_EQ(printed[i].severity, sheet.found[i].severity);
        EXPECT_EQ(printed[i].message, sheet.found[i].message);
        EXPECT_EQ(printed[i].remedy, sheet.found[i].remedy);
        EXPECT_EQ(printed[i].source, sheet.found[i].source);
        if (i > 0) {
            EXPECT_LE(printed[i].severity, printed[i - 1].severity);
        }
    }
    const auto last = "Timer 1, Bank " + std::to_string(GetParam());
    EXPECT_THAT(printed, Contains(testing::Truly([&](const SheetFinding& finding) {
                    return MadeSheet::english(finding.where) == last;
                })));
    EXPECT_THAT(sheet.paragraphs("Findings that remain on what was left"),
                ElementsAre("None by the rules of this program."));
}

TEST(SheetCloseTest, likely_causes_are_printed_in_their_order) {
    VisitBuilder visit;
    std::vector<Finding> found(1);
    found[0].causes = {{"clogged outlets", "catch at three outlets"}, {"a scaled pad", "look at its face"}};
    const auto content = commissioning_sheet({visit.file(), {}, Advice{}, found, {}, 1, {}});
    const auto list = std::ranges::find_if(
        content.blocks, [](const auto& block) { return std::holds_alternative<SheetFindings>(block); });
    ASSERT_NE(list, content.blocks.end());
    EXPECT_THAT(std::get<SheetFindings>(*list).findings.at(0).causes,
                ElementsAre(Message{"clogged outlets"}, Message{"a scaled pad"}));
}

TEST(SheetCloseTest, findings_come_worst_first_however_they_are_handed_in) {
    VisitBuilder visit;
    std::vector<Finding> found(3);
    found[0].severity = Severity::note;
    found[1].severity = Severity::harm;
    found[2].severity = Severity::waste;
    const Advice advice;
    const auto content = commissioning_sheet({visit.file(), {}, advice, found, {}, 1, {}});
    for (const auto& block : content.blocks) {
        if (const auto* list = std::get_if<SheetFindings>(&block)) {
            EXPECT_EQ(list->findings.at(0).severity, Severity::harm);
            EXPECT_EQ(list->findings.at(1).severity, Severity::waste);
            EXPECT_EQ(list->findings.at(2).severity, Severity::note);
            EXPECT_EQ(MadeSheet::english(list->findings.at(0).where), "whole house");
            return;
        }
    }
    FAIL() << "no findings block";
}

TEST(SheetCloseTest, what_remains_on_the_settings_left_is_listed) {
    auto file = complete_visit(1);
    file.visit.left[0].base_on_time = typed<Duration>("30s");
    const MadeSheet sheet{file};
    const auto lists = sheet.below<SheetFindings>("Findings that remain on what was left");
    ASSERT_THAT(lists, SizeIs(1));
    ASSERT_THAT(lists[0].findings, SizeIs(1));
    EXPECT_EQ(lists[0].findings[0].severity, Severity::fault);
}

TEST(SheetCloseTest, a_finding_on_readings_is_told_once) {
    VisitBuilder visit;
    visit.run(1, {.fill = 45.0, .wet_through = 90.0, .pads = PadsAtStart::not_dry});
    visit.found().period = typed<Duration>("300s");
    visit.left().period = typed<Duration>("300s");
    const MadeSheet sheet{visit.file()};
    EXPECT_THAT(sheet.below<SheetFindings>("Findings on what was found").at(0).findings, SizeIs(1));
    EXPECT_THAT(sheet.below<SheetFindings>("Findings that remain on what was left"), IsEmpty());
}

TEST(SheetCloseTest, without_settings_it_does_not_claim_that_all_is_well) {
    auto file = complete_visit(1);
    file.visit.found.clear();
    file.visit.left.clear();
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.paragraphs("Findings on what was found"),
                ElementsAre("Settings found: not entered, so none of them was checked."));
    EXPECT_THAT(sheet.paragraphs("Findings that remain on what was left"),
                ElementsAre("Settings left: not entered, so none of them was checked."));
}

TEST(SheetCloseTest, every_tick_is_printed_with_its_note) {
    auto file = complete_visit(1);
    const auto lines_of = [](const MadeSheet& sheet, const char* heading) {
        return sheet.below<SheetChecks>(heading).at(0).lines;
    };
    for (const char* heading : {"Checked before the work", "Checked before leaving"}) {
        for (const auto& line : lines_of(MadeSheet{file}, heading)) {
            EXPECT_TRUE(line.done) << MadeSheet::english(line.text);
            EXPECT_EQ(MadeSheet::english(line.word), "done") << MadeSheet::english(line.text);
        }
    }
    for (auto& tick : file.visit.ticks) {
        if (tick.id == "leaving.alarm_armed") {
            tick = {tick.id, false, "siren unplugged"};
        }
    }
    std::erase_if(file.visit.ticks, [](const Tick& tick) { return tick.id == "leaving.flush_shut"; });
    const auto lines = lines_of(MadeSheet{file}, "Checked before leaving");
    ASSERT_EQ(lines.size(), checklist(Step::before_leaving).size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto id = checklist(Step::before_leaving)[i].id;
        const bool done = id != "leaving.alarm_armed" && id != "leaving.flush_shut";
        EXPECT_EQ(lines[i].done, done) << id;
        EXPECT_EQ(MadeSheet::english(lines[i].word), done ? "done" : "NOT done") << id;
        EXPECT_EQ(lines[i].note, id == "leaving.alarm_armed" ? "siren unplugged" : "") << id;
    }
}

TEST(SheetCloseTest, every_caution_is_printed_below_the_codes) {
    const MadeSheet sheet{complete_visit(1)};
    const auto blocks = sheet.below("Cautions");
    ASSERT_THAT(blocks, SizeIs(2));
    EXPECT_EQ(std::get<SheetParagraph>(blocks[0]).text, codes_come_first());
    const auto& lines = std::get<SheetCautions>(blocks[1]).lines;
    ASSERT_EQ(lines.size(), cautions().size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_EQ(lines[i].word, cautions()[i].word);
        EXPECT_EQ(lines[i].text, cautions()[i].text);
    }
}

TEST(SheetCloseTest, open_points_are_listed_or_said_to_be_none) {
    auto file = complete_visit(1);
    EXPECT_THAT(MadeSheet{file}.paragraphs("Open points"), ElementsAre("Strainer of pump 1 is worn."));
    file.visit.open_points.clear();
    EXPECT_THAT(MadeSheet{file}.paragraphs("Open points"), ElementsAre("None entered."));
}

TEST(SheetCloseTest, required_lines_that_nobody_ticked_are_open_points_signed_or_not) {
    auto file = complete_visit(1);
    file.visit.open_points.clear();
    std::erase_if(file.visit.ticks, [](const Tick& tick) {
        return tick.id == "leaving.alarm_armed" || tick.id == "safety.fan_guards" ||
               tick.id == "safety.back_up_power";  // the last one is not required
    });
    EXPECT_THAT(MadeSheet{file}.paragraphs("Open points"),
                ElementsAre("Not done: Fan guards in place", "Not done: Alarm armed"));
    file.visit.signatures = {{file.visit.persons[0], file.visit.started}};
    EXPECT_THAT(MadeSheet{file}.paragraphs("Open points"),
                ElementsAre("Not done: Fan guards in place", "Not done: Alarm armed"));
}

TEST(SheetCloseTest, everybody_has_a_line_to_sign_on_until_he_signs) {
    auto file = complete_visit(1);
    const auto lines_of = [](const VisitFile& visit) {
        return MadeSheet{visit}.below<SheetSignatures>("Signatures").at(0).lines;
    };
    auto lines = lines_of(file);
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_EQ(MadeSheet::english(lines[0].role), "T. Technician, service technician");
    EXPECT_TRUE(lines[0].name.empty());

    file.visit.signatures = {{file.visit.persons[0], file.visit.started}};
    lines = lines_of(file);
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_EQ(lines[0].name, "T. Technician");
    EXPECT_EQ(MadeSheet::english(lines[0].role), "service technician");
    EXPECT_EQ(lines[0].signed_at, "2026-07-01 05:00");
    EXPECT_TRUE(lines[1].name.empty());
}

TEST(SheetCloseTest, a_drawn_signature_stands_on_its_line_with_name_role_and_time_and_others_stay_blank) {
    auto file = complete_visit(1);
    ASSERT_GT(file.visit.persons.size(), 1U);
    const std::vector<Stroke> strokes{{{{0, 0}, {2500, 1000}}}, {{{40, 50}}}};
    file.visit.signatures = {{file.visit.persons[1], file.visit.started, strokes}};
    const MadeSheet sheet{file};
    const auto lines = sheet.below<SheetSignatures>("Signatures").at(0).lines;
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_EQ(lines[0].drawn, strokes);
    EXPECT_EQ(lines[0].name, file.visit.persons[1].name);
    EXPECT_EQ(MadeSheet::english(lines[0].role), file.visit.persons[1].role);
    EXPECT_EQ(lines[0].signed_at, "2026-07-01 05:00");
    EXPECT_THAT(lines[1].drawn, IsEmpty());
    EXPECT_TRUE(lines[1].name.empty());
    EXPECT_FALSE(sheet.content.draft);
}

TEST(SheetCloseTest, without_persons_firm_and_grower_have_a_line) {
    VisitBuilder visit;
    const auto lines = MadeSheet{visit.file()}.below<SheetSignatures>("Signatures").at(0).lines;
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_EQ(MadeSheet::english(lines[0].role), "For the service firm");
    EXPECT_EQ(MadeSheet::english(lines[1].role), "For the grower");
}

TEST(SheetCloseTest, the_code_names_visit_revision_and_hash_of_the_record) {
    auto file = complete_visit(1);
    const auto codes = MadeSheet{file, 3, std::string(64, 'a')}.all<SheetCode>();
    ASSERT_THAT(codes, SizeIs(1));
    EXPECT_EQ(codes[0].text,
              "Wetfront visit " + file.visit.id.text + " revision 3 sha256 " + std::string(64, 'a'));
    EXPECT_EQ(MadeSheet::english(codes[0].lines.at(1)), "SHA-256 of its record: " + std::string(64, 'a'));
}

TEST(SheetCloseTest, without_a_hash_there_is_no_code) {
    EXPECT_THAT(MadeSheet{complete_visit(1)}.all<SheetCode>(), SizeIs(0));
}

}  // namespace
}  // namespace wetfront::test
