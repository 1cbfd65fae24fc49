// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "records/record_text.h"

namespace wetfront {
namespace {

std::string name_of(TemplateKey key) {
    return std::string{enum_name(key)};
}

/// Paths of a template's parts.
struct Paths {
    std::string before;

    [[nodiscard]] std::string of(const std::string& key) const {
        return before.empty() ? key : before + "." + key;
    }
    [[nodiscard]] std::string setting(std::size_t index, const std::string& key) const {
        return of("settings[" + std::to_string(index) + "]" + (key.empty() ? "" : "." + key));
    }
};

/// What a setting can be at all, in SI: wide, to catch a wrong unit or a slipped digit. Ours, no source.
struct Span {
    double least;
    double most;
};

Span span_of(TemplateKey key) {
    constexpr double minute = 60.0;
    constexpr double day = 86400.0;
    if (is_time_of_day(key)) {
        return {0.0, day - minute};
    }
    if (key == TemplateKey::trim_change) {
        return {-60.0 * minute, 60.0 * minute};
    }
    const auto kind = kind_of(key);
    if (kind == Kind::temperature) {
        return {celsius_zero - 40.0, celsius_zero + 60.0};
    }
    if (kind == Kind::temperature_difference) {
        return {0.0, 50.0};
    }
    return kind == Kind::fraction ? Span{0.0, 1.0} : Span{0.0, day};
}

Result<void> check_label(const std::string& label, const std::string& item) {
    if (std::ranges::all_of(label, [](char c) { return c == ' '; })) {
        return bad_input(item, label,
                         "write the controller's own label, 1 to " + std::to_string(most_label_characters) +
                             " characters");
    }
    return check_text(label, most_label_characters, item);
}

Result<void> check_unit(const TemplateSetting& setting, const std::string& item) {
    if (unit_of(setting) != nullptr) {
        return boost::outcome_v2::success();
    }
    if (is_time_of_day(setting.setting)) {
        return bad_input(item, setting.unit,
                         name_of(setting.setting) +
                             " is a time of day: leave the unit out; its numbers are minutes after midnight");
    }
    std::string all;
    const auto accepted = units_of(setting.setting);
    for (std::size_t i = 0; i < accepted.size(); ++i) {
        all += (i == 0 ? "" : i + 1 == accepted.size() ? " or " : ", ") + std::string{accepted[i]};
    }
    return bad_input(item, setting.unit, "does not fit " + name_of(setting.setting) + "; write " + all);
}

Result<void> check_limit(double value, const TemplateSetting& setting, const std::string& item) {
    const auto& unit = *unit_of(setting);
    const auto [least, most] = span_of(setting.setting);
    const double slack = 1e-9 * std::max(std::abs(least), std::abs(most));
    const double si = to_si(unit, value);
    if (!(si >= least - slack && si <= most + slack)) {
        return bad_input(item, print_number(value, 6),
                         name_of(setting.setting) + " lies within " +
                             print_number(number_in(unit, least), 3) + " and " +
                             print_number(number_in(unit, most), 3) + " " + std::string{unit.symbol});
    }
    return boost::outcome_v2::success();
}

Result<void> check_range_of(const TemplateSetting& setting, const Paths& paths, std::size_t index) {
    for (const auto& [key, value] :
         {std::pair{"resolution", setting.resolution}, {"least", setting.least}, {"most", setting.most}}) {
        if (!value) {
            return bad_input(paths.setting(index, key), "", "missing; it must be there");
        }
    }
    WF_CHECK(check_limit(*setting.least, setting, paths.setting(index, "least")));
    WF_CHECK(check_limit(*setting.most, setting, paths.setting(index, "most")));
    if (!(*setting.least < *setting.most)) {
        return bad_input(paths.setting(index, "least"), print_number(*setting.least, 6),
                         "must be below most, here " + print_number(*setting.most, 6));
    }
    const double range = *setting.most - *setting.least;
    if (!(*setting.resolution > 0.0 && *setting.resolution <= range * (1.0 + 1e-9))) {
        return bad_input(paths.setting(index, "resolution"), print_number(*setting.resolution, 6),
                         "must be more than 0 and at most the range, here " + print_number(range, 6));
    }
    return boost::outcome_v2::success();
}

Result<void> check_setting(const SettingTemplate& whole, std::size_t index, const Paths& paths) {
    const auto& setting = whole.settings[index];
    if (whole.setting(setting.setting) != &setting) {
        return bad_input(paths.setting(index, "setting"), name_of(setting.setting),
                         "stands here twice; each setting stands once");
    }
    WF_CHECK(check_label(setting.label, paths.setting(index, "label")));
    WF_CHECK(check_unit(setting, paths.setting(index, "unit")));
    return check_range_of(setting, paths, index);
}

bool is_trimming(TemplateKey key) {
    return key == TemplateKey::on_time_ceiling || key == TemplateKey::trim_above_target ||
           key == TemplateKey::trim_change || key == TemplateKey::review_interval;
}

bool is_cycle(TemplateKey key) {
    return key == TemplateKey::period || key == TemplateKey::base_on_time;
}

// What makes a timer one of its kind; all else a controller may lack.
std::vector<TemplateKey> needed_by(TimerKind kind) {
    switch (kind) {
        case TimerKind::trimmed:
            return {TemplateKey::period, TemplateKey::base_on_time, TemplateKey::on_time_ceiling,
                    TemplateKey::trim_above_target, TemplateKey::trim_change};
        case TimerKind::fixed_interval:
            return {TemplateKey::period, TemplateKey::base_on_time};
        case TimerKind::on_demand:
            return {TemplateKey::start_temperature};
    }
    return {};
}

Result<void> check_kind(const SettingTemplate& whole, const Paths& paths) {
    const auto kind = "a timer of the kind '" + std::string{enum_name(whole.kind)} + "'";
    for (const auto key : needed_by(whole.kind)) {
        if (whole.setting(key) == nullptr) {
            return bad_input(paths.of("settings"), "",
                             kind + " needs " + name_of(key) + ", which is missing");
        }
    }
    for (std::size_t i = 0; i < whole.settings.size(); ++i) {
        const auto key = whole.settings[i].setting;
        if ((is_trimming(key) && whole.kind != TimerKind::trimmed) ||
            (is_cycle(key) && whole.kind == TimerKind::on_demand)) {
            return bad_input(paths.setting(i, "setting"), name_of(key), kind + " has no such setting");
        }
    }
    const bool from = whole.setting(TemplateKey::pad_hours_from) != nullptr;
    if (from != (whole.setting(TemplateKey::pad_hours_to) != nullptr)) {
        const auto missing = from ? TemplateKey::pad_hours_to : TemplateKey::pad_hours_from;
        return bad_input(paths.of("settings"), "",
                         "pad hours begin and end: " + name_of(missing) + " is missing");
    }
    return boost::outcome_v2::success();
}

Result<void> check_trim_rows(const SettingTemplate& whole, const Paths& paths) {
    if (whole.kind != TimerKind::trimmed) {
        if (whole.trim_rows) {
            return bad_input(paths.of("trim_rows"), std::to_string(*whole.trim_rows),
                             "only a trimmed timer has trim rows; leave it out");
        }
        return boost::outcome_v2::success();
    }
    if (!whole.trim_rows || *whole.trim_rows < 1 || *whole.trim_rows > 4) {
        return bad_input(paths.of("trim_rows"), whole.trim_rows ? std::to_string(*whole.trim_rows) : "",
                         "a trimmed timer has 1 to 4 trim rows");
    }
    return boost::outcome_v2::success();
}

double least_of(const SettingTemplate& whole, TemplateKey key) {
    const auto& setting = *whole.setting(key);
    return to_si(*unit_of(setting), *setting.least);
}

double most_of(const SettingTemplate& whole, TemplateKey key) {
    const auto& setting = *whole.setting(key);
    return to_si(*unit_of(setting), *setting.most);
}

std::vector<TemplateKey> spoken_of(SettingDependency dependency) {
    switch (dependency) {
        case SettingDependency::ceiling_at_least_base:
            return {TemplateKey::on_time_ceiling, TemplateKey::base_on_time};
        case SettingDependency::ceiling_below_period:
            return {TemplateKey::on_time_ceiling, TemplateKey::period};
        case SettingDependency::base_below_period:
            return {TemplateKey::base_on_time, TemplateKey::period};
        case SettingDependency::review_multiple_of_period:
            return {TemplateKey::review_interval, TemplateKey::period};
        case SettingDependency::pad_hours_end_after_they_begin:
            return {TemplateKey::pad_hours_to, TemplateKey::pad_hours_from};
        case SettingDependency::trim_rows_ascend:
            return {TemplateKey::trim_above_target};
    }
    return {};
}

// Whether two values within the ranges can meet it; a multiple is only asked to reach the shortest period.
bool ranges_leave_room(const SettingTemplate& whole, SettingDependency dependency) {
    const auto keys = spoken_of(dependency);
    switch (dependency) {
        case SettingDependency::ceiling_at_least_base:
        case SettingDependency::review_multiple_of_period:
            return most_of(whole, keys[0]) >= least_of(whole, keys[1]);
        case SettingDependency::ceiling_below_period:
        case SettingDependency::base_below_period:
            return least_of(whole, keys[0]) < most_of(whole, keys[1]);
        case SettingDependency::pad_hours_end_after_they_begin:
            return most_of(whole, keys[0]) > least_of(whole, keys[1]);
        case SettingDependency::trim_rows_ascend: {
            const auto& row = *whole.setting(keys[0]);
            return (*row.most - *row.least) / *row.resolution + 1e-9 >= *whole.trim_rows - 1;
        }
    }
    return true;
}

Result<void> check_dependencies(const SettingTemplate& whole, const Paths& paths) {
    for (std::size_t i = 0; i < whole.dependencies.size(); ++i) {
        const auto dependency = whole.dependencies[i];
        const auto item = paths.of("dependencies[" + std::to_string(i) + "]");
        const auto name = enum_name(dependency);
        const auto here = whole.dependencies.begin() + static_cast<std::ptrdiff_t>(i);
        if (std::find(whole.dependencies.begin(), here, dependency) != here) {
            return bad_input(item, name, "stands here twice");
        }
        for (const auto key : spoken_of(dependency)) {
            if (whole.setting(key) == nullptr) {
                return bad_input(item, name, "speaks of " + name_of(key) + ", which this template lacks");
            }
        }
        if (!ranges_leave_room(whole, dependency)) {
            return bad_input(item, name, "the ranges of these settings leave no values that meet it");
        }
    }
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> check_template(const SettingTemplate& checked, const std::string& path) {
    const Paths paths{path};
    if (checked.name.empty()) {
        return bad_input(paths.of("name"), "", "give the template a name");
    }
    for (std::size_t i = 0; i < checked.settings.size(); ++i) {
        WF_CHECK(check_setting(checked, i, paths));
    }
    WF_CHECK(check_kind(checked, paths));
    WF_CHECK(check_trim_rows(checked, paths));
    return check_dependencies(checked, paths);
}

}  // namespace wetfront
