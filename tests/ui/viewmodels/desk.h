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
    Desk() : store_{open()}, context_{store_, clock_, formatter_}, presses_{clock_, nullptr} {
        VisitFile file = example_visit();
        file.visit = Visit{};
        file.visit.id = Id{"visit-at-hand"};
        file.visit.house = file.house.id;
        file.visit.started = clock_.wall_now();
        file.visit.agreement = example_visit().visit.agreement;
        const auto added = store_.add(file);
        EXPECT_TRUE(added) << added.error().text();
        file_ = file;
    }

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
    Store open() {
        auto opened = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
        if (!opened) {
            throw std::runtime_error{opened.error().text()};
        }
        return std::move(opened).value();
    }
};

}  // namespace wetfront::ui
