// SPDX-License-Identifier: Apache-2.0
#include "demo/demo.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>

#include "cycle/advice.h"
#include "cycle/drip_return.h"
#include "demo/demo_houses.h"
#include "demo/demo_signatures.h"
#include "demo/stopwatch_day.h"
#include "rules/checklists.h"

namespace wetfront {
namespace {

/// The outside of one visit day.
struct Day {
    const char* started;
    const char* dry_bulb;
    const char* humidity;
    const char* behind_pad;
    const char* house_temperature;
    const char* house_humidity;
};

Visit opened(const House& house, const Day& day) {
    Visit visit;
    visit.started = parse_iso8601(day.started, "demo").value();
    visit.id = Id{house.id.text + "-" + local_date(visit.started)};
    visit.house = house.id;
    visit.persons = {{"Fenn Larkspur (invented)", "technician"}};
    visit.instruments = {{"Thermo-hygrometer A", local_date(visit.started).substr(0, 4) + "-03-14"},
                         {"Manometer B", local_date(visit.started).substr(0, 4) + "-03-14"}};
    visit.agreement.longest_pump_off = typed<Duration>("45 min");
    visit.agreement.stop_temperature = typed<Temperature>("92 degF");
    visit.agreement.agreed_with = "Orla Pennywhistle (invented)";
    for (const auto step : {Step::safety, Step::before_leaving}) {
        for (const auto& line : checklist(step)) {
            visit.ticks.push_back({std::string{line.id}, true, ""});
        }
    }
    auto& conditions = visit.conditions;
    conditions.outside_dry_bulb = typed<Temperature>(day.dry_bulb);
    conditions.outside_humidity = typed<Fraction>(day.humidity);
    conditions.behind_pad = typed<Temperature>(day.behind_pad);
    conditions.house_temperature = typed<Temperature>(day.house_temperature);
    conditions.house_humidity = typed<Fraction>(day.house_humidity);
    conditions.static_pressure = typed<PressureDifference>("0.09 inH2O");
    conditions.bird_age_days = 36.0;
    conditions.hardness = typed<Concentration>("140 ppm");
    conditions.alkalinity = typed<Concentration>("120 ppm");
    conditions.ph = 7.6;
    conditions.conductivity = typed<Conductivity>("520 uS/cm");
    conditions.calcium_hardness = typed<Concentration>("95 ppm");
    conditions.sump_temperature = typed<Temperature>("74 degF");
    return visit;
}

void measure_flow(Visit& visit, const Id& pump, const char* flow) {
    auto& measured = visit.conditions.flows.emplace_back();
    measured.pump = pump;
    measured.flow = typed<VolumeFlow>(flow);
}

void test_sump(Visit& visit, double ph, const char* conductivity) {
    visit.conditions.sump_ph = ph;
    visit.conditions.sump_conductivity = typed<Conductivity>(conductivity);
}

/// Head of water at the pump end of a bank's header.
void measure_head(Visit& visit, const Id& bank, const char* head) {
    auto& at = visit.conditions.at_banks.emplace_back();
    at.bank = bank;
    at.inlet_head = typed<Length>(head);
}

/// Along one pad, from the pump end.
void measure_face(Visit& visit, const Id& bank, std::initializer_list<const char*> speeds) {
    auto& at = visit.conditions.at_banks.emplace_back();
    at.bank = bank;
    for (const auto* speed : speeds) {
        at.face_points.push_back({typed<Velocity>(speed)});
    }
}

void keep_marks(Visit& visit, const StopwatchDay& day) {
    visit.marks = day.marks();
}

/// Settings as a person leaves them: the advice, in the words of a US timer, with what the grower wants
/// besides.
TimerSettings left_as_advised(const VisitFile& file) {
    const auto advice = advise(file);
    const auto& advised = advice.timers.front();
    auto left = when_pads_may_run(advised.timer);
    const auto numbers = as_settings(advised);
    left.period = numbers.period;
    left.base_on_time = numbers.base_on_time;
    left.on_time_ceiling = numbers.on_time_ceiling;
    left.review_interval = numbers.review_interval;
    left.rinse_length = numbers.rinse_length;
    left.continuous_intended = numbers.continuous_intended;
    for (const auto& row : numbers.trim_rows) {
        // Half a kelvin above target.
        left.trim_rows.push_back({typed<TemperatureDifference>("0.9 degF"), row.change});
    }
    return left;
}

TimerSettings cycle_settings(const Id& timer, const char* base, const char* ceiling, const char* trim) {
    auto settings = when_pads_may_run(timer);
    settings.period = typed<Duration>("5 min");
    settings.base_on_time = typed<Duration>(base);
    settings.on_time_ceiling = typed<Duration>(ceiling);
    settings.trim_rows = {{typed<TemperatureDifference>("1 degF"), typed<Duration>(trim)}};
    settings.review_interval = typed<Duration>("10 min");
    settings.rinse_length = typed<Duration>("5 min");
    return settings;
}

void sign(Visit& visit, WallTime last_press) {
    constexpr std::int64_t quarter_hour_ms = 900'000;
    const WallTime at{last_press.unix_ms + quarter_hour_ms, last_press.utc_offset_minutes};
    visit.signatures = {{{"Fenn Larkspur (invented)", "technician"}, at, technicians_scribble()},
                        {{"Orla Pennywhistle (invented)", "grower"},
                         {at.unix_ms + 60'000, at.utc_offset_minutes},
                         growers_scribble()}};
}

/// What was left is watched: it runs as set, and the drip is back when the model expects it.
void prove_what_was_left(VisitFile& file, StopwatchDay& stopwatch, const std::vector<BankTruth>& banks) {
    auto& visit = file.visit;
    auto& left = visit.left.front();
    const auto& timer = file.house.timers.front();
    const auto period = left.period->value();
    const auto on_time = left.base_on_time->value();
    std::vector<double> drips;
    for (const auto& bank : advise(file).timers.front().banks) {
        drips.push_back(in_seconds(expected_drip_return(*bank.question, period, on_time)->mean));
    }
    stopwatch.watch_cycles(timer.pumps.front(), banks, drips, in_seconds(period), in_seconds(on_time));
    keep_marks(visit, stopwatch);
    const auto back = std::ranges::find(visit.marks, MarkKind::back_on_automatic, &Mark::kind);
    left.changed = Moment{back->at, back->wall};
    const Moment answered{visit.marks.back().at, visit.marks.back().wall};
    visit.proof.push_back({timer.id, {}, {}, {}, 3.0, answered});
    for (const auto& bank : banks) {
        visit.proof.push_back({{}, bank.bank, true, false, {}, answered});
    }
}

VisitFile alder_visit(const Farm& farm, const Day& day, unsigned seed, const TimerSettings* found) {
    VisitFile file{farm, alder(farm), {}};
    auto& visit = file.visit = opened(file.house, day);
    const auto& pump = file.house.pumps[0].id;
    StopwatchDay stopwatch{visit.id.text, visit.started, seed};
    const std::vector<BankTruth> banks{{file.house.banks[0].id, 38.0, 112.0, 95.0, 905.0},
                                       {file.house.banks[1].id, 41.0, 116.0, 100.0, 890.0}};
    stopwatch.time_from_dry(pump, banks, 3, StartedBy::me_here);
    keep_marks(visit, stopwatch);
    measure_flow(visit, pump, "91 gpm");
    test_sump(visit, 7.4, "1100 uS/cm");
    measure_face(visit, banks[0].bank,
                 {"300 ft/min", "325 ft/min", "370 ft/min", "355 ft/min", "340 ft/min"});
    measure_face(visit, banks[1].bank,
                 {"310 ft/min", "335 ft/min", "360 ft/min", "350 ft/min", "320 ft/min"});
    const auto& timer = file.house.timers[0].id;
    visit.found = {found != nullptr ? *found : cycle_settings(timer, "110 s", "150 s", "10 s")};
    visit.found.front().changed.reset();
    visit.left = {left_as_advised(file)};
    prove_what_was_left(file, stopwatch, banks);
    sign(visit, stopwatch.ended());
    return file;
}

VisitFile birch_visit(const Farm& farm, const Day& day, unsigned seed) {
    VisitFile file{farm, birch(farm), {}};
    auto& visit = file.visit = opened(file.house, day);
    const auto& pump = file.house.pumps[0].id;
    StopwatchDay stopwatch{visit.id.text, visit.started, seed};
    const std::vector<BankTruth> banks{{file.house.banks[0].id, 52.0, 138.0, 110.0, 985.0},
                                       {file.house.banks[1].id, 55.0, 143.0, 115.0, 970.0}};
    stopwatch.time_from_dry(pump, banks, 3, StartedBy::helper_signal);
    keep_marks(visit, stopwatch);
    measure_flow(visit, pump, "121 gpm");
    test_sump(visit, 7.1, "2080 uS/cm");
    // Every summer the grower turns it back: the ceiling is the period, and trimming climbs to it.
    visit.found = {cycle_settings(file.house.timers[0].id, "180 s", "300 s", "30 s")};
    visit.found.front().humidity_cut_off = typed<Fraction>("85%");
    visit.left = {left_as_advised(file)};
    visit.open_points = {"The grower means to watch the house for a week with the pump resting."};
    sign(visit, stopwatch.ended());
    return file;
}

/// A visit with birds in: the pads cannot be dried, so the pump is only stopped for a few minutes.
VisitFile birch_visit_with_birds(const Farm& farm, const Day& day, unsigned seed) {
    VisitFile file{farm, birch(farm), {}};
    auto& visit = file.visit = opened(file.house, day);
    visit.agreement.longest_pump_off = typed<Duration>("6 min");
    visit.conditions.bird_age_days = 38.0;
    const auto& pump = file.house.pumps[0].id;
    StopwatchDay stopwatch{visit.id.text, visit.started, seed};
    const std::vector<BankTruth> banks{{file.house.banks[0].id, 52.0, 0.0, 0.0, 0.0},
                                       {file.house.banks[1].id, 55.0, 0.0, 0.0, 0.0}};
    stopwatch.time_from_wet(pump, banks, 270.0, 81.0, 3);
    keep_marks(visit, stopwatch);
    measure_flow(visit, pump, "120 gpm");
    visit.found = {cycle_settings(file.house.timers[0].id, "180 s", "300 s", "30 s")};
    visit.found.front().humidity_cut_off = typed<Fraction>("85%");
    visit.left = {left_as_advised(file)};
    sign(visit, stopwatch.ended());
    return file;
}

/// What the two banks of House Cedar take; the east one clogs from summer to summer.
struct CedarTruth {
    double east_fill;
    double east_wet_through;
    const char* east_flow;
    const char* east_head;
};

/// The days on which House Cedar was visited. The outlets of its east bank were cleaned between the second
/// and the third (demo_houses.cpp).
struct CedarDay {
    Day day;
    unsigned seed;
    CedarTruth truth;
};
const std::array cedar_days{
    CedarDay{{"2022-07-12T12:15:00-05:00", "93 degF", "43%", "80.3 degF", "83.9 degF", "74%"},
             223,
             {58.0, 163.0, "55 gpm", "1.8 ft"}},
    CedarDay{{"2023-07-13T12:05:00-05:00", "94 degF", "41%", "80.6 degF", "84.2 degF", "73%"},
             233,
             {66.0, 188.0, "49 gpm", "1.9 ft"}},
    CedarDay{{"2024-07-11T12:20:00-05:00", "91 degF", "46%", "79.9 degF", "83.2 degF", "76%"},
             243,
             {46.0, 127.0, "67 gpm", "1.3 ft"}},
    CedarDay{{"2025-05-20T12:40:00-05:00", "90 degF", "44%", "79.0 degF", "82.7 degF", "75%"},
             258,
             {50.0, 140.0, "63 gpm", "1.5 ft"}},
    CedarDay{{"2025-07-17T12:00:00-05:00", "96 degF", "37%", "80.8 degF", "84.8 degF", "72%"},
             253,
             {53.0, 150.0, "60 gpm", "1.7 ft"}},
    CedarDay{{"2026-05-19T12:35:00-05:00", "91 degF", "43%", "79.4 degF", "83.0 degF", "75%"},
             268,
             {62.0, 176.0, "53 gpm", "1.8 ft"}},
    CedarDay{{"2026-07-09T12:30:00-05:00", "97 degF", "36%", "81.1 degF", "85.0 degF", "71%"},
             263,
             {68.0, 194.0, "48 gpm", "1.9 ft"}}};

VisitFile cedar_visit(const Farm& farm, const Day& day, unsigned seed, const CedarTruth& truth,
                      const TimerSettings* found) {
    VisitFile file{farm, cedar(farm), {}};
    auto& visit = file.visit = opened(file.house, day);
    const auto& pumps = file.house.pumps;
    StopwatchDay stopwatch{visit.id.text, visit.started, seed};
    stopwatch.time_from_dry(pumps[0].id, {{file.house.banks[0].id, 44.0, 122.0, 105.0, 930.0}}, 3,
                            StartedBy::me_here);
    stopwatch.time_from_dry(pumps[1].id,
                            {{file.house.banks[1].id, truth.east_fill, truth.east_wet_through, 120.0, 900.0}},
                            3, StartedBy::me_here);
    keep_marks(visit, stopwatch);
    measure_flow(visit, pumps[0].id, "68 gpm");
    measure_flow(visit, pumps[1].id, truth.east_flow);
    measure_head(visit, file.house.banks[0].id, "1.3 ft");
    measure_head(visit, file.house.banks[1].id, truth.east_head);
    test_sump(visit, 8.0, "1350 uS/cm");
    const auto& timer = file.house.timers[0].id;
    visit.found = {found != nullptr ? *found : cycle_settings(timer, "120 s", "160 s", "10 s")};
    visit.left = {left_as_advised(file)};
    visit.open_points = {
        "Bank 2 fills and wets more slowly than bank 1: clean its outlets and flush its header."};
    sign(visit, stopwatch.ended());
    return file;
}

}  // namespace

std::vector<VisitFile> demo_visits() {
    const auto farm = demo_farm();
    std::vector<VisitFile> visits;
    const auto left_before = [&] { return &visits.back().visit.left.front(); };

    visits.push_back(
        alder_visit(farm, {"2024-07-09T12:10:00-05:00", "93 degF", "42%", "80.2 degF", "83.5 degF", "74%"},
                    241, nullptr));
    for (const auto& [day, seed] : std::initializer_list<std::pair<Day, unsigned>>{
             {{"2025-07-15T12:25:00-05:00", "95 degF", "39%", "80.7 degF", "84.1 degF", "73%"}, 251},
             {{"2026-07-07T12:05:00-05:00", "94 degF", "41%", "80.6 degF", "83.9 degF", "74%"}, 261}}) {
        // The vector grows while the settings of its last visit are read.
        const auto found = *left_before();
        visits.push_back(alder_visit(farm, day, seed, &found));
    }

    visits.push_back(birch_visit(
        farm, {"2024-07-10T12:00:00-05:00", "92 degF", "45%", "80.4 degF", "83.8 degF", "75%"}, 242));
    visits.push_back(birch_visit_with_birds(
        farm, {"2025-08-05T14:40:00-05:00", "96 degF", "38%", "81.2 degF", "85.2 degF", "72%"}, 252));
    visits.push_back(birch_visit(
        farm, {"2026-07-08T12:15:00-05:00", "95 degF", "40%", "81.0 degF", "84.6 degF", "73%"}, 262));

    std::optional<TimerSettings> left_at_cedar;
    for (const auto& [day, seed, truth] : cedar_days) {
        visits.push_back(cedar_visit(farm, day, seed, truth, left_at_cedar ? &*left_at_cedar : nullptr));
        left_at_cedar = *left_before();
    }
    visits.back().visit.signatures.clear();
    return visits;
}

VisitFile example_visit() {
    return demo_visits()[2];
}

Result<void> fill_store(Store& store) {
    for (const auto& file : demo_visits()) {
        WF_CHECK(store.add(file));
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront
