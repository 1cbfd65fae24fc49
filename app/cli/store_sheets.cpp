// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <ostream>
#include <system_error>

#include "base/whole_file.h"
#include "batch/sheet_choice.h"
#include "batch/sheet_reader.h"
#include "cli/interruption.h"
#include "cli/json_output.h"
#include "cli/sheet_form.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "sheet/sheet_file_name.h"

namespace wetfront {
namespace {

struct SheetsOptions {
    std::string folder;
    std::vector<std::string> houses;
    std::vector<std::string> farms;
    std::string from;
    std::string until;
    SheetVisits visits = SheetVisits::every_signed;
    SheetForm form;
};

/// What became of one visit.
struct Made {
    std::string file;
    bool kept = false;
    bool draft = false;
};

/// What became of all of them.
struct Outcome {
    std::size_t chosen = 0;
    JsonObject sheets = JsonObject::array();
    JsonObject failed = JsonObject::array();
    bool stopped = false;
    ExitStatus status = ExitStatus::done;  ///< of the failures: the worst
};

Result<SheetChoice> choice_of(const SheetsOptions& options) {
    SheetChoice choice{options.visits};
    if (!options.from.empty()) {
        WF_TRY(choice.from, parse_day(options.from, "--from"));
    }
    if (!options.until.empty()) {
        WF_TRY(choice.until, parse_day(options.until, "--until"));
    }
    return choice;
}

Result<std::vector<Id>> all_visits(const Store& store, const SheetsOptions& options, Interruption& stop) {
    WF_TRY(const auto choice, choice_of(options));
    WF_TRY(const auto named, ids_of(options.houses, "--house"));
    WF_TRY(const auto farms, ids_of(options.farms, "--farm"));
    WF_TRY(const auto houses, houses_chosen(store, named, farms));
    std::vector<Id> all;
    for (const auto& house : houses) {
        if (stop.asked()) {
            break;
        }
        WF_TRY(const auto visits, visits_chosen(store, house, choice));
        all.insert(all.end(), visits.begin(), visits.end());
    }
    return all;
}

Result<void> make_folder(const std::string& folder) {
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed || !std::filesystem::is_directory(folder, failed)) {
        return storage_error(folder, "this folder cannot be made",
                             "no file was written; name another folder with --to");
    }
    return boost::outcome_v2::success();
}

Result<SheetSource> read_all(SheetReader& reader, const Id& visit) {
    reader.begin(visit);
    for (;;) {
        WF_TRY(auto source, reader.read_on());
        if (source) {
            return std::move(*source);
        }
    }
}

struct Sheet {
    Made made;
    std::string bytes;
};

Result<Sheet> sheet_of_visit(SheetReader& reader, const Id& visit, const SheetsOptions& options,
                             const Common& common) {
    WF_TRY(auto source, read_all(reader, visit));
    Sheet sheet{{sheet_file_name(source.file, options.form.kind()), source.kept.has_value(),
                 !source.file.visit.is_signed()},
                {}};
    if (source.kept) {
        sheet.bytes = std::move(*source.kept);
        return sheet;
    }
    const auto content = sheet_content(source, options.form.kind(), common.surroundings.clock.wall_now());
    WF_TRY(sheet.bytes, common.surroundings.print_sheet(options.form.order(content, common)));
    return sheet;
}

void tell_failed(Outcome& outcome, const Id& visit, const Error& error, const Common& common) {
    common.surroundings.err << "wetfront-cli: visit " << visit.text << ": " << error.text() << '\n';
    outcome.failed.push_back({{"visit", visit.text}, {"why", error.text()}});
    const bool storage = error.kind == Error::Kind::storage;
    outcome.status = std::max(outcome.status, storage ? ExitStatus::storage_failed : ExitStatus::bad_input);
}

/// One visit after the other; a sheet that cannot be made is told, a folder that takes no file is an error.
Result<void> make_sheets(const Store& store, const std::vector<Id>& visits, const SheetsOptions& options,
                         const Common& common, Interruption& stop, Outcome& outcome) {
    SheetReader reader{store, options.form.kind()};
    std::size_t at = 0;
    for (const auto& visit : visits) {
        if (stop.asked()) {
            break;
        }
        ++at;
        auto sheet = sheet_of_visit(reader, visit, options, common);
        if (!sheet) {
            tell_failed(outcome, visit, sheet.error(), common);
            continue;
        }
        const auto& [made, bytes] = sheet.value();
        const auto path = std::filesystem::path{options.folder} / made.file;
        if (const auto failed = keep_file(path, bytes)) {
            if (failed->fault != FileFault::other) {
                return not_kept(path, *failed);  // the next one would fare no better
            }
            tell_failed(outcome, visit, not_kept(path, *failed), common);
            continue;
        }
        outcome.sheets.push_back(
            {{"visit", visit.text}, {"file", made.file}, {"kept", made.kept}, {"draft", made.draft}});
        if (!common.json) {
            common.surroundings.err << at << " of " << visits.size() << "  " << made.file << std::endl;
        }
    }
    return boost::outcome_v2::success();
}

void print_outcome(const Outcome& outcome, const SheetsOptions& options, const Common& common) {
    if (common.json) {
        print_json(common.out(), {{"folder", options.folder},
                                  {"chosen", outcome.chosen},
                                  {"written", outcome.sheets.size()},
                                  {"stopped", outcome.stopped},
                                  {"sheets", outcome.sheets},
                                  {"failed", outcome.failed}});
        return;
    }
    auto& out = common.out();
    if (outcome.chosen == 0 && !outcome.stopped) {
        out << "No visit is of that choice.\n";
        return;
    }
    out << (outcome.stopped ? "Stopped. " : "") << "Written to " << options.folder << ": "
        << outcome.sheets.size() << " of " << outcome.chosen << ".\n";
}

Result<ExitStatus> run_sheets(const SheetsOptions& options, const Common& common) {
    WF_CHECK(check_printer("sheets", common));
    WF_TRY(const auto store, open_store(common));
    Interruption stop;
    WF_TRY(const auto visits, all_visits(store, options, stop));
    Outcome outcome;
    outcome.chosen = visits.size();
    if (!visits.empty()) {
        WF_CHECK(make_folder(options.folder));
    }
    const auto made = make_sheets(store, visits, options, common, stop, outcome);
    outcome.stopped = stop.asked();
    if (!made) {
        // What was written before stands, and is worth telling.
        common.surroundings.err << outcome.sheets.size() << " of " << outcome.chosen << " were written.\n";
        return made.error();
    }
    print_outcome(outcome, options, common);
    return outcome.stopped ? ExitStatus::stopped : outcome.status;
}

}  // namespace

