// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <ostream>

#include "cli/json_output.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "store/house_visits.h"
#include "tables/csv.h"
#include "tables/visit_tables.h"

namespace wetfront {
namespace {

enum class WhichTable { readings, settings, findings };

struct TableOptions {
    WhichTable which = WhichTable::readings;
    std::string house;
};

JsonObject cell_json(const TableCell& cell) {
    return std::visit(
        [](const auto& value) {
            if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::monostate>) {
                return JsonObject(nullptr);
            } else {
                return JsonObject(value);
            }
        },
        cell);
}

JsonObject as_json(const Table& table) {
    JsonObject rows = JsonObject::array();
    for (const auto& row : table.rows) {
        JsonObject object = JsonObject::object();
        for (std::size_t i = 0; i < row.size(); ++i) {
            object[table.columns[i]] = cell_json(row[i]);
        }
        rows.push_back(std::move(object));
    }
    return {{"table", table.name}, {"rows", std::move(rows)}};
}

/// House by house in the order of the list, the earliest visit first.
Result<std::vector<VisitFile>> visits_in(const Store& store, const std::string& only) {
    std::vector<Id> houses;
    if (only.empty()) {
        WF_TRY(const auto all, store.houses());
        std::ranges::transform(all, std::back_inserter(houses), &HouseSummary::house);
    } else {
        WF_TRY(const auto id, parse_id(only, "id"));
        WF_CHECK(store.house(id));
        houses.push_back(id);
    }
    std::vector<VisitFile> visits;
    for (const auto& house : houses) {
        WF_TRY(auto files, visit_files_of(store, house));
        std::move(files.rbegin(), files.rend(), std::back_inserter(visits));
    }
    return visits;
}

Table table_of(WhichTable which, const std::vector<VisitFile>& visits, UnitSystem units) {
    switch (which) {
        case WhichTable::readings:
            return readings_table(visits);
        case WhichTable::settings:
            return settings_table(visits);
        case WhichTable::findings:
            break;
    }
    return findings_table(visits, units);
}

Result<ExitStatus> run_table(const TableOptions& options, const Common& common) {
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto visits, visits_in(store, options.house));
    const auto table = table_of(options.which, visits, common.units);
    if (common.json) {
        print_json(common.out(), as_json(table));
    } else {
        common.out() << csv_text(table);
    }
    return ExitStatus::done;
}

}  // namespace

void add_store_table(CLI::App& store, const Common& common, Work& chosen) {
    auto* command =
        store.add_subcommand("table", "readings, settings or findings of all visits as CSV, or with --json");
    const auto options = std::make_shared<TableOptions>();
    command->add_option("table", options->which, "readings, settings or findings")
        ->required()
        ->transform(one_of<WhichTable>({{"readings", WhichTable::readings},
                                        {"settings", WhichTable::settings},
                                        {"findings", WhichTable::findings}},
                                       "readings, settings or findings"))
        ->type_name("readings|settings|findings");
    command->add_option("house", options->house, "id of a house in the store; without it all houses")
        ->type_name("HOUSE");
    command->footer(
        "CSV as RFC 4180 has it, in UTF-8, times as ISO 8601, units in the headings. A text that a "
        "spreadsheet would\n"
        "take for a formula has an apostrophe in front.\n"
        "Example: wetfront-cli store table readings --store records.db > readings.csv");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_table(*options, common); }; });
}

}  // namespace wetfront
