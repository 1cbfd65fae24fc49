// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "format/formatter.h"

namespace wetfront::ui {

/// A share, 1 for all of it, in whole percents: what was measured or worked out is no better known than that.
[[nodiscard]] inline QString whole_percent(const Formatter& formatter, double share) {
    return formatter.text(any(from_si<Fraction>(std::round(share * 100.0) / 100.0)));
}

}  // namespace wetfront::ui
