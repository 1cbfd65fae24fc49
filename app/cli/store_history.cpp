// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/results.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "store/house_visits.h"
#include "trend/history_words.h"

namespace wetfront {
namespace {

JsonObject trend_json(const FollowedTrend& followed) {
    const auto& trend = followed.trend;
    const Kind kind = followed.series.values.front().value.kind;
    JsonObject object = {{"verdict", enum_name(trend.verdict)}};
    if (trend.verdict != TrendVerdict::too_few) {
        object["mann_kendall_s"] = trend.test->s;
        object["p"] = trend.test->p;
        const auto limit = [](const std::optional<double>& slope) {
            return slope ? JsonObject(*slope) : JsonObject(nullptr);
        };
        object[file_key("slope_per_year", kind)] = trend.line->slope;
        object[file_key("slope_least", kind)] = limit(trend.line->least);
        object[file_key("slope_most", kind)] = limit(trend.line->most);
    }
    return object;
}

JsonObject change_json(const FollowedTrend& followed) {
    if (!followed.change) {
        return nullptr;
    }
    const auto& values = followed.series.values;
    return {{"up", followed.change->up},
            {"began_with", values[followed.change->began_at].visit.text},
            {"seen_at", values[followed.change->seen_at].visit.text}};
}

JsonObject as_json(const House& house, const std::vector<FollowedTrend>& all) {
    JsonObject list = JsonObject::array();
    for (const auto& followed : all) {
        JsonObject values = JsonObject::array();
        for (const auto& each : followed.series.values) {
            values.push_back(
                {{"visit", each.visit.text},
                 {"started", to_iso8601(each.at)},
                 {file_key("value", each.value.kind), file_number(each.value)},
                 {file_key("expanded_uncertainty", each.value.kind),
                  each.expanded ? JsonObject(file_number(*each.expanded)) : JsonObject(nullptr)}});
        }
        list.push_back({{"bank", followed.series.bank.text},
                        {"followed", enum_name(followed.series.what)},
                        {"values", std::move(values)},
                        {"trend", trend_json(followed)},
                        {"change", change_json(followed)}});
    }
    return {{"house", house.id.text}, {"house_name", house.name}, {"series", std::move(list)}};
}

void print_series(std::ostream& out, const BankSeries& series, UnitSystem units) {
    for (const auto& each : series.values) {
        out << "    " << local_date(each.at) << "  " << show(each.value, units).joined(units)
            << (each.expanded ? " ± " + show(*each.expanded, units).joined(units) : std::string{}) << '\n';
    }
}

void print_text(std::ostream& out, const House& house, const std::vector<FollowedTrend>& all,
                UnitSystem units) {
    out << house.name << '\n';
    for (const auto& bank : house.banks) {
        out << bank.name << '\n';
        bool measured = false;
        for (const auto& followed : all) {
            if (followed.series.bank == bank.id) {
                measured = true;
                out << "  " << in_english(words_of(followed), units) << '\n';
                if (const auto shift = shift_words(followed); !shift.empty()) {
                    out << "  " << in_english(shift, units) << '\n';
                }
                print_series(out, followed.series, units);
            }
        }
        if (!measured) {
            out << "  Nothing was measured at it yet.\n";
        }
        if (const auto cause = likely_cause(all, bank.id); !cause.empty()) {
            out << "  " << in_english(cause, units) << '\n';
        }
    }
}

Result<ExitStatus> run_history(const std::string& house_id, const Common& common) {
    WF_TRY(const auto id, parse_id(house_id, "id"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto house, store.house(id));
    WF_TRY(const auto visits, visit_files_of(store, id));
    WF_TRY(const auto all, trends_of(visits));
    if (common.json) {
        print_json(common.out(), as_json(house, all));
    } else {
        print_text(common.out(), house, all, common.units);
    }
    return ExitStatus::done;
}

}  // namespace

void add_store_history(CLI::App& store, const Common& common, Work& chosen) {
    auto* command =
        store.add_subcommand("history", "what was measured of a house over the years, and its trend");
    const auto house = std::make_shared<std::string>();
    command->add_option("id", *house, "id of a house in the store")->required()->type_name("ID");
    command->footer(
        "Trend: Mann-Kendall at 5 %, Theil-Sen slope with 95 % limits; fewer than 5 visits are too few.\n"
        "Example: wetfront-cli store history demo-alder --store records.db");
    command->callback(
        [&common, &chosen, house] { chosen = [&common, house] { return run_history(*house, common); }; });
}

}  // namespace wetfront
