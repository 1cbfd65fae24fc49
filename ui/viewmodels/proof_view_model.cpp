// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/proof_view_model.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "cycle/visit_water.h"
#include "viewmodels/elapsed.h"
#include "viewmodels/houses_model.h"
#include "viewmodels/marks_at_hand.h"
#include "viewmodels/proof_words.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

constexpr int tick_ms = 100;
constexpr int columns = 20;             // of the picture, as the wetting model counts them
constexpr double third_or_later = 3.0;  // of a run after a change

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

/// The number of the run as a choice of three: what comes after the third is like the third. The chosen one
/// pressed again takes the answer out.
void make_choice(FormField& line) {
    line.type = FormField::Type::choice;
    line.choices = {{QStringLiteral("1"), ProofViewModel::tr("1st")},
                    {QStringLiteral("2"), ProofViewModel::tr("2nd")},
                    {QStringLiteral("3"), ProofViewModel::tr("3rd or later")}};
    line.entry = [entry = std::move(line.entry)] {
        const QString text = entry();
        return text.isEmpty() ? text : QString::number(std::floor(std::min(text.toDouble(), third_or_later)));
    };
    line.set = [entry = line.entry, take = std::move(line.set)](const std::string& text) {
        return take(entry().toStdString() == text ? std::string{} : text);
    };
}

}  // namespace

ProofViewModel::ProofViewModel(VisitRecord& record, const PressClock& presses, QObject* parent)
    : QObject{parent},
      record_{record},
      presses_{presses},
      questions_{new FormModel{record.context().formatter, this}} {
    tick_.setInterval(tick_ms);
    connect(&tick_, &QTimer::timeout, this, &ProofViewModel::ticked);
    connect(&record_, &VisitRecord::changed, this, &ProofViewModel::follow_marks);
    follow_marks();
}

void ProofViewModel::follow_marks() {
    const auto& house = record_.file().house;
    if (house.bank(bank_) == nullptr) {
        choose_where_something_runs();
    }
    const auto* bank = house.bank(bank_);
    pump_ = bank != nullptr ? bank->pump : Id{};
    state_ = state_of(MarksOf::proof_run);
    build_questions();
    if (last_mark() != nullptr) {
        tick_.start();
    } else {
        tick_.stop();
    }
    emit changed();
    emit ticked();
}

// After a restart the page opens where something was marked last.
void ProofViewModel::choose_where_something_runs() {
    const auto& house = record_.file().house;
    bank_ = house.banks.empty() ? Id{} : house.banks.front().id;
    const Mark* newest = nullptr;
    for (const auto& mark : record_.file().visit.marks) {
        if (mark.proof && !mark.undone && (newest == nullptr || earlier_in_time(*newest, mark))) {
            newest = &mark;
        }
    }
    if (newest == nullptr) {
        return;
    }
    const auto at = std::ranges::find_if(house.banks, [&](const PadBank& bank) {
        return newest->bank.empty() ? bank.pump == newest->pump : bank.id == newest->bank;
    });
    if (at != house.banks.end()) {
        bank_ = at->id;
    }
}

PumpState ProofViewModel::state_of(MarksOf of) const {
    const std::vector<Id> one{pump_};
    const PumpState nothing{pump_, false, std::nullopt, {}};
    const auto states = pump_states(record_.file().visit.marks, one, of);
    const bool since_when = !pump_.empty() && !states.empty() && states.front().since;
    return since_when && ms_since(*states.front().since, record_.context().clock) < longest_test_ms
               ? states.front()
               : nothing;
}

void ProofViewModel::build_questions() {
    const auto stored = [this] { return record_.save_visit(); };
    const auto list = [this]() -> std::vector<ProofNotes>& { return record_.visit().proof; };
    std::vector<FormField> lines;
    const auto add_notes = [&](Id ProofNotes::*owner, const Id& id,
                               const std::vector<std::string_view>& keys) {
        const auto notes = std::make_shared<ListedItem<ProofNotes>>(list, owner, id);
        const auto item = [notes]() -> ProofNotes& { return notes->item(); };
        auto more = form_lines<ProofNotes>(item, keys, [this, notes, stored] {
            note_answer(notes->item());
            return notes->keep(stored);
        });
        let_answers_age(more, item);
        append(lines, std::move(more));
    };
    if (const auto* switching = timer()) {
        if (!never_rests()) {
            add_notes(&ProofNotes::timer, switching->id, {"cycles_since_change"});
            make_choice(lines.back());
        }
        add_notes(&ProofNotes::bank, bank_, {"even_drip", "dry_patch"});
        for (auto& line : lines) {
            if (line.type == FormField::Type::yes_no) {
                line.choices.back().second = tr("Not looked at");
            }
        }
        if (record_.file().visit.left_of(switching->id) != nullptr) {
            append(lines, form_lines<TimerSettings>(
                              [this, id = switching->id]() -> TimerSettings& {
                                  return *std::ranges::find(record_.visit().left, id, &TimerSettings::timer);
                              },
                              {"shown_on_time"}, stored));
        }
    }
    questions_->change_fields(std::move(lines));
}

