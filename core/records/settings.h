// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/enum_names.h"
#include "base/ids.h"
#include "records/time_of_day.h"
#include "units/message.h"

namespace wetfront {

enum class TimerKind {
    trimmed,         ///< all settings: on-time trimmed by temperature
    fixed_interval,  ///< on-time and period only
    on_demand,       ///< pump on while called for
};

/// Degrees above target, and what the on-time gains (or, negative, loses) at a review.
struct TrimRow {
    Optional<TemperatureDifference> above_target;
    Optional<Duration> change;

    friend bool operator==(const TrimRow&, const TrimRow&) = default;
};

/// When something was done: by the clock that orders marks, and as people write it.
struct Moment {
    BootTime at;
    WallTime wall;
    friend bool operator==(const Moment&, const Moment&) = default;
};

/// Within a boot its clock decides, else the wall time.
[[nodiscard]] bool before(const Moment& one, const Moment& other);

/// What stands in a timer, in the four groups in which a grower asks. Nothing is "not set" or "not asked".
/// Base, ceiling and shown on-time are as they stand on the controller, in its own counting; the pump's runs
/// behind them are made by pump_runs().
struct TimerSettings {
    Id timer;
    // When pads may run
    Optional<Temperature> target;
    Optional<Temperature> start_temperature;
    Optional<Temperature> lowest_house_temperature;  ///< strictly below it the pads are off
    Optional<Fraction> humidity_cut_off;
    std::optional<TimeOfDay> pad_hours_from;
    std::optional<TimeOfDay> pad_hours_to;
    // How long
    Optional<Duration> period;
    Optional<Duration> base_on_time;
    Optional<Duration> on_time_ceiling;
    // How it adapts
    std::vector<TrimRow> trim_rows;  ///< at most 4
    Optional<Duration> review_interval;
    // Rinse
    std::optional<TimeOfDay> rinse_at;
    Optional<Duration> rinse_length;
    // Evidence from the controller
    Optional<Duration> entered_fill;
    Optional<Duration> entered_wet_through;
    Optional<Duration> shown_on_time;
    std::optional<bool> continuous_intended;  ///< the grower wants the pump to run without rest
    std::string deviation_reason;             ///< of what is left: why it is not as advised
    std::optional<Moment> changed{};  ///< of what is left: when one of the four groups was entered last

    friend bool operator==(const TimerSettings&, const TimerSettings&) = default;
};

/// The four groups are the same: nothing that decides how the timer runs was changed between the two.
[[nodiscard]] bool run_the_same(const TimerSettings& one, const TimerSettings& other);

/// True if pads may run at that house temperature as far as the lowest house temperature goes: strictly below
/// it they are off (a 40 degF limit stops pads at 39 degF and not at 40 degF; common practice, no source).
[[nodiscard]] bool warm_enough(const TimerSettings& settings, Temperature house);

/// The settings that advice speaks of, in the order in which people see them.
enum class Setting {
    start_temperature,
    lowest_house_temperature,
    humidity_cut_off,
    pad_hours_from,
    pad_hours_to,
    period,
    base_on_time,
    on_time_ceiling,
    trim_step,
    trim_dead_band,
    review_interval,
    rinse_at,
    rinse_length,
};
inline constexpr std::array all_settings{Setting::start_temperature, Setting::lowest_house_temperature,
                                         Setting::humidity_cut_off,  Setting::pad_hours_from,
                                         Setting::pad_hours_to,      Setting::period,
                                         Setting::base_on_time,      Setting::on_time_ceiling,
                                         Setting::trim_step,         Setting::trim_dead_band,
                                         Setting::review_interval,   Setting::rinse_at,
                                         Setting::rinse_length};
enum class SettingGroup { when_pads_may_run, how_long, how_it_adapts, rinse };
inline constexpr std::array all_groups{SettingGroup::when_pads_may_run, SettingGroup::how_long,
                                       SettingGroup::how_it_adapts, SettingGroup::rinse};

[[nodiscard]] std::string_view key_of(Setting setting);  ///< "base_on_time"
[[nodiscard]] Message label_of(Setting setting);         ///< "Base on-time"
[[nodiscard]] SettingGroup group_of(Setting setting);
[[nodiscard]] Message label_of(SettingGroup group);

/// What a timer holds for that setting; `row` counts from 0 and matters for trim rows only. A time of day is
/// what has passed since midnight, with Scale::clock. None if not set.
[[nodiscard]] std::optional<AnyQuantity> held(const TimerSettings& settings, Setting setting,
                                              std::size_t row = 0);

// clang-format off
template <> struct EnumNames<TimerKind> { static constexpr std::array all{
    EnumName{TimerKind::trimmed, "trimmed"}, EnumName{TimerKind::fixed_interval, "fixed interval"},
    EnumName{TimerKind::on_demand, "on demand"}}; };
// clang-format on

}  // namespace wetfront
