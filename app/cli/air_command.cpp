// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <ostream>

#include "air/comfort.h"
#include "cli/air_options.h"

namespace wetfront {
namespace {

struct AirCommandOptions {
    AirOptions air;
    std::optional<std::string> air_speed;
    bool explain = false;
};

constexpr std::array explanations{
    Explanation{"dry bulb", "as given", "the reading", "-40 to 80 degC"},
    Explanation{"pressure", "p = 101325 (1 - 2.25577e-5 Z)^5.2559",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eq. 3",
                "Z -500 to 4,000 m; standard atmosphere, a barometer at the place is better"},
    Explanation{"wet bulb",
                "W = ((2501 - 2.326 t*) Ws(t*) - 1.006 (t - t*)) / (2501 + 1.86 t - 4.186 t*), solved for "
                "t*; over ice "
                "W = ((2830 - 0.24 t*) Ws(t*) - 1.006 (t - t*)) / (2830 + 1.86 t - 2.1 t*)",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eqs. 33 and 35",
                "dry bulb -40 to 80 degC, 60 to 110 kPa; degC"},
    Explanation{"dew point", "saturation pressure at the dew point = vapour pressure p W / (0.621945 + W)",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eqs. 5, 6 and 20",
                "-100 degC to the dry bulb; over ice below 0.01 degC"},
    Explanation{"relative humidity", "vapour pressure / saturation pressure at the dry bulb",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1; saturation pressure by eqs. 5 and 6",
                "0 to 100 %; no enhancement factor (tables that include it differ by up to 0.5 %)"},
    Explanation{"humidity ratio", "W = 0.621945 pw / (p - pw)",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eq. 20", "as for the wet bulb"},
    Explanation{"enthalpy", "h = 1.006 t + W (2501 + 1.86 t), kJ per kg of dry air, 0 for dry air of 0 degC",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eq. 30", "as for the wet bulb"},
    Explanation{"specific volume", "v = 287.042 (t + 273.15) (1 + 1.607858 W) / p, per kg of dry air",
                "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eq. 26", "as for the wet bulb"},
    Explanation{"density", "(1 + W) / v", "ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1, eq. 11",
                "as for the wet bulb"},
    Explanation{"temperature-humidity index", "THI = 0.85 t + 0.15 t*, degC",
                "Tao and Xin 2003, Trans. ASAE 46(2):491-497, abstract",
                "found with broilers at 35 to 41 degC; others apply it to milder air"},
    Explanation{"the same with wind", "THVI = THI V^-0.058, degC and m/s",
                "Tao and Xin 2003, Trans. ASAE 46(2):491-497, abstract",
                "dry bulb 35 to 41 degC, 0.2 to 1.2 m/s, not beyond"},
};

Results results_of(const MoistAir& air, const std::optional<Temperature>& with_wind,
                   const AirOptions& options) {
    Results results;
    results.add("pressure", "pressure", air.pressure, pressure_origin(options));
    results.add("dry_bulb", "dry bulb", air.dry_bulb);
    results.add("wet_bulb", "wet bulb", air.wet_bulb);
    if (air.dew_point) {
        results.add("dew_point", "dew point", *air.dew_point);
    } else {
        results.missing("dew_point", "dew point", Kind::temperature,
                        "too dry: none down to -100 degC (-148 degF)");
    }
    results.add("relative_humidity", "relative humidity", air.relative_humidity);
    results.add("humidity_ratio", "humidity ratio", air.humidity_ratio);
    results.add("enthalpy", "enthalpy", air.enthalpy);
    results.add("specific_volume", "specific volume", air.specific_volume);
    results.add_any("density", "density", {Kind::density, in_si(air.density)});
    results.add("thi", "temperature-humidity index", temperature_humidity_index(air), "for broilers");
    if (with_wind) {
        results.add("thvi", "the same with wind", *with_wind, "for broilers");
    } else {
        results.missing("thvi", "the same with wind", Kind::temperature, "");
    }
    return results;
}

Result<ExitStatus> run_air(const AirCommandOptions& options, const Common& common) {
    WF_TRY(const auto air, air_of(options.air));
    WF_TRY(const auto speed, option_value<Velocity>(options.air_speed, "--air-speed"));
    std::optional<Temperature> with_wind;
    if (speed) {
        WF_TRY(with_wind, temperature_humidity_velocity_index(air, *speed));
    }
    const auto results = results_of(air, with_wind, options.air);
    if (common.json) {
        auto json = results.json();
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

void add_air(CLI::App& app, const Common& common, Work& chosen) {
    auto* command =
        app.add_subcommand("air", "the state of moist air, and the temperature-humidity index of broilers");
    const auto options = std::make_shared<AirCommandOptions>();
    add_air_options(*command, options->air);
    command
        ->add_option("--air-speed", options->air_speed,
                     "at the birds, 0.2 to 1.2 m/s: also the index with wind, for 35 to 41 degC only")
        ->type_name("V");
    command->add_flag("--explain", options->explain, "print formulas, sources and ranges");
    command->footer("Example: wetfront-cli air --dry-bulb 95degF --relative-humidity 40% --elevation 1000ft");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_air(*options, common); }; });
}

}  // namespace wetfront
