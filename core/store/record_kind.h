// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/enum_names.h"

namespace wetfront {

/// What the record file keeps revisions of.
enum class RecordKind { farm, house, visit, setting_template };

// clang-format off
template <> struct EnumNames<RecordKind> { static constexpr std::array all{
    EnumName{RecordKind::farm, "farm"}, EnumName{RecordKind::house, "house"}, EnumName{RecordKind::visit, "visit"},
    EnumName{RecordKind::setting_template, "template"}}; };
// clang-format on

}  // namespace wetfront
