// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/proof_view_model.h"

#include <algorithm>

#include "desk.h"
#include "viewmodels/pump_off.h"
#include "viewmodels/steps_model.h"
#include "viewmodels/stopwatch_view_model.h"

namespace wetfront::ui {
namespace {

/// One pump with two banks; left in its timer: 90 s in 300 s.
class ProofViewModelTest : public Desk {
protected:
    ProofViewModelTest() {
        record_.visit().left = {left_in_first_timer()};
        EXPECT_TRUE(record_.save_visit());
    }

    void mark_after(double seconds, const QString& text) {
        clock_.advance_ms(static_cast<std::int64_t>(seconds * 1000.0));
        EXPECT_EQ(proof_.markText(), text);
        proof_.mark();
    }

    // From a start that was marked just now: water after 41 s, drip after 55 s, the stop, and the next start
    // after 300 s.
    void watch_cycle(std::size_t bank, double on_time) {
        proof_.chooseBank(QString::fromStdString(file_.house.banks[bank].id.text));
        mark_after(41.0, QStringLiteral("Water at the far end of %1").arg(bank_name(bank)));
        mark_after(14.0, QStringLiteral("%1 drips evenly at the far end").arg(bank_name(bank)));
        mark_after(on_time - 55.0, QStringLiteral("Pump stops"));
        mark_after(300.0 - on_time, QStringLiteral("Pump starts"));
    }

    void answer(const char* key, const char* text) {
        auto* form = proof_.questions();
        for (int row = 0; row < form->count(); ++row) {
            if (form->data(form->index(row), FormModel::KeyRole).toString() == QLatin1String(key)) {
                EXPECT_EQ(form->enter(row, QString::fromLatin1(text)), QString{});
                return;
            }
        }
        ADD_FAILURE() << key << " is not asked";
    }

    void watch_both_banks(double on_time) {
        answer("cycles_since_change", "3");
        mark_after(0.0, QStringLiteral("Pump starts"));
        for (std::size_t bank = 0; bank < 2; ++bank) {
            watch_cycle(bank, on_time);
            answer("even_drip", "yes");
            answer("dry_patch", "no");
        }
    }

    // The verdict on one line of the table; its name in front of the colon.
    QString verdict_on(const QString& what) {
        for (const auto& line : proof_.lines()) {
            if (line.toMap().value(QStringLiteral("what")) == what) {
                return line.toMap().value(QStringLiteral("verdict")).toString();
            }
        }
        return QStringLiteral("no line");
    }

