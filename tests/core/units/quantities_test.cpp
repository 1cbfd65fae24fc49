// SPDX-License-Identifier: Apache-2.0
#include "units/quantities.h"

#include <gtest/gtest.h>

#include <concepts>
#include <type_traits>

namespace wetfront {
namespace {

template <class A, class B>
concept CanAdd = requires(A a, B b) {
    a + b;
}
|| requires(A a, B b) {
    b + a;
};
template <class A, class B>
concept CanSubtract = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept CanCompare = requires(A a, B b) {
    a < b;
}
|| requires(A a, B b) {
    a == b;
};

// This file does not build if one of these becomes valid. Sums of levels (a temperature and a temperature)
// are refused inside Boost.Units in a way that a concept cannot ask about: wrong_sums.cmake compiles each of
// them.
static_assert(!CanAdd<Length, Area>);
static_assert(!CanAdd<Length, double>);
static_assert(!CanAdd<Duration, double>);
static_assert(!CanAdd<Duration, Rate>);
static_assert(!CanAdd<VolumeFlow, MassFlow>);
static_assert(!CanAdd<TemperatureDifference, PressureDifference>);
static_assert(!CanAdd<TemperatureDifference, double>);
static_assert(!CanAdd<HumidityRatio, Fraction>);
static_assert(!CanAdd<HumidityRatio, double>);
static_assert(!CanAdd<EvaporationFlux, MassFlow>);
static_assert(!CanAdd<Concentration, Conductivity>);
static_assert(!CanSubtract<Length, Duration>);
static_assert(!CanSubtract<HumidityRatio, double>);
static_assert(!CanCompare<Temperature, TemperatureDifference>);
static_assert(!CanCompare<AbsolutePressure, PressureDifference>);
static_assert(!CanCompare<HumidityRatio, Fraction>);
static_assert(!CanCompare<HumidityRatio, double>);
static_assert(!CanCompare<Duration, double>);
static_assert(!CanCompare<Temperature, double>);
static_assert(!std::constructible_from<Duration, double>);
static_assert(!std::constructible_from<Length, int>);
static_assert(!std::constructible_from<Temperature, double>);
static_assert(!std::constructible_from<AbsolutePressure, double>);
static_assert(!std::constructible_from<HumidityRatio, double>);
static_assert(!std::constructible_from<double, Duration>);
static_assert(!std::constructible_from<double, HumidityRatio>);
static_assert(!std::convertible_to<Length, Duration>);
static_assert(!std::convertible_to<TemperatureDifference, Temperature>);
static_assert(!std::convertible_to<Temperature, TemperatureDifference>);
static_assert(!std::convertible_to<PressureDifference, AbsolutePressure>);

// The right ones, with the type they give.
template <class Wanted, class Got>
concept Gives = std::same_as<Wanted, std::remove_cvref_t<Got>>;
static_assert(Gives<Length, decltype(Length{} + Length{})>);
static_assert(Gives<TemperatureDifference, decltype(Temperature{} - Temperature{})>);
static_assert(Gives<Temperature, decltype(Temperature{} + TemperatureDifference{})>);
static_assert(Gives<Temperature, decltype(Temperature{} - TemperatureDifference{})>);
static_assert(Gives<PressureDifference, decltype(AbsolutePressure{} - AbsolutePressure{})>);
static_assert(Gives<AbsolutePressure, decltype(AbsolutePressure{} + PressureDifference{})>);
static_assert(Gives<Area, decltype(Length{} * Length{})>);
static_assert(Gives<VolumeFlow, decltype(Velocity{} * Area{})>);
static_assert(Gives<Duration, decltype(Volume{} / VolumeFlow{})>);
static_assert(Gives<MassFlow, decltype(EvaporationFlux{} * Area{})>);
static_assert(Gives<Fraction, decltype(TemperatureDifference{} / TemperatureDifference{})>);
static_assert(CanCompare<Temperature, Temperature>);
static_assert(CanCompare<Duration, Duration>);
static_assert(std::convertible_to<Fraction, double>);

using DryAirMass = boost::units::quantity<units_detail::dry_air_unit>;
using Mass = boost::units::quantity<boost::units::si::mass>;
static_assert(!CanAdd<DryAirMass, Mass>);

TEST(QuantitiesTest, dry_air_times_humidity_ratio_is_a_mass_of_water) {
    const Mass water = from_si<DryAirMass>(3.0) * from_si<HumidityRatio>(0.25);
    EXPECT_EQ(water.value(), 0.75);
    const HumidityRatio ratio = water / from_si<DryAirMass>(3.0);
    EXPECT_EQ(in_si(ratio), 0.25);
}

TEST(QuantitiesTest, literals_are_si_inside) {
    EXPECT_EQ(in_seconds(5_min), 300.0);
    EXPECT_EQ(in_seconds(1.5_min), 90.0);
    EXPECT_EQ(in_si(150_mm), 0.15);
    EXPECT_EQ(in_si(2_m), 2.0);
    EXPECT_EQ(in_kelvin(35_degC), 308.15);
    EXPECT_EQ(in_si(40_percent), 0.4);
    EXPECT_EQ(in_si(3_K), 3.0);
    EXPECT_EQ(in_si(101325_Pa), 101325.0);
    EXPECT_EQ(in_si(1.78_mps), 1.78);
}

TEST(QuantitiesTest, a_temperature_and_a_difference_of_temperatures_add_up) {
    EXPECT_DOUBLE_EQ(in_celsius(35_degC + 2_K), 37.0);
    EXPECT_DOUBLE_EQ(in_si(35_degC - 30_degC), 5.0);
    EXPECT_LT(30_degC, 35_degC);
}

}  // namespace
}  // namespace wetfront
