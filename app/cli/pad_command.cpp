// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <ostream>

#include "base/numbers.h"
#include "cli/air_options.h"
#include "pad/measured_pad.h"
#include "pad/pressure_drop.h"
#include "pad/wet_pad.h"

namespace wetfront {
namespace {

using Text = std::optional<std::string>;

struct PadOptions {
    AirOptions air;
    std::string face_velocity, thickness;
    Text area, leaving, thermometer, hygrometer;
    bool explain = false;
};

constexpr std::array explanations{
    Explanation{"pressure; wet bulb outside", "as wetfront-cli air --explain tells",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1",
                "dry bulb -40 to 80 degC, 60 to 110 kPa"},
    Explanation{
        "expected effectiveness",
        "e = (T_in - T_out) / (T_in - T_wb) = 0.792714 + 0.958569 D - 0.25193 V - 1.03215 D^2 + 0.0262659 "
        "V^2 "
        "+ 0.914869 D V - 1.48241 V D^2 - 0.018992 V^3 D + 1.13137 D^3 V + 0.0327622 V^3 D^2 - 0.145384 D^3 "
        "V^2; m/s, m",
        "EnergyPlus, EvaporativeCoolers.cc and Engineering Reference, direct evaporative cooler, rigid media",
        "0.5 to 3 m/s, 50 to 300 mm, a clean new pad that is wet all over"},
    Explanation{
        "leaving dry bulb; leaving relative humidity",
        "T_out = T_in - e (T_in - T_wb), at the wet bulb of the outside air",
        "definition of the effectiveness; state of the air by ASHRAE Handbook - Fundamentals 2017 (SI), "
        "chapter 1, eqs. 33 and 35",
        "as for the effectiveness; air -40 to 80 degC, 60 to 110 kPa"},
    Explanation{"evaporation per pad face; evaporation of the whole pad; airflow",
                "E = V (W_out - W_in) / v, per area of face; whole pad E A; airflow V A",
                "mass balance of the water in the air; v by ASHRAE Handbook - Fundamentals 2017 (SI), "
                "chapter 1, eq. 26",
                "0 to 5 m/s; velocity counts in outside air"},
    Explanation{
        "measured effectiveness; its expanded uncertainty; measured less expected",
        "the same e from the temperature behind the pad; u^2 = sum of (slope x standard uncertainty)^2, "
        "U = 2 u; limits a of an instrument count as a / sqrt(3)",
        "GUM, JCGM 100:2008, eq. 10; accuracies of the instruments as given, else assumed",
        "wet bulb from 0.1 degC; depression at least twice its own uncertainty"},
    Explanation{
        "published pressure drop; published pressure drop, from; published pressure drop, to",
        "printed points, no relation with speed is published openly",
        "Univ. of Georgia, Poultry Housing Tips 26(4), 2014; Franco et al. 2010, Trans. ASABE 53(2):565-576, "
        "abstract",
        "about 1.78 m/s through 150 mm, 1.14 m/s through 100 mm, and 1 to 1.5 m/s to 150 mm"},
};

std::string_view words_of(EffectivenessVerdict verdict) {
    switch (verdict) {
        case EffectivenessVerdict::agrees:
            return "agrees";
        case EffectivenessVerdict::clearly_lower:
            return "clearly lower";
        case EffectivenessVerdict::clearly_higher:
            return "clearly higher";
        case EffectivenessVerdict::too_close:
            return "too close to call";
    }
    return "";
}

/// What stands behind the pad, measured.
struct Measured {
    MeasuredEffectiveness effectiveness;
    EffectivenessComparison against_expected;
};

struct Answer {
    MoistAir outside;
    Fraction expected;
    MoistAir leaving;
    EvaporationFlux evaporation;
    std::optional<Area> area;
    Velocity face_velocity;
    std::optional<Measured> measured;
    Result<PublishedPressureDrop> pressure_drop;
};

Result<InstrumentAccuracy> accuracy_of(const PadOptions& options) {
    InstrumentAccuracy accuracy;
    WF_TRY(const auto thermometer, option_value<TemperatureDifference>(options.thermometer, "--thermometer"));
    WF_TRY(const auto hygrometer, option_value<Fraction>(options.hygrometer, "--hygrometer"));
    if (thermometer) {
        accuracy.dry_bulb = *thermometer;
        accuracy.behind_pad = *thermometer;
        accuracy.wet_bulb = *thermometer;
    }
    accuracy.relative_humidity = hygrometer.value_or(accuracy.relative_humidity);
    return accuracy;
}

Result<std::optional<Measured>> measured_of(const PadOptions& options, const MoistAir& outside,
                                            Fraction expected) {
    if (!options.leaving) {
        for (const auto& [name, text] : {std::pair{"--thermometer", options.thermometer},
                                         std::pair{"--hygrometer", options.hygrometer}}) {
            if (text) {
                return bad_input(name, *text, "only with --leaving");
            }
        }
        return std::optional<Measured>{};
    }
    if (options.hygrometer && options.air.wet_bulb) {
        return bad_input("--hygrometer", *options.hygrometer, "not with --wet-bulb: no hygrometer was read");
    }
    WF_TRY(const auto leaving, parse_quantity<Temperature>(*options.leaving, "--leaving"));
    WF_TRY(const auto accuracy, accuracy_of(options));
    const auto humidity_from =
        options.air.wet_bulb ? HumidityFrom::wet_bulb_thermometer : HumidityFrom::hygrometer;
    Measured measured;
    WF_TRY(measured.effectiveness, effectiveness_with_uncertainty(outside, leaving, humidity_from, accuracy));
    WF_TRY(measured.against_expected, compare_effectiveness(measured.effectiveness, expected));
    return std::optional{measured};
}

Result<std::optional<Area>> area_of(const PadOptions& options) {
    WF_TRY(const auto area, option_value<Area>(options.area, "--area"));
    if (area && !(in_si(*area) > 0.0 && in_si(*area) <= 10000.0)) {
        return bad_input("--area", *options.area, "above 0 to 10,000 m2");
    }
    return area;
}

Result<Answer> answer_of(const PadOptions& options) {
    WF_TRY(const auto outside, air_of(options.air));
    WF_TRY(const auto velocity, parse_quantity<Velocity>(options.face_velocity, "--face-velocity"));
    WF_TRY(const auto thickness, parse_quantity<Length>(options.thickness, "--thickness"));
    WF_TRY(const auto area, area_of(options));
    WF_TRY(const auto expected, expected_effectiveness(velocity, thickness));
    WF_TRY(const auto leaving, air_behind_pad(outside, expected));
    WF_TRY(const auto flux, evaporation(outside, expected, velocity));
    WF_TRY(const auto measured, measured_of(options, outside, expected));
    return Answer{outside, expected, leaving,  flux,
                  area,    velocity, measured, published_pressure_drop(velocity, thickness)};
}

void add_measured(Results& results, const std::optional<Measured>& measured, const PadOptions& options) {
    const std::string label = "measured effectiveness";
    const std::string uncertainty = "its expanded uncertainty";
    const std::string difference = "measured less expected";
    if (!measured) {
        results.missing("measured_effectiveness", label, Kind::fraction, "needs --leaving");
        results.missing("measured_effectiveness_expanded_uncertainty", uncertainty, Kind::fraction, "");
        results.missing("measured_less_expected", difference, Kind::fraction, "");
        return;
    }
    const bool assumed = !options.thermometer || (!options.hygrometer && !options.air.wet_bulb);
    const auto& found = measured->effectiveness;
    results.add("measured_effectiveness", label, found.value,
                found.outside_bounds ? "beyond 0 to 100 %, by no more than its uncertainty" : "");
    results.add("measured_effectiveness_expanded_uncertainty", uncertainty, found.expanded,
                assumed ? "95 %; accuracy of the instruments assumed where it is not given" : "95 %");
    results.add("measured_less_expected", difference, measured->against_expected.difference,
                std::string{words_of(measured->against_expected.verdict)});
}

Results results_of(const Answer& answer, const PadOptions& options) {
    Results results;
    results.add("pressure", "pressure", answer.outside.pressure, pressure_origin(options.air));
    results.add("wet_bulb", "wet bulb outside", answer.outside.wet_bulb);
    results.add("effectiveness", "expected effectiveness", answer.expected, "a clean pad, wet all over");
    results.add("leaving_dry_bulb", "leaving dry bulb", answer.leaving.dry_bulb);
    results.add("leaving_relative_humidity", "leaving relative humidity", answer.leaving.relative_humidity);
    results.add("evaporation", "evaporation per pad face", answer.evaporation);
    if (answer.area) {
        results.add("evaporation", "evaporation of the whole pad", answer.evaporation * *answer.area);
        results.add("airflow", "airflow", answer.face_velocity * *answer.area, "", Scale::coarse);
    } else {
        results.missing("evaporation", "evaporation of the whole pad", Kind::mass_flow, "needs --area");
        results.missing("airflow", "airflow", Kind::volume_flow, "");
    }
    add_measured(results, answer.measured, options);
    const auto& drop = answer.pressure_drop;
    if (drop) {
        results.add("lowest_published_pressure_drop", "published pressure drop, from", drop.value().lowest);
        results.add("highest_published_pressure_drop", "published pressure drop, to", drop.value().highest);
    } else {
        results.missing("lowest_published_pressure_drop", "published pressure drop",
                        Kind::pressure_difference, "none at this speed and thickness");
        results.missing("highest_published_pressure_drop", "published pressure drop, to",
                        Kind::pressure_difference, "");
    }
    return results;
}

Result<ExitStatus> run_pad(const PadOptions& options, const Common& common) {
    WF_TRY(const auto answer, answer_of(options));
    const auto results = results_of(answer, options);
    if (common.json) {
        auto json = results.json();
        const auto& measured = answer.measured;
        json["verdict"] =
            measured ? JsonObject(words_of(measured->against_expected.verdict)) : JsonObject(nullptr);
        json["sea_level_assumed"] = sea_level_assumed(options.air);
        if (options.explain) {
            json["explanations"] = explanations_json(explanations);
        }
        print_json(common.out(), json);
        return ExitStatus::done;
    }
    print_results(common.out(), common.units, results);
    if (options.explain) {
        print_explanations(common.out(), explanations);
    }
    return ExitStatus::done;
}

}  // namespace

void add_pad(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("pad", "cooling and evaporation of a wet pad, expected and measured");
    const auto options = std::make_shared<PadOptions>();
    add_air_options(*command, options->air);
    const auto add = [&](const char* name, auto& value, const char* type, const char* text) {
        return command->add_option(name, value, text)->type_name(type);
    };
    add("--face-velocity", options->face_velocity, "V", "of the air at the pad's face, 0.5 to 3 m/s")
        ->required();
    add("--thickness", options->thickness, "D", "of the pad, 50 to 300 mm")->required();
    add("--area", options->area, "A", "of the wetted face, for the whole pad's evaporation");
    add("--leaving", options->leaving, "T", "measured just behind the pad, for the measured effectiveness");
    add("--thermometer", options->thermometer, "K", "accuracy either way (default 0.5 K, assumed)");
    add("--hygrometer", options->hygrometer, "R",
        "accuracy either way, in % of humidity (default 3 %, assumed)");
    command->add_flag("--explain", options->explain, "print formulas, sources and ranges");
    command->footer(
        "Example: wetfront-cli pad --dry-bulb 95degF --relative-humidity 40% --face-velocity 350ft/min "
        "--thickness 6in --area 600ft2 --leaving 81degF");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_pad(*options, common); }; });
}

}  // namespace wetfront
