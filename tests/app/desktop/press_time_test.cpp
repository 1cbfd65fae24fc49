// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>
#include <csignal>

#include "running_program.h"

namespace wetfront::ui {
namespace {

constexpr std::int64_t ms = 1'000'000;
constexpr int block_ms = 300;

/// A press in the real window, on a machine that was too busy to handle it for 300 ms.
class PressTimeTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(program_.start());
        RunningProgram::answer({QStringLiteral("mousemove"), QStringLiteral("--window"), program_.window(),
                                QStringLiteral("600"), QStringLiteral("500")});
        // The page is there once a key marks.
        RunningProgram::answer({QStringLiteral("key"), QStringLiteral("space")});
        ASSERT_TRUE(program_.wait_for_marks(2));
        QTest::qWait(500);
    }

    void expect_the_time_of_the_press(const QString& down, const QString& up, const QString& what) {
        const QStringList stamp{QStringLiteral("exec"), QStringLiteral("--sync"), QStringLiteral("--args"),
                                QStringLiteral("1"), QStringLiteral(WETFRONT_BOOT_TIME)};
        program_.signal(SIGSTOP);
        QTest::qWait(block_ms / 3);
        const auto stamps = RunningProgram::answers(stamp + QStringList{down, what} + stamp);
        RunningProgram::answer({up, what});
        QTest::qWait(block_ms);
        const auto freed = SystemClock{}.boot_now().boot_ns;
        program_.signal(SIGCONT);
        ASSERT_EQ(stamps.size(), 2);
        const auto before = stamps[0].toLongLong();
        const auto after = stamps[1].toLongLong();

        ASSERT_TRUE(program_.wait_for_marks(3));
        const auto mark = program_.marks_on_disk().back();
        EXPECT_EQ(mark.timed_by, TimedBy::event_stamp);
        EXPECT_GE(mark.at.boot_ns, before - 10 * ms);
        EXPECT_LE(mark.at.boot_ns, after + 10 * ms);
        EXPECT_LT(mark.at.boot_ns, freed - block_ms * ms + 10 * ms) << "this is when it was handled";
        ASSERT_TRUE(mark.stamp_error_ns.has_value());
        EXPECT_LE(*mark.stamp_error_ns, 10 * ms);
    }

    RunningProgram program_;
};

TEST_F(PressTimeTest, of_a_pointer_is_when_it_went_down_though_the_program_stood_still) {
    expect_the_time_of_the_press(QStringLiteral("mousedown"), QStringLiteral("mouseup"), QStringLiteral("1"));
}

TEST_F(PressTimeTest, of_a_key_is_when_it_went_down_though_the_program_stood_still) {
    expect_the_time_of_the_press(QStringLiteral("keydown"), QStringLiteral("keyup"),
                                 QStringLiteral("Return"));
}

TEST_F(PressTimeTest, of_a_volume_key_is_when_it_went_down_though_the_program_stood_still) {
    expect_the_time_of_the_press(QStringLiteral("keydown"), QStringLiteral("keyup"),
                                 QStringLiteral("XF86AudioRaiseVolume"));
}

// The window system tells a key that is held down as presses and releases in turn, and not all of them as
// repeats.
TEST_F(PressTimeTest, a_key_that_is_held_down_marks_once_and_two_quick_presses_are_both_kept) {
    std::size_t marks = 2;
    for (const char* name : {"space", "XF86AudioRaiseVolume"}) {
        const auto key = QString::fromLatin1(name);
        RunningProgram::answer({QStringLiteral("keydown"), key, QStringLiteral("sleep"),
                                QStringLiteral("1.5"), QStringLiteral("keyup"), key});
        ASSERT_TRUE(program_.wait_for_marks(++marks));
        QTest::qWait(500);
        EXPECT_EQ(program_.marks_on_disk().size(), marks) << name;
    }
    RunningProgram::answer({QStringLiteral("key"), QStringLiteral("space"), QStringLiteral("sleep"),
                            QStringLiteral("0.1"), QStringLiteral("key"), QStringLiteral("space"),
                            QStringLiteral("key"), QStringLiteral("Return")});
    EXPECT_TRUE(program_.wait_for_marks(marks + 3));
}

}  // namespace
}  // namespace wetfront::ui
