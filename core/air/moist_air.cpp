// SPDX-License-Identifier: Apache-2.0
#include "air/moist_air.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "air/saturation.h"
#include "base/numbers.h"

// Equation numbers: ASHRAE Handbook - Fundamentals 2017 (SI), chapter 1. Temperatures in degC, pressures in
// Pa, enthalpies in kJ per kg of dry air below, as in the equations.
namespace wetfront {
namespace {

using air_detail::ice_melts;
using air_detail::log_saturation;
using air_detail::log_saturation_over_ice;
using air_detail::log_saturation_over_water;
using air_detail::LogSaturation;

constexpr double water_to_dry_air = 0.621945;     // ratio of molar masses, eq. 20
constexpr double dry_air_gas_constant = 287.042;  // J/(kg K), eq. 26

constexpr double coldest = -40.0;
constexpr double hottest = 80.0;
constexpr double thinnest = 60e3;
constexpr double densest = 110e3;
constexpr double coldest_saturation = -100.0;
constexpr double hottest_saturation = 200.0;

// The limits belong to the range; converting from kelvin must not push them out of it.
constexpr double conversion = 1e-9;
// Wet bulbs are solved to 1e-8 K; a humidity ratio found back from one misses 0 or saturation by this at
// most.
constexpr double rounding = 1e-9;

std::string with_unit(double value, std::string_view unit) {
    return print_number(value, 3) + " " + std::string{unit};
}

bool in_range(double t, double p) {
    return t >= coldest - conversion && t <= hottest + conversion && p >= thinnest && p <= densest;
}

// Of what is not in_range().
Error out_of_range(double t, double p) {
    if (!(p >= thinnest && p <= densest)) {
        return bad_input("air pressure", with_unit(p / 1000.0, "kPa"), "60 to 110 kPa");
    }
    return bad_input("dry bulb", with_unit(t, "degC"), "-40 to 80 degC");
}

// Eq. 20 and its inverse.
double ratio_from_vapour(double vapour, double p) {
    return water_to_dry_air * vapour / (p - vapour);
}
double vapour_from_ratio(double ratio, double p) {
    return p * ratio / (water_to_dry_air + ratio);
}

// What: the heat balance of a wet bulb, over water (eq. 33) and over ice (eq. 35). Both read
// (heat - heat_fall wet) Ws(wet) - 1.006 (t - wet) = W (heat + 1.86 t - liquid wet), with Ws the humidity
// ratio of saturated air. Simplification of the equations: the bulb is adiabatic and well ventilated.
struct Balance {
    double heat;
    double heat_fall;
    double liquid;
};
constexpr Balance over_water{2501.0, 2.326, 4.186};
constexpr Balance over_ice{2830.0, 0.24, 2.1};

double ratio_from_wet_bulb(const Balance& balance, double t, double wet, double saturated) {
    return ((balance.heat - balance.heat_fall * wet) * saturated - 1.006 * (t - wet)) /
           (balance.heat + 1.86 * t - balance.liquid * wet);
}

double ratio_from_wet_bulb(double t, double wet, double p) {
    return ratio_from_wet_bulb(wet >= 0.0 ? over_water : over_ice, t, wet,
                               ratio_from_vapour(std::exp(log_saturation(wet).value), p));
}

// Saturation at a temperature, with the pressure itself.
struct Saturation {
    double at;
    double pressure;
    LogSaturation log;
};

Saturation saturation_at(double t) {
    const auto log = log_saturation(t);
    return {t, std::exp(log.value), log};
}

// A function at one place, and how far below Householder's rule puts its zero.
struct Step {
    double f;
    double down;
};

// Householder's rule of third order, from a function and its first three derivatives.
Step householder(double f, double f1, double f2, double f3) {
    return {f, 3.0 * f * (2.0 * f1 * f1 - f * f2) / (6.0 * f1 * (f1 * f1 - f * f2) + f * f * f3)};
}

// The balance of given air, times p - pws so that it needs no division: F = pws (a - b wet) - p (c - d wet),
// which rises with the wet bulb everywhere in range.
class WetBulbFunction {
public:
    WetBulbFunction(const Balance& balance, double t, double ratio, double p)
        : c_{ratio * (balance.heat + 1.86 * t) + 1.006 * t},
          d_{ratio * balance.liquid + 1.006},
          a_{water_to_dry_air * balance.heat + c_},
          b_{water_to_dry_air * balance.heat_fall + d_},
          p_{p} {}

    [[nodiscard]] double at_zero(double pressure) const { return pressure * a_ - p_ * c_; }

    [[nodiscard]] Step step_from(const Saturation& s) const {
        const double lever = a_ - b_ * s.at;
        // Derivatives of the pressure, each by the pressure itself.
        const double first = s.log.slope;
        const double second = first * first + s.log.bend;
        const double third = first * (second + 2.0 * s.log.bend) + s.log.twist;
        return householder(s.pressure * lever - p_ * (c_ - d_ * s.at),
                           s.pressure * (first * lever - b_) + p_ * d_,
                           s.pressure * (second * lever - 2.0 * b_ * first),
                           s.pressure * (third * lever - 3.0 * b_ * second));
    }

