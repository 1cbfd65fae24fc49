// SPDX-License-Identifier: Apache-2.0
#include "records/settings.h"

namespace wetfront {
namespace {

template <class Q>
std::optional<AnyQuantity> setting_value(const Optional<Q>& entry) {
    if (!entry) {
        return std::nullopt;
    }
    return any(entry->value());
}

std::optional<AnyQuantity> setting_value(const std::optional<TimeOfDay>& time) {
    return time ? std::optional{time->since_midnight()} : std::nullopt;
}

}  // namespace

bool before(const Moment& one, const Moment& other) {
    return one.at.boot_id == other.at.boot_id ? one.at.boot_ns < other.at.boot_ns : one.wall < other.wall;
}

bool run_the_same(const TimerSettings& one, const TimerSettings& other) {
    const auto groups = [](TimerSettings settings) {
        settings.entered_fill.reset();
        settings.entered_wet_through.reset();
        settings.shown_on_time.reset();
        settings.continuous_intended.reset();
        settings.deviation_reason.clear();
        settings.changed.reset();
        return settings;
    };
    return groups(one) == groups(other);
}

bool warm_enough(const TimerSettings& settings, Temperature house) {
    return !settings.lowest_house_temperature ||
           in_kelvin(house) >= in_kelvin(settings.lowest_house_temperature->value());
}

std::string_view key_of(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return "start_temperature";
        case Setting::lowest_house_temperature:
            return "lowest_house_temperature";
        case Setting::humidity_cut_off:
            return "humidity_cut_off";
        case Setting::pad_hours_from:
            return "pad_hours_from";
        case Setting::pad_hours_to:
            return "pad_hours_to";
        case Setting::period:
            return "period";
        case Setting::base_on_time:
            return "base_on_time";
        case Setting::on_time_ceiling:
            return "on_time_ceiling";
        case Setting::trim_step:
            return "trim_step";
        case Setting::trim_dead_band:
            return "trim_dead_band";
        case Setting::review_interval:
            return "review_interval";
        case Setting::rinse_at:
            return "rinse_at";
        case Setting::rinse_length:
            return "rinse_length";
    }
    return {};
}

Message label_of(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return WF_TEXT("Start temperature");
        case Setting::lowest_house_temperature:
            return WF_TEXT("Lowest house temperature");
        case Setting::humidity_cut_off:
            return WF_TEXT("Humidity cut-off");
        case Setting::pad_hours_from:
            return WF_TEXT("Pad hours from");
        case Setting::pad_hours_to:
            return WF_TEXT("Pad hours to");
        case Setting::period:
            return WF_TEXT("Period");
        case Setting::base_on_time:
            return WF_TEXT("Base on-time");
        case Setting::on_time_ceiling:
            return WF_TEXT("On-time ceiling");
        case Setting::trim_step:
            return WF_TEXT("Trim row: change of on-time");
        case Setting::trim_dead_band:
            return WF_TEXT("Trim row: degrees above target");
        case Setting::review_interval:
            return WF_TEXT("Review interval");
        case Setting::rinse_at:
            return WF_TEXT("Rinse time");
        case Setting::rinse_length:
            return WF_TEXT("Rinse length");
    }
    return {};
}

SettingGroup group_of(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
        case Setting::lowest_house_temperature:
        case Setting::humidity_cut_off:
        case Setting::pad_hours_from:
        case Setting::pad_hours_to:
            return SettingGroup::when_pads_may_run;
        case Setting::period:
        case Setting::base_on_time:
        case Setting::on_time_ceiling:
            return SettingGroup::how_long;
        case Setting::trim_step:
        case Setting::trim_dead_band:
        case Setting::review_interval:
            return SettingGroup::how_it_adapts;
        case Setting::rinse_at:
        case Setting::rinse_length:
            return SettingGroup::rinse;
    }
    return SettingGroup::how_long;
}

Message label_of(SettingGroup group) {
    switch (group) {
        case SettingGroup::when_pads_may_run:
            return WF_TEXT("When pads may run");
        case SettingGroup::how_long:
            return WF_TEXT("How long");
        case SettingGroup::how_it_adapts:
            return WF_TEXT("How it adapts");
        case SettingGroup::rinse:
            return WF_TEXT("Rinse");
    }
    return {};
}

std::optional<AnyQuantity> held(const TimerSettings& settings, Setting setting, std::size_t at) {
    const auto* row = at < settings.trim_rows.size() ? &settings.trim_rows[at] : nullptr;
    switch (setting) {
        case Setting::start_temperature:
            return setting_value(settings.start_temperature);
        case Setting::lowest_house_temperature:
            return setting_value(settings.lowest_house_temperature);
        case Setting::humidity_cut_off:
            return setting_value(settings.humidity_cut_off);
        case Setting::pad_hours_from:
            return setting_value(settings.pad_hours_from);
        case Setting::pad_hours_to:
            return setting_value(settings.pad_hours_to);
        case Setting::period:
            return setting_value(settings.period);
        case Setting::base_on_time:
            return setting_value(settings.base_on_time);
        case Setting::on_time_ceiling:
            return setting_value(settings.on_time_ceiling);
        case Setting::trim_step:
            return row == nullptr ? std::nullopt : setting_value(row->change);
        case Setting::trim_dead_band:
            return row == nullptr ? std::nullopt : setting_value(row->above_target);
        case Setting::review_interval:
            return setting_value(settings.review_interval);
        case Setting::rinse_at:
            return setting_value(settings.rinse_at);
        case Setting::rinse_length:
            return setting_value(settings.rinse_length);
    }
    return std::nullopt;
}

}  // namespace wetfront
