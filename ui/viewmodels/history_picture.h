// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>
#include <span>
#include <vector>

#include "format/formatter.h"
#include "trend/history_words.h"
#include "trend/settings_history.h"

namespace wetfront::ui {

// Charts over the years and the tables behind them, as QML shows them: {picture, rows, legend}. `picture` is
// that of HistoryItem; rows are {day, text, event}, the latest first; legend is {sign, text, line}, empty
// where there is one line only.

/// One series with its trend, its limit and the work that was done.
[[nodiscard]] QVariantMap series_chart(const Formatter& formatter, const FollowedTrend& followed);

/// How long pumps run by a timer, in steps; the rows tell every setting that changed.
[[nodiscard]] QVariantMap settings_chart(const Formatter& formatter, const TimerHistory& timer);

/// One series among those of other houses and banks.
struct NamedSeries {
    QString name;  ///< "House Alder, Bank 1, west"
    BankSeries series;
};
[[nodiscard]] QVariantMap comparison_chart(const Formatter& formatter, std::span<const NamedSeries> all);

/// "2026-07-09", "150 s ± 4 s".
[[nodiscard]] QString value_text(const Formatter& formatter, const VisitValue& value);

}  // namespace wetfront::ui