void add_store_sheets(CLI::App& store, const Common& common, Work& chosen) {
    auto* command = store.add_subcommand("sheets", "the sheets of many visits, one PDF each, into a folder");
    const auto options = std::make_shared<SheetsOptions>();
    command->add_option("--to", options->folder, "folder for the PDFs; made if it is not there")
        ->required()
        ->type_name("FOLDER");
    command->add_option("--house", options->houses, "id of a house; may be given again")->type_name("ID");
    command->add_option("--farm", options->farms, "id of a farm, for all its houses; may be given again")
        ->type_name("ID");
    command->add_option("--from", options->from, "first day of the visits, as 2026-01-01")->type_name("DAY");
    command->add_option("--until", options->until, "last day of the visits")->type_name("DAY");
    command
        ->add_option("--visits", options->visits,
                     "signed (default): every signed visit; last: the last one of each house, signed or not")
        ->transform(one_of<SheetVisits>({{"signed", SheetVisits::every_signed}, {"last", SheetVisits::last}},
                                        "signed or last"))
        ->type_name("signed|last");
    add_sheet_form(*command, options->form);
    command->footer(
        "Without --house and --farm: all houses. A visit that a correction replaces is left out. A sheet "
        "that "
        "was\n"
        "kept at the signing is written byte for byte, whatever the paper, language and units; all others "
        "are\n"
        "drawn. Each file is read back before it gets its name: farm, house, day and id of the visit. A "
        "visit\n"
        "that cannot be drawn is told and the rest goes on. Ctrl-C stops after the file at hand, status "
        "130.\n"
        "To print all as one job: lp -d PRINTER FOLDER/*.pdf\n"
        "Example: wetfront-cli store sheets --store records.db --farm demo-farm --from 2026-01-01 --to "
        "sheets");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_sheets(*options, common); };
    });
}

}  // namespace wetfront
