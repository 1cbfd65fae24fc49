// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/visit_source.h"
#include "store/bundle.h"

namespace wetfront {
namespace {

/// What the options of `bundle export` say.
struct ExportOptions {
    std::vector<std::string> farms;
    std::vector<std::string> houses;
    std::vector<std::string> templates;
    std::string new_for;
    bool sheets = false;
    std::string file;
};

Result<BundleChoice> choice_of(const ExportOptions& options) {
    BundleChoice choice;
    WF_TRY(choice.farms, ids_of(options.farms, "--farm"));
    WF_TRY(choice.houses, ids_of(options.houses, "--house"));
    WF_TRY(choice.templates, ids_of(options.templates, "--template"));
    const bool named = !choice.farms.empty() || !choice.houses.empty() || !choice.templates.empty();
    if (named == !options.new_for.empty()) {
        return bad_input("bundle export", "",
                         "say what it is to hold: --new-for DEVICE, or any of --farm, --house, --template");
    }
    if (!named) {
        WF_TRY(choice.new_for, parse_id(options.new_for, "--new-for"));
    }
    choice.sheets = options.sheets;
    return choice;
}

Result<ExitStatus> run_export(const ExportOptions& options, const Common& common) {
    WF_TRY(const auto choice, choice_of(options));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto made, store.write_bundle(choice, options.file));
    const bool any = made.entries > 0;
    if (common.json) {
        print_json(common.out(), {{"file", any ? JsonObject(made.file.string()) : JsonObject(nullptr)},
                                  {"sha256", any ? JsonObject(made.sha256) : JsonObject(nullptr)},
                                  {"from", store.device().text},
                                  {"entries", made.entries},
                                  {"kept_aside", made.kept_aside}});
    } else if (any) {
        common.out() << made.file.string() << ", read back: " << made.entries << " entries\nsha256 "
                     << made.sha256 << '\n';
        if (made.kept_aside > 0) {
            common.out() << made.kept_aside << " of them this version cannot read; passed on as they came\n";
        }
        common.out() << "Delivered is only what a receipt of the other machine acknowledges.\n";
    } else {
        common.out() << "Nothing is new for that device; no file was written.\n";
    }
    return ExitStatus::done;
}

JsonObject as_json(const std::vector<KeptAside>& all) {
    JsonObject list = JsonObject::array();
    for (const auto& each : all) {
        list.push_back({{"device", each.entry.device.text},
                        {"entry", each.entry.number},
                        {"kind", each.kind},
                        {"why", each.why}});
    }
    return list;
}

JsonObject as_json(const std::vector<SplitRecord>& all) {
    JsonObject list = JsonObject::array();
    for (const auto& record : all) {
        JsonObject states = JsonObject::array();
        for (const auto& state : record.states) {
            states.push_back({{"revision", state.revision},
                              {"device", state.entry.device.text},
                              {"entry", state.entry.number},
                              {"entered_at", to_iso8601(state.entered_at)},
                              {"signed", state.is_signed}});
        }
        JsonObject differences = JsonObject::array();
        for (const auto& change : record.differences) {
            differences.push_back(
                {{"field", change.pointer}, {"first", change.before}, {"second", change.after}});
        }
        list.push_back({{"kind", enum_name(record.kind)},
                        {"id", record.record.text},
                        {"name", record.name},
                        {"states", std::move(states)},
                        {"differences", std::move(differences)}});
    }
    return list;
}

void print_split(std::ostream& out, const std::vector<SplitRecord>& all) {
    for (const auto& record : all) {
        out << enum_name(record.kind) << ' ' << printable(record.name, 200) << " (" << record.record.text
            << ") was changed on two devices that did not know of each other:\n";
        for (const auto& state : record.states) {
            out << (&state == &record.states.front() ? "  shown  " : "  kept   ") << state.revision << "  "
                << local_date(state.entered_at) << ' ' << local_clock(state.entered_at) << ", device "
                << state.entry.device.text << (state.is_signed ? ", signed\n" : "\n");
        }
        for (const auto& change : record.differences) {
            out << "  " << printable(change.pointer, 200) << ": "
                << (change.before.empty() ? "nothing" : printable(change.before, 200)) << " | "
                << (change.after.empty() ? "nothing" : printable(change.after, 200)) << '\n';
        }
    }
}

JsonObject as_json(const BundleReport& report) {
    return {{"sha256", report.sha256},
            {"from", report.from.text},
            {"made", to_iso8601(report.made)},
            {"entries", report.entries},
            {"added", report.added},
            {"there", report.there},
            {"kept_aside", as_json(report.aside)},
            {"taken_in_later", report.taken_in_later},
            {"new",
             {{"farms", report.farms},
              {"houses", report.houses},
              {"visits", report.visits},
              {"templates", report.templates},
              {"marks", report.marks}}},
            {"split", as_json(report.split)}};
}

void print_report(std::ostream& out, const BundleReport& report) {
    out << report.entries << " entries, made " << local_date(report.made) << ' ' << local_clock(report.made)
        << " by device " << report.from.text << '\n'
        << "  new            " << report.added << " (farms " << report.farms << ", houses " << report.houses
        << ", visits " << report.visits << ", templates " << report.templates << ", marks " << report.marks
        << ")\n"
        << "  there already  " << report.there << '\n'
        << "  kept aside     " << report.aside.size() << '\n';
    if (report.taken_in_later > 0) {
        out << report.taken_in_later << " entries kept aside earlier fit now\n";
    }
    for (const auto& each : report.aside) {
        out << "  aside: " << printable(each.kind, 40) << ", entry " << each.entry.number << " of device "
            << each.entry.device.text << ": " << printable(each.why, 200) << '\n';
    }
    print_split(out, report.split);
    if (!report.split.empty()) {
        out << "All states are kept. Choose one: wetfront-cli bundle choose REVISION\n";
    }
}

Result<Store> open_to_write(const Common& common) {
    WF_CHECK(check_store_named(common));
    return Store::open(common.store, common.surroundings.clock);
}

Result<ExitStatus> run_preview(const std::string& file, const Common& common) {
    WF_TRY(auto store, open_to_write(common));
    WF_TRY(const auto text, read_bundle_file(file));
    WF_TRY(const auto report, store.preview_bundle(text));
    if (common.json) {
        print_json(common.out(), as_json(report));
    } else {
        print_report(common.out(), report);
        common.out() << "Nothing was changed.\n";
    }
    return report.aside.empty() && report.split.empty() ? ExitStatus::done : ExitStatus::found;
}

Result<ExitStatus> run_import(const std::string& file, const std::string& receipt, const Common& common) {
    if (common.store.empty()) {
        return bad_input("--store", "", "name the record file: --store FILE; it is made if it is not there");
    }
    WF_TRY(const auto text, read_bundle_file(file));
    WF_TRY(auto store, Store::open(common.store, common.surroundings.clock));
    WF_TRY(const auto report, store.take_in(text));
    const auto written = receipt.empty() ? file + ".receipt" : receipt;
    if (const auto done = store.write_receipt(text, written); !done) {
        auto error = done.error();
        error.accepted =
            "the bundle is in the record file; for a receipt import it again with --receipt elsewhere";
        return error;
    }
    if (common.json) {
        auto object = as_json(report);
        object["receipt"] = written;
        object["receiver"] = store.device().text;
        print_json(common.out(), object);
    } else {
        print_report(common.out(), report);
        common.out() << "Receipt for the sender: " << written << '\n';
    }
    return ExitStatus::done;
}

Result<ExitStatus> run_receipt(const std::string& file, const Common& common) {
    WF_TRY(auto store, open_to_write(common));
    WF_TRY(const auto text, read_bundle_file(file));
    WF_TRY(const auto read, store.read_receipt(text));
    if (common.json) {
        print_json(
            common.out(),
            {{"receiver", read.receiver.text}, {"entries", read.entries}, {"newly_delivered", read.marked}});
    } else {
        common.out() << "Device " << read.receiver.text << " has " << read.entries << " entries, "
                     << read.marked
                     << " of them newly delivered.\nWhat is new for it: wetfront-cli bundle export --new-for "
                     << read.receiver.text << '\n';
    }
    return ExitStatus::done;
}

Result<ExitStatus> run_split(const Common& common) {
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto split, store.split_records());
    WF_TRY(const auto aside, store.kept_aside());
    if (common.json) {
        print_json(common.out(), {{"split", as_json(split)}, {"kept_aside", as_json(aside)}});
    } else {
        print_split(common.out(), split);
        for (const auto& each : aside) {
            common.out() << "aside: " << printable(each.kind, 40) << ", entry " << each.entry.number
                         << " of device " << each.entry.device.text << ": " << printable(each.why, 200)
                         << '\n';
        }
        if (split.empty() && aside.empty()) {
            common.out() << "Every record has one state, and nothing is kept aside.\n";
        }
    }
    return split.empty() && aside.empty() ? ExitStatus::done : ExitStatus::found;
}

