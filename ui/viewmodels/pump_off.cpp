// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/pump_off.h"

#include <QCoreApplication>

#include "viewmodels/elapsed.h"

namespace wetfront::ui {
namespace {

class PumpOffWords {
    Q_DECLARE_TR_FUNCTIONS(PumpOffWords)
};

}  // namespace

std::vector<PumpOff> pumps_off(const VisitFile& file, const Clock& clock) {
    std::vector<Id> pumps;
    for (const auto& pump : file.house.pumps) {
        pumps.push_back(pump.id);
    }
    const auto& longest = file.visit.agreement.longest_pump_off;
    std::vector<PumpOff> off;
    for (const auto& state : pump_states(file.visit.marks, pumps)) {
        if (!state.running && state.since && ms_since(*state.since, clock) < longest_test_ms) {
            off.push_back({file.visit.id, file.house.name, *state.since,
                           longest ? std::optional{longest->value()} : std::nullopt});
        }
    }
    return off;
}

std::int64_t ms_left(const PumpOff& pump, const Clock& clock) {
    const auto agreed = pump.agreed ? static_cast<std::int64_t>(in_seconds(*pump.agreed) * 1000.0) : 0;
    return agreed - ms_since(pump.since, clock);
}

QString words_of(const PumpOff& pump, const Clock& clock, const Formatter& formatter, bool name_house) {
    const auto left = ms_left(pump, clock);
    const QString words =
        !pump.agreed ? PumpOffWords::tr("Pump off for %1").arg(formatter.clock(-left, false))
        : left >= 0  ? PumpOffWords::tr("Pump off: %1 left").arg(formatter.clock(left, false))
                     : PumpOffWords::tr("Start the pump: %1 over").arg(formatter.clock(-left, false));
    return name_house ? PumpOffWords::tr("%1. %2").arg(QString::fromStdString(pump.house), words) : words;
}

}  // namespace wetfront::ui
