// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// The demo's example visit, not signed and with nothing timed, in a real window.
class UndoWalkTest : public testing::TestWithParam<QSize> {
protected:
    UndoWalkTest() {
        file_ = example_visit();
        file_.visit.signatures.clear();
        file_.visit.marks.clear();
        file_.visit.set_aside.clear();
        file_.visit.conditions.outside_dry_bulb.reset();
        const auto added = walk.store().add(file_);
        EXPECT_TRUE(added) << added.error().text();
    }

    void click(const QString& name) {
        walk.hand().click(name);
        // As the event loop does before a person can press again: the page that was left is gone.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void click(const char* name) { click(QString::fromUtf8(name)); }
    [[nodiscard]] bool shows(const char* name) { return walk.hand().shows(QString::fromUtf8(name)); }
    bool says(const char* words) {
        return std::ranges::any_of(walk.hand().everything(), [&](const Heard& each) {
            return each.name.contains(QString::fromUtf8(words));
        });
    }
    void open_visit() { walk.session().openVisit(QString::fromStdString(file_.visit.id.text)); }
    void open_house() { walk.session().openHouse(QString::fromStdString(file_.house.id.text)); }
    [[nodiscard]] std::size_t houses() { return walk.store().houses().value().size(); }
    [[nodiscard]] std::size_t visits() { return walk.store().visits_of(file_.house.id).value().size(); }

    Walk walk{GetParam()};
    VisitFile file_;
};

TEST_P(UndoWalkTest, an_entry_is_undone_and_redone_from_another_step) {
    open_visit();
    walk.go_to(Step::conditions);
    EXPECT_TRUE(shows("No entry to undo"));
    walk.enter(QStringLiteral("Outside temperature"), QStringLiteral("95"), QStringLiteral("°F"));
    walk.go_to(Step::time_the_water);
    click("Undo: Outside temperature: 95 °F taken out");
    EXPECT_TRUE(says("Taken back: Outside temperature: 95 °F taken out"));
    EXPECT_TRUE(walk.hand().shows(walk.session().visit()->stopwatch()->instruction()))
        << "hides what to do next";
    EXPECT_FALSE(walk.stored_visit().visit.conditions.outside_dry_bulb);
    click("Redo: Outside temperature: 95 °F put back in");
    EXPECT_TRUE(says("Made again: Outside temperature: 95 °F put back in"));
    EXPECT_TRUE(walk.stored_visit().visit.conditions.outside_dry_bulb);
}

TEST_P(UndoWalkTest, a_bank_that_was_added_is_undone_while_its_form_is_in_sight) {
    open_visit();
    walk.go_to(Step::house_and_banks);
    const auto banks = walk.stored_visit().house.banks.size();
    ASSERT_EQ(walk.session().visit()->house()->banks()->add(), QString{});
    const auto text = walk.session().visit()->entryUndo()->undoText();
    EXPECT_TRUE(text.startsWith(QStringLiteral("Undo: Pad banks: "))) << text.toStdString();
    click(text);
    EXPECT_EQ(walk.stored_visit().house.banks.size(), banks);
    EXPECT_EQ(walk.session().visit()->house()->banks()->count(), static_cast<int>(banks));
}

TEST_P(UndoWalkTest, words_still_being_typed_are_undone_and_stay_so_when_the_field_is_left) {
    open_visit();
    walk.go_to(Step::house_and_banks);
    const auto name = file_.house.name;
    click("House");
    walk.hand().key(Qt::Key_End);
    walk.hand().type(QStringLiteral(" b"));
    walk.hand().key(Qt::Key_Return);
    ASSERT_EQ(walk.stored_visit().house.name, name + " b");
    walk.hand().type(QStringLiteral("c"));
    const auto undo = walk.session().visit()->entryUndo();
    click(undo->undoText());
    EXPECT_EQ(walk.stored_visit().house.name, name + " b");
    click(undo->undoText());
    EXPECT_EQ(walk.stored_visit().house.name, name);
    walk.hand().key(Qt::Key_Tab);
    EXPECT_EQ(walk.stored_visit().house.name, name) << "leaving the field entered the old words again";
    EXPECT_FALSE(undo->redoText().isEmpty());
}

TEST_P(UndoWalkTest, away_from_an_open_visit_there_is_no_undo_of_entries) {
    open_visit();
    EXPECT_TRUE(shows("No entry to undo"));
    click("Back");
    EXPECT_FALSE(shows("No entry to undo"));
    auto visit = file_.visit;
    visit.signatures = example_visit().visit.signatures;
    ASSERT_TRUE(walk.store().save(visit));
    open_visit();
    EXPECT_FALSE(shows("No entry to undo"));
}

TEST_P(UndoWalkTest, a_house_is_kept_by_default_removed_when_asked_to_and_brought_back) {
    open_house();
    click("Remove this house");
    EXPECT_TRUE(says("Nothing is deleted"));
    EXPECT_EQ(walk.hand().focused(), QStringLiteral("Keep it"));
    walk.hand().key(Qt::Key_Return);
    EXPECT_EQ(houses(), 1U);
    click("Remove this house");
    click("Remove it");
    EXPECT_EQ(houses(), 0U);
    EXPECT_EQ(walk.session().place(), QStringLiteral("houses"));
    EXPECT_TRUE(says("House Alder, Thimblewick Farm (invented) is out of sight."));
    click("Undo");
    EXPECT_EQ(houses(), 1U);
    EXPECT_TRUE(says("is back."));

    open_house();
    click("Remove this house");
    click("Remove it");
    click("Removed");
    EXPECT_TRUE(says("removed 2026-07-01 05:00"));
    click("Bring back House Alder, Thimblewick Farm (invented)");
    EXPECT_EQ(houses(), 1U);
    EXPECT_TRUE(shows("Nothing is removed now."));
    click("Back");
    EXPECT_FALSE(shows("Removed"));
    EXPECT_EQ(visits(), 1U);
}

TEST_P(UndoWalkTest, a_visit_is_removed_and_undone_on_the_page_of_its_house) {
    open_house();
    const auto day = QString::fromStdString(local_date(file_.visit.started));
    click(QStringLiteral("Remove the visit of %1").arg(day));
    click("Remove it");
    EXPECT_EQ(visits(), 0U);
    EXPECT_TRUE(shows("Not visited yet."));
    click("Undo");
    EXPECT_EQ(visits(), 1U);
    EXPECT_TRUE(shows(QStringLiteral("Visit of %1").arg(day).toUtf8().constData()));
}

TEST_P(UndoWalkTest, a_template_is_removed_and_undone) {
    walk.session().showTemplates();
    click("Make one from Plain trimmed timer");
    click("Back");
    click("Remove Copy of Plain trimmed timer");
    click("Remove it");
    EXPECT_TRUE(walk.store().setting_templates().value().empty());
    EXPECT_TRUE(says("Setting template Copy of Plain trimmed timer is out of sight."));
    click("Undo");
    EXPECT_EQ(walk.store().setting_templates().value().size(), 1U);
    EXPECT_TRUE(shows("Remove Copy of Plain trimmed timer"));
}

INSTANTIATE_TEST_SUITE_P(Screens, UndoWalkTest, testing::Values(QSize(1024, 600), QSize(600, 1024)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
