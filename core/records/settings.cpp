// SPDX-License-Identifier: Apache-2.0
#include "records/settings.h"

namespace wetfront {
namespace {

template <class Q>
std::optional<AnyQuantity> value_of(const Optional<Q>& entry) {
    if (!entry) {
        return std::nullopt;
    }
    return any(entry->value());
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

bool warm_enough(const TimerSettings& settings, Temperature house) {
    return !settings.lowest_house_temperature ||
           in_kelvin(house) >= in_kelvin(settings.lowest_house_temperature->value());
}

std::string_view key_of(Setting setting) {
    switch (setting) {
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

std::optional<AnyQuantity> held(const TimerSettings& settings, Setting setting) {
    const auto* row = settings.trim_rows.empty() ? nullptr : &settings.trim_rows.front();
    switch (setting) {
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
            // A time of day as what has passed since midnight.
            return settings.rinse_at ? std::optional{any(seconds(60.0 * settings.rinse_at->minutes))}
                                     : std::nullopt;
        case Setting::rinse_length:
            return value_of(settings.rinse_length);
    }
    return std::nullopt;
}

}  // namespace wetfront
