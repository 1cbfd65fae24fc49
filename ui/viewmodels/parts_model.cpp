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
    return {{TitleRole, "title"},     {FormRole, "form"},       {MoreRole, "more"},
            {ResultsRole, "results"}, {PictureRole, "picture"}, {NewsRole, "news"}};
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
        case MoreRole:
            return QVariant::fromValue(more_[row]);
        case ResultsRole:
            return access_.results ? access_.results(row) : QStringList{};
        case PictureRole:
            return access_.picture ? access_.picture(row) : QVariantMap{};
        case NewsRole:
            return access_.news ? access_.news(row) : QString{};
        default:
            return {};
    }
}

void PartsModel::rebuild() {
    beginResetModel();
    for (auto* forms : {&forms_, &more_}) {
        for (auto* form : *forms) {
            form->deleteLater();
        }
        forms->clear();
    }
    for (std::size_t i = 0; i < access_.count(); ++i) {
        forms_.push_back(new FormModel{formatter_, this});
        forms_.back()->set_fields(access_.lines(i));
        more_.push_back(new FormModel{formatter_, this});
        more_.back()->set_fields(access_.more ? access_.more(i) : std::vector<FormField>{});
    }
    endResetModel();
    emit countChanged();
}

void PartsModel::refresh() {
    if (access_.count() != forms_.size()) {
        rebuild();
        return;
    }
    for (std::size_t i = 0; i < forms_.size(); ++i) {
        forms_[i]->change_fields(access_.lines(i));
        if (access_.more) {
            more_[i]->change_fields(access_.more(i));
        }
    }
    if (!forms_.empty()) {
        emit dataChanged(index(0), index(count() - 1), {TitleRole, ResultsRole, PictureRole, NewsRole});
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

QString PartsModel::takeOver(int row) {
    if (row < 0 || row >= count() || !access_.take_over) {
        return {};
    }
    const auto result = access_.take_over(static_cast<std::size_t>(row));
    refresh();
    return problem_of(result);
}

}  // namespace wetfront::ui
