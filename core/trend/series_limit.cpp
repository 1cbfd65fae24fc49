// SPDX-License-Identifier: Apache-2.0
#include "trend/series_limit.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>

#include "cycle/pump_runs.h"
#include "records/setting_ranges.h"
#include "water/flow_measurement.h"

namespace wetfront {
namespace {

constexpr double least_time_s = 0.01;
constexpr double most_time_s = 4.0 * hours;

/// One bank under the run that its timer gives it.
struct BankRun {
    BankQuestion question;
    Duration base;      ///< from pump start
    AnyQuantity entry;  ///< the same as it stands in the timer
    Duration period;
    CycleMargins margins;
};

const Timer* timer_of(const House& house, const PadBank& bank) {
    const auto found = std::ranges::find_if(house.timers, [&](const Timer& timer) {
        return std::ranges::find(timer.pumps, bank.pump) != timer.pumps.end();
    });
    return found == house.timers.end() ? nullptr : &*found;
}

std::optional<BankRun> run_of(const VisitFile& file, const Advice& advice, const PadBank& bank) {
    const auto* timer = timer_of(file.house, bank);
    const auto* advised = timer == nullptr ? nullptr : advice.of(timer->id);
    if (advised == nullptr || timer->kind == TimerKind::on_demand) {
        return std::nullopt;
    }
    const auto asked = std::ranges::find(advised->banks, bank.id, &BankAdvice::bank);
    const auto* left = file.visit.left_of(timer->id);
    const auto* stands = left != nullptr ? left : file.visit.found_of(timer->id);
    if (asked == advised->banks.end() || !asked->question || stands == nullptr) {
        return std::nullopt;
    }
    const auto settings = without_unusual(*stands);
    const auto runs = pump_runs(file.house, timings_of(file), *timer, settings).settings;
    if (!runs.base_on_time || !runs.period || runs.base_on_time->value() >= runs.period->value()) {
        return std::nullopt;
    }
    return BankRun{*asked->question, runs.base_on_time->value(), any(settings.base_on_time->value()),
                   runs.period->value(), advice.margins};
}

BankQuestion with_fill(BankQuestion bank, double fill_s) {
    const auto more = seconds(fill_s) - bank.fill;
    bank.fill += more;
    if (auto* dry = std::get_if<DryStart>(&bank.start)) {
        dry->wet_through += more;
    } else {
        std::get<WetStart>(bank.start).drip_return += more;
    }
    return bank;
}

BankQuestion with_wetting(BankQuestion bank, double wetting_s) {
    std::get<DryStart>(bank.start).wet_through = bank.fill + seconds(wetting_s);
    return bank;
}

/// The time at which the bound of the advice is as long as the run. It never falls as that time grows.
template <class With>
std::optional<double> time_for(const BankRun& run, double least_s, const With& with) {
    const auto over = [&](double time_s) {
        const auto bounds = on_time_bounds(with(run.question, time_s), run.period, run.margins);
        return bounds ? in_seconds(bounds.value().largest() - run.base) : std::nan("");
    };
    const double below = over(least_s);
    const double above = over(most_time_s);
    if (!(below < 0.0 && above > 0.0)) {
        return std::nullopt;
    }
    std::uintmax_t steps = 100;
    const auto bracket = boost::math::tools::toms748_solve(
        over, least_s, most_time_s, below, above, boost::math::tools::eps_tolerance<double>{40}, steps);
    return (bracket.first + bracket.second) / 2.0;
}

std::optional<double> wetting_limit(const BankRun& run) {
    if (run.question.dry_start() == nullptr) {
        return std::nullopt;
    }
    const double least = std::max(least_time_s, 2.0 * in_seconds(run.question.u_fill) * (1.0 + 1e-9));
    return time_for(run, least, with_wetting);
}

std::optional<SeriesLimit> by_base_on_time(const std::optional<BankRun>& run, Followed what) {
    if (!run) {
        return std::nullopt;
    }
    const auto time = what == Followed::fill ? time_for(*run, least_time_s, with_fill) : wetting_limit(*run);
    if (!time) {
        return std::nullopt;
    }
    const auto whole = what == Followed::wet_through ? run->question.fill + seconds(*time) : seconds(*time);
    return SeriesLimit{any(whole), SeriesLimit::From::base_on_time, run->entry};
}

}  // namespace

std::optional<SeriesLimit> limit_of(const VisitFile& file, const Advice& advice, const PadBank& bank,
                                    Followed what) {
    switch (what) {
        case Followed::fill:
        case Followed::wetting:
        case Followed::wet_through:
            return by_base_on_time(run_of(file, advice, bank), what);
        case Followed::flow: {
            const auto least =
                bank.thickness ? published_least_circulation(bank.thickness->value()) : std::nullopt;
            if (!least || !bank.length) {
                return std::nullopt;
            }
            return SeriesLimit{any(from_si<VolumeFlow>(in_si(*least) * in_si(bank.length->value()))),
                               SeriesLimit::From::least_circulation, any(*least)};
        }
        case Followed::effectiveness:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace wetfront
