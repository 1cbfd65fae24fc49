// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "store/backup.h"

namespace wetfront {
namespace {

void put_content(JsonObject& object, const RecordContent& content) {
    object["entries"] = content.entries;
    object["houses"] = content.houses;
    object["latest_entry"] = content.latest ? JsonObject(to_iso8601(*content.latest)) : JsonObject(nullptr);
}

void print_content(std::ostream& out, const RecordContent& content) {
    out << "  entries       " << content.entries << '\n'
        << "  houses        " << content.houses << '\n'
        << "  latest entry  "
        << (content.latest ? local_date(*content.latest) + " " + local_clock(*content.latest) : "none")
        << '\n';
}

Result<ExitStatus> run_backup(const std::string& folder, const Common& common) {
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto content, store.content());
    WF_TRY(const auto made,
           store.back_up(folder.empty() ? backup_folder_of(store.file()) : std::filesystem::path{folder}));
    if (common.json) {
        JsonObject object{{"backup", made.string()}};
        put_content(object, content);
        print_json(common.out(), object);
    } else {
        common.out() << "Copied to " << made.string() << " and read back.\n";
        print_content(common.out(), content);
    }
    return ExitStatus::done;
}

Result<ExitStatus> run_restore(const std::string& backup, const Common& common) {
    if (common.store.empty()) {
        return bad_input("--store", "", "name the record file that is to be replaced: --store FILE");
    }
    WF_TRY(const auto content, read_backup(backup));
    WF_TRY(const auto replaced, restore(backup, common.store, common.surroundings.clock));
    if (common.json) {
        JsonObject object{{"store", common.store}, {"backup", backup}};
        put_content(object, content);
        object["replaced"] = replaced ? JsonObject(replaced->string()) : JsonObject(nullptr);
        print_json(common.out(), object);
    } else {
        common.out() << common.store << " is now as it was in " << backup << ".\n";
        print_content(common.out(), content);
        common.out() << (replaced ? "The file that was there before is kept as " + replaced->string() + ".\n"
                                  : std::string{"There was no file of that name before.\n"});
    }
    return ExitStatus::done;
}

}  // namespace

void add_store_copies(CLI::App& store, const Common& common, Work& chosen) {
    const auto named = std::make_shared<std::string>();
    auto* backup = store.add_subcommand("backup", "copy the record file, and read the copy back");
    backup->add_option("--to", *named, "folder for the copy; default: backups, beside the record file")
        ->type_name("FOLDER");
    backup->footer(
        "The copy is named after the record file, the day and the clock; no file is ever written over.\n"
        "Example: wetfront-cli store backup --store records.wetfront --to /media/stick/copies");
    backup->callback(
        [&common, &chosen, named] { chosen = [&common, named] { return run_backup(*named, common); }; });
    auto* restored = store.add_subcommand("restore", "put a copy in the place of the record file");
    restored->add_option("backup", *named, "a copy that was made by backup, or by the program")
        ->required()
        ->type_name("BACKUP");
    restored->footer(
        "The copy is read through first, and stays. The record file that it replaces stays beside it, as\n"
        "FILE.replaced-DAY-CLOCK. What was entered since the copy was made is only there from then on.\n"
        "Example: wetfront-cli store restore backups/records-2026-07-01-0700.wetfront --store "
        "records.wetfront");
    restored->callback(
        [&common, &chosen, named] { chosen = [&common, named] { return run_restore(*named, common); }; });
}

}  // namespace wetfront
