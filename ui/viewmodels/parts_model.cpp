// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/parts_model.h"

namespace wetfront::ui {
namespace {

QString problem_of(const Result<void>& result) {
    return result ? QString{} : QString::fromStdString(result.error().text());
}

}  // namespace

PartsModel::PartsModel(const Formatter& formatter, Access access, QObject* parent)
    : QAbstractListModel{parent}, formatter_{formatter}, access_{std::move(access)} {
    rebuild();
}

int PartsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> PartsModel::roleNames() const {
    return {{TitleRole, "title"}, {FormRole, "form"}};
}

QVariant PartsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto row = static_cast<std::size_t>(index.row());
    switch (role) {
        case TitleRole:
            return access_.title(row);
        case FormRole:
            return QVariant::fromValue(forms_[row]);
        default:
            return {};
    }
}

void PartsModel::rebuild() {
    beginResetModel();
    for (auto* form : forms_) {
        form->deleteLater();
    }
    forms_.clear();
    for (std::size_t i = 0; i < access_.count(); ++i) {
        auto* form = new FormModel{formatter_, this};
        form->set_fields(access_.lines(i));
        forms_.push_back(form);
    }
    endResetModel();
    emit countChanged();
}

void PartsModel::refresh() {
    if (access_.count() != forms_.size()) {
        rebuild();
        return;
    }
    for (auto* form : forms_) {
        form->refresh();
    }
    if (!forms_.empty()) {
        emit dataChanged(index(0), index(count() - 1), {TitleRole});
    }
}

QString PartsModel::add() {
    const auto result = access_.add();
    rebuild();
    return problem_of(result);
}

QString PartsModel::remove(int row) {
    if (row < 0 || row >= count()) {
        return {};
    }
    const auto result = access_.remove(static_cast<std::size_t>(row));
    rebuild();
    return problem_of(result);
}

}  // namespace wetfront::ui
