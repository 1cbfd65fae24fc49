// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <ostream>

#include "base/numbers.h"
#include "cli/command.h"
#include "cli/results.h"
#include "water/bleed.h"

namespace wetfront {
namespace {

using Text = std::optional<std::string>;

struct WaterOptions {
    std::string evaporation;
    Text cycles, make_up_conductivity, sump_conductivity, drift;
    Text ph, calcium_hardness, alkalinity, dissolved_solids, temperature, highest_langelier;
    bool explain = false;
};

constexpr std::array explanations{
    Explanation{
        "cycles of concentration (from conductivities)",
        "R = conductivity of the sump / conductivity of the make-up",
        "salt balance; conductivity stands for the salts (common practice, no source)",
        "above 0 to 100,000 uS/cm, the sump's not below the make-up's; comes out low where scale forms"},
    Explanation{
        "evaporation; drift and leaks; bleed; make-up; cycles of concentration",
        "B = E / (R - 1) - D, never below 0; M = E + B + D; salts reached: M / (B + D)",
        "salt balance as in the formulas of waterplanner.gemi.org; EnergyPlus Engineering Reference, direct "
        "evaporative cooler, blow-down (R at least 2)",
        "steady state, R above 1, flows to 1,000 kg/s; water counts 1000 kg/m3; no salt comes down on the "
        "way"},
    Explanation{
        "saturation pH; Langelier index; Ryznar index",
        "pHs = (9.3 + A + B) - (C + F); Langelier pH - pHs; Ryznar 2 pHs - pH; A = (log10 S - 1)/10, B = "
        "-13.12 log10(T + 273) + 34.55, C = log10(H) - 0.4, F = log10(alkalinity); mg/L, degC",
        "Langelier's saturation pH as printed with worked examples at corrosion-doctors.org",
        "pH 4 to 11, 0 to 90 degC, hardness and alkalinity 1 to 5,000 mg/L as CaCO3, solids 10 to 10,000 "
        "mg/L; "
        "good to about 0.1"},
    Explanation{"most cycles", "R = 10^((limit - Langelier index) / 1.9)",
                "the same equation with hardness, alkalinity and solids times R",
                "at fixed pH and temperature; the pH of a real sump rises, so the true number is lower"},
};

// A flow of water by mass or, at 1000 kg/m3, by volume.
Result<MassFlow> water_flow(const std::string& text, const char* item) {
    if (auto mass = parse_quantity<MassFlow>(text, item)) {
        return mass;
    }
    if (const auto volume = parse_quantity<VolumeFlow>(text, item)) {
        return from_si<MassFlow>(1000.0 * in_si(volume.value()));
    }
    return bad_input(item, text,
                     "write a number with its unit: " + accepted_units(Kind::mass_flow) + ", or " +
                         accepted_units(Kind::volume_flow));
}

struct Cycles {
    double wanted = least_published_cycles;
    std::string origin = "assumed, the least published; give --cycles or both conductivities";
};

Result<Cycles> cycles_of(const WaterOptions& options) {
    const bool make_up = options.make_up_conductivity.has_value();
    const bool sump = options.sump_conductivity.has_value();
    if (options.cycles && (make_up || sump)) {
        return bad_input("--cycles, --make-up-conductivity, --sump-conductivity", "",
                         "give the cycles or both conductivities, not both kinds");
    }
    if (make_up != sump) {
        return bad_input(make_up ? "--sump-conductivity" : "--make-up-conductivity", "",
                         "missing; cycles need the conductivity of both waters");
    }
    Cycles cycles;
    if (options.cycles) {
        WF_TRY(cycles.wanted, parse_number(*options.cycles, "--cycles"));
        cycles.origin = "as given";
    }
    if (make_up) {
        WF_TRY(const auto in,
               parse_quantity<Conductivity>(*options.make_up_conductivity, "--make-up-conductivity"));
        WF_TRY(const auto held,
               parse_quantity<Conductivity>(*options.sump_conductivity, "--sump-conductivity"));
        WF_TRY(cycles.wanted, cycles_from_conductivity(in, held));
        cycles.origin = "sump conductivity over make-up conductivity";
    }
    return cycles;
}

Result<std::optional<WaterTest>> water_test_of(const WaterOptions& options) {
    const std::initializer_list<std::pair<const char*, const Text*>> parts{
        {"--ph", &options.ph},
        {"--calcium-hardness", &options.calcium_hardness},
        {"--alkalinity", &options.alkalinity},
        {"--dissolved-solids", &options.dissolved_solids},
        {"--temperature", &options.temperature}};
    std::string given;
    std::string lacking;
    for (const auto& [name, text] : parts) {
        auto& list = *text ? given : lacking;
        list += (list.empty() ? "" : ", ") + std::string{name};
    }
    if (given.empty()) {
        if (options.highest_langelier) {
            return bad_input("--highest-langelier", *options.highest_langelier, "needs " + lacking);
        }
        return std::optional<WaterTest>{};
    }
    if (!lacking.empty()) {
        return bad_input(lacking, "", "missing; a scaling index needs it besides " + given);
    }
    WaterTest test;
    WF_TRY(test.ph, parse_number(*options.ph, "--ph"));
    WF_TRY(test.calcium_hardness,
           parse_quantity<Concentration>(*options.calcium_hardness, "--calcium-hardness"));
    WF_TRY(test.alkalinity, parse_quantity<Concentration>(*options.alkalinity, "--alkalinity"));
    WF_TRY(test.dissolved_solids,
           parse_quantity<Concentration>(*options.dissolved_solids, "--dissolved-solids"));
    WF_TRY(test.temperature, parse_quantity<Temperature>(*options.temperature, "--temperature"));
    return std::optional{test};
}

struct Chemistry {
    ScalingIndex index;
    std::optional<MostCycles> most;
};

Result<std::optional<Chemistry>> chemistry_of(const WaterOptions& options) {
    WF_TRY(const auto test, water_test_of(options));
    if (!test) {
        return std::optional<Chemistry>{};
    }
    Chemistry chemistry;
    WF_TRY(chemistry.index, scaling_index(*test));
    if (options.highest_langelier) {
        WF_TRY(const double highest, parse_number(*options.highest_langelier, "--highest-langelier"));
        WF_TRY(chemistry.most, most_cycles_for_langelier(*test, highest));
    }
    return std::optional{chemistry};
}

void add_most_cycles(Results& results, const std::optional<MostCycles>& most) {
    const std::string label = "most cycles";
    if (!most) {
        results.missing_number("most_cycles", label, "");
    } else if (!most->cycles) {
        results.missing_number("most_cycles", label, "this water is beyond that index as it is");
    } else {
        results.number("most_cycles", label, *most->cycles, 2,
                       most->range_ends_first ? "the range of the index ends here, the water may bear more"
                                              : "at this pH; the pH of a real sump rises, so stay below");
    }
}

Results results_of(const WaterBalance& balance, const Cycles& cycles,
                   const std::optional<Chemistry>& chemistry, UnitSystem units) {
    Results results;
    const auto flow = [&](const char* key, const char* label, MassFlow water) {
        results.add(key, label, water, shown_with(any(volume_flow_of(water)), units, 2, 2));
    };
    flow("evaporation", "evaporation", balance.evaporation);
    flow("lost", "drift and leaks", balance.lost);
    flow("bleed", "bleed", balance.bleed);
    flow("make_up", "make-up", balance.make_up);
    if (balance.cycles) {
        results.number("cycles_of_concentration", "cycles of concentration", *balance.cycles, 2,
                       balance.lost_is_enough ? "by drift and leaks alone" : cycles.origin);
    } else {
        results.missing_number("cycles_of_concentration", "cycles of concentration",
                               "no water leaves the sump");
    }
    if (chemistry) {
        results.number("saturation_ph", "saturation pH", chemistry->index.saturation_ph, 2);
        results.number("langelier_index", "Langelier index", chemistry->index.langelier, 2,
                       "above 0 it can lay down scale");
        results.number("ryznar_index", "Ryznar index", chemistry->index.ryznar, 2,
                       "the lower, the more scale");
    } else {
        const std::string why = "needs pH, calcium hardness, alkalinity, dissolved solids and temperature";
        results.missing_number("saturation_ph", "saturation pH", "");
        results.missing_number("langelier_index", "Langelier index", why);
        results.missing_number("ryznar_index", "Ryznar index", why);
    }
    add_most_cycles(results, chemistry ? chemistry->most : std::nullopt);
    return results;
}

Result<ExitStatus> run_water(const WaterOptions& options, const Common& common) {
    WF_TRY(const auto evaporation, water_flow(options.evaporation, "--evaporation"));
    auto lost = from_si<MassFlow>(0.0);
    if (options.drift) {
        WF_TRY(lost, water_flow(*options.drift, "--drift"));
    }
    WF_TRY(const auto cycles, cycles_of(options));
    WF_TRY(const auto balance, water_balance(evaporation, cycles.wanted, lost));
    WF_TRY(const auto chemistry, chemistry_of(options));
    const auto results = results_of(balance, cycles, chemistry, common.units);
    const auto note = note_on(balance);
    if (common.json) {
        auto json = results.json();
        json["wanted_cycles"] = balance.wanted_cycles;
        json["wanted_cycles_from"] = cycles.origin;
        json["note"] = note ? JsonObject(in_english(*note, common.units)) : JsonObject(nullptr);
        if (options.explain) {
            json["explanations"] = explanations_json(explanations);
        }
        print_json(common.out(), json);
        return ExitStatus::done;
    }
    auto& out = common.out();
    print_results(out, common.units, results);
    if (note) {
        out << in_english(*note, common.units) << '\n';
    }
    if (chemistry) {
        out << in_english(langelier_in_words(chemistry->index.langelier), common.units) << '\n';
    }
    if (options.explain) {
        print_explanations(out, explanations);
    }
    return ExitStatus::done;
}

}  // namespace

void add_water(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("water", "bleed and make-up of a sump, and whether its water scales");
    const auto options = std::make_shared<WaterOptions>();
    const auto add = [&](const char* name, auto& value, const char* type, const char* text) {
        return command->add_option(name, value, text)->type_name(type);
    };
    add("--evaporation", options->evaporation, "E", "water evaporated, by mass or by volume")->required();
    add("--drift", options->drift, "D", "drift and leaks, which act as bleed (default 0)");
    add("--cycles", options->cycles, "R",
        "salts of the sump against those of the make-up, above 1 (default 2)");
    add("--make-up-conductivity", options->make_up_conductivity, "C", "in place of --cycles, with the next");
    add("--sump-conductivity", options->sump_conductivity, "C", "in place of --cycles");
    add("--ph", options->ph, "P", "of the water whose scaling index is wanted, 4 to 11");
    add("--calcium-hardness", options->calcium_hardness, "H", "as CaCO3");
    add("--alkalinity", options->alkalinity, "A", "as CaCO3");
    add("--dissolved-solids", options->dissolved_solids, "S", "total");
    add("--temperature", options->temperature, "T", "of the water");
    add("--highest-langelier", options->highest_langelier, "I",
        "how far the make-up tested above may be concentrated to stay at that index");
    command->add_flag("--explain", options->explain, "print formulas, sources and ranges");
    command->footer(
        "Example: wetfront-cli water --evaporation 2gpm --cycles 3 --ph 7.5 --calcium-hardness 150mg/L "
        "--alkalinity 34mg/L --dissolved-solids 320mg/L --temperature 77degF");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_water(*options, common); }; });
}

}  // namespace wetfront
