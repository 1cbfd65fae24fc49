// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <vector>

#include "format/formatter.h"
#include "records/visit.h"

namespace wetfront::ui {

/// A pump that was stopped for a test and is not back on automatic: its birds are without cooling.
struct PumpOff {
    Id visit;
    std::string house;
    Mark since;
    std::optional<Duration> agreed;  ///< longest time off; none: nothing was agreed
};

/// Every pump of the visit that is off for a test now. A stop longer ago than a day is none of this test.
[[nodiscard]] std::vector<PumpOff> pumps_off(const VisitFile& file, const Clock& clock);

/// Time left until the agreed time is over (negative: over), or, where nothing was agreed, minus the time
/// off.
[[nodiscard]] std::int64_t ms_left(const PumpOff& pump, const Clock& clock);

/// "Pump off: 12:30 left", "Start the pump: 0:40 over", "Pump off for 3:00"; with the house in front if
/// asked.
[[nodiscard]] QString words_of(const PumpOff& pump, const Clock& clock, const Formatter& formatter,
                               bool name_house);

}  // namespace wetfront::ui
