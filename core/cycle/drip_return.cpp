// SPDX-License-Identifier: Apache-2.0
#include "cycle/drip_return.h"

#include <cmath>
#include <vector>

#include "pad/wetting_column.h"

namespace wetfront {
namespace {

constexpr double same_s = 1e-6;

std::optional<double> drip_return_s(const BankQuestion& bank, double pause) {
    const double fill = in_seconds(bank.fill);
    if (const auto* dry = std::get_if<DryStart>(&bank.start)) {
        const auto rates = rates_from_timings(dry->wet_through - bank.fill, dry->dry_out, dry->fans_on);
        if (!rates) {
            return std::nullopt;
        }
        const double deficit = deficit_after_drying(rates.value(), 0.0, seconds(pause));
        const auto until_drip = time_to_drip(rates.value(), deficit);
        return until_drip ? std::optional{fill + in_seconds(until_drip.value())} : std::nullopt;
    }
    const auto& wet = std::get<WetStart>(bank.start);
    const double tested = in_seconds(wet.off) + fill;
    const double made_up = in_seconds(wet.drip_return) - fill;
    if (tested <= 0.0 || made_up <= 0.0) {
        return std::nullopt;
    }
    return fill + made_up / tested * pause;
}

/// The question with one of its readings longer by its standard uncertainty, one after the other.
std::vector<BankQuestion> varied(const BankQuestion& bank) {
    std::vector<BankQuestion> all(3, bank);
    all[0].fill += bank.u_fill;
    if (auto* dry = std::get_if<DryStart>(&all[1].start)) {
        dry->wet_through += dry->u_wet_through;
        auto& other = std::get<DryStart>(all[2].start);
        other.dry_out += other.u_dry_out;
    } else {
        auto& wet = std::get<WetStart>(all[1].start);
        wet.off += wet.u_off;
        auto& other = std::get<WetStart>(all[2].start);
        other.drip_return += other.u_drip_return;
    }
    return all;
}

}  // namespace

std::optional<TimingResult> expected_drip_return(const BankQuestion& bank, Duration period,
                                                 Duration on_time) {
    const double rest = in_seconds(period) - in_seconds(on_time);
    const double pause = rest + in_seconds(bank.fill);
    const auto* wet = std::get_if<WetStart>(&bank.start);
    if (rest <= 0.0 || (wet != nullptr && pause > in_seconds(wet->off) + in_seconds(bank.fill) + same_s)) {
        return std::nullopt;
    }
    const auto mean = drip_return_s(bank, pause);
    if (!mean) {
        return std::nullopt;
    }
    double variance = 0.0;
    for (const auto& other : varied(bank)) {
        const auto moved = drip_return_s(other, rest + in_seconds(other.fill));
        if (!moved) {
            return std::nullopt;
        }
        variance += (*moved - *mean) * (*moved - *mean);
    }
    TimingResult result;
    result.count = 1;
    result.mean = seconds(*mean);
    result.spread_from = SpreadFrom::assumed;
    result.systematic = result.standard = seconds(std::sqrt(variance));
    result.coverage_factor = coverage_factor(0.95, std::nullopt).value();
    result.expanded = result.coverage_factor * result.standard;
    return result;
}

}  // namespace wetfront
