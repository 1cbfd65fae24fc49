// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/base_dimension.hpp>
#include <boost/units/base_unit.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>

namespace wetfront {

namespace units_detail {
namespace bu = boost::units;

// Dry air is counted apart from water, so that a humidity ratio is not a plain number and cannot be added to
// one.
struct dry_air_dimension : bu::base_dimension<dry_air_dimension, 1001> {};
struct dry_air_kilogram : bu::base_unit<dry_air_kilogram, dry_air_dimension::dimension_type, 1002> {
    static std::string name() { return "kilogram of dry air"; }
    static std::string symbol() { return "kg_da"; }
};
using dry_air_system = bu::make_system<dry_air_kilogram>::type;
using dry_air_unit = bu::unit<dry_air_dimension::dimension_type, dry_air_system>;

template <class A, class B>
using product = typename bu::multiply_typeof_helper<A, B>::type;
template <class A, class B>
using quotient = typename bu::divide_typeof_helper<A, B>::type;

using volume_flow_unit = quotient<bu::si::volume, bu::si::time>;
using mass_flow_unit = quotient<bu::si::mass, bu::si::time>;
using evaporation_unit = quotient<mass_flow_unit, bu::si::area>;
using conductivity_unit = quotient<bu::si::conductance, bu::si::length>;
using enthalpy_unit = quotient<bu::si::energy, dry_air_unit>;
using humidity_ratio_unit = quotient<bu::si::mass, dry_air_unit>;
using specific_volume_unit = quotient<bu::si::volume, dry_air_unit>;
using flow_per_length_unit = quotient<volume_flow_unit, bu::si::length>;
// Money has no unit here: which money it is, the farm says.
using water_price_unit = quotient<bu::si::dimensionless, bu::si::volume>;
using energy_price_unit = quotient<bu::si::dimensionless, bu::si::energy>;
}  // namespace units_detail

// The quantities of the trade, SI inside. A difference and a level are two types: a temperature difference
// can be added to a temperature, two temperatures cannot be added; the same for pressures.
using Length = boost::units::quantity<boost::units::si::length>;            ///< m
using Area = boost::units::quantity<boost::units::si::area>;                ///< m2
using Volume = boost::units::quantity<boost::units::si::volume>;            ///< m3
using Duration = boost::units::quantity<boost::units::si::time>;            ///< s
using Rate = boost::units::quantity<boost::units::si::frequency>;           ///< 1/s
using Velocity = boost::units::quantity<boost::units::si::velocity>;        ///< m/s
using VolumeFlow = boost::units::quantity<units_detail::volume_flow_unit>;  ///< m3/s
using FlowPerLength =
    boost::units::quantity<units_detail::flow_per_length_unit>;         ///< m2/s: m3/s for each metre of pad
using Mass = boost::units::quantity<boost::units::si::mass>;            ///< kg
using MassFlow = boost::units::quantity<units_detail::mass_flow_unit>;  ///< kg/s
using Power = boost::units::quantity<boost::units::si::power>;          ///< W
using Energy = boost::units::quantity<boost::units::si::energy>;        ///< J
using WaterPrice = boost::units::quantity<units_detail::water_price_unit>;  ///< of 1 m3, in the farm's money
using EnergyPrice = boost::units::quantity<units_detail::energy_price_unit>;  ///< of 1 J, in the farm's money
using PressureDifference = boost::units::quantity<boost::units::si::pressure>;                        ///< Pa
using AbsolutePressure = boost::units::quantity<boost::units::absolute<boost::units::si::pressure>>;  ///< Pa
using TemperatureDifference = boost::units::quantity<boost::units::si::temperature>;                  ///< K
using Temperature = boost::units::quantity<boost::units::absolute<boost::units::si::temperature>>;    ///< K
using HumidityRatio = boost::units::quantity<units_detail::humidity_ratio_unit>;  ///< kg per kg of dry air
using Fraction =
    boost::units::quantity<boost::units::si::dimensionless>;  ///< 1; relative humidity, effectiveness
using EvaporationFlux = boost::units::quantity<units_detail::evaporation_unit>;     ///< kg/(s m2) of pad face
using Concentration = boost::units::quantity<boost::units::si::mass_density>;       ///< kg/m3
using Density = Concentration;                                                      ///< kg/m3
using Conductivity = boost::units::quantity<units_detail::conductivity_unit>;       ///< S/m
using SpecificEnthalpy = boost::units::quantity<units_detail::enthalpy_unit>;       ///< J per kg of dry air
using SpecificVolume = boost::units::quantity<units_detail::specific_volume_unit>;  ///< m3 per kg of dry air

/// Number in the SI unit named at the type above.
template <class Unit, class Y>
[[nodiscard]] constexpr double in_si(const boost::units::quantity<Unit, Y>& q) {
    return q.value();
}
template <class Unit>
[[nodiscard]] constexpr double in_si(const boost::units::quantity<boost::units::absolute<Unit>, double>& q) {
    return q.value();
}

/// A quantity from a number in the SI unit named at its type.
template <class Q>
[[nodiscard]] constexpr Q from_si(double value) {
    return Q::from_value(value);
}

[[nodiscard]] inline double in_seconds(Duration d) {
    return d.value();
}
[[nodiscard]] inline double in_celsius(Temperature t) {
    return t.value() - 273.15;
}
[[nodiscard]] inline double in_kelvin(Temperature t) {
    return t.value();
}
[[nodiscard]] inline Duration seconds(double value) {
    return from_si<Duration>(value);
}
[[nodiscard]] inline Temperature celsius(double value) {
    return from_si<Temperature>(value + 273.15);
}

inline namespace literals {
// NOLINTBEGIN(google-runtime-int): the language fixes these parameter types
inline Duration operator""_s(long double v) {
    return seconds(static_cast<double>(v));
}
inline Duration operator""_s(unsigned long long v) {
    return seconds(static_cast<double>(v));
}
inline Duration operator""_min(long double v) {
    return seconds(60.0 * static_cast<double>(v));
}
inline Duration operator""_min(unsigned long long v) {
    return seconds(60.0 * static_cast<double>(v));
}
inline Length operator""_m(long double v) {
    return from_si<Length>(static_cast<double>(v));
}
inline Length operator""_m(unsigned long long v) {
    return from_si<Length>(static_cast<double>(v));
}
inline Length operator""_mm(long double v) {
    return from_si<Length>(static_cast<double>(v) / 1000.0);
}
inline Length operator""_mm(unsigned long long v) {
    return from_si<Length>(static_cast<double>(v) / 1000.0);
}
inline Velocity operator""_mps(long double v) {
    return from_si<Velocity>(static_cast<double>(v));
}
inline Temperature operator""_degC(long double v) {
    return celsius(static_cast<double>(v));
}
inline Temperature operator""_degC(unsigned long long v) {
    return celsius(static_cast<double>(v));
}
inline TemperatureDifference operator""_K(long double v) {
    return from_si<TemperatureDifference>(static_cast<double>(v));
}
inline TemperatureDifference operator""_K(unsigned long long v) {
    return from_si<TemperatureDifference>(static_cast<double>(v));
}
inline Fraction operator""_percent(long double v) {
    return from_si<Fraction>(static_cast<double>(v) / 100.0);
}
inline Fraction operator""_percent(unsigned long long v) {
    return from_si<Fraction>(static_cast<double>(v) / 100.0);
}
inline AbsolutePressure operator""_Pa(long double v) {
    return from_si<AbsolutePressure>(static_cast<double>(v));
}
inline AbsolutePressure operator""_Pa(unsigned long long v) {
    return from_si<AbsolutePressure>(static_cast<double>(v));
}
// NOLINTEND(google-runtime-int)
}  // namespace literals

}  // namespace wetfront
