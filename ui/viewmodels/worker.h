// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>
#include <memory>
#include <optional>
#include <type_traits>

namespace wetfront::ui {

/// Does one job after the other in a thread beside the owner's, for what waits on a disk or paints. A member
/// of its owner: it waits for the job at hand before the owner goes.
class Worker {
public:
    explicit Worker(QObject* owner) : owner_{owner} { pool_.setMaxThreadCount(1); }
    ~Worker() { pool_.waitForDone(); }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    /// `work` over there, then `then` with what it gave in the owner's thread. Both are copied.
    template <class Work, class Then>
    void run(Work work, Then then) {
        pool_.start([owner = owner_, work = std::move(work), then = std::move(then)] {
            const auto result = std::make_shared<std::invoke_result_t<const Work&>>(work());
            QMetaObject::invokeMethod(
                owner, [result, then] { then(*result); }, Qt::QueuedConnection);
        });
    }

    /// Until the job at hand is done; what follows it still comes later, in the owner's thread.
    void wait() { pool_.waitForDone(); }

private:
    QObject* owner_;
    QThreadPool pool_;
};

}  // namespace wetfront::ui
