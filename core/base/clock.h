// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <cstdint>
#include <string>

#include "base/result.h"

namespace wetfront {

/// Wall-clock time for people: never used to measure a reading.
struct WallTime {
    std::int64_t unix_ms = 0;             ///< milliseconds since 1970-01-01T00:00:00Z
    std::int32_t utc_offset_minutes = 0;  ///< local time minus UTC, -14 h to +14 h

    friend bool operator==(const WallTime&, const WallTime&) = default;
    friend std::strong_ordering operator<=>(const WallTime& a, const WallTime& b) {
        return a.unix_ms <=> b.unix_ms;
    }
};

/// ISO 8601 with milliseconds and offset: "2026-07-01T10:04:05.250-05:00".
[[nodiscard]] std::string to_iso8601(WallTime time);
/// Accepts seconds with or without a fraction, and an offset or Z; years 1970 to 2199.
[[nodiscard]] Result<WallTime> parse_iso8601(std::string_view text, std::string_view item);
/// The calendar day at that place: "2026-07-01".
[[nodiscard]] std::string local_date(WallTime time);
/// The clock at that place: "10:04".
[[nodiscard]] std::string local_clock(WallTime time);

/// A moment on the clock that keeps counting while the tablet sleeps, valid within one boot.
struct BootTime {
    std::string boot_id;       ///< changes at every start of the machine
    std::int64_t boot_ns = 0;  ///< nanoseconds since that start (CLOCK_BOOTTIME)

    friend bool operator==(const BootTime&, const BootTime&) = default;
};

/// Where time comes from; passed in, so that tests can hold it in their hand.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual BootTime boot_now() const = 0;
    [[nodiscard]] virtual WallTime wall_now() const = 0;
    /// CLOCK_MONOTONIC in milliseconds: what input events are stamped with. Stops while the machine sleeps.
    [[nodiscard]] virtual std::int64_t monotonic_ms() const = 0;
};

/// The machine's own clocks. Stateless; usable from any thread.
class SystemClock final : public Clock {
public:
    [[nodiscard]] BootTime boot_now() const override;
    [[nodiscard]] WallTime wall_now() const override;
    [[nodiscard]] std::int64_t monotonic_ms() const override;
};

}  // namespace wetfront
