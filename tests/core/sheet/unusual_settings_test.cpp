// SPDX-License-Identifier: Apache-2.0
// Whatever stands in a timer, the program answers: with the flag, and with numbers that are numbers.
#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>

#include "complete_visit.h"
#include "cycle/proof.h"
#include "records/record_text.h"
#include "rules/rules.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::AnyOf;
using testing::ContainsRegex;
using testing::Not;

struct Extreme {
    const char* name;
    void (*set)(TimerSettings& settings);
    bool flagged = true;
};
void PrintTo(const Extreme& extreme, std::ostream* out) {
    *out << extreme.name;
}

const std::vector<Extreme> extremes{
    {"period 0 s", [](TimerSettings& s) { s.period = typed<Duration>("0s"); }},
    {"period -300 s", [](TimerSettings& s) { s.period = typed<Duration>("-300s"); }},
    {"period 1e9 s", [](TimerSettings& s) { s.period = typed<Duration>("1e9s"); }},
    {"period 1e-9 s", [](TimerSettings& s) { s.period = typed<Duration>("1e-9s"); }},
    {"base -1e9 s", [](TimerSettings& s) { s.base_on_time = typed<Duration>("-1e9s"); }},
    {"base 1e9 s", [](TimerSettings& s) { s.base_on_time = typed<Duration>("1e9s"); }},
    {"ceiling -5 s", [](TimerSettings& s) { s.on_time_ceiling = typed<Duration>("-5s"); }},
    {"ceiling 1e12 s", [](TimerSettings& s) { s.on_time_ceiling = typed<Duration>("1e12s"); }},
    {"humidity 150 %", [](TimerSettings& s) { s.humidity_cut_off = typed<Fraction>("150%"); }},
    {"humidity -10 %", [](TimerSettings& s) { s.humidity_cut_off = typed<Fraction>("-10%"); }},
    {"start -100 degC", [](TimerSettings& s) { s.start_temperature = typed<Temperature>("-100degC"); }},
    {"start 1e6 degC", [](TimerSettings& s) { s.start_temperature = typed<Temperature>("1e6degC"); }},
    {"target -1000 degC", [](TimerSettings& s) { s.target = typed<Temperature>("-1000degC"); }},
    {"lowest -100 degC",
     [](TimerSettings& s) { s.lowest_house_temperature = typed<Temperature>("-100degC"); }},
    {"lowest 1e9 K", [](TimerSettings& s) { s.lowest_house_temperature = typed<Temperature>("1e9K"); }},
    {"review 0 s", [](TimerSettings& s) { s.review_interval = typed<Duration>("0s"); }},
    {"review -1 s", [](TimerSettings& s) { s.review_interval = typed<Duration>("-1s"); }},
    {"rinse 1e9 s", [](TimerSettings& s) { s.rinse_length = typed<Duration>("1e9s"); }},
    {"rinse -60 s", [](TimerSettings& s) { s.rinse_length = typed<Duration>("-60s"); }},
    {"entered fill -1 s", [](TimerSettings& s) { s.entered_fill = typed<Duration>("-1s"); }},
    {"entered wet-through 1e9 s", [](TimerSettings& s) { s.entered_wet_through = typed<Duration>("1e9s"); }},
    {"shown -1e9 s", [](TimerSettings& s) { s.shown_on_time = typed<Duration>("-1e9s"); }},
    {"row -601 s", [](TimerSettings& s) { s.trim_rows.front().change = typed<Duration>("-601s"); }},
    {"row 1e9 s", [](TimerSettings& s) { s.trim_rows.front().change = typed<Duration>("1e9s"); }},
    {"row at -50 K",
     [](TimerSettings& s) { s.trim_rows.front().above_target = typed<TemperatureDifference>("-50K"); }},
    {"all at once",
     [](TimerSettings& s) {
         s.period = typed<Duration>("0s");
         s.base_on_time = typed<Duration>("-1s");
         s.on_time_ceiling = typed<Duration>("1e9s");
         s.humidity_cut_off = typed<Fraction>("150%");
         s.start_temperature = typed<Temperature>("-100degC");
         s.trim_rows.front().change = typed<Duration>("-6000s");
     }},
    // These lie within what is usual, or have no range.
    {"row -600 s", [](TimerSettings& s) { s.trim_rows.front().change = typed<Duration>("-600s"); }, false},
    {"pad hours from = to", [](TimerSettings& s) { s.pad_hours_from = s.pad_hours_to; }, false},
    {"period 1 s", [](TimerSettings& s) { s.period = typed<Duration>("1s"); }, false},
    {"period 4 h", [](TimerSettings& s) { s.period = typed<Duration>("4h"); }, false},
    {"base 0 s", [](TimerSettings& s) { s.base_on_time = typed<Duration>("0s"); }, false},
};

class UnusualSettingsTest : public testing::TestWithParam<Extreme> {
protected:
    /// The values set in what was found and in what was left.
    static VisitFile visit_with(const Extreme& extreme) {
        auto file = complete_visit(2);
        auto& visit = file.visit;
        visit.found.resize(1);
        visit.found.front().timer = file.house.timers.front().id;
        fill_settings(visit.found.front());
        extreme.set(visit.found.front());
        visit.left = visit.found;
        return file;
    }
    static bool flags(const std::vector<Finding>& findings) {
        return std::ranges::find(findings, "setting-out-of-range", &Finding::rule) != findings.end();
    }
    static void expect_numbers(const std::vector<Finding>& findings) {
        for (const auto& finding : findings) {
            for (const auto& value : finding.values) {
                EXPECT_TRUE(std::isfinite(value.value.si)) << finding.rule << ", " << value.name;
            }
        }
    }
};

TEST_P(UnusualSettingsTest, are_kept_flagged_and_answered_with_finite_numbers) {
    const auto& extreme = GetParam();
    const auto file = visit_with(extreme);
    const auto timings = timings_of(file);
    const auto advice = advise(file);
    const auto found = check(file, timings, advice, WhichSettings::found);
    const auto left = check(file, timings, advice, WhichSettings::left);
    EXPECT_EQ(flags(found), extreme.flagged);
    EXPECT_EQ(flags(left), extreme.flagged);
    expect_numbers(found);
    expect_numbers(left);
    const MadeSheet sheet{file};
    for (const auto& text : sheet.texts()) {
        EXPECT_THAT(text, Not(ContainsRegex("(^|[^a-z])(nan|inf)([^a-z]|$)")));
    }
    if (const auto strip = cycle_strip(file, timings, file.visit.found.front(), {}, 1.2)) {
        for (const double value : {strip->period_s, strip->on_s, strip->ceiling_s.value_or(0.0),
                                   strip->dry_patch_s.value_or(0.0), strip->drip_returns_s.value_or(0.0)}) {
            EXPECT_TRUE(std::isfinite(value) && value >= 0.0) << value;
        }
        EXPECT_GT(strip->period_s, 0.0);
    }
    EXPECT_EQ(prove(file, timings, advice).timers.size(), 1U);
}

TEST_P(UnusualSettingsTest, stand_in_the_file_as_they_were_found) {
    const auto file = visit_with(GetParam());
    const auto back = parse_visit_file(visit_file_text(file));
    ASSERT_TRUE(back) << back.error().text();
    EXPECT_EQ(back.value().visit.found, file.visit.found);
}

INSTANTIATE_TEST_SUITE_P(Extremes, UnusualSettingsTest, testing::ValuesIn(extremes));

}  // namespace
}  // namespace wetfront::test
