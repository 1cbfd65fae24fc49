// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/visit_view_model.h"

#include "desk.h"
#include "support/full_disk.h"

namespace wetfront::ui {
namespace {

class VisitViewModelTest : public Desk {
protected:
    VisitViewModelTest() {
        paper_.pages = [](const SheetContent&, const Formatter&, Paper) { return std::vector<QImage>{}; };
        paper_.pdf = [this](const SheetContent& content, const Formatter&, Paper) -> Result<QByteArray> {
            printed_ = content;
            if (!paper_works_) {
                return storage_error("sheet", "the painter failed", "try again");
            }
            return QByteArray{"%PDF-"} + QByteArray::number(++drawn_);
        };
        paper_.write = [this](const QByteArray& pdf, const QString& file) -> Result<void> {
            written_ = pdf;
            printed_to_ = file;
            return boost::outcome_v2::success();
        };
        paper_.print = [this](const SheetContent&, const Formatter&, Paper) -> Result<bool> {
            written_ = "drawn anew";
            return true;
        };
        paper_.print_pdf = [this](const QByteArray& pdf) -> Result<bool> {
            written_ = pdf;
            return true;
        };
        paper_.folder = folder_.filePath(QStringLiteral("sheets"));
    }

    [[nodiscard]] const StepState& at(Step step) { return visit_.steps()->at(step); }
    // Row of a form by its label; -1 if there is none.
    static int row(const FormModel* form, const char* label) {
        for (int i = 0; i < form->count(); ++i) {
            if (form->data(form->index(i), FormModel::LabelRole).toString() == QLatin1String(label)) {
                return i;
            }
        }
        return -1;
    }
    static QString enter(FormModel* form, const char* label, const char* text) {
        return form->enter(row(form, label), QString::fromUtf8(text));
    }

