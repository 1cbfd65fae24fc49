// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "base/result.h"
#include "cycle/margins.h"
#include "units/quantities.h"

namespace wetfront {

/// Dry-started timings of the far end.
struct DryStart {
    Duration wet_through;
    Duration dry_out;
    bool fans_on = false;                   ///< during wet-through
    Duration u_wet_through = seconds(0.0);  ///< standard uncertainties
    Duration u_dry_out = seconds(0.0);
};
/// A wet start: pump off for `off` while the far end dripped, drip back `drip_return` after the restart.
struct WetStart {
    Duration off;
    Duration drip_return;
    Duration u_off = seconds(0.0);
    Duration u_drip_return = seconds(0.0);
};

/// One bank as the cycle rules see it.
struct BankQuestion {
    Duration fill;
    Duration u_fill = seconds(0.0);
    std::variant<DryStart, WetStart> start;
    double evaporation_ratio = 1.0;       ///< R = E_design / E_test, above 0
    std::optional<Duration> uncertainty;  ///< U itself, where it is given; otherwise from the u's above
    std::optional<double>
        evaporated_share;               ///< E H / q from a measured flow, test weather: the larger is used
    double weakest_outlet_ratio = 1.0;  ///< q_far / least q along the header, at least 1
    /// E_design / E_test as the weathers have it, where that is below 1 and `evaporation_ratio` counts as 1.
    /// Told to people; no rule uses it.
    std::optional<double> milder_design;

    [[nodiscard]] const DryStart* dry_start() const { return std::get_if<DryStart>(&start); }
};

/// Which rule set the base on-time, or stands in the way of a cycle.
enum class LimitedBy { enough_water, no_part_dries, header_fill };
[[nodiscard]] std::string_view name_of(LimitedBy limit);  ///< "enough water", "no part dries", "header fill"

/// The three lower bounds of the on-time for one period, before rounding (model rules 1 to 3). The need
/// contains the fill bound, so header fill decides only where nothing evaporates. A gap bound below 0 binds
/// nothing.
struct OnTimeBounds {
    Duration period;
    Duration need;                  ///< t_fill + m P kappa R + U
    Duration gap_bound;             ///< P + t_fill - longest gap
    Duration fill_bound;            ///< t_fill + U
    Duration uncertainty;           ///< U
    double evaporated_share = 0.0;  ///< kappa, test weather, of the weakest outlet's stretch
    LimitedBy limited_by = LimitedBy::enough_water;
    [[nodiscard]] Duration largest() const;
};
[[nodiscard]] Result<OnTimeBounds> on_time_bounds(const BankQuestion& bank, Duration period,
                                                  const CycleMargins& margins);

/// Longest time that the far end may go unsupplied at the design hour: share t_dry / R, or as long as the wet
/// start proved, (t_off + t_fill) / R, and never longer than that (rule 2).
[[nodiscard]] Duration longest_gap(const BankQuestion& bank, const CycleMargins& margins);

/// kappa: the share of the water supplied that evaporates, in the weather of the test. Dry start: an upper
/// bound for any drying curve, tau_w / (t_dry + f tau_w), f = 1 with fans on; wet start: exact. The larger of
/// it and the share from a measured flow, times the weakest outlet's ratio.
[[nodiscard]] Result<double> evaporated_share(const BankQuestion& bank);

/// What dries at the design hour over what the weakest outlet supplies, b R / a. Rates of a dry start by the
/// wetting column, of a wet start or a measured flow by the evaporated share; the larger of both.
[[nodiscard]] Result<double> drying_over_supply(const BankQuestion& bank, const CycleMargins& margins);

/// True if the pad dries faster at the design hour than it is supplied (a <= b R): no length of run helps.
[[nodiscard]] Result<bool> drying_outruns_supply(const BankQuestion& bank, const CycleMargins& margins);

/// The best cycle of one timer over its banks: the first period that fits all of them; the worst bank
/// decides.
struct CycleAnswer {
    bool cycled = false;
    Duration period;                  ///< the last one tried where none fits
    std::vector<OnTimeBounds> banks;  ///< at that period, in the order given
    std::size_t deciding_bank = 0;
    std::optional<Duration> base;           ///< rounded up to the resolution
    std::optional<Duration> ceiling_exact;  ///< before rounding
    std::optional<Duration> ceiling;
    std::optional<Duration> trim_step;    ///< none if ceiling equals base
    std::optional<LimitedBy> limited_by;  ///< of the deciding bank
    bool drying_outruns_supply =
        false;  ///< a <= b at the design hour in some bank: continuous only, whatever the period
};

/// Rules 1 to 4 and 6 for the banks of one timer. `resolution` above 0. Errors: no bank; a time not positive
/// or above 24 h; fill not below wet-through (or the drip's return) by at least twice its standard
/// uncertainty; margin below 1; rest not below the longest period tried.
///
/// A bank with a wet start has no wet-through time, so it asks for no ceiling: trimming above the base
/// changes how much is pumped, not how much is cooled, and ceiling = base loses nothing.
[[nodiscard]] Result<CycleAnswer> best_cycle(const std::vector<BankQuestion>& banks, Duration resolution,
                                             const CycleMargins& margins);

/// No review comes sooner, however soon a house answers (common practice, no source).
inline constexpr auto least_review = from_si<Duration>(600.0);

/// Smallest multiple of the period that is neither below 10 min nor below the house's lag (rule 5). Period
/// above 0.
[[nodiscard]] Duration review_interval(Duration period, Duration house_lag);

/// A value rounded to a resolution (above 0); values within 1e-9 of a step are that step.
[[nodiscard]] Duration rounded_up(Duration value, Duration resolution);
[[nodiscard]] Duration rounded_down(Duration value, Duration resolution);

}  // namespace wetfront
