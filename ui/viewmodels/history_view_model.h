// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <deque>

#include "trend/revisit.h"
#include "viewmodels/history_picture.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// What visits measured of one house over the years, bank by bank, what stood in its timers, and the houses
/// of its farm side by side. GUI thread.
class HistoryViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    /// {name, cause, remedy, series: [{words, shift, limit, values, index, worse}]}; banks of which nothing
    /// was measured are left out. `values` are the first and the last with their days; `shift`, `limit`,
    /// `cause` and `remedy` may be empty.
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)
    /// Of that series the chart is what a reader wants to see first; -1: there is none.
    Q_PROPERTY(int first READ first NOTIFY changed)
    /// {level, text, source} for whoever does what `remedy` says; empty where there is none.
    Q_PROPERTY(QVariantList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QString codesComeFirst READ codesComeFirst NOTIFY changed)
    Q_PROPERTY(QVariantList timers READ timers NOTIFY changed)   ///< {name, summary, index}
    Q_PROPERTY(QString nextVisit READ nextVisit NOTIFY changed)  ///< by when and why; empty: no visit yet
    Q_PROPERTY(bool hasNeighbours READ hasNeighbours NOTIFY changed)  ///< the farm has other houses
    /// {value, text} of what was measured somewhere; empty until compare() was called.
    Q_PROPERTY(QVariantList comparable READ comparable NOTIFY comparedChanged)
    Q_PROPERTY(
        QString comparing READ comparing NOTIFY comparedChanged)  ///< "2 of 8 houses read"; empty: all are

public:
    HistoryViewModel(const Context& context, QObject* parent);

    [[nodiscard]] QVariantList banks() const;
    [[nodiscard]] int first() const;
    [[nodiscard]] QVariantList cautions() const;
    [[nodiscard]] QString codesComeFirst() const;
    [[nodiscard]] QVariantList timers() const;
    [[nodiscard]] QString nextVisit() const;
    [[nodiscard]] bool hasNeighbours() const { return neighbours_ > 1; }
    [[nodiscard]] QVariantList comparable() const;
    [[nodiscard]] QString comparing() const;

    /// Reads all visits of the house, some milliseconds each.
    [[nodiscard]] Result<void> show(const House& house);
    /// The formatter's units or language are others.
    void show_again() {
        emit changed();
        emit comparedChanged();
    }

    /// {picture, rows, legend} of history_picture.h.
    Q_INVOKABLE QVariantMap chart(int index) const;
    Q_INVOKABLE QVariantMap settingsChart(int index) const;
    /// Begins to read the houses of the farm, one in a turn of the event loop: what was read so far is there.
    Q_INVOKABLE void compare();
    /// No more of them are read.
    Q_INVOKABLE void stopComparing();
    /// Of one of comparable().
    Q_INVOKABLE QVariantMap comparison(const QString& followed) const;

signals:
    void changed();
    void comparedChanged();

private:
    [[nodiscard]] QString values_of(const BankSeries& series) const;
    void read_next();

    struct Compared {
        House house;
        std::vector<BankSeries> series;
    };

    Context context_;
    House house_;
    std::vector<FollowedTrend> followed_;
    std::vector<TimerHistory> timers_;
    std::optional<Revisit> next_visit_;
    int neighbours_ = 0;  ///< with itself
    std::vector<Compared> compared_;
    std::deque<Id> to_compare_;
    QTimer next_;
};

}  // namespace wetfront::ui
