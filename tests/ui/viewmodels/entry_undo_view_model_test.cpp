// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/entry_undo_view_model.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <memory>

#include "demo/demo.h"
#include "support/fake_clock.h"
#include "support/full_disk.h"
#include "viewmodels/visit_view_model.h"

namespace wetfront::ui {
namespace {

/// The demo's example visit, not signed, on a record file that can be closed and opened again.
class EntryUndoViewModelTest : public testing::Test {
protected:
    EntryUndoViewModelTest() {
        open();
        file_ = example_visit();
        file_.visit.signatures.clear();
        file_.visit.conditions = {};
        EXPECT_TRUE(store_->add(file_));
        show();
    }

    void open() {
        auto opened = Store::open(folder_.filePath(QStringLiteral("records.wetfront")).toStdString(), clock_);
        ASSERT_TRUE(opened) << opened.error().text();
        store_ = std::make_unique<Store>(std::move(opened).value());
    }
    void show() {
        auto file = store_->visit_file(file_.visit.id);
        ASSERT_TRUE(file) << file.error().text();
        visit_ = std::make_unique<VisitViewModel>(Context{*store_, clock_, formatter_}, presses_, paper_,
                                                  std::move(file).value(), VisitViewModel::Known{}, nullptr);
    }
    void restart() {
        visit_.reset();
        store_.reset();
        open();
        show();
    }

    [[nodiscard]] EntryUndoViewModel& undo() { return *visit_->entryUndo(); }
    [[nodiscard]] Visit stored() { return store_->visit(file_.visit.id).value(); }
    QString enter(FormModel* form, const char* label, const char* text) {
        for (int i = 0; i < form->count(); ++i) {
            if (form->data(form->index(i), FormModel::LabelRole).toString() == QLatin1String(label)) {
                return form->enter(i, QString::fromUtf8(text));
            }
        }
        return QStringLiteral("no such line");
    }
    void enter_temperature(const char* text) {
        EXPECT_EQ(enter(visit_->conditions()->air(), "Outside temperature", text), QString{});
    }

