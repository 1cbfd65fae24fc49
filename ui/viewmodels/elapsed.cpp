// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/elapsed.h"

namespace wetfront::ui {

std::int64_t ms_since(const Mark& mark, const Clock& clock) {
    const auto now = clock.boot_now();
    return mark.at.boot_id == now.boot_id ? (now.boot_ns - mark.at.boot_ns) / 1'000'000
                                          : clock.wall_now().unix_ms - mark.wall.unix_ms;
}

}  // namespace wetfront::ui
