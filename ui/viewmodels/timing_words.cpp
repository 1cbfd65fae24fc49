// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/timing_words.h"

#include <QCoreApplication>
#include <cmath>

namespace wetfront::ui {
namespace {

class TimingWords {
    Q_DECLARE_TR_FUNCTIONS(TimingWords)
};

}  // namespace

std::vector<std::pair<TimingKind, const TimingResult*>> results_of(const BankTimings& bank) {
    std::vector<std::pair<TimingKind, const TimingResult*>> list;
    const auto add = [&](TimingKind kind, const std::optional<TimingResult>& result) {
        if (result) {
            list.emplace_back(kind, &*result);
        }
    };
    add(TimingKind::fill, bank.fill);
    add(TimingKind::wet_through, bank.wet_through);
    add(TimingKind::run_off, bank.run_off);
    add(TimingKind::dry_out, bank.dry_out);
    add(TimingKind::wet_off, bank.wet_off);
    add(TimingKind::wet_return, bank.wet_return);
    return list;
}

AnyQuantity rounded_to(Duration value, double step_s) {
    return any(seconds(std::round(in_seconds(value) / step_s) * step_s));
}

QString spread_words(const TimingResult& result, const Formatter& formatter) {
    if (result.count > 1 && result.standard_deviation) {
        return TimingWords::tr("%1 readings, spread %2")
            .arg(QString::number(result.count), formatter.text(rounded_to(*result.standard_deviation, 0.1)));
    }
    return result.spread_from == SpreadFrom::pooled
               ? TimingWords::tr("one reading, spread as on the other banks")
               : TimingWords::tr("one reading, spread assumed");
}

}  // namespace wetfront::ui
