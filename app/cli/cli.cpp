// SPDX-License-Identifier: Apache-2.0
#include "cli/cli.h"

#include <algorithm>
#include <exception>

#include "cli/command.h"

namespace wetfront {
namespace {

ExitStatus complain(std::ostream& err, const Error& error) {
    err << "wetfront-cli: " << error.text() << '\n';
    return error.kind == Error::Kind::storage ? ExitStatus::storage_failed : ExitStatus::bad_input;
}

// The parser's own sentences, on one line; it would rather miss a command than name the word that is none.
Error usage_error(const CLI::App& app, const CLI::ParseError& error) {
    const auto not_understood = app.remaining(true);
    if (!not_understood.empty()) {
        return bad_input("usage", not_understood.front(), "not understood; see wetfront-cli --help");
    }
    std::string text = error.what();
    std::replace(text.begin(), text.end(), '\n', ' ');
    return {Error::Kind::bad_input, "usage", "", printable(text, 300) + "; see wetfront-cli --help"};
}

void describe(CLI::App& app, Common& common) {
    app.name("wetfront-cli");
    app.description(
        "Works out and checks the water timing of evaporative cooling pads.\n"
        "Quantities are written with their unit: 45s, 95degF, 40%, 6in, 237L/min, 90gpm.");
    app.footer(
        "VISIT is a file, - for standard input, or the id of a visit in the store.\n"
        "Exit status: 0 done, 1 the check found something, 2 bad input or usage, 3 the store or a file "
        "failed,\n130 stopped by Ctrl-C.\n"
        "Example: wetfront-cli example visit > visit.json && wetfront-cli advise visit.json");
    app.add_option("--units", common.units, "units of the text: us (default) or si")
        ->transform(one_of<UnitSystem>({{"us", UnitSystem::us}, {"si", UnitSystem::si}}, "us or si"))
        ->type_name("us|si");
    app.add_flag("--json", common.json,
                 "print one JSON object instead of text; number keys end in their SI unit");
    app.add_option("--store", common.store, "the record file in which ids are looked up")->type_name("FILE");
    app.require_subcommand(1);
    app.fallthrough();
    app.get_formatter()->column_width(34);
}

ExitStatus run(const std::vector<std::string>& arguments, const CliSurroundings& surroundings) {
    Common common{surroundings, UnitSystem::us, false, {}};
    Work chosen;
    CLI::App app;
    describe(app, common);
    add_air(app, common, chosen);
    add_pad(app, common, chosen);
    add_header(app, common, chosen);
    add_water(app, common, chosen);
    add_timing(app, common, chosen);
    add_cycle(app, common, chosen);
    add_advise(app, common, chosen);
    add_check(app, common, chosen);
    add_simulate(app, common, chosen);
    add_sheet(app, common, chosen);
    add_example(app, common, chosen);
    add_schema(app, common, chosen);
    add_store(app, common, chosen);
    add_bundle(app, common, chosen);
    try {
        // The parser takes its arguments last first.
        app.parse(std::vector<std::string>{arguments.rbegin(), arguments.rend()});
    } catch (const CLI::Success&) {
        const CLI::App* asked = &app;
        while (!asked->get_subcommands().empty()) {
            asked = asked->get_subcommands().front();
        }
        surroundings.out << asked->help(asked == &app ? "" : "wetfront-cli") << '\n';
        return ExitStatus::done;
    } catch (const CLI::ParseError& error) {
        return complain(surroundings.err, usage_error(app, error));
    }
    const auto status = chosen();
    if (!status) {
        return complain(surroundings.err, status.error());
    }
    surroundings.out.flush();
    if (!surroundings.out) {
        return complain(surroundings.err, storage_error("output", "cannot be written", "is the disk full?"));
    }
    return status.value();
}

}  // namespace

ExitStatus run_cli(const std::vector<std::string>& arguments, const CliSurroundings& surroundings) {
    try {
        return run(arguments, surroundings);
    } catch (const std::exception& problem) {
        return complain(surroundings.err,
                        storage_error("this command", problem.what(), "nothing was written"));
    }
}

}  // namespace wetfront
