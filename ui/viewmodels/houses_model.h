// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QTimer>
#include <map>
#include <optional>
#include <vector>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Length over height of a bank, for its picture; 0: not described.
[[nodiscard]] double aspect_of(const PadBank& bank);

/// The houses list. What a line needs beyond names and dates (banks, findings) takes milliseconds a house, so
/// nothing waits for it: it is worked out once the line came into view, one line in a turn of the event loop,
/// the one that was asked for last first, and told by dataChanged().
class HousesModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role {
        IdRole = Qt::UserRole + 1,
        HouseRole,
        FarmRole,
        VisitsRole,  ///< "3 visits, latest 2026-07-01"
        OpenRole,    ///< the latest visit is not signed
        WorstRole,   ///< severity of the worst finding on the settings found at the latest visit; empty: none
        LastFoundRole,  ///< that finding, one sentence; until it is known, that it is looked for
        BanksRole,      ///< {pumpOnLeft, aspect} a bank, for the thumbnail; empty until known
    };

    HousesModel(const Context& context, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(houses_.size()); }
    /// The list as it was read last.
    [[nodiscard]] const std::vector<HouseSummary>& houses() const { return houses_; }

    /// Reads the list anew.
    [[nodiscard]] Result<void> reload();

signals:
    void countChanged();

private:
    struct Details {
        QVariantList banks;
        QString worst;
        QString last_found;
    };
    /// Of a row; null while it is not worked out, which this asks for.
    [[nodiscard]] const Details* details(int row) const;
    [[nodiscard]] Details work_out(const HouseSummary& house) const;
    void work_out_one();

    Context context_;
    std::vector<HouseSummary> houses_;
    mutable std::map<int, std::optional<Details>> details_;  ///< by row
    mutable std::vector<int> wanted_;                        ///< rows, the next one at the back
    QTimer* turn_;
};

}  // namespace wetfront::ui