/// An answer tells of the settings that it was given under.
bool ProofViewModel::is_old(const ProofNotes& notes) const {
    const auto* switching = timer();
    const auto* left = switching == nullptr ? nullptr : record_.file().visit.left_of(switching->id);
    return left != nullptr && left->changed && notes.answered && before(*notes.answered, *left->changed);
}

/// Old answers are shown no more, and go when the first new one is given.
void ProofViewModel::let_answers_age(std::vector<FormField>& lines,
                                     const std::function<ProofNotes&()>& notes) const {
    for (auto& line : lines) {
        line.entry = [this, notes, entry = line.entry] { return is_old(notes()) ? QString{} : entry(); };
        line.set = [this, notes, take = line.set](const std::string& text) {
            if (is_old(notes())) {
                notes() = ProofNotes{notes().timer, notes().bank, {}, {}, {}, {}};
            }
            return take(text);
        };
    }
}

void ProofViewModel::note_answer(ProofNotes& notes) const {
    const auto& clock = record_.context().clock;
    notes.answered.reset();
    if (notes != ProofNotes{notes.timer, notes.bank, {}, {}, {}, {}}) {
        notes.answered = Moment{clock.boot_now(), clock.wall_now()};
    }
}

const Timer* ProofViewModel::timer() const {
    const auto& timers = record_.file().house.timers;
    const auto at = std::ranges::find_if(timers, [this](const Timer& timer) {
        return std::ranges::find(timer.pumps, pump_) != timer.pumps.end();
    });
    return at == timers.end() ? nullptr : &*at;
}

const TimerProof* ProofViewModel::proof() const {
    const auto* switching = timer();
    return switching == nullptr ? nullptr : record_.proof().of(switching->id);
}

// Such a timer has no period to prove.
bool ProofViewModel::never_rests() const {
    const auto* proven = proof();
    return proven != nullptr && !std::ranges::any_of(proven->lines, [](const ProofLine& line) {
               return line.what == ProofQuantity::period;
           });
}

QVariantList ProofViewModel::banks() const {
    QVariantList list;
    for (const auto& bank : record_.file().house.banks) {
        list.append(QVariantMap{{"value", qstring(bank.id.text)}, {"text", qstring(bank.name)}});
    }
    return list;
}

QString ProofViewModel::bank() const {
    return qstring(bank_.text);
}

void ProofViewModel::chooseBank(const QString& id) {
    bank_ = Id{id.toStdString()};
    chosen_.reset();
    follow_marks();
}

QString ProofViewModel::bank_name() const {
    const auto* bank = record_.file().house.bank(bank_);
    return bank == nullptr ? tr("this bank") : qstring(bank->name);
}

QString ProofViewModel::timerName() const {
    const auto* switching = timer();
    return switching == nullptr ? QString{} : qstring(switching->name);
}

bool ProofViewModel::pressed_in_run(MarkKind kind) const {
    return std::ranges::any_of(state_.marks_since,
                               [&](const Mark& mark) { return mark.kind == kind && mark.bank == bank_; });
}

std::vector<PossibleMark> ProofViewModel::possible_marks() const {
    if (!state_.running) {
        return {{MarkKind::pump_start, {}}};
    }
    std::vector<PossibleMark> possible;
    if (!pressed_in_run(MarkKind::far_end_drips)) {
        if (!pressed_in_run(MarkKind::water_at_far_end)) {
            possible.push_back({MarkKind::water_at_far_end, bank_});
        }
        possible.push_back({MarkKind::far_end_drips, bank_});
    }
    possible.push_back({MarkKind::pump_stop, {}});
    possible.push_back({MarkKind::pump_start, {}});  // where the stop was missed
    // In the place of the one chosen, so that no button moves under a finger.
    if (const auto at = std::ranges::find(possible, chosen_, &PossibleMark::kind); at != possible.end()) {
        std::swap(*at, possible.front());
    }
    return possible;
}

