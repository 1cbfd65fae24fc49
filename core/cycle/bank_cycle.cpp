// SPDX-License-Identifier: Apache-2.0
#include "cycle/bank_cycle.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/numbers.h"
#include "pad/wetting_column.h"

namespace wetfront {
namespace {

constexpr double day = 86400.0;

/// The readings as numbers, so that each can be moved a little: fill; wet-through or drip's return; dry-out
/// or off.
using Times = std::array<double, 3>;

Times times_of(const BankQuestion& bank) {
    if (const auto* dry = bank.dry_start()) {
        return {in_seconds(bank.fill), in_seconds(dry->wet_through), in_seconds(dry->dry_out)};
    }
    const auto& wet = std::get<WetStart>(bank.start);
    return {in_seconds(bank.fill), in_seconds(wet.drip_return), in_seconds(wet.off)};
}

Times uncertainties_of(const BankQuestion& bank) {
    if (const auto* dry = bank.dry_start()) {
        return {in_seconds(bank.u_fill), in_seconds(dry->u_wet_through), in_seconds(dry->u_dry_out)};
    }
    const auto& wet = std::get<WetStart>(bank.start);
    return {in_seconds(bank.u_fill), in_seconds(wet.u_drip_return), in_seconds(wet.u_off)};
}

// kappa for readings that are known to be in order.
double share_at(const BankQuestion& bank, const Times& times) {
    const auto& [fill, wet, other] = times;
    const double wetting = wet - fill;
    double share = 0.0;
    if (const auto* dry = bank.dry_start()) {
        share = wetting / (other + (dry->fans_on ? wetting : 0.0));
    } else {
        const double s = wetting / (other + fill);
        share = s / (1.0 + s);
    }
    return bank.weakest_outlet_ratio * std::max(share, bank.evaporated_share.value_or(0.0));
}

double need_before_uncertainty(const BankQuestion& bank, const Times& times, double period, double margin) {
    return times[0] + margin * period * share_at(bank, times) * bank.evaporation_ratio;
}

// U of the need: GUM JCGM 100:2008 eq. 10 with central differences. For fans off that is
// u2 = ((1 - s) u_fill)2 + (s u_wet)2 + (s tau_w u_dry / t_dry)2 with s = m P R / t_dry. The slopes are those
// of the stopwatch's share even where a larger one from a measured flow is used: a second opinion may
// lengthen a run, but never make it look surer.
double expanded_uncertainty(const BankQuestion& bank, double period, double margin) {
    if (bank.uncertainty) {
        return in_seconds(*bank.uncertainty);
    }
    const auto times = times_of(bank);
    const auto u = uncertainties_of(bank);
    auto timed = bank;
    timed.evaporated_share.reset();
    double sum = 0.0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const double step = 1e-4 * (times[1] - times[0]);
        auto above = times;
        auto below = times;
        above[i] += step;
        below[i] -= step;
        const double slope = (need_before_uncertainty(timed, above, period, margin) -
                              need_before_uncertainty(timed, below, period, margin)) /
                             (2.0 * step);
        sum += slope * slope * u[i] * u[i];
    }
    return 2.0 * std::sqrt(sum);
}

Result<void> check_time(const char* item, Duration time) {
    const double t = in_seconds(time);
    if (!(t > 0.0 && t <= day)) {
        return bad_input(item, print_number(t, 3) + " s", "more than 0 s and at most 24 h");
    }
    return boost::outcome_v2::success();
}

Result<void> check_uncertainty(const char* item, double u) {
    if (!(u >= 0.0 && u <= day)) {
        return bad_input(item, print_number(u, 3) + " s", "0 s to 24 h");
    }
    return boost::outcome_v2::success();
}

Result<void> check_number(const char* item, double value, bool good, const char* accepted) {
    if (!good || !std::isfinite(value)) {
        return bad_input(item, print_number(value, 3), accepted);
    }
    return boost::outcome_v2::success();
}

Result<void> check_bank(const BankQuestion& bank) {
    const auto times = times_of(bank);
    const bool dry = bank.dry_start() != nullptr;
    const char* wet_name = dry ? "wet-through time" : "return of the drip";
    WF_CHECK(check_time("fill time", bank.fill));
    WF_CHECK(check_time(wet_name, seconds(times[1])));
    WF_CHECK(check_time(dry ? "dry-out time" : "pump-off time", seconds(times[2])));
    for (const double u : uncertainties_of(bank)) {
        WF_CHECK(check_uncertainty("uncertainty of a reading", u));
    }
    if (bank.uncertainty) {
        WF_CHECK(check_uncertainty("uncertainty", in_seconds(*bank.uncertainty)));
    }
    // A wetting time below twice the uncertainty of the fill could as well be nothing, and more evaporation
    // would then lower the on-time: the uncertainty would shrink faster than the need grows.
    const double least = times[0] + 2.0 * in_seconds(bank.u_fill);
    if (!(times[1] > times[0] && times[1] >= least)) {
        return bad_input(wet_name, print_number(times[1], 1) + " s",
                         "more than the fill time of " + print_number(times[0], 1) +
                             " s by at least twice its uncertainty");
    }
    WF_CHECK(check_number("evaporation ratio", bank.evaporation_ratio, bank.evaporation_ratio > 0.0,
                          "more than 0"));
    WF_CHECK(check_number("weakest outlet ratio", bank.weakest_outlet_ratio, bank.weakest_outlet_ratio >= 1.0,
                          "1 or more"));
    const double share = bank.evaporated_share.value_or(0.0);
    return check_number("evaporated share", share, share >= 0.0, "0 or more");
}

struct AtPeriod {
    std::vector<OnTimeBounds> banks;
    std::size_t deciding = 0;
};

Result<AtPeriod> bounds_at(const std::vector<BankQuestion>& banks, Duration period,
                           const CycleMargins& margins) {
    AtPeriod at;
    for (const auto& bank : banks) {
        WF_TRY(const auto bounds, on_time_bounds(bank, period, margins));
        at.banks.push_back(bounds);
        if (bounds.largest() > at.banks[at.deciding].largest()) {
            at.deciding = at.banks.size() - 1;
        }
    }
    return at;
}

// Rule 4: up to the longest wet-through, as far as the rest allows; the base where no bank was wetted from
// dry.
Duration ceiling_before_rounding(const std::vector<BankQuestion>& banks, const AtPeriod& at, Duration base,
                                 Duration most) {
    Duration wet_through = base;
    for (std::size_t i = 0; i < banks.size(); ++i) {
        if (const auto* dry = banks[i].dry_start()) {
            const auto wetting = banks[i].weakest_outlet_ratio * (dry->wet_through - banks[i].fill);
            wet_through = std::max(wet_through, banks[i].fill + wetting + at.banks[i].uncertainty);
        }
    }
    return std::max(base, std::min(wet_through, most));
}

void set_cycle(CycleAnswer& answer, const std::vector<BankQuestion>& banks, const AtPeriod& at, Duration base,
               Duration most, Duration resolution) {
    answer.cycled = true;
    answer.base = base;
    answer.ceiling_exact = ceiling_before_rounding(banks, at, base, most);
    // Rounded up like the wet-through time, unless that would cut into the rest.
    answer.ceiling = std::min(rounded_up(*answer.ceiling_exact, resolution), rounded_down(most, resolution));
    if (*answer.ceiling > base) {
        answer.trim_step = rounded_up((*answer.ceiling - base) / 4.0, resolution);
    }
}

}  // namespace

