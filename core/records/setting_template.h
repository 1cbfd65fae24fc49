// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "records/settings.h"

namespace wetfront {

/// What a controller can ask for or show.
enum class TemplateKey {
    target,
    start_temperature,
    lowest_house_temperature,
    humidity_cut_off,
    pad_hours_from,
    pad_hours_to,
    period,
    base_on_time,
    on_time_ceiling,
    trim_above_target,
    trim_change,
    review_interval,
    rinse_at,
    rinse_length,
    entered_fill,
    entered_wet_through,
    shown_on_time,
};

/// Where a controller's on-time begins to count. Base, ceiling and shown on-time count alike; a rinse counts
/// from pump start everywhere.
enum class CountsFrom { pump_start, full_header };

/// What a controller demands between its settings, as they are entered.
enum class SettingDependency {
    ceiling_at_least_base,
    ceiling_below_period,
    base_below_period,
    review_multiple_of_period,
    pad_hours_end_after_they_begin,  ///< on the same day
    trim_rows_ascend,                ///< each row at more degrees above target than the one before
};

/// One setting of a controller. It can hold `least`, and from there every step of `resolution` up to `most`.
/// The numbers are in `unit`; of a time of day they are minutes after midnight.
struct TemplateSetting {
    TemplateKey setting = TemplateKey::period;
    std::string label;  ///< the firm's own, 1 to 60 characters
    std::string unit;   ///< s, min or h; degC or degF; %; empty for a time of day
    std::optional<double> resolution;
    std::optional<double> least;
    std::optional<double> most;
    std::string note;

    friend bool operator==(const TemplateSetting&, const TemplateSetting&) = default;
};

/// A controller as a firm describes it once. The settings stand in the order in which it asks; the two of the
/// trim rows stand once each and are asked row by row.
struct SettingTemplate {
    Id id;
    std::string name;
    std::string note;
    TimerKind kind = TimerKind::trimmed;
    CountsFrom counts_from = CountsFrom::pump_start;
    std::optional<int> trim_rows;  ///< 1 to 4 where there are trim settings
    std::vector<TemplateSetting> settings;
    std::vector<SettingDependency> dependencies;

    [[nodiscard]] const TemplateSetting* setting(TemplateKey key) const;
    [[nodiscard]] bool demands(SettingDependency dependency) const;
    friend bool operator==(const SettingTemplate&, const SettingTemplate&) = default;
};

/// What a template's file holds. A file of a later format is refused.
struct TemplateFile {
    int format_version = 1;
    SettingTemplate setting_template;

    friend bool operator==(const TemplateFile&, const TemplateFile&) = default;
};
constexpr int template_format_version = 1;

constexpr std::size_t most_label_characters = 60;

/// The trade's name for it: "Base on-time".
[[nodiscard]] Message label_of(TemplateKey key);
/// None for the evidence that a controller gives (entered fill and wet-through, shown on-time).
[[nodiscard]] std::optional<SettingGroup> group_of(TemplateKey key);
/// The setting that advice speaks of; none for the target and the evidence.
[[nodiscard]] std::optional<Setting> setting_of(TemplateKey key);
[[nodiscard]] bool is_time_of_day(TemplateKey key);
/// Of a time of day: a duration, since midnight.
[[nodiscard]] Kind kind_of(TemplateKey key);
/// The units that a template may name for it; none for a time of day.
[[nodiscard]] std::vector<std::string_view> units_of(TemplateKey key);
/// The unit of a setting's numbers: the one it names, minutes for a time of day. Null for a unit that does
/// not fit the setting.
[[nodiscard]] const Unit* unit_of(const TemplateSetting& setting);
/// What a timer holds for it; `row` counts from 0 and matters for trim rows only. A time of day is what has
/// passed since midnight, with Scale::clock. None if not set.
[[nodiscard]] std::optional<AnyQuantity> held(const TimerSettings& settings, TemplateKey key,
                                              std::size_t row = 0);

/// The value in the setting's own unit, as a controller writes it: "75 s", "83 °F", "09:30". To three digits
/// behind the point; steps are no finer.
[[nodiscard]] std::string text_on(const TemplateSetting& setting, const AnyQuantity& value);
/// What it can hold: "5 s to 600 s", "00:00 to 23:45".
[[nodiscard]] std::string range_text(const TemplateSetting& setting);

/// A whole template: name; labels; no setting twice; the settings that its kind of timer needs, and none that
/// it cannot have; units; ranges and resolutions; trim rows; dependencies that speak of settings that are
/// there and that the ranges leave room for. The error names item and limit; paths start with `path`.
[[nodiscard]] Result<void> check_template(const SettingTemplate& checked, const std::string& path);

/// A plain controller of that kind with the trade's labels, to start from. Steps and ranges are invented.
[[nodiscard]] SettingTemplate generic_template(TimerKind kind);

// clang-format off
template <> struct EnumNames<TemplateKey> { static constexpr std::array all{
    EnumName{TemplateKey::target, "target"}, EnumName{TemplateKey::start_temperature, "start_temperature"},
    EnumName{TemplateKey::lowest_house_temperature, "lowest_house_temperature"},
    EnumName{TemplateKey::humidity_cut_off, "humidity_cut_off"},
    EnumName{TemplateKey::pad_hours_from, "pad_hours_from"}, EnumName{TemplateKey::pad_hours_to, "pad_hours_to"},
    EnumName{TemplateKey::period, "period"}, EnumName{TemplateKey::base_on_time, "base_on_time"},
    EnumName{TemplateKey::on_time_ceiling, "on_time_ceiling"},
    EnumName{TemplateKey::trim_above_target, "trim_above_target"}, EnumName{TemplateKey::trim_change, "trim_change"},
    EnumName{TemplateKey::review_interval, "review_interval"}, EnumName{TemplateKey::rinse_at, "rinse_at"},
    EnumName{TemplateKey::rinse_length, "rinse_length"}, EnumName{TemplateKey::entered_fill, "entered_fill"},
    EnumName{TemplateKey::entered_wet_through, "entered_wet_through"},
    EnumName{TemplateKey::shown_on_time, "shown_on_time"}}; };
template <> struct EnumNames<CountsFrom> { static constexpr std::array all{
    EnumName{CountsFrom::pump_start, "pump start"}, EnumName{CountsFrom::full_header, "full header"}}; };
template <> struct EnumNames<SettingDependency> { static constexpr std::array all{
    EnumName{SettingDependency::ceiling_at_least_base, "ceiling at least base"},
    EnumName{SettingDependency::ceiling_below_period, "ceiling below period"},
    EnumName{SettingDependency::base_below_period, "base below period"},
    EnumName{SettingDependency::review_multiple_of_period, "review interval a multiple of the period"},
    EnumName{SettingDependency::pad_hours_end_after_they_begin, "pad hours end after they begin"},
    EnumName{SettingDependency::trim_rows_ascend, "trim rows ascend"}}; };
// clang-format on

}  // namespace wetfront