QString ProofViewModel::markText() const {
    const auto next = possible_marks().front();
    return mark_words(next.kind, bank_name());
}

QVariantList ProofViewModel::otherMarks() const {
    QVariantList list;
    const auto possible = possible_marks();
    for (std::size_t i = 1; i < possible.size(); ++i) {
        list.append(
            QVariantMap{{"text", mark_words(possible[i].kind, bank_name())}, {"index", static_cast<int>(i)}});
    }
    return list;
}

QString ProofViewModel::blockedWhy() const {
    if (record_.read_only()) {
        return tr("The records are only looked at: nothing can be watched.");
    }
    if (record_.frozen()) {
        return tr("This visit is signed. Start a new visit to watch again.");
    }
    if (pump_.empty()) {
        return tr("Describe a pump and its banks first.");
    }
    return timer() == nullptr
               ? tr("No timer switches the pump of %1: say which does in House and banks.").arg(bank_name())
               : QString{};
}

QString ProofViewModel::instruction() const {
    if (const QString why = blockedWhy(); !why.isEmpty()) {
        return why;
    }
    if (state_of(MarksOf::timing).since) {
        return tr("Put the pump back on automatic: in a proof run its timer switches it.");
    }
    if (never_rests()) {
        return tr(
            "This pump never rests: nothing is timed. Look at the far end and at the whole face, then "
            "answer below.");
    }
    if (!state_.since) {
        return tr("Stand at the far end of %1. Wait for the pump to start, then mark it.").arg(bank_name());
    }
    if (state_.since->at.boot_id != record_.context().clock.boot_now().boot_id) {
        return tr("The tablet restarted: this cycle does not count. Go on with the next start of the pump.");
    }
    switch (possible_marks().front().kind) {
        case MarkKind::pump_start:
            return tr("Wait for the next start, then mark it: it completes the period.");
        case MarkKind::water_at_far_end:
            return tr("Mark when water comes out at the far end of %1.").arg(bank_name());
        case MarkKind::far_end_drips:
            return tr("Watch under %1: mark when the far end drips evenly.").arg(bank_name());
        case MarkKind::pump_stop:
            return tr("Wait for the pump to stop, then mark it.");
        case MarkKind::drip_ends:
        case MarkKind::first_dry_patch:
        case MarkKind::back_on_automatic:
            break;
    }
    return {};
}

const Mark* ProofViewModel::last_mark() const {
    return !state_.since ? nullptr : state_.marks_since.empty() ? &*state_.since : &state_.marks_since.back();
}

QString ProofViewModel::elapsedText() const {
    const auto* last = last_mark();
    return last == nullptr
               ? QString{}
               : record_.context().formatter.clock(ms_since(*last, record_.context().clock), true);
}

QString ProofViewModel::elapsedLabel() const {
    const auto* last = last_mark();
    return last == nullptr ? QString{} : tr("since: %1").arg(words_of(*last));
}

QString ProofViewModel::words_of(const Mark& mark) const {
    const auto* bank = record_.file().house.bank(mark.bank);
    return mark_words(mark.kind, bank == nullptr ? tr("this bank") : qstring(bank->name));
}

QVariantList ProofViewModel::lastMarks() const {
    auto marks = record_.file().visit.marks;
    std::erase_if(marks, [this](const Mark& mark) { return !mark.proof || mark.pump != pump_; });
    std::ranges::stable_sort(marks, [](const Mark& a, const Mark& b) { return earlier_in_time(b, a); });
    const auto doubts = doubts_of(record_.file());
    QVariantList list;
    for (const auto& mark : marks) {
        list.append(QVariantMap{{"text", words_of(mark)},
                                {"time", QString::fromStdString(local_clock(mark.wall))},
                                {"undone", mark.undone},
                                {"doubt", doubt_words(doubts, mark.id)}});
    }
    return list;
}

void ProofViewModel::mark() {
    if (canMark()) {
        make(possible_marks().front());
    }
}

void ProofViewModel::chooseOther(int index) {
    const auto possible = possible_marks();
    if (canMark() && index > 0 && index < static_cast<int>(possible.size())) {
        chosen_ = possible[static_cast<std::size_t>(index)].kind;
        emit changed();
    }
}

