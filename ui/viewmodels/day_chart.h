// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <QVariantMap>

#include "cycle/advice.h"
#include "day/day_words.h"
#include "format/formatter.h"

namespace wetfront::ui {

/// The design day of a visit's house as its timers were found and as they are advised to stand, or, where
/// somebody tries something for one timer, as that would stand.
struct DayChart {
    QVariantMap picture;  ///< that of DayItem; empty: there is no day
    QVariantList rows;    ///< {what, first, second, difference}
    QString sentence;     ///< what a grower would repeat; empty where only one of the two is known
    QString second;       ///< what the second is called
    QStringList missing;  ///< what has to be entered or timed for it
    QStringList assumed;
};
[[nodiscard]] DayChart day_chart(const VisitFile& file, const Advice& advice,
                                 const std::optional<TimerSettings>& tried, const Formatter& formatter);

/// DayComparison's rows.
[[nodiscard]] QVariantList day_rows(const std::vector<DayComparison::Row>& rows, const Formatter& formatter);

}  // namespace wetfront::ui
