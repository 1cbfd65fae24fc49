// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QTimer>
#include <QVariantList>
#include <map>

#include "timing/stopwatch_guide.h"
#include "viewmodels/press_clock.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The stopwatch page: which mark comes next, what runs, what was read. Its running state is derived from the
/// marks alone, so it is the same after a restart. GUI thread.
class StopwatchViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QVariantList pumps READ pumps NOTIFY changed)  ///< {id, name, running, timed}
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)  ///< of the pump at hand: {id, name, at, state}
    Q_PROPERTY(QString pump READ pump WRITE choosePump NOTIFY changed)
    Q_PROPERTY(QString bank READ bank WRITE chooseBank NOTIFY changed)
    Q_PROPERTY(QString instruction READ instruction NOTIFY changed)     ///< "do this next", one line
    Q_PROPERTY(QString markText READ markText NOTIFY changed)           ///< on the big button
    Q_PROPERTY(QVariantList otherMarks READ otherMarks NOTIFY changed)  ///< {text, index}, for chooseOther()
    Q_PROPERTY(bool canMark READ canMark NOTIFY changed)
    Q_PROPERTY(QString blockedWhy READ blockedWhy NOTIFY changed)
    Q_PROPERTY(int blockedStep READ blockedStep NOTIFY
                   changed)  ///< where what blocks can be entered; -1: not blocked so
    Q_PROPERTY(bool asksStart READ asksStart NOTIFY
                   changed)  ///< the next mark starts a run: who, pads, fans are asked
    Q_PROPERTY(
        bool asksStop READ asksStop NOTIFY changed)  ///< the next mark stops the pump: who, fans are asked
    Q_PROPERTY(bool canBeAlreadyThere READ canBeAlreadyThere NOTIFY changed)
    Q_PROPERTY(bool alreadyThere READ alreadyThere WRITE setAlreadyThere NOTIFY
                   changed)  ///< the next press says that it was so before one came
    Q_PROPERTY(QString startedBy READ startedBy WRITE setStartedBy NOTIFY changed)
    Q_PROPERTY(QString pads READ pads WRITE setPads NOTIFY changed)
    Q_PROPERTY(QString fans READ fans WRITE setFans NOTIFY changed)  ///< "yes", "no" or "" for not said
    Q_PROPERTY(QString elapsedText READ elapsedText NOTIFY ticked)
    Q_PROPERTY(QString elapsedLabel READ elapsedLabel NOTIFY changed)
    Q_PROPERTY(
        QVariantList lastMarks READ lastMarks NOTIFY changed)  ///< newest first: {text, time, undone, doubt}
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed)  ///< what undo would take back; empty: nothing
    Q_PROPERTY(QString redoText READ redoText NOTIFY changed)
    Q_PROPERTY(QVariantList results READ results NOTIFY changed)    ///< a line a bank and kind, see results()
    Q_PROPERTY(QVariantList readings READ readings NOTIFY changed)  ///< every reading, see readings()
    Q_PROPERTY(bool pumpOnLeft READ pumpOnLeft NOTIFY changed)
    Q_PROPERTY(double aspect READ aspect NOTIFY changed)  ///< length over height; 0: unknown
    Q_PROPERTY(double headerFront READ headerFront NOTIFY
                   ticked)  ///< share of the header that should hold water; -1: unknown
    Q_PROPERTY(QList<double> wetFront READ wetFront NOTIFY
                   ticked)  ///< share of the height wet, by column; empty: unknown
    Q_PROPERTY(bool running READ running NOTIFY changed)
    Q_PROPERTY(bool timing READ timing NOTIFY changed)  ///< the pump at hand runs, or its banks dry
    Q_PROPERTY(
        bool canHandBack READ canHandBack NOTIFY changed)  ///< switched by hand and not back on automatic

