// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/maintenance_view_model.h"

#include <QSignalSpy>

#include "desk.h"

namespace wetfront::ui {
namespace {

class MaintenanceViewModelTest : public Desk {
protected:
    MaintenanceViewModelTest() {
        maintenance_.show(file_.house);
        maintenance_.begin();
    }
    [[nodiscard]] std::vector<Maintenance> stored_maintenance() {
        return store_.house(file_.house.id).value().maintenance;
    }
    [[nodiscard]] QVariantMap event(int index) const { return maintenance_.events().at(index).toMap(); }
    [[nodiscard]] QString today() const { return QString::fromStdString(local_date(clock_.wall_now())); }

    MaintenanceViewModel maintenance_{context_, nullptr};
};

TEST_F(MaintenanceViewModelTest, an_entry_needs_nothing_but_a_press) {
    EXPECT_TRUE(maintenance_.complete());
    EXPECT_EQ(maintenance_.day(), today());
    maintenance_.enter();
    const auto stored = stored_maintenance();
    ASSERT_EQ(stored.size(), 1U);
    EXPECT_EQ(stored.front().what, Upkeep::outlets_cleaned);
    EXPECT_EQ(stored.front().banks.size(), file_.house.banks.size()) << "all banks";
    EXPECT_TRUE(stored.front().pump.empty());
    EXPECT_EQ(QString::fromStdString(local_date(stored.front().on)), today());
    EXPECT_EQ(local_clock(stored.front().on), "00:00");
    EXPECT_EQ(maintenance_.outcome(), "Entered: " + today() + ", Outlets cleaned");
}

TEST_F(MaintenanceViewModelTest, the_day_is_stepped_and_never_goes_beyond_today) {
    EXPECT_TRUE(maintenance_.today());
    maintenance_.moveDay(1);
    EXPECT_EQ(maintenance_.day(), today());
    maintenance_.moveDay(-1);
    EXPECT_FALSE(maintenance_.today());
    const auto yesterday = QDate::fromString(today(), Qt::ISODate).addDays(-1);
    EXPECT_EQ(maintenance_.day(), yesterday.toString(Qt::ISODate));
    maintenance_.moveMonth(-2);
    EXPECT_EQ(maintenance_.day(), yesterday.addMonths(-2).toString(Qt::ISODate));
    maintenance_.moveMonth(1);
    maintenance_.moveMonth(1);
    maintenance_.moveMonth(1);
    EXPECT_EQ(maintenance_.day(), today()) << "a month later is at most today";
}

TEST_F(MaintenanceViewModelTest, a_new_pump_names_the_pump_and_no_bank) {
    maintenance_.setWhat(QStringLiteral("new pump"));
    EXPECT_TRUE(maintenance_.toPump());
    ASSERT_FALSE(maintenance_.pumps().isEmpty());
    maintenance_.enter();
    ASSERT_EQ(stored_maintenance().size(), 1U);
    EXPECT_EQ(stored_maintenance().front().pump, file_.house.pumps.front().id);
    EXPECT_TRUE(stored_maintenance().front().banks.empty());
    EXPECT_TRUE(
        event(0).value("detail").toString().contains(QString::fromStdString(file_.house.pumps.front().name)));
}

TEST_F(MaintenanceViewModelTest, banks_are_chosen_one_by_one_and_at_least_one) {
    maintenance_.setWhat(QStringLiteral("new pads"));
    for (const auto& bank : file_.house.banks) {
        maintenance_.toggleBank(QString::fromStdString(bank.id.text));
    }
    EXPECT_FALSE(maintenance_.complete());
    maintenance_.enter();
    EXPECT_TRUE(stored_maintenance().empty());
    maintenance_.toggleBank(QString::fromStdString(file_.house.banks[1].id.text));
    maintenance_.setNote(QStringLiteral("  60 ft, 6 in "));
    maintenance_.enter();
    ASSERT_EQ(stored_maintenance().size(), 1U);
    EXPECT_EQ(stored_maintenance().front().banks, std::vector<Id>{file_.house.banks[1].id});
    EXPECT_EQ(event(0).value("detail").toString(), bank_name(1) + "; 60 ft, 6 in");
}

TEST_F(MaintenanceViewModelTest, the_latest_event_comes_first) {
    maintenance_.enter();
    maintenance_.begin();
    maintenance_.setWhat(QStringLiteral("new pads"));
    maintenance_.moveMonth(-1);
    maintenance_.enter();
    ASSERT_EQ(maintenance_.events().size(), 2);
    EXPECT_TRUE(event(0).value("title").toString().contains(QStringLiteral("Outlets cleaned")));
    EXPECT_TRUE(event(1).value("title").toString().contains(QStringLiteral("New pads")));
}

TEST_F(MaintenanceViewModelTest, an_entry_and_taking_one_out_are_undone) {
    maintenance_.enter();
    EXPECT_TRUE(maintenance_.undoable());
    maintenance_.undo();
    EXPECT_TRUE(stored_maintenance().empty());
    EXPECT_FALSE(maintenance_.undoable());
    maintenance_.enter();
    const auto entered = stored_maintenance();
    maintenance_.takeOut(event(0).value("id").toString());
    EXPECT_TRUE(stored_maintenance().empty());
    EXPECT_TRUE(maintenance_.outcome().startsWith(QStringLiteral("Taken out: ")));
    maintenance_.undo();
    EXPECT_EQ(stored_maintenance(), entered);
}

TEST_F(MaintenanceViewModelTest, what_was_entered_of_the_house_meanwhile_is_kept) {
    auto house = file_.house;
    house.name = "Another name";
    ASSERT_TRUE(store_.save(house));
    QSignalSpy changed{&maintenance_, &MaintenanceViewModel::houseChanged};
    maintenance_.enter();
    EXPECT_EQ(changed.size(), 1);
    EXPECT_EQ(store_.house(house.id).value().name, "Another name");
    EXPECT_EQ(maintenance_.house().name, "Another name");
}

TEST_F(MaintenanceViewModelTest, an_entry_is_in_the_undo_of_an_open_visit_too) {
    maintenance_.setWhat(QStringLiteral("new pads"));
    maintenance_.enter();
    VisitRecord record{context_, store_.visit_file(file_.visit.id).value(), nullptr};
    EntryUndoViewModel undo{record, nullptr};
    EXPECT_EQ(undo.undoText(), QStringLiteral("Undo: What was done: New pads taken out"));
    undo.undo();
    EXPECT_TRUE(stored_maintenance().empty());
}

TEST_F(MaintenanceViewModelTest, a_refusal_is_told_and_nothing_is_entered) {
    auto full = file_.house;
    for (int i = 0; i < 200; ++i) {
        full.maintenance.push_back(
            {Id{"done-" + std::to_string(i)}, {}, Upkeep::other, {full.banks.front().id}, {}, {}});
    }
    ASSERT_TRUE(store_.save(full));
    maintenance_.show(full);
    maintenance_.begin();
    maintenance_.enter();
    EXPECT_TRUE(maintenance_.problem().contains(QStringLiteral("200")))
        << maintenance_.problem().toStdString();
    EXPECT_FALSE(maintenance_.undoable());
    EXPECT_EQ(stored_maintenance().size(), 200U);
}

}  // namespace
}  // namespace wetfront::ui