    // The zero between `low` and the known saturation, from which the first step is made. A step that would
    // leave the bracket is replaced by its middle, so most_steps always suffice over
    // the whole range. Convergence is of fourth order: after a last step of `close` the rest is below 1e-8 K.
    [[nodiscard]] double zero_below(const Saturation& known, double low) const {
        constexpr double close = 0.2;
        constexpr int most_steps = 60;
        double high = known.at;
        const Step first = step_from(known);
        if (first.f <= 0.0) {
            return high;
        }
        double wet = inside(known.at - first.down, low, high);
        for (int count = 0; count < most_steps; ++count) {
            const Step step = step_from(saturation_at(wet));
            (step.f > 0.0 ? high : low) = wet;
            const double next = wet - step.down;
            // The slope of saturation changes where ice melts.
            const bool same_side = (wet < ice_melts) == (next < ice_melts);
            if (std::abs(step.down) < close && same_side) {
                return std::clamp(next, low, high);
            }
            wet = inside(next, low, high);
        }
        return wet;
    }

private:
    static double inside(double wet, double low, double high) {
        return wet > low && wet < high ? wet : 0.5 * (low + high);
    }

    double c_;
    double d_;
    double a_;
    double b_;
    double p_;
};

// Eqs. 33 and 35 solved for the wet bulb of air whose dry bulb has the known saturation.
double wet_bulb_from_ratio(const Saturation& air, double ratio, double p) {
    const double t = air.at;
    if (t < 0.0) {
        return WetBulbFunction{over_ice, t, ratio, p}.zero_below(air, coldest_saturation);
    }
    constexpr double saturation_at_zero = 611.1535708907658;  // eq. 5 at 0 degC
    const WetBulbFunction wetted{over_water, t, ratio, p};
    if (wetted.at_zero(saturation_at_zero) <= 0.0) {
        return wetted.zero_below(air, 0.0);
    }
    return WetBulbFunction{over_ice, t, ratio, p}.zero_below(saturation_at(0.0), coldest_saturation);
}

// Eqs. 5 and 6 solved for the temperature at which vapour of that pressure saturates, at most the dry bulb.
// The start is a polynomial for 1000 / kelvin in ln pws, nearly a straight line, fitted to the two equations
// (-100 to 0.01 degC and 0.01 to 80 degC) and off by at most 6e-5 K; Newton's rule squares that to below 1e-9
// K.
std::optional<double> dew_point_from_vapour(double t, double log_vapour) {
    constexpr double log_coldest = -6.567645293;  // eq. 5 at -100 degC, rounded down
    constexpr double log_ice_melts = 6.41617171;  // eq. 6 at 0.01 degC
    if (!(log_vapour >= log_coldest)) {
        return std::nullopt;
    }
    const auto newton = [&](double start, const LogSaturation& log) {
        return std::min(t, start - (log.value - log_vapour) / log.slope);
    };
    const double x = log_vapour;
    if (x < log_ice_melts) {
        const double start =
            1000.0 / (4.704306482 +
                      x * (-0.1627264201 +
                           x * (4.094502905e-5 +
                                x * (-2.685866888e-6 + x * (-1.616882355e-7 + x * -6.358008443e-9))))) -
            273.15;
        return newton(start, log_saturation_over_ice(start));
    }
    const double y = x - 8.0;
    const double start =
        1000.0 /
            (3.365567203 +
             y * (-0.1885287687 + y * (-1.415291016e-3 +
                                       y * (-6.501053372e-5 + y * (-2.147010334e-6 + y * 8.603471399e-8))))) -
        273.15;
    return newton(start, log_saturation_over_water(start));
}

MoistAir state(double t, double wet, std::optional<double> dew, double ratio, double relative_humidity,
               double p) {
    const double volume = dry_air_gas_constant * (t + 273.15) * (1.0 + 1.607858 * ratio) / p;  // eq. 26
    const double enthalpy = 1.006 * t + ratio * (2501.0 + 1.86 * t);                           // eq. 30
    return {from_si<AbsolutePressure>(p),
            celsius(t),
            celsius(wet),
            dew ? std::optional{celsius(*dew)} : std::nullopt,
            from_si<Fraction>(relative_humidity),
            from_si<HumidityRatio>(ratio),
            from_si<SpecificEnthalpy>(1000.0 * enthalpy),
            from_si<SpecificVolume>(volume),
            from_si<Density>((1.0 + ratio) / volume)};  // eq. 11
}

// Of a wet bulb at or below the dry bulb; the balance asks for less than no water where it lies too low.
Result<double> checked_ratio(double t, double wet, double p) {
    if (!in_range(t, p)) {
        return out_of_range(t, p);
    }
    const double ratio = wet >= coldest_saturation && wet <= t ? ratio_from_wet_bulb(t, wet, p) : -1.0;
    if (!(ratio >= -rounding)) {
        const double least = wet_bulb_from_ratio(saturation_at(t), 0.0, p);
        return bad_input("wet bulb", with_unit(wet, "degC"),
                         "at least that of dry air, " + with_unit(least, "degC") +
                             ", and at most the dry bulb, " + with_unit(t, "degC"));
    }
    return std::max(0.0, ratio);
}

bool humid_in_range(double t, double humidity, double p) {
    return in_range(t, p) && humidity >= 0.0 && humidity <= 1.0;
}

Error humid_out_of_range(double t, double humidity, double p) {
    return in_range(t, p) ? bad_input("relative humidity", with_unit(100.0 * humidity, "%"), "0 to 100 %")
                          : out_of_range(t, p);
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
    if (!(t >= coldest_saturation - conversion && t <= hottest_saturation + conversion)) {
        return bad_input("temperature", with_unit(t, "degC"), "-100 to 200 degC");
    }
    return from_si<AbsolutePressure>(std::exp(log_saturation(t).value));
}

Result<HumidityRatio> humidity_ratio_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb,
                                                   AbsolutePressure pressure) {
    WF_TRY(const double ratio, checked_ratio(in_celsius(dry_bulb), in_celsius(wet_bulb), in_si(pressure)));
    return from_si<HumidityRatio>(ratio);
}

Result<Temperature> wet_bulb_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                           AbsolutePressure pressure) {
    const double t = in_celsius(dry_bulb);
    const double p = in_si(pressure);
    const double humidity = in_si(relative_humidity);
    if (!humid_in_range(t, humidity, p)) {
        return humid_out_of_range(t, humidity, p);
    }
    const Saturation air = saturation_at(t);
    return celsius(wet_bulb_from_ratio(air, ratio_from_vapour(humidity * air.pressure, p), p));
}