std::string_view name_of(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::enough_water:
            return "enough water";
        case LimitedBy::no_part_dries:
            return "no part dries";
        case LimitedBy::header_fill:
            return "header fill";
    }
    return {};
}

Duration OnTimeBounds::largest() const {
    return std::max({need, gap_bound, fill_bound});
}

Duration longest_gap(const BankQuestion& bank, const CycleMargins& margins) {
    if (const auto* dry = bank.dry_start()) {
        return margins.drying_share * dry->dry_out / bank.evaporation_ratio;
    }
    // Nobody has seen a longer gap than the one that was tested, however mild the design hour.
    return (std::get<WetStart>(bank.start).off + bank.fill) / std::max(1.0, bank.evaporation_ratio);
}

Result<double> evaporated_share(const BankQuestion& bank) {
    WF_CHECK(check_bank(bank));
    return share_at(bank, times_of(bank));
}

Result<double> drying_over_supply(const BankQuestion& bank, const CycleMargins& margins) {
    WF_CHECK(check_bank(bank));
    WF_CHECK(check_cycle_limits(margins));
    const double ratio = bank.evaporation_ratio;
    const auto* dry = bank.dry_start();
    if (dry == nullptr) {
        return share_at(bank, times_of(bank)) * ratio;
    }
    WF_TRY(const auto rates, rates_from_timings(dry->wet_through - bank.fill, dry->dry_out, dry->fans_on,
                                                margins.constant_share));
    const double from_timings =
        in_si(rates.drying) * ratio * bank.weakest_outlet_ratio / in_si(rates.wetting);
    return std::max(from_timings, bank.weakest_outlet_ratio * bank.evaporated_share.value_or(0.0) * ratio);
}

