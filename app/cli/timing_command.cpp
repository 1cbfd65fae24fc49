// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "base/numbers.h"
#include "cli/command.h"
#include "cli/json_output.h"
#include "cli/quantity_lists.h"
#include "timing/uncertainty.h"

namespace wetfront {
namespace {

struct TimingOptions {
    std::string readings;
    std::optional<std::string> u_event;
};

void print_text(const TimingResult& result, const Common& common) {
    auto& out = common.out();
    const auto shown = [&](Duration time) { return show_text(time, common.units); };
    out << "mean                  " << shown(result.mean) << " ± " << shown(result.expanded) << " (95 %)\n";
    out << "readings              " << result.count << '\n';
    out << "standard deviation    "
        << (result.standard_deviation ? shown(*result.standard_deviation) : "one reading has none") << '\n';
    out << "standard uncertainty  " << print_fixed(in_seconds(result.standard), 2) << " s\n";
    out << "degrees of freedom    "
        << (result.degrees_of_freedom ? print_number(*result.degrees_of_freedom, 1) : "unlimited") << '\n';
    out << "coverage factor       " << print_fixed(result.coverage_factor, 2) << '\n';
    if (result.spread_from == SpreadFrom::assumed) {
        out << "One reading says nothing about spread: "
            << print_number(100.0 * EventUncertainty{}.single_reading_share, 1) << " % of it is assumed.\n";
    }
}

Result<ExitStatus> run_timing(const TimingOptions& options, const Common& common) {
    WF_TRY(const auto readings, readings_of(options.readings));
    WF_TRY(const auto u_event, option_value<Duration>(options.u_event, "--u-event"));
    const double event = u_event ? in_seconds(*u_event) : 0.0;
    if (event < 0.0 || event > 3600.0) {
        return bad_input("--u-event", *options.u_event, "0 s to 1 h");
    }
    const auto systematic = seconds(std::hypot(in_seconds(EventUncertainty{}.hand), event));
    WF_TRY(const auto result, evaluate(readings, systematic));
    if (!common.json) {
        print_text(result, common);
        return ExitStatus::done;
    }
    const auto& freedom = result.degrees_of_freedom;
    print_json(common.out(),
               {{"count", result.count},
                {"mean_s", in_seconds(result.mean)},
                {"standard_deviation_s", json_seconds(result.standard_deviation)},
                {"standard_uncertainty_s", in_seconds(result.standard)},
                {"effective_degrees_of_freedom", freedom ? JsonObject(*freedom) : JsonObject(nullptr)},
                {"coverage_factor", result.coverage_factor},
                {"expanded_uncertainty_s", in_seconds(result.expanded)}});
    return ExitStatus::done;
}

}  // namespace

void add_timing(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("timing", "mean and uncertainty of repeated readings");
    const auto options = std::make_shared<TimingOptions>();
    command->add_option("readings", options->readings, "readings with their unit, with commas between")
        ->required()
        ->type_name("T,T,...");
    command
        ->add_option("--u-event", options->u_event,
                     "standard uncertainty of seeing the event; the hand is added")
        ->type_name("T");
    command->footer("Example: wetfront-cli timing 45s,47s,46s --u-event 2s");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_timing(*options, common); };
    });
}

}  // namespace wetfront
