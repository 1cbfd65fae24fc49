// SPDX-License-Identifier: Apache-2.0
#include "units/kinds.h"

#include <array>
#include <cmath>
#include <optional>

namespace wetfront {
namespace {

// Exact by definition unless a line says otherwise: NIST SP 811 (2008), Appendix B.8; the gallon is the US
// liquid gallon of 231 cubic inches, the pound 0.45359237 kg, standard gravity 9.80665 m/s2.
constexpr double foot = 0.3048;
constexpr double inch = 0.0254;
constexpr double us_gallon = 3.785411784e-3;
constexpr double pound = 0.45359237;
constexpr double standard_gravity = 9.80665;
constexpr double rankine = 5.0 / 9.0;
// Conventional inch of water and of mercury (SP 811 B.8): 1000 and 13 595.1 kg/m3 at standard gravity.
constexpr double inch_of_water = 1000.0 * standard_gravity * inch;
constexpr double inch_of_mercury = 13595.1 * standard_gravity * inch;
// International Table Btu, exact: 1055.05585262 J (SP 811 B.8).
constexpr double btu = 1055.05585262;
constexpr double mechanical_horsepower = 550.0 * foot * pound * standard_gravity;
// Grain per US gallon, the usual unit of water hardness kits: 1 grain = 64.79891 mg exactly.
constexpr double grain = 64.79891e-6;

constexpr std::array lengths{Unit{"m", "m", 1.0, 0.0}, Unit{"mm", "mm", 1e-3, 0.0},
                             Unit{"cm", "cm", 1e-2, 0.0}, Unit{"ft", "ft", foot, 0.0},
                             Unit{"in", "in", inch, 0.0}};
constexpr std::array areas{Unit{"m2", "m²", 1.0, 0.0}, Unit{"ft2", "ft²", foot* foot, 0.0}};
constexpr std::array volumes{Unit{"m3", "m³", 1.0, 0.0}, Unit{"L", "L", 1e-3, 0.0},
                             Unit{"gal", "gal", us_gallon, 0.0}, Unit{"ft3", "ft³", foot* foot* foot, 0.0}};
constexpr std::array durations{Unit{"s", "s", 1.0, 0.0}, Unit{"min", "min", 60.0, 0.0},
                               Unit{"h", "h", 3600.0, 0.0}};
constexpr std::array velocities{Unit{"m/s", "m/s", 1.0, 0.0}, Unit{"ft/min", "ft/min", foot / 60.0, 0.0}};
constexpr std::array volume_flows{Unit{"m3/s", "m³/s", 1.0, 0.0},
                                  Unit{"L/min", "L/min", 1e-3 / 60.0, 0.0},
                                  Unit{"L/s", "L/s", 1e-3, 0.0},
                                  Unit{"m3/h", "m³/h", 1.0 / 3600.0, 0.0},
                                  Unit{"gpm", "gpm", us_gallon / 60.0, 0.0},
                                  Unit{"cfm", "cfm", foot* foot* foot / 60.0, 0.0}};
constexpr std::array mass_flows{Unit{"kg/s", "kg/s", 1.0, 0.0}, Unit{"kg/h", "kg/h", 1.0 / 3600.0, 0.0},
                                Unit{"lb/h", "lb/h", pound / 3600.0, 0.0}};
constexpr std::array powers{Unit{"W", "W", 1.0, 0.0}, Unit{"kW", "kW", 1e3, 0.0},
                            Unit{"Btu/h", "Btu/h", btu / 3600.0, 0.0},
                            Unit{"hp", "hp", mechanical_horsepower, 0.0}};
constexpr std::array pressures{Unit{"Pa", "Pa", 1.0, 0.0}, Unit{"kPa", "kPa", 1e3, 0.0},
                               Unit{"hPa", "hPa", 1e2, 0.0}, Unit{"inHg", "inHg", inch_of_mercury, 0.0}};
constexpr std::array pressure_differences{Unit{"Pa", "Pa", 1.0, 0.0}, Unit{"kPa", "kPa", 1e3, 0.0},
                                          Unit{"inH2O", "inH₂O", inch_of_water, 0.0}};
constexpr std::array temperatures{Unit{"K", "K", 1.0, 0.0}, Unit{"degC", "°C", 1.0, 273.15},
                                  Unit{"degF", "°F", rankine, 459.67}};
constexpr std::array temperature_differences{Unit{"K", "K", 1.0, 0.0}, Unit{"degC", "°C", 1.0, 0.0},
                                             Unit{"degF", "°F", rankine, 0.0}};
constexpr std::array humidity_ratios{Unit{"kg/kg", "kg/kg", 1.0, 0.0}, Unit{"g/kg", "g/kg", 1e-3, 0.0},
                                     Unit{"gr/lb", "gr/lb", grain / pound, 0.0}};
constexpr std::array fractions{Unit{"1", "", 1.0, 0.0}, Unit{"%", "%", 1e-2, 0.0}};
// A gallon of water counts as 1000 kg/m3; parts per million are by mass in such water.
constexpr std::array evaporations{
    Unit{"kg/s/m2", "kg/(s·m²)", 1.0, 0.0}, Unit{"g/s/m2", "g/(s·m²)", 1e-3, 0.0},
    Unit{"gal/h/ft2", "gal/(h·ft²)", us_gallon * 1000.0 / 3600.0 / (foot * foot), 0.0}};
constexpr std::array concentrations{Unit{"kg/m3", "kg/m³", 1.0, 0.0}, Unit{"mg/L", "mg/L", 1e-3, 0.0},
                                    Unit{"ppm", "ppm", 1e-3, 0.0},
                                    Unit{"gr/gal", "gr/gal", grain / us_gallon, 0.0}};
constexpr std::array conductivities{Unit{"S/m", "S/m", 1.0, 0.0}, Unit{"uS/cm", "µS/cm", 1e-4, 0.0},
                                    Unit{"mS/cm", "mS/cm", 1e-1, 0.0}};
constexpr std::array masses{Unit{"kg", "kg", 1.0, 0.0}, Unit{"g", "g", 1e-3, 0.0},
                            Unit{"lb", "lb", pound, 0.0}};
constexpr std::array flows_per_length{Unit{"m2/s", "m²/s", 1.0, 0.0},
                                      Unit{"L/min/m", "L/(min·m)", 1e-3 / 60.0, 0.0},
                                      Unit{"gpm/ft", "gpm/ft", us_gallon / 60.0 / foot, 0.0}};
// Per mass of dry air.
constexpr std::array specific_enthalpies{Unit{"J/kg", "J/kg", 1.0, 0.0}, Unit{"kJ/kg", "kJ/kg", 1e3, 0.0},
                                         Unit{"Btu/lb", "Btu/lb", btu / pound, 0.0}};
constexpr std::array specific_volumes{Unit{"m3/kg", "m³/kg", 1.0, 0.0},
                                      Unit{"ft3/lb", "ft³/lb", foot* foot* foot / pound, 0.0}};
constexpr std::array densities{Unit{"kg/m3", "kg/m³", 1.0, 0.0},
                               Unit{"lb/ft3", "lb/ft³", pound / (foot * foot * foot), 0.0}};
constexpr double kilowatt_hour = 3.6e6;
constexpr std::array energies{Unit{"J", "J", 1.0, 0.0}, Unit{"kWh", "kWh", kilowatt_hour, 0.0},
                              Unit{"MJ", "MJ", 1e6, 0.0}, Unit{"Btu", "Btu", btu, 0.0}};
constexpr std::array water_prices{Unit{"/m3", "per m³", 1.0, 0.0},
                                  Unit{"/kgal", "per 1000 gal", 1e-3 / us_gallon, 0.0}};
constexpr std::array energy_prices{Unit{"/J", "per J", 1.0, 0.0},
                                   Unit{"/kWh", "per kWh", 1.0 / kilowatt_hour, 0.0}};

/// Usual units of a kind, US and SI, each with the digits behind the point that a person can use.
struct Usual {
    std::size_t us;
    int us_decimals;
    std::size_t si;
    int si_decimals;
};

Usual usual(Kind kind, Scale scale) {
    switch (kind) {
        case Kind::length:
            return scale == Scale::fine ? Usual{4, 3, 1, 0} : Usual{3, 1, 0, 2};
        case Kind::area:
            return {1, 0, 0, 1};
        case Kind::volume:
            return scale == Scale::coarse ? Usual{2, 0, 0, 2} : Usual{2, 1, 1, 0};
        case Kind::duration:
            return scale == Scale::coarse ? Usual{1, 1, 1, 1} : Usual{0, 1, 0, 1};
        case Kind::velocity:
            return {1, 0, 0, 2};
        case Kind::volume_flow:
            return scale == Scale::coarse ? Usual{5, 0, 0, 1} : Usual{4, 1, 1, 0};
        case Kind::mass_flow:
            return {2, 1, 1, 1};
        case Kind::power:
            return {1, 2, 1, 2};
        case Kind::pressure:
            return {3, 2, 1, 2};
        case Kind::pressure_difference:
            return {2, 3, 0, 1};
        case Kind::temperature:
            return {2, 1, 1, 1};
        case Kind::temperature_difference:
            return {2, 1, 1, 1};
        case Kind::humidity_ratio:
            return {2, 0, 1, 1};
        case Kind::fraction:
            return {1, 1, 1, 1};
        case Kind::evaporation:
            return {2, 3, 1, 2};
        case Kind::concentration:
            return {1, 0, 1, 0};
        case Kind::conductivity:
            return {1, 0, 1, 0};
        case Kind::mass:
            return {2, 1, 0, 1};
        case Kind::flow_per_length:
            return {2, 2, 1, 1};
        case Kind::specific_enthalpy:
            return {2, 1, 1, 1};
        case Kind::specific_volume:
            return {1, 2, 0, 3};
        case Kind::density:
            return {1, 4, 0, 3};
        case Kind::energy:
            return {1, 1, 1, 1};
        case Kind::water_price:
            return {1, 2, 0, 2};
        case Kind::energy_price:
            return {1, 3, 1, 3};
    }
    return {0, 3, 0, 3};
}

/// How many of the unit make the SI unit, if that is a whole number above 1, as 1000 mm.
std::optional<double> whole_inverse(const Unit& unit) {
    const double inverse = 1.0 / unit.factor;
    return inverse > 1.0 && inverse == std::round(inverse) ? std::optional{inverse} : std::nullopt;
}

}  // namespace

double to_si(const Unit& unit, double number) {
    const auto inverse = whole_inverse(unit);
    return inverse ? (number + unit.offset) / *inverse : (number + unit.offset) * unit.factor;
}

double number_in(const Unit& unit, double si) {
    const auto inverse = whole_inverse(unit);
    return (inverse ? si * *inverse : si / unit.factor) - unit.offset;
}

std::string_view name_of(Kind kind) {
    switch (kind) {
        case Kind::length:
            return "length";
        case Kind::area:
            return "area";
        case Kind::volume:
            return "volume";
        case Kind::duration:
            return "time";
        case Kind::velocity:
            return "speed";
        case Kind::volume_flow:
            return "flow";
        case Kind::mass_flow:
            return "mass flow";
        case Kind::power:
            return "power";
        case Kind::pressure:
            return "absolute pressure";
        case Kind::pressure_difference:
            return "pressure difference";
        case Kind::temperature:
            return "temperature";
        case Kind::temperature_difference:
            return "temperature difference";
        case Kind::humidity_ratio:
            return "humidity ratio";
        case Kind::fraction:
            return "share";
        case Kind::evaporation:
            return "evaporation";
        case Kind::concentration:
            return "concentration";
        case Kind::conductivity:
            return "conductivity";
        case Kind::mass:
            return "mass";
        case Kind::flow_per_length:
            return "flow per length";
        case Kind::specific_enthalpy:
            return "enthalpy";
        case Kind::specific_volume:
            return "specific volume";
        case Kind::density:
            return "density";
        case Kind::energy:
            return "energy";
        case Kind::water_price:
            return "price of water";
        case Kind::energy_price:
            return "price of energy";
    }
    return "quantity";
}

std::span<const Unit> units_of(Kind kind) {
    switch (kind) {
        case Kind::length:
            return lengths;
        case Kind::area:
            return areas;
        case Kind::volume:
            return volumes;
        case Kind::duration:
            return durations;
        case Kind::velocity:
            return velocities;
        case Kind::volume_flow:
            return volume_flows;
        case Kind::mass_flow:
            return mass_flows;
        case Kind::power:
            return powers;
        case Kind::pressure:
            return pressures;
        case Kind::pressure_difference:
            return pressure_differences;
        case Kind::temperature:
            return temperatures;
        case Kind::temperature_difference:
            return temperature_differences;
        case Kind::humidity_ratio:
            return humidity_ratios;
        case Kind::fraction:
            return fractions;
        case Kind::evaporation:
            return evaporations;
        case Kind::concentration:
            return concentrations;
        case Kind::conductivity:
            return conductivities;
        case Kind::mass:
            return masses;
        case Kind::flow_per_length:
            return flows_per_length;
        case Kind::specific_enthalpy:
            return specific_enthalpies;
        case Kind::specific_volume:
            return specific_volumes;
        case Kind::density:
            return densities;
        case Kind::energy:
            return energies;
        case Kind::water_price:
            return water_prices;
        case Kind::energy_price:
            return energy_prices;
    }
    return {};
}

DisplayUnit display_unit(Kind kind, UnitSystem system, Scale scale) {
    const auto units = units_of(kind);
    const auto choice = usual(kind, scale);
    if (system == UnitSystem::us) {
        return {&units[choice.us], choice.us_decimals};
    }
    return {&units[choice.si], choice.si_decimals};
}

}  // namespace wetfront