    QTemporaryDir folder_;
    test::FakeClock clock_;
    Formatter formatter_;
    PressClock presses_{clock_, nullptr};
    SheetPaper paper_;
    std::unique_ptr<Store> store_;
    VisitFile file_;
    std::unique_ptr<VisitViewModel> visit_;
};

TEST_F(EntryUndoViewModelTest, the_last_entry_is_named_taken_back_and_told) {
    EXPECT_EQ(undo().undoText(), QString{});
    enter_temperature("95degF");
    enter_temperature("86degF");
    EXPECT_EQ(undo().undoText(), QStringLiteral("Undo: Outside temperature: 86 °F back to 95 °F"));
    undo().undo();
    EXPECT_EQ(undo().outcome(), QStringLiteral("Taken back: Outside temperature: 86 °F back to 95 °F"));
    EXPECT_EQ(stored().conditions.outside_dry_bulb->text(), "95degF");
    EXPECT_EQ(visit_->file().visit, stored()) << "the screen holds something else than the record file";
    EXPECT_EQ(undo().redoText(), QStringLiteral("Redo: Outside temperature: 95 °F back to 86 °F"));
    undo().redo();
    EXPECT_EQ(undo().outcome(), QStringLiteral("Made again: Outside temperature: 95 °F back to 86 °F"));
    EXPECT_EQ(stored().conditions.outside_dry_bulb->text(), "86degF");
    EXPECT_EQ(undo().redoText(), QString{});
}

TEST_F(EntryUndoViewModelTest, an_entry_made_before_a_restart_is_taken_back_after_it) {
    enter_temperature("95degF");
    restart();
    EXPECT_EQ(undo().undoText(), QStringLiteral("Undo: Outside temperature: 95 °F taken out"));
    undo().undo();
    EXPECT_FALSE(stored().conditions.outside_dry_bulb);
    restart();
    EXPECT_EQ(undo().redoText(), QStringLiteral("Redo: Outside temperature: 95 °F put back in"));
    undo().redo();
    EXPECT_EQ(stored().conditions.outside_dry_bulb->text(), "95degF");
}

TEST_F(EntryUndoViewModelTest, what_is_worked_out_and_what_forms_show_go_back_too) {
    auto* air = visit_->conditions()->air();
    const auto before = air->summary();
    QSignalSpy told{visit_.get(), &VisitViewModel::changed};
    enter_temperature("95degF");
    EXPECT_NE(air->summary(), before);
    const auto count = told.count();
    undo().undo();
    EXPECT_EQ(air->summary(), before);
    EXPECT_GT(told.count(), count);
}

TEST_F(EntryUndoViewModelTest, a_bank_that_was_added_goes_and_comes_back) {
    const auto banks = visit_->house()->banks()->count();
    ASSERT_EQ(visit_->house()->banks()->add(), QString{});
    undo().undo();
    EXPECT_EQ(visit_->house()->banks()->count(), banks);
    EXPECT_EQ(store_->house(file_.house.id).value(), file_.house);
    EXPECT_TRUE(undo().redoText().startsWith(QStringLiteral("Redo: Pad banks: ")))
        << undo().redoText().toStdString();
    undo().redo();
    EXPECT_EQ(visit_->house()->banks()->count(), banks + 1);
}

TEST_F(EntryUndoViewModelTest, what_a_mark_hangs_on_is_not_taken_away_and_it_says_why) {
    ASSERT_EQ(visit_->house()->banks()->add(), QString{});
    const auto& bank = visit_->file().house.banks.back();
    Mark mark;
    mark.id = Id{"mark-on-the-new-bank"};
    mark.kind = MarkKind::water_at_far_end;
    mark.pump = bank.pump;
    mark.bank = bank.id;
    mark.at = clock_.boot_now();
    mark.wall = clock_.wall_now();
    ASSERT_TRUE(store_->add_mark(file_.visit.id, mark));
    const auto before = store_->house(file_.house.id).value();
    undo().undo();
    EXPECT_TRUE(undo().outcome().startsWith(QStringLiteral("Not taken back: ")));
    EXPECT_TRUE(undo().outcome().contains(QStringLiteral("undo that first")));
    EXPECT_EQ(store_->house(file_.house.id).value(), before);
    EXPECT_EQ(visit_->file().house, before);
}

TEST_F(EntryUndoViewModelTest, presses_are_no_entries) {
    const auto before = stored().marks.size();
    visit_->stopwatch()->mark();
    const auto marks = stored().marks.size();
    ASSERT_EQ(marks, before + 1);
    EXPECT_EQ(undo().undoText(), QString{});
    enter_temperature("95degF");
    undo().undo();
    EXPECT_EQ(stored().marks.size(), marks);
    EXPECT_EQ(visit_->file().visit.marks.size(), marks);
}

TEST_F(EntryUndoViewModelTest, nothing_is_undone_while_presses_wait_for_the_disk) {
    enter_temperature("95degF");
    {
        const test::FullDisk full{0};
        visit_->stopwatch()->mark();
        undo().undo();
    }
    EXPECT_TRUE(undo().outcome().contains(QStringLiteral("presses are not stored yet")))
        << undo().outcome().toStdString();
    EXPECT_TRUE(stored().conditions.outside_dry_bulb);
    EXPECT_EQ(visit_->file().visit.marks.size(), stored().marks.size() + 1);
}

TEST_F(EntryUndoViewModelTest, a_new_unit_system_says_it_in_its_units) {
    enter_temperature("95degF");
    QSignalSpy changed{&undo(), &EntryUndoViewModel::changed};
    formatter_.set_units(UnitSystem::si);
    visit_->show_again();
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(undo().undoText(), QStringLiteral("Undo: Outside temperature: 35 °C taken out"));
}

TEST_F(EntryUndoViewModelTest, a_signed_visit_offers_none) {
    enter_temperature("95degF");
    EXPECT_TRUE(undo().offered());
    auto visit = stored();
    visit.signatures.push_back({{"Jo Penn", "technician"}, clock_.wall_now()});
    ASSERT_TRUE(store_->save(visit));
    restart();
    EXPECT_FALSE(undo().offered());
    EXPECT_EQ(undo().undoText(), QString{});
    undo().undo();
    EXPECT_TRUE(undo().outcome().startsWith(QStringLiteral("Not taken back: ")));
    EXPECT_EQ(stored(), visit);
}

}  // namespace
}  // namespace wetfront::ui
