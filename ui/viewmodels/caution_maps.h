// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantList>
#include <span>

#include "format/formatter.h"
#include "rules/checklists.h"

namespace wetfront::ui {

/// Cautions as QML shows them: {level, text, source}.
[[nodiscard]] QVariantList caution_maps(std::span<const Caution* const> cautions, const Formatter& formatter);

}  // namespace wetfront::ui
