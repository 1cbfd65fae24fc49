// SPDX-License-Identifier: Apache-2.0
#include "cycle/deviations.h"

#include <cmath>

namespace wetfront {
namespace {

Message meaning_below(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return WF_TEXT("Lower: pads run while moving air alone would do, and make the house damp.");
        case Setting::lowest_house_temperature:
            return WF_TEXT("Lower: pads may run in a cooler house.");
        case Setting::humidity_cut_off:
            return WF_TEXT("Lower: pads stop while they would still cool.");
        case Setting::pad_hours_from:
            return WF_TEXT("Earlier: pads run before they are of use.");
        case Setting::pad_hours_to:
            return WF_TEXT("Earlier: pads stop while they would still help.");
        case Setting::period:
            return WF_TEXT("Shorter: the pump starts more often and has less time to rest.");
        case Setting::base_on_time:
            return WF_TEXT("Shorter: at the hottest hour the far end gets less water than dries there.");
        case Setting::on_time_ceiling:
            return WF_TEXT("Lower: on a hot afternoon a run can't be made as long as a dry pad needs.");
        case Setting::trim_step:
            return WF_TEXT("Smaller: the on-time follows the heat slowly.");
        case Setting::trim_dead_band:
            return WF_TEXT("Narrower: the on-time answers to small changes of temperature.");
        case Setting::review_interval:
            return WF_TEXT("Shorter: it trims again before the house has answered.");
        case Setting::rinse_at:
            return WF_TEXT("Earlier: the pads are wet before they are of use.");
        case Setting::rinse_length:
            return WF_TEXT("Shorter: the rinse may not reach every part of the pads.");
    }
    return {};
}

Message meaning_above(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return WF_TEXT("Higher: the birds get warmer before pads help.");
        case Setting::lowest_house_temperature:
            return WF_TEXT("Higher: pads are off in a house that is warmer.");
        case Setting::humidity_cut_off:
            return WF_TEXT("Higher: pads run in air that they hardly cool.");
        case Setting::pad_hours_from:
            return WF_TEXT("Later: pads are off while they would help.");
        case Setting::pad_hours_to:
            return WF_TEXT("Later: pads go wet into the humid night.");
        case Setting::period:
            return WF_TEXT("Longer: the far end waits longer for water and dries further.");
        case Setting::base_on_time:
            return WF_TEXT("Longer: more water is pumped than the pads take up.");
        case Setting::on_time_ceiling:
            return WF_TEXT("Higher: runs may grow longer than wets the pads.");
        case Setting::trim_step:
            return WF_TEXT("Larger: each review changes the on-time by more, and it may swing.");
        case Setting::trim_dead_band:
            return WF_TEXT("Wider: the on-time answers later to heat.");
        case Setting::review_interval:
            return WF_TEXT("Longer: the on-time follows the heat slowly.");
        case Setting::rinse_at:
            return WF_TEXT("Later: dust and salts stay in the pads for longer.");
        case Setting::rinse_length:
            return WF_TEXT("Longer: it pumps longer than the rinse needs.");
    }
    return {};
}

double above(const AnyQuantity& value, const AnyQuantity& other) {
    constexpr double day_s = 86'400.0;
    const double difference = value.si - other.si;
    return value.scale == Scale::clock ? std::remainder(difference, day_s) : difference;
}

// Of a controller that counts from a full header the advised on-time is short of the period by the fill.
bool never_rests(const TimerSettings& settings, const TimerSettings& advised) {
    if (!settings.period || !settings.base_on_time) {
        return false;
    }
    const double on_time = in_seconds(settings.base_on_time->value());
    return on_time >= in_seconds(settings.period->value()) ||
           (advised.period && advised.base_on_time &&
            same_value(any(settings.period->value()), any(advised.period->value())) &&
            on_time >= in_seconds(advised.base_on_time->value()));
}

bool is_trim(Setting setting) {
    return setting == Setting::trim_step || setting == Setting::trim_dead_band;
}

std::optional<Deviation> deviation_from(const TimerSettings& advised, bool cycled,
                                        const TimerSettings& settings, Setting setting, std::size_t row) {
    const auto value = held(settings, setting, row);
    auto wanted = held(advised, setting, row);
    if (!wanted && cycled && setting == Setting::trim_step && row >= advised.trim_rows.size()) {
        wanted = any(seconds(0.0));
    }
    if (!value || !wanted || same_value(*value, *wanted) ||
        (group_of(setting) == SettingGroup::how_long && !cycled && never_rests(settings, advised))) {
        return std::nullopt;
    }
    return Deviation{setting, row, *value, *wanted,
                     above(*value, *wanted) < 0.0 ? meaning_below(setting) : meaning_above(setting)};
}

}  // namespace

bool same_value(const AnyQuantity& a, const AnyQuantity& b) {
    return std::abs(above(a, b)) < 1e-6;
}

std::optional<Deviation> deviation(const TimerSettings& settings, const TimerAdvice& advice, Setting setting,
                                   std::size_t row) {
    return deviation_from(settings_to_enter(advice), advice.cycled, settings, setting, row);
}

std::vector<Deviation> deviations(const TimerSettings& settings, const TimerAdvice& advice) {
    const auto advised = settings_to_enter(advice);
    std::vector<Deviation> all;
    for (const auto setting : all_settings) {
        for (std::size_t row = 0; row < (is_trim(setting) ? settings.trim_rows.size() : 1U); ++row) {
            if (auto one = deviation_from(advised, advice.cycled, settings, setting, row)) {
                all.push_back(*std::move(one));
            }
        }
    }
    return all;
}

}  // namespace wetfront
