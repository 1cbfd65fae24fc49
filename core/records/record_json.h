// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/house.h"
#include "records/json_text.h"
#include "records/setting_template.h"
#include "records/visit.h"

namespace wetfront {

// Records from a tree that was read by read_json() already, for the store: what parse_farm() and its like do
// with a text.

[[nodiscard]] Result<Farm> farm_of(const Json& json);
[[nodiscard]] Result<House> house_of(const Json& json);
[[nodiscard]] Result<Visit> visit_of(const Json& json);
[[nodiscard]] Result<SettingTemplate> template_of(const Json& json);

}  // namespace wetfront
