// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>
#include <random>
#include <set>

#include "desktop/program.h"
#include "running_program.h"
#include "timing/stopwatch_guide.h"
#include "ui_support/fake_awake.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

constexpr int kills = 20;

class KilledWhileTimingTest : public testing::Test {
protected:
    // Presses a key every 350 ms: a key that comes back sooner is taken for one that is held down.
    void press_keys_meanwhile() {
        QStringList words;
        for (int i = 0; i < 6; ++i) {
            words += {QStringLiteral("key"), QStringLiteral("space"), QStringLiteral("sleep"),
                      QStringLiteral("0.35")};
        }
        keys_.start(QStringLiteral("xdotool"), words);
    }

    [[nodiscard]] std::vector<Mark> stored() {
        auto opened = program_.open_store();
        EXPECT_TRUE(opened) << opened.error().text();
        return opened.value().marks_of(program_.visit()).value();
    }

    // Once every pad is dry nothing is timed; the technician starts the pump again.
    void start_the_pump_if_nothing_runs() {
        auto opened = program_.open_store();
        ASSERT_TRUE(opened) << opened.error().text();
        auto& store = opened.value();
        if (store.visit_with_running_stopwatch().value()) {
            return;
        }
        const SystemClock clock;
        Mark start;
        start.id = store.new_id();
        start.pump = store.visit_file(program_.visit()).value().house.pumps.front().id;
        start.at = clock.boot_now();
        start.wall = clock.wall_now();
        ASSERT_TRUE(store.add_mark(program_.visit(), start));
    }

    static std::set<std::string> ids_of(const std::vector<Mark>& marks) {
        std::set<std::string> ids;
        for (const auto& mark : marks) {
            ids.insert(mark.id.text);
        }
        return ids;
    }

    RunningProgram program_;
    QProcess keys_;
};

TEST_F(KilledWhileTimingTest,
       it_opens_on_the_running_stopwatch_with_every_stored_press_once_whenever_it_dies) {
    std::mt19937 random{20260701};
    for (int kill = 0; kill < kills; ++kill) {
        ASSERT_NO_FATAL_FAILURE(start_the_pump_if_nothing_runs());
        const auto before = stored();
        ASSERT_TRUE(program_.start());
        // A key marks only if the program opened on the stopwatch.
        RunningProgram::answer({QStringLiteral("key"), QStringLiteral("space")});
        ASSERT_TRUE(program_.wait_for_marks(before.size() + 1)) << "not on the stopwatch after kill " << kill;
        QTest::qWait(350);
        press_keys_meanwhile();
        QTest::qWait(std::uniform_int_distribution<int>{0, 900}(random));
        const auto seen = ids_of(program_.marks_on_disk());
        program_.kill();
        keys_.kill();
        keys_.waitForFinished();

        const auto after = stored();
        const auto ids = ids_of(after);
        EXPECT_EQ(ids.size(), after.size()) << "a press is there twice after kill " << kill;
        EXPECT_TRUE(std::ranges::includes(ids, seen)) << "a press was lost at kill " << kill;
        EXPECT_GT(after.size(), before.size());
        EXPECT_LE(after.size(), before.size() + 7);
        for (std::size_t i = 0; i < before.size(); ++i) {
            EXPECT_EQ(after[i], before[i]);
        }
    }
}

TEST_F(KilledWhileTimingTest, the_running_stopwatch_is_shown_and_its_time_is_verified) {
    ASSERT_TRUE(program_.start());
    RunningProgram::answer({QStringLiteral("key"), QStringLiteral("space")});
    ASSERT_TRUE(program_.wait_for_marks(2));
    program_.kill();

    auto opened = program_.open_store();
    ASSERT_TRUE(opened) << opened.error().text();
    const auto marks = opened.value().marks_of(program_.visit());
    ASSERT_TRUE(marks) << marks.error().text();
    ASSERT_GE(marks.value().size(), 2U);
    const auto& pressed = marks.value()[1];
    EXPECT_EQ(pressed.kind, MarkKind::water_at_far_end);
    EXPECT_EQ(pressed.timed_by, TimedBy::event_stamp);
    EXPECT_GT(pressed.at.boot_ns, marks.value()[0].at.boot_ns);

    const SystemClock clock;
    FakeAwake awake;
    const Preferences nothing_kept{[](const QString&) { return QString{}; },
                                   [](const QString&, const QString&) {}};
    Program again{opened.value(), clock, nothing_kept, awake, program_.folder(), false};
    ASSERT_TRUE(again.show());
    show_and_wait(*again.window());
    ASSERT_NE(again.session().visit(), nullptr);
    EXPECT_EQ(again.session().visit()->file().visit.id, program_.visit());
    EXPECT_EQ(again.session().visit()->step(), static_cast<int>(Step::time_the_water));
    EXPECT_TRUE(again.session().visit()->stopwatch()->running());
    EXPECT_FALSE(again.session().visit()->stopwatch()->unverified());
    EXPECT_TRUE(awake.kept);
}

}  // namespace
}  // namespace wetfront::ui
