// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>

#include "demo/demo.h"
#include "desktop/program.h"
#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

constexpr int patience_ms = 20'000;

class KilledWhileTimingTest : public testing::Test {
protected:
    // A visit whose pump was started a moment ago.
    void SetUp() override {
        auto opened = Store::open(file_.toStdString(), clock_);
        ASSERT_TRUE(opened) << opened.error().text();
        auto& store = opened.value();
        VisitFile file = example_visit();
        file.visit = Visit{};
        file.visit.id = store.new_id();
        visit_ = file.visit.id;
        file.visit.house = file.house.id;
        file.visit.started = clock_.wall_now();
        file.visit.agreement = example_visit().visit.agreement;
        Mark start;
        start.id = store.new_id();
        start.pump = file.house.pumps.front().id;
        start.at = clock_.boot_now();
        start.wall = clock_.wall_now();
        start.pads = PadsAtStart::dry;
        file.visit.marks.push_back(start);
        const auto added = store.add(file);
        ASSERT_TRUE(added) << added.error().text();
    }

    // Starts the program, waits for its window and gives it the keyboard.
    void start_program() {
        program_.setProcessChannelMode(QProcess::ForwardedChannels);
        program_.start(QStringLiteral(WETFRONT_PROGRAM), {QStringLiteral("--store"), file_});
        ASSERT_TRUE(program_.waitForStarted());
        const QString pid = QString::number(program_.processId());
        QElapsedTimer waited;
        waited.start();
        while (window_.isEmpty() && waited.elapsed() < patience_ms) {
            window_ =
                answer({QStringLiteral("search"), QStringLiteral("--onlyvisible"), QStringLiteral("--pid"),
                        pid, QStringLiteral("--name"), QStringLiteral("Wetfront")});
        }
        ASSERT_FALSE(window_.isEmpty()) << "no window in " << patience_ms << " ms";
        answer({QStringLiteral("windowfocus"), QStringLiteral("--sync"), window_});
    }

    static QString answer(const QStringList& words) {
        QProcess tool;
        tool.start(QStringLiteral("xdotool"), words);
        tool.waitForFinished(patience_ms);
        return QString::fromLatin1(tool.readAllStandardOutput()).section(QLatin1Char('\n'), 0, 0);
    }

    // Marks committed so far, from a copy of the file and its journal: the program holds the file itself. A
    // journal caught in the middle of a write shows what was committed before it.
    [[nodiscard]] std::size_t marks_on_disk() {
        const QString copy = folder_.filePath(QStringLiteral("copy-%1.wetfront").arg(++copies_));
        if (!QFile::copy(file_, copy) ||
            !QFile::copy(file_ + QStringLiteral("-wal"), copy + QStringLiteral("-wal"))) {
            return 0;
        }
        const auto opened = Store::open(copy.toStdString(), clock_);
        const auto marks =
            opened ? opened.value().marks_of(visit_) : Result<std::vector<Mark>>{opened.error()};
        return marks ? marks.value().size() : 0;
    }

    void kill_program() {
        ::kill(static_cast<pid_t>(program_.processId()), SIGKILL);
        ASSERT_TRUE(program_.waitForFinished(patience_ms));
    }

    QTemporaryDir folder_;
    QString file_ = folder_.filePath(QStringLiteral("records.wetfront"));
    SystemClock clock_;
    Id visit_;
    int copies_ = 0;
    QProcess program_;
    QString window_;
};

TEST_F(KilledWhileTimingTest,
       a_press_that_was_stored_survives_and_the_program_reopens_on_the_running_stopwatch) {
    ASSERT_NO_FATAL_FAILURE(start_program());
    answer({QStringLiteral("key"), QStringLiteral("space")});
    QElapsedTimer waited;
    waited.start();
    while (marks_on_disk() < 2 && waited.elapsed() < patience_ms) {
        QTest::qWait(10);
    }
    kill_program();

    auto opened = Store::open(file_.toStdString(), clock_);
    ASSERT_TRUE(opened) << opened.error().text();
    const auto marks = opened.value().marks_of(visit_);
    ASSERT_TRUE(marks) << marks.error().text();
    ASSERT_GE(marks.value().size(), 2U);
    const auto& pressed = marks.value()[1];
    EXPECT_EQ(pressed.kind, MarkKind::water_at_far_end);
    EXPECT_EQ(pressed.timed_by, TimedBy::event_stamp);
    EXPECT_GT(pressed.at.boot_ns, marks.value()[0].at.boot_ns);

    const Preferences nothing_kept{[](const QString&) { return QString{}; },
                                   [](const QString&, const QString&) {}};
    Program again{opened.value(), clock_, nothing_kept, folder_.path(), false};
    ASSERT_TRUE(again.show());
    show_and_wait(*again.window());
    ASSERT_NE(again.session().visit(), nullptr);
    EXPECT_EQ(again.session().visit()->file().visit.id, visit_);
    EXPECT_EQ(again.session().visit()->step(), static_cast<int>(Step::time_the_water));
    EXPECT_TRUE(again.session().visit()->stopwatch()->running());
    EXPECT_FALSE(again.session().visit()->stopwatch()->unverified());
}

}  // namespace
}  // namespace wetfront::ui