Result<bool> drying_outruns_supply(const BankQuestion& bank, const CycleMargins& margins) {
    WF_TRY(const double over, drying_over_supply(bank, margins));
    return over >= 1.0;
}

Result<OnTimeBounds> on_time_bounds(const BankQuestion& bank, Duration period, const CycleMargins& margins) {
    WF_CHECK(check_bank(bank));
    WF_CHECK(check_cycle_limits(margins));
    WF_CHECK(check_time("period", period));
    const double p = in_seconds(period);
    const auto times = times_of(bank);
    const double uncertainty = expanded_uncertainty(bank, p, margins.water_margin);
    OnTimeBounds bounds;
    bounds.period = period;
    bounds.evaporated_share = share_at(bank, times);
    bounds.uncertainty = seconds(uncertainty);
    bounds.need = seconds(need_before_uncertainty(bank, times, p, margins.water_margin) + uncertainty);
    bounds.gap_bound = period + bank.fill - longest_gap(bank, margins);
    bounds.fill_bound = bank.fill + bounds.uncertainty;
    bounds.limited_by = LimitedBy::header_fill;
    if (bounds.need > bounds.fill_bound) {
        bounds.limited_by = LimitedBy::enough_water;
    }
    if (bounds.gap_bound > std::max(bounds.need, bounds.fill_bound)) {
        bounds.limited_by = LimitedBy::no_part_dries;
    }
    return bounds;
}

Result<CycleAnswer> best_cycle(const std::vector<BankQuestion>& banks, Duration resolution,
                               const CycleMargins& margins) {
    WF_CHECK(check_cycle_limits(margins));
    WF_CHECK(check_time("resolution", resolution));
    if (banks.empty()) {
        return bad_input("banks", "none", "at least one bank");
    }
    CycleAnswer answer;
    for (const auto& bank : banks) {
        WF_TRY(const bool outruns, drying_outruns_supply(bank, margins));
        answer.drying_outruns_supply = answer.drying_outruns_supply || outruns;
    }
    for (const auto& period : margins.periods) {
        WF_TRY(const auto at, bounds_at(banks, period, margins));
        answer.period = period;
        answer.banks = at.banks;
        answer.deciding_bank = at.deciding;
        answer.limited_by = at.banks[at.deciding].limited_by;
        const auto base = rounded_up(at.banks[at.deciding].largest(), resolution);
        const auto most = period - margins.least_rest;
        if (base <= rounded_down(most, resolution) && !answer.drying_outruns_supply) {
            set_cycle(answer, banks, at, base, most, resolution);
            return answer;
        }
    }
    return answer;
}

Duration review_interval(Duration period, Duration house_lag) {
    return rounded_up(std::max<Duration>(least_review, house_lag), period);
}

Duration rounded_up(Duration value, Duration resolution) {
    const double steps = in_seconds(value) / in_seconds(resolution);
    const double near = std::round(steps);
    return (std::abs(steps - near) < 1e-9 ? near : std::ceil(steps)) * resolution;
}

Duration rounded_down(Duration value, Duration resolution) {
    const double steps = in_seconds(value) / in_seconds(resolution);
    const double near = std::round(steps);
    return (std::abs(steps - near) < 1e-9 ? near : std::floor(steps)) * resolution;
}

}  // namespace wetfront
