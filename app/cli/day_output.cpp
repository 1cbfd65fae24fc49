// SPDX-License-Identifier: Apache-2.0
#include "cli/day_output.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <ostream>

#include "base/numbers.h"
#include "cli/results.h"

namespace wetfront {
namespace {

constexpr double hour_s = 3600.0;
constexpr std::size_t most_hours_in_text = 48;

/// As electricity is sold.
double kilowatt_hours(Energy energy) {
    return in_si(energy) / 3.6e6;
}

WallTime at_slot(const DayResult& day, std::size_t slot) {
    auto time = day.from;
    time.unix_ms += static_cast<std::int64_t>(
        std::llround(1000.0 * in_seconds(day.slot_length) * static_cast<double>(slot)));
    return time;
}

JsonObject pump_on_json(const DayResult& day, std::size_t slot) {
    JsonObject list = JsonObject::array();
    const auto timers = day.timers.size();
    for (std::size_t t = 0; t < timers; ++t) {
        list.push_back(in_seconds(day.pump_on[slot * timers + t]));
    }
    return list;
}

JsonObject hours_json(const DayResult& day) {
    JsonObject list = JsonObject::array();
    for (std::size_t s = 0; s < day.course.size(); ++s) {
        const auto& slot = day.course[s];
        list.push_back({{"from", to_iso8601(at_slot(day, s))},
                        {"outside_degC", in_celsius(slot.outside)},
                        {"outside_relative_humidity", in_si(slot.outside_humidity)},
                        {"behind_pad_degC", in_celsius(slot.behind_pad)},
                        {"house_degC", in_celsius(slot.house)},
                        {"house_relative_humidity", in_si(slot.humidity)},
                        {"thi_degC", in_celsius(slot.index)},
                        {"wet_share", slot.wet_share},
                        {"airflow_share", slot.airflow_share},
                        {"evaporated_kg", in_si(slot.evaporated)},
                        {"pumped_kg", in_si(slot.pumped)},
                        {"bled_kg", in_si(slot.bled)},
                        {"pump_on_s", pump_on_json(day, s)}});
    }
    return list;
}

JsonObject number_or_null(const std::optional<double>& value) {
    return value ? JsonObject(*value) : JsonObject(nullptr);
}

JsonObject totals_json(const DayTotals& totals) {
    return {
        {"simulated_s", in_seconds(totals.simulated)},
        {"mean_house_degC", in_celsius(totals.mean_house)},
        {"hottest_house_degC", in_celsius(totals.hottest_house)},
        {"above_house_limit_s", in_seconds(totals.above_house_limit)},
        {"above_house_limit_degree_hours", totals.degree_hours_above_house_limit},
        {"above_thi_limit_s", in_seconds(totals.above_index_limit)},
        {"litter_wet_s", in_seconds(totals.litter_wet)},
        {"cooling_degree_hours", totals.cooling},
        {"cooling_lost_degree_hours", totals.lost_to_dry_pad},
        {"water_evaporated_kg", in_si(totals.evaporated)},
        {"water_bled_kg", in_si(totals.bled)},
        {"water_pumped_kg", in_si(totals.pumped)},
        {"pump_energy_J", totals.pump_energy ? JsonObject(in_si(*totals.pump_energy)) : JsonObject(nullptr)},
        {"pump_starts", totals.pump_starts},
        {"wet_dry_cycles", totals.wet_dry_cycles},
        {"energy_cost", number_or_null(totals.energy_cost)},
        {"water_cost", number_or_null(totals.water_cost)},
        {"hunting_hours", totals.hunting_hours},
        {"fog_s", in_seconds(totals.fog)},
        {"beyond_bird_heat_s", in_seconds(totals.beyond_bird_heat)}};
}

JsonObject timers_json(const DayResult& day) {
    JsonObject list = JsonObject::array();
    for (const auto& timer : day.timers) {
        list.push_back({{"called_s", in_seconds(timer.called)},
                        {"pump_on_s", in_seconds(timer.pump_on)},
                        {"pump_starts", timer.pump_starts},
                        {"calls", timer.calls},
                        {"wet_dry_cycles", timer.wet_dry_cycles},
                        {"longest_on_time_s", in_seconds(timer.longest_on_time)}});
    }
    return list;
}

std::string water(Mass mass, UnitSystem units) {
    return shown_with({Kind::volume, in_si(mass) / 1000.0}, units, 0, 0);
}

std::string minutes(double time_s) {
    return print_number(time_s / 60.0, 1) + " min";
}

std::string hours(Duration time) {
    return print_number(in_seconds(time) / hour_s, 1) + " h";
}

double pump_on_s(const DayResult& day, std::size_t slot) {
    const auto timers = day.timers.size();
    double all = 0.0;
    for (std::size_t t = 0; t < timers; ++t) {
        all += in_seconds(day.pump_on[slot * timers + t]);
    }
    return all;
}

void print_hours(std::ostream& out, const DayResult& day, UnitSystem units) {
    std::vector<std::vector<std::string>> table{
        {"hour", "outside", "behind pad", "house", "humidity", "THI", "wet pad", "pumps on", "evaporated"}};
    for (std::size_t s = 0; s < day.course.size(); ++s) {
        const auto& slot = day.course[s];
        table.push_back({local_clock(at_slot(day, s)), show_text(slot.outside, units),
                         show_text(slot.behind_pad, units), show_text(slot.house, units),
                         shown_with(any(slot.humidity), units, 0, 0), show_text(slot.index, units),
                         shown_with(any_share(slot.wet_share), units, 0, 0), minutes(pump_on_s(day, s)),
                         water(slot.evaporated, units)});
    }
    print_table(out, table);
}

void print_days(std::ostream& out, const DayResult& day, UnitSystem units) {
    std::vector<std::vector<std::string>> table{
        {"day", "hottest hour outside", "hottest hour in the house", "pumps on", "evaporated", "pumped"}};
    for (std::size_t s = 0; s < day.course.size();) {
        const auto date = local_date(at_slot(day, s));
        auto outside = day.course[s].outside;
        auto house = day.course[s].house;
        double on_s = 0.0;
        auto evaporated = from_si<Mass>(0.0);
        auto pumped = from_si<Mass>(0.0);
        for (; s < day.course.size() && local_date(at_slot(day, s)) == date; ++s) {
            outside = std::max(outside, day.course[s].outside);
            house = std::max(house, day.course[s].house);
            on_s += pump_on_s(day, s);
            evaporated += day.course[s].evaporated;
            pumped += day.course[s].pumped;
        }
        table.push_back({date, show_text(outside, units), show_text(house, units), minutes(on_s),
                         water(evaporated, units), water(pumped, units)});
    }
    print_table(out, table);
}

/// Of a share that is nearly nothing: "1.2e-15".
std::string scientific(double value) {
    std::array<char, 32> buffer{};
    const auto [end, problem] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::scientific, 1);
    return {buffer.data(), problem == std::errc{} ? end : buffer.data()};
}

std::string cost(const std::optional<double>& money) {
    return money ? print_fixed(*money, 2) : "- (no price entered, or nothing to multiply it with)";
}

void print_totals(std::ostream& out, const DayResult& day, UnitSystem units) {
    const auto& totals = day.totals;
    const auto degree_hours = [&](double kelvin_hours) {
        const double shown = units == UnitSystem::us ? 1.8 * kelvin_hours : kelvin_hours;
        return print_number(shown, 1) + (units == UnitSystem::us ? " °F h" : " K h");
    };
    std::vector<std::vector<std::string>> table{
        {"hottest in the house", show_text(totals.hottest_house, units)},
        {"above the temperature limit",
         hours(totals.above_house_limit) + ", " + degree_hours(totals.degree_hours_above_house_limit)},
        {"above the THI limit", hours(totals.above_index_limit)},
        {"litter gets wet", hours(totals.litter_wet)},
        {"cooling by pads", degree_hours(totals.cooling)},
        {"cooling lost to dry pad", degree_hours(totals.lost_to_dry_pad)},
        {"water evaporated", water(totals.evaporated, units)},
        {"water bled", water(totals.bled, units)},
        {"water pumped", water(totals.pumped, units)},
        {"pump energy", totals.pump_energy ? print_number(kilowatt_hours(*totals.pump_energy), 2) + " kWh"
                                           : "- (the power of a pump is not entered)"},
        {"pump starts", std::to_string(totals.pump_starts)},
        {"wet-dry cycles", print_number(totals.wet_dry_cycles, 1)},
        {"cost of power", cost(totals.energy_cost)},
        {"cost of water", cost(totals.water_cost)},
        {"hours of hunting", std::to_string(totals.hunting_hours)},
        {"error of the water balance", scientific(day.water.error())},
        {"error of the heat balance", scientific(day.heat.error())}};
    out << '\n';
    print_table(out, table);
    if (in_seconds(totals.fog) > 0.0) {
        out << "The air in the house could not hold its vapour for " << hours(totals.fog)
            << "; it counts as saturated then.\n";
    }
    if (in_seconds(totals.beyond_bird_heat) > 0.0) {
        out << "For " << hours(totals.beyond_bird_heat)
            << " the house was outside the temperatures for which the heat of birds is published.\n";
    }
}

}  // namespace

JsonObject day_json(const DayResult& day) {
    return {{"from", to_iso8601(day.from)},       {"hours", hours_json(day)},
            {"totals", totals_json(day.totals)},  {"timers", timers_json(day)},
            {"balance_error", day.water.error()}, {"heat_balance_error", day.heat.error()}};
}

void print_day(std::ostream& out, const DayResult& day, UnitSystem units) {
    if (day.course.size() <= most_hours_in_text) {
        print_hours(out, day, units);
    } else {
        print_days(out, day, units);
    }
    print_totals(out, day, units);
}

}  // namespace wetfront
