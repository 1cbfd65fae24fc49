// SPDX-License-Identifier: Apache-2.0
#include "pad/wetting_column.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "base/numbers.h"

// The model: a column's deficit grows at b while its face is wet, more slowly once a share c of what it holds
// is gone (the falling-rate period of drying), and shrinks at a while it is supplied. y = 1 - d is the water
// held, k = b/(1 - c).
namespace wetfront {
namespace {

// k t may be small or nothing: (1 - exp(-k t)) / k, which then is t.
double decayed(double k, double t) {
    return k > 0.0 ? -std::expm1(-k * t) / k : t;
}

// Time of supply for a deficit above c to come down to it; a > b.
double time_to_full_face(double a, double b, double c, double deficit) {
    const double k = b / (1.0 - c);
    const double missing = deficit - c;  // in y as in d
    return k > 0.0 ? std::log1p(k * missing / (a - b)) / k : missing / a;
}

Result<double> checked_time(Duration time, const char* item) {
    const double t = in_seconds(time);
    if (!(t > 0.0) || !std::isfinite(t)) {
        return bad_input(item, print_number(t, 3) + " s", "more than 0 s");
    }
    return t;
}

}  // namespace

double deficit_after_drying(const ColumnRates& rates, double deficit, Duration time) {
    const double b = in_si(rates.drying);
    const double c = rates.constant_share;
    const double t = in_seconds(time);
    if (deficit + b * t <= c) {
        return deficit + b * t;
    }
    const double start = std::max(deficit, c);
    const double spent = deficit < c ? (c - deficit) / b : 0.0;
    return 1.0 - (1.0 - start) * std::exp(-b / (1.0 - c) * (t - spent));
}

double deficit_after_supply(const ColumnRates& rates, double deficit, Duration time) {
    const double a = in_si(rates.wetting);
    const double b = in_si(rates.drying);
    const double c = rates.constant_share;
    double d = deficit;
    double t = in_seconds(time);
    if (a > b) {
        if (d > c) {
            const double full_face = time_to_full_face(a, b, c, d);
            if (t >= full_face) {
                t -= full_face;
                d = c;
            }
        }
        if (d <= c) {
            return std::max(0.0, d - (a - b) * t);
        }
    } else if (d <= c) {
        if (d + (b - a) * t <= c) {
            return d + (b - a) * t;
        }
        t -= (c - d) / (b - a);
        d = c;
    }
    const double k = b / (1.0 - c);
    return 1.0 - ((1.0 - d) * std::exp(-k * t) + a * decayed(k, t));
}

double wet_share(const ColumnRates& rates, double deficit) {
    const double c = rates.constant_share;
    return deficit <= c ? 1.0 : (1.0 - deficit) / (1.0 - c);
}

Result<Duration> time_to_drip(const ColumnRates& rates, double deficit) {
    const double a = in_si(rates.wetting);
    const double b = in_si(rates.drying);
    const double c = rates.constant_share;
    if (!(a > b)) {
        return bad_input("water supplied to the pad",
                         print_number(b > 0.0 ? 100.0 * a / b : 0.0, 0) + " % of what dries",
                         "more than dries, or the pad never drips");
    }
    const double face = deficit > c ? time_to_full_face(a, b, c, deficit) : 0.0;
    return seconds(face + std::min(deficit, c) / (a - b));
}

Result<ColumnRates> rates_from_timings(Duration tau_w, Duration t_dry, bool fans_on_during_wet_through,
                                       double constant_share) {
    WF_TRY(const double wetting_time, checked_time(tau_w, "wetting time"));
    WF_TRY(const double drying_time, checked_time(t_dry, "dry-out time"));
    const double c = constant_share;
    if (!(c > 0.0 && c < 1.0)) {
        return bad_input("share of drying at constant rate", print_number(c, 3),
                         "more than 0 and less than 1");
    }
    const double b = c / drying_time;
    if (!fans_on_during_wet_through) {
        return ColumnRates{from_si<Rate>(1.0 / wetting_time), from_si<Rate>(b), c};
    }
    // In x = a - b the time falls from above at x = c / tau_w (the last term alone) to below at 1 / tau_w, as
    // ln(1 + z) <= z.
    const auto excess = [&](double x) { return (1.0 - c) / b * std::log1p(b / x) + c / x - wetting_time; };
    const double low = c / wetting_time;
    const double high = 1.0 / wetting_time;
    const double at_low = excess(low);
    const double at_high = excess(high);
    double x = high;  // b is so small that the last digits decide: the fans made no difference
    if (at_low > 0.0 && at_high < 0.0) {
        std::uintmax_t steps = 100;
        const auto bracket = boost::math::tools::toms748_solve(
            excess, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(50), steps);
        x = 0.5 * (bracket.first + bracket.second);
    }
    return ColumnRates{from_si<Rate>(x + b), from_si<Rate>(b), c};
}

Result<double> evaporated_share_from_wet_start(Duration off, Duration drip_return, Duration fill) {
    WF_TRY(const double t_off, checked_time(off, "pump-off time"));
    WF_TRY(const double t_return, checked_time(drip_return, "return of the drip"));
    WF_TRY(const double t_fill, checked_time(fill, "fill time"));
    if (!(t_return > t_fill)) {
        return bad_input("return of the drip", print_number(t_return, 3) + " s",
                         "more than the fill time, " + print_number(t_fill, 3) + " s");
    }
    // What dried in t_off + t_fill without supply was made up in t_return - t_fill with it.
    const double s = (t_return - t_fill) / (t_off + t_fill);
    return s / (1.0 + s);
}

}  // namespace wetfront
