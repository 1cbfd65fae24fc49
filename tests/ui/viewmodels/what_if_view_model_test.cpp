// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/what_if_view_model.h"

#include "timed_visit.h"

namespace wetfront::ui {
namespace {

class WhatIfViewModelTest : public TimedVisit {
protected:
    WhatIfViewModelTest() { open(); }

    void open() {
        what_if_ = std::make_unique<WhatIfViewModel>(*record_, nullptr);
        what_if_->follow(timer());
        what_if_->setOpen(true);
    }
    [[nodiscard]] QVariantMap strip() const { return what_if_->strips().last().toMap(); }
    [[nodiscard]] QStringList messages() const {
        QStringList all;
        for (const auto& finding : what_if_->findings()) {
            all.append(finding.toMap().value(QStringLiteral("message")).toString());
        }
        return all;
    }

    std::unique_ptr<WhatIfViewModel> what_if_;
};

TEST_F(WhatIfViewModelTest, begins_with_the_advice_beside_what_was_found) {
    EXPECT_TRUE(what_if_->possible());
    EXPECT_TRUE(what_if_->fromAdvice());
    EXPECT_FALSE(what_if_->moved());
    EXPECT_EQ(what_if_->period()->value(), advised_s(Setting::period));
    EXPECT_EQ(what_if_->onTime()->value(), advised_s(Setting::base_on_time));
    EXPECT_EQ(what_if_->ceiling()->value(), advised_s(Setting::on_time_ceiling));
    ASSERT_EQ(what_if_->strips().size(), 2);
    EXPECT_EQ(what_if_->strips().first().toMap().value(QStringLiteral("label")), QStringLiteral("found"));
    EXPECT_EQ(strip().value(QStringLiteral("on")), advised_s(Setting::base_on_time));
}

// The demo's banks fill in 38 and 41 s: a run of 20 s can't reach the far end.
TEST_F(WhatIfViewModelTest, a_move_changes_the_cycle_and_the_findings) {
    const auto before = messages();
    what_if_->onTime()->move(20.0);
    EXPECT_TRUE(what_if_->moved());
    EXPECT_EQ(strip().value(QStringLiteral("on")), 20.0);
    EXPECT_EQ(what_if_->onTime()->text(), QStringLiteral("20 s"));
    EXPECT_NE(messages(), before);
    EXPECT_TRUE(messages().join(u'\n').contains(QStringLiteral("lasts 20 s")))
        << messages().join(u'\n').toStdString();
    what_if_->period()->move(600.0);
    EXPECT_EQ(strip().value(QStringLiteral("period")), 600.0);
}

TEST_F(WhatIfViewModelTest, an_on_time_as_long_as_the_period_is_a_pump_that_never_rests) {
    what_if_->onTime()->move(what_if_->period()->value());
    EXPECT_EQ(strip().value(QStringLiteral("continuous")), true);
    EXPECT_FALSE(what_if_->findings().isEmpty());
}

TEST_F(WhatIfViewModelTest, back_is_the_advice_again) {
    const auto strips = what_if_->strips();
    const auto findings = what_if_->findings();
    what_if_->onTime()->move(20.0);
    what_if_->period()->move(600.0);
    what_if_->ceiling()->move(400.0);
    what_if_->back();
    EXPECT_FALSE(what_if_->moved());
    EXPECT_EQ(what_if_->onTime()->value(), advised_s(Setting::base_on_time));
    EXPECT_EQ(what_if_->ceiling()->value(), advised_s(Setting::on_time_ceiling));
    EXPECT_EQ(what_if_->strips(), strips);
    EXPECT_EQ(what_if_->findings(), findings);
}

TEST_F(WhatIfViewModelTest, moves_go_in_the_steps_of_the_timer_and_not_off_the_scale) {
    record_->house().timers.front().resolution = Entered<Duration>::of(seconds(5.0));
    ASSERT_TRUE(record_->save_house());
    open();
    what_if_->onTime()->move(63.0);
    EXPECT_EQ(what_if_->onTime()->value(), 65.0);
    what_if_->onTime()->move(what_if_->onTime()->to() + 100.0);
    EXPECT_EQ(what_if_->onTime()->value(), 65.0);
    what_if_->onTime()->move(0.0);
    EXPECT_EQ(what_if_->onTime()->value(), 65.0);
}

TEST_F(WhatIfViewModelTest, found_and_advised_are_marked_and_have_a_place_on_the_scale) {
    record_->visit().found.front().period = Entered<Duration>::of(seconds(3600.0));
    ASSERT_TRUE(record_->save_visit());
    open();
    const auto ticks = what_if_->period()->ticks();
    ASSERT_EQ(ticks.size(), 2);
    EXPECT_EQ(ticks.first().toMap().value(QStringLiteral("at")), 3600.0);
    EXPECT_EQ(ticks.last().toMap().value(QStringLiteral("at")), advised_s(Setting::period));
    EXPECT_GE(what_if_->period()->to(), 3600.0);
}

TEST_F(WhatIfViewModelTest, the_visit_stays_as_it_is) {
    const auto visit = record_->file().visit;
    what_if_->onTime()->move(20.0);
    EXPECT_EQ(record_->file().visit, visit);
    EXPECT_EQ(store_.visit(visit.id).value(), visit);
}

TEST_F(WhatIfViewModelTest, opened_again_it_begins_anew) {
    what_if_->onTime()->move(20.0);
    what_if_->setOpen(false);
    EXPECT_TRUE(what_if_->strips().isEmpty());
    what_if_->setOpen(true);
    EXPECT_FALSE(what_if_->moved());
    EXPECT_EQ(what_if_->onTime()->value(), advised_s(Setting::base_on_time));
}

TEST_F(WhatIfViewModelTest, a_fixed_interval_has_no_ceiling_to_move) {
    record_->house().timers.front().kind = TimerKind::fixed_interval;
    ASSERT_TRUE(record_->save_house());
    open();
    EXPECT_TRUE(what_if_->onTime()->there());
    EXPECT_FALSE(what_if_->ceiling()->there());
}

TEST_F(WhatIfViewModelTest, on_demand_there_is_nothing_to_move) {
    record_->house().timers.front().kind = TimerKind::on_demand;
    ASSERT_TRUE(record_->save_house());
    open();
    EXPECT_FALSE(what_if_->possible());
    EXPECT_TRUE(what_if_->strips().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
