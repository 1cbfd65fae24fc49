// SPDX-License-Identifier: Apache-2.0
#include "rule_case.h"

namespace wetfront::test {

RuleCase::RuleCase(int banks, int timers, TimerKind kind) : builder{banks, timers, kind} {
    for (const auto& bank : builder.file().house.banks) {
        BankTimings timed;
        timed.bank = bank.id;
        timed.pump = bank.pump;
        timings.banks.push_back(timed);
    }
    for (const auto& timer : builder.file().house.timers) {
        TimerAdvice none;
        none.timer = timer.id;
        for (const auto* bank : builder.file().house.banks_of(timer)) {
            none.banks.emplace_back().bank = bank->id;
        }
        advice.timers.push_back(none);
    }
}

}  // namespace wetfront::test
