// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "format/formatter.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

/// A cycle strip as QML passes it to the painter: keys named after the members of CycleStrip in camel case;
/// times that are not known are left out.
[[nodiscard]] QVariantMap strip_map(const CycleStrip& strip, const Formatter& formatter);

}  // namespace wetfront::ui
