// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QStringList>
#include <functional>

namespace wetfront::ui {

/// The folders of the sticks and cards that are plugged in, asked anew each time.
using Media = std::function<QStringList()>;

/// Those of this machine.
[[nodiscard]] QStringList plugged_in_media();

}  // namespace wetfront::ui
