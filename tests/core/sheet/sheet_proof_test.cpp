// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"
#include "support/watched_cycles.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::Each;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

constexpr const char* heading = "Proof run";

/// One bank that fills in 40 s, left with 90 s in 300 s on a fixed-interval timer; one cycle was watched, in
/// which the pump ran for `on_time`.
VisitFile watched(double on_time, double first_run = 3.0) {
    VisitBuilder visit{1, 1, TimerKind::fixed_interval};
    visit.both_weathers();
    for (const double more : {-1.0, 0.0, 1.0}) {
        visit.run(1, {.fill = 40.0 + more, .wet_through = 140.0 + more});
    }
    visit.run(1, {.dry_out = 2400.0});
    visit.left().period = typed<Duration>("300s");
    visit.left().base_on_time = typed<Duration>("90s");
    auto& file = visit.file();
    ProofMarks{file}
        .cycle(visit.bank(1), {.at = 0.0, .water = 41.0, .drips = 55.0, .stops = on_time})
        .cycle(visit.bank(1), {.at = 300.0});
    counted_from_change(file, visit.timer(1), first_run);
    looked_at(file, visit.bank(1)).even_drip = true;
    looked_at(file, visit.bank(1)).dry_patch = false;
    return file;
}

TEST(SheetProofTest, a_proof_that_was_not_done_says_so_and_nothing_else) {
    const MadeSheet sheet{complete_visit(1)};
    EXPECT_THAT(sheet.paragraphs(heading), ElementsAre("Timer 1: Not done: no run of the pump was watched."));
    EXPECT_THAT(sheet.below<SheetTable>(heading), IsEmpty());
}

TEST(SheetProofTest, a_house_without_timers_has_no_proof) {
    VisitBuilder visit;
    visit.file().house.timers.clear();
    const MadeSheet sheet{visit.file()};
    EXPECT_THAT(sheet.paragraphs(heading), ElementsAre("Not done: the house has no timer."));
}

TEST(SheetProofTest, set_seen_expected_and_verdict_stand_side_by_side) {
    const MadeSheet sheet{watched(90.0)};
    EXPECT_THAT(
        sheet.rows("Watched"),
        ElementsAre(
            ElementsAre("Pump 1: Period", "5 min", "5 min ± 1 s, runs: 1", "5 min, within 3 s", "pass"),
            ElementsAre("Pump 1: On-time", "90 s", "90 s ± 1 s, runs: 1", "90 s, within 2 s", "pass"),
            ElementsAre("Bank 1: Water at the far end", "", HasSubstr("41 s ± "),
                        HasSubstr(", at most 10 s later"), "pass"),
            ElementsAre("Bank 1: Drip is back", "", HasSubstr("55 s ± "), HasSubstr(", at most 20 s later"),
                        "pass"),
            ElementsAre("Bank 1: Drip before the stop", "", HasSubstr("55 s ± "), "before 90 s", "pass"),
            ElementsAre("Bank 1: Even drip at the far end", "", "yes", "yes", "pass"),
            ElementsAre("Bank 1: Dry patch on the face", "", "no", "no", "pass")));
    const auto texts = sheet.paragraphs(heading);
    ASSERT_THAT(texts, SizeIs(3));
    EXPECT_THAT(texts[0], HasSubstr("Else too close to call."));
    EXPECT_THAT(texts[1], HasSubstr("all assumed: period and on-time 2 s, 1 % of what is set"));
    EXPECT_EQ(texts[2], "Timer 1: Passed: the pads run as set. Runs that count: 2.");
    EXPECT_THAT(sheet.texts(), Each(Not(testing::ContainsRegex("%[1-9]"))));
}

TEST(SheetProofTest, a_failed_line_is_marked_and_its_likely_causes_are_numbered_with_the_next_check) {
    const MadeSheet sheet{watched(130.0)};
    const auto row = sheet.row("Pump 1: On-time");
    ASSERT_THAT(row, SizeIs(5));
    EXPECT_TRUE(row.back().marked);
    EXPECT_EQ(MadeSheet::english(row.back().text), "fail");
    EXPECT_FALSE(sheet.row("Pump 1: Period").back().marked);
    const auto texts = sheet.paragraphs(heading);
    EXPECT_THAT(texts, Contains("Timer 1: Failed: Pump 1, On-time."));
    EXPECT_THAT(texts, Contains(testing::AllOf(HasSubstr("Likely cause 1: The controller counts the on-time"),
                                               HasSubstr("Next check: Look up where its count starts"))));
    EXPECT_THAT(texts, Contains(HasSubstr("Likely cause 2: ")));
}

TEST(SheetProofTest, what_a_failed_proof_did_not_see_is_listed) {
    auto file = watched(130.0);
    looked_at(file, file.house.banks[0]).even_drip.reset();
    const MadeSheet sheet{file};
    EXPECT_THAT(sheet.paragraphs(heading), Contains("Not seen: Bank 1, Even drip at the far end"));
    EXPECT_EQ(MadeSheet::english(sheet.row("Bank 1: Even drip at the far end").at(2).text), "not watched");
}

TEST(SheetProofTest, too_early_is_no_verdict_and_names_no_cause) {
    const MadeSheet sheet{watched(130.0, 1.0)};
    EXPECT_EQ(MadeSheet::english(sheet.row("Pump 1: On-time").back().text), "too early");
    EXPECT_THAT(sheet.paragraphs(heading), Contains(HasSubstr("Not judged yet: too early")));
    EXPECT_THAT(sheet.paragraphs(heading), Each(Not(HasSubstr("Likely cause"))));
}

TEST(SheetProofTest, a_trimmed_timer_is_expected_between_base_and_ceiling) {
    auto file = watched(120.0);
    file.house.timers[0].kind = TimerKind::trimmed;
    file.visit.left[0].on_time_ceiling = typed<Duration>("150s");
    const MadeSheet sheet{file};
    EXPECT_EQ(MadeSheet::english(sheet.row("Pump 1: On-time").at(3).text), "90 s to 150 s, within 2 s");
}

TEST(SheetProofTest, settings_that_were_not_left_are_not_entered) {
    auto file = watched(90.0);
    file.visit.left.clear();
    const MadeSheet sheet{file};
    const auto row = sheet.row("Pump 1: Period");
    ASSERT_THAT(row, SizeIs(5));
    EXPECT_EQ(MadeSheet::english(row[1].text), "not entered");
    EXPECT_EQ(MadeSheet::english(row[3].text), "not entered");
    EXPECT_EQ(MadeSheet::english(row[4].text), "nothing to compare with");
}

// The proof's marks are no readings: they add no row to them.
TEST(SheetProofTest, watched_cycles_are_not_listed_as_readings) {
    auto file = watched(90.0);
    const auto with = MadeSheet{file}.rows("Bank").size();
    std::erase_if(file.visit.marks, [](const Mark& mark) { return mark.proof; });
    EXPECT_EQ(MadeSheet{file}.rows("Bank").size(), with);
}

}  // namespace
}  // namespace wetfront::test
