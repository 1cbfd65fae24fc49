// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_clock.h"

#include <QCoreApplication>
#include <QInputEvent>
#include <QKeyEvent>
#include <QTouchEvent>
#include <QWindow>
#include <algorithm>

namespace wetfront::ui {
namespace {

constexpr std::int32_t most_future_ms = 20;  // two clocks read one after the other
constexpr std::int32_t most_age_ms = 5000;
// Stamp and clock are both cut to whole milliseconds, so their difference is right to one.
constexpr std::int64_t cut_error_ns = 1'000'000;
// The rest of this header's limits are assumed, no source.
constexpr std::int64_t narrow_ns = 200'000;  // a reading that nothing came between
constexpr int most_tries = 5;
constexpr int check_every_ms = 1000;
constexpr std::int64_t slept_ns = 20'000'000;  // the offset of the clocks moves by whole sleeps or not at all
constexpr std::int64_t pause_ms = 50;          // events closer than this were waiting together
constexpr std::size_t turns_kept = 12;
constexpr std::size_t turns_for_a_verdict = 5;
constexpr std::int32_t most_least_age_ms = 250;  // of several turns one finds the screen idle

bool has_new_finger(QEvent* event) {
    return static_cast<QTouchEvent*>(event)->touchPointStates().testFlag(QEventPoint::Pressed);
}

// A second finger comes as an update of the first one's touch.
bool is_press(QEvent* event) {
    switch (event->type()) {
        case QEvent::TouchBegin:
        case QEvent::MouseButtonPress:
        case QEvent::KeyPress:
            return true;
        case QEvent::TouchUpdate:
            return has_new_finger(event);
        default:
            return false;
    }
}

// Others may carry no stamp at all.
bool is_stamped(QEvent::Type type) {
    switch (type) {
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TouchEnd:
        case QEvent::MouseButtonPress:
        case QEvent::MouseButtonRelease:
        case QEvent::MouseMove:
        case QEvent::KeyPress:
        case QEvent::KeyRelease:
            return true;
        default:
            return false;
    }
}

std::int32_t plain_age_ms(std::int64_t monotonic_ms, std::uint64_t stamp) {
    return static_cast<std::int32_t>(static_cast<std::uint32_t>(monotonic_ms) -
                                     static_cast<std::uint32_t>(stamp));
}

bool is_from_the_future(std::int32_t age_ms) {
    return age_ms < -most_future_ms && age_ms >= -most_age_ms;
}

}  // namespace

PressClock::PressClock(const Clock& clock, QObject* parent)
    : QObject{parent}, clock_{clock}, checked_{read_both()} {
    check_.setInterval(check_every_ms);
    connect(&check_, &QTimer::timeout, this, &PressClock::check);
    check_.start();
}

std::optional<std::int32_t> PressClock::age_ms(std::int64_t monotonic_ms, std::uint64_t stamp) {
    if (stamp == 0) {
        return std::nullopt;
    }
    const auto age = plain_age_ms(monotonic_ms, stamp);
    if (age < -most_future_ms || age > most_age_ms) {
        return std::nullopt;
    }
    return age;
}

// Something may come between the readings, so the narrowest of a few counts.
ClockPair PressClock::read_both() const {
    ClockPair best;
    for (int i = 0; i < most_tries; ++i) {
        const auto before = clock_.boot_now().boot_ns;
        const auto monotonic = clock_.monotonic_ms();
        const auto width = clock_.boot_now().boot_ns - before;
        if (i == 0 || width < best.width_ns) {
            best = {monotonic, before + width / 2, width};
        }
        if (best.width_ns <= narrow_ns) {
            break;
        }
    }
    return best;
}

void PressClock::check() {
    checked_ = read_both();
}

void PressClock::note_age(std::int64_t now_ms, std::uint64_t stamp) {
    if (turns_.empty() || now_ms - turns_.back().last_ms > pause_ms) {
        turns_.push_back({});
        if (turns_.size() > turns_kept) {
            turns_.pop_front();
        }
    }
    auto& turn = turns_.back();
    turn.last_ms = now_ms;
    turn.from_the_future =
        turn.from_the_future || (stamp != 0 && is_from_the_future(plain_age_ms(now_ms, stamp)));
    if (const auto age = age_ms(now_ms, stamp)) {
        turn.least_age_ms = std::min(turn.least_age_ms.value_or(*age), *age);
    }
}

bool PressClock::stamps_are_monotonic() const {
    if (std::ranges::any_of(turns_, &Turn::from_the_future)) {
        return false;
    }
    return turns_.size() < turns_for_a_verdict || std::ranges::any_of(turns_, [](const Turn& turn) {
               return turn.least_age_ms.value_or(most_age_ms) <= most_least_age_ms;
           });
}

Press PressClock::timed(const ClockPair& now, std::optional<std::int32_t> age) const {
    Press press{clock_.boot_now(), clock_.wall_now(), TimedBy::handler, std::nullopt};
    if (!age || !stamps_are_monotonic()) {
        return press;
    }
    auto offset = now;
    const bool slept = now.offset_ns() - checked_.offset_ns() > slept_ns;
    if (slept) {
        if (now.monotonic_ms - *age > checked_.monotonic_ms) {
            return press;  // before the sleep or after it
        }
        offset = checked_;
    }
    press.at.boot_ns = (now.monotonic_ms - *age) * 1'000'000 + offset.offset_ns();
    press.wall.unix_ms -= (now.boot_ns - press.at.boot_ns) / 1'000'000;
    press.timed_by = TimedBy::event_stamp;
    press.stamp_error_ns = cut_error_ns + offset.width_ns / 2;
    return press;
}

bool PressClock::is_untold_repeat(const QKeyEvent& event) const {
    return event.type() == QEvent::KeyPress && !event.isAutoRepeat() && released_stamp_ != 0 &&
           event.key() == released_key_ && event.timestamp() == released_stamp_;
}

bool PressClock::eventFilter(QObject* watched, QEvent* event) {
    if (is_stamped(event->type()) && qobject_cast<QWindow*>(watched) != nullptr) {
        const auto now = read_both();
        const auto stamp = static_cast<QInputEvent*>(event)->timestamp();
        if (event->type() == QEvent::KeyPress || event->type() == QEvent::KeyRelease) {
            const auto& key = *static_cast<QKeyEvent*>(event);
            if (is_untold_repeat(key)) {
                QKeyEvent repeat{QEvent::KeyPress,
                                 key.key(),
                                 key.modifiers(),
                                 key.nativeScanCode(),
                                 key.nativeVirtualKey(),
                                 key.nativeModifiers(),
                                 key.text(),
                                 true,
                                 static_cast<quint16>(key.count()),
                                 key.device()};
                repeat.setTimestamp(stamp);
                QCoreApplication::sendEvent(watched, &repeat);
                event->setAccepted(repeat.isAccepted());
                return true;
            }
            if (event->type() == QEvent::KeyRelease) {
                released_key_ = key.key();
                released_stamp_ = stamp;
            }
        }
        note_age(now.monotonic_ms, stamp);
        if (is_press(event)) {
            press_ = timed(now, age_ms(now.monotonic_ms, stamp));
            // Whoever handles this press does so before the event loop turns again.
            QTimer::singleShot(0, this, [this] { press_.reset(); });
        }
    }
    return QObject::eventFilter(watched, event);
}

Press PressClock::press() const {
    return press_ ? *press_ : timed({}, std::nullopt);
}

}  // namespace wetfront::ui
