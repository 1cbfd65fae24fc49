// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/visit_source.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

struct HouseWithVisits {
    HouseSummary house;
    std::vector<VisitSummary> visits;
};

JsonObject as_json(const std::vector<HouseWithVisits>& houses) {
    JsonObject list = JsonObject::array();
    for (const auto& [house, visits] : houses) {
        JsonObject visit_list = JsonObject::array();
        for (const auto& visit : visits) {
            visit_list.push_back({{"visit", visit.visit.text},
                                  {"started", to_iso8601(visit.started)},
                                  {"signed", visit.is_signed},
                                  {"revisions", visit.revisions},
                                  {"marks", visit.marks}});
        }
        list.push_back({{"house", house.house.text},
                        {"house_name", house.house_name},
                        {"farm", house.farm.text},
                        {"farm_name", house.farm_name},
                        {"visits", std::move(visit_list)}});
    }
    return {{"houses", std::move(list)}};
}

void print_text(std::ostream& out, const std::vector<HouseWithVisits>& houses) {
    for (const auto& [house, visits] : houses) {
        out << house.house_name << ", " << house.farm_name << " (" << house.house.text << ")\n";
        for (const auto& visit : visits) {
            out << "  " << local_date(visit.started) << "  " << (visit.is_signed ? "signed" : "open  ")
                << "  " << visit.marks << " marks  " << visit.visit.text << '\n';
        }
        if (visits.empty()) {
            out << "  no visit yet\n";
        }
    }
    if (houses.empty()) {
        out << "The store holds no house.\n";
    }
}

Result<ExitStatus> run_list(const Common& common) {
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto summaries, store.houses());
    std::vector<HouseWithVisits> houses;
    for (const auto& house : summaries) {
        WF_TRY(auto visits, store.visits_of(house.house));
        houses.push_back({house, std::move(visits)});
    }
    if (common.json) {
        print_json(common.out(), as_json(houses));
    } else {
        print_text(common.out(), houses);
    }
    return ExitStatus::done;
}

void print_timing(std::ostream& out, const char* name, const std::optional<TimingResult>& timing,
                  UnitSystem units) {
    out << "    " << name
        << (timing ? show_text(timing->mean, units) + " ± " + show_text(timing->expanded, units) +
                         (timing->count == 1 ? " (1 reading)"
                                             : " (" + std::to_string(timing->count) + " readings)")
                   : std::string{"not measured"})
        << '\n';
}

void print_visit(std::ostream& out, const VisitFile& file, UnitSystem units) {
    out << headline(file) << (file.visit.is_signed() ? ", signed\n" : ", not signed\n");
    for (const auto& bank : timings_of(file).banks) {
        const auto* described = file.house.bank(bank.bank);
        out << "  " << (described != nullptr && !described->name.empty() ? described->name : bank.bank.text)
            << '\n';
        print_timing(out, "fill         ", bank.fill, units);
        print_timing(out, "wet-through  ", bank.wet_through, units);
        print_timing(out, "run-off      ", bank.run_off, units);
        print_timing(out, "dry-out      ", bank.dry_out, units);
    }
    for (const auto& point : file.visit.open_points) {
        out << "  open: " << point << '\n';
    }
}

Result<ExitStatus> run_show(const std::string& visit, const Common& common) {
    WF_TRY(const auto id, parse_id(visit, "id"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto file, store.visit_file(id));
    if (common.json) {
        common.out() << visit_file_text(file);
    } else {
        print_visit(common.out(), file, common.units);
    }
    return ExitStatus::done;
}

}  // namespace

void add_store(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("store", "what a record file holds, and its copies");
    command->require_subcommand(1);
    command->footer("Example: wetfront-cli store list --store records.db");
    auto* list = command->add_subcommand("list", "houses and their visits");
    list->footer("Example: wetfront-cli store list --store records.db");
    list->callback([&common, &chosen] { chosen = [&common] { return run_list(common); }; });
    auto* show = command->add_subcommand("show", "one visit; with --json the whole visit file");
    const auto visit = std::make_shared<std::string>();
    show->add_option("id", *visit, "id of a visit in the store")->required()->type_name("ID");
    show->footer("Example: wetfront-cli store show 2026-07-07-alder --store records.db --json > visit.json");
    show->callback(
        [&common, &chosen, visit] { chosen = [&common, visit] { return run_show(*visit, common); }; });
    add_store_copies(*command, common, chosen);
}

}  // namespace wetfront
