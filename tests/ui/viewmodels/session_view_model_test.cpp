// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/session_view_model.h"

#include <QSignalSpy>

#include "desk.h"
#include "ui_support/fake_awake.h"

namespace wetfront::ui {
namespace {

/// The desk's visit, with settings left in its first timer, and a second one of the same house.
class SessionViewModelTest : public Desk {
protected:
    SessionViewModelTest() {
        file_.visit.left = {left_in_first_timer()};
        EXPECT_TRUE(store_.save(file_.visit));
        Visit other;
        other.id = Id{"other-visit"};
        other.house = file_.house.id;
        other.started = clock_.wall_now();
        EXPECT_TRUE(store_.save(other));
    }

    void open(const char* visit) { session_.openVisit(QString::fromUtf8(visit)); }
    void start_the_pump_on_the_stopwatch() {
        open("visit-at-hand");
        session_.visit()->stopwatch()->mark();
        ASSERT_TRUE(session_.visit()->stopwatch()->anything_timed());
    }
    void watch_a_cycle() {
        open("visit-at-hand");
        session_.visit()->proof()->mark();
        ASSERT_TRUE(session_.visit()->proof()->watching());
    }

    FakeAwake awake_;
    SessionViewModel session_{
        context_,
        presses_,
        awake_,
        {},
        {[](const QString&) { return QString{}; }, [](const QString&, const QString&) {}},
        false,
        [] { return QStringList{}; },
        nullptr};
    QSignalSpy asked_{&session_, &SessionViewModel::leaveAsked};
};

TEST_F(SessionViewModelTest, the_tablet_is_kept_awake_for_a_visit_that_runs_while_another_is_open) {
    start_the_pump_on_the_stopwatch();
    ASSERT_TRUE(awake_.kept);
    open("other-visit");
    EXPECT_TRUE(awake_.kept);
}

TEST_F(SessionViewModelTest, closing_asks_while_a_visit_that_is_not_open_runs) {
    start_the_pump_on_the_stopwatch();
    open("other-visit");
    EXPECT_FALSE(session_.mayClose());
    EXPECT_EQ(asked_.count(), 1);
}

TEST_F(SessionViewModelTest, leaving_and_closing_ask_while_a_cycle_is_watched) {
    watch_a_cycle();
    session_.leave();
    EXPECT_EQ(session_.place(), QStringLiteral("visit"));
    EXPECT_FALSE(session_.mayClose());
    EXPECT_EQ(asked_.count(), 2);
}

TEST_F(SessionViewModelTest, leaving_asks_nothing_where_nothing_runs) {
    open("other-visit");
    session_.leave();
    EXPECT_EQ(session_.place(), QStringLiteral("house"));
    EXPECT_EQ(asked_.count(), 0);
}

}  // namespace
}  // namespace wetfront::ui
