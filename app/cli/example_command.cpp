// SPDX-License-Identifier: Apache-2.0
#include "cli/command.h"
#include "day/weather_csv.h"
#include "demo/demo.h"
#include "records/record_text.h"
#include "store/bundle.h"

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

void add_example_template(CLI::App& parent, const Common& common, Work& chosen) {
    auto* command = parent.add_subcommand("template", "a plain setting template");
    const auto kind = std::make_shared<TimerKind>(TimerKind::trimmed);
    command->add_option("--kind", *kind, "trimmed (default), fixed interval or on demand")
        ->transform(one_of<TimerKind>({{"trimmed", TimerKind::trimmed},
                                       {"fixed interval", TimerKind::fixed_interval},
                                       {"on demand", TimerKind::on_demand}},
                                      "trimmed, 'fixed interval' or 'on demand'"))
        ->type_name("trimmed|fixed interval|on demand");
    command->footer("Example: wetfront-cli example template --kind 'fixed interval' > template.json");
    command->callback([&common, &chosen, kind] {
        chosen = [&common, kind]() -> Result<ExitStatus> {
            common.out() << template_file_text(generic_template(*kind));
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
    add_example_template(*command, common, chosen);
    add_printer(*command, "weather", "four days of hourly weather as comma-separated values, invented",
                "example weather > weather.csv", common, chosen,
                [] { return weather_csv_text(demo_weather(), "invented, of no place"); });
}

void add_schema(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("schema", "JSON Schema (draft 2020-12) of what the program reads");
    command->require_subcommand(1);
    command->footer("Example: wetfront-cli schema visit > visit.schema.json");
    add_printer(*command, "visit", "schema of a visit file", "schema visit > visit.schema.json", common,
                chosen, visit_schema_text);
    add_printer(*command, "bundle", "schema of a bundle", "schema bundle > bundle.schema.json", common,
                chosen, bundle_schema_text);
    add_printer(*command, "receipt", "schema of a bundle's receipt", "schema receipt > receipt.schema.json",
                common, chosen, receipt_schema_text);
    add_printer(*command, "template", "schema of a template file", "schema template > template.schema.json",
                common, chosen, template_schema_text);
}

}  // namespace wetfront
