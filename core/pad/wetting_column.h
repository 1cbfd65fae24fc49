// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// How one column of a pad takes up and loses water, per second of supply and of drying, in shares of what it
/// holds when it drips evenly.
struct ColumnRates {
    Rate wetting;  ///< a = q / D_cap, above 0
    Rate drying;   ///< b = E H / D_cap, 0 or above
    double constant_share =
        0.7;  ///< c: share of the deficit up to which drying goes at constant rate, in (0, 1); assumed
};

/// Deficit of a column, d = D / D_cap: 0 drips evenly, 1 is bone dry. Closed forms of
///   supplied:     d' = b phi(d) - a, staying at 0        not supplied: d' = b phi(d)
/// with phi = 1 up to c and (1 - d)/(1 - c) above. Exact for constant a and b; no time step.
/// `deficit` in [0, 1], `time` 0 or above.
[[nodiscard]] double deficit_after_supply(const ColumnRates& rates, double deficit, Duration time);
[[nodiscard]] double deficit_after_drying(const ColumnRates& rates, double deficit, Duration time);

/// Share of the column's face that still evaporates: phi(d).
[[nodiscard]] double wet_share(const ColumnRates& rates, double deficit);

/// Time of supply until the column drips (d = 0); an error if supply does not outrun drying (a <= b).
[[nodiscard]] Result<Duration> time_to_drip(const ColumnRates& rates, double deficit);

/// Rates from the stopwatch: tau_w = wet-through minus fill, t_dry from pump stop to the first dry patch.
/// Fans off during wet-through: a = 1 / tau_w. Fans on: a solves tau_w = ((1-c)/b) ln(a/(a-b)) + c/(a-b), a >
/// b. b = c / t_dry. Errors: a time not above 0, c outside (0, 1).
[[nodiscard]] Result<ColumnRates> rates_from_timings(Duration tau_w, Duration t_dry,
                                                     bool fans_on_during_wet_through,
                                                     double constant_share = 0.7);

/// E H / q of a wet start: s / (1 + s), s = (t_r - t_fill) / (t_off + t_fill). Errors: return not above fill,
/// a time not positive.
[[nodiscard]] Result<double> evaporated_share_from_wet_start(Duration off, Duration drip_return,
                                                             Duration fill);

}  // namespace wetfront
