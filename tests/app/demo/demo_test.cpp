// SPDX-License-Identifier: Apache-2.0
#include "demo/demo.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "cycle/advice.h"
#include "cycle/proof.h"
#include "records/record_text.h"
#include "rules/checklists.h"
#include "rules/rules.h"
#include "support/fake_clock.h"
#include "trend/history_words.h"

namespace wetfront::test {
namespace {

std::vector<Finding> findings(const VisitFile& file, WhichSettings which) {
    return check(file, timings_of(file), advise(file), which);
}

std::string told(const std::vector<Finding>& all) {
    std::string text;
    for (const auto& finding : all) {
        text += finding.rule + " (" + std::string{name_of(finding.severity)} +
                "): " + in_english(finding.message, UnitSystem::us) + "\n";
    }
    return text;
}

bool has(const std::vector<Finding>& all, std::string_view rule) {
    return std::any_of(all.begin(), all.end(), [&](const Finding& finding) { return finding.rule == rule; });
}

std::vector<VisitFile> visits_to(std::string_view house) {
    std::vector<VisitFile> wanted;
    for (auto& file : demo_visits()) {
        if (file.house.name == house) {
            wanted.push_back(std::move(file));
        }
    }
    return wanted;
}

TEST(DemoTest, there_are_three_houses_with_visits_in_three_summers) {
    std::map<std::string, std::set<std::string>> summers;
    std::set<Id> ids;
    for (const auto& file : demo_visits()) {
        summers[file.house.name].insert(local_date(file.visit.started).substr(0, 4));
        EXPECT_TRUE(ids.insert(file.visit.id).second) << file.visit.id.text;
    }
    ASSERT_EQ(summers.size(), 3U);
    for (const auto& [house, years] : summers) {
        for (const auto* year : {"2024", "2025", "2026"}) {
            EXPECT_TRUE(years.contains(year)) << house << " in " << year;
        }
    }
}

TEST(DemoTest, every_visit_is_a_visit_file_that_the_program_reads_back) {
    for (const auto& file : demo_visits()) {
        const auto back = parse_visit_file(visit_file_text(file));
        ASSERT_TRUE(back) << file.visit.id.text << ": " << back.error().text();
        EXPECT_EQ(back.value(), file);
    }
}

TEST(DemoTest, it_is_the_same_every_time) {
    EXPECT_EQ(demo_visits(), demo_visits());
}

TEST(DemoTest, every_bank_was_timed_and_no_reading_was_lost) {
    for (const auto& file : demo_visits()) {
        const auto timings = timings_of(file);
        for (const auto& bank : timings.banks) {
            EXPECT_TRUE(bank.fill) << file.visit.id.text;
            EXPECT_TRUE((bank.wet_through && bank.dry_out && bank.run_off) ||
                        (bank.wet_off && bank.wet_return))
                << file.visit.id.text;
        }
        for (const auto& reading : timings.readings) {
            EXPECT_FALSE(reading.not_used)
                << file.visit.id.text << ": " << name_of(reading.kind) << " " << name_of(*reading.not_used);
        }
    }
}

TEST(DemoTest, the_well_set_house_has_nothing_worse_than_a_note_in_any_summer) {
    const auto visits = visits_to("House Alder");
    ASSERT_EQ(visits.size(), 3U);
    for (const auto& file : visits) {
        for (const auto& finding : findings(file, WhichSettings::found)) {
            EXPECT_EQ(finding.severity, Severity::note) << file.visit.id.text << "\n" << told({finding});
        }
        EXPECT_TRUE(advise(file).timers.front().cycled)
            << in_english(advise(file).timers.front().verdict, UnitSystem::us);
    }
}

TEST(DemoTest, what_was_left_in_the_well_set_house_was_watched_and_passed) {
    for (const auto& file : visits_to("House Alder")) {
        const auto proof = prove(file, timings_of(file), advise(file));
        ASSERT_EQ(proof.timers.size(), 1U);
        EXPECT_EQ(proof.timers[0].verdict, ProofVerdict::pass)
            << file.visit.id.text << ": " << in_english(proof.timers[0].text, UnitSystem::us);
        EXPECT_EQ(proof.timers[0].runs, 3) << "two watched whole, and the start of the next";
        for (const auto& line : proof.timers[0].lines) {
            EXPECT_EQ(line.verdict, ProofVerdict::pass) << in_english(label_of(line.what), UnitSystem::us);
        }
    }
}

TEST(DemoTest, the_pump_of_house_birch_never_rests_on_what_was_found_and_rests_on_what_was_left) {
    for (const auto& file : visits_to("House Birch")) {
        const auto found = findings(file, WhichSettings::found);
        EXPECT_TRUE(has(found, "pump-never-rests")) << file.visit.id.text << "\n" << told(found);
        const auto left = findings(file, WhichSettings::left);
        EXPECT_FALSE(has(left, "pump-never-rests")) << file.visit.id.text << "\n" << told(left);
    }
    const auto last = findings(visits_to("House Birch").back(), WhichSettings::found);
    const auto restless = std::ranges::find(last, "pump-never-rests", &Finding::rule);
    ASSERT_NE(restless, last.end()) << told(last);
    EXPECT_EQ(restless->severity, Severity::waste) << told(last);
    EXPECT_TRUE(has(last, "bleed-too-small")) << told(last);
}

TEST(DemoTest, the_banks_of_house_cedar_differ_more_each_visit_until_the_old_ceiling_is_too_short) {
    auto visits = visits_to("House Cedar");
    const auto& cleaned = visits.back().house.maintenance.front().on;
    std::erase_if(visits, [&](const VisitFile& file) { return file.visit.started < cleaned; });
    ASSERT_EQ(visits.size(), 5U);
    double last_gap = 0.0;
    for (const auto& file : visits) {
        const auto timings = timings_of(file);
        const auto difference = compare(*timings.banks[1].wet_through, *timings.banks[0].wet_through);
        EXPECT_GT(in_seconds(difference.difference), last_gap) << file.visit.id.text;
        last_gap = in_seconds(difference.difference);
    }
    const auto timings = timings_of(visits.back());
    EXPECT_TRUE(compare(*timings.banks[1].wet_through, *timings.banks[0].wet_through).differs);
    const auto found = findings(visits.back(), WhichSettings::found);
    const auto ceiling = std::find_if(found.begin(), found.end(), [](const Finding& finding) {
        return finding.rule == "ceiling-below-wet-through";
    });
    ASSERT_NE(ceiling, found.end()) << told(found);
    EXPECT_EQ(ceiling->bank, visits.back().house.banks[1].id) << told(found);
    // The rinse that was left the year before still wets the far end once a day.
    EXPECT_EQ(ceiling->severity, Severity::note) << told(found);
    const auto clogged = std::ranges::find(found, "outlets-clogged", &Finding::rule);
    ASSERT_NE(clogged, found.end()) << told(found);
    EXPECT_EQ(clogged->bank, visits.back().house.banks[1].id) << told(found);
}

TEST(DemoTest, house_cedar_shows_a_trend_since_its_outlets_were_cleaned_and_the_others_too_few_visits) {
    const auto cedar = visits_to("House Cedar");
    const auto trends = trends_of(cedar.back().house, cedar);
    ASSERT_TRUE(trends) << trends.error().text();
    const auto through = [&](const Id& bank) {
        return *std::ranges::find_if(trends.value(), [&](const FollowedTrend& each) {
            return each.series.bank == bank && each.series.what == Followed::wet_through;
        });
    };
    const auto east = through(cedar.back().house.banks[1].id);
    EXPECT_EQ(east.trend.verdict, TrendVerdict::rising);
    EXPECT_EQ(east.series.values.size(), 7U);
    EXPECT_EQ(east.series.since_last_event().size(), 5U);
    EXPECT_FALSE(limit_words(east).empty());
    EXPECT_EQ(through(cedar.back().house.banks[0].id).series.since_last_event().size(), 7U);
    const auto alder = visits_to("House Alder");
    const auto alder_trends = trends_of(alder.back().house, alder);
    ASSERT_TRUE(alder_trends) << alder_trends.error().text();
    for (const auto& each : alder_trends.value()) {
        EXPECT_EQ(each.trend.verdict, TrendVerdict::too_few);
    }
}

TEST(DemoTest, what_is_left_is_what_is_advised_and_is_safe) {
    for (const auto& file : demo_visits()) {
        const auto advice = advise(file);
        const auto& timer = advice.timers.front();
        for (const auto& advised : timer.cycled ? timer.cycle : timer.continuous) {
            const auto left = held(file.visit.left.front(), advised.setting);
            // Where base and ceiling are equal there is no trim row that could hold the dead band.
            const bool no_row =
                advised.setting == Setting::trim_dead_band && !timer.advised(Setting::trim_step)->value;
            if (advised.value && !no_row) {
                ASSERT_TRUE(left) << file.visit.id.text << " " << key_of(advised.setting);
                EXPECT_NEAR(left->si, advised.value->si, 1e-9)
                    << file.visit.id.text << " " << key_of(advised.setting);
            }
        }
        for (const auto& finding : findings(file, WhichSettings::left)) {
            // What is said of header, pads and water stands whatever is set.
            EXPECT_TRUE(finding.severity == Severity::note || finding.timer.empty())
                << file.visit.id.text << "\n"
                << told({finding});
        }
    }
}

TEST(DemoTest, every_checklist_line_is_ticked_and_all_but_the_last_visit_to_house_cedar_are_signed) {
    for (const auto& file : demo_visits()) {
        EXPECT_TRUE(open_lines(Step::safety, file.visit).empty()) << file.visit.id.text;
        EXPECT_TRUE(open_lines(Step::before_leaving, file.visit).empty()) << file.visit.id.text;
        EXPECT_EQ(file.visit.is_signed(), file.visit.id != visits_to("House Cedar").back().visit.id)
            << file.visit.id.text;
    }
}

TEST(DemoTest, entries_are_in_us_units) {
    const auto text = visit_file_text(example_visit());
    for (const auto* unit : {" degC", " mm\"", " L/min", " kPa", "m3/s"}) {
        EXPECT_EQ(text.find(unit), std::string::npos) << unit;
    }
}

TEST(DemoTest, the_example_is_a_signed_visit_to_the_well_set_house) {
    const auto example = example_visit();
    EXPECT_EQ(example.house.name, "House Alder");
    EXPECT_TRUE(example.visit.is_signed());
    EXPECT_EQ(local_date(example.visit.started).substr(0, 4), "2026");
}

TEST(DemoTest, a_store_takes_all_visits_and_gives_them_back) {
    const auto folder = std::filesystem::path{testing::TempDir()} / "wetfront-demo-test";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    const FakeClock clock;
    {
        auto store = Store::open(folder / "records.db", clock);
        ASSERT_TRUE(store) << store.error().text();
        const auto filled = fill_store(store.value());
        ASSERT_TRUE(filled) << filled.error().text();
        for (const auto& file : demo_visits()) {
            const auto back = store.value().visit_file(file.visit.id);
            ASSERT_TRUE(back) << back.error().text();
            EXPECT_EQ(back.value().visit.marks.size(), file.visit.marks.size());
            EXPECT_EQ(back.value(), file) << file.visit.id.text;
        }
        const auto houses = store.value().houses();
        ASSERT_TRUE(houses);
        EXPECT_EQ(houses.value().size(), 3U);
    }
    std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace wetfront::test
