// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>

#include "cycle/advice.h"
#include "cycle/template_fit.h"

namespace wetfront::test {

/// A bank whose readings make the sums easy: tau_w = 165 - 45 = 120 s, kappa = 120/1200 = 0.1, R = 1, U = 0,
/// so the need is 45 + 1.25 x 0.1 x P: 75 s in 240 s, 82.5 s in 300 s, 90 s in 360 s, 120 s in 600 s. The gap
/// bound, P + 45 - 600, stays below it up to 600 s.
inline BankQuestion easy_bank() {
    BankQuestion bank;
    bank.fill = seconds(45.0);
    bank.start = DryStart{.wet_through = seconds(165.0), .dry_out = seconds(1200.0)};
    bank.uncertainty = seconds(0.0);
    return bank;
}

/// A cycle as it is advised for that bank with steps of a second, but where a test says otherwise.
inline TimerAdvice cycle_advice(double period = 300.0, double base = 83.0, double ceiling = 165.0) {
    TimerAdvice advice;
    advice.timer = Id{"timer"};
    advice.cycled = true;
    advice.cycle = {{Setting::period, any(seconds(period)), {}},
                    {Setting::base_on_time, any(seconds(base)), {}},
                    {Setting::on_time_ceiling, any(seconds(ceiling)), {}},
                    {Setting::review_interval, any(seconds(std::ceil(600.0 / period) * period)), {}}};
    advice.banks.emplace_back().question = easy_bank();
    return advice;
}

using wetfront::fit_to_template;

/// With the program's own margins, and the fill of every bank read as its question has it.
inline TemplateFit fit_to_template(const SettingTemplate& described, const TimerAdvice& advice) {
    std::optional<HeaderFill> read;
    for (const auto& bank : advice.banks) {
        const auto fill = bank.question->fill;
        read = read ? HeaderFill{std::min(read->shortest, fill), std::max(read->longest, fill)}
                    : HeaderFill{fill, fill};
    }
    return fit_to_template(described, advice, {}, read);
}

}  // namespace wetfront::test
