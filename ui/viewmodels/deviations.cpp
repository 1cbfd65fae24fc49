// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/deviations.h"

#include <QCoreApplication>
#include <cmath>

namespace wetfront::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Deviations", text);
}

QString meaning_below(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return tr("Lower: pads run while moving air alone would do, and make the house damp.");
        case Setting::lowest_house_temperature:
            return tr("Lower: pads may run in a cooler house.");
        case Setting::humidity_cut_off:
            return tr("Lower: pads stop while they would still cool.");
        case Setting::pad_hours_from:
            return tr("Earlier: pads run before they are of use.");
        case Setting::pad_hours_to:
            return tr("Earlier: pads stop while they would still help.");
        case Setting::period:
            return tr("Shorter: the pump starts more often and has less time to rest.");
        case Setting::base_on_time:
            return tr("Shorter: at the hottest hour the far end gets less water than dries there.");
        case Setting::on_time_ceiling:
            return tr("Lower: on a hot afternoon a run can't be made as long as a dry pad needs.");
        case Setting::trim_step:
            return tr("Smaller: the on-time follows the heat slowly.");
        case Setting::trim_dead_band:
            return tr("Narrower: the on-time answers to small changes of temperature.");
        case Setting::review_interval:
            return tr("Shorter: it trims again before the house has answered.");
        case Setting::rinse_at:
            return tr("Earlier: the pads are wet before they are of use.");
        case Setting::rinse_length:
            return tr("Shorter: the rinse may not reach every part of the pads.");
    }
    return {};
}

QString meaning_above(Setting setting) {
    switch (setting) {
        case Setting::start_temperature:
            return tr("Higher: the birds get warmer before pads help.");
        case Setting::lowest_house_temperature:
            return tr("Higher: pads are off in a house that is warmer.");
        case Setting::humidity_cut_off:
            return tr("Higher: pads run in air that they hardly cool.");
        case Setting::pad_hours_from:
            return tr("Later: pads are off while they would help.");
        case Setting::pad_hours_to:
            return tr("Later: pads go wet into the humid night.");
        case Setting::period:
            return tr("Longer: the far end waits longer for water and dries further.");
        case Setting::base_on_time:
            return tr("Longer: more water is pumped than the pads take up.");
        case Setting::on_time_ceiling:
            return tr("Higher: runs may grow longer than wets the pads.");
        case Setting::trim_step:
            return tr("Larger: each review changes the on-time by more, and it may swing.");
        case Setting::trim_dead_band:
            return tr("Wider: the on-time answers later to heat.");
        case Setting::review_interval:
            return tr("Longer: the on-time follows the heat slowly.");
        case Setting::rinse_at:
            return tr("Later: dust and salts stay in the pads for longer.");
        case Setting::rinse_length:
            return tr("Longer: it pumps longer than the rinse needs.");
    }
    return {};
}

// A time of day is before another or after it by the shorter way around the clock: midnight is after 23:30.
constexpr double day_s = 86'400.0;

bool never_rests(const TimerSettings& settings) {
    return settings.period && settings.base_on_time &&
           in_seconds(settings.base_on_time->value()) >= in_seconds(settings.period->value());
}

}  // namespace

std::optional<Deviation> deviation(const TimerSettings& settings, const TimerAdvice& advice,
                                   Setting setting) {
    const auto value = held(settings, setting);
    const auto* advised = advice.advised(setting);
    if (!value || advised == nullptr || !advised->value) {
        return std::nullopt;
    }
    if (group_of(setting) == SettingGroup::how_long && !advice.cycled && never_rests(settings)) {
        return std::nullopt;
    }
    // Not to the last digit: 83 °F read back from text are not quite the kelvins that were written.
    const bool on_the_clock = value->scale == Scale::clock;
    const double difference = value->si - advised->value->si;
    const double above = on_the_clock ? std::remainder(difference, day_s) : difference;
    if (std::abs(above) < 1e-6) {
        return std::nullopt;
    }
    return Deviation{setting, *value, *advised->value,
                     above < 0.0 ? meaning_below(setting) : meaning_above(setting)};
}

std::vector<Deviation> deviations(const TimerSettings& settings, const TimerAdvice& advice) {
    std::vector<Deviation> all;
    for (const auto setting : advised_settings) {
        if (auto one = deviation(settings, advice, setting)) {
            all.push_back(*std::move(one));
        }
    }
    return all;
}

}  // namespace wetfront::ui