Result<MoistAir> air_from_humidity(Temperature dry_bulb, Fraction relative_humidity,
                                   AbsolutePressure pressure) {
    const double t = in_celsius(dry_bulb);
    const double p = in_si(pressure);
    const double humidity = in_si(relative_humidity);
    if (!humid_in_range(t, humidity, p)) {
        return humid_out_of_range(t, humidity, p);
    }
    const Saturation air = saturation_at(t);
    const double ratio = ratio_from_vapour(humidity * air.pressure, p);
    return state(t, wet_bulb_from_ratio(air, ratio, p),
                 dew_point_from_vapour(t, air.log.value + std::log(humidity)), ratio, humidity, p);
}

Result<MoistAir> air_from_wet_bulb(Temperature dry_bulb, Temperature wet_bulb, AbsolutePressure pressure) {
    const double t = in_celsius(dry_bulb);
    const double wet = in_celsius(wet_bulb);
    const double p = in_si(pressure);
    WF_TRY(const double ratio, checked_ratio(t, wet, p));
    const Saturation air = saturation_at(t);
    // Saturated air comes out at saturation but for the last digit.
    const double vapour = std::min(vapour_from_ratio(ratio, p), air.pressure);
    return state(t, wet, dew_point_from_vapour(t, std::log(vapour)), ratio, vapour / air.pressure, p);
}

Result<MoistAir> air_from_dew_point(Temperature dry_bulb, Temperature dew_point, AbsolutePressure pressure) {
    const double t = in_celsius(dry_bulb);
    const double dew = in_celsius(dew_point);
    const double p = in_si(pressure);
    if (!in_range(t, p)) {
        return out_of_range(t, p);
    }
    if (!(dew >= coldest_saturation - conversion && dew <= t)) {
        return bad_input("dew point", with_unit(dew, "degC"),
                         "-100 degC to the dry bulb, " + with_unit(t, "degC"));
    }
    const Saturation air = saturation_at(t);
    const double humidity = std::exp(log_saturation(dew).value - air.log.value);
    const double ratio = ratio_from_vapour(humidity * air.pressure, p);
    return state(t, wet_bulb_from_ratio(air, ratio, p), dew, ratio, humidity, p);
}

Result<MoistAir> air_from_humidity_ratio(Temperature dry_bulb, HumidityRatio humidity_ratio,
                                         AbsolutePressure pressure) {
    const double t = in_celsius(dry_bulb);
    const double ratio = in_si(humidity_ratio);
    const double p = in_si(pressure);
    if (!in_range(t, p)) {
        return out_of_range(t, p);
    }
    const Saturation air = saturation_at(t);
    const double saturated = ratio_from_vapour(air.pressure, p);
    if (!(ratio >= 0.0 && ratio <= saturated + rounding)) {
        return bad_input("humidity ratio", with_unit(1000.0 * ratio, "g/kg"),
                         "0 to that of saturated air, " + with_unit(1000.0 * saturated, "g/kg"));
    }
    const double vapour = std::min(vapour_from_ratio(ratio, p), air.pressure);
    return state(t, wet_bulb_from_ratio(air, ratio, p), dew_point_from_vapour(t, std::log(vapour)), ratio,
                 vapour / air.pressure, p);
}

}  // namespace wetfront
