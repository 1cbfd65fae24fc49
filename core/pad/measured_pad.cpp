// SPDX-License-Identifier: Apache-2.0
#include "pad/measured_pad.h"

#include <cmath>

#include "base/numbers.h"
#include "pad/both_units.h"

namespace wetfront {
namespace {

constexpr double coverage = 2.0;
constexpr double coldest_wet_bulb = 0.1;   // degC; 0 and below is ice
constexpr double temperature_step = 0.01;  // K
constexpr double humidity_step = 1e-4;     // share
constexpr double widest_temperature_error = 5.0;
constexpr double widest_humidity_error = 0.2;

// A stated accuracy is a bound, within which any error is as likely as any other: GUM JCGM 100:2008, 4.3.7.
double standard_of(double bound) {
    return bound / std::sqrt(3.0);
}

Result<double> checked_temperature_error(TemperatureDifference accuracy, const char* item) {
    const double a = in_si(accuracy);
    if (!(a >= 0.0 && a <= widest_temperature_error)) {
        return bad_input(item, in_both_units(accuracy), "0 to 5 K (0 to 9 °F)");
    }
    return a;
}

Result<double> wet_bulb_at(const MoistAir& outside, double dry_bulb_change, double humidity_change) {
    WF_TRY(const auto air,
           air_from_humidity(from_si<Temperature>(in_kelvin(outside.dry_bulb) + dry_bulb_change),
                             from_si<Fraction>(in_si(outside.relative_humidity) + humidity_change),
                             outside.pressure));
    return in_kelvin(air.wet_bulb);
}

// Slope of the wet bulb between the air a step below and a step above. At the end of a range, as in dry air,
// there is air on one side only.
Result<double> slope(const MoistAir& outside, double dry_bulb_change, double humidity_change) {
    const double step = dry_bulb_change + humidity_change;
    const auto below = wet_bulb_at(outside, -dry_bulb_change, -humidity_change);
    const auto above = wet_bulb_at(outside, dry_bulb_change, humidity_change);
    if (below && above) {
        return (above.value() - below.value()) / (2.0 * step);
    }
    WF_TRY(const double here, wet_bulb_at(outside, 0.0, 0.0));
    if (below) {
        return (here - below.value()) / step;
    }
    WF_TRY(const double there, wet_bulb_at(outside, dry_bulb_change, humidity_change));
    return (there - here) / step;
}

// How the wet bulb goes with what was read, and how far off that reading may be.
struct WetBulb {
    double per_dry_bulb = 0.0;    // K/K
    double per_humidity = 1.0;    // K per unit of what humidity was read with
    double humidity_error = 0.0;  // standard, in that unit
};

Result<WetBulb> wet_bulb_of(const MoistAir& outside, HumidityFrom from, const InstrumentAccuracy& accuracy) {
    WetBulb wet;
    if (from == HumidityFrom::wet_bulb_thermometer) {
        WF_TRY(const double bound,
               checked_temperature_error(accuracy.wet_bulb, "accuracy of the wet-bulb thermometer"));
        wet.humidity_error = standard_of(bound);
        return wet;
    }
    const double bound = in_si(accuracy.relative_humidity);
    if (!(bound >= 0.0 && bound <= widest_humidity_error)) {
        return bad_input("accuracy of the hygrometer", print_number(100.0 * bound, 1) + " %", "0 to 20 %");
    }
    wet.humidity_error = standard_of(bound);
    WF_TRY(wet.per_dry_bulb, slope(outside, temperature_step, 0.0));
    WF_TRY(wet.per_humidity, slope(outside, 0.0, humidity_step));
    return wet;
}

}  // namespace

// u^2(e) = sum of (slope times standard uncertainty)^2, GUM JCGM 100:2008, eq. 10. With D = T_in - T_wb and
// T_wb a function of T_in and of the humidity reading h:
//   de/dT_out = -1/D     de/dT_in = (1 - e (1 - dT_wb/dT_in)) / D     de/dh = e (dT_wb/dh) / D
// Accuracy: first order; within 2 % of a Monte Carlo propagation with the assumed accuracies where the
// depression is 3 K or more and humidity does not reach 0 %.
// Simplifications: pressure counts as exact (1 kPa moves the wet bulb by less than 0.1 K); each temperature
// stands for the whole face.
Result<MeasuredEffectiveness> effectiveness_with_uncertainty(const MoistAir& outside, Temperature behind_pad,
                                                             HumidityFrom humidity_from,
                                                             const InstrumentAccuracy& accuracy) {
    const double wet_bulb = in_celsius(outside.wet_bulb);
    if (!(wet_bulb >= coldest_wet_bulb)) {
        return bad_input("wet bulb outside", in_both_units(outside.wet_bulb),
                         "0.1 °C (32.2 °F) or more: a pad in colder air freezes");
    }
    WF_TRY(const double dry_bulb_bound,
           checked_temperature_error(accuracy.dry_bulb, "accuracy of the thermometer outside"));
    WF_TRY(const double behind_bound,
           checked_temperature_error(accuracy.behind_pad, "accuracy of the thermometer behind the pad"));
    WF_TRY(const WetBulb wet, wet_bulb_of(outside, humidity_from, accuracy));

    const double depression = in_kelvin(outside.dry_bulb) - in_kelvin(outside.wet_bulb);
    if (!(depression > 0.0)) {
        return bad_input("outside air", "saturated", "air whose wet bulb lies below its dry bulb");
    }
    const double dry_bulb_error = standard_of(dry_bulb_bound);
    const double depression_error =
        std::hypot((1.0 - wet.per_dry_bulb) * dry_bulb_error, wet.per_humidity * wet.humidity_error);
    const double least = 2.0 * coverage * depression_error;
    if (depression < least) {
        return bad_input(
            "outside air",
            "wet bulb " + in_both_units(from_si<TemperatureDifference>(depression)) + " below dry bulb",
            "drier air: with these instruments a wet bulb at least " +
                in_both_units(from_si<TemperatureDifference>(least)) + " below the dry bulb");
    }

    const double e = (in_kelvin(outside.dry_bulb) - in_kelvin(behind_pad)) / depression;
    const double from_dry_bulb = (1.0 - e * (1.0 - wet.per_dry_bulb)) / depression * dry_bulb_error;
    const double from_behind_pad = standard_of(behind_bound) / depression;
    const double from_humidity = e * wet.per_humidity / depression * wet.humidity_error;
    const double standard = std::hypot(from_dry_bulb, from_behind_pad, from_humidity);
    const double expanded = coverage * standard;
    const bool outside_bounds = !(e >= 0.0 && e <= 1.0);
    if (!(e >= -expanded && e <= 1.0 + expanded)) {
        return bad_input("temperature behind the pad", in_both_units(behind_pad),
                         "one that gives an effectiveness of 0 to 100 %, give or take " +
                             print_number(100.0 * expanded, 0) + " %; this one gives " +
                             print_number(100.0 * e, 0) + " %");
    }
    return MeasuredEffectiveness{from_si<Fraction>(e),
                                 from_si<Fraction>(standard),
                                 coverage,
                                 from_si<Fraction>(expanded),
                                 from_si<Fraction>(std::abs(from_dry_bulb)),
                                 from_si<Fraction>(from_behind_pad),
                                 from_si<Fraction>(std::abs(from_humidity)),
                                 outside_bounds};
}

Result<EffectivenessComparison> compare_effectiveness(const MeasuredEffectiveness& measured,
                                                      Fraction expected, Fraction expected_standard) {
    const auto is_share = [](Fraction value) { return in_si(value) >= 0.0 && in_si(value) <= 1.0; };
    if (!is_share(expected)) {
        return bad_input("expected effectiveness", print_number(100.0 * in_si(expected), 1) + " %",
                         "0 to 100 %");
    }
    if (!is_share(expected_standard)) {
        return bad_input("uncertainty of the expected effectiveness",
                         print_number(100.0 * in_si(expected_standard), 1) + " %", "0 to 100 %");
    }
    const double difference = in_si(measured.value) - in_si(expected);
    const double expanded = coverage * std::hypot(in_si(measured.standard), in_si(expected_standard));
    auto verdict = EffectivenessVerdict::too_close;
    if (difference < -expanded) {
        verdict = EffectivenessVerdict::clearly_lower;
    } else if (difference > expanded) {
        verdict = EffectivenessVerdict::clearly_higher;
    } else if (std::abs(difference) + expanded <= in_si(assumed_difference_that_matters)) {
        verdict = EffectivenessVerdict::agrees;
    }
    return EffectivenessComparison{from_si<Fraction>(difference), from_si<Fraction>(expanded), verdict};
}

}  // namespace wetfront