Result<ExitStatus> run_choose(const std::string& revision, const Common& common) {
    WF_TRY(const auto id, parse_id(revision, "revision"));
    WF_TRY(auto store, open_to_write(common));
    WF_CHECK(store.choose_state(id.text));
    if (common.json) {
        print_json(common.out(), {{"chosen", id.text}});
    } else {
        common.out() << "The record has one state again; the others stay in its history.\n";
    }
    return ExitStatus::done;
}

/// A command about one file or revision.
template <class Run>
CLI::App* add_part(CLI::App& parent, const char* name, const char* description, const char* type,
                   const char* of_what, const Common& common, Work& chosen, Run run) {
    auto* command = parent.add_subcommand(name, description);
    const auto named = std::make_shared<std::string>();
    command->add_option("name", *named, of_what)->required()->type_name(type);
    command->callback(
        [&common, &chosen, named, run] { chosen = [&common, named, run] { return run(*named, common); }; });
    return command;
}

void add_export(CLI::App& bundle, const Common& common, Work& chosen) {
    auto* command = bundle.add_subcommand("export", "write a bundle for another machine");
    const auto options = std::make_shared<ExportOptions>();
    command->add_option("--farm", options->farms, "a farm with all of its houses")->type_name("ID");
    command->add_option("--house", options->houses, "a house with its farm and its visits")->type_name("ID");
    command->add_option("--template", options->templates, "a setting template")->type_name("ID");
    command
        ->add_option("--new-for", options->new_for,
                     "all that this device neither wrote nor acknowledged by a receipt")
        ->type_name("DEVICE");
    command->add_flag("--with-sheets", options->sheets, "the sheets of signed visits too");
    command->add_option("-o,--output", options->file, "the file to write; none is written over")
        ->required()
        ->type_name("FILE");
    command->footer(
        "The file is read back from the medium before it gets its name.\n"
        "Example: wetfront-cli bundle export --house demo-alder --store records.wetfront -o alder.bundle");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_export(*options, common); };
    });
}

