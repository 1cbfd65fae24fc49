// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantList>

#include "trend/history_words.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// What visits measured of one house over the years, bank by bank. GUI thread.
class HistoryViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    /// {name, cause, series: [{words, shift, values}]}; banks of which nothing was measured are left out.
    /// `values` are the first and the last with their days, `shift` and `cause` may be empty.
    Q_PROPERTY(QVariantList banks READ banks NOTIFY changed)

public:
    HistoryViewModel(const Context& context, QObject* parent);

    [[nodiscard]] QVariantList banks() const;

    /// Reads all visits of the house, some milliseconds each.
    [[nodiscard]] Result<void> show(const House& house);

signals:
    void changed();

private:
    [[nodiscard]] QString values_of(const BankSeries& series) const;

    Context context_;
    std::vector<PadBank> banks_;
    std::vector<FollowedTrend> followed_;
};

}  // namespace wetfront::ui
