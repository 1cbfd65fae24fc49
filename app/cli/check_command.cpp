// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <ostream>

#include "cli/findings_output.h"
#include "cli/visit_source.h"
#include "rules/rules.h"

namespace wetfront {
namespace {

struct CheckOptions {
    std::string visit;
    WhichSettings which = WhichSettings::found;
    Severity fail_on = Severity::harm;
};

const char* name_of(WhichSettings which) {
    return which == WhichSettings::found ? "found" : "left";
}

void print_text(const std::vector<Finding>& findings, const LoadedVisit& visit, const CheckOptions& options,
                bool entered, const Common& common) {
    auto& out = common.out();
    out << headline(visit.file) << ": settings " << name_of(options.which) << '\n';
    if (!entered) {
        out << "No settings " << name_of(options.which) << " were entered: only the readings were checked.\n";
    }
    print_findings(out, findings, visit.file.house, common.units);
    if (findings.empty()) {
        out << "Nothing found.\n";
    }
}

Result<ExitStatus> run_check(const CheckOptions& options, const Common& common) {
    WF_TRY(const auto visit, load_visit(options.visit, common));
    const auto findings = check(visit.file, timings_of(visit.file), advise(visit.file), options.which);
    const auto& settings =
        options.which == WhichSettings::found ? visit.file.visit.found : visit.file.visit.left;
    if (common.json) {
        print_json(common.out(), {{"visit", visit.file.visit.id.text},
                                  {"settings", name_of(options.which)},
                                  {"settings_entered", !settings.empty()},
                                  {"findings", findings_json(findings, visit.file.house, common.units)}});
    } else {
        print_text(findings, visit, options, !settings.empty(), common);
    }
    const bool failed = std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.severity >= options.fail_on;
    });
    return failed ? ExitStatus::found : ExitStatus::done;
}

}  // namespace

void add_check(CLI::App& app, const Common& common, Work& chosen) {
    auto* command =
        app.add_subcommand("check", "what is unsafe, faulty or wasteful in settings, and what to do");
    const auto options = std::make_shared<CheckOptions>();
    command->add_option("visit", options->visit, "a file, - or an id in the store")
        ->required()
        ->type_name("VISIT");
    command->add_option("--settings", options->which, "found (default) or left")
        ->transform(one_of<WhichSettings>({{"found", WhichSettings::found}, {"left", WhichSettings::left}},
                                          "found or left"))
        ->type_name("found|left");
    command->add_option("--fail-on", options->fail_on, "exit status 1 from this severity up (default harm)")
        ->transform(one_of<Severity>({{"harm", Severity::harm},
                                      {"fault", Severity::fault},
                                      {"waste", Severity::waste},
                                      {"note", Severity::note}},
                                     "harm, fault, waste or note"))
        ->type_name("harm|fault|waste|note");
    command->footer("Example: wetfront-cli check visit.json --settings left --fail-on fault");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_check(*options, common); }; });
}

}  // namespace wetfront
