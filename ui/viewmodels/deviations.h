// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <array>
#include <optional>
#include <vector>

#include "cycle/advice.h"

namespace wetfront::ui {

/// The settings that advice speaks of, in the order in which people see them.
inline constexpr std::array advised_settings{Setting::start_temperature, Setting::lowest_house_temperature,
                                             Setting::humidity_cut_off,  Setting::pad_hours_from,
                                             Setting::pad_hours_to,      Setting::period,
                                             Setting::base_on_time,      Setting::on_time_ceiling,
                                             Setting::trim_step,         Setting::trim_dead_band,
                                             Setting::review_interval,   Setting::rinse_at,
                                             Setting::rinse_length};

/// One setting that a timer holds otherwise than is advised.
struct Deviation {
    Setting setting;
    AnyQuantity held;
    AnyQuantity advised;
    QString meaning;  ///< what it does, one sentence
};

/// None where the setting is not held, no value is advised, or the two are the same. Where running without
/// rest is advised, any period and on-time that never rest are as advised.
[[nodiscard]] std::optional<Deviation> deviation(const TimerSettings& settings, const TimerAdvice& advice,
                                                 Setting setting);

/// All of them, in the order of advised_settings.
[[nodiscard]] std::vector<Deviation> deviations(const TimerSettings& settings, const TimerAdvice& advice);

}  // namespace wetfront::ui
