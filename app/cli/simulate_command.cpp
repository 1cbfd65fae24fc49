// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <filesystem>
#include <ostream>

#include "cli/command.h"
#include "cli/day_output.h"
#include "cli/interruption.h"
#include "cli/visit_source.h"
#include "day/design_weather.h"
#include "day/simulate.h"
#include "day/visit_day.h"
#include "day/weather_file.h"
#include "search/cheapest_cycle.h"

namespace wetfront {
namespace {

/// By which settings the timers run.
enum class DaySettings { found, advised, left, continuous, none, cheapest };

struct SimulateOptions {
    std::string visit;
    std::string weather;
    DaySettings which = DaySettings::advised;
    std::optional<std::string> from, to;
};

const char* name_of(DaySettings which) {
    switch (which) {
        case DaySettings::found:
            return "found";
        case DaySettings::advised:
            return "advised";
        case DaySettings::left:
            return "left";
        case DaySettings::continuous:
            return "continuous";
        case DaySettings::none:
            return "none";
        case DaySettings::cheapest:
            return "cheapest";
    }
    return "";
}

const WayToRun& way_of(const VisitDay& day, DaySettings which) {
    switch (which) {
        case DaySettings::found:
            return day.found;
        case DaySettings::advised:
            return day.advised;
        case DaySettings::left:
            return day.left;
        case DaySettings::continuous:
            return day.continuous;
        case DaySettings::cheapest:  // put in place of what is advised
            return day.advised;
        case DaySettings::none:
            break;
    }
    return day.none;
}

/// A weather, and what is to be told about how it was read.
struct ReadWeather {
    Weather weather;
    std::vector<Message> notes;
};

Result<ReadWeather> weather_from_file(const SimulateOptions& options, const Advice& advice) {
    if (options.from.has_value() != options.to.has_value()) {
        return bad_input("--from, --to", "", "give both or none of them");
    }
    WF_TRY(const auto text,
           text_of_file(options.weather, most_weather_bytes, "name a weather file that can be read"));
    const auto file = read_weather_file(text, std::filesystem::path{options.weather}.filename().string(),
                                        advice.weather.pressure);
    if (!file) {
        auto error = file.error();
        error.item = options.weather + ", " + error.item;
        return error;
    }
    ReadWeather read{{}, file.value().notes};
    for (const auto& gap : file.value().gaps) {
        read.notes.push_back(gap_words(gap));
    }
    if (options.from) {
        WF_TRY(const auto from, parse_day(*options.from, "--from"));
        WF_TRY(const auto to, parse_day(*options.to, "--to"));
        WF_TRY(read.weather, days_of(file.value(), from, to));
    } else {
        WF_TRY(read.weather, whole_of(file.value()));
    }
    return read;
}

Result<ReadWeather> weather_for(const SimulateOptions& options, const VisitFile& file, const Advice& advice) {
    if (!options.weather.empty()) {
        return weather_from_file(options, advice);
    }
    if (options.from || options.to) {
        return bad_input("--from, --to", "", "these choose days of a weather file: --weather FILE");
    }
    WF_TRY(auto weather, design_weather_of(file, advice));
    return ReadWeather{std::move(weather), {}};
}

Result<void> nothing_missing(const std::vector<Message>& missing, UnitSystem units) {
    if (missing.empty()) {
        return boost::outcome_v2::success();
    }
    std::string all;
    for (const auto& each : missing) {
        all += (all.empty() ? "" : "; ") + in_english(each, units);
    }
    return Error{Error::Kind::bad_input, "simulate", "", "missing: " + printable(all, 400)};
}

JsonObject texts_json(const std::vector<Message>& messages, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& each : messages) {
        list.push_back(in_english(each, units));
    }
    return list;
}

void print_texts(std::ostream& out, const char* heading, const std::vector<Message>& messages,
                 UnitSystem units) {
    if (messages.empty()) {
        return;
    }
    out << '\n' << heading << '\n';
    for (const auto& each : messages) {
        out << "  " << in_english(each, units) << '\n';
    }
}

/// Puts what the search finds on the design day in place of what is advised; says what that is.
Result<std::vector<Message>> take_cheapest(VisitDay& known, const VisitFile& file, const Advice& advice,
                                           Interruption& interruption) {
    WF_TRY(const auto weather, design_weather_of(file, advice));
    WF_TRY(const auto found,
           cheapest_cycles(file, advice, known, weather, [&] { return !interruption.asked(); }));
    std::vector<Message> words;
    for (const auto& each : found) {
        const auto timer = std::ranges::find(file.house.timers, each.timer, &Timer::id);
        (*known.advised.plans)[static_cast<std::size_t>(timer - file.house.timers.begin())] =
            each.answer.best.plan;
        words.push_back(words_of(each, file.house));
    }
    return words;
}

Result<ExitStatus> run_simulate(const SimulateOptions& options, const Common& common) {
    WF_TRY(const auto visit, load_visit(options.visit, common));
    const auto advice = advise(visit.file);
    auto known = visit_day(visit.file, advice);
    const auto& way = way_of(known, options.which);
    WF_TRY(const auto read, weather_for(options, visit.file, advice));
    auto missing = known.missing;
    missing.insert(missing.end(), way.missing.begin(), way.missing.end());
    WF_CHECK(nothing_missing(missing, common.units));
    Interruption interruption;
    std::vector<Message> cycles;
    if (options.which == DaySettings::cheapest) {
        WF_TRY(cycles, take_cheapest(known, visit.file, advice, interruption));
    }
    WF_TRY(known.house->clock_ahead, timers_clock_ahead(visit.file, read.weather));
    WF_TRY(auto simulator, DaySimulator::of(*known.house, read.weather));
    DayResult day;
    bool stopped = false;
    const auto done = simulator.run(*way.plans, day, [&](double) {
        stopped = stopped || interruption.asked();
        return !stopped;
    });
    if (stopped) {
        return ExitStatus::stopped;
    }
    WF_CHECK(done);
    auto assumed = known.assumed;
    assumed.insert(assumed.end(), way.assumed.begin(), way.assumed.end());
    if (common.json) {
        JsonObject object = {{"visit", visit.file.visit.id.text},
                             {"settings", name_of(options.which)},
                             {"weather", read.weather.source}};
        object.update(day_json(day));
        if (options.which == DaySettings::cheapest) {
            object["cycles"] = texts_json(cycles, common.units);
        }
        object["assumed"] = texts_json(assumed, common.units);
        object["notes"] = texts_json(read.notes, common.units);
        print_json(common.out(), object);
        return ExitStatus::done;
    }
    common.out() << headline(visit.file) << ": settings " << name_of(options.which) << ", weather "
                 << read.weather.source << "\n\n";
    print_day(common.out(), day, common.units);
    print_texts(common.out(), "Cycles:", cycles, common.units);
    print_texts(common.out(), "Assumed:", assumed, common.units);
    print_texts(common.out(), "Notes on the weather:", read.notes, common.units);
    return ExitStatus::done;
}

}  // namespace

