// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>

namespace wetfront::ui {

/// Keeps the machine awake while something is timed. GUI thread.
class Awake : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// Asks for it, or gives it up; asking twice is asking once. Never waits for an answer.
    virtual void keep(bool wanted) = 0;
    /// What could not be had though it is wanted, and what to do, in words; empty: all is well, or nobody
    /// asked.
    [[nodiscard]] virtual QString problem() const = 0;

signals:
    void problem_changed();
};

}  // namespace wetfront::ui
