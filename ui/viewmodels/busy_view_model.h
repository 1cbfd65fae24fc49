// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <atomic>
#include <functional>

#include "viewmodels/worker.h"

namespace wetfront::ui {

/// What works with the record file for longer than a frame. GUI thread; while it is busy another thread uses
/// the store, and nobody else may.
class BusyViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("others are made of it")
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(QString busyText READ busyText NOTIFY busyChanged)
    Q_PROPERTY(bool stoppable READ stoppable NOTIFY busyChanged)
    Q_PROPERTY(double progress READ progress NOTIFY busyChanged)  ///< 0 to 1; below 0: not known

public:
    explicit BusyViewModel(QObject* parent) : QObject{parent} {}
    ~BusyViewModel() override { finish(); }

    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] QString busyText() const { return busy_text_; }
    [[nodiscard]] bool stoppable() const { return stoppable_; }
    [[nodiscard]] double progress() const { return progress_; }

    /// Asks what was begun as stoppable to stop; nothing is left of it.
    Q_INVOKABLE void stop() { stop_ = true; }

signals:
    void busyChanged();

protected:
    /// `work` in another thread, then `then` with what it gave, here.
    template <class Work, class Then>
    void begin(const QString& text, bool stoppable, Work work, Then then) {
        busy_text_ = text;
        stoppable_ = stoppable;
        progress_ = -1.0;
        stop_ = false;
        busy_ = true;
        worker_.run(std::move(work), [this, then = std::move(then)](const auto& result) {
            busy_ = false;
            then(result);
            emit busyChanged();
        });
        emit busyChanged();
    }
    /// For `work` to tell how far it is; false: it has to stop.
    [[nodiscard]] std::function<bool(double)> told();
    /// Stops it and waits for its end. Whoever has members that `work` uses calls it first thing when it
    /// goes.
    void finish();

private:
    QString busy_text_;
    bool stoppable_ = false;
    double progress_ = -1.0;
    std::atomic<bool> stop_ = false;
    bool busy_ = false;
    Worker worker_{this};
};

}  // namespace wetfront::ui
