// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/removed_view_model.h"

#include "desk.h"
#include "viewmodels/templates_view_model.h"

namespace wetfront::ui {
namespace {

/// Of House Alder with one open visit.
class RemovedViewModelTest : public Desk {
protected:
    RemovedViewModelTest() { EXPECT_TRUE(removed_.reload()); }

    void press(MarkKind kind, std::int64_t after_ms, const Id& bank = {}) {
        clock_.advance_ms(after_ms);
        Mark mark;
        mark.id = store_.new_id();
        mark.kind = kind;
        mark.pump = file_.house.pumps.front().id;
        mark.bank = bank;
        mark.at = clock_.boot_now();
        mark.wall = clock_.wall_now();
        ASSERT_TRUE(store_.add_mark(file_.visit.id, mark));
    }
    [[nodiscard]] std::size_t houses() { return store_.houses().value().size(); }
    [[nodiscard]] std::size_t visits() { return store_.visits_of(file_.house.id).value().size(); }
    [[nodiscard]] QVariantMap line(int row) const { return removed_.records().at(row).toMap(); }

    RemovedViewModel removed_{context_, nullptr};
    QString house_ = QString::fromStdString(file_.house.id.text);
    QString visit_ = QString::fromStdString(file_.visit.id.text);
};

TEST_F(RemovedViewModelTest, a_house_goes_out_of_sight_with_its_visits_and_undo_brings_both_back) {
    const auto asked = removed_.question(QStringLiteral("house"), house_);
    EXPECT_EQ(asked["question"], QStringLiteral("Remove House Alder, Thimblewick Farm (invented)?"));
    EXPECT_TRUE(asked["detail"].toString().contains(QStringLiteral("its visits: 1")));
    EXPECT_TRUE(asked["detail"].toString().contains(QStringLiteral("Nothing is deleted")));
    EXPECT_EQ(houses(), 1U) << "asking removed it";
    removed_.remove(QStringLiteral("house"), house_);
    EXPECT_EQ(houses(), 0U);
    EXPECT_EQ(removed_.outcome(),
              QStringLiteral("House Alder, Thimblewick Farm (invented) is out of sight."));
    ASSERT_TRUE(removed_.undoable());
    removed_.undo();
    EXPECT_EQ(houses(), 1U);
    EXPECT_EQ(visits(), 1U);
    EXPECT_FALSE(removed_.undoable());
    EXPECT_EQ(stored(), file_.visit);
}

TEST_F(RemovedViewModelTest, what_was_removed_is_listed_with_when_and_comes_back) {
    removed_.remove(QStringLiteral("visit"), visit_);
    clock_.advance_ms(60'000);
    removed_.remove(QStringLiteral("house"), house_);
    ASSERT_EQ(removed_.records().size(), 2);
    EXPECT_EQ(line(0)["kind"], QStringLiteral("house"));
    EXPECT_EQ(line(0)["detail"], QStringLiteral("removed 2026-07-01 05:01"));
    EXPECT_EQ(line(1)["title"],
              QStringLiteral("Visit of 2026-07-01, House Alder, Thimblewick Farm (invented)"));
    removed_.bringBack(QStringLiteral("visit"), visit_);
    EXPECT_TRUE(removed_.problem().contains(QStringLiteral("bring that back first")))
        << removed_.problem().toStdString();
    removed_.bringBack(QStringLiteral("house"), house_);
    EXPECT_EQ(visits(), 0U) << "a visit that was removed by itself came along";
    removed_.bringBack(QStringLiteral("visit"), visit_);
    EXPECT_EQ(visits(), 1U);
    EXPECT_TRUE(removed_.records().isEmpty());
}

TEST_F(RemovedViewModelTest, while_a_reading_runs_nothing_goes_and_it_says_why) {
    press(MarkKind::pump_start, 0);
    for (const auto& [kind, id] : {std::pair{"visit", visit_}, {"house", house_}}) {
        removed_.remove(QLatin1String(kind), id);
        EXPECT_TRUE(removed_.problem().startsWith(QStringLiteral("Not removed: a reading of it is running")))
            << removed_.problem().toStdString();
        EXPECT_FALSE(removed_.undoable());
    }
    EXPECT_EQ(visits(), 1U);
    EXPECT_TRUE(removed_.records().isEmpty());
}

TEST_F(RemovedViewModelTest, while_a_pump_is_off_for_a_test_nothing_goes) {
    press(MarkKind::pump_start, 0);
    press(MarkKind::pump_stop, 600'000);
    removed_.remove(QStringLiteral("house"), house_);
    EXPECT_TRUE(removed_.problem().contains(QStringLiteral("a pump of it is off for a test")));
    EXPECT_EQ(houses(), 1U);
}

TEST_F(RemovedViewModelTest, a_template_goes_and_the_timer_that_carries_it_keeps_its_copy) {
    auto described = generic_template(TimerKind::trimmed);
    described.id = store_.new_id();
    described.name = "Grey box";
    ASSERT_TRUE(store_.save(described));
    auto house = file_.house;
    choose_controller(house.timers.front(), described);
    ASSERT_TRUE(store_.save(house));
    removed_.remove(QStringLiteral("template"), QString::fromStdString(described.id.text));
    EXPECT_TRUE(store_.setting_templates().value().empty());
    EXPECT_EQ(store_.house(house.id).value(), house);
    EXPECT_EQ(removed_.outcome(), QStringLiteral("Setting template Grey box is out of sight."));
    removed_.undo();
    EXPECT_EQ(store_.setting_templates().value().size(), 1U);
}

TEST_F(RemovedViewModelTest, a_bank_that_was_timed_in_a_removed_visit_stays) {
    press(MarkKind::pump_start, 0);
    press(MarkKind::water_at_far_end, 40'000, file_.house.banks.front().id);
    press(MarkKind::pump_stop, 600'000);
    press(MarkKind::back_on_automatic, 86'400'000);
    removed_.remove(QStringLiteral("visit"), visit_);
    ASSERT_EQ(visits(), 0U) << removed_.problem().toStdString();
    VisitFile other = file_;
    other.visit = Visit{};
    other.visit.id = store_.new_id();
    other.visit.house = other.house.id;
    other.visit.started = clock_.wall_now();
    ASSERT_TRUE(store_.save(other.visit));
    VisitRecord record{context_, other, nullptr};
    HouseViewModel house{record, nullptr};
    EXPECT_TRUE(house.banks()->remove(0).contains(QStringLiteral("was timed on 2026-07-01 and stays")));
}

}  // namespace
}  // namespace wetfront::ui
