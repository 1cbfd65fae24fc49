// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_clock.h"

#include <QInputEvent>
#include <QTimer>
#include <QWindow>

namespace wetfront::ui {
namespace {

constexpr std::int32_t most_future_ms = 20;  // two clocks read one after the other
constexpr std::int32_t most_age_ms = 5000;
// Stamps are whole milliseconds; reading the clock adds less.
constexpr std::int64_t stamp_error_ns = 1'000'000;

Press handled_now(const Clock& clock) {
    return {clock.boot_now(), clock.wall_now(), TimedBy::handler, std::nullopt};
}

bool is_press(QEvent::Type type) {
    return type == QEvent::TouchBegin || type == QEvent::MouseButtonPress || type == QEvent::KeyPress;
}

}  // namespace

PressClock::PressClock(const Clock& clock, QObject* parent) : QObject{parent}, clock_{clock} {}

std::optional<std::int32_t> PressClock::age_ms(std::int64_t monotonic_ms, std::uint64_t stamp) {
    if (stamp == 0) {
        return std::nullopt;
    }
    const auto age = static_cast<std::int32_t>(static_cast<std::uint32_t>(monotonic_ms) -
                                               static_cast<std::uint32_t>(stamp));
    if (age < -most_future_ms || age > most_age_ms) {
        return std::nullopt;
    }
    return age;
}

bool PressClock::eventFilter(QObject* watched, QEvent* event) {
    if (is_press(event->type()) && qobject_cast<QWindow*>(watched) != nullptr) {
        const auto age = age_ms(clock_.monotonic_ms(), static_cast<QInputEvent*>(event)->timestamp());
        press_ = handled_now(clock_);
        if (age) {
            press_->at.boot_ns -= std::int64_t{*age} * 1'000'000;
            press_->wall.unix_ms -= *age;
            press_->timed_by = TimedBy::event_stamp;
            press_->stamp_error_ns = stamp_error_ns;
        }
        // Whoever handles this press does so before the event loop turns again.
        QTimer::singleShot(0, this, [this] { press_.reset(); });
    }
    return QObject::eventFilter(watched, event);
}

Press PressClock::press() const {
    return press_ ? *press_ : handled_now(clock_);
}

}  // namespace wetfront::ui
