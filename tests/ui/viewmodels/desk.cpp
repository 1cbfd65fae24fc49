// SPDX-License-Identifier: Apache-2.0
#include "desk.h"

#include <stdexcept>

#include "demo/demo.h"
#include "support/visit_builder.h"

namespace wetfront::ui {

Desk::Desk() : store_{open()}, context_{store_, clock_, formatter_}, presses_{clock_, nullptr} {
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

TimerSettings Desk::left_in_first_timer() const {
    TimerSettings left;
    left.timer = first_timer();
    left.period = test::typed<Duration>("300s");
    left.base_on_time = test::typed<Duration>("90s");
    return left;
}

Store Desk::open() {
    auto opened = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
    if (!opened) {
        throw std::runtime_error{opened.error().text()};
    }
    return std::move(opened).value();
}

}  // namespace wetfront::ui
