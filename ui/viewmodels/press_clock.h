// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <cstdint>
#include <optional>

#include "base/clock.h"
#include "timing/mark.h"

namespace wetfront::ui {

/// When a press happened on the boot clock, and how that is known.
struct Press {
    BootTime at;
    WallTime wall;
    TimedBy timed_by = TimedBy::handler;
    std::optional<std::int64_t> stamp_error_ns;
};

/// Watches the application's input for the time that the system stamped on each press, so that a busy screen
/// does not lengthen a reading. Stamps are milliseconds of CLOCK_MONOTONIC in 32 bits, as X11 delivers them;
/// a stamp from the future or older than five seconds is not believed, and the time of handling is used and
/// said so. Installed on the application object; GUI thread.
class PressClock : public QObject {
    Q_OBJECT

public:
    PressClock(const Clock& clock, QObject* parent);

    /// The press being handled; without one, now by the handler's time.
    [[nodiscard]] Press press() const;

    bool eventFilter(QObject* watched, QEvent* event) override;

    /// Age in milliseconds of a stamp read at `monotonic_ms`; none if it can't be believed. Handles the wrap
    /// at 49.7 days.
    [[nodiscard]] static std::optional<std::int32_t> age_ms(std::int64_t monotonic_ms, std::uint64_t stamp);

private:
    const Clock& clock_;
    std::optional<Press> press_;
};

}  // namespace wetfront::ui
