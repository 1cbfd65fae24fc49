// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_clock.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QTest>
#include <QTouchEvent>
#include <QWindow>

#include "support/fake_clock.h"

namespace wetfront::ui {
namespace {

class PressClockTest : public testing::Test {
protected:
    // A press that the system stamped `age_ms` before it is handled.
    void press(std::int64_t age_ms) {
        QMouseEvent event{QEvent::MouseButtonPress, QPointF{},      QPointF{},
                          Qt::LeftButton,           Qt::LeftButton, Qt::NoModifier};
        event.setTimestamp(static_cast<quint64>(clock_.monotonic - age_ms));
        presses_.eventFilter(&window_, &event);
    }

    static const Clock& up_for_50_s(test::FakeClock& clock) {
        clock.monotonic = 50'000;
        return clock;
    }

    test::FakeClock clock_;
    PressClock presses_{up_for_50_s(clock_), nullptr};
    QWindow window_;
};

TEST_F(PressClockTest, a_press_counts_when_the_system_stamped_it_not_when_it_was_handled) {
    press(300);
    const auto made = presses_.press();
    EXPECT_EQ(made.timed_by, TimedBy::event_stamp);
    EXPECT_EQ(made.at.boot_ns, clock_.boot.boot_ns - 300'000'000);
    EXPECT_EQ(made.wall.unix_ms, clock_.wall.unix_ms - 300);
    EXPECT_TRUE(made.stamp_error_ns.has_value());
}

TEST_F(PressClockTest, without_a_press_it_is_now_by_the_handler) {
    const auto made = presses_.press();
    EXPECT_EQ(made.timed_by, TimedBy::handler);
    EXPECT_EQ(made.at, clock_.boot);
}

TEST_F(PressClockTest, a_stamp_older_than_five_seconds_is_not_believed) {
    press(5000);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
    press(5001);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
    EXPECT_EQ(presses_.press().at, clock_.boot);
}

TEST_F(PressClockTest, a_stamp_from_the_future_is_not_believed) {
    press(-20);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
    press(-21);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
}

TEST_F(PressClockTest, a_press_is_forgotten_once_it_has_been_handled) {
    press(300);
    QCoreApplication::processEvents();
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
}

/// Counts the presses of keys that come to a window as first ones.
class KeyWindow : public QWindow {
public:
    int first_presses = 0;

protected:
    void keyPressEvent(QKeyEvent* event) override { first_presses += event->isAutoRepeat() ? 0 : 1; }
};

class PressClockKeyTest : public PressClockTest {
protected:
    PressClockKeyTest() { QCoreApplication::instance()->installEventFilter(&presses_); }

    void key(QEvent::Type type, int key, quint64 stamp) {
        QKeyEvent event{type, key, Qt::NoModifier};
        event.setTimestamp(stamp);
        QCoreApplication::sendEvent(&keys_, &event);
    }

