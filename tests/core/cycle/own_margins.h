// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cycle/bank_cycle.h"
#include "cycle/pad_hours.h"
#include "cycle/rinse.h"

// The cycle rules with the program's own margins, for tests that don't turn on them.
namespace wetfront {

[[nodiscard]] inline Result<CycleAnswer> best_cycle(const std::vector<BankQuestion>& banks,
                                                    Duration resolution) {
    return best_cycle(banks, resolution, {});
}

[[nodiscard]] inline Result<RinseNeed> rinse_need(const BankQuestion& bank,
                                                  std::optional<Duration> header_exchange) {
    return rinse_need(bank, header_exchange, {});
}

[[nodiscard]] inline Result<Fraction> serving_humidity(Temperature start, Fraction effectiveness,
                                                       AbsolutePressure pressure) {
    return serving_humidity(start, effectiveness, pressure, {});
}

[[nodiscard]] inline Result<HelpfulHours> helpful_hours(const DesignDay& day, Temperature start,
                                                        Fraction effectiveness) {
    return helpful_hours(day, start, effectiveness, {});
}

[[nodiscard]] inline Result<std::optional<Duration>> dry_down(const ColumnRates& rates, const MoistAir& test,
                                                              Fraction effectiveness, const DesignDay& day,
                                                              Duration from) {
    return dry_down(rates, test, effectiveness, day, from, {});
}

}  // namespace wetfront
