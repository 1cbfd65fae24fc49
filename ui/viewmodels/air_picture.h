// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <QVariantMap>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The air outside, behind the pad and in the house, for the item that draws it and in words.
struct AirView {
    QVariantMap picture;  ///< in the reader's units; empty where the air outside is not known
    QStringList words;    ///< what the pad can do today, or what is missing; a sentence each
};
[[nodiscard]] AirView air_view(const VisitRecord& record);

}  // namespace wetfront::ui
