// SPDX-License-Identifier: Apache-2.0
#include "records/settings.h"

#include <cmath>

namespace wetfront {
namespace {

template <class Q>
std::optional<AnyQuantity> value_of(const Optional<Q>& entry) {
    if (!entry) {
        return std::nullopt;
    }
    return any(entry->value());
}

std::optional<AnyQuantity> value_of(const std::optional<TimeOfDay>& time) {
    return time ? std::optional{time->since_midnight()} : std::nullopt;
}

}  // namespace

std::string TimeOfDay::text() const {
    const auto two_digits = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two_digits(minutes / 60) + ":" + two_digits(minutes % 60);
}

Result<TimeOfDay> TimeOfDay::parse(std::string_view text, std::string_view item) {
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9' ? text[i] - '0' : 100; };
    if (text.size() == 5 && text[2] == ':') {
        const int hour = digit(0) * 10 + digit(1);
        const int minute = digit(3) * 10 + digit(4);
        if (hour < 24 && minute < 60) {
            return TimeOfDay{hour * 60 + minute};
        }
    }
    return bad_input(std::string{item}, text, "write a time of day from 00:00 to 23:59, as 09:30");
}

AnyQuantity TimeOfDay::since_midnight() const {
    return any(seconds(60.0 * minutes), Scale::clock);
}

TimeOfDay TimeOfDay::at(Duration since_midnight) {
    constexpr int day = 1440;
    const int rounded = static_cast<int>(std::lround(in_seconds(since_midnight) / 60.0) % day);
    return {(rounded + day) % day};
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
            return value_of(settings.start_temperature);
        case Setting::lowest_house_temperature:
            return value_of(settings.lowest_house_temperature);
        case Setting::humidity_cut_off:
            return value_of(settings.humidity_cut_off);
        case Setting::pad_hours_from:
            return value_of(settings.pad_hours_from);
        case Setting::pad_hours_to:
            return value_of(settings.pad_hours_to);
        case Setting::period:
            return value_of(settings.period);
        case Setting::base_on_time:
            return value_of(settings.base_on_time);
        case Setting::on_time_ceiling:
            return value_of(settings.on_time_ceiling);
        case Setting::trim_step:
            return row == nullptr ? std::nullopt : value_of(row->change);
        case Setting::trim_dead_band:
            return row == nullptr ? std::nullopt : value_of(row->above_target);
        case Setting::review_interval:
            return value_of(settings.review_interval);
        case Setting::rinse_at:
            return value_of(settings.rinse_at);
        case Setting::rinse_length:
            return value_of(settings.rinse_length);
    }
    return std::nullopt;
}

}  // namespace wetfront
