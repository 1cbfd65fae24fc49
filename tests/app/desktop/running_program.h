// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>

#include "store/store.h"

namespace wetfront::ui {

/// The program as it is shipped, in a process of its own, with real input, on a record file with one visit
/// whose pump was started a minute ago. Needs xdotool and an X server.
class RunningProgram {
public:
    RunningProgram();
    ~RunningProgram();

    /// Starts it, waits for its window and gives it the keyboard. False: no window in time.
    [[nodiscard]] bool start();
    void kill();
    void signal(int number) const;

    /// Runs xdotool to its end; the first line of its answer.
    static QString answer(const QStringList& words);
    /// The same with every line.
    static QStringList answers(const QStringList& words);
    [[nodiscard]] const QString& window() const { return window_; }

    /// Marks committed so far, from a copy of the file and its journal: the program holds the file itself. A
    /// journal caught in the middle of a write shows what was committed before it.
    [[nodiscard]] std::vector<Mark> marks_on_disk();
    /// False if that does not come true in time.
    [[nodiscard]] bool wait_for_marks(std::size_t count);
    [[nodiscard]] Result<Store> open_store() const;
    [[nodiscard]] const Id& visit() const { return visit_; }
    [[nodiscard]] QString folder() const { return folder_.path(); }

private:
    QTemporaryDir folder_;
    QString file_ = folder_.filePath(QStringLiteral("records.wetfront"));
    SystemClock clock_;
    Id visit_;
    int copies_ = 0;
    QProcess program_;
    QString window_;
};

}  // namespace wetfront::ui
