// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <map>
#include <vector>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Length over height of a bank, for its picture; 0: not described.
[[nodiscard]] double aspect_of(const PadBank& bank);

/// The houses list. What a house needs beyond its name (banks, findings) is worked out when its line comes
/// into view.
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
        LastFoundRole,  ///< that finding, one sentence
        BanksRole,      ///< {pumpOnLeft, aspect} a bank, for the thumbnail
    };

    HousesModel(const Context& context, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(houses_.size()); }

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
    [[nodiscard]] const Details& details(const HouseSummary& house) const;

    Context context_;
    std::vector<HouseSummary> houses_;
    mutable std::map<std::string, Details> details_;
};

}  // namespace wetfront::ui
