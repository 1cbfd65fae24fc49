// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "cli/command.h"
#include "cli/json_output.h"
#include "cycle/bank_cycle.h"
#include "timing/uncertainty.h"

namespace wetfront {
namespace {

using Text = std::optional<std::string>;

struct CycleOptions {
    std::string fill;
    Text wet_through, dry_out, off, drip_return;
    bool fans_on = false;
    Text evaporation_ratio, uncertainty, resolution, margin, rest;
};

// One reading each, seen by a person: what the hand and seeing the event add stands alone (assumed values).
Duration u_of_hand() {
    return EventUncertainty{}.hand;
}
Duration u_of_drip() {
    const EventUncertainty u;
    return seconds(std::hypot(in_seconds(u.hand), in_seconds(u.drip_or_patch)));
}
Duration u_of_dry_patch(Duration dry_out) {
    const EventUncertainty u;
    return seconds(std::hypot(
        in_seconds(u.hand), std::max(in_seconds(u.drip_or_patch), u.dry_patch_share * in_seconds(dry_out))));
}

Result<std::variant<DryStart, WetStart>> start_of(const CycleOptions& options) {
    using Start = std::variant<DryStart, WetStart>;
    WF_TRY(const auto wet_through, option_value<Duration>(options.wet_through, "--wet-through"));
    WF_TRY(const auto dry_out, option_value<Duration>(options.dry_out, "--dry-out"));
    WF_TRY(const auto off, option_value<Duration>(options.off, "--off"));
    WF_TRY(const auto drip_return, option_value<Duration>(options.drip_return, "--return"));
    if (dry_out && !off && !drip_return) {
        if (!wet_through) {
            return bad_input("--wet-through", "", "missing; with --dry-out the pad was wetted from dry");
        }
        return Start{
            DryStart{*wet_through, *dry_out, options.fans_on, u_of_drip(), u_of_dry_patch(*dry_out)}};
    }
    if (!dry_out && off && drip_return) {
        return Start{WetStart{*off, *drip_return, u_of_hand(), u_of_drip()}};
    }
    return bad_input("--dry-out, --off, --return", "",
                     "give --dry-out, or for a wet start --off and --return, and not both");
}

Result<void> read_number(const Text& text, std::string_view item, double& value) {
    if (text) {
        WF_TRY(value, parse_number(*text, item));
    }
    return boost::outcome_v2::success();
}

void print_text(const CycleAnswer& answer, const CycleOptions& options, const Common& common) {
    auto& out = common.out();
    const auto shown = [&](Duration time) { return show_text(time, common.units); };
    const auto& bounds = answer.banks.front();
    if (answer.cycled) {
        out << "period         " << shown(answer.period) << '\n';
        out << "base on-time   " << shown(*answer.base) << "   (" << name_of(*answer.limited_by) << ")\n";
        out << "ceiling        " << shown(*answer.ceiling) << '\n';
        out << "trim step      "
            << (answer.trim_step ? shown(*answer.trim_step) : "none: ceiling and base are equal") << '\n';
    } else {
        out << "No cycle fits; let the pump run without rest while pads are called for.\n";
        if (answer.drying_outruns_supply) {
            out << "The pad dries faster than it is supplied, whatever the period.\n";
        }
        out << "period tried   " << shown(answer.period) << '\n';
    }
    out << "need           " << shown(bounds.need)
        << "   (fill + margin x evaporated share of the period + uncertainty)\n";
    out << "gap bound      " << shown(bounds.gap_bound) << "   (so that no part dries)\n";
    out << "uncertainty    " << shown(bounds.uncertainty)
        << (options.uncertainty ? "   (as given)" : "   (assumed for one reading of each, seen by a person)")
        << '\n';
    if (options.off && options.wet_through) {
        out << "A wet start does without the wet-through time; it was not used.\n";
    }
}

JsonObject as_json(const CycleAnswer& answer) {
    const auto& bounds = answer.banks.front();
    return {{"cycled", answer.cycled},
            {"period_s", in_seconds(answer.period)},
            {"base_on_time_s", json_seconds(answer.base)},
            {"ceiling_s", json_seconds(answer.ceiling)},
            {"trim_step_s", json_seconds(answer.trim_step)},
            {"need_s", in_seconds(bounds.need)},
            {"gap_bound_s", in_seconds(bounds.gap_bound)},
            {"fill_bound_s", in_seconds(bounds.fill_bound)},
            {"uncertainty_s", in_seconds(bounds.uncertainty)},
            {"evaporated_share", bounds.evaporated_share},
            {"limited_by",
             answer.limited_by ? JsonObject(std::string{name_of(*answer.limited_by)}) : JsonObject(nullptr)},
            {"drying_outruns_supply", answer.drying_outruns_supply}};
}

Result<ExitStatus> run_cycle(const CycleOptions& options, const Common& common) {
    BankQuestion bank;
    WF_TRY(bank.fill, parse_quantity<Duration>(options.fill, "--fill"));
    bank.u_fill = u_of_hand();
    WF_TRY(bank.start, start_of(options));
    WF_TRY(bank.uncertainty, option_value<Duration>(options.uncertainty, "--uncertainty"));
    WF_CHECK(read_number(options.evaporation_ratio, "--evaporation-ratio", bank.evaporation_ratio));
    CycleMargins margins;
    WF_CHECK(read_number(options.margin, "--margin", margins.water_margin));
    WF_TRY(const auto rest, option_value<Duration>(options.rest, "--rest"));
    margins.least_rest = rest.value_or(margins.least_rest);
    WF_TRY(const auto resolution, option_value<Duration>(options.resolution, "--resolution"));
    WF_TRY(const auto answer, best_cycle({bank}, resolution.value_or(seconds(1.0)), margins));
    if (common.json) {
        print_json(common.out(), as_json(answer));
    } else {
        print_text(answer, options, common);
    }
    return ExitStatus::done;
}

}  // namespace

void add_cycle(CLI::App& app, const Common& common, Work& chosen) {
    auto* command =
        app.add_subcommand("cycle", "the best cycle of one bank from its readings, without a visit");
    const auto options = std::make_shared<CycleOptions>();
    const auto time = [&](const char* name, auto& value, const char* text) {
        return command->add_option(name, value, text)->type_name("T");
    };
    time("--fill", options->fill, "pump start to water at the far end of the header")->required();
    time("--wet-through", options->wet_through,
         "pump start to the first drip at the far end, from a dry pad");
    time("--dry-out", options->dry_out, "pump stop to the first dry patch, fans running");
    time("--off", options->off, "wet start: how long the pump stood while the far end dripped");
    time("--return", options->drip_return, "wet start: pump start to the drip's return");
    command->add_flag("--fans-on", options->fans_on, "the fans ran during the wet-through reading");
    command
        ->add_option("--evaporation-ratio", options->evaporation_ratio,
                     "design day against the readings (default 1)")
        ->type_name("R");
    time("--uncertainty", options->uncertainty,
         "added to the need as it stands (default: assumed from the readings)");
    time("--resolution", options->resolution, "smallest step of the timer (default 1 s)");
    command->add_option("--margin", options->margin, "water margin, 1 to 10 (default 1.25, assumed)")
        ->type_name("M");
    time("--rest", options->rest, "shortest time that the pump stays off (default 60 s, assumed)");
    command->footer("Example: wetfront-cli cycle --fill 45s --wet-through 75s --dry-out 10min");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_cycle(*options, common); }; });
}

}  // namespace wetfront
