// SPDX-License-Identifier: Apache-2.0
#include "cli/air_options.h"

namespace wetfront {

void add_air_options(CLI::App& command, AirOptions& options) {
    const auto add = [&](const char* name, auto& value, const char* type, const char* text) {
        return command.add_option(name, value, text)->type_name(type);
    };
    add("--dry-bulb", options.dry_bulb, "T", "-40 to 80 degC")->required();
    add("--relative-humidity", options.relative_humidity, "R", "one of three: 0 to 100 %");
    add("--wet-bulb", options.wet_bulb, "T", "one of three: not above the dry bulb");
    add("--dew-point", options.dew_point, "T", "one of three: not above the dry bulb");
    add("--elevation", options.elevation, "Z", "above sea level, gives the pressure (default: sea level)");
    add("--pressure", options.pressure, "P",
        "absolute, of a barometer at the place; in place of --elevation");
}

bool sea_level_assumed(const AirOptions& options) {
    return !options.elevation && !options.pressure;
}

std::string pressure_origin(const AirOptions& options) {
    return options.pressure    ? "as given"
           : options.elevation ? "standard atmosphere at the elevation given"
                               : "sea level assumed; give --elevation or --pressure";
}

Result<MoistAir> air_of(const AirOptions& options) {
    if (options.elevation && options.pressure) {
        return bad_input("--elevation, --pressure", "", "give at most one of them");
    }
    WF_TRY(const auto humidity, only_one("--relative-humidity, --wet-bulb, --dew-point",
                                         {&options.relative_humidity, &options.wet_bulb, &options.dew_point},
                                         "give exactly one of them"));
    WF_TRY(const auto dry_bulb, parse_quantity<Temperature>(options.dry_bulb, "--dry-bulb"));
    WF_TRY(const auto given, option_value<AbsolutePressure>(options.pressure, "--pressure"));
    WF_TRY(const auto elevation, option_value<Length>(options.elevation, "--elevation"));
    WF_TRY(const auto standard, standard_pressure(elevation.value_or(from_si<Length>(0.0))));
    const auto pressure = given.value_or(standard);
    if (humidity == 0) {
        WF_TRY(const auto share, parse_quantity<Fraction>(*options.relative_humidity, "--relative-humidity"));
        return air_from_humidity(dry_bulb, share, pressure);
    }
    if (humidity == 1) {
        WF_TRY(const auto wet_bulb, parse_quantity<Temperature>(*options.wet_bulb, "--wet-bulb"));
        return air_from_wet_bulb(dry_bulb, wet_bulb, pressure);
    }
    WF_TRY(const auto dew_point, parse_quantity<Temperature>(*options.dew_point, "--dew-point"));
    return air_from_dew_point(dry_bulb, dew_point, pressure);
}

}  // namespace wetfront
