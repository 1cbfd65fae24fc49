// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>

#include "units/quantities.h"

namespace wetfront {

/// What a number measures, where the type is only known at run time (fields, messages, files).
enum class Kind {
    length,
    area,
    volume,
    duration,
    velocity,
    volume_flow,
    mass_flow,
    power,
    pressure,
    pressure_difference,
    temperature,
    temperature_difference,
    humidity_ratio,
    fraction,
    evaporation,
    concentration,
    conductivity,
    mass,
    flow_per_length,
    specific_enthalpy,
    specific_volume,
    density,  ///< of air; a concentration in water is a kind of its own, with other usual units
    energy,
    water_price,
    energy_price,
};
inline constexpr Kind last_kind = Kind::energy_price;

enum class UnitSystem { us, si };

/// Which of a kind's usual units a number is shown in.
enum class Scale {
    normal,  ///< ft or m, gpm or L/min
    fine,    ///< in or mm
    coarse,  ///< cfm or m3/s
    clock,   ///< a duration since midnight as a time of day: 18:45
};

/// A unit as typed and as shown. SI value = (number + offset) * factor.
struct Unit {
    std::string_view symbol;   ///< as written in files and on the command line: "degF"
    std::string_view display;  ///< as shown to people: "°F"
    double factor;
    double offset;
};

/// The SI value of a number in that unit, and back. Decimal parts are divided, not multiplied by an inexact
/// factor: 57 % is 0.57 to the last digit.
[[nodiscard]] double to_si(const Unit& unit, double number);
[[nodiscard]] double number_in(const Unit& unit, double si);

[[nodiscard]] std::string_view name_of(Kind kind);

/// Every unit that is accepted for a kind, the SI one first. Static storage.
[[nodiscard]] std::span<const Unit> units_of(Kind kind);

/// The unit a number is shown in, and with how many digits behind the point. Static storage.
struct DisplayUnit {
    const Unit* unit;
    int decimals;
};
[[nodiscard]] DisplayUnit display_unit(Kind kind, UnitSystem system, Scale scale = Scale::normal);

/// The kind that belongs to a type: KindOf<Length>::value == Kind::length.
template <class Q>
struct KindOf;
// clang-format off
template <> struct KindOf<Length> { static constexpr Kind value = Kind::length; };
template <> struct KindOf<Area> { static constexpr Kind value = Kind::area; };
template <> struct KindOf<Volume> { static constexpr Kind value = Kind::volume; };
template <> struct KindOf<Duration> { static constexpr Kind value = Kind::duration; };
template <> struct KindOf<Velocity> { static constexpr Kind value = Kind::velocity; };
template <> struct KindOf<VolumeFlow> { static constexpr Kind value = Kind::volume_flow; };
template <> struct KindOf<MassFlow> { static constexpr Kind value = Kind::mass_flow; };
template <> struct KindOf<Power> { static constexpr Kind value = Kind::power; };
template <> struct KindOf<AbsolutePressure> { static constexpr Kind value = Kind::pressure; };
template <> struct KindOf<PressureDifference> { static constexpr Kind value = Kind::pressure_difference; };
template <> struct KindOf<Temperature> { static constexpr Kind value = Kind::temperature; };
template <> struct KindOf<TemperatureDifference> { static constexpr Kind value = Kind::temperature_difference; };
template <> struct KindOf<HumidityRatio> { static constexpr Kind value = Kind::humidity_ratio; };
template <> struct KindOf<Fraction> { static constexpr Kind value = Kind::fraction; };
template <> struct KindOf<EvaporationFlux> { static constexpr Kind value = Kind::evaporation; };
template <> struct KindOf<Concentration> { static constexpr Kind value = Kind::concentration; };
template <> struct KindOf<Conductivity> { static constexpr Kind value = Kind::conductivity; };
template <> struct KindOf<Mass> { static constexpr Kind value = Kind::mass; };
template <> struct KindOf<FlowPerLength> { static constexpr Kind value = Kind::flow_per_length; };
template <> struct KindOf<SpecificEnthalpy> { static constexpr Kind value = Kind::specific_enthalpy; };
template <> struct KindOf<SpecificVolume> { static constexpr Kind value = Kind::specific_volume; };
template <> struct KindOf<Energy> { static constexpr Kind value = Kind::energy; };
template <> struct KindOf<WaterPrice> { static constexpr Kind value = Kind::water_price; };
template <> struct KindOf<EnergyPrice> { static constexpr Kind value = Kind::energy_price; };
// clang-format on

}  // namespace wetfront
