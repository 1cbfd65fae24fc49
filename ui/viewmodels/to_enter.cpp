// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/to_enter.h"

namespace wetfront::ui {

std::optional<ToEnter> to_enter(VisitRecord& record, const Id& id) {
    const auto* timer = record.file().house.timer(id);
    const auto* advice = record.advice().of(id);
    if (timer == nullptr || timer->template_id.empty() || advice == nullptr) {
        return std::nullopt;
    }
    auto described = record.context().store.setting_template(timer->template_id);
    if (!described || described.value().kind != timer->kind) {
        return std::nullopt;
    }
    auto fit = fit_to_template(described.value(), *advice, record.advice().margins);
    return ToEnter{std::move(described.value()), std::move(fit)};
}

}  // namespace wetfront::ui
