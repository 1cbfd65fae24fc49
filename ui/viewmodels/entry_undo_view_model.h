// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <optional>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Undo and redo of a visit's entries, whichever step they were made on. Presses have their own on the pages
/// where they are made. GUI thread.
class EntryUndoViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(bool offered READ offered NOTIFY changed)  ///< something of the visit can be changed
    /// "Undo: Period of Timer 1 as left, 5 min back to 6 min"; empty: nothing to undo.
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed)
    Q_PROPERTY(QString redoText READ redoText NOTIFY changed)
    /// What was taken back or made again, or why not, as one line; empty again after a while.
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)

public:
    EntryUndoViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] bool offered() const { return !record_.frozen(); }
    [[nodiscard]] QString undoText() const;
    [[nodiscard]] QString redoText() const;
    [[nodiscard]] QString outcome() const { return outcome_; }

    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();

signals:
    void changed();
    void outcomeChanged();

private:
    [[nodiscard]] QString words(UndoStep step, bool redone) const;
    void set_outcome(const QString& outcome);
    void told(const Result<std::optional<UndoStep>>& step, bool redone);

    VisitRecord& record_;
    QString outcome_;
    QTimer while_;
};

}  // namespace wetfront::ui
