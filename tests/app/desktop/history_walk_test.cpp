// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QPointingDevice>
#include <QTest>
#include <algorithm>
#include <memory>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The page of the demo house that gets worse, in a real window.
class HistoryWalkTest : public testing::TestWithParam<QSize> {
protected:
    HistoryWalkTest() {
        EXPECT_TRUE(fill_store(walk.store()));
        walk.session().openHouse(QStringLiteral("demo-cedar"));
    }

    void click(const QString& name) {
        walk.hand().click(name);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void click(const char* name) { click(QString::fromUtf8(name)); }
    bool says(const char* words) {
        return std::ranges::any_of(walk.hand().everything(), [&](const Heard& each) {
            return each.name.contains(QString::fromUtf8(words));
        });
    }
    [[nodiscard]] Heard chart() { return walk.hand().find(QString::fromUtf8(chart_name)); }
    void give_it_the_keyboard(const Heard& heard) {
        heard.item->forceActiveFocus(Qt::TabFocusReason);
        static_cast<void>(walk.hand().everything());  // lets the window take it up
    }

    static constexpr const char* chart_name = "Bank 2, east, Wet-through time, s";
    Walk walk{GetParam()};
};

TEST_P(HistoryWalkTest, the_worst_chart_is_open_and_says_what_it_shows_and_what_to_do) {
    EXPECT_TRUE(says("Wet-through time since 2024-05-06 (Outlets cleaned) rises by"));
    EXPECT_TRUE(says("What to do: "));
    EXPECT_EQ(chart().role, QAccessible::Graphic);
    EXPECT_FALSE(chart().description.isEmpty());
    EXPECT_TRUE(says("Cautions: read them before anybody works"));
}

TEST_P(HistoryWalkTest, arrow_keys_walk_the_visits_and_plus_and_minus_zoom) {
    give_it_the_keyboard(chart());
    ASSERT_EQ(walk.hand().focused(), QString::fromUtf8(chart_name));
    walk.hand().key(Qt::Key_Left);
    EXPECT_TRUE(says("2026-07-09: "));
    walk.hand().key(Qt::Key_Left);
    EXPECT_TRUE(says("2026-05-19: "));
    walk.hand().key(Qt::Key_Right);
    EXPECT_TRUE(says("2026-07-09: "));
    EXPECT_FALSE(chart().item->property("zoomed").toBool());
    walk.hand().key(Qt::Key_Plus);
    EXPECT_TRUE(chart().item->property("zoomed").toBool());
    walk.hand().key(Qt::Key_Minus);
    EXPECT_FALSE(chart().item->property("zoomed").toBool());
    walk.hand().key(Qt::Key_Plus);
    walk.hand().key(Qt::Key_0);
    EXPECT_FALSE(chart().item->property("zoomed").toBool());
}

TEST_P(HistoryWalkTest, buttons_do_what_keys_do) {
    const QString name = QString::fromUtf8(chart_name);
    click(name + ": the visit before");
    EXPECT_TRUE(says("2026-07-09: "));
    click(name + ": the visit before");
    EXPECT_TRUE(says("2026-05-19: "));
    click(name + ": fewer days, wider");
    EXPECT_TRUE(chart().item->property("zoomed").toBool());
    click(name + ": all days");
    EXPECT_FALSE(chart().item->property("zoomed").toBool());
}

TEST_P(HistoryWalkTest, the_table_is_one_press_away_and_tells_visits_and_events) {
    click(QString::fromUtf8(chart_name) + ": as a table");
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Outlets cleaned")));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("2022-07-12")));
    EXPECT_FALSE(walk.hand().shows(QString::fromUtf8(chart_name)));
    click(QString::fromUtf8(chart_name) + ": as a picture");
    EXPECT_TRUE(walk.hand().shows(QString::fromUtf8(chart_name)));
}

TEST_P(HistoryWalkTest, a_finger_drags_the_days_once_they_are_zoomed_and_a_touch_tells_a_visit) {
    give_it_the_keyboard(chart());
    walk.hand().key(Qt::Key_Plus);
    walk.hand().key(Qt::Key_Plus);
    const auto view = [&] { return chart().item->property("zoomed").toBool(); };
    ASSERT_TRUE(view());
    auto* item = chart().item;
    const QImage before = item->window()->grabWindow();
    walk.hand().drag(chart(), 0.3, 0.8);
    EXPECT_NE(item->window()->grabWindow(), before);
    EXPECT_TRUE(view()) << "a drag shows other days, as many as before";
}

TEST_P(HistoryWalkTest, two_fingers_spread_the_days) {
    auto* item = chart().item;
    give_it_the_keyboard(chart());
    auto* window = item->window();
    const auto at = [&](double share) {
        return item->mapToScene(QPointF{share * item->width(), 0.5 * item->height()}).toPoint();
    };
    const std::unique_ptr<QPointingDevice> screen{QTest::createTouchDevice()};
    QTest::touchEvent(window, screen.get()).press(1, at(0.45)).press(2, at(0.55));
    for (int step = 1; step <= 10; ++step) {
        QTest::touchEvent(window, screen.get())
            .move(1, at(0.45 - 0.03 * step))
            .move(2, at(0.55 + 0.03 * step));
        QCoreApplication::processEvents();
    }
    QTest::touchEvent(window, screen.get()).release(1, at(0.15)).release(2, at(0.85));
    EXPECT_TRUE(item->property("zoomed").toBool());
}

TEST_P(HistoryWalkTest, maintenance_is_entered_by_presses_alone_and_undone) {
    click("Enter maintenance");
    click("New pads");
    click("Bank 1, west");
    click("A day earlier");
    click("Enter");
    const auto stored = [&] { return walk.store().house(Id{"demo-cedar"}).value().maintenance; };
    ASSERT_EQ(stored().size(), 2U);
    EXPECT_EQ(stored().back().what, Upkeep::new_pads);
    EXPECT_EQ(stored().back().banks, std::vector<Id>{Id{"demo-cedar-bank-2"}});
    EXPECT_TRUE(says("Entered: "));
    click("Undo");
    EXPECT_EQ(stored().size(), 1U);
    EXPECT_TRUE(says("Taken back."));
}

TEST_P(HistoryWalkTest, settings_over_the_years_and_the_houses_of_the_farm_have_their_charts) {
    click("Pad timer");
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Settings of Pad timer")));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("Base on-time")));
    click("Compare the houses of this farm");
    for (int turn = 0; turn < 10; ++turn) {
        QCoreApplication::processEvents();
    }
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("House Alder, Bank 1, west")));
    EXPECT_TRUE(walk.hand().shows(QStringLiteral("House Cedar, Bank 2, east")));
    click("House Cedar, Bank 2, east");
    EXPECT_TRUE(says("House Cedar, Bank 2, east, 2026-07-09: "));
}

INSTANTIATE_TEST_SUITE_P(Screens, HistoryWalkTest, testing::Values(QSize(1024, 600), QSize(600, 1024)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
