// SPDX-License-Identifier: Apache-2.0
#include "records/setting_template.h"

#include <algorithm>

#include "base/numbers.h"
#include "records/range_words.h"

namespace wetfront {
namespace {

template <class Q>
std::optional<AnyQuantity> value_of(const Optional<Q>& entry) {
    return entry ? std::optional{any(entry->value())} : std::nullopt;
}

TemplateSetting plain(TemplateKey key, std::string unit, double resolution, double least, double most) {
    return {key, label_of(key).text, std::move(unit), resolution, least, most, ""};
}

SettingTemplate generic(const char* id, const char* name, TimerKind kind) {
    SettingTemplate made;
    made.id = Id{id};
    made.name = name;
    made.note = "Invented, to start from: put in the controller's own labels, steps and ranges.";
    made.kind = kind;
    return made;
}

void add_when_pads_may_run(SettingTemplate& made) {
    made.settings.push_back(plain(TemplateKey::start_temperature, "degF", 1.0, 60.0, 110.0));
    made.settings.push_back(plain(TemplateKey::lowest_house_temperature, "degF", 1.0, 30.0, 90.0));
    made.settings.push_back(plain(TemplateKey::humidity_cut_off, "%", 1.0, 30.0, 100.0));
    made.settings.push_back(plain(TemplateKey::pad_hours_from, "", 15.0, 0.0, 1425.0));
    made.settings.push_back(plain(TemplateKey::pad_hours_to, "", 15.0, 0.0, 1425.0));
}

}  // namespace

const TemplateSetting* SettingTemplate::setting(TemplateKey key) const {
    const auto found = std::ranges::find(settings, key, &TemplateSetting::setting);
    return found == settings.end() ? nullptr : &*found;
}

bool SettingTemplate::demands(SettingDependency dependency) const {
    return std::ranges::find(dependencies, dependency) != dependencies.end();
}

std::optional<Setting> setting_of(TemplateKey key) {
    switch (key) {
        case TemplateKey::start_temperature:
            return Setting::start_temperature;
        case TemplateKey::lowest_house_temperature:
            return Setting::lowest_house_temperature;
        case TemplateKey::humidity_cut_off:
            return Setting::humidity_cut_off;
        case TemplateKey::pad_hours_from:
            return Setting::pad_hours_from;
        case TemplateKey::pad_hours_to:
            return Setting::pad_hours_to;
        case TemplateKey::period:
            return Setting::period;
        case TemplateKey::base_on_time:
            return Setting::base_on_time;
        case TemplateKey::on_time_ceiling:
            return Setting::on_time_ceiling;
        case TemplateKey::trim_above_target:
            return Setting::trim_dead_band;
        case TemplateKey::trim_change:
            return Setting::trim_step;
        case TemplateKey::review_interval:
            return Setting::review_interval;
        case TemplateKey::rinse_at:
            return Setting::rinse_at;
        case TemplateKey::rinse_length:
            return Setting::rinse_length;
        case TemplateKey::target:
        case TemplateKey::entered_fill:
        case TemplateKey::entered_wet_through:
        case TemplateKey::shown_on_time:
            return std::nullopt;
    }
    return std::nullopt;
}

Message label_of(TemplateKey key) {
    if (const auto setting = setting_of(key)) {
        return label_of(*setting);
    }
    return key == TemplateKey::target                ? WF_TEXT("Target")
           : key == TemplateKey::entered_fill        ? WF_TEXT("Entered fill")
           : key == TemplateKey::entered_wet_through ? WF_TEXT("Entered wet-through")
                                                     : WF_TEXT("Shown on-time");
}

std::optional<SettingGroup> group_of(TemplateKey key) {
    if (key == TemplateKey::target) {
        return SettingGroup::when_pads_may_run;
    }
    const auto setting = setting_of(key);
    return setting ? std::optional{group_of(*setting)} : std::nullopt;
}

bool is_time_of_day(TemplateKey key) {
    return key == TemplateKey::pad_hours_from || key == TemplateKey::pad_hours_to ||
           key == TemplateKey::rinse_at;
}

Kind kind_of(TemplateKey key) {
    switch (key) {
        case TemplateKey::target:
        case TemplateKey::start_temperature:
        case TemplateKey::lowest_house_temperature:
            return Kind::temperature;
        case TemplateKey::humidity_cut_off:
            return Kind::fraction;
        case TemplateKey::trim_above_target:
            return Kind::temperature_difference;
        case TemplateKey::pad_hours_from:
        case TemplateKey::pad_hours_to:
        case TemplateKey::period:
        case TemplateKey::base_on_time:
        case TemplateKey::on_time_ceiling:
        case TemplateKey::trim_change:
        case TemplateKey::review_interval:
        case TemplateKey::rinse_at:
        case TemplateKey::rinse_length:
        case TemplateKey::entered_fill:
        case TemplateKey::entered_wet_through:
        case TemplateKey::shown_on_time:
            return Kind::duration;
    }
    return Kind::duration;
}

std::vector<std::string_view> units_of(TemplateKey key) {
    if (is_time_of_day(key)) {
        return {};
    }
    const auto kind = kind_of(key);
    if (kind == Kind::duration) {
        return {"s", "min", "h"};
    }
    if (kind == Kind::fraction) {
        return {"%"};
    }
    return {"degC", "degF"};
}

const Unit* unit_of(const TemplateSetting& setting) {
    const bool clock = is_time_of_day(setting.setting);
    const auto accepted = units_of(setting.setting);
    if (clock ? !setting.unit.empty() : std::ranges::find(accepted, setting.unit) == accepted.end()) {
        return nullptr;
    }
    const std::string_view symbol = clock ? "min" : std::string_view{setting.unit};
    const auto all = units_of(kind_of(setting.setting));
    const auto found = std::ranges::find(all, symbol, &Unit::symbol);
    return found == all.end() ? nullptr : &*found;
}

std::optional<AnyQuantity> held(const TimerSettings& settings, TemplateKey key, std::size_t row) {
    if (const auto setting = setting_of(key)) {
        return held(settings, *setting, row);
    }
    return key == TemplateKey::target                ? value_of(settings.target)
           : key == TemplateKey::entered_fill        ? value_of(settings.entered_fill)
           : key == TemplateKey::entered_wet_through ? value_of(settings.entered_wet_through)
                                                     : value_of(settings.shown_on_time);
}

std::string text_on(const TemplateSetting& setting, const AnyQuantity& value) {
    if (is_time_of_day(setting.setting)) {
        return TimeOfDay::at(seconds(value.si)).text();
    }
    const auto& unit = *unit_of(setting);
    return print_number(number_in(unit, value.si), 3) + " " + std::string{unit.display};
}

Message range_words(const TemplateSetting& setting) {
    const auto at = [&](double number) {
        return text_on(setting, {kind_of(setting.setting), to_si(*unit_of(setting), number)});
    };
    return {WF_TEXT("%1 to %2"), {at(*setting.least), at(*setting.most)}};
}

std::string range_text(const TemplateSetting& setting) {
    return in_english(range_words(setting), UnitSystem::si);
}

SettingTemplate generic_template(TimerKind kind) {
    switch (kind) {
        case TimerKind::trimmed: {
            auto made = generic("generic-trimmed", "Plain trimmed timer", kind);
            made.settings.push_back(plain(TemplateKey::target, "degF", 1.0, 50.0, 100.0));
            add_when_pads_may_run(made);
            made.settings.push_back(plain(TemplateKey::period, "min", 1.0, 1.0, 60.0));
            made.settings.push_back(plain(TemplateKey::base_on_time, "s", 5.0, 0.0, 3600.0));
            made.settings.push_back(plain(TemplateKey::on_time_ceiling, "s", 5.0, 0.0, 3600.0));
            made.settings.push_back(plain(TemplateKey::trim_above_target, "degF", 1.0, 0.0, 20.0));
            made.settings.push_back(plain(TemplateKey::trim_change, "s", 1.0, -120.0, 120.0));
            made.settings.push_back(plain(TemplateKey::review_interval, "min", 1.0, 1.0, 120.0));
            made.settings.push_back(plain(TemplateKey::rinse_at, "", 15.0, 0.0, 1425.0));
            made.settings.push_back(plain(TemplateKey::rinse_length, "min", 1.0, 0.0, 60.0));
            made.trim_rows = 4;
            made.dependencies = {SettingDependency::ceiling_at_least_base,
                                 SettingDependency::review_multiple_of_period,
                                 SettingDependency::trim_rows_ascend};
            return made;
        }
        case TimerKind::fixed_interval: {
            auto made = generic("generic-fixed-interval", "Plain timer with a fixed interval", kind);
            made.settings.push_back(plain(TemplateKey::period, "min", 1.0, 1.0, 60.0));
            made.settings.push_back(plain(TemplateKey::base_on_time, "s", 15.0, 0.0, 3600.0));
            return made;
        }
        case TimerKind::on_demand: {
            auto made = generic("generic-on-demand", "Plain timer on demand", kind);
            add_when_pads_may_run(made);
            return made;
        }
    }
    return {};
}

}  // namespace wetfront