    VisitRecord record_{context_, file_, nullptr};
    ProofViewModel proof_{record_, presses_, nullptr};
};

TEST_F(ProofViewModelTest, two_watched_cycles_that_run_as_set_pass) {
    EXPECT_EQ(proof_.verdict(), QStringLiteral("open"));
    watch_both_banks(90.0);
    EXPECT_EQ(proof_.verdict(), QStringLiteral("pass")) << proof_.verdictText().toStdString();
    EXPECT_EQ(verdict_on(QStringLiteral("Period")), QStringLiteral("pass"));
    EXPECT_EQ(verdict_on(QStringLiteral("On-time")), QStringLiteral("pass"));
    EXPECT_TRUE(proof_.causes().isEmpty());
}

// 10 s short of 90 s, where 2 s are allowed.
TEST_F(ProofViewModelTest, a_short_on_time_fails_and_says_what_to_look_at) {
    watch_both_banks(80.0);
    EXPECT_EQ(proof_.verdict(), QStringLiteral("fail")) << proof_.verdictText().toStdString();
    EXPECT_EQ(verdict_on(QStringLiteral("On-time")), QStringLiteral("fail"));
    EXPECT_EQ(verdict_on(QStringLiteral("Period")), QStringLiteral("pass"));
    EXPECT_FALSE(proof_.causes().isEmpty());
}

TEST_F(ProofViewModelTest, the_shown_on_time_goes_before_the_set_one) {
    watch_both_banks(80.0);
    answer("shown_on_time", "80s");
    EXPECT_EQ(verdict_on(QStringLiteral("On-time")), QStringLiteral("pass"));
    EXPECT_EQ(stored().left.front().shown_on_time->text(), "80s");
}

TEST_F(ProofViewModelTest, runs_before_the_third_are_not_judged_yet) {
    watch_both_banks(90.0);
    answer("cycles_since_change", "1");
    EXPECT_EQ(proof_.verdict(), QStringLiteral("open"));
    EXPECT_NE(proof_.verdictText(), QString{});
    answer("cycles_since_change", "2");
    // The second run after the change was bank 1's: of that bank nothing that counts was seen.
    EXPECT_EQ(proof_.verdict(), QStringLiteral("open"));
}

TEST_F(ProofViewModelTest, a_dry_patch_on_one_bank_fails_the_timer_and_stands_with_that_bank_only) {
    watch_both_banks(90.0);
    answer("dry_patch", "yes");
    EXPECT_EQ(proof_.verdict(), QStringLiteral("fail"));
    EXPECT_EQ(verdict_on(QStringLiteral("Dry patch on the face")), QStringLiteral("fail"));
    proof_.chooseBank(QString::fromStdString(file_.house.banks.front().id.text));
    EXPECT_EQ(verdict_on(QStringLiteral("Dry patch on the face")), QStringLiteral("pass"));
    const auto notes = stored().proof;
    ASSERT_EQ(notes.size(), 3U) << "of the timer and of two banks";
    EXPECT_EQ(stored().proof_of_bank(file_.house.banks[1].id)->dry_patch, true);
}

TEST_F(ProofViewModelTest, a_mark_is_in_the_journal_as_the_timers_when_the_screen_says_so) {
    std::vector<Mark> stored_then;
    QObject::connect(&proof_, &ProofViewModel::marked, &proof_,
                     [&](const QString&) { stored_then = stored().marks; });
    mark_after(0.0, QStringLiteral("Pump starts"));
    ASSERT_EQ(stored_then.size(), 1U);
    EXPECT_TRUE(stored_then.front().proof);
    EXPECT_EQ(stored_then.front().started_by, StartedBy::controller);
    EXPECT_EQ(stored_then.front().at, clock_.boot_now());
}

TEST_F(ProofViewModelTest, what_was_missed_can_be_passed_over) {
    mark_after(0.0, QStringLiteral("Pump starts"));
    const auto others = proof_.otherMarks();
    ASSERT_EQ(others.size(), 3);
    const auto stop = std::ranges::find_if(others, [](const QVariant& other) {
        return other.toMap().value(QStringLiteral("text")) == QStringLiteral("Pump stops");
    });
    ASSERT_NE(stop, others.end());
    clock_.advance_ms(90'000);
    proof_.chooseOther(stop->toMap().value(QStringLiteral("index")).toInt());
    EXPECT_EQ(proof_.markText(), QStringLiteral("Pump stops"));
    ASSERT_EQ(stored().marks.size(), 1U) << "marked without the mark button";
    proof_.mark();
    EXPECT_EQ(stored().marks.back().kind, MarkKind::pump_stop);
    EXPECT_EQ(proof_.markText(), QStringLiteral("Pump starts"));
    EXPECT_TRUE(proof_.otherMarks().isEmpty());
}

TEST_F(ProofViewModelTest, undo_takes_the_last_proof_mark_back_and_keeps_it_in_the_journal) {
    mark_after(0.0, QStringLiteral("Pump starts"));
    const QString water = QStringLiteral("Water at the far end of %1").arg(bank_name(0));
    mark_after(41.0, water);
    proof_.undo();
    EXPECT_EQ(proof_.markText(), water);
    EXPECT_EQ(stored().marks.size(), 2U);
    EXPECT_TRUE(stored().marks.back().undone);
    proof_.redo();
    EXPECT_FALSE(stored().marks.back().undone);
    EXPECT_EQ(proof_.redoText(), QString{});
}

TEST_F(ProofViewModelTest, stopwatch_and_proof_run_undo_only_their_own_marks) {
    StopwatchViewModel stopwatch{record_, presses_, {}, nullptr};
    stopwatch.mark();
    clock_.advance_ms(60'000);
    stopwatch.handBack();
    clock_.advance_ms(60'000);
    mark_after(0.0, QStringLiteral("Pump starts"));
    EXPECT_EQ(stopwatch.undoText(), QStringLiteral("Undo: Pump back on automatic"));
    EXPECT_EQ(stopwatch.lastMarks().size(), 2);
    proof_.undo();
    EXPECT_EQ(proof_.undoText(), QString{});
    EXPECT_FALSE(stored().marks[1].undone);
}

TEST_F(ProofViewModelTest, a_pump_that_stands_in_a_proof_run_is_not_off_for_a_test) {
    mark_after(0.0, QStringLiteral("Pump starts"));
    watch_cycle(0, 90.0);
    proof_.undo();  // the start that ended the cycle
    EXPECT_FALSE(proof_.running());
    EXPECT_TRUE(pumps_off(record_.file(), clock_).empty());
}

TEST_F(ProofViewModelTest, a_pump_that_is_still_switched_by_hand_is_to_be_handed_back_first) {
    const QString usual = proof_.instruction();
    StopwatchViewModel stopwatch{record_, presses_, {}, nullptr};
    stopwatch.mark();
    EXPECT_NE(proof_.instruction(), usual);
    clock_.advance_ms(1'000);
    stopwatch.handBack();
    EXPECT_EQ(proof_.instruction(), usual);
}

TEST_F(ProofViewModelTest, the_same_marks_give_the_same_page_after_a_restart_of_the_program) {
    mark_after(0.0, QStringLiteral("Pump starts"));
    proof_.chooseBank(QString::fromStdString(file_.house.banks[1].id.text));
    mark_after(41.0, QStringLiteral("Water at the far end of %1").arg(bank_name(1)));
    clock_.advance_ms(7'300);
    VisitRecord reopened{context_, store_.visit_file(file_.visit.id).value(), nullptr};
    ProofViewModel again{reopened, presses_, nullptr};
    EXPECT_EQ(again.bank(), proof_.bank());
    EXPECT_EQ(again.markText(), QStringLiteral("%1 drips evenly at the far end").arg(bank_name(1)));
    EXPECT_EQ(again.elapsedText(), QStringLiteral("0:07.3"));
    EXPECT_TRUE(again.running());
}

TEST_F(ProofViewModelTest, a_cycle_cut_by_a_restart_of_the_machine_gives_no_time_and_the_next_one_does) {
    mark_after(0.0, QStringLiteral("Pump starts"));
    clock_.boot = {"boot-b", 5'000'000'000};
    clock_.wall.unix_ms += 90'000;
    VisitRecord reopened{context_, store_.visit_file(file_.visit.id).value(), nullptr};
    ProofViewModel again{reopened, presses_, nullptr};
    again.chooseOther(2);  // the stop
    again.mark();
    clock_.advance_ms(210'000);
    again.mark();
    const auto* proven = reopened.proof().of(first_timer());
    ASSERT_NE(proven, nullptr);
    EXPECT_EQ(
        std::ranges::count_if(proven->lines, [](const ProofLine& line) { return line.seen.has_value(); }), 0);
    clock_.advance_ms(300'000);
    again.chooseOther(3);  // the next start, its stop not seen
    again.mark();
    proven = reopened.proof().of(first_timer());
    const auto period = std::ranges::find(proven->lines, ProofQuantity::period, &ProofLine::what);
    ASSERT_NE(period, proven->lines.end());
    ASSERT_TRUE(period->seen);
    EXPECT_DOUBLE_EQ(in_seconds(period->seen->mean), 300.0);
}

// Half of the 40 s that were timed have passed: water should be half way.
TEST_F(ProofViewModelTest, the_picture_shows_water_where_the_reading_says_it_should_be) {
    StopwatchViewModel stopwatch{record_, presses_, {}, nullptr};
    stopwatch.mark();
    clock_.advance_ms(40'000);
    stopwatch.mark();
    clock_.advance_ms(1'000);
    stopwatch.handBack();
    clock_.advance_ms(1'000);
    mark_after(0.0, QStringLiteral("Pump starts"));
    clock_.advance_ms(20'000);
    EXPECT_NEAR(proof_.headerFront(), 0.5, 1e-9);
}

TEST_F(ProofViewModelTest, a_signed_visit_takes_no_mark) {
    record_.visit().signatures.push_back({{"Jo Penn", "technician"}, clock_.wall_now()});
    ASSERT_TRUE(record_.save_visit());
    proof_.mark();
    EXPECT_TRUE(stored().marks.empty());
    EXPECT_FALSE(proof_.canMark());
}

TEST_F(ProofViewModelTest, the_step_is_done_once_what_was_left_has_passed) {
    StepsModel steps{record_, nullptr};
    EXPECT_EQ(steps.at(Step::proof).summary, QStringLiteral("not done"));
    EXPECT_FALSE(steps.at(Step::proof).complete);
    watch_both_banks(90.0);
    EXPECT_TRUE(steps.at(Step::proof).complete);
    answer("even_drip", "no");
    EXPECT_FALSE(steps.at(Step::proof).complete);
    EXPECT_FALSE(steps.at(Step::proof).problem.isEmpty());
}

TEST_F(ProofViewModelTest, the_chosen_number_of_the_run_pressed_again_is_taken_out) {
    answer("cycles_since_change", "2");
    ASSERT_EQ(stored().proof.size(), 1U);
    EXPECT_EQ(stored().proof.front().cycles_since_change, 2.0);
    answer("cycles_since_change", "2");
    EXPECT_TRUE(stored().proof.empty());
}

TEST_F(ProofViewModelTest, a_change_of_what_was_left_asks_for_another_watch_and_new_answers) {
    watch_both_banks(90.0);
    ASSERT_EQ(proof_.verdict(), QStringLiteral("pass")) << proof_.verdictText().toStdString();
    clock_.advance_ms(1000);
    record_.visit().left.front().changed = Moment{clock_.boot_now(), clock_.wall_now()};
    ASSERT_TRUE(record_.save_visit());
    EXPECT_EQ(proof_.verdict(), QStringLiteral("open"));
    EXPECT_TRUE(proof_.verdictText().contains(QStringLiteral("Watch again")))
        << proof_.verdictText().toStdString();
    EXPECT_EQ(proof_.questions()->summary(), QStringLiteral("nothing entered"));
    answer("cycles_since_change", "3");
    watch_cycle(0, 90.0);  // the run that began before the change
    for (std::size_t bank = 0; bank < 2; ++bank) {
        watch_cycle(bank, 90.0);
        answer("even_drip", "yes");
        answer("dry_patch", "no");
    }
    EXPECT_EQ(proof_.verdict(), QStringLiteral("pass")) << proof_.verdictText().toStdString();
}

}  // namespace
}  // namespace wetfront::ui
