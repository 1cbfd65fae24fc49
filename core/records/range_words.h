// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/field.h"
#include "records/setting_template.h"
#include "units/message.h"

namespace wetfront {

// Ranges as sentences, for readers of any language; their limits are texts with unit, point as decimal mark.

/// "0.5 m to 200 m". Empty if the field has no range.
[[nodiscard]] Message range_words(const Field& field, Kind kind, UnitSystem system);

/// What a controller can hold: "5 s to 600 s", "00:00 to 23:45".
[[nodiscard]] Message range_words(const TemplateSetting& setting);

}  // namespace wetfront
