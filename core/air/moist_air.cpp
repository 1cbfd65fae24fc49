// SPDX-License-Identifier: Apache-2.0
#include "air/moist_air.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "base/numbers.h"

// Equation numbers: ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1. Temperatures in degC, pressures in
// Pa, enthalpies in kJ per kg of dry air below, as in the equations.
namespace wetfront {
namespace {

constexpr double water_to_dry_air = 0.621945;     // ratio of molar masses, eq. 20
constexpr double dry_air_gas_constant = 287.042;  // J/(kg K), eq. 26

constexpr double coldest = -40.0;
constexpr double hottest = 80.0;
constexpr double thinnest = 60e3;
constexpr double densest = 110e3;

std::string with_unit(double value, std::string_view unit) {
    return print_number(value, 3) + " " + std::string{unit};
}

Result<double> checked_celsius(Temperature temperature, const char* item) {
    const double t = in_celsius(temperature);
    // The limits belong to the range; converting from kelvin must not push them out of it.
    if (!(t >= coldest - 1e-9 && t <= hottest + 1e-9)) {
        return bad_input(item, with_unit(t, "degC"), "-40 to 80 degC");
    }
    return t;
}

Result<double> checked_pascal(AbsolutePressure pressure) {
    const double p = in_si(pressure);
    if (!(p >= thinnest && p <= densest)) {
        return bad_input("air pressure", with_unit(p / 1000.0, "kPa"), "60 to 110 kPa");
    }
    return p;
}

// Eqs. 5 and 6, Pa; t in degC within -100 to 200.
double saturation(double t) {
    const double kelvin = t + 273.15;
    if (t < 0.0) {
        return std::exp(-5.6745359e3 / kelvin + 6.3925247 +
                        kelvin *
                            (-9.6778430e-3 +
                             kelvin * (6.2215701e-7 + kelvin * (2.0747825e-9 + kelvin * -9.4840240e-13))) +
                        4.1635019 * std::log(kelvin));
    }
    return std::exp(-5.8002206e3 / kelvin + 1.3914993 +
                    kelvin * (-4.8640239e-2 + kelvin * (4.1764768e-5 + kelvin * -1.4452093e-8)) +
                    6.5459673 * std::log(kelvin));
}

// Eq. 20.
double ratio_from_vapour(double vapour, double p) {
    return water_to_dry_air * vapour / (p - vapour);
}

// Eq. 33 over water, eq. 35 over ice.
double ratio_over_water(double t, double wet, double p) {
    const double saturated = ratio_from_vapour(saturation(wet), p);
    return ((2501.0 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501.0 + 1.86 * t - 4.186 * wet);
}
double ratio_over_ice(double t, double wet, double p) {
    const double saturated = ratio_from_vapour(saturation(wet), p);
    return ((2830.0 - 0.24 * wet) * saturated - 1.006 * (t - wet)) / (2830.0 + 1.86 * t - 2.1 * wet);
}

// Wet bulb for a humidity ratio. The two equations don't meet at 0 degC: over ice the same wet bulb stands
// for more humidity, so a narrow band of humidity has two answers. The one over water is taken, as a wetted
// wick has it. `saturated` is the humidity ratio of saturated air at t.
double wet_bulb(double t, double ratio, double saturated, double p) {
    if (ratio >= saturated) {
        return t;
    }
    const bool over_water = t >= 0.0 && ratio >= ratio_over_water(t, 0.0, p);
    const auto excess = [&](double wet) {
        return (over_water ? ratio_over_water(t, wet, p) : ratio_over_ice(t, wet, p)) - ratio;
    };
    // Bone-dry air of 80 degC has its wet bulb 60 K below; -100 degC holds no vapour worth naming.
    const double low = over_water ? 0.0 : -100.0;
    const double high = over_water ? t : std::min(t, 0.0);
    const double at_low = excess(low);
    const double at_high = excess(high);
    if (at_low >= 0.0) {
        return low;
    }
    if (at_high <= 0.0) {
        return high;
    }
    std::uintmax_t steps = 60;
    const auto bracket = boost::math::tools::toms748_solve(
        excess, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(46), steps);
    return 0.5 * (bracket.first + bracket.second);
}

MoistAir state(double t, double wet, double ratio, double relative_humidity, double p) {
    const double volume = dry_air_gas_constant * (t + 273.15) * (1.0 + 1.607858 * ratio) / p;  // eq. 26
    const double enthalpy = 1.006 * t + ratio * (2501.0 + 1.86 * t);                           // eq. 30
    return {from_si<AbsolutePressure>(p),
            celsius(t),
            celsius(wet),
            from_si<Fraction>(relative_humidity),
            from_si<HumidityRatio>(ratio),
            from_si<SpecificEnthalpy>(1000.0 * enthalpy),
            from_si<SpecificVolume>(volume),
            from_si<Density>((1.0 + ratio) / volume)};  // eq. 11
}

}  // namespace

Result<AbsolutePressure> standard_pressure(Length elevation) {
    const double z = in_si(elevation);
    if (!(z >= -500.0 && z <= 4000.0)) {
        return bad_input("elevation", with_unit(z, "m"), "-500 to 4000 m");
    }
    return from_si<AbsolutePressure>(101325.0 * std::pow(1.0 - 2.25577e-5 * z, 5.2559));
}

Result<AbsolutePressure> saturation_pressure(Temperature temperature) {
    const double t = in_celsius(temperature);
    if (!(t >= -100.0 && t <= 200.0)) {
        return bad_input("temperature", with_unit(t, "degC"), "-100 to 200 degC");
    }
    return from_si<AbsolutePressure>(saturation(t));
}

Result<HumidityRatio> humidity_ratio_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                   AbsolutePressure pressure) {
    WF_TRY(const double t, checked_celsius(dry_bulb, "dry bulb"));
    WF_TRY(const double wet, checked_celsius(wet_bulb, "wet bulb"));
    WF_TRY(const double p, checked_pascal(pressure));
    if (wet > t) {
        return bad_input("wet bulb", with_unit(wet, "degC"), "at most the dry bulb, " + with_unit(t, "degC"));
    }
    const double ratio = wet >= 0.0 ? ratio_over_water(t, wet, p) : ratio_over_ice(t, wet, p);
    if (ratio < 0.0) {
        return bad_input("wet bulb", with_unit(wet, "degC"),
                         "not so far below the dry bulb of " + with_unit(t, "degC") + ": no air is that dry");
    }
    return from_si<HumidityRatio>(ratio);
}

Result<MoistAir> air_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                   AbsolutePressure pressure) {
    WF_TRY(const double t, checked_celsius(dry_bulb, "dry bulb"));
    WF_TRY(const double p, checked_pascal(pressure));
    const double humidity = in_si(relative_humidity);
    if (!(humidity >= 0.0 && humidity <= 1.0)) {
        return bad_input("relative humidity", with_unit(100.0 * humidity, "%"), "0 to 100 %");
    }
    const double vapour = saturation(t);
    const double ratio = ratio_from_vapour(humidity * vapour, p);
    return state(t, wet_bulb(t, ratio, ratio_from_vapour(vapour, p), p), ratio, humidity, p);
}

Result<MoistAir> air_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb, AbsolutePressure pressure) {
    WF_TRY(const HumidityRatio humidity_ratio, humidity_ratio_from_wet_bulb(dry_bulb, wet_bulb, pressure));
    const double t = in_celsius(dry_bulb);
    const double p = in_si(pressure);
    const double ratio = in_si(humidity_ratio);
    const double vapour = p * ratio / (water_to_dry_air + ratio);
    // Saturated air comes out at 1 but for the last digit.
    return state(t, in_celsius(wet_bulb), ratio, std::min(1.0, vapour / saturation(t)), p);
}

}  // namespace wetfront
