// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace wetfront::ui {

/// What a sheet is printed on.
enum class Paper { letter, a4 };

}  // namespace wetfront::ui
