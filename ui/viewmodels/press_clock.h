// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QTimer>
#include <cstdint>
#include <deque>
#include <optional>

#include "base/clock.h"
#include "timing/mark.h"

class QKeyEvent;

namespace wetfront::ui {

/// When a press happened on the boot clock, and how that is known.
struct Press {
    BootTime at;
    WallTime wall;
    TimedBy timed_by = TimedBy::handler;
    std::optional<std::int64_t> stamp_error_ns;
};

/// How the clock of the stamps stands to the boot clock: both read within `width_ns`.
struct ClockPair {
    std::int64_t monotonic_ms = 0;
    std::int64_t boot_ns = 0;  ///< at the middle of the reading
    std::int64_t width_ns = 0;

    /// Grows by every sleep of the machine.
    [[nodiscard]] std::int64_t offset_ns() const { return boot_ns - monotonic_ms * 1'000'000; }
};

/// Watches the application's input for the time that the system stamped on each press, so that a busy screen
/// does not lengthen a reading. Stamps are milliseconds of CLOCK_MONOTONIC in 32 bits, as X11 delivers them.
/// Whether they are is watched for as long as the program runs, by how old they are when they come in:
/// - a stamp older than five seconds is not believed;
/// - after one from the future none is believed until a dozen turns of the event loop brought no other;
/// - where no turn of several brings a fresh stamp, another clock makes them, and none is believed.
/// Both clocks are read one around the other at start, every second and at each press. If the machine slept
/// between the press and its handling, nobody can say on which side of the sleep the press was.
/// Whenever a stamp cannot be believed the time of handling is used and said so. Installed on the application
/// object; GUI thread.
/// X11 tells a key that is held down as releases and presses in turn, and does not say of each press that it
/// is a repeat; such a press has the very stamp of the release before it, which no hand can do, and is passed
/// on as a repeat.
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
    /// The events that were handled without a pause.
    struct Turn {
        std::int64_t last_ms = 0;
        std::optional<std::int32_t> least_age_ms;  ///< none: only stamps that can't be believed
        bool from_the_future = false;              ///< one of its stamps is
    };

    [[nodiscard]] ClockPair read_both() const;
    void check();
    void note_age(std::int64_t now_ms, std::uint64_t stamp);
    [[nodiscard]] bool stamps_are_monotonic() const;
    [[nodiscard]] Press timed(const ClockPair& now, std::optional<std::int32_t> age) const;
    [[nodiscard]] bool is_untold_repeat(const QKeyEvent& event) const;

    const Clock& clock_;
    ClockPair checked_;
    std::deque<Turn> turns_;
    QTimer check_;
    std::optional<Press> press_;
    int released_key_ = 0;
    std::uint64_t released_stamp_ = 0;  ///< 0: none
};

}  // namespace wetfront::ui
