// SPDX-License-Identifier: Apache-2.0
#include "cycle/rinse.h"

#include "pad/wetting_column.h"

namespace wetfront {

Result<RinseNeed> rinse_need(const BankQuestion& bank, std::optional<Duration> header_exchange,
                             const CycleMargins& margins) {
    WF_TRY(const bool outruns, drying_outruns_supply(bank, margins));
    const auto* dry = std::get_if<DryStart>(&bank.start);
    if (dry == nullptr) {
        return bad_input("wet-through time", "a wet start", "a wet-through time from a dry pad");
    }
    if (outruns) {
        return bad_input("water supplied to the pad", "less than dries at the design hour",
                         "more flow to the bank");
    }
    WF_TRY(auto rates, rates_from_timings(dry->wet_through - bank.fill, dry->dry_out, dry->fans_on,
                                          margins.constant_share));
    rates.wetting = rates.wetting / bank.weakest_outlet_ratio;
    rates.drying = rates.drying * bank.evaporation_ratio;
    WF_TRY(const auto wetting, time_to_drip(rates, 1.0));
    RinseNeed need;
    need.wet_through = bank.fill + wetting;
    need.exchange = header_exchange.value_or(3.0 * bank.fill);
    need.exchange_from_flow = header_exchange.has_value();
    return need;
}

bool covers_wet_through(const RinseNeed& need, Duration rinse) {
    return rinse >= need.wet_through;
}

}  // namespace wetfront
