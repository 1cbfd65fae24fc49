// SPDX-License-Identifier: Apache-2.0
#include "rules/checklists.h"

#include <gmock/gmock.h>

#include <array>
#include <set>

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

constexpr std::array all_steps{
    Step::safety, Step::house_and_banks, Step::time_the_water, Step::conditions,     Step::settings_found,
    Step::advice, Step::settings_left,   Step::proof,          Step::before_leaving, Step::sheet};

std::vector<std::string> ids_at(Step step) {
    std::vector<std::string> ids;
    for (const auto* caution : cautions_at(step)) {
        ids.emplace_back(caution->id);
    }
    return ids;
}

std::string text_of(const char* id) {
    for (const auto& caution : cautions()) {
        if (caution.id == id) {
            return in_english(caution.text, UnitSystem::us);
        }
    }
    return {};
}

TEST(ChecklistsTest, before_leaving_asks_for_everything_that_a_flock_depends_on) {
    std::vector<std::string> ids;
    for (const auto& line : checklist(Step::before_leaving)) {
        ids.emplace_back(line.id);
        EXPECT_TRUE(line.required) << line.id;
        EXPECT_FALSE(line.text.empty()) << line.id;
    }
    EXPECT_THAT(ids, ElementsAre("leaving.locks_off", "leaving.pumps_automatic", "leaving.fans_automatic",
                                 "leaving.breakers_on", "leaving.make_up_open", "leaving.flush_shut",
                                 "leaving.alarm_armed", "leaving.grower_told"));
}

TEST(ChecklistsTest, safety_covers_the_site_and_that_the_system_is_fit_to_be_timed) {
    std::vector<std::string> ids;
    for (const auto& line : checklist(Step::safety)) {
        ids.emplace_back(line.id);
    }
    EXPECT_THAT(
        ids, ElementsAre("safety.biosecurity", "safety.isolation", "safety.ground_fault", "safety.fan_guards",
                         "safety.ladder", "safety.chemicals", "safety.heat", "safety.agreed",
                         "safety.back_up_power", "fit.sump_full", "fit.strainer_clean", "fit.outlets_clean",
                         "fit.float_works", "fit.no_leak"));
}

TEST(ChecklistsTest, other_steps_have_no_lines) {
    for (const auto step : all_steps) {
        if (step != Step::safety && step != Step::before_leaving) {
            EXPECT_THAT(checklist(step), IsEmpty());
            EXPECT_THAT(open_lines(step, Visit{}), IsEmpty());
        }
    }
}

TEST(ChecklistsTest, ids_are_unique) {
    std::set<std::string_view> ids;
    std::size_t lines = 0;
    for (const auto step : all_steps) {
        for (const auto& line : checklist(step)) {
            ids.insert(line.id);
            ++lines;
        }
    }
    EXPECT_EQ(ids.size(), lines);
}

TEST(ChecklistsTest, a_required_line_is_open_until_it_is_ticked) {
    Visit visit;
    EXPECT_THAT(open_lines(Step::before_leaving, visit), SizeIs(8));
    visit.ticks = {{"leaving.alarm_armed", true, ""}, {"leaving.breakers_on", false, "fuse blown"}};
    const auto open = open_lines(Step::before_leaving, visit);
    EXPECT_THAT(open, SizeIs(7));
    for (const auto* line : open) {
        EXPECT_NE(line->id, "leaving.alarm_armed");
    }
}

TEST(ChecklistsTest, a_line_that_is_not_required_is_never_open) {
    for (const auto* line : open_lines(Step::safety, Visit{})) {
        EXPECT_NE(line->id, "safety.back_up_power");
    }
    EXPECT_THAT(open_lines(Step::safety, Visit{}), SizeIs(13));
}

TEST(CautionsTest, each_has_a_hazard_a_source_and_a_place) {
    std::set<std::string_view> ids;
    for (const auto& caution : cautions()) {
        ids.insert(caution.id);
        EXPECT_FALSE(caution.steps.empty()) << caution.id;
        EXPECT_FALSE(caution.source.empty()) << caution.id;
        const auto text = in_english(caution.text, UnitSystem::us);
        EXPECT_THAT(text, HasSubstr(": ")) << caution.id << ": hazard and result stand apart";
        EXPECT_EQ(text.find('%'), std::string::npos) << text;
    }
    EXPECT_EQ(ids.size(), cautions().size());
}

TEST(CautionsTest, the_usual_ones_stand_where_the_work_is) {
    EXPECT_THAT(ids_at(Step::safety), SizeIs(cautions().size()));
    const auto timing = ids_at(Step::time_the_water);
    for (const char* id : {"unexpected-start", "electricity-and-water", "fan-blades", "ladder",
                           "heat-of-the-worker", "slips", "birds-without-cooling"}) {
        EXPECT_THAT(timing, Contains(id));
    }
    EXPECT_EQ(ids_at(Step::proof), timing) << "a pump that starts by itself is watched where it was timed";
    EXPECT_THAT(ids_at(Step::conditions), Contains("bleach-and-acid"));
    EXPECT_THAT(ids_at(Step::before_leaving), Contains("birds-without-cooling"));
    EXPECT_THAT(ids_at(Step::advice), IsEmpty());
}

// DANGER, WARNING and CAUTION are for injury; a flock is property.
TEST(CautionsTest, the_words_of_injury_are_kept_for_people) {
    for (const auto& caution : cautions()) {
        const bool property = caution.id == "birds-without-cooling" || caution.id == "biosecurity";
        EXPECT_EQ(caution.word == SignalWord::notice, property) << caution.id;
    }
}

TEST(CautionsTest, it_says_which_rule_is_for_whom) {
    const auto text = text_of("unexpected-start");
    EXPECT_THAT(text, HasSubstr("29 CFR 1910.147 asks this for a service firm's people"));
    EXPECT_THAT(text, HasSubstr("it does not cover farm employment, where 29 CFR 1928.57(a)(6)"));
}

TEST(CautionsTest, published_numbers_stand_as_published) {
    EXPECT_THAT(text_of("fan-blades"), HasSubstr("lower than 7 ft"));
    EXPECT_THAT(text_of("fan-blades"), HasSubstr("at most 0.5 in"));
    EXPECT_THAT(text_of("ladder"), HasSubstr("rails 3 ft above the landing"));
    EXPECT_THAT(text_of("heat-of-the-worker"), HasSubstr("every 20 min"));
    EXPECT_THAT(text_of("heat-of-the-worker"), HasSubstr("heat index of 103 °F, very high above 115 °F"));
    EXPECT_THAT(text_of("bacteria-in-sump"), HasSubstr("between 68 °F and 122 °F"));
    EXPECT_THAT(text_of("backflow"), HasSubstr("twice the inlet's diameter and at least 1 in"));
}

TEST(CautionsTest, nothing_is_called_free_of_risk) {
    for (const auto& caution : cautions()) {
        EXPECT_THAT(in_english(caution.text, UnitSystem::si), Not(HasSubstr("no risk"))) << caution.id;
    }
}

TEST(CautionsTest, codes_and_licensed_trades_come_first) {
    const auto text = in_english(codes_come_first(), UnitSystem::us);
    EXPECT_THAT(text, HasSubstr("Local codes"));
    EXPECT_THAT(text, HasSubstr("licensed trades"));
}

}  // namespace
}  // namespace wetfront::test
