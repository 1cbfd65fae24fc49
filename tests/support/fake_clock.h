// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/clock.h"

namespace wetfront::test {

/// A clock that stands still until the test moves it.
class FakeClock final : public Clock {
public:
    BootTime boot{"boot-a", 1'000'000'000};
    WallTime wall{1'782'900'000'000, -300};  ///< 2026-07-01T05:00:00-05:00
    std::int64_t monotonic = 1'000;

    [[nodiscard]] BootTime boot_now() const override { return boot; }
    [[nodiscard]] WallTime wall_now() const override { return wall; }
    [[nodiscard]] std::int64_t monotonic_ms() const override { return monotonic; }

    void advance_ms(std::int64_t ms) {
        boot.boot_ns += ms * 1'000'000;
        wall.unix_ms += ms;
        monotonic += ms;
    }
};

}  // namespace wetfront::test
