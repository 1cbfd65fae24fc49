// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/busy_view_model.h"

namespace wetfront::ui {

std::function<bool(double)> BusyViewModel::told() {
    return [this](double share) {
        QMetaObject::invokeMethod(
            this,
            [this, share] {
                progress_ = share;
                emit busyChanged();
            },
            Qt::QueuedConnection);
        return !stop_;
    };
}

void BusyViewModel::finish() {
    stop_ = true;
    worker_.wait();
}

}  // namespace wetfront::ui
