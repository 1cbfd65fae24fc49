// SPDX-License-Identifier: Apache-2.0
#include "running_program.h"

#include <QElapsedTimer>
#include <QFile>
#include <QTest>
#include <csignal>
#include <stdexcept>

#include "demo/demo.h"

namespace wetfront::ui {
namespace {

constexpr int patience_ms = 20'000;
constexpr std::int64_t minute_ms = 60'000;

}  // namespace

RunningProgram::RunningProgram() {
    auto opened = Store::open(file_.toStdString(), clock_);
    if (!opened) {
        throw std::runtime_error{opened.error().text()};
    }
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
    start.at.boot_ns -= minute_ms * 1'000'000;
    start.wall = clock_.wall_now();
    start.wall.unix_ms -= minute_ms;
    start.pads = PadsAtStart::dry;
    file.visit.marks.push_back(start);
    if (const auto added = store.add(file); !added) {
        throw std::runtime_error{added.error().text()};
    }
}

RunningProgram::~RunningProgram() {
    if (program_.state() != QProcess::NotRunning) {
        kill();
    }
}

bool RunningProgram::start() {
    window_.clear();
    program_.setProcessChannelMode(QProcess::ForwardedChannels);
    program_.start(QStringLiteral(WETFRONT_PROGRAM), {QStringLiteral("--store"), file_});
    if (!program_.waitForStarted()) {
        return false;
    }
    const QString pid = QString::number(program_.processId());
    QElapsedTimer waited;
    waited.start();
    while (window_.isEmpty() && waited.elapsed() < patience_ms) {
        window_ = answer({QStringLiteral("search"), QStringLiteral("--onlyvisible"), QStringLiteral("--pid"),
                          pid, QStringLiteral("--name"), QStringLiteral("Wetfront")});
    }
    answer({QStringLiteral("windowfocus"), QStringLiteral("--sync"), window_});
    return !window_.isEmpty();
}

void RunningProgram::kill() {
    signal(SIGKILL);
    program_.waitForFinished(patience_ms);
}

void RunningProgram::signal(int number) const {
    ::kill(static_cast<pid_t>(program_.processId()), number);
}

QStringList RunningProgram::answers(const QStringList& words) {
    QProcess tool;
    tool.start(QStringLiteral("xdotool"), words);
    tool.waitForFinished(patience_ms);
    return QString::fromLatin1(tool.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

QString RunningProgram::answer(const QStringList& words) {
    return answers(words).value(0);
}

std::vector<Mark> RunningProgram::marks_on_disk() {
    const QString copy = folder_.filePath(QStringLiteral("copy-%1.wetfront").arg(++copies_));
    if (!QFile::copy(file_, copy) ||
        !QFile::copy(file_ + QStringLiteral("-wal"), copy + QStringLiteral("-wal"))) {
        return {};
    }
    const auto opened = Store::open(copy.toStdString(), clock_);
    const auto marks = opened ? opened.value().marks_of(visit_) : Result<std::vector<Mark>>{opened.error()};
    return marks ? marks.value() : std::vector<Mark>{};
}

bool RunningProgram::wait_for_marks(std::size_t count) {
    return QTest::qWaitFor([&] { return marks_on_disk().size() >= count; }, patience_ms);
}

Result<Store> RunningProgram::open_store() const {
    return Store::open(file_.toStdString(), clock_);
}

}  // namespace wetfront::ui
