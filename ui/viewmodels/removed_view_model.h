// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>
#include <QVariantMap>
#include <optional>
#include <utility>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Takes houses, visits and setting templates out of sight, and brings them back; nothing is deleted. Kinds
/// are those of the record file: "house", "visit", "template", "farm". GUI thread.
class RemovedViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantList records READ records NOTIFY
                   changed)  ///< {kind, id, title, detail}, the last removed first
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)  ///< what was just done; empty: nothing
    Q_PROPERTY(bool undoable READ undoable NOTIFY outcomeChanged)   ///< and undo() takes it back
    Q_PROPERTY(QString problem READ problem NOTIFY outcomeChanged)  ///< why it was not done

public:
    RemovedViewModel(const Context& context, QObject* parent);

    [[nodiscard]] QVariantList records() const;
    [[nodiscard]] int count() const { return static_cast<int>(records_.size()); }
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] bool undoable() const { return undoable_.has_value(); }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool holds(RecordKind kind, const Id& id) const;

    /// Reads the list anew.
    [[nodiscard]] Result<void> reload();
    /// What was just done is not told any more.
    void forget();

    /// What to ask before removing: {question, detail}.
    Q_INVOKABLE QVariantMap question(const QString& kind, const QString& id) const;
    /// Not while a pump of it is off for a test.
    Q_INVOKABLE void remove(const QString& kind, const QString& id);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void bringBack(const QString& kind, const QString& id);

signals:
    void changed();
    void outcomeChanged();

private:
    using Named = std::pair<RecordKind, Id>;
    [[nodiscard]] static std::optional<Named> named(const QString& kind, const QString& id);
    [[nodiscard]] QString title(RecordKind kind, const Id& id) const;
    [[nodiscard]] Result<bool> pump_is_off_in(RecordKind kind, const Id& id) const;
    bool turn(const Named& record, bool removed);
    void tell(const QString& outcome, const QString& problem, std::optional<Named> undoable);

    Context context_;
    std::vector<RemovedRecord> records_;
    QString outcome_;
    QString problem_;
    std::optional<Named> undoable_;
};

}  // namespace wetfront::ui
