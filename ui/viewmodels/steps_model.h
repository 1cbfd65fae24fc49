// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <vector>

#include "rules/checklists.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// How far a step is. A technician may take the steps in any order.
struct StepState {
    Step step = Step::safety;
    QString title;
    bool complete = false;
    QString problem;  ///< what stands against going on; empty: nothing
    QString summary;  ///< what has been entered, in one line
};

/// The wizard: a list of steps, each worked out anew from the record when it changes.
class StepsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(int count READ count CONSTANT)

public:
    enum Role { TitleRole = Qt::UserRole + 1, CompleteRole, ProblemRole, SummaryRole };

    StepsModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(steps_.size()); }
    [[nodiscard]] const StepState& at(Step step) const { return steps_[static_cast<std::size_t>(step)]; }

private:
    void work_out();

    VisitRecord& record_;
    std::vector<StepState> steps_;
};

}  // namespace wetfront::ui