void add_simulate(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand(
        "simulate",
        "a day or a season of the visit's house, hour by hour, with water, power and cooling lost");
    const auto options = std::make_shared<SimulateOptions>();
    command->add_option("visit", options->visit, "a file, - or an id in the store")
        ->required()
        ->type_name("VISIT");
    command
        ->add_option("--weather", options->weather,
                     "an EPW file, or hourly values as CSV (see example weather); else the farm's design day")
        ->type_name("FILE");
    command
        ->add_option("--settings", options->which,
                     "of the timers: advised (default), found, left, continuous, none, or\n"
                     "cheapest: of all cycles that cool as well, the one that pumps least")
        ->transform(one_of<DaySettings>({{"found", DaySettings::found},
                                         {"advised", DaySettings::advised},
                                         {"left", DaySettings::left},
                                         {"continuous", DaySettings::continuous},
                                         {"none", DaySettings::none},
                                         {"cheapest", DaySettings::cheapest}},
                                        "found, advised, left, continuous, none or cheapest"))
        ->type_name("found|advised|left|continuous|none|cheapest");
    command->add_option("--from", options->from, "first day of the weather file, as 2026-07-01")
        ->type_name("D");
    command->add_option("--to", options->to, "its last day")->type_name("D");
    command->footer(
        "An EPW file of a typical year is dated 2001, or 2004 with a 29 February.\n"
        "Example: wetfront-cli simulate visit.json --weather weather.csv --settings found");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_simulate(*options, common); };
    });
}

}  // namespace wetfront
