// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "records/setting_template.h"
#include "viewmodels/form_model.h"

namespace wetfront::ui {

/// How the settings of one timer are reached and stored, as for form_lines().
struct SettingsAccess {
    std::function<TimerSettings&()> settings;
    std::function<Result<void>()> stored;
};

/// One setting of a described controller, as it stands in a form.
struct ControllerLine {
    TemplateKey key;
    std::size_t row = 0;  ///< of the trim rows, from 0
    FormField field;
};

/// The settings of that group (none: what it is told and shows) that the controller asks for, in its order,
/// under its own label with the trade's name as the reason, in its unit and with its range. Trim rows stand
/// where the first of their settings stands; one more than there are, as long as the controller has more.
[[nodiscard]] std::vector<ControllerLine> controller_lines(const SettingTemplate& described,
                                                           std::optional<SettingGroup> group,
                                                           const SettingsAccess& access);

/// Text of a value on that controller: "83 °F".
[[nodiscard]] QString text_on_controller(const SettingTemplate& described, TemplateKey key,
                                         const AnyQuantity& value);

}  // namespace wetfront::ui
