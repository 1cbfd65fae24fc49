// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "base/whole_file.h"
#include "cli/json_output.h"
#include "cli/store_parts.h"
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

JsonObject as_json(const std::vector<RemovedRecord>& records) {
    JsonObject list = JsonObject::array();
    for (const auto& record : records) {
        JsonObject line = {{"kind", enum_name(record.kind)},
                           {"id", record.id.text},
                           {"name", record.name},
                           {"removed_at", to_iso8601(record.removed_at)}};
        if (record.started) {
            line["started"] = to_iso8601(*record.started);
        }
        list.push_back(std::move(line));
    }
    return {{"removed", std::move(list)}};
}

Result<ExitStatus> run_list_removed(const Common& common) {
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto records, store.removed());
    if (common.json) {
        print_json(common.out(), as_json(records));
        return ExitStatus::done;
    }
    for (const auto& record : records) {
        common.out() << enum_name(record.kind) << "  " << record.name
                     << (record.started ? ", " + local_date(*record.started) : std::string{}) << " ("
                     << record.id.text << "), removed " << local_date(record.removed_at) << '\n';
    }
    if (records.empty()) {
        common.out() << "Nothing was removed.\n";
    }
    return ExitStatus::done;
}

Result<ExitStatus> run_sheet_kept(const std::string& visit, const std::string& file, const Common& common) {
    WF_TRY(const auto id, parse_id(visit, "id"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto sheet, store.signed_sheet(id));
    if (!sheet) {
        return bad_input("visit", id.text, "no sheet was kept of it; a sheet is kept when a visit is signed");
    }
    WF_CHECK(write_whole(file, sheet->pdf));
    if (common.json) {
        print_json(common.out(), {{"file", file},
                                  {"visit", id.text},
                                  {"bytes", sheet->pdf.size()},
                                  {"sha256", sheet->sha256},
                                  {"kept_at", to_iso8601(sheet->kept_at)}});
    } else {
        common.out() << file << "\nsha256 " << sheet->sha256 << '\n';
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
    const auto removed = std::make_shared<bool>(false);
    list->add_flag("--removed", *removed, "what was removed and can be brought back, latest first");
    list->callback([&common, &chosen, removed] {
        chosen = [&common, removed] { return *removed ? run_list_removed(common) : run_list(common); };
    });
    auto* show = command->add_subcommand("show", "one visit; with --json the whole visit file");
    const auto visit = std::make_shared<std::string>();
    show->add_option("id", *visit, "id of a visit in the store")->required()->type_name("ID");
    show->footer("Example: wetfront-cli store show 2026-07-07-alder --store records.db --json > visit.json");
    show->callback(
        [&common, &chosen, visit] { chosen = [&common, visit] { return run_show(*visit, common); }; });
    auto* sheet =
        command->add_subcommand("sheet", "the sheet of a signed visit, byte for byte as handed out");
    const auto file = std::make_shared<std::string>();
    const auto of_visit = std::make_shared<std::string>();
    sheet->add_option("id", *of_visit, "id of a visit in the store")->required()->type_name("ID");
    sheet->add_option("-o,--output", *file, "the PDF to write; replaced only when the new one is whole")
        ->required()
        ->type_name("F.pdf");
    sheet->footer("Example: wetfront-cli store sheet 2026-07-07-alder --store records.db -o sheet.pdf");
    sheet->callback([&common, &chosen, of_visit, file] {
        chosen = [&common, of_visit, file] { return run_sheet_kept(*of_visit, *file, common); };
    });
    add_store_history(*command, common, chosen);
    add_store_photos(*command, common, chosen);
    add_store_sheets(*command, common, chosen);
    add_store_table(*command, common, chosen);
    add_store_verify(*command, common, chosen);
    add_store_copies(*command, common, chosen);
}

}  // namespace wetfront
