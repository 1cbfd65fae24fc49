// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/bank_cycle.h"
#include "cycle/labels.h"
#include "cycle/visit_water.h"
#include "cycle/visit_weather.h"

namespace wetfront {

/// What the visit says about one bank, as far as the cycle rules need it.
struct BankEvidence {
    const PadBank* bank = nullptr;
    std::optional<BankQuestion> question;  ///< none: readings or a weather are missing
    std::vector<Message> missing;          ///< readings that would be needed
    PadEffectiveness effectiveness;
    std::optional<double>
        share_from_timings;  ///< b / a (constant share assumed) or kappa of the wet start, test weather
    std::optional<double> share_from_flow;  ///< E H / q
    std::optional<Duration> header_exchange;
};

/// Timings, weather and flow of one bank. A dry start is preferred; a wet start serves where one of its
/// readings lacks.
[[nodiscard]] BankEvidence evidence_of(const VisitFile& file, const VisitTimings& timings,
                                       const VisitWeather& weather, const VisitWater& water,
                                       const PadBank& bank, const CycleMargins& margins);

/// True if the two shares are more than 30 % apart, counted on the smaller.
[[nodiscard]] bool shares_disagree(const BankEvidence& evidence);

}  // namespace wetfront
