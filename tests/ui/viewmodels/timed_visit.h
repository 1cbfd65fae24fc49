// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "desk.h"

namespace wetfront::ui {

/// The demo's example visit with all that was timed and found, not signed, and nothing left or proved yet.
class TimedVisit : public Desk {
protected:
    TimedVisit() {
        VisitFile file = example_visit();
        file.visit.id = Id{"timed-visit"};
        file.visit.signatures.clear();
        file.visit.left.clear();
        file.visit.proof.clear();
        std::erase_if(file.visit.marks, [](const Mark& mark) { return mark.proof; });
        for (auto& mark : file.visit.marks) {
            mark.id = Id{"timed-" + mark.id.text};
        }
        const auto added = store_.add(file);
        EXPECT_TRUE(added) << added.error().text();
        record_ = std::make_unique<VisitRecord>(context_, file, nullptr);
    }

    [[nodiscard]] const Id& timer() const { return record_->file().house.timers.front().id; }
    [[nodiscard]] const TimerAdvice& advice() { return *record_->advice().of(timer()); }
    [[nodiscard]] double advised_s(Setting setting) { return advice().advised(setting)->value->si; }

    std::unique_ptr<VisitRecord> record_;
};

}  // namespace wetfront::ui
