// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "cycle/bank_evidence.h"
#include "cycle/setting_advice.h"

namespace wetfront {

/// What the settings of this group are worked out from, for one timer.
struct PadsQuestion {
    const VisitFile& file;
    const Timer& timer;
    const VisitWeather& weather;
    const std::vector<BankEvidence>& banks;  ///< of that timer
    const CycleMargins& margins;
};

/// When a timer's pads may run (model rules 7 to 9). The same for continuous pumping and for a cycle.
struct PadsAdvice {
    std::vector<SettingAdvice> settings;  ///< of a trimmed timer all; of the other kinds those that the
                                          ///< timer's controller has, and notes for the rest
    std::vector<Message> notes;
    std::vector<Message> assumed;  ///< what was used
};

/// Start temperature from the published band, for older birds only; no lowest house temperature, as nobody
/// published one; humidity cut-off for a sensor outside only; pad hours on the design day. What is missing is
/// said in the reason of the setting that lacks it. The best pad of the timer counts: as long as one of them
/// cools, pads stay on.
[[nodiscard]] PadsAdvice when_pads_may_run(const PadsQuestion& question);

}  // namespace wetfront