void add_import(CLI::App& bundle, const Common& common, Work& chosen) {
    auto* command =
        bundle.add_subcommand("import", "take a bundle in, all or nothing, and write its receipt");
    const auto file = std::make_shared<std::string>();
    const auto receipt = std::make_shared<std::string>();
    command->add_option("file", *file, "a bundle")->required()->type_name("FILE");
    command->add_option("--receipt", *receipt, "the receipt to write; default: FILE.receipt")
        ->type_name("FILE");
    command->footer(
        "The same bundle again adds nothing. A record file that is not there is made.\n"
        "Example: wetfront-cli bundle import alder.bundle --store office.wetfront");
    command->callback([&common, &chosen, file, receipt] {
        chosen = [&common, file, receipt] { return run_import(*file, *receipt, common); };
    });
}

}  // namespace

void add_bundle(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("bundle", "bring records from one machine to another");
    command->require_subcommand(1);
    command->footer("Example: wetfront-cli bundle preview alder.bundle --store office.wetfront");
    add_export(*command, common, chosen);
    add_part(*command, "preview", "what import would do, without doing it", "FILE", "a bundle", common,
             chosen, run_preview)
        ->footer(
            "Exit status: 1 if something would be kept aside or a record would have two states.\n"
            "Example: wetfront-cli bundle preview alder.bundle --store office.wetfront");
    add_import(*command, common, chosen);
    add_part(*command, "receipt", "note what a receipt acknowledges as delivered", "FILE",
             "a receipt that import wrote on the other machine", common, chosen, run_receipt)
        ->footer("Example: wetfront-cli bundle receipt alder.bundle.receipt --store records.wetfront");
    auto* split = command->add_subcommand(
        "split", "records that were changed on two devices at once, and entries kept aside");
    split->footer(
        "Exit status: 1 if there is any.\nExample: wetfront-cli bundle split --store office.wetfront");
    split->callback([&common, &chosen] { chosen = [&common] { return run_split(common); }; });
    add_part(*command, "choose", "make one of several states of a record its only one", "REVISION",
             "as preview, import and split print it", common, chosen, run_choose)
        ->footer(
            "Example: wetfront-cli bundle choose 0197c3d2-8a10-7cc1-9f3e-0a1b2c3d4e5f --store "
            "office.wetfront");
}

}  // namespace wetfront
