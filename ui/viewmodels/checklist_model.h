// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <vector>

#include "rules/checklists.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Ticks a line or takes the tick away, and stores that. A failure is shown through the record's storage
/// problem.
void set_tick(VisitRecord& record, std::string_view line, bool done);

/// The lines of one step that are ticked.
class ChecklistModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count CONSTANT)
    Q_PROPERTY(int open READ open NOTIFY openChanged)

public:
    enum Role { TextRole = Qt::UserRole + 1, DoneRole, RequiredRole };

    ChecklistModel(VisitRecord& record, Step step, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(checklist(step_).size()); }
    [[nodiscard]] int open() const;

    Q_INVOKABLE void tick(int row, bool done);

signals:
    void openChanged();

private:
    VisitRecord& record_;
    Step step_;
};

}  // namespace wetfront::ui
