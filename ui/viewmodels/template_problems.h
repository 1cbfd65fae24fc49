// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <map>
#include <string>

#include "records/setting_template.h"

namespace wetfront::ui {

/// What is wrong with one setting of a template: the field that it stands at ("label", "resolution";
/// "setting" for the setting as such) and why.
struct SettingProblem {
    std::string field;
    QString text;
};

/// Everything that check_template() has against a template, each at the line that it belongs to; the check
/// itself stops at the first. Of one setting or dependency the first problem counts.
struct TemplateProblems {
    std::map<TemplateKey, SettingProblem> settings;  ///< of a setting that is missing too
    QString trim_rows;
    std::map<SettingDependency, QString> dependencies;

    [[nodiscard]] bool none() const {
        return settings.empty() && trim_rows.isEmpty() && dependencies.empty();
    }
    [[nodiscard]] QString first() const;  ///< empty if there is none
};

[[nodiscard]] TemplateProblems problems_of(const SettingTemplate& described);

/// Whether a timer of that kind can have the setting at all.
[[nodiscard]] bool can_have(TimerKind kind, TemplateKey key);
/// What is wrong with that setting by itself, on a timer of that kind; none: nothing.
[[nodiscard]] std::optional<SettingProblem> problem_of(TimerKind kind, const TemplateSetting& setting);
/// A setting as a template starts with it, with the trade's label.
[[nodiscard]] TemplateSetting plain_setting(TemplateKey key);

}  // namespace wetfront::ui