void ProofViewModel::make(const PossibleMark& what) {
    Mark mark = mark_of(presses_.press(), record_.context().store.new_id(), what, pump_);
    mark.proof = true;
    mark.started_by = StartedBy::controller;
    const QString words = words_of(mark);
    chosen_.reset();
    record_.add_mark(std::move(mark));
    emit marked(words);
}

const Mark* ProofViewModel::to_undo() const {
    return record_.frozen() ? nullptr : last_standing(record_.file().visit.marks, pump_, MarksOf::proof_run);
}

const Mark* ProofViewModel::to_redo() const {
    return record_.frozen() ? nullptr : next_undone(record_.file().visit.marks, pump_, MarksOf::proof_run);
}

QString ProofViewModel::undoText() const {
    const auto* mark = to_undo();
    return mark == nullptr ? QString{} : tr("Undo: %1").arg(words_of(*mark));
}

QString ProofViewModel::redoText() const {
    const auto* mark = to_redo();
    return mark == nullptr ? QString{} : tr("Redo: %1").arg(words_of(*mark));
}

void ProofViewModel::undo() {
    if (const auto* mark = to_undo()) {
        const Id id = mark->id;
        chosen_.reset();
        record_.set_undone(id, true);
    }
}

void ProofViewModel::redo() {
    if (const auto* mark = to_redo()) {
        const Id id = mark->id;
        chosen_.reset();
        record_.set_undone(id, false);
    }
}

bool ProofViewModel::pumpOnLeft() const {
    const auto* bank = record_.file().house.bank(bank_);
    return bank == nullptr || bank->pump_end == PumpEnd::left;
}

double ProofViewModel::aspect() const {
    const auto* bank = record_.file().house.bank(bank_);
    return bank == nullptr ? 0.0 : aspect_of(*bank);
}

double ProofViewModel::headerFront() const {
    if (!state_.running) {
        return 0.0;
    }
    if (pressed_in_run(MarkKind::water_at_far_end) || pressed_in_run(MarkKind::far_end_drips)) {
        return 1.0;
    }
    std::optional<Duration> fill;
    const auto* timed = record_.timings().of(bank_);
    const auto* bank = record_.file().house.bank(bank_);
    if (timed != nullptr && timed->fill) {
        fill = timed->fill->mean;
    } else if (bank != nullptr) {
        const auto expected = expected_fill(record_.water(), *bank);
        fill = expected ? std::optional{expected->usual} : std::nullopt;
    }
    if (!fill) {
        return -1.0;
    }
    const double elapsed = static_cast<double>(ms_since(*state_.since, record_.context().clock)) / 1000.0;
    return std::clamp(elapsed / in_seconds(*fill), 0.0, 1.0);
}

QList<double> ProofViewModel::wetFront() const {
    // It dripped in this run or before: the pad is wet. Until then nobody said so.
    const bool dripped = std::ranges::any_of(record_.file().visit.marks, [this](const Mark& mark) {
        return mark.proof && !mark.undone && mark.bank == bank_ && mark.kind == MarkKind::far_end_drips;
    });
    return dripped ? QList<double>(columns, 1.0) : QList<double>{};
}

QString ProofViewModel::verdict() const {
    const auto* proven = proof();
    return sign_of(proven == nullptr ? ProofVerdict::not_watched : proven->verdict);
}

QString ProofViewModel::verdictWord() const {
    const auto* proven = proof();
    return proven == nullptr ? QString{} : record_.context().formatter.text(label_of(proven->verdict));
}

QString ProofViewModel::verdictText() const {
    const auto* proven = proof();
    return proven == nullptr ? QString{} : record_.context().formatter.text(proven->text);
}

QStringList ProofViewModel::causes() const {
    QStringList list;
    const auto& formatter = record_.context().formatter;
    if (const auto* proven = proof()) {
        for (const auto& likely : proven->causes) {
            list.append(
                tr("%1 Look: %2").arg(formatter.text(likely.cause), formatter.text(likely.next_check)));
        }
    }
    return list;
}

QString ProofViewModel::decisionRule() const {
    return record_.context().formatter.text(proof_decision_rule());
}

QVariantList ProofViewModel::lines() const {
    QVariantList list;
    if (const auto* proven = proof()) {
        for (const auto& line : proven->lines) {
            if (line.bank.empty() ? line.pump == pump_ : line.bank == bank_) {
                list.append(proof_line_map(line, record_.context().formatter));
            }
        }
    }
    return list;
}

}  // namespace wetfront::ui
