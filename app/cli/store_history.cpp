// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/results.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "store/house_visits.h"
#include "trend/history_words.h"
#include "trend/settings_history.h"

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
    const auto values = followed.series.since_last_event();
    return {{"up", followed.change->up},
            {"began_with", values[followed.change->began_at].visit.text},
            {"seen_at", values[followed.change->seen_at].visit.text}};
}

JsonObject events_json(const BankSeries& series) {
    JsonObject list = JsonObject::array();
    for (const auto& done : series.events) {
        list.push_back({{"id", done.id.text}, {"on", to_iso8601(done.on)}, {"what", enum_name(done.what)}});
    }
    return list;
}

JsonObject limit_json(const FollowedTrend& followed) {
    if (!followed.limit) {
        return nullptr;
    }
    const auto& limit = *followed.limit;
    JsonObject object = {
        {file_key("value", limit.value.kind), file_number(limit.value)},
        {"from", limit.from == SeriesLimit::From::base_on_time ? "base on-time" : "least circulation"},
        {file_key("set_by", limit.set_by.kind), file_number(limit.set_by)}};
    const auto reached = limit_reached(followed);
    const auto moment = [&](const std::optional<double>& years) {
        return years ? JsonObject(to_iso8601(moment_at(followed.series.since_last_event(), *years)))
                     : JsonObject(nullptr);
    };
    object["reached"] = reached ? JsonObject{{"likely", moment(reached->likely)},
                                             {"earliest", moment(reached->earliest)},
                                             {"latest", moment(reached->latest)}}
                                : JsonObject(nullptr);
    return object;
}

JsonObject changes_json(const std::vector<SettingChange>& changes) {
    JsonObject list = JsonObject::array();
    for (const auto& change : changes) {
        const auto value = [](const std::optional<AnyQuantity>& quantity) {
            return quantity ? JsonObject(file_number(*quantity)) : JsonObject(nullptr);
        };
        const Kind kind = change.after ? change.after->kind : change.before->kind;
        list.push_back({{"setting", change.field.key},
                        {"trim_row", change.row == 0 ? JsonObject(nullptr) : JsonObject(change.row)},
                        {file_key("before", kind), value(change.before)},
                        {file_key("after", kind), value(change.after)}});
    }
    return list;
}

JsonObject settings_json(const std::vector<TimerHistory>& timers) {
    JsonObject list = JsonObject::array();
    for (const auto& timer : timers) {
        JsonObject stands = JsonObject::array();
        for (const auto& stand : timer.stands) {
            stands.push_back({{"visit", stand.visit.text},
                              {"started", to_iso8601(stand.at)},
                              {"changed_meanwhile", changes_json(stand.meanwhile)},
                              {"changed", changes_json(stand.by_visit)}});
        }
        list.push_back({{"timer", timer.timer.text}, {"visits", std::move(stands)}});
    }
    return list;
}

JsonObject as_json(const House& house, const std::vector<FollowedTrend>& all,
                   const std::vector<TimerHistory>& timers) {
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
                        {"maintenance", events_json(followed.series)},
                        {"trend", trend_json(followed)},
                        {"change", change_json(followed)},
                        {"limit", limit_json(followed)}});
    }
    return {{"house", house.id.text},
            {"house_name", house.name},
            {"series", std::move(list)},
            {"settings", settings_json(timers)}};
}

void print_series(std::ostream& out, const BankSeries& series, UnitSystem units) {
    auto event = series.events.begin();
    const auto print_events_before = [&](const WallTime* at) {
        for (; event != series.events.end() && (at == nullptr || !(*at < event->on)); ++event) {
            out << "    " << local_date(event->on) << "  " << in_english(label_of(event->what), units)
                << '\n';
        }
    };
    for (const auto& each : series.values) {
        print_events_before(&each.at);
        out << "    " << local_date(each.at) << "  " << show(each.value, units).joined(units)
            << (each.expanded ? " ± " + show(*each.expanded, units).joined(units) : std::string{}) << '\n';
    }
    print_events_before(nullptr);
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
                for (const auto& sentence : {shift_words(followed), limit_words(followed)}) {
                    if (!sentence.empty()) {
                        out << "  " << in_english(sentence, units) << '\n';
                    }
                }
                print_series(out, followed.series, units);
            }
        }
        if (!measured) {
            out << "  Nothing was measured at it yet.\n";
        }
        if (const auto cause = likely_cause(all, bank.id)) {
            out << "  " << in_english(words_of(*cause), units) << '\n';
            out << "  " << in_english(remedy_of(*cause), units) << '\n';
        }
    }
}

void print_settings(std::ostream& out, const House& house, const std::vector<TimerHistory>& timers,
                    UnitSystem units) {
    for (const auto& timer : timers) {
        out << house.timer(timer.timer)->name << '\n';
        for (const auto& stand : timer.stands) {
            for (const auto& change : stand.meanwhile) {
                out << "  " << local_date(stand.at)
                    << "  found changed: " << in_english(words_of(change), units) << '\n';
            }
            for (const auto& change : stand.by_visit) {
                out << "  " << local_date(stand.at) << "  changed: " << in_english(words_of(change), units)
                    << '\n';
            }
        }
    }
}

Result<ExitStatus> run_history(const std::string& house_id, const Common& common) {
    WF_TRY(const auto id, parse_id(house_id, "id"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto house, store.house(id));
    WF_TRY(const auto visits, visit_files_of(store, id));
    WF_TRY(const auto all, trends_of(house, visits));
    const auto timers = settings_over_visits(house, visits);
    if (common.json) {
        print_json(common.out(), as_json(house, all, timers));
    } else {
        print_text(common.out(), house, all, common.units);
        print_settings(common.out(), house, timers, common.units);
    }
    return ExitStatus::done;
}

}  // namespace

void add_store_history(CLI::App& store, const Common& common, Work& chosen) {
    auto* command = store.add_subcommand(
        "history", "what was measured of a house over the years and what it points to, and what was set");
    const auto house = std::make_shared<std::string>();
    command->add_option("id", *house, "id of a house in the store")->required()->type_name("ID");
    command->footer(
        "Trend: Mann-Kendall at 5 %, Theil-Sen slope with 95 % limits; fewer than 5 visits are too few.\n"
        "Maintenance of the house splits a series: what lies after the last is judged.\n"
        "Example: wetfront-cli store history demo-alder --store records.db");
    command->callback(
        [&common, &chosen, house] { chosen = [&common, house] { return run_history(*house, common); }; });
}

}  // namespace wetfront
