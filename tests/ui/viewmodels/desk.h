// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "demo/demo.h"
#include "support/fake_clock.h"
#include "viewmodels/visit_view_model.h"

namespace wetfront::ui {

/// An unsigned visit to a demo house in a store of its own, with nothing timed and nothing set yet.
class Desk : public testing::Test {
protected:
    Desk();

    /// 90 s in 300 s, as left in the first timer.
    [[nodiscard]] TimerSettings left_in_first_timer() const;
    [[nodiscard]] Visit stored() { return store_.visit(file_.visit.id).value(); }
    [[nodiscard]] const Id& first_timer() const { return file_.house.timers.front().id; }
    [[nodiscard]] QString bank_name(std::size_t index) const {
        return QString::fromStdString(file_.house.banks[index].name);
    }

    QTemporaryDir folder_;
    test::FakeClock clock_;
    Store store_;
    Formatter formatter_;
    Context context_;
    PressClock presses_;
    VisitFile file_;

private:
    Store open();
};

}  // namespace wetfront::ui
