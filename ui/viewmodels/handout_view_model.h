// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QStringList>

#include "viewmodels/sheet_view_model.h"
#include "viewmodels/worker.h"

namespace wetfront::ui {

/// What the grower takes along: the sheet or its summary on a stick, the summary on screen and on paper. GUI
/// thread; sticks are written by another.
class HandoutViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(
        QStringList media READ media NOTIFY changed)  ///< to choose from; empty: nothing is to be chosen
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed)  ///< of what was pressed last
    Q_PROPERTY(QString problem READ problem NOTIFY changed)  ///< why it was not done
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString busyText READ busyText NOTIFY changed)
    Q_PROPERTY(bool summaryShown READ summaryShown NOTIFY summaryChanged)
    Q_PROPERTY(int summaryRevision READ summaryRevision NOTIFY summaryChanged)

public:
    HandoutViewModel(VisitRecord& record, const SheetViewModel& sheet, const SheetPaper& paper,
                     QObject* parent);

    [[nodiscard]] QStringList media() const { return media_; }
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] QString busyText() const;
    [[nodiscard]] bool summaryShown() const { return !summary_.isNull(); }
    [[nodiscard]] int summaryRevision() const { return summary_revision_; }
    [[nodiscard]] QImage summary_page() const { return summary_; }

    /// The sheet, or with `summary` the one page for the grower, on the stick that is plugged in; where there
    /// are several, `media` asks for one. Done is said when it has been read back.
    Q_INVOKABLE void putOnStick(bool summary);
    Q_INVOKABLE void putOn(const QString& medium);
    Q_INVOKABLE void showSummary();
    Q_INVOKABLE void hideSummary();
    Q_INVOKABLE void printSummary();

signals:
    void changed();
    void summaryChanged();

private:
    void tell(const QString& outcome, const QString& problem);
    [[nodiscard]] Result<QByteArray> bytes() const;
    [[nodiscard]] Result<bool> print_summary() const;

    VisitRecord& record_;
    const SheetViewModel& sheet_;
    const SheetPaper& paper_;
    SheetKind kind_ = SheetKind::commissioning;  ///< of what is to go on a stick
    QStringList media_;
    QString medium_;
    QString outcome_;
    QString problem_;
    bool busy_ = false;
    QImage summary_;
    int summary_revision_ = 0;
    Worker worker_{this};
};

}  // namespace wetfront::ui
