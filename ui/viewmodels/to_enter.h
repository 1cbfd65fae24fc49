// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/template_fit.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The advice for a timer on the controller that its setting template describes.
struct ToEnter {
    SettingTemplate described;
    TemplateFit fit;
};

/// None where the timer has no template, it is not in the store, or it describes another kind of timer.
[[nodiscard]] std::optional<ToEnter> to_enter(VisitRecord& record, const Id& timer);

}  // namespace wetfront::ui