    KeyWindow keys_;
};

// As X11 delivers a volume key that is held down.
TEST_F(PressClockKeyTest, a_press_with_the_stamp_of_the_release_before_it_is_a_repeat) {
    key(QEvent::KeyPress, Qt::Key_VolumeUp, 49'000);
    for (quint64 stamp = 49'500; stamp < 50'000; stamp += 40) {
        key(QEvent::KeyRelease, Qt::Key_VolumeUp, stamp);
        key(QEvent::KeyPress, Qt::Key_VolumeUp, stamp);
    }
    EXPECT_EQ(keys_.first_presses, 1);
}

TEST_F(PressClockKeyTest, quick_presses_are_all_passed_on) {
    key(QEvent::KeyPress, Qt::Key_Space, 49'000);
    key(QEvent::KeyRelease, Qt::Key_Space, 49'080);
    key(QEvent::KeyPress, Qt::Key_Space, 49'085);
    key(QEvent::KeyRelease, Qt::Key_Space, 49'100);
    key(QEvent::KeyPress, Qt::Key_Return, 49'100);
    EXPECT_EQ(keys_.first_presses, 3);
}

// Each press in a turn of the event loop of its own.
class PressClockOverTimeTest : public PressClockTest {
protected:
    void press_again(std::int64_t age_ms, int times = 1) {
        for (int i = 0; i < times; ++i) {
            clock_.advance_ms(1000);
            press(age_ms);
        }
    }
};

TEST_F(PressClockOverTimeTest, stamps_of_a_clock_that_lies_three_seconds_back_are_found_out) {
    press_again(3000, 4);
    press_again(3000);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
    EXPECT_EQ(presses_.press().at, clock_.boot);
}

TEST_F(PressClockOverTimeTest, presses_that_waited_together_for_a_busy_screen_are_believed) {
    for (int i = 0; i < 8; ++i) {
        press(3000 - i * 10);
    }
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
}

TEST_F(PressClockOverTimeTest, one_fresh_stamp_among_several_shows_that_the_clock_is_the_right_one) {
    press_again(2);
    press_again(900, 8);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
    EXPECT_EQ(presses_.press().at.boot_ns, clock_.boot.boot_ns - 900'000'000);
}

TEST_F(PressClockOverTimeTest, after_a_stamp_from_the_future_none_is_believed_for_a_dozen_turns) {
    press_again(-200);
    press_again(1, 11);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
    press_again(1);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
}

TEST_F(PressClockOverTimeTest, a_clock_of_the_stamps_that_was_set_back_is_found_out_by_those_that_follow) {
    press_again(1, 12);
    press_again(700, 12);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
}

TEST_F(PressClockOverTimeTest, nobody_can_say_on_which_side_of_a_sleep_a_press_was) {
    press_again(1);
    clock_.boot.boot_ns += 600'000'000'000;
    clock_.advance_ms(400);
    press(300);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::handler);
    EXPECT_EQ(presses_.press().at, clock_.boot);
}

// The clocks were last read together when the object was made, 2 s ago by the stamps' clock.
TEST_F(PressClockOverTimeTest, a_press_from_before_the_last_check_keeps_its_time_across_a_sleep) {
    const auto before = clock_.boot.boot_ns;
    clock_.boot.boot_ns += 600'000'000'000;
    clock_.advance_ms(2000);
    press(2500);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
    EXPECT_EQ(presses_.press().at.boot_ns, before - 500'000'000);
}

TEST_F(PressClockOverTimeTest, once_the_clocks_were_read_together_after_a_sleep_stamps_count_again) {
    clock_.boot.boot_ns += 600'000'000'000;
    QTest::qWait(1200);
    press_again(5);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
}

TEST_F(PressClockTest, a_second_finger_has_a_time_of_its_own) {
    const QPointingDevice glass{QStringLiteral("glass"),
                                1,
                                QInputDevice::DeviceType::TouchScreen,
                                QPointingDevice::PointerType::Finger,
                                QInputDevice::Capability::Position,
                                5,
                                0};
    QTouchEvent second{
        QEvent::TouchUpdate,
        &glass,
        Qt::NoModifier,
        {QEventPoint{0, QEventPoint::Stationary, {}, {}}, QEventPoint{1, QEventPoint::Pressed, {}, {}}}};
    second.setTimestamp(static_cast<quint64>(clock_.monotonic - 300));
    presses_.eventFilter(&window_, &second);
    EXPECT_EQ(presses_.press().timed_by, TimedBy::event_stamp);
    EXPECT_EQ(presses_.press().at.boot_ns, clock_.boot.boot_ns - 300'000'000);
}

// Every reading of the clock takes 3 ms, as on a machine that does much else.
class SlowClock final : public Clock {
public:
    [[nodiscard]] BootTime boot_now() const override { return {"boot-a", now_ns_ += 3'000'000}; }
    [[nodiscard]] WallTime wall_now() const override { return {}; }
    [[nodiscard]] std::int64_t monotonic_ms() const override { return now_ns_ / 1'000'000; }

private:
    mutable std::int64_t now_ns_ = 60'000'000'000;
};

TEST(PressErrorTest, holds_what_lay_between_the_readings_of_the_clocks) {
    const SlowClock clock;
    PressClock presses{clock, nullptr};
    QWindow window;
    QMouseEvent event{QEvent::MouseButtonPress, QPointF{},      QPointF{},
                      Qt::LeftButton,           Qt::LeftButton, Qt::NoModifier};
    event.setTimestamp(static_cast<quint64>(clock.monotonic_ms() - 100));
    presses.eventFilter(&window, &event);
    ASSERT_EQ(presses.press().timed_by, TimedBy::event_stamp);
    EXPECT_EQ(presses.press().stamp_error_ns, 1'000'000 + 1'500'000);
}

// 2^32 ms is 49.7 days: a stamp just before the wrap, read just after it.
TEST(PressAgeTest, survives_the_wrap_of_the_stamp) {
    EXPECT_EQ(PressClock::age_ms((std::int64_t{1} << 32) + 40, 0xFFFF'FFF0U), 56);
}

TEST(PressAgeTest, no_stamp_is_no_age) {
    EXPECT_EQ(PressClock::age_ms(50'000, 0), std::nullopt);
}

}  // namespace
}  // namespace wetfront::ui