    SheetPaper paper_;
    std::optional<SheetContent> printed_;
    bool paper_works_ = true;
    int drawn_ = 0;
    QByteArray written_;
    QString printed_to_;
    VisitViewModel visit_{context_, presses_, paper_, file_, {}, nullptr};
};

TEST_F(VisitViewModelTest, conditions_are_complete_with_outside_temperature_and_humidity) {
    EXPECT_FALSE(at(Step::conditions).complete);
    EXPECT_EQ(enter(visit_.conditions()->air(), "Outside temperature", "95degF"), QString{});
    EXPECT_FALSE(at(Step::conditions).complete);
    EXPECT_EQ(enter(visit_.conditions()->air(), "Outside relative humidity", "40%"), QString{});
    EXPECT_TRUE(at(Step::conditions).complete);
}

TEST_F(VisitViewModelTest,
       an_entry_of_found_settings_makes_the_timers_record_and_its_last_removal_takes_it_away) {
    EXPECT_TRUE(stored().found.empty());
    EXPECT_EQ(enter(visit_.found()->howLong(), "Period", "5min"), QString{});
    ASSERT_EQ(stored().found.size(), 1U);
    EXPECT_EQ(stored().found.front().timer, first_timer());
    EXPECT_EQ(stored().found.front().period->text(), "5min");
    EXPECT_EQ(enter(visit_.found()->howLong(), "Period", ""), QString{});
    EXPECT_TRUE(stored().found.empty());
}

TEST_F(VisitViewModelTest, looking_at_settings_stores_nothing) {
    visit_.found()->chooseTimer(visit_.found()->timer());
    visit_.goTo(static_cast<int>(Step::settings_found));
    EXPECT_TRUE(stored().found.empty());
    EXPECT_TRUE(visit_.file().visit.found.empty());
}

TEST_F(VisitViewModelTest, a_trim_row_appears_when_the_one_before_is_filled_and_goes_when_it_is_emptied) {
    auto* form = visit_.found()->howItAdapts();
    ASSERT_EQ(form->count(), 3);
    EXPECT_EQ(form->enter(1, QStringLiteral("2degF")), QString{});
    EXPECT_EQ(form->enter(2, QStringLiteral("15s")), QString{});
    ASSERT_EQ(stored().found.front().trim_rows.size(), 1U);
    EXPECT_EQ(form->count(), 5);
    form->enter(1, QString{});
    form->enter(2, QString{});
    EXPECT_TRUE(stored().found.empty());
    EXPECT_EQ(form->count(), 3);
}

TEST_F(VisitViewModelTest, settings_left_with_a_fault_are_a_problem_of_that_step) {
    EXPECT_TRUE(at(Step::settings_left).problem.isEmpty());
    const auto& banks = file_.house.banks;
    ASSERT_FALSE(banks.empty());
    visit_.stopwatch()->mark();
    clock_.advance_ms(40'000);
    visit_.stopwatch()->mark();
    EXPECT_EQ(enter(visit_.left()->howLong(), "Period", "300s"), QString{});
    EXPECT_EQ(enter(visit_.left()->howLong(), "Base on-time", "20s"), QString{});
    EXPECT_FALSE(at(Step::settings_left).problem.isEmpty()) << "an on-time below the fill time passed";
    EXPECT_TRUE(at(Step::settings_left).complete);
}

TEST_F(VisitViewModelTest, before_leaving_is_complete_when_every_required_line_is_ticked) {
    for (int i = 0; i < visit_.leavingChecks()->count(); ++i) {
        EXPECT_FALSE(at(Step::before_leaving).complete);
        visit_.leavingChecks()->tick(i, true);
    }
    EXPECT_TRUE(at(Step::before_leaving).complete);
}

TEST_F(VisitViewModelTest, signing_freezes_the_visit_and_the_sheet_is_no_draft_any_more) {
    visit_.sheet()->addPerson(QStringLiteral("Jo Penn"), QStringLiteral("technician"));
    visit_.sheet()->savePdf();
    ASSERT_TRUE(printed_);
    EXPECT_TRUE(printed_->draft);
    EXPECT_EQ(visit_.sheet()->sign(0), QString{});
    EXPECT_TRUE(visit_.frozen());
    visit_.sheet()->savePdf();
    EXPECT_FALSE(printed_->draft);
    EXPECT_NE(enter(visit_.conditions()->air(), "Outside temperature", "95degF"), QString{})
        << "a signed visit took an entry";
}

TEST_F(VisitViewModelTest, a_signed_sheet_is_handed_out_as_it_was_at_the_signing_however_often) {
    visit_.sheet()->addPerson(QStringLiteral("Jo Penn"), QStringLiteral("technician"));
    visit_.sheet()->savePdf();
    EXPECT_EQ(written_, "%PDF-1");
    visit_.sheet()->print();
    EXPECT_EQ(written_, "drawn anew");
    const auto signed_at = clock_.wall_now();
    ASSERT_EQ(visit_.sheet()->sign(0), QString{});
    EXPECT_FALSE(printed_->draft);
    EXPECT_EQ(printed_->revision, store_.revision_of(file_.visit.id).value());
    clock_.advance_ms(3'600'000);
    for (int time = 0; time < 2; ++time) {
        visit_.sheet()->savePdf();
        EXPECT_EQ(written_, "%PDF-2") << "drawn at the signing";
    }
    visit_.sheet()->print();
    EXPECT_EQ(written_, "%PDF-2");
    const auto kept = store_.signed_sheet(file_.visit.id).value();
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->pdf, "%PDF-2");
    EXPECT_EQ(kept->kept_at, signed_at);
}

TEST_F(VisitViewModelTest, while_presses_wait_for_the_disk_a_visit_is_not_signed) {
    visit_.sheet()->addPerson(QStringLiteral("Jo Penn"), QStringLiteral("technician"));
    visit_.stopwatch()->choosePump(visit_.stopwatch()->pump());
    {
        const test::FullDisk full{0};
        visit_.stopwatch()->mark();
        ASSERT_TRUE(visit_.waits_for_storage());
        EXPECT_TRUE(visit_.sheet()->sign(0).contains(QStringLiteral("not stored yet")));
        EXPECT_TRUE(visit_.sheet()->notReady().front().contains(QStringLiteral("not stored yet")));
    }
    EXPECT_FALSE(visit_.frozen());
}

TEST_F(VisitViewModelTest, without_its_sheet_a_visit_is_not_signed) {
    visit_.sheet()->addPerson(QStringLiteral("Jo Penn"), QStringLiteral("technician"));
    paper_works_ = false;
    EXPECT_TRUE(visit_.sheet()->sign(0).contains(QStringLiteral("the painter failed")));
    EXPECT_FALSE(visit_.frozen());
    EXPECT_FALSE(stored().is_signed());
}

TEST_F(VisitViewModelTest, the_file_name_holds_farm_house_and_day_and_no_path_of_its_own) {
    enter(visit_.house()->house(), "House", "../../House: 7");
    visit_.sheet()->savePdf();
    EXPECT_TRUE(printed_to_.startsWith(paper_.folder + QLatin1Char('/')));
    EXPECT_EQ(printed_to_.mid(paper_.folder.size() + 1).count(QLatin1Char('/')), 0)
        << printed_to_.toStdString();
}

TEST_F(VisitViewModelTest, a_bank_that_was_timed_stays) {
    visit_.stopwatch()->mark();
    clock_.advance_ms(40'000);
    visit_.stopwatch()->mark();
    const auto before = visit_.house()->banks()->count();
    EXPECT_NE(visit_.house()->banks()->remove(0), QString{});
    EXPECT_EQ(visit_.house()->banks()->count(), before);
}

TEST_F(VisitViewModelTest, a_new_bank_starts_as_the_last_one_with_a_name_and_id_of_its_own) {
    EXPECT_EQ(visit_.house()->banks()->add(), QString{});
    const auto& banks = visit_.file().house.banks;
    const auto& last = banks[banks.size() - 2];
    EXPECT_EQ(banks.back().length, last.length);
    EXPECT_EQ(banks.back().header_bore, last.header_bore);
    EXPECT_NE(banks.back().id, last.id);
    EXPECT_NE(banks.back().name, last.name);
    EXPECT_EQ(store_.house(file_.house.id).value().banks.size(), banks.size());
}

}  // namespace
}  // namespace wetfront::ui
