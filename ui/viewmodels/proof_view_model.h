// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QTimer>
#include <QVariantList>

#include "timing/stopwatch_guide.h"
#include "viewmodels/form_model.h"
#include "viewmodels/press_clock.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The proof run: a timer switches its pump, somebody at the far end of a bank marks what happens, and what
/// was seen is compared with what was set. All of its state comes from the marks. GUI thread.
class ProofViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)  ///< {value, text}
    Q_PROPERTY(QString bank READ bank WRITE chooseBank NOTIFY changed)
    Q_PROPERTY(QString timerName READ timerName NOTIFY changed)         ///< that switches this bank's pump
    Q_PROPERTY(QString instruction READ instruction NOTIFY changed)     ///< "do this next", one line
    Q_PROPERTY(QString markText READ markText NOTIFY changed)           ///< on the big button
    Q_PROPERTY(QVariantList otherMarks READ otherMarks NOTIFY changed)  ///< {text, index}, for chooseOther()
    Q_PROPERTY(bool canMark READ canMark NOTIFY changed)
    Q_PROPERTY(QString blockedWhy READ blockedWhy NOTIFY changed)
    Q_PROPERTY(QString elapsedText READ elapsedText NOTIFY ticked)  ///< since the last mark
    Q_PROPERTY(QString elapsedLabel READ elapsedLabel NOTIFY changed)
    Q_PROPERTY(
        QVariantList lastMarks READ lastMarks NOTIFY changed)  ///< newest first: {text, time, undone, doubt}
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed)  ///< what undo would take back; empty: nothing
    Q_PROPERTY(QString redoText READ redoText NOTIFY changed)
    Q_PROPERTY(bool pumpOnLeft READ pumpOnLeft NOTIFY changed)
    Q_PROPERTY(double aspect READ aspect NOTIFY changed)  ///< length over height; 0: unknown
    Q_PROPERTY(bool running READ running NOTIFY changed)
    Q_PROPERTY(bool watching READ watching NOTIFY changed)
    Q_PROPERTY(double headerFront READ headerFront NOTIFY
                   ticked)  ///< share of the header that should hold water; -1: unknown
    Q_PROPERTY(QList<double> wetFront READ wetFront NOTIFY ticked)          ///< as far as somebody saw it wet
    Q_PROPERTY(wetfront::ui::FormModel* questions READ questions CONSTANT)  ///< what is looked at
    Q_PROPERTY(QString verdict READ verdict NOTIFY
                   changed)  ///< of the timer: "pass", "fail", "close", or "open" for none yet
    Q_PROPERTY(QString verdictWord READ verdictWord NOTIFY changed)
    Q_PROPERTY(QString verdictText READ verdictText NOTIFY changed)  ///< in one sentence, with what to do
    Q_PROPERTY(QStringList causes READ causes NOTIFY changed)        ///< of a fail, each with its next check
    Q_PROPERTY(QString decisionRule READ decisionRule NOTIFY changed)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY
                   changed)  ///< {what, allowed, set, seen, verdict, word} of the bank and its pump

public:
    ProofViewModel(VisitRecord& record, const PressClock& presses, QObject* parent);

    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] QString bank() const;
    void chooseBank(const QString& id);
    [[nodiscard]] QString timerName() const;
    [[nodiscard]] QString instruction() const;
    [[nodiscard]] QString markText() const;
    [[nodiscard]] QVariantList otherMarks() const;
    [[nodiscard]] bool canMark() const { return blockedWhy().isEmpty(); }
    [[nodiscard]] QString blockedWhy() const;
    [[nodiscard]] QString elapsedText() const;
    [[nodiscard]] QString elapsedLabel() const;
    [[nodiscard]] QVariantList lastMarks() const;
    [[nodiscard]] QString undoText() const;
    [[nodiscard]] QString redoText() const;
    [[nodiscard]] bool pumpOnLeft() const;
    [[nodiscard]] double aspect() const;
    [[nodiscard]] bool running() const { return state_.running; }
    /// From the first mark on, until the pump is switched by hand or for a day.
    [[nodiscard]] bool watching() const { return state_.since.has_value(); }
    [[nodiscard]] double headerFront() const;
    [[nodiscard]] QList<double> wetFront() const;
    [[nodiscard]] FormModel* questions() const { return questions_; }
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString verdictWord() const;
    [[nodiscard]] QString verdictText() const;
    [[nodiscard]] QStringList causes() const;
    [[nodiscard]] QString decisionRule() const;
    [[nodiscard]] QVariantList lines() const;

    Q_INVOKABLE void mark();
    /// The next press marks that one of otherMarks (something between was missed, or did not come) instead of
    /// what usually comes next. It holds until a press, undo or redo, or until one stands at another bank.
    Q_INVOKABLE void chooseOther(int index);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();

signals:
    void changed();
    void ticked();
    void marked(const QString& text);

private:
    void follow_marks();
    void choose_where_something_runs();
    void build_questions();
    [[nodiscard]] bool is_old(const ProofNotes& notes) const;
    void let_answers_age(std::vector<FormField>& lines, const std::function<ProofNotes&()>& notes) const;
    void note_answer(ProofNotes& notes) const;
    void make(const PossibleMark& what);
    /// What the next press marks, then what else can happen from here on.
    [[nodiscard]] std::vector<PossibleMark> possible_marks() const;
    [[nodiscard]] PumpState state_of(MarksOf of) const;
    [[nodiscard]] const Mark* last_mark() const;
    [[nodiscard]] bool pressed_in_run(MarkKind kind) const;
    [[nodiscard]] const Timer* timer() const;
    [[nodiscard]] const TimerProof* proof() const;
    [[nodiscard]] bool never_rests() const;
    [[nodiscard]] QString bank_name() const;
    [[nodiscard]] QString words_of(const Mark& mark) const;
    [[nodiscard]] const Mark* to_undo() const;
    [[nodiscard]] const Mark* to_redo() const;

    VisitRecord& record_;
    const PressClock& presses_;
    QTimer tick_;
    Id bank_;
    Id pump_;
    PumpState state_;
    std::optional<MarkKind> chosen_;  ///< not what usually comes next
    FormModel* questions_;
};

}  // namespace wetfront::ui
