// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/controller_lines.h"

#include <QCoreApplication>
#include <algorithm>

#include "records/range_words.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

bool is_trim(TemplateKey key) {
    return key == TemplateKey::trim_above_target || key == TemplateKey::trim_change;
}

std::string_view field_key(TemplateKey key) {
    return key == TemplateKey::trim_above_target ? "above_target"
           : key == TemplateKey::trim_change     ? "change"
                                                 : enum_name(key);
}

ControllerLine as_on(const TemplateSetting& setting, FormField field, std::size_t row) {
    field.own_label = QString::fromStdString(setting.label);
    field.own_range = Formatter{}.text(range_words(setting));
    field.about.why = field.about.label;  // the trade's name, small beside the firm's
    if (!is_time_of_day(setting.setting)) {
        field.own_unit = unit_of(setting);
    }
    return {setting.setting, row, std::move(field)};
}

void add_trim_rows(std::vector<ControllerLine>& lines, const SettingTemplate& described,
                   const SettingsAccess& access) {
    std::vector<TemplateKey> keys;
    std::vector<std::string_view> names;
    for (const auto& setting : described.settings) {
        if (is_trim(setting.setting)) {
            keys.push_back(setting.setting);
            names.push_back(field_key(setting.setting));
        }
    }
    // A row that was entered stays in sight where the controller is described with fewer.
    const auto most = std::max(static_cast<std::size_t>(described.trim_rows.value_or(0)),
                               access.settings().trim_rows.size());
    const auto rows = [settings = access.settings]() -> std::vector<TrimRow>& {
        return settings().trim_rows;
    };
    auto fields = list_lines<TrimRow>(rows, names, QCoreApplication::translate("SettingsViewModel", "Row %1"),
                                      most, access.stored);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        lines.push_back(
            as_on(*described.setting(keys[i % keys.size()]), std::move(fields[i]), i / keys.size()));
    }
}

}  // namespace

std::vector<ControllerLine> controller_lines(const SettingTemplate& described,
                                             std::optional<SettingGroup> group,
                                             const SettingsAccess& access) {
    std::vector<ControllerLine> lines;
    bool rows_done = false;
    for (const auto& setting : described.settings) {
        if (group_of(setting.setting) != group) {
            continue;
        }
        if (!is_trim(setting.setting)) {
            for (auto& field :
                 form_lines<TimerSettings>(access.settings, {field_key(setting.setting)}, access.stored)) {
                lines.push_back(as_on(setting, std::move(field), 0));
            }
        } else if (!rows_done) {
            rows_done = true;
            add_trim_rows(lines, described, access);
        }
    }
    return lines;
}

QString text_on_controller(const SettingTemplate& described, TemplateKey key, const AnyQuantity& value) {
    return QString::fromStdString(text_on(*described.setting(key), value));
}

}  // namespace wetfront::ui
