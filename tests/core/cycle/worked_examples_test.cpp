// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <map>
#include <sstream>

#include "cycle/advice.h"
#include "pad/wet_pad.h"
#include "support/data_table.h"
#include "support/outside_check.h"
#include "timed_visit.h"

namespace wetfront {
namespace {

using test::TimedVisit;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// One "expect" line: `name value unit +- limit`, the limit a share where it is in percent; or `name none`.
struct Expected {
    std::string name;
    std::optional<double> value;
    double limit = 0.0;
    bool is_share = false;
};

/// A house of tests/data/worked as the program would have it from a visit.
struct WorkedHouse {
    TimedVisit visit;
    std::vector<Expected> expected;
    std::vector<std::string> faults;  ///< what in the file cannot be used
};

std::vector<std::string> words_of(const std::string& line) {
    std::istringstream stream{line};
    std::vector<std::string> words;
    for (std::string word; stream >> word;) {
        words.push_back(word);
    }
    return words;
}

// Nothing but what the file gives, so that no default of the visit slips in.
TimedVisit bare_visit() {
    TimedVisit visit;
    visit.file.farm = {};
    visit.file.visit.conditions = {};
    visit.timer().resolution.reset();
    for (auto& bank : visit.file.house.banks) {
        bank.length.reset();
        bank.height.reset();
        bank.thickness.reset();
        bank.header_bore.reset();
    }
    return visit;
}

bool take_given(TimedVisit& visit, const std::string& name, const char* value) {
    auto& farm = visit.file.farm;
    auto& conditions = visit.file.visit.conditions;
    auto& bank = visit.bank_at(0);
    const std::map<std::string, std::function<void()>> takers{
        {"elevation", [&] { farm.elevation = TimedVisit::entry<Length>(value); }},
        {"design_dry_bulb", [&] { farm.design_dry_bulb = TimedVisit::entry<Temperature>(value); }},
        {"design_wet_bulb", [&] { farm.design_wet_bulb = TimedVisit::entry<Temperature>(value); }},
        {"test_dry_bulb", [&] { conditions.outside_dry_bulb = TimedVisit::entry<Temperature>(value); }},
        {"test_wet_bulb", [&] { conditions.outside_wet_bulb = TimedVisit::entry<Temperature>(value); }},
        {"test_humidity", [&] { conditions.outside_humidity = TimedVisit::entry<Fraction>(value); }},
        {"behind_pad", [&] { conditions.behind_pad = TimedVisit::entry<Temperature>(value); }},
        {"face_velocity", [&] { conditions.face_velocity = TimedVisit::entry<Velocity>(value); }},
        {"flow", [&] { visit.flow().flow = TimedVisit::entry<VolumeFlow>(value); }},
        {"timer_step", [&] { visit.timer().resolution = TimedVisit::entry<Duration>(value); }},
        {"north.length", [&] { bank.length = TimedVisit::entry<Length>(value); }},
        {"north.height", [&] { bank.height = TimedVisit::entry<Length>(value); }},
        {"north.thickness", [&] { bank.thickness = TimedVisit::entry<Length>(value); }},
        {"north.header_bore", [&] { bank.header_bore = TimedVisit::entry<Length>(value); }},
    };
    const auto taker = takers.find(name);
    if (taker == takers.end()) {
        return false;
    }
    taker->second();
    return true;
}

// `run BANK fill 45 s, wet-through 165 s, dry-out 1200 s, fans off` from a dry pad, or
// `run BANK off 300 s, fill 45 s, return 85 s, fans on` from a wet one.
bool take_run(TimedVisit& visit, const std::vector<std::string>& words) {
    if (words.size() != 13 || words[11] != "fans") {
        return false;
    }
    const auto* bank = words[1].c_str();
    const auto time = [&](std::size_t place) { return test::cell_number(words[place]); };
    const bool fans_on = words[12] == "on";
    if (words[2] == "fill" && words[5] == "wet-through" && words[8] == "dry-out") {
        visit.dry_start(bank, time(3), time(6), time(9), fans_on);
        return true;
    }
    if (words[2] == "off" && words[5] == "fill" && words[8] == "return") {
        visit.wet_start(bank, time(3), time(6), time(9), fans_on);
        return true;
    }
    return false;
}

std::optional<Expected> expected_of(const std::vector<std::string>& words) {
    if (words.size() == 3 && words[2] == "none") {
        return Expected{words[1], std::nullopt};
    }
    const auto limit = std::find(words.begin(), words.end(), "+-");
    if (words.size() < 5 || limit == words.end() || limit + 1 == words.end()) {
        return std::nullopt;
    }
    const bool is_share = words.back() == "%";
    return Expected{words[1], test::cell_number(words[2]),
                    test::cell_number(*(limit + 1)) * (is_share ? 0.01 : 1.0), is_share};
}

bool take_line(WorkedHouse& house, const std::vector<std::string>& words) {
    if (words.front() == "given") {
        return words.size() == 4 && take_given(house.visit, words[1], (words[2] + words[3]).c_str());
    }
    if (words.front() == "run") {
        return take_run(house.visit, words);
    }
    if (const auto expected = expected_of(words)) {
        house.expected.push_back(*expected);
        return true;
    }
    return false;
}

bool expects(const WorkedHouse& house, const std::string& name) {
    return std::any_of(house.expected.begin(), house.expected.end(),
                       [&](const Expected& expected) { return expected.name == name; });
}

WorkedHouse house_of(const std::string& text) {
    WorkedHouse house{bare_visit(), {}, {}};
    std::istringstream lines{text};
    bool south = false;
    for (std::string line; std::getline(lines, line);) {
        const auto words = words_of(line);
        const bool ours =
            line.starts_with("given ") || line.starts_with("run ") || line.starts_with("expect ");
        if (ours && !take_line(house, words)) {
            house.faults.push_back("cannot be read: " + line);
        }
        south = south || line.starts_with("run south ");
    }
    if (!south) {
        house.visit.file.house.banks.pop_back();
    }
    for (const char* name : {"evaporation_ratio", "period", "base_on_time", "rinse_length"}) {
        if (!expects(house, name)) {
            house.faults.push_back(std::string{"expects no "} + name);
        }
    }
    return house;
}

using Numbers = std::map<std::string, double>;

void add_air(Numbers& said, const VisitFile& file, const Advice& advice) {
    const auto& weather = advice.weather;
    const auto effectiveness = effectiveness_of(file, weather, file.house.banks.front()).value;
    said["pressure"] = in_si(weather.pressure);
    said["effectiveness"] = in_si(effectiveness);
    for (const auto& [name, air] : {std::pair{"test", weather.test}, std::pair{"design", weather.design}}) {
        const std::string start{name};
        said[start + "_wet_bulb"] = in_celsius(air.value().wet_bulb);
        said[start + "_humidity_ratio"] = in_si(air.value().humidity_ratio);
        said[start + "_volume"] = in_si(air.value().specific_volume);
        // At a metre a second, the water that a cubic metre of outside air gains.
        said[start + "_gain"] = in_si(evaporation(*air, effectiveness, from_si<Velocity>(1.0)).value());
    }
}

void add_readings(Numbers& said, const std::string& start, const BankQuestion& question) {
    const auto add = [&](const char* name, Duration value, Duration u) {
        said[start + name] = in_seconds(value);
        said[start + "u_" + name] = in_seconds(u);
    };
    add("fill", question.fill, question.u_fill);
    if (const auto* dry = std::get_if<DryStart>(&question.start)) {
        add("wet_through", dry->wet_through, dry->u_wet_through);
        add("dry_out", dry->dry_out, dry->u_dry_out);
    } else {
        const auto& wet = std::get<WetStart>(question.start);
        add("off", wet.off, wet.u_off);
        add("return", wet.drip_return, wet.u_drip_return);
    }
}

double number_of(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::enough_water:
            return 1.0;
        case LimitedBy::no_part_dries:
            return 2.0;
        case LimitedBy::header_fill:
            return 3.0;
    }
    return 0.0;
}

void add_bounds(Numbers& said, const std::string& start, const BankQuestion& question, double period) {
    const auto bounds = on_time_bounds(question, seconds(period), {}).value();
    const auto at = start + std::to_string(static_cast<int>(period)) + "s.";
    said[at + "need"] = in_seconds(bounds.need);
    said[at + "gap_bound"] = in_seconds(bounds.gap_bound);
    said[at + "fill_bound"] = in_seconds(bounds.fill_bound);
    said[at + "uncertainty"] = in_seconds(bounds.uncertainty);
    said[at + "rule"] = number_of(bounds.limited_by);
}

void add_bank(Numbers& said, const BankAdvice& bank) {
    const auto start = bank.bank.text + ".";
    const auto& question = bank.question.value();
    add_readings(said, start, question);
    said[start + "share_from_timings"] = bank.share_from_timings.value();
    if (bank.share_from_flow) {
        said[start + "share_from_flow"] = *bank.share_from_flow;
    }
    said[start + "kappa"] = evaporated_share(question).value();
    said[start + "drying_over_supply"] = drying_over_supply(question, {}).value();
    said[start + "longest_gap"] = in_seconds(bank.longest_gap.value());
    add_bounds(said, start, question, 300.0);
    add_bounds(said, start, question, 600.0);
    if (bank.rinse) {
        said[start + "rinse_wet_through"] = in_seconds(bank.rinse->wet_through);
        said[start + "rinse_exchange"] = in_seconds(bank.rinse->exchange);
    }
}

/// All that the program says of that house, by the names of the files.
Numbers said_of(const VisitFile& file) {
    const auto advice = advise(file);
    const auto& timer = advice.timers.front();
    Numbers said;
    add_air(said, file, advice);
    said["evaporation_ratio"] = timer.evaporation_ratio.value();
    for (std::size_t i = 0; i < timer.banks.size(); ++i) {
        add_bank(said, timer.banks[i]);
        if (timer.banks[i].decides) {
            said["deciding_bank"] = static_cast<double>(i + 1);
        }
    }
    for (const auto setting : {Setting::period, Setting::base_on_time, Setting::on_time_ceiling,
                               Setting::trim_step, Setting::review_interval, Setting::rinse_length}) {
        if (const auto value = timer.advised(setting)->value) {
            said[std::string{key_of(setting)}] = value->si;
        }
    }
    said["rest"] = said.at("period") - said.at("base_on_time");
    return said;
}

void compare(const std::string& file_name, const WorkedHouse& house) {
    const auto said = said_of(house.visit.file);
    const auto source = "worked by hand, tests/data/worked/" + file_name;
    test::OutsideCheck times{"times and settings of a whole house", source, "s"};
    test::OutsideCheck shares{"air, shares and deciding rules of a whole house", source};
    for (const auto& expected : house.expected) {
        const auto found = said.find(expected.name);
        if (!expected.value) {
            EXPECT_EQ(found, said.end()) << expected.name << ": the program has one, wanted none";
            continue;
        }
        if (found == said.end()) {
            ADD_FAILURE() << expected.name << ": the program has none, wanted " << *expected.value;
        } else if (expected.is_share) {
            shares.within(expected.name, found->second, *expected.value, expected.limit);
        } else {
            times.near(expected.name, found->second, *expected.value, expected.limit);
        }
    }
}

std::vector<std::string> worked_files() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator{WETFRONT_TEST_DATA "/worked"}) {
        names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

TEST(WorkedExamplesTest, every_house_worked_by_hand_comes_out_of_the_program) {
    const auto names = worked_files();
    ASSERT_FALSE(names.empty());
    for (const auto& name : names) {
        SCOPED_TRACE(name);
        const auto house = house_of(test::data_text("worked/" + name));
        EXPECT_THAT(house.faults, IsEmpty());
        compare(name, house);
    }
}

TEST(WorkedExamplesTest, a_file_that_expects_nothing_or_holds_an_unknown_line_is_not_taken) {
    EXPECT_THAT(house_of("A house.\n").faults,
                ElementsAre("expects no evaporation_ratio", "expects no period", "expects no base_on_time",
                            "expects no rinse_length"));
    const std::string expectations =
        "expect evaporation_ratio 1.2 +- 0.1 %\nexpect period 300 s +- 1e-9\n"
        "expect base_on_time 85 s +- 1e-9\nexpect rinse_length none\n";
    EXPECT_THAT(house_of(expectations).faults, IsEmpty());
    for (const char* line : {"given moon 1 m", "given elevation 1", "run north fill 45 s",
                             "expect period 300 s", "expect period 300 s +-"}) {
        EXPECT_THAT(house_of(expectations + line + "\n").faults, ElementsAre(HasSubstr(line)));
    }
}

}  // namespace
}  // namespace wetfront