public:
    /// `earlier` are the timings of the latest visit before this one, for the picture only.
    StopwatchViewModel(VisitRecord& record, const PressClock& presses, VisitTimings earlier, QObject* parent);

    [[nodiscard]] QVariantList pumps() const;
    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] QString pump() const;
    [[nodiscard]] QString bank() const;
    void choosePump(const QString& id);
    void chooseBank(const QString& id);
    [[nodiscard]] QString instruction() const;
    [[nodiscard]] QString markText() const;
    [[nodiscard]] QVariantList otherMarks() const;
    [[nodiscard]] bool canMark() const { return blockedWhy().isEmpty(); }
    [[nodiscard]] QString blockedWhy() const;
    [[nodiscard]] int blockedStep() const;
    [[nodiscard]] bool asksStart() const { return guide_.next.kind == MarkKind::pump_start; }
    [[nodiscard]] bool asksStop() const { return guide_.next.kind == MarkKind::pump_stop; }
    [[nodiscard]] bool canBeAlreadyThere() const { return !guide_.next.bank.empty(); }
    [[nodiscard]] bool alreadyThere() const { return already_there_; }
    void setAlreadyThere(bool there);
    [[nodiscard]] QString startedBy() const;
    void setStartedBy(const QString& name);
    [[nodiscard]] QString pads() const;
    void setPads(const QString& name);
    [[nodiscard]] QString fans() const;
    void setFans(const QString& answer);
    [[nodiscard]] QString elapsedText() const;
    [[nodiscard]] QString elapsedLabel() const;
    /// The machine restarted since the last pump event.
    [[nodiscard]] bool unverified() const;
    [[nodiscard]] QVariantList lastMarks() const;
    [[nodiscard]] QString undoText() const;
    [[nodiscard]] QString redoText() const;
    [[nodiscard]] QVariantList results() const;
    [[nodiscard]] QVariantList readings() const;
    [[nodiscard]] bool pumpOnLeft() const;
    [[nodiscard]] double aspect() const;
    [[nodiscard]] double headerFront() const;
    [[nodiscard]] QList<double> wetFront() const;
    [[nodiscard]] bool running() const { return state_.running; }

    [[nodiscard]] bool canHandBack() const;
    [[nodiscard]] bool timing() const { return is_timing(); }
    /// A pump of the house runs on the stopwatch, or one of its banks drips or dries.
    [[nodiscard]] bool anything_timed() const;

    Q_INVOKABLE void mark();
    /// The next press marks that one of otherMarks instead of what usually comes next; what that was is among
    /// the others then. It holds until a press, undo or redo, or until one stands elsewhere.
    Q_INVOKABLE void chooseOther(int index);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// The pump at hand is back on automatic: a mark that ends its test and its countdown.
    Q_INVOKABLE void handBack();
    Q_INVOKABLE void setAside(const QString& endMark, const QString& reason);
    Q_INVOKABLE void useAgain(const QString& endMark);

signals:
    void changed();
    void ticked();
    void marked(const QString& text);

private:
    void follow_marks();
    void offer_what_is_usual();
    void put_chosen_first();
    void make(const PossibleMark& what, Seen seen);
    [[nodiscard]] std::vector<Id> bank_ids() const;
    [[nodiscard]] std::vector<Id> banks_of(const Id& pump) const;
    [[nodiscard]] bool needs_agreement() const;
    [[nodiscard]] QString name_of_bank(const Id& bank) const;
    [[nodiscard]] QString words_of(const PossibleMark& what) const;
    /// As the marks tell, but for events longer ago than a day.
    [[nodiscard]] PumpState state_of(const Id& pump) const;
    [[nodiscard]] bool is_timing() const;
    [[nodiscard]] std::optional<std::int64_t> elapsed_ms() const;
    [[nodiscard]] std::optional<Duration> fill_to_expect() const;
    [[nodiscard]] std::optional<Duration> wetting_to_expect() const;
    [[nodiscard]] const Mark* to_undo() const;
    [[nodiscard]] const Mark* to_redo() const;

    VisitRecord& record_;
    const PressClock& presses_;
    VisitTimings earlier_;
    QTimer tick_;
    Id pump_;
    Id bank_;
    StartedBy started_by_ = StartedBy::me_here;
    PadsAtStart pads_ = PadsAtStart::dry;
    std::optional<bool> fans_;
    PumpState state_;
    StopwatchGuide guide_;
    std::optional<PossibleMark> chosen_;  ///< not what usually comes next
    bool already_there_ = false;
};

}  // namespace wetfront::ui
