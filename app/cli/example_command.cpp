// SPDX-License-Identifier: Apache-2.0
#include "cli/command.h"
#include "demo/demo.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

/// A command whose only work is to print a text.
void add_printer(CLI::App& parent, const char* name, const char* description, const char* example,
                 const Common& common, Work& chosen, std::string (*text)()) {
    auto* command = parent.add_subcommand(name, description);
    command->footer(std::string{"Example: wetfront-cli "} + example);
    command->callback([&common, &chosen, text] {
        chosen = [&common, text]() -> Result<ExitStatus> {
            common.out() << text();
            return ExitStatus::done;
        };
    });
}

}  // namespace

void add_example(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("example", "a full example, invented, to start from");
    command->require_subcommand(1);
    command->footer("Example: wetfront-cli example visit > visit.json");
    add_printer(*command, "visit", "a visit file", "example visit > visit.json", common, chosen,
                [] { return visit_file_text(example_visit()); });
}

void add_schema(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("schema", "JSON Schema (draft 2020-12) of what the program reads");
    command->require_subcommand(1);
    command->footer("Example: wetfront-cli schema visit > visit.schema.json");
    add_printer(*command, "visit", "schema of a visit file", "schema visit > visit.schema.json", common,
                chosen, visit_schema_text);
}

}  // namespace wetfront
