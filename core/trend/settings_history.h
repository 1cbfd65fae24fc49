// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "records/fields.h"

namespace wetfront {

/// One setting as it stands in a timer.
struct HeldSetting {
    Field field;
    int row = 0;        ///< of the trim rows, from 1; 0: of none
    AnyQuantity value;  ///< of a time of day what has passed since midnight, with Scale::clock
};

/// What is set, in the order of fields.h: not what a controller only shows, and no words.
[[nodiscard]] std::vector<HeldSetting> held_settings(const TimerSettings& settings);

/// A setting that is other than before; none: it was not set, or is not any more.
struct SettingChange {
    Field field;
    int row = 0;
    std::optional<AnyQuantity> before;
    std::optional<AnyQuantity> after;
};
[[nodiscard]] std::vector<SettingChange> changes_between(const TimerSettings& before,
                                                         const TimerSettings& after);
/// "Base on-time", "Trim row 1: On-time changes by".
[[nodiscard]] Message label_of(const SettingChange& change);
/// "Base on-time: 110 s, then 125 s".
[[nodiscard]] Message words_of(const SettingChange& change);

/// What stood in a timer when a visit was over: what was left, or where nothing was, what was found.
struct SettingsStand {
    Id visit;
    WallTime at;
    TimerSettings settings;
    std::vector<SettingChange> meanwhile;  ///< found other than it stood after the visit before
    std::vector<SettingChange> by_visit;   ///< left other than found, or where nothing was found, than before
};

struct TimerHistory {
    Id timer;
    std::vector<SettingsStand> stands;  ///< the earliest first
};

/// Of the timers that the house has now, in its order; one without settings at any visit is left out. Of a
/// visit and its corrections the last correction counts. `visits`: of that house, in any order.
[[nodiscard]] std::vector<TimerHistory> settings_over_visits(const House& house,
                                                             std::span<const VisitFile> visits);

}  // namespace wetfront
