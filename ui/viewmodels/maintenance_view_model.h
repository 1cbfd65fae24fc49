// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QDate>
#include <QObject>
#include <QVariantList>
#include <optional>
#include <set>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// What was done to a house's pads, outlets and pumps, and one more such entry at a time. Each is stored at
/// once and can be undone. GUI thread.
class MaintenanceViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantList events READ events NOTIFY changed)      ///< {id, title, detail}, the latest first
    Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)  ///< what was just done; empty: nothing
    Q_PROPERTY(bool undoable READ undoable NOTIFY outcomeChanged)   ///< and undo() takes it back
    Q_PROPERTY(QString problem READ problem NOTIFY outcomeChanged)  ///< why it was not done
    // The entry that is being made.
    Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)  ///< {value, text}
    Q_PROPERTY(QString what READ what WRITE setWhat NOTIFY draftChanged)
    Q_PROPERTY(bool toPump READ toPump NOTIFY draftChanged)        ///< it is done to a pump, else to banks
    Q_PROPERTY(QVariantList pumps READ pumps NOTIFY draftChanged)  ///< {value, text}
    Q_PROPERTY(QString pump READ pump WRITE setPump NOTIFY draftChanged)
    Q_PROPERTY(QVariantList banks READ banks NOTIFY draftChanged)  ///< {id, text, chosen}
    Q_PROPERTY(QString day READ day NOTIFY draftChanged)           ///< "2026-07-01"
    Q_PROPERTY(bool today READ today NOTIFY draftChanged)          ///< no later day can be chosen
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY draftChanged)
    Q_PROPERTY(bool complete READ complete NOTIFY draftChanged)

public:
    MaintenanceViewModel(const Context& context, QObject* parent);

    [[nodiscard]] QVariantList events() const;
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] bool undoable() const { return before_.has_value(); }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] QString what() const;
    void setWhat(const QString& what);
    [[nodiscard]] bool toPump() const { return draft_.what == Upkeep::new_pump; }
    [[nodiscard]] QVariantList pumps() const;
    [[nodiscard]] QString pump() const { return QString::fromStdString(pump_.text); }
    void setPump(const QString& id);
    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] QString day() const;
    [[nodiscard]] bool today() const { return day_ >= today_; }
    [[nodiscard]] QString note() const { return QString::fromStdString(draft_.note); }
    void setNote(const QString& note);
    [[nodiscard]] bool complete() const { return toPump() ? !pump_.empty() : !banks_.empty(); }

    /// Of that house; what was just done is forgotten.
    void show(const House& house);
    [[nodiscard]] const House& house() const { return house_; }

    /// Starts an entry: today, outlets cleaned, all banks.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void toggleBank(const QString& id);
    /// Not beyond today.
    Q_INVOKABLE void moveDay(int days);
    Q_INVOKABLE void moveMonth(int months);
    /// Stores the entry.
    Q_INVOKABLE void enter();
    Q_INVOKABLE void takeOut(const QString& id);
    /// Takes back the last of both.
    Q_INVOKABLE void undo();
    /// The formatter's units or language are others.
    void show_again() { emit changed(); }

signals:
    void changed();
    void houseChanged();  ///< an entry was stored
    void outcomeChanged();
    void draftChanged();

private:
    void set_day(const QDate& day);
    [[nodiscard]] QString title_of(const Maintenance& done) const;
    [[nodiscard]] bool keep(std::vector<Maintenance> maintenance);
    void tell(const QString& outcome, const QString& problem, std::optional<std::vector<Maintenance>> before);

    Context context_;
    House house_;
    QString outcome_;
    QString problem_;
    std::optional<std::vector<Maintenance>> before_;  ///< what was entered before the last change
    Maintenance draft_;
    std::set<Id> banks_;
    Id pump_;
    QDate day_;
    QDate today_;
};

}  // namespace wetfront::ui
