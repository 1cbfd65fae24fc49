// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/checklist_model.h"

#include <algorithm>

namespace wetfront::ui {

void set_tick(VisitRecord& record, std::string_view line, bool done) {
    auto& ticks = record.visit().ticks;
    const auto before = ticks;
    const auto at =
        std::find_if(ticks.begin(), ticks.end(), [&](const Tick& tick) { return tick.id == line; });
    if (at == ticks.end()) {
        ticks.push_back({std::string{line}, done, {}});
    } else {
        at->done = done;
    }
    if (!record.save_visit()) {
        ticks = before;
    }
}

ChecklistModel::ChecklistModel(VisitRecord& record, Step step, QObject* parent)
    : QAbstractListModel{parent}, record_{record}, step_{step} {
    connect(&record_, &VisitRecord::changed, this, [this] {
        if (count() > 0) {
            emit dataChanged(index(0), index(count() - 1));
        }
        emit openChanged();
    });
}

int ChecklistModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> ChecklistModel::roleNames() const {
    return {{TextRole, "text"}, {DoneRole, "done"}, {RequiredRole, "needed"}};
}

QVariant ChecklistModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto& line = checklist(step_)[static_cast<std::size_t>(index.row())];
    switch (role) {
        case TextRole:
            return record_.context().formatter.text(line.text);
        case DoneRole:
            return record_.file().visit.ticked(line.id);
        case RequiredRole:
            return line.required;
        default:
            return {};
    }
}

int ChecklistModel::open() const {
    return static_cast<int>(open_lines(step_, record_.file().visit).size());
}

void ChecklistModel::tick(int row, bool done) {
    if (row < 0 || row >= count()) {
        return;
    }
    set_tick(record_, checklist(step_)[static_cast<std::size_t>(row)].id, done);
}

}  // namespace wetfront::ui
