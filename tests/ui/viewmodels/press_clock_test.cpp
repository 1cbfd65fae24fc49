// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_clock.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QMouseEvent>
#include <QWindow>

#include "support/fake_clock.h"

namespace wetfront::ui {
namespace {

class PressClockTest : public testing::Test {
protected:
    PressClockTest() { clock_.monotonic = 50'000; }

    // A press that the system stamped `age_ms` before it is handled.
    void press(std::int64_t age_ms) {
        QMouseEvent event{QEvent::MouseButtonPress, QPointF{},      QPointF{},
                          Qt::LeftButton,           Qt::LeftButton, Qt::NoModifier};
        event.setTimestamp(static_cast<quint64>(clock_.monotonic - age_ms));
        presses_.eventFilter(&window_, &event);
    }

    test::FakeClock clock_;
    PressClock presses_{clock_, nullptr};
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

// 2^32 ms is 49.7 days: a stamp just before the wrap, read just after it.
TEST(PressAgeTest, survives_the_wrap_of_the_stamp) {
    EXPECT_EQ(PressClock::age_ms((std::int64_t{1} << 32) + 40, 0xFFFF'FFF0U), 56);
}

TEST(PressAgeTest, no_stamp_is_no_age) {
    EXPECT_EQ(PressClock::age_ms(50'000, 0), std::nullopt);
}

}  // namespace
}  // namespace wetfront::ui
